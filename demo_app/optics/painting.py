"""Painting one piece: interpolate v1 and v2 at the pixels, find the table's cell, look up."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.fading import VISIBLE
from demo_app.optics.retardation import RetardationMap
from demo_app.optics.sampling import Block, PiecePlan
from demo_app.optics.share import BLOCK, Space, own_space, share
from demo_app.optics.table import HALF_TURN, ColourTable

Floats = NDArray[np.float32]
Complexes = NDArray[np.complex64]
Packed = NDArray[np.uint32]

_TINY = np.float32(1e-30)
_SIGN = np.uint32(0x80000000)


@dataclass(frozen=True)
class Strip:
    """Some lines of one block, with what they are painted from.

    Parameters
    ----------
    block : Block
        Sampling of the block's columns.
    lines : tuple of int
        First line and the one after the last.
    field, slope : numpy.ndarray
        Shape (map rows + 1, block columns), complex64: v1 + i v2, in rows of the table, at the
        map's rows and the block's columns, and the way to the next row; zero in the last row,
        which stands for "outside".
    contrast : numpy.ndarray or None
        Shape as `field`: what the pixels leave of the fringes.
    """

    block: Block
    lines: tuple[int, int]
    field: Complexes
    slope: Complexes
    contrast: Floats | None

    @property
    def shape(self) -> tuple[int, int]:
        """Lines and columns."""
        return self.lines[1] - self.lines[0], self.block.columns[1] - self.block.columns[0]


def paint_piece(
    m: RetardationMap,
    plan: PiecePlan,
    table: ColourTable,
    contrast: Floats | None,
    pixels: Packed,
) -> None:
    """Paint one piece into a picture, strip by strip on two threads.

    Parameters
    ----------
    m : RetardationMap
        The piece.
    plan : PiecePlan
        Its sampling.
    table : ColourTable
        The instrument.
    contrast : numpy.ndarray or None
        Of `demo_app.optics.fading.contrast`.
    pixels : numpy.ndarray
        Shape (height, width), uint32 0xffRRGGBB: the picture.
    """
    field = ((m.v1 + np.complex64(1j) * m.v2) / np.float32(table.row_nm)).astype(np.complex64)
    beyond = bool(np.abs(field).max() > len(table.pixels) - 1.5)

    def work(space: Space, strip: Strip) -> None:
        field = _interpolate(strip, space)
        row, column = _cells(field, table, space, beyond=beyond)
        packed = _look_up(strip, table, space, row, column)
        if plan.mirrored:
            _write(strip, plan, packed, pixels, upward=True)
            if not table.symmetric:
                packed = _look_up(strip, table, space, row, np.negative(column, out=column))
        _write(strip, plan, packed, pixels, upward=False)

    share(work, _strips(field, plan, contrast, own_space()))


def _strips(
    field: Complexes, plan: PiecePlan, contrast: Floats | None, space: Space
) -> list[Strip]:
    """The piece in strips that fit the cache, its map interpolated to the picture's columns."""
    shape = plan.flat.shape
    wide = _at_columns(field, plan, space.array("wide", shape, np.complex64), space)
    kept = (
        None
        if contrast is None
        else _at_columns(contrast, plan, np.empty(shape, np.float32), space)
    )
    strips: list[Strip] = []
    for number, block in enumerate(plan.blocks):
        columns = slice(*block.columns)
        longer = (shape[0] + 1, block.columns[1] - block.columns[0])
        own, slope = space.array(f"block {number}", (2, *longer), np.complex64)
        own[:-1], own[-1] = wide[:, columns], 0
        np.subtract(own[1:-1], own[:-2], out=slope[:-2])
        slope[-2:] = 0
        own_kept = (
            None if kept is None else np.pad(kept[:, columns], ((0, 1), (0, 0)), constant_values=1)
        )
        height = max(1, BLOCK // longer[1])
        strips += [
            Strip(block, (first, min(plan.lines, first + height)), own, slope, own_kept)
            for first in range(0, plan.lines, height)
        ]
    return strips


def _at_columns(
    values: NDArray[Any], plan: PiecePlan, out: NDArray[Any], space: Space
) -> NDArray[Any]:
    """Map values, shape (rows, map columns), at the picture's columns."""
    right = space.array("right", out.shape, values.dtype)
    np.take(values.ravel(), plan.flat, out=out, mode="clip")
    # Where that is the last column its weight is zero, so that the next value does not count.
    np.take(values.ravel()[1:], plan.flat, out=right, mode="clip")
    right -= out
    right *= plan.weight
    out += right
    return out


def _interpolate(strip: Strip, space: Space) -> Complexes:
    """v1 + i v2 at the strip's pixels, shape (lines, columns)."""
    field = space.array("field", strip.shape, np.complex64)
    slope = space.array("pairs", strip.shape, np.complex64)
    rows = strip.block.row[slice(*strip.lines)]
    weight = strip.block.weight[slice(*strip.lines)]
    if strip.block.straight:
        np.take(strip.field, rows, axis=0, out=field, mode="clip")
        np.take(strip.slope, rows, axis=0, out=slope, mode="clip")
        pairs = slope.view(np.float32)
        pairs *= weight
    else:
        index = space.array("cells", rows.shape, np.intp)
        np.copyto(index, rows)
        np.take(strip.field.ravel(), index, out=field, mode="clip")
        np.take(strip.slope.ravel(), index, out=slope, mode="clip")
        slope *= weight
    field += slope
    return field


def _cells(
    field: Complexes, table: ColourTable, space: Space, *, beyond: bool
) -> tuple[Floats, Floats]:
    """Cell of the table for each pixel, as whole floats, shape (lines, columns) each.

    Returns
    -------
    tuple of numpy.ndarray
        Flat index of the row's first column; column counted from the middle one, which has the
        opposite sign in the mirror image.
    """
    row, column = space.array("cells", (2, *field.shape))
    total = space.array("total", field.shape)
    values = field.view(np.float32)
    pairs = np.abs(values, out=space.array("pairs", values.shape))
    np.add(pairs[:, ::2], pairs[:, 1::2], out=total)
    total += _TINY
    np.divide(values[:, ::2], total, out=column)
    np.subtract(1, column, out=column)
    column *= np.float32(HALF_TURN / 2)
    np.rint(column, out=column)
    # copysign(column, v2): its two bit operations take half the time of numpy's copysign.
    bits = column.view(np.uint32)
    bits |= np.bitwise_and(values.view(np.uint32)[:, 1::2], _SIGN, out=total.view(np.uint32))

    np.abs(field, out=row)
    last = len(table.pixels) - 1
    if beyond and table.wraps:
        np.multiply(row, np.float32(1 / last), out=total)
        np.floor(total, out=total)
        total *= last
        row -= total
    np.rint(row, out=row)
    if beyond:
        np.minimum(row, last, out=row)
    row *= 2 * HALF_TURN + 1
    return row, column


def _look_up(strip: Strip, table: ColourTable, space: Space, row: Floats, column: Floats) -> Packed:
    """The strip's packed colours, shape (lines, columns)."""
    total = np.add(row, column, out=space.array("total", row.shape))
    whole = space.array("packed", row.shape, np.int32)
    index = space.array("pairs", row.shape, np.intp)
    packed = space.array("packed", row.shape, np.uint32)
    np.copyto(whole, total, casting="unsafe")
    np.copyto(index, whole)
    # Counted from the middle of row 0, whose columns are all the bare field, so that an index below
    # zero may be clipped.
    np.take(table.pixels.ravel()[HALF_TURN:], index, out=packed, mode="clip")
    if strip.contrast is not None:
        _fade(strip, table, packed, column)
    return packed


def _fade(strip: Strip, table: ColourTable, packed: Packed, column: Floats) -> None:
    """Mix the fringes' mean colour into pixels that cannot hold the fringes."""
    assert strip.contrast is not None
    rows = strip.block.row[slice(*strip.lines)]
    kept = strip.contrast[rows] if strip.block.straight else strip.contrast.ravel()[rows]
    where = np.nonzero(kept < VISIBLE)
    if where[0].size == 0:
        return
    mean = table.mean[column[where].astype(np.intp) + HALF_TURN].view(np.uint8).astype(np.float32)
    seen = packed[where].view(np.uint8).astype(np.float32)
    mixed = mean + np.repeat(kept[where], 4) * (seen - mean)
    packed[where] = np.rint(mixed).astype(np.uint8).view(np.uint32)


def _write(strip: Strip, plan: PiecePlan, packed: Packed, pixels: Packed, *, upward: bool) -> None:
    """Copy a strip's colours to its picture rows, those outside the picture left out."""
    height = len(pixels)
    start = plan.up if upward else plan.down
    visible = (start - height + 1, start + 1) if upward else (-start, height - start)
    first, last = max(strip.lines[0], visible[0]), min(strip.lines[1], visible[1])
    if first >= last:
        return
    source = packed[first - strip.lines[0] : last - strip.lines[0]]
    left, right = (plan.left + column for column in strip.block.columns)
    if upward:
        target = pixels[start - last + 1 : start - first + 1, left:right][::-1]
    else:
        target = pixels[start + first : start + last, left:right]
    if plan.hides:
        np.copyto(target, source, where=_inside(strip, first, last))
    else:
        np.copyto(target, source)


def _inside(strip: Strip, first: int, last: int) -> NDArray[np.bool_]:
    """Which of the strip's pixels the piece covers, shape (lines, columns) or (lines, 1)."""
    outside = len(strip.field) - 1
    rows = strip.block.row[first:last]
    if strip.block.straight:
        return (rows < outside)[:, None]
    return rows < outside * strip.shape[1]
