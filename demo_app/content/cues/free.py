"""A show without a sheet: every scene is a step, and nothing has a time."""

from collections.abc import Callable, Iterable

from demo_app.content.cues.records import Sheet, Step
from demo_app.scenes.scene import Scene


def english(scene: Scene) -> str:
    """A scene's own title."""
    return scene.title


def free_sheet(
    scenes: Iterable[Scene], title: str = "", named: Callable[[Scene], str] = english
) -> Sheet:
    """A sheet with one step a scene, in the order of their titles, which `named` tells.

    It has no minutes, so no clock runs down and nothing is ever cut.
    """
    ordered = sorted(scenes, key=named)
    steps = tuple(
        Step(id=scene.id, title=named(scene), scene=scene.id, seconds=0) for scene in ordered
    )
    return Sheet(title=title, venue="", minutes=0.0, steps=steps)
