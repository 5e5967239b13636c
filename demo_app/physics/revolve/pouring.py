"""Water poured into a tumbler: it rises, gives off its heat to the glass, and cools as it does."""

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.heat import (
    ROOM,
    WATER_HEAT,
    Surface,
    radiation_coefficient,
    still_air_coefficient,
)
from demo_app.physics.revolve.body import Glass, advance, nodal_stress
from demo_app.physics.revolve.cracking import WallStress, wall_stress
from demo_app.physics.revolve.surroundings import INSIDE_AIR
from demo_app.physics.revolve.tumbler import Tumbler
from demo_app.physics.strength import Handled

Array = NDArray[np.float64]

STREAM = 2500.0
"""Coefficient under water that is stirred by its own pouring, W/(m2 K): glass that goes into water
meets 1,000 to 3,000 (common practice)."""
FULL = 0.8
"""Share of the tumbler's inner height that is filled."""
_FRONT = 4e-3
"""Height over which the wall above the water is splashed, m."""

_CONDUCTIVITY, _VISCOSITY, _PRANDTL, _SWELLING = 0.654, 4.74e-7, 2.98, 5.23e-4
"""Water at 60 degrees Celsius: W/(m K), m2/s, 1, 1/K (handbook, from memory)."""


@dataclass(frozen=True)
class Pour:
    """What is poured.

    Parameters
    ----------
    water, room : float
        Temperature of the water as it comes, and of the air, K.
    seconds : float
        Time in which the tumbler is filled, s.
    """

    water: float
    seconds: float
    room: float = ROOM


@dataclass(frozen=True)
class Filled:
    """A tumbler at one instant.

    Parameters
    ----------
    glass : Glass
        Its temperature and stress.
    level : float
        Height of the water above the inner floor, m.
    water : float
        Mean temperature of the water in it, K.
    given : float
        Heat that the water has given to the glass so far, J.
    """

    glass: Glass
    level: float
    water: float
    given: float = 0.0


def empty(cup: Tumbler, temperature: float, water: float) -> Filled:
    """The tumbler before the pouring, all of it at `temperature`; the water waits at `water`, K."""
    mesh = cup.piece.mesh
    swell = cup.piece.material.expansion * (temperature - ROOM)
    stretched = swell * np.stack([mesh.r.ravel(), mesh.z.ravel() - mesh.z[0, 0]], axis=1)
    glass = Glass(
        np.full(mesh.nodes, temperature), stretched.ravel(), np.zeros((4, mesh.wall.r.size))
    )
    return Filled(replace(glass, origin=glass), 0.0, water)


def poured(cup: Tumbler, pour: Pour, before: Filled, now: float, seconds: float) -> Filled:
    """The tumbler a step of `seconds` after `now` (s since the pouring began)."""
    piece, glass = cup.piece, before.glass
    bore = np.pi * cup.bore**2
    full = FULL * (cup.mouth - cup.floor)
    level = min(full, full * (now + seconds) / pour.seconds)
    fresh = bore * (level - before.level)
    volume = bore * level
    water = (bore * before.level * before.water + fresh * pour.water) / volume

    inside = piece.heat.inner.value @ glass.temperature
    outside = piece.heat.outer.value @ glass.temperature
    wet = wetted(piece.mesh.inner.z - cup.floor, level)
    stirred = now < pour.seconds - 1e-9
    under = STREAM if stirred else water_convection(water, inside)
    emissivity = piece.material.emissivity
    dry = INSIDE_AIR + radiation_coefficient(inside, pour.room, emissivity)
    coefficient = wet * under + (1 - wet) * dry
    ambient = (wet * under * water + (1 - wet) * dry * pour.room) / coefficient
    air = still_air_coefficient(outside, pour.room, 2 * float(piece.mesh.r.max()))
    air += radiation_coefficient(outside, pour.room, emissivity)
    none = np.zeros_like
    later = advance(
        piece,
        glass,
        seconds,
        Surface(air, np.full_like(outside, pour.room), none(outside)),
        Surface(coefficient, ambient, none(inside)),
    )
    after = piece.heat.inner.value @ later.temperature
    flow = wet * under * (water - (inside + after) / 2)
    heat = float(piece.mesh.inner.weight @ flow) * seconds
    return Filled(later, level, water - heat / (WATER_HEAT * volume), before.given + heat)


