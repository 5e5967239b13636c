"""What people write on the command line, read and checked."""

import re
from collections.abc import Iterable, Sequence
from typing import Any

from demo_app.base.errors import InputError
from demo_app.scenes.scene import Scene

SMALLEST, LARGEST = 16, 8192


def parse_sets(texts: Iterable[str]) -> dict[str, str]:
    """Read ``NAME=VALUE`` words; `InputError` for another form or a name given twice."""
    values: dict[str, str] = {}
    for text in texts:
        name, equals, value = text.partition("=")
        if not (equals and name):
            raise InputError(f"'{text}' cannot be read", place="--set", remedy="write NAME=VALUE")
        if name in values:
            raise InputError(f"{name} is given twice", place="--set", remedy="give it once")
        values[name] = value
    return values


def parse_size(text: str) -> tuple[int, int]:
    """Read ``WIDTHxHEIGHT`` in pixels; `InputError` for another form or a useless size."""
    found = re.fullmatch(r"([0-9]{1,6})x([0-9]{1,6})", text)
    sides = [int(side) for side in found.groups()] if found else []
    if not sides or min(sides) < SMALLEST or max(sides) > LARGEST:
        raise InputError(
            f"'{text}' is no size",
            place="--size",
            remedy=f"write WIDTHxHEIGHT, each from {SMALLEST} to {LARGEST}, such as 1920x1080",
        )
    return sides[0], sides[1]


def parse_number(text: str, *, place: str, low: float, high: float, unit: str = "") -> float:
    """Read a number from `low` to `high`; anything else, NaN too, is an `InputError`."""
    try:
        value = float(text)
    except ValueError:
        value = float("nan")
    if not low <= value <= high:
        allowed = f"write a number from {low:g} to {high:g} {unit}".rstrip()
        raise InputError(f"'{text}' cannot be used", place=place, remedy=allowed)
    return value


def parse_whole(text: str | None, *, place: str, low: int, high: int) -> int | None:
    """Read a whole number from `low` to `high`, else `InputError`; None stays None."""
    if text is None:
        return None
    # int() would take "1_0" and " 3" too.
    if not (text.isascii() and text.isdigit() and len(text) < 9 and low <= int(text) <= high):
        raise InputError(
            f"'{text}' cannot be used", place=place, remedy=f"write a whole number {low} to {high}"
        )
    return int(text)


def parse_instant(scene: Scene, points: Sequence[Any], text: str | None) -> float | None:
    """Read an instant in seconds, within reason: the longer of an hour and ten stories.

    Parameters
    ----------
    scene : Scene
        What will run.
    points : sequence
        Its settings records; the shortest story of them counts.
    text : str or None
        None stands for the end of each story, and stays None.
    """
    if text is None:
        return None
    longest = max(3600.0, 10 * min(scene.seconds(settings) for settings in points))
    return parse_number(text, place="--at", low=0, high=round(longest), unit="s")
