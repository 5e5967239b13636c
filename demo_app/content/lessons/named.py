"""What the word after ``lehrlight handout`` or ``outreach`` names: a lesson."""

from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.content.lessons.load import own_lessons, translated_lessons


def lesson_called(what: str, place: str = "lesson") -> Path:
    """File of the lesson that `what` names: a path, or the name of one that comes with the app.

    Raises
    ------
    InputError
        If it is neither; `place` is the command that was given it.
    """
    named = {path.stem: path for path in own_lessons()}
    others = {f"{path.parent.name}/{path.stem}": path for path in translated_lessons()}
    if what in named or what in others:
        return named.get(what) or others[what]
    path = Path(what)
    if path.suffix == ".md" or path.exists():
        return path
    raise InputError(
        f"'{what}' is no lesson",
        place=place,
        remedy=f"write one of {', '.join(named)} or a file that ends in .md",
    )
