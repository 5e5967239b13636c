"""A plate between the polarizers, warmed in a spot that the presenter moves."""

import functools
import math
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.optics.face_on import face_on
from demo_app.optics.retardation import Placed, Stage
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.physics.plan.cut import Cut, cut_line, cut_stress, intensity, open_rows, runs_to
from demo_app.physics.plan.sheet import Sheet, displacement, nodal_stress, sheet, warmed
from demo_app.physics.plan.spot import Place, spot_flux, tip_share
from demo_app.scenes.scene import Mark, Message, Outline, Reading, Scene, View
from demo_app.scenes.settings import choice, number

Array = NDArray[np.float64]

WIDTH_MM, HEIGHT_MM = 200.0, 120.0
"""The plate. An old crack goes straight up from the middle of its lower edge."""
TICK_S = 1 / 30
"""Step while the tip touches."""
LONGEST = 64
"""Ticks in the longest step of a plate that is left alone."""
_COLUMNS, _ROWS = 40, 24
"""Elements; the crack's line lies between two columns of them."""


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What it is made of.", live=False)
    thickness_mm: float = number(
        "Thickness", "mm", 6, 2, 19, step=0.5, help="Thickness of the plate.", live=False
    )
    spot_mm: float = number(
        "Spot", "mm", 20, 10, 60, help="Diameter within which 63 % of the heat falls."
    )
    power_W: float = number(
        "Power", "W", 40, 0, 80, step=0.5, help="Heat of the warm tip, both faces together."
    )
    seconds: float = number(
        "Touch for", "s", 5, 0.5, 60, step=0.5, help="How long a tip nobody moves stays."
    )
    crack_mm: float = number(
        "Old crack",
        "mm",
        0,
        0,
        40,
        help="Length of a crack from the middle of the lower edge; 0: none.",
        live=False,
    )


@dataclass(frozen=True)
class Peaks:
    """Largest values over the run, of the plate without its crack."""

    rise: float = 0.0
    tension: float = 0.0
    compression: float = 0.0
    retardation_nm: float = 0.0
    ratio: float = 0.0


@dataclass(frozen=True)
class Fade:
    """What happened since the tip was lifted.

    Parameters
    ----------
    since_s : float
        Model time at which it was lifted, s.
    from_nm : float
        Largest retardation then, nm.
    half_s : float or None
        Time in which the largest retardation fell to half, s.
    """

    since_s: float
    from_nm: float
    half_s: float | None = None


@dataclass(frozen=True)
class State:
    """One instant.

    Parameters
    ----------
    time_s, step : float, int
        Model time, and steps since the start.
    rise : numpy.ndarray
        Shape (nodes,): temperature above the room, K, mean through the thickness.
    moved : numpy.ndarray
        Shape (2 * nodes,): displacement of the whole plate, m.
    stress : numpy.ndarray
        Shape (3, columns, rows): its stress at the nodes, Pa.
    crack_m : float
        Length of the crack, m.
    ran_at_s : float or None
        When the crack first ran.
    tip : tuple of float or None
        Where the tip is on the stage, mm; None while it is lifted.
    was : tuple of float or None
        Where it was at the end of the last step.
    led : bool
        Whether somebody has moved the tip; else it stays in the middle for the set time.
    now_nm, ratio : float
        Largest retardation, and K over K_IC of the crack, of this instant.
    peaks : Peaks
        Of the run.
    fade : Fade or None
        None while the tip touches, and before it ever did.
    """

    time_s: float
    step: int
    rise: Array
    moved: Array
    stress: Array
    crack_m: float
    ran_at_s: float | None = None
    tip: Place | None = None
    was: Place | None = None
    led: bool = False
    now_nm: float = 0.0
    ratio: float = 0.0
    peaks: Peaks = Peaks()
    fade: Fade | None = None


