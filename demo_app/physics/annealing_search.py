"""The shortest oven programme that passes: searched on a plate of two points, proved on the Column.

A plate that cools slowly has a parabola of temperature through its thickness, so a point for its
surface and one for its core, weighted one to two, say what the parabola does. Hundreds of
programmes run side by side as one array. The best is then run on the Column, and the search
corrected by what the Column finds, until it passes there.
"""

import functools
import itertools
import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np

from demo_app.physics import stepped
from demo_app.physics.annealing import (
    birefringence,
    steady_rate,
    steady_surface_stress,
)
from demo_app.physics.firing import fired, oven_face
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.materials import Array, Material
from demo_app.physics.oven import Schedule, whole
from demo_app.physics.plane import plane_response, plane_strains
from demo_app.physics.relaxation import finish, predict, rest
from demo_app.physics.stepped import Piece

FASTEST = 600 / 3600
"""Fastest cooling that is proposed, K/s: a small oven with its door ajar (common practice)."""
SAFE_PULL = 7e6
"""Pull that cooling may put on a surface for a time, Pa: about 1,000 psi, the customary working
stress of annealed glass (common practice)."""
WORKED = 65.0
"""Kelvin below its softening point at which a piece leaves the maker's hands: float at 650 degC."""

_HOLDS = (10.0, 0.0, -10.0, -20.0, -35.0)
"""Kelvin from the annealing point; never below the strain point."""
_MINUTES = (15.0, 30.0, 60.0, 240.0, 960.0)
"""At least the quarter of an hour that relieves stress at the annealing point (ASTM C162)."""
_SLOW_TO = (0.0, 30.0, 60.0, 100.0, 140.0, 190.0)
"""Kelvin below the strain point."""
_SHARES = (1.0, 0.5, 0.2)
"""Of the fastest cooling that is safe."""
_SOLID = 250.0
"""Kelvin below the strain point at which a piece is surely solid."""
_CELLS = 16
_PASSES, _AIM = 0.97, 0.93
"""Share of the limit that a proposal may use, but for the Column's own error, and should use."""
_TO_GAIN = 0.03
"""Share of the whole time below which more is not worth looking for."""
_SEARCHES, _CORRECTIONS = 2, 4


@dataclass(frozen=True)
class Proposal:
    """A programme that the Column has proved.

    Parameters
    ----------
    schedule : Schedule
        What to tell the oven.
    birefringence : float
        What it leaves in the piece.
    seconds : float
        Until the piece is cold, s.
    """

    schedule: Schedule
    birefringence: float
    seconds: float


def worked_at(glass: Material) -> float:
    """Temperature of a piece fresh from the maker's hands, K."""
    return glass.softening_point - WORKED


@functools.lru_cache(maxsize=64)
def propose(
    glass: Material, thicknesses: tuple[float, ...], joined: bool, limit: float
) -> Proposal | None:
    """The shortest programme that leaves at most the birefringence `limit`.

    None if none was found: the glass or the piece is far from any that is annealed.
    """
    what = stepped.piece(glass, thicknesses, joined=joined, cells=_CELLS)
    # Parts that load each other must not meet so cool an oven that they freeze as they come in.
    coolest = 0.0 if joined and len(thicknesses) > 1 else min(_HOLDS)
    found: list[Proposal] = []
    excess = 1.0
    for _ in range(_SEARCHES):
        schedule = _best(glass, max(thicknesses), limit / excess, coolest)
        if schedule is None:
            break
        tried = _closer(glass, what, schedule, limit)
        found += [one for one in tried if one.birefringence <= _PASSES * limit]
        share = tried[0].birefringence / limit
        if found and (0.8 < share < 1.2 or schedule.slow >= schedule.fast):
            break
        excess *= share / _AIM
    return min(found, key=lambda one: one.seconds, default=None)


