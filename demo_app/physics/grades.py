"""Grades of a plate by the standards: annealed, heat-strengthened, toughened."""

from dataclasses import dataclass
from typing import Literal

Grade = Literal["annealed", "heat-strengthened", "toughened"]
Limit = Literal["nothing", "surface compression", "particle count", "both"]

GRADES: tuple[Grade, ...] = ("annealed", "heat-strengthened", "toughened")
HEAT_STRENGTHENED = 24e6
TOUGHENED = 69e6
"""Least surface compression of heat-strengthened and of fully tempered glass, Pa (ASTM C1048: 24 to
52 MPa and at least 69 MPa; what lies between is sold as the lower grade)."""
THERMAL_DURABILITY = {"annealed": 40.0, "heat-strengthened": 100.0, "toughened": 200.0}
"""Sudden change of temperature that the standards grant, K (EN 572-1, EN 1863-1, EN 12150-1)."""


@dataclass(frozen=True)
class Verdict:
    """A grade and what keeps the plate from a better one."""

    grade: Grade
    limited_by: Limit


def fewest_particles(thickness: float) -> int:
    """Particles that EN 12150-1 asks of float in 50 x 50 mm, by nominal thickness (m)."""
    if thickness < 3.5e-3:
        return 15
    return 40 if thickness < 13.5e-3 else 30


def by_compression(compression: float) -> Grade:
    """Grade by surface compression, Pa."""
    if compression >= TOUGHENED:
        return "toughened"
    return "heat-strengthened" if compression >= HEAT_STRENGTHENED else "annealed"


def by_particles(particles: float, thickness: float) -> Grade:
    """Best grade that a particle count allows: too coarse for toughened says no more than that."""
    return "toughened" if particles >= fewest_particles(thickness) else "heat-strengthened"


def grade(compression: float, particles: float, thickness: float) -> Verdict:
    """The worse of both grades.

    Parameters
    ----------
    compression : float
        At the surface, Pa.
    particles : float
        In 50 x 50 mm.
    thickness : float
        m.
    """
    surface, count = by_compression(compression), by_particles(particles, thickness)
    ranks = GRADES.index(surface), GRADES.index(count)
    worse = GRADES[min(ranks)]
    if worse == "toughened":
        return Verdict(worse, "nothing")
    if ranks[0] == ranks[1]:
        return Verdict(worse, "both")
    return Verdict(worse, "surface compression" if ranks[0] < ranks[1] else "particle count")
