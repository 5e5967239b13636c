"""Plates side by side, apart or in one piece: in a stepped piece thick and thin load each other.

The joint is a line, along which all parts share one strain; across it each part moves freely and
carries no net force. Every part is wide beside its thickness and symmetrical about its middle
plane, so nothing bends. Close to the joint and to the edges, within about one thickness, the real
stress differs (Saint-Venant's principle).
"""

import itertools
import math
from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np

from demo_app.physics.column import advance as column
from demo_app.physics.column.advance import ColumnState
from demo_app.physics.column.heat import Faces, heat_step
from demo_app.physics.column.wall import CELLS, Wall, plate
from demo_app.physics.materials import Array, Material
from demo_app.physics.plane import plane_response, plane_strains
from demo_app.physics.relaxation import finish, predict


@dataclass(frozen=True)
class Piece:
    """Plates of one material and equal widths.

    Parameters
    ----------
    walls : tuple of Wall
        One wall a part, of one layer each.
    joined : bool
        Whether the parts are one piece.
    """

    walls: tuple[Wall, ...]
    joined: bool = False


@dataclass(frozen=True)
class PieceState:
    """One instant.

    Parameters
    ----------
    parts : tuple of ColumnState
        One state a part; its stress is the one along the joint, its strain too.
    crosswise : tuple of numpy.ndarray
        One array a part, shape (p,), Pa: in-plane stress across the joint. Parts that are not
        joined carry the same stress in both directions.
    """

    parts: tuple[ColumnState, ...]
    crosswise: tuple[Array, ...]

    @property
    def time(self) -> float:
        """Since the start, s."""
        return self.parts[0].time


def piece(
    material: Material, thicknesses: tuple[float, ...], *, joined: bool, cells: int = CELLS
) -> Piece:
    """Piece of `material` whose parts have these `thicknesses` (m), with `cells` cells each."""
    return Piece(tuple(plate(material, one, cells) for one in thicknesses), joined)


def start(what: Piece, temperature: float) -> PieceState:
    """Stress-free piece of one temperature, K."""
    parts = tuple(column.start(wall, temperature) for wall in what.walls)
    return PieceState(parts, tuple(part.stress for part in parts))


def step_length(what: Piece, state: PieceState, faces: Faces, since: float) -> float:
    """Length of the next step, s; `since` is the time since the faces last jumped."""
    return min(
        column.step_length(wall, part, faces, since)
        for wall, part in zip(what.walls, state.parts, strict=True)
    )


def advance(what: Piece, state: PieceState, dt: float, before: Faces, after: Faces) -> PieceState:
    """One step of `dt` seconds; all faces meet `before` at its start and `after` at its end."""
    temperatures = tuple(
        heat_step(wall, part.temperature, dt, before, after)
        for wall, part in zip(what.walls, state.parts, strict=True)
    )
    return carry(what, state, temperatures, dt)


def carry(what: Piece, state: PieceState, temperatures: tuple[Array, ...], dt: float) -> PieceState:
    """Balance the piece after a step of `dt` seconds to given node temperatures, K."""
    if what.joined:
        return _carry_joined(what, state, temperatures, dt)
    parts = tuple(
        column.carry(wall, part, temperature, dt)
        for wall, part, temperature in zip(what.walls, state.parts, temperatures, strict=True)
    )
    return PieceState(parts, tuple(part.stress for part in parts))


def step(
    what: Piece,
    state: PieceState,
    faces: Callable[[float], Faces],
    since: float,
    stop: float,
    *,
    longest: float = math.inf,
    finer: int = 1,
) -> PieceState:
    """One step, which ends at `stop` (s) at the latest.

    Parameters
    ----------
    what, state : Piece, PieceState
        Where to begin.
    faces : callable
        ``faces(time) -> (left, right)``.
    since : float
        Time since the faces last jumped, s.
    stop : float
        Time at which they jump or turn next, s.
    longest : float
        Longest step that the faces' own changes allow, s.
    finer : int
        Divides the step, to see what it costs in accuracy.
    """
    dt = min(step_length(what, state, faces(state.time), since), longest)
    lands = stop if state.time + 1.001 * dt > stop else state.time + dt
    edges = np.linspace(state.time, lands, finer + 1)
    for t0, t1 in itertools.pairwise(edges):
        # A jump belongs to one side only: look just inside the step.
        inside = 1e-6 * (t1 - t0)
        both = faces(float(t0 + inside)), faces(float(t1 - inside))
        state = advance(what, state, float(t1 - t0), *both)
    return replace(state, parts=tuple(replace(part, time=float(lands)) for part in state.parts))


def settled(what: Piece, state: PieceState, temperature: float) -> PieceState:
    """The solid piece once all of it has this `temperature` (K): what stress it has stays."""
    even = tuple(np.full_like(part.temperature, temperature) for part in state.parts)
    return carry(what, state, even, 3600.0)


def mean_stress(wall: Wall, stress: Array) -> float:
    """Mean through the wall, Pa: what the other parts load this one with."""
    return float(wall.weights @ stress) / wall.thickness


def _carry_joined(
    what: Piece, state: PieceState, temperatures: tuple[Array, ...], dt: float
) -> PieceState:
    steps = [
        predict(wall.layers[0].material, part.memory[0], temperature, dt)
        for wall, part, temperature in zip(what.walls, state.parts, temperatures, strict=True)
    ]
    sums = [
        tuple(float(wall.weights @ term) for term in plane_response(step))
        for wall, step in zip(what.walls, steps, strict=True)
    ]
    force = sum(along - other / own * across for along, across, own, other in sums)
    stiffness = sum(own - other**2 / own for _, _, own, other in sums)
    shared = -force / stiffness
    parts, crosswise = [], []
    for wall, part, step, (_, across, own, other) in zip(
        what.walls, state.parts, steps, sums, strict=True
    ):
        strains = plane_strains(step, shared, -(across + other * shared) / own)
        memory, stress = finish(wall.layers[0].material, part.memory[0], step, strains)
        parts.append(
            ColumnState(
                time=part.time + dt,
                temperature=step.temperature,
                rate=(step.temperature - part.temperature) / dt,
                memory=(memory,),
                strain=part.strain + shared,
                curvature=0.0,
                stress=stress[0],
            )
        )
        crosswise.append(stress[1])
    return PieceState(tuple(parts), tuple(crosswise))
