"""A piece that is squeezed, pulled, bent, or stressed by nobody: pull and squeeze balance in it."""

from dataclasses import replace
from typing import Any

import numpy as np

from demo_app.physics.column import advance as column
from demo_app.physics.column.heat import Face, Faces
from demo_app.physics.heat import ROOM
from demo_app.physics.material_files import material
from demo_app.physics.materials import Material
from demo_app.scenes.pushing import picture
from demo_app.scenes.pushing.settings import SLICE_MM, Settings
from demo_app.scenes.pushing.state import (
    State,
    break_odds,
    cracks,
    cut_sums,
    held_field,
    largest,
    retardation,
    slice_field,
    smallest,
    sums,
    wall_of,
)
from demo_app.scenes.pushing.words import TEXTS, say
from demo_app.scenes.scene import Action, Reading, Scene, View
from demo_app.scenes.settings import change

STEP_S = 0.1
RATE_N_S = 250.0
"""How fast the hands' force grows or falls."""
LOOK_S = 3.0
"""How long the piece is looked at once the force is there."""
_SOFTER = 30.0
"""A plate is blown from this far above its annealing point, K, or from this share of the way to its
softening point, whichever is hotter."""
_SHARE = 0.6
_COLD = 1.0
"""A plate counts as cold this close to the air, K."""

READINGS = (
    Reading("tension_MPa", "Largest pull", "MPa", "In the cut; of a disk in its middle."),
    Reading("compression_MPa", "Largest squeeze", "MPa", "In the cut; of a disk in its middle."),
    Reading("net_force_N", "Cut adds up to", "N", "All stress in the cut: the hands' or zero."),
    Reading("net_moment_Nm", "Half is turned by", "Nm", "By the cut and the hands together."),
    Reading("bending_moment_Nm", "Cut bends with", "Nm", "Balanced by the hands on each half."),
    Reading("pulled_N", "All pull in the cut", "N"),
    Reading("squeezed_N", "All squeeze in the cut", "N"),
    Reading("hands_N", "Hands pull with", "N", "A squeeze is negative."),
    Reading("retardation_peak_nm", "Retardation peak", "nm", "Anywhere, over the run."),
    Reading("retardation_middle_nm", "Retardation, middle", "nm", "Largest in the cut."),
    Reading("intensity_ratio", "K over K_IC", "", "Of the crack that is pulled hardest."),
    Reading("crack_gape_um", "Crack opens by", "µm", "The one that is pulled hardest."),
    Reading("breaks", "Breaks", "", "The small crack ran, or a pull that breaks most pieces."),
    Reading("break_probability", "Odds of a break", "", "Without the cracks: handled surfaces."),
)

TRACES = (
    Reading("tension_MPa", "Largest pull", "MPa"),
    Reading("compression_MPa", "Largest squeeze", "MPa"),
    Reading("pulled_N", "All pull", "N"),
    Reading("squeezed_N", "All squeeze", "N"),
    Reading("net_force_N", "Together", "N"),
    Reading("retardation_nm", "Retardation", "nm"),
)


def start(settings: Settings) -> State:
    """Hands that do not press yet; or a hot plate."""
    if settings.held:
        return State(0.0, 0, 0.0, None, held_field(settings, 0.0))
    hot = column.start(wall_of(settings.material), _hot(material(settings.material)))
    return State(0.0, 0, 0.0, hot, slice_field(settings, hot))


def advance(settings: Settings, state: State) -> State:
    """One step later."""
    if not settings.held:
        return _weighed(settings, _cooler(settings, state))
    time = round(state.time_s + STEP_S, 9)
    if state.broke_s is not None:
        return replace(state, time_s=time, step=state.step + 1)
    change_N = float(np.clip(settings.load - state.force, -RATE_N_S * STEP_S, RATE_N_S * STEP_S))
    force = state.force + change_N
    field = held_field(settings, force)
    moved = replace(state, time_s=time, step=state.step + 1, force=force, field=field)
    return _weighed(settings, moved)


def _cooler(settings: Settings, state: State) -> State:
    """The plate one step cooler; a cold one stays as it is."""
    assert state.column is not None
    wall, faces, now = wall_of(settings.material), _faces(settings), state.column
    if _cold(state):
        later = replace(now, time=1.05 * now.time)
        return replace(state, time_s=later.time, step=state.step + 1, column=later)
    dt = column.step_length(wall, now, faces, now.time)
    later = column.advance(wall, now, dt, faces, faces)
    return replace(
        state,
        time_s=later.time,
        step=state.step + 1,
        column=later,
        field=slice_field(settings, later, 1 if state.broke_s is None else 2),
    )


