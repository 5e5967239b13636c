"""The two tests of a flask: a blow on its foot from outside, and a scratch inside.

The flask lies loosely in a hand, so its own mass withstands the blow. The blow is soft and slow
against the flask's swing: it bends as under a load that is spread evenly over its mass, and the
energy that counts is what its bending holds. A hard, sharp blow bruises the glass first.
"""

import functools
import math
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import brentq

from demo_app.physics.plates import flaws
from demo_app.physics.revolve.body import Glass, nodal_stress
from demo_app.physics.revolve.cracking import WallStress, intensity_weights, wall_stress
from demo_app.physics.revolve.elastic import isotropic
from demo_app.physics.revolve.flask import Flask
from demo_app.physics.strength import DEEPEST, Handled, probability

Array = NDArray[np.float64]

PATCH = 0.4
"""Radius of the spot that a hammer with a leather face meets, over that of the round foot."""
UNTOUCHED = 4.0
"""Strength of a fire-polished surface that nothing has touched, over that of new, handled glass:
a few hundred MPa against some tens (common practice)."""
_DEPTHS = 48


@dataclass(frozen=True, eq=False)
class Push:
    """A flask that is pushed on the middle of its foot with one newton and withstands by its mass.

    Parameters
    ----------
    wall : WallStress
        Stress through the wall, Pa for each N.
    give : float
        Twice the energy that its bending holds, J/N2.
    """

    wall: WallStress
    give: float

    @property
    def outside(self) -> Array:
        """Stress along and around at the outer surface, shape (2, columns), Pa for each N."""
        return _both(self.wall)[..., 0]

    @property
    def inside(self) -> Array:
        """The same at the inner surface."""
        return _both(self.wall)[..., -1]

    def energy(self, force: float) -> float:
        """Energy that bends the flask under `force` (N), J."""
        return 0.5 * self.give * force**2

    def force(self, energy: float) -> float:
        """Force of a blow of `energy` (J), N."""
        return math.sqrt(2 * energy / self.give)


@functools.lru_cache(maxsize=8)
def push(what: Flask) -> Push:
    """Flask pushed by one newton, spread evenly over a spot of the radius `PATCH`."""
    piece, mesh, form = what.piece, what.piece.mesh, what.piece.stress
    patch = PATCH * float(mesh.r.max())
    # A rim a quarter as wide as the spot keeps the quadrature's steps out of the answer.
    pressure = np.clip((1.125 * patch - mesh.outer.r) / (0.25 * patch), 0.0, 1.0)
    pressure[mesh.outer.z > patch] = 0.0
    pushed = piece.heat.outer.load @ pressure
    mass = piece.heat.value.T @ mesh.wall.weight
    force = np.zeros(2 * mesh.nodes)
    force[1::2] = pushed / pushed.sum() - mass / mass.sum()
    moved = piece.solid.solve(force)
    stress = isotropic(
        form.strains(moved), piece.material.bulk_modulus, piece.material.shear_modulus
    )
    wall = wall_stress(mesh, np.asarray((form.recover @ stress.T).T))
    return Push(wall, float(force @ moved))


@dataclass(frozen=True, eq=False)
class Proof:
    """What a cold flask bears.

    Parameters
    ----------
    what : Flask
        The flask.
    wall : WallStress
        Its stress, Pa.
    scratch : float or None
        Depth of a long scratch inside that becomes a crack by itself, m; None: no depth up to half
        the wall does.
    column : int
        Node column where that is, or where it comes nearest.
    """

    what: Flask
    wall: WallStress
    scratch: float | None
    column: int


def proof(what: Flask, glass: Glass) -> Proof:
    """What the flask bears with the stress of `glass`."""
    wall = wall_stress(what.piece.mesh, nodal_stress(what.piece, glass))
    depth, column = critical_scratch(what, wall)
    return Proof(what, wall, depth, column)


