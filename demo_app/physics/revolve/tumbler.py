"""A tumbler: a straight wall on a flat base of the same thickness, meshed finely at both faces."""

import functools
import math
from dataclasses import dataclass

from demo_app.base.errors import InputError
from demo_app.physics.materials import Material
from demo_app.physics.revolve.body import Body, body
from demo_app.physics.revolve.mesh import fine_at_both, graded, wall_mesh
from demo_app.physics.revolve.profile import Arc, Line, Profile

FILLET = 4e-3
"""Radius of the inner edge between wall and base, m."""


@dataclass(frozen=True, eq=False)
class Tumbler:
    """A tumbler made ready.

    Parameters
    ----------
    piece : Body
        Its elements and matrices.
    floor, mouth : float
        Height of its inner floor and of its rim, m.
    bore : float
        Inner radius of its straight wall, m.
    """

    piece: Body
    floor: float
    mouth: float
    bore: float


@functools.lru_cache(maxsize=8)
def tumbler(
    material: Material, outer_diameter: float, wall: float, height: float, through: int = 7
) -> Tumbler:
    """Tumbler of one thickness `wall`; all lengths in m.

    Parameters
    ----------
    material : Material
        Its glass.
    outer_diameter, wall, height : float
        m.
    through : int
        Elements through the wall, finer towards both faces.

    Raises
    ------
    InputError
        If the wall leaves no room for water.
    """
    profile = tumbler_profile(outer_diameter, wall, height)
    bend = profile.parts[0].length + profile.parts[1].length / 2
    ends = graded(profile, bend, fine=1.5e-3, flat=0.006, coarse=3.5e-3)
    depths = wall * fine_at_both(through, 0.8)
    piece = body(material, wall_mesh(profile, ends, depths))
    return Tumbler(piece, wall, height, outer_diameter / 2 - wall)


def tumbler_profile(outer_diameter: float, wall: float, height: float) -> Profile:
    """Profile that stands on z = 0; `InputError` where the walls would meet in the middle."""
    radius = outer_diameter / 2 - wall / 2
    heel = wall / 2 + FILLET
    if radius - wall / 2 < FILLET + 1e-3 or height < wall / 2 + heel + 0.01:
        raise InputError(
            f"walls of {1e3 * wall:g} mm leave no room inside a tumbler of "
            f"{1e3 * outer_diameter:g} mm",
            place="wall",
            remedy=f"write less than {1e3 * (outer_diameter / 2 - FILLET - 1e-3):.1f}",
        )
    parts = (
        Line(radius - heel),
        Arc(heel, math.pi / 2),
        Line(height - wall / 2 - heel),
    )
    return Profile((0.0, wall / 2), 0.0, parts, wall)
