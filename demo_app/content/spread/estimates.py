"""What many runs say together: a range of numbers, or the odds of a verdict."""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

Z95 = 1.959963984540054
"""Standard normal quantile of 97.5 %."""


@dataclass(frozen=True)
class Range:
    """Where a reading lies.

    Parameters
    ----------
    low, middle, high : float
        5, 50 and 95 of 100 runs lie below.
    mean, mean_low, mean_high : float
        Mean, and the range that holds it with 95 % (for a reading that is itself a probability,
        the mean is the probability over all).
    count : int
        Runs that stated the reading at all.
    """

    low: float
    middle: float
    high: float
    mean: float
    mean_low: float
    mean_high: float
    count: int


@dataclass(frozen=True)
class Odds:
    """How often something holds.

    Parameters
    ----------
    share : float
        Of the runs.
    low, high : float
        The range that holds the probability with 95 % (Wilson 1927, J. Am. Stat. Assoc. 22, 209).
    hits, count : int
        Runs in which it held, and all of them.
    """

    share: float
    low: float
    high: float
    hits: int
    count: int


def wilson(hits: int, count: int, z: float = Z95) -> tuple[float, float]:
    """Wilson's score interval of a probability after `hits` of `count`.

    Quasi-random points scatter less than the coin tosses for which it was made: it errs wide.

    Examples
    --------
    >>> [round(end, 4) for end in wilson(8, 10)]
    [0.4902, 0.9433]
    """
    share = hits / count
    scale = 1 + z**2 / count
    middle = (share + z**2 / (2 * count)) / scale
    half = z / scale * math.sqrt(share * (1 - share) / count + z**2 / (4 * count**2))
    low = 0.0 if hits == 0 else middle - half
    return low, 1.0 if hits == count else middle + half


def odds(hits: int, count: int) -> Odds:
    """Odds after `hits` of `count` (at least 1)."""
    return Odds(hits / count, *wilson(hits, count), hits, count)


def range_of(values: Sequence[float]) -> Range:
    """Range of at least one value."""
    found = np.asarray(values, float)
    # Hazen's places: each of n even points stands for the middle of its n-th part.
    low, middle, high = np.quantile(found, [0.05, 0.5, 0.95], method="hazen")
    mean = float(found.mean())
    half = Z95 * float(found.std(ddof=1)) / math.sqrt(found.size) if found.size > 1 else math.inf
    return Range(float(low), float(middle), float(high), mean, mean - half, mean + half, found.size)


def summed_up(
    runs: Sequence[Mapping[str, Any]],
) -> tuple[dict[str, Range], dict[str, Odds], dict[str, dict[str, Odds]]]:
    """Ranges of numbers, odds of yes-nos, and odds of each word, by reading.

    A reading that a run does not state (None) is left out of its own count alone.
    """
    ranges: dict[str, Range] = {}
    verdicts: dict[str, Odds] = {}
    words: dict[str, dict[str, Odds]] = {}
    for name in runs[0] if runs else ():
        values = [run[name] for run in runs if run[name] is not None]
        if not values:
            continue
        if all(isinstance(value, bool) for value in values):
            verdicts[name] = odds(sum(values), len(values))
        elif any(isinstance(value, str) for value in values):
            known = sorted(set(values))
            words[name] = {word: odds(values.count(word), len(values)) for word in known}
        else:
            ranges[name] = range_of(values)
    return ranges, verdicts, words
