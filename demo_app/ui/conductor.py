"""Runs a show: walks its steps, makes a session for each, and keeps the picture alive between."""

import time
from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QObject, Signal

from demo_app.base.errors import InputError
from demo_app.content.cues.records import Contingency, Question, Sheet, Step
from demo_app.content.cues.shorten import Cut, shorten
from demo_app.content.running import clock, walking
from demo_app.content.running.clock import Wanted
from demo_app.content.running.records import ANSWERED, RESULT, Running, question_of, step_of
from demo_app.content.running.reloading import reload
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import make
from demo_app.ui import words
from demo_app.ui.answering import Outcome, outcome
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame
from demo_app.ui.saved import Favourite
from demo_app.ui.snapshot import Snapshot, opening
from demo_app.ui.worker import Worker


class Conductor(QObject):
    """A show that runs: its record, its session, and the acts of whoever presents it.

    Attributes
    ----------
    changed : Signal()
        The running show's record, or the outcome of a question, is another one.
    left : Signal()
        The session is about to go: whoever shows it keeps its last picture.
    made : Signal(Session)
        A session for what comes next; its first picture is still to come.
    staged : Signal(Session)
        The new session stands where the step begins, and can be shown.
    told : Signal(str)
        One line for the presenter.
    """

    changed = Signal()
    left = Signal()
    made = Signal(object)
    staged = Signal(object)
    told = Signal(str)

    def __init__(
        self,
        sheet: Sheet,
        worker: Worker,
        running: Running | None = None,
        *,
        scene: Callable[[str], Scene] = catalogue.scene,
        session: Callable[..., Session] = Session,
        now: Callable[[], float] = time.time,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self.sheet = sheet
        self.running = running if running is not None else walking.ready(sheet)
        self.session: Session | None = None
        self.outcome: Outcome | None = None
        self.favourites: Mapping[int, Favourite] = {}
        self.now = now
        self.calm = False
        self._worker, self._scene, self._session_for = worker, scene, session
        # Closed, and still known to whoever showed it until there is another one.
        self._gone: Session | None = None
        # Where the step was left for a favourite of another scene.
        self._before: Snapshot | None = None
        self._waiting = False
        self._slot_s: float | None = None

    @property
    def step(self) -> Step:
        """The step shown."""
        return step_of(self.running, self.sheet)

    @property
    def question(self) -> Question | None:
        """The question that is put, counted or answered."""
        return question_of(self.running, self.sheet)

    @property
    def slot_s(self) -> float:
        """How long the show may take, s: as asked for, else as the sheet says."""
        return 60 * self.sheet.minutes if self._slot_s is None else self._slot_s

    @property
    def before_visit(self) -> Snapshot | None:
        """Where the step was left for another scene; None: it was not."""
        return self._before

    @property
    def astray(self) -> bool:
        """Whether `return_` has anything to put back."""
        by_hand = self.session is not None and self.session.changed_by_hand
        return by_hand or self._before is not None

    # Walking

    def begin(self, snapshot: Snapshot | None = None, back: Snapshot | None = None) -> None:
        """Show the step that the record names: as the sheet says, or as it was left."""
        wanted = clock.wanted(self.running, self.sheet)
        if snapshot is not None and back is not None and snapshot.scene != back.scene:
            self._before = back
            self._stage_snapshot(snapshot)
            return
        self._stage(wanted, snapshot, back)

    def next_(self) -> None:
        """The next phase or step; at first, the show begins."""
        if self.running.show_begun is None:
            now = self.now()
            ends = None if self._slot_s is None else now + self._slot_s
            self._take(walking.begin(self.running, self.sheet, now, ends))
            return
        self._take(walking.next_(self.running, self.sheet, self.now()))

    def back(self) -> None:
        """The phase or step before."""
        self._take(walking.back(self.running, self.sheet, self.now()))

    def jump(self, place: int) -> None:
        """Open a step of the sheet."""
        self._take(walking.jump(self.running, self.sheet, self.now(), place), again=True)

    def take(self, running: Running) -> None:
        """Another record of the same show: black, frozen, votes, cut."""
        self._take(running)

    def vote(self, answer: int, by: int) -> None:
        """Count hands for an answer."""
        self._take(walking.vote(self.running, self.sheet, answer, by))

    def cut_to(self, seconds: float) -> Cut:
        """Leave out what does not fit into `seconds` from now, by the steps' priorities."""
        running, now = self.running, self.now()
        ends = now + seconds if running.on else None
        found = clock.in_time(replace(running, ends=ends), self.sheet, now)
        if not running.on:
            found = shorten(self.sheet.steps, seconds)
        self._slot_s = seconds
        self._take(replace(walking.cut(running, self.sheet, found.kept), ends=ends))
        return found

    def fit(self) -> None:
        """Leave out what no longer fits into the time left."""
        cut = clock.in_time(self.running, self.sheet, self.now())
        self._take(walking.cut(self.running, self.sheet, cut.kept))

    def take_all(self) -> None:
        """Show every step again."""
        every = [step.id for step in self.sheet.steps]
        self._take(walking.cut(self.running, self.sheet, every))

    def start_over(self) -> None:
        """After a show: its first step, nothing counted, everything shown."""
        self.outcome = self._before = None
        self._slot_s = None
        fresh = walking.ready(self.sheet, digest=self.running.digest)
        self._take(replace(fresh, captions=self.running.captions), again=True)

    def rehearse(self, on: bool) -> None:
        """Measure how long the steps take, for a cut; nobody is watching."""
        self._take(replace(self.running, rehearsal=on))

    def reload(self, sheet: Sheet, digest: str) -> None:
        """The same show on its sheet as it was saved just now."""
        was = clock.wanted(self.running, self.sheet)
        running = reload(self.running, sheet, self.now(), digest=digest)
        self.sheet, self.running = sheet, running
        self.changed.emit()
        if clock.wanted(running, sheet) != was and not self.astray:
            self._stage(clock.wanted(running, sheet))

    def fall_back(self, contingency: Contingency) -> None:
        """Something real went another way: show the same, to be returned from like any what-if."""
        session = self.session
        if session is None:
            return
        wanted = clock.wanted(self.running, self.sheet, contingency)
        if contingency.settings:
            try:
                settings: Any = make(self._scene(wanted.scene).settings, wanted.settings)
            except InputError as error:
                self.told.emit(f"{error.problem}; {error.remedy}")
                return
            # From its start: what was heated or struck before would hide what is said.
            self._show_instead(opening(wanted.scene, settings, wanted.at_s, play=True))
        self.told.emit(contingency.say)

    def return_(self) -> None:
        """Put the step's state back exactly."""
        session = self.session
        if self._before is not None:
            snapshot, self._before = self._before, None
            self._stage_snapshot(snapshot)
        elif session is None or not session.return_back():
            self.told.emit(words.text("return.nothing"))

    def store(self, number: int) -> None:
        """Keep this very state as a favourite."""
        if self.session is not None:
            kept = Favourite(self.step.title, self.session.snapshot().narrow())
            self.favourites = {**self.favourites, number: kept}
            self.changed.emit()
            self.told.emit(words.text("favourite.stored", number=number))

    def recall(self, number: int) -> None:
        """Show a favourite; `return_` leads back."""
        session, favourite = self.session, self.favourites.get(number)
        if session is None:
            return
        if favourite is None:
            self.told.emit(words.text("favourite.none", number=number))
            return
        self._show_instead(favourite.shown)

    def visit(self, scene: str) -> None:
        """Show a scene that is not this step's; `return_` leads back."""
        session = self.session
        if session is not None:
            self._before = self._before or session.point_of_return or session.snapshot()
        self._stage(Wanted(scene, {}, 0.0, False))
        self.changed.emit()

    def recover(self, problem: str) -> None:
        """After a fault: the scene starts again."""
        if self.session is not None:
            self.session.recover(problem)

    def set_calm(self, calm: bool) -> None:
        """Keep bright stripes below the limits, in this step and all that follow."""
        self.calm = calm
        if self.session is not None:
            self.session.set_calm(calm)

    def end(self) -> None:
        """Let go of the session; may be called twice."""
        if self.session is not None:
            self.session.close()
            self.session = None

    def _take(self, running: Running, *, again: bool = False) -> None:
        before, self.running = self.running, running
        if running == before and not again:
            return
        moved = running.place != before.place or again
        answers = running.phase in ANSWERED and before.phase not in ANSWERED
        returns = before.phase in ANSWERED and running.phase not in ANSWERED
        if moved or returns:
            self._before = self.outcome = None
            self._stage(clock.wanted(running, self.sheet))
        elif answers:
            self._answer()
        if running.phase == RESULT and self.outcome is None:
            self._hurry()
        self.changed.emit()

    # Sessions

    def _answer(self) -> None:
        """Let the live run answer the question, on the stage that is there."""
        session, wanted = self.session, clock.wanted(self.running, self.sheet)
        self.outcome = None
        if session is None or session.scene.id != wanted.scene:
            self._before = None
            self._stage(wanted)
            return
        # From its start, as the truth of a question is found: what was played before counts
        # for nothing.
        settings: Any = make(session.scene.settings, wanted.settings)
        self._waiting = True
        session.restore(opening(session.scene.id, settings, wanted.at_s, play=True))

    def _hurry(self) -> None:
        """The result is wanted before the run has come to it; one that begins is waited for."""
        session, question = self.session, self.question
        if session is not None and question is not None and not self._waiting:
            session.scrub(session.end_s if question.at_s is None else question.at_s)

    def _stage(
        self, wanted: Wanted, snapshot: Snapshot | None = None, back: Snapshot | None = None
    ) -> None:
        if not wanted.scene:
            self._leave()
            return
        try:
            scene = self._scene(wanted.scene)
            settings: Any = make(scene.settings, wanted.settings)
        except Exception as error:
            said = words.text("unloaded", scene=wanted.scene, problem=error)
            self.told.emit(said)
            return
        session = self._fresh(scene)
        if snapshot is not None and snapshot.scene == scene.id:
            session.restore(snapshot, back=back)
        else:
            session.restore(opening(scene.id, settings, wanted.at_s, play=wanted.play))

    def _show_instead(self, shown: Snapshot) -> None:
        """Another state in place of the step's, to which `return_` leads back."""
        session = self.session
        if session is None:
            return
        here = session.point_of_return or session.snapshot()
        if shown.scene == session.scene.id and self._before is None:
            session.restore(shown, back=here)
            return
        self._before = self._before or here
        self._stage_snapshot(shown)

    def _stage_snapshot(self, snapshot: Snapshot) -> None:
        self._fresh(self._scene(snapshot.scene)).restore(snapshot)

    def _leave(self) -> None:
        """A step without a scene: what was shown goes."""
        if self.session is not None:
            self.left.emit()
            self.session.pause()
            self._gone = self.session
            self.end()

    def _fresh(self, scene: Scene) -> Session:
        """A session of `scene` in place of the one that was shown, whose picture stays."""
        old = self.session
        if old is not None:
            # Before the new one is made: a picture that the old one still asks for is older then.
            self.left.emit()
            old.pause()
            old.close()
        session = self._session_for(scene, self._worker, parent=self)
        before, self._gone = old or self._gone, None
        if before is not None:
            session.size = before.size
        session.set_calm(self.calm)
        self.session, self._waiting = session, True
        session.framed.connect(self._framed)
        session.changed.connect(self.changed)
        self.made.emit(session)
        if before is not None:
            before.deleteLater()
        return session

    def _framed(self, frame: Frame) -> None:
        session = self.session
        if session is None or self.sender() is not session:
            return
        if self._waiting and not session.restoring:
            self._waiting = False
            self.staged.emit(session)
            if self.running.phase == RESULT and self.outcome is None:
                self._hurry()
        self._judge(session, frame)

    def _judge(self, session: Session, frame: Frame) -> None:
        """Take the answer from the live run once it has come to it."""
        question = self.question
        if self.running.phase not in ANSWERED or question is None or self.outcome is not None:
            return
        if self._waiting or self.astray:
            return
        wanted = clock.wanted(self.running, self.sheet).settings
        try:
            self.outcome = outcome(session, frame, question, wanted)
        except InputError as error:
            self.told.emit(f"{error.problem}; {error.remedy}")
        if self.outcome is not None:
            self.changed.emit()
