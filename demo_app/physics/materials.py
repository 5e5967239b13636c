"""Materials as frozen records in SI units, read from data files that name a source per value."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

_ZERO_C = 273.15


@dataclass(frozen=True)
class HeatCapacity:
    """Specific heat in pieces ``a + b*T + c/T**2``, T in K, in J/(kg K).

    Parameters
    ----------
    upto : tuple of float
        Upper end of each piece, K, increasing; the last is infinite.
    a, b, c : tuple of float
        Coefficients, one a piece.
    """

    upto: tuple[float, ...]
    a: tuple[float, ...]
    b: tuple[float, ...]
    c: tuple[float, ...]

    def __call__(self, temperature: Array) -> Array:
        """Specific heat at `temperature` (K, any shape), J/(kg K)."""
        piece = np.searchsorted(self.upto[:-1], temperature, side="right")
        a, b, c = np.asarray(self.a), np.asarray(self.b), np.asarray(self.c)
        return np.asarray(a[piece] + b[piece] * temperature + c[piece] / temperature**2)


@dataclass(frozen=True)
class Prony:
    """Relaxation spectrum: weights that sum to one, and times at the reference temperature.

    Parameters
    ----------
    weights : tuple of float
        Share of each term of the part that relaxes.
    times : tuple of float
        Relaxation time of each term at the law's reference temperature, s.
    lasting : float
        Share of the modulus that never relaxes (0 for shear).
    """

    weights: tuple[float, ...]
    times: tuple[float, ...]
    lasting: float = 0.0


@dataclass(frozen=True)
class RelaxationLaw:
    """Structural and stress relaxation of a glass former.

    Parameters
    ----------
    reference : float
        Temperature at which the times hold, K.
    activation : float
        H/R of the shift function, K.
    share : float
        x of the shift function: part of the activation that follows the temperature, the rest
        follows the fictive temperature.
    shear, bulk, structural : Prony
        Spectra of the shear modulus, the bulk modulus and the structure.
    expansion_liquid : float
        Linear expansion of the equilibrium liquid, 1/K.
    """

    reference: float
    activation: float
    share: float
    shear: Prony
    bulk: Prony
    structural: Prony
    expansion_liquid: float


@dataclass(frozen=True)
class Material:
    """One material; every value in SI units (K, Pa, m, s, kg).

    Parameters
    ----------
    id, name, kind : str
        File name; English name; "glass" or "plastic".
    density : float
        kg/m3.
    youngs_modulus, poisson_ratio : float
        Pa; 1.
    expansion : float
        Linear expansion of the glass (solid), 1/K.
    conductivity : tuple of float
        k0, k1 of ``k = k0 + k1*T``, T in K; W/(m K) and W/(m K2).
    heat_capacity : HeatCapacity
        Specific heat.
    emissivity : float
        Hemispherical emissivity of its surface.
    refractive_index : float
        At 589 nm.
    stress_optic : float
        Stress-optic coefficient of the solid, 1/Pa.
    fracture_toughness : float
        K_IC, Pa sqrt(m).
    fracture_energy : float
        Energy for a unit area of crack (both faces), J/m2.
    characteristic_strength : float
        Bending strength of plain ware for a short load, 5 % fractile, Pa.
    weibull_modulus : float
        Of ordinary handled ware.
    strain_point, annealing_point, softening_point : float
        K. For a plastic all three are its glass transition.
    relaxation : RelaxationLaw
        Its relaxation; where not published, assumed (`assumed` says so).
    assumed : tuple of str
        Names of the values that are assumed rather than sourced.
    expansion_rise : tuple of float
        Coefficients of t, t**2 ... that are added to the solid's `expansion`, t in degrees Celsius.
        No file sets them: the published sandwich-seal benchmark needs them.
    """

    id: str
    name: str
    kind: str
    density: float
    youngs_modulus: float
    poisson_ratio: float
    expansion: float
    conductivity: tuple[float, float]
    heat_capacity: HeatCapacity
    emissivity: float
    refractive_index: float
    stress_optic: float
    fracture_toughness: float
    fracture_energy: float
    characteristic_strength: float
    weibull_modulus: float
    strain_point: float
    annealing_point: float
    softening_point: float
    relaxation: RelaxationLaw
    assumed: tuple[str, ...] = ()
    expansion_rise: tuple[float, ...] = ()

    @property
    def shear_modulus(self) -> float:
        """G, Pa."""
        return self.youngs_modulus / (2 * (1 + self.poisson_ratio))

    @property
    def bulk_modulus(self) -> float:
        """K, Pa."""
        return self.youngs_modulus / (3 * (1 - 2 * self.poisson_ratio))

    def expansion_at(self, temperature: Array) -> Array:
        """Linear expansion of the solid at `temperature` (K, any shape), 1/K."""
        rises = enumerate(self.expansion_rise, start=1)
        return np.asarray(
            self.expansion + sum(rise * (temperature - _ZERO_C) ** power for power, rise in rises)
        )

    def solid_strain(self, start: Array, end: Array) -> Array:
        """Free strain of the solid from temperature `start` to `end` (K, any shape)."""
        if not self.expansion_rise:
            return self.expansion * (end - start)
        ends = self.expansion_at(start) + self.expansion_at(end)
        return (ends + 4 * self.expansion_at((start + end) / 2)) / 6 * (end - start)

    def conductivity_at(self, temperature: Array) -> Array:
        """Thermal conductivity at `temperature` (K, any shape), W/(m K)."""
        return self.conductivity[0] + self.conductivity[1] * temperature

    def diffusivity(self, temperature: float) -> float:
        """Thermal diffusivity at `temperature` (K), m2/s."""
        at = np.array([temperature])
        stored = self.density * float(self.heat_capacity(at)[0])
        return float(self.conductivity_at(at)[0]) / stored
