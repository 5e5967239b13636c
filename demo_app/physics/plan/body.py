"""The Plan body: a plate seen face-on, with layers through its half thickness.

Both faces meet the same, so the plate stays flat. All layers of a place take one strain in the
plane; membrane forces balance over the plate, each layer's stress across it is zero.
"""

from dataclasses import dataclass, replace

import numpy as np

from demo_app.physics.band import Factor
from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.air import Air
from demo_app.physics.plan.conduction import PlaneHeat, PlaneStep, plane_heat
from demo_app.physics.plan.membrane import (
    MembraneForm,
    Stiffness,
    balance,
    elastic_membrane,
    free_membrane_modulus,
    membrane_form,
    plane_stress_share,
    stiffness_form,
)
from demo_app.physics.plan.mesh import PlanMesh
from demo_app.physics.plan.through import Half, half, through_step
from demo_app.physics.plane import plane_response, through_strain
from demo_app.physics.relaxation import Increment, PointState, finish, from_elastic, predict, rest

LAYERS = 9
"""Nodes through the half thickness unless stated."""
_COMPS = 4
_RELAXING = 100.0
"""Kelvin below the strain point at which relaxation starts to count."""
_FLOOR = 1e-12
"""Shear stiffness added to a liquid, as a share of its bulk modulus."""


@dataclass(frozen=True, eq=False)
class Plan:
    """Everything that does not change while a plate heats and cools.

    Parameters
    ----------
    material : Material
        Its glass.
    thickness : float
        m.
    mesh : PlanMesh
        Its elements in plan.
    wall : Half
        Its layers.
    form : MembraneForm
        Matrices of equilibrium.
    stiffness : Stiffness
        Of the moduli at the points.
    solid : Factor
        Stiffness of the solid, factorised once.
    heat : PlaneHeat
        Matrices of conduction in the plane.
    """

    material: Material
    thickness: float
    mesh: PlanMesh
    wall: Half
    form: MembraneForm
    stiffness: Stiffness
    solid: Factor
    heat: PlaneHeat


@dataclass(frozen=True)
class PlanState:
    """One instant.

    Parameters
    ----------
    time : float
        s.
    temperature, rate : numpy.ndarray
        Shape (layers, nodes): K, and K/s over the last step.
    displacement : numpy.ndarray
        Shape (2 * nodes,), m.
    stress : numpy.ndarray
        Shape (4, layers, points), Pa: xx, yy, zz (zero), xy.
    memory : PointState or None
        Of the relaxing glass, layer after layer; None while all of it is solid.
    origin : PlanState or None
        The instant from which the elastic answer counts.
    """

    time: float
    temperature: Array
    rate: Array
    displacement: Array
    stress: Array
    memory: PointState | None = None
    origin: "PlanState | None" = None


def plan(material: Material, thickness: float, mesh: PlanMesh, layers: int = LAYERS) -> Plan:
    """Plate of `material`; `thickness` in m, `layers` nodes through its half."""
    form, stiffness = membrane_form(mesh), stiffness_form(mesh)
    return Plan(
        material,
        thickness,
        mesh,
        half(material, thickness, layers),
        form,
        stiffness,
        stiffness.solid(material),
        plane_heat(mesh),
    )


def start(piece: Plan, temperature: float) -> PlanState:
    """Stress-free plate of one temperature, K; in equilibrium if it is hot enough to relax."""
    layers, points = piece.wall.z.size, piece.mesh.inside.x.size
    nodes = np.full((layers, piece.mesh.nodes), float(temperature))
    memory = None
    if temperature > piece.material.strain_point - _RELAXING:
        memory = rest(piece.material, np.full(layers * points, float(temperature)), _COMPS)
    still = np.zeros(2 * piece.mesh.nodes)
    stress = np.zeros((_COMPS, layers, points))
    state = PlanState(0.0, nodes, np.zeros_like(nodes), still, stress, memory)
    return state if memory is not None else replace(state, origin=state)