def critical_scratch(what: Flask, wall: WallStress) -> tuple[float | None, int]:
    """Depth (m) of the shallowest long scratch inside that runs by itself, and its node column.

    K by the weight function of an edge crack in the computed stress through the wall, the scratch
    lying across the larger of the two tensions.
    """
    mesh = what.piece.mesh
    full = float(mesh.depth[-1])
    share = mesh.profile.thickness(mesh.s) / full
    relative = DEEPEST * full * np.geomspace(2e-3, 1.0, _DEPTHS)
    k = np.sqrt(share) * _ratios(what, wall, relative).max(axis=0)
    cracks = k >= 1.0
    column = int(k.max(axis=0).argmax())
    if not cracks.any():
        return None, column
    first = np.where(cracks.any(axis=0), cracks.argmax(axis=0), _DEPTHS)
    best = None
    for j in np.flatnonzero(first < _DEPTHS):
        i = int(first[j])
        depth = relative[i] * share[j]
        if i > 0:
            part = (1.0 - k[i - 1, j]) / (k[i, j] - k[i - 1, j])
            depth = share[j] * relative[i - 1] * (relative[i] / relative[i - 1]) ** part
        if best is None or depth < best:
            best, column = float(depth), int(j)
    return best, column


def _both(wall: WallStress) -> Array:
    """Stress along and around, shape (2, columns, rows)."""
    return np.stack([wall.along, wall.hoop])


def _ratios(what: Flask, wall: WallStress, depths: Array) -> Array:
    """K over K_IC of long scratches inside a wall as thick as the foot, (2, depths, columns)."""
    mesh = what.piece.mesh
    # Rows counted from the inside; the mesh is the same from both faces.
    turned = replace(mesh, depth=float(mesh.depth[-1]) - mesh.depth[::-1])
    weights = np.stack([intensity_weights(turned, float(d)) for d in depths])
    found = np.einsum("dr,wcr->wdc", weights, _both(wall)[..., ::-1])
    return np.asarray(found / what.piece.material.fracture_toughness)


def opening_blow(done: Proof, depth: float) -> float:
    """Energy (J) of a blow outside that opens a long scratch of `depth` (m) inside.

    Wherever in the round foot that takes least; K grows in proportion to the blow's force. Zero if
    the locked-in stress opens it already; a scratch deeper than half the wall counts as half.
    """
    what, mesh = done.what, done.what.piece.mesh
    full, pushed = float(mesh.depth[-1]), push(done.what)
    least = math.inf
    for j in np.flatnonzero(mesh.s <= mesh.profile.corners()[1]):
        share = float(mesh.profile.thickness(mesh.s[j : j + 1])[0]) / full
        depths = np.array([min(depth / share, DEEPEST * full)])
        locked, added = (
            math.sqrt(share) * _ratios(what, wall, depths)[:, 0, j]
            for wall in (done.wall, pushed.wall)
        )
        forces = (1.0 - locked[added > 0]) / added[added > 0]
        least = min(least, float(forces.min(initial=math.inf)))
    return pushed.energy(max(0.0, least))


def blow_risk(done: Proof, force: float) -> tuple[float, float]:
    """Weibull risk outside and inside under a blow of `force` (N) on the foot.

    Outside there are the flaws of used ware; inside nothing has touched the glass. Compression
    that was locked in is subtracted from what the blow adds, tension added.
    """
    what, mesh, heat = done.what, done.what.piece.mesh, done.what.piece.heat
    used, new = (flaws(what.piece.material, wear) for wear in ("used", "new"))
    pristine = Handled(new.modulus, UNTOUCHED * new.scale)
    pushed = push(what)
    risks = []
    for face, points, row, added, flawed in (
        (heat.outer, mesh.outer, 0, pushed.outside, used),
        (heat.inner, mesh.inner, -1, pushed.inside, pristine),
    ):
        larger = (_both(done.wall)[..., row] + force * added).max(axis=0)
        there = face.value @ np.repeat(larger, mesh.depth.size)
        risks.append(flawed.risk(there, points.weight))
    return risks[0], risks[1]


def blow_odds(done: Proof, energy: float) -> float:
    """Probability that a blow of `energy` (J) breaks the flask."""
    return probability(sum(blow_risk(done, push(done.what).force(energy))))


def blow_limit(done: Proof) -> float:
    """Energy of a blow that breaks half of such flasks, J."""
    half = math.log(2)

    def excess(log_force: float) -> float:
        return math.log(max(sum(blow_risk(done, math.exp(log_force))), 1e-300)) - math.log(half)

    low, high = 0.0, 16.0
    if excess(low) > 0:
        return 0.0
    return push(done.what).energy(math.exp(float(brentq(excess, low, high, xtol=1e-6))))
