"""Runs at quasi-random points of stated tolerances, whatever a run returns."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Generic, TypeVar

import numpy as np
from scipy.stats import qmc

from demo_app.base.errors import InputError
from demo_app.content.bench.answer import Array, Cancelled, Progress
from demo_app.content.spread.tolerance import Tolerance, between, point

R = TypeVar("R")
R_co = TypeVar("R_co", covariant=True)
FIRST = 8


@dataclass(frozen=True, eq=False)
class Drawn(Generic[R_co]):
    """Runs so far.

    Parameters
    ----------
    names : tuple of str
        What spreads.
    points : numpy.ndarray
        Shape (runs, names): its values.
    results : tuple
        One a run.
    """

    names: tuple[str, ...]
    points: Array
    results: tuple[R_co, ...]


def within(name: str, percent: float) -> tuple[Tolerance, ...]:
    """A factor on something, within `percent` of one; no tolerance at all for 0 %."""
    return (between(name, 1 - percent / 100, 1 + percent / 100),) if percent else ()


def about(name: str, half: float) -> tuple[Tolerance, ...]:
    """A shift of something by at most `half` to both sides; no tolerance at all for 0."""
    return (between(name, -half, half),) if half else ()


def drawn(
    model: Callable[[Mapping[str, float]], R],
    tolerances: Sequence[Tolerance],
    *,
    seed: int,
    most: int,
    progress: Progress,
    cancelled: Cancelled,
) -> Iterator[Drawn[R]]:
    """Results of 8 runs, of 16, and so on up to `most` (a power of two).

    Parameters
    ----------
    model : callable
        From the values that spread, by name, to a result. A point that cannot be
        (`InputError`) is left out.
    tolerances : sequence of Tolerance
        What spreads.
    seed : int
        Of the scrambled Sobol points (Owen 1998).
    progress, cancelled : callable
        See `demo_app.content.bench.answer`.

    Raises
    ------
    InputError
        If not one of the first points can be.
    """
    sampler = qmc.Sobol(len(tolerances), scramble=True, rng=np.random.default_rng(seed))
    names = tuple(one.name for one in tolerances)
    found: list[R] = []
    points: list[list[float]] = []
    done, due = 0, FIRST
    refused: InputError | None = None
    while done < most:
        for shares in sampler.random(due - done):
            if cancelled():
                return
            at = point(tolerances, shares)
            try:
                found.append(model(at))
                points.append([at[name] for name in names])
            except InputError as error:
                refused = error
            done += 1
            progress(done, most)
        if not found and refused is not None:
            raise refused
        due = 2 * done
        yield Drawn(names, np.array(points), tuple(found))
