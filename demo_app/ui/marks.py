"""Words, arrows and small shapes on the picture."""

import math
from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF

from demo_app.scenes.scene import Mark
from demo_app.ui import theme, words
from demo_app.ui.field import Field, nice_length
from demo_app.ui.hand import TOUCHING, soft_ring

# Whose word stands nearest to its place where there is little room.
RANK = {"drop": 0, "flame": 1, "crack": 2, "pull": 3, "squeeze": 4, "score": 5, "ring": 6}
PLATE = QColor(8, 9, 11, 215)


def plate(painter: QPainter, box: QRectF, said: str, colour: str = theme.INK) -> None:
    """Words on a dark plate that keeps them readable over any picture."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(PLATE)
    painter.drawRoundedRect(box, 4, 4)
    painter.setPen(QColor(colour))
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, said)


def plate_size(font: QFont, said: str) -> tuple[float, float]:
    """Width and height of a plate for these words, pixels."""
    metrics = QFontMetricsF(font)
    return metrics.horizontalAdvance(said) + metrics.height() * 0.6, metrics.height() * 1.15


def fitted(font: QFont, said: str, width: float) -> QFont:
    """`font`, made smaller until `said` fits into `width` pixels."""
    made = QFont(font)
    while made.pixelSize() > 9 and QFontMetricsF(made).horizontalAdvance(said) > width:
        made.setPixelSize(made.pixelSize() - 1)
    return made


def flat_pen(colour: str, width: float) -> QPen:
    """Pen whose lines end where they are told to."""
    return QPen(QColor(colour), width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap)


def arrow(painter: QPainter, tail: QPointF, head: QPointF, colour: str, width: float) -> None:
    """Arrow from `tail` to `head`."""
    along = head - tail
    length = max((along.x() ** 2 + along.y() ** 2) ** 0.5, 1e-6)
    unit = along / length
    across = QPointF(-unit.y(), unit.x())
    tip = min(3.2 * width, length)
    base = head - unit * tip
    point = QPolygonF([head, base + across * tip * 0.6, base - across * tip * 0.6])
    # Dark beside light, so that it is seen on black and on white fringes.
    painter.setPen(QPen(PLATE, 3))
    painter.setBrush(PLATE)
    painter.drawPolygon(point)
    painter.setPen(flat_pen(PLATE.name(), width + 3))
    painter.drawLine(tail - unit * 1.5, base)
    painter.setPen(flat_pen(colour, width))
    painter.drawLine(tail, base)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(colour))
    painter.drawPolygon(point)


def arrows(
    painter: QPainter, middle: QPointF, along: QPointF, span: float, *, pull: bool, width: float
) -> None:
    """Two arrows apart (pull) or towards each other (squeeze); `along` is a unit vector."""
    colour = theme.TENSION if pull else theme.COMPRESSION
    for side in (-1.0, 1.0):
        near, far = middle + along * (side * span * 0.18), middle + along * (side * span)
        arrow(painter, near if pull else far, far if pull else near, colour, width)


class MarkPainter:
    """Paints the marks of one picture, their words beside one another and never on one another.

    Parameters
    ----------
    painter : QPainter
    field : Field
    size : int
        Height of the words, pixels.
    """

    def __init__(self, painter: QPainter, field: Field, size: int) -> None:
        self._painter = painter
        self._field = field
        self._size = float(size)
        self._taken: list[QRectF] = []

    def all(self, found: Sequence[Mark]) -> None:
        """Paint shapes first, then all words."""
        for mark in found:
            shape = getattr(self, f"_{mark.kind}", None)
            if shape is not None:
                shape(mark)
        worded = [mark for mark in found if mark.kind != "touch"]
        ranked = sorted(worded, key=lambda mark: RANK.get(mark.kind, len(RANK)))
        for box, said, colour in [self._word(mark) for mark in ranked]:
            plate(self._painter, box, said, colour)

    def _drop(self, mark: Mark) -> None:
        radius = max(self._field.length(mark.size_mm), self._size * 0.45)
        middle = self._field.point(mark.x_mm, mark.y_mm)
        path = QPainterPath(middle + QPointF(0, -2.2 * radius))
        path.cubicTo(
            middle + QPointF(0.3 * radius, -1.5 * radius),
            middle + QPointF(radius, -radius),
            middle + QPointF(radius, 0),
        )
        path.arcTo(
            QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius), 0, -180
        )
        path.cubicTo(
            middle + QPointF(-radius, -radius),
            middle + QPointF(-0.3 * radius, -1.5 * radius),
            middle + QPointF(0, -2.2 * radius),
        )
        path.translate(0, -radius)
        self._taken.append(path.boundingRect())
        self._fill(path, "#cfe8ff")

    def _flame(self, mark: Mark) -> None:
        width = max(self._field.length(mark.size_mm), self._size * 0.9)
        tip = self._field.point(mark.x_mm, mark.y_mm)
        for share, colour in ((1.0, "#4d8dff"), (0.55, "#dff1ff")):
            half, length = width * 0.5 * share, width * 1.9 * share
            foot = tip + QPointF(0, length)
            self._taken.append(QRectF(tip.x() - half, tip.y(), 2 * half, length))
            path = QPainterPath(tip)
            path.cubicTo(
                tip + QPointF(half * 0.4, length * 0.35),
                tip + QPointF(half * 1.3, length * 0.6),
                foot + QPointF(half * 0.5, 0),
            )
            path.lineTo(foot - QPointF(half * 0.5, 0))
            path.cubicTo(
                tip + QPointF(-half * 1.3, length * 0.6),
                tip + QPointF(-half * 0.4, length * 0.35),
                tip,
            )
            self._fill(path, colour)

    def _touch(self, mark: Mark) -> None:
        at, radius = self._field.point(mark.x_mm, mark.y_mm), self._field.length(mark.size_mm / 2)
        soft_ring(self._painter, at, radius, TOUCHING)

    def _ring(self, mark: Mark) -> None:
        half = max(self._field.length(mark.size_mm) / 2, 2)
        at = self._field.point(mark.x_mm, mark.y_mm)
        tick = self._size * 0.5
        up = -1.0 if mark.y_mm >= self._field.centre_mm[1] else 1.0
        self._painter.setPen(QPen(QColor(theme.ALERT), 2))
        level = at + QPointF(0, up * tick)
        for side in (-half, half):
            self._painter.drawLine(
                level + QPointF(side, 0), level + QPointF(side, -up * tick * 0.7)
            )
        self._painter.drawLine(level - QPointF(half, 0), level + QPointF(half, 0))

    def _score(self, mark: Mark) -> None:
        at = self._field.point(mark.x_mm, mark.y_mm)
        up = -1.0 if mark.y_mm >= self._field.centre_mm[1] else 1.0
        reach = self._size * 0.6
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(QColor(theme.INK))
        self._painter.drawPolygon(
            QPolygonF(
                [at, at + QPointF(-reach * 0.4, up * reach), at + QPointF(reach * 0.4, up * reach)]
            )
        )

    def _squeeze(self, mark: Mark) -> None:
        self._pair(mark, pull=False)

    def _pull(self, mark: Mark) -> None:
        self._pair(mark, pull=True)

    def _pair(self, mark: Mark, *, pull: bool) -> None:
        angle = math.radians(mark.angle_deg)
        at, thick = self._field.point(mark.x_mm, mark.y_mm), self._size * 0.3
        wide = self._span(mark) * abs(math.cos(angle)) + thick
        high = self._span(mark) * abs(math.sin(angle)) + thick
        self._taken.append(QRectF(at.x() - wide, at.y() - high, 2 * wide, 2 * high))
        arrows(
            self._painter,
            at,
            QPointF(math.cos(angle), -math.sin(angle)),
            self._span(mark),
            pull=pull,
            width=self._size * 0.2,
        )

    def _span(self, mark: Mark) -> float:
        return max(self._field.length(mark.size_mm), self._size * 1.6)

    def _fill(self, path: QPainterPath, colour: str) -> None:
        self._painter.setPen(QPen(PLATE, 1.5))
        self._painter.setBrush(QColor(colour))
        self._painter.drawPath(path)

    def _word(self, mark: Mark) -> tuple[QRectF, str, str]:
        """Box, words and colour of a mark's word, clear of all others; draws its leader line."""
        name = f"mark.{mark.kind}"
        said = words.text(name) if name in words.ENGLISH else words.choice(mark.kind)
        colour = {"squeeze": theme.COMPRESSION, "pull": theme.TENSION}.get(mark.kind, theme.INK)
        width, height = plate_size(self._painter.font(), said)
        at = self._field.point(mark.x_mm, mark.y_mm)
        if mark.kind in {"squeeze", "pull"}:
            box = self._beside(mark, at, width, height)
        else:
            box = self._away(mark, at, width, height)
        aside = abs(box.center().x() - at.x()) > 0.5 * width and box.top() + height < at.y()
        if mark.kind in {"score", "crack"} or (aside and mark.kind not in {"squeeze", "pull"}):
            up = box.center().y() < at.y()
            edge = QPointF(
                min(max(at.x(), box.left()), box.right()), box.bottom() if up else box.top()
            )
            self._painter.setPen(QPen(QColor(theme.DIM), 1.5))
            self._painter.drawLine(edge, self._foot(mark, at, box))
        self._taken.append(box)
        return box, said, colour

    def _foot(self, mark: Mark, at: QPointF, box: QRectF) -> QPointF:
        """Where a leader line ends: at the place, or at the near end of the ring's bracket."""
        if mark.kind != "ring":
            return at
        up = -1.0 if mark.y_mm >= self._field.centre_mm[1] else 1.0
        side = 1.0 if box.center().x() > at.x() else -1.0
        half = max(self._field.length(mark.size_mm) / 2, 2)
        return at + QPointF(side * half, up * self._size * 0.5)

    def _beside(self, mark: Mark, at: QPointF, width: float, height: float) -> QRectF:
        """Box beside a pair of arrows: right, left, a line higher or lower, or beyond its ends."""
        angle = math.radians(mark.angle_deg)
        span, gap = self._span(mark), self._size * 0.5
        reach, far = span * abs(math.cos(angle)) + gap, span * abs(math.sin(angle)) + gap
        room = QRectF(0, 0, self._field.width, self._field.height)
        boxes = [
            QRectF(left, at.y() - height / 2 + row * height * 1.1, width, height)
            for row in (0, 1, -1, 2, -2)
            for left in (at.x() + reach, at.x() - reach - width)
        ]
        within = min(max(at.x() - width / 2, room.left()), room.right() - width)
        boxes += [
            QRectF(within, top, width, height) for top in (at.y() - far - height, at.y() + far)
        ]
        for box in boxes:
            if room.contains(box) and not self._crowded(box):
                return box
        return boxes[0]

    def _away(self, mark: Mark, at: QPointF, width: float, height: float) -> QRectF:
        """Box off the piece: upward for marks in the upper half, downward for the others."""
        size, length = self._size, self._field.length(mark.size_mm)
        up = -1.0 if mark.y_mm >= self._field.centre_mm[1] else 1.0
        away = 1.7 * size
        if mark.kind == "flame":
            up, away = 1.0, max(2.6 * size, length * 1.9 + 0.8 * size)
        elif mark.kind == "drop":
            up, away = -1.0, max(2.6 * size, length * 3.2 + 0.8 * size)
        first = QRectF(at.x() - width / 2, at.y() + up * away - height / 2, width, height)
        room = QRectF(4, 4, self._field.width - 8, self._field.height - 8)
        if mark.kind == "flame" and first.bottom() > room.bottom():
            # No room below it: beside it.
            burner = max(length, 0.9 * size)
            first.moveTopLeft(at + QPointF(0.5 * burner + 0.6 * size, 0.95 * burner - height / 2))
        for row in range(4):
            for aside in (0.0, -0.6, 0.6, -1.2, 1.2, -1.8, 1.8, -2.4, 2.4):
                box = first.translated(aside * width, row * up * height * 1.1)
                if room.contains(box) and not self._crowded(box):
                    return box
        first.moveTop(min(max(first.top(), room.top()), room.bottom() - height))
        first.moveLeft(min(max(first.left(), room.left()), room.right() - width))
        return first

    def _crowded(self, box: QRectF) -> bool:
        return any(box.intersects(other) for other in self._taken)


def scale_bar(painter: QPainter, field: Field, size: int) -> None:
    """Bar of a round length in the lower left corner, with its length in words."""
    length = nice_length(field.mm_per_px * field.width * 0.16)
    said = words.quantity(length, "mm")
    width, height = plate_size(painter.font(), said)
    reach = field.length(length)
    box = QRectF(size * 0.6, field.height - height - size * 1.1, max(reach, width), height)
    plate(painter, box, said)
    y = box.bottom() + size * 0.35
    x = box.center().x() - reach / 2
    painter.setPen(flat_pen(theme.INK, 2.5))
    painter.drawLine(QPointF(x, y), QPointF(x + reach, y))
    for end in (x, x + reach):
        painter.drawLine(QPointF(end, y - size * 0.25), QPointF(end, y + size * 0.25))
