"""What was done to a picture's light, told on the picture."""

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from demo_app.ui import theme, words
from demo_app.ui.marks import fitted, plate, plate_size

MOST = 0.68
"""Share of the width for a note; the scale's bar stands in the other corner."""


def notes(gain: float, dimmed: float) -> list[str]:
    """Words for light that is brighter by `gain`, or darker by `dimmed`, than it would be."""
    found = []
    if gain != 1:
        found.append(words.text("gain", gain=words.number(gain)))
    if dimmed < 1:
        found.append(words.text("calm.dimmed", percent=words.number(100 * dimmed, 2)))
    return found


def light_notes(painter: QPainter, room: QRectF, size: int, gain: float, dimmed: float) -> None:
    """Paint the notes one above the other in the lower right corner, `size` pixels high."""
    margin = size * 0.6
    foot = room.bottom() - margin
    font = painter.font()
    for said in notes(gain, dimmed):
        small = fitted(font, said, MOST * room.width())
        painter.setFont(small)
        width, height = plate_size(small, said)
        foot -= height
        plate(
            painter, QRectF(room.right() - margin - width, foot, width, height), said, theme.ALERT
        )
