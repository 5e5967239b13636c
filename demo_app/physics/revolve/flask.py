"""A free-blown flask: round below, open at its neck, with a foot that is thicker than its wall."""

import functools
import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.physics.materials import Material
from demo_app.physics.revolve.body import Body, body
from demo_app.physics.revolve.mesh import fine_at_both, wall_mesh
from demo_app.physics.revolve.profile import Arc, Line, Profile, Taper

Array = NDArray[np.float64]

_SLOPE = math.radians(55)
_NECK_SHARE = 0.36
"""Neck's diameter over the body's."""
_NECK_LENGTH = 0.14
"""Straight part of the neck, as a share of the whole length."""
_FOOT_TO, _WALL_FROM = 0.15, 1.25
"""Where the foot begins to thin out and where the wall is reached: shares of the round bottom."""
_DEEPEST = 0.75
"""Thickest foot, as a share of the round bottom's radius."""


@dataclass(frozen=True, eq=False)
class Flask:
    """A flask made ready.

    Parameters
    ----------
    piece : Body
        Its elements and matrices.
    base, wall : float
        Thickness at the foot's middle and in the wall, m.
    opening : float
        Area of its mouth, m2.
    middle : int
        Node column half-way up the straight wall.
    """

    piece: Body
    base: float
    wall: float
    opening: float
    middle: int


def flask_profile(outer_diameter: float, length: float, base: float, wall: float) -> Profile:
    """Profile of a flask that stands on its pole at z = 0; all lengths in m.

    Parameters
    ----------
    outer_diameter, length : float
        Of the whole piece.
    base, wall : float
        Thickness at the middle of the foot, and of the wall.

    Raises
    ------
    InputError
        If the base is thicker than the piece is long, walls would cross, the foot is thinner than
        the wall, or there is no room for a body between bottom and neck.
    """
    radius = outer_diameter / 2
    if base >= length:
        raise InputError(
            f"a base of {1e3 * base:g} mm is thicker than the piece is long ({1e3 * length:g} mm)",
            place="base_mm",
            remedy=f"write at most {1e3 * _DEEPEST * radius:g}",
        )
    if base > _DEEPEST * radius:
        raise InputError(
            f"the walls would cross: a base of {1e3 * base:g} mm fills a bottom of "
            f"{1e3 * radius:g} mm radius",
            place="base_mm",
            remedy=f"write at most {1e3 * _DEEPEST * radius:g}",
        )
    neck = _NECK_SHARE * radius
    if wall > 0.7 * neck:
        raise InputError(
            f"the walls would cross in the neck, which is {2e3 * neck:g} mm wide",
            place="wall_mm",
            remedy=f"write at most {0.7e3 * neck:.1f}",
        )
    if wall > base:
        raise InputError(
            "the wall is thicker than the foot",
            place="wall_mm",
            remedy=f"write at most {1e3 * base:g}",
        )
    bend = (radius - neck) / (2 * (1 - math.cos(_SLOPE)))
    straight = length * (1 - _NECK_LENGTH) - radius - 2 * bend * math.sin(_SLOPE)
    if straight < 0.12 * radius:
        least = (1.12 * radius + 2 * bend * math.sin(_SLOPE)) / (1 - _NECK_LENGTH)
        raise InputError(
            f"{1e3 * length:g} mm is too short for a flask {1e3 * outer_diameter:g} mm wide",
            place="length_mm",
            remedy=f"write at least {math.ceil(1e3 * least):g}",
        )
    parts = (
        Arc(radius, math.pi / 2),
        Line(straight),
        Arc(bend, _SLOPE),
        Arc(bend, -_SLOPE),
        Line(_NECK_LENGTH * length),
    )
    bottom = parts[0].length
    taper = Taper((_FOOT_TO * bottom, _WALL_FROM * bottom), (1.0, wall / base))
    return Profile((0.0, 0.0), 0.0, parts, base, outside=0.0, taper=taper)


@functools.lru_cache(maxsize=8)
def flask(
    material: Material,
    outer_diameter: float,
    length: float,
    base: float,
    wall: float,
    *,
    fineness: float = 2.0,
    through: int = 6,
) -> Flask:
    """Flask of these measures (m); `InputError` as in `flask_profile`.

    Parameters
    ----------
    material : Material
        Its glass.
    outer_diameter, length, base, wall : float
        m.
    fineness : float
        Divides the elements along the wall.
    through : int
        Elements through the wall, finer towards both faces.
    """
    profile = flask_profile(outer_diameter, length, base, wall)
    ends = _ends(profile, fineness)
    mesh = wall_mesh(profile, ends, base * fine_at_both(through, 0.7))
    corners = profile.corners()
    middle = int(np.argmin(np.abs(mesh.s - (corners[1] + corners[2]) / 2)))
    bore = _NECK_SHARE * outer_diameter / 2 - wall
    return Flask(body(material, mesh), base, wall, math.pi * bore**2, middle)


def _ends(profile: Profile, fineness: float) -> Array:
    """Element ends along the wall: short where it is thin beside its bends, long in the wall."""
    foot = profile.parts[0]
    assert isinstance(foot, Arc)  # a flask begins with the bend of its foot
    ends = [np.zeros(1)]
    corners = profile.corners()
    for k, (part, share) in enumerate(
        zip(profile.parts, (0.25, 0.5, 0.28, 0.28, 0.5), strict=True)
    ):
        longest = share * foot.radius
        count = max(1 if k else 2, math.ceil(part.length / longest * fineness - 1e-9))
        ends.append(np.linspace(corners[k], corners[k + 1], count + 1)[1:])
    return np.concatenate(ends)
