"""The whole making of a moulded tray: filled, frozen, cold; instant by instant."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.filling import freezing, tray
from demo_app.physics.filling.freezing import Frozen, Plate, largest
from demo_app.physics.filling.moulding import (
    Shot,
    run,
    solid_after,
    temperature,
)
from demo_app.physics.filling.moulding import retardation as stretched_retardation
from demo_app.physics.filling.tray import CELL, COLUMNS, ROWS, Shape
from demo_app.physics.heat import ROOM
from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.mesh import PlanMesh, rectangle

FILL_INSTANTS, COOL_INSTANTS = 24, 48
LAYERS = 5
"""Layers through the half thickness for the stress of freezing."""
CUT_COLUMN = 14
"""Column of nodes of the cut whose stress is added up, near the middle."""
COOL_S = 300.0
"""Time in which the tray, out of its mould, comes to the room's temperature, s."""
CORNER = 0.015
"""Side of the square that counts as a corner, m."""
Singles = NDArray[np.float32]
CORNERS = ("lower left", "lower right", "upper left", "upper right")


@dataclass(frozen=True)
class Moulded:
    """Instants of the making; the last one is the cold tray.

    Parameters
    ----------
    times : numpy.ndarray
        Shape (n,), s.
    filled : numpy.ndarray
        Shape (n, columns, rows), float32: share of each cell.
    pressure : numpy.ndarray
        Shape (n,), Pa: at the gate.
    stretch : numpy.ndarray
        Shape (n, 2, columns, rows), float32, m: v1 and v2 of the molecules.
    heat : numpy.ndarray
        Shape (n, 2, best columns, best rows), float32, m: v1 and v2 of the stress.
    tension, compression : numpy.ndarray
        Shape (n,), Pa: largest and smallest principal stress.
    arrived : numpy.ndarray
        Shape (columns, rows), s.
    plate : Plate
        The tray as a plate.
    cold : Frozen
        Its stress in the end.
    """

    times: Array
    filled: Singles
    pressure: Array
    stretch: Singles
    heat: Singles
    tension: Array
    compression: Array
    arrived: Array
    plate: Plate
    cold: Frozen


def plan_mesh() -> PlanMesh:
    """The tray's elements in plan."""
    columns = (np.array(tray.COLUMN_ENDS) - COLUMNS / 2) * CELL
    rows = (np.array(tray.ROW_ENDS) - ROWS / 2) * CELL
    return rectangle(columns, rows)


def plate_of(material: Material, shape: Shape) -> Plate:
    """The tray as a plate of `material`."""
    mesh = plan_mesh()
    at = mesh.inside
    return freezing.plate(material, mesh, tray.thickness_at(shape, at.x, at.y))


def instants(shot: Shot) -> Array:
    """Times (s) at which the making is looked at: filling, then cooling in the mould."""
    end = solid_after(shot, shot.mould + 0.02 * (shot.hot - shot.mould))
    filling = shot.seconds * np.arange(1, FILL_INSTANTS + 1) / FILL_INSTANTS
    cooling = (np.arange(1, COOL_INSTANTS + 1) / COOL_INSTANTS) ** 2
    return np.concatenate([filling, shot.seconds + (end - shot.seconds) * cooling])


def mould(shot: Shot, shape: Shape) -> Moulded:
    """Fill, freeze and cool a tray."""
    times = instants(shot)
    states = list(run(shot, times))
    last = states[-1]
    piece = plate_of(shot.material, shape)
    column, row = tray.cell_at(piece.mesh.inside.x, piece.mesh.inside.y)
    arrived = last.arrived[column, row]

    def warmth(time: float) -> Array:
        return temperature(shot, time, arrived, piece.thickness, LAYERS)

    looked = [0.0, *times[FILL_INSTANTS // 2 - 1 : FILL_INSTANTS : 3], *times[FILL_INSTANTS:]]
    steps = [(time, warmth(time)) for time in looked]
    steps.append((float(times[-1]) + COOL_S, np.full((LAYERS, arrived.size), ROOM)))
    frozen = list(freezing.frozen(piece, steps))
    # Instants of the filling take the last stress that was worked out.
    at = np.searchsorted(np.array([s.time for s in frozen]), times + 1e-9, side="right") - 1
    shown = [*(frozen[i] for i in at), frozen[-1]]
    states.append(last)
    light = {id(state): heat_retardation(piece, state) for state in frozen}
    return Moulded(
        times=np.append(times, times[-1] + COOL_S),
        filled=_singles([state.front.filled for state in states]),
        pressure=np.array([float(state.front.pressure.max()) for state in states]),
        stretch=_singles([stretched_retardation(shot, state.stretch) for state in states]),
        heat=_singles([light[id(state)] for state in shown]),
        tension=np.array([float(largest(state.stress).max()) for state in shown]),
        compression=np.array([-float(largest(-state.stress).max()) for state in shown]),
        arrived=last.arrived,
        plate=piece,
        cold=frozen[-1],
    )


def _singles(arrays: list[Array]) -> Singles:
    return np.stack(arrays).astype(np.float32)


def heat_retardation(piece: Plate, state: Frozen) -> Array:
    """v1 and v2 of the stress on the grid of best points, m: coefficient, stress, thickness."""
    xx, yy, xy = piece.thickness * state.mean
    path = piece.material.stress_optic * np.stack([xx - yy, 2 * xy])
    return piece.form.recover.best(path)


def corner_tensions(piece: Plate, state: Frozen) -> Array:
    """Largest tension in each of `CORNERS`, Pa, shape (4,)."""
    pull = largest(state.stress).max(axis=0)
    wide, high = COLUMNS * CELL / 2, ROWS * CELL / 2
    found = []
    for up in (-1, 1):
        for side in (-1, 1):
            x, y = side * piece.mesh.inside.x, up * piece.mesh.inside.y
            near = (x > wide - CORNER) & (y > high - CORNER)
            found.append(float(pull[near].max()))
    return np.array(found)
