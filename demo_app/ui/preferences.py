"""How a venue likes its screens: size of type, contrast, calm, motion, a second language."""

import contextlib
import json
from dataclasses import asdict, dataclass, field, fields
from pathlib import Path
from typing import Any

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.ui.theme import SCALES, Look

NAME = "preferences.json"


@dataclass(frozen=True)
class Preferences:
    """What is kept from day to day; the model and a show know nothing of it.

    Parameters
    ----------
    look : Look
        Contrast and size of type, on both windows.
    calm : bool
        Whether bright stripes and sudden changes are kept below the limits for people who react
        to them.
    motion : bool
        Whether one picture fades into the next.
    second : str
        Code of the second language of the captions; "": none.
    language : str
        Code of the language that the windows speak; "": the system's.
    """

    look: Look = field(default_factory=Look)
    calm: bool = False
    motion: bool = True
    second: str = ""
    language: str = ""


def read(folder: Path | None) -> Preferences:
    """What is kept in `folder`; the defaults for all that cannot be read."""
    if folder is None:
        return Preferences()
    try:
        found = json.loads((folder / NAME).read_text("utf-8"))
    except (OSError, ValueError, RecursionError):
        return Preferences()
    return _preferences(found) if isinstance(found, dict) else Preferences()


def write(folder: Path | None, preferences: Preferences) -> None:
    """Keep them; a folder that cannot be written changes nothing else."""
    if folder is not None:
        with contextlib.suppress(InputError):
            write_text(folder / NAME, json.dumps(asdict(preferences)))


def _preferences(found: dict[str, Any]) -> Preferences:
    known = {one.name: found[one.name] for one in fields(Preferences) if one.name in found}
    look = known.pop("look", {})
    values: dict[str, Any] = {
        name: value
        for name, value in known.items()
        if isinstance(value, str if name in ("second", "language") else bool)
    }
    if isinstance(look, dict):
        scale, contrast = look.get("scale"), look.get("high_contrast")
        values["look"] = Look(contrast is True, scale if scale in SCALES else 1.0)
    return Preferences(**values)
