"""An oven whose door is opened for a while, and whose thermometer may be wrong."""

import math
from dataclasses import dataclass

from demo_app.physics import stepped
from demo_app.physics.annealing import birefringence
from demo_app.physics.annealing_search import worked_at
from demo_app.physics.column.advance import ColumnState
from demo_app.physics.column.heat import Face, Faces
from demo_app.physics.firing import STIRRED_AIR, cold, longest_step
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.materials import Material
from demo_app.physics.oven import Programme
from demo_app.physics.strength import handled, probability

CELLS = 16
AREA = 0.02
"""Surface whose flaws are met by the pull of cooling, m2: both faces of a hand-sized piece."""
_FADES = 100.0
"""Kelvin above the room over which an error of the thermometer fades: a cold oven reads right."""


@dataclass(frozen=True)
class Door:
    """A door that is opened.

    Parameters
    ----------
    opens, shuts : float
        s from the beginning of the programme.
    inside : float
        Temperature to which air and walls fall meanwhile, K.
    """

    opens: float
    shuts: float
    inside: float


@dataclass(frozen=True)
class Fired:
    """What a programme leaves.

    Parameters
    ----------
    birefringence : float
        Retardation over path of the cold piece.
    surface : float
        Stress at its surface, Pa.
    pull : float
        Largest pull at its surface on the way, Pa.
    odds : float
        Probability that this pull cracks a handled piece.
    times, inside, outside : tuple of float
        s and K: middle and surface of the piece on the way.
    """

    birefringence: float
    surface: float
    pull: float
    odds: float
    times: tuple[float, ...]
    inside: tuple[float, ...]
    outside: tuple[float, ...]


def met(programme: Programme, door: Door | None, error: float, time: float) -> float:
    """Temperature of the oven at `time` (s), K; `error` is what the thermometer hides."""
    told = programme.at(time)
    if door is not None and door.opens <= time < door.shuts:
        return min(told, door.inside)
    return told + error * min(1.0, (told - ROOM) / _FADES)


def fired(
    glass: Material,
    thickness: float,
    programme: Programme,
    door: Door | None = None,
    *,
    error: float = 0.0,
    air: float = 1.0,
) -> Fired:
    """A plate fresh from the maker's hands after `programme`.

    Parameters
    ----------
    glass, thickness : Material, float
        The plate, m.
    programme, door : Programme, Door or None
        What the oven is told, and who opens it.
    error : float
        True temperature less what the oven's thermometer says, K.
    air : float
        Factor on the convection of a stirred oven.
    """
    what = stepped.piece(glass, (thickness,), joined=False, cells=CELLS)
    state = stepped.start(what, worked_at(glass))
    jumps = (door.opens, door.shuts) if door is not None else ()

    def faces(time: float) -> Faces:
        face = Face(met(programme, door, error, time), air * STIRRED_AIR, glass.emissivity)
        return face, face

    pull, course = 0.0, []
    while state.time < programme.duration or not cold(state):
        now = state.time
        stop = min([programme.next_point(now), *(one for one in jumps if one > now + 1e-9)])
        turned = max(one for one in (0.0, *programme.times, *jumps) if one <= now + 1e-9)
        jumped = max(one for one in (0.0, *jumps) if one <= now + 1e-9)
        longest = longest_step(programme, now, now - turned, glass)
        state = stepped.step(what, state, faces, now - jumped, stop, longest=longest)
        part = state.parts[0]
        assert isinstance(part, ColumnState)
        pull = max(pull, *part.surface)
        middle = float(part.temperature[len(part.temperature) // 2])
        course.append((state.time, middle, float(part.temperature[0])))
    settled = stepped.settled(what, state, ROOM)
    flaws = handled(glass.characteristic_strength, glass.weibull_modulus)
    risk = AREA * (pull / flaws.scale) ** flaws.modulus
    times, inside, outside = zip(*course, strict=True)
    part = settled.parts[0]
    assert isinstance(part, ColumnState)
    return Fired(
        birefringence(glass, settled), part.surface[0], pull, probability(risk),
        times, inside, outside,
    )  # fmt: skip


def clock(seconds: float) -> str:
    """Hours and minutes, as an oven's timer has them.

    Examples
    --------
    >>> clock(5430.0)
    '1:31'
    """
    minutes = math.ceil(round(seconds / 60, 6))
    return f"{minutes // 60}:{minutes % 60:02d}"


def celsius(kelvin: float) -> float:
    """Degrees Celsius."""
    return kelvin - ZERO_C
