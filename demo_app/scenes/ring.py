"""A turning bottle heated in a ring, then a drop of water: it cracks off where it is asked to."""

from typing import Any

from demo_app.physics.heat import ZERO_C
from demo_app.physics.revolve import crackoff
from demo_app.physics.revolve.cracking import at_place
from demo_app.physics.revolve.verdict import break_probability
from demo_app.scenes.crack_off.picture import seen, view
from demo_app.scenes.crack_off.record import (
    Settings,
    State,
    bottle_for,
    firing_for,
    stresses_MPa,
)
from demo_app.scenes.crack_off.words import TEXTS, say
from demo_app.scenes.scene import Action, Reading, Scene
from demo_app.scenes.settings import change

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


def start(settings: Settings) -> State:
    """Cold bottle."""
    ready = bottle_for(settings)
    return seen(settings, ready, crackoff.start(ready), 0.0, {})


def advance(settings: Settings, state: State) -> State:
    """One step later."""
    ready = bottle_for(settings)
    moment = crackoff.step(ready, firing_for(settings), state.moment)
    unbroken = state.unbroken
    if moment.crack is not None and not unbroken:
        unbroken = stresses_MPa(ready, state.moment, state.wall)
    return seen(settings, ready, moment, state.peak_nm, unbroken)


def seconds(settings: Settings) -> float:
    """Until some time after the last event."""
    last = max(settings.heat_s, settings.drop_at_s if settings.drop else 0.0)
    return last + (6.0 if settings.drop else 20.0)


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings; stresses are the last ones before a break."""
    ready, moment = bottle_for(settings), state.moment
    crack = moment.crack
    parted = crack.parted_s if crack else None
    broken = parted is not None
    return {
        "surface_peak_C": moment.peaks.surface - ZERO_C,
        **(state.unbroken or stresses_MPa(ready, moment, state.wall)),
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
    ready, moment = bottle_for(settings), state.moment
    piece, glass = crackoff.shown(ready, moment)
    outside = glass.temperature.reshape(piece.mesh.r.shape)[:, 0]
    now = stresses_MPa(ready, moment, state.wall)
    return {
        "surface_C": float(at_place(piece.mesh, outside, ready.ring)) - ZERO_C,
        "axial_outside_MPa": now["axial_outside_MPa"],
        "axial_inside_MPa": now["axial_inside_MPa"],
        "intensity_ratio": max(0.0, moment.ratio),
    }


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
