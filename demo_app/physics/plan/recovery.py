"""Values at the nodes from values at the quadrature points, on the grid that a mesh is.

A quadratic element's strain is best at its 2 x 2 Gauss points (Barlow 1976, Int. J. Numer. Meth.
Eng. 10). A linear fit to its 3 x 3 points gives the values there, for strain and temperature
alike; all elements' 2 x 2 points are a grid again, and cubic splines lead from it to the nodes.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
import scipy.sparse as sp
from numpy.typing import NDArray
from scipy.interpolate import make_interp_spline

from demo_app.physics.materials import Array
from demo_app.physics.plan.mesh import PER_ELEMENT, PlanMesh
from demo_app.physics.quadratic import with_middles

_THREE, _TWO = np.sqrt(0.6), np.sqrt(1 / 3)


@dataclass(frozen=True, eq=False)
class Recovery:
    """The two stages.

    Parameters
    ----------
    to_best : scipy.sparse matrix
        Shape (best_x * best_y, points): quadrature points to the grid of 2 x 2 points.
    along, across : numpy.ndarray
        Shapes (columns, best_x) and (rows, best_y): splines to the nodes.
    """

    to_best: Any
    along: Array
    across: Array

    def best(self, values: Array) -> Array:
        """Values on the grid of best points, shape (..., best_x, best_y), from (..., points)."""
        grid = (self.to_best @ values.reshape(-1, values.shape[-1]).T).T
        return np.asarray(grid).reshape(*values.shape[:-1], self.along.shape[1], -1)

    def spread(self, best: Array) -> Array:
        """Values at the nodes, shape (..., columns, rows), from those on the grid."""
        return np.asarray(self.along @ best @ self.across.T)

    def nodal(self, values: Array) -> Array:
        """Values at the nodes, shape (..., columns, rows), from (..., points)."""
        return self.spread(self.best(values))


def recovery(mesh: PlanMesh) -> Recovery:
    """Recovery on the whole of `mesh`."""
    u, v = mesh.ends
    first = _local(mesh)
    best_y = 2 * (v.size - 1)
    row, col, data = [], [], []
    for a in (0, 1):
        for b in (0, 1):
            target = (2 * mesh.cell[:, 0] + a) * best_y + 2 * mesh.cell[:, 1] + b
            row.append(np.repeat(target, PER_ELEMENT))
            col.append(np.arange(first[0].size))
            data.append(_FIT[a, first[0]] * _FIT[b, first[1]])
    shape = (2 * (u.size - 1) * best_y, first[0].size)
    entries = (np.concatenate(data), (np.concatenate(row), np.concatenate(col)))
    return Recovery(sp.coo_matrix(entries, shape=shape).tocsr(), spline(u), spline(v))


def spline(ends: Array) -> Array:
    """Cubic spline from the 2 Gauss points of each cell to its ends and middles."""
    middle, half = (ends[1:] + ends[:-1]) / 2, np.diff(ends) / 2
    places = (middle[:, None] + half[:, None] * np.array([-_TWO, _TWO])).ravel()
    degree = 3 if places.size > 3 else 1
    through = make_interp_spline(places, np.eye(places.size), k=degree)
    return np.asarray(through(with_middles(ends)))


def _linear_fit() -> Array:
    """Values at the 2 Gauss points of a linear fit to values at 3, shape (2, 3)."""
    terms = np.array([[1.0, -_THREE], [1.0, 0.0], [1.0, _THREE]])
    weighed = terms.T * np.array([5 / 9, 8 / 9, 5 / 9])
    fit = np.linalg.solve(weighed @ terms, weighed)
    return np.asarray(np.array([[1.0, -_TWO], [1.0, _TWO]]) @ fit)


_FIT = _linear_fit()


def _local(mesh: PlanMesh) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Which of three Gauss places, 0 to 2, each point has along u and v in its own element."""
    u, v = (with_middles(ends) for ends in mesh.ends)
    nodes_u, nodes_v = (grid.ravel() for grid in np.meshgrid(u, v, indexing="ij"))
    points = mesh.inside.value
    found = []
    for nodes, ends, cell in ((nodes_u, mesh.ends[0], 0), (nodes_v, mesh.ends[1], 1)):
        at = (points.values * nodes[points.dofs]).sum(axis=1)
        element = np.repeat(mesh.cell[:, cell], PER_ELEMENT)
        middle, half = (ends[1:] + ends[:-1]) / 2, np.diff(ends) / 2
        found.append(np.rint((at - middle[element]) / half[element] / _THREE).astype(int) + 1)
    return found[0], found[1]
