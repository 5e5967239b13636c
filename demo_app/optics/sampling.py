"""Where each pixel of a picture lies on the pieces' maps: worked out once for a geometry and size.

Pictures have row 0 at the top, y downward; pixel (row i, column j) has its centre at
(j + 1/2, i + 1/2). A piece's y position is rounded to half a pixel, which makes the rows above and
below its axis mirror images of each other, so that a mirrored piece is worked out but once.
"""

import functools
import itertools
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import Placed, Stage

Array = NDArray[np.float64]
Floats = NDArray[np.float32]
Whole = NDArray[np.intp]

_STRAIGHT = 64


@dataclass(frozen=True)
class View:
    """How a stage is laid onto a picture.

    Parameters
    ----------
    width_px, height_px : int
        Size of the picture.
    px_per_mm : float
        The largest scale at which the stage's width and height both fit.
    centre_mm : tuple of float
        Point of the stage at the middle of the picture.
    """

    width_px: int
    height_px: int
    px_per_mm: float
    centre_mm: tuple[float, float]

    def x_mm(self, column: Array) -> Array:
        """Stage x of picture columns (edges count from 0, the first pixel's centre is 1/2), mm."""
        return self.centre_mm[0] + (column - self.width_px / 2) / self.px_per_mm

    def y_mm(self, row: Array) -> Array:
        """Stage y of picture rows, mm."""
        return self.centre_mm[1] - (row - self.height_px / 2) / self.px_per_mm

    def column(self, x_mm: float) -> float:
        """Picture column of a stage x, px."""
        return (x_mm - self.centre_mm[0]) * self.px_per_mm + self.width_px / 2

    def row(self, y_mm: float) -> float:
        """Picture row of a stage y, px."""
        return (self.centre_mm[1] - y_mm) * self.px_per_mm + self.height_px / 2


def view_of(stage: Stage, width_px: int, height_px: int) -> View:
    """View of `stage` in a picture of that size."""
    scale = min(width_px / stage.width_mm, height_px / stage.height_mm)
    return View(width_px, height_px, scale, stage.centre_mm)


@dataclass(frozen=True)
class Block:
    """Neighbouring columns of one piece.

    Parameters
    ----------
    columns : tuple of int
        First column and the one after the last, counted within the piece's columns.
    row : numpy.ndarray
        Map row below each pixel. Shape (lines,) where the outline is straight, so that all
        columns share it; else (lines, columns), as an index into the flattened (rows, columns) map.
        Beyond the outline it is the row after the last, where the map is continued by nothing.
        Short integers, since reading them is a good part of a picture's cost.
    weight : numpy.ndarray
        Weight of the next map row, shape (lines, 1) or (lines, columns).
    """

    columns: tuple[int, int]
    row: NDArray[np.int32]
    weight: Floats

    @property
    def straight(self) -> bool:
        """Whether all columns share their rows."""
        return self.row.ndim == 1


@dataclass(frozen=True)
class PiecePlan:
    """Sampling of one piece.

    Parameters
    ----------
    left, right : int
        Picture columns from `left` up to, not including, `right`.
    lines : int
        Number of sampled lines: those above the axis, of a mirrored piece, outward from it; all,
        downward, of another.
    up : int
        Picture row of line 0; a mirrored piece's further lines go upward from it.
    down : int
        Of a mirrored piece: picture row of line 0 below the axis (the same row as `up` where
        the axis runs through the middle of a row).
    mirrored : bool
        As the map.
    flat : numpy.ndarray
        Shape (map rows, right - left): index of the map point left of each picture column into the
        flattened map.
    weight : numpy.ndarray
        Shape (right - left,): weight of the next map column.
    blocks : tuple of Block
        Covering all columns.
    hides : bool
        Whether its frame overlaps that of an earlier piece, so that only its inside may be drawn.
    """

    left: int
    right: int
    lines: int
    up: int
    down: int
    mirrored: bool
    flat: Whole
    weight: Floats
    blocks: tuple[Block, ...]
    hides: bool


@dataclass(frozen=True)
class Plan:
    """Sampling of a stage: the view and one plan a piece (None for a piece out of sight)."""

    view: View
    pieces: tuple[PiecePlan | None, ...]

    @property
    def covered(self) -> bool:
        """Whether one piece's frame covers the whole picture."""
        return any(
            p is not None
            and not p.hides
            and p.left == 0
            and p.right == self.view.width_px
            and _rows(p, self.view.height_px) == (0, self.view.height_px)
            for p in self.pieces
        )


def plan_for(stage: Stage, width_px: int, height_px: int) -> Plan:
    """Sampling plan of `stage`; kept while the geometry and the size stay the same.

    Raises
    ------
    ValueError
        If the picture has no pixels.
    """
    if width_px < 1 or height_px < 1:
        raise ValueError(f"a picture of {width_px} x {height_px} pixels has no pixels")
    shapes = tuple(_Shape.of(placed) for placed in stage.pieces)
    return _plan(shapes, view_of(stage, width_px, height_px))


