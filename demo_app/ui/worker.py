"""The one worker: takes the latest request, steps the model, colours the picture."""

import time
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QMutex, QObject, QThread, QWaitCondition, Signal

from demo_app.optics.retardation import Stage, blend
from demo_app.scenes.scene import Mark, Message, Scene, Section, View
from demo_app.optics.instrument import Instrument
from demo_app.optics.picture import colour
from demo_app.ui.timeline import TIME_EPS_S, Plan, Traced, in_force

Pixels = NDArray[np.uint8]


@dataclass(frozen=True)
class Held:
    """A picture kept beside the next run.

    Parameters
    ----------
    stage : Stage
    marks : tuple of Mark
    instrument : Instrument
    settings : object
        Settings that were in force.
    time_s : float
        Model time, s.
    """

    stage: Stage
    marks: tuple[Mark, ...]
    instrument: Instrument
    settings: Any
    time_s: float


@dataclass(frozen=True)
class Request:
    """All that the worker needs, frozen.

    Parameters
    ----------
    number : int
        Counts requests; answers carry it.
    scene : Scene
    plan : tuple of (int, object)
        Settings by the step from which they hold.
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


@dataclass(frozen=True)
class Frame:
    """The answer to one request.

    Parameters
    ----------
    number : int
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
    readings : dict
    message : Message
    instrument : Instrument
    pixels : numpy.ndarray
        shape (height, width, 4), uint8 blue, green, red, 255; first row on top.
    held_pixels : numpy.ndarray or None
        The held picture, where one was asked for.
    """

    number: int
    time_s: float
    reached: bool
    last: tuple[Any, ...]
    made: tuple[Any, ...]
    traced: tuple[Traced, ...]
    settings: Any
    stage: Stage
    section: Section | None
    marks: tuple[Mark, ...]
    readings: dict[str, Any]
    message: Message
    instrument: Instrument
    pixels: Pixels
    held_pixels: Pixels | None


class Worker(QThread):
    """One thread with one slot: a new request replaces one that still waits.

    Attributes
    ----------
    done : Signal(Frame)
    failed : Signal(int, Exception)
        Number of the request that could not be answered, and why.
    """

    done = Signal(object)
    failed = Signal(int, object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._mutex = QMutex()
        self._wake = QWaitCondition()
        self._waiting: Request | None = None
        self._ending = False
        self._spare: list[Pixels] = []
        self._views: tuple[tuple[Any, Any, View], ...] = ()

    def post(self, request: Request) -> None:
        """Ask; what was asked before and has not begun is forgotten."""
        self._mutex.lock()
        self._waiting = request
        self._wake.wakeOne()
        self._mutex.unlock()

    def give_back(self, pixels: Pixels) -> None:
        """Hand a picture's memory back once nobody shows it any more."""
        self._mutex.lock()
        if len(self._spare) < 3:
            self._spare.append(pixels)
        self._mutex.unlock()

    def end(self) -> None:
        """Stop after the request in hand and wait for the thread."""
        self._mutex.lock()
        self._ending = True
        self._waiting = None
        self._wake.wakeOne()
        self._mutex.unlock()
        self.wait()

    def run(self) -> None:
        """Thread's body; Qt calls it."""
        while (request := self._next()) is not None:
            try:
                frame = self._answer(request)
            except Exception as error:  # one bad run must not end the show
                self._views = ()
                self.failed.emit(request.number, error)
            else:
                self.done.emit(frame)
            del request

    def _next(self) -> Request | None:
        self._mutex.lock()
        while self._waiting is None and not self._ending:
            self._wake.wait(self._mutex)
        request, self._waiting = self._waiting, None
        self._mutex.unlock()
        return request

    def _answer(self, request: Request) -> Frame:
        scene, plan = request.scene, request.plan
        walked = walk(request)
        before, after = walked.before, walked.after
        settings = in_force(plan, before.step)
        view = self._view(scene, settings, before)
        stage, shown_s = view.stage, before.time_s
        if after is not None and request.time_s > before.time_s + TIME_EPS_S and walked.reached:
            gap = after.time_s - before.time_s
            if request.span_s < 0.5 * gap:
                shown_s = request.time_s
                following = self._view(scene, in_force(plan, after.step), after)
                stage = blend(stage, following.stage, (shown_s - before.time_s) / gap)
        pixels = self._draw(stage, request.instrument, request.size)
        held = request.held
        return Frame(
            number=request.number,
            time_s=shown_s,
            reached=walked.reached,
            last=(before,) if after is None else (before, after),
            made=walked.made,
            traced=walked.traced,
            settings=settings,
            stage=stage,
            section=view.section,
            marks=view.marks,
            readings=scene.read(settings, before),
            message=scene.say(settings, before),
            instrument=request.instrument,
            pixels=pixels,
            held_pixels=None
            if held is None
            else self._draw(held.stage, held.instrument, request.size),
        )

    def _view(self, scene: Scene, settings: Any, state: Any) -> View:
        """View of a state; the last two are remembered, as slow play shows them often."""
        for known_settings, known, view in self._views:
            if known is state and known_settings is settings:
                return view
        made = scene.view(settings, state)
        self._views = (*self._views[-1:], (settings, state, made))
        return made

    def _draw(self, stage: Stage, instrument: Instrument, size: tuple[int, int]) -> Pixels:
        width, height = size
        out = None
        self._mutex.lock()
        while self._spare and out is None:
            spare = self._spare.pop()
            out = spare if spare.shape == (height, width, 4) else None
        self._mutex.unlock()
        return colour(stage, instrument, width, height, out)


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
            traced.append((state.step, state.time_s, scene.trace(in_force(plan, state.step), state)))
            known += 1

    ready = request.ready
    if not ready:
        ready = (scene.start(plan[0][1]),)
    note(ready[0])
    before, after = ready[0], ready[1] if len(ready) > 1 else None
    while True:
        if after is None:
            after = scene.advance(in_force(plan, before.step), before)
            note(after)
        if after.time_s > limit:
            return Walked(before, after, True, tuple(made), tuple(traced))
        before, after = after, None
        if time.perf_counter() - began > request.budget_s:
            return Walked(before, None, False, tuple(made), tuple(traced))