READINGS = (
    Reading("spot_C", "Hottest place", "°C", "Mean through the thickness; largest over the run."),
    Reading("crack_runs", "The crack runs", "", "Whether the old crack has grown."),
    Reading("crack_length_mm", "Crack length", "mm", "Where its tip is now."),
    Reading("intensity_ratio", "K over K_IC", "", "Of the crack, at its peak."),
    Reading("tension_MPa", "Largest pull", "MPa", "Over the run; without what a crack adds."),
    Reading("compression_MPa", "Largest squeeze", "MPa", "Over the run; without a crack."),
    Reading("retardation_peak_nm", "Retardation peak", "nm", "Over the run; without a crack."),
    Reading("fade_half_s", "Fades to half in", "s", "Largest retardation, since it was let go."),
)

TRACES = (
    Reading("spot_C", "Hottest place", "°C"),
    Reading("tension_MPa", "Largest pull", "MPa"),
    Reading("retardation_nm", "Retardation", "nm"),
    Reading("intensity_ratio", "K over K_IC", ""),
)

TEXTS = {
    "cold": "The plate is evenly cool and free of stress: between the polarizers it stays dark.",
    "warming": "The warm spot wants to grow, the cool glass around it holds it back: it is "
    "squeezed with {squeeze:.1f} MPa, and around it the glass is pulled with {pull:.1f} MPa.",
    "just_let_go": "The tip is gone, but the picture stays: it is the warmth in the glass that "
    "you see, {rise:.0f} °C more than around it.",
    "fading": "The warmth spreads, nothing pulls so hard any more, and the picture fades: it "
    "took {half:.0f} s to half.",
    "gone": "The plate is even again and the picture is dark: glass that only got warm keeps "
    "nothing.",
    "crack_waits": "The crack is pulled open with {percent:.0f} % of what it needs to run.",
    "crack_ran": "The crack has run to {length:.0f} mm and stopped: at its tip the glass is no "
    "longer pulled apart hard enough. What it cut through has let go of its stress.",
    "parted": "The crack ran all through the plate, {at:.1f} s after the start: two pieces, "
    "and along the cut the stress is gone.",
}


def start(settings: Settings) -> State:
    """Cold plate."""
    plate = _plate(settings)
    nodes = plate.mesh.nodes
    if settings.crack_mm > 0:
        _line(settings)
    return State(
        0.0,
        0,
        np.zeros(nodes),
        np.zeros(2 * nodes),
        np.zeros((3, *plate.mesh.x.shape)),
        1e-3 * settings.crack_mm,
    )


def point(settings: Settings, state: State, place: Place | None) -> State:
    """The tip is put down or moved to `place` (x, y) on the stage, mm, or lifted (None).

    Raises
    ------
    InputError
        If the place is not a pair of finite numbers.
    """
    if place is None:
        return replace(state, tip=None, was=None, led=True)
    x, y = place
    if not (math.isfinite(x) and math.isfinite(y)):
        raise InputError(
            f"the tip cannot be at {x:g}, {y:g}",
            place="point",
            remedy="give two numbers in millimetres",
        )
    return replace(state, tip=(float(x), float(y)), led=True)


def tip_of(settings: Settings, state: State) -> Place | None:
    """Where the tip touches in the coming step, mm; None if it does not."""
    if state.led:
        return state.tip
    # Half a tick, so that a sum of many ticks ends where it is meant to.
    return (0.0, 0.0) if state.time_s < settings.seconds - TICK_S / 2 else None


def step_ticks(settings: Settings, state: State) -> int:
    """Length of the next step in ticks: one while the tip touches, then longer and longer."""
    if tip_of(settings, state) is not None or state.fade is None:
        return 1
    patience = (state.time_s - state.fade.since_s) / 40
    return int(
        2 ** np.clip(math.floor(math.log2(max(patience / TICK_S, 1))), 0, LONGEST.bit_length() - 1)
    )


def advance(settings: Settings, state: State) -> State:
    """One step later."""
    plate, tip = _plate(settings), tip_of(settings, state)
    fade = state.fade
    if tip is not None:
        fade = None
    elif fade is None and state.now_nm > 0:
        fade = Fade(state.time_s, state.now_nm)
    state = replace(state, fade=fade)
    ticks = step_ticks(settings, state)
    rise = warmed(plate, state.rise, ticks * TICK_S, _flux(settings, plate, state, tip))
    moved = displacement(plate, rise)
    stress = nodal_stress(plate, rise, moved)
    now_s = state.time_s + ticks * TICK_S
    later = replace(
        state, time_s=now_s, step=state.step + 1, rise=rise, moved=moved, stress=stress, was=tip
    )
    return _cracked(settings, _weighed(settings, state, later))


