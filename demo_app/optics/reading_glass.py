"""A reading glass over a stage: a disc in which the pieces below are seen larger."""

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import Placed, RetardationMap, Stage

Array = NDArray[np.float64]

_POINTS = 121
"""Points across the glass."""


def magnified(stage: Stage, x_mm: float, y_mm: float, radius_mm: float, times: float) -> Placed:
    """Disc of `radius_mm` about (x_mm, y_mm) in which all lengths are `times` as large.

    The retardation is that of the piece below; beside the pieces there is none.
    """
    along = np.linspace(-radius_mm, radius_mm, _POINTS)
    across = np.linspace(-1.0, 1.0, _POINTS)
    half = np.sqrt(np.maximum(radius_mm**2 - along**2, 0.0))
    x = np.broadcast_to(x_mm + along / times, (_POINTS, _POINTS))
    y = y_mm + across[:, None] * half / times
    v1, v2 = components(stage, x, y)
    seen = RetardationMap(
        v1.astype(np.float32), v2.astype(np.float32), across, along, half, mirrored=False
    )
    return Placed(seen, x_mm, y_mm)


def components(stage: Stage, x_mm: Array, y_mm: Array) -> tuple[Array, Array]:
    """Components v1 and v2 (nm) at places of the stage; zero beside the pieces."""
    v1, v2 = np.zeros(x_mm.shape), np.zeros(x_mm.shape)
    for placed in stage.pieces:
        inside, first, second = _of_piece(placed.map, x_mm - placed.x_mm, y_mm - placed.y_mm)
        v1 = np.where(inside, first, v1)
        v2 = np.where(inside, second, v2)
    return v1, v2


def _of_piece(m: RetardationMap, x: Array, y: Array) -> tuple[NDArray[np.bool_], Array, Array]:
    half = np.interp(x, m.along_mm, m.half_width_mm)
    within = (x >= m.along_mm[0]) & (x <= m.along_mm[-1]) & (np.abs(y) <= half) & (half > 0)
    share = y / np.where(half > 0, half, 1.0)
    column = np.interp(x, m.along_mm, np.arange(m.along_mm.size))
    row = np.interp(np.abs(share) if m.mirrored else share, m.across, np.arange(m.across.size))
    first, second = (_between(values, row, column) for values in (m.v1, m.v2))
    if m.mirrored:
        second = np.where(y < 0, -second, second)
    return within, first, second


def _between(values: NDArray[np.float32], row: Array, column: Array) -> Array:
    """Values at fractional rows and columns, linear in both."""
    i = np.minimum(row.astype(np.intp), values.shape[0] - 2)
    j = np.minimum(column.astype(np.intp), values.shape[1] - 2)
    down, right = row - i, column - j
    above = (1 - right) * values[i, j] + right * values[i, j + 1]
    below = (1 - right) * values[i + 1, j] + right * values[i + 1, j + 1]
    return np.asarray((1 - down) * above + down * below)
