"""A hot flask that cools, in still air or in an oven: what its two surfaces meet, and its steps."""

import functools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.firing import STIRRED_AIR, longest_step
from demo_app.physics.heat import (
    ROOM,
    Surface,
    radiation_coefficient,
    still_air_coefficient,
)
from demo_app.physics.oven import Programme
from demo_app.physics.relaxation import rest
from demo_app.physics.revolve.body import Glass, strained
from demo_app.physics.revolve.flask import Flask
from demo_app.physics.revolve.heat import heat_step
from demo_app.physics.revolve.surroundings import INSIDE_AIR

Array = NDArray[np.float64]

COLD = 1.5
"""Kelvin above the room below which a flask counts as cold."""
_NEAR = 100.0
"""Kelvin below the strain point down to which the glass may still relax."""
_STEP_NEAR, _STEP_SOLID = 6.0, 40.0
"""Largest change of any temperature in a step, K, near the transition and below it."""
_FIRST, _GROWTH = 0.1, 0.25
"""First step, s, and largest step as a share of the time since the start."""


@dataclass(frozen=True, eq=False)
class Warmth:
    """How warm a flask is at one instant.

    Parameters
    ----------
    time : float
        Since it left the maker's hands, s.
    temperature : numpy.ndarray
        Shape (nodes,), K.
    rate : numpy.ndarray
        Shape (nodes,): rise over the last step, K/s.
    """

    time: float
    temperature: Array
    rate: Array

    @property
    def cold(self) -> bool:
        """Whether the flask has the room's temperature, so that what stress it has will stay."""
        return float(self.temperature.max()) < ROOM + COLD


@dataclass(frozen=True, eq=False)
class Cooling:
    """A flask at one instant: its warmth and its glass."""

    warmth: Warmth
    glass: Glass


def hot(what: Flask, temperature: float) -> Cooling:
    """Stress-free flask of one temperature, K."""
    mesh, points = what.piece.mesh, what.piece.mesh.wall.r.size
    glass = Glass(
        np.full(mesh.nodes, temperature),
        np.zeros(2 * mesh.nodes),
        np.zeros((4, points)),
        points=rest(what.piece.material, np.full(points, temperature), 4),
    )
    return Cooling(Warmth(0.0, glass.temperature, np.zeros(mesh.nodes)), glass)


def cavity_radiation(
    temperature: Array, area: Array, opening: float, around: float, emissivity: float
) -> float:
    """Temperature (K) of the radiation inside a hollow whose walls see each other alike.

    In a sphere every place sees every other in proportion to its area, so one radiation fills the
    hollow: what the walls and the black opening send, over what they swallow (integrating sphere).

    Parameters
    ----------
    temperature, area : numpy.ndarray
        Shape (points,): K and m2 of the inner surface.
    opening : float
        Area of the mouth, m2.
    around : float
        Temperature outside the mouth, K.
    emissivity : float
        Of the glass.
    """
    sent = emissivity * float(area @ temperature**4) + opening * around**4
    swallowed = emissivity * float(area.sum()) + opening
    return float((sent / swallowed) ** 0.25)


def surfaces(
    what: Flask, temperature: Array, around: float, *, stirred: bool
) -> tuple[Surface, Surface]:
    """What the outside and the inside meet with air and walls at `around` (K).

    Parameters
    ----------
    what : Flask
        The flask.
    temperature : numpy.ndarray
        Shape (nodes,), K.
    around : float
        Of the room, or of the oven, K.
    stirred : bool
        Whether a fan stirs the air, as in an oven.
    """
    piece, emissivity = what.piece, what.piece.material.emissivity
    outside, inside = (face.value @ temperature for face in (piece.heat.outer, piece.heat.inner))
    air: Array | float = STIRRED_AIR
    if not stirred:
        air = still_air_coefficient(outside, around, 2 * float(piece.mesh.r.max()))
    outer = air + radiation_coefficient(outside, around, emissivity)
    filled = cavity_radiation(inside, piece.mesh.inner.weight, what.opening, around, emissivity)
    inner = INSIDE_AIR + radiation_coefficient(inside, filled, emissivity)
    return (
        Surface(outer, np.full_like(outside, around), np.zeros_like(outside)),
        Surface(inner, np.full_like(inside, filled), np.zeros_like(inside)),
    )


def cooled(what: Flask, now: Warmth, programme: Programme | None, seconds: float) -> Warmth:
    """How warm it is `seconds` later, in the oven's `programme` or (None) in the room's air."""
    around = ROOM if programme is None else programme.at(now.time + seconds / 2)
    # Coefficients of the middle of the step, foreseen by the last rate: second order in time.
    ahead = np.maximum(now.temperature + now.rate * (seconds / 2), ROOM)
    outer, inner = surfaces(what, ahead, around, stirred=programme is not None)
    piece = what.piece
    later = heat_step(piece.heat, piece.material, now.temperature, seconds, outer, inner)
    return Warmth(now.time + seconds, later, (later - now.temperature) / seconds)


def step(what: Flask, now: Cooling, programme: Programme | None, finer: int = 1) -> Cooling:
    """The flask one step later; `finer` divides the step, to see what it costs in accuracy."""
    seconds = step_seconds(what, now.warmth, programme) / finer
    warmth = cooled(what, now.warmth, programme, seconds)
    return Cooling(warmth, strained(what.piece, now.glass, warmth.temperature, seconds))


def step_seconds(what: Flask, now: Warmth, programme: Programme | None) -> float:
    """Length of the next step, s: it follows from the state alone."""
    material = what.piece.material
    near = now.temperature > material.strain_point - _NEAR
    allowed = np.where(near, _STEP_NEAR, _STEP_SOLID) / (np.abs(now.rate) + 1e-12)
    length = min(float(allowed.min()), _FIRST + _GROWTH * now.time)
    if programme is None:
        return length
    turned = max((point for point in programme.times if point <= now.time), default=0.0)
    length = min(length, longest_step(programme, now.time, now.time - turned, material))
    left = programme.next_point(now.time) - now.time
    return left if length > left / 1.001 else length


@functools.lru_cache(maxsize=8)
def cold_after(what: Flask, temperature: float, programme: Programme | None) -> float:
    """Time after which a flask that starts at `temperature` (K) is cold, s: heat alone, no stress.

    The steps are those of the whole run, so the time is that of its last step.
    """
    now = hot(what, temperature).warmth
    while not now.cold:
        now = cooled(what, now, programme, step_seconds(what, now, programme))
    return now.time
