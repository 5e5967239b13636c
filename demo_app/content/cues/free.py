"""A show without a sheet: every scene is a step, and nothing has a time."""

from collections.abc import Iterable

from demo_app.content.cues.records import Sheet, Step
from demo_app.scenes.scene import Scene


def free_sheet(scenes: Iterable[Scene], title: str = "") -> Sheet:
    """A sheet with one step a scene, in the order of their titles.

    It has no minutes, so no clock runs down and nothing is ever cut.
    """
    ordered = sorted(scenes, key=lambda scene: scene.title)
    steps = tuple(
        Step(id=scene.id, title=scene.title, scene=scene.id, seconds=0) for scene in ordered
    )
    return Sheet(title=title, venue="", minutes=0.0, steps=steps)
