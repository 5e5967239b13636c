"""Balance of a rectangular plate with locked-in membrane stress: bilinear elements of one size.

A quarter is solved, ``x = 0`` and ``y = 0`` being mirror lines; the outer edges are free. Stresses
are means over an element, which the weak form balances exactly.
"""

import functools
from dataclasses import dataclass
from typing import Any

import numpy as np
import scipy.sparse as sp
from numpy.typing import NDArray
from scipy.sparse.linalg import splu

from demo_app.physics.materials import Array

_GAUSS = 1 / np.sqrt(3.0)
_CORNERS = np.array([[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]])


@dataclass(frozen=True)
class Quarter:
    """Quarter of a plate with its factorised stiffness, for a Young's modulus of one.

    Parameters
    ----------
    x, y : numpy.ndarray
        Shapes (cols,) and (rows,): middles of the elements, m, from the middle of the plate.
    elastic : numpy.ndarray
        Shape (3, 3): stress (xx, yy, xy) from strain (xx, yy, twice xy).
    mean : numpy.ndarray
        Shape (3, 8): mean strain of an element from its nodes' displacements, 1/m.
    dofs : numpy.ndarray
        Shape (rows * cols, 8): unknowns of each element, row after row.
    free : numpy.ndarray
        Unknowns that no mirror line holds.
    factor : scipy.sparse.linalg.SuperLU
        Of their stiffness, for each metre of thickness.
    """

    x: Array
    y: Array
    elastic: Array
    mean: Array
    dofs: NDArray[np.int64]
    free: NDArray[np.int64]
    factor: Any


@functools.lru_cache(maxsize=4)
def quarter(width: float, height: float, element: float, poisson: float) -> Quarter:
    """Quarter of a plate of `width` and `height`, elements about `element` wide, all in m."""
    columns, rows = round(width / 2 / element), round(height / 2 / element)
    dx, dy = float(width) / 2 / columns, float(height) / 2 / rows
    shear = (1 - poisson) / 2
    elastic = np.array([[1, poisson, 0], [poisson, 1, 0], [0, 0, shear]]) / (1 - poisson**2)
    node = np.arange((columns + 1) * (rows + 1)).reshape(rows + 1, columns + 1)
    corners = [node[:-1, :-1], node[:-1, 1:], node[1:, 1:], node[1:, :-1]]
    nodes = np.stack([corner.ravel() for corner in corners], axis=1)
    dofs = np.stack([2 * nodes, 2 * nodes + 1], axis=2).reshape(-1, 8)
    one = sum(
        b.T @ elastic @ b * (dx * dy / 4)
        for b in (_strain_rows(dx, dy, *(_GAUSS * corner)) for corner in _CORNERS)
    )
    row, col = np.repeat(dofs, 8, axis=1).ravel(), np.tile(dofs, (1, 8)).ravel()
    values = np.tile(np.asarray(one).ravel(), nodes.shape[0])
    size = 2 * node.size
    stiffness = sp.coo_matrix((values, (row, col)), shape=(size, size)).tocsc()
    held = np.concatenate([2 * node[:, 0], 2 * node[0] + 1])
    free = np.setdiff1d(np.arange(size), held)
    return Quarter(
        np.asarray((np.arange(columns) + 0.5) * dx),
        np.asarray((np.arange(rows) + 0.5) * dy),
        elastic,
        _strain_rows(dx, dy, 0.0, 0.0),
        dofs,
        free,
        splu(stiffness[np.ix_(free, free)]),
    )


def _strain_rows(dx: float, dy: float, u: float, v: float) -> Array:
    """Strain (xx, yy, twice xy) from the eight displacements at (u, v) of the element's square."""
    slope_x = _CORNERS[:, 0] * (1 + v * _CORNERS[:, 1]) / (2 * dx)
    slope_y = _CORNERS[:, 1] * (1 + u * _CORNERS[:, 0]) / (2 * dy)
    found = np.zeros((3, 8))
    found[0, ::2], found[1, 1::2] = slope_x, slope_y
    found[2, ::2], found[2, 1::2] = slope_y, slope_x
    return found


def balanced(part: Quarter, pushed: Array) -> tuple[Array, Array, Array]:
    """Stress after an equal-sided locked-in stress has found its balance.

    Parameters
    ----------
    part : Quarter
        The plate.
    pushed : numpy.ndarray
        Shape (rows, cols), Pa: stress in every in-plane direction while each element is held.

    Returns
    -------
    tuple of numpy.ndarray
        xx, yy and xy, shape (rows, cols), Pa.
    """
    area = 4 * part.x[0] * part.y[0]
    load = -area * (part.mean[0] + part.mean[1])
    force = np.zeros(int(part.dofs.max()) + 1)
    np.add.at(force, part.dofs, pushed.reshape(-1, 1) * load)
    moved = np.zeros_like(force)
    moved[part.free] = part.factor.solve(force[part.free])
    answer = moved[part.dofs] @ (part.elastic @ part.mean).T
    xx, yy, xy = (answer[:, k].reshape(pushed.shape) for k in range(3))
    return pushed + xx, pushed + yy, xy


def mirrored(part: Array, sign: float = 1.0) -> Array:
    """Whole plate from its quarter; `sign` is that of a mirror image (-1 for shear)."""
    right = np.concatenate([sign * part[:, ::-1], part], axis=1)
    return np.concatenate([sign * right[::-1], right], axis=0)
