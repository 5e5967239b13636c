"""Bending and hitting a plate: what breaks half of all such plates, and how likely a break is.

The plates have been in use: their flaws are those of weathered glass. Edges are taken as good as
faces, which holds for polished ones.
"""

import functools
from dataclasses import dataclass

from demo_app.physics.blows import blow
from demo_app.physics.fragments import Held, bent, crack_length, die_side
from demo_app.physics.laminated import Laminate
from demo_app.physics.materials import Material
from demo_app.physics.plates import (
    SHORT,
    STAYS,
    Load,
    break_probability,
    even_bending,
    flaws,
    median_load,
)

INNER_SHARE = 1 / 3
"""Share of the plate's width that is bent in full: four-point bending (EN 1288-3, 200 of 1000 mm
between rollers; here the middle third)."""


@dataclass(frozen=True)
class Piece:
    """A plate to be broken.

    Parameters
    ----------
    material : Material
        Its glass.
    width, height, thickness : float
        m.
    compression : float
        At its faces, Pa.
    laminated : bool
        Whether it is two plain panes, each half as thick, and a film.
    """

    material: Material
    width: float
    height: float
    thickness: float
    compression: float = 0.0
    laminated: bool = False

    @property
    def area(self) -> float:
        """Of one face, m2."""
        return self.width * self.height

    @property
    def laminate(self) -> Laminate:
        """Its panes, if it is laminated."""
        return Laminate(self.material, self.thickness / 2)

    @property
    def panes(self) -> int:
        """Number of panes that share a load."""
        return 2 if self.laminated else 1

    def bending(self) -> Load:
        """Load of one pascal at the face of an undivided plate."""
        even = even_bending(INNER_SHARE * self.width, self.height)
        # Panes that slide on each other are bent to twice the stress; either may break.
        return Load(self.panes * even.stress, self.panes * even.area)

    def bend_limit(self) -> float:
        """Bending, as stress at the face of an undivided plate (Pa), that breaks half of them."""
        return _bend_limit(self)

    def bend_odds(self, stress: float) -> float:
        """Probability that a bending that stays, `stress` (Pa), breaks the plate."""
        used = flaws(self.material, "used")
        return break_probability(used, self.bending(), stress, self.compression, STAYS)

    def pane_blow(self) -> tuple[Load, float]:
        """Stress for each N on one pane, and its deflection, m/N."""
        one = blow(self.material, self.width, self.height, self.thickness / self.panes)
        return Load(one.load.stress, self.panes * one.load.area), one.give

    def blow_limit(self) -> float:
        """Energy of a blow that breaks half of such plates, J."""
        return _blow_limit(self)

    def blow_odds(self, energy: float) -> float:
        """Probability that a blow of `energy` (J) breaks the plate."""
        load, give = self.pane_blow()
        force = (2 * energy / (self.panes * give)) ** 0.5
        used = flaws(self.material, "used")
        return break_probability(used, load, force, self.compression, SHORT)

    def bent_energy(self, stress: float) -> Held:
        """Energy for each m2 of a pane bent to `stress` (Pa of an undivided plate)."""
        return bent(self.material, self.thickness / self.panes, self.panes * stress)

    def shard_side(self, stress: float) -> float | None:
        """Side that dice of a pane broken at this bending would have, m."""
        pane = self.thickness / self.panes
        return die_side(self.material, pane, self.bent_energy(stress))

    def ray_length(self, energy: float) -> float:
        """Length of all rays of a pane that broke under a blow of `energy` (J), m."""
        each = energy / self.panes / self.area
        pane = self.thickness / self.panes
        return self.area * crack_length(self.material, pane, Held(each, each / 2))

    def carried_after(self, stress: float, *, both: bool) -> float:
        """Share of its load that the laminated plate still carries, cracked at `stress`."""
        return self.laminate.carried(2 * stress, both=both)


@functools.lru_cache(maxsize=32)
def _bend_limit(piece: Piece) -> float:
    used = flaws(piece.material, "used")
    return median_load(used, piece.bending(), piece.compression, STAYS)


@functools.lru_cache(maxsize=32)
def _blow_limit(piece: Piece) -> float:
    load, give = piece.pane_blow()
    force = median_load(flaws(piece.material, "used"), load, piece.compression, SHORT)
    return piece.panes * 0.5 * give * force**2
