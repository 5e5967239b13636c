"""Two plain panes with a tough film between them: what they carry and hold once they are cracked.

The film is taken as too soft to make the panes bend as one, as EN 16612 does for a load that stays
(no shear transfer): each pane carries half. Together they are as thick as the plate beside them.
"""

from dataclasses import dataclass

from demo_app.physics.fragments import bent
from demo_app.physics.materials import Material

FILM = 0.76e-3
"""Thickness of the film between the panes, m: two sheets of 0.38 mm (common practice)."""
TEAR_STRENGTH = 20e6
"""Of polyvinyl butyral film, Pa: at least 20 MPa (makers' tables, from memory)."""
PEEL_ENERGY = 1000.0
"""Energy to peel the film from a square metre of glass, J/m2: a peel force of some 1 N/mm
(common practice, from memory)."""


@dataclass(frozen=True)
class Laminate:
    """Two panes of one glass and the film between them.

    Parameters
    ----------
    material : Material
        Of the panes.
    pane : float
        Thickness of each pane, m.
    film : float
        Thickness of the film, m.
    """

    material: Material
    pane: float
    film: float = FILM

    def moment(self, stress: float) -> float:
        """Moment on a metre of width (N) that brings the panes' faces to `stress` (Pa)."""
        return stress * self.pane**2 / 3

    def cracked_moment(self) -> float:
        """Largest moment on a metre of width once both panes are cracked, N.

        The film is pulled until it tears; the broken upper pane leans together at its face.
        """
        return TEAR_STRENGTH * self.film * (self.pane + self.film / 2)

    def carried(self, stress: float, *, both: bool) -> float:
        """Load that it still carries over the one at which it cracked, 0 to 1.

        Parameters
        ----------
        stress : float
            At which the first pane cracked, Pa.
        both : bool
            Whether both panes are cracked, or the lower one alone.
        """
        return min(1.0, self.cracked_moment() / self.moment(stress)) if both else 0.5

    def bending_energy(self, stress: float) -> float:
        """Energy of both panes bent one way to `stress` (Pa), J for each m2."""
        return 2 * bent(self.material, self.pane, stress).total


def held_share(energy: float, area: float) -> float:
    """Share of the glass that stays on the film, 0 to 1.

    At worst all of the `energy` (J) of the break peels glass from the film, on both of its faces;
    `area` is that of the plate, m2.
    """
    return max(0.0, 1 - energy / (2 * area * PEEL_ENERGY))
