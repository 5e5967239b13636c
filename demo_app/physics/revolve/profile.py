"""Profile of a hollow piece of revolution: a line in its wall, and the wall's thickness."""

import itertools
import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Line:
    """Straight part of a midline, `length` in m."""

    length: float


@dataclass(frozen=True)
class Arc:
    """Curved part of a midline: `radius` in m, `turn` in radians (positive: to the left)."""

    radius: float
    turn: float

    @property
    def length(self) -> float:
        """Arc length, m."""
        return self.radius * abs(self.turn)


@dataclass(frozen=True)
class Taper:
    """How a wall's thickness varies along its line, as a share of the thickness at its start.

    Parameters
    ----------
    places : tuple of float
        Arc lengths, m, increasing.
    shares : tuple of float
        Share of the full thickness at each place; the same as at the ends beyond them. Between two
        places it runs smoothly and level at both.
    """

    places: tuple[float, ...]
    shares: tuple[float, ...]

    def at(self, s: Array) -> Array:
        """Share at arc length `s` (m, any shape)."""
        found = np.full(np.shape(s), self.shares[0])
        steps = zip(itertools.pairwise(self.places), np.diff(self.shares), strict=True)
        for (a, b), rise in steps:
            t = np.clip((np.asarray(s) - a) / (b - a), 0.0, 1.0)
            found = found + rise * t**2 * (3 - 2 * t)
        return found


@dataclass(frozen=True)
class Profile:
    """Line in a wall, walked so that the outside lies on the right.

    Depth is counted in the full thickness: where the wall is thinner, all its depths shrink alike.

    Parameters
    ----------
    start : tuple of float
        First point (r, z) of the line, m.
    heading : float
        First direction, radians counted from r towards z.
    parts : tuple of Line or Arc
        What the line does from there on.
    wall : float
        Full thickness, m.
    outside : float
        Share of the thickness that lies outside the line: a half for a midline, nothing where the
        line is the outer surface.
    taper : Taper or None
        Where the wall is thinner; None: nowhere.
    """

    start: tuple[float, float]
    heading: float
    parts: tuple[Line | Arc, ...]
    wall: float
    outside: float = 0.5
    taper: Taper | None = None

    def thickness(self, s: Array) -> Array:
        """Thickness at arc length `s` (m, any shape), m."""
        return self.wall * self._share(s)

    def _share(self, s: Array) -> Array:
        return np.ones(np.shape(s)) if self.taper is None else self.taper.at(s)

    @property
    def length(self) -> float:
        """Length of the line, m."""
        return sum(part.length for part in self.parts)

    @property
    def closed_on_axis(self) -> bool:
        """Whether the line starts on the axis of revolution."""
        return self.start[0] == 0.0

    def at(self, s: Array) -> tuple[Array, Array, Array]:
        """Line at arc length `s` (m, any shape): r, z (m) and heading (radians)."""
        s = np.asarray(s, dtype=float)
        r, z, angle = np.empty_like(s), np.empty_like(s), np.empty_like(s)
        r0, z0, a0, done = *self.start, self.heading, 0.0
        for i, part in enumerate(self.parts):
            last = i == len(self.parts) - 1
            here = (s >= done) & ((s <= done + part.length) | last)
            d = s[here] - done
            r[here], z[here], angle[here] = _along(part, r0, z0, a0, d)
            r1, z1, a1 = _along(part, r0, z0, a0, np.asarray(part.length))
            r0, z0, a0, done = float(r1), float(z1), float(a1), done + part.length
        return r, z, angle

    def place(self, s: Array, depth: Array) -> tuple[Array, Array]:
        """Point (r, z), m, at arc length `s` and `depth` below the outer surface (both m).

        Depth in the full thickness: 0 outside, `wall` inside, wherever it is.
        """
        r, z, angle = self.at(s)
        out = (self.outside * self.wall - np.asarray(depth, dtype=float)) * self._share(s)
        return r + out * np.sin(angle), z - out * np.cos(angle)

    def locate(self, r: Array, z: Array) -> tuple[Array, Array]:
        """Arc length and depth (m) of points (r, z), m; both NaN outside the wall.

        The inverse of `place`, exactly: normals of the line run straight through the wall, so a
        point's foot on the line does not depend on the thickness.
        """
        s, depth = np.full(np.shape(r), np.nan), np.full(np.shape(r), np.nan)
        r0, z0, a0, done = *self.start, self.heading, 0.0
        slack = 1e-9
        for part in self.parts:
            d, out = _foot(part, r0, z0, a0, r, z)
            inside = (d >= -slack) & (d <= part.length + slack) & np.isnan(s)
            place = done + np.clip(d, 0.0, part.length)
            share = self._share(place)
            below = self.outside * self.wall * share - out
            inside &= (below >= -slack) & (below <= self.wall * share + slack)
            s[inside] = place[inside]
            depth[inside] = np.clip((below / share)[inside], 0.0, self.wall)
            r1, z1, a1 = _along(part, r0, z0, a0, np.asarray(part.length))
            r0, z0, a0, done = float(r1), float(z1), float(a1), done + part.length
        return s, depth

    def corners(self) -> Array:
        """Arc lengths at which one part ends and the next begins, the two ends included, m."""
        return np.concatenate([[0.0], np.cumsum([part.length for part in self.parts])])

    def arc_length_at_height(self, z: float) -> float:
        """Arc length at which the wall outside the base reaches height `z` (m), m."""
        s = np.linspace(0.0, self.length, 4001)
        heights = np.maximum.accumulate(self.at(s)[1])
        rising = int(np.clip(np.searchsorted(heights, z), 1, s.size - 1))
        low, high = heights[rising - 1], heights[rising]
        share = (z - low) / (high - low) if high > low else 0.0
        return float(s[rising - 1] + share * (s[rising] - s[rising - 1]))