def _weighed(settings: Settings, state: State) -> State:
    """`state` with its peak, parted if it does not hold."""
    if state.broke_s is not None:
        return state
    peak = float(retardation(settings, state.field.nodal).max())
    state = replace(state, peak_nm=max(state.peak_nm, peak))
    ready = settings.held or _cold(state)
    if not (ready and (_ratio(settings, state) >= 1.0 or break_odds(settings, state) > 0.5)):
        return state
    last = tuple(_stresses(settings, state).items())
    if settings.held:
        rest = held_field(settings, 0.0)
    else:
        assert state.column is not None
        rest = slice_field(settings, state.column, 2)
    return replace(state, broke_s=state.time_s, force=0.0, field=rest, last=last)


def seconds(settings: Settings) -> float:
    """Until the force is there, or the plate cold, and was looked at."""
    if settings.held:
        return settings.load / RATE_N_S + LOOK_S
    glass = material(settings.material)
    at = np.linspace(ROOM, _hot(glass), 9)
    stored = glass.density * float(glass.heat_capacity(at).max())
    thickness, slowest = 1e-3 * SLICE_MM, float(glass.conductivity_at(at).min())
    # The first root of the slab's series lies between both limits (Carslaw and Jaeger).
    slow = stored * (thickness / (2 * settings.jet_W_m2K) + thickness**2 / (9 * slowest))
    return float(slow * np.log((_hot(glass) - ROOM) / _COLD))


def _hot(solid: Material) -> float:
    soft = solid.annealing_point + _SHARE * (solid.softening_point - solid.annealing_point)
    return max(soft, solid.annealing_point + _SOFTER)


def _cold(state: State) -> bool:
    assert state.column is not None
    return float(np.abs(state.column.temperature - ROOM).max()) < 2 * _COLD


def _faces(settings: Settings) -> Faces:
    face = Face(ROOM, settings.jet_W_m2K)
    return face, face


def _ratio(settings: Settings, state: State) -> float:
    return max((crack.ratio for crack in cracks(settings, state)), default=0.0)


def _above(stress: float) -> float:
    """`stress`, or zero where it is none or no more than rounding (Pa)."""
    return stress if stress > 1.0 else 0.0


def _stresses(settings: Settings, state: State) -> dict[str, float]:
    """Readings that end with a break."""
    nodal = state.field.nodal
    middle = nodal[:, :1, :1] if settings.kind == "disk-squeezed" else nodal[:, :1]
    net, moment, hands = cut_sums(settings, state)
    pull, squeeze = sums(settings, state)
    sign = {"bar-pulled": 1.0, "bar-squeezed": -1.0}.get(settings.kind, 0.0)
    found = cracks(settings, state)
    gape = max((float(crack.opening.max()) for crack in found), default=0.0)
    return {
        "tension_MPa": 1e-6 * _above(float(largest(middle).max())),
        "compression_MPa": 0.0 - 1e-6 * _above(-float(smallest(middle).min())),
        "net_force_N": net,
        "net_moment_Nm": hands - moment,
        "bending_moment_Nm": moment,
        "pulled_N": pull,
        "squeezed_N": squeeze,
        "hands_N": sign * state.force,
        "retardation_middle_nm": float(retardation(settings, middle).max()),
        "intensity_ratio": max(0.0, _ratio(settings, state)),
        "crack_gape_um": 1e6 * gape,
        "break_probability": break_odds(settings, state),
    }


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings; stresses are the last ones before a break."""
    now = dict(state.last) or _stresses(settings, state)
    found: dict[str, Any] = {
        **now,
        "retardation_peak_nm": state.peak_nm,
        "breaks": state.broke_s is not None,
    }
    return {reading.name: found[reading.name] for reading in READINGS}


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Values of this instant for the chart."""
    now = _stresses(settings, state)
    stress = retardation(settings, state.field.nodal)
    now["retardation_nm"] = float(stress.max())
    return {reading.name: now[reading.name] for reading in TRACES}


def view(settings: Settings, state: State) -> View:
    """Picture, section, arrows, cracks, and the stress across the cut."""
    return View(
        picture.stage(settings, state),
        picture.section(settings, state),
        picture.marks(settings, state),
        picture.outlines(settings, state),
        picture.chart(settings, state),
    )


def _let_go(settings: Settings, state: State) -> Settings:
    return change(settings, load=0.0)


SCENE = Scene(
    id="push-pull",
    title="Push and pull",
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
    section_shows="stress",
    actions=(Action("let_go", "Let go", _let_go),),
)
