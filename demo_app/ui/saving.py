"""Saving the picture shown, under a name of its own."""

from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.optics.png import save_png
from demo_app.ui import words
from demo_app.ui.request import Frame


def save_picture(scene_id: str, frame: Frame, folder: str) -> str:
    """Save a frame's picture as PNG; nothing that is there already is overwritten.

    Returns
    -------
    str
        One line that says where it is, or why it could not be saved.
    """
    stem = f"lehrlight-{scene_id}-{frame.time_s:.2f}s"
    try:
        place = Path(folder)
        place.mkdir(parents=True, exist_ok=True)
        path = place / f"{stem}.png"
        count = 1
        while path.exists():
            count += 1
            path = place / f"{stem}-{count}.png"
        save_png(path, frame.pixels)
    except InputError as error:
        return words.text("unsaved", problem=f"{error.problem}; {error.remedy}")
    except OSError as error:
        return words.text("unsaved", problem=error.strerror or str(error))
    return words.text("saved", path=str(path))
