"""A group at the screen: its tries at a challenge, run for all to see and judged by the model."""

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject, Signal

from demo_app.content.lessons.challenges import Outcome, tried
from demo_app.content.lessons.records import Step
from demo_app.content.lessons.trying import Tries
from demo_app.ui.benching.once import Once
from demo_app.ui.teaching.bound_session import BoundSession
from demo_app.ui.teaching.tries_view import READY, RUNNING, WORKING


class Group(QObject):
    """Counts the tries of each challenge; a try is told once its run has been seen.

    Parameters
    ----------
    session_of : callable
        The session that is shown.
    parent : QObject or None

    Attributes
    ----------
    changed : Signal()
        Tries or the state of the one in hand.
    failed : Signal(str)
        The model could not judge a try; it does not count.
    """

    changed = Signal()
    failed = Signal(str)

    def __init__(
        self, session_of: Callable[[], BoundSession | None], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._session_of = session_of
        self._tries: dict[str, Tries] = {}
        self._step: Step | None = None
        self._trial: Once | None = None
        self._told: Outcome | None = None

    def tries(self, step: Step | None) -> Tries:
        """What has been tried at a step."""
        return self._tries.get(step.id, Tries()) if step is not None else Tries()

    @property
    def state(self) -> str:
        """`READY`, or what keeps the try in hand from being told."""
        if self._step is None:
            return READY
        session = self._session_of()
        if session is not None and _runs(session):
            return RUNNING
        return READY if self._told is not None else WORKING

    def ask(self, step: Step) -> None:
        """Try what is set now; a second time: show at once what comes of it."""
        session = self._session_of()
        if session is None or step.challenge is None:
            return
        if self._step is not None:
            session.scrub(session.end_s)
            return
        if self._trial is not None:
            # The one that was left is still being worked out.
            return
        chosen = {one.name: getattr(session.settings, one.name) for one in step.bounds}
        self._step, self._told = step, None
        trial = Once(partial(tried, step, chosen), self)
        trial.done.connect(self._take)
        trial.failed.connect(self._fail)
        trial.finished.connect(trial.deleteLater)
        self._trial = trial
        session.begin_again(play=True)
        trial.start()
        self.changed.emit()

    def look(self) -> None:
        """Tell the try in hand, once its run stands still and the model has judged it."""
        step, told = self._step, self._told
        session = self._session_of()
        if step is None or told is None or session is None or _runs(session):
            return
        assert step.challenge is not None
        self._step, self._told = None, None
        self._tries[step.id] = self.tries(step).add(step.challenge, told)
        self.changed.emit()

    def fresh(self, step: Step | None) -> None:
        """The next group begins; a try in hand does not count."""
        self._step = self._told = None
        if step is not None and step.id in self._tries:
            self._tries[step.id] = self.tries(step).reset()
        self.changed.emit()

    def leave(self) -> None:
        """The task is over for now; a try in hand does not count."""
        self._step = self._told = None

    def end(self) -> None:
        """Wait for the model."""
        trial, self._trial = self._trial, None
        if trial is not None:
            trial.wait()

    def _take(self, found: Outcome) -> None:
        self._trial = None
        if self._step is not None:
            self._told = found
            self.look()

    def _fail(self, error: Exception) -> None:
        self._trial = None
        if self._step is not None:
            self._step = None
            self.failed.emit(str(error))
            self.changed.emit()


def _runs(session: BoundSession) -> bool:
    """Whether its run has not come to where it will stand."""
    return session.playing or session.restoring or not session.settled
