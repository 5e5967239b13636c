"""Whether the bottle cracks: stress intensity of the stated flaws, and the odds over all flaws."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.heat import ROOM
from demo_app.physics.materials import Material
from demo_app.physics.revolve.body import Body, Glass, body, nodal_stress
from demo_app.physics.revolve.cracking import (
    WallStress,
    at_place,
    intensity_weights,
    wall_stress,
)
from demo_app.physics.revolve.mesh import graded, through, wall_mesh
from demo_app.physics.revolve.profile import Profile
from demo_app.physics.strength import (
    DEEPEST,
    HALF_PENNY,
    critical_depth,
    deeper_than,
    handled,
    probability,
)

Array = NDArray[np.float64]

SCORE_SPREAD = 0.3
"""Standard deviation of the logarithm of a score's depth (assumed: hand scoring)."""
HOT_AREA = 0.0013
"""Area whose median largest flaw stands for the ordinary flaw, m2: a wet ring of 6 mm around a
bottle of 70 mm, so that the verdict and even odds go together."""


@dataclass(frozen=True, eq=False)
class Bottle:
    """A bottle made ready: its body, its flaws and where they are.

    Parameters
    ----------
    piece : Body
        The whole bottle.
    ring, score : float
        Arc length of the middle of the ring and of the score, m.
    score_depth : float
        m; zero: no score.
    flaw_depths : numpy.ndarray
        Shape (k,), m: score depths for which K is followed.
    flaw_weights : numpy.ndarray
        Shape (k, rows): their `intensity_weights`.
    score_weights, plain_weights : numpy.ndarray
        Shape (rows,): those of the score (zero if there is none) and of the ordinary flaw, which is
        a half-penny.
    """

    piece: Body
    ring: float
    score: float
    score_depth: float
    flaw_depths: Array
    flaw_weights: Array
    score_weights: Array
    plain_weights: Array


def bottle_of(
    material: Material, profile: Profile, ring: float, score_offset: float, score_depth: float
) -> Bottle:
    """Bottle with a ring at height `ring` and a score `score_offset` from it, all in m."""
    at = profile.arc_length_at_height(ring)
    score = float(np.clip(at + score_offset, 0.02 * profile.length, 0.98 * profile.length))
    centre = score if score_depth > 0 else at
    ends = graded(profile, centre, fine=1e-3, flat=0.012, coarse=0.008)
    mesh = wall_mesh(profile, ends, through(profile.wall, 0.12e-3, 6))
    piece = body(material, mesh)
    deepest = DEEPEST * profile.wall
    nominal = min(score_depth or ordinary_flaw(material), deepest)
    depths = np.unique(np.minimum(nominal * 2.0 ** np.arange(-2, 2.5, 0.5), deepest))
    weights = np.stack([intensity_weights(mesh, depth) for depth in depths])
    scored = intensity_weights(mesh, score_depth) if score_depth > 0 else np.zeros(mesh.depth.size)
    plain = HALF_PENNY * intensity_weights(mesh, ordinary_flaw(material))
    return Bottle(piece, at, score, score_depth, depths, weights, scored, plain)


def ordinary_flaw(material: Material) -> float:
    """Depth (m) of the half-penny flaw that decides for unscored, handled glass.

    The median largest flaw on `HOT_AREA` of the Weibull population of handled ware.
    """
    population = handled(material.characteristic_strength, material.weibull_modulus)
    strength = population.median_strength(HOT_AREA)
    return critical_depth(material.fracture_toughness, strength, 1.12 * HALF_PENNY)


@dataclass(frozen=True)
class Peaks:
    """Largest values over the run, the bottle taken as uncracked.

    Parameters
    ----------
    surface : float
        Temperature of the outer surface, K.
    ratio : float
        K over K_IC of the stated flaw.
    by_depth : numpy.ndarray
        Shape (k,): K over K_IC of scores of the bottle's `flaw_depths`.
    risk : float
        Weibull risk of the handled outer surface.
    floated : float
        Largest share of the drop that floated on vapour.
    """

    surface: float
    ratio: float
    by_depth: Array
    risk: float
    floated: float = 0.0


def no_peaks(bottle: Bottle) -> Peaks:
    """Peaks of the cold bottle."""
    return Peaks(ROOM, 0.0, np.zeros(bottle.flaw_depths.size), 0.0)


def weighed(bottle: Bottle, glass: Glass, old: Peaks, floating: float) -> tuple[float, Peaks]:
    """K over K_IC of the stated flaw in the uncracked `glass`, and the peaks so far.

    Parameters
    ----------
    bottle : Bottle
        Its flaws.
    glass : Glass
        State of the uncracked bottle.
    old : Peaks
        Before this step.
    floating : float
        Share of the drop that floats now.
    """
    mesh, material = bottle.piece.mesh, bottle.piece.material
    stress = wall_stress(mesh, nodal_stress(bottle.piece, glass))
    under = at_place(mesh, stress.along, bottle.score)
    by_depth = bottle.flaw_weights @ under / material.fracture_toughness
    ratio, _ = worst(bottle, stress)
    outer = bottle.piece.heat.outer
    pulls = np.maximum(outer.value @ _outside(stress.along), outer.value @ _outside(stress.hoop))
    population = handled(material.characteristic_strength, material.weibull_modulus)
    risk = population.risk(pulls, mesh.outer.weight)
    hottest = float(glass.temperature.reshape(-1, mesh.depth.size)[:, 0].max())
    peaks = Peaks(
        max(old.surface, hottest),
        max(old.ratio, ratio),
        np.maximum(old.by_depth, by_depth),
        max(old.risk, risk),
        max(old.floated, floating),
    )
    return ratio, peaks


def _outside(field: Array) -> Array:
    """Nodal vector that holds a field's outer row in every row of its column."""
    return np.repeat(field[:, 0], field.shape[1])


def worst(bottle: Bottle, stress: WallStress) -> tuple[float, float]:
    """Largest K over K_IC of the stated flaws, and the arc length where it is, m."""
    mesh, material = bottle.piece.mesh, bottle.piece.material
    toughness = material.fracture_toughness
    plain = stress.along @ bottle.plain_weights / toughness
    j = int(plain.argmax())
    worst, where = float(plain[j]), float(mesh.s[j])
    if bottle.score_depth > 0:
        under = at_place(mesh, stress.along, bottle.score)
        scored = float(bottle.score_weights @ under) / toughness
        if scored > min(worst, 0.0) and scored >= worst:
            worst, where = scored, bottle.score
    return worst, where


def break_probability(bottle: Bottle, peaks: Peaks) -> float:
    """Probability that the bottle has cracked by now, over both flaw populations.

    The score's depth is log-normal about the stated one with `SCORE_SPREAD`; the handled outer
    surface is a Weibull population. The inside is taken as untouched.
    """
    whole = 1 - probability(peaks.risk)
    if bottle.score_depth <= 0:
        return 1 - whole
    enough = peaks.by_depth >= 1.0
    needed = np.inf
    if enough.any():
        i = int(enough.argmax())
        needed = float(bottle.flaw_depths[i])
        if i > 0:
            a, b = peaks.by_depth[i - 1], peaks.by_depth[i]
            share = (1.0 - a) / (b - a)
            low = bottle.flaw_depths[i - 1]
            needed = float(low * (needed / low) ** share)
    return 1 - whole * (1 - deeper_than(needed, bottle.score_depth, SCORE_SPREAD))
