"""What is seen of a piece in somebody's hands."""

import functools
import math

import numpy as np
from numpy.typing import NDArray
from scipy.interpolate import RectBivariateSpline

from demo_app.optics.face_on import face_on, unfold
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.physics.beams import Piece, disk_square
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.material_files import material
from demo_app.scenes.pushing.settings import (
    BENT,
    DISK_PAD_MM,
    INNER_MM,
    LARGEST_N,
    LENGTH_MM,
    OUTER_MM,
    PAD_MM,
    RADIUS_MM,
    STRIPS,
    Settings,
)
from demo_app.scenes.pushing.state import (
    State,
    cracks,
    cut_sums,
    held_field,
    piece_of,
    profile,
    wall_of,
)
from demo_app.scenes.scene import Chart, Curve, Mark, Outline, Section

Array = NDArray[np.float64]

APART_MM = 4.0
"""Distance to which two parts are drawn apart."""
CRACK_SHARE, GAPE_SHARE = 0.3, 0.1
"""A crack is drawn this share of the height long and, when it is about to run, this share wide."""
_QUIET = 0.3e6
"""Stress below which no arrows are drawn, Pa."""
_COLUMNS, _ROWS = 241, 81


def stage(settings: Settings, state: State) -> Stage:
    """The piece between the polarizers, or its two parts."""
    disk = settings.kind == "disk-squeezed"
    high = 1.65 * settings.height_mm if disk else 4.0 * settings.height_mm
    wide = 1.45 * settings.length_mm
    seen = _disk_map(settings, state) if disk else _bar_map(settings, state)
    if state.broke_s is None:
        return Stage((Placed(seen),), wide, high)
    return Stage(_parts(settings, state, seen), wide, high)


def _bar_map(settings: Settings, state: State) -> RetardationMap:
    piece = piece_of(settings, state)
    x, y, stress = unfold(
        piece.mesh.x[:, 0], piece.mesh.y[0], state.field.nodal, mirrored_x=True, mirrored_y=False
    )
    solid = material(settings.material)
    return face_on(x, y, stress, 1e-3 * settings.thickness_mm, solid.stress_optic)


@functools.lru_cache(maxsize=4)
def _disk_unit(settings: Settings) -> tuple[Array, Array, Array, Array]:
    """v1 and v2 (nm) for 1 N, with the shares of the half height and the columns (mm)."""
    start = State(0.0, 0, 1.0, None, held_field(settings, 1.0))
    piece = piece_of(settings, start)
    along = np.linspace(-1, 1, _COLUMNS)
    across = np.linspace(0, 1, _ROWS)
    half = np.sqrt(np.maximum(0.0, 1 - along**2))
    u, v = disk_square(*np.broadcast_arrays(np.abs(along), across[:, None] * half))
    nodes_u = np.interp(np.arange(piece.mesh.x.shape[0]) / 2, *_steps(piece.mesh.ends[0]))
    nodes_v = np.interp(np.arange(piece.mesh.x.shape[1]) / 2, *_steps(piece.mesh.ends[1]))
    xx, yy, xy = (
        RectBivariateSpline(nodes_u, nodes_v, one, kx=1, ky=1).ev(u, v) for one in start.field.nodal
    )
    path = 1e9 * piece.material.stress_optic * 1e-3 * settings.thickness_mm
    return path * (xx - yy), 2 * path * np.sign(along) * xy, across, RADIUS_MM * along


def _steps(ends: Array) -> tuple[Array, Array]:
    return np.arange(ends.size, dtype=float), ends


def _disk_map(settings: Settings, state: State) -> RetardationMap:
    v1, v2, across, along = _disk_unit(settings)
    size = np.float32(state.force if state.broke_s is None else 0.0)
    half = np.sqrt(np.maximum(0.0, RADIUS_MM**2 - along**2))
    return RetardationMap(
        size * v1.astype(np.float32), size * v2.astype(np.float32), across, along, half, True
    )


