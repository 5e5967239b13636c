"""What is seen: both plates face-on, slices edge-on, shards, stress over depth."""

import functools

import numpy as np

from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.physics.grades import HEAT_STRENGTHENED, TOUGHENED
from demo_app.physics.heat import ZERO_C
from demo_app.physics.jet_lattice import Lattice, lattice
from demo_app.physics.material_files import material
from demo_app.physics.toughening import Quench
from demo_app.scenes.scene import Chart, Curve, Mark, Outline, Section, View
from demo_app.scenes.toughening.pieces import net_in_dice, other_shards, shards
from demo_app.scenes.toughening.record import (
    APART_MM,
    HEIGHT_MM,
    MAGNIFIED,
    PLATE_Y_MM,
    SLICE_LENGTH_MM,
    SLICE_MM,
    SLICE_PATH,
    SLICE_Y_MM,
    WIDTH_MM,
    Array,
    Settings,
    State,
    ground_of,
    lifted,
    other_profile,
    profile,
    quench_of,
)

_LINES = 160
"""Of a slice's picture."""
_NET_MM = 0.4
"""Fineness of the map of a broken plate."""


def view(settings: Settings, state: State) -> View:
    """Both plates face-on, an imagined slice of each edge-on, and stress over depth."""
    left, right = -APART_MM / 2, APART_MM / 2
    whole, other_whole = state.broke_s is None, state.other_broke_s is None
    placed = [
        Placed(_face(settings, state), left, PLATE_Y_MM),
        Placed(_dark(), right, PLATE_Y_MM),
    ]
    if whole:
        z, stress = profile(settings, state)
        placed.append(Placed(_slice(settings, z, stress), left, SLICE_Y_MM))
    if other_whole:
        z, stress = other_profile(settings, state)
        placed.append(Placed(_slice(settings, z, stress), right, SLICE_Y_MM))
    stage = Stage(tuple(placed), 2 * WIDTH_MM + 60, HEIGHT_MM + SLICE_MM + 40)
    return View(
        stage,
        _section(settings, state),
        _marks(settings, state),
        _outlines(settings, state),
        _chart(settings, state),
    )


def _face(settings: Settings, state: State) -> RetardationMap:
    """Face-on: what jets and edges have left, or in pieces what the cracks have."""
    half_x, half_y = WIDTH_MM / 2, HEIGHT_MM / 2
    if state.broke_s is not None:
        x, y = (
            np.linspace(-half, half, 2 * round(half / _NET_MM) + 1) for half in (half_x, half_y)
        )
        kept = net_in_dice(settings, state, 1e-3 * x, 1e-3 * y)
        if kept is None:
            return _dark()
        difference, shear = kept
    else:
        uneven = settings.jet_unevenness_pct / 100
        seen = _lattice(quench_of(settings), uneven, state.blown.column.time)
        # The outermost elements' middles are drawn at the edge.
        x, y = seen.x / seen.x[-1] * half_x, seen.y / seen.y[-1] * half_y
        difference, shear = seen.xx - seen.yy, 2 * seen.xy
    scale = 1e9 * material(settings.glass).stress_optic * 1e-3 * settings.thickness_mm
    return RetardationMap(
        (scale * difference).astype(np.float32),
        (scale * shear).astype(np.float32),
        y / half_y,
        x,
        np.full(x.size, half_y),
        mirrored=False,
    )


def _dark() -> RetardationMap:
    none = np.zeros((2, 2), np.float32)
    ends = np.array([-1.0, 1.0])
    half = np.full(2, HEIGHT_MM / 2)
    return RetardationMap(none, none, ends, ends * WIDTH_MM / 2, half, mirrored=False)


def _slice(settings: Settings, z: Array, stress: Array) -> RetardationMap:
    """A slice `SLICE_PATH` thick, edge-on: `z` (m) from its middle, `stress` (Pa) along it."""
    # Means over equal strips: they sum to no force as exactly as the Column's own stress does.
    edges = np.linspace(z[0], z[-1], _LINES + 1)
    both = np.union1d(edges, z)
    at = np.interp(both, z, stress)
    force = np.concatenate([[0.0], np.cumsum(np.diff(both) * (at[1:] + at[:-1]) / 2)])
    mean = np.diff(np.interp(edges, both, force)) / np.diff(edges)
    line = 1e9 * material(settings.glass).stress_optic * SLICE_PATH * mean
    v1 = np.repeat(line[:, None], 2, axis=1).astype(np.float32)
    ends = np.array([-0.5, 0.5]) * SLICE_LENGTH_MM
    across = np.linspace(-1.0, 1.0, _LINES)
    return RetardationMap(
        v1, np.zeros_like(v1), across, ends, np.full(2, _slice_half_mm(settings, z)), mirrored=False
    )


