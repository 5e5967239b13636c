"""The grey lattice that jets and edges leave in a toughened plate, seen face-on.

Where a jet hits, the plate freezes while the glass around it is still hotter and holds it. Each
place is a Column that is cooled by its own coefficient and stretched as the plate around it; the
force that this locks in is then balanced over the plate as a plane elastic stress. The balance
comes after the freezing, not during it: the Plan body does both at once, and costs seconds.
"""

import functools
import math
from dataclasses import dataclass, replace

import numpy as np

from demo_app.physics.column.advance import ColumnState, carry
from demo_app.physics.column.heat import Face, heat_step
from demo_app.physics.materials import Array
from demo_app.physics.plane_stress import balanced, mirrored, quarter
from demo_app.physics.toughening import Quench, begin, blow, cold_after

PITCH = 30e-3
"""Distance of the jets, m: 6 mm holes 30 mm apart (Martin 1977, Adv. Heat Transfer 13, array of
round nozzles)."""
ELEMENT = 2.5e-3
"""Side of an element of the plate, m."""
_PLACES = 5
_CELLS = 16


@dataclass(frozen=True)
class Locked:
    """Membrane stress of places that the plate around them holds, all through a quench.

    Parameters
    ----------
    time : numpy.ndarray
        Shape (times,), s.
    excess : numpy.ndarray
        Shape (places,), increasing: coefficient of each place over the plate's, less one.
    stress : numpy.ndarray
        Shape (times, places), Pa: mean over the thickness.
    """

    time: Array
    excess: Array
    stress: Array

    def at(self, time: float) -> Array:
        """Membrane stress of the places at `time`, shape (places,), Pa."""
        return np.array([np.interp(time, self.time, column) for column in self.stress.T])


def locked(of: Quench, excess: Array) -> Locked:
    """Let the places with `excess` coefficients freeze along with the plate around them."""
    end, places = cold_after(of), [begin(of).column] * excess.size
    state = begin(of)
    times, stresses = [0.0], [np.zeros(excess.size)]
    while state.column.time < end:
        after = blow(of, state, end)
        dt = after.column.time - state.column.time
        stretch = after.column.strain - state.column.strain
        places = [
            _held(of, place, float(share), dt, stretch)
            for place, share in zip(places, excess, strict=True)
        ]
        state = after
        times.append(state.column.time)
        stresses.append(
            np.array([of.wall.weights @ place.stress for place in places]) / of.thickness
        )
    return Locked(np.array(times), excess, np.array(stresses))


def _held(of: Quench, place: ColumnState, excess: float, dt: float, stretch: float) -> ColumnState:
    face = Face(of.coolant, max(0.0, 1 + excess) * of.coefficient)
    temperature = heat_step(of.wall, place.temperature, dt, (face, face), (face, face))
    return carry(of.wall, place, temperature, dt, stretch=stretch)


def edge_reach(of: Quench) -> float:
    """How far the edge's own cooling reaches into the plate, m: a fin's length.

    ``sqrt(k d / (2 h))`` (Carslaw and Jaeger, section 4.2): heat from the inside reaches the edge
    against what both faces take on its way.
    """
    conductivity = float(of.material.conductivity_at(np.array([of.start]))[0])
    return math.sqrt(conductivity * of.thickness / (2 * of.coefficient))


def excess_cooling(
    of: Quench, x: Array, y: Array, size: tuple[float, float], uneven: float
) -> Array:
    """Coefficient at places of the plate over its mean, less one.

    A square lattice of jets, and along the edges the heat that leaves through them: over the
    fin's length it comes to what the edge's face sends out.

    Parameters
    ----------
    of : Quench
        The plate in its jets.
    x, y : numpy.ndarray
        Places, m, from the middle of the plate.
    size : tuple of float
        Width and height of the plate, m.
    uneven : float
        Share by which a jet's middle is above the mean.
    """
    wave = 2 * math.pi / PITCH
    jets = uneven * (np.cos(wave * x) + np.cos(wave * y)) / 2
    reach = edge_reach(of)
    edge = of.thickness / (2 * reach)
    depth_x, depth_y = size[0] / 2 - np.abs(x), size[1] / 2 - np.abs(y)
    return np.asarray(jets + edge * (np.exp(-depth_x / reach) + np.exp(-depth_y / reach)))


@dataclass(frozen=True)
class Lattice:
    """Membrane stress over the whole plate, one value an element.

    Parameters
    ----------
    x, y : numpy.ndarray
        Shapes (cols,) and (rows,): middles of the elements, m, from the middle of the plate.
    xx, yy, xy : numpy.ndarray
        Shape (rows, cols): mean stress through the thickness, Pa.
    """

    x: Array
    y: Array
    xx: Array
    yy: Array
    xy: Array


def lattice(of: Quench, size: tuple[float, float], uneven: float, time: float) -> Lattice:
    """Membrane stress of the plate at `time` (s) of its quench.

    Parameters
    ----------
    of : Quench
        The plate in its jets.
    size : tuple of float
        Width and height of the plate, m.
    uneven : float
        Share by which a jet's middle is above the mean, 0 to 1.
    time : float
        s.
    """
    part = quarter(*size, ELEMENT, of.material.poisson_ratio)
    history = _history(of, size, uneven)
    excess = excess_cooling(of, part.x[None, :], part.y[:, None], size, uneven)
    xx, yy, xy = balanced(part, np.interp(excess, history.excess, history.at(time)))
    x, y = (np.concatenate([-half[::-1], half]) for half in (part.x, part.y))
    return Lattice(x, y, mirrored(xx), mirrored(yy), mirrored(xy, -1.0))


@functools.lru_cache(maxsize=8)
def _history(of: Quench, size: tuple[float, float], uneven: float) -> Locked:
    corner = excess_cooling(of, np.array(size[0] / 2), np.array(size[1] / 2), size, 0.0)
    return locked(replace(of, cells=_CELLS), np.linspace(-uneven, float(corner) + uneven, _PLACES))
