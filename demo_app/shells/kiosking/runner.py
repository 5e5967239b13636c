"""Runs what a kiosk shows: scenery for its own sake, and steps that answer a prediction."""

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal

from demo_app.content.kiosk.records import KioskStep, Scenery
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import change, make
from demo_app.ui.answering import Outcome, outcome
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame
from demo_app.ui.snapshot import Snapshot, opening
from demo_app.ui.worker import Worker

LONGEST_RUN_S = 25.0
"""Wall time that the run which answers may take, s: a step has two minutes at most."""
TRY_RUN_S = 20.0
"""Wall time of a long run that a visitor tries, s."""
AT_ONCE_S = 3.0
"""A story that short is a still picture: it follows a control at once."""
REST_MS = 250


class Runner(QObject):
    """One session at a time.

    Attributes
    ----------
    left : Signal()
        The session is about to go: whoever shows it keeps its last picture.
    made : Signal(Session)
        A session for what comes next; its first picture is still to come.
    changed : Signal()
        Playing or settings are others.
    answered : Signal(Outcome)
        The live run has come to the answer.
    ended : Signal()
        A run has come to its end by itself.
    failed : Signal(str)
        What could not be shown, in one line.
    """

    left = Signal()
    made = Signal(object)
    changed = Signal()
    answered = Signal(object)
    ended = Signal()
    failed = Signal(str)

    def __init__(
        self,
        worker: Worker,
        *,
        scene: Callable[[str], Scene] = catalogue.scene,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self.session: Session | None = None
        self.calm = True
        self._worker, self._scene = worker, scene
        self._step: KioskStep | None = None
        self._answering = self._was_playing = False
        self._first = 0
        # What a visitor has set since the step was opened.
        self._values: dict[str, Any] = {}
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(REST_MS)
        self._soon.timeout.connect(self.again)
        worker.failed.connect(self._fail)

    @property
    def playing(self) -> bool:
        """Whether the picture moves."""
        return self.session is not None and self.session.playing

    def show(self, scenery: Scenery, *, play: bool) -> None:
        """Show a run for its own sake."""
        self._step, self._answering = None, False
        self._stage(scenery.scene, scenery.settings, scenery.at_s, scenery.speed, play=play)

    def open(self, step: KioskStep, *, play: bool = True) -> None:
        """Show a step as it opens."""
        self._step, self._answering = step, False
        self._stage(step.scene, step.settings, step.at_s, step.speed, play=step.play and play)

    def answer(self, *, play: bool) -> None:
        """Let the live run answer the step's question; a still one stands at its result."""
        step, session = self._step, self.session
        if step is None or session is None:
            return
        self._answering = True
        wanted = wanted_of(step)
        settings: Any = make(session.scene.settings, wanted)
        snapshot = opening(session.scene.id, settings, step.at_s, play=play)
        due = _due(session.scene, settings, step)
        session.restore(_paced(snapshot, _speed(session.scene, settings, step, due)))
        if not play:
            self.hurry()

    def hurry(self) -> None:
        """The answer is wanted before the run has come to it."""
        step, session = self._step, self.session
        if step is None or session is None or not self._answering:
            return
        due = _due(session.scene, session.settings, step)
        settings: Any = make(session.scene.settings, wanted_of(step))
        session.restore(opening(session.scene.id, settings, due, play=False))

    def set_playing(self, playing: bool) -> None:
        """Play or stand still."""
        session = self.session
        if session is not None and playing != session.playing:
            if playing:
                session.play()
            else:
                session.pause()

    def again(self) -> None:
        """The run from its start, with what a visitor has set."""
        session = self.session
        if session is None:
            return
        self._soon.stop()
        self._answering = False
        settings = change(session.settings, **self._values)
        end_s = float(session.scene.seconds(settings))
        if end_s <= AT_ONCE_S:
            session.restore(opening(session.scene.id, settings, end_s))
            return
        speed = None if end_s <= LONGEST_RUN_S else end_s / TRY_RUN_S
        session.restore(_paced(opening(session.scene.id, settings, play=True), speed))

    def set_setting(self, name: str, value: Any) -> None:
        """A visitor changes a setting: the run begins anew once the finger rests."""
        session = self.session
        if session is None:
            return
        self._values[name], self._answering = value, False
        if not session.restoring and session.end_s <= AT_ONCE_S:
            session.set_setting(name, value)
        else:
            self._soon.start()

    def recover(self) -> None:
        """After a fault: the step opens once more."""
        if self._step is not None:
            self.open(self._step)

    def end(self) -> None:
        """Let go of the session; may be called twice."""
        session, self.session = self.session, None
        self._step, self._values = None, {}
        self._soon.stop()
        if session is not None:
            self.left.emit()
            session.pause()
            session.close()
            session.deleteLater()

    def _stage(
        self,
        name: str,
        values: Mapping[str, Any],
        at_s: float,
        speed: float | None,
        *,
        play: bool,
    ) -> None:
        try:
            scene = self._scene(name)
            settings: Any = make(scene.settings, values)
        except Exception as error:
            self.failed.emit(f"{name}: {error}")
            return
        session = self._fresh(scene)
        session.restore(_paced(opening(scene.id, settings, at_s, play=play), speed))

    def _fresh(self, scene: Scene) -> Session:
        size = self.session.size if self.session is not None else None
        step, answering = self._step, self._answering
        self.end()
        self._step, self._answering = step, answering
        # What an earlier session asked for may still fail.
        self._first = self._worker.next_number()
        session = Session(scene, self._worker, parent=self)
        if size is not None:
            session.size = size
        session.set_calm(self.calm)
        session.framed.connect(self._framed)
        session.changed.connect(self._changed)
        self.session, self._was_playing = session, False
        self.made.emit(session)
        return session

    def _changed(self) -> None:
        session = self.session
        if session is None or self.sender() is not session:
            return
        stopped = self._was_playing and not session.playing
        self._was_playing = session.playing
        self.changed.emit()
        if stopped and session.time_s >= session.end_s - 1e-6:
            self.ended.emit()

    def _fail(self, number: int, error: Exception) -> None:
        if self.session is not None and number > self._first:
            self.failed.emit(f"{self.session.scene.id}: {error}")

    def _framed(self, frame: Frame) -> None:
        session, step = self.session, self._step
        if session is None or self.sender() is not session or session.restoring:
            return
        if step is not None and self._answering:
            found: Outcome | None = outcome(session, frame, step.question, wanted_of(step))
            if found is not None:
                self._answering = False
                self.answered.emit(found)


def wanted_of(step: KioskStep) -> dict[str, Any]:
    """Settings of the run that answers."""
    return {**step.settings, **step.question.settings}


def _due(scene: Scene, settings: Any, step: KioskStep) -> float:
    at_s = step.question.at_s
    return float(scene.seconds(settings)) if at_s is None else at_s


def _speed(scene: Scene, settings: Any, step: KioskStep, due: float) -> float | None:
    """The step's own speed; a faster one where that would take too long."""
    left = max(due - step.at_s, 0.0)
    if step.speed is not None:
        return max(step.speed, left / LONGEST_RUN_S)
    # The pace of a story changes as it goes: only a story that is slow even so is hurried.
    return None if left <= LONGEST_RUN_S else left / LONGEST_RUN_S


def _paced(snapshot: Snapshot, speed: float | None) -> Snapshot:
    if speed is None:
        return snapshot
    return replace(snapshot, speed=min(speed, 1000.0), own_speed=True)
