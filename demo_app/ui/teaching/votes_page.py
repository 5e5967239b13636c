"""The votes of a class before and after, as a chart for the teacher, and a button for the table."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from demo_app.content.lessons.records import Lesson, Step
from demo_app.content.lessons.votes import Votes, bars, gain
from demo_app.ui import theme, words
from demo_app.ui.pages.parts import Page, label, push
from demo_app.ui.question_view import Bar

ABOVE = 3
"""What stands over the charts: title, note, or that there are none."""


class VotesPage(Page):
    """One chart a question.

    Attributes
    ----------
    save_asked : Signal()
    """

    save_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shown: Votes | None = None
        self._sizes = theme.Sizes.of(720)
        self.charts: list[VotesChart] = []
        self.none = label(words.text("votes.none"), "quiet")
        self.save = push("votes.save")
        self.save.clicked.connect(self.save_asked)
        self.line = label("", "quiet")
        self.box.addWidget(label(words.text("votes.title"), "title"))
        self.box.addWidget(label(words.text("votes.note"), "quiet"))
        self.box.addWidget(self.none)
        self.box.addWidget(self.save, 0, Qt.AlignmentFlag.AlignLeft)
        self.box.addWidget(self.line)
        self.box.addStretch(1)
        self.save.setEnabled(False)

    def set_sizes(self, sizes: theme.Sizes) -> None:  # noqa: D102
        super().set_sizes(sizes)
        self._sizes = sizes
        for chart in self.charts:
            chart.set_sizes(sizes)

    def show_votes(self, lesson: Lesson, votes: Votes) -> None:
        """Show what has been counted so far."""
        if votes == self._shown:
            return
        self._shown = votes
        for old in self.charts:
            self.box.removeWidget(old)
            old.hide()
            old.deleteLater()
        steps = [step for step in lesson.steps if step.id in votes.tallies]
        self.charts = [VotesChart(lesson, votes, step) for step in steps]
        for place, chart in enumerate(self.charts):
            chart.set_sizes(self._sizes)
            self.box.insertWidget(ABOVE + place, chart)
            chart.show()
        self.none.setVisible(not self.charts)
        self.save.setEnabled(bool(self.charts))

    def tell(self, said: str) -> None:
        """Whether the votes are on the disk."""
        self.line.setText(said)


class VotesChart(QWidget):
    """For each answer two bars: hands before and after, in numbers and in shares."""

    def __init__(
        self, lesson: Lesson, votes: Votes, step: Step, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        assert step.question is not None
        tally = votes.tallies[step.id]
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setColumnStretch(0, 3)
        self._grid.setColumnStretch(2, 4)
        self._grid.addWidget(label(step.question.ask, "value"), 0, 0, 1, 4)
        self.bars: list[Bar] = []
        for place, one in enumerate(bars(lesson, votes, step.id)):
            said = f"{one.letter}  {one.text}"
            if one.right:
                said = words.text("votes.right", answer=said)
            row = 1 + 2 * place
            self._grid.addWidget(label(said), row, 0, 2, 1)
            before = tally.before[place] if any(tally.before) else None
            after = tally.after[place] if tally.after else None
            self._row(row, "votes.before", before, one.before, solid=False)
            self._row(row + 1, "votes.after", after, one.after, solid=True)
        gained = gain(tally)
        if gained is not None:
            said = words.text("votes.gain", percent=words.number(round(100 * gained)))
            self._grid.addWidget(label(said, "quiet"), self._grid.rowCount(), 0, 1, 4)

    def _row(self, row: int, name: str, count: int | None, share: float, *, solid: bool) -> None:
        bar = Bar(self)
        bar.show_share(None if count is None else share, solid=solid)
        said = words.text("votes.after.none")
        if count is not None:
            said = words.text("votes.count", count=count, percent=round(100 * share))
        bar.setAccessibleName(f"{words.text(name)}: {said}")
        for column, widget in enumerate((QLabel(words.text(name)), bar, QLabel(said)), start=1):
            self._grid.addWidget(widget, row, column)
        self.bars.append(bar)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing, and how thick a bar is."""
        self._grid.setHorizontalSpacing(sizes.gap * 2)
        self._grid.setVerticalSpacing(max(sizes.gap // 3, 2))
        for bar in self.bars:
            bar.setFixedHeight(sizes.panel)