def _along(
    part: Line | Arc, r0: float, z0: float, a0: float, d: Array
) -> tuple[Array, Array, Array]:
    if isinstance(part, Line):
        return r0 + d * math.cos(a0), z0 + d * math.sin(a0), np.full_like(d, a0)
    side = math.copysign(1.0, part.turn)
    a = a0 + side * d / part.radius
    r = r0 + side * part.radius * (np.sin(a) - math.sin(a0))
    z = z0 - side * part.radius * (np.cos(a) - math.cos(a0))
    return r, z, a


def cylinder(outer_diameter: float, wall: float, length: float) -> Profile:
    """Open tube standing on z = 0 (m)."""
    return Profile((outer_diameter / 2 - wall / 2, 0.0), math.pi / 2, (Line(length),), wall)


def bottle(
    outer_diameter: float,
    wall: float,
    *,
    height: float = 0.22,
    neck_share: float = 0.4,
    neck_length: float = 0.04,
) -> Profile:
    """Bottle with a flat base, a cylindrical body, a round shoulder and an open neck.

    Parameters
    ----------
    outer_diameter, wall : float
        Of the body, m.
    height : float
        From the base to the mouth, m.
    neck_share : float
        Neck's outer diameter as a share of the body's.
    neck_length : float
        Straight part of the neck, m.
    """
    radius = outer_diameter / 2 - wall / 2
    neck = max(neck_share * outer_diameter / 2, 2 * wall) - wall / 2
    heel = min(2.5 * wall + 0.004, 0.8 * radius)
    slope = math.radians(60)
    bend = (radius - neck) / (2 * (1 - math.cos(slope)))
    body = height - neck_length - 2 * bend * math.sin(slope) - wall / 2 - heel
    parts = (
        Line(radius - heel),
        Arc(heel, math.pi / 2),
        Line(body),
        Arc(bend, slope),
        Arc(bend, -slope),
        Line(neck_length),
    )
    return Profile((0.0, wall / 2), 0.0, parts, wall)


def _foot(
    part: Line | Arc, r0: float, z0: float, a0: float, r: Array, z: Array
) -> tuple[Array, Array]:
    """Distance along the part to the foot of a point, and the point's distance outwards."""
    if isinstance(part, Line):
        dr, dz = r - r0, z - z0
        return dr * math.cos(a0) + dz * math.sin(a0), dr * math.sin(a0) - dz * math.cos(a0)
    side = math.copysign(1.0, part.turn)
    centre_r, centre_z = (
        r0 - side * part.radius * math.sin(a0),
        z0 + side * part.radius * math.cos(a0),
    )
    dr, dz = r - centre_r, z - centre_z
    # The outside lies on the right: away from the centre of a left turn.
    out = side * (np.hypot(dr, dz) - part.radius)
    angle = np.arctan2(dz, dr) + side * math.pi / 2 - a0
    turned = (side * angle + math.pi) % (2 * math.pi) - math.pi
    return turned * part.radius, out
