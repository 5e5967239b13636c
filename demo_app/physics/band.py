"""Symmetric banded systems whose entries are linear in coefficients at quadrature points.

The pattern and the shape-function products never change between steps, only the coefficients
do. So a matrix is one sparse product, and its Cholesky factor costs ``n * bandwidth**2``.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
import scipy.sparse as sp
from numpy.typing import NDArray
from scipy.linalg import lapack

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Rows:
    """Values at quadrature points as combinations of unknowns: a sparse matrix by rows.

    Parameters
    ----------
    dofs : numpy.ndarray
        Shape (points, k), int: unknowns that a point's value depends on.
    values : numpy.ndarray
        Shape (points, k): their coefficients.
    size : int
        Number of unknowns.
    """

    dofs: NDArray[np.int64]
    values: Array
    size: int

    def matrix(self) -> Any:
        """The same as a CSR matrix of shape (points, size)."""
        points, k = self.dofs.shape
        pointers = np.arange(0, points * k + 1, k)
        return sp.csr_matrix(
            (self.values.ravel(), self.dofs.ravel(), pointers), shape=(points, self.size)
        )


@dataclass(frozen=True)
class BandForm:
    """Map from coefficients at points to the band of ``sum_i A_i' diag(coefficient) A_i``.

    Parameters
    ----------
    size, bandwidth : int
        Number of unknowns; number of diagonals below the main one.
    spread : scipy.sparse matrix
        Shape (size * (bandwidth + 1), points).
    """

    size: int
    bandwidth: int
    spread: Any

    def band(self, coefficient: Array) -> Array:
        """Lower band, shape (bandwidth + 1, size), Fortran order, from `coefficient` (points,)."""
        flat = self.spread @ coefficient
        return np.asarray(flat).reshape(self.size, self.bandwidth + 1).T


def bandwidth_of(*rows: Rows) -> int:
    """Largest distance of two unknowns that meet in one point."""
    return max(int((r.dofs.max(axis=1) - r.dofs.min(axis=1)).max()) for r in rows)


def band_form(parts: tuple[tuple[float, Rows], ...], weight: Array, bandwidth: int) -> BandForm:
    """Band form of the sum of ``factor * A' diag(weight * coefficient) A`` over (factor, A).

    Parameters
    ----------
    parts : tuple of (float, Rows)
        All on the same unknowns at each point.
    weight : numpy.ndarray
        Shape (points,): quadrature weights.
    bandwidth : int
        At least `bandwidth_of` the parts.
    """
    first = parts[0][1]
    points, k = first.dofs.shape
    a, b = np.tril_indices(k)
    at_a, at_b = first.dofs.take(a, axis=1), first.dofs.take(b, axis=1)
    entry = np.minimum(at_a, at_b) * (bandwidth + 1) + np.abs(at_a - at_b)
    product = sum(
        f * rows.values.take(a, axis=1) * rows.values.take(b, axis=1) for f, rows in parts
    )
    pointers = np.arange(0, entry.size + 1, entry.shape[1])
    shape = (first.size * (bandwidth + 1), points)
    value = np.asarray(product) * weight[:, None]
    spread = sp.csc_matrix((value.ravel(), entry.ravel(), pointers), shape=shape)
    return BandForm(first.size, bandwidth, spread.tocsr())


@dataclass(frozen=True)
class Factor:
    """Cholesky factor of a banded matrix."""

    lower: Array

    def solve(self, right: Array) -> Array:
        """Solution for `right`, shape (size,) or (size, k)."""
        x, info = lapack.dpbtrs(self.lower, right, lower=1)
        if info:
            raise ValueError(f"dpbtrs argument {-info}")
        return np.asarray(x)


def pin(band: Array, dofs: NDArray[np.int64]) -> Array:
    """Band with the unknowns `dofs` held at zero: their rows and columns are cleared."""
    held = np.array(band, order="F")
    width, size = held.shape
    for offset in range(width):
        rows = dofs - offset
        rows = rows[rows >= 0]
        held[offset, rows] = 0.0
    held[:, dofs] = 0.0
    held[0, dofs] = held[0].max()
    return held[:, :size]


def factorise(band: Array) -> Factor:
    """Cholesky factor of a symmetric positive definite lower `band`.

    Raises
    ------
    numpy.linalg.LinAlgError
        If the matrix is not positive definite.
    """
    lower, info = lapack.dpbtrf(band, lower=1)
    if info:
        raise np.linalg.LinAlgError(f"not positive definite at unknown {info}")
    return Factor(lower)
