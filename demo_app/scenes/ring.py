"""A turning bottle heated in a ring, then a drop of water: it cracks off where it is asked to."""

import functools
import itertools
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import Placed, Stage
from demo_app.optics.sightlines import Sightlines, sightlines
from demo_app.physics.heat import ZERO_C, outlasts_water
from demo_app.physics.material_files import glasses, material
from demo_app.physics.revolve import crackoff
from demo_app.physics.revolve.cracking import WallStress, at_place
from demo_app.physics.revolve.mesh import WallMesh
from demo_app.physics.revolve.profile import bottle
from demo_app.physics.revolve.surroundings import Firing
from demo_app.physics.revolve.verdict import Bottle, bottle_of, break_probability
from demo_app.scenes.scene import Action, Mark, Message, Reading, Scene, Seam, Section, View
from demo_app.scenes.settings import change, choice, flag, number

Array = NDArray[np.float64]

MAGNIFIED = 50.0
"""Factor by which the swelling is drawn."""
HEIGHT_MM = 220.0
"""From the base to the mouth of the bottle."""
APART_MM = 6.0
"""Distance to which the pieces are drawn apart once they have parted."""


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What it is made of.", live=False)
    outer_diameter_mm: float = number(
        "Diameter", "mm", 70, 40, 120, help="Outer diameter of the bottle's body.", live=False
    )
    wall_mm: float = number(
        "Wall", "mm", 3, 1.5, 6, step=0.1, help="Thickness of the wall.", live=False
    )
    ring_at_mm: float = number(
        "Ring at", "mm", 80, 25, 205, help="Height of the ring above the base.", live=False
    )
    ring_width_mm: float = number(
        "Ring width", "mm", 8, 4, 30, step=0.5, help="Width of the flame at half its heat."
    )
    flame_kW_m2: float = number(
        "Flame", "kW/m²", 80, 0, 400, step=5, help="Heat into the ring, averaged over the turn."
    )
    heat_s: float = number("Flame for", "s", 10, 0, 120, step=0.5, help="When the flame goes out.")
    score_depth_um: float = number(
        "Score", "µm", 100, 0, 500, step=10, help="Depth of the scored line; 0: none.", live=False
    )
    score_offset_mm: float = number(
        "Score off by", "mm", 0, -8, 8, step=0.5, help="From the middle of the ring.", live=False
    )
    drop: bool = flag("Drop of water", True, help="Whether a drop lands on the ring.")
    drop_at_s: float = number("Drop at", "s", 11, 0, 180, step=0.5, help="When the drop lands.")
    drop_offset_mm: float = number(
        "Drop off by", "mm", 0, -8, 8, step=0.5, help="From the middle of the ring."
    )


@dataclass(frozen=True)
class State:
    """One instant: the crack-off, what is seen of it, and what was read before it broke."""

    moment: crackoff.Moment
    stage: Stage
    wall: WallStress
    peak_nm: float
    unbroken: dict[str, float]

    @property
    def time_s(self) -> float:
        """Model time, s."""
        return self.moment.time_s

    @property
    def step(self) -> int:
        """Number of steps."""
        return self.moment.step


READINGS = (
    Reading("surface_peak_C", "Hottest surface", "°C", "Largest over the run."),
    Reading("swell_um", "Swelling of the ring", "µm", "Outwards, at the middle of the ring."),
    Reading("axial_outside_MPa", "Along, outside", "MPa", "In the middle of the ring."),
    Reading("axial_inside_MPa", "Along, inside", "MPa", "In the middle of the ring."),
    Reading("hoop_MPa", "Around, outside", "MPa", "In the middle of the ring."),
    Reading(
        "intensity_ratio", "Share of breaking", "", "K over K_IC of the stated flaw, at its peak."
    ),
    Reading("breaks", "Cracks", "", "The verdict for the stated flaw."),
    Reading("break_at_s", "Cracked at", "s"),
    Reading("crack_run_us", "Crack's run", "µs", "From the flaw through the wall."),
    Reading("break_offset_mm", "Crack outside", "mm", "Its distance from the ring's middle."),
    Reading("break_inside_mm", "Crack inside", "mm", "Its distance from the ring's middle."),
    Reading("break_probability", "Odds of a crack", "", "Over the spread of flaws."),
    Reading("retardation_peak_nm", "Retardation peak", "nm", "Largest over the run."),
)

