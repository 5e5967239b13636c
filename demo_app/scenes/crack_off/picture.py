"""The scene `ring` between the polarizers: its maps, the cut through its wall, its marks."""

import functools
import itertools

import numpy as np

from demo_app.optics.retardation import Placed, Stage
from demo_app.optics.sightlines import Sightlines, sightlines
from demo_app.physics.heat import ZERO_C
from demo_app.physics.revolve import crackoff
from demo_app.physics.revolve.mesh import WallMesh
from demo_app.physics.revolve.verdict import Bottle
from demo_app.scenes.crack_off.record import Settings, State, bottle_for, stresses_MPa
from demo_app.scenes.scene import Mark, Seam, Section, View

MAGNIFIED = 50.0
"""Factor by which the swelling is drawn."""
APART_MM = 6.0
"""Distance to which the pieces are drawn apart once they have parted."""


def view(settings: Settings, state: State) -> View:
    """Picture, section and marks."""
    ready = bottle_for(settings)
    return View(state.stage, _section(ready, state), _marks(settings, ready, state))


def seen(
    settings: Settings,
    ready: Bottle,
    moment: crackoff.Moment,
    peak: float,
    unbroken: dict[str, float],
) -> State:
    """Instant with its picture between the polarizers.

    Parameters
    ----------
    settings : Settings
        Give the field of view.
    ready : Bottle
        The bottle of these settings.
    moment : crackoff.Moment
        What has become of it.
    peak : float
        Largest retardation so far, nm.
    unbroken : dict
        `stresses_MPa` before it broke; empty while it is whole.
    """
    piece, _, wall, nodal = crackoff.stress_of(ready, moment)
    mesh, crack = piece.mesh, moment.crack
    ends = [0, mesh.s.size]
    loose = crack is not None and crack.parted_s is not None
    if loose and mesh.split is not None:
        ends.insert(1, mesh.split)
    ring = height(ready, ready.ring)
    apart = 0.0
    if crack is not None and crack.parted_s is not None:
        apart = min(APART_MM, 20.0 * (moment.time_s - crack.parted_s))
    placed = []
    for i, (first, last) in enumerate(itertools.pairwise(ends)):
        through = _lines(mesh, first, last).map(nodal, piece.material.stress_optic)
        shift = apart * (i - 0.5) if len(ends) > 2 else 0.0
        placed.append(Placed(through, shift - ring))
        peak = max(peak, float(through.retardation_nm().max()))
    # Room above and below for the drop, the flame and their words.
    width = 2.2 * settings.outer_diameter_mm
    stage = Stage(tuple(placed), width, 1.42 * settings.outer_diameter_mm)
    return State(moment, stage, wall, peak, unbroken)


@functools.lru_cache(maxsize=8)
def _lines(mesh: WallMesh, first: int, last: int) -> Sightlines:
    return sightlines(mesh, columns=slice(first, last))


def height(ready: Bottle, s: float) -> float:
    """Height (mm) of the outer surface at arc length `s` (m)."""
    return float(1e3 * ready.piece.mesh.profile.place(np.array([s]), np.array([0.0]))[1][0])


def _section(ready: Bottle, state: State) -> Section:
    piece, glass = crackoff.shown(ready, state.moment)
    mesh, ring = piece.mesh, height(ready, ready.ring)
    window = np.abs(mesh.s - ready.ring) < 0.018
    columns = slice(int(window.argmax()), int(mesh.s.size - window[::-1].argmax()))
    moved = glass.displacement.reshape(*mesh.r.shape, 2)[columns]
    sideways = moved[..., 1] - moved[..., 1].mean()
    seams: tuple[Seam, ...] = ()
    crack = state.moment.crack
    split = mesh.split or 0
    if crack is not None and columns.start < split < columns.stop:
        first = split - columns.start
        seams = (Seam(first, int((mesh.depth < piece.tied_below).sum())),)
        if crack.parted_s is not None:
            # Loose pieces may be anywhere: they are shown where they just touch.
            overlap = float((sideways[first - 1] - sideways[first]).max())
            sideways[first:] += overlap
            sideways -= sideways.mean()
    return Section(
        (1e3 * mesh.z[columns] - ring).T,
        1e3 * mesh.r[columns].T,
        1e6 * sideways.T,
        1e6 * moved[..., 0].T,
        glass.temperature.reshape(mesh.r.shape)[columns].T - ZERO_C,
        1e-6 * state.wall.along[columns].T,
        "along",
        MAGNIFIED,
        seams,
    )


def _marks(settings: Settings, ready: Bottle, state: State) -> tuple[Mark, ...]:
    moment = state.moment
    at = float(1e3 * np.interp(ready.ring, ready.piece.mesh.s, ready.piece.mesh.r[:, 0]))
    crack = moment.crack
    if crack is not None and crack.parted_s is not None:
        return (Mark("crack", 1e3 * (crack.s - ready.ring), at),)
    marks = [Mark("ring", 0.0, at, settings.ring_width_mm)]
    if moment.time_s < settings.heat_s and settings.flame_kW_m2 > 0:
        marks.append(Mark("flame", 0.0, -at, settings.ring_width_mm))
    if settings.score_depth_um > 0 and crack is None:
        marks.append(Mark("score", settings.score_offset_mm, at))
    if moment.water is not None and float(moment.water.depth.max()) > 1e-5:
        marks.append(Mark("drop", settings.drop_offset_mm, at, 3.0))
    if crack is not None:
        marks.append(Mark("crack", 1e3 * (crack.s - ready.ring), at))
        return tuple(marks)
    now = stresses_MPa(ready, moment, state.wall)
    if abs(now["axial_outside_MPa"]) > 2:
        kind = "pull" if now["axial_outside_MPa"] > 0 else "squeeze"
        marks.append(Mark(kind, 0.0, 0.85 * at, 10.0))
    return tuple(marks)
