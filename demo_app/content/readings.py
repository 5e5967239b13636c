"""Runs and scenes in words for people and in JSON for programs."""

import dataclasses
import json
import math
from collections.abc import Iterable, Mapping, Sequence, Set
from dataclasses import dataclass
from typing import Any

from demo_app.base.errors import InputError
from demo_app.scenes.run import state_at
from demo_app.scenes.scene import Reading, Scene
from demo_app.scenes.settings import Setting, settings_of


@dataclass(frozen=True)
class Result:
    """What one run of a scene stated at one instant.

    Parameters
    ----------
    scene : Scene
        The scene that ran.
    settings : object
        Its settings record.
    at_s : float
        Model time, s.
    readings : mapping
        Reading name to number, text, yes-no or None, in the scene's order.
    sentence : str
        What is seen, in plain English.
    """

    scene: Scene
    settings: Any
    at_s: float
    readings: Mapping[str, Any]
    sentence: str


def solve(scene: Scene, settings: Any, at_s: float | None = None) -> Result:
    """Run `scene` and state its readings at `at_s` (default: the end of its story)."""
    return result(scene, settings, state_at(scene, settings, at_s))


def result(scene: Scene, settings: Any, state: Any) -> Result:
    """State the readings of a run at `state`.

    Raises
    ------
    ArithmeticError
        If a reading is not finite: a fault of the scene, which no number may hide.
    """
    readings = {name: _plain(value) for name, value in scene.read(settings, state).items()}
    for name, value in readings.items():
        if isinstance(value, float) and not math.isfinite(value):
            raise ArithmeticError(f"reading {name} of scene {scene.id} is {value}")
    words = scene.say(settings, state).words(scene.texts)
    return Result(scene, settings, float(state.time_s), readings, words)


def only(found: Result, names: Sequence[str]) -> Result:
    """Copy of `found` with the readings called `names` alone (all, if there are no names)."""
    if not names:
        return found
    check_names(found.scene, names)
    return dataclasses.replace(found, readings={name: found.readings[name] for name in names})


def check_names(scene: Scene, names: Iterable[str]) -> None:
    """Raise `InputError` for the first of `names` that no reading of `scene` has."""
    known = [reading.name for reading in scene.readings]
    for name in names:
        if name not in known:
            raise InputError(
                f"scene {scene.id} has no reading called '{name}'",
                place="--reading",
                remedy=f"write one of {', '.join(known)}",
            )


def as_record(found: Result) -> dict[str, Any]:
    """The part of a result that programs read, ready for JSON."""
    return {
        "scene": found.scene.id,
        "settings": dataclasses.asdict(found.settings),
        "at_s": found.at_s,
        "readings": dict(found.readings),
    }


def as_json(record: Any) -> str:
    """Text of `record` in strict JSON: a number that is not finite raises `ValueError`."""
    return json.dumps(record, indent=2, allow_nan=False)


def as_table(found: Result) -> str:
    """Readings as an aligned table with units, and the sentence under it."""
    of = {reading.name: reading for reading in found.scene.readings}
    rows = [
        (of[name].label, in_words(value), of[name].unit, name)
        for name, value in found.readings.items()
    ]
    head = f"{found.scene.title}, {in_words(found.at_s)} s after the start"
    return "\n".join([head, "", *_aligned(rows, right={1}), "", found.sentence])


def scenes_record(scenes: Iterable[Scene]) -> list[dict[str, Any]]:
    """Scenes with settings and readings, ready for JSON."""
    return [
        {
            "id": scene.id,
            "title": scene.title,
            "settings": [_setting_record(setting) for setting in settings_of(scene.settings)],
            "readings": [dataclasses.asdict(reading) for reading in scene.readings],
        }
        for scene in scenes
    ]


def scenes_table(scenes: Iterable[Scene]) -> str:
    """Scenes with settings and readings, for a terminal."""
    return "\n\n".join(_scene_words(scene) for scene in scenes)


def in_words(value: Any) -> str:
    """A reading or a setting's value as people write it, four significant figures.

    Whatever is smaller than a millionth of its unit is nothing, to people.

    Examples
    --------
    >>> [in_words(value) for value in (True, None, 1234.56, 0.051234, 3e-13, "oven")]
    ['yes', 'none', '1235', '0.05123', '0', 'oven']
    """
    if isinstance(value, bool):
        return "yes" if value else "no"
    if value is None:
        return "none"
    if not isinstance(value, float | int):
        return str(value)
    if abs(value) < 1e-6:
        return "0"
    if abs(value) >= 1e6:
        return f"{value:.3e}"
    decimals = max(0, 3 - math.floor(math.log10(abs(value))))
    text = f"{value:.{decimals}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def _plain(value: Any) -> Any:
    """NumPy's scalars as Python's own."""
    return value.item() if hasattr(value, "item") else value


def _allowed(setting: Setting) -> str:
    if isinstance(setting.default, bool):
        return "yes or no"
    if isinstance(setting.default, str):
        known = ", ".join(setting.choices)
        return f"up to {setting.most} of {known}; commas between" if setting.most else known
    return f"{in_words(setting.low)} to {in_words(setting.high)} {setting.unit}".rstrip()


def _setting_record(setting: Setting) -> dict[str, Any]:
    shared = {"name": setting.name, "label": setting.label, "unit": setting.unit}
    tail = {"default": setting.default, "help": setting.help}
    if isinstance(setting.default, bool):
        return {**shared, "kind": "yes-no", **tail}
    if isinstance(setting.default, str):
        taken = {"kind": "choices", "most": setting.most} if setting.most else {"kind": "choice"}
        return {**shared, **taken, "choices": list(setting.choices), **tail}
    ends = {"low": setting.low, "high": setting.high, "step": setting.step}
    return {**shared, "kind": "number", **ends, **tail}


def _scene_words(scene: Scene) -> str:
    settings = [
        (f"  {one.name}", in_words(one.default), _allowed(one), one.help)
        for one in settings_of(scene.settings)
    ]
    readings = [(f"  {one.name}", one.unit, _reading_words(one)) for one in scene.readings]
    return "\n".join(
        [
            f"{scene.id}: {scene.title}",
            " settings (default, allowed)",
            *_aligned(settings),
            " readings",
            *_aligned(readings),
        ]
    )


def _reading_words(reading: Reading) -> str:
    return f"{reading.label}. {reading.help}" if reading.help else reading.label


def _aligned(rows: Sequence[tuple[str, ...]], right: Set[int] = frozenset()) -> list[str]:
    widths = [max(len(cell) for cell in column) for column in zip(*rows, strict=True)]
    return [
        "  ".join(
            cell.rjust(width) if column in right else cell.ljust(width)
            for column, (cell, width) in enumerate(zip(row, widths, strict=True))
        ).rstrip()
        for row in rows
    ]
