"""The Revolve body: one mesh of one material, and the state of the glass in it."""

import functools
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.band import Factor, factorise, pin
from demo_app.physics.heat import ROOM, Surface
from demo_app.physics.materials import Material
from demo_app.physics.relaxation import PointState, finish, from_elastic, predict
from demo_app.physics.revolve.elastic import (
    StressForm,
    balance,
    isotropic,
    stress_form,
)
from demo_app.physics.revolve.heat import HeatForm, heat_form, heat_step
from demo_app.physics.revolve.mesh import WallMesh, wall_mesh

Array = NDArray[np.float64]

_RELAXING = 100.0
"""Kelvin below the strain point at which relaxation starts to count: there the main relaxation
time is of the order of months, and the fastest twentieth of it of minutes."""


@dataclass(frozen=True, eq=False)
class Body:
    """Everything that does not change while a piece heats and cools.

    Parameters
    ----------
    material : Material
        Its glass.
    mesh : WallMesh
        Its elements.
    heat : HeatForm
        Matrices of conduction.
    stress : StressForm
        Matrices of equilibrium.
    solid : Factor
        Stiffness of the solid, factorised once.
    tied_below : float
        Where the mesh is split: depth (m) below which the two faces still hold together; infinite
        where they are free.
    """

    material: Material
    mesh: WallMesh
    heat: HeatForm
    stress: StressForm
    solid: Factor
    tied_below: float = np.inf


@dataclass(frozen=True)
class Glass:
    """Temperature and stress of a body at one instant.

    Parameters
    ----------
    temperature : numpy.ndarray
        Shape (nodes,), K.
    displacement : numpy.ndarray
        Shape (2 * nodes,), m: radial and axial by turns.
    stress : numpy.ndarray
        Shape (4, points), Pa: radial, hoop, axial, shear rz.
    origin : Glass or None
        The instant from which the elastic answer counts; None: stress-free at room temperature.
    points : PointState or None
        Memory of the relaxing glass; None while all of it is solid.
    """

    temperature: Array
    displacement: Array
    stress: Array
    origin: "Glass | None" = None
    points: PointState | None = None


def body(material: Material, mesh: WallMesh) -> Body:
    """Body of `material` on `mesh`; where the mesh is split, in two pieces."""
    form = stress_form(mesh)
    return Body(material, mesh, heat_form(mesh), form, _solid(material, mesh, form, np.inf))


def tied(piece: Body, depth: float) -> Body:
    """The same split body while its faces still hold together below `depth` (m)."""
    below = depth if depth < piece.mesh.depth[-1] - 1e-12 else np.inf
    solid = _solid(piece.material, piece.mesh, piece.stress, below)
    return replace(piece, solid=solid, tied_below=below)


def _solid(material: Material, mesh: WallMesh, form: StressForm, below: float) -> Factor:
    count = mesh.wall.r.size
    bulk, shear = (np.full(count, m) for m in (material.bulk_modulus, material.shear_modulus))
    return _stiffness(mesh, form, bulk, shear, below)


def _stiffness(mesh: WallMesh, form: StressForm, bulk: Array, shear: Array, below: float) -> Factor:
    band, held = form.bulk.band(bulk) + form.shear.band(shear), form.held
    if mesh.split is not None and np.isfinite(below):
        rows = mesh.depth.size
        hold = np.flatnonzero(mesh.depth > below - 1e-12)
        near = ((mesh.split - 1) * rows + hold[:, None]) * 2 + np.arange(2)
        stiff = 1e4 * band[0].max()
        band[0, near] += stiff
        band[0, near + 2 * rows] += stiff
        band[2 * rows, near] -= stiff
        # Held together it is one loose piece, so one axial support is enough.
        held = held[held != (mesh.nodes - rows) * 2 + 1]
    return factorise(pin(band, held))


def cold(piece: Body) -> Glass:
    """Annealed glass at room temperature, free of stress."""
    return Glass(
        np.full(piece.mesh.nodes, ROOM),
        np.zeros(2 * piece.mesh.nodes),
        np.zeros((4, piece.mesh.wall.r.size)),
    )


def advance(piece: Body, glass: Glass, seconds: float, outer: Surface, inner: Surface) -> Glass:
    """Glass after a step of `seconds` with the given surroundings."""
    warmer = heat_step(piece.heat, piece.material, glass.temperature, seconds, outer, inner)
    return strained(piece, glass, warmer, seconds)


def strained(piece: Body, glass: Glass, temperature: Array, seconds: float) -> Glass:
    """Glass after its temperature went to `temperature` (nodes,) in `seconds`: stress follows."""
    hottest = max(float(temperature.max()), float(glass.temperature.max()))
    if hottest > piece.material.strain_point - _RELAXING:
        return _relax(piece, glass, temperature, seconds)
    if glass.points is not None:
        glass = replace(glass, origin=replace(glass, origin=None, points=None), points=None)
    return _elastic(piece, glass, temperature)


def _elastic(piece: Body, glass: Glass, temperature: Array) -> Glass:
    material = piece.material
    start = glass.origin or cold(piece)
    before, now = piece.heat.value @ start.temperature, piece.heat.value @ temperature
    initial = start.stress.copy()
    initial[:3] -= 3 * material.bulk_modulus * material.solid_strain(before, now)
    moved = balance(piece.stress, piece.solid, initial)
    answer = isotropic(piece.stress.strains(moved), material.bulk_modulus, material.shear_modulus)
    return Glass(temperature, start.displacement + moved, initial + answer, glass.origin)


def _relax(piece: Body, glass: Glass, temperature: Array, seconds: float) -> Glass:
    material = piece.material
    before = glass.points or from_elastic(
        material,
        piece.heat.value @ glass.temperature,
        glass.stress,
        material.annealing_point,
    )
    step = predict(material, before, piece.heat.value @ temperature, seconds)
    initial = step.remembered.copy()
    initial[:3] -= 3 * step.bulk_modulus * step.free_strain
    factor = _stiffness(
        piece.mesh, piece.stress, step.bulk_modulus, step.shear_modulus, piece.tied_below
    )
    moved = balance(piece.stress, factor, initial)
    points, stress = finish(material, before, step, piece.stress.strains(moved))
    return Glass(temperature, glass.displacement + moved, stress, points=points)


def nodal_stress(piece: Body, glass: Glass) -> Array:
    """Stress at the nodes, shape (4, nodes), Pa."""
    return np.asarray((piece.stress.recover @ glass.stress.T).T)


def parted(piece: Body, s: float) -> Body:
    """The body cut through at the element end nearest to arc length `s` (m): two free faces."""
    ends = piece.mesh.s[2:-2:2]
    return _parted_at(piece, float(ends[np.argmin(np.abs(ends - s))]))


@functools.lru_cache(maxsize=4)
def _parted_at(piece: Body, end: float) -> Body:
    mesh = piece.mesh
    return body(piece.material, wall_mesh(mesh.profile, mesh.s[::2], mesh.depth[::2], split=end))


def cut(glass: Glass, split: int, rows: int) -> Glass:
    """State of the same glass on the mesh that is split after node column ``split - 1``."""

    def doubled(nodal: Array, width: int) -> Array:
        grid = nodal.reshape(-1, rows * width)
        return np.insert(grid, split, grid[split - 1], axis=0).ravel()

    instant = Glass(doubled(glass.temperature, 1), doubled(glass.displacement, 2), glass.stress)
    return replace(instant, origin=instant, points=glass.points)
