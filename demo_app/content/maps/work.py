"""The part of a map that runs in a worker: a few points at a time, readings alone."""

import os
import signal
import threading
from dataclasses import dataclass
from typing import Any

from demo_app.base.process import one_thread_for_matrices


@dataclass(frozen=True)
class Cell:
    """One point of a map.

    Parameters
    ----------
    index : int
        Which.
    at_s : float or None
        Instant of the readings, s; None if refused.
    values : tuple
        The plan's readings; empty if refused.
    refused : str
        Why these settings cannot be, or "".
    """

    index: int
    at_s: float | None
    values: tuple[Any, ...]
    refused: str = ""


def cells(plan: Any, indices: tuple[int, ...]) -> tuple[Cell, ...]:
    """Run the points `indices` of a `MapPlan`: no picture, and so no run of the Plan."""
    # Imported here: what a worker is sent must load before its libraries do.
    from demo_app.content.maps.plan import scene_of

    scene = scene_of(plan)
    return tuple(_cell(scene, plan, index) for index in indices)


def _cell(scene: Any, plan: Any, index: int) -> Cell:
    from demo_app.base.errors import InputError
    from demo_app.content.readings import solve
    from demo_app.scenes.settings import make

    try:
        # An InputError does not survive the way between processes: its words do.
        settings: Any = make(scene.settings, plan.point(index))
        found = solve(scene, settings, plan.at_s)
    except InputError as error:
        return Cell(index, None, (), str(error))
    return Cell(index, found.at_s, tuple(found.readings[name] for name in plan.readings))


def settle() -> None:
    """Make a worker process ready: one thread, deaf to Ctrl-C, and gone when its parent is.

    A worker waits for work on a pipe whose other end it holds itself, so that it would wait for
    ever after its parent was killed.
    """
    one_thread_for_matrices()
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    threading.Thread(target=_follow_parent, name="parent", daemon=True).start()


def _follow_parent() -> None:
    from multiprocessing import parent_process

    parent = parent_process()
    if parent is not None:
        parent.join()
        os._exit(1)
