"""A moulded clear plastic dish: melt streams in, freezes, and keeps its colours until warmed."""

import math
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from demo_app.physics.filling import freezing
from demo_app.physics.filling.melt import MELTS
from demo_app.physics.filling.moulded import CORNERS, CUT_COLUMN, corner_tensions
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.relaxation import shear_left
from demo_app.scenes.dish_parts import picture
from demo_app.scenes.dish_parts.picture import Shares
from demo_app.scenes.dish_parts.settings import Settings, in_glass, made, shot_of
from demo_app.scenes.scene import Action, Message, Reading, Scene, View
from demo_app.scenes.settings import change

WARM_STEPS = 30
"""Steps in which the cold dish is warmed."""
LOOK_S = 10.0
"""How long the cold dish is looked at."""
ORDER_NM = 551.0
"""Retardation of one order: the first violet in daylight (CIE observer and D65)."""
_CLOSE = 0.02
"""Corners whose tensions differ by less than this share fail alike."""


@dataclass(frozen=True)
class State:
    """One instant.

    Parameters
    ----------
    time_s, step : float, int
        Model time, and steps since the start.
    instant : int
        Of the making; -1 before any melt has come.
    stretch_left, heat_left : float
        Share of the molecules' stretch and of the stress that warmth has left.
    peak_nm : float
        Largest retardation: of the cold dish once it is cold, until then of this instant.
    """

    time_s: float
    step: int
    instant: int
    stretch_left: float = 1.0
    heat_left: float = 1.0
    peak_nm: float = 0.0


READINGS = (
    Reading("retardation_peak_nm", "Retardation peak", "nm", "Of the cold dish; until then now."),
    Reading("retardation_p95_nm", "Retardation, 95 %", "nm", "Now: 95 % of the dish have less."),
    Reading("orders", "Orders of colour", "", "Peak over 551 nm, the first violet."),
    Reading("flow_share_pct", "Drawn-out molecules", "%", "Their share of the colours."),
    Reading("flow_peak_nm", "By molecules", "nm", "Largest, now."),
    Reading("stress_peak_nm", "By stress", "nm", "Largest, now."),
    Reading("colour_left_pct", "Colours left", "%", "Of the cold dish's mean, after warming."),
    Reading("stress_left_pct", "Stress left", "%", "After warming."),
    Reading("stretch_left_pct", "Molecules' stretch left", "%", "After warming."),
    Reading("tension_MPa", "Largest pull", "MPa", "Inside, of the frozen dish."),
    Reading("compression_MPa", "Largest squeeze", "MPa", "Near the skin, of the frozen dish."),
    Reading("net_force_N", "Cut adds up to", "N", "Stress in an upright cut; nobody holds it."),
    Reading("weak_corner", "Fails first", "", "The corner that is pulled hardest."),
    Reading("weak_corner_MPa", "Pull there", "MPa"),
    Reading("filled_pct", "Filled", "%"),
    Reading("pressure_MPa", "Pressure at the gate", "MPa", "Largest."),
    Reading("as_glass_survives", "In glass it survives", "", "Cast, and cooled in the open air."),
    Reading("as_glass_tension_MPa", "Pull in glass", "MPa", "Largest, mean through the thickness."),
    Reading("as_glass_break_probability", "Odds of a break in glass", ""),
    Reading("as_glass_energy_J", "Energy stored in glass", "J"),
    Reading("as_glass_retardation_nm", "Retardation in glass", "nm", "Largest."),
)

TRACES = (
    Reading("filled_pct", "Filled", "%"),
    Reading("retardation_nm", "Retardation", "nm"),
    Reading("pressure_MPa", "Pressure at the gate", "MPa"),
    Reading("tension_MPa", "Largest pull", "MPa"),
    Reading("colour_left_pct", "Colours left", "%"),
)

