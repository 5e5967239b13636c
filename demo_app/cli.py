"""The command ``lehrlight``: reads the command line and imports only what its words need."""

import argparse
import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any, NoReturn

from demo_app import __version__
from demo_app.base.errors import InputError
from demo_app.base.process import one_thread_for_matrices

SHOW = "lehrlight-show"
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
        return _tell(str(error))
    except BrokenPipeError:
        # Python flushes once more on its way out; let it do so into nothing.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 141
    except KeyboardInterrupt:
        return 130
    except OSError as error:
        what = error.strerror or type(error).__name__
        return _tell(f"{error.filename or 'system'}: {what}; try again when that is mended")


def _flushed(argv: Sequence[str]) -> int:
    if sys.stdout is not None and hasattr(sys.stdout, "reconfigure"):
        sys.stdout.reconfigure(errors="replace")  # An old console lacks the degree sign.
    try:
        words = _parser().parse_args(argv)
        act: Callable[[argparse.Namespace], int] = words.act
        return act(words)
    except SystemExit as done:  # argparse after --help and --version
        return int(done.code or 0)
    finally:
        if sys.stdout is not None:
            sys.stdout.flush()


def _tell(line: str) -> int:
    print(f"lehrlight: {' '.join(line.split())}", file=sys.stderr)
    return 2


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
    parser.set_defaults(act=_start)
    commands = parser.add_subparsers(title="commands", metavar="COMMAND")

    def command(name: str, act: Callable[[argparse.Namespace], int], help: str) -> Any:
        made = commands.add_parser(name, help=help, description=help, allow_abbrev=False)
        made.set_defaults(act=act)
        return made

    present = command("present", _present, "the live show, with a cue sheet or scene by scene")
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

    scenes = command("scenes", _scenes, "list scenes with their settings and readings")
    scenes.add_argument("--json", action="store_true", help="for programs")

    solve = command("solve", _solve, "run a scene and print its readings")
    _run_words(solve)
    _reading_words(solve)
    solve.add_argument("--json", action="store_true", help="for programs")

    picture = command("picture", _picture, "run a scene and draw it between the polarizers")
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

    sweep = command("sweep", _sweep, "run a scene over a range of one setting, into a table")
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

    map_ = command("map", _map, "run a scene over ranges of two settings, on all cores")
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
        "check", _check, "check cue sheets and material files: what is wrong, where, what to write"
    )
    check.add_argument("files", metavar="FILE", nargs="+")

    bench = command("bench", _bench, "plan a show: answer one question of the prep bench")
    bench.add_argument(
        "question", metavar="QUESTION", nargs="?", help="default: list the questions"
    )
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

    journal = command("journal", _journal, "list the shows that were given, or write tables")
    journal.add_argument("--show", metavar="N", type=int, help="one show, step by step")
    form = journal.add_mutually_exclusive_group()
    form.add_argument("--json", action="store_true", help="for programs")
    form.add_argument(
        "--csv",
        metavar="FOLDER or FILE.csv",
        help="for a spreadsheet: a folder gets every table, a file one row a show",
    )

    handover = command("handover", _handover, "write the page for whoever comes next")
    handover.add_argument(
        "--out", metavar="FILE", required=True, help="the page to write: .html or .pdf"
    )
    handover.add_argument("--day", metavar="YYYY-MM-DD", help="default: today")
    handover.add_argument(
        "--paper", choices=("A4", "Letter"), default="A4", help="of a PDF: %(default)s"
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


def _has_screen() -> bool:
    from demo_app.content.screen import has_screen

    return has_screen(os.environ, sys.platform)


def _start(words: argparse.Namespace) -> int:
    if _has_screen():
        return _window("demo_app.shells.start")
    from demo_app.content.show import draw_show
    from demo_app.scenes.catalogue import scenes

    print(f"No screen was found: the demo show is drawn into ./{SHOW}", flush=True)
    draw_show(scenes().values(), Path(SHOW), lambda line: print(line, flush=True))
    return 0


def _present(words: argparse.Namespace) -> int:
    from demo_app.content.cues.load import load
    from demo_app.content.cues.named import sheet_called
    from demo_app.content.words import parse_number

    minutes = None
    if words.minutes is not None:
        minutes = parse_number(words.minutes, place="--minutes", low=1, high=180, unit="min")
    path = sheet_called(words.what) if words.what else None
    if path is not None:
        load(path)
    if not _has_screen():
        raise InputError(
            "no screen was found",
            place="present",
            remedy="'lehrlight picture SCENE --out FILE.png' needs none",
        )
    return _window(
        "demo_app.shells.present",
        words.what,
        minutes=minutes,
        rehearsal=words.rehearse,
        go_on=words.go_on,
    )


def _window(module: str, *words: str | None, **more: Any) -> int:
    import importlib

    from demo_app.base.process import hold_collector

    hold_collector()  # The shell lets go once its first picture is there.
    try:
        run = importlib.import_module(module).run
    except ImportError as error:
        if isinstance(error, ModuleNotFoundError):
            raise
        raise InputError(
            str(error), place="window", remedy="install the system packages that the README names"
        ) from None
    return int(run(*words, sys.argv[:1], **more))


def _scenes(words: argparse.Namespace) -> int:
    from demo_app.content.readings import as_json, scenes_record, scenes_table
    from demo_app.scenes.catalogue import scenes

    known = scenes().values()
    print(as_json(scenes_record(known)) if words.json else scenes_table(known))
    return 0


def _prepared(words: argparse.Namespace) -> tuple[Any, Any, float | None]:
    """Scene, settings record and instant of a command that runs one scene once."""
    from demo_app.content.words import parse_instant
    from demo_app.scenes.catalogue import scene
    from demo_app.scenes.settings import make

    chosen = scene(words.scene)
    settings: Any = make(chosen.settings, _values(words, chosen))
    return chosen, settings, parse_instant(chosen, [settings], words.at)


def _values(words: argparse.Namespace, chosen: Any) -> dict[str, Any]:
    """Settings that the command line names: those of the device, and over them each by itself."""
    from demo_app.content.words import parse_sets

    values: dict[str, Any] = dict(parse_sets(words.set))
    if words.device is None:
        return values
    from demo_app.content.site.devices import device, values_of

    return values_of(device(words.device), chosen, values)


def _solve(words: argparse.Namespace) -> int:
    from demo_app.content.readings import as_json, as_record, as_table, check_names, only, solve

    scene, settings, at_s = _prepared(words)
    check_names(scene, words.reading)
    found = only(solve(scene, settings, at_s), words.reading)
    print(as_json(as_record(found)) if words.json else as_table(found))
    return 0


def _picture(words: argparse.Namespace) -> int:
    from demo_app.base.atomic import check_place
    from demo_app.content.pictures import arranged, check_name, drawn
    from demo_app.content.words import parse_size
    from demo_app.optics.png import save_png
    from demo_app.scenes.run import state_at

    scene, settings, at_s = _prepared(words)
    size, out = parse_size(words.size), check_name(Path(words.out))
    settings, instrument = arranged(scene, settings, words)
    check_place(out)
    state = state_at(scene, settings, at_s)
    save_png(out, drawn(scene.view(settings, state), size, instrument))
    return 0


def _sweep(words: argparse.Namespace) -> int:
    from demo_app.base.atomic import check_place, write_text
    from demo_app.content.sweep import parse_vary, points, table
    from demo_app.content.words import parse_instant
    from demo_app.scenes.catalogue import scene

    chosen = scene(words.scene)
    if len(words.vary) > 1:
        raise InputError("is given twice", place="--vary", remedy="vary one setting at a time")
    vary = parse_vary(chosen, words.vary[0])
    runs = points(chosen, _values(words, chosen), vary)
    at_s = parse_instant(chosen, runs, words.at)
    out = Path(words.out)
    check_place(out)
    progress = _progress if sys.stderr is not None and sys.stderr.isatty() else _quiet
    write_text(out, table(chosen, runs, vary, at_s, words.reading, progress))
    return 0


def _map(words: argparse.Namespace) -> int:
    from demo_app.base.atomic import check_place
    from demo_app.content.maps.plan import plan_map
    from demo_app.content.maps.result import Map
    from demo_app.content.maps.run import MOST_WORKERS, processes, run_map
    from demo_app.content.maps.store import part_of, write_map
    from demo_app.content.words import parse_instant, parse_whole
    from demo_app.scenes.catalogue import scene

    chosen = scene(words.scene)
    at_s = parse_instant(chosen, [chosen.settings()], words.at)
    plan = plan_map(chosen, words.vary, words.reading, _values(words, chosen), at_s)
    workers = parse_whole(words.workers, place="--workers", low=1, high=MOST_WORKERS)
    out = Path(words.out)
    check_place(out)
    progress = _progress if sys.stderr is not None and sys.stderr.isatty() else _quiet
    try:
        with processes(workers) as pool:
            found = Map(plan, run_map(plan, pool, part_of(out), progress=progress))
    except KeyboardInterrupt:
        print("\nstopped; the same command goes on from here", file=sys.stderr, flush=True)
        raise
    write_map(out, found)
    return 0


def _progress(done: int, count: int) -> None:
    print(f"\r{done} of {count}", end="\n" if done == count else "", file=sys.stderr, flush=True)


def _quiet(done: int, count: int) -> None:
    pass


def _check(words: argparse.Namespace) -> int:
    from demo_app.content.checks import checked

    status = 0
    for name in words.files:
        found = checked(Path(name))
        for line in found.lines:
            print(f"{name}: {line}", flush=True)
        for error in found.mistakes:
            status = _tell(str(error))
    return status


def _bench(words: argparse.Namespace) -> int:
    from demo_app.content.bench.command import bench, listed

    if words.question is None:
        print(listed())
        return 0

    def to_pdf(made: Any, path: Path) -> None:
        from demo_app.ui.printing import print_pdf

        print_pdf(made.html, path, images=made.images, title=made.title)

    progress = _progress if sys.stderr is not None and sys.stderr.isatty() else _quiet
    print(
        bench(
            words.question,
            words.set,
            words.out,
            progress,
            to_pdf,
            json=words.json,
            quickly=words.first,
            keep=words.keep,
        )
    )
    return 0


def _journal(words: argparse.Namespace) -> int:
    from demo_app.content.journal.listing import listed, read_journal, record, told, write_tables
    from demo_app.content.readings import as_json

    journal = read_journal()
    if words.show is not None:
        one = told(journal, words.show)
    if words.csv is not None:
        write_tables(journal, Path(words.csv), words.show)
    elif words.json:
        print(as_json(record(journal, words.show)))
    else:
        print(listed(journal) if words.show is None else one)
    return 0


def _handover(words: argparse.Namespace) -> int:
    from demo_app.base.atomic import check_place, write_text
    from demo_app.content.handover import check_name, gathered, page, parse_day
    from demo_app.content.journal.listing import read_journal

    out, day = check_name(Path(words.out)), parse_day(words.day)
    check_place(out)
    text = page(gathered(read_journal(), day))
    if out.suffix.lower() == ".pdf":
        from demo_app.ui.printing import print_pdf

        print_pdf(text, out, paper=words.paper)
    else:
        write_text(out, text)
    return 0
