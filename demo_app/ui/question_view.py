"""A prediction in front of the audience: the question, its answers, the hands, the result."""

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from demo_app.base.errors import InputError
from demo_app.ui import theme, words
from demo_app.ui.fitted_label import TWO_LINES, FittedLabel

LETTERS = "ABCDEF"
RIGHT = "✓"
ASK, COUNT, BARS, RESULT = PHASES = ("ask", "count", "bars", "result")
ANSWER_SHARE = 1.5
"""Largest type of an answer, in heights of the plain sentence."""


@dataclass(frozen=True)
class Poll:
    """What the audience sees of a question.

    Parameters
    ----------
    ask : str
        The question.
    answers : tuple of str
        Two to six.
    counts : tuple of int
        Hands for each answer; empty: none yet.
    phase : str
        One of `PHASES`: the question alone, hands as they are counted, bars, what is right.
    right : int or None
        Place of the right answer; told at the result alone.
    happened : str
        What the model showed, told at the result alone.
    note : str
        What to do now, below the answers, before the result.

    Raises
    ------
    InputError
        For a phase that is not known, too few or too many answers, counts that do not belong to
        the answers.
    """

    ask: str
    answers: tuple[str, ...]
    counts: tuple[int, ...] = ()
    phase: str = ASK
    right: int | None = None
    happened: str = ""
    note: str = ""

    def __post_init__(self) -> None:
        number = len(self.answers)
        if self.phase not in PHASES:
            raise InputError(
                f"A question has no phase {self.phase!r}",
                place="phase",
                remedy=f"use {', '.join(PHASES)}",
            )
        if not 2 <= number <= len(LETTERS):
            raise InputError(
                f"A question has {number} answers", place="answers", remedy="give it two to six"
            )
        if self.counts and (len(self.counts) != number or min(self.counts) < 0):
            raise InputError(
                f"{number} answers have the counts {self.counts}",
                place="counts",
                remedy="give each answer a count of 0 or more",
            )
        if self.right is not None and not 0 <= self.right < number:
            raise InputError(
                f"Answer number {self.right + 1} of {number} is said to be right",
                place="right",
                remedy="name one of them",
            )

    def hands(self, place: int) -> int:
        """Hands for an answer."""
        return self.counts[place] if self.counts else 0


class Bar(QWidget):
    """A horizontal bar; the right answer's is full, the others' are outlined."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.share: float | None = None
        self.solid = False

    def show_share(self, share: float | None, *, solid: bool) -> None:
        """Length from 0 to 1; None: no bar."""
        self.share, self.solid = share, solid
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        if self.share is None:
            return
        with QPainter(self) as painter:
            box = QRectF(1, 1, max((self.width() - 2) * self.share, 2), self.height() - 2)
            if self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
                box.moveRight(self.width() - 1)
            painter.setPen(QPen(QColor(theme.INK), 2))
            painter.setBrush(QColor(theme.ACCENT if self.solid else theme.NEUTRAL))
            painter.drawRect(box)


class AnswerRow(QWidget):
    """One answer: its letter, its words, its hands in numbers and as a bar."""

    def __init__(self, place: int, alike: list[FittedLabel], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.letter = QLabel(LETTERS[place], self)
        self.letter.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.words = FittedLabel(self, Qt.AlignmentFlag.AlignLeft, alike)
        self.words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self.verdict, self.hands = QLabel(self), QLabel(self)
        for label in (self.verdict, self.hands):
            label.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            label.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Ignored)
        self.bar = Bar(self)
        self.framed = False
        self._edge = 3.0
        self._grid = QGridLayout(self)
        self._grid.addWidget(self.letter, 0, 0, 2, 1)
        self._grid.addWidget(self.words, 0, 1)
        self._grid.addWidget(self.verdict, 0, 2)
        self._grid.addWidget(self.hands, 0, 3)
        self._grid.addWidget(self.bar, 1, 1, 1, 3)
        self._grid.setColumnStretch(1, 1)
        self._grid.setRowStretch(0, 1)

    def set_sizes(self, sizes: theme.Sizes, height: int) -> None:
        """Type sizes, and the row's height."""
        self.setFixedHeight(height)
        self._edge = sizes.gap * 0.45
        inner = round(self._edge) + 1
        self._grid.setContentsMargins(inner, inner, inner + sizes.gap, inner)
        self._grid.setHorizontalSpacing(sizes.gap)
        self._grid.setVerticalSpacing(0)
        thick = max(round(height * 0.17), 3)
        self.bar.setFixedHeight(thick)
        # A view that has no room yet asks for a type all the same.
        type_size = max(min(sizes.sentence, round((height - 2 * inner - thick) / 1.25)), 8)
        for label in (self.letter, self.verdict, self.hands):
            label.setStyleSheet(f"font-size: {type_size}px; font-weight: 600;")
        self.letter.setFixedWidth(round(sizes.sentence * 1.9))
        # "✓ Right" and "999 hands" keep their room, so that nothing moves when they come.
        right = words.text("audience.right", sign=RIGHT)
        hands = words.text("audience.hands", count=999)
        for label, said, heights in ((self.verdict, right, 4.6), (self.hands, hands, 6.3)):
            label.ensurePolished()
            room = label.fontMetrics().horizontalAdvance(said) + 2
            label.setFixedWidth(max(round(type_size * heights), room))
        self.words.set_largest(round(sizes.sentence * ANSWER_SHARE))

    def show_answer(self, poll: Poll, place: int) -> None:
        """Show what a phase tells of an answer."""
        told = poll.phase == RESULT and poll.right == place
        number = poll.hands(place)
        self.words.say(poll.answers[place])
        self.verdict.setText(words.text("audience.right", sign=RIGHT) if told else "")
        counted = poll.phase != ASK
        name = "audience.hand" if number == 1 else "audience.hands"
        self.hands.setText(words.text(name, count=number) if counted else "")
        barred = poll.phase in (BARS, RESULT)
        most = max(poll.counts, default=0)
        self.bar.show_share(number / max(most, 1) if barred else None, solid=told)
        self.framed = told
        self.update()

    def said(self) -> str:
        """The row in words."""
        parts = (self.letter.text(), self.words.text(), self.hands.text(), self.verdict.text())
        return ", ".join(part for part in parts if part)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            half = self._edge / 2
            room = QRectF(self.rect()).adjusted(half, half, -half, -half)
            if self.framed:
                painter.setPen(QPen(QColor(theme.ACCENT), self._edge))
                painter.drawRoundedRect(room, 4 * half, 4 * half)
            badge = QRectF(self.letter.geometry())
            side = min(badge.width(), badge.height()) - 2
            box = QRectF(0, 0, side, side)
            box.moveCenter(badge.center())
            painter.setPen(QPen(QColor(theme.INK), 2))
            painter.drawRoundedRect(box, side / 5, side / 5)


