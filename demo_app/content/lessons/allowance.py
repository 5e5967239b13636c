"""What may be shown at one place of a lesson, and nothing else: its scene, settings, bounds."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from demo_app.base.errors import InputError
from demo_app.content.lessons.as_sheet import Taught
from demo_app.content.lessons.hazards import PROFILES
from demo_app.content.lessons.reach import reachable
from demo_app.content.lessons.records import Bound
from demo_app.content.running.clock import wanted
from demo_app.content.running.records import DRIVE, Running
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import Setting, make, settings_of

ARRANGES_LIGHT: Mapping[str, tuple[str, ...]] = {
    "light-table": ("turn_deg", "tint_plate", "lamp"),
}
"""Settings that turn the instrument's parts alone: a teacher may, as on every other stage."""


@dataclass(frozen=True)
class Allowance:
    """What may be shown.

    Parameters
    ----------
    scene : str
        Id of the only scene; "" for none.
    settings : mapping
        Other than its defaults; all settings stay as they are here.
    bounds : tuple of Bound
        Those that may be changed, and how far.
    free : tuple of str
        Settings that may be anything.
    """

    scene: str
    settings: Mapping[str, Any]
    bounds: tuple[Bound, ...] = ()
    free: tuple[str, ...] = ()

    def record(self, scene: Scene) -> Any:
        """Settings record that it begins with."""
        return make(scene.settings, dict(self.settings))

    def refused(self, scene: Scene, settings: Any) -> Setting | None:
        """The first setting that may not be as it is in a record; None if all may.

        Raises
        ------
        InputError
            If the scene itself may not be shown.
        """
        if scene.id != self.scene:
            raise InputError(
                f"the scene '{scene.id}' is not part of this lesson here",
                place="lesson",
                remedy="go on with the lesson",
            )
        first, within = self.record(scene), {one.name: one for one in self.bounds}
        for spec in settings_of(scene.settings):
            value = getattr(settings, spec.name)
            if spec.name in within:
                if not within[spec.name].holds(value):
                    return spec
            elif spec.name not in self.free and value != getattr(first, spec.name):
                return spec
        return None


def allowance(taught: Taught, running: Running) -> Allowance:
    """What may be shown at the place where a lesson is."""
    asked = wanted(running, taught.sheet)
    if running.phase == DRIVE:
        step = taught.step(running)
        return Allowance(asked.scene, asked.settings, step.bounds if step else ())
    return Allowance(asked.scene, asked.settings, free=ARRANGES_LIGHT.get(asked.scene, ()))


def admitted(taught: Taught) -> Taught:
    """The lesson itself, if nothing that it shows is shut out by its profile.

    The loader has told a teacher's mistakes; this is for whatever came here another way.

    Raises
    ------
    InputError
        If a scene, step or thing of the kit has a hazard that the lesson or profile does not list.
    """
    lesson = taught.lesson
    allowed = set(PROFILES.get(lesson.profile, ())) & set(lesson.allows)
    titles = {step.id: step.title for step in lesson.steps}
    for one in reachable(lesson):
        for name in sorted(set(one.hazards) - allowed):
            raise InputError(
                f"'{name}' is not allowed in this lesson",
                place=titles.get(one.step, one.step),
                remedy="choose another lesson, or mend this one: 'lehrlight check' says where",
            )
    return taught
