"""The inviting view: a moving picture, and one line in every language."""

from collections.abc import Sequence

from PySide6.QtCore import QRect, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import Spoken
from demo_app.ui.kiosk.button import MAIN, BigButton
from demo_app.ui.kiosk.page import Page

JOIN = "   ·   "


class Invite(Page):
    """Lies over the picture, which is seen through it; any touch begins.

    Attributes
    ----------
    started : Signal()
    """

    started = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.button = BigButton(self, MAIN)
        self.button.clicked.connect(self.started)

    def show_lines(self, spoken: Spoken, all_languages: Sequence[Spoken]) -> None:
        """The line of the language in use first, then those of the others."""
        self.speak(spoken)
        rest = [one.words["invite"] for one in all_languages if one.language != spoken.language]
        lines = [spoken.words["invite"], *rest]
        self.button.say("\n".join(lines), spoken.words["welcome"])
        self.button.setAccessibleName(JOIN.join(lines))
        self.place()

    def first(self) -> QWidget | None:  # noqa: D102
        return self.button

    def summary(self) -> str:  # noqa: D102
        return self.spoken.words["welcome"] if self.spoken else ""

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        self.started.emit()

    def place(self) -> None:  # noqa: D102
        measures, gap = self.measures, self.measures.gap
        lines = max(self.button.text().count("\n") + 1, 1)
        size = round(1.15 * measures.body)
        high = round(1.25 * size * lines) + gap + 2 * measures.ring
        wide = min(self.width() - 2 * gap, round(17 * size))
        self.button.fit(measures, self.look, size)
        top = self.height() - high - gap
        self.button.setGeometry(QRect((self.width() - wide) // 2, top, wide, high))