def _parts(settings: Settings, state: State, whole: RetardationMap) -> tuple[Placed, ...]:
    """Two parts, apart. Hands that held one piece hold nothing now; a slice's parts share alike."""
    assert state.broke_s is not None
    apart = min(APART_MM, 40.0 * (state.time_s - state.broke_s)) / 2
    if not settings.held:
        shift = LENGTH_MM / 4 + apart
        return Placed(whole, -shift), Placed(whole, shift)
    middle = int(np.argmin(np.abs(whole.along_mm)))
    sides = (slice(None, middle + 1), slice(middle, None))
    return tuple(
        Placed(
            RetardationMap(
                whole.v1[:, side],
                whole.v2[:, side],
                whole.across,
                whole.along_mm[side],
                whole.half_width_mm[side],
                whole.mirrored,
            ),
            sign * apart,
        )
        for side, sign in zip(sides, (-1, 1), strict=True)
    )


def section(settings: Settings, state: State) -> Section:
    """The piece from the side with the stress along it, and how it gives way, magnified."""
    piece = piece_of(settings, state)
    moved = state.field.moved.reshape(*piece.mesh.x.shape, 2)
    x, y = _whole(piece.mesh.x, -1, 1, piece.copies), _whole(piece.mesh.y, 1, -1, piece.copies)
    go_x = _whole(moved[..., 0], -1, 1, piece.copies)
    go_y = _whole(moved[..., 1], 1, -1, piece.copies)
    go_y = go_y - go_y.mean()
    stress = _whole(state.field.nodal[0], 1, 1, piece.copies)
    warm = np.full(x.shape, ROOM)
    if state.column is not None:
        warm = np.interp(y, wall_of(settings.material).z, state.column.temperature)
    return Section(
        1e3 * x.T,
        1e3 * y.T,
        1e6 * go_x.T,
        1e6 * go_y.T,
        warm.T - ZERO_C,
        1e-6 * stress.T,
        "sideways" if settings.kind == "disk-squeezed" else "along",
        _magnified(settings),
    )


def _whole(part: Array, sign_x: int, sign_y: int, copies: int) -> Array:
    """The whole grid from its half or quarter; signs are those of the mirror images."""
    whole = np.concatenate([sign_x * part[:0:-1], part])
    if copies == 2:
        whole = np.concatenate([sign_y * whole[:, :0:-1], whole], axis=1)
    return np.asarray(whole)


def _magnified(settings: Settings) -> float:
    """A round factor that shows the largest movement as a tenth of the height."""
    if not settings.held:
        return 20.0
    most = float(np.abs(held_field(settings, max(settings.load, 1.0)).moved).max())
    wanted = 1e-4 * settings.height_mm / most
    power = 10.0 ** math.floor(math.log10(wanted))
    return max(1.0, power * max(step for step in (1, 2, 5) if step * power <= wanted * 1.0001))


def chart(settings: Settings, state: State) -> Chart:
    """Stress across the middle, and the mean that it adds up to."""
    y, stress = profile(settings, state)
    curve = Curve("across", 1e3 * y, 1e-6 * stress)
    area = 1e-3 * settings.thickness_mm * float(y[-1] - y[0])
    mean = 1e-6 * cut_sums(settings, state)[0] / area
    return Chart("height", "mm", "stress", "MPa", (curve,), (("mean", mean),))


def marks(settings: Settings, state: State) -> tuple[Mark, ...]:
    """Arrows and words: where it is pulled and where it is squeezed."""
    if state.broke_s is not None and settings.held:
        return ()
    if settings.kind == "disk-squeezed":
        spots = _disk_spots(piece_of(settings, state), state)
    else:
        spots = _spots(settings, state)
    most = max(abs(stress) for _, _, stress, _ in spots)
    return tuple(
        Mark("pull" if stress > 0 else "squeeze", x, y, 3 + 5 * abs(stress) / most, angle)
        for x, y, stress, angle in spots
        if abs(stress) > _QUIET
    )


Spot = tuple[float, float, float, float]
"""Place (mm), stress (Pa) and direction (degrees) of a pair of arrows."""


