"""What can be said of a flask before it is computed: plates twice as thick, cooled on both faces.

A wall that loses its heat through one face alone is half of a plate twice as thick: its outside is
the plate's surface, its inside the plate's middle.
"""

import functools
from dataclasses import dataclass

from demo_app.base.errors import InputError
from demo_app.physics import stepped
from demo_app.physics.annealing import LIMITS
from demo_app.physics.annealing_search import propose, worked_at
from demo_app.physics.column.advance import ColumnState
from demo_app.physics.column.readings import centre_stress
from demo_app.physics.firing import fired, in_air
from demo_app.physics.materials import Material
from demo_app.physics.oven import Programme, whole

_CELLS = 16


@dataclass(frozen=True)
class Foreseen:
    """First answer: stresses of the cold piece, Pa."""

    base_outside: float
    base_inside: float
    wall_outside: float
    wall_inside: float


@functools.lru_cache(maxsize=16)
def programme_for(material: Material, base: float) -> Programme:
    """Shortest oven programme that passes for a plate twice as thick as the `base` (m).

    It passes at 10 nm/cm, the strictest limit (ISO 10110-2).

    Raises
    ------
    InputError
        If no programme was found.
    """
    found = propose(material, (2 * base,), False, LIMITS["optics"].birefringence)
    if found is None:
        raise InputError(
            f"no oven programme was found for a base of {1e3 * base:g} mm of {material.name}",
            place="base_mm",
            remedy="write a thinner base, or cool it in air",
        )
    return whole(found.schedule)


@functools.lru_cache(maxsize=16)
def foreseen(material: Material, base: float, wall: float, programme: Programme | None) -> Foreseen:
    """First answer for a foot and a wall of these thicknesses (m), in an oven or (None) in air."""
    plates = stepped.piece(material, (2 * base, 2 * wall), joined=False, cells=_CELLS)
    fresh = stepped.start(plates, worked_at(material))
    state = in_air(plates, fresh) if programme is None else fired(plates, fresh, programme)
    found: list[float] = []
    for one, part in zip(plates.walls, state.parts, strict=True):
        assert isinstance(part, ColumnState)
        found += [part.surface[0], centre_stress(one, part)]
    return Foreseen(*found)
