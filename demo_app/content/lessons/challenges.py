"""Whether settings that pupils chose reach what a challenge asks; the model decides."""

import functools
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from demo_app.base.errors import InputError
from demo_app.content.lessons.records import Challenge, Goal, Step
from demo_app.content.readings import result
from demo_app.optics.retardation import Stage
from demo_app.scenes.catalogue import scene as scene_called
from demo_app.scenes.run import state_at
from demo_app.scenes.settings import make

SPOTS = "spots_nm"
"""Name of a goal about what is seen: the largest retardation in the middle half of the first piece
in the picture, nm, away from its edges, which always light up."""


@dataclass(frozen=True)
class Outcome:
    """How settings fare against a challenge.

    Parameters
    ----------
    met : tuple of bool
        For each goal.
    values : tuple of float, str, bool or None
        What each goal is about, by the model.
    score : float or None
        What groups are ranked by; None without a ranking.
    settings : mapping
        Those that were tried.
    """

    met: tuple[bool, ...]
    values: tuple[Any, ...]
    score: float | None
    settings: Mapping[str, Any]

    @property
    def reached(self) -> bool:
        """Whether all goals are met."""
        return all(self.met)


def tried(step: Step, chosen: Mapping[str, Any]) -> Outcome:
    """Run the scene of a challenge with what pupils chose, within its bounds alone.

    Parameters
    ----------
    step : Step
        With a challenge.
    chosen : mapping
        Settings by name; those of the step stand under them.

    Raises
    ------
    InputError
        If a setting is not theirs to change, or beyond its bounds.
    """
    assert step.challenge is not None
    within = {one.name: one for one in step.bounds}
    for name, value in chosen.items():
        if name not in within:
            raise InputError(
                "is not for pupils to change",
                place=name,
                remedy=f"change one of {', '.join(within)}",
            )
        if not within[name].holds(value):
            raise InputError(f"{value} is out of bounds", place=name, remedy="stay within them")
    settings = {**step.settings, **chosen}
    found = _run(step.scene, tuple(sorted(settings.items())))
    values = tuple(_value(goal, found) for goal in step.challenge.goals)
    met = tuple(_met(goal, value) for goal, value in zip(step.challenge.goals, values, strict=True))
    return Outcome(met, values, _score(step.challenge, found), settings)


@functools.lru_cache(maxsize=64)
def _run(scene_id: str, settings: tuple[tuple[str, Any], ...]) -> Mapping[str, Any]:
    """Settings, readings and what the picture shows at the end of the story, by name."""
    scene = scene_called(scene_id)
    record: Any = make(scene.settings, dict(settings))
    state = state_at(scene, record)
    found = result(scene, record, state)
    asked = {name: getattr(record, name) for name in record.__dataclass_fields__}
    return {**asked, **found.readings, SPOTS: spots_nm(scene.view(record, state).stage)}


def spots_nm(stage: Stage) -> float:
    """What `SPOTS` names, nm; 0 if nothing is there."""
    if not stage.pieces:
        return 0.0
    seen = stage.pieces[0].map
    across = np.abs(seen.across) <= 0.5
    low, high = np.quantile(seen.along_mm, (0.25, 0.75))
    along = (seen.along_mm >= low) & (seen.along_mm <= high)
    inner = seen.retardation_nm()[across][:, along]
    return float(inner.max()) if inner.size else 0.0


def _value(goal: Goal, found: Mapping[str, Any]) -> Any:
    values = [found[name] for name in goal.names]
    if len(values) == 1:
        return values[0]
    return None if any(one is None for one in values) else float(sum(values))


def _met(goal: Goal, value: Any) -> bool:
    if value is None:
        return False
    if goal.equals is not None:
        return bool(value == goal.equals)
    low = -float("inf") if goal.low is None else goal.low
    high = float("inf") if goal.high is None else goal.high
    return low <= float(value) < high


def _score(challenge: Challenge, found: Mapping[str, Any]) -> float | None:
    name = challenge.most or challenge.least
    value = found[name] if name else None
    return None if value is None else float(value)
