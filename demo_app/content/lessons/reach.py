"""Everything that a lesson can bring up: each scene, each range of settings, each thing to do."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from demo_app.content.lessons.hazards import shown_by
from demo_app.content.lessons.records import Bound, Lesson, Step

NONE: tuple[Bound, ...] = ()


@dataclass(frozen=True)
class Reach:
    """One thing that can be reached.

    Parameters
    ----------
    step : str
        Id of the step, or of the worksheet's item; "kit" for the kit.
    kind : str
        "opens", "reveals" (the run that answers a prediction), "drives" (pupils, within `bounds`),
        "solution" (of a challenge), "computes" (an item's number), "hands-on" (no scene), "kit".
    scene : str
        "" where there is none.
    settings : mapping
        Settings that differ from the scene's defaults.
    bounds : tuple of Bound
        Settings that may be changed from there; all others stay.
    hazards : tuple of str
        What may be met.
    """

    step: str
    kind: str
    scene: str
    settings: Mapping[str, Any]
    bounds: tuple[Bound, ...]
    hazards: tuple[str, ...]


def reachable(lesson: Lesson) -> tuple[Reach, ...]:
    """All that `lesson` can bring up, in its order; nothing else may be brought up."""
    return tuple(_reachable(lesson))


def hazards_of(step: Step) -> tuple[str, ...]:
    """All hazards of a step: of its hands-on part, and of what its scene can show."""
    return (*step.hazards, *_shown(step.scene, step.settings, step.bounds))


def _shown(
    scene: str, settings: Mapping[str, Any], bounds: tuple[Bound, ...] = NONE
) -> tuple[str, ...]:
    if not scene:
        return ()
    words = [word for bound in bounds for word in bound.choices]
    return tuple(sorted(shown_by(scene, settings, words)))


def _reachable(lesson: Lesson) -> Iterator[Reach]:
    for item in lesson.kit:
        yield Reach("kit", "kit", "", {}, NONE, item.hazards)
    for step in lesson.steps:
        yield from _of_step(step)
    for one in lesson.items:
        shown = _shown(one.scene, one.settings)
        for name, values in one.vary.items():
            for value in values:
                settings = {**one.settings, name: value}
                yield Reach(one.id, "computes", one.scene, settings, NONE, shown)
        others = [wrong.settings for wrong in one.wrong]
        others += [one.given.settings] if one.given else []
        for other in others:
            if other:
                settings = {**one.settings, **other}
                yield Reach(one.id, "computes", one.scene, settings, NONE, shown)


def _of_step(step: Step) -> Iterator[Reach]:
    if not step.scene:
        yield Reach(step.id, "hands-on", "", {}, NONE, step.hazards)
        return
    all_of_it = hazards_of(step)
    yield Reach(step.id, "opens", step.scene, step.settings, NONE, all_of_it)
    if step.question is not None:
        settings = {**step.settings, **step.question.settings}
        shown = (*step.hazards, *_shown(step.scene, settings))
        yield Reach(step.id, "reveals", step.scene, settings, NONE, shown)
    if step.bounds:
        yield Reach(step.id, "drives", step.scene, step.settings, step.bounds, all_of_it)
    if step.challenge is not None:
        settings = {**step.settings, **step.challenge.solution}
        yield Reach(step.id, "solution", step.scene, settings, NONE, all_of_it)
