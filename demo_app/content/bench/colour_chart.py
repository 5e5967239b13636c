"""Computed interference colours, and which retardations suit the colours that were seen.

The eye's judgement is taken as a likelihood: a colour that differs from the one seen by the stated
match (CIEDE2000) is e**-0.5 times as likely as the same colour, every retardation being as likely
as any other beforehand.
"""

import functools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.content.bench.answer import Array
from demo_app.optics.difference import ciede2000, lab
from demo_app.optics.instrument import Instrument, intensity
from demo_app.optics.light_data import lamp
from demo_app.optics.table import exact_signal

FURTHEST = 3000.0
"""Largest retardation that is looked for, nm: beyond, colours are too pale to tell."""
_LEAST = 0.04
"""Likelihood, over the largest, below which a retardation is no candidate."""
_ADDS, _TAKES = 0.0, 90.0
"""Axis of the piece, its instrument being the usual one: along the plate's, and across it."""


@dataclass(frozen=True)
class Candidate:
    """Neighbouring retardations that suit, nm: 5, 50 and 95 of 100 lie below; and its odds."""

    low: float
    middle: float
    high: float
    odds: float


def lab_of(name: str, retardation: Array) -> Array:
    """CIELAB of retardations (nm, shape (n,)) between crossed polarizers, shape (n, 3)."""
    light = lamp(name)
    seen = intensity(Instrument(lamp=name), retardation, np.array(0.0), light.wavelength_nm)
    return lab(seen @ light.weights, light.white)


@functools.lru_cache(maxsize=8)
def _chart(name: str, step: float, furthest: float) -> tuple[Array, Array]:
    places = np.arange(0.0, furthest + step / 2, step)
    return places, lab_of(name, places)


def differences(name: str, seen_nm: float, step: float, shift: float, sign: int) -> Array:
    """CIEDE2000 between the colour of the chart at `seen_nm` and that of each retardation.

    Parameters
    ----------
    name : str
        Lamp.
    seen_nm : float
        Where on the plain chart the colour was found, nm.
    step : float
        Distance of the retardations, nm; the first is zero, the last `FURTHEST`.
    shift : float
        Retardation of a tint plate in the light, nm; zero without.
    sign : int
        +1 where the plate adds, -1 where it takes away.
    """
    places, _ = _chart(name, step, FURTHEST)
    return ciede2000(lab_of(name, np.abs(shift + sign * places)), lab_of(name, np.array([seen_nm])))


def candidates(likely: Array, step: float) -> tuple[Candidate, ...]:
    """Runs of retardations that suit, the likeliest first.

    Parameters
    ----------
    likely : numpy.ndarray
        Shape (n,): likelihood at 0, `step`, ... nm.
    """
    total = likely.sum()
    good = np.concatenate([[0], (likely > _LEAST * likely.max()).astype(int), [0]])
    edges = np.flatnonzero(np.diff(good)).reshape(-1, 2)
    found = []
    for first, last in edges:
        part = likely[first:last]
        share = np.concatenate([[0.0], np.cumsum(part) / part.sum()])
        places = step * (np.arange(first, last + 1) - 0.5)
        low, middle, high = np.maximum(np.interp([0.05, 0.5, 0.95], share, places), 0.0)
        odds = float(part.sum() / total)
        found.append(Candidate(float(low), float(middle), float(high), odds))
    return tuple(sorted(found, key=lambda one: -one.odds))


def colours(
    name: str, low: float, high: float, count: int, plate: float = 0.0, *, adds: bool = True
) -> NDArray[np.uint8]:
    """Screen colours of `count` retardations from `low` to `high` (nm), shape (count, 3)."""
    places = np.linspace(low, high, count)
    instrument = Instrument(lamp=name, tint_plate_nm=plate)
    signal = exact_signal(instrument, places, np.array(_ADDS if adds else _TAKES))
    return np.rint(255 * signal).astype(np.uint8)