class QuestionView(QWidget):
    """Shows one `Poll`; nothing moves from one phase to the next."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.poll: Poll | None = None
        self._sizes = theme.Sizes.of(0)
        self.ask = FittedLabel(self, bold=True)
        self.happened = FittedLabel(self)
        for label in (self.ask, self.happened):
            label.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        alike: list[FittedLabel] = []
        self.rows = [AnswerRow(place, alike, self) for place in range(len(LETTERS))]
        self._box = QVBoxLayout(self)
        self._box.addWidget(self.ask)
        self._box.addStretch(1)
        for row in self.rows:
            self._box.addWidget(row)
        self._box.addStretch(1)
        self._box.addWidget(self.happened)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._sizes = sizes
        gap = sizes.gap
        self._box.setSpacing(gap // 2)
        self._box.setContentsMargins(2 * gap, gap, 2 * gap, gap)
        self._share_height()

    def show_poll(self, poll: Poll) -> None:
        """Show a question as far as its phase tells it."""
        self.poll = poll
        self._share_height()
        self.ask.say(poll.ask)
        for place, row in enumerate(self.rows):
            there = place < len(poll.answers)
            row.setVisible(there)
            if there:
                row.show_answer(poll, place)
            else:
                row.words.say("")
        told = poll.phase == RESULT and bool(poll.happened)
        happened = words.text("audience.happened", what=poll.happened) if told else poll.note
        self.happened.say(happened)
        self.setAccessibleName(self.said())

    def said(self) -> str:
        """All of it in words."""
        if self.poll is None:
            return ""
        rows = [row.said() for row in self.rows[: len(self.poll.answers)]]
        return "\n".join(part for part in (self.ask.text(), *rows, self.happened.text()) if part)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._share_height()

    def _share_height(self) -> None:
        """Room for the question and for what happened, all the rest for the answers."""
        sizes, gap = self._sizes, self._sizes.gap
        number = len(self.poll.answers) if self.poll is not None else len(LETTERS)
        ask, told = round(sizes.sentence * 1.7), round(sizes.sentence * 1.1)
        heights = (round(ask * TWO_LINES), round(told * TWO_LINES))
        for label, height, largest in zip(
            (self.ask, self.happened), heights, (ask, told), strict=True
        ):
            label.setFixedHeight(height)
            label.set_largest(largest)
        left = self.height() - sum(heights) - 2 * gap - (number + 3) * (gap // 2)
        row = min(left // number, round(sizes.sentence * 4.2))
        for one in self.rows:
            one.set_sizes(sizes, max(row, 1))