TRACES = (
    Reading("surface_C", "Ring outside", "°C"),
    Reading("axial_outside_MPa", "Along, outside", "MPa"),
    Reading("axial_inside_MPa", "Along, inside", "MPa"),
    Reading("intensity_ratio", "Share of breaking", "", "K over K_IC: a crack runs at 1."),
)

TEXTS = {
    "cold": "The bottle is evenly cool and free of stress: between the polarizers it stays dark.",
    "heating": "The ring swells by {swell:.0f} µm. Cold glass on both sides holds it back, so it "
    "is squeezed around with {squeeze:.0f} MPa.",
    "evening": "The flame is off. The outside of the ring is still squeezed along the bottle with "
    "{squeeze:.0f} MPa, until the heat has soaked in.",
    "soaking": "The flame is off. The skin cools first and is now pulled along the bottle with "
    "{pull:.0f} MPa.",
    "chilled": "The drop chills the skin. It wants to shrink, the hot glass below does not let it: "
    "a pull of {pull:.0f} MPa, {percent:.0f} % of what the flaw needs.",
    "cracking": "The crack is running through the wall: {depth:.1f} of {wall:.1f} mm.",
    "cracked_drop": "Cracked off {after:.2f} s after the drop, {offset:.1f} mm from the middle of "
    "the ring. The pieces let go of most of their stress.",
    "cracked_drop_middle": "Cracked off {after:.2f} s after the drop, in the middle of the ring. "
    "The pieces let go of most of their stress.",
    "cracked_alone_middle": "It cracked by itself at {at:.1f} s, in the middle of the ring: heat "
    "alone pulled hard enough.",
    "cracked_alone": "It cracked by itself at {at:.1f} s, {offset:.1f} mm from the middle of the "
    "ring: heat alone pulled hard enough.",
    "too_hot": "The ring is too hot: above about {limit:.0f} °C the drop floats on its own steam "
    "and rolls off, so it hardly cools the glass.",
    "held": "It holds: the pull reached {percent:.0f} % of what the flaw needs to become a crack.",
    "fading": "Everything cools together, the stress fades and the picture goes dark again.",
    "soft": "The ring is hot enough to flow. Stress is running out of it now and will come back, "
    "the other way round, as it cools.",
    "locked": "The ring had begun to flow. {stress:.0f} MPa of stress stay locked in although it "
    "is cold again.",
    "along": "along the bottle",
}


def start(settings: Settings) -> State:
    """Cold bottle."""
    ready = _bottle(settings)
    return _seen(settings, ready, crackoff.start(ready), 0.0, {})


def advance(settings: Settings, state: State) -> State:
    """One step later."""
    ready = _bottle(settings)
    moment = crackoff.step(ready, _firing(settings), state.moment)
    unbroken = state.unbroken
    if moment.crack is not None and not unbroken:
        unbroken = _stresses(ready, state.moment, state.wall)
    return _seen(settings, ready, moment, state.peak_nm, unbroken)


def seconds(settings: Settings) -> float:
    """Until some time after the last event."""
    last = max(settings.heat_s, settings.drop_at_s if settings.drop else 0.0)
    return last + (6.0 if settings.drop else 20.0)


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings; stresses are the last ones before a break."""
    ready, moment = _bottle(settings), state.moment
    crack = moment.crack
    parted = crack.parted_s if crack else None
    broken = parted is not None
    return {
        "surface_peak_C": moment.peaks.surface - ZERO_C,
        **(state.unbroken or _stresses(ready, moment, state.wall)),
        "intensity_ratio": moment.peaks.ratio,
        "breaks": broken,
        "break_at_s": parted,
        "crack_run_us": 1e6 * (parted - crack.began_s) if crack and parted is not None else None,
        "break_offset_mm": 1e3 * (crack.s - ready.ring) if crack and broken else None,
        "break_inside_mm": 1e3 * (crack.inside_s - ready.ring) if crack and broken else None,
        "break_probability": break_probability(ready, moment.peaks),
        "retardation_peak_nm": state.peak_nm,
    }


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Values of this instant for the chart."""
    ready, moment = _bottle(settings), state.moment
    piece, glass = crackoff.shown(ready, moment)
    outside = glass.temperature.reshape(piece.mesh.r.shape)[:, 0]
    now = _stresses(ready, moment, state.wall)
    return {
        "surface_C": float(at_place(piece.mesh, outside, ready.ring)) - ZERO_C,
        "axial_outside_MPa": now["axial_outside_MPa"],
        "axial_inside_MPa": now["axial_inside_MPa"],
        "intensity_ratio": max(0.0, moment.ratio),
    }