TEXTS = {
    "closed": "The mould is closed and empty: nothing to be seen yet.",
    "filling": "Melt streams in and has filled {filled:.0f} % of the mould. Between the cold walls "
    "its long molecules are drawn out, and what touches a wall freezes like that.",
    "cooling": "The mould is full. The thin bottom freezes first; the thick rim and ribs are still "
    "hot, and will pull at it when they shrink.",
    "cold": "Cold, and full of colour up to {nm:.0f} nm, {orders:.1f} orders: {flow:.0f} % of it "
    "are molecules that froze drawn out, {stress:.0f} % stress from thick parts that froze last.",
    "below": "At {warm:.0f} °C, below its glass transition at {tg:.0f} °C, the plastic is hard: of "
    "its stress {heat:.0f} % is left, of its molecules' stretch {stretch:.0f} %.",
    "above": "Above its glass transition at {tg:.0f} °C the plastic gives way: of its stress "
    "{heat:.0f} % is left, and of its molecules' stretch, which takes longer, {stretch:.0f} %.",
    "gone": "The colours are gone: warmed for long enough, the molecules have coiled up and "
    "the stress has flowed away, as in glass that is annealed.",
    "place": "place along the dish",
    "colour": "retardation",
    "stretch": "molecules",
    "heat": "stress",
    "both": "both together",
}


def start(settings: Settings) -> State:
    """The empty mould."""
    made(settings)
    return State(0.0, 0, -1)


def advance(settings: Settings, state: State) -> State:
    """The next instant of the making; then the dish lies about, or is warmed."""
    times = made(settings).times
    step, instant = state.step + 1, state.instant
    if instant < times.size - 1:
        later = replace(state, time_s=float(times[instant + 1]), step=step, instant=instant + 1)
        now = _seen(settings, later)
        return replace(later, peak_nm=float(np.hypot(*now.whole).max()))
    if not settings.warms:
        return replace(state, time_s=state.time_s + LOOK_S / 2, step=step)
    dt = 60 * settings.warm_min / WARM_STEPS
    warm = np.array([ZERO_C + settings.warm_C])
    time = float(MELTS[settings.plastic].relaxation_time(warm)[0])
    # All of the dish is as warm as the air at once: it takes half a minute, and lies for many.
    stress = float(shear_left(material(settings.plastic), warm, warm, dt)[0])
    return replace(
        state,
        time_s=state.time_s + dt,
        step=step,
        stretch_left=state.stretch_left * math.exp(-dt / time),
        heat_left=state.heat_left * stress,
    )


def seconds(settings: Settings) -> float:
    """Until the dish is cold and was looked at, or has been warmed."""
    cold = float(made(settings).times[-1])
    return cold + (60 * settings.warm_min if settings.warms else LOOK_S)


def _seen(settings: Settings, state: State) -> Shares:
    found = made(settings)
    if state.instant < 0:
        return picture.shares(found, 0, 0.0, 0.0)
    return picture.shares(found, state.instant, state.stretch_left, state.heat_left)


def _mean(shares: Shares) -> tuple[float, float, float]:
    """Mean retardation of the molecules, of the stress, of both, nm."""
    flow, heat, both = (
        float(np.hypot(*part).mean()) for part in (shares.stretch, shares.heat, shares.whole)
    )
    return flow, heat, both


def _share(shares: Shares) -> float | None:
    """Share of the molecules in all colours, percent: means over the dish."""
    flow, heat, _ = _mean(shares)
    return 100 * flow / (flow + heat) if flow + heat > 0 else None


