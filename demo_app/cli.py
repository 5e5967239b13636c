"""The command ``lehrlight``: reads the command line and imports only what its words need."""

import argparse
import os
import sys
from collections.abc import Sequence
from importlib import import_module
from typing import Any, NoReturn

from demo_app import __version__
from demo_app.base.errors import InputError
from demo_app.base.process import one_thread_for_matrices
from demo_app.commands.saying import tell
from demo_app.commands.windows import SHOW

EPILOG = """examples:
  lehrlight
  lehrlight scenes
  lehrlight solve ring --set glass=borosilicate --json
  lehrlight picture ring --at 10 --out ring.png
  lehrlight sweep ring --vary flame_kW_m2=25:80:12 --out ring.csv
  lehrlight map toughen --vary jet_W_m2K=50:500:50 --vary start_C=560:700:40 \
      --reading surface_MPa --reading grade --out map.csv

A calculation never says that a real piece of glass is safe."""


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line.

    Parameters
    ----------
    argv : sequence of str, optional
        Words after the command's name; default: those of this process.

    Returns
    -------
    int
        Exit status: 0; 2 after one line on standard error about something that a person can mend;
        130 after Ctrl-C; 141 when the reader of the output has gone.
    """
    one_thread_for_matrices()
    try:
        return _flushed(sys.argv[1:] if argv is None else argv)
    except InputError as error:
        return tell(str(error))
    except BrokenPipeError:
        # Python flushes once more on its way out; let it do so into nothing.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 141
    except KeyboardInterrupt:
        return 130
    except OSError as error:
        what = error.strerror or type(error).__name__
        return tell(f"{error.filename or 'system'}: {what}; try again when that is mended")


def _flushed(argv: Sequence[str]) -> int:
    if sys.stdout is not None and hasattr(sys.stdout, "reconfigure"):
        sys.stdout.reconfigure(errors="replace")  # An old console lacks the degree sign.
    try:
        words = _parser().parse_args(argv)
        room, _, name = words.act.partition(":")
        return int(getattr(import_module(f"demo_app.commands.{room}"), name)(words))
    except SystemExit as done:  # argparse after --help and --version
        return int(done.code or 0)
    finally:
        if sys.stdout is not None:
            sys.stdout.flush()


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        place = self.prog.removeprefix("lehrlight").strip() or "command"
        raise InputError(message, place=place, remedy=f"'{self.prog} --help' shows the way")


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(
        prog="lehrlight",
        description="Stress in glass, calculated live and shown as a polariscope shows it. "
        f"Without a command: the start window, or without a screen pictures in ./{SHOW}.",
        epilog=EPILOG,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )
    parser.add_argument("--version", action="version", version=f"lehrlight {__version__}")
    parser.set_defaults(act="windows:start")
    commands = parser.add_subparsers(title="commands", metavar="COMMAND")

    def command(name: str, act: str, help: str) -> Any:
        made = commands.add_parser(name, help=help, description=help, allow_abbrev=False)
        made.set_defaults(act=act)
        return made

    present = command(
        "present", "windows:present", "the live show, with a cue sheet or scene by scene"
    )
    present.add_argument(
        "what", metavar="SHOW", nargs="?", help="a cue sheet's file or name, or a scene's"
    )
    present.add_argument(
        "--minutes", metavar="MIN", help="time there is: steps that may go are left out"
    )
    present.add_argument(
        "--rehearse", action="store_true", help="time each step, and propose what to leave out"
    )
    present.add_argument(
        "--go-on", action="store_true", help="go on with a show that was interrupted, unasked"
    )

    kiosk = command("kiosk", "windows:kiosk", "the unattended touch screen of a gallery")
    way = kiosk.add_mutually_exclusive_group()
    way.add_argument(
        "--set-code", action="store_true", help="set the staff's code: type it twice, unseen"
    )
    way.add_argument("--counts", metavar="FILE.csv", help="write the counts as a table")
    way.add_argument("--window", action="store_true", help="the window alone, unsupervised")

    outreach = command(
        "outreach", "windows:outreach", "a lesson for a class, without flame or breakage"
    )
    outreach.add_argument("lesson", metavar="LESSON", nargs="?", help="a lesson's file or name")

    scenes = command("scenes", "runs:scenes", "list scenes with their settings and readings")
    scenes.add_argument("--json", action="store_true", help="for programs")

    solve = command("solve", "runs:solve", "run a scene and print its readings")
    _run_words(solve)
    _reading_words(solve)
    solve.add_argument("--json", action="store_true", help="for programs")

    picture = command("picture", "runs:picture", "run a scene and draw it between the polarizers")
    _run_words(picture)
    picture.add_argument("--out", metavar="FILE.png", required=True, help="the picture to write")
    picture.add_argument("--size", metavar="WxH", default="1920x1080", help="pixels: %(default)s")
    picture.add_argument(
        "--turn", metavar="DEG", help="turn the polarizers, counted from the piece's length: 45"
    )
    picture.add_argument("--parallel", action="store_true", help="parallel instead of crossed")
    picture.add_argument("--quarter-wave", action="store_true", help="both quarter-wave plates in")
    picture.add_argument("--tint-plate", action="store_true", help="tint plate in")
    picture.add_argument("--lamp", metavar="LAMP", help="such as daylight or sodium")
    picture.add_argument("--gain", metavar="FACTOR", help="more light, for faint pictures: 1")

    sweep = command("sweep", "runs:sweep", "run a scene over a range of one setting, into a table")
    _run_words(sweep)
    _reading_words(sweep)
    sweep.add_argument(
        "--vary",
        metavar="NAME=FROM:TO:COUNT",
        required=True,
        action="append",
        help="the setting, its first and last value, and how many values",
    )
    sweep.add_argument("--out", metavar="FILE.csv", required=True, help="the table to write")

    map_ = command("map", "runs:map_", "run a scene over ranges of two settings, on all cores")
    _run_words(map_)
    _reading_words(map_)
    map_.add_argument(
        "--vary",
        metavar="NAME=FROM:TO:COUNT",
        required=True,
        action="append",
        help="a setting, its first and last value, and how many values; give two",
    )
    map_.add_argument("--out", metavar="FILE.csv", required=True, help="the table to write")
    map_.add_argument("--workers", metavar="N", help="processes; default: one a core")

    check = command(
        "check",
        "papers:check",
        "check cue sheets and material files: what is wrong, where, what to write",
    )
    check.add_argument("files", metavar="FILE", nargs="+")

    bench = command(
        "bench", "papers:bench", "plan a show: the prep bench, or an answer to one question of it"
    )
    bench.add_argument(
        "question", metavar="QUESTION", nargs="?", help="default: the window with all of them"
    )
    bench.add_argument("--list", action="store_true", help="list the questions and their inputs")
    bench.add_argument(
        "--set",
        metavar="NAME=VALUE",
        action="append",
        default=[],
        help="an input other than its default; may be repeated",
    )
    bench.add_argument("--first", action="store_true", help="the first, quick answer alone")
    bench.add_argument("--json", action="store_true", help="for programs")
    bench.add_argument("--out", metavar="FILE", help="a page to print as well: .pdf or .html")
    bench.add_argument(
        "--keep", metavar="NAME", help="keep what 'matching' found as a device, for --device"
    )

    journal = command(
        "journal", "papers:journal", "list the shows that were given, or write tables"
    )
    journal.add_argument("--show", metavar="N", type=int, help="one show, step by step")
    form = journal.add_mutually_exclusive_group()
    form.add_argument("--json", action="store_true", help="for programs")
    form.add_argument(
        "--csv",
        metavar="FOLDER or FILE.csv",
        help="for a spreadsheet: a folder gets every table, a file one row a show",
    )

    handover = command("handover", "papers:handover", "write the page for whoever comes next")
    handover.add_argument(
        "--out", metavar="FILE", required=True, help="the page to write: .html or .pdf"
    )
    handover.add_argument("--day", metavar="YYYY-MM-DD", help="default: today")
    handover.add_argument(
        "--paper", choices=("A4", "Letter"), default="A4", help="of a PDF: %(default)s"
    )

    handout = command("handout", "papers:handout", "write a lesson's worksheet or answer key")
    handout.add_argument("lesson", metavar="LESSON", help="a lesson's file or name")
    handout.add_argument(
        "--out", metavar="FILE", required=True, help="the page to write: .pdf or .html"
    )
    handout.add_argument("--key", action="store_true", help="the answer key instead")
    handout.add_argument("--seed", metavar="N", help="draws the values; sheet and key share it: 1")
    handout.add_argument(
        "--paper", choices=("A4", "Letter"), default="A4", help="to print on: %(default)s"
    )
    return parser


def _run_words(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("scene", metavar="SCENE", help="'lehrlight scenes' lists them")
    parser.add_argument(
        "--set",
        metavar="NAME=VALUE",
        action="append",
        default=[],
        help="a setting other than its default; may be repeated",
    )
    parser.add_argument(
        "--device", metavar="NAME", help="a value fitted to your own piece, under those of --set"
    )
    parser.add_argument("--at", metavar="SECONDS", help="instant; default: the end of the story")


def _reading_words(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--reading",
        metavar="NAME",
        action="append",
        default=[],
        help="this reading alone; may be repeated",
    )
