"""Readings of a scene beside those of a real piece: one run gives all of them."""

from collections.abc import Mapping, Sequence
from typing import Any

from demo_app.base.errors import InputError
from demo_app.content.fitting.fit import Predict
from demo_app.content.fitting.records import Observed, Unknown
from demo_app.content.readings import check_names
from demo_app.scenes.run import states
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import make, settings_of


def unknown_of(scene: Scene, name: str, values: Mapping[str, Any]) -> Unknown:
    """The number `name` of `scene`, looked for over all of its range.

    Raises
    ------
    InputError
        If the scene has no such number, or it is also set.
    """
    known = {s.name: s for s in settings_of(scene.settings) if isinstance(s.default, float)}
    if name not in known:
        raise InputError(
            f"scene {scene.id} has no number called '{name}'",
            place="unknown",
            remedy=f"write one of {', '.join(known)}",
        )
    if name in values:
        raise InputError(f"{name} is also set", place="unknown", remedy="leave it open")
    return Unknown(name, known[name].low, known[name].high)


def predict_of(
    scene: Scene, values: Mapping[str, Any], unknown: str, observed: Sequence[Observed]
) -> Predict:
    """Model for `demo_app.content.fitting.fit.fits`.

    A reading at an instant is interpolated between the two states around it: a step of the model
    is no error of the piece.

    Raises
    ------
    InputError
        For readings that the scene does not have.
    """
    check_names(scene, [one.reading for one in observed])

    def predict(value: float) -> list[float | None]:
        settings: Any = make(scene.settings, {**values, unknown: value})
        end = scene.seconds(settings)
        due = sorted({end if one.at_s is None else one.at_s for one in observed})
        found = dict(zip(due, _readings(scene, settings, due), strict=True))
        return [
            _number(found[end if one.at_s is None else one.at_s], one.reading) for one in observed
        ]

    return predict


def _readings(scene: Scene, settings: Any, due: Sequence[float]) -> list[dict[str, Any]]:
    """Readings at the rising instants `due`, s."""
    found: list[dict[str, Any]] = []
    before: Any = None
    for state in states(scene, settings):
        while len(found) < len(due) and state.time_s >= due[len(found)] - 1e-9:
            found.append(_between(scene, settings, before, state, due[len(found)]))
        if len(found) == len(due):
            break
        before = state
    return found


def _between(scene: Scene, settings: Any, before: Any, after: Any, at_s: float) -> dict[str, Any]:
    later = scene.read(settings, after)
    if before is None or after.time_s - at_s < 1e-9:
        return later
    share = (at_s - before.time_s) / (after.time_s - before.time_s)
    earlier = scene.read(settings, before)
    return {name: _mix(earlier[name], value, share) for name, value in later.items()}


def _mix(first: Any, last: Any, share: float) -> Any:
    numbers = [isinstance(one, float | int) and not isinstance(one, bool) for one in (first, last)]
    return first + share * (last - first) if all(numbers) else last


def _number(readings: Mapping[str, Any], name: str) -> float | None:
    value = readings[name]
    value = value.item() if hasattr(value, "item") else value
    if isinstance(value, bool | str):
        raise ArithmeticError(f"reading {name} is no number")
    return None if value is None else float(value)
