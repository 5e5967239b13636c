"""Few words over everything: somebody still there? cleaning, closed."""

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from demo_app.ui import theme
from demo_app.ui.kiosk.button import MAIN, BigButton
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.words_label import CENTRE, WordsLabel

VEIL = 225


class Notice(Page):
    """A line, a quieter line that counts down, and perhaps a button; it lies over all else.

    Parameters
    ----------
    parent : QWidget or None
    button : bool
        Whether there is one.

    Attributes
    ----------
    answered : Signal()
        It was touched, anywhere.
    """

    answered = Signal()

    def __init__(self, parent: QWidget | None = None, *, button: bool = False) -> None:
        super().__init__(parent)
        self.title = WordsLabel(self, "title", CENTRE, bold=True)
        self.line = WordsLabel(self, "body", CENTRE)
        self.button = BigButton(self, MAIN) if button else None
        if self.button is not None:
            self.button.clicked.connect(self.answered)
        self._veil = VEIL
        self.hide()

    def set_veil(self, veil: int) -> None:
        """How much of what is below is hidden, up to 255: then it need not be painted."""
        self._veil = veil
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent, veil >= 255)

    def say(self, title: str, line: str = "", button: str = "") -> None:
        """Show words; they are announced by whoever shows it."""
        self.title.say(title)
        self.line.say(line)
        if self.button is not None:
            self.button.say(button)

    def first(self) -> QWidget | None:  # noqa: D102
        return self.button

    def summary(self) -> str:  # noqa: D102
        return f"{self.title.text()} {self.line.text()}"

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        self.answered.emit()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        black = self._veil >= 255
        colour = QColor("#000000" if black else theme.shades(self.look).stage)
        colour.setAlpha(self._veil)
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), colour)

    def place(self) -> None:  # noqa: D102
        measures, gap = self.measures, self.measures.gap
        width = round(0.8 * self.width())
        left = (self.width() - width) // 2
        low = self.height() - measures.bar - 2 * gap
        if self.button is not None:
            high = 2 * measures.target
            self.button.setGeometry(QRect(left, low - high, width, high))
            low -= high + gap
        line, title = round(3 * measures.body), round(3.2 * measures.title)
        self.line.setGeometry(left, low - line, width, line)
        self.title.setGeometry(left, low - line - title, width, title)


class Dark(QWidget):
    """Lets only a share of the light through; fingers pass.

    At none it is black and opaque, and what is below need not be painted.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.share = 1.0
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hide()

    def set_share(self, share: float) -> None:
        """From 0 (black) to 1 (as bright as the screen is)."""
        if share != self.share:
            self.share = share
            self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent, share <= 0)
            self.setVisible(share < 1)
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), QColor(0, 0, 0, round(255 * (1 - self.share))))
