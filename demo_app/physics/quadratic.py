"""Quadratic quadrilaterals, whatever the coordinates: node places and shape functions by rows."""

import numpy as np
from numpy.typing import NDArray
from skfem import Basis

from demo_app.physics.band import Rows

Array = NDArray[np.float64]


def with_middles(ends: Array) -> Array:
    """Element `ends` with the middles between them: places of a quadratic element's nodes."""
    both = np.empty(2 * ends.size - 1)
    both[::2] = ends
    both[1::2] = (ends[1:] + ends[:-1]) / 2
    return both


def shape_rows(basis: Basis, table: NDArray[np.int64], size: int) -> tuple[Rows, Rows, Rows]:
    """A scalar field and its two derivatives at the quadrature points of `basis`, from the nodes.

    Parameters
    ----------
    basis : skfem.Basis
        Of the elements, or of some of their facets.
    table : numpy.ndarray
        Shape (9, elements): node numbers of each element.
    size : int
        Number of nodes.
    """
    fields = [basis.basis[i][0] for i in range(table.shape[0])]
    quadrature = basis.dx.shape[1]
    dofs = np.repeat(table.T[:, None, :], quadrature, axis=1).reshape(-1, table.shape[0])

    def rows(values: list[Array]) -> Rows:
        return Rows(dofs, np.stack([v.ravel() for v in values], axis=1), size)

    return (
        rows([np.broadcast_to(np.asarray(f), basis.dx.shape) for f in fields]),
        rows([f.grad[0] for f in fields]),
        rows([f.grad[1] for f in fields]),
    )
