"""The soft ring that stands for a hand, as wide as what it touches."""

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from demo_app.ui import theme

# Width and opacity of the strokes from the outside in: dark first, so that it is seen on white too.
_STROKES = (
    (11.0, theme.STAGE, 0.35),
    (7.0, theme.ALERT, 0.25),
    (4.0, theme.ALERT, 0.45),
    (2.0, theme.ALERT, 1.0),
)
HOVERING, TOUCHING = 0.45, 1.0


def soft_ring(painter: QPainter, middle: QPointF, radius: float, strength: float) -> None:
    """Ring of a radius in pixels; `strength` from 0 to 1."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for width, name, opacity in _STROKES:
        colour = QColor(name)
        colour.setAlphaF(opacity * strength)
        painter.setPen(QPen(colour, width))
        painter.drawEllipse(middle, radius, radius)
