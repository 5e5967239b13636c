"""Where a person's own data lives: journal, settings, what was saved by itself."""

import os
from pathlib import Path

from demo_app.base.errors import InputError

HOME = "LEHRLIGHT_HOME"
"""Name in the surroundings that chooses another folder."""


def data_place() -> Path:
    """Folder for a person's own data, whether it is there or not.

    Returns
    -------
    pathlib.Path
        ``LEHRLIGHT_HOME`` where that is set, else the system's place for a program's data.
    """
    from platformdirs import user_data_path

    chosen = os.environ.get(HOME, "").strip()
    return Path(chosen).expanduser() if chosen else user_data_path("lehrlight", appauthor=False)


def data_folder() -> Path:
    """The same folder, made if it is missing.

    Returns
    -------
    pathlib.Path
        An absolute path; that it is there says nothing of whether one may write in it.

    Raises
    ------
    InputError
        If it cannot be made. A show goes on without it: whoever asks must be able to.
    """
    folder = data_place()
    try:
        folder = folder.absolute()
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise InputError(
            f"cannot be made ({error.strerror or error})",
            place=str(folder),
            remedy=f"let {HOME} name a folder of your own",
        ) from None
    return folder