def _flux(settings: Settings, plate: Sheet, state: State, tip: Place | None) -> Array:
    if tip is None or settings.power_W == 0:
        return np.zeros(plate.mesh.nodes)
    before = state.was or tip
    flux = spot_flux(
        plate.mesh,
        settings.power_W,
        1e-3 * settings.spot_mm,
        (1e-3 * before[0], 1e-3 * before[1]),
        (1e-3 * tip[0], 1e-3 * tip[1]),
    )
    return flux * tip_share(state.rise)


def _weighed(settings: Settings, before: State, state: State) -> State:
    """`state` with its peaks, and how far it has faded since `before`."""
    plate, old = _plate(settings), state.peaks
    xx, yy, xy = state.stress
    spread = np.hypot(xx - yy, 2 * xy)
    now_nm = float(1e9 * plate.material.stress_optic * plate.thickness * spread.max())
    tension = float((xx + yy + spread).max() / 2)
    compression = float((xx + yy - spread).min() / 2)
    fade = state.fade
    if fade is not None and fade.half_s is None and now_nm <= fade.from_nm / 2:
        share = (before.now_nm - fade.from_nm / 2) / (before.now_nm - now_nm)
        reached = before.time_s + share * (state.time_s - before.time_s)
        fade = replace(fade, half_s=reached - fade.since_s)
    peaks = replace(
        old,
        rise=max(old.rise, float(state.rise.max())),
        tension=max(old.tension, tension),
        compression=min(old.compression, compression),
        retardation_nm=max(old.retardation_nm, now_nm),
    )
    return replace(state, now_nm=now_nm, peaks=peaks, fade=fade)


def _cracked(settings: Settings, state: State) -> State:
    """`state` with its crack where it stops."""
    if state.crack_m <= 0:
        return state
    line = _line(settings)
    ratio = intensity(line, state.stress, state.crack_m) / line.piece.material.fracture_toughness
    length = runs_to(line, state.stress, state.crack_m)
    if length > state.crack_m:
        ran = state.time_s if state.ran_at_s is None else state.ran_at_s
        state = replace(state, crack_m=length, ran_at_s=ran)
    return replace(
        state, ratio=ratio, peaks=replace(state.peaks, ratio=max(state.peaks.ratio, ratio))
    )


def seconds(settings: Settings) -> float:
    """Three times as long as the picture takes to half, about."""
    plate = _plate(settings)
    at_room = np.array([ROOM])
    stored = plate.material.density * float(plate.material.heat_capacity(at_room)[0])
    diffusivity = float(plate.material.conductivity_at(at_room)[0]) / stored
    spreading = (1e-3 * settings.spot_mm) ** 2 / 16 / diffusivity
    return settings.seconds + 3 * (spreading + settings.seconds / 2)


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings: peaks of the run, of the plate without its crack."""
    peaks = state.peaks
    return {
        "spot_C": ROOM - ZERO_C + peaks.rise,
        "crack_runs": state.ran_at_s is not None,
        "crack_length_mm": 1e3 * state.crack_m,
        "intensity_ratio": peaks.ratio,
        "tension_MPa": 1e-6 * peaks.tension,
        "compression_MPa": 1e-6 * peaks.compression,
        "retardation_peak_nm": peaks.retardation_nm,
        "fade_half_s": state.fade.half_s if state.fade is not None else None,
    }


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Values of this instant for the chart."""
    xx, yy, xy = state.stress
    tension = float((xx + yy + np.hypot(xx - yy, 2 * xy)).max() / 2)
    return {
        "spot_C": ROOM - ZERO_C + float(state.rise.max()),
        "tension_MPa": 1e-6 * tension,
        "retardation_nm": state.now_nm,
        "intensity_ratio": state.ratio,
    }


