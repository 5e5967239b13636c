"""Which tolerance matters most: Sobol indices of each reading.

A first index is the share of a reading's variance that one tolerance makes alone; a total index
adds what it makes together with others (Saltelli et al. 2010, Comput. Phys. Commun. 181, 259).
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.stats import qmc

from demo_app.base.errors import InputError
from demo_app.content.spread.monte_carlo import Model
from demo_app.content.spread.tolerance import Tolerance, check_all, point

Array = NDArray[np.float64]

RESAMPLES = 200


@dataclass(frozen=True)
class Share:
    """How much of a reading's variance one tolerance makes.

    Parameters
    ----------
    name : str
        The tolerance.
    first, total : float
        Sobol indices, 0 to 1.
    first_low, first_high, total_low, total_high : float
        95 % of the bootstrap's.
    """

    name: str
    first: float
    first_low: float
    first_high: float
    total: float
    total_low: float
    total_high: float


@dataclass(frozen=True)
class Ranking:
    """Tolerances by what they do to one reading, the one that matters most first.

    `clear` says whether the first is ahead of the second beyond the bootstrap's doubt.
    """

    reading: str
    shares: tuple[Share, ...]
    clear: bool
    points: int
    seed: int


def rank(
    model: Model,
    nominal: Mapping[str, float],
    tolerances: Sequence[Tolerance],
    readings: Sequence[str],
    *,
    seed: int,
    base: int = 64,
    progress: Callable[[int, int], None] = lambda done, count: None,
    cancelled: Callable[[], bool] = lambda: False,
) -> tuple[Ranking, ...] | None:
    """Rankings of some readings from ``base * (tolerances + 2)`` runs; None if cancelled.

    Parameters
    ----------
    model, nominal, tolerances, seed, progress, cancelled
        As for `demo_app.content.spread.monte_carlo.spreading`.
    readings : sequence of str
        Numbers or yes-nos.
    base : int
        A power of two.

    Raises
    ------
    InputError
        If a run within the tolerances is refused or does not state a reading: then there is no
        variance to share out.
    """
    check_all(tolerances)
    count = len(tolerances)
    sample = qmc.Sobol(2 * count, scramble=True, rng=np.random.default_rng(seed)).random(base)
    first, second = sample[:, :count], sample[:, count:]
    crossed = np.repeat(first[None], count, axis=0)
    for place in range(count):
        crossed[place, :, place] = second[:, place]
    blocks = np.concatenate([first[None], second[None], crossed])
    found = np.empty((len(readings), *blocks.shape[:2]))
    whole = blocks.shape[0] * base
    for done, at in enumerate(np.ndindex(*blocks.shape[:2])):
        if cancelled():
            return None
        run = model({**nominal, **point(tolerances, blocks[at])})
        found[(slice(None), *at)] = [_number(run, name) for name in readings]
        progress(done + 1, whole)
    return tuple(
        _ranking(name, tolerances, values, whole, seed)
        for name, values in zip(readings, found, strict=True)
    )


def _number(run: Mapping[str, object], name: str) -> float:
    value = run.get(name)
    if not isinstance(value, bool | int | float):
        raise InputError(
            f"reading {name} is not a number at every point",
            place="ranking",
            remedy="narrow the tolerances, or rank another reading",
        )
    return float(value)


def _ranking(
    name: str, tolerances: Sequence[Tolerance], values: Array, whole: int, seed: int
) -> Ranking:
    if np.ptp(values) <= 1e-12 * max(1.0, float(np.abs(values).max())):
        still = tuple(Share(one.name, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0) for one in tolerances)
        return Ranking(name, still, False, whole, seed)
    # The same resamples in every run; a rank is no better than its doubt.
    drawn = np.random.default_rng(seed).integers(values.shape[1], size=(RESAMPLES, values.shape[1]))
    first, total = indices(values)
    ends = np.quantile(indices(values[:, drawn]), [0.025, 0.975], axis=-1)
    shares = [
        Share(
            one.name,
            float(first[place]),
            float(ends[0, 0, place]),
            float(ends[1, 0, place]),
            float(total[place]),
            float(ends[0, 1, place]),
            float(ends[1, 1, place]),
        )
        for place, one in enumerate(tolerances)
    ]
    shares.sort(key=lambda share: -share.total)
    clear = len(shares) < 2 or shares[0].total_low > shares[1].total_high
    return Ranking(name, tuple(shares), clear, whole, seed)


def indices(values: Array) -> Array:
    """First and total Sobol indices, shape ``(2, tolerances, ...)``.

    Parameters
    ----------
    values : ndarray
        ``(2 + tolerances, ..., points)``: f(A), f(B), then f at A with one column of B.

    Notes
    -----
    Saltelli et al. 2010, table 2 (b) and (f), from values centred: a large mean costs figures.
    """
    values = values - values[:2].mean(axis=(0, -1), keepdims=True)
    at_a, at_b, crossed = values[0], values[1], values[2:]
    variance = np.maximum(np.var(values[:2], axis=(0, -1)), np.finfo(float).tiny)
    first = np.mean(at_b * (crossed - at_a), axis=-1) / variance
    total = np.mean((at_a - crossed) ** 2, axis=-1) / (2 * variance)
    return np.asarray(np.clip([first, total], 0.0, 1.0))
