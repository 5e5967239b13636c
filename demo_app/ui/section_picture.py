"""The wall's cut as pixels: where its glass lies and what it carries."""

import itertools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.scenes.scene import Seam, Section

Array = NDArray[np.float64]
STRETCHES = (1, 2, 3, 5, 10, 20)
LEANING = 0.15
"""How far a column may lean, over its height, before a section is laid out in its own steps."""


@dataclass(frozen=True)
class Drawn:
    """A section's nodes in pixels.

    Parameters
    ----------
    x, y : numpy.ndarray
        Shape (rows, cols), pixels, y downward.
    stretch : int
        How many times thicker the wall is drawn than it is long.
    """

    x: Array
    y: Array
    stretch: int


def place(section: Section, width: float, height: float) -> Drawn:
    """Nodes in a box of pixels, moved by the magnified displacement.

    The wall is drawn to one scale; a wall too thin to see is drawn thicker by a stated factor,
    while its movement keeps to the scale along the piece.
    """
    moved_x = section.moved_x_um * (1e-3 * section.magnified)
    moved_y = section.moved_y_um * (1e-3 * section.magnified)
    along = section.x_mm + moved_x
    middle = 0.5 * (section.y_mm.min() + section.y_mm.max())
    thick = max(float(np.ptp(section.y_mm)), 1e-9)
    scale = 0.96 * width / max(float(np.ptp(along)), 1e-9)
    fitting = [s for s in STRETCHES if s * thick * scale <= 0.55 * height]
    stretch = max(fitting, default=1)
    scale = min(scale, 0.9 * height / (thick * stretch))
    across = (section.y_mm - middle) * stretch + moved_y
    low, high = float(across.min()), float(across.max())
    # Stand still while the wall moves little; follow it only when it would leave the box.
    reach = 0.42 * height / scale
    shift = min(0.0, reach - high) + max(0.0, -reach - low)
    centre = 0.5 * (along.min() + along.max())
    return Drawn(
        width / 2 + (along - centre) * scale, height / 2 - (across + shift) * scale, stretch
    )


def shade(
    drawn: Drawn, values: Array, seams: tuple[Seam, ...], width: int, height: int
) -> tuple[Array, NDArray[np.bool_]]:
    """Values at each pixel of a box, and where there is glass.

    Where columns of nodes follow one another along x each pixel column is filled between the rows
    of nodes, linearly. A wall that turns round (a foot) is laid out in fine steps of its own.

    Returns
    -------
    values : numpy.ndarray
        Shape (height, width).
    glass : numpy.ndarray
        Shape (height, width), bool.
    """
    if not seams and _turns_round(drawn):
        return _laid_out(drawn, values, width, height)
    px = np.arange(width) + 0.5
    order = slice(None) if drawn.x[0, -1] >= drawn.x[0, 0] else slice(None, None, -1)
    xs, ys, vs = drawn.x[:, order], drawn.y[:, order], values[:, order]
    rows = xs.shape[0]
    y = np.stack([np.interp(px, xs[r], ys[r]) for r in range(rows)])
    v = np.stack([np.interp(px, xs[r], vs[r]) for r in range(rows)])
    inside = (px >= xs[:, 0].mean()) & (px <= xs[:, -1].mean())
    cracks = [_faces(seam, xs, mirrored=order.step is not None) for seam in seams]
    if y[0].mean() > y[-1].mean():
        y, v = y[::-1], v[::-1]
        cracks = [(left[::-1], right[::-1]) for left, right in cracks]
    out = np.zeros((height, width))
    glass = np.zeros((height, width), dtype=bool)
    top = int(np.clip(np.floor(y[0].min()), 0, height))
    bottom = int(np.clip(np.ceil(y[-1].max()), top, height))
    py = np.arange(top, bottom)[:, None] + 0.5
    for r in range(rows - 1):
        gap = np.maximum(y[r + 1] - y[r], 1e-9)
        share = (py - y[r]) / gap
        here = (share >= 0) & (share < 1) & inside
        for faces in cracks:
            left, right = (f[r] + share * (f[r + 1] - f[r]) for f in faces)
            here &= (px <= left) | (px >= right)
        out[top:bottom][here] = (v[r] + share * (v[r + 1] - v[r]))[here]
        glass[top:bottom] |= here
    return out, glass


def _turns_round(drawn: Drawn) -> bool:
    """Whether a column of nodes leans so far that pixel columns would miss its ends."""
    return bool((np.ptp(drawn.x, axis=0) > LEANING * np.ptp(drawn.y, axis=0)).any())


