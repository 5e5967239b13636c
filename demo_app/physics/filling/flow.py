"""Hele-Shaw filling of a flat cavity: a power-law melt between two walls, from one gate.

Square cells; the flow through a side is the gap's conductance times the fall of pressure. The
conductance follows the pressure's slope (power law), so it is found along with the filling, half a
step at a time. Melt that has reached a cell fills it; only full cells carry pressure.

Source: Hieber and Shen 1980, J. Non-Newtonian Fluid Mech. 7, 1 (the equations).
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.band import factorise
from demo_app.physics.materials import Array

_BOTTOM = 1.0
_FLAT = 1e-3
"""Slope below which it no longer counts for the power law, Pa/m, and as a share of the largest."""


@dataclass(frozen=True)
class Cavity:
    """A cavity in square cells.

    Parameters
    ----------
    gap : numpy.ndarray
        Shape (columns, rows), m: distance of the walls.
    cell : float
        Side of a cell, m.
    gate : tuple of int
        Column and row of the cell that the melt comes into.
    """

    gap: Array
    cell: float
    gate: tuple[int, int]

    @property
    def volume(self) -> float:
        """Of the whole cavity, m3."""
        return float(self.gap.sum()) * self.cell**2


@dataclass(frozen=True)
class Front:
    """How far the melt has come.

    Parameters
    ----------
    filled : numpy.ndarray
        Shape (columns, rows): share of each cell, 0 to 1.
    conductance : numpy.ndarray
        Shape (columns, rows), m3/(Pa s): flow per width for a unit slope.
    pressure : numpy.ndarray
        Shape (columns, rows), Pa; zero where the cell is not full.
    """

    filled: Array
    conductance: Array
    pressure: Array

    @property
    def full(self) -> NDArray[np.bool_]:
        """Cells that are full."""
        return np.asarray(self.filled >= 1.0)


def channel_flow(slope: Array, half: Array, consistency: float, index: float) -> Array:
    """Flow for each metre of width, m2/s, of a power-law melt between parallel walls.

    ``2 n / (2 n + 1) * half**(2 + 1/n) * (slope / K)**(1/n)`` (Bird, Stewart and Lightfoot,
    Transport Phenomena). With n = 1 it is ``2 half**3 slope / (3 viscosity)``.
    """
    n = index
    power = half ** (2 + 1 / n) * (slope / consistency) ** (1 / n)
    return np.asarray(2 * n / (2 * n + 1) * power)


def conductance(slope: Array, half: Array, consistency: float, index: float) -> Array:
    """Flow per width for a unit slope of the pressure, m3/(Pa s), at `slope`."""
    slope = np.maximum(slope, _BOTTOM)
    return channel_flow(slope, half, consistency, index) / slope


def empty(cavity: Cavity, half: Array, flow: float, consistency: float, index: float) -> Front:
    """The moment when the melt has filled the gate's cell.

    Parameters
    ----------
    cavity : Cavity
        What is filled.
    half : numpy.ndarray
        Shape (columns, rows), m: half of the gap that is still open.
    flow : float
        Through the gate, m3/s.
    consistency, index : float
        Of the power law.
    """
    filled = np.zeros_like(cavity.gap)
    filled[cavity.gate] = 1.0
    # Where nothing flows yet, the slope that the flow of one gate's width would need.
    scale = np.ones_like(half)
    each = channel_flow(scale, half, consistency, index)
    slope = (flow / (4 * cavity.cell) / each) ** index
    return Front(filled, conductance(slope, half, consistency, index), np.zeros_like(filled))


def solve(
    cavity: Cavity, front: Front, half: Array, flow: float, law: tuple[float, float], rounds: int
) -> Front:
    """The pressure that drives `flow` (m3/s) through the gate, and the conductance that fits it.

    Parameters
    ----------
    cavity, front : Cavity, Front
        Where the melt is.
    half : numpy.ndarray
        Half of the open gap, m.
    flow : float
        Through the gate, m3/s.
    law : tuple of float
        Consistency and index.
    rounds : int
        Times that conductance and pressure are brought to agree.
    """
    consistency, index = law
    now, pressure = front.conductance, front.pressure
    for _ in range(rounds):
        pressure = _pressure(cavity, now, front.full, flow)
        steep = _steepness(cavity, pressure, front.full)
        steep = np.maximum(steep, _FLAT * steep.max())
        wanted = conductance(steep, half, consistency, index)
        # With the exponent n a flow that is given is met at once.
        now = np.where(front.full, now ** (1 - index) * wanted**index, now)
    return Front(front.filled, now, pressure)


def _sides(values: Array) -> tuple[Array, Array]:
    """Values at the sides between neighbours, along x and along y: harmonic means."""
    return _harmonic(values[:-1], values[1:]), _harmonic(values[:, :-1], values[:, 1:])


def _harmonic(a: Array, b: Array) -> Array:
    return 2 * a * b / (a + b)


def _carrying(full: NDArray[np.bool_]) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
    """Sides that the melt flows through: at least one neighbour is full."""
    return full[:-1] | full[1:], full[:, :-1] | full[:, 1:]


def _pressure(cavity: Cavity, now: Array, full: NDArray[np.bool_], flow: float) -> Array:
    columns, rows = full.shape
    along, up = (
        np.where(open_, side, 0.0) for side, open_ in zip(_sides(now), _carrying(full), strict=True)
    )
    middle = np.zeros(full.shape)
    middle[:-1] += along
    middle[1:] += along
    middle[:, :-1] += up
    middle[:, 1:] += up
    # Laid out so that its transpose is the lower band in Fortran order.
    band = np.zeros((columns, rows, rows + 1))
    band[:, :, 0] = np.where(full, middle, 1.0)
    band[:, :-1, 1] = np.where(full[:, :-1] & full[:, 1:], -up, 0.0)
    band[:-1, :, rows] = np.where(full[:-1] & full[1:], -along, 0.0)
    right = np.zeros(full.shape)
    right[cavity.gate] = flow
    return factorise(band.reshape(-1, rows + 1).T).solve(right.ravel()).reshape(full.shape)


def slopes(cavity: Cavity, pressure: Array, full: NDArray[np.bool_]) -> tuple[Array, Array]:
    """Fall of the pressure along x and y in each full cell, Pa/m."""
    sides = _falls(cavity, pressure, full)
    # A side that is a wall carries no flow; it halves the mean as it should.
    x, y = ((low + high) / 2 for low, high in sides)
    return np.where(full, x, 0.0), np.where(full, y, 0.0)


def _steepness(cavity: Cavity, pressure: Array, full: NDArray[np.bool_]) -> Array:
    """Root mean square of the slope at a cell's sides, Pa/m: not zero where the melt parts."""
    squares = [(low**2 + high**2) / 2 for low, high in _falls(cavity, pressure, full)]
    return np.sqrt(squares[0] + squares[1])


