"""How a plate breaks, from the energy that it holds: whether a crack runs by itself, and the dice.

A crack that runs far releases the energy of a strip on either side of it. Where that pays for the
crack and more, it forks until one fixed share of what is left over of the tension's energy has
gone into new surface.
"""

import math
from dataclasses import dataclass

import numpy as np
from scipy.spatial import Voronoi

from demo_app.physics.column.wall import trapezoid
from demo_app.physics.materials import Array, Material

EDGE_STRIP = 0.2248
"""Width of the strip whose energy one cut edge releases, over the thickness: plane strain, parabola
through the thickness (finite elements, done again in the tests; far-apart limit of the fragments
of Nielsen 2016, Glass Struct. Eng. 1)."""
ENERGY_FRACTION = 0.330
"""The one energy fraction: share of the tension's energy, beyond what lets a crack run at all, that
becomes new surface. Fitted to 40 particles at 90 MPa of surface compression in 6 mm, which
GB 15763.2 (90 MPa) and EN 12150-1 (40 particles) ask of the same plate (from memory)."""
FIELD = 50e-3
"""Side of the field in which particles are counted, m (EN 12150-1)."""
FEWEST_RAYS = 3
"""Rays of a star that parts a plate in the middle."""


@dataclass(frozen=True)
class Held:
    """Elastic energy that a plate holds, J for each m2 of it.

    Parameters
    ----------
    total, tension : float
        All of it, and the part of it in glass under tension.
    """

    total: float
    tension: float


def held(material: Material, z: Array, stress: Array) -> Held:
    """Energy of an equal-sided stress through a plate of one glass.

    Parameters
    ----------
    material : Material
        Of the plate.
    z, stress : numpy.ndarray
        Shape (points,): places through the thickness (m) and stress there (Pa).
    """
    stiffness = material.youngs_modulus / (1 - material.poisson_ratio)
    weights = trapezoid(z)
    total, tension = (weights @ part**2 / stiffness for part in (stress, np.maximum(stress, 0.0)))
    return Held(float(total), float(tension))


def parabola(material: Material, thickness: float, surface: float) -> Held:
    """Energy of a parabola with a compression of `surface` (Pa) at its faces.

    ``(1 - nu) s^2 d / (5 E)`` (Nielsen 2016, from memory); tension has 2 / (3 sqrt(3)) of it.
    """
    total = (1 - material.poisson_ratio) * surface**2 * thickness / (5 * material.youngs_modulus)
    return Held(total, total * 2 / (3 * math.sqrt(3)))


def bent(material: Material, thickness: float, surface: float) -> Held:
    """Energy of a plate bent one way to `surface` (Pa): ``s^2 d / (6 E)``, half of it tension."""
    total = surface**2 * thickness / (6 * material.youngs_modulus)
    return Held(total, total / 2)


def driving(energy: Held) -> float:
    """Energy released for each m2 of a crack that runs far from any other, J/m2."""
    return 2 * EDGE_STRIP * energy.total


def runs_by_itself(material: Material, energy: Held) -> bool:
    """Whether a crack that has reached the tension runs on without a load."""
    return driving(energy) >= material.fracture_energy


def crack_length(material: Material, thickness: float, energy: Held) -> float:
    """Length of crack for each m2 of plate, 1/m; zero if no crack runs by itself."""
    if not runs_by_itself(material, energy):
        return 0.0
    spare = energy.tension * (1 - material.fracture_energy / driving(energy))
    return ENERGY_FRACTION * spare / (material.fracture_energy * thickness)


def die_side(material: Material, thickness: float, energy: Held) -> float | None:
    """Side of square dice, m: two edges a side belong to two dice each; None: no dice."""
    length = crack_length(material, thickness, energy)
    return 2 / length if length > 0 else None


def particles(side: float | None) -> float:
    """Dice of a `side` (m) in the field of the standard; one piece if there are none."""
    return 1.0 if side is None else max(1.0, (FIELD / side) ** 2)


Cells = tuple[Array, ...]
"""Outlines, each of shape (corners, 2), m, not closed."""


def dice(width: float, height: float, side: float, seed: int = 1) -> Cells:
    """Dice that fill a plate around (0, 0): as many as have the mean area ``side**2``."""
    return _clipped(dice_seeds(width, height, side, seed), width, height)


def dice_count(area: float, side: float) -> int:
    """Dice of a `side` (m) in a plate of an `area` (m2), two at least."""
    return max(2, round(area / side**2))


def dice_seeds(width: float, height: float, side: float, seed: int = 1) -> Array:
    """Places, shape (dice, 2), m, to which each die's points are nearest."""
    count = dice_count(width * height, side)
    # Points that keep apart: the plane's most irrational steps (Roberts 2018), then a little luck.
    golden = 1.32471795724474602596
    along = np.arange(1, count + 1)[:, None] * np.array([1 / golden, 1 / golden**2]) % 1.0
    luck = np.random.default_rng(seed).uniform(-0.3, 0.3, (count, 2)) * side
    size = np.array([width, height])
    inside = 0.5 * size - 1e-3 * side
    return np.asarray(np.clip((along - 0.5) * size + luck, -inside, inside))


def strips(width: float, height: float, inner: float, side: float | None, seed: int = 1) -> Cells:
    """Long shards of a plate that was bent in one direction, x.

    Cracks run across the tension, so one family of them takes all the length of crack: the shards
    are half as wide as dice would be. Outside the `inner` span hardly any energy is held.

    Parameters
    ----------
    width, height : float
        Of the plate, m.
    inner : float
        Length over which it was bent in full, m.
    side : float or None
        Side that dice of this energy would have, m; None: one crack parts the plate.
    seed : int
        Of the pattern.
    """
    count = 0 if side is None else round(2 * inner / side)
    if count == 0:
        x = np.array([-width / 4, width / 4])
    else:
        shard = inner / count
        x = (np.arange(count + 2) - (count + 1) / 2) * shard
    luck = np.random.default_rng(seed).uniform(-0.5, 0.5, (x.size, 2))
    nearest = float(np.diff(x).min())
    # Neighbours of one height part straight across; this much makes shards wedges, no more.
    slant = min(0.25 * height, 1.2 * nearest**2 / height)
    return _clipped(
        np.column_stack([x + 0.3 * nearest * luck[:, 0], slant * luck[:, 1]]), width, height
    )


def star(width: float, height: float, length: float, seed: int = 1) -> Cells:
    """Shards between rays from the middle of a plate that was hit there.

    Parameters
    ----------
    width, height : float
        Of the plate, m.
    length : float
        Of all cracks together, m; three rays at least.
    seed : int
        Of the pattern.
    """
    reach = (width + height) / 4
    rays = max(FEWEST_RAYS, round(length / reach))
    luck = np.random.default_rng(seed).uniform(-0.3, 0.3, rays)
    angle = (np.arange(rays) + luck) * 2 * math.pi / rays
    near = 0.05 * min(width, height)
    return _clipped(near * np.column_stack([np.cos(angle), np.sin(angle)]), width, height)


def _clipped(seeds: Array, width: float, height: float) -> Cells:
    """Voronoi cells of `seeds` in the plate: mirror images of them draw its edges."""
    x, y = seeds[:, 0], seeds[:, 1]
    images = [(x, y), (width - x, y), (-width - x, y), (x, height - y), (x, -height - y)]
    found = Voronoi(np.concatenate([np.column_stack(image) for image in images]))
    regions = [found.regions[found.point_region[k]] for k in range(x.size)]
    return tuple(np.asarray(found.vertices[region]) for region in regions)