@dataclass(frozen=True)
class _Shape:
    """Geometry of a placed piece, hashable."""

    across: bytes
    along_mm: bytes
    half_width_mm: bytes
    mirrored: bool
    x_mm: float
    y_mm: float

    @classmethod
    def of(cls, placed: Placed) -> "_Shape":
        """Geometry of `placed`."""
        m = placed.map
        across, along, half_width = (
            np.asarray(a, np.float64).tobytes() for a in (m.across, m.along_mm, m.half_width_mm)
        )
        return cls(across, along, half_width, m.mirrored, placed.x_mm, placed.y_mm)

    def arrays(self) -> tuple[Array, Array, Array]:
        """Across, along, half width."""
        across, along, half_width = (
            np.frombuffer(raw) for raw in (self.across, self.along_mm, self.half_width_mm)
        )
        return across, along, half_width


@functools.lru_cache(maxsize=2)
def _plan(shapes: tuple[_Shape, ...], view: View) -> Plan:
    plans: list[PiecePlan | None] = []
    for shape in shapes:
        piece = _plan_piece(shape, view, [p for p in plans if p is not None])
        plans.append(piece)
    return Plan(view, tuple(plans))


def _plan_piece(shape: _Shape, view: View, earlier: list[PiecePlan]) -> PiecePlan | None:
    across, along, half_width = shape.arrays()
    left = max(0, int(np.ceil(view.column(along[0] + shape.x_mm) - 0.5)))
    right = min(view.width_px, int(np.floor(view.column(along[-1] + shape.x_mm) - 0.5)) + 1)
    if left >= right:
        return None
    x = view.x_mm(np.arange(left, right, dtype=np.float64) + 0.5) - shape.x_mm
    half_px = np.interp(x, along, half_width) * view.px_per_mm
    axis = round(2 * view.row(shape.y_mm)) / 2
    height = float(half_px.max())
    if shape.mirrored:
        up, down = int(np.ceil(axis)) - 1, int(np.floor(axis))
        lines = int(
            min(np.floor(height - (down + 0.5 - axis)) + 1, max(up + 1, view.height_px - down))
        )
        distance = np.arange(lines, dtype=np.float64) + (down + 0.5 - axis)
    else:
        up = down = max(0, int(np.ceil(axis - height - 0.5)))
        lines = min(view.height_px, int(np.floor(axis + height - 0.5)) + 1) - up
        distance = axis - (up + np.arange(max(lines, 0), dtype=np.float64) + 0.5)
    if lines <= 0:
        return None
    place = np.interp(x, along, np.arange(along.size))
    knot = np.minimum(place.astype(np.intp), max(along.size - 2, 0))
    plan = PiecePlan(
        left, right, lines, up, down, shape.mirrored,
        (np.arange(across.size) * along.size)[:, None] + knot, (place - knot).astype(np.float32),
        _blocks(across, half_px, distance), False,
    )  # fmt: skip
    first, last = _rows(plan, view.height_px)
    if first >= last:
        return None
    return replace(plan, hides=any(_overlap(plan, p, view) for p in earlier))


def _blocks(across: Array, half_px: Array, distance: Array) -> tuple[Block, ...]:
    """Straight runs of the outline as blocks of their own, what lies between as curved ones."""
    breaks = np.flatnonzero(np.abs(np.diff(half_px)) > 1e-6) + 1
    edges = [0, *breaks.tolist(), half_px.size]
    runs = [(a, b) for a, b in itertools.pairwise(edges) if b - a >= _STRAIGHT]
    blocks: list[Block] = []
    done = 0
    for first, last in [*runs, (half_px.size, half_px.size)]:
        if first > done:
            blocks.append(_curved(across, half_px, distance, (done, first)))
        if last > first:
            row, weight = _rows_at(across, distance / half_px[first])
            blocks.append(Block((first, last), row, weight[:, None]))
        done = last
    return tuple(blocks)


def _curved(across: Array, half_px: Array, distance: Array, columns: tuple[int, int]) -> Block:
    count = columns[1] - columns[0]
    half = np.maximum(half_px[slice(*columns)], 1e-9)
    row = np.empty((distance.size, count), np.int32)
    weight = np.empty((distance.size, count), np.float32)
    # A few columns at a time: all at once would need several times the plan's memory.
    for first in range(0, count, _STRAIGHT):
        part = slice(first, first + _STRAIGHT)
        row[:, part], weight[:, part] = _rows_at(across, distance[:, None] / half[part])
        row[:, part] *= count
    row += np.arange(count, dtype=np.int32)
    return Block(columns, row, weight)


def _rows_at(across: Array, share: Array) -> tuple[NDArray[np.int32], Floats]:
    """Map row below and weight of the next, at signed fractions of the half width."""
    last = max(across.size - 2, 0)
    place = np.interp(share, across, np.arange(across.size))
    row = np.minimum(place.astype(np.int32), last)
    outside = np.abs(share) > 1 + 1e-9
    row[outside] = across.size
    weight = (place - row).astype(np.float32)
    weight[outside] = 0
    return row, weight


def _rows(piece: PiecePlan, height_px: int) -> tuple[int, int]:
    """First picture row of a piece's frame and the one after its last."""
    if piece.mirrored:
        return max(0, piece.up + 1 - piece.lines), min(height_px, piece.down + piece.lines)
    return piece.up, piece.up + piece.lines


def _overlap(one: PiecePlan, other: PiecePlan, view: View) -> bool:
    (top, bottom), (first, last) = (_rows(p, view.height_px) for p in (one, other))
    return one.left < other.right and other.left < one.right and top < last and first < bottom