def _left(settings: Settings, state: State, shares: Shares) -> float:
    """What is left of the cold dish's colours, percent."""
    if state.stretch_left == 1.0 and state.heat_left == 1.0:
        return 100.0
    cold = picture.shares(made(settings), state.instant, 1.0, 1.0)
    return 100 * _mean(shares)[2] / _mean(cold)[2]


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings of this instant; of the same dish in glass."""
    found, seen, glass = made(settings), _seen(settings, state), in_glass(settings)
    k, left = max(state.instant, 0), state.heat_left
    corners = left * corner_tensions(found.plate, found.cold)
    worst = float(corners.max())
    alike = float(np.sort(corners)[-2]) > (1 - _CLOSE) * worst
    size = np.hypot(*seen.whole)
    net = freezing.cut_force(found.plate, found.cold, CUT_COLUMN)
    return {
        "retardation_peak_nm": state.peak_nm,
        "retardation_p95_nm": float(np.quantile(size, 0.95)),
        "orders": state.peak_nm / ORDER_NM,
        "flow_share_pct": _share(seen),
        "flow_peak_nm": float(np.hypot(*seen.stretch).max()),
        "stress_peak_nm": float(np.hypot(*seen.heat).max()),
        "colour_left_pct": _left(settings, state, seen),
        "stress_left_pct": 100 * left,
        "stretch_left_pct": 100 * state.stretch_left,
        "tension_MPa": 1e-6 * left * float(found.tension[k]),
        "compression_MPa": 1e-6 * left * float(found.compression[k]),
        "net_force_N": left * net,
        "weak_corner": CORNERS[int(corners.argmax())] + (", hardly before another" * alike),
        "weak_corner_MPa": 1e-6 * worst,
        "filled_pct": _filled(settings, state),
        "pressure_MPa": 1e-6 * float(found.pressure.max()),
        "as_glass_survives": glass.odds < 0.5,
        "as_glass_tension_MPa": 1e-6 * float(glass.cast.peak.max()),
        "as_glass_break_probability": glass.odds,
        "as_glass_energy_J": glass.cast.energy,
        "as_glass_retardation_nm": 1e9 * glass.retardation,
    }


def _filled(settings: Settings, state: State) -> float:
    """Share of the mould's volume that is full, percent."""
    if state.instant < 0:
        return 0.0
    found = made(settings)
    gap = shot_of(settings).cavity.gap
    return float(100 * (found.filled[state.instant] * gap).sum() / gap.sum())


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Values of this instant for the chart."""
    found, seen = made(settings), _seen(settings, state)
    k = max(state.instant, 0)
    return {
        "filled_pct": _filled(settings, state),
        "retardation_nm": float(np.hypot(*seen.whole).max()),
        "pressure_MPa": 1e-6 * float(found.pressure[k]),
        "tension_MPa": 1e-6 * state.heat_left * float(found.tension[k]),
        "colour_left_pct": _left(settings, state, seen),
    }


def view(settings: Settings, state: State) -> View:
    """The dish, its rim and ribs, the front or the arrows, and a chart along a line."""
    found, seen = made(settings), _seen(settings, state)
    cold = state.instant == found.times.size - 1
    return View(
        picture.stage(seen),
        marks=picture.marks(found, state.heat_left) if cold else (),
        outlines=picture.outlines(found, state.instant, settings.gate),
        chart=picture.chart(seen),
    )


def say(settings: Settings, state: State) -> Message:
    """The plain sentence for this instant."""
    if state.instant < 0:
        return Message("closed")
    found, seen = made(settings), _seen(settings, state)
    filled = _filled(settings, state)
    if filled < 99.9:
        return Message("filling", {"filled": filled})
    if state.instant < found.times.size - 1:
        return Message("cooling")
    left = _left(settings, state, seen)
    if left < 1.0:
        return Message("gone")
    warmed = {
        "warm": settings.warm_C,
        "heat": 100 * state.heat_left,
        "stretch": 100 * state.stretch_left,
    }
    warmed["tg"] = MELTS[settings.plastic].transition - ZERO_C
    if settings.warms and state.time_s > found.times[-1]:
        return Message("above" if settings.warm_C > warmed["tg"] else "below", warmed)
    flow = _share(seen) or 0.0
    return Message(
        "cold",
        {
            "nm": state.peak_nm,
            "orders": state.peak_nm / ORDER_NM,
            "flow": flow,
            "stress": 100 - flow,
        },
    )


def _warm_up(settings: Settings, state: State) -> Settings:
    return change(settings, warm_C=125.0)


SCENE = Scene(
    id="dish",
    title="Moulded dish",
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
    actions=(Action("warm_up", "Warm it", _warm_up),),
)
