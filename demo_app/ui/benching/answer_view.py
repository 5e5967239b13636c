"""An answer on the screen: figure, sentences, chart, tables, limits; the caution stays below."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QLabel,
    QScrollArea,
    QScroller,
    QVBoxLayout,
    QWidget,
)

from demo_app.content.bench.answer import Answer, Page
from demo_app.content.bench.words import CAUTIONS
from demo_app.scenes.scene import Chart
from demo_app.ui import theme, words
from demo_app.ui.benching import said
from demo_app.ui.benching.figures import BigFigure, FigureList, plain
from demo_app.ui.benching.plain_table import PlainTable
from demo_app.ui.benching.strips import StripView
from demo_app.ui.chart_view import ChartView

_TWO_COLUMNS = 42
"""Width, in heights of the type, from which the chart stands beside the figures."""


class AnswerChart(ChartView):
    """A chart whose names above it get the lines that they need at its width."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shown: tuple[Chart, dict[str, str]] | None = None

    def show_answer(self, chart: Chart, texts: dict[str, str]) -> None:
        """Show a chart of an answer."""
        self._shown = chart, texts
        self.show_chart(chart, texts)

    def set_type_size(self, size: int) -> None:  # noqa: D102
        super().set_type_size(size)
        self._again()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._again()

    def _again(self) -> None:
        if self._shown is not None:
            self.show_chart(*self._shown)


