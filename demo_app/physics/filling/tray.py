"""The tray seen face-on: a flat bottom with a thicker rim and ribs, in square cells."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.filling.flow import Cavity
from demo_app.physics.materials import Array

CELL = 2e-3
"""Side of a cell, m."""
COLUMNS, ROWS = 50, 35
"""Cells along x and y: 100 by 70 mm."""
RIM = 2
"""Width of the rim and of a rib, in cells."""
LONG_RIB = 23
"""First row of the rib that runs all along."""
SHORT_RIB = 30
"""First column of the rib that runs from the lower rim to the long one."""
COLUMN_ENDS = (0, 2, 5, 8, 11, 15, 19, 23, 27, 30, 32, 35, 38, 42, 45, 48, 50)
ROW_ENDS = (0, 2, 5, 9, 13, 17, 20, 23, 25, 28, 31, 33, 35)
"""Cells at which elements of the plate in plan end: at each rib and the rim, among others."""
GATES = {"middle": (25, 17), "side": (0, 17), "corner": (1, 1)}
"""The cell that the melt comes into; `side` is the left one, `corner` the lower left."""


@dataclass(frozen=True)
class Shape:
    """Thickness of the bottom, and of the rim and ribs, m."""

    bottom: float
    ribs: float


def thick() -> Array:
    """Where the rim and the ribs are, shape (COLUMNS, ROWS), 0 or 1."""
    found = np.zeros((COLUMNS, ROWS))
    found[:RIM] = found[-RIM:] = 1.0
    found[:, :RIM] = found[:, -RIM:] = 1.0
    found[:, LONG_RIB : LONG_RIB + RIM] = 1.0
    found[SHORT_RIB : SHORT_RIB + RIM, :LONG_RIB] = 1.0
    return found


def cavity(shape: Shape, gate: str) -> Cavity:
    """The cavity in the mould, with the gate called `gate`."""
    ribbed = thick()
    return Cavity(shape.bottom + (shape.ribs - shape.bottom) * ribbed, CELL, GATES[gate])


def cell_at(x: Array, y: Array) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Column and row of the cell at places counted from the tray's middle, m."""
    column = np.clip(np.floor(x / CELL + COLUMNS / 2).astype(int), 0, COLUMNS - 1)
    row = np.clip(np.floor(y / CELL + ROWS / 2).astype(int), 0, ROWS - 1)
    return column, row


def thickness_at(shape: Shape, x: Array, y: Array) -> Array:
    """Thickness, m, at places counted from the tray's middle, m."""
    return np.asarray(shape.bottom + (shape.ribs - shape.bottom) * thick()[cell_at(x, y)])


def middles() -> tuple[Array, Array]:
    """Middles of the cells' columns and rows, m, from the tray's middle."""
    x, y = ((np.arange(count) + 0.5 - count / 2) * CELL for count in (COLUMNS, ROWS))
    return np.asarray(x), np.asarray(y)
