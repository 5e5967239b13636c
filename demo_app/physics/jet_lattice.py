"""The grey lattice that jets and edges leave in a toughened plate, seen face-on.

Where a jet hits, the plate freezes while the glass around it is still hotter and holds it; so does
the rim, which cools from its own face too. Each place is a Column, stretched as the plate around
it; the force that this locks in is then balanced over the plate as a plane elastic stress. The
balance comes after the freezing, not during it: the Plan body does both at once, costs seconds,
and agrees (the tests say how far).
"""

import functools
import math
from dataclasses import dataclass, replace

import numpy as np
from scipy.linalg import lapack

from demo_app.physics.column.heat import Face, heat_step
from demo_app.physics.materials import Array, Material
from demo_app.physics.plane import plane_strains
from demo_app.physics.plane_stress import balanced, mirrored, quarter
from demo_app.physics.relaxation import PointState, finish, predict, rest
from demo_app.physics.toughening import Quench, begin, blow, cold_after

PITCH = 30e-3
"""Distance of the jets, m: 6 mm holes 30 mm apart (Martin 1977, Adv. Heat Transfer 13, array of
round nozzles)."""
ELEMENT = 2e-3
"""Side of an element of the plate, m."""
_CELLS = 16
_UNDER_JETS = 3
_RIM = 10
_FIRST, _WIDER = 1 / 12, 1.4
"""Width of the rim's outermost strip over the thickness, and of each strip over the one outside."""


@dataclass(frozen=True)
class Locked:
    """Membrane stress of places that the plate around them holds, all through a quench.

    Parameters
    ----------
    time : numpy.ndarray
        Shape (times,), s.
    excess : numpy.ndarray
        Shape (jets,), increasing: coefficient of each place over the plate's, less one.
    depth : numpy.ndarray
        Shape (strips,), increasing: distance of the rim's strips from the edge, m.
    under_jets, rim : numpy.ndarray
        Shapes (times, jets) and (times, strips), Pa: means over the thickness.
    """

    time: Array
    excess: Array
    depth: Array
    under_jets: Array
    rim: Array

    def pushed(self, time: float, excess: Array, *depths: Array) -> Array:
        """Stress (Pa) at `time` (s) of places with `excess`, `depths` (m) from the edges."""
        jets, rim = (
            np.array([np.interp(time, self.time, line) for line in part.T])
            for part in (self.under_jets, self.rim)
        )
        total = np.interp(excess, self.excess, jets)
        return np.asarray(total + sum(np.interp(d, self.depth, rim, right=0.0) for d in depths))


def locked(of: Quench, uneven: float) -> Locked:
    """Let places under and between jets, and strips of the rim, freeze along with the plate."""
    excess = np.linspace(-uneven, uneven, _UNDER_JETS)
    widths: Array = of.thickness * _FIRST * _WIDER ** np.arange(float(_RIM))
    edges = np.concatenate([[0.0], np.cumsum(widths)])
    state, end, count = begin(of), cold_after(of), excess.size + _RIM
    nodes = of.wall.z.size
    hot = np.full((count, nodes), of.start)
    memory = rest(of.material, hot.ravel(), 3)
    faces = [
        Face(of.coolant, max(0.0, 1 + share) * of.coefficient)
        for share in (*map(float, excess), *(_RIM * [0.0]))
    ]
    times, stresses = [0.0], [np.zeros(count)]
    while state.column.time < end:
        after = blow(of, state, end)
        dt = after.column.time - state.column.time
        hot = np.stack(
            [
                heat_step(of.wall, row, dt, (face, face), (face, face))
                for row, face in zip(hot, faces, strict=True)
            ]
        )
        hot[excess.size :] = _along(of, hot[excess.size :], widths, dt)
        memory, stress = _stretched(
            of.material, memory, hot.ravel(), dt, after.column.strain - state.column.strain
        )
        state = after
        times.append(state.column.time)
        stresses.append(stress.reshape(count, nodes) @ of.wall.weights / of.thickness)
    found = np.array(stresses)
    own = excess.size // 2
    # The middle place is the plate itself: what it shows is this mesh's own error.
    found -= found[:, [own]]
    depth = (edges[1:] + edges[:-1]) / 2
    return Locked(np.array(times), excess, depth, found[:, : excess.size], found[:, excess.size :])


def _along(of: Quench, hot: Array, widths: Array, dt: float) -> Array:
    """Temperature (strips, nodes) after heat has flowed between strips and out of the edge."""
    between = (widths[1:] + widths[:-1])[:, None] / 2
    flow = of.material.conductivity_at((hot[1:] + hot[:-1]) / 2) / between
    capacity = of.material.density * of.material.heat_capacity(hot) * widths[:, None] / dt
    middle = capacity.copy()
    middle[:-1] += flow
    middle[1:] += flow
    right = capacity * hot
    middle[0] += of.coefficient
    right[0] += of.coefficient * of.coolant
    # One system for all nodes: no heat flows from the last strip of one to the first of the next.
    beside = np.zeros_like(hot)
    beside[:-1] = -flow
    flat = beside.T.ravel()[:-1].copy()
    *_, solution, info = lapack.dgtsv(flat, middle.T.ravel(), flat.copy(), right.T.ravel())
    if info:
        raise ArithmeticError("the conduction along the plate is singular")
    return np.asarray(solution).reshape(hot.T.shape).T


def _stretched(
    material: Material, memory: PointState, temperature: Array, dt: float, stretch: float
) -> tuple[PointState, Array]:
    """Points after a step in which the plate stretches them alike; their in-plane stress, Pa."""
    step = predict(material, memory, temperature, dt)
    later, stress = finish(material, memory, step, plane_strains(step, stretch, stretch))
    return later, stress[0]


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
    x, y = part.x[None, :], part.y[:, None]
    wave = 2 * math.pi / PITCH
    excess = uneven * (np.cos(wave * x) + np.cos(wave * y)) / 2
    pushed = _history(of, uneven).pushed(time, excess, size[0] / 2 - x, size[1] / 2 - y)
    xx, yy, xy = balanced(part, pushed)
    x, y = (np.concatenate([-half[::-1], half]) for half in (part.x, part.y))
    return Lattice(x, y, mirrored(xx), mirrored(yy), mirrored(xy, -1.0))


@functools.lru_cache(maxsize=8)
def _history(of: Quench, uneven: float) -> Locked:
    return locked(replace(of, cells=_CELLS), max(uneven, 1e-3))
