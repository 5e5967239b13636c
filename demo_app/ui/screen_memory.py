"""The audience's screen of another day, by its name, in the user's data folder."""

import contextlib
import json
from pathlib import Path

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.ui.screens import Place

NAME = "screens.json"


def read_place(folder: Path | None) -> Place | None:
    """The screen that was chosen last; None if there is none or the file cannot be read."""
    if folder is None:
        return None
    try:
        return Place.from_record(json.loads((folder / NAME).read_text("utf-8")))
    except (OSError, ValueError, RecursionError):
        return None


def keep_place(folder: Path | None, place: Place) -> None:
    """Remember a screen; a folder that cannot be written changes nothing else."""
    if folder is not None:
        with contextlib.suppress(InputError):
            write_text(folder / NAME, json.dumps(place.record()))
