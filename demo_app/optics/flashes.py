"""Flashes in a sequence of pictures, counted as WCAG 2.2 defines them (2.3.1).

A transition is the change between a peak and a valley that follow each other; a flash is two
opposing transitions. Each point of a coarse grid is followed on its own; flashes count where more
than a quarter of any 10 degrees of the visual field has them within the same second.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.colour import LUMINANCE, XYZ_TO_RGB
from demo_app.optics.limits import LIMITS, Limits
from demo_app.optics.luminance import Bytes, Floats, grid_of, linear

COLUMNS = 96
"""Columns of the grid: squares of about a third of a degree."""
SECOND = 1.0
_BLACK = 1e-3
"""White light that is put over black, which has no chromaticity."""

Flags = NDArray[np.bool_]


@dataclass(frozen=True)
class Flashes:
    """Most flashes in one second over an area that counts.

    Parameters
    ----------
    general, red : int
        Flashes of luminance, and to or from saturated red.
    """

    general: int
    red: int

    def exceed(self, limits: Limits = LIMITS) -> bool:
        """Whether there are more than `limits.flashes` of either kind."""
        return max(self.general, self.red) > limits.flashes


def sampled(pixels: Bytes) -> Floats:
    """Linear light on the grid on which flashes are followed, shape (rows, columns, 3)."""
    return linear(grid_of(pixels, COLUMNS))


def flashes(times_s: NDArray[np.float64], light: Floats, limits: Limits = LIMITS) -> Flashes:
    """Count the flashes of a sequence.

    Parameters
    ----------
    times_s : numpy.ndarray
        Shape (n,), increasing: the clock, s. Flashes faster than the pictures cannot be seen.
    light : numpy.ndarray
        Shape (n, rows, columns, 3), as `sampled`.
    """
    if len(light) < 2:
        return Flashes(0, 0)
    general = _general(light @ LUMINANCE.astype(np.float32), limits)
    return Flashes(
        _most(times_s, general, limits), _most(times_s, _red(light.astype(float), limits), limits)
    )


def _general(shown: Floats, limits: Limits) -> Flags:
    """Where and when a transition of luminance is complete, shape (n, rows, columns)."""
    way = np.zeros(shown.shape[1:], np.int8)
    low, high = shown[0].copy(), shown[0].copy()
    found = np.zeros(shown.shape, bool)
    for number, now in enumerate(shown[1:], 1):
        np.minimum(low, now, out=low)
        np.maximum(high, now, out=high)
        risen = (now - low >= limits.change) & (low < limits.dark) & (way <= 0)
        fallen = (high - now >= limits.change) & (now < limits.dark) & (way >= 0) & ~risen
        found[number] = risen | fallen
        way[risen], way[fallen] = 1, -1
        np.copyto(low, now, where=(way > 0) | risen | fallen)
        np.copyto(high, now, where=(way < 0) | risen | fallen)
    return found


def _red(light: NDArray[np.float64], limits: Limits) -> Flags:
    """Where and when a transition to or from saturated red is complete."""
    lit = light + _BLACK
    red = lit[..., 0] >= limits.red * lit.sum(axis=-1)
    place = _chromaticity(lit)
    mark, mark_red = place[0].copy(), red[0].copy()
    found = np.zeros(red.shape, bool)
    for number in range(1, len(light)):
        away = np.hypot(*np.moveaxis(place[number] - mark, -1, 0)) > limits.chroma
        found[number] = away & (red[number] | mark_red)
        mark[away], mark_red[away] = place[number][away], red[number][away]
    return found


def _chromaticity(light: NDArray[np.float64]) -> NDArray[np.float64]:
    """CIE 1976 UCS coordinates u', v' of linear sRGB, shape (..., 2)."""
    xyz = light @ np.linalg.inv(XYZ_TO_RGB).T
    whole = xyz @ np.array([1.0, 15.0, 3.0])
    return np.asarray(xyz[..., :2] * np.array([4.0, 9.0]) / whole[..., None])


def _most(times_s: NDArray[np.float64], turned: Flags, limits: Limits) -> int:
    """Most flashes in one second that more than `limits.area` of some field has."""
    most, first = 0, 0
    recent = np.zeros(turned.shape[1:], np.int32)
    for number, time_s in enumerate(times_s):
        recent += turned[number]
        while times_s[first] <= time_s - SECOND:
            recent -= turned[first]
            first += 1
        while _largest_share(recent // 2 > most, limits.field) > limits.area:
            most += 1
    return most


def _largest_share(flags: Flags, field: float) -> float:
    """Largest share of flagged points in any field of `field` times the picture's sides."""
    if not flags.any():
        return 0.0
    high, wide = (max(1, round(field * side)) for side in flags.shape)
    total = np.pad(flags.cumsum(0).cumsum(1), ((1, 0), (1, 0)))
    upper, lower = total[:-high], total[high:]
    boxes = lower[:, wide:] - lower[:, :-wide] - upper[:, wide:] + upper[:, :-wide]
    return float(boxes.max() / (high * wide))
