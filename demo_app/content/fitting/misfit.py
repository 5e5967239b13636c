"""Sum of squares over the one unknown, from the runs made so far, and what follows from it."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.interpolate import PchipInterpolator
from scipy.linalg import solve_triangular
from scipy.optimize import brentq, minimize_scalar

from demo_app.content.fitting.records import Observed

Array = NDArray[np.float64]

_FINE = 40
"""Points between two runs at which the misfit is looked at."""


def covariance(observed: Sequence[Observed], model_pct: float = 0.0) -> Array:
    """Covariance of the readings' errors, shape ``(n, n)``.

    A bias is shared by the readings of one instrument, and what the model is off (`model_pct`, one
    standard deviation, percent of each reading) by all of them (GUM, JCGM 100:2008, F.1.2.3).
    """
    found = np.diag([float(one.sd) ** 2 for one in observed])
    off = np.array([model_pct / 100 * abs(one.value) for one in observed])
    found += np.outer(off, off)
    for i, one in enumerate(observed):
        for j, other in enumerate(observed):
            shared = one.instrument != "" and one.instrument == other.instrument
            if shared or i == j:
                found[i, j] += one.bias * other.bias
    return found


@dataclass(frozen=True, eq=False)
class Stretch:
    """A part of the range on which every reading is stated.

    Parameters
    ----------
    ends : tuple of float
        Its ends.
    curve : callable
        ``curve(u) -> readings``, shape ``(..., n)``, interpolated between runs.
    fine : ndarray
        Places at which the misfit is looked at, rising.
    """

    ends: tuple[float, float]
    curve: Callable[[Array], Array]
    fine: Array


def stretches(places: Array, found: Array) -> tuple[Stretch, ...]:
    """Parts of the range with runs at `places` (rising), `found` ``(runs, n)``, NaN: not stated."""
    valid = np.isfinite(found).all(axis=1)
    edges = np.flatnonzero(np.diff(np.concatenate([[0], valid.astype(int), [0]])))
    parts = []
    for first, last in edges.reshape(-1, 2):
        if last - first < 2:
            continue
        u = places[first:last]
        curve = PchipInterpolator(u, found[first:last])
        fine = np.interp(
            np.arange((u.size - 1) * _FINE + 1) / _FINE, np.arange(u.size, dtype=float), u
        )
        parts.append(Stretch((float(u[0]), float(u[-1])), curve, fine))
    return tuple(parts)


@dataclass(frozen=True, eq=False)
class Misfit:
    """The sum of squares over one stretch, from the readings and their Cholesky factor."""

    stretch: Stretch
    measured: Array
    factor: Array

    def __call__(self, at: Array | float) -> Array:
        """Sum of squares at places `at`, any shape."""
        at = np.asarray(at, float)
        rest = self.stretch.curve(at.ravel()).T - self.measured[:, None]
        scaled = solve_triangular(self.factor, rest, lower=True)
        return np.asarray((scaled**2).sum(axis=0).reshape(at.shape))

    def minima(self) -> list[tuple[float, float]]:
        """Places of the local minima, and the misfit there."""
        fine = self.stretch.fine
        values = self(fine)
        padded = np.concatenate([[np.inf], values, [np.inf]])
        low = np.flatnonzero((values <= padded[:-2]) & (values < padded[2:]))
        found = []
        for place in map(int, low):
            a, b = float(fine[max(0, place - 1)]), float(fine[min(fine.size - 1, place + 1)])
            best = minimize_scalar(
                lambda u: float(self(u)), bounds=(a, b), method="bounded", options={"xatol": 1e-7}
            )
            tried = [float(best.x), a, b, float(fine[place])]
            misfit, at = min((float(self(u)), u) for u in tried)
            found.append((at, misfit))
        return found

    def region(self, place: float, limit: float) -> tuple[float, float]:
        """Ends of the part around the minimum `place` in which the misfit is at most `limit`."""
        fine = self.stretch.fine
        return (
            self._end(place, fine[fine < place][::-1], limit),
            self._end(place, fine[fine > place], limit),
        )

    def _end(self, place: float, outwards: Array, limit: float) -> float:
        above = np.flatnonzero(self(outwards) > limit) if outwards.size else np.array([], int)
        if not above.size:
            return float(outwards[-1]) if outwards.size else place
        first = int(above[0])
        inner = place if first == 0 else float(outwards[first - 1])
        return float(brentq(lambda u: float(self(u)) - limit, inner, float(outwards[first])))


def merged(regions: Sequence[tuple[float, float]]) -> tuple[tuple[float, float], ...]:
    """Regions in order, those that touch joined."""
    joined: list[tuple[float, float]] = []
    for low, high in sorted(regions):
        if joined and low <= joined[-1][1] + 1e-9:
            joined[-1] = joined[-1][0], max(high, joined[-1][1])
        else:
            joined.append((low, high))
    return tuple(joined)
