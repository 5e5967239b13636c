"""What the session asks of the worker, what it answers, and the walk between: frozen records."""

import time
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.instrument import Instrument
from demo_app.optics.retardation import Stage
from demo_app.scenes.scene import Chart, Mark, Message, Outline, Scene, Section
from demo_app.ui.timeline import TIME_EPS_S, Plan, Traced, in_force, touches

Pixels = NDArray[np.uint8]


@dataclass(frozen=True)
class Held:
    """A picture kept beside the next run.

    Parameters
    ----------
    stage : Stage
    marks : tuple of Mark
    outlines : tuple of Outline
    instrument : Instrument
    settings : object
        Settings that were in force.
    time_s : float
        Model time, s.
    plan : tuple of Entry
        What was done in its run, so that the picture can be made again.
    """

    stage: Stage
    marks: tuple[Mark, ...]
    outlines: tuple[Outline, ...]
    instrument: Instrument
    settings: Any
    time_s: float
    plan: Plan = ()


@dataclass(frozen=True)
class Request:
    """All that the worker needs, frozen.

    Parameters
    ----------
    number : int
        Counts requests; answers carry it.
    scene : Scene
    plan : tuple of Entry
        What was done, by step: settings, and where a finger went.
    ready : tuple of states
        Neighbouring states to go on from; empty: start the run.
    time_s : float
        Wanted model time, s.
    span_s : float
        Model time between two pictures, s: where it is over half a step the picture is that of
        a whole step, else it is blended between two steps.
    budget_s : float
        Wall time that stepping may take, s.
    traced : int
        Steps whose traces are known.
    every : int
        States to hand back: those whose step is a multiple of it.
    instrument : Instrument
    size : tuple of int
        Picture's width and height, pixels.
    held : Held or None
        A picture to draw again beside the live one, at `size`.
    calm : bool
        Whether bright stripes and sudden changes are to be softened: `demo_app.optics.calm`.
    """

    number: int
    scene: Scene
    plan: Plan
    ready: tuple[Any, ...]
    time_s: float
    span_s: float
    budget_s: float
    traced: int
    every: int
    instrument: Instrument
    size: tuple[int, int]
    held: Held | None = None
    calm: bool = False


@dataclass(frozen=True)
class Frame:
    """The answer to one request.

    Parameters
    ----------
    number : int
    plan : tuple of Entry
        As in the request: the very same object.
    time_s : float
        Model time shown, s.
    reached : bool
        False if the budget ran out before the wanted time.
    last : tuple of states
        The state at or before `time_s` and, where known, the next one.
    made : tuple of states
    traced : tuple of (step, time_s, values)
    settings : object
        Settings in force.
    stage : Stage
    section : Section or None
    marks : tuple of Mark
    outlines : tuple of Outline
    chart : Chart or None
        In place of the traces over time.
    readings : dict
    message : Message
    instrument : Instrument
    pixels : numpy.ndarray
        shape (height, width, 4), uint8 blue, green, red, 255; first row on top.
    held_pixels : numpy.ndarray or None
        The held picture, where one was asked for.
    dimmed : float
        Factor on linear light by which calm mode keeps stripes below the limits; 1 for none.
    calming : bool
        Whether calm mode still moves the picture towards the model's: ask again.
    """

    number: int
    plan: Plan
    time_s: float
    reached: bool
    last: tuple[Any, ...]
    made: tuple[Any, ...]
    traced: tuple[Traced, ...]
    settings: Any
    stage: Stage
    section: Section | None
    marks: tuple[Mark, ...]
    outlines: tuple[Outline, ...]
    chart: Chart | None
    readings: dict[str, Any]
    message: Message
    instrument: Instrument
    pixels: Pixels
    held_pixels: Pixels | None
    dimmed: float = 1.0
    calming: bool = False


@dataclass(frozen=True)
class Walked:
    """Where stepping came to: see `Frame`."""

    before: Any
    after: Any
    reached: bool
    made: tuple[Any, ...]
    traced: tuple[Traced, ...]


def walk(request: Request) -> Walked:
    """Step on until the wanted time lies between two states, or the budget is spent.

    Returns
    -------
    Walked
        ``before`` is the last state at or before the wanted time; ``after`` the next one, or
        None where the budget ended first.
    """
    scene, plan = request.scene, request.plan
    began = time.perf_counter()
    made: list[Any] = []
    traced: list[Traced] = []
    known = request.traced
    limit = request.time_s + TIME_EPS_S

    def note(state: Any) -> None:
        nonlocal known
        if state.step % request.every == 0:
            made.append(state)
        if state.step == known:
            traced.append(
                (state.step, state.time_s, scene.trace(in_force(plan, state.step), state))
            )
            known += 1

    ready = request.ready
    if not ready:
        ready = (touched(scene, plan, scene.start(plan[0].settings)),)
    note(ready[0])
    before, after = ready[0], ready[1] if len(ready) > 1 else None
    while True:
        if after is None:
            after = scene.advance(in_force(plan, before.step), before)
            after = touched(scene, plan, after)
            note(after)
        if after.time_s > limit:
            return Walked(before, after, True, tuple(made), tuple(traced))
        before, after = after, None
        if time.perf_counter() - began > request.budget_s:
            return Walked(before, None, False, tuple(made), tuple(traced))


def touched(scene: Scene, plan: Plan, state: Any) -> Any:
    """The state after what a finger did at its step."""
    if scene.point is not None:
        for settings, place in touches(plan, state.step):
            state = scene.point(settings, state, place)
    return state
