"""Hands counted by the presenter: one row an answer, one key or one tap a hand."""

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QWidget

from demo_app.content.cues.records import Question
from demo_app.ui import theme, words

LETTERS = "ABCDEF"


class HandsPanel(QWidget):
    """Counts for each answer of a question, with a button more and a button less.

    Attributes
    ----------
    counted : Signal(int, int)
        Place of an answer, and by how many hands its count changes.
    """

    counted = Signal(int, int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("page")
        self._box = QGridLayout(self)
        self._box.setColumnStretch(0, 1)
        self._title = QLabel(self)
        self._title.setObjectName("title")
        self._title.setWordWrap(True)
        self._box.addWidget(self._title, 0, 0, 1, 4)
        self._rows: list[tuple[QLabel, QPushButton, QLabel, QPushButton]] = []

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing."""
        self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, sizes.gap)
        self._box.setSpacing(max(sizes.gap // 2, 4))

    def set_question(self, question: Question) -> None:
        """Make a row for each answer."""
        for row in self._rows:
            for widget in row:
                self._box.removeWidget(widget)
                widget.hide()
                widget.deleteLater()
        self._rows = []
        self._title.setText(question.ask)
        for place, answer in enumerate(question.answers):
            name = QLabel(f"{LETTERS[place]}  {answer.text}", self)
            name.setWordWrap(True)
            less = self._button("−", words.text("hands.less", answer=answer.text))
            less.clicked.connect(partial(self._count, place, -1))
            count = QLabel("0", self)
            count.setObjectName("value")
            count.setAlignment(Qt.AlignmentFlag.AlignCenter)
            more = self._button(f"+  [{place + 1}]", words.text("hands.more", answer=answer.text))
            more.clicked.connect(partial(self._count, place, 1))
            row = (name, less, count, more)
            for column, part in enumerate(row):
                self._box.addWidget(part, place + 1, column)
                part.show()
            self._rows.append(row)

    def show_counts(self, counts: Sequence[int]) -> None:
        """Show the counts, one an answer."""
        for row, count in zip(self._rows, counts, strict=False):
            row[2].setText(str(count))

    def _button(self, said: str, spoken: str) -> QPushButton:
        made = QPushButton(said, self)
        made.setAccessibleName(spoken)
        made.setMinimumWidth(theme.TOUCH_PX)
        made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        return made

    def _count(self, place: int, by: int) -> None:
        self.counted.emit(place, by)
