"""How a session runs: taking the worker's pictures in, keeping time."""

import logging
from typing import Any

from PySide6.QtCore import Qt, QTimer

from demo_app.base.errors import InputError
from demo_app.scenes.settings import settings_of
from demo_app.ui.asking import TICK_MS, Asking
from demo_app.ui.request import Frame
from demo_app.ui.speed_meter import SpeedMeter
from demo_app.ui.timeline import Entry, Timeline

BREAK = "break_at_s"
CRACK_RUN = "crack_run_us"


class Engine(Asking):
    """The clockwork below a `Session`; widgets read it, and call the session's acts."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._meter = SpeedMeter()
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.setInterval(TICK_MS)
        self._timer.timeout.connect(self._tick)
        self._worker.done.connect(self._arrive)
        self._worker.failed.connect(self._fail)

    @property
    def behind(self) -> bool:
        """Whether the model is slower than the speed asked for."""
        return self.playing and self.real_speed < 0.85 * self.speed

    def close(self) -> None:
        """Let go of the worker; the timer ends, and nothing is asked for any more."""
        self._timer.stop()
        self._closed = True
        self._worker.done.disconnect(self._arrive)
        self._worker.failed.disconnect(self._fail)

    def recover(self, problem: str) -> None:
        """After a fault: back to the start, with a line that says so.

        A second fault without a picture in between puts the default settings back; after a
        third nothing more is tried until a person acts.
        """
        self._faults += 1
        self.held = None
        self._set_playing(False)
        if self._faults > 1:
            self.settings = self._first_settings()
        self._restart(ask=False)
        if self._faults < 3:
            self._post_now()
        self.changed.emit()
        self.told.emit(problem)

    def _first_settings(self) -> Any:
        """Settings to go back to."""
        return self.scene.settings()

    def _take_in(self) -> bool:
        """Put into the run what a person did since the last picture; whether there was anything."""
        return False

    def _follow(self) -> None:
        """Settings or the state shown have changed: what depends on them follows."""

    def _put(self, settings: Any) -> None:
        """Settings in force from now on if all changed ones are live, else from the start."""
        live = all(
            setting.live or getattr(settings, setting.name) == getattr(self.settings, setting.name)
            for setting in settings_of(type(settings))
        )
        self.settings = settings
        self._follow()
        self.told.emit("")
        before = self.here
        if live and before is not None:
            self.timeline.change(before, settings)
            if self._break_s is not None and self._break_s > before.time_s:
                self._break_s = None
            self._wanted = self._shown_s
            self._post_now()
        else:
            self._restart()

    def _set_playing(self, playing: bool) -> None:
        if not playing and self._speed_after is not None:
            self.speed, self._speed_after, self._legs = self._speed_after, None, ()
        self.playing, self._cued = playing, False
        self._meter.clear()
        self.real_speed = self.speed
        self._ticked = self._clock()
        if playing:
            self._snap = False
            self._wanted = max(self._wanted, 0.0)
            self._timer.start()
        else:
            self._timer.stop()
            self._wanted = self._shown_s

    def _seek(self, time_s: float, *, snap: bool) -> None:
        self._wanted, self._snap = time_s, snap
        self._post_now()

    def _restart(self, *, ask: bool = True) -> None:
        same = self.timeline.plan == (Entry(0, self.settings),)
        self.timeline = Timeline(self.settings, self.timeline.start if same else None)
        self._shown_s = 0.0
        self._break_s = None
        self._wanted = 0.0
        self._snap = False
        self._follow()
        if ask:
            self._post_now()

    def _tick(self) -> None:
        now = self._clock()
        passed, self._ticked = min(now - self._ticked, 0.1), now
        if len(self._legs) > 1 and self._wanted >= self._legs[0][0]:
            self._legs = self._legs[1:]
            self.speed = self._legs[0][1]
            self._meter.clear()
            self.changed.emit()
        if not self._flying:
            self._take_in()
        end = self._legs[0][0] if self._legs else self.end_s
        self._wanted = min(self._wanted + self.speed * passed, end)
        self._post()

    def _arrive(self, frame: Frame) -> None:
        """Show a picture; learn from it if it belongs to what holds now.

        While a slider is dragged, pictures of what held a moment ago come in between: they are
        shown, so that the picture moves with the hand, but nothing is built on them.
        """
        # A picture that was on its way when this session was closed is nobody's any more.
        if self._closed or frame.number < self._first:
            self._worker.give_back(frame.pixels)
            return
        newest = frame.number == self._number
        self._flying = self._flying and not newest
        if newest and frame.calming and not self.playing:
            self._again = True
        if not self._shows(frame):
            self._learn(frame, newest=newest)
            self._worker.give_back(frame.pixels)
            self._go_on(newest=newest)
            return
        old, self.frame = self.frame, frame
        if frame.plan is self.timeline.plan:
            self._learn(frame, newest=newest)
        if frame.held_pixels is not None and frame.held_pixels.shape[1::-1] == self.size:
            self._draw_held = False
        self.framed.emit(frame)
        if old is not None and old.pixels is not frame.pixels:
            self._worker.give_back(old.pixels)
        at_end = self._asked >= (self._legs[-1][0] if self._legs else self.end_s) - 1e-9
        if newest and self.playing and frame.reached and at_end:
            self._set_playing(False)
            self.changed.emit()
        self._go_on(newest=newest)

    def _shows(self, _frame: Frame) -> bool:
        """Whether a picture is shown or only learnt from."""
        return True

    def _go_on(self, *, newest: bool) -> None:
        if newest and (self._take_in() or self._again):
            self._post_now()

    def _learn(self, frame: Frame, *, newest: bool) -> None:
        self._faults = 0
        self._shown_s = frame.time_s
        self.timeline.add(frame.made, frame.last, frame.traced)
        self._note_break(frame)
        self._follow()
        if newest and frame.reached and self._cued:
            self._set_playing(True)
            self.changed.emit()
        if self.playing:
            reached = self._meter.reached(self._clock(), frame.time_s)
            self.real_speed = self.real_speed if reached is None else reached
        if newest and not frame.reached and not self.playing:
            # Paused meanwhile, the run stands where the model has come to, never before it.
            self._again, self._wanted = True, max(self._wanted, frame.time_s)
        elif newest and not self.playing:
            self._wanted = frame.time_s
        elif newest and not frame.reached:
            # The clock waits for the model, a tick ahead of it so that there is something to do.
            self._wanted = min(self._wanted, frame.time_s + self.speed * TICK_MS / 1000)

    def _note_break(self, frame: Frame) -> None:
        when = frame.readings.get(BREAK)
        if when is not None and self._break_s is None:
            self._break_s = float(when)
            self._run_s = 1e-6 * float(frame.readings.get(CRACK_RUN) or 0.0)
            self.changed.emit()

    def _fail(self, number: int, error: Exception) -> None:
        if number != self._number:
            return
        self._flying = False
        logging.getLogger("lehrlight").error("the model stopped", exc_info=error)
        said = f"{error.problem}; {error.remedy}" if isinstance(error, InputError) else str(error)
        self.recover(said or type(error).__name__)
