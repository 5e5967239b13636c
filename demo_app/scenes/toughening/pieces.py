"""The pieces of both plates, drawn from the energy that broke them."""

import functools

import numpy as np

from demo_app.physics import fragments
from demo_app.physics.breaking import INNER_SHARE, Piece
from demo_app.scenes.toughening.record import (
    FINEST_MM,
    HEIGHT_MM,
    WIDTH_MM,
    Settings,
    State,
    blown_piece,
    ground_of,
    other_piece,
    quench_of,
)


def shards(settings: Settings, state: State) -> fragments.Cells:
    """Pieces of the blown plate; one if it is whole."""
    if state.broke_s is None:
        return _whole()
    side = _side(settings, state)
    if side is not None:
        return _dice(max(side, 1e-3 * FINEST_MM))
    return _loaded(state, blown_piece(settings, state))


def diced(settings: Settings, state: State) -> bool:
    """Whether the blown plate breaks into dice, by the energy inside alone."""
    return _side(settings, state) is not None


def _side(settings: Settings, state: State) -> float | None:
    """Side of the dice, m; None if the plate holds too little energy for at least four."""
    ready, column = quench_of(settings), state.blown.column
    ground = ground_of(settings, state)
    z, stress = (ready.wall.point_z, column.stress) if ground is None else (ground.z, ground.stress)
    energy = fragments.held(ready.material, z, stress)
    side = fragments.die_side(ready.material, float(z[-1] - z[0]), energy)
    return side if side is not None and side < 0.5e-3 * HEIGHT_MM else None


def other_shards(settings: Settings, state: State) -> fragments.Cells:
    """Pieces of the other plate; one if it is whole."""
    return _whole() if state.other_broke_s is None else _loaded(state, other_piece(settings))


def _loaded(state: State, piece: Piece) -> fragments.Cells:
    """Long shards of a plate that only the load's energy has broken."""
    if state.act == "hit":
        return _star(piece.ray_length(piece.blow_limit()))
    side = piece.shard_side(piece.bend_limit()) if state.act == "bend" else None
    return _strips(side)


def _whole() -> fragments.Cells:
    half = np.array([WIDTH_MM, HEIGHT_MM]) / 2e3
    return (half * np.array([[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]]),)


@functools.lru_cache(maxsize=4)
def _dice(side: float) -> fragments.Cells:
    return fragments.dice(1e-3 * WIDTH_MM, 1e-3 * HEIGHT_MM, side)


@functools.lru_cache(maxsize=4)
def _star(length: float) -> fragments.Cells:
    return fragments.star(1e-3 * WIDTH_MM, 1e-3 * HEIGHT_MM, length)


@functools.lru_cache(maxsize=4)
def _strips(side: float | None) -> fragments.Cells:
    width = 1e-3 * WIDTH_MM
    return fragments.strips(width, 1e-3 * HEIGHT_MM, INNER_SHARE * width, side)
