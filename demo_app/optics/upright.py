"""A piece of revolution set upright: its map, whose axis lies along x, turned so that it stands.

The picture is mirrored about its diagonal, which swaps x and y: v1 changes sign and v2 keeps it.
Beside the outline nothing is retarded, so the frame may be a rectangle around it.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import RetardationMap

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Upright:
    """How maps of one outline are set upright.

    Parameters
    ----------
    knot, weight : numpy.ndarray
        Shape (levels, columns): map row below each place, and the weight of the next one.
    inside : numpy.ndarray
        Shape (levels, columns): one within the outline, zero beside it.
    x_mm, across : numpy.ndarray
        Shapes (columns,), mm, and (levels,), from -1 to 1: the upright map's own places.
    half_height_mm : float
        Half the height of its frame, mm.
    middle_mm : float
        Height of the frame's middle in the piece's own coordinates, mm.
    rim : tuple of numpy.ndarray
        Places x and y, shape (points,), mm, of the upright outline, counted from the frame's
        middle; for `Placed`.
    """

    knot: NDArray[np.intp]
    weight: NDArray[np.float32]
    inside: NDArray[np.float32]
    x_mm: Array
    across: Array
    half_height_mm: float
    middle_mm: float
    rim: tuple[Array, Array]

    def turned(self, lying: RetardationMap) -> RetardationMap:
        """The same light with the axis of revolution upright."""
        level = np.arange(self.knot.shape[0])[:, None]

        def moved(values: NDArray[np.float32]) -> NDArray[np.float32]:
            by_level = values.T
            low, high = by_level[level, self.knot], by_level[level, self.knot + 1]
            return (low + self.weight * (high - low)) * self.inside

        side = np.sign(self.x_mm).astype(np.float32)
        return RetardationMap(
            -moved(lying.v1),
            moved(lying.v2) * side,
            self.across,
            self.x_mm,
            np.full(self.x_mm.size, self.half_height_mm),
            mirrored=False,
        )


def upright(lying: RetardationMap) -> Upright:
    """How to set maps of the geometry of `lying` upright.

    Raises
    ------
    ValueError
        If the map is not that of a piece of revolution: one half, mirrored.
    """
    if not lying.mirrored:
        raise ValueError("only a mirrored map has an axis of revolution")
    radius = float(lying.half_width_mm.max())
    x = radius * np.concatenate([-lying.across[:0:-1], lying.across])
    share = np.abs(x) / np.maximum(lying.half_width_mm[:, None], 1e-9)
    place = np.interp(share, lying.across, np.arange(lying.across.size))
    knot = np.minimum(place.astype(np.intp), lying.across.size - 2)
    low, high = float(lying.along_mm[0]), float(lying.along_mm[-1])
    middle, half = (low + high) / 2, (high - low) / 2
    edge, up = lying.half_width_mm, lying.along_mm - middle
    return Upright(
        knot,
        (place - knot).astype(np.float32),
        (share <= 1 + 1e-9).astype(np.float32),
        x,
        (lying.along_mm - middle) / half,
        half,
        middle,
        (np.concatenate([edge, -edge[::-1]]), np.concatenate([up, up[::-1]])),
    )
