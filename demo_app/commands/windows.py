"""Commands that open a window."""

import argparse
import os
import sys
from pathlib import Path
from typing import Any

from demo_app.base.errors import InputError

SHOW = "lehrlight-show"


def start(words: argparse.Namespace) -> int:
    """The start window; without a screen, pictures of every scene."""
    if _has_screen():
        return _window("demo_app.shells.start")
    from demo_app.content.show import draw_show
    from demo_app.scenes.catalogue import scenes

    print(f"No screen was found: the demo show is drawn into ./{SHOW}", flush=True)
    draw_show(scenes().values(), Path(SHOW), lambda line: print(line, flush=True))
    return 0


def present(words: argparse.Namespace) -> int:
    """The live show."""
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


def outreach(words: argparse.Namespace) -> int:
    """A lesson for a class."""
    from demo_app.content.lessons.load import load
    from demo_app.content.lessons.named import lesson_called

    if words.lesson is not None:
        load(lesson_called(words.lesson, "outreach"))
    if not _has_screen():
        raise InputError(
            "no screen was found",
            place="outreach",
            remedy="'lehrlight handout LESSON --out FILE.pdf' needs none",
        )
    return _window("demo_app.shells.outreach", words.lesson)


def bench(words: argparse.Namespace) -> int:
    """The prep bench."""
    given = [
        f"--{name}" for name in ("set", "first", "json", "out", "keep") if getattr(words, name)
    ]
    if given:
        raise InputError(
            f"{given[0]} needs a question",
            place="bench",
            remedy="name one; 'lehrlight bench --list' lists them",
        )
    if not _has_screen():
        raise InputError(
            "no screen was found",
            place="bench",
            remedy="'lehrlight bench QUESTION' answers without one, '--list' lists the questions",
        )
    return _window("demo_app.shells.bench")


def kiosk(words: argparse.Namespace) -> int:
    """The unattended screen: its supervisor, its window, or what staff do without either."""
    from demo_app.content.kiosk import command

    if words.set_code:
        print(command.set_code(_secret("Code: "), _secret("Again: ")))
        return 0
    if words.counts is not None:
        print(command.write_counts(Path(words.counts)))
        return 0
    if not _has_screen():
        raise InputError(
            "no screen was found", place="kiosk", remedy="start it from a session with a screen"
        )
    from demo_app.shells import supervising

    if words.window:
        supervising.end_with_supervisor()
        return _window("demo_app.shells.kiosk")
    return supervising.run()


def _secret(prompt: str) -> str:
    """A line that is typed unseen, or comes down a pipe."""
    import getpass

    if sys.stdin is not None and sys.stdin.isatty():
        return getpass.getpass(prompt)
    return sys.stdin.readline().strip() if sys.stdin is not None else ""


def _has_screen() -> bool:
    from demo_app.content.screen import has_screen

    return has_screen(os.environ, sys.platform)


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
