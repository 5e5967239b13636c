"""A map on the screen: filled contours, the verdict's border, axes, a key, and a point to read."""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QImage,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from demo_app.base.errors import InputError
from demo_app.content.maps.border import Band, Border, bands, borders, round_levels
from demo_app.content.maps.result import Map
from demo_app.ui import theme, words

Array = NDArray[np.float64]
LEVELS = 8
EVEN = 0.5
"""Where a probability has its border."""
_LINES = (Qt.PenStyle.SolidLine, Qt.PenStyle.DashLine, Qt.PenStyle.DotLine)


@dataclass(frozen=True)
class Titles:
    """Words on a map: both axes with their units, the reading, its unit, and the verdict's name."""

    across: str
    up: str
    reading: str
    unit: str
    verdict: str
    context: str = ""
    """Of the translations of the readings' words."""


@dataclass(frozen=True)
class Inks:
    """Colours of ground, words, quiet words, lines, and of what has no value."""

    ground: str
    ink: str
    dim: str
    edge: str
    none: str


SCREEN = Inks(theme.STAGE, theme.INK, theme.DIM, theme.EDGE, theme.NEUTRAL)
PAPER = Inks("#ffffff", "#000000", "#333333", "#666666", "#dddddd")
PRINTED = 2.0
"""Pixels on paper for each on the screen."""


def ramp(count: int) -> list[QColor]:
    """So many colours from cold to hot, the lightness rising all the way."""
    stops = np.array([[QColor(c).red(), QColor(c).green(), QColor(c).blue()] for c in theme.HEAT])
    at = np.linspace(0.08, 1.0, max(count, 1)) * (len(stops) - 1)
    parts = [np.interp(at, np.arange(len(stops)), stops[:, k]) for k in range(3)]
    return [QColor(*(round(float(p[i])) for p in parts)) for i in range(max(count, 1))]


