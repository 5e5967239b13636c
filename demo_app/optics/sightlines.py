"""Sightlines through a whole piece of revolution, seen from the side.

The wall is cut by a ray once in front and once behind; both cuts see the same stress up to a
sign of the shear's y part that cancels, so twice the front half is the whole. At a level z the
path integral is an Abel transform, done exactly for fields that are linear between samples along
r. Rays run straight: refraction is left out, as when the piece lies in a liquid of its own index.
"""

import itertools
from dataclasses import dataclass
from typing import Any

import numpy as np
import scipy.sparse as sp
from numpy.typing import NDArray

from demo_app.optics.retardation import RetardationMap
from demo_app.physics.revolve.mesh import WallMesh

Array = NDArray[np.float64]

_WIDEST = 1.6e-3
"""Largest distance between levels, m."""


@dataclass(frozen=True)
class Sightlines:
    """Operator from nodal stress to a retardation map, for one piece of a wall.

    Parameters
    ----------
    sample : scipy.sparse matrix
        Shape (levels * samples, nodes): stress at the samples of each level.
    along_weight, hoop_weight, radial_weight, shear_weight : numpy.ndarray
        Shape (levels, rays, samples), m: weights of the four components in the path integrals.
    across : numpy.ndarray
        Shape (rays,): distance of each ray from the axis, as a share of the outline.
    z, half_width : numpy.ndarray
        Shape (levels,), m: heights and the outline's radius at each.
    """

    sample: Any
    along_weight: NDArray[np.float32]
    hoop_weight: NDArray[np.float32]
    radial_weight: NDArray[np.float32]
    shear_weight: NDArray[np.float32]
    across: Array
    z: Array
    half_width: Array

    def map(self, stress: Array, stress_optic: float) -> RetardationMap:
        """Retardation map of a nodal `stress` (4, nodes), Pa.

        Picture x runs along the axis of revolution, y across it.

        Parameters
        ----------
        stress : numpy.ndarray
            Shape (4, nodes): radial, hoop, axial and shear rz, Pa.
        stress_optic : float
            Stress-optic coefficient, 1/Pa.
        """
        levels, _, samples = self.along_weight.shape
        scaled = (1e9 * stress_optic * (self.sample @ stress.T)).astype(np.float32)
        radial, hoop, axial, shear = scaled.T.reshape(4, levels, samples, 1)
        v1 = self.along_weight @ axial - self.hoop_weight @ hoop - self.radial_weight @ radial
        v2 = self.shear_weight @ shear
        return RetardationMap(
            np.ascontiguousarray(v1[..., 0].T),
            np.ascontiguousarray(v2[..., 0].T),
            self.across,
            1e3 * self.z,
            1e3 * self.half_width,
            mirrored=True,
        )


def sightlines(
    mesh: WallMesh,
    *,
    columns: slice = slice(None),
    rays: int = 96,
    samples: int = 29,
    both_faces: bool = False,
    fine_below: float = 0.0,
) -> Sightlines:
    """Operator for the piece that consists of the node `columns` of a mesh.

    Parameters
    ----------
    mesh : WallMesh
        Its profile must be met once by each level: a wall or a solid base, no punt.
    columns : slice
        Node columns of the piece.
    rays : int
        Number of rays from the axis to the limb, closer towards the limb.
    samples : int
        Number of samples along r at each level, closer towards the outer surface.
    both_faces : bool
        Whether samples and levels are close at the inner surface too, where water chills it.
    fine_below : float
        Height up to which levels are four times as close, m.
    """
    chosen = mesh.s[columns]
    first = range(mesh.s.size)[columns][0]
    z = _levels(mesh, columns, both_faces, fine_below)
    z, near, far = _cut(mesh, z, chosen[0], chosen[-1])
    even = np.linspace(0, 1, samples)
    share = (1 - np.cos(np.pi * even)) / 2 if both_faces else 1 - (1 - even) ** 1.7
    r = near[:, None] + (far - near)[:, None] * share
    sample = _interpolation(mesh, chosen, first, r, np.broadcast_to(z[:, None], r.shape))
    across = 1 - (1 - np.linspace(0, 1, rays)) ** 2
    x = across[None, :] * far[:, None]
    path = 2 * abel_weights(r, x)
    cosine = x[:, :, None] / np.maximum(r, 1e-9)[:, None, :]
    # Samples nearer the axis than the ray carry weight only as ends of a clipped segment.
    cosine = np.minimum(cosine, 1.0)
    square = cosine**2
    # Single precision costs a thousandth of a nanometre, and the live tick is bound by memory.
    return Sightlines(
        sample,
        path.astype(np.float32),
        (path * (1 - square)).astype(np.float32),
        (path * square).astype(np.float32),
        (2 * path * cosine).astype(np.float32),
        across,
        z,
        far,
    )


def abel_weights(r: Array, x: Array) -> Array:
    """Weights of ``integral f(r) r / sqrt(r**2 - x**2) dr`` over r > x, f linear between samples.

    Parameters
    ----------
    r : numpy.ndarray
        Shape (levels, samples), increasing along the last axis, m.
    x : numpy.ndarray
        Shape (levels, rays), m.

    Returns
    -------
    numpy.ndarray
        Shape (levels, rays, samples), m.
    """
    weights = np.zeros((*x.shape, r.shape[1]))
    # A few levels at a time: their temporaries stay in the cache.
    for few in range(0, r.shape[0], 8):
        part = slice(few, few + 8)
        _add_weights(r[part], x[part], weights[part])
    return weights


