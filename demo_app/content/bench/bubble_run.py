"""One flask cooled by a maker whose air, glass and hands are never quite the same."""

from dataclasses import dataclass, replace

import numpy as np

from demo_app.content.bench.answer import Array
from demo_app.physics.annealing_search import worked_at
from demo_app.physics.heat import ROOM
from demo_app.physics.materials import Material
from demo_app.physics.oven import Programme
from demo_app.physics.revolve.body import strained
from demo_app.physics.revolve.cooling import Cooling, Warmth, hot, step_seconds, surfaces
from demo_app.physics.revolve.cracking import WallStress
from demo_app.physics.revolve.flask import Flask, flask
from demo_app.physics.revolve.heat import heat_step
from demo_app.physics.revolve.proof import Proof, blow_odds, critical_scratch, proof
from demo_app.physics.revolve.verdict import SCORE_SPREAD
from demo_app.physics.strength import deeper_than

BLOWS = np.geomspace(0.05, 100.0, 34)
"""Energies for which odds are kept, J."""


@dataclass(frozen=True)
class Sizes:
    """A flask's measures, m."""

    diameter: float
    length: float
    base: float
    wall: float


@dataclass(frozen=True)
class Borne:
    """What one cold flask bears.

    Parameters
    ----------
    base_outside, base_inside : float
        Stress in the middle of the foot, Pa.
    scratch : float or None
        Depth of a scratch inside that becomes a crack by itself, m.
    blows : numpy.ndarray
        Odds of a break at each of `BLOWS`.
    """

    base_outside: float
    base_inside: float
    scratch: float | None
    blows: Array

    def blow_odds(self, energy: float) -> float:
        """Probability that a blow of `energy` (J) on the foot breaks it."""
        if energy <= 0:
            return 0.0
        return float(np.interp(np.log(energy), np.log(BLOWS), self.blows))

    def blow_for(self, odds: float) -> float:
        """Energy of the blow that breaks this share of such flasks, J."""
        return float(np.exp(np.interp(odds, self.blows, np.log(BLOWS))))

    def scratch_odds(self, depth: float) -> float:
        """Probability that a scratch meant to be `depth` (m) deep breaks it."""
        if self.scratch is None or depth <= 0:
            return 0.0
        return deeper_than(self.scratch, depth, SCORE_SPREAD)


def cooled_flask(
    glass: Material, sizes: Sizes, programme: Programme | None, air: float, *, coarse: bool = False
) -> Proof:
    """The flask, cooled in an oven's `programme` or (None) in air.

    Parameters
    ----------
    glass, sizes : Material, Sizes
        The flask.
    programme : Programme or None
        The oven's.
    air : float
        Factor on the cooling of the outside.
    coarse : bool
        Half as many elements along the wall, for a first answer.
    """
    what = flask(
        glass, sizes.diameter, sizes.length, sizes.base, sizes.wall, fineness=1.0 if coarse else 2.0
    )
    now = hot(what, worked_at(glass))
    while not now.warmth.cold:
        now = _step(what, now, programme, air)
    return proof(what, now.glass)


def _step(what: Flask, now: Cooling, programme: Programme | None, air: float) -> Cooling:
    seconds = step_seconds(what, now.warmth, programme)
    warmth = now.warmth
    around = ROOM if programme is None else programme.at(warmth.time + seconds / 2)
    ahead = np.maximum(warmth.temperature + warmth.rate * (seconds / 2), ROOM)
    outer, inner = surfaces(what, ahead, around, stirred=programme is not None)
    outer = replace(outer, coefficient=air * outer.coefficient)
    piece = what.piece
    later = heat_step(piece.heat, piece.material, warmth.temperature, seconds, outer, inner)
    rate = (later - warmth.temperature) / seconds
    glass = strained(piece, now.glass, later, seconds)
    return Cooling(Warmth(warmth.time + seconds, later, rate), glass)


def borne(done: Proof, stronger: float = 1.0) -> Borne:
    """What the flask bears, with all its locked-in stress times `stronger`."""
    if stronger != 1.0:
        found = done.wall
        wall = WallStress(*(stronger * part for part in (
            found.along, found.inward, found.shear, found.hoop)))  # fmt: skip
        done = Proof(done.what, wall, *critical_scratch(done.what, wall))
    along = done.wall.along[0]
    odds = np.array([blow_odds(done, float(energy)) for energy in BLOWS])
    return Borne(float(along[0]), float(along[-1]), done.scratch, odds)