def _laid_out(
    drawn: Drawn, values: Array, width: int, height: int
) -> tuple[Array, NDArray[np.bool_]]:
    """As `shade`: the grid in steps below half a pixel, each of which fills the pixel it is in."""
    across, along = (_finer(drawn, axis) for axis in (0, 1))
    x, y, v = (across @ one @ along.T for one in (drawn.x, drawn.y, values))
    i, j = np.floor(y).astype(np.intp), np.floor(x).astype(np.intp)
    seen = (i >= 0) & (i < height) & (j >= 0) & (j < width)
    out = np.zeros((height, width))
    glass = np.zeros((height, width), dtype=bool)
    out[i[seen], j[seen]] = v[seen]
    glass[i[seen], j[seen]] = True
    return out, glass


def _finer(drawn: Drawn, axis: int) -> Array:
    """Matrix that interpolates nodes along `axis` in steps of at most half a pixel."""
    steps = np.hypot(np.diff(drawn.x, axis=axis), np.diff(drawn.y, axis=axis)).max(axis=1 - axis)
    ends = np.concatenate([[0.0], np.cumsum(np.maximum(steps, 1e-6))])
    at = np.linspace(0.0, ends[-1], int(np.ceil(2 * ends[-1])) + 1)
    return np.stack([np.interp(at, ends, one) for one in np.eye(ends.size)], axis=1)


def _faces(seam: Seam, xs: Array, *, mirrored: bool) -> tuple[Array, Array]:
    """Where a crack's two faces stand in each row, pixels; they meet where it has not come yet."""
    column = xs.shape[1] - seam.column if mirrored else seam.column
    left, right = xs[:, column - 1], xs[:, column]
    return left, np.where(np.arange(len(xs)) < seam.rows, right, left)


def edges(drawn: Drawn, seams: tuple[Seam, ...]) -> list[Array]:
    """Outline of each piece in pixels, each of shape (points, 2); a crack in it is a notch.

    Parameters
    ----------
    drawn : Drawn
        The nodes.
    seams : tuple of Seam
        A crack through all rows parts two pieces; any other ends at its tip.
    """
    rows, columns = drawn.x.shape
    parting = [seam.column for seam in seams if seam.rows >= rows]
    found = []
    for first, beyond in itertools.pairwise((0, *sorted(parting), columns)):
        notches = {seam.column: seam.rows for seam in seams if first < seam.column < beyond}
        around = []
        for column in range(first, beyond):
            deep = notches.get(column, 0)
            if deep:
                around += [(row, column - 1) for row in range(1, deep + 1)]
                around += [(row, column) for row in range(deep, 0, -1)]
            around.append((0, column))
        around += [(row, beyond - 1) for row in range(1, rows)]
        around += [(rows - 1, column) for column in range(beyond - 2, first - 1, -1)]
        around += [(row, first) for row in range(rows - 2, 0, -1)]
        places = tuple(np.array(around).T)
        found.append(np.stack([drawn.x[places], drawn.y[places]], axis=1))
    return found


def ramp(stops: tuple[str, ...], count: int = 256) -> NDArray[np.uint8]:
    """Colours between stops given as "#rrggbb", shape (count, 4), RGBA."""
    rgb = np.array([[int(s[i : i + 2], 16) for i in (1, 3, 5)] for s in stops], dtype=float)
    where = np.linspace(0, len(stops) - 1, count)
    table = np.stack([np.interp(where, np.arange(len(stops)), rgb[:, k]) for k in range(3)], axis=1)
    return np.concatenate([table, np.full((count, 1), 255)], axis=1).round().astype(np.uint8)


def coloured(
    values: Array, glass: NDArray[np.bool_], low: float, high: float, table: NDArray[np.uint8]
) -> NDArray[np.uint8]:
    """RGBA picture of `values` from `low` to `high`; transparent beside the glass."""
    place_in = (values - low) * ((len(table) - 1) / max(high - low, 1e-12))
    picture = table[np.clip(place_in, 0, len(table) - 1).astype(np.intp)]
    picture[~glass] = 0
    return picture


def round_up(value: float) -> float:
    """Smallest of 1, 1.5, 2, 3, 5, 7 times a power of ten that is at least `value`."""
    if value <= 0:
        return 1.0
    power = 10.0 ** np.floor(np.log10(value))
    return float(
        next(t * power for t in (1, 1.5, 2, 3, 5, 7, 10) if t * power >= value * (1 - 1e-9))
    )
