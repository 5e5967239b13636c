"""Filling the tray: the front moves, a skin freezes, and the stretch of the molecules is locked in.

In each cell layers lie from the wall to the middle of the gap. A layer cools as in a slab that came
hot between the walls when the front arrived (the heat that fresh melt brings along is left out, as
is the fountain flow at the front). The flow stretches it at once to what its shear stress asks for
while it is hot, and ever more slowly as it cools; so does what coils it up when the flow stops.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np

from demo_app.physics.filling.flow import Cavity, Front, advance, empty, slopes, solve
from demo_app.physics.filling.melt import Melt
from demo_app.physics.filling.slab import excess_in_layers, frozen_skin
from demo_app.physics.materials import Array, Material

LAYERS = 8
"""Layers from a wall to the middle of the gap."""
STEPS = 60
"""Least number of steps in which a cavity is filled."""
COOL_STEPS = 40
_ROUNDS = 1
_SHARE = 0.8
"""Largest step as a share of what the cells at the front still hold."""


@dataclass(frozen=True)
class Shot:
    """How a cavity is filled.

    Parameters
    ----------
    material : Material
        Gives conduction.
    melt : Melt
        Gives flow and stretch.
    cavity : Cavity
        What is filled.
    hot, mould : float
        Melt and mould temperature, K.
    seconds : float
        Time in which the cavity is filled, at an even flow, s.
    """

    material: Material
    melt: Melt
    cavity: Cavity
    hot: float
    mould: float
    seconds: float

    @property
    def flow(self) -> float:
        """Through the gate, m3/s."""
        return self.cavity.volume / self.seconds

    @property
    def spread(self) -> float:
        """Thermal diffusivity at the mean of melt and mould temperature, m2/s."""
        return self.material.diffusivity((self.hot + self.mould) / 2)


@dataclass(frozen=True)
class Filling:
    """One instant.

    Parameters
    ----------
    time : float
        s.
    front : Front
        Where the melt is.
    arrived : numpy.ndarray
        Shape (columns, rows), s: when it came; infinite where it has not.
    stretch : numpy.ndarray
        Shape (2, LAYERS, columns, rows), Pa: first normal stress difference along x less y, and
        twice its shear part, from the wall to the middle.
    """

    time: float
    front: Front
    arrived: Array
    stretch: Array


def start(shot: Shot) -> Filling:
    """The melt is in the gate."""
    gap = shot.cavity.gap
    law = shot.melt.consistency(shot.hot), shot.melt.index
    front = empty(shot.cavity, gap / 2, shot.flow, *law)
    arrived = np.full(gap.shape, np.inf)
    arrived[shot.cavity.gate] = 0.0
    return Filling(0.0, front, arrived, np.zeros((2, LAYERS, *gap.shape)))


def run(shot: Shot, stops: Array) -> Iterator[Filling]:
    """The instants at the times `stops` (s, rising): filling, then cooling in the mould."""
    state = start(shot)
    for stop in stops:
        while state.time < stop - 1e-9:
            state = step(shot, state, float(stop))
        yield state


def step(shot: Shot, state: Filling, until: float) -> Filling:
    """One step later, not beyond `until` (s)."""
    cavity, left = shot.cavity, until - state.time
    if bool(state.front.full.all()):
        # Filled: nothing flows, all of it cools; steps grow with the time since then.
        dt = min(left, max(shot.seconds / STEPS, 0.15 * (state.time - 0.98 * shot.seconds)))
        still = replace(state.front, pressure=np.zeros_like(state.front.pressure))
        later = replace(state, time=state.time + dt, front=still)
        return replace(later, stretch=_stretched(shot, state, later, still))
    half = open_half(shot, state)
    law = shot.melt.consistency(shot.hot), shot.melt.index
    front = solve(cavity, state.front, half, shot.flow, law, _ROUNDS)
    at_front = _at_front(front)
    room = float(((1 - front.filled) * cavity.gap)[at_front].sum()) * cavity.cell**2
    rest = float(((1 - front.filled) * cavity.gap).sum()) * cavity.cell**2
    dt = min(left, shot.seconds / STEPS, max(_SHARE * room, 1e-3 * cavity.volume) / shot.flow)
    dt = min(dt, max(rest / shot.flow, 1e-6 * shot.seconds))
    moved = advance(cavity, front, dt)
    if rest <= shot.flow * dt * (1 + 1e-9):
        moved = replace(moved, filled=np.ones_like(moved.filled))
    now = state.time + dt
    came = np.isinf(state.arrived) & (moved.filled > 0)
    arrived = np.where(came, now - dt / 2, state.arrived)
    later = Filling(now, moved, arrived, state.stretch)
    return replace(later, stretch=_stretched(shot, state, later, front))


def open_half(shot: Shot, state: Filling) -> Array:
    """Half of the gap that has not frozen yet, m, shape (columns, rows)."""
    since = np.maximum(state.time - np.where(np.isinf(state.arrived), state.time, state.arrived), 0)
    skin = frozen_skin(shot.hot, shot.mould, shot.melt.transition, 1.0) * np.sqrt(
        shot.spread * since
    )
    return np.asarray(np.maximum(shot.cavity.gap / 2 - skin, 0.02 * shot.cavity.gap))


def _at_front(front: Front) -> Array:
    full = np.pad(front.full, 1)
    beside = full[:-2, 1:-1] | full[2:, 1:-1] | full[1:-1, :-2] | full[1:-1, 2:]
    return np.asarray(beside & ~front.full)


def depths(layers: int) -> tuple[float, ...]:
    """Middles of `layers` from the wall to the middle of the gap, as shares of the whole gap."""
    return tuple((k + 0.5) / layers / 2 for k in range(layers))


def temperature(shot: Shot, time: float, arrived: Array, gap: Array, layers: int) -> Array:
    """Temperature of the layers of melt that has `arrived`, K; shape (layers, ...) of the gap."""
    since = np.maximum(time - np.where(np.isinf(arrived), time, arrived), 0.0)
    fourier = shot.spread * since / gap**2
    left = excess_in_layers(depths(layers), fourier)
    return np.asarray(shot.mould + (shot.hot - shot.mould) * left)


def _stretched(shot: Shot, before: Filling, after: Filling, front: Front) -> Array:
    """Stretch after a step: it goes to what the flow asks for, as fast as the layer is hot."""
    gap, depth = shot.cavity.gap, np.array(depths(LAYERS))[:, None, None]
    dt = after.time - before.time
    warm = temperature(shot, (before.time + after.time) / 2, after.arrived, gap, LAYERS)
    kept = np.exp(-dt / shot.melt.relaxation_time(warm))
    slope_x, slope_y = slopes(shot.cavity, front.pressure, front.full)
    wanted = shot.melt.stretched(slope_x, slope_y, (0.5 - depth) * gap)
    return np.asarray(wanted + (before.stretch - wanted) * kept)


def retardation(shot: Shot, stretch: Array) -> Array:
    """v1 and v2 of the stretched molecules through the whole gap, m, shape (2, columns, rows)."""
    return np.asarray(shot.melt.stress_optic * stretch.mean(axis=1) * shot.cavity.gap)


def solid_after(shot: Shot, at: float) -> float:
    """Time after which the middle of the thickest place is at `at` (K), s from the start."""
    share = (at - shot.mould) / (shot.hot - shot.mould)
    # First term of the series in the middle of the slab.
    longest = float(shot.cavity.gap.max()) ** 2 / (np.pi**2 * shot.spread)
    return shot.seconds + longest * float(np.log(4 / np.pi / share))
