"""Plane-stress equilibrium of a plate's membrane forces.

Components are ordered (xx, yy, xy); the shear strain is the tensor's. A layer's stress is
``2 G e + L (e_xx + e_yy)`` in plane, with ``L = 2 G lambda / (lambda + 2 G)``, which leaves no
stress across the plate; the plate's membrane stiffness is the mean of both over its layers.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.band import BandForm, Factor, Rows, band_form, bandwidth_of, factorise, pin
from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.mesh import PlanMesh, Points
from demo_app.physics.plan.recovery import Recovery, recovery


@dataclass(frozen=True)
class MembraneForm:
    """Matrices of equilibrium in one mesh. Unknown ``2*node`` is along x, ``2*node + 1`` along y.

    Parameters
    ----------
    strain : tuple of scipy.sparse matrix
        Three of shape (points, 2 * nodes): the strain components at the points.
    weight : numpy.ndarray
        Shape (points,), m2: quadrature weights.
    recover : Recovery
        Nodal values from values at the points.
    held : numpy.ndarray
        Unknowns held at zero.
    """

    strain: tuple[Any, Any, Any]
    weight: Array
    recover: Recovery
    held: NDArray[np.int64]

    def strains(self, displacement: Array) -> Array:
        """Strain at the points, shape (3, points), from `displacement` (2 * nodes,), m."""
        return np.stack([rows @ displacement for rows in self.strain])

    def load(self, stress: Array) -> Array:
        """Nodal forces for each metre of thickness (N/m) of a `stress` (3, points), Pa."""
        weighed = stress * self.weight
        weighed[2] *= 2.0
        return np.asarray(sum(r.T @ s for r, s in zip(self.strain, weighed, strict=True)))


def membrane_form(mesh: PlanMesh, held: NDArray[np.int64] | None = None) -> MembraneForm:
    """Matrices of equilibrium for `mesh`.

    Parameters
    ----------
    mesh : PlanMesh
        The plate.
    held : numpy.ndarray, optional
        Unknowns held at zero; if left out, what the mirror lines hold, and no more than keeps a
        free plate from drifting.
    """
    points = mesh.inside
    strain = _strain_rows(points)
    return MembraneForm(
        (strain[0].matrix(), strain[1].matrix(), strain[2].matrix()),
        points.weight,
        recovery(mesh),
        supports(mesh) if held is None else held,
    )


@dataclass(frozen=True)
class Stiffness:
    """Membrane stiffness from moduli at the points, and where it is held.

    Parameters
    ----------
    shear, area : BandForm
        Stiffness per unit of G and of L.
    held : numpy.ndarray
        Unknowns held at zero.
    """

    shear: BandForm
    area: BandForm
    held: NDArray[np.int64]

    def factor(self, shear: Array, area: Array) -> Factor:
        """Factor of the stiffness with mean moduli G and L at the points, Pa."""
        return factorise(pin(self.shear.band(shear) + self.area.band(area), self.held))

    def solid(self, material: Material) -> Factor:
        """Factor of the stiffness of the solid."""
        ones = np.ones(self.shear.spread.shape[1])
        bulk, shear = np.asarray(material.bulk_modulus), np.asarray(material.shear_modulus)
        return self.factor(shear * ones, plane_stress_share(bulk, shear) * ones)


def stiffness_form(mesh: PlanMesh, held: NDArray[np.int64] | None = None) -> Stiffness:
    """Stiffness of `mesh`; `held` as in `membrane_form`."""
    points = mesh.inside
    strain = _strain_rows(points)
    wide = bandwidth_of(strain[0])
    swelling = Rows(strain[0].dofs, strain[0].values + strain[1].values, strain[0].size)
    deviator = ((2.0, strain[0]), (2.0, strain[1]), (4.0, strain[2]))
    return Stiffness(
        band_form(deviator, points.weight, wide),
        band_form(((1.0, swelling),), points.weight, wide),
        supports(mesh) if held is None else held,
    )


def supports(mesh: PlanMesh) -> NDArray[np.int64]:
    """Unknowns that mirror lines hold, and those that keep a free plate in its place."""
    x, y = mesh.x.ravel(), mesh.y.ravel()
    near = 1e-9 * float(np.ptp(x))
    along_x = np.flatnonzero(np.abs(x) < near) if mesh.mirrored_x else np.array([], dtype=int)
    along_y = np.flatnonzero(np.abs(y) < near) if mesh.mirrored_y else np.array([], dtype=int)
    if not mesh.mirrored_x and not mesh.mirrored_y:
        # One node wholly, one across the line between them, so that the plate cannot turn.
        rows = mesh.x.shape[1]
        return np.array([0, 1, 2 * (rows - 1)])
    if not mesh.mirrored_x:
        along_x = np.array([0])
    if not mesh.mirrored_y:
        along_y = np.array([0])
    return np.unique(np.concatenate([2 * along_x, 2 * along_y + 1]))


def _strain_rows(points: Points) -> tuple[Rows, Rows, Rows]:
    along = points.value.dofs * 2
    dofs = np.concatenate([along, along + 1], axis=1)
    dx, dy = points.slope_x.values, points.slope_y.values
    zero, size = np.zeros_like(dx), 2 * points.value.size

    def rows(of_x: Array, of_y: Array) -> Rows:
        return Rows(dofs, np.concatenate([of_x, of_y], axis=1), size)

    return rows(dx, zero), rows(zero, dy), rows(dy / 2, dx / 2)


def plane_stress_share(bulk: Array, shear: Array) -> Array:
    """L from bulk and shear modulus: what the swelling in plane adds to each normal stress."""
    lame = bulk - 2 / 3 * shear
    return np.asarray(2 * shear * lame / (lame + 2 * shear))


def elastic_membrane(material: Material, strain: Array) -> Array:
    """Plane stress (3, points), Pa, of an elastic `strain` (3, points)."""
    bulk, shear = np.asarray(material.bulk_modulus), np.asarray(material.shear_modulus)
    stress = 2 * shear * strain
    stress[:2] += plane_stress_share(bulk, shear) * (strain[0] + strain[1])
    return np.asarray(stress)


def free_membrane_modulus(material: Material) -> float:
    """Equibiaxial stress for each unit of a prevented strain, E / (1 - nu), Pa."""
    return material.youngs_modulus / (1 - material.poisson_ratio)


def balance(form: MembraneForm, factor: Factor, stress: Array) -> Array:
    """Displacement (2 * nodes,), m, whose elastic answer balances an initial `stress`."""
    force = -form.load(stress)
    force[form.held] = 0.0
    return factor.solve(force)
