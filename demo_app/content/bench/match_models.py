"""What three readings of a real piece are compared with: fast models of one unknown."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from demo_app.content.bench.flame_run import FINE, QUICK, Burn, ring_temperatures
from demo_app.content.fitting.records import Unknown
from demo_app.physics.column.readings import centre_stress, neutral_depth
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.toughening import blown, quench

EDGE_PATH = 15e-3
"""Way of the light through the edge, m: less than that gives too few fringes to read."""
_CELLS, _COARSE = 24, 12

Model = Callable[[float], Sequence[float | None]]


@dataclass(frozen=True)
class Kind:
    """An unknown and the readings that tell it.

    Parameters
    ----------
    unknown : Unknown
        The setting of the scenes, and where it is looked for.
    scene : str
        Scene of that setting.
    unit : str
        Its unit.
    readings : tuple of str
        Text ids of the three readings, in their order.
    """

    unknown: Unknown
    scene: str
    unit: str
    readings: tuple[str, str, str]

    @property
    def low(self) -> float:
        """Least value."""
        return self.unknown.low

    @property
    def high(self) -> float:
        """Largest value."""
        return self.unknown.high


KINDS = {
    "jets": Kind(
        Unknown("jet_W_m2K", 15, 1500), "toughen", "W/m²K", ("surface_MPa", "centre_MPa", "edge_nm")
    ),
    "thickness": Kind(
        Unknown("thickness_mm", 2, 25), "toughen", "mm", ("surface_MPa", "centre_MPa", "neutral_um")
    ),
    "flame": Kind(
        Unknown("flame_kW_m2", 10, 400), "ring", "kW/m²", ("first_C", "second_C", "third_C")
    ),
}
"""By the word on the command line; names and units are those of the scenes' settings."""


def model_of(question: Any, *, coarse: bool = False) -> Model:
    """Model for the fit: from a value of the unknown to three readings; `InputError` if it cannot.

    Parameters
    ----------
    question : MatchingQuestion
        What is known beside the unknown.
    coarse : bool
        Quicker and less exact, for the first answer.
    """
    if question.unknown == "flame":
        return lambda value: _flame(question, value, coarse=coarse)
    return lambda value: _plate(question, value, coarse=coarse)


def _plate(question: Any, value: float, *, coarse: bool) -> list[float | None]:
    by_jets = question.unknown == "jets"
    glass = material(question.glass)
    ready = quench(
        glass,
        1e-3 * (question.thickness_mm if by_jets else value),
        question.start_C + ZERO_C,
        value if by_jets else question.jet_W_m2K,
        cells=_COARSE if coarse else _CELLS,
    )
    column = blown(ready).column
    surface, middle = -float(column.stress[0]), centre_stress(ready.wall, column)
    if by_jets:
        third: float | None = 1e9 * abs(glass.stress_optic) * EDGE_PATH * surface
    else:
        depth = neutral_depth(ready.wall, column)
        third = None if depth is None else 1e6 * depth
    return [1e-6 * surface, 1e-6 * middle, third]


def _flame(question: Any, value: float, *, coarse: bool) -> list[float | None]:
    times = (question.first_s, question.second_s, question.third_s)
    burn = Burn(
        1e-3 * question.outer_diameter_mm,
        1e-3 * question.thickness_mm,
        1e-3 * question.ring_width_mm,
        0.0,
        1e3 * value,
        0.0,
        0.0,
        times[-1],
    )
    at, surface = ring_temperatures(material(question.glass), burn, QUICK if coarse else FINE)
    return [float(np.interp(time, at, surface)) - ZERO_C for time in times]
