"""A polymer melt: how it flows, how that stretches its molecules, and how they coil up again.

Viscosity: the power-law branch of the Cross law with a WLF shift, whose constants are typical of an
injection grade of general-purpose polystyrene in mould-filling practice (from memory). Stretch:
first normal stress difference of a second-order fluid (Coleman and Noll 1961), and the
stress-optical rule (Janeschitz-Kriegl 1983; Wales 1976, from memory).
"""

from dataclasses import dataclass

import numpy as np

from demo_app.physics.heat import ZERO_C
from demo_app.physics.materials import Array

_NEVER = 1e12
"""Longest relaxation time that is told apart from none, s."""


@dataclass(frozen=True)
class Melt:
    """One melt.

    Parameters
    ----------
    transition : float
        Glass transition, K.
    scale, slope, width : float
        Zero-shear viscosity ``scale * exp(-slope * d / (width + d))``, d = T - transition; Pa s, 1
        and K.
    turning : float
        Shear stress from which the viscosity falls, Pa.
    index : float
        n of the power law, between 0 and 1.
    compliance : float
        Recoverable shear compliance, 1/Pa: ``N1 = 2 J shear**2``.
    stress_optic : float
        Stress-optical coefficient of the melt, 1/Pa.
    """

    transition: float
    scale: float
    slope: float
    width: float
    turning: float
    index: float
    compliance: float
    stress_optic: float

    def zero_viscosity(self, temperature: Array) -> Array:
        """Viscosity without thinning, Pa s, at `temperature` (K), not below the transition."""
        above = np.maximum(0.0, temperature - self.transition)
        return np.asarray(self.scale * np.exp(-self.slope * above / (self.width + above)))

    def consistency(self, temperature: float) -> float:
        """K of ``shear stress = K rate**n``, Pa s^n: ``eta0**n turning**(1 - n)``."""
        eta = float(self.zero_viscosity(np.array(temperature)))
        return float(eta**self.index * self.turning ** (1 - self.index))

    def relaxation_time(self, temperature: Array) -> Array:
        """Time in which stretched molecules coil up, ``eta0 J``, s; none below the transition."""
        time = self.zero_viscosity(temperature) * self.compliance
        return np.where(temperature > self.transition, time, _NEVER)

    def stretched(self, slope_x: Array, slope_y: Array, height: Array) -> Array:
        """First normal stress difference (Pa) along x less y, and twice the shear part of it.

        Parameters
        ----------
        slope_x, slope_y : numpy.ndarray
            Slope of the pressure, Pa/m.
        height : numpy.ndarray
            Distance from the middle of the gap, m; the shear stress there is height times slope.
        """
        size = 2 * self.compliance * height**2
        return np.stack([size * (slope_x**2 - slope_y**2), size * 2 * slope_x * slope_y])


POLYSTYRENE = Melt(
    transition=ZERO_C + 100,
    scale=4.8e10,
    slope=25.7,
    width=51.6,
    turning=2.6e4,
    index=0.27,
    # 1e-5 to 3e-5 for polystyrenes with a broad spread of lengths (Graessley 1974, from memory).
    compliance=2.0e-5,
    # Janeschitz-Kriegl 1983; Wales 1976 (from memory): -4.5e-9 to -5e-9.
    stress_optic=-4.7e-9,
)
MELTS = {"polystyrene": POLYSTYRENE}
