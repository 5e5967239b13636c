"""Bright stripes in a picture, measured against published photosensitivity limits.

Stripes are counted along lines in four directions by turning points: a light bar is a maximum of
luminance between two places that are darker by a discernible contrast. Bars that lie near each
other make a run; a run of more than the allowed pairs is striped from end to end.
"""

import functools
import math
from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.limits import LIMITS, Limits
from demo_app.optics.luminance import Bytes, Floats, grid_of, luminance

Whole = NDArray[np.intp]

EVERY = 3
"""Grid lines from one examined line to the next."""
CELL = 4
"""Side of the cells by which the striped area is measured, grid points."""
APART = 1 / 5
"""Share of the picture's width: bars further from each other are no pattern."""
UNEVEN = 3.0
"""Ratio of a bar's distance to the mean one before it from which on a new run begins."""


@dataclass(frozen=True)
class Stripes:
    """What was found.

    Parameters
    ----------
    pairs : int
        Most light-dark pairs of one run, in any of the directions.
    area : float
        Share of the screen under runs of more pairs than allowed.
    lightest_cd_m2 : float
        Luminance of the lightest bar in them, cd/m2; 0 where there are none.
    """

    pairs: int
    area: float
    lightest_cd_m2: float

    def exceed(self, limits: Limits = LIMITS) -> bool:
        """Whether a picture that stays for `limits.seconds` goes beyond the limits."""
        many = self.pairs > limits.pairs and self.area > limits.area
        return many and self.lightest_cd_m2 > limits.bright_cd_m2


@dataclass(frozen=True)
class _Run:
    line: int
    first: float
    last: float
    pairs: int
    lightest: float


def stripes(pixels: Bytes, limits: Limits = LIMITS, screen_share: float = 1.0) -> Stripes:
    """Count the stripes of a picture.

    Parameters
    ----------
    pixels : numpy.ndarray
        Shape (height, width, 4), uint8: blue, green, red.
    limits : Limits
    screen_share : float
        Share of the screen that the picture takes; what lies around it is dark.
    """
    shown = limits.screen_cd_m2 * luminance(grid_of(pixels))
    lines = _lines(*shown.shape)
    runs, most = _runs(shown.ravel()[lines], limits, APART * shown.shape[1])
    if not runs:
        return Stripes(most, 0.0, 0.0)
    cells = _cells(shown.shape, lines, runs)
    area = float(cells.mean()) * screen_share
    return Stripes(most, area, max(run.lightest for run in runs))


def lasting(found: Iterable[tuple[float, Stripes]], limits: Limits = LIMITS) -> tuple[float, ...]:
    """Instants at which stripes beyond the limits have been there for too long.

    Parameters
    ----------
    found : iterable of (float, Stripes)
        Time (s) on the clock, increasing, and what is seen from then on.
    """
    since: float | None = None
    alarms: list[float] = []
    for time_s, seen in found:
        since = (time_s if since is None else since) if seen.exceed(limits) else None
        if since is not None and time_s - since >= limits.seconds:
            alarms.append(time_s)
    return tuple(alarms)


@functools.lru_cache(maxsize=4)
def _lines(rows: int, columns: int) -> Whole:
    """Grid points of the lines in four directions, shape (steps, lines); ends repeat their last."""
    point = np.arange(rows * columns).reshape(rows, columns)
    # The longest first, so that the last steps have few lines to go along.
    found = [*point[::EVERY], *point.T[::EVERY]][:: 1 if columns >= rows else -1]
    for turned in (point, point[::-1]):
        offsets = range(EVERY - rows, columns - 1, EVERY)
        found += [turned.diagonal(offset) for offset in offsets]
    longest = max(rows, columns)
    return np.stack([np.pad(line, (0, longest - line.size), mode="edge") for line in found], axis=1)


def _runs(shown: Floats, limits: Limits, apart: float) -> tuple[list[_Run], int]:
    """Runs of more pairs than allowed, and the most pairs of any run.

    Walks along all lines at once. `extreme` is the largest so far of the luminance's logarithm, its
    sign turned while it falls, so that maxima and minima are one case.
    """
    light = np.log(shown + np.float32(limits.flare_cd_m2))
    hold = np.float32(math.log((1 + limits.contrast) / (1 - limits.contrast)))
    count = shown.shape[1]
    sign = np.ones(count, np.float32)
    extreme = light[0].copy()
    at = np.zeros(count, np.intp)
    book = _Book(count, limits.pairs, apart)
    for step, now in enumerate(light):
        signed = sign * now
        np.copyto(at, step, where=signed > extreme)
        np.maximum(extreme, signed, out=extreme)
        turned = extreme - signed > hold
        if not turned.any():
            continue
        bars = np.flatnonzero(turned & (sign > 0))
        if bars.size:
            book.add(bars, at[bars], shown[at[bars], bars])
        np.copyto(extreme, -signed, where=turned)
        np.copyto(at, step, where=turned)
        np.negative(sign, out=sign, where=turned)
    book.close(np.arange(count))
    return book.runs, book.most


class _Book:
    """The run of bars that each line is in, and the runs that have ended."""

    def __init__(self, lines: int, allowed: int, apart: float) -> None:
        self._allowed, self._apart = allowed, apart
        self._first, self._last = np.zeros(lines), np.full(lines, -np.inf)
        self._pairs = np.zeros(lines, np.intp)
        self._lightest, self._newest = np.zeros(lines), np.zeros(lines)
        self.runs: list[_Run] = []
        self.most = 0

    def add(self, lines: Whole, at: Whole, light: Floats) -> None:
        """A bar at step `at` (shape as `lines`) of some lines."""
        pairs, last = self._pairs[lines], self._last[lines]
        gap = at - last
        mean = (last - self._first[lines]) / np.maximum(pairs - 1, 1)
        even = pairs > 1
        far = (gap > self._apart) | (even & (gap > UNEVEN * mean))
        near = ~far & even & (gap * UNEVEN < mean)
        self.close(lines[far | near])
        before = np.maximum(self._newest[lines], light)
        so_far = np.maximum(self._lightest[lines], light)
        self._lightest[lines] = np.where(far, light, np.where(near, before, so_far))
        self._first[lines] = np.where(far, at, np.where(near, last, self._first[lines]))
        self._pairs[lines] = np.where(far, 1, np.where(near, 2, pairs + 1))
        self._last[lines], self._newest[lines] = at, light

    def close(self, lines: Whole) -> None:
        """The runs of some lines end."""
        if lines.size:
            self.most = max(self.most, int(self._pairs[lines].max()))
        for k in lines[self._pairs[lines] > self._allowed]:
            ends = float(self._first[k]), float(self._last[k])
            self.runs.append(_Run(int(k), *ends, int(self._pairs[k]), float(self._lightest[k])))


def _cells(shape: tuple[int, int], lines: Whole, runs: list[_Run]) -> NDArray[np.bool_]:
    """Which cells of the grid lie under runs, half a pair beyond their outer bars included."""
    rows, columns = (-(-side // CELL) for side in shape)
    striped = np.zeros((rows, columns), bool)
    for run in runs:
        half = (run.last - run.first) / (run.pairs - 1) / 2
        steps = slice(max(0, round(run.first - half)), round(run.last + half) + 1)
        row, column = np.divmod(lines[steps, run.line], shape[1])
        striped[row // CELL, column // CELL] = True
    return striped
