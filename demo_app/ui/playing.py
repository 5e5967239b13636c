"""The session: what is shown, from which settings, at which time and speed."""

from dataclasses import replace
from typing import Any

from demo_app.base.errors import InputError
from demo_app.scenes.scene import Action
from demo_app.scenes.settings import change
from demo_app.ui.led import FASTEST, SLOWEST
from demo_app.ui.request import Held
from demo_app.ui.returning import Returning
from demo_app.ui.timeline import Entry

SLOW_REPLAY_WALL_S = 3.0
FAINT_GAIN = 10.0
"""For the 30 nm or so of a finger's warmth, which let 3 % of the light through."""
CRACK_RUN_WALL_S = 5.0


class Session(Returning):
    """One scene being shown: its settings, its time, its speed, its light.

    Every act of a person ends in one `changed`; every new picture in one `framed`.
    """

    def play(self) -> None:
        """Run; from the start again if the end has been reached."""
        if self.time_s >= self.end_s - 1e-9:
            self._seek(0.0, snap=False)
        self._set_playing(True)
        self.changed.emit()

    def pause(self) -> None:
        """Stand still at this instant."""
        self._set_playing(False)
        self.changed.emit()

    def toggle(self) -> None:
        """Play or pause."""
        if self.playing:
            self.pause()
        else:
            self.play()

    def reset(self) -> None:
        """Back to the start of the same run, standing still."""
        if self.timeline.plan != (Entry(0, self.settings),) and not self._by_hand():
            return
        self._set_playing(False)
        self._restart()
        self.changed.emit()

    def step(self, direction: int) -> None:
        """Stand still one step earlier (-1) or later (1)."""
        before = self.here
        if before is None:
            return
        self._set_playing(False)
        if direction > 0:
            wanted = self.timeline.time_of(before.step + 1)
        elif self.time_s > before.time_s:
            wanted = before.time_s
        else:
            wanted = self.timeline.time_of(max(before.step - 1, 0))
        if wanted is not None:
            self._seek(wanted, snap=True)
        self.changed.emit()

    def scrub(self, time_s: float) -> None:
        """Stand still at the last step at or before `time_s`."""
        self._set_playing(False)
        self._seek(min(max(time_s, 0.0), max(self.end_s, self.time_s)), snap=True)
        self.changed.emit()

    def set_speed(self, speed: float) -> None:
        """Model seconds per second, from 1/50 to 1,000; no longer the scene's own pace."""
        self.own_speed = True
        self.speed = min(max(speed, SLOWEST), FASTEST)
        self._legs, self._speed_after = (), None
        self._meter.clear()
        self.changed.emit()

    def set_setting(self, name: str, value: Any) -> None:
        """Change one setting: a live one from now on, any other from the start.

        A value that is not allowed changes nothing and is told in one line.
        """
        try:
            settings = change(self.settings, **{name: value})
        except InputError as error:
            self.told.emit(f"{error.problem}; {error.remedy}")
            self.changed.emit()
            return
        self.set_settings(settings)

    def set_settings(self, settings: Any) -> None:
        """Put a whole record of settings in force."""
        if settings != self.settings:
            self._put(settings)
            self.changed.emit()

    def defaults(self) -> None:
        """Put every setting back as it was made, and the speed to the scene's own pace."""
        settings = self._first_settings()
        if settings != self.settings and not self._by_hand():
            return
        self.own_speed = False
        self._follow()
        self.set_settings(settings)

    def act(self, action: Action) -> None:
        """Do what one of the scene's buttons says, now."""
        before = self.here
        if before is None:
            return
        try:
            settings = action.apply(self.settings, before)
        except InputError as error:
            self.told.emit(f"{error.problem}; {error.remedy}")
            return
        if settings != self.settings:
            if not self._by_hand():
                return
            self._put(settings)
        self.play()

    def set_light(self, **values: Any) -> None:
        """Turn the polarizers, put plates in, change the lamp."""
        try:
            wanted = replace(self.light, **values)
            instrument = replace(self.instrument, **values)
            settings = self.scene.relit(self.settings, wanted)
        except InputError as error:
            self.told.emit(f"{error.problem}; {error.remedy}")
        else:
            if (instrument, settings) != (self.instrument, self.settings) and not self._by_hand():
                return
            self.instrument = instrument
            if settings != self.settings:
                self._put(settings)
            else:
                self._post()
        self.changed.emit()

    def set_calm(self, calm: bool) -> None:
        """Soften bright stripes and sudden changes, or show the picture as the model makes it."""
        if calm != self.calm:
            self.calm = calm
            self._draw_held = self.held is not None
            self._post()
            self.changed.emit()

    def brighten(self) -> None:
        """Brighten a faint picture, which the stage states, or show it as it is again."""
        self.set_light(gain=1.0 if self.instrument.gain > 1 else FAINT_GAIN)

    def set_size(self, width: int, height: int) -> None:
        """Size of the picture to make, pixels."""
        if (width, height) != self.size and width > 0 and height > 0:
            self.size = (width, height)
            self._draw_held = self.held is not None
            self._post()

    def hold(self) -> None:
        """Hold this picture beside what comes next, or let it go."""
        if not self._by_hand():
            return
        if self.held is not None:
            self.held = None
        elif self.frame is not None:
            frame = self.frame
            self.held = Held(
                frame.stage,
                frame.marks,
                frame.outlines,
                frame.instrument,
                frame.settings,
                frame.time_s,
                frame.plan,
            )
            self._draw_held = True
        self._post()
        self.changed.emit()

    def replay_break(self) -> None:
        """Show the instants around the break at 1/50 of real speed, then stand still.

        Where the scene says how long its crack ran, that run is stretched to seconds; the speed is
        stated like any other.
        """
        if self._break_s is None:
            return
        model_s = SLOW_REPLAY_WALL_S * SLOWEST
        after = self._speed_after if self._speed_after is not None else self.speed
        when, run = self._break_s, self._run_s
        self._set_playing(False)
        legs = [(when - run, SLOWEST), (when, run / CRACK_RUN_WALL_S)] if run > 0 else []
        self.speed, self._speed_after = SLOWEST, after
        self._legs = (*legs, (when + model_s, SLOWEST))
        self._seek(max(when - run - model_s, 0.0), snap=False)
        self._cued = True
        self.changed.emit()
