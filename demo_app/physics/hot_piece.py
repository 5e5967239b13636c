"""How long a hot piece stays hot in still air, on the short side: a time before which it is hot.

All that is not known is taken so that the piece cools faster: both faces are free, they are as
black as can be, the air streams past a small piece, and by more than correlations say.
"""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.integrate import solve_ivp

from demo_app.physics.column.heat import Face, heat_step
from demo_app.physics.column.wall import plate
from demo_app.physics.heat import ROOM, STEFAN_BOLTZMANN, still_air_coefficient
from demo_app.physics.materials import Material

Array = NDArray[np.float64]

SMALL = 0.02
"""Diameter that the air streams around, m: the larger the piece, the smaller the coefficient."""
FAST = 1.25
"""Factor on the coefficient: correlations for free convection are good to some 20 % (handbooks,
from memory)."""
BEYOND = 0.1
"""Length by which a profile goes on beyond both its ends, m, as it is there."""
LONGEST = 1e6
"""End of every run, s."""
_FALL = 0.02
"""Share of the surface's excess that is lost in a step."""


@dataclass(frozen=True)
class Profile:
    """A wall along a piece.

    Parameters
    ----------
    place : numpy.ndarray
        Shape (n,), increasing, m: along the wall.
    thickness, temperature : numpy.ndarray
        Shape (n,): m; mean through the wall, K.
    """

    place: Array
    thickness: Array
    temperature: Array


def fast_coefficient(surface: Array, air: float) -> Array:
    """Free convection, more than there will be, W/(m2 K); temperatures in K, any shape."""
    return FAST * still_air_coefficient(surface, air, SMALL)


def fast_loss(surface: Array, air: float) -> Array:
    """Heat that a face gives to still air and to black surroundings, W/m2."""
    convected = fast_coefficient(surface, air) * (surface - air)
    return np.asarray(convected + STEFAN_BOLTZMANN * (surface**4 - air**4))


def wall_cooling_time(
    material: Material,
    thickness: float,
    start: float,
    reach: float,
    air: float = ROOM,
    *,
    coefficient: Callable[[Array, float], Array] = fast_coefficient,
    emissivity: float = 1.0,
    finer: int = 1,
) -> float:
    """Time in which the surfaces of a wide wall of one temperature fall to another.

    Parameters
    ----------
    material : Material
        The glass.
    thickness : float
        m; both faces cool.
    start, reach, air : float
        K.
    coefficient : callable
        ``coefficient(surface, air)``: convection, W/(m2 K).
    emissivity : float
        Of the faces.
    finer : int
        Divides every step.

    Returns
    -------
    float
        s; 0 if the wall is as cold already, infinite if the air is too warm.
    """
    if start <= reach:
        return 0.0
    if reach <= air:
        return float("inf")
    wall = plate(material, thickness)
    nodes = np.full(wall.z.size, start)
    time = 0.0
    while time < LONGEST:
        surface = nodes[:1]
        face = Face(air, float(coefficient(surface, air)[0]), emissivity)
        stored = material.density * float(material.heat_capacity(surface)[0]) * thickness / 2
        rate = -face.heat(float(surface[0])) / stored
        dt = _FALL / finer * float(surface[0] - air) / rate
        after = heat_step(wall, nodes, dt, (face, face), (face, face))
        if after[0] <= reach:
            gone, whole = (np.log((nodes[0] - air) / (t - air)) for t in (reach, after[0]))
            return time + dt * float(gone / whole)
        nodes, time = after, time + dt
    return LONGEST


def profile_cooling_time(
    material: Material,
    profile: Profile,
    reach: float,
    air: float = ROOM,
    *,
    loss: Callable[[Array, float], Array] = fast_loss,
) -> float:
    """Time in which the hottest place of a wall falls to a temperature; heat also runs along it.

    Through the wall there is one temperature, which again lets it cool faster.

    Parameters
    ----------
    material : Material
        The glass.
    profile : Profile
        The wall now.
    reach, air : float
        K.
    loss : callable
        ``loss(surface, air)``: heat that each face gives away, W/m2.

    Returns
    -------
    float
        s; 0 if all of it is as cold already, infinite if the air is too warm.
    """
    if profile.temperature.max() <= reach:
        return 0.0
    if reach <= air:
        return float("inf")
    wall = _longer(profile)
    apart = np.diff(wall.place)
    around = np.gradient(wall.place)
    between = (wall.thickness[1:] + wall.thickness[:-1]) / 2

    def rise(_time: float, temperature: Array) -> Array:
        k = material.conductivity_at((temperature[1:] + temperature[:-1]) / 2)
        flow = k * between * np.diff(temperature) / apart
        heat = np.diff(flow, prepend=0.0, append=0.0) / around - 2 * loss(temperature, air)
        stored = material.density * material.heat_capacity(temperature) * wall.thickness
        return np.asarray(heat / stored)

    def excess(_time: float, temperature: Array) -> float:
        return float(temperature.max() - reach)

    excess.terminal = True  # type: ignore[attr-defined]
    done = solve_ivp(
        rise,
        (0.0, LONGEST),
        wall.temperature,
        method="LSODA",
        events=excess,
        rtol=1e-6,
        atol=1e-4,
        lband=1,
        uband=1,
    )
    return float(done.t[-1])


def _longer(profile: Profile) -> Profile:
    """The profile with what lies beyond its ends, as it is there."""
    beyond = BEYOND * np.linspace(0, 1, 26)[1:] ** 2
    count = beyond.size

    def ends(values: Array) -> Array:
        return np.concatenate([np.full(count, values[0]), values, np.full(count, values[-1])])

    place = profile.place
    return Profile(
        np.concatenate([place[0] - beyond[::-1], place, place[-1] + beyond]),
        ends(profile.thickness),
        ends(profile.temperature),
    )
