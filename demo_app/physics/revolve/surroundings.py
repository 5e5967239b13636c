"""What a bottle over a burner meets: the flame ring, the air, and a drop of water."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.heat import (
    ROOM,
    Surface,
    Water,
    drop,
    flame_flux,
    floats,
    mixed,
    radiation_coefficient,
    still_air_coefficient,
    warm_water,
    water_coefficient,
)
from demo_app.physics.materials import Material
from demo_app.physics.revolve.body import Body, Glass, advance

Array = NDArray[np.float64]

INSIDE_AIR = 5.0
"""Convection inside a bottle, W/(m2 K): nearly still air (common practice)."""


@dataclass(frozen=True)
class Firing:
    """What is done to the bottle; SI units, times from the start.

    Parameters
    ----------
    flux, width : float
        Peak flux of the flame ring, averaged over the turn (W/m2); its width at half flux (m).
    heat_s : float
        The flame burns from 0 to here, s.
    drop_at : float or None
        When the drop lands, s.
    drop_offset : float
        Where, m along the wall from the middle of the ring.
    """

    flux: float
    width: float
    heat_s: float
    drop_at: float | None
    drop_offset: float


def heated(
    piece: Body,
    ring: float,
    firing: Firing,
    glass: Glass,
    water: Water | None,
    now: float,
    seconds: float,
) -> Glass:
    """Glass after a step of `seconds` from `now` (s), with the ring at arc length `ring` (m)."""
    material = piece.material
    outside = piece.heat.outer.value @ glass.temperature
    inside = piece.heat.inner.value @ glass.temperature
    diameter = 2 * float(piece.mesh.r.max())
    coefficient = still_air_coefficient(outside, ROOM, diameter)
    coefficient += radiation_coefficient(outside, ROOM, material.emissivity)
    ambient = np.full_like(outside, ROOM)
    if water is not None:
        wet = water.depth > 0
        under = water_coefficient(water, outside, effusivity(material, outside))
        coefficient = np.where(wet, under, coefficient)
        ambient = np.where(wet, water.temperature, ambient)
    flux = np.zeros_like(outside)
    if now < firing.heat_s - 1e-9:
        flux = flame_flux(outer_places(piece), ring, firing.width, firing.flux)
    inner = INSIDE_AIR + radiation_coefficient(inside, ROOM, material.emissivity)
    return advance(
        piece,
        glass,
        seconds,
        Surface(coefficient, ambient, flux),
        Surface(inner, np.full_like(inside, ROOM), np.zeros_like(inside)),
    )


def watered(
    piece: Body, ring: float, firing: Firing, water: Water | None, now: float
) -> Water | None:
    """The water at `now` (s): a drop lands once its time has come, on what is left of another."""
    if firing.drop_at is None or now < firing.drop_at - 1e-9:
        return water
    # A step begins at the drop's time: one that is over has landed.
    if water is not None and now >= firing.drop_at + 1e-9:
        return water
    landing = drop(outer_places(piece), ring + firing.drop_offset)
    return landing if water is None else mixed(water, landing)


def dried(piece: Body, glass: Glass, water: Water, seconds: float) -> tuple[Water, float]:
    """Water after `seconds` on the glass, and the largest share of it that floats on vapour."""
    surface = piece.heat.outer.value @ glass.temperature
    e = effusivity(piece.material, surface)
    wet = water.depth > 1e-5
    floating = float(floats(water, surface, e)[wet].max()) if wet.any() else 0.0
    coefficient = water_coefficient(water, surface, e)
    return warm_water(water, surface, coefficient, e, seconds), floating


def outer_places(piece: Body) -> Array:
    """Arc length of the outer surface's quadrature points, shape (points,), m."""
    return np.asarray(piece.heat.outer.value @ np.repeat(piece.mesh.s, piece.mesh.depth.size))


def effusivity(material: Material, surface: Array) -> float:
    """``sqrt(k rho c)`` of the glass at its hottest surface temperature, J/(m2 K sqrt(s))."""
    hottest = np.asarray(surface.max())
    k, c = material.conductivity_at(hottest), material.heat_capacity(hottest)
    return float(np.sqrt(k * material.density * c))
