"""What every page of a kiosk is: words of one language, sizes, a place where to begin."""

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import Spoken
from demo_app.ui import theme
from demo_app.ui.kiosk.measures import Measures


class Page(QWidget):
    """Base of the pages; those that inherit put their parts in `place`."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.measures = Measures(1280, 720, 4.0)
        self.look = theme.Look()
        self.spoken: Spoken | None = None

    def fit(self, measures: Measures, look: theme.Look) -> None:
        """Sizes and colours."""
        self.measures, self.look = measures, look
        for part in self.findChildren(QWidget):
            fit = getattr(part, "fit", None)
            if fit is not None:
                fit(measures, look)
        self.place()

    def speak(self, spoken: Spoken) -> None:
        """Take the words of a language."""
        self.spoken = spoken

    def first(self) -> QWidget | None:
        """What gets the focus when the page is opened."""
        return None

    def summary(self) -> str:
        """What a screen reader says when the page is opened."""
        return ""

    def place(self) -> None:
        """Put the parts where they belong."""

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self.place()
