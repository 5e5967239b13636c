"""A plate between the polarizers, warmed in a spot that the presenter moves."""

import functools
import math
from dataclasses import dataclass
from typing import Any

import numpy as np

from demo_app.base.errors import InputError
from demo_app.optics.face_on import face_on
from demo_app.optics.retardation import Placed, Stage
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.physics.plan import touching
from demo_app.physics.plan.cut import Cut, cut_line, cut_stress, open_rows
from demo_app.physics.plan.sheet import Sheet, sheet
from demo_app.physics.plan.spot import Place
from demo_app.physics.plan.touching import Moment, Tip
from demo_app.scenes.scene import Mark, Message, Outline, Scene, View
from demo_app.scenes.settings import choice, number
from demo_app.scenes.touch_parts.texts import READINGS, TEXTS, TRACES

WIDTH_MM, HEIGHT_MM = 200.0, 120.0
"""The plate. An old crack goes straight up from the middle of its lower edge."""
_FAINT_NM = 20.0
"""Below this a picture is called faint: at 550 nm, 1.3 % of the light comes through."""
_GONE_NM = 2.0
_STRONG_W = 15.0
"""A stronger tip brings the picture up before a sentence could be read."""
_ARROWS_NM = 8.0
"""Below this arrows would point at nothing that is seen even in a brightened picture."""
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


def start(settings: Settings) -> Moment:
    """Cold plate."""
    _line(settings)
    return touching.begin(_plate(settings), 1e-3 * settings.crack_mm)


def point(settings: Settings, state: Moment, place: Place | None) -> Moment:
    """The tip is put down or moved to `place` (x, y) on the stage, mm, or lifted (None).

    Raises
    ------
    InputError
        If the place is not a pair of finite numbers.
    """
    if place is None:
        return touching.pointed(state, None)
    x, y = place
    if not (math.isfinite(x) and math.isfinite(y)):
        raise InputError(
            f"the tip cannot be at {x:g}, {y:g}",
            place="point",
            remedy="give two numbers in millimetres",
        )
    return touching.pointed(state, (1e-3 * x, 1e-3 * y))


def advance(settings: Settings, state: Moment) -> Moment:
    """One step later."""
    return touching.step(_plate(settings), _line(settings), _tip(settings), state)


def seconds(settings: Settings) -> float:
    """Three times as long as the picture takes to half, about."""
    spreading = touching.spreading_time(material(settings.glass), 1e-3 * settings.spot_mm)
    return settings.seconds + 3 * (spreading + settings.seconds / 2)


def reach_mm(settings: Settings) -> float:
    """Diameter of the spot, mm."""
    return settings.spot_mm


def read(settings: Settings, state: Moment) -> dict[str, Any]:
    """Readings: peaks of the run, of the plate without its crack."""
    peaks = state.peaks
    return {
        "spot_C": ROOM - ZERO_C + peaks.rise,
        "crack_runs": state.ran_at_s is not None,
        "crack_length_mm": 1e3 * state.crack,
        "intensity_ratio": peaks.ratio,
        "tension_MPa": 1e-6 * peaks.tension,
        "compression_MPa": 1e-6 * peaks.compression,
        "retardation_peak_nm": 1e9 * peaks.retardation,
        "fade_half_s": state.fade.half_s if state.fade is not None else None,
    }


def trace(settings: Settings, state: Moment) -> dict[str, float]:
    """Values of this instant for the chart."""
    return {
        "spot_C": ROOM - ZERO_C + float(state.rise.max()),
        "tension_MPa": 1e-6 * float(touching.principal(state.stress)[0].max()),
        "retardation_nm": 1e9 * state.retardation,
        "intensity_ratio": state.ratio,
    }


