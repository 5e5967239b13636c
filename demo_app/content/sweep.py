"""One setting varied over a range: a table for a spreadsheet."""

import csv
import dataclasses
import io
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from demo_app import __version__
from demo_app.base.errors import InputError
from demo_app.content.readings import check_names, solve
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import Setting, make, settings_of

MOST_POINTS = 1000


@dataclass(frozen=True)
class Vary:
    """Which setting is varied, and the values it takes."""

    name: str
    values: tuple[float, ...]


def parse_vary(scene: Scene, text: str) -> Vary:
    """Read ``NAME=FROM:TO:COUNT``.

    Raises
    ------
    InputError
        If the text has another form, the setting is unknown or no number, or an end is out of
        its range.
    """
    name, _, span = text.partition("=")
    ends = span.split(":")
    if len(ends) != 3:
        raise _error(f"'{text}' cannot be read", "write NAME=FROM:TO:COUNT")
    setting = _number_setting(scene, name)
    count = _count(ends[2])
    low, high = (_end(setting, end) for end in ends[:2])
    return Vary(name, tuple(float(value) for value in np.linspace(low, high, count)))


def points(scene: Scene, values: Mapping[str, Any], vary: Vary) -> tuple[Any, ...]:
    """Settings records of a sweep, one a value; `values` are the settings that stay.

    Raises
    ------
    InputError
        If a setting does not suit the scene, or is both varied and set.
    """
    if vary.name in values:
        raise _error(f"{vary.name} is also set by --set", "give it once")
    return tuple(make(scene.settings, {**values, vary.name: value}) for value in vary.values)


def table(
    scene: Scene,
    runs: Sequence[Any],
    vary: Vary,
    at_s: float | None = None,
    names: Sequence[str] = (),
    progress: Callable[[int, int], None] = lambda done, count: None,
) -> str:
    """Run `scene` once a point and put the readings into CSV.

    Parameters
    ----------
    scene : Scene
        What runs.
    runs : sequence
        Settings records, from `points`.
    vary : Vary
        The setting that is varied.
    at_s : float, optional
        Instant, s; default: the end of the story.
    names : sequence of str
        Readings wanted; default: all. An unknown one is an `InputError` before anything runs.
    progress : callable
        Told ``(done, count)`` after each point.

    Returns
    -------
    str
        Lines that begin with ``#`` state the settings; then a header; then one row a point.
    """
    check_names(scene, names)
    columns = list(names) or [reading.name for reading in scene.readings]
    text = io.StringIO()
    rows = csv.writer(text, lineterminator="\n")
    text.write(f"# Lehrlight {__version__}, scene {scene.id}\n")
    for name, value in dataclasses.asdict(runs[0]).items():
        if name != vary.name:
            text.write(f"# {name} = {_cell(value)}\n")
    rows.writerow([vary.name, "at_s", *columns])
    for done, settings in enumerate(runs, start=1):
        found = solve(scene, settings, at_s)
        value = getattr(settings, vary.name)
        rows.writerow(map(_cell, [value, found.at_s, *(found.readings[c] for c in columns)]))
        progress(done, len(runs))
    return text.getvalue()


def _number_setting(scene: Scene, name: str) -> Setting:
    known = {
        setting.name: setting
        for setting in settings_of(scene.settings)
        if isinstance(setting.default, float)
    }
    if name not in known:
        raise _error(
            f"scene {scene.id} has no number called '{name}'",
            f"write one of {', '.join(known)}",
        )
    return known[name]


def _count(text: str) -> int:
    # int() would take "1_0" and " 3" too.
    if not (text.isascii() and text.isdigit() and len(text) < 9 and 1 <= int(text) <= MOST_POINTS):
        raise _error(f"COUNT '{text}' cannot be used", f"write a whole number 1 to {MOST_POINTS}")
    return int(text)


def _end(setting: Setting, text: str) -> float:
    value = setting.check(text)
    assert isinstance(value, float)
    return value


def _cell(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    return f"{value:.10g}" if isinstance(value, float) else str(value)


def _error(problem: str, remedy: str) -> InputError:
    return InputError(problem, place="--vary", remedy=remedy)
