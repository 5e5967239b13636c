"""Settings and state of the pour, and what is worked out for them."""

import functools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.optics.retardation import RetardationMap
from demo_app.optics.sightlines import Sightlines, sightlines
from demo_app.optics.upright import Upright, upright
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.physics.materials import Material
from demo_app.physics.plates import flaws
from demo_app.physics.revolve.cracking import intensity_weights
from demo_app.physics.revolve.pouring import (
    FULL,
    Filled,
    Pour,
    Pull,
    pulled,
)
from demo_app.physics.revolve.tumbler import Tumbler, tumbler
from demo_app.physics.revolve.verdict import ordinary_flaw
from demo_app.physics.strength import DEEPEST, HALF_PENNY
from demo_app.scenes.settings import choice, flag, number

Array = NDArray[np.float64]

DIAMETER_MM, HEIGHT_MM = 75.0, 95.0
"""Both tumblers."""
APART_MM = 105.0
"""From the middle of one tumbler to that of the other."""
AFTERWARDS_S = 40.0
"""What is watched after the pouring: the pull of a thick wall comes late."""


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="Of both tumblers.", live=False)
    thick_mm: float = number(
        "Thick wall", "mm", 6, 2, 12, step=0.5, help="Wall and base of one tumbler.", live=False
    )
    thin_mm: float = number(
        "Thin wall", "mm", 1.2, 0.8, 5, step=0.1, help="Wall and base of the other.", live=False
    )
    water_C: float = number(
        "Water", "°C", 100, 0, 100, step=5, help="Temperature of the water as it is poured."
    )
    tumbler_C: float = number(
        "Tumblers", "°C", 20, 0, 95, step=5, help="Of the glass before; warm it first.", live=False
    )
    pour_s: float = number(
        "Pour for", "s", 4, 1, 30, step=0.5, help="Time in which they are filled.", live=False
    )
    worn: bool = flag("Worn", True, help="Used for years, or new.", live=False)
    scratch_um: float = number(
        "Scratch",
        "µm",
        0,
        0,
        1000,
        step=50,
        help="Depth of a long scratch outside, where it is worst; 0: none.",
        live=False,
    )

    def __post_init__(self) -> None:
        """Refuse a thin wall that is not the thinner one and a scratch that is half through it."""
        if self.thin_mm >= self.thick_mm:
            raise InputError(
                "the thin tumbler is not thinner than the thick one",
                place="thin_mm",
                remedy=f"write less than {self.thick_mm:g}",
            )
        if self.scratch_um > 1e3 * DEEPEST * self.thin_mm:
            raise InputError(
                "the scratch is deeper than half the thin wall",
                place="scratch_um",
                remedy=f"write at most {1e3 * DEEPEST * self.thin_mm:g}",
            )


@dataclass(frozen=True)
class Cup:
    """One tumbler: its state, what pulls at it, its picture, and its peaks.

    Parameters
    ----------
    filled, pull : Filled, Pull
        Of this instant; of the last instant before it cracked.
    map : RetardationMap
        Its picture, upright.
    tension, inside, risk, ratio, nm : float
        Largest over the run: pull outside and inside (Pa), Weibull risk, K over K_IC, retardation.
    cracked_s : float or None
        When the stated scratch became a crack, s.
    """

    filled: Filled
    pull: Pull
    map: RetardationMap
    tension: float = 0.0
    inside: float = 0.0
    risk: float = 0.0
    ratio: float = 0.0
    nm: float = 0.0
    cracked_s: float | None = None


@dataclass(frozen=True)
class State:
    """One instant."""

    time_s: float
    step: int
    thick: Cup
    thin: Cup


def pour_of(settings: Settings) -> Pour:
    """What is poured."""
    return Pour(settings.water_C + ZERO_C, settings.pour_s)


def cups_of(settings: Settings) -> tuple[Tumbler, Tumbler]:
    """The thick and the thin tumbler."""
    glass = material(settings.glass)
    thick, thin = (
        tumbler(glass, 1e-3 * DIAMETER_MM, 1e-3 * wall, 1e-3 * HEIGHT_MM)
        for wall in (settings.thick_mm, settings.thin_mm)
    )
    return thick, thin


@functools.lru_cache(maxsize=8)
def lines_of(cup: Tumbler) -> tuple[Sightlines, Upright]:
    """Sightlines of a tumbler, and how its picture is set upright."""
    lines = sightlines(cup.piece.mesh, rays=72, samples=29, both_faces=True)
    still = lines.map(np.zeros((4, cup.piece.mesh.nodes)), cup.piece.material.stress_optic)
    return lines, upright(still)


@functools.lru_cache(maxsize=16)
def _flaw(cup: Tumbler, glass: Material, scratch_um: float) -> Array:
    if scratch_um > 0:
        return intensity_weights(cup.piece.mesh, 1e-6 * scratch_um)
    depth = min(ordinary_flaw(glass), DEEPEST * float(cup.piece.mesh.depth[-1]))
    return HALF_PENNY * intensity_weights(cup.piece.mesh, depth)


def seen(settings: Settings, cup: Tumbler, filled: Filled) -> Cup:
    """One instant of a tumbler; its peaks begin anew."""
    glass = cup.piece.material
    population = flaws(glass, "used" if settings.worn else "new")
    pull = pulled(cup, filled, population, _flaw(cup, glass, settings.scratch_um))
    lines, stood = lines_of(cup)
    return Cup(filled, pull, stood.turned(lines.map(pull.nodal, glass.stress_optic)))


def risen(before: Cup, now: Cup, time: float) -> Cup:
    """The tumbler `now`, at `time` (s), with the peaks of all instants `before` it."""
    pull = now.pull
    return Cup(
        now.filled,
        pull,
        now.map,
        max(before.tension, pull.outside),
        max(before.inside, pull.inside),
        max(before.risk, pull.risk),
        max(before.ratio, pull.ratio),
        max(before.nm, float(now.map.retardation_nm().max())),
        time if pull.ratio >= 1 else None,
    )


def halfway(cup: Tumbler) -> int:
    """Node column of the wall at half the height of the water."""
    height = cup.floor + FULL * (cup.mouth - cup.floor) / 2
    return int(np.argmin(np.abs(cup.piece.mesh.z[:, 0] - height)))
