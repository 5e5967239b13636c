"""A chart of ranges along one axis, one below the other, over a strip of interference colours."""

from collections.abc import Mapping

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QImage, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from demo_app.optics.instrument import Instrument
from demo_app.optics.strip import colour_strip
from demo_app.scenes.scene import Chart, Span
from demo_app.ui import theme, words

HERE = "here"
"""Id of the span that marks one place, drawn over all the others."""
_STEPS = (1, 2, 5)


class RangesView(QWidget):
    """Names on the left, ranges beside them, colours and numbers below."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # Left and right are those of the glass and of time, whichever way the words run.
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self._chart: Chart | None = None
        self._texts: Mapping[str, str] = {}
        self._instrument = Instrument()
        self._size_px = 16
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(480, 220)

    def set_type_size(self, size: int) -> None:
        """Height of the words, pixels."""
        self._size_px = size
        self.update()

    def show_ranges(self, chart: Chart, texts: Mapping[str, str], instrument: Instrument) -> None:
        """Show a chart's spans, and their colours as `instrument` makes them."""
        self._chart, self._texts, self._instrument = chart, texts, instrument
        self.setAccessibleName(self._said(chart))
        self.update()

    def _said(self, chart: Chart) -> str:
        """The chart in words."""
        unit = words.unit(chart.x_unit)
        found = [
            f"{self._texts[one.id]} {words.number(one.low)}–{words.number(one.high)} {unit}"
            for one in chart.spans
        ]
        return "; ".join(found)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), QColor(theme.STAGE))
            if self._chart is not None:
                painter.setRenderHint(QPainter.RenderHint.Antialiasing)
                self._paint(painter, self._chart)

    def _paint(self, painter: QPainter, chart: Chart) -> None:
        strips = self._strips(chart)
        lines = len(chart.spans) + sum(share for _, _, share in strips) + 2.8
        size = min(self._size_px, int(self.height() / lines / 1.25))
        font = painter.font()
        font.setPixelSize(max(size, 9))
        painter.setFont(font)
        metrics = QFontMetricsF(font)
        row = 1.25 * font.pixelSize()
        said = [self._texts[span.id] for span in chart.spans] + [name for name, _, _ in strips]
        left = max(metrics.horizontalAdvance(name) for name in said) + row
        axis = QRectF(left, 0.3 * row, self.width() - left - row, self.height())
        y = axis.top()
        for span in chart.spans:
            self._name(painter, self._texts[span.id], left, y, row)
            if span.id != HERE:
                self._bar(painter, span, axis, y + row / 2, row)
            y += row
        bottom = y
        y += 0.2 * row
        for name, image, share in strips:
            box = QRectF(axis.left(), y, axis.width(), share * row)
            painter.drawImage(box, image)
            self._name(painter, name, left, y, share * row)
            y = box.bottom()
        self._ticks(painter, axis, y, row)
        for span in chart.spans:
            if span.id == HERE:
                x = self._x(span.middle, axis)
                painter.setPen(QPen(QColor(theme.ALERT), 2))
                painter.drawLine(QPointF(x, axis.top()), QPointF(x, max(y, bottom)))

    def _strips(self, chart: Chart) -> list[tuple[str, QImage, float]]:
        """Names, pictures and heights (rows) of the strips: two if the direction counts."""
        if not chart.colours:
            return []
        both = colour_strip(self._instrument, chart.reach)
        if np.abs(both[0].astype(int) - both[1]).max() <= 1:
            return [("", _image(both[0]), 1.2)]
        names = words.text("strip.adds"), words.text("strip.takes")
        return [(name, _image(one), 0.9) for name, one in zip(names, both, strict=True)]

    def _x(self, value: float, axis: QRectF) -> float:
        reach = self._chart.reach if self._chart is not None else 1.0
        return axis.left() + axis.width() * min(max(value / reach, 0.0), 1.0)

    def _name(self, painter: QPainter, said: str, left: float, y: float, height: float) -> None:
        painter.setPen(QColor(theme.INK))
        box = QRectF(0, y, left - 0.5 * height, height)
        painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, said)

    def _bar(self, painter: QPainter, span: Span, axis: QRectF, y: float, row: float) -> None:
        low, middle, high = (self._x(v, axis) for v in (span.low, span.middle, span.high))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(theme.COMPRESSION))
        painter.drawRect(QRectF(low, y - 0.18 * row, max(high - low, 3.0), 0.36 * row))
        painter.setPen(QPen(QColor(theme.INK), 3))
        painter.drawLine(QPointF(middle, y - 0.36 * row), QPointF(middle, y + 0.36 * row))

    def _ticks(self, painter: QPainter, axis: QRectF, y: float, row: float) -> None:
        assert self._chart is not None
        unit = f"{self._texts[self._chart.x_id]} ({words.unit(self._chart.x_unit)})"
        step = _round_step(self._chart.reach, int(axis.width() / (4 * row)))
        painter.setPen(QColor(theme.DIM))
        flags = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop
        for value in np.arange(0.0, self._chart.reach, step):
            x = self._x(float(value), axis)
            painter.drawLine(QPointF(x, y), QPointF(x, y + 0.2 * row))
            painter.drawText(
                QRectF(x - 2 * row, y + 0.2 * row, 4 * row, row), flags, words.number(float(value))
            )
        painter.drawText(QRectF(axis.left(), y + 1.1 * row, axis.width(), row), flags, unit)


def _image(colours: np.ndarray) -> QImage:
    """One row of colours, shape (count, 3), as a picture."""
    data = np.ascontiguousarray(colours)
    return QImage(data.data, len(data), 1, 3 * len(data), QImage.Format.Format_RGB888).copy()


def _round_step(reach: float, most: int) -> float:
    """Distance of at most `most` ticks: 1, 2 or 5 times a power of ten."""
    step = 10.0 ** np.floor(np.log10(reach / max(most, 1)))
    return float(next((k * step for k in _STEPS if reach / (k * step) <= most), 10 * step))
