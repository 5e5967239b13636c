"""What heats and cools a surface: air, radiation, a flame on a turning bottle, a drop of water."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

ZERO_C = 273.15
"""Kelvin at 0 degrees Celsius."""
ROOM = 293.15
"""Room temperature, K."""
STEFAN_BOLTZMANN = 5.670374419e-8
"""W/(m2 K4), CODATA 2018."""
BOILING = 373.15
"""Water at one atmosphere, K."""
WATER_HEAT = 4.18e6
"""Heat capacity of liquid water, J/(m3 K), 20 to 100 degrees Celsius (handbook, from memory)."""
WATER_LATENT = 2.257e6 * 958.0
"""Heat to boil off water at 100 degrees Celsius, J/m3 (handbook, from memory)."""
WATER_EFFUSIVITY = 1600.0
"""sqrt(k rho c) of liquid water, J/(m2 K sqrt(s)) (handbook, from memory)."""
FOAM_LIMIT = 27 / 32 * 647.1
"""Contact temperature above which water cannot wet, K: the van der Waals spinodal, 27/32 of the
critical temperature (Spiegler and others 1963, Int. J. Heat Mass Transfer 6, 987)."""
WETTED = 3000.0
"""Coefficient under a drop that wets the glass, W/(m2 K): between 2,000 and 5,000 (common
practice; a water layer of 1 mm warms in about that manner)."""
FILM_BOILING = 300.0
"""Coefficient under a drop that floats on its vapour, W/(m2 K): a few hundred (handbook range,
from memory)."""

ROLLS_OFF = 0.3
"""Time in which a floating drop leaves a turning bottle, s: about a quarter turn (common
practice)."""


@dataclass(frozen=True)
class Surface:
    """What one surface meets during a step, per quadrature point.

    Parameters
    ----------
    coefficient : numpy.ndarray
        Shape (points,), W/(m2 K): convection and radiation together.
    ambient : numpy.ndarray
        Shape (points,), K: what the coefficient draws the surface towards.
    flux : numpy.ndarray
        Shape (points,), W/m2: heat put in whatever the surface's temperature.
    """

    coefficient: Array
    ambient: Array
    flux: Array


def radiation_coefficient(temperature: Array, ambient: float, emissivity: float) -> Array:
    """Grey radiation to large surroundings as a coefficient, W/(m2 K).

    Parameters
    ----------
    temperature : numpy.ndarray
        Surface temperature, K, any shape.
    ambient : float
        Surroundings, K.
    emissivity : float
        Hemispherical, 0 to 1.
    """
    t = temperature
    return emissivity * STEFAN_BOLTZMANN * (t**2 + ambient**2) * (t + ambient)


def still_air_coefficient(temperature: Array, ambient: float, diameter: float) -> Array:
    """Free convection around a horizontal cylinder, W/(m2 K).

    Churchill and Chu 1975 (Int. J. Heat Mass Transfer 18, 1049), air at film temperature:
    viscosity and conductivity of the US Standard Atmosphere 1976, Prandtl number 0.7.

    Parameters
    ----------
    temperature : numpy.ndarray
        Surface temperature, K, any shape.
    ambient : float
        Air temperature, K.
    diameter : float
        Outer diameter, m.
    """
    film = (temperature + ambient) / 2
    viscosity = 1.458e-6 * film**1.5 / (film + 110.4)
    kinematic = viscosity * film * 287.05 / 101325.0
    prandtl = 0.7
    conductivity = 2.64638e-3 * film**1.5 / (film + 245.4 * 10 ** (-12 / film))
    rise = np.abs(temperature - ambient)
    rayleigh = 9.80665 / film * rise * diameter**3 * prandtl / kinematic**2
    shape = (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)
    nusselt = (0.6 + 0.387 * rayleigh ** (1 / 6) / shape) ** 2
    return np.asarray(nusselt * conductivity / diameter)


def flame_flux(place: Array, centre: float, width: float, peak: float) -> Array:
    """Flux of a flame ring, averaged over the turn of the piece, W/m2.

    Parameters
    ----------
    place : numpy.ndarray
        Arc length along the surface, m.
    centre, width : float
        Middle of the ring and its full width at half the peak flux (a Gaussian), m.
    peak : float
        Flux in the middle, W/m2.
    """
    return np.asarray(peak * np.exp(-4 * np.log(2.0) * ((place - centre) / width) ** 2))


@dataclass(frozen=True)
class Water:
    """A water layer on the outer surface, per quadrature point.

    Parameters
    ----------
    depth : numpy.ndarray
        Shape (points,), m; zero where dry.
    temperature : numpy.ndarray
        Shape (points,), K.
    """

    depth: Array
    temperature: Array


def drop(place: Array, centre: float, *, depth: float = 1.2e-3, half_width: float = 3e-3) -> Water:
    """A cap of cold water around `centre` (all lengths in m).

    A small drop from a pipette, 6 mm wide and 1.2 mm high, holds 17 mm3 (common practice); under
    axial symmetry it acts as a full ring.
    """
    cap = depth * np.maximum(0.0, 1 - ((place - centre) / half_width) ** 2)
    return Water(cap, np.full_like(place, ROOM))


def mixed(one: Water, other: Water) -> Water:
    """Two layers on the same points, poured together."""
    depth = one.depth + other.depth
    warmth = one.depth * one.temperature + other.depth * other.temperature
    wet = depth > 0
    return Water(depth, np.where(wet, warmth / np.where(wet, depth, 1.0), one.temperature))


def wets_below(water: Array, effusivity: float) -> Array:
    """Surface temperature above which the water floats on vapour, K.

    Two bodies that touch take the mean of their temperatures, weighted by effusivity (Carslaw
    and Jaeger, section 2.15); it must stay below `FOAM_LIMIT`.

    Parameters
    ----------
    water : numpy.ndarray
        Water temperature, K.
    effusivity : float
        sqrt(k rho c) of the glass, J/(m2 K sqrt(s)).
    """
    return FOAM_LIMIT + WATER_EFFUSIVITY / effusivity * (FOAM_LIMIT - water)


def outlasts_water(effusivity: float) -> float:
    """Surface temperature (K) above which even cold water floats, for a glass's `effusivity`."""
    return float(wets_below(np.asarray(ROOM), effusivity))


