"""Where a point of the stage lies in a picture."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath

from demo_app.optics.retardation import Placed, Stage

ABUT_MM = 0.01
"""Pieces closer than this lie edge to edge."""


@dataclass(frozen=True)
class Field:
    """Field of view of one picture.

    Parameters
    ----------
    width, height : float
        Of the picture, pixels.
    mm_per_px : float
        Scale.
    centre_mm : tuple of float
        Stage point in the middle of the picture, mm.
    """

    width: float
    height: float
    mm_per_px: float
    centre_mm: tuple[float, float]

    @classmethod
    def of(cls, stage: Stage, width: float, height: float) -> "Field":
        """Field in which a stage is seen whole: its width, and its height if that is tighter."""
        scale = max(stage.width_mm / max(width, 1), stage.height_mm / max(height, 1))
        return cls(width, height, scale, stage.centre_mm)

    def point(self, x_mm: float, y_mm: float) -> QPointF:
        """Pixel position of a stage point; y upward in millimetres, downward in pixels."""
        return QPointF(
            self.width / 2 + (x_mm - self.centre_mm[0]) / self.mm_per_px,
            self.height / 2 - (y_mm - self.centre_mm[1]) / self.mm_per_px,
        )

    def place(self, point: QPointF) -> tuple[float, float]:
        """Stage point (x, y), mm, of a pixel position."""
        return (
            self.centre_mm[0] + (point.x() - self.width / 2) * self.mm_per_px,
            self.centre_mm[1] - (point.y() - self.height / 2) * self.mm_per_px,
        )

    def length(self, mm: float) -> float:
        """Length in pixels."""
        return mm / self.mm_per_px


def outlines(pieces: Sequence[Placed], field: Field) -> list[QPainterPath]:
    """Closed outlines of pieces in pixels; those that lie edge to edge in a row have one."""
    rows: list[list[Placed]] = []
    for piece in pieces:
        if rows and piece.rim is None and _abut(rows[-1][-1], piece):
            rows[-1].append(piece)
        else:
            rows.append([piece])
    return [_around(row, field) for row in rows]


def _abut(piece: Placed, following: Placed) -> bool:
    gap = following.map.along_mm[0] + following.x_mm - piece.map.along_mm[-1] - piece.x_mm
    return piece.y_mm == following.y_mm and abs(gap) < ABUT_MM


def _around(row: Sequence[Placed], field: Field) -> QPainterPath:
    upper, lower = [], []
    for piece in row:
        if piece.rim is not None:
            upper += [
                field.point(piece.x_mm + x, piece.y_mm + y) for x, y in zip(*piece.rim, strict=True)
            ]
            continue
        along = piece.map.along_mm + piece.x_mm
        half = piece.map.half_width_mm
        upper += [field.point(x, piece.y_mm + h) for x, h in zip(along, half, strict=True)]
        lower += [field.point(x, piece.y_mm - h) for x, h in zip(along, half, strict=True)]
    path = QPainterPath()
    path.addPolygon([*upper, *reversed(lower)])
    path.closeSubpath()
    return path


def nice_length(longest: float) -> float:
    """Largest of 1, 2, 5 times a power of ten that is at most `longest`."""
    power = 1e-6
    best = power
    while power <= longest:
        for times in (1, 2, 5):
            if times * power <= longest:
                best = times * power
        power *= 10
    return best
