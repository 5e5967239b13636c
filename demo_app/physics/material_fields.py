"""What a material file may say: each value with its units and the range that is believable."""

from collections.abc import Mapping
from dataclasses import dataclass

_ZERO_C = 273.15


@dataclass(frozen=True)
class Unit:
    """A unit of a file: ``SI = scale * value + offset``."""

    scale: float = 1.0
    offset: float = 0.0

    def to_si(self, value: float) -> float:
        """`value` in SI units."""
        return self.scale * value + self.offset


@dataclass(frozen=True)
class Field:
    """One value of a material file.

    Parameters
    ----------
    units : mapping
        Allowed units by their name in the file.
    low, high : float
        Believable range in SI units, ends included.
    optional : bool
        Whether a file may leave it out.
    """

    units: Mapping[str, Unit]
    low: float
    high: float
    optional: bool = False


_NUMBER = {"1": Unit()}
_EXPANSION = {"1e-6/K": Unit(1e-6)}
_TEMPERATURE = {"degC": Unit(offset=_ZERO_C), "K": Unit()}

VALUES: dict[str, Field] = {
    "density": Field({"kg/m3": Unit()}, 500, 10_000),
    "youngs_modulus": Field({"GPa": Unit(1e9)}, 1e8, 5e11),
    "poisson_ratio": Field(_NUMBER, 0.0, 0.49),
    "expansion": Field(_EXPANSION, 0.0, 3e-4),
    "emissivity": Field(_NUMBER, 0.01, 1.0),
    "refractive_index": Field(_NUMBER, 1.0, 2.5),
    "stress_optic": Field({"1e-12/Pa": Unit(1e-12)}, -1e-10, 1e-10),
    "fracture_toughness": Field({"MPa m^0.5": Unit(1e6)}, 1e5, 1e7),
    # Left out it follows from the fracture toughness.
    "fracture_energy": Field({"J/m2": Unit()}, 0.1, 1e5, optional=True),
    "characteristic_strength": Field({"MPa": Unit(1e6)}, 1e6, 1e9),
    "weibull_modulus": Field(_NUMBER, 1.0, 100.0),
    "strain_point": Field(_TEMPERATURE, 300.0, 2300.0),
    "annealing_point": Field(_TEMPERATURE, 300.0, 2300.0),
    "softening_point": Field(_TEMPERATURE, 300.0, 2300.0),
}
"""Single numbers of a material, in the order of the record."""

RELAXATION_VALUES: dict[str, Field] = {
    "reference": Field(_TEMPERATURE, 300.0, 2300.0),
    "activation": Field({"K": Unit()}, 1e3, 1e6),
    "share": Field(_NUMBER, 0.0, 1.0),
    "expansion_liquid": Field(_EXPANSION, 0.0, 1e-3),
}
"""Single numbers of the table ``[relaxation]``."""

SPECTRA = ("shear", "bulk", "structural")

CONDUCTIVITY_UNIT = "W/(m K), W/(m K2)"
CONDUCTIVITY_RANGE = (0.01, 500.0)
"""W/(m K), from 250 K to 1,200 K."""

HEAT_CAPACITY_UNIT = "K, J/(kg K), J/(kg K2), J K/kg"
HEAT_CAPACITY_RANGE = (100.0, 5000.0)
"""J/(kg K), from 250 K to 1,200 K."""
