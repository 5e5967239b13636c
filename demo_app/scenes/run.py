"""Running a scene from its start to an instant."""

from collections.abc import Iterator
from typing import Any

import numpy as np

from demo_app.optics.picture import peak_nm
from demo_app.scenes.scene import Scene

INSTANTS = 24


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


def liveliest(scene: Scene, settings: Any, instants: int = INSTANTS) -> Any:
    """State with the most retardation of `instants` spread evenly over the story.

    The end itself is often dark: the piece has cooled or has let its stress go.
    """
    end = scene.seconds(settings)
    due = iter(np.linspace(0, end, instants))
    wanted = next(due)
    best, most = None, -1.0
    for state in states(scene, settings):
        if state.time_s < wanted - 1e-9:
            continue
        peak = peak_nm(scene.view(settings, state).stage)
        if peak > most:
            best, most = state, peak
        while wanted is not None and state.time_s >= wanted - 1e-9:
            wanted = next(due, None)
        if wanted is None:
            break
    return best
