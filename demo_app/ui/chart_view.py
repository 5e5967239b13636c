"""One chart over time, with a cursor at the instant shown."""

import functools
import html
from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from demo_app.scenes.scene import Chart, Reading
from demo_app.ui import theme, words
from demo_app.ui.chart_over import Axes, ChartOver
from demo_app.ui.section_picture import round_up

STYLES = (
    Qt.PenStyle.SolidLine,
    Qt.PenStyle.DashLine,
    Qt.PenStyle.DotLine,
    Qt.PenStyle.DashDotLine,
)
SAMPLES = ("━━", "╍╍", "┅┅", "━╍")
MOST_LEVELS = 4
LINE_PX = 3
HANDLE_AIR = 0.12
SHORT_STORY_S = 30.0


def groups(traces: tuple[Reading, ...]) -> tuple[tuple[Reading, ...], ...]:
    """Traces that share one axis: those of one unit, four at most."""
    units = list(dict.fromkeys(trace.unit for trace in traces))
    return tuple(tuple(t for t in traces if t.unit == unit)[: len(STYLES)] for unit in units)


class ChartView(QWidget):
    """Curves of one unit over time; built once for a scene, then only fed.

    pyqtgraph is loaded with the first `feed`, so that the first picture need not wait for it.

    Attributes
    ----------
    dragged : Signal(str, float, float)
        A handle of a scene's chart was dragged: its id, and where to, in the axes' units.
    """

    dragged = Signal(str, float, float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # Left and right are those of the glass and of time, whichever way the words run.
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self._traces: tuple[Reading, ...] = ()
        self._context = ""
        self._plot: Any = None
        self._curves: list[Any] = []
        self._cursor: Any = None
        self._levels: list[Any] = []
        self._over: ChartOver | None = None
        self._ranges = ((0.0, 1.0), (0.0, 1.0))
        self._waiting = self._ranges
        self._size_px = 16
        self._below = ""
        self._head = QLabel(self)
        self._head.setTextFormat(Qt.TextFormat.RichText)
        self._head.setWordWrap(True)
        self._box = QVBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(2)
        self._box.addWidget(self._head)
        self._box.addStretch(0)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(480, 220)

    def set_traces(self, traces: tuple[Reading, ...], context: str = "") -> None:
        """Choose the curves: of one unit; `context` is that of their names' translations."""
        self._traces, self._context = traces, context
        if self._plot is not None:
            self._style()

    def set_type_size(self, size: int) -> None:
        """Height of the words, pixels."""
        self._size_px = size
        if self._plot is not None:
            self._style()

    def _build(self) -> None:
        import pyqtgraph as pg

        plot = pg.PlotWidget(self, background=theme.STAGE)
        plot.setAccessibleName(words.text("chart.choice"))
        for part in (plot, plot.viewport()):
            part.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        plot.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        item = plot.getPlotItem()
        item.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        item.setMenuEnabled(False)
        item.hideButtons()
        item.setMouseEnabled(False, False)
        item.getViewBox().setDefaultPadding(0.0)
        item.disableAutoRange()
        self._curves = [item.plot([], []) for _ in STYLES]
        level = pg.mkPen(theme.ALERT, width=2, style=Qt.PenStyle.DashLine)
        self._levels = [pg.InfiniteLine(angle=0, pen=level) for _ in range(MOST_LEVELS)]
        self._cursor = pg.InfiniteLine(angle=90, pen=pg.mkPen(theme.DIM, width=2))
        for line in self._levels:
            item.addItem(line)
        item.addItem(self._cursor)
        self._plot = plot
        self._box.addWidget(plot, 1)
        self._over = ChartOver(self)
        self._over.show()
        self._over.dragged.connect(self.dragged)
        self._over.dropped.connect(self._settle)
        plot.installEventFilter(self)
        item.getViewBox().sigResized.connect(self._follow_plot)
        self._style()

    def _style(self) -> None:
        import pyqtgraph as pg

        font = self.font()
        font.setPixelSize(round(self._size_px * 0.85))
        for place in ("left", "bottom"):
            axis = self._plot.getPlotItem().getAxis(place)
            axis.setTickFont(font)
            axis.setTextPen(theme.INK)
            axis.setPen(pg.mkPen(theme.EDGE))
            axis.setStyle(tickLength=-6, tickTextOffset=6, hideOverlappingLabels=True)
            # Switched off alone, it still takes one last factor from a range that is below 1.
            axis.setSIPrefixEnableRanges(())
            axis.enableAutoSIPrefix(False)
            axis.setTickDensity(0.6)
            axis.tickStrings = functools.partial(_ticks, axis)
        bottom = self._plot.getPlotItem().getAxis("bottom")
        bottom.setHeight(round(self._size_px * 2.7))
        self._label_below()
        self._plot.getPlotItem().getAxis("left").setWidth(round(self._size_px * 3.4))
        for curve, colour, style in zip(self._curves, theme.CURVES, STYLES, strict=False):
            curve.setPen(pg.mkPen(colour, width=LINE_PX, style=style))
        lines = 1 if len(self._traces) == 1 else 2
        self._head.setFixedHeight(round(self._size_px * 1.35 * lines))
        self._head.setAlignment(Qt.AlignmentFlag.AlignTop)
        if self._over is not None:
            self._over.set_type_size(round(self._size_px * 0.85))

    def _label_below(self) -> None:
        style = {"color": theme.DIM, "font-size": f"{round(self._size_px * 0.85)}px"}
        self._plot.getPlotItem().getAxis("bottom").setLabel(self._below, **style)

    @property
    def ready(self) -> bool:
        """Whether the chart's library has been loaded."""
        return self._plot is not None

    def feed(self, timeline: Any, time_s: float, end_s: float) -> None:
        """Show what a timeline knows, with the cursor at `time_s`."""
        self._ready_plot()
        shown: list[float] = []
        said: list[str] = []
        unit, factor = _time_unit(end_s)
        highest = time_s
        for index, trace in enumerate(self._traces):
            times, values = timeline.curve(trace.name)
            good = np.isfinite(values)
            times, values = times[good], values[good]
            self._curves[index].setData(times / factor, values)
            now = float("nan")
            if values.size:
                shown += [float(values.min()), float(values.max())]
                highest = max(highest, float(times[-1]))
                now = float(np.interp(time_s, times, values))
            name = words.label(self._context, trace)
            said.append(_head(index, name, words.quantity(now, trace.unit)))
        self._empty_from(len(self._traces))
        ratio = any(trace.name.endswith("_ratio") for trace in self._traces)
        self._show_levels([1.0] if ratio else [])
        if self._over is not None:
            self._over.show_over((), (), (), ("", ""))
        if ratio:
            shown.append(1.15)
        self._cursor.setVisible(True)
        self._cursor.setValue(time_s / factor)
        time_words = f"{words.text('chart.time')} ({unit})"
        self._finish(said, (0.0, _reach(end_s, highest) / factor), _range(shown), time_words)

    def show_chart(self, chart: Chart, texts: Mapping[str, str]) -> None:
        """Show a scene's chart of this instant in place of the traces over time."""
        self._ready_plot()
        shown = [level for _, level in chart.levels]
        along: list[float] = []
        for curve, line in zip(chart.curves, self._curves, strict=False):
            line.setData(curve.x, curve.y)
            shown += [float(np.nanmin(curve.y)), float(np.nanmax(curve.y))]
            along += [float(np.nanmin(curve.x)), float(np.nanmax(curve.x))]
        self._empty_from(len(chart.curves))
        self._show_levels([value for _, value in chart.levels])
        if self._over is not None:
            named = [(_name(texts, level), value) for level, value in chart.levels]
            units = (chart.x_unit, chart.y_unit)
            self._over.show_over(named, chart.curves, chart.handles, units)
        self._cursor.setVisible(False)
        said = [_head(i, _name(texts, curve.id), "") for i, curve in enumerate(chart.curves)]
        y_words = f"{_name(texts, chart.y_id)} ({words.unit(chart.y_unit)})"
        said.insert(0, f"<span style='color:{theme.DIM}'>{html.escape(y_words)}</span>")
        x_words = f"{_name(texts, chart.x_id)} ({words.unit(chart.x_unit)})"
        first, last = min(along, default=0.0), max(along, default=1.0)
        # Room to drag the last handle into.
        reach = (first, last + HANDLE_AIR * (last - first) if chart.handles else last)
        self._finish(said, reach, _range(shown), x_words)

    def _ready_plot(self) -> None:
        if self._plot is None:
            self._build()

    def settle(self) -> None:
        """Take the room now, not with the event loop's next turn: what is seen next is whole."""
        if self._plot is not None:
            self._plot.show()
            self._box.activate()
            self._plot.getPlotItem().layout.activate()

    def _empty_from(self, first: int) -> None:
        for curve in self._curves[first:]:
            curve.setData([], [])

    def _show_levels(self, levels: Sequence[float]) -> None:
        for index, line in enumerate(self._levels):
            line.setVisible(index < len(levels))
            if index < len(levels):
                line.setValue(levels[index])

    def _finish(
        self,
        said: Sequence[str],
        along: tuple[float, float],
        across: tuple[float, float],
        below: str,
    ) -> None:
        self._waiting = ((along[0], max(along[1], along[0] + 1e-6)), across)
        if self._over is None or not self._over.holding:
            self._settle()
        heading = " &nbsp; ".join(said)
        self._head.setText(f"<div style='font-size:{self._size_px}px'>{heading}</div>")
        # It only grows: names that come and go must not make the plot jump.
        needed = self._head.heightForWidth(self._head.width())
        if needed > self._head.height():
            self._head.setFixedHeight(needed)
        if below != self._below:
            self._below = below
            self._label_below()

    def _settle(self) -> None:
        """Let the axes follow; they stand still while a hand holds one of their points."""
        self._ranges = self._waiting
        self._plot.setXRange(*self._ranges[0], padding=0)
        self._plot.setYRange(*self._ranges[1], padding=0)
        self._follow_plot()

    def _follow_plot(self) -> None:
        if self._over is not None:
            box = self._plot.getPlotItem().getViewBox().sceneBoundingRect()
            corner = QPointF(self._plot.mapFromScene(box.topLeft()))
            self._over.set_axes(Axes(QRectF(corner, box.size()), *self._ranges))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: D102
        if event.type() in {QEvent.Type.Resize, QEvent.Type.Move} and self._over is not None:
            self._over.setGeometry(self._plot.geometry())
        return super().eventFilter(watched, event)


def _ticks(axis: Any, values: Sequence[float], scale: float, spacing: float) -> list[str]:
    """An axis's own numbers, with the decimal sign of the language in use."""
    found = type(axis).tickStrings(axis, values, scale, spacing)
    return [one.replace(".", words.decimal_point()) for one in found]


def _name(texts: Mapping[str, str], name: str) -> str:
    return texts.get(name, words.choice(name))


def _head(index: int, label: str, value: str) -> str:
    return (
        f"<span style='white-space:nowrap; color:{theme.CURVES[index]}'>{SAMPLES[index]} "
        f"{html.escape(label)} <b>{html.escape(value)}</b></span>"
    )


def _range(values: list[float]) -> tuple[float, float]:
    """A range with zero in it and some air."""
    low, high = min([0.0, *values]), max([0.0, *values])
    air = 0.06 * max(high - low, 1e-3)
    return (low - air if low < 0 else 0.0), high + air


def _reach(end_s: float, known_s: float) -> float:
    """End of the time axis: the whole of a short story; a long one opens up as it goes on."""
    if end_s <= SHORT_STORY_S:
        return max(end_s, known_s)
    return max(min(end_s, max(SHORT_STORY_S, round_up(1.15 * known_s))), known_s)


def _time_unit(end_s: float) -> tuple[str, float]:
    if end_s < 300:
        return "s", 1.0
    return ("min", 60.0) if end_s < 3 * 3600 else ("h", 3600.0)
