"""Plain signs for the transport buttons, drawn, so that no font is asked for them."""

import math

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPen, QPixmap, QPolygonF

SIZE = 64


def icon(name: str, colour: str) -> QIcon:
    """Sign called "play", "pause", "back", "forward", "reset" or "brighten"."""
    pixmap = QPixmap(QSize(SIZE, SIZE))
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(colour))
    if name == "play":
        _triangle(painter, 14, 54)
    elif name == "pause":
        painter.drawRect(QRectF(14, 10, 13, 44))
        painter.drawRect(QRectF(37, 10, 13, 44))
    elif name == "forward":
        painter.drawRect(QRectF(12, 12, 8, 40))
        _triangle(painter, 26, 56)
    elif name == "back":
        painter.drawRect(QRectF(44, 12, 8, 40))
        _triangle(painter, 38, 8)
    elif name == "brighten":
        painter.drawEllipse(QPointF(32, 32), 12, 12)
        painter.setPen(QPen(QColor(colour), 6))
        for turn in range(8):
            ray = QPointF(math.cos(math.pi * turn / 4), math.sin(math.pi * turn / 4))
            painter.drawLine(QPointF(32, 32) + ray * 19, QPointF(32, 32) + ray * 28)
    else:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(colour), 7))
        painter.drawArc(QRectF(13, 13, 38, 38), 150 * 16, -300 * 16)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colour))
        painter.drawPolygon(QPolygonF([QPointF(3, 26), QPointF(29, 24), QPointF(12, 6)]))
    painter.end()
    return QIcon(pixmap)


def _triangle(painter: QPainter, foot: float, tip: float) -> None:
    painter.drawPolygon(QPolygonF([QPointF(foot, 10), QPointF(tip, 32), QPointF(foot, 54)]))
