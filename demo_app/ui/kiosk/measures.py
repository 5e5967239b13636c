"""Sizes of a kiosk's controls and words, in millimetres first: pixels are no length."""

import math
from dataclasses import dataclass

from PySide6.QtCore import QRect
from PySide6.QtGui import QScreen

MM_PER_INCH = 25.4
TARGET_MM = 10.0
"""Least side of what a finger is to hit. WCAG 2.2 asks for 24 CSS pixels (2.5.8, AA) or 44 (2.5.5,
AAA), which on a screen of unknown density say nothing."""
TARGET_PX = 44
"""Least side in pixels, for screens whose pixels are large (WCAG 2.2, 2.5.5)."""
CAPITAL_MM = 6.1
"""Least height of a capital H in large type: 0.7 degrees at 0.5 m (EN 301 549, 5.1.4)."""
CAPITAL_SHARE = 0.729
"""Height of a capital H of the bundled font, in sizes of its type."""
REACH_MM = 520.0
"""Height above the panel's lower edge that a seated person reaches: hands reach 380 to 1,220 mm
above the floor (ADA 308), and the lower edge of a standing panel is taken to be at 700 mm."""
USUAL_DPI = 96.0
DPI_RANGE = (20.0, 600.0)
"""What a screen may say of itself and be believed, pixels per inch."""
LARGE = 1.3
"""Factor on the type's size where a visitor asks for large type."""


def pixels_per_mm(
    screen: QScreen | None, width_mm: float | None = None, height_mm: float | None = None
) -> float:
    """Device-independent pixels per millimetre of a screen.

    Parameters
    ----------
    screen : QScreen or None
    width_mm, height_mm : float or None
        The lit picture as somebody measured it with a ruler; None: as the screen says itself, if
        that can be.
    """
    if screen is None:
        return USUAL_DPI / MM_PER_INCH
    size = screen.geometry()
    measured = [
        pixels / mm for pixels, mm in ((size.width(), width_mm), (size.height(), height_mm)) if mm
    ]
    if measured:
        return max(measured)
    found, (low, high) = screen.physicalDotsPerInch(), DPI_RANGE
    if not (math.isfinite(found) and low <= found <= high):
        found = USUAL_DPI
    return found / MM_PER_INCH


@dataclass(frozen=True)
class Measures:
    """Where things are and how large they are, for one window.

    Parameters
    ----------
    width, height : int
        Of the window, device-independent pixels.
    per_mm : float
        Pixels per millimetre.
    scale : float
        Factor on the type's size; above 1 words are at least as large as EN 301 549, 5.1.4 asks.
    """

    width: int
    height: int
    per_mm: float
    scale: float = 1.0

    @property
    def large(self) -> bool:
        """Whether words are larger than usual."""
        return self.scale > 1

    @property
    def tall(self) -> bool:
        """Whether the panel stands upright."""
        return self.height > 1.2 * self.width

    @property
    def base(self) -> int:
        """The shorter side, pixels."""
        return min(self.width, self.height)

    @property
    def target(self) -> int:
        """Least side of a target, pixels."""
        return max(math.ceil(TARGET_MM * self.per_mm), TARGET_PX)

    @property
    def gap(self) -> int:
        """Space between things, pixels."""
        return max(round(0.016 * self.base), 8)

    @property
    def body(self) -> int:
        """Type of sentences and buttons, pixels."""
        return self._type(0.036)

    @property
    def title(self) -> int:
        """Type of titles and questions, pixels."""
        return self._type(0.053)

    @property
    def least(self) -> int:
        """Smallest type that words shrink to where they are long, pixels."""
        if self.large:
            return math.ceil(CAPITAL_MM * self.per_mm / CAPITAL_SHARE)
        return max(round(0.027 * self.base), round(4.5 * self.per_mm))

    @property
    def ring(self) -> int:
        """Width of the frame round what has the keyboard, pixels (WCAG 2.2, 2.4.13: at least 2)."""
        return max(round(0.005 * self.base), 4)

    @property
    def bar(self) -> int:
        """Height of the bar with Back and Home, pixels."""
        return max(round(1.25 * self.target), round(0.1 * self.base), round(2.2 * self.least))

    @property
    def whole(self) -> QRect:
        """All that a page may use: everything above the bar."""
        return QRect(0, 0, self.width, self.height - self.bar)

    @property
    def low(self) -> QRect:
        """The part of a tall panel that controls keep to; of a wide one, the whole page."""
        if not self.tall:
            return self.whole
        reach = min(round(REACH_MM * self.per_mm), round(0.54 * self.height))
        top = self.height - max(reach, round(0.42 * self.height))
        return QRect(0, top, self.width, self.height - self.bar - top)

    def _type(self, share: float) -> int:
        return max(round(share * self.base * self.scale), self.least)


def grid(room: QRect, count: int, columns: int, gap: int) -> list[QRect]:
    """`count` equal boxes in `room`, row by row; a last row that is not full is as wide."""
    rows = max(math.ceil(count / columns), 1)
    high = (room.height() - (rows - 1) * gap) // rows
    boxes = []
    for place in range(count):
        row, column = divmod(place, columns)
        here = min(columns, count - row * columns)
        wide = (room.width() - (here - 1) * gap) // here
        boxes.append(
            QRect(room.x() + column * (wide + gap), room.y() + row * (high + gap), wide, high)
        )
    return boxes


def inset(room: QRect, by: int) -> QRect:
    """`room` without a margin."""
    return room.adjusted(by, by, -by, -by)


@dataclass(frozen=True)
class Rooms:
    """Where the picture and the panel are; the bar is always along the lower edge.

    Parameters
    ----------
    stage, panel, bar : QRect
    sentence : int
        Height kept for the sentence under the picture, pixels.
    """

    stage: QRect
    panel: QRect
    bar: QRect
    sentence: int


def rooms(measures: Measures) -> Rooms:
    """Picture to the left of the panel, or above it on a tall panel, within reach."""
    whole, gap = measures.whole, measures.gap
    bar = QRect(0, whole.bottom() + 1, measures.width, measures.bar)
    sentence = round(3.9 * measures.least + 0.5 * gap)
    if measures.tall:
        low = measures.low
        stage = QRect(0, 0, whole.width(), low.top())
        return Rooms(inset(stage, gap), inset(low, gap), bar, sentence)
    wide = round((0.36 if measures.large else 0.54) * whole.width())
    stage = QRect(0, 0, wide, whole.height())
    panel = QRect(wide, 0, whole.width() - wide, whole.height())
    return Rooms(inset(stage, gap), inset(panel, gap).adjusted(-gap, 0, 0, 0), bar, sentence)
