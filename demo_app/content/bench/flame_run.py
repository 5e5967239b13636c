"""One bottle over the burner, followed without its crack, for every time in the flame at once.

One long heating is run, and left after some heating times: the flame goes out, the drop lands. What
the flaws met before and after the drop is interpolated between those times. Score depths need no
runs of their own: K of several depths is followed side by side, and the odds are over all of them.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np
from scipy.interpolate import PchipInterpolator

from demo_app.content.bench.answer import Array
from demo_app.physics.heat import Water
from demo_app.physics.materials import Material
from demo_app.physics.revolve.body import Glass, cold
from demo_app.physics.revolve.profile import bottle
from demo_app.physics.revolve.surroundings import Firing, dried, heated, watered
from demo_app.physics.revolve.verdict import (
    Bottle,
    Peaks,
    bottle_of,
    break_probability,
    no_peaks,
    weighed,
)

HEIGHT = 0.22
RING_AT = 0.08
"""Height of the bottle and of the ring, m: the ring is far from foot and shoulder."""
_MELTS = 200.0
"""Kelvin above the softening point beyond which no bottle is a bottle any more."""
_SURE = 0.99
"""Odds of a crack by heat alone at which longer heating is not worth following."""
_WATCH = 2.5
"""Seconds for which the drop is followed at most; its chill peaks within a third of a second."""
_OVER = 0.8
"""Share of its peak to which K has fallen when the drop has done its worst."""


@dataclass(frozen=True)
class Pace:
    """How finely the bottle is followed.

    Parameters
    ----------
    growth : float
        Step as a share of the time since the last event.
    longest : float
        Longest step, s.
    leaves : int
        Heating times after which the drop is tried.
    """

    growth: float
    longest: float
    leaves: int


QUICK = Pace(0.2, 0.8, 4)
FINE = Pace(0.15, 0.5, 7)


@dataclass(frozen=True)
class Burn:
    """What is done to one bottle, SI units.

    Parameters
    ----------
    diameter, wall, width, score : float
        m.
    flux : float
        W/m2.
    delay : float
        From the flame's end to the drop, s.
    aim : float
        By how much the drop misses the ring's middle, m.
    longest : float
        Longest heating that is of interest, s.
    """

    diameter: float
    wall: float
    width: float
    score: float
    flux: float
    delay: float
    aim: float
    longest: float


@dataclass(frozen=True, eq=False)
class Course:
    """What the flaws have met by each heating time, before and after the drop.

    Parameters
    ----------
    bottle : Bottle
        Its flaws.
    seconds : numpy.ndarray
        Shape (n,): heating times, the first zero.
    before, after : tuple of Peaks
        One a heating time: until the drop lands, and until it has done its worst.
    """

    bottle: Bottle
    seconds: Array
    before: tuple[Peaks, ...]
    after: tuple[Peaks, ...]


@dataclass(frozen=True)
class Fate:
    """Odds over heating times, shape (n,) each; the three sum to one."""

    drop: Array
    alone: Array
    none: Array


@dataclass(frozen=True, eq=False)
class _Now:
    time: float
    glass: Glass
    peaks: Peaks
    water: Water | None = None
    ratio: float = 0.0


def course(glass: Material, burn: Burn, pace: Pace) -> Course:
    """Follow one bottle."""
    profile = bottle(burn.diameter, burn.wall, height=HEIGHT)
    what = bottle_of(glass, profile, RING_AT, 0.0, burn.score)
    firing = Firing(burn.flux, burn.width, np.inf, None, burn.aim)
    history = [_Now(0.0, cold(what.piece), no_peaks(what))]
    for now in _followed(what, firing, history[0], burn.longest, pace):
        history.append(now)
        soft = now.peaks.surface > glass.softening_point
        if soft or break_probability(what, now.peaks) > _SURE:
            break
    times = np.array([now.time for now in history])
    wanted = times[-1] * np.linspace(0, 1, pace.leaves + 1)[1:]
    leaves = sorted({int(np.abs(times - one).argmin()) for one in wanted} - {0})
    both = [_dropped(what, firing, history[k], burn.delay, pace) for k in leaves]
    nothing = no_peaks(what)
    return Course(
        what,
        np.concatenate(([0.0], times[leaves])),
        (nothing, *(one for one, _ in both)),
        (nothing, *(one for _, one in both)),
    )


def _followed(what: Bottle, firing: Firing, now: _Now, until: float, pace: Pace) -> Iterator[_Now]:
    """Steps from `now`, an event, to `until` (s)."""
    began, first = now.time, 0.01 if now.water is not None else 0.02
    while now.time < until - 1e-9:
        seconds = min(first + pace.growth * (now.time - began), pace.longest)
        left = until - now.time
        seconds = left if left < 1.5 * seconds else seconds
        glass = heated(what.piece, what.ring, firing, now.glass, now.water, now.time, seconds)
        water, floating = now.water, 0.0
        if water is not None:
            water, floating = dried(what.piece, glass, water, seconds)
        ratio, peaks = weighed(what, glass, now.peaks, floating)
        now = _Now(now.time + seconds, glass, peaks, water, ratio)
        yield now


def _dropped(
    what: Bottle, heating: Firing, now: _Now, delay: float, pace: Pace
) -> tuple[Peaks, Peaks]:
    """Peaks when the drop lands and when it has done its worst; the flame goes out `now`."""
    lands = now.time + delay
    firing = replace(heating, heat_s=now.time, drop_at=lands)
    *_, waited = _followed(what, firing, now, lands, pace)
    worst = 0.0
    wet = replace(waited, water=watered(what.piece, what.ring, firing, None, lands))
    # Landed: from here on the water is the one that is carried along.
    dry = replace(firing, drop_at=None)
    last = wet
    for last in _followed(what, dry, wet, lands + _WATCH, pace):
        worst = max(worst, last.ratio)
        if last.time > lands + 0.3 and last.ratio < _OVER * worst:
            break
    return waited.peaks, last.peaks


def fate(of: Course, seconds: Array, stronger: float = 1.0) -> Fate:
    """Odds at heating times of shape (n,), s.

    What heat alone did to the piece that went on being heated is known to the last time; beyond it
    the bottle has cracked by itself, sags, or was of no interest.

    Parameters
    ----------
    of : Course
        One bottle.
    seconds : numpy.ndarray
        Shape (n,).
    stronger : float
        Factor on all stress: for an estimate of what more heat would do.
    """
    glass = of.bottle.piece.material
    before, after = (_odds(of, peaks, seconds, stronger) for peaks in (of.before, of.after))
    surface = np.interp(seconds, of.seconds, [one.surface for one in of.before])
    lost = (surface > glass.softening_point) | (seconds > of.seconds[-1] + 1e-9)
    alone = np.where(lost, 1.0, before)
    return Fate(
        np.maximum(np.where(lost, 1.0, after) - alone, 0.0),
        alone,
        1 - np.maximum(np.where(lost, 1.0, after), alone),
    )


def _odds(of: Course, peaks: tuple[Peaks, ...], seconds: Array, stronger: float) -> Array:
    """Odds of a crack, interpolated in what drives it: K of each depth, and the Weibull stress."""
    modulus = of.bottle.piece.material.weibull_modulus
    rows = [np.append(one.by_depth, one.risk ** (1 / modulus)) for one in peaks]
    at = np.minimum(seconds, of.seconds[-1])
    met = stronger * PchipInterpolator(of.seconds, np.array(rows))(at)
    return np.array(
        [
            break_probability(
                of.bottle, replace(peaks[0], by_depth=row[:-1], risk=row[-1] ** modulus)
            )
            for row in met
        ]
    )


def ring_temperatures(glass: Material, burn: Burn, pace: Pace) -> tuple[Array, Array]:
    """Times (s) and the outside's temperatures (K) in the middle of the ring, flame burning."""
    profile = bottle(burn.diameter, burn.wall, height=HEIGHT)
    what = bottle_of(glass, profile, RING_AT, 0.0, burn.score)
    firing = Firing(burn.flux, burn.width, np.inf, None, 0.0)
    start = _Now(0.0, cold(what.piece), no_peaks(what))
    course = [(start.time, start.peaks.surface)]
    for now in _followed(what, firing, start, burn.longest, pace):
        course.append((now.time, now.peaks.surface))
        if now.peaks.surface > glass.softening_point + _MELTS:
            break
    times, surface = np.array(course).T
    return times, surface