def _add_weights(r: Array, x: Array, weights: Array) -> None:
    low, high = r[:, None, :-1], r[:, None, 1:]
    at = x[:, :, None]
    a, b = np.maximum(low, at), np.maximum(high, at)
    root_a, root_b = np.sqrt(a**2 - at**2), np.sqrt(b**2 - at**2)
    flat = root_b - root_a
    safe = np.maximum(a, 1e-300)
    log = np.log(np.maximum(b + root_b, 1e-300) / (safe + root_a))
    sloped = (b * root_b - a * root_a) / 2 + at**2 / 2 * log
    width = np.maximum(high - low, 1e-300)
    weights[..., :-1] += (high * flat - sloped) / width
    weights[..., 1:] += (sloped - low * flat) / width


def _levels(mesh: WallMesh, columns: slice, both_faces: bool, fine_below: float) -> Array:
    outline = mesh.z[columns, 0]
    low, high = mesh.z[columns].min(), mesh.z[columns].max()
    if mesh.profile.closed_on_axis and columns.start in (None, 0):
        base = np.linspace(0.0, 2 * mesh.profile.wall, 13)
        outline = np.concatenate([base, outline[outline > base[-1]]])
        if both_faces:
            # Just above a flat floor the path through the glass is suddenly short.
            outline = np.concatenate([outline, mesh.z[0], mesh.z[0, -1:] + 3e-6])
        low = 0.0
    z = np.unique(np.round(np.concatenate([[low], outline, [high]]), 9))
    z = z[np.insert(np.diff(z) > 1e-6, 0, True)]
    parts = [
        _divided(a, b, _WIDEST / 4 if b <= fine_below + 1e-9 else _WIDEST)
        for a, b in itertools.pairwise(z)
    ]
    z = np.concatenate([*parts, z[-1:]])
    inset = 1e-7
    return np.asarray(np.clip(z, z[0] + inset, z[-1] - inset))


def _divided(low: float, high: float, widest: float) -> Array:
    return np.asarray(np.linspace(low, high, int(np.ceil((high - low) / widest)) + 1)[:-1])


def _cut(mesh: WallMesh, z: Array, first: float, last: float) -> tuple[Array, Array, Array]:
    """Levels that meet the piece, and its smallest and largest radius at each, all in m."""
    reach = float(mesh.r.max()) * 1.001
    grid = np.linspace(0.0, reach, 400)

    def inside(r: Array, level: Array) -> NDArray[np.bool_]:
        s, _ = mesh.profile.locate(r, np.broadcast_to(level[:, None], r.shape))
        return np.asarray((s >= first - 1e-9) & (s <= last + 1e-9))

    flags = inside(np.broadcast_to(grid, (z.size, grid.size)), z)
    met = flags.any(axis=1)
    z, flags = z[met], flags[met]
    low = flags.argmax(axis=1)
    high = grid.size - 1 - flags[:, ::-1].argmax(axis=1)
    step = grid[1] - grid[0]
    near = np.where(low == 0, 0.0, _edge(inside, z, grid[low] - step, grid[low]))
    return z, near, _edge(inside, z, grid[high] + step, grid[high])


def _edge(inside: Any, z: Array, out: Array, within: Array) -> Array:
    for _ in range(24):
        middle = (out + within) / 2
        hit = inside(middle[:, None], z)[:, 0]
        within, out = np.where(hit, middle, within), np.where(hit, out, middle)
    return np.asarray(within)


def _interpolation(mesh: WallMesh, chosen: Array, first: int, r: Array, z: Array) -> Any:
    s, depth = mesh.profile.locate(r, z)
    s = np.clip(np.where(np.isnan(s), chosen[0], s), chosen[0], chosen[-1]).ravel()
    depth = np.where(np.isnan(depth), 0.0, depth).ravel()
    along, w_along = _quadratic(chosen, s)
    through, w_through = _quadratic(mesh.depth, depth)
    node = (first + along)[:, :, None] * mesh.depth.size + through[:, None, :]
    weight = w_along[:, :, None] * w_through[:, None, :]
    points = s.size
    pointers = np.arange(0, 9 * points + 1, 9)
    return sp.csr_matrix((weight.ravel(), node.ravel(), pointers), shape=(points, mesh.nodes))


def _quadratic(nodes: Array, at: Array) -> tuple[NDArray[np.int64], Array]:
    """Node numbers and Lagrange weights, both (points, 3), on quadratic elements."""
    ends = nodes[::2]
    element = np.clip(np.searchsorted(ends, at, side="right") - 1, 0, ends.size - 2)
    low, high = ends[element], ends[element + 1]
    t = 2 * (at - low) / (high - low) - 1
    weights = np.stack([t * (t - 1) / 2, 1 - t**2, t * (t + 1) / 2], axis=1)
    return 2 * element[:, None] + np.arange(3), weights