def _closer(glass: Material, what: Piece, schedule: Schedule, limit: float) -> list[Proposal]:
    """A schedule proved, then with its slow rate corrected until little is to gain."""
    tried = [prove(glass, what, schedule)]
    while len(tried) <= _CORRECTIONS and not _good_enough(tried[-1], limit):
        last = tried[-1]
        slope = last.birefringence / last.schedule.slow
        if len(tried) > 1:
            before = tried[-2]
            run = last.schedule.slow - before.schedule.slow
            slope = max(slope / 10, (last.birefringence - before.birefringence) / run)
        aim = last.schedule.slow + (_AIM * limit - last.birefringence) / slope
        aim = min(max(aim, 0.2 * last.schedule.slow), 5 * last.schedule.slow, schedule.fast)
        slow = _rounded_down(aim)
        if slow in {one.schedule.slow for one in tried}:
            break
        tried.append(prove(glass, what, replace(schedule, slow=slow)))
    return tried


def _good_enough(tried: Proposal, limit: float) -> bool:
    """Whether a proposal passes and a quicker slow part would save hardly any time."""
    share, told = tried.birefringence / limit, tried.schedule
    if told.slow >= told.fast:
        return share <= _PASSES
    gain = (told.hold - told.slow_to) / told.slow * (1 - share / _AIM)
    return share <= _PASSES and gain < _TO_GAIN * tried.seconds


def prove(glass: Material, what: Piece, schedule: Schedule) -> Proposal:
    """Run a programme on the Column."""
    state = fired(what, stepped.start(what, worked_at(glass)), whole(schedule))
    kept = birefringence(glass, stepped.settled(what, state, ROOM))
    return Proposal(schedule, kept, state.time)


def fastest(glass: Material, thickness: float) -> float:
    """Fastest cooling of the solid that keeps the pull on its surface safe, K/s."""
    pull = abs(steady_surface_stress(glass, thickness, 1.0, glass.strain_point))
    return _rounded_down(min(FASTEST, SAFE_PULL / float(pull)))


@dataclass(frozen=True)
class _Grid:
    """Programmes side by side, shape (b,) each, but for their slow rates."""

    hold: Array
    hold_time: Array
    slow_to: Array
    fast: Array


def _best(glass: Material, thick: float, limit: float, coolest: float) -> Schedule | None:
    """Shortest programme of the grid that keeps within `limit`, its numbers rounded.

    It holds at least `coolest` kelvin above the annealing point.
    """
    grid = _grid(glass, thick, coolest)
    allowed = limit / abs(glass.stress_optic)
    rate = np.minimum(grid.fast, steady_rate(glass, thick, limit))
    kept = _kept_stress(glass, thick, grid, rate)
    rates, stresses = [rate], [kept]
    for _ in range(2):
        rate = _next_rate(rates, stresses, allowed, grid.fast)
        rates.append(rate)
        stresses.append(_kept_stress(glass, thick, grid, rate))
    slow = _next_rate(rates, stresses, allowed, grid.fast)
    good = (slow > 1e-3 * grid.fast) & (np.abs(stresses[-1]) < 2 * allowed)
    if not good.any():
        return None
    seconds = grid.hold_time + (grid.hold - grid.slow_to) / slow + (grid.slow_to - ROOM) / grid.fast
    k = int(np.where(good, seconds, np.inf).argmin())
    return Schedule(
        hold=float(grid.hold[k]),
        hold_time=float(grid.hold_time[k]),
        slow=_rounded_down(float(slow[k])),
        slow_to=float(grid.slow_to[k]),
        fast=_rounded_down(float(grid.fast[k])),
    )


def _next_rate(rates: list[Array], stresses: list[Array], allowed: float, fast: Array) -> Array:
    """Secant step towards the rates that keep just the `allowed` stress, shape (b,), K/s."""
    last, kept = rates[-1], stresses[-1]
    slope = kept / last
    if len(rates) > 1:
        moved = last - rates[-2]
        same = np.abs(moved) < 1e-9 * last
        between = (kept - stresses[-2]) / np.where(same, 1.0, moved)
        slope = np.where(same | (between <= 0), slope, between)
    aim = last + (allowed - kept) / np.where(np.abs(slope) > 1e-9, slope, 1e-9)
    return np.minimum(np.clip(aim, 0.05 * last, 20 * last), fast)


