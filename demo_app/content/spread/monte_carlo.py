"""Monte Carlo with quasi-random points: first figures at once, then finer by powers of two."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from scipy.stats import qmc

from demo_app.base.errors import InputError
from demo_app.content.spread.estimates import Odds, Range, summed_up
from demo_app.content.spread.tolerance import Tolerance, check_all, point

Model = Callable[[Mapping[str, float]], Mapping[str, Any]]
"""From the values that spread, by name, to readings: numbers, yes-nos, words or None."""

FIRST = 16
MOST = 1024


@dataclass(frozen=True)
class Spread:
    """What the tolerances do to the readings.

    Parameters
    ----------
    tolerances : tuple of Tolerance
        What was allowed to spread.
    nominal : mapping
        Readings of the run as it was meant.
    ranges : mapping
        `Range` of each reading that is a number; empty before the first points are in.
    odds : mapping
        `Odds` of each yes-no.
    words : mapping
        For each reading in words, the `Odds` of each word.
    points : int
        Runs in it.
    refused : int
        Points whose settings contradict each other: they are in no range.
    seed : int
        Gives the same points again.
    most : int
        Points of the last, finest answer.
    """

    tolerances: tuple[Tolerance, ...]
    nominal: Mapping[str, Any]
    ranges: Mapping[str, Range]
    odds: Mapping[str, Odds]
    words: Mapping[str, Mapping[str, Odds]]
    points: int
    refused: int
    seed: int
    most: int

    @property
    def done(self) -> bool:
        """Whether all points are in."""
        return self.points + self.refused >= self.most


def spreading(
    model: Model,
    nominal: Mapping[str, float],
    tolerances: Sequence[Tolerance],
    *,
    seed: int,
    most: int = MOST,
    progress: Callable[[int, int], None] = lambda done, count: None,
    cancelled: Callable[[], bool] = lambda: False,
) -> Iterator[Spread]:
    """Spread after the nominal run alone, after 16 points, after 32, and so on up to `most`.

    Parameters
    ----------
    model : callable
        What runs.
    nominal : mapping
        Values as meant, by name; what has no tolerance stays at them.
    tolerances : sequence of Tolerance
        What spreads, each by itself.
    seed : int
        Of the scrambled Sobol points (Owen 1998): the same seed, the same bytes.
    most : int
        A power of two, at least 16: only then are Sobol points even.
    progress : callable
        Told ``(done, most)`` after each point.
    cancelled : callable
        Asked before each point; True ends the answers with the last whole one.

    Raises
    ------
    InputError
        For unusable tolerances, a `most` that is no power of two, or a nominal run that the model
        itself refuses.
    """
    check_all(tolerances)
    if most < FIRST or most & (most - 1):
        raise InputError(
            f"{most} points are not even", place="points", remedy="write 16, 32, 64 and so on"
        )
    meant = dict(model(nominal))
    runs: list[Mapping[str, Any]] = []
    refused = 0

    def now() -> Spread:
        return Spread(tuple(tolerances), meant, *summed_up(runs), len(runs), refused, seed, most)

    yield now()
    sampler = qmc.Sobol(len(tolerances), scramble=True, rng=np.random.default_rng(seed))
    done, due = 0, FIRST
    while done < most:
        for shares in sampler.random(due - done):
            if cancelled():
                return
            try:
                runs.append(dict(model({**nominal, **point(tolerances, shares)})))
            except InputError:
                refused += 1
            done += 1
            progress(done, most)
        due = 2 * done
        yield now()


def spread(
    model: Model, nominal: Mapping[str, float], tolerances: Sequence[Tolerance], **words: Any
) -> Spread:
    """The last and finest answer of `spreading`, which takes the same words."""
    last: Spread | None = None
    for found in spreading(model, nominal, tolerances, **words):
        last = found
    assert last is not None
    return last
