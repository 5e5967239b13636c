"""Where the names of a chart's levels go: on no other name, and on no curve if there is room."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

_PLACES = 9
"""Tried along the level, from the right end to the left."""
_GAP_PX = 3.0
_NAME, _CURVE, _LINE, _FAR = 1000.0, 10.0, 10.0, 4.0
"""What it costs to cover a name, a curve, another level's line, and to be a row away."""
_ROWS = (0.0, 1.1, 2.2)
"""Distance from the line, in heights of a name: what is not next to it needs a leader."""


@dataclass(frozen=True)
class Box:
    """Rectangle in pixels, y downward."""

    left: float
    top: float
    right: float
    bottom: float

    def covers(self, other: "Box") -> bool:
        """Whether the two have any place in common."""
        beside = self.right <= other.left or other.right <= self.left
        return not (beside or self.bottom <= other.top or other.bottom <= self.top)


def boxes(
    levels: Sequence[float],
    sizes: Sequence[tuple[float, float]],
    room: Box,
    curves: Sequence[tuple[Array, Array]],
) -> list[Box]:
    """A box for each level's name, just above or below its line where that can be.

    Parameters
    ----------
    levels : sequence of float
        Heights of the lines, pixels.
    sizes : sequence of (width, height)
        Of the names, pixels.
    room : Box
        The plot.
    curves : sequence of (x, y)
        Pixels, x increasing.
    """
    found: dict[int, Box] = {}
    for index in sorted(range(len(levels)), key=lambda i: levels[i]):
        others = [line for i, line in enumerate(levels) if i != index]
        choices = [
            (_cost(box, list(found.values()), others, curves) + own, box)
            for own, box in _candidates(levels[index], sizes[index], room)
        ]
        found[index] = min(choices, key=lambda choice: choice[0])[1]
    return [found[index] for index in range(len(levels))]


def _candidates(level: float, size: tuple[float, float], room: Box) -> list[tuple[float, Box]]:
    """Boxes inside the room and what each costs by itself: right before left, near before far."""
    width, height = size
    lefts = np.linspace(max(room.right - width - _GAP_PX, room.left), room.left, _PLACES)
    made = []
    for away, row in enumerate(_ROWS):
        tops = (level - (1 + row) * height - _GAP_PX, level + row * height + _GAP_PX)
        for side, top in enumerate(tops):
            if room.top <= top and top + height <= room.bottom:
                made += [
                    (0.3 * place + 0.1 * side + _FAR * away, Box(x, top, x + width, top + height))
                    for place, x in enumerate(lefts)
                ]
    if made:
        return made
    top = min(max(level - height / 2, room.top), room.bottom - height)
    return [(0.0, Box(x, top, x + width, top + height)) for x in lefts]


def _cost(
    box: Box,
    taken: Sequence[Box],
    lines: Sequence[float],
    curves: Sequence[tuple[Array, Array]],
) -> float:
    cost = _NAME * sum(box.covers(other) for other in taken)
    cost += _LINE * sum(box.top < line < box.bottom for line in lines)
    for x, y in curves:
        inside = np.linspace(box.left, box.right, 24)
        inside = inside[(inside >= x[0]) & (inside <= x[-1])] if x.size else inside[:0]
        height = np.interp(inside, x, y) if inside.size else inside
        # A curve may pass between two of these places where it is steep.
        steep = np.sign(height - box.top) != np.sign(height - box.bottom)
        crosses = bool(np.any(np.diff(np.sign(height - (box.top + box.bottom) / 2)) != 0))
        cost += _CURVE * (bool(steep.any()) or crosses)
    return cost
