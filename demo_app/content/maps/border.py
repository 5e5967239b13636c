"""Borders and bands of a map: where a verdict changes, where a number passes a level."""

import itertools
import math
from dataclasses import dataclass
from typing import Any

import numpy as np
from contourpy import FillType, LineType, contour_generator
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.content.maps.result import Map

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Border:
    """Where a verdict changes.

    Parameters
    ----------
    name : str
        "yes", a word, or the level as a number.
    lines : tuple of ndarray
        Each ``(points, 2)``: across and up, in the settings' own units.
    """

    name: str
    lines: tuple[Array, ...]


@dataclass(frozen=True)
class Band:
    """Where a number lies between two levels: polygons with holes.

    Parameters
    ----------
    low, high : float
        Its levels.
    polygons : tuple of tuple of ndarray
        Of each polygon its outline first, then its holes, each ``(points, 2)``.
    """

    low: float
    high: float
    polygons: tuple[tuple[Array, ...], ...]


def borders(found: Map, reading: str, levels: tuple[float, ...] = ()) -> tuple[Border, ...]:
    """Borders of a reading: of its yes, of each of its words but one, or at `levels` of a number.

    A border of a verdict lies half-way between the points on both sides of it, and so is no finer
    than the grid; that of a number is interpolated between them.

    Raises
    ------
    InputError
        For a number without a level.
    """
    grid = found.values(reading)
    stated: list[Any] = [value for value in grid.flat if value is not None]
    if stated and all(isinstance(value, bool) for value in stated):
        return (Border("yes", lines(found, found.numbers(reading), 0.5)),)
    if any(isinstance(value, str) for value in stated):
        return tuple(
            Border(word, lines(found, _is(grid, word), 0.5)) for word in sorted(set(stated))[:-1]
        )
    if not levels:
        raise InputError(
            f"{reading} is a number", place="border", remedy="name a level that it passes"
        )
    values = found.numbers(reading)
    return tuple(Border(f"{level:g}", lines(found, values, level)) for level in levels)


def _is(grid: NDArray[np.object_], word: str) -> Array:
    return np.array([[np.nan if v is None else float(v == word) for v in row] for row in grid])


def lines(found: Map, values: Array, level: float) -> tuple[Array, ...]:
    """Lines along which `values` (on the map's grid, NaN where there is none) pass `level`."""
    contours = contour_generator(
        found.across(), found.up(), np.ma.masked_invalid(values), line_type=LineType.Separate
    )
    return tuple(np.asarray(one, float) for one in contours.lines(level))


def bands(found: Map, reading: str, levels: tuple[float, ...]) -> tuple[Band, ...]:
    """Filled contours of a reading between neighbouring `levels`, which rise."""
    contours = contour_generator(
        found.across(),
        found.up(),
        np.ma.masked_invalid(found.numbers(reading)),
        fill_type=FillType.OuterOffset,
    )
    return tuple(_band(contours, low, high) for low, high in itertools.pairwise(levels))


def _band(contours: object, low: float, high: float) -> Band:
    outlines, offsets = contours.filled(low, high)  # type: ignore[attr-defined]
    polygons = tuple(
        tuple(np.split(np.asarray(points, float), ends[1:-1].astype(int)))
        for points, ends in zip(outlines, offsets, strict=True)
    )
    return Band(low, high, polygons)


def round_levels(values: Array, count: int = 8) -> tuple[float, ...]:
    """About `count` round numbers that cover `values` (NaN left out).

    Examples
    --------
    >>> round_levels(np.array([3.0, 41.0]), 4)
    (0.0, 10.0, 20.0, 30.0, 40.0, 50.0)
    """
    known = values[np.isfinite(values)]
    if not known.size:
        return ()
    low, high = float(known.min()), float(known.max())
    if high <= low:
        return (low,)
    rough = (high - low) / count
    power = 10.0 ** math.floor(math.log10(rough))
    step = next(power * one for one in (1, 2, 5, 10) if power * one >= rough * (1 - 1e-9))
    first, last = math.floor(low / step), math.ceil(high / step)
    return tuple(step * place for place in range(first, last + 1))
