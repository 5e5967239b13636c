"""Settings and state of the bubble, and what is worked out once for them."""

import functools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import RetardationMap
from demo_app.optics.sightlines import Sightlines, sightlines
from demo_app.optics.slices import through_slices
from demo_app.physics.annealing_search import worked_at
from demo_app.physics.material_files import glasses, material
from demo_app.physics.oven import Programme
from demo_app.physics.revolve import proof as proving
from demo_app.physics.revolve.body import nodal_stress
from demo_app.physics.revolve.cooling import Cooling, cold_after
from demo_app.physics.revolve.flask import Flask, flask, flask_profile
from demo_app.physics.revolve.foreseen import Foreseen, foreseen, programme_for
from demo_app.physics.revolve.proof import Proof
from demo_app.physics.revolve.shattering import Shards, shards
from demo_app.physics.revolve.verdict import SCORE_SPREAD
from demo_app.physics.strength import deeper_than
from demo_app.scenes.settings import choice, number

Array = NDArray[np.float64]

PLACES = ("base_outside", "base_inside", "wall_outside", "wall_inside")


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What it is made of.", live=False)
    outer_diameter_mm: float = number(
        "Diameter", "mm", 60, 30, 100, help="Outer diameter of the flask.", live=False
    )
    length_mm: float = number(
        "Length", "mm", 130, 60, 250, step=5, help="From the foot to the mouth.", live=False
    )
    base_mm: float = number(
        "Foot", "mm", 10, 2, 100, step=0.5, help="Thickness in the middle of the foot.", live=False
    )
    wall_mm: float = number(
        "Wall", "mm", 2, 1, 6, step=0.1, help="Thickness of the wall.", live=False
    )
    way: str = choice(
        "Cooled", "air", ("air", "oven"), help="In the open, or by an oven programme.", live=False
    )
    test: str = choice(
        "Test", "none", ("none", "blow", "scratch"), help="What is done to the cold flask."
    )
    blow_J: float = number(
        "Blow", "J", 3, 0, 50, step=0.5, help="Energy of a soft blow on the foot, from outside."
    )
    scratch_um: float = number(
        "Scratch", "µm", 150, 0, 1000, step=10, help="Depth of a long scratch inside the foot."
    )

    def __post_init__(self) -> None:
        """Refuse a shape that cannot be."""
        flask_profile(*(1e-3 * size for size in self.sizes))

    @property
    def sizes(self) -> tuple[float, float, float, float]:
        """Diameter, length, foot and wall, mm."""
        return self.outer_diameter_mm, self.length_mm, self.base_mm, self.wall_mm


@dataclass(frozen=True)
class State:
    """One instant; `step` counts from the maker's hands."""

    step: int
    cooling: Cooling

    @property
    def time_s(self) -> float:
        """Model time, s."""
        return self.cooling.warmth.time

    @property
    def cold(self) -> bool:
        """Whether the full answer is there."""
        return self.cooling.warmth.cold


def flask_of(settings: Settings) -> Flask:
    """The flask that is meant."""
    diameter, length, base, wall = (1e-3 * size for size in settings.sizes)
    return flask(material(settings.glass), diameter, length, base, wall)


def programme_of(settings: Settings) -> Programme | None:
    """What the oven does; None in air."""
    if settings.way == "air":
        return None
    return programme_for(material(settings.glass), 1e-3 * settings.base_mm)


def end_s(settings: Settings) -> float:
    """When the flask is cold, s."""
    fresh = worked_at(material(settings.glass))
    return cold_after(flask_of(settings), fresh, programme_of(settings))


def first_answer(settings: Settings) -> Foreseen:
    """What plates twice as thick say."""
    glass = material(settings.glass)
    base, wall = 1e-3 * settings.base_mm, 1e-3 * settings.wall_mm
    return foreseen(glass, base, wall, programme_of(settings))


@functools.lru_cache(maxsize=8)
def proof_of(what: Flask, cooling: Cooling) -> Proof:
    """What the flask bears with its present stress."""
    return proving.proof(what, cooling.glass)


def stresses_MPa(what: Flask, cooling: Cooling) -> dict[str, float]:
    """Present stress in the middle of the foot and half-way up the wall, outside and inside."""
    along = 1e-6 * proof_of(what, cooling).wall.along
    found = (along[0, 0], along[0, -1], along[what.middle, 0], along[what.middle, -1])
    return dict(zip(PLACES, map(float, found), strict=True))


def odds(settings: Settings, done: Proof) -> float:
    """Probability that the chosen test breaks the cold flask."""
    if settings.test == "blow":
        return proving.blow_odds(done, settings.blow_J)
    if settings.test == "scratch" and settings.scratch_um > 0 and done.scratch is not None:
        return deeper_than(done.scratch, 1e-6 * settings.scratch_um, SCORE_SPREAD)
    return 0.0


def broken(settings: Settings, state: State) -> bool:
    """Whether the chosen test, as stated, breaks the flask."""
    return state.cold and odds(settings, proof_of(flask_of(settings), state.cooling)) >= 0.5


@functools.lru_cache(maxsize=4)
def shards_of(done: Proof, blow: float) -> Shards:
    """What it breaks into."""
    return shards(done, blow)


@functools.lru_cache(maxsize=4)
def lines_of(what: Flask) -> Sightlines:
    """Its sightlines, close in the foot."""
    foot = 1.2 * float(what.piece.mesh.r.max())
    return sightlines(what.piece.mesh, both_faces=True, fine_below=foot)


@functools.lru_cache(maxsize=4)
def map_of(what: Flask, cooling: Cooling) -> RetardationMap:
    """Its light: a product of slices wherever the sum along the ray errs."""
    nodal = nodal_stress(what.piece, cooling.glass)
    return seen(what, nodal)


@functools.lru_cache(maxsize=4)
def map_of_pieces(what: Flask, cooling: Cooling, done: Proof, blow: float) -> RetardationMap:
    """Its light once it has broken: where dice fly, they let go of the stress of the wall."""
    kept = ~np.isfinite(shards_of(done, blow).side)
    rows = what.piece.mesh.depth.size
    nodal = nodal_stress(what.piece, cooling.glass) * np.repeat(kept, rows)
    return seen(what, nodal)


def seen(what: Flask, nodal: Array) -> RetardationMap:
    """Its light with a nodal stress (4, nodes), Pa."""
    lines, optic = lines_of(what), what.piece.material.stress_optic
    return through_slices(lines, lines.map(nodal, optic), nodal, optic)
