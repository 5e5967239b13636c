"""A hot plate between air jets: what may be blown at all, the steps of the quench, and its peaks.

The plate is a Column: wide, of one temperature when the jets start, and the same on both faces.
"""

import functools
import math
from dataclasses import dataclass

import numpy as np

from demo_app.base.errors import InputError
from demo_app.physics.column.advance import ColumnState, advance, start, step_length
from demo_app.physics.column.heat import Face, Faces
from demo_app.physics.column.wall import CELLS, Wall, plate
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.materials import Material

_COLD = 0.5
"""A plate counts as cold when its mean is this close to the air, K."""
_THINNEST = 1e-4
"""Plates thinner than this are foils, m."""


@dataclass(frozen=True)
class Quench:
    """A plate in its jets; `quench` makes one that can be blown.

    Parameters
    ----------
    material : Material
        What the plate is made of.
    thickness : float
        m.
    start : float
        Its temperature when the jets start, K.
    coefficient : float
        Of the jets, W/(m2 K), radiation included.
    cells : int
        Of its mesh through the thickness.
    coolant : float
        Temperature of the air, K.
    """

    material: Material
    thickness: float
    start: float
    coefficient: float
    cells: int = CELLS
    coolant: float = ROOM

    @property
    def wall(self) -> Wall:
        """The plate as a Column."""
        return _wall(self.material, self.thickness, self.cells)

    @property
    def faces(self) -> Faces:
        """What both faces meet."""
        face = Face(self.coolant, self.coefficient)
        return face, face


@functools.lru_cache(maxsize=16)
def _wall(material: Material, thickness: float, cells: int) -> Wall:
    return plate(material, thickness, cells)


@dataclass(frozen=True)
class Blown:
    """One instant of a quench.

    Parameters
    ----------
    column : ColumnState
        The plate now.
    pull : float
        Largest tension that a face has had, Pa.
    """

    column: ColumnState
    pull: float = 0.0


def quench(
    material: Material, thickness: float, start: float, coefficient: float, *, cells: int = CELLS
) -> Quench:
    """A plate of `thickness` (m) at `start` (K) between jets of `coefficient` (W/(m2 K)).

    Raises
    ------
    InputError
        For a plate without thickness, jets that do not cool, a start below the strain point (then
        no stress is locked in) or above the softening point (then the plate sags; ASTM C338).
    """
    if not thickness >= _THINNEST:
        raise InputError(
            f"a plate of {1e3 * thickness:g} mm is no plate",
            place="thickness_mm",
            remedy=f"write at least {1e3 * _THINNEST:g}",
        )
    if not coefficient > 0:
        raise InputError(
            f"jets of {coefficient:g} W/m2K do not cool",
            place="jet_W_m2K",
            remedy="write a number above zero",
        )
    low, high = (point - ZERO_C for point in (material.strain_point, material.softening_point))
    allowed = f"write a start from {low:.0f} to {high:.0f} °C for {material.name}"
    if not start >= material.strain_point:
        raise InputError(
            f"{start - ZERO_C:.0f} °C is below the strain point: the glass is solid already and "
            "locks in no stress",
            place="start_C",
            remedy=allowed,
        )
    if start > material.softening_point:
        raise InputError(
            f"{start - ZERO_C:.0f} °C is above the softening point: the plate sags and the jets "
            "dent it",
            place="start_C",
            remedy=allowed,
        )
    return Quench(material, thickness, start, coefficient, cells)


def begin(of: Quench) -> Blown:
    """The hot plate, free of stress."""
    return Blown(start(of.wall, of.start))


def blow(of: Quench, before: Blown, until: float = math.inf) -> Blown:
    """One step of the quench later, not beyond the time `until` (s)."""
    column = before.column
    dt = step_length(of.wall, column, of.faces, column.time)
    # Two steps alike instead of one and a sliver.
    left = until - column.time
    dt = left if dt >= left else min(dt, left / 2) if dt > left / 2 else dt
    column = advance(of.wall, column, dt, of.faces, of.faces)
    return Blown(column, max(before.pull, *column.surface))


def blown(of: Quench) -> Blown:
    """The cold plate."""
    state, end = begin(of), cold_after(of)
    while state.column.time < end:
        state = blow(of, state, end)
    return state


def cold_after(of: Quench) -> float:
    """Time after which the plate is as cold as the air, s.

    Lumped cooling by the largest heat capacity that the plate has, and time for heat to cross it.
    """
    material, thickness = of.material, of.thickness
    span = np.linspace(of.coolant, of.start, 9)
    capacity = material.density * float(material.heat_capacity(span).max())
    slowest = float(material.conductivity_at(span).min())
    # The first root of the slab's series lies between both limits (Carslaw and Jaeger).
    rate = 1 / (capacity * (thickness / (2 * of.coefficient) + thickness**2 / (9 * slowest)))
    return math.log((of.start - of.coolant) / _COLD) / rate


def surface_compression(column: ColumnState) -> float:
    """Compression of the weaker face, Pa; zero if it is under tension."""
    return max(0.0, -max(column.surface))
