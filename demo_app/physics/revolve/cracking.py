"""A ring crack in a wall of revolution: where flaws open, and where the crack runs."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.revolve.mesh import WallMesh
from demo_app.physics.strength import DEEPEST, edge_crack_points

Array = NDArray[np.float64]


@dataclass(frozen=True)
class WallStress:
    """Stress in the wall's own directions: along the midline (s) and inwards (n), Pa.

    Parameters
    ----------
    along, inward, shear, hoop : numpy.ndarray
        Shape (columns, rows).
    """

    along: Array
    inward: Array
    shear: Array
    hoop: Array


def wall_stress(mesh: WallMesh, nodal: Array) -> WallStress:
    """Turn nodal stress (4, nodes), Pa, into the wall's own directions."""
    radial, hoop, axial, shear = nodal.reshape(4, mesh.s.size, mesh.depth.size)
    c, s = np.cos(mesh.heading)[:, None], np.sin(mesh.heading)[:, None]
    return WallStress(
        radial * c**2 + axial * s**2 + 2 * shear * s * c,
        radial * s**2 + axial * c**2 - 2 * shear * s * c,
        (axial - radial) * s * c + shear * (c**2 - s**2),
        hoop,
    )


def intensity_weights(mesh: WallMesh, depth: float) -> Array:
    """Weights over the node rows, shape (rows,), whose sum with the stress is K of a ring crack.

    The ring crack is taken as a long edge crack of `depth` (m) in a strip as thick as the wall.
    """
    at, weight = edge_crack_points(depth, float(mesh.depth[-1]))
    element = np.clip(np.searchsorted(mesh.depth[::2], at) - 1, 0, mesh.depth[::2].size - 2)
    low, high = mesh.depth[2 * element], mesh.depth[2 * element + 2]
    t = 2 * (at - low) / (high - low) - 1
    rows = np.zeros(mesh.depth.size)
    for k, shape in enumerate((t * (t - 1) / 2, 1 - t**2, t * (t + 1) / 2)):
        np.add.at(rows, 2 * element + k, weight * shape)
    return rows


def at_place(mesh: WallMesh, field: Array, s: float) -> Array:
    """A field of shape (columns, ...) at arc length `s` (m), linear between node columns."""
    j = int(np.clip(np.searchsorted(mesh.s, s), 1, mesh.s.size - 1))
    share = (s - mesh.s[j - 1]) / max(mesh.s[j] - mesh.s[j - 1], 1e-12)
    share = min(max(share, 0.0), 1.0)
    return np.asarray(field[j - 1] * (1 - share) + field[j] * share)


def grown_depth(mesh: WallMesh, along: Array, depth: float, toughness: float) -> float:
    """Depth (m) to which a ring crack runs at once; the whole wall if nothing stops it.

    Parameters
    ----------
    mesh : WallMesh
        Its rows are where the crack may stop.
    along : numpy.ndarray
        Shape (rows,): stress across the crack, Pa.
    depth : float
        Present depth, m.
    toughness : float
        K_IC, Pa sqrt(m).
    """
    wall = float(mesh.depth[-1])
    trial = [d for d in mesh.depth if d > depth and d <= DEEPEST * wall]
    reached = depth
    for deeper in [depth, *trial]:
        if intensity_weights(mesh, deeper) @ along < toughness:
            return reached
        reached = deeper
    return wall


def path(mesh: WallMesh, stress: WallStress, start: float, depth: float) -> Array:
    """Arc length (m) of a crack at each node row, shape (rows,), from `start` on the outside.

    It goes straight in over the first `depth` (m) and then turns by ``-2 K_II / K_I``, the largest
    hoop stress at the tip (Erdogan and Sih 1963, J. Basic Eng. 85, 519) for small angles; K_II by
    the weight function of K_I. Below the range of the weight function it keeps its direction.
    """
    places, lean = [start], 0.0
    for i in range(mesh.depth.size - 1):
        here, front = places[-1], float(mesh.depth[i])
        if depth <= front <= DEEPEST * mesh.depth[-1]:
            weights = intensity_weights(mesh, front)
            opening = float(weights @ at_place(mesh, stress.along, here))
            sliding = float(weights @ at_place(mesh, stress.shear, here))
            lean = float(np.clip(-2 * sliding / opening, -1, 1)) if opening > 0 else lean
        step = lean * (mesh.depth[i + 1] - mesh.depth[i])
        places.append(float(np.clip(here + step, mesh.s[0], mesh.s[-1])))
    return np.asarray(places)
