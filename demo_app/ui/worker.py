"""The one worker: takes the latest request, steps the model, colours the picture."""

import itertools
import time
from typing import Any

from PySide6.QtCore import QMutex, QObject, QThread, QWaitCondition, Signal

from demo_app.optics import calm
from demo_app.optics.instrument import Instrument
from demo_app.optics.picture import colour
from demo_app.optics.retardation import Stage, blend
from demo_app.scenes.scene import Scene, View
from demo_app.ui.request import Frame, Held, Pixels, Request, walk
from demo_app.ui.timeline import TIME_EPS_S, in_force


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
        self._numbers = itertools.count(1)
        self._waiting: Request | None = None
        self._ending = False
        self._spare: list[Pixels] = []
        self._views: tuple[tuple[Any, Any, View], ...] = ()
        self._calm: tuple[Scene, calm.Calm] | None = None

    def next_number(self) -> int:
        """A number for a request, larger than all before."""
        return next(self._numbers)

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
        instrument = scene.light(settings, request.instrument)
        pixels = self._draw(stage, instrument, request.size)
        pixels, dimmed, calming = self._calmed(request, pixels)
        held = request.held
        return Frame(
            number=request.number,
            plan=plan,
            time_s=shown_s,
            reached=walked.reached,
            last=(before,) if after is None else (before, after),
            made=walked.made,
            traced=walked.traced,
            settings=settings,
            stage=stage,
            section=view.section,
            marks=view.marks,
            outlines=view.outlines,
            chart=view.chart,
            readings=scene.read(settings, before),
            message=scene.say(settings, before),
            instrument=instrument,
            pixels=pixels,
            held_pixels=None if held is None else self._draw_held(held, request),
            dimmed=dimmed,
            calming=calming,
        )

    def _calmed(self, request: Request, pixels: Pixels) -> tuple[Pixels, float, bool]:
        """The picture as calm mode shows it, how far it is dimmed, and whether it still moves."""
        if not request.calm:
            self._calm = None
            return pixels, 1.0, False
        now, before = time.perf_counter(), self._calm
        # Another scene or size is another picture: the window fades from one to the other.
        if (
            before is None
            or before[0] is not request.scene
            or before[1].signal.shape != pixels.shape
        ):
            pixels, made = calm.first(pixels, now)
            settled = True
        else:
            pixels, made, settled = calm.calmer(pixels, now, before[1])
        self._calm = request.scene, made
        return pixels, made.factor, not settled

    def _draw_held(self, held: Held, request: Request) -> Pixels:
        pixels = self._draw(held.stage, held.instrument, request.size)
        return calm.still(pixels)[0] if request.calm else pixels

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