def floats(water: Water, surface: Array, effusivity: float) -> Array:
    """Share of the water that floats on its vapour, 0 to 1, for a `surface` temperature (K)."""
    limit = wets_below(water.temperature, effusivity)
    return np.asarray(1 / (1 + np.exp(-np.clip((surface - limit) / 10.0, -60, 60))))


def water_coefficient(water: Water, surface: Array, effusivity: float) -> Array:
    """Heat transfer coefficient under the water, W/(m2 K); zero where dry.

    Between wetting and floating the logarithm falls over 40 K; the last 20 micrometres of a
    layer wet only part of the surface.
    """
    wet = WETTED * (FILM_BOILING / WETTED) ** floats(water, surface, effusivity)
    return np.asarray(wet * np.minimum(1.0, water.depth / 20e-6))


def warm_water(
    water: Water, surface: Array, coefficient: Array, effusivity: float, seconds: float
) -> Water:
    """Water after `seconds`: it warms up to boiling, then boils off; where it floats it rolls off.

    Parameters
    ----------
    water : Water
        Before.
    surface, coefficient : numpy.ndarray
        Shape (points,): glass temperature (K) and coefficient (W/(m2 K)) of this step.
    effusivity : float
        sqrt(k rho c) of the glass, J/(m2 K sqrt(s)).
    seconds : float
        Length of the step, s.
    """
    wet = water.depth > 0
    store = np.where(wet, WATER_HEAT * water.depth, 1.0)
    ease = 1 - np.exp(-coefficient * seconds / store)
    reached = water.temperature + np.where(wet, ease, 0.0) * (surface - water.temperature)
    surplus = np.maximum(0.0, reached - BOILING) * store
    depth = np.maximum(0.0, water.depth - np.where(wet, surplus, 0.0) / WATER_LATENT)
    depth = depth * np.exp(-floats(water, surface, effusivity) * seconds / ROLLS_OFF)
    return Water(np.where(depth < 1e-7, 0.0, depth), np.minimum(reached, BOILING))