def view(settings: Settings, state: State) -> View:
    """The plate, the crack, and arrows for squeeze and pull."""
    plate = _plate(settings)
    mesh = plate.mesh
    x, y = mesh.x[:, 0], mesh.y[0]
    parts = [(x, state.stress)]
    outlines: tuple[Outline, ...] = ()
    if state.crack_m > 0:
        line = _line(settings)
        count = open_rows(line, state.crack_m)
        left, right = cut_stress(line, state.rise, state.moved, count)
        parts = [(x[: line.column + 1], left), (x[line.column :], right)]
        ends = np.array([0.0, 1e3 * state.crack_m]) - HEIGHT_MM / 2
        outlines = (Outline("crack", np.full(2, 1e3 * x[line.column]), ends),)
    glass = plate.material
    pieces = tuple(
        Placed(face_on(at, y, stress, plate.thickness, glass.stress_optic)) for at, stress in parts
    )
    stage = Stage(pieces, 1.15 * WIDTH_MM, 1.12 * HEIGHT_MM)
    return View(stage, marks=_marks(settings, state), outlines=outlines)


def _marks(settings: Settings, state: State) -> tuple[Mark, ...]:
    """Arrows at the hottest place and beside it, where the pull is largest."""
    if state.now_nm < 2.0:
        return ()
    mesh = _plate(settings).mesh
    x, y = 1e3 * mesh.x.ravel(), 1e3 * mesh.y.ravel()
    xx, yy, xy = state.stress.reshape(3, -1)
    squeezed = int((xx + yy - np.hypot(xx - yy, 2 * xy)).argmin())
    pulled = int((xx + yy + np.hypot(xx - yy, 2 * xy)).argmax())
    angle = math.degrees(math.atan2(2 * xy[pulled], xx[pulled] - yy[pulled]) / 2)
    return (
        Mark("squeeze", float(x[squeezed]), float(y[squeezed]), 10.0),
        Mark("pull", float(x[pulled]), float(y[pulled]), 10.0, angle),
    )


def say(settings: Settings, state: State) -> Message:
    """The plain sentence for this instant."""
    if state.crack_m >= 0.999e-3 * HEIGHT_MM and state.ran_at_s is not None:
        return Message("parted", {"at": state.ran_at_s})
    if state.ran_at_s is not None:
        return Message("crack_ran", {"length": 1e3 * state.crack_m})
    if state.peaks.retardation_nm < 1.0:
        return Message("cold")
    if state.ratio > 0.2:
        return Message("crack_waits", {"percent": 100 * state.ratio})
    if state.fade is None:
        xx, yy, xy = state.stress
        spread = np.hypot(xx - yy, 2 * xy)
        squeeze, pull = -(xx + yy - spread).min() / 2e6, (xx + yy + spread).max() / 2e6
        return Message("warming", {"squeeze": float(squeeze), "pull": float(pull)})
    if state.now_nm < 2.0:
        return Message("gone")
    if state.fade.half_s is not None:
        return Message("fading", {"half": state.fade.half_s})
    return Message("just_let_go", {"rise": float(state.rise.max() - np.median(state.rise))})


@functools.lru_cache(maxsize=4)
def _sheet(glass: str, thickness_mm: float) -> Sheet:
    half_x, half_y = 0.5e-3 * WIDTH_MM, 0.5e-3 * HEIGHT_MM
    columns = np.linspace(-half_x, half_x, _COLUMNS + 1)
    rows = np.linspace(-half_y, half_y, _ROWS + 1)
    return sheet(material(glass), 1e-3 * thickness_mm, columns, rows)


def _plate(settings: Settings) -> Sheet:
    return _sheet(settings.glass, settings.thickness_mm)


@functools.lru_cache(maxsize=4)
def _cut(glass: str, thickness_mm: float) -> Cut:
    return cut_line(_sheet(glass, thickness_mm), 0.0)


def _line(settings: Settings) -> Cut:
    return _cut(settings.glass, settings.thickness_mm)


SCENE = Scene(
    id="touch",
    title="Warm touch",
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
    point=point,
)
