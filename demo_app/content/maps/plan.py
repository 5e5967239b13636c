"""What a map asks for: a scene, two settings that vary, the others, and the readings."""

import dataclasses
import hashlib
import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from demo_app import __version__
from demo_app.base.errors import InputError
from demo_app.content.readings import check_names
from demo_app.content.sweep import Vary, parse_vary
from demo_app.physics.material_files import material, material_names
from demo_app.scenes.catalogue import scene
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import settings_of

MOST_POINTS = 100_000


@dataclass(frozen=True)
class MapPlan:
    """All that decides a map's numbers; `plan_map` makes one that is checked.

    Parameters
    ----------
    scene : str
        Id of the scene.
    across, up : Vary
        Settings along the two axes, and their values.
    values : tuple of (str, value)
        The scene's other settings, all of them, in its order.
    readings : tuple of str
        What is read.
    at_s : float or None
        Instant, s; None: the end of each story.
    """

    scene: str
    across: Vary
    up: Vary
    values: tuple[tuple[str, Any], ...]
    readings: tuple[str, ...]
    at_s: float | None = None

    @property
    def shape(self) -> tuple[int, int]:
        """Numbers of values ``(up, across)``."""
        return len(self.up.values), len(self.across.values)

    @property
    def count(self) -> int:
        """Number of points."""
        return len(self.up.values) * len(self.across.values)

    def point(self, index: int) -> dict[str, Any]:
        """All settings of point `index`; `across` runs fastest."""
        row, column = divmod(index, len(self.across.values))
        varied = {
            self.across.name: self.across.values[column],
            self.up.name: self.up.values[row],
        }
        return {**dict(self.values), **varied}

    def fingerprint(self) -> str:
        """Short text that differs for any other plan, version of the app, or glass of a name."""
        glasses = [repr(material(v)) for _, v in self.values if v in material_names()]
        record = json.dumps([__version__, dataclasses.asdict(self), glasses], sort_keys=True)
        return hashlib.sha256(record.encode()).hexdigest()[:16]


def plan_map(
    chosen: Scene,
    vary: Sequence[str | Vary],
    readings: Sequence[str],
    values: Mapping[str, Any],
    at_s: float | None = None,
) -> MapPlan:
    """Plan of a map of `chosen`, checked.

    Parameters
    ----------
    chosen : Scene
        What runs.
    vary : sequence of str or Vary
        Two, each ``NAME=FROM:TO:COUNT`` or a `Vary`: across, and up.
    readings : sequence of str
        At least one.
    values : mapping
        Other settings than their defaults.
    at_s : float, optional
        Instant, s.

    Raises
    ------
    InputError
        For what cannot be used. That two settings contradict each other at some points is no
        mistake: those points say so.
    """
    if len(vary) != 2:
        raise _error("--vary", f"{len(vary)} settings vary", "a map varies two: give it twice")
    across, up = (parse_vary(chosen, one) if isinstance(one, str) else one for one in vary)
    if across.name == up.name:
        raise _error("--vary", f"{up.name} is given twice", "vary two settings")
    for one in (across, up):
        if one.name in values:
            raise _error("--vary", f"{one.name} is also set by --set", "give it once")
        if len(set(one.values)) < 2:
            raise _error("--vary", f"{one.name} does not vary", "write two values at least")
    count = len(across.values) * len(up.values)
    if count > MOST_POINTS:
        raise _error(
            "--vary", f"{count} points are too many", f"write at most {MOST_POINTS} in all"
        )
    if not readings:
        raise _error("--reading", "none is named", "name what is to be read")
    check_names(chosen, readings)
    return MapPlan(
        chosen.id, across, up, _rest(chosen, values, {across.name, up.name}), tuple(readings), at_s
    )


def scene_of(plan: MapPlan) -> Scene:
    """The scene of a plan."""
    return scene(plan.scene)


def _rest(
    chosen: Scene, values: Mapping[str, Any], varied: set[str]
) -> tuple[tuple[str, Any], ...]:
    """All settings that stay, each checked by itself: points may still contradict each other."""
    known = {one.name: one for one in settings_of(chosen.settings)}
    for name in values:
        if name not in known:
            raise _error(name, f"no setting is called '{name}'", f"write one of {', '.join(known)}")
    return tuple(
        (name, one.check(values.get(name, one.default)))
        for name, one in known.items()
        if name not in varied
    )


def _error(place: str, problem: str, remedy: str) -> InputError:
    return InputError(problem, place=place, remedy=remedy)