def view(settings: Settings, state: State) -> View:
    """Picture, section and marks."""
    ready = _bottle(settings)
    return View(state.stage, _section(ready, state), _marks(settings, ready, state))


def say(settings: Settings, state: State) -> Message:
    """The plain sentence for this instant."""
    ready, moment = _bottle(settings), state.moment
    crack, firing, now = moment.crack, _firing(settings), moment.time_s
    stresses = _stresses(ready, moment, state.wall)
    percent = 100 * max(0.0, moment.peaks.ratio)
    if crack is not None:
        return _crack_words(settings, ready, moment)
    if now == 0 or moment.peaks.surface < ZERO_C + 22:
        return Message("cold")
    landed = firing.drop_at is not None and now > firing.drop_at
    if moment.peaks.floated > 0.5:
        limit = outlasts_water(crackoff.effusivity_of(ready, moment)) - ZERO_C
        return Message("too_hot", {"limit": limit})
    if landed and moment.water is not None and now < (firing.drop_at or 0.0) + 3.0:
        return Message(
            "chilled",
            {
                "pull": max(0.0, stresses["axial_outside_MPa"]),
                "percent": 100 * max(0, moment.ratio),
            },
        )
    hottest = float(moment.glass.temperature.max())
    if hottest > ready.piece.material.strain_point:
        return Message("soft")
    burning = now < firing.heat_s and settings.flame_kW_m2 > 0
    if burning:
        squeeze = max(0.0, -stresses["hoop_MPa"])
        return Message("heating", {"swell": stresses["swell_um"], "squeeze": squeeze})
    if moment.peaks.surface > ready.piece.material.strain_point and hottest < ZERO_C + 60:
        stress = 1e-6 * float(np.abs(state.wall.along).max())
        return Message("locked", {"stress": stress})
    if hottest < ZERO_C + 40:
        return Message("fading")
    if landed or now > firing.heat_s + 5:
        # A near miss is still a miss: never round up to 100 %.
        return Message("held", {"percent": min(percent, 99.0)})
    pull = stresses["axial_outside_MPa"]
    return (
        Message("soaking", {"pull": pull}) if pull > 0 else Message("evening", {"squeeze": -pull})
    )


def _crack_words(settings: Settings, ready: Bottle, moment: crackoff.Moment) -> Message:
    crack = moment.crack
    assert crack is not None
    if crack.parted_s is None:
        return Message("cracking", {"depth": 1e3 * crack.depth, "wall": settings.wall_mm})
    offset = abs(1e3 * (crack.s - ready.ring))
    place = "_middle" if offset < 0.05 else ""
    if settings.drop and crack.began_s >= settings.drop_at_s:
        after = crack.parted_s - settings.drop_at_s
        return Message(f"cracked_drop{place}", {"after": after, "offset": offset})
    return Message(f"cracked_alone{place}", {"at": crack.parted_s, "offset": offset})


@functools.lru_cache(maxsize=4)
def _ready(
    glass: str, diameter: float, wall: float, ring: float, off: float, deep: float
) -> Bottle:
    profile = bottle(1e-3 * diameter, 1e-3 * wall, height=1e-3 * HEIGHT_MM)
    return bottle_of(material(glass), profile, 1e-3 * ring, 1e-3 * off, 1e-6 * deep)


