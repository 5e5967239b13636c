"""The pieces of both plates, drawn from the energy that broke them."""

import functools

import numpy as np

from demo_app.physics import fragments
from demo_app.physics.breaking import INNER_SHARE, Piece
from demo_app.physics.cut_edges import net
from demo_app.scenes.toughening.record import (
    FINEST_MM,
    HEIGHT_MM,
    WIDTH_MM,
    Array,
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


def piece_count(settings: Settings, state: State) -> int:
    """Pieces of the blown plate by their energy, those too small to be drawn included."""
    side = _side(settings, state)
    if state.broke_s is None or side is None:
        return len(shards(settings, state))
    return fragments.dice_count(1e-6 * WIDTH_MM * HEIGHT_MM, side)


def diced(settings: Settings, state: State) -> bool:
    """Whether the blown plate breaks into dice, by the energy inside alone."""
    return _side(settings, state) is not None


def _left(settings: Settings, state: State) -> tuple[Array, Array]:
    """Places (m) and stress (Pa) through what the wheel has left of the blown plate."""
    ready, ground = quench_of(settings), ground_of(settings, state)
    if ground is None:
        return ready.wall.point_z, state.blown.column.stress
    return ground.z, ground.stress


def _side(settings: Settings, state: State) -> float | None:
    """Side of the dice, m; None if the plate holds too little energy for at least four."""
    glass, (z, stress) = quench_of(settings).material, _left(settings, state)
    side = fragments.die_side(glass, float(z[-1] - z[0]), fragments.held(glass, z, stress))
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


def net_in_dice(settings: Settings, state: State, x: Array, y: Array) -> tuple[Array, Array] | None:
    """Stress ``xx - yy`` and ``2 xy`` (Pa) that the broken plate's dice keep; None: no dice.

    `x` and `y` are places on the plate, m.
    """
    side = _side(settings, state)
    if state.broke_s is None or side is None:
        return None
    z, stress = _left(settings, state)
    drawn = max(side, 1e-3 * FINEST_MM)
    both = _net(drawn, x.tobytes(), y.tobytes(), float(z[-1] - z[0]))
    pull = float(stress.max())
    return pull * both[0], pull * both[1]


@functools.lru_cache(maxsize=4)
def _net(side: float, x: bytes, y: bytes, thickness: float) -> tuple[Array, Array]:
    seeds = fragments.dice_seeds(1e-3 * WIDTH_MM, 1e-3 * HEIGHT_MM, side)
    return net(seeds, np.frombuffer(x), np.frombuffer(y), thickness)