def _slice_half_mm(settings: Settings, z: Array) -> float:
    """Half the drawn height of a slice; what the wheel took off is missing from it."""
    return float(SLICE_MM / 2 * (z[-1] - z[0]) / (1e-3 * settings.thickness_mm))


def _section(settings: Settings, state: State) -> Section:
    z, stress = profile(settings, state)
    wall, column = quench_of(settings).wall, state.blown.column
    ground = ground_of(settings, state)
    curl = 0.0 if ground is None or not lifted(state) else ground.curvature
    place_x, place_y = np.meshgrid(np.linspace(-30.0, 30.0, 25), 1e3 * z)
    heat = np.interp(z, wall.z, column.temperature) - ZERO_C
    sag = -0.5 * curl * (1e-3 * place_x) ** 2
    return Section(
        place_x,
        place_y,
        np.zeros_like(place_x),
        1e6 * (sag - sag.mean()),
        np.repeat(heat[:, None], 25, axis=1),
        np.repeat(1e-6 * stress[:, None], 25, axis=1),
        "along",
        MAGNIFIED,
    )


def _chart(settings: Settings, state: State) -> Chart:
    curves = []
    for name, (z, stress) in (
        ("blown", profile(settings, state)),
        (settings.beside, other_profile(settings, state)),
    ):
        top = 0.5 * settings.thickness_mm
        curves.append(Curve(name, (top - 1e3 * z)[::-1], 1e-6 * stress[::-1]))
    levels = (
        ("limit_strengthened", -1e-6 * HEAT_STRENGTHENED),
        ("limit_toughened", -1e-6 * TOUGHENED),
    )
    return Chart("depth", "mm", "stress", "MPa", tuple(curves), levels)


def _marks(settings: Settings, state: State) -> tuple[Mark, ...]:
    left, right = -APART_MM / 2, APART_MM / 2
    top = PLATE_Y_MM + HEIGHT_MM / 2
    marks = [Mark("blown", left, top), Mark(settings.beside, right, top)]
    if state.broke_s is None:
        z, stress = profile(settings, state)
        half = _slice_half_mm(settings, z)
        for share, y in ((1.0, SLICE_Y_MM + 0.9 * half), (0.5, SLICE_Y_MM)):
            now = 1e-6 * float(np.interp(z[0] + share * (z[-1] - z[0]), z, stress))
            if abs(now) > 2:
                marks.append(Mark("pull" if now > 0 else "squeeze", left, y, 25.0))
    return tuple(marks)


def _outlines(settings: Settings, state: State) -> tuple[Outline, ...]:
    left, right = -APART_MM / 2, APART_MM / 2
    lines = []
    for middle, cells in (
        (left, shards(settings, state)),
        (right, other_shards(settings, state)),
    ):
        if len(cells) > 1:
            lines += [
                Outline("shard", middle + 1e3 * cell[:, 0], PLATE_Y_MM + 1e3 * cell[:, 1])
                for cell in cells
            ]
        else:
            x = middle + np.array([-0.5, 0.5]) * SLICE_LENGTH_MM
            lines.append(Outline("cut", x, np.full(2, PLATE_Y_MM)))
    if settings.beside == "laminated" and state.other_broke_s is None:
        x = right + np.array([-0.5, 0.5]) * SLICE_LENGTH_MM
        lines.append(Outline("interlayer", x, np.full(2, SLICE_Y_MM)))
    return tuple(lines)


@functools.lru_cache(maxsize=2)
def _lattice(ready: Quench, uneven: float, time: float) -> Lattice:
    return lattice(ready, (1e-3 * WIDTH_MM, 1e-3 * HEIGHT_MM), uneven, time)