class MapPicture(QWidget):
    """Paints a map; arrow keys or the mouse choose a point.

    Attributes
    ----------
    pointed : Signal(int)
        Index of the point that is looked at.
    """

    pointed = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # Left and right are those of the glass and of time, whichever way the words run.
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self._map: Map | None = None
        self._titles = Titles("", "", "", "", "")
        self._reading, self._verdict = "", ""
        self._levels: tuple[float, ...] = ()
        self._words: tuple[str, ...] = ()
        self._values: Array | None = None
        self._bands: tuple[Band, ...] = ()
        self._borders: tuple[Border, ...] = ()
        self.place = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(words.text("bench.map"))
        self.setAccessibleDescription(words.text("bench.map.point"))

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(500, 380)

    def show_map(self, found: Map, reading: str, verdict: str, titles: Titles) -> None:
        """Show a map, whole or as far as it is done.

        Parameters
        ----------
        found : Map
            Its points.
        reading, verdict : str
            What is filled, and whose border is drawn ("": none).
        titles : Titles
            Words around it.
        """
        self._map, self._titles = found, titles
        self._reading, self._verdict = reading, verdict
        self.place = min(self.place, found.plan.count - 1)
        self._values, named = _as_numbers(found, reading)
        self._words = tuple(self._word(reading, one) for one in named)
        self._bands, self._borders = (), ()
        if self._words:
            self._levels = tuple(float(k) - 0.5 for k in range(len(self._words) + 1))
        else:
            self._levels = round_levels(self._values, LEVELS)
            if found.whole and len(self._levels) > 1 and min(found.plan.shape) > 1:
                self._bands = bands(found, reading, self._levels)
        if verdict and found.whole:
            self._borders = _borders(found, verdict)
        self.update()

    def _word(self, reading: str, value: str) -> str:
        """A value of a reading that is no number."""
        if value in ("True", "yes"):
            return words.text("yes")
        if value == "False":
            return words.text("no")
        said = words.said(self._titles.context, f"value.{reading}.{value}", value)
        return said[:1].upper() + said[1:] if said != value else words.choice(value)

    def clear(self) -> None:
        """Show no map."""
        self._map, self.place = None, 0
        self.update()

    @property
    def has_border(self) -> bool:
        """Whether a border is drawn."""
        return any(one.lines for one in self._borders)

    @property
    def is_filled(self) -> bool:
        """Whether contours are filled, not single points."""
        return bool(self._bands)

    def _box(self) -> QRectF:
        line = self.fontMetrics().height()
        left, right = line * 4.2, self._key_width() + line
        return QRectF(left, line * 1.6, self.width() - left - right, self.height() - line * 6)

    def _key_width(self) -> float:
        metrics = self.fontMetrics()
        wide = [metrics.horizontalAdvance(one) for one, _ in self._key()]
        return max(wide, default=60) + metrics.height() * 2.2

    def _key(self) -> list[tuple[str, QBrush | Qt.PenStyle]]:
        """Entries of the key: words with a colour or a line, the highest first."""
        entries: list[tuple[str, QBrush | Qt.PenStyle]] = []
        colours = ramp(len(self._levels) - 1)
        if self._words:
            entries += [
                (word, QBrush(colour)) for word, colour in zip(self._words, colours, strict=False)
            ]
        else:
            for low, high, colour in zip(self._levels, self._levels[1:], colours, strict=False):
                said = words.text("bench.span", low=words.number(low), high=words.number(high))
                entries.insert(0, (said, QBrush(colour)))
        for style, one in zip(_LINES, self._borders, strict=False):
            entries.append(
                (f"{self._titles.verdict}: {self._word(self._verdict, one.name)}", style)
            )
        if self._map is not None and self._map.refused:
            entries.append((words.text("bench.map.refused"), _hatch()))
        return entries

    def _to_screen(self, across: Array, up: Array) -> QPolygonF:
        assert self._map is not None
        box, (left, right), (low, high) = self._box(), self._ends(0), self._ends(1)
        x = box.left() + (across - left) / (right - left) * box.width()
        y = box.bottom() - (up - low) / (high - low) * box.height()
        return QPolygonF([QPointF(float(a), float(b)) for a, b in zip(x, y, strict=True)])

    def _ends(self, axis: int) -> tuple[float, float]:
        assert self._map is not None
        values = self._map.up() if axis else self._map.across()
        return float(values.min()), float(values.max())

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        with QPainter(self) as painter:
            self._paint(painter, SCREEN)
            if self._map is not None:
                self._paint_point(painter)
            if self.hasFocus():
                painter.setPen(QPen(QColor(theme.INK), 2))
                painter.drawRect(self.rect().adjusted(1, 1, -1, -1))

    def on_paper(self) -> NDArray[np.uint8]:
        """The map on white, shape (height, width, 3), red first."""
        image = QImage(self.size() * PRINTED, QImage.Format.Format_RGB888)
        with QPainter(image) as painter:
            painter.scale(PRINTED, PRINTED)
            painter.setFont(self.font())
            self._paint(painter, PAPER)
        rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
        return rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3).copy()

    def _paint(self, painter: QPainter, inks: Inks) -> None:
        painter.fillRect(self.rect(), QColor(inks.ground))
        if self._map is not None:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint_values(painter, inks)
            self._paint_borders(painter)
            self._paint_axes(painter, inks)
            self._paint_key(painter, inks)

    def _paint_values(self, painter: QPainter, inks: Inks) -> None:
        assert self._map is not None
        assert self._values is not None
        box = self._box()
        painter.save()
        painter.setClipRect(box)
        painter.fillRect(box, QColor(inks.none))
        painter.setPen(Qt.PenStyle.NoPen)
        colours = ramp(len(self._levels) - 1)
        if self._bands:
            for band, colour in zip(self._bands, colours, strict=True):
                path = QPainterPath()
                path.setFillRule(Qt.FillRule.OddEvenFill)
                for polygon in band.polygons:
                    for ring in polygon:
                        path.addPolygon(self._to_screen(ring[:, 0], ring[:, 1]))
                        path.closeSubpath()
                # A line of the same colour closes the hair between neighbouring bands.
                painter.setPen(QPen(colour, 1))
                painter.setBrush(colour)
                painter.drawPath(path)
        else:
            self._paint_cells(painter, colours)
        for one in self._map.refused:
            painter.fillRect(self._cell(one.index), _hatch())
        painter.restore()

    def _paint_cells(self, painter: QPainter, colours: list[QColor]) -> None:
        """Points that are done as a picture of one pixel each, drawn large."""
        assert self._values is not None
        rows, columns = self._values.shape
        band = np.searchsorted(self._levels, np.nan_to_num(self._values), side="right") - 1
        inks = np.array([[c.red(), c.green(), c.blue(), 255] for c in colours], np.uint8)
        shown = inks[np.clip(band, 0, len(colours) - 1)]
        shown[~np.isfinite(self._values)] = 0
        data = np.ascontiguousarray(shown[::-1]).tobytes()
        image = QImage(data, columns, rows, 4 * columns, QImage.Format.Format_RGBA8888)
        box = self._box()
        wide, high = box.width() / max(columns - 1, 1), box.height() / max(rows - 1, 1)
        around = box.adjusted(-wide / 2, -high / 2, wide / 2, high / 2)
        painter.drawImage(around, image)

    def _cell(self, index: int) -> QRectF:
        assert self._map is not None
        rows, columns = self._map.plan.shape
        row, column = divmod(index, columns)
        box = self._box()
        wide, high = box.width() / max(columns - 1, 1), box.height() / max(rows - 1, 1)
        x, y = box.left() + column * wide, box.bottom() - row * high
        return QRectF(x - wide / 2, y - high / 2, wide, high).intersected(box)

    def _paint_borders(self, painter: QPainter) -> None:
        painter.save()
        painter.setClipRect(self._box())
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for style, border in zip(_LINES, self._borders, strict=False):
            for colour, wide, dashes in (
                ("#000000", 6, Qt.PenStyle.SolidLine),
                ("#ffffff", 3, style),
            ):
                painter.setPen(QPen(QColor(colour), wide, dashes))
                for line in border.lines:
                    painter.drawPolyline(self._to_screen(line[:, 0], line[:, 1]))
        painter.restore()

    def _paint_axes(self, painter: QPainter, inks: Inks) -> None:
        box, metrics = self._box(), self.fontMetrics()
        line = metrics.height()
        painter.setPen(QPen(QColor(inks.edge), 1))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(box)
        for axis in (0, 1):
            low, high = self._ends(axis)
            for value in round_levels(np.array([low, high]), 5):
                if not low - 1e-9 <= value <= high + 1e-9:
                    continue
                said, share = words.number(value), (value - low) / (high - low)
                painter.setPen(QColor(inks.ink))
                if axis == 0:
                    x = box.left() + share * box.width()
                    place = QRectF(x - 40, box.bottom() + 6, 80, line)
                    painter.drawText(place, Qt.AlignmentFlag.AlignHCenter, said)
                    painter.drawLine(QPointF(x, box.bottom()), QPointF(x, box.bottom() + 5))
                else:
                    y = box.bottom() - share * box.height()
                    place = QRectF(0, y - line / 2, box.left() - 8, line)
                    painter.drawText(place, Qt.AlignmentFlag.AlignRight, said)
                    painter.drawLine(QPointF(box.left() - 5, y), QPointF(box.left(), y))
        below = QRectF(0, box.bottom() + line * 1.6, box.right(), line * 1.3)
        painter.setPen(QColor(inks.dim))
        painter.drawText(below, Qt.AlignmentFlag.AlignRight, f"{self._titles.across} →")
        above = QRectF(4, 2, self.width() - 8, line * 1.3)
        painter.drawText(above, Qt.AlignmentFlag.AlignLeft, f"↑ {self._titles.up}")

    def _paint_key(self, painter: QPainter, inks: Inks) -> None:
        box, line = self._box(), self.fontMetrics().height()
        x, y = box.right() + line * 0.8, box.top()
        painter.setPen(QColor(inks.ink))
        unit = f" ({self._titles.unit})" if self._titles.unit else ""
        title = QRectF(box.left(), box.bottom() + line * 2.7, self.width() - box.left(), line * 1.3)
        painter.drawText(
            title,
            Qt.AlignmentFlag.AlignLeft,
            words.text("bench.map.colours", reading=f"{self._titles.reading}{unit}"),
        )
        for said, how in self._key():
            sample = QRectF(x, y + line * 0.15, line * 1.1, line * 0.9)
            if isinstance(how, QBrush):
                painter.fillRect(sample, how)
            else:
                middle = sample.center().y()
                painter.setPen(QPen(QColor(inks.ink), 3, how))
                painter.drawLine(QPointF(sample.left(), middle), QPointF(sample.right(), middle))
            painter.setPen(QColor(inks.ink))
            painter.drawText(QPointF(x + line * 1.4, y + line * 0.9), said)
            y += line * 1.35

    def _paint_point(self, painter: QPainter) -> None:
        centre = self._to_screen(*(np.array([v]) for v in self._at(self.place))).first()
        for colour, wide in (("#000000", 4), ("#ffffff", 2)):
            painter.setPen(QPen(QColor(colour), wide))
            painter.drawEllipse(centre, 6, 6)

    def _at(self, index: int) -> tuple[float, float]:
        assert self._map is not None
        row, column = divmod(index, self._map.plan.shape[1])
        return float(self._map.across()[column]), float(self._map.up()[row])

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        moves = {
            Qt.Key.Key_Left: (0, -1),
            Qt.Key.Key_Right: (0, 1),
            Qt.Key.Key_Up: (1, 0),
            Qt.Key.Key_Down: (-1, 0),
        }
        move = moves.get(Qt.Key(event.key()))
        if move is None or self._map is None:
            super().keyPressEvent(event)
            return
        rows, columns = self._map.plan.shape
        row, column = divmod(self.place, columns)
        row = min(max(row + move[0], 0), rows - 1)
        column = min(max(column + move[1], 0), columns - 1)
        self._point(row * columns + column)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        if self._map is None:
            return
        rows, columns = self._map.plan.shape
        box, at = self._box(), event.position()
        column = round((at.x() - box.left()) / box.width() * (columns - 1))
        row = round((box.bottom() - at.y()) / box.height() * (rows - 1))
        if 0 <= column < columns and 0 <= row < rows:
            self._point(row * columns + column)

    def _point(self, index: int) -> None:
        self.place = index
        self.update()
        self.pointed.emit(index)


def _as_numbers(found: Map, reading: str) -> tuple[Array, tuple[str, ...]]:
    """Values on the grid; for words their place in the list that comes with them."""
    grid = found.values(reading)
    stated = [value for value in grid.flat if value is not None]
    if any(isinstance(value, (str, bool)) for value in stated):
        named = sorted({str(value) for value in stated}, reverse=True)
        place = {word: float(k) for k, word in enumerate(named)}
        values = [[math.nan if v is None else place[str(v)] for v in row] for row in grid]
        return np.array(values), tuple(named)
    return found.numbers(reading), ()


def _borders(found: Map, verdict: str) -> tuple[Border, ...]:
    if min(found.plan.shape) < 2:
        return ()
    levels = (EVEN,) if "_probability" in verdict else ()
    try:
        return tuple(one for one in borders(found, verdict, levels) if one.lines)
    except InputError:  # A number has no border of its own.
        return ()


def _hatch() -> QBrush:
    return QBrush(QColor(theme.DIM), Qt.BrushStyle.BDiagPattern)
