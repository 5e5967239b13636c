"""What stands in for a broken file: the last good one, else the defaults; and what is told then."""

import contextlib
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from demo_app.base.atomic import write_bytes
from demo_app.base.errors import InputError
from demo_app.content.kiosk import site_file
from demo_app.content.kiosk.site import Site

LONGEST_LINE = 300
"""Letters of a problem on the staff page; a broken file can hold anything."""
T = TypeVar("T")


def last_good_of(path: Path) -> Path:
    """Where the last good copy of the file at `path` is kept: beside it."""
    return path.with_name(f"{path.stem}.last-good{path.suffix}")


def load_or_last_good(folder: Path | None) -> tuple[Site, tuple[str, ...]]:
    """The site of the kiosk whose data are in `folder`; it never raises.

    Parameters
    ----------
    folder : pathlib.Path or None
        None where there is none: the defaults.

    Returns
    -------
    Site
        From ``kiosk.toml``; if that is broken, from its last good copy; else the defaults.
    tuple of str
        What the staff page tells, a line each.
    """
    if folder is None:
        return Site(), ("There is no folder for this kiosk's data: nothing is kept.",)
    path = folder / site_file.NAME
    spare = last_good_of(path)
    if not _is_there(path) and not _is_there(spare):
        return Site(), ()
    problems: list[str] = []
    site = told(problems, site_file.load, path)
    if site is not None:
        _keep(path, spare)
        return site, tuple(problems)
    # Its own mistakes matter less than those of the file that people write.
    site = told([], site_file.load, spare)
    if site is None:
        return Site(), (*problems, "The kiosk runs with its defaults.")
    return site, (*problems, "The kiosk runs with the last good copy of its site file.")


def told(problems: list[str], act: Callable[..., T], *words: object) -> T | None:
    """What ``act(*words)`` returns; None, and a line more among the `problems`, if it raises.

    A kiosk has nobody to look after it: any fault of reading is like a broken file.
    """
    try:
        return act(*words)
    except Exception as error:
        problems.append(spoken(error))
        return None


def spoken(error: Exception) -> str:
    """One line of bounded length about an error."""
    said = str(error) if isinstance(error, InputError) else f"{type(error).__name__}: {error}"
    line = " ".join(said.split())
    return line if len(line) <= LONGEST_LINE else f"{line[: LONGEST_LINE - 1]}…"


def _is_there(path: Path) -> bool:
    with contextlib.suppress(OSError, ValueError):
        path.lstat()
        return True
    return False


def _keep(path: Path, spare: Path) -> None:
    """Copy a good file to its spare place; a disk that refuses changes nothing."""
    with contextlib.suppress(InputError, OSError):
        content = path.read_bytes()
        if not spare.is_file() or spare.read_bytes() != content:
            write_bytes(spare, content)
        site_file.close_to_others(spare)