class AnswerView(QWidget):
    """Shows one answer after the other of the same page, and what every one must carry."""

    def __init__(self, page: Page, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._page, self._texts = page, said.page_texts(page)
        self.answer: Answer | None = None
        self._sizes: theme.Sizes | None = None
        body = self._body = QWidget()
        body.setObjectName("page")
        self.title = plain(body)
        self.title.setObjectName("title")
        self.title.setText(said.help_of(page))
        self.note = plain(body)
        self.note.setObjectName("alert")
        self.big, self.figures = BigFigure(body), FigureList(body)
        self.said = plain(body)
        self.said.setObjectName("said")
        self.charts: list[AnswerChart] = []
        self.strips: list[StripView] = []
        self.tables: list[tuple[QLabel, PlainTable]] = []
        self.limits_title, self.limits = plain(body), plain(body)
        self.limits_title.setObjectName("title")
        self.limits_title.setText(words.text("bench.limits"))
        self._columns = QGridLayout()
        self._more = QVBoxLayout()
        self._box = QVBoxLayout(body)
        self._box.addWidget(self.title)
        self._box.addWidget(self.note)
        self._box.addLayout(self._columns)
        self._box.addLayout(self._more)
        self._box.addWidget(self.limits_title)
        self._box.addWidget(self.limits)
        self._box.addStretch(1)
        self.area = QScrollArea(self)
        self.area.setObjectName("answer")
        self.area.setAccessibleName(words.text("bench.answer"))
        self.area.setWidgetResizable(True)
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setWidget(body)
        QScroller.grabGesture(self.area.viewport(), QScroller.ScrollerGestureType.TouchGesture)
        self.caution = plain(self)
        self.caution.setObjectName("caution")
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self.area, 1)
        outer.addWidget(self.caution)
        self._wide: bool | None = None
        self.clear("")

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._sizes = sizes
        self._box.setContentsMargins(sizes.gap, 0, sizes.gap, sizes.gap)
        self._box.setSpacing(sizes.gap)
        self._columns.setSpacing(sizes.gap)
        self._more.setSpacing(sizes.gap)
        for chart in self.charts:
            self._size_chart(chart)
        self._arrange()

    def insert_tool(self, widget: QWidget) -> None:
        """A tool of a page's own above its answer."""
        self._box.insertWidget(1, widget)

    def add_tool(self, widget: QWidget) -> None:
        """A tool of a page's own under its figures."""
        self._box.insertWidget(self._box.indexOf(self.limits_title) - 1, widget)

    def clear(self, why: str) -> None:
        """Show no answer, and why."""
        self.answer = None
        self.note.setText(why)
        self.note.setVisible(bool(why))
        self._show_parts(False)
        self.caution.setText(cautions())

    def set_old(self, old: bool) -> None:
        """Say that what stands here answers earlier inputs."""
        if self.answer is not None:
            self.note.setText(words.text("bench.old"))
            self.note.setVisible(old)
            self.big.setEnabled(not old)
            self.figures.setEnabled(not old)

    def show_answer(self, answer: Answer) -> None:
        """Show an answer."""
        self.answer = answer
        texts = self._texts
        self.note.hide()
        self._show_parts(True)
        self.big.setEnabled(True)
        self.figures.setEnabled(True)
        self.big.show_figure(answer.figures[0], texts)
        self.figures.show_figures(answer.figures[1:], texts)
        self.said.setText("\n".join(one.words(texts) for one in answer.sentences))
        self.limits.setText("\n".join(f"•  {one.words(texts)}" for one in answer.limits))
        self.caution.setText(" ".join(one.words(texts) for one in answer.cautions))
        self._show_charts(answer)
        self._show_strips(answer)
        self._show_tables(answer)
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._arrange()

    def _show_parts(self, shown: bool) -> None:
        more = [*self.charts, *self.strips, *(one for pair in self.tables for one in pair)]
        for widget in (self.big, self.figures, self.said, self.limits_title, self.limits, *more):
            widget.setVisible(shown)

    def _show_charts(self, answer: Answer) -> None:
        while len(self.charts) < len(answer.charts):
            made = AnswerChart(self._body)
            self.charts.append(made)
            self._size_chart(made)
            self._wide = None
        for place, view in enumerate(self.charts):
            view.setVisible(place < len(answer.charts))
            if place < len(answer.charts):
                view.show_answer(answer.charts[place], self._texts)
                view.setAccessibleName(chart_name(answer, place, self._texts))

    def _size_chart(self, chart: AnswerChart) -> None:
        if self._sizes is not None:
            chart.set_type_size(self._sizes.panel)
            chart.setMinimumHeight(round(self._sizes.panel * 15))

    def _show_strips(self, answer: Answer) -> None:
        while len(self.strips) < len(answer.strips):
            made = StripView(self._body)
            self.strips.append(made)
            self._more.addWidget(made)
        for place, view in enumerate(self.strips):
            view.setVisible(place < len(answer.strips))
            if place < len(answer.strips):
                strip = answer.strips[place]
                view.show_strip(strip, self._texts[strip.id])

    def _show_tables(self, answer: Answer) -> None:
        while len(self.tables) < len(answer.tables):
            title, made = plain(self._body), PlainTable(self._body)
            title.setObjectName("title")
            self.tables.append((title, made))
            self._more.addWidget(title)
            self._more.addWidget(made)
        for place, (title, table) in enumerate(self.tables):
            for widget in (title, table):
                widget.setVisible(place < len(answer.tables))
            if place < len(answer.tables):
                one = answer.tables[place]
                title.setText(self._texts[one.id])
                table.setAccessibleName(self._texts[one.id])
                table.show_rows(said.rows(one, self._texts))

    def _arrange(self) -> None:
        """Figures and sentences, the chart beside them where there is room, else below."""
        wide = self.width() >= _TWO_COLUMNS * self.fontMetrics().height() and bool(self.charts)
        if wide == self._wide:
            return
        self._wide = wide
        left: Sequence[QWidget] = (self.big, self.said, self.figures)
        for widget in (*left, *self.charts):
            self._columns.removeWidget(widget)
        for row, widget in enumerate(left):
            self._columns.addWidget(widget, row, 0)
        for place, chart in enumerate(self.charts):
            if wide:
                self._columns.addWidget(chart, 0, 1 + place, len(left), 1)
            else:
                self._columns.addWidget(chart, len(left) + place, 0)
        for column in range(1 + len(self.charts)):
            self._columns.setColumnStretch(column, 1 if column == 0 or wide else 0)


def cautions() -> str:
    """The caution of every page, before there is an answer."""
    texts = said.common()
    return " ".join(one.words(texts) for one in CAUTIONS)


def chart_name(answer: Answer, place: int, texts: dict[str, str]) -> str:
    """A chart for those who do not see it: what over what."""
    chart = answer.charts[place]
    curves = ", ".join(texts.get(one.id, one.id) for one in chart.curves)
    return words.text("bench.chart", up=texts[chart.y_id], across=texts[chart.x_id], curves=curves)