@functools.lru_cache(maxsize=64)
def _grid(glass: Material, thick: float, coolest: float) -> _Grid:
    anneal, strain = (
        round(point - ZERO_C) + ZERO_C for point in (glass.annealing_point, glass.strain_point)
    )
    quickest = fastest(glass, thick)
    rows = [
        (anneal + hold, 60 * minutes, strain - below, share * quickest)
        for hold, minutes, below, share in itertools.product(_HOLDS, _MINUTES, _SLOW_TO, _SHARES)
        if max(strain, strain - below + 1) <= anneal + hold and hold >= coolest
    ]
    return _Grid(*(np.array(column) for column in zip(*rows, strict=True)))


def _kept_stress(glass: Material, thick: float, grid: _Grid, slow: Array) -> Array:
    """Squeeze that programmes leave in the surface of a plate of two points, shape (b,), Pa."""
    count = slow.size
    warm = np.full(2 * count, worked_at(glass))
    memory = rest(glass, warm, 3)
    stress = np.zeros(count)
    for mean, gradient, dt in _courses(glass, thick, grid, slow):
        temperature = np.concatenate((mean + gradient, mean - gradient / 2))
        increment = predict(glass, memory, temperature, np.concatenate((dt, dt)))
        along, _, own, other = plane_response(increment)
        stiffness = own + other
        held = along[:count] + 2 * along[count:]
        strain = -held / (stiffness[:count] + 2 * stiffness[count:])
        both = np.concatenate((strain, strain))
        memory, found = finish(glass, memory, increment, plane_strains(increment, both, both))
        stress = found[0, :count]
    return -stress


def _courses(
    glass: Material, thick: float, grid: _Grid, slow: Array
) -> Iterator[tuple[Array, Array, Array]]:
    """Mean temperature, surface less mean, and length of every step; shape (b,) each."""
    lag, bend = _lags(glass, thick)
    mean, oven = np.full_like(slow, worked_at(glass)), grid.hold
    solid = np.full_like(slow, glass.strain_point - _SOLID)
    even, graded = np.full(24, 1 / 24), np.diff(np.geomspace(1.0, 1001.0, 25)) / 1000
    for rate, shares, seconds in (
        (np.zeros_like(slow), graded, grid.hold_time),
        (slow, even, (grid.hold - grid.slow_to) / slow),
        (grid.fast, even, (grid.slow_to - solid) / grid.fast),
    ):
        for share in shares:
            dt = share * seconds
            behind = (mean - oven - rate * lag) * np.exp(-dt / lag)
            oven = oven - rate * dt
            mean = oven + rate * lag + behind
            yield mean, -bend * (rate + behind / lag), dt
    yield np.full_like(slow, ROOM), np.zeros_like(slow), (mean - ROOM) / grid.fast


def _lags(glass: Material, thick: float) -> tuple[float, float]:
    """Time by which a plate lags behind its oven, and mean less surface for each K/s; s both."""
    at, half = glass.annealing_point, thick / 2
    through = glass.diffusivity(at)
    heat = glass.density * float(glass.heat_capacity(np.array([at]))[0])
    outside = heat * half / oven_face(at, glass.emissivity).slope(at)
    return outside + 4 * half**2 / (math.pi**2 * through), half**2 / (3 * through)


def _rounded_down(rate: float) -> float:
    """Rate (K/s) with two figures in kelvin an hour, not above `rate`."""
    an_hour = 3600 * rate
    unit = 10.0 ** (math.floor(math.log10(an_hour)) - 1)
    return math.floor(an_hour / unit * (1 + 1e-9)) * unit / 3600
