"""What is seen of the dish: colours, the melt's front, rim and ribs, arrows, a chart."""

import functools
import math
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.physics.filling import tray
from demo_app.physics.filling.freezing import best_places, largest
from demo_app.physics.filling.moulded import Moulded
from demo_app.physics.filling.tray import CELL, COLUMNS, ROWS
from demo_app.scenes.scene import Chart, Curve, Mark, Outline

Array = NDArray[np.float64]

WIDE_MM, HIGH_MM = 1e3 * CELL * COLUMNS, 1e3 * CELL * ROWS
_ALONG, _ACROSS = 151, 106
_RAYS = 73
_LINE_MM = -10.0
"""Height of the line along which the chart looks."""


class Shares(NamedTuple):
    """v1 and v2 (nm) of the molecules and of the stress on one grid, shape (2, rows, columns)."""

    stretch: Array
    heat: Array

    @property
    def whole(self) -> Array:
        """Both together."""
        return self.stretch + self.heat


def shares(made: Moulded, instant: int, stretch_left: float, heat_left: float) -> Shares:
    """What the light meets at an instant, less what warmth has undone."""
    mesh = made.plate.mesh
    flow = _spread(made.stretch[instant], *tray.middles())
    heat = _spread(made.heat[instant], *best_places(mesh))
    return Shares(1e9 * stretch_left * flow, 1e9 * heat_left * heat)


def _spread(values: NDArray[np.floating[Any]], x: Array, y: Array) -> Array:
    """Values (2, columns, rows) at places x and y, m, on the map's grid (2, rows, columns)."""
    along, up = _grid()
    to_x = _linear(tuple(x.tolist()), tuple((1e-3 * along).tolist()))
    to_y = _linear(tuple(y.tolist()), tuple((1e-3 * up).tolist()))
    return np.asarray(to_y @ np.swapaxes(values, 1, 2) @ to_x.T)


def _grid() -> tuple[Array, Array]:
    return (
        np.linspace(-WIDE_MM / 2, WIDE_MM / 2, _ALONG),
        np.linspace(-HIGH_MM / 2, HIGH_MM / 2, _ACROSS),
    )


@functools.lru_cache(maxsize=8)
def _linear(nodes: tuple[float, ...], places: tuple[float, ...]) -> Array:
    """Matrix that takes values at `nodes` to `places`, linearly."""
    each = np.eye(len(nodes))
    return np.stack([np.interp(places, nodes, one) for one in each], axis=1)


def stage(found: Shares) -> Stage:
    """The dish between the polarizers."""
    along, up = _grid()
    v1, v2 = found.whole.astype(np.float32)
    half = np.full(along.size, HIGH_MM / 2)
    piece = RetardationMap(v1, v2, up / (HIGH_MM / 2), along, half, mirrored=False)
    return Stage((Placed(piece),), 1.15 * WIDE_MM, 1.15 * HIGH_MM)


def chart(found: Shares) -> Chart:
    """Retardation along a line: of the molecules, of the stress, of both."""
    along, up = _grid()
    row = int(np.argmin(np.abs(up - _LINE_MM)))
    parts = (("stretch", found.stretch), ("heat", found.heat), ("both", found.whole))
    curves = tuple(Curve(name, along, np.hypot(*part[:, row])) for name, part in parts)
    return Chart("place", "mm", "colour", "nm", curves)


def outlines(made: Moulded, instant: int, gate: str) -> tuple[Outline, ...]:
    """Rim and ribs; while it fills, the melt's front."""
    drawn = [Outline("interlayer", x, y) for x, y in _edges()]
    if instant >= 0 and made.filled[instant].min() < 1.0:
        drawn.append(_front(made, instant, gate))
    x, y = _gate_mm(gate)
    ring = np.linspace(0, 2 * np.pi, 25)
    drawn.append(Outline("gate", x + 1.5 * np.cos(ring), y + 1.5 * np.sin(ring)))
    return tuple(drawn)


def _gate_mm(gate: str) -> tuple[float, float]:
    x, y = tray.middles()
    column, row = tray.GATES[gate]
    return 1e3 * float(x[column]), 1e3 * float(y[row])


def _edges() -> list[tuple[Array, Array]]:
    rim = 1e3 * CELL * tray.RIM
    right, up = WIDE_MM / 2 - rim, HIGH_MM / 2 - rim
    low = 1e3 * CELL * (tray.LONG_RIB - ROWS / 2)
    left = 1e3 * CELL * (tray.SHORT_RIB - COLUMNS / 2)

    def box(x0: float, x1: float, y0: float, y1: float) -> tuple[Array, Array]:
        return np.array([x0, x1, x1, x0, x0]), np.array([y0, y0, y1, y1, y0])

    return [
        box(-right, right, low + rim, up),
        box(-right, left, -up, low),
        box(left + rim, right, -up, low),
    ]


def _front(made: Moulded, instant: int, gate: str) -> Outline:
    """Outline of the melt: from the gate in every direction to where it has not yet arrived."""
    x, y = tray.middles()
    column, row = tray.GATES[gate]
    reach = np.arange(0.0, 1.25e-1, 0.5e-3)
    angle = np.linspace(0, 2 * math.pi, _RAYS)[:, None]
    at_x = x[column] + reach * np.cos(angle)
    at_y = y[row] + reach * np.sin(angle)
    inside = (np.abs(at_x) <= 5e-4 * WIDE_MM) & (np.abs(at_y) <= 5e-4 * HIGH_MM)
    there = made.filled[instant][tray.cell_at(at_x, at_y)] > 0.5
    ends = np.argmin(inside & (there | (reach < 1.5e-3)), axis=1)
    pick = np.arange(_RAYS)
    return Outline("cut", 1e3 * at_x[pick, ends], 1e3 * at_y[pick, ends])


def marks(made: Moulded, heat_left: float) -> tuple[Mark, ...]:
    """Arrows where the cold dish is pulled and squeezed hardest by the stress of freezing."""
    mean = heat_left * made.cold.mean
    at = made.plate.mesh.inside
    found = []
    for kind, stress in (("pull", mean), ("squeeze", -mean)):
        size = largest(stress)
        k = int(size.argmax())
        if size[k] > 0.5e6:
            xx, yy, xy = stress[:, k]
            angle = math.degrees(math.atan2(2 * xy, xx - yy) / 2)
            found.append(Mark(kind, 1e3 * float(at.x[k]), 1e3 * float(at.y[k]), 8.0, angle))
    return tuple(found)