def _disk_spots(piece: Piece, state: State) -> list[Spot]:
    """On the upright diameter, above and below the cracks: pulled sideways, squeezed upright."""
    y = 1e3 * piece.mesh.y[0]
    spots = ((0, 0.5 * RADIUS_MM, 0.0), (1, -0.55 * RADIUS_MM, 90.0))
    return [
        (0.0, at, float(np.interp(abs(at), y, state.field.nodal[k, 0])), angle)
        for k, at, angle in spots
    ]


def _spots(settings: Settings, state: State) -> list[Spot]:
    """Along the bar, beside the cut and its cracks: at the edges, and where they differ between."""
    half = settings.height_mm / 2
    shares = [0.0] if settings.kind in STRIPS else [-0.72, 0.72]
    if not settings.held:
        shares = [-0.86, 0.0, 0.86]
    at = (0.0 if state.broke_s is None else LENGTH_MM / 4) + 16.0
    y, stress = profile(settings, state)
    there = [float(np.interp(1e-3 * share * half, y, stress)) for share in shares]
    return [(at, share * half, s, 0.0) for share, s in zip(shares, there, strict=True)]


def outlines(settings: Settings, state: State) -> tuple[Outline, ...]:
    """The hands' force as arrows, the pads, and the cracks as far as they gape."""
    drawn: list[Outline] = []
    if settings.held and state.broke_s is None:
        drawn += _hands(settings, state)
    if state.broke_s is None:
        drawn += _cracks(settings, state)
    return tuple(drawn)


def _hands(settings: Settings, state: State) -> list[Outline]:
    longest = 9 if settings.kind == "disk-squeezed" else 24
    size = 3 + longest * state.force / LARGEST_N if state.force > 0 else 0.0
    half, end = settings.height_mm / 2, settings.length_mm / 2
    if settings.kind in STRIPS:
        pull = settings.kind == "bar-pulled"
        ends = [(-end, 0.0, -1.0, 0.0), (end, 0.0, 1.0, 0.0)]
        return [_arrow(x, y, dx, dy, size, away=pull) for x, y, dx, dy in ends if size]
    if settings.kind in BENT:
        above = [-INNER_MM / 2, INNER_MM / 2] if settings.kind == "bar-bent" else [0.0]
        below, pad = [-OUTER_MM / 2, OUTER_MM / 2], PAD_MM
    else:
        above, below, pad = [0.0], [0.0], DISK_PAD_MM
    spots = [(x, half, 1.0) for x in above] + [(x, -half, -1.0) for x in below]
    pads = [
        Outline(
            "hand",
            x + pad / 2 * np.array([-1.0, 1, 1, -1, -1]),
            y + side * np.array([0.0, 0, 2, 2, 0]),
        )
        for x, y, side in spots
    ]
    arrows = [_arrow(x, y + 2 * side, 0.0, side, size, away=False) for x, y, side in spots if size]
    return pads + arrows


def _arrow(x: float, y: float, dx: float, dy: float, size: float, *, away: bool) -> Outline:
    """An arrow of the hands at (x, y): outward along (dx, dy) if `away`, else towards (x, y)."""
    along = np.array([0.0, size, size - 3, size, size - 3])
    if not away:
        along = size - along
    aside = np.array([0.0, 0, 1.5, 0, -1.5])
    gap = 1.0
    return Outline("hand", x + dx * (along + gap) - dy * aside, y + dy * (along + gap) + dx * aside)


def _cracks(settings: Settings, state: State) -> list[Outline]:
    found = cracks(settings, state)
    half = settings.height_mm / 2
    drawn = []
    for k, crack in enumerate(found):
        share = crack.places / max(crack.places.max(), 1e-12)
        gape = float(crack.opening.max())
        wide = GAPE_SHARE * half * min(1.0, max(0.0, crack.ratio))
        aside = wide * crack.opening / gape if gape > 0 else np.zeros_like(share)
        long = CRACK_SHARE * 2 * half * share
        along, across = np.concatenate([long, long[::-1]]), np.concatenate([aside, -aside[::-1]])
        if settings.kind == "disk-squeezed":
            places = (across, along * 0.5) if k == 0 else (along * 0.5, across)
        else:
            places = (across, along - half if k == 0 else half - along)
        drawn.append(Outline("crack", *places))
    return drawn
