"""One chart over time, with a cursor at the instant shown."""

import html
from typing import Any

import numpy as np
from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from demo_app.scenes.scene import Reading
from demo_app.ui import theme, words

STYLES = (Qt.PenStyle.SolidLine, Qt.PenStyle.DashLine, Qt.PenStyle.DotLine)
SAMPLES = ("━━", "╍╍", "┅┅")
LINE_PX = 3


def groups(traces: tuple[Reading, ...]) -> tuple[tuple[Reading, ...], ...]:
    """Traces that share one axis: those of one unit, three at most."""
    units = list(dict.fromkeys(trace.unit for trace in traces))
    return tuple(tuple(t for t in traces if t.unit == unit)[: len(STYLES)] for unit in units)


class ChartView(QWidget):
    """Curves of one unit over time; built once for a scene, then only fed.

    pyqtgraph is loaded with the first `feed`, so that the first picture need not wait for it.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._traces: tuple[Reading, ...] = ()
        self._plot: Any = None
        self._curves: list[Any] = []
        self._cursor: Any = None
        self._limit: Any = None
        self._size_px = 16
        self._unit = "s"
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

    def set_traces(self, traces: tuple[Reading, ...]) -> None:
        """Choose the curves: of one unit."""
        self._traces = traces
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
        plot.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        plot.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        item = plot.getPlotItem()
        item.setMenuEnabled(False)
        item.hideButtons()
        item.setMouseEnabled(False, False)
        item.getViewBox().setDefaultPadding(0.0)
        item.disableAutoRange()
        self._curves = [item.plot([], []) for _ in STYLES]
        self._limit = pg.InfiniteLine(angle=0, pen=pg.mkPen(theme.ALERT, width=2, style=STYLES[1]))
        self._cursor = pg.InfiniteLine(angle=90, pen=pg.mkPen(theme.DIM, width=2))
        item.addItem(self._limit)
        item.addItem(self._cursor)
        self._plot = plot
        self._box.addWidget(plot, 1)
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
            axis.enableAutoSIPrefix(False)
            axis.setTickDensity(0.6)
        bottom = self._plot.getPlotItem().getAxis("bottom")
        bottom.setHeight(round(self._size_px * 2.7))
        self._label_time()
        self._plot.getPlotItem().getAxis("left").setWidth(round(self._size_px * 3.4))
        for curve, colour, style in zip(self._curves, theme.CURVES, STYLES, strict=False):
            curve.setPen(pg.mkPen(colour, width=LINE_PX, style=style))
        lines = min(len(self._traces), 2)
        self._head.setFixedHeight(round(self._size_px * 1.35 * lines))
        self._head.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._limit.setVisible(any(t.name.endswith("_ratio") for t in self._traces))
        self._limit.setValue(1.0)

    def _label_time(self) -> None:
        style = {"color": theme.DIM, "font-size": f"{round(self._size_px * 0.85)}px"}
        axis = self._plot.getPlotItem().getAxis("bottom")
        axis.setLabel(f"{words.text('chart.time')} ({self._unit})", **style)

    @property
    def ready(self) -> bool:
        """Whether the chart's library has been loaded."""
        return self._plot is not None

    def feed(self, timeline: Any, time_s: float, end_s: float) -> None:
        """Show what a timeline knows, with the cursor at `time_s`."""
        if self._plot is None:
            self._build()
        shown: list[float] = []
        said: list[str] = []
        unit, factor = _time_unit(end_s)
        highest = end_s
        for index, curve in enumerate(self._curves):
            if index >= len(self._traces):
                curve.setData([], [])
                continue
            trace = self._traces[index]
            times, values = timeline.curve(trace.name)
            good = np.isfinite(values)
            times, values = times[good], values[good]
            curve.setData(times / factor, values)
            now = float("nan")
            if values.size:
                shown += [float(values.min()), float(values.max())]
                highest = max(highest, float(times[-1]))
                now = float(np.interp(time_s, times, values))
            said.append(_head(index, trace, now))
        if self._limit.isVisible():
            shown.append(1.15)
        low, high = _range(shown)
        self._plot.setYRange(low, high, padding=0)
        self._plot.setXRange(0, max(highest / factor, 1e-6), padding=0)
        self._cursor.setValue(time_s / factor)
        heading = " &nbsp; ".join(said)
        self._head.setText(f"<div style='font-size:{self._size_px}px'>{heading}</div>")
        if unit != self._unit:
            self._unit = unit
            self._label_time()
        self.setAccessibleDescription(", ".join(t.label for t in self._traces))


def _head(index: int, trace: Reading, now: float) -> str:
    value = words.quantity(now, trace.unit)
    return (
        f"<span style='white-space:nowrap; color:{theme.CURVES[index]}'>{SAMPLES[index]} "
        f"{html.escape(trace.label)} <b>{html.escape(value)}</b></span>"
    )


def _range(values: list[float]) -> tuple[float, float]:
    """A range with zero in it and some air."""
    low, high = min([0.0, *values]), max([0.0, *values])
    air = 0.06 * max(high - low, 1e-3)
    return (low - air if low < 0 else 0.0), high + air


def _time_unit(end_s: float) -> tuple[str, float]:
    if end_s < 300:
        return "s", 1.0
    return ("min", 60.0) if end_s < 3 * 3600 else ("h", 3600.0)
