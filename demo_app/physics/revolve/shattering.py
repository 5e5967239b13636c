"""How a flask breaks, from the energy that its wall holds at each place."""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.spatial import Voronoi

from demo_app.physics.fragments import EDGE_STRIP, Held, die_side, held
from demo_app.physics.revolve.body import Glass
from demo_app.physics.revolve.flask import Flask
from demo_app.physics.revolve.proof import Proof

Array = NDArray[np.float64]

_MOST = 700
"""Shards that are drawn at most."""
_PLASTIC = 1.22074408460575947536
"""Its powers give points in space that keep apart (Roberts 2018)."""


def stored_energy(what: Flask, glass: Glass) -> float:
    """Elastic energy of a cold flask, J."""
    material, stress = what.piece.material, glass.stress
    mean = stress[:3].mean(axis=0)
    deviator = stress.copy()
    deviator[:3] -= mean
    square = (deviator[:3] ** 2).sum(axis=0) + 2 * deviator[3] ** 2
    density = mean**2 / (2 * material.bulk_modulus) + square / (4 * material.shear_modulus)
    return float(what.piece.mesh.wall.weight @ density)


@dataclass(frozen=True)
class Shards:
    """What a flask breaks into.

    Parameters
    ----------
    side : numpy.ndarray
        Shape (columns,): side of the dice at each node column, m; infinite where no crack runs by
        itself.
    pieces : float
        Number of dice.
    """

    side: Array
    pieces: float

    @property
    def by_itself(self) -> bool:
        """Whether a crack that has reached the tension runs on without a load."""
        return bool(np.isfinite(self.side).any())


def shards(done: Proof, blow: float = 0.0) -> Shards:
    """Shards of a cold flask, broken by a scratch or by a `blow` (J).

    The plate's law at each place of the wall, with the stress through it there. A blow's energy is
    spread over the round foot, half of it tension. Cracks that are closer than the two strips that
    they release find nothing left, so dice are never smaller.
    """
    what, mesh = done.what, done.what.piece.mesh
    material = what.piece.material
    thickness = mesh.profile.thickness(mesh.s)
    # Tension counts when all of a plate's directions share it: the mean of the two.
    stress = (done.wall.along + done.wall.hoop) / 2
    bent = blow / (2 * math.pi * float(mesh.r.max()) ** 2)
    foot = mesh.s <= mesh.profile.corners()[1]
    side = np.full(mesh.s.size, np.inf)
    for j, wall in enumerate(thickness):
        locked = held(material, mesh.depth * (wall / mesh.depth[-1]), stress[j])
        more = bent if foot[j] else 0.0
        energy = Held(locked.total + more, locked.tension + more / 2)
        found = die_side(material, float(wall), energy)
        side[j] = np.inf if found is None else max(found, 2 * EDGE_STRIP * wall)
    area = 2 * math.pi * mesh.r[:, 0] * np.gradient(mesh.s)
    return Shards(side, float(np.sum(area / side**2)))


def cells(done: Proof, broken: Shards) -> tuple[Array, ...]:
    """Outlines of the shards as seen from the side, each (corners, 2) of z and x, m.

    Seen flat: towards the outline's edge a real shard would look narrower.
    """
    mesh = done.what.piece.mesh
    z, half = mesh.z[:, 0], mesh.r[:, 0]
    length, radius = float(z.max()), float(half.max())
    seeds = _seeds(z, half, broken.side)
    low, high = np.array([0.0, -radius]), np.array([length, radius])
    images = [seeds]
    for axis in (0, 1):
        for edge in (low, high):
            mirrored = seeds.copy()
            mirrored[:, axis] = 2 * edge[axis] - mirrored[:, axis]
            images.append(mirrored)
    found = Voronoi(np.concatenate(images))
    outlines = []
    for k in range(len(seeds)):
        corners = _divided(found.vertices[found.regions[found.point_region[k]]])
        x = np.clip(corners[:, 0], 0.0, length)
        limit = np.interp(x, z, half)
        outlines.append(np.column_stack([x, np.clip(corners[:, 1], -limit, limit)]))
    return tuple(outlines)


def _divided(corners: Array, parts: int = 8) -> Array:
    """Corners with points between them, so that an edge can follow the outline."""
    share = (np.arange(parts) / parts)[None, :, None]
    ends = np.roll(corners, -1, axis=0)
    return (corners[:, None] + share * (ends - corners)[:, None]).reshape(-1, 2)


def _seeds(z: Array, half: Array, side: Array) -> Array:
    """Points (z, x), m, as dense as the dice are; a few where there are none."""
    length, radius = float(z.max()), float(half.max())
    largest = 0.6 * radius
    local = np.minimum(side, largest)
    finest = max(float(local.min()), math.sqrt(2 * length * radius / (4 * _MOST)))
    count = math.ceil(2 * length * radius / finest**2)
    steps = np.arange(1, count + 1)[:, None] / _PLASTIC ** np.array([1.0, 2.0, 3.0]) % 1.0
    place = steps[:, 0] * length
    across = (2 * steps[:, 1] - 1) * radius
    kept = steps[:, 2] < (finest / np.maximum(np.interp(place, z, local), finest)) ** 2
    kept &= np.abs(across) < 0.98 * np.interp(place, z, half)
    return np.column_stack([place[kept], across[kept]])
