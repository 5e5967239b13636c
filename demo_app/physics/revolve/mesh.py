"""Quadratic finite elements on a wall: node columns along the midline, node rows through it."""

import itertools
import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from skfem import Basis, ElementQuad2, FacetBasis, MeshQuad, MeshQuad2

from demo_app.physics.band import Rows
from demo_app.physics.quadratic import shape_rows, with_middles
from demo_app.physics.revolve.profile import Arc, Profile

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Points:
    """Quadrature points with the shape functions of a scalar field at each of them.

    Parameters
    ----------
    r, z : numpy.ndarray
        Shape (points,), m.
    weight : numpy.ndarray
        Shape (points,): quadrature weight times ``2*pi*r``; m3 in the wall, m2 on a surface.
    value, slope_r, slope_z : Rows
        The field and its derivatives (1/m) from the nodes.
    """

    r: Array
    z: Array
    weight: Array
    value: Rows
    slope_r: Rows
    slope_z: Rows


@dataclass(frozen=True, eq=False)
class WallMesh:
    """Mesh of a profile's wall; node ``column * rows + row``, row 0 on the outer surface.

    Parameters
    ----------
    profile : Profile
        The wall.
    s : numpy.ndarray
        Shape (columns,), m: arc length of each node column. At a split one arc length occurs
        twice: two free faces.
    depth : numpy.ndarray
        Shape (rows,), m: depth of each node row below the outer surface.
    r, z : numpy.ndarray
        Shape (columns, rows), m: the nodes.
    heading : numpy.ndarray
        Shape (columns,), radians: direction of the midline at each node column.
    split : int or None
        First node column beyond the split.
    wall, outer, inner : Points
        Quadrature in the wall and on its two surfaces.
    """

    profile: Profile
    s: Array
    depth: Array
    r: Array
    z: Array
    heading: Array
    split: int | None
    wall: Points
    outer: Points
    inner: Points

    @property
    def nodes(self) -> int:
        """Number of nodes."""
        return self.s.size * self.depth.size


def graded(profile: Profile, centre: float, *, fine: float, flat: float, coarse: float) -> Array:
    """Element ends along the midline, with one end at `centre`.

    Parameters
    ----------
    profile : Profile
        Its bends keep elements short; its corners are element ends.
    centre : float
        Arc length of the finest place, m.
    fine, coarse : float
        Element length near `centre` and far away, m.
    flat : float
        Half-width of the zone that stays fine, m.
    """
    stops = np.unique(np.append(profile.corners(), centre))
    stops = _drop_close(stops, centre, 0.4 * fine)
    ends = [stops[0]]
    for a, b in itertools.pairwise(stops):
        ends.extend(_cells(profile, a, b, centre, fine, flat, coarse))
    return np.asarray(ends)


def _drop_close(stops: Array, keep: float, least: float) -> Array:
    near = (np.abs(stops - keep) < least) & (stops != keep) & (stops > 0) & (stops < stops[-1])
    return np.asarray(stops[~near])


def _cells(
    profile: Profile, a: float, b: float, centre: float, fine: float, flat: float, coarse: float
) -> Array:
    bend = min(
        (p.radius for p, m in _middles(profile) if isinstance(p, Arc) and a < m < b),
        default=math.inf,
    )
    fineness = np.linspace(a, b, max(8, int(40 * (b - a) / fine)))
    size = np.clip(fine + 0.3 * (np.abs(fineness - centre) - flat), fine, min(coarse, 0.35 * bend))
    count = np.concatenate([[0.0], np.cumsum((1 / size[1:] + 1 / size[:-1]) / 2)])
    count *= (b - a) / (fineness.size - 1)
    whole = max(1, math.ceil(count[-1] - 0.1))
    inside = np.interp(np.linspace(0, count[-1], whole + 1), count, fineness)[1:]
    inside[-1] = b
    return np.asarray(inside)


def _middles(profile: Profile) -> list[tuple[object, float]]:
    ends = profile.corners()
    return list(zip(profile.parts, (ends[1:] + ends[:-1]) / 2, strict=True))


def through(wall: float, first: float, count: int) -> Array:
    """Element ends from the outer surface inward: `count` elements that grow from `first` (m)."""
    if first * count >= wall:
        return np.linspace(0, wall, count + 1)
    low, high = 1.0, 10.0
    for _ in range(80):
        q = (low + high) / 2
        low, high = (q, high) if first * (q**count - 1) / (q - 1) < wall else (low, q)
    ends = np.concatenate([[0.0], np.cumsum(first * low ** np.arange(count))])
    return np.asarray(ends * wall / ends[-1])


def fine_at_both(count: int, share: float) -> Array:
    """Element ends through a wall from 0 to 1, finer towards both faces.

    Parameters
    ----------
    count : int
        Number of elements.
    share : float
        How much of a sine there is in their spacing, 0 (all alike) to 1.
    """
    even = np.linspace(-1.0, 1.0, count + 1)
    return np.asarray((1 + (1 - share) * even + share * np.sin(np.pi / 2 * even)) / 2)


def wall_mesh(profile: Profile, ends: Array, depths: Array, split: float | None = None) -> WallMesh:
    """Mesh from element ends along the midline and through the wall (m).

    Parameters
    ----------
    profile : Profile
        The wall.
    ends, depths : numpy.ndarray
        Element ends along the midline and below the outer surface, m.
    split : float or None
        One of `ends` at which the wall is cut through.
    """
    flat = MeshQuad.init_tensor(ends, depths)
    columns, rows = with_middles(ends), with_middles(depths)
    flat_basis = Basis(flat, ElementQuad2())
    column = np.searchsorted(columns, flat_basis.doflocs[0] - 1e-12)
    row = np.searchsorted(rows, flat_basis.doflocs[1] - 1e-12)
    cut = None if split is None else int(np.searchsorted(columns, split - 1e-12)) + 1
    beyond = flat.p[0][flat.t].mean(axis=0) > (np.inf if split is None else split)
    if cut is not None:
        columns = np.insert(columns, cut, columns[cut - 1])
    element_column = column[flat_basis.element_dofs] + beyond
    table = element_column * rows.size + row[flat_basis.element_dofs]
    curved = MeshQuad2.from_mesh(flat)
    r, z = profile.place(curved.doflocs[0], curved.doflocs[1])
    curved = MeshQuad2(np.vstack([r, z]), curved.t)
    size = columns.size * rows.size
    nodes = profile.place(columns[:, None], rows[None, :])
    basis = Basis(curved, ElementQuad2(), intorder=5)
    surfaces = [
        FacetBasis(curved, ElementQuad2(), facets=flat.facets_satisfying(at_depth), intorder=5)
        for at_depth in (
            lambda x: np.abs(x[1]) < 1e-12,
            lambda x: np.abs(x[1] - depths[-1]) < 1e-12,
        )
    ]
    return WallMesh(
        profile,
        columns,
        rows,
        nodes[0],
        nodes[1],
        profile.at(columns)[2],
        cut,
        _points(basis, table, size),
        _points(surfaces[0], table[:, surfaces[0].tind], size),
        _points(surfaces[1], table[:, surfaces[1].tind], size),
    )


def _points(basis: Basis, table: NDArray[np.int64], size: int) -> Points:
    r, z = (x.ravel() for x in basis.global_coordinates())
    return Points(
        r,
        z,
        basis.dx.ravel() * 2 * np.pi * r,
        *shape_rows(basis, table, size),
    )
