"""Least squares for one unknown, with its profile as the interval: first figures at once."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import cholesky
from scipy.stats import chi2

from demo_app.base.errors import InputError
from demo_app.content.fitting.misfit import Misfit, covariance, merged, stretches
from demo_app.content.fitting.records import LEAST, WIDE, Compared, Fit, Observed, Unknown

Array = NDArray[np.float64]

Predict = Callable[[float], Sequence[float | None]]
"""From a value of the unknown to the readings as observed, in their order; None: not stated.
It may raise `InputError` for a value that cannot be."""

LEVEL = 0.95
DOUBTFUL = 0.01
"""Misfits with smaller odds than this are no accident."""
FIRST_RUNS, RUNS = 9, 17
_ROUNDS = 6
_STILL = 0.02
"""Share of the interval by which more runs may move a figure that counts as settled."""


def fits(
    predict: Predict,
    unknown: Unknown,
    observed: Sequence[Observed],
    *,
    model_pct: float = 0.0,
    runs: int = RUNS,
    progress: Callable[[int, int], None] = lambda done, count: None,
    cancelled: Callable[[], bool] = lambda: False,
) -> Iterator[Fit]:
    """Ever better fits: after 9 runs, after `runs`, and once runs at its figures move nothing.

    Parameters
    ----------
    predict : callable
        The model.
    unknown : Unknown
        What is looked for, and where.
    observed : sequence of Observed
        At least three readings.
    model_pct : float
        How far the model itself may be off, percent of each reading and alike for all of them, one
        standard deviation.
    runs : int
        Runs spread over the range before its figures are looked at closer; at least 9.
    progress : callable
        Told ``(done, about how many)`` after each run.
    cancelled : callable
        Asked before each run; True ends the fits with the last.

    Raises
    ------
    InputError
        For fewer than three readings, or if the model states them at no two neighbouring values.

    Notes
    -----
    The interval holds the values whose sum of squares is within the chi-square quantile of the
    least (profile likelihood). If the readings contradict each other, it is widened by the square
    root of the misfit over its freedom (Birge 1932, Phys. Rev. 40, 207).
    """
    if len(observed) < LEAST:
        raise InputError(
            f"{len(observed)} readings cannot contradict each other",
            place="readings",
            remedy=f"take at least {LEAST}",
        )
    scale = _Scale(unknown)
    known: dict[float, list[float]] = {}
    about = runs + 6

    def run(places: Sequence[float]) -> bool:
        for place in places:
            if place in known:
                continue
            if cancelled():
                return False
            known[place] = _stated(predict, scale.value(place), len(observed))
            progress(len(known), max(about, len(known)))
        return True

    def now() -> Fit:
        return _fit(known, scale, observed, model_pct)

    if not run(list(np.linspace(0.0, 1.0, FIRST_RUNS))):
        return
    found = now()
    yield found
    if runs > FIRST_RUNS:
        if not run(list(np.linspace(0.0, 1.0, runs))):
            return
        found = now()
        yield found
    for _ in range(_ROUNDS):
        figures = [found.value, *(end for region in found.regions for end in region)]
        if not run([place for place in map(scale.place, figures) if _new(place, known)]):
            return
        later = now()
        moved = max(abs(a - b) for a, b in zip(_figures(found), _figures(later), strict=True))
        settled = moved <= _STILL * (later.high - later.low)
        found = later
        if settled:
            break
        yield found
    progress(len(known), len(known))
    yield replace(found, done=True)


def fit(predict: Predict, unknown: Unknown, observed: Sequence[Observed], **words: Any) -> Fit:
    """The last of `fits`, which takes the same words."""
    last: Fit | None = None
    for found in fits(predict, unknown, observed, **words):
        last = found
    assert last is not None
    return last


class _Scale:
    """The range of the unknown as 0 to 1, by equal steps or equal factors."""

    def __init__(self, unknown: Unknown) -> None:
        self.unknown = unknown
        self._bend = np.log if unknown.by_factors else np.asarray
        self._ends = float(self._bend(unknown.low)), float(self._bend(unknown.high))

    def value(self, place: float) -> float:
        low, high = self._ends
        at = low + place * (high - low)
        found = float(np.exp(at)) if self.unknown.by_factors else at
        return min(self.unknown.high, max(self.unknown.low, found))

    def place(self, value: float) -> float:
        low, high = self._ends
        return float((float(self._bend(value)) - low) / (high - low))


def _stated(predict: Predict, value: float, count: int) -> list[float]:
    try:
        found = predict(value)
    except InputError:
        return count * [np.nan]
    return [np.nan if one is None else float(one) for one in found]


def _new(place: float, known: dict[float, list[float]]) -> bool:
    return min(abs(place - one) for one in known) > 1e-6


def _figures(found: Fit) -> tuple[float, float, float]:
    return found.value, found.low, found.high


def _fit(
    known: dict[float, list[float]], scale: _Scale, observed: Sequence[Observed], model_pct: float
) -> Fit:
    places = np.array(sorted(known))
    spread = covariance(observed, model_pct)
    factor, measured = cholesky(spread, lower=True), np.array([one.value for one in observed])
    parts = stretches(places, np.array([known[place] for place in places]))
    if not parts:
        raise InputError(
            "the model does not state these readings in this range",
            place=scale.unknown.name,
            remedy="widen the range, or take other readings",
        )
    misfits = [Misfit(part, measured, factor) for part in parts]
    minima = [(value, place, one) for one in misfits for place, value in one.minima()]
    least, best, where = min(minima, key=lambda one: one[0])
    freedom = len(observed) - 1
    chance = float(chi2.sf(least, freedom))
    wider = max(1.0, least / freedom) if chance < DOUBTFUL else 1.0
    limit = least + wider * float(chi2.ppf(LEVEL, 1))
    regions = merged([one.region(u, limit) for value, u, one in minima if value <= limit])
    low, high = regions[0][0], regions[-1][1]
    fitted = where.stretch.curve(np.array([best]))[0]
    pulls = (measured - fitted) / np.sqrt(np.diag(spread))
    return Fit(
        scale.unknown,
        scale.value(best),
        scale.value(low),
        scale.value(high),
        tuple((scale.value(a), scale.value(b)) for a, b in regions),
        tuple(
            Compared(*row) for row in zip(observed, fitted.tolist(), pulls.tolist(), strict=True)
        ),
        float(least),
        freedom,
        chance,
        _notes(parts[0].ends[0], parts[-1].ends[1], regions, scale, chance),
        len(known),
        False,
    )


def _notes(
    first: float,
    last: float,
    regions: tuple[tuple[float, float], ...],
    scale: _Scale,
    chance: float,
) -> tuple[str, ...]:
    low, high = regions[0][0], regions[-1][1]
    open_low, open_high = low <= first + 1e-9, high >= last - 1e-9
    width = scale.value(high) - scale.value(low)
    wide = width > WIDE * (scale.unknown.high - scale.unknown.low)
    held = {
        "nothing": open_low and open_high and len(regions) == 1,
        "inconsistent": chance < DOUBTFUL,
        "several": len(regions) > 1,
        "open_low": open_low,
        "open_high": open_high,
        "wide": wide,
    }
    return tuple(name for name, holds in held.items() if holds) or ("found",)
