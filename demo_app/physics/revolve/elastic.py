"""Stress in a wall of revolution: strains, equilibrium and recovery at the nodes.

Stress components are ordered (radial, hoop, axial, shear rz); the shear strain is the tensor's.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
import scipy.sparse as sp
from numpy.typing import NDArray

from demo_app.physics.band import BandForm, Factor, Rows, band_form, bandwidth_of
from demo_app.physics.revolve.mesh import Points, WallMesh

Array = NDArray[np.float64]


@dataclass(frozen=True)
class StressForm:
    """Matrices of equilibrium in one mesh. Unknown ``2*node`` is radial, ``2*node + 1`` axial.

    Parameters
    ----------
    strain : tuple of scipy.sparse matrix
        Four of shape (points, 2 * nodes): the strain components at the points.
    volume : scipy.sparse matrix
        Their volumetric sum.
    weight : numpy.ndarray
        Shape (points,): quadrature weights, m3.
    bulk, shear : BandForm
        Stiffness per unit bulk and shear modulus.
    recover : scipy.sparse matrix
        Shape (nodes, points): nodal values from values at the points.
    held : numpy.ndarray
        Unknowns held at zero: radial on the axis, one axial for each loose piece.
    """

    strain: tuple[Any, Any, Any, Any]
    volume: Any
    weight: Array
    bulk: BandForm
    shear: BandForm
    recover: Any
    held: NDArray[np.int64]

    def strains(self, displacement: Array) -> Array:
        """Strain at the points, shape (4, points), from `displacement` (2 * nodes,), m."""
        return np.stack([rows @ displacement for rows in self.strain])

    def load(self, stress: Array) -> Array:
        """Nodal forces (N) that balance a `stress` (4, points), Pa, at the points."""
        weighed = stress * self.weight
        weighed[3] *= 2.0
        return np.asarray(sum(r.T @ s for r, s in zip(self.strain, weighed, strict=True)))


def stress_form(mesh: WallMesh) -> StressForm:
    """Matrices of equilibrium for `mesh`."""
    points = mesh.wall
    strain = _strain_rows(points)
    volume = _sum(strain[:3])
    wide = bandwidth_of(strain[0])
    thirds = [_sum((strain[i], volume), (1.0, -1 / 3)) for i in range(3)]
    deviator = tuple((2.0, rows) for rows in thirds)
    return StressForm(
        tuple(rows.matrix() for rows in strain),
        volume.matrix(),
        points.weight,
        band_form(((1.0, volume),), points.weight, wide),
        band_form((*deviator, (4.0, strain[3])), points.weight, wide),
        _recovery(points, mesh.nodes),
        _held(mesh),
    )


def _strain_rows(points: Points) -> tuple[Rows, Rows, Rows, Rows]:
    radial = points.value.dofs * 2
    dofs = np.concatenate([radial, radial + 1], axis=1)
    zero = np.zeros_like(points.value.values)
    hoop = points.value.values / points.r[:, None]
    dr, dz = points.slope_r.values, points.slope_z.values
    size = 2 * points.value.size

    def rows(of_radial: Array, of_axial: Array) -> Rows:
        return Rows(dofs, np.concatenate([of_radial, of_axial], axis=1), size)

    return rows(dr, zero), rows(hoop, zero), rows(zero, dz), rows(dz / 2, dr / 2)


def _sum(parts: tuple[Rows, ...], factors: tuple[float, ...] | None = None) -> Rows:
    weights = factors or (1.0,) * len(parts)
    values = sum(f * p.values for f, p in zip(weights, parts, strict=True))
    return Rows(parts[0].dofs, np.asarray(values), parts[0].size)


def _held(mesh: WallMesh) -> NDArray[np.int64]:
    rows = mesh.depth.size
    on_axis = np.flatnonzero(mesh.r.ravel() < 1e-9) * 2
    far_ends = [0] if mesh.split is None else [0, mesh.nodes - rows]
    return np.unique(np.concatenate([on_axis, np.asarray(far_ends) * 2 + 1])).astype(np.int64)


def _recovery(points: Points, nodes: int) -> Any:
    # Bilinear least squares over an element's nine points: it drops the part in which the
    # strain's and the temperature's polynomials cannot match (Barlow 1976).
    per = 9
    elements = points.r.size // per
    first = points.value.values[:per]
    corners = np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]], dtype=float)
    mids = np.array([[0, -1], [1, 0], [0, 1], [-1, 0], [0, 0]], dtype=float)
    local = np.vstack([corners, mids])
    at = first @ local
    terms = np.column_stack([np.ones(per), at, at[:, 0] * at[:, 1]])
    gauss = _gauss_weights(at)
    fit = np.linalg.solve((terms.T * gauss) @ terms, terms.T * gauss)
    to_nodes = np.column_stack([np.ones(9), local, local[:, 0] * local[:, 1]]) @ fit
    node = points.value.dofs[::per]
    row = np.repeat(node, per, axis=1)
    col = np.tile(np.arange(elements * per).reshape(elements, 1, per), (1, 9, 1))
    data = np.broadcast_to(to_nodes, (elements, 9, per))
    total = sp.coo_matrix(
        (data.ravel(), (row.ravel(), col.ravel())), shape=(nodes, points.r.size)
    ).tocsr()
    shared = np.bincount(node.ravel(), minlength=nodes)
    return sp.diags(1 / shared) @ total


def _gauss_weights(at: Array) -> Array:
    one = np.where(np.abs(at) < 0.1, 8 / 9, 5 / 9)
    return np.asarray(one[:, 0] * one[:, 1])


def isotropic(strain: Array, bulk: Array | float, shear: Array | float) -> Array:
    """Stress (4, points) of elastic `strain` (4, points), same unit as the moduli."""
    volume = strain[0] + strain[1] + strain[2]
    stress = 2 * shear * strain
    stress[:3] += (bulk - 2 / 3 * shear) * volume
    return np.asarray(stress)


def balance(form: StressForm, factor: Factor, stress: Array) -> Array:
    """Displacement (2 * nodes,), m, whose elastic answer balances an initial `stress`."""
    force = -form.load(stress)
    force[form.held] = 0.0
    return factor.solve(force)