def advance(piece: Plan, state: PlanState, dt: float, before: Air, after: Air) -> PlanState:
    """One step of `dt` seconds; the plate meets `before` at its start and `after` at its end.

    Conduction is split (Strang 1968, SIAM J. Numer. Anal. 5, 506): half a step in the plane, one
    through the thickness, half a step in the plane.
    """
    now = state.temperature
    in_plane = PlaneStep(piece.heat, piece.material, piece.wall, now, dt / 2, before)
    crossed = through_step(piece.material, piece.wall, in_plane(now), dt, before, after)
    return carry(piece, state, in_plane(crossed), dt)


def carry(piece: Plan, state: PlanState, temperature: Array, dt: float) -> PlanState:
    """Balance the plate after a step of `dt` seconds to node temperatures (layers, nodes), K."""
    hottest = max(float(temperature.max()), float(state.temperature.max()))
    if hottest > piece.material.strain_point - _RELAXING:
        stepped = _relaxed(piece, state, temperature, dt)
    else:
        if state.origin is None:
            state = replace(state, memory=None, origin=replace(state, memory=None))
        stepped = _elastic(piece, state, temperature)
    rate = (temperature - state.temperature) / dt
    return replace(stepped, time=state.time + dt, temperature=temperature, rate=rate)


def _at_points(piece: Plan, nodes: Array) -> Array:
    """Values at the points, shape (layers, points), from (layers, nodes)."""
    return np.ascontiguousarray((piece.heat.value @ nodes.T).T)


def _elastic(piece: Plan, state: PlanState, temperature: Array) -> PlanState:
    origin, material = state.origin, piece.material
    assert origin is not None
    before, now = (_at_points(piece, nodes) for nodes in (origin.temperature, temperature))
    hindered = free_membrane_modulus(material) * material.solid_strain(before, now)
    stress = origin.stress.copy()
    stress[:2] -= hindered
    moved = balance(piece.form, piece.solid, _membrane(piece, stress))
    answer = elastic_membrane(material, piece.form.strains(moved))
    stress[[0, 1, 3]] += answer[:, None, :]
    return replace(state, displacement=origin.displacement + moved, stress=stress)


def _relaxed(piece: Plan, state: PlanState, temperature: Array, dt: float) -> PlanState:
    material, layers = piece.material, piece.wall.z.size
    before = state.memory or from_elastic(
        material,
        _at_points(piece, state.temperature).ravel(),
        state.stress.reshape(_COMPS, -1),
        material.annealing_point,
    )
    step = predict(material, before, _at_points(piece, temperature).ravel(), dt)
    grid = (layers, -1)
    shear = step.shear_modulus + _FLOOR * step.bulk_modulus
    area = plane_stress_share(step.bulk_modulus, shear)
    mean = piece.wall.mean
    factor = piece.stiffness.factor(mean(shear.reshape(grid)), mean(area.reshape(grid)))
    held = _held(step).reshape(3, *grid)
    moved = balance(piece.form, factor, np.stack([mean(part) for part in held]))
    in_plane = np.tile(piece.form.strains(moved), (1, layers))
    memory, stress = finish(material, before, step, _strains(step, in_plane))
    return replace(
        state,
        displacement=state.displacement + moved,
        stress=stress.reshape(_COMPS, *grid),
        memory=memory,
        origin=None,
    )


def _held(step: Increment) -> Array:
    """Stress (3, n) in the plane, Pa, of points held in the plane and free across it."""
    xx, yy, _, _ = plane_response(step)
    return np.stack((xx, yy, step.remembered[3]))


def _strains(step: Increment, in_plane: Array) -> Array:
    """Strain increments (4, n) that leave no stress across the plate."""
    across = through_strain(step, in_plane[0] + in_plane[1])
    return np.stack((in_plane[0], in_plane[1], across, in_plane[2]))


def _membrane(piece: Plan, stress: Array) -> Array:
    """Mean through the thickness of xx, yy and xy, shape (3, points), Pa."""
    return np.stack([piece.wall.mean(stress[component]) for component in (0, 1, 3)])


def membrane_stress(piece: Plan, state: PlanState) -> Array:
    """Mean stress through the thickness at the nodes, shape (3, columns, rows), Pa."""
    return piece.form.recover.nodal(_membrane(piece, state.stress))


def layer_stress(piece: Plan, state: PlanState) -> Array:
    """Stress xx, yy, xy of each layer at the nodes, shape (3, layers, columns, rows), Pa."""
    return piece.form.recover.nodal(state.stress[[0, 1, 3]])
