"""A numeric item with its settings drawn by a seed, and its answers computed at that moment."""

import functools
import itertools
import random
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from demo_app.base.errors import InputError
from demo_app.content.lessons.item_records import NumericItem, Value, Wrong
from demo_app.content.readings import in_words, solve
from demo_app.scenes.catalogue import scene as scene_called
from demo_app.scenes.settings import make

OPTIONS = 4
"""Right and wrong ones together."""
LETTERS = "ABCDEF"


@dataclass(frozen=True)
class Option:
    """One answer to choose.

    Parameters
    ----------
    value : float
    words : str
        As it is printed, with its unit.
    belief : str
        Id of the misconception that leads to it; "" for the right one.
    """

    value: float
    words: str
    belief: str = ""


@dataclass(frozen=True)
class Drawn:
    """An item as it is printed.

    Parameters
    ----------
    item : NumericItem
    settings : mapping
        All that differ from the scene's defaults, those that were drawn among them.
    ask : str
        With the drawn values in it.
    value : float
        What the model says, in full.
    unit : str
    tolerance : float
        In that unit: no wrong option lies within.
    options : tuple of Option
        The smallest value first.
    right : int
        Index of the right one.
    """

    item: NumericItem
    settings: Mapping[str, Any]
    ask: str
    value: float
    unit: str
    tolerance: float
    options: tuple[Option, ...]
    right: int

    @property
    def letter(self) -> str:
        """Letter of the right option."""
        return LETTERS[self.right]

    @property
    def command(self) -> str:
        """Words of the command line that prints the same number."""
        sets = " ".join(f"--set {name}={_word(value)}" for name, value in self.settings.items())
        at = "" if self.item.at_s is None else f" --at {self.item.at_s:g}"
        return f"lehrlight solve {self.item.scene} {sets}{at} --reading {self.item.reading} --json"


def ways(item: NumericItem) -> Iterator[dict[str, Value]]:
    """All ways to draw the settings that vary."""
    for values in itertools.product(*item.vary.values()):
        yield dict(zip(item.vary, values, strict=True))


def chosen(item: NumericItem, seed: int) -> dict[str, Value]:
    """The way that `seed` draws."""
    draw = _dice(item, seed, "settings")
    return {name: draw.choice(values) for name, values in item.vary.items()}


def drawn(item: NumericItem, seed: int, varied: Mapping[str, Value] | None = None) -> Drawn:
    """The item as `seed` draws it, or with settings of one's own.

    Parameters
    ----------
    item : NumericItem
    seed : int
        Draws the settings, and which wrong answers are printed.
    varied : mapping, optional
        Settings to take instead of those that the seed draws.

    Raises
    ------
    InputError
        If the reading is no number there, or too few wrong answers lie outside the tolerance.
    """
    taken = chosen(item, seed) if varied is None else dict(varied)
    settings = {**item.settings, **taken}
    value, unit = _read(item, item.reading, settings)
    tolerance = item.tolerance or item.tolerance_pct / 100 * abs(value)
    pool = _apart(item, settings, value, unit, tolerance)
    if len(pool) < OPTIONS - 1:
        said = ", ".join(f"{name} = {_word(one)}" for name, one in taken.items())
        raise InputError(
            f"only {len(pool)} wrong answers lie apart, and outside the tolerance, with {said}",
            place=item.id,
            remedy="add another wrong answer, or draw from other values",
        )
    draw = _dice(item, seed, "options")
    some = draw.sample(pool, OPTIONS - 1)
    right = Option(value, spoken(value, unit))
    options = tuple(sorted([*some, right], key=lambda one: one.value))
    names = {name: in_words(one) for name, one in taken.items()}
    if item.given is not None:
        told = _read(item, item.given.reading or item.reading, {**settings, **item.given.settings})
        names["given"] = spoken(*told)
    ask = item.ask.format(**names)
    return Drawn(item, settings, ask, value, unit, tolerance, options, options.index(right))


def spoken(value: float, unit: str) -> str:
    """Three significant digits with the unit, as a worksheet prints it."""
    return f"{in_words(float(f'{value:.3g}'))} {unit}".rstrip()


def _apart(
    item: NumericItem, settings: Mapping[str, Any], value: float, unit: str, tolerance: float
) -> list[Option]:
    """Wrong answers outside the tolerance of the right one, and to be told from each other."""
    found: list[Option] = []
    for wrong in item.wrong:
        other = _wrong(item, wrong, settings, value)
        taken = [one.value for one in found]
        # What is printed has to stay apart as well.
        printed = {spoken(one, unit) for one in (value, *taken)}
        apart = all(abs(other - one) > 0.02 * max(abs(one), abs(other)) for one in taken)
        outside = abs(other - value) > max(tolerance, 0.01 * abs(value))
        if spoken(other, unit) not in printed and apart and outside:
            found.append(Option(other, spoken(other, unit), wrong.belief))
    return found


def _wrong(item: NumericItem, wrong: Wrong, settings: Mapping[str, Any], value: float) -> float:
    if wrong.value is not None:
        return wrong.value
    base = value
    if wrong.reading or wrong.settings:
        base, _ = _read(item, wrong.reading or item.reading, {**settings, **wrong.settings})
    return base * wrong.times + wrong.plus


def _read(item: NumericItem, reading: str, settings: Mapping[str, Any]) -> tuple[float, str]:
    found, units = _solved(item.scene, tuple(sorted(settings.items())), item.at_s)
    value = found[reading]
    if value is None or isinstance(value, bool | str):
        raise InputError(
            f"{reading} is {value!r} there, no number",
            place=item.id,
            remedy="ask for another reading, or draw from other values",
        )
    return float(value), units[reading]


@functools.lru_cache(maxsize=256)
def _solved(
    scene_id: str, settings: tuple[tuple[str, Any], ...], at_s: float | None
) -> tuple[Mapping[str, Any], Mapping[str, str]]:
    scene = scene_called(scene_id)
    record: Any = make(scene.settings, dict(settings))
    return solve(scene, record, at_s).readings, {one.name: one.unit for one in scene.readings}


def _dice(item: NumericItem, seed: int, what: str) -> random.Random:
    # A text as seed: the same numbers on every machine and in every run.
    return random.Random(f"{seed}/{item.id}/{what}")


def _word(value: Any) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    return f"{value:.12g}" if isinstance(value, float) else str(value)
