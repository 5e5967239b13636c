"""What a show saves of itself, so that a restart can offer it: frozen records and their files."""

import contextlib
import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from types import MappingProxyType
from typing import Any

from demo_app.base import atomic
from demo_app.base.errors import InputError
from demo_app.content.running import saving
from demo_app.content.running.records import Running
from demo_app.ui import snapshot as snapshots
from demo_app.ui import words
from demo_app.ui.snapshot import Snapshot

VERSION = 1
NAME, LAST, FAVOURITES = "autosave.json", "autosave-before.json", "favourites.json"
FAVOURITE_KEYS = range(1, 10)
NOTHING: Mapping[str, Any] = MappingProxyType({})

Tell = Callable[[str], object]
"""Takes one line for the presenter."""


@dataclass(frozen=True)
class Saved:
    """A show as it was at one moment.

    Parameters
    ----------
    shown : Snapshot or None
        What the session showed.
    back : Snapshot or None
        Its point of return; None: nothing was changed by hand.
    running : Running or None
        Where the show was; None: scenes without a sheet.
    sheet : str or None
        Path of the sheet's file; `running.digest` tells whether it is still the same.
    audience : mapping
        Plain values that the audience's window wants back.
    saved_at : float
        Seconds since the epoch.
    """

    shown: Snapshot | None
    back: Snapshot | None = None
    running: Running | None = None
    sheet: str | None = None
    audience: Mapping[str, Any] = field(default_factory=lambda: NOTHING)
    saved_at: float = 0.0


@dataclass(frozen=True)
class Favourite:
    """An instant to come back to by one key."""

    name: str
    shown: Snapshot


def as_text(saved: Saved) -> str:
    """JSON, from which `from_text` makes an equal record."""
    return json.dumps(
        {
            "version": VERSION,
            "saved_at": saved.saved_at,
            "sheet": saved.sheet,
            "running": None if saved.running is None else saving.as_record(saved.running),
            "shown": _record(saved.shown),
            "back": _record(saved.back),
            "audience": dict(saved.audience),
        }
    )


def from_text(text: str) -> Saved:
    """The show that `as_text` wrote; `InputError` if it cannot be read."""
    record = _read(text)
    running = record.get("running")
    try:
        return Saved(
            shown=_snapshot(record["shown"]),
            back=_snapshot(record["back"]),
            running=None if running is None else saving.from_record(running),
            sheet=record["sheet"],
            audience=MappingProxyType(dict(record["audience"])),
            saved_at=float(record["saved_at"]),
        )
    except (KeyError, TypeError, ValueError) as error:
        if isinstance(error, InputError):
            raise
        raise _broken(repr(error)) from None


def offer(folder: Path, tell: Tell | None = None) -> Saved | None:
    """What a restart offers: the show saved last, else the one before it.

    Parameters
    ----------
    folder : pathlib.Path
        The data folder; it may be missing.
    tell : callable or None
        Takes one line for a file that is there but cannot be read.

    Returns
    -------
    Saved or None
    """
    for name in (NAME, LAST):
        found = _offered(folder / name, tell)
        if found is not None:
            return found
    return None


def forget(folder: Path) -> None:
    """Offer nothing any more: the show was closed in good order."""
    for name in (NAME, LAST):
        with contextlib.suppress(OSError):
            (folder / name).unlink(missing_ok=True)


def read_favourites(folder: Path, tell: Tell | None = None) -> Mapping[int, Favourite]:
    """Favourites by their key, 1 to 9; none if there is no file or it cannot be read."""
    path = folder / FAVOURITES
    try:
        text = path.read_text("utf-8")
    except (OSError, UnicodeDecodeError):
        return {}
    try:
        found = _read(text)["favourites"]
        return {
            int(key): Favourite(str(one["name"]), snapshots.from_record(one["shown"]))
            for key, one in found.items()
            if int(key) in FAVOURITE_KEYS
        }
    except (KeyError, TypeError, ValueError, AttributeError):
        _tell_broken(path, tell)
        return {}


def write_favourites(folder: Path, favourites: Mapping[int, Favourite]) -> None:
    """Write all favourites; `InputError` if that cannot be, and the old file stays."""
    record = {
        str(key): {"name": one.name, "shown": snapshots.as_record(one.shown)}
        for key, one in sorted(favourites.items())
    }
    text = json.dumps({"version": VERSION, "favourites": record}, indent=1)
    atomic.write_text(folder / FAVOURITES, text)


def _record(found: Snapshot | None) -> dict[str, Any] | None:
    return None if found is None else snapshots.as_record(found)


def _snapshot(record: Any) -> Snapshot | None:
    return None if record is None else snapshots.from_record(record)


def _broken(problem: str) -> InputError:
    return InputError(f"is broken ({problem})", place="autosave", remedy=snapshots.BROKEN)


def _read(text: str) -> Mapping[str, Any]:
    try:
        record = json.loads(text)
    except (ValueError, RecursionError):
        raise _broken("no JSON") from None
    if not isinstance(record, Mapping) or record.get("version") != VERSION:
        raise _broken("another version")
    return record


def _offered(path: Path, tell: Tell | None) -> Saved | None:
    try:
        return from_text(path.read_text("utf-8"))
    except FileNotFoundError:
        return None
    except (OSError, UnicodeDecodeError, InputError):
        _tell_broken(path, tell)
        return None


def _tell_broken(path: Path, tell: Tell | None) -> None:
    if tell is not None:
        tell(words.text("autosave.broken", file=path.name))
