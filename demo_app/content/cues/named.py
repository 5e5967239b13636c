"""What the word after ``lehrlight present`` names: a scene, or a cue sheet."""

from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.content.cues.load import own_sheets
from demo_app.scenes import catalogue


def sheet_called(what: str) -> Path | None:
    """File of the sheet that `what` names: a path, or the name of one that comes with the app.

    Raises
    ------
    InputError
        If it is neither that nor a scene.
    """
    if what in catalogue.ids():
        return None
    named = {path.stem: path for path in own_sheets()}
    if what in named:
        return named[what]
    path = Path(what)
    if path.suffix == ".toml" or path.exists():
        return path
    raise InputError(
        f"'{what}' is no scene and no cue sheet",
        place="present",
        remedy=f"write one of {', '.join((*catalogue.ids(), *named))} or a file that ends in .toml",
    )
