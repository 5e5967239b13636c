"""The Column: stress through the wall of a wide plate that is free at its edges.

One in-plane strain, the same in both directions, and no stress across the wall. Cooled differently
on its two faces the plate also bends, unless it is held flat: one curvature, no net moment.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np

from demo_app.physics.column.heat import Face, Faces, heat_step
from demo_app.physics.column.wall import Wall
from demo_app.physics.materials import Array
from demo_app.physics.plane import plane_response, plane_strains
from demo_app.physics.relaxation import Increment, PointState, finish, predict, rest
from demo_app.physics.stepping import walk

_COMPS = 3
_NEAR_TRANSITION = 150.0
"""Kelvin below the strain point down to which steps stay small: in an oven the quickest terms of
the shear spectrum still relax there."""
_STEP_NEAR = 5.0
_STEP_SOLID = 30.0
"""Largest change of any temperature in a step, K, near the transition and below it."""
_GROWTH = 0.25
"""Largest step as a share of the time since the last sudden change."""
_REST = 0.5
"""A run without a stated end is over when less change than this is still to come, K."""


@dataclass(frozen=True)
class ColumnState:
    """One instant.

    Parameters
    ----------
    time : float
        s.
    temperature : numpy.ndarray
        Shape (n,): nodes, K.
    rate : numpy.ndarray
        Shape (n,): rise of the nodes over the last step, K/s.
    memory : tuple of PointState
        Memory of the stress points, layer by layer.
    strain, curvature : float
        In-plane strain in the middle of the wall since the start, and its slope along z, 1/m.
    stress : numpy.ndarray
        Shape (p,): in-plane stress, Pa.
    """

    time: float
    temperature: Array
    rate: Array
    memory: tuple[PointState, ...]
    strain: float
    curvature: float
    stress: Array

    @property
    def surface(self) -> tuple[float, float]:
        """Stress at the left and the right face, Pa."""
        return float(self.stress[0]), float(self.stress[-1])


def start(wall: Wall, temperature: float, *, fictive: float | None = None) -> ColumnState:
    """Stress-free wall of one temperature, K.

    Parameters
    ----------
    wall : Wall
        Geometry and materials.
    temperature : float
        K.
    fictive : float, optional
        Fictive temperature of the glass, K; equilibrium at `temperature` if left out.
    """
    nodes = np.full(wall.z.size, float(temperature))
    memory = tuple(
        rest(layer.material, nodes[span], _COMPS, fictive=fictive)
        for layer, span in zip(wall.layers, wall.spans, strict=True)
    )
    return ColumnState(
        0.0, nodes, np.zeros_like(nodes), memory, 0.0, 0.0, np.zeros(wall.points.size)
    )


def carry(
    wall: Wall,
    state: ColumnState,
    temperature: Array,
    dt: float,
    *,
    bends: bool = False,
) -> ColumnState:
    """Balance the wall after a step of `dt` seconds to given node temperatures.

    Parameters
    ----------
    wall : Wall
        Geometry and materials.
    state : ColumnState
        Before the step.
    temperature : numpy.ndarray
        Shape (n,): nodes after the step, K.
    dt : float
        s.
    bends : bool
        Whether the plate may bend; else it is held flat and carries a net moment.
    """
    steps = [
        predict(layer.material, memory, temperature[span], dt)
        for layer, memory, span in zip(wall.layers, state.memory, wall.spans, strict=True)
    ]
    held, stiffness = (
        np.concatenate(parts) for parts in zip(*map(_plane_stress, steps), strict=True)
    )
    strain, curvature = balance(wall.weights, wall.point_z, held, stiffness, bends)
    in_plane = strain + curvature * wall.point_z
    finished = [
        finish(
            layer.material, memory, step, plane_strains(step, in_plane[section], in_plane[section])
        )
        for layer, memory, step, section in zip(
            wall.layers, state.memory, steps, wall.sections, strict=True
        )
    ]
    return ColumnState(
        time=state.time + dt,
        temperature=temperature,
        rate=(temperature - state.temperature) / dt,
        memory=tuple(memory for memory, _ in finished),
        strain=state.strain + strain,
        curvature=state.curvature + curvature,
        stress=np.concatenate([stress[0] for _, stress in finished]),
    )


def advance(
    wall: Wall, state: ColumnState, dt: float, before: Faces, after: Faces, *, bends: bool = False
) -> ColumnState:
    """One step of `dt` seconds; the faces meet `before` at its start and `after` at its end."""
    temperature = heat_step(wall, state.temperature, dt, before, after)
    return carry(wall, state, temperature, dt, bends=bends)


def step_length(wall: Wall, state: ColumnState, faces: Faces, since: float) -> float:
    """Length of the next step, s: it follows from the state alone.

    Short while something has just changed (`since`, seconds since then): at first as long as heat
    takes through the smallest cell. Short, too, while any node is near the glass transition, by
    the rate of the last step; long when all is solid.
    """
    slope = max(faces[0].slope(state.temperature[0]), faces[1].slope(state.temperature[-1]))
    allowed = np.full(wall.z.size, _STEP_SOLID)
    first = np.inf
    for layer, span in zip(wall.layers, wall.spans, strict=True):
        hot = state.temperature[span]
        allowed[span][hot > layer.material.strain_point - _NEAR_TRANSITION] = _STEP_NEAR
        cell = float(np.diff(wall.z[span]).min())
        at = hot.mean(keepdims=True)
        capacity = cell * layer.material.density * float(layer.material.heat_capacity(at)[0])
        conductance = float(layer.material.conductivity_at(at)[0]) / cell
        first = min(first, capacity / (conductance + 2 * slope))
    return min(float((allowed / (np.abs(state.rate) + 1e-12)).min()), first + _GROWTH * since)


def run(
    wall: Wall,
    state: ColumnState,
    faces: Callable[[float], Faces],
    *,
    until: float | None = None,
    changes: tuple[float, ...] = (),
    bends: bool = False,
    finer: int = 1,
) -> Iterator[ColumnState]:
    """States of a run, the given one first.

    Parameters
    ----------
    wall : Wall
        Geometry and materials.
    state : ColumnState
        Where to begin.
    faces : callable
        ``faces(time) -> (left, right)``; it may jump or turn at `changes` alone.
    until : float, optional
        Last time, s; if left out, the run ends when the wall is as cold as its coolants.
    changes : tuple of float
        Times, s, at which what the faces meet jumps or turns: steps end there and begin small.
    bends : bool
        Whether the plate may bend.
    finer : int
        Divides every step, to see what the step costs in accuracy.
    """
    return walk(
        state,
        faces,
        length=lambda one, met, since: step_length(wall, one, met, since),
        advance=lambda one, dt, before, after: advance(wall, one, dt, before, after, bends=bends),
        over=lambda one, since: _over(wall, one, since),
        until=until,
        changes=changes,
        finer=finer,
    )


def cooled(
    wall: Wall, temperature: float, left: Face, right: Face | None = None, *, bends: bool = False
) -> ColumnState:
    """The cold wall after cooling from one temperature (K) between faces that stay.

    `right` is as `left` if left out.
    """
    both = (left, left if right is None else right)
    state = start(wall, temperature)
    for later in run(wall, state, lambda _: both, bends=bends):
        state = later
    return state


def _over(wall: Wall, state: ColumnState, since: float) -> bool:
    """Whether hardly any change of temperature is still to come."""
    patience = max(since, _soak_time(wall, state.temperature))
    return bool(since > 0 and np.abs(state.rate).max() * patience < _REST)


def _soak_time(wall: Wall, temperature: Array) -> float:
    """Time in which heat crosses the wall, s."""
    return sum(
        layer.thickness**2 / layer.material.diffusivity(temperature[span].mean())
        for layer, span in zip(wall.layers, wall.spans, strict=True)
    )


def _plane_stress(step: Increment) -> tuple[Array, Array]:
    """Stress of points held in plane, and its rise with a strain alike in all directions, Pa."""
    held, _, own, other = plane_response(step)
    return held, own + other


def balance(
    weights: Array, z: Array, held: Array, stiffness: Array, bends: bool
) -> tuple[float, float]:
    """Strain and curvature that leave no net force and, if the plate bends, no net moment.

    Parameters
    ----------
    weights, z : numpy.ndarray
        Shape (p,), m: weights of the integral over the wall, and places.
    held, stiffness : numpy.ndarray
        Shape (p,), Pa: in-plane stress without strain, and its rise with the strain.
    bends : bool
        Whether there is a curvature.

    Returns
    -------
    tuple of float
        Strain at ``z = 0``, and curvature, 1/m.
    """
    area = weights * stiffness
    if not bends:
        return float(-(weights @ held) / area.sum()), 0.0
    middle = float(area @ z / area.sum())
    arm = z - middle
    curvature = float(-(weights * arm @ held) / (area * arm @ arm))
    return float(-(weights @ held) / area.sum()) - curvature * middle, curvature
