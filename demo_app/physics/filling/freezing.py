"""Stress from thin and thick parts that freeze at different times: a plate whose thickness varies.

Plane stress in plan, layers through the half thickness, one strain for all layers of a place; the
law of the material point is the shared one. The plate lies flat and is free to shrink in its plane
(a mould that holds it back, and the pressure of packing, are left out).
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

import numpy as np

from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.membrane import (
    MembraneForm,
    Stiffness,
    balance,
    membrane_form,
    plane_stress_share,
    stiffness_form,
)
from demo_app.physics.plan.mesh import PlanMesh
from demo_app.physics.plane import plane_response, through_strain
from demo_app.physics.relaxation import Increment, PointState, finish, predict, rest

_COMPS = 4
_FLOOR = 1e-7
"""Stiffness of a liquid as a share of its bulk modulus: a melt that holds nothing itself may stand
beside a part that is solid."""


@dataclass(frozen=True, eq=False)
class Plate:
    """A plate of varying thickness.

    Parameters
    ----------
    material : Material
        What it is made of.
    mesh : PlanMesh
        Its elements.
    thickness : numpy.ndarray
        Shape (points,), m.
    form, stiffness : MembraneForm, Stiffness
        Matrices of equilibrium.
    """

    material: Material
    mesh: PlanMesh
    thickness: Array
    form: MembraneForm
    stiffness: Stiffness


@dataclass(frozen=True)
class Frozen:
    """One instant.

    Parameters
    ----------
    time : float
        s.
    temperature : numpy.ndarray
        Shape (layers, points), K.
    stress : numpy.ndarray
        Shape (3, layers, points), Pa: xx, yy, xy.
    memory : PointState
        Of the material points.
    """

    time: float
    temperature: Array
    stress: Array
    memory: PointState

    @property
    def mean(self) -> Array:
        """Mean through the thickness, shape (3, points), Pa; the layers are equally thick."""
        return np.asarray(self.stress.mean(axis=1))


def plate(material: Material, mesh: PlanMesh, thickness: Array) -> Plate:
    """Plate with `thickness` (m) at the mesh's points."""
    return Plate(material, mesh, thickness, membrane_form(mesh), stiffness_form(mesh))


def frozen(piece: Plate, instants: Iterable[tuple[float, Array]]) -> Iterator[Frozen]:
    """States at `instants` of (time, s, and temperature, K, of shape (layers, points)).

    The first one is the start: free of stress and in equilibrium.
    """
    state: Frozen | None = None
    for time, temperature in instants:
        if state is None:
            memory = rest(piece.material, temperature.ravel(), _COMPS)
            stress = np.zeros((3, *temperature.shape))
            state = Frozen(time, temperature, stress, memory)
        else:
            state = _step(piece, state, time, temperature)
        yield state


def _step(piece: Plate, state: Frozen, time: float, temperature: Array) -> Frozen:
    layers, points = temperature.shape
    step = predict(piece.material, state.memory, temperature.ravel(), time - state.time)
    shear = step.shear_modulus + _FLOOR * step.bulk_modulus
    area = plane_stress_share(step.bulk_modulus, shear)
    sizes = ((part.reshape(layers, points).mean(axis=0)) for part in (shear, area))
    factor = piece.stiffness.factor(*(piece.thickness * size for size in sizes))
    held = _held(step).reshape(3, layers, points)
    moved = balance(piece.form, factor, piece.thickness * held.mean(axis=1))
    strain = np.tile(piece.form.strains(moved), (1, layers))
    memory, stress = finish(piece.material, state.memory, step, _strains(step, strain))
    floor = _floor_stress(step, strain)
    whole = (stress[[0, 1, 3]] + floor).reshape(3, layers, points)
    return Frozen(time, temperature, whole, memory)


def _floor_stress(step: Increment, strain: Array) -> Array:
    """What the floor under a liquid's stiffness carries in this step, so that all balances."""
    extra = _FLOOR * step.bulk_modulus
    shear = step.shear_modulus + extra
    more = plane_stress_share(step.bulk_modulus, shear)
    more = more - plane_stress_share(step.bulk_modulus, step.shear_modulus)
    stress = 2 * extra * strain
    stress[:2] += more * (strain[0] + strain[1])
    return np.asarray(stress)


def _held(step: Increment) -> Array:
    """Stress (3, n) in the plane, Pa, of points held in the plane and free across it."""
    xx, yy, _, _ = plane_response(step)
    return np.stack((xx, yy, step.remembered[3]))


def _strains(step: Increment, in_plane: Array) -> Array:
    """Strain increments (4, n) that leave no stress across the plate."""
    across = through_strain(step, in_plane[0] + in_plane[1])
    return np.stack((in_plane[0], in_plane[1], across, in_plane[2]))


def cut_force(piece: Plate, state: Frozen, column: int) -> float:
    """What the stress in an upright cut through a column of nodes adds up to, N.

    Virtual work of the stress on its right side while the cut's nodes move along x.
    """
    at = piece.mesh.x[column, 0]
    right = np.where(piece.mesh.inside.x > at, 1.0, 0.0)
    force = piece.form.load(piece.thickness * state.mean * right)
    rows = piece.mesh.x.shape[1]
    nodes = column * rows + np.arange(rows)
    return -float(force[2 * nodes].sum())


def energy(piece: Plate, state: Frozen) -> float:
    """Elastic energy held by the stress, J."""
    solid = piece.material
    xx, yy, xy = state.stress
    poisson = solid.poisson_ratio
    density = xx**2 + yy**2 - 2 * poisson * xx * yy + 2 * (1 + poisson) * xy**2
    each = (density / (2 * solid.youngs_modulus)).mean(axis=0)
    return float((piece.thickness * piece.form.weight) @ each)


def largest(stress: Array) -> Array:
    """Larger principal stress of (3, ...) components, Pa."""
    xx, yy, xy = stress
    return np.asarray((xx + yy + np.hypot(xx - yy, 2 * xy)) / 2)


def best_places(mesh: PlanMesh) -> tuple[Array, Array]:
    """Columns and rows of the grid of best points (`Recovery.best`) of a rectangular mesh, m."""
    found = []
    for ends in mesh.ends:
        middle, half = (ends[1:] + ends[:-1]) / 2, np.diff(ends) / 2
        found.append((middle[:, None] + half[:, None] * np.array([-1, 1]) / np.sqrt(3)).ravel())
    return found[0], found[1]
