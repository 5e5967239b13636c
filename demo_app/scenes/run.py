"""Running a scene from its start to an instant."""

from collections.abc import Iterator
from typing import Any

from demo_app.scenes.scene import Scene


def states(scene: Scene, settings: Any) -> Iterator[Any]:
    """Every state of a run, the start first, without end."""
    state = scene.start(settings)
    while True:
        yield state
        state = scene.advance(settings, state)


def state_at(scene: Scene, settings: Any, seconds: float | None = None) -> Any:
    """First state at or after `seconds` (default: the end of the scene's story)."""
    end = scene.seconds(settings) if seconds is None else seconds
    for state in states(scene, settings):
        if state.time_s >= end - 1e-9:
            return state
    raise AssertionError("states() has no end")