def _bottle(settings: Settings) -> Bottle:
    return _ready(
        settings.glass,
        settings.outer_diameter_mm,
        settings.wall_mm,
        settings.ring_at_mm,
        settings.score_offset_mm,
        settings.score_depth_um,
    )


@functools.lru_cache(maxsize=8)
def _lines(mesh: WallMesh, first: int, last: int) -> Sightlines:
    return sightlines(mesh, columns=slice(first, last))


def _firing(settings: Settings) -> Firing:
    return Firing(
        1e3 * settings.flame_kW_m2,
        1e-3 * settings.ring_width_mm,
        settings.heat_s,
        settings.drop_at_s if settings.drop else None,
        1e-3 * settings.drop_offset_mm,
    )


def _seen(
    settings: Settings,
    ready: Bottle,
    moment: crackoff.Moment,
    peak: float,
    unbroken: dict[str, float],
) -> State:
    piece, _, wall, nodal = crackoff.stress_of(ready, moment)
    mesh, crack = piece.mesh, moment.crack
    ends = [0, mesh.s.size]
    loose = crack is not None and crack.parted_s is not None
    if loose and mesh.split is not None:
        ends.insert(1, mesh.split)
    ring = _height(ready, ready.ring)
    apart = 0.0
    if crack is not None and crack.parted_s is not None:
        apart = min(APART_MM, 20.0 * (moment.time_s - crack.parted_s))
    placed = []
    for i, (first, last) in enumerate(itertools.pairwise(ends)):
        seen = _lines(mesh, first, last).map(nodal, piece.material.stress_optic)
        shift = apart * (i - 0.5) if len(ends) > 2 else 0.0
        placed.append(Placed(seen, shift - ring))
        peak = max(peak, float(seen.retardation_nm().max()))
    # Room above and below for the drop, the flame and their words.
    width = 2.2 * settings.outer_diameter_mm
    stage = Stage(tuple(placed), width, 1.42 * settings.outer_diameter_mm)
    return State(moment, stage, wall, peak, unbroken)


def _height(ready: Bottle, s: float) -> float:
    """Height (mm) of the outer surface at arc length `s` (m)."""
    return float(1e3 * ready.piece.mesh.profile.place(np.array([s]), np.array([0.0]))[1][0])


def _stresses(ready: Bottle, moment: crackoff.Moment, wall: WallStress) -> dict[str, float]:
    piece, glass = crackoff.shown(ready, moment)
    mesh = piece.mesh
    along, hoop = (1e-6 * at_place(mesh, field, ready.ring) for field in (wall.along, wall.hoop))
    outwards = glass.displacement[::2].reshape(mesh.r.shape)[:, 0]
    return {
        "swell_um": float(1e6 * at_place(mesh, outwards, ready.ring)),
        "axial_outside_MPa": float(along[0]),
        "axial_inside_MPa": float(along[-1]),
        "hoop_MPa": float(hoop[0]),
    }


def _section(ready: Bottle, state: State) -> Section:
    piece, glass = crackoff.shown(ready, state.moment)
    mesh, ring = piece.mesh, _height(ready, ready.ring)
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
    now = _stresses(ready, moment, state.wall)
    if abs(now["axial_outside_MPa"]) > 2:
        kind = "pull" if now["axial_outside_MPa"] > 0 else "squeeze"
        marks.append(Mark(kind, 0.0, 0.85 * at, 10.0))
    return tuple(marks)


def _drop_now(settings: Settings, state: State) -> Settings:
    return change(settings, drop=True, drop_at_s=min(180.0, state.time_s))


def _flame_out(settings: Settings, state: State) -> Settings:
    return change(settings, heat_s=min(120.0, state.time_s))


SCENE = Scene(
    id="ring",
    title="Ring and drop",
    settings=Settings,
    readings=READINGS,
    traces=TRACES,
    texts=TEXTS,
    start=start,
    advance=advance,
    seconds=seconds,
    read=read,
    trace=trace,
    view=view,
    say=say,
    actions=(
        Action("drop_now", "Drop now", _drop_now),
        Action("flame_out", "Flame out now", _flame_out),
    ),
)