def wetted(height: Array, level: float) -> Array:
    """Share of a place at `height` that is wet, 0 to 1, with the water at `level`; both in m."""
    return np.clip(1 + (level - height) / _FRONT, 0.0, 1.0)


def water_convection(water: float, surface: Array) -> Array:
    """Free convection of water along a wall, W/(m2 K).

    Turbulent: ``Nu = 0.13 Ra**(1/3)`` (McAdams 1954, from memory), so no length counts.

    Parameters
    ----------
    water : float
        Its temperature away from the wall, K.
    surface : numpy.ndarray
        Of the wall, K, any shape.
    """
    rise = np.maximum(np.abs(water - surface), 0.1)
    rayleigh = 9.80665 * _SWELLING * rise * _PRANDTL / _VISCOSITY**2
    return np.asarray(0.13 * _CONDUCTIVITY * rayleigh ** (1 / 3))


def step_seconds(pour: Pour, now: float) -> float:
    """Length of the next step, s: short at first and when the stream stops, then longer."""
    since = now if now < pour.seconds - 1e-9 else now - pour.seconds
    grown = (0.03 if since == now else 0.2) + 0.08 * since
    if now >= pour.seconds - 1e-9:
        return min(grown, 1.5)
    length = min(grown, pour.seconds / 12)
    left = pour.seconds - now
    return left if left < 1.5 * length else length


@dataclass(frozen=True)
class Pull:
    """What pulls at a tumbler at one instant.

    Parameters
    ----------
    wall : WallStress
        Stress in the wall's directions, Pa.
    nodal : numpy.ndarray
        Shape (4, nodes): stress at the nodes, Pa.
    outside, inside : float
        Largest tension at either surface, Pa; negative where all of it is squeezed.
    column : int
        Node column of the largest tension outside.
    risk : float
        Weibull risk of both surfaces.
    ratio : float
        K over K_IC of the stated scratch, where it is worst.
    scratch : int
        Node column where that is.
    around : bool
        Whether the crack there runs around the tumbler; else it runs up its wall.
    """

    wall: WallStress
    nodal: Array
    outside: float
    inside: float
    column: int
    risk: float
    ratio: float
    scratch: int
    around: bool


def pulled(cup: Tumbler, filled: Filled, population: Handled, weights: Array) -> Pull:
    """What pulls at the tumbler.

    Parameters
    ----------
    cup, filled : Tumbler, Filled
        The tumbler and its state.
    population : Handled
        Flaws of both its surfaces.
    weights : numpy.ndarray
        Shape (rows,): those of `intensity_weights` for the stated scratch, a long one.
    """
    piece, mesh = cup.piece, cup.piece.mesh
    nodal = nodal_stress(piece, filled.glass)
    wall = wall_stress(mesh, nodal)
    larger = np.maximum(wall.along, wall.hoop)
    risk = 0.0
    for face, points, row in (
        (piece.heat.outer, mesh.outer, 0),
        (piece.heat.inner, mesh.inner, -1),
    ):
        there = face.value @ np.repeat(larger[:, row], mesh.depth.size)
        risk += population.risk(there, points.weight)
    opened = np.stack([wall.along @ weights, wall.hoop @ weights])
    ratio = opened / piece.material.fracture_toughness
    way, scratch = np.unravel_index(int(ratio.argmax()), ratio.shape)
    return Pull(
        wall,
        nodal,
        float(larger[:, 0].max()),
        float(larger[:, -1].max()),
        int(larger[:, 0].argmax()),
        risk,
        float(ratio[way, scratch]),
        int(scratch),
        bool(way == 0),
    )
