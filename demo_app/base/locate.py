"""Where the app's own files are: inside the installed package, else in the repository."""

from pathlib import Path

from demo_app.base.errors import InputError

_PACKAGE = Path(__file__).resolve().parent.parent


def assets() -> Path:
    """Folder with materials, light data, texts and fonts.

    Returns
    -------
    pathlib.Path
        The packaged copy where there is one (a wheel), else the repository's (an editable install).

    Raises
    ------
    InputError
        If neither is there.
    """
    return _find("assets")


def lesson_plans() -> Path:
    """Folder with one file a lesson; looked for like `assets`."""
    return _find("lesson_plans")


def _find(name: str) -> Path:
    for folder in (_PACKAGE / name, _PACKAGE.parent / name):
        if folder.is_dir():
            return folder
    raise InputError(
        f"the folder {name}/ is missing", place=str(_PACKAGE), remedy="install Lehrlight again"
    )
