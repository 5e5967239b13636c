"""Runs at quasi-random points of stated tolerances, whatever a run returns."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import TypeVar

import numpy as np
from scipy.stats import qmc

from demo_app.base.errors import InputError
from demo_app.content.bench.answer import Cancelled, Progress
from demo_app.content.spread.tolerance import Tolerance, between, point

R = TypeVar("R")
FIRST = 8


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
) -> Iterator[tuple[R, ...]]:
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
    found: list[R] = []
    done, due = 0, FIRST
    refused: InputError | None = None
    while done < most:
        for shares in sampler.random(due - done):
            if cancelled():
                return
            try:
                found.append(model(point(tolerances, shares)))
            except InputError as error:
                refused = error
            done += 1
            progress(done, most)
        if not found and refused is not None:
            raise refused
        due = 2 * done
        yield tuple(found)
