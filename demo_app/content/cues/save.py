"""A state on the stage put down as one more step of a cue sheet's file."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

import tomlkit

from demo_app.base.atomic import write_bytes
from demo_app.base.errors import InputError
from demo_app.base.toml_table import read
from demo_app.content.cues.load import parse_sheet, slug
from demo_app.content.cues.records import Sheet
from demo_app.scenes.catalogue import scene as scene_called
from demo_app.scenes.settings import settings_of

TO_BE_WRITTEN = "Words for this step are still to be written."
_MARK = b"\xef\xbb\xbf"  # in front of UTF-8 text by some editors


@dataclass(frozen=True)
class Captured:
    """What stands on the stage.

    Parameters
    ----------
    title : str
        Of the new step.
    scene : str
        Id of the scene.
    settings : object
        The scene's settings record.
    at_s : float
        Model time, s; counted as the end of the story where it is later.
    say : tuple of str
        Words for it.
    seconds : float
        How long it takes in front of an audience, s.
    priority : int
        3: shown if time is left.
    """

    title: str
    scene: str
    settings: Any
    at_s: float
    say: tuple[str, ...] = (TO_BE_WRITTEN,)
    seconds: float = 30.0
    priority: int = 3


def append_step(path: Path, captured: Captured) -> Sheet:
    """Add `captured` at the end of the sheet at `path` and return the new sheet.

    The file is read anew, so what somebody wrote into it meanwhile stays; every byte that was
    there stays too. The new file is checked before it takes the old one's place.

    Raises
    ------
    InputError
        If the file now has a mistake (it is then left as it is), cannot take one more step, or
        cannot be written.
    """
    text = read(path, "cue sheet")
    try:
        before = parse_sheet(path, text)
    except InputError as error:
        raise InputError(
            f"the step was not saved, for the sheet has a mistake: {error.problem}",
            place=error.place,
            remedy=f"mend that first: {error.remedy}",
        ) from None
    taken = {step.id for step in before.steps}
    added = _words(captured, _free(slug(captured.title) or captured.scene, taken))
    after = _checked(path, text, added)
    raw = path.read_bytes()
    if _as_read(raw) != text:
        raise InputError(
            "was saved by somebody else at this very moment", place=str(path), remedy="try again"
        )
    write_bytes(path, raw + _gap(text, added, b"\r\n" in raw))
    return after


def other_than_defaults(settings: Any) -> dict[str, Any]:
    """Settings of a record that are not the scene's defaults, by name."""
    return {
        one.name: getattr(settings, one.name)
        for one in settings_of(type(settings))
        if getattr(settings, one.name) != one.default
    }


def _as_read(raw: bytes) -> str:
    """Text of a file's bytes, as `read` gives it."""
    text = raw.removeprefix(_MARK).decode("utf-8", errors="replace")
    return text.replace("\r\n", "\n").replace("\r", "\n")


def _checked(path: Path, text: str, added: str) -> Sheet:
    try:
        return parse_sheet(path, text + _joint(text) + added)
    except InputError as error:
        raise InputError(
            f"the step was not saved, for with it the sheet has a mistake: {error.problem}",
            place=error.place,
            remedy=error.remedy,
        ) from None


def _words(captured: Captured, id: str) -> str:
    table = tomlkit.table()
    table["title"] = " ".join(captured.title.split())
    table["id"] = id
    table["scene"] = captured.scene
    changed = other_than_defaults(captured.settings)
    if changed:
        table["settings"] = tomlkit.inline_table()
        for name, value in changed.items():
            table["settings"][name] = _short(value)
    end = scene_called(captured.scene).seconds(captured.settings)
    table["at_s"] = _short(min(captured.at_s, int(1000 * end) / 1000))
    table["seconds"] = _short(captured.seconds)
    table["priority"] = captured.priority
    table["say"] = list(captured.say)
    steps = tomlkit.aot()
    steps.append(table)
    document = tomlkit.document()
    document["step"] = steps
    return tomlkit.dumps(document)


def _short(value: Any) -> Any:
    """Whole numbers without a point, as people write them."""
    whole = isinstance(value, float) and value.is_integer() and abs(value) < 1e15
    return int(value) if whole else value


def _free(id: str, taken: set[str]) -> str:
    number = 2
    free = id
    while free in taken:
        free, number = f"{id}-{number}", number + 1
    return free


def _joint(text: str) -> str:
    return "\n" if text.endswith("\n") else "\n\n"


def _gap(text: str, added: str, windows: bool) -> bytes:
    """What is appended, in the line ends of the file."""
    lines = _joint(text) + added
    return (lines.replace("\n", "\r\n") if windows else lines).encode("utf-8")
