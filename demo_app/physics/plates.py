"""How much a plate bears: strength of its surface, static fatigue, wear, thermal shock.

A surface under compression breaks when a load has taken the compression away and then found the
flaws: its strength is that of the flaws plus the compression. Time and wear weaken the flaws' part
alone (EN 16612 takes the same sum).
"""

import math
from dataclasses import dataclass
from typing import Literal

import numpy as np
from scipy.optimize import brentq

from demo_app.physics.materials import Array, Material
from demo_app.physics.strength import (
    FRACTILE,
    TEST_AREA,
    Handled,
    handled,
    probability,
)

FATIGUE_EXPONENT = 16.0
"""n of static fatigue of soda-lime glass in moist air (EN 16612; literature 16 to 18)."""
SHORT = 5.0
"""Duration of a short load, s: a gust, k_mod = 1 in EN 16612."""
STAYS = 1800.0
"""Duration of a load that stays, s: somebody who works on the glass, 30 min, k_mod = 0.69 in EN
16612 (from memory)."""
WEATHERED_MODULUS = 7.0
WEATHERED_FLAWS = 2.86e-53
"""Surface flaws of weathered windows, m (no unit) and k (m12/N7), for a load of 60 s: ASTM E1300,
after Beason and Morgan 1984, J. Struct. Eng. 110 (from memory)."""
WEATHERED_SECONDS = 60.0

_FLOAT = 45e6
"""Characteristic strength of the float that weathered, Pa (EN 572-1)."""

Wear = Literal["new", "used"]


def fatigue_factor(seconds: float) -> float:
    """k_mod: strength under a load that lasts `seconds`, over that under a short one.

    EN 16612:2019: ``0.663 t**(-1/16)``, t in hours, at most 1.
    """
    return min(1.0, 0.663 * math.pow(seconds / 3600.0, -1 / FATIGUE_EXPONENT))


def flaws(material: Material, wear: Wear) -> Handled:
    """Surface flaws of plain glass as strengths under a short load.

    New glass has the material's characteristic strength (EN 572-1: 45 MPa for float). Used glass
    is weathered soda-lime, weaker by the same share in other glasses (assumed).
    """
    new = handled(material.characteristic_strength, material.weibull_modulus)
    if wear == "new":
        return new
    scale = math.pow(WEATHERED_FLAWS, -1 / WEATHERED_MODULUS)
    short = scale * fatigue_factor(SHORT) / fatigue_factor(WEATHERED_SECONDS)
    return Handled(WEATHERED_MODULUS, short * material.characteristic_strength / _FLOAT)


def plain_strength(material: Material, wear: Wear, seconds: float) -> float:
    """Bending strength of a plain plate, Pa: 5 % of plates of the standard's area are weaker."""
    found = flaws(material, wear)
    risk = -math.log(1 - FRACTILE)
    return found.scale * math.pow(risk / TEST_AREA, 1 / found.modulus) * fatigue_factor(seconds)


def bending_strength(
    material: Material, compression: float, wear: Wear = "new", seconds: float = SHORT
) -> float:
    """Bending strength of a plate with `compression` (Pa) at its surface, Pa."""
    return compression + plain_strength(material, wear, seconds)


def strength_ratio(material: Material, compression: float, wear: Wear, seconds: float) -> float:
    """Strength of the plate over that of a plain one, both of the same wear and load."""
    plain = plain_strength(material, wear, seconds)
    return (compression + plain) / plain


@dataclass(frozen=True)
class Load:
    """Tension that a load of size one brings to places of a plate's face.

    Parameters
    ----------
    stress : numpy.ndarray
        Shape (places,), Pa for a load of one.
    area : numpy.ndarray
        Shape (places,), m2.
    """

    stress: Array
    area: Array


def even_bending(length: float, width: float) -> Load:
    """Load of one pascal, the same all over a face of `length` by `width` (m)."""
    return Load(np.array([1.0]), np.array([length * width]))


def break_risk(
    found: Handled, load: Load, size: float, compression: float, seconds: float
) -> float:
    """Weibull risk under `size` times the `load`; the surface's compression comes off first."""
    tension = (size * load.stress - compression) / fatigue_factor(seconds)
    return found.risk(tension, load.area)


def break_probability(
    found: Handled, load: Load, size: float, compression: float, seconds: float
) -> float:
    """Probability that the plate breaks under `size` times the `load`."""
    return probability(break_risk(found, load, size, compression, seconds))


def median_load(found: Handled, load: Load, compression: float, seconds: float) -> float:
    """Size of the load under which half of all plates break."""
    peak = float(load.stress.max())
    lowest = compression / peak

    def beyond(size: float) -> float:
        return break_risk(found, load, size, compression, seconds) - math.log(2.0)

    reach = found.median_strength(float(load.area.sum())) * fatigue_factor(seconds) / peak
    while beyond(lowest + reach) < 0:
        reach *= 2
    return float(brentq(beyond, lowest, lowest + reach, xtol=1e-9 * (lowest + reach)))


def shock(material: Material, strength: float) -> float:
    """Sudden fall of temperature at a face that pulls it with `strength` (Pa), K.

    First parameter of Hasselman 1969 (J. Am. Ceram. Soc. 52): ``s (1 - nu) / (E a)``.
    """
    return strength * (1 - material.poisson_ratio) / (material.youngs_modulus * material.expansion)