def _falls(
    cavity: Cavity, pressure: Array, full: NDArray[np.bool_]
) -> tuple[tuple[Array, Array], tuple[Array, Array]]:
    """Fall of the pressure over the lower and the upper side of each cell, along x and y, Pa/m."""
    found = []
    for axis, carries in enumerate(_carrying(full)):
        fall = -np.where(carries, np.diff(pressure, axis=axis), 0.0) / cavity.cell
        pad = [(0, 0), (0, 0)]
        pad[axis] = (1, 1)
        both = np.pad(fall, pad)
        found.append((both[:-1], both[1:]) if axis == 0 else (both[:, :-1], both[:, 1:]))
    return found[0], found[1]


def inflow(cavity: Cavity, front: Front) -> Array:
    """Melt into each cell that is not full, m3/s."""
    rate = np.zeros_like(front.pressure)
    sides = _sides(front.conductance)
    carries = _carrying(front.full)
    for axis in (0, 1):
        moved = -np.where(carries[axis], sides[axis] * np.diff(front.pressure, axis=axis), 0.0)
        first = tuple(slice(None, -1) if a == axis else slice(None) for a in (0, 1))
        last = tuple(slice(1, None) if a == axis else slice(None) for a in (0, 1))
        rate[first] -= moved
        rate[last] += moved
    return np.where(front.full, 0.0, rate)


def advance(cavity: Cavity, front: Front, dt: float) -> Front:
    """The front `dt` seconds later; what does not fit into a cell goes on to its neighbours."""
    room = cavity.gap * cavity.cell**2
    filled = front.filled + inflow(cavity, front) * dt / room
    for _ in range(8):
        over = np.where(front.full, 0.0, np.maximum(filled - 1.0, 0.0)) * room
        if over.max() < 1e-9 * room.max():
            break
        filled = np.minimum(filled, 1.0)
        takes = (filled < 1.0).astype(float)
        near = _beside(takes)
        share = np.where(near > 0, over / np.maximum(near, 1.0), 0.0)
        filled = filled + takes * _beside(share) / room
    filled = np.where(front.full, 1.0, np.clip(filled, 0.0, 1.0))
    filled = np.where(filled > 1 - 1e-6, 1.0, filled)
    # Newly full cells take the conductance of the full ones beside them.
    fresh = (filled >= 1.0) & ~front.full
    count = _beside(front.full.astype(float))
    beside = np.exp(
        _beside(np.where(front.full, np.log(front.conductance), 0.0)) / np.maximum(count, 1.0)
    )
    now = np.where(fresh & (count > 0), beside, front.conductance)
    return Front(filled, now, front.pressure)


def _beside(values: Array) -> Array:
    """Sum over the four neighbours."""
    total = np.zeros_like(values)
    total[:-1] += values[1:]
    total[1:] += values[:-1]
    total[:, :-1] += values[:, 1:]
    total[:, 1:] += values[:, :-1]
    return total
