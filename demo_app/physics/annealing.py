"""What annealed glass may keep: limits, closed forms, and whose they are."""

from dataclasses import dataclass

import numpy as np

from demo_app.physics.materials import Material
from demo_app.physics.stepped import PieceState

STRAIN_DISC = 22.8e-9
"""Retardation of one strain disc, m: the unit of ASTM C148 (common practice)."""
DISC_GLASS = 4.06e-3
"""Thickness of glass to which ASTM C148 refers a temper number, m."""
STRUCTURE = 1.6
"""Stress of steady cooling over that of the closed form without structural relaxation: Gardon and
Narayanaswamy 1970 (J. Am. Ceram. Soc. 53, 380) give about 40 % of the whole to structure."""


@dataclass(frozen=True)
class Limit:
    """How much birefringence a use allows.

    Parameters
    ----------
    id : str
        Its name.
    birefringence : float
        Retardation over path; 1e-6 is 10 nm/cm.
    source : str
        Whose limit it is.
    """

    id: str
    birefringence: float
    source: str


LIMITS = {
    limit.id: limit
    for limit in (
        Limit("optics", 1e-6, "ISO 10110-2: 10 nm/cm, photographic and microscope optics (memory)"),
        Limit("magnifier", 2e-6, "ISO 10110-2: 20 nm/cm, magnifying glasses (memory)"),
        Limit(
            "ware",
            4 * STRAIN_DISC / DISC_GLASS,
            "real temper number of ASTM C148 at most 4, bottles (common practice)",
        ),
    )
}
"""Limits by their names, the strictest first."""


def temper_number(birefringence: float) -> float:
    """Real temper number of ASTM C148: strain discs in 4.06 mm of glass."""
    return birefringence * DISC_GLASS / STRAIN_DISC


def birefringence(glass: Material, state: PieceState) -> float:
    """Largest retardation over path anywhere in a piece, whichever way one looks in a plane."""
    return abs(glass.stress_optic) * max(
        float(np.abs(stress).max())
        for part, crosswise in zip(state.parts, state.crosswise, strict=True)
        for stress in (part.stress, crosswise, part.stress - crosswise)
    )


def steady_surface_stress(
    glass: Material, thickness: float, rate: float, temperature: float
) -> float:
    """Surface stress that steady cooling leaves in a plate, without structural relaxation, Pa.

    ``-E alpha R a**2 / (3 kappa (1 - nu))`` with a half the thickness (Adams and Williamson 1920,
    J. Franklin Inst. 190, 597; Lillie 1950). While the plate is solid and cools, the same pull
    stands at its surface for a time, with the sign turned.

    Parameters
    ----------
    glass : Material
        Its solid values.
    thickness : float
        m.
    rate : float
        Cooling rate, K/s.
    temperature : float
        K, at which the diffusivity is taken.
    """
    biaxial = glass.youngs_modulus / (1 - glass.poisson_ratio)
    lag = (thickness / 2) ** 2 / (3 * glass.diffusivity(temperature))
    return -biaxial * glass.expansion * rate * lag


def steady_rate(glass: Material, thickness: float, limit: float) -> float:
    """Cooling rate (K/s) at which a plate just keeps the birefringence `limit`, by the closed form.

    The structural share is put on top (`STRUCTURE`).
    """
    of_one = steady_surface_stress(glass, thickness, 1.0, glass.annealing_point)
    return limit / (abs(glass.stress_optic * of_one) * STRUCTURE)
