"""Plates in an oven or in the air of a room, until they are cold.

The oven's air and walls have the programme's temperature. Air that a fan stirs and the radiation of
the walls bring the glass's surfaces to it.
"""

import math

import numpy as np

from demo_app.physics.column.heat import Face, Faces
from demo_app.physics.heat import ROOM
from demo_app.physics.materials import Material
from demo_app.physics.oven import Programme
from demo_app.physics.stepped import Piece, PieceState, step

STIRRED_AIR = 25.0
"""Convection in an oven with a fan, W/(m2 K): between still air, 5 to 10, and a light draught, 25
to 50 (handbook range, from memory). Radiation comes on top: near 100 W/(m2 K) at 550 degC."""
STILL_AIR = 9.0
"""Free convection of hot glass in a room, W/(m2 K): 8.6 at 200 degC to 10 at 600 degC on an upright
plate of 0.1 m (Churchill and Chu 1975, Int. J. Heat Mass Transfer 18, 1323). Radiation comes on
top."""

COLD = 0.5
"""Kelvin above the room below which a piece counts as cold: what gradient is left in 10 mm of
soda-lime is worth less than 0.01 MPa."""
_STEP_NEAR, _STEP_SOLID = 2.5, 20.0
"""Largest change of the oven in a step near the glass transition and well below it, K."""
_SETTLES, _GROWTH = 200.0, 0.25
"""Step after the oven has come to rest, s, and its growth with the time since."""
_SOLID_BELOW = 150.0
"""Kelvin below the strain point down to which a glass may still relax in an oven."""


def oven_face(temperature: float, emissivity: float) -> Face:
    """What a surface meets in an oven at `temperature`, K."""
    return Face(temperature, STIRRED_AIR, emissivity)


def air_face(emissivity: float) -> Face:
    """What a surface meets in the still air of a room."""
    return Face(ROOM, STILL_AIR, emissivity)


def cold(state: PieceState) -> bool:
    """Whether the piece has the room's temperature, so that what stress it has will stay."""
    return all(float(part.temperature.max()) < ROOM + COLD for part in state.parts)


def fired(what: Piece, start: PieceState, programme: Programme, *, finer: int = 1) -> PieceState:
    """The cold piece after `programme`, which must end at the room's temperature.

    Parameters
    ----------
    what, start : Piece, PieceState
        The piece as it comes into the oven.
    programme : Programme
        What the oven does; its times count as the piece's.
    finer : int
        Divides every step, to see what it costs in accuracy.
    """
    glass = what.walls[0].layers[0].material

    def faces(time: float) -> Faces:
        face = oven_face(programme.at(time), glass.emissivity)
        return face, face

    state = start
    while state.time < programme.duration or not cold(state):
        stop = programme.next_point(state.time)
        turned = max((point for point in programme.times if point <= state.time), default=0.0)
        longest = longest_step(programme, state.time, state.time - turned, glass)
        since = state.time - start.time
        state = step(what, state, faces, since, stop, longest=longest, finer=finer)
    return state


def longest_step(programme: Programme, time: float, rested: float, glass: Material) -> float:
    """Longest step of an oven with `glass` in it that follows its changes, s.

    Parameters
    ----------
    programme : Programme
        What the oven does.
    time : float
        Where on the programme, s.
    rested : float
        Time since it last turned, s.
    glass : Material
        What lies in it.
    """
    rate = abs(programme.rate(time))
    if rate == 0:
        return _SETTLES + _GROWTH * rested
    near = programme.at(time) > glass.strain_point - _SOLID_BELOW
    return (_STEP_NEAR if near else _STEP_SOLID) / rate


def in_air(what: Piece, start: PieceState, *, finer: int = 1) -> PieceState:
    """The cold piece after cooling in still air."""
    face = air_face(what.walls[0].layers[0].material.emissivity)
    state = start
    while not cold(state):
        since = state.time - start.time
        state = step(what, state, lambda _: (face, face), since, math.inf, finer=finer)
    return state


def settling_time(what: Piece, excess: float, face: Face) -> float:
    """Upper estimate of the time from `excess` kelvin above the room until `cold`, s.

    The slowest mode of a plate: its heat over the coefficient, and the time heat takes through it.
    """
    worst = 0.0
    for wall in what.walls:
        glass, half, room = wall.layers[0].material, wall.thickness / 2, np.array([ROOM])
        heat = glass.density * float(glass.heat_capacity(room)[0])
        within = 4 * half**2 * heat / (math.pi**2 * float(glass.conductivity_at(room)[0]))
        worst = max(worst, heat * half / face.slope(ROOM) + within)
    return worst * math.log(max(2.0, 2 * excess / COLD))
