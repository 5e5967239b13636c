"""Thin lines on a picture without a window: the pieces' outlines, cracks and shards."""

from collections.abc import Iterable

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import Placed
from demo_app.optics.sampling import View
from demo_app.scenes.scene import Outline

Array = NDArray[np.float64]

INK = 150
"""Grey of a line, 0 to 255: seen on the dark field, no rival to the picture."""


def contour(piece: Placed) -> tuple[Array, Array]:
    """Closed outline of a piece in stage millimetres: x and y, shape (points,)."""
    if piece.rim is not None:
        x, y = (np.append(one, one[0]) for one in piece.rim)
        return x + piece.x_mm, y + piece.y_mm
    along, half = piece.map.along_mm, piece.map.half_width_mm
    x = np.concatenate([along, along[::-1], along[:1]]) + piece.x_mm
    y = np.concatenate([half, -half[::-1], half[:1]]) + piece.y_mm
    return x, y


def trace_lines(
    pixels: NDArray[np.uint8], view: View, pieces: Iterable[Placed], outlines: Iterable[Outline]
) -> None:
    """Draw outlines into `pixels` (height, width, 4), in place, never darker than what is there.

    Parameters
    ----------
    pixels : numpy.ndarray
        A picture as `demo_app.optics.picture.colour` returns it.
    view : View
        How the stage lies on it.
    pieces : iterable of Placed
        Their contours are drawn.
    outlines : iterable of Outline
        Lines of the scene; a "shard" is closed.
    """
    for piece in pieces:
        _line(pixels, view, *contour(piece))
    for outline in outlines:
        x, y = outline.x_mm, outline.y_mm
        if outline.kind == "shard":
            x, y = np.append(x, x[0]), np.append(y, y[0])
        _line(pixels, view, x, y)


def _line(pixels: NDArray[np.uint8], view: View, x_mm: Array, y_mm: Array) -> None:
    column = (x_mm - view.centre_mm[0]) * view.px_per_mm + view.width_px / 2
    row = (view.centre_mm[1] - y_mm) * view.px_per_mm + view.height_px / 2
    length = np.hypot(np.diff(column), np.diff(row))
    at = np.concatenate([[0.0], np.cumsum(length)])
    steps = np.linspace(0.0, at[-1], max(2, 2 * int(at[-1]) + 1))
    i = np.floor(np.interp(steps, at, row)).astype(int)
    j = np.floor(np.interp(steps, at, column)).astype(int)
    seen = (i >= 0) & (i < view.height_px) & (j >= 0) & (j < view.width_px)
    pixels[i[seen], j[seen], :3] = np.maximum(pixels[i[seen], j[seen], :3], INK)
