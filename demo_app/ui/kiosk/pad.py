"""The pad on which staff type their code."""

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import Spoken
from demo_app.ui.kiosk.button import MAIN, BigButton
from demo_app.ui.kiosk.measures import grid
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.words_label import CENTRE, WordsLabel

MOST = 12
DOT = "●"


class Pad(Page):
    """Ten digits, delete, enter, cancel; what is typed is shown as dots.

    Attributes
    ----------
    entered : Signal(str)
        A code.
    cancelled : Signal()
    """

    entered = Signal(str)
    cancelled = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.title = WordsLabel(self, "title", CENTRE, bold=True)
        self.dots = WordsLabel(self, "title", CENTRE)
        self.line = WordsLabel(self, "body", CENTRE)
        self._typed = ""
        self.digits = [BigButton(self) for _ in range(10)]
        for digit, button in enumerate(self.digits):
            button.say(str(digit))
            button.clicked.connect(lambda _on=False, digit=digit: self._type(str(digit)))
        self.delete, self.cancel = BigButton(self), BigButton(self)
        self.enter = BigButton(self, MAIN)
        self.delete.clicked.connect(self._delete)
        self.enter.clicked.connect(self._enter)
        self.cancel.clicked.connect(self.cancelled)
        self.hide()

    def speak(self, spoken: Spoken) -> None:  # noqa: D102
        super().speak(spoken)
        self.title.say(spoken.words["staff.code"])
        self.delete.say(spoken.words["staff.delete"])
        self.enter.say(spoken.words["staff.enter"])
        self.cancel.say(spoken.words["staff.cancel"])

    def open(self) -> None:
        """Begin with nothing typed."""
        self._typed = ""
        self.tell("")
        self._show()

    def tell(self, said: str) -> None:
        """A line, such as that the code was wrong."""
        self.line.say(said)

    def first(self) -> QWidget | None:  # noqa: D102
        return self.digits[1]

    def summary(self) -> str:  # noqa: D102
        return self.title.text()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        if Qt.Key.Key_0 <= event.key() <= Qt.Key.Key_9:
            self._type(chr(event.key()))
        elif event.key() == Qt.Key.Key_Backspace:
            self._delete()
        event.accept()

    def place(self) -> None:  # noqa: D102
        measures, gap = self.measures, self.measures.gap
        title, line = round(1.6 * measures.title), round(2.6 * measures.body)
        side = max(round(1.4 * measures.target), round(1.8 * measures.least))
        wide = min(self.width() - 2 * gap, max(9 * side, round(0.5 * self.width())))
        left, rows = (self.width() - wide) // 2, 5
        high = min(side, (self.height() - 2 * title - line - 3 * gap) // rows - gap)
        high = max(high, measures.target)
        room = QRect(left, self.height() - rows * (high + gap), wide, rows * (high + gap) - gap)
        keys = grid(QRect(room.x(), room.y(), wide, 4 * high + 3 * gap), 12, 3, gap)
        order = [*self.digits[1:], self.delete, self.digits[0], self.enter]
        for button, box in zip(order, keys, strict=True):
            button.setGeometry(box)
        self.cancel.setGeometry(room.x(), room.bottom() - high + 1, wide, high)
        top = room.y() - line
        self.line.setGeometry(left, top, wide, line)
        self.dots.setGeometry(left, top - title, wide, title)
        self.title.setGeometry(left, top - 2 * title, wide, title)

    def _type(self, digit: str) -> None:
        if len(self._typed) < MOST:
            self._typed += digit
            self.tell("")
            self._show()

    def _delete(self) -> None:
        self._typed = self._typed[:-1]
        self._show()

    def _enter(self) -> None:
        typed, self._typed = self._typed, ""
        self._show()
        if typed:
            self.entered.emit(typed)

    def _show(self) -> None:
        self.dots.say(DOT * len(self._typed))
        self.dots.setAccessibleName(str(len(self._typed)))
