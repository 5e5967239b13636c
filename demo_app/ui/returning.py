"""The way back: a session's point of return, and any instant of it put back bit by bit."""

from dataclasses import replace
from typing import Any

from demo_app.base.errors import InputError
from demo_app.ui import words
from demo_app.ui.led import Led
from demo_app.ui.request import Frame, Held
from demo_app.ui.snapshot import Kept, Snapshot, plain, plan_of
from demo_app.ui.timeline import Place, Timeline

RESTORE_BUDGET_S = 0.25
"""Wall time between two signs of life of a run that is walked again from its start, s."""


class Returning(Led):
    """A session that can be put back to an instant.

    While a person changes nothing the point of return moves along with the play. The first change
    of a setting or of the light, the first touch, button or held picture leaves it where it is:
    at the instant before. Playing, scrubbing, stepping and the speed move nothing.
    """

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._return: Snapshot | None = None
        # What is being put back, until its picture has come.
        self._aim: Snapshot | None = None
        # Whether the picture that was held is made again first.
        self._remaking = False

    @property
    def changed_by_hand(self) -> bool:
        """Whether there is anything to return from."""
        return self._return is not None

    @property
    def restoring(self) -> bool:
        """Whether an instant is being put back; until it is, nothing can be changed by hand."""
        return self._aim is not None

    @property
    def point_of_return(self) -> Snapshot | None:
        """Where `return_back` leads; None: to this very instant."""
        return self._return

    def mark_return(self) -> None:
        """From now on the point of return is here, and moves along with the play."""
        self._return = None
        self.changed.emit()

    def return_back(self) -> bool:
        """Put everything back as it was before the first change by hand.

        Returns
        -------
        bool
            False if nothing was changed.
        """
        if self._return is None:
            return False
        self.restore(self._return)
        return True

    def snapshot(self, mode: str | None = None) -> Snapshot:
        """The instant shown; while one is being put back, that one.

        Parameters
        ----------
        mode : str or None
            What the section shows, to be kept with it.
        """
        if self._aim is not None:
            return replace(self._aim, mode=mode or self._aim.mode)
        here, time_s = self.here, self._shown_s if self.playing else self._wanted
        held = self.held
        return Snapshot(
            scene=self.scene.id,
            plan=plain(self.timeline.plan),
            time_s=time_s,
            step=-1 if here is None else here.step,
            snap=self._snap,
            light=self.instrument,
            speed=self.speed,
            own_speed=self.own_speed,
            playing=self.playing or self._cued,
            legs=self._legs,
            speed_after=self._speed_after,
            broke=None if self._break_s is None else (self._break_s, self._run_s),
            touched_s=self._touched_s,
            held=None
            if held is None
            else Kept(plain(held.plan), held.time_s, held.instrument, held),
            mode=mode,
            known=self.timeline.copy(),
        )

    def restore(
        self, snapshot: Snapshot, *, back: Snapshot | None = None, play: bool | None = None
    ) -> None:
        """Put an instant back: state, readings, picture, light, pace and what was held.

        With its states in memory it is there with the next picture. One from a file is walked
        again from its start; the picture shown stays until the instant has been reached.

        Parameters
        ----------
        snapshot : Snapshot
            Of this scene.
        back : Snapshot or None
            Point of return to go with it; None: this instant.
        play : bool or None
            Whether it plays once it is there; None: as it did.

        Raises
        ------
        InputError
            If it belongs to another scene, or holds settings that the scene does not know.
        """
        if snapshot.scene != self.scene.id:
            raise InputError(
                f"is of the scene {snapshot.scene}",
                place="snapshot",
                remedy=f"show that scene instead of {self.scene.id}",
            )
        timeline, kept = self._timeline_of(snapshot), snapshot.held
        again = None
        if kept is not None and kept.picture is None:
            again = Timeline.planned(plan_of(kept.plan, self.scene.settings))
        self._aim, self._remaking = None, False
        self._set_playing(False)
        self._return = back
        self._places, self._down = [], False
        if again is not None and kept is not None:
            self._seek_in(again, kept.time_s)
        else:
            self._adopt(snapshot, timeline)
        self._aim, self._remaking = snapshot, again is not None
        if play is not None:
            self._aim = replace(snapshot, playing=play)
        self.told.emit("")
        self.changed.emit()

    def recover(self, problem: str) -> None:
        """After a fault: see `Engine.recover`; what was being put back is given up."""
        self._aim, self._remaking = None, False
        super().recover(problem)

    def point(self, place: Place) -> None:
        """A finger on the stage: see `Led.point`."""
        if self.scene.point is not None and self.here is not None and self._by_hand():
            super().point(place)

    def _by_hand(self) -> bool:
        """A person is about to change something: leave the point of return here.

        Returns
        -------
        bool
            False while an instant is being put back: then nothing may be changed.
        """
        if self._aim is not None:
            self.told.emit(words.text("return.wait"))
            self.changed.emit()
            return False
        if self._return is None:
            self._return = self.snapshot()
        return True

    def _timeline_of(self, snapshot: Snapshot) -> Timeline:
        if snapshot.known is not None:
            return snapshot.known.copy()
        plan = plan_of(snapshot.plan, self.scene.settings)
        return Timeline.planned(plan, self.timeline)

    def _adopt(self, snapshot: Snapshot, timeline: Timeline) -> None:
        """Let all that the snapshot says hold, and ask for its picture."""
        self.settings = timeline.settings
        self.instrument = snapshot.light
        self.speed, self.own_speed = snapshot.speed, snapshot.own_speed
        self._legs, self._speed_after = snapshot.legs, snapshot.speed_after
        self._break_s, self._run_s = snapshot.broke or (None, 0.0)
        self._touched_s = snapshot.touched_s
        self.held = None if snapshot.held is None else snapshot.held.picture
        self._draw_held = self.held is not None
        self._seek_in(timeline, snapshot.time_s, snap=snapshot.snap)

    def _seek_in(self, timeline: Timeline, time_s: float, *, snap: bool = False) -> None:
        self.timeline = timeline
        ready = timeline.ready(time_s)
        self._shown_s = min(time_s, ready[-1].time_s) if ready else 0.0
        super()._seek(time_s, snap=snap)

    def _arrived(self, frame: Frame) -> None:
        """What was sought while putting back has come: the held picture, or the instant."""
        aim = self._aim
        if aim is None:
            return
        if self._remaking and aim.held is not None:
            self._remaking = False
            picture = Held(
                frame.stage,
                frame.marks,
                frame.outlines,
                aim.held.light,
                frame.settings,
                frame.time_s,
                self.timeline.plan,
            )
            self._aim = replace(aim, held=replace(aim.held, picture=picture))
            self._adopt(self._aim, self._timeline_of(aim))
            return
        self._aim = None
        # A pace that the model set on the way is not the one that held then.
        self.speed, self._legs, self._speed_after = aim.speed, aim.legs, aim.speed_after
        self._follow()
        if aim.playing:
            self._set_playing(True)
        self.changed.emit()

    # While an instant is being put back

    @property
    def _budget_s(self) -> float:
        return RESTORE_BUDGET_S if self._aim is not None else super()._budget_s

    def _shows(self, frame: Frame) -> bool:
        if self._aim is None or frame.plan is not self.timeline.plan:
            return super()._shows(frame)
        return frame.reached and not self._remaking

    def _learn(self, frame: Frame, *, newest: bool) -> None:
        super()._learn(frame, newest=newest)
        if newest and frame.reached:
            self._arrived(frame)

    def _set_playing(self, playing: bool) -> None:
        if self._aim is not None:
            self._aim = replace(self._aim, playing=playing)
        else:
            super()._set_playing(playing)

    def _seek(self, time_s: float, *, snap: bool) -> None:
        if self._aim is None:
            super()._seek(time_s, snap=snap)

    def _follow(self) -> None:
        if self._aim is None:
            super()._follow()

    def _put(self, settings: Any) -> None:
        if self._by_hand():
            super()._put(settings)
