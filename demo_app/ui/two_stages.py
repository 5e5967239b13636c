"""Two stages that take turns, so that one scene passes into the next without a gap."""

from PySide6.QtCore import QSize, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QWidget

from demo_app.scenes.scene import Reading
from demo_app.ui import theme
from demo_app.ui.fader import Fader
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame
from demo_app.ui.stage_view import StageView

MOST_TRIES = 3
"""Pictures of a new session that are waited for until one has the right size."""


class TwoStages(QWidget):
    """The stage of one session at a time; the next one is made ready out of sight.

    Meanwhile the old one keeps its last picture. Once the new session's first picture is there, in
    the room that it will have, it fades in. If that never comes the old one stays.

    Parameters
    ----------
    parent : QWidget or None
    leads : bool
        Whether sessions make their pictures for this view's size.

    Attributes
    ----------
    shown : Signal(Frame)
        A picture of the session has been handed to the stage that is seen.
    swapped : Signal()
        A new session's stage has come to the front.
    tapped : Signal()
        The stage's picture was tapped.
    """

    shown = Signal(object)
    swapped = Signal()
    tapped = Signal()

    def __init__(self, parent: QWidget | None = None, *, leads: bool = True) -> None:
        super().__init__(parent)
        self._front, self._back = StageView(self, leads=leads), StageView(self, leads=leads)
        for stage in (self._front, self._back):
            stage.shown.connect(self._take)
            stage.picture.tapped.connect(self._tap)
        self._back.hide()
        self._fader = Fader(self)
        self._motion = True
        self._frozen = False
        self._tries = 0

    @property
    def stage(self) -> StageView:
        """The stage that is seen; another one after each new session."""
        return self._front

    @property
    def session(self) -> Session | None:
        """The session in force, though its first picture may not have come."""
        return self._back.session or self._front.session

    @property
    def waiting(self) -> bool:
        """Whether the new session's picture has not come, and the old one is seen."""
        return self._back.session is not None

    @property
    def frozen(self) -> bool:
        """Whether the stage keeps what it showed."""
        return self._frozen

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(960, 720)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._front.set_sizes(sizes)
        self._back.set_sizes(sizes)

    def set_session(self, session: Session) -> None:
        """Show another session as soon as its first picture is there."""
        if session is self.session:
            return
        if self._front.picture.shape is None:
            self._front.set_session(session)
            if session.frame is not None:
                # A run that stands still makes no other picture.
                self._front.show_frame(session.frame)
            self._front.set_frozen(self._frozen)
            return
        self._front.let_go()
        self._tries = 0
        self._back.set_session(session)
        # Shown, though below the old one, so that it lays itself out.
        self._back.lower()
        self._back.show()
        if session.frame is not None:
            self._back.show_frame(session.frame)

    def let_go(self) -> None:
        """Leave the session, also one whose picture was waited for; what is seen stays."""
        self._front.let_go()
        if self.waiting:
            self._back.hide()
            self._back.clear()

    def clear(self) -> None:
        """Let go of every session; the stage is dark."""
        self._front.clear()
        self._back.clear()
        self._back.hide()

    def set_frozen(self, frozen: bool) -> None:
        """Keep picture, sentence, section and chart as they stand while the session goes on."""
        if frozen != self._frozen:
            self._frozen = frozen
            self._front.set_frozen(frozen)
            if not frozen:
                self._swap()

    def set_motion(self, motion: bool) -> None:
        """Whether one scene fades into the next; otherwise it changes at once."""
        self._motion = motion
        if not motion:
            self._fader.hide()

    def set_leads(self, leads: bool) -> None:
        """Whether sessions make their pictures for this view's size."""
        self._front.set_leads(leads)
        self._back.set_leads(leads)

    def set_section_mode(self, mode: str) -> None:
        """Colour the section by "temperature" or "stress": that of the session in force."""
        (self._back if self.waiting else self._front).set_section_mode(mode)

    def choose_traces(self, traces: tuple[Reading, ...]) -> None:
        """Choose the chart's curves."""
        (self._back if self.waiting else self._front).choose_traces(traces)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fader.hide()
        self._front.setGeometry(self.rect())
        self._back.setGeometry(self.rect())

    def _take(self, frame: Frame) -> None:
        """A stage has shown a picture."""
        if self.sender() is self._back:
            self._swap()
        else:
            self.shown.emit(frame)

    def _tap(self) -> None:
        if self._front.session is not None:
            self.tapped.emit()

    def _swap(self) -> None:
        """Bring the waiting stage to the front, once it is as it will stay."""
        back = self._back
        session = back.session
        if session is None or back.picture.shape is None or self._frozen:
            return
        self._tries += 1
        # Section and chart have taken their room: another picture of the right size is coming.
        if not back.lay_out() and self._tries < MOST_TRIES:
            return
        back.feed_now()
        was = self.grab() if self._motion and self.isVisible() else None
        self._front, self._back = back, self._front
        self._back.hide()
        self._back.clear()
        if was is not None:
            self._fader.fade(was)
        if session.frame is not None:
            self.shown.emit(session.frame)
        self.swapped.emit()
