"""What a session asks of the one worker, and what it knows of itself."""

import time
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Signal

from demo_app.optics.instrument import Instrument
from demo_app.scenes.scene import Scene
from demo_app.ui.request import Frame, Held, Request
from demo_app.ui.timeline import Timeline
from demo_app.ui.worker import Worker

TICK_MS = 16
PLAY_BUDGET_S = 0.012
SEEK_BUDGET_S = 0.06

Leg = tuple[float, float]
"""Part of a slow replay: until which model time (s), and at which speed."""


class Asking(QObject):
    """What there is below an `Engine`: a run, what is shown of it, and how to ask for more.

    Attributes
    ----------
    changed : Signal
        Settings, playing, speed, light or the held picture changed.
    framed : Signal(Frame)
        A new picture is there.
    told : Signal(str)
        One line for the presenter; empty takes it away.
    """

    changed = Signal()
    framed = Signal(object)
    told = Signal(str)

    def __init__(
        self,
        scene: Scene,
        worker: Worker,
        instrument: Instrument | None = None,
        parent: QObject | None = None,
        clock: Callable[[], float] = time.perf_counter,
    ) -> None:
        super().__init__(parent)
        self.scene = scene
        self.instrument = instrument if instrument is not None else Instrument()
        self.settings: Any = scene.settings()
        self.timeline = Timeline(self.settings)
        self.playing = False
        self.speed = 1.0
        self.real_speed = 1.0
        self.held: Held | None = None
        self.frame: Frame | None = None
        self.size = (960, 540)
        self._worker = worker
        self._clock = clock
        self._wanted = 0.0
        # The time of the last request, which the clock may have left behind.
        self._asked = 0.0
        self._snap = False
        self._number = 0
        self._flying = False
        self._again = False
        self._draw_held = False
        self.calm = False
        self._closed = False
        self._faults = 0
        self._first = worker.next_number()
        self._shown_s = 0.0
        self._break_s: float | None = None
        self._run_s = 0.0
        self._legs: tuple[Leg, ...] = ()
        # Play once the picture that was sought has come.
        self._cued = False
        self._speed_after: float | None = None
        self._ticked = clock()

    @property
    def time_s(self) -> float:
        """Model time shown, s."""
        return self._shown_s

    @property
    def here(self) -> Any:
        """The state shown, or the one before what is shown; None while none is known."""
        ready = self.timeline.ready(self._shown_s)
        return ready[0] if ready else None

    @property
    def light(self) -> Instrument:
        """What stands around the stage: the instrument, where the scene's settings leave it."""
        return self.scene.light(self.settings, self.instrument)

    @property
    def end_s(self) -> float:
        """Model time at which playing ends, s."""
        return float(self.scene.seconds(self.settings))

    @property
    def break_s(self) -> float | None:
        """When the piece broke, if it has: s."""
        return self._break_s

    @property
    def settled(self) -> bool:
        """Whether every picture that was asked for has come."""
        return not (self._flying or self._again)

    def begin(self) -> None:
        """Ask for the first picture."""
        self._post()

    @property
    def _budget_s(self) -> float:
        """Wall time that one answer may take to step the model, s."""
        return PLAY_BUDGET_S if self.playing else SEEK_BUDGET_S

    def _post(self) -> None:
        """Ask for a picture once the one in the making has come."""
        if self._flying:
            self._again = True
        else:
            self._post_now()

    def _post_now(self) -> None:
        """Ask for a picture at once; one in the making is out of date."""
        if self._closed:
            return
        self._number = self._worker.next_number()
        self._flying, self._again = True, False
        self._asked = self._wanted
        span = float("inf") if self._snap else 0.0
        if self.playing:
            span = self.speed * TICK_MS / 1000
        self._worker.post(
            Request(
                number=self._number,
                scene=self.scene,
                plan=self.timeline.plan,
                ready=self.timeline.ready(self._wanted),
                time_s=self._wanted,
                span_s=span,
                budget_s=self._budget_s,
                traced=self.timeline.traced,
                every=self.timeline.every,
                instrument=self.instrument,
                size=self.size,
                held=self.held if self._draw_held else None,
                calm=self.calm,
            )
        )