def view(settings: Settings, state: Moment) -> View:
    """The plate, the crack, and arrows for squeeze and pull."""
    plate = _plate(settings)
    mesh = plate.mesh
    x, y = mesh.x[:, 0], mesh.y[0]
    parts = [(x, state.stress)]
    outlines: tuple[Outline, ...] = ()
    line = _line(settings)
    if line is not None:
        count = open_rows(line, state.crack)
        left, right = cut_stress(line, state.rise, state.moved, count)
        parts = [(x[: line.column + 1], left), (x[line.column :], right)]
        ends = np.array([0.0, 1e3 * state.crack]) - HEIGHT_MM / 2
        outlines = (Outline("crack", np.full(2, 1e3 * x[line.column]), ends),)
    glass = plate.material
    pieces = tuple(
        Placed(face_on(at, y, stress, plate.thickness, glass.stress_optic)) for at, stress in parts
    )
    stage = Stage(pieces, 1.15 * WIDTH_MM, 1.12 * HEIGHT_MM)
    return View(stage, marks=_marks(settings, state), outlines=outlines)


def _marks(settings: Settings, state: Moment) -> tuple[Mark, ...]:
    """A ring where the tip is; arrows at the hottest place and beside it, where it pulls most."""
    tip = touching.touched(_tip(settings), state)
    ring = () if tip is None else (Mark("touch", 1e3 * tip[0], 1e3 * tip[1], settings.spot_mm),)
    if 1e9 * state.retardation < _ARROWS_NM:
        return ring
    mesh = _plate(settings).mesh
    x, y = 1e3 * mesh.x.ravel(), 1e3 * mesh.y.ravel()
    xx, yy, xy = state.stress.reshape(3, -1)
    larger, smaller = touching.principal(state.stress)
    squeezed = int(smaller.argmin())
    # The pull is nearly the same all around the spot: its left side first, so that the arrow
    # does not jump about.
    left = (x[squeezed] - x) / np.maximum(np.hypot(x - x[squeezed], y - y[squeezed]), 1e-9)
    pulled = int((larger.ravel() * (1 + 0.3 * left)).argmax())
    angle = math.degrees(math.atan2(2 * xy[pulled], xx[pulled] - yy[pulled]) / 2)
    return (
        *ring,
        Mark("squeeze", float(x[squeezed]), float(y[squeezed]), 10.0),
        Mark("pull", float(x[pulled]), float(y[pulled]), 10.0, angle),
    )


def say(settings: Settings, state: Moment) -> Message:
    """The plain sentence for this instant."""
    if state.crack >= 0.999e-3 * HEIGHT_MM and state.ran_at_s is not None:
        return Message("parted", {"at": state.ran_at_s})
    if state.ran_at_s is not None:
        return Message("crack_ran", {"length": 1e3 * state.crack})
    if 1e9 * state.peaks.retardation < 1.0:
        return Message("cold")
    if state.ratio > 0.2:
        return Message("crack_waits", {"percent": 100 * state.ratio})
    larger, smaller = touching.principal(state.stress)
    pull, squeeze = 1e-6 * float(larger.max()), -1e-6 * float(smaller.min())
    seen = 1e9 * state.retardation
    half = state.fade.half_s if state.fade is not None else None
    still = settings.power_W < _STRONG_W if state.fade is None else half is None
    if _GONE_NM <= seen < _FAINT_NM and still:
        return Message("faint", {"rise": float(np.ptp(state.rise)), "nm": seen})
    strength = 1e-6 * _plate(settings).material.characteristic_strength
    if pull > strength:
        return Message("hard_pull", {"pull": pull, "strength": strength})
    if state.fade is None:
        return Message("warming", {"squeeze": squeeze, "pull": pull})
    if seen < _GONE_NM:
        return Message("gone")
    if half is not None:
        return Message("fading", {"half": half})
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


def _line(settings: Settings) -> Cut | None:
    return _cut(settings.glass, settings.thickness_mm) if settings.crack_mm > 0 else None


def _tip(settings: Settings) -> Tip:
    return Tip(settings.power_W, 1e-3 * settings.spot_mm, settings.seconds)


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
    reach_mm=reach_mm,
)
