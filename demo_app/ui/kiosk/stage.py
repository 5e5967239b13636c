"""The live picture of a kiosk, with one sentence under it."""

import re
from collections.abc import Callable

from PySide6.QtCore import QRect, QSize, Qt, Signal
from PySide6.QtGui import QAccessible, QAccessibleEvent
from PySide6.QtWidgets import QWidget

from demo_app.ui import theme
from demo_app.ui.fader import Fader
from demo_app.ui.kiosk.measures import Measures
from demo_app.ui.kiosk.words_label import CENTRE, WordsLabel
from demo_app.ui.picture_view import PictureView
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame

ENDS = re.compile(r"(?<=[.!?])\s+(?=[A-ZÄÖÜ¿¡])")
MOST_WORDS = 25
"""Words of a sentence that is shown here (practice of museums: labels of 25 words at most)."""


class LiveStage(QWidget):
    """The picture of one session at a time: the old one stays until the next one's has come.

    Parameters
    ----------
    parent : QWidget or None
    sentence_of : callable
        What to say under a picture of a session.

    Attributes
    ----------
    shown : Signal(Frame)
        A picture has been handed to the screen.
    """

    shown = Signal(object)

    def __init__(
        self, parent: QWidget | None, sentence_of: Callable[[Session, Frame], str]
    ) -> None:
        super().__init__(parent)
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.session: Session | None = None
        self.picture = PictureView(self)
        self.sentence = WordsLabel(self, align=CENTRE)
        self._fader = Fader(self.picture)
        self._sentence_of = sentence_of
        self._motion, self._fresh, self._pointing = True, False, False
        self._sentence_height = 0
        self.picture.sized.connect(self._resize_picture)

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(640, 480)

    def fit(self, measures: Measures, look: theme.Look, sentence_height: int) -> None:
        """Sizes and colours; room for the sentence, 0 for none."""
        self.picture.set_type_size(max(round(0.8 * measures.body), 12))
        self.sentence.fit(measures, look)
        self._sentence_height = sentence_height
        self._place()

    def set_motion(self, motion: bool) -> None:
        """Whether one picture fades into the next."""
        self._motion = motion
        if not motion:
            self._fader.hide()

    def set_pointing(self, pointing: bool) -> None:
        """Whether a finger on the picture does something."""
        self._pointing = pointing
        self._refresh()

    def set_session(self, session: Session | None) -> None:
        """Show another session as soon as its first picture is there."""
        if session is self.session:
            return
        self.let_go()
        self.session, self._fresh = session, True
        if session is not None:
            session.framed.connect(self._show)
            self.picture.pointed.connect(session.point)
            self._resize_picture()
        self._refresh()

    def let_go(self) -> None:
        """Leave the session, and keep showing its last picture."""
        session, self.session = self.session, None
        if session is not None:
            # A session lends its memory for one picture only.
            self.picture.own()
            session.framed.disconnect(self._show)
            self.picture.pointed.disconnect(session.point)
        self.picture.set_pointing(False, None)

    def say_again(self) -> None:
        """The words have changed: another language."""
        if self.session is not None and self.session.frame is not None:
            self._say(self.session, self.session.frame)

    def describe(self, said: str) -> None:
        """The picture in words, for who does not see it."""
        if self.picture.accessibleDescription() != said:
            self.picture.setAccessibleDescription(said)
            change = QAccessibleEvent(self.picture, QAccessible.Event.DescriptionChanged)
            QAccessible.updateAccessibility(change)

    def resizeEvent(self, event: object) -> None:  # noqa: D102
        self._fader.hide()
        self._place()

    def _show(self, frame: Frame) -> None:
        session = self.session
        if session is None or session.restoring:
            return
        if self._fresh:
            self._fresh = False
            if self._motion and self.picture.shape is not None and self.picture.isVisible():
                self._fader.fade(self.picture.grab())
        self.picture.show_picture(
            frame.pixels,
            frame.stage,
            frame.marks,
            frame.outlines,
            frame.instrument.gain,
            "",
            frame.dimmed,
        )
        self._say(session, frame)
        self.shown.emit(frame)

    def _say(self, session: Session, frame: Frame) -> None:
        if self._sentence_height:
            self.sentence.say(self._that_fits(self._sentence_of(session, frame)))

    def _that_fits(self, said: str) -> str:
        """The first sentences of `said` that are short, and for which there is room."""
        sentences = ENDS.split(said)
        if any(len(one.split()) > MOST_WORDS for one in sentences):
            return ""
        for count in range(len(sentences), 0, -1):
            some = " ".join(sentences[:count])
            if self.sentence.has_room(some):
                return some
        return ""

    def _refresh(self) -> None:
        session = self.session
        on = self._pointing and session is not None and session.scene.point is not None
        reach = None
        if on and session is not None and session.scene.reach_mm is not None:
            reach = session.scene.reach_mm(session.settings)
        self.picture.set_pointing(on, reach)

    def _place(self) -> None:
        low = self._sentence_height
        self.picture.setGeometry(0, 0, self.width(), max(self.height() - low, 1))
        self.sentence.setGeometry(QRect(0, self.height() - low, self.width(), low))
        self.sentence.setVisible(low > 0)

    def _resize_picture(self) -> None:
        if self.session is not None:
            self.session.set_size(*self.picture.picture_size())
