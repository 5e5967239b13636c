"""Quadratic quadrilaterals in the plane of a plate: node columns along x, node rows along y."""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from skfem import Basis, ElementQuad2, FacetBasis, MeshQuad, MeshQuad2

from demo_app.physics.band import Rows
from demo_app.physics.materials import Array
from demo_app.physics.quadratic import shape_rows, with_middles

PER_ELEMENT = 9
"""Nodes of an element, and its quadrature points."""


@dataclass(frozen=True)
class Points:
    """Quadrature points with the shape functions of a scalar field at each of them.

    Parameters
    ----------
    x, y : numpy.ndarray
        Shape (points,), m.
    weight : numpy.ndarray
        Shape (points,): m2 in the plate, m along its rim.
    value, slope_x, slope_y : Rows
        The field and its derivatives (1/m) from the nodes.
    """

    x: Array
    y: Array
    weight: Array
    value: Rows
    slope_x: Rows
    slope_y: Rows


@dataclass(frozen=True, eq=False)
class PlanMesh:
    """Mesh of a plate; node ``column * rows + row``.

    Parameters
    ----------
    x, y : numpy.ndarray
        Shape (columns, rows), m: the nodes.
    ends : tuple of numpy.ndarray
        Element ends of the rectangle that the mesh is an image of, along u and v.
    cell : numpy.ndarray
        Shape (elements, 2), int: column and row of each element in it.
    mirrored_x, mirrored_y : bool
        Whether ``x = 0`` (``y = 0``) is a mirror line, so that the mesh is a half or a quarter.
    inside : Points
        Quadrature in the plate, nine points an element.
    rim : Points
        Quadrature along the edge, mirror lines left out.
    """

    x: Array
    y: Array
    ends: tuple[Array, Array]
    cell: NDArray[np.int64]
    mirrored_x: bool
    mirrored_y: bool
    inside: Points
    rim: Points

    @property
    def nodes(self) -> int:
        """Number of nodes."""
        return int(self.x.size)

    @property
    def area(self) -> float:
        """Of the mesh, m2."""
        return float(self.inside.weight.sum())


def rectangle(
    columns: Array, rows: Array, *, mirrored_x: bool = False, mirrored_y: bool = False
) -> PlanMesh:
    """Mesh of a rectangular plate.

    Parameters
    ----------
    columns, rows : numpy.ndarray
        Element ends along x and y, increasing, m; from 0 along a mirrored direction.
    mirrored_x, mirrored_y : bool
        Whether ``x = 0`` and ``y = 0`` are mirror lines.
    """
    return mapped(columns, rows, _same, mirrored_x=mirrored_x, mirrored_y=mirrored_y)


def _same(u: Array, v: Array) -> tuple[Array, Array]:
    return u, v


def mapped(
    columns: Array,
    rows: Array,
    place: Callable[[Array, Array], tuple[Array, Array]],
    *,
    mirrored_x: bool = False,
    mirrored_y: bool = False,
) -> PlanMesh:
    """Mesh of the image of a rectangle, with curved (isoparametric) elements.

    Parameters
    ----------
    columns, rows : numpy.ndarray
        Element ends of the rectangle along u and v, increasing.
    place : callable
        ``place(u, v) -> (x, y)``, m: keeps the sense of rotation.
    mirrored_x, mirrored_y : bool
        Whether ``x = 0`` and ``y = 0`` are mirror lines.
    """
    flat = MeshQuad.init_tensor(columns, rows)
    u, v = with_middles(columns), with_middles(rows)
    at = Basis(flat, ElementQuad2())
    column = np.searchsorted(u, at.doflocs[0] - 1e-9 * np.ptp(u))
    row = np.searchsorted(v, at.doflocs[1] - 1e-9 * np.ptp(v))
    table = column[at.element_dofs] * v.size + row[at.element_dofs]
    curved = MeshQuad2.from_mesh(flat)
    curved = MeshQuad2(np.vstack(place(curved.doflocs[0], curved.doflocs[1])), curved.t)
    nodes = place(*np.meshgrid(u, v, indexing="ij"))
    basis = Basis(curved, ElementQuad2(), intorder=5)
    rim = _rim(curved, mirrored_x, mirrored_y)
    edge = FacetBasis(curved, ElementQuad2(), facets=rim, intorder=5)
    size = u.size * v.size
    middle = flat.p[:, flat.t].mean(axis=1)
    return PlanMesh(
        np.asarray(nodes[0], dtype=np.float64),
        np.asarray(nodes[1], dtype=np.float64),
        (columns, rows),
        np.stack([np.searchsorted(columns, middle[0]), np.searchsorted(rows, middle[1])], 1) - 1,
        mirrored_x,
        mirrored_y,
        _points(basis, table, size),
        _points(edge, table[:, edge.tind], size),
    )


def _rim(mesh: MeshQuad2, mirrored_x: bool, mirrored_y: bool) -> NDArray[np.int64]:
    """Facets of the boundary that do not lie on a mirror line."""
    facets = mesh.boundary_facets()
    ends = mesh.p[:, mesh.facets[:, facets]]
    near = 1e-9 * np.ptp(mesh.p)
    on_mirror = np.zeros(facets.size, dtype=bool)
    for axis, mirrored in ((0, mirrored_x), (1, mirrored_y)):
        if mirrored:
            on_mirror |= (np.abs(ends[axis]) < near).all(axis=0)
    return np.asarray(facets[~on_mirror])


def _points(basis: Basis, table: NDArray[np.int64], size: int) -> Points:
    x, y = (place.ravel() for place in basis.global_coordinates())
    return Points(
        np.asarray(x),
        np.asarray(y),
        basis.dx.ravel(),
        *shape_rows(basis, table, size),
    )
