"""The same piece cooled in the air or by an oven programme: what stress is born, what stays."""

import functools
from typing import Any

from demo_app.base.errors import InputError
from demo_app.physics import firing, oven, stepped
from demo_app.physics.annealing import birefringence, temper_number
from demo_app.physics.annealing_search import Proposal, worked_at
from demo_app.physics.column.heat import Faces
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.oven import Oven, Programme
from demo_app.physics.stepped import mean_stress
from demo_app.scenes.cooling_parts import charts, picture, programme
from demo_app.scenes.cooling_parts.pace import pace as pace_of
from demo_app.scenes.cooling_parts.settings import (
    Settings,
    limit_of,
    piece_of,
    proposal_of,
    told_of,
)
from demo_app.scenes.cooling_parts.state import State, acceptable
from demo_app.scenes.cooling_parts.words import TEXTS, say
from demo_app.scenes.scene import Action, Handle, Reading, Scene, View
from demo_app.scenes.settings import change

READINGS = (
    Reading("surface_MPa", "Surface", "MPa", "Of the plate; of a stepped piece along its joint."),
    Reading("centre_MPa", "Centre", "MPa", "Of the plate; of a stepped piece along its joint."),
    Reading("second_surface_MPa", "Second part's surface", "MPa"),
    Reading("second_centre_MPa", "Second part's centre", "MPa"),
    Reading("load_MPa", "Load from the other part", "MPa", "Mean through the first part."),
    Reading("retardation_nm_per_cm", "Retardation", "nm/cm", "Largest for each cm of path."),
    Reading("limit_nm_per_cm", "Allowed", "nm/cm", "By the limit that is set."),
    Reading("temper_number", "Real temper number", "", "ASTM C148: strain discs in 4.06 mm."),
    Reading("peak_tension_MPa", "Surface's pull on the way", "MPa", "Largest over the run."),
    Reading("outside_C", "Outside", "°C"),
    Reading("inside_C", "Inside", "°C"),
    Reading("hours", "Cold after", "h", "None before it is cold."),
    Reading("acceptable", "Good enough", "", "The verdict; none before it is cold."),
    Reading("proposed_hours", "Shortest that passes", "h", "Stated once the piece is cold."),
    Reading("proposed_hold_C", "Proposed: hold at", "°C"),
    Reading("proposed_hold_min", "Proposed: hold for", "min"),
    Reading("proposed_slow_C_per_h", "Proposed: slow", "°C/h"),
    Reading("proposed_slow_to_C", "Proposed: slow down to", "°C"),
    Reading("proposed_fast_C_per_h", "Proposed: fast", "°C/h"),
)

TRACES = (
    Reading("outside_C", "Outside", "°C"),
    Reading("inside_C", "Inside", "°C"),
    Reading("surface_MPa", "Surface", "MPa"),
    Reading("centre_MPa", "Centre", "MPa"),
)


def start(settings: Settings) -> State:
    """A hot, soft piece; the oven, if any, is at its hold."""
    glass, what, told = material(settings.glass), piece_of(settings), told_of(settings)
    piece = stepped.start(what, worked_at(glass))
    now = Oven(told.hold)
    first = charts.instant(what, piece, _around(settings.way, now))
    return State(piece, now, settings.way, told, 0.0, 0.0, 0.0, None, None, (first,), 0)


def advance(settings: Settings, state: State) -> State:
    """One step later. Changed orders go on from the present temperatures."""
    state = _begun(settings, state)
    glass, what, told = material(settings.glass), piece_of(settings), told_of(settings)
    now = state.time_s
    moved = state.moved_s if settings.way == state.way else now
    turned = state.turned_s if told == state.told else now
    coming = oven.ahead(told, state.oven)
    stop, longest = float("inf"), float("inf")
    if settings.way == "oven":
        if not oven.over(told, state.oven):
            stop = now + coming.next_point(0.0)
        longest = firing.longest_step(coming, 0.0, now - turned, glass)
    faces = functools.partial(_faces, settings.way, glass.emissivity, coming, now)
    piece = stepped.step(what, state.piece, faces, now - moved, stop, longest=longest)
    then = oven.later(told, state.oven, piece.time - now)
    found = charts.instant(what, piece, _around(settings.way, then))
    surfaces = [part.surface for part in piece.parts]
    surfaces += [(float(one[0]), float(one[-1])) for one in piece.crosswise]
    cold_s, kept = (state.cold_s, state.kept) if firing.cold(piece) else (None, None)
    if cold_s is None and firing.cold(piece):
        cold_s = piece.time
        kept = birefringence(glass, stepped.settled(what, piece, ROOM))
    return State(
        piece=piece,
        oven=then,
        way=settings.way,
        told=told,
        moved_s=moved,
        turned_s=piece.time if piece.time == stop else turned,
        peak=max(state.peak, *(one for pair in surfaces for one in pair)),
        cold_s=cold_s,
        kept=kept,
        history=(*state.history, found),
        step=state.step + 1,
    )


def seconds(settings: Settings) -> float:
    """Until the piece is cold."""
    glass, what = material(settings.glass), piece_of(settings)
    excess = worked_at(glass) - ROOM
    if settings.way == "air":
        return firing.settling_time(what, excess, firing.air_face(glass.emissivity))
    settling = firing.settling_time(what, excess, firing.oven_face(ROOM, glass.emissivity))
    return oven.whole(told_of(settings)).duration + settling


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Stress now, the verdict once it is cold, and the shortest programme that passes."""
    glass, what = material(settings.glass), piece_of(settings)
    last, two = state.history[-1], len(what.walls) > 1
    kept = birefringence(glass, state.piece) if state.kept is None else state.kept
    # The search takes a moment: no picture on the way waits for it.
    wanted = state.cold_s is not None or settings.programme == "proposed"
    load = mean_stress(what.walls[0], state.piece.parts[0].stress)
    return {
        "surface_MPa": last.surface[0],
        "centre_MPa": last.centre[0],
        "second_surface_MPa": last.surface[1] if two else None,
        "second_centre_MPa": last.centre[1] if two else None,
        "load_MPa": 1e-6 * load if two and settings.joined else None,
        "retardation_nm_per_cm": 1e7 * kept,
        "limit_nm_per_cm": 1e7 * limit_of(settings).birefringence,
        "temper_number": temper_number(kept),
        "peak_tension_MPa": 1e-6 * state.peak,
        "outside_C": last.outside[0],
        "inside_C": last.inside[0],
        "hours": None if state.cold_s is None else state.cold_s / 3600,
        "acceptable": None if state.cold_s is None else acceptable(settings, state),
        **_proposed(proposal_of(settings) if wanted else None),
    }


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Values of this instant for the chart."""
    last = state.history[-1]
    return {
        "outside_C": last.outside[0],
        "inside_C": last.inside[0],
        "surface_MPa": last.surface[0],
        "centre_MPa": last.centre[0],
    }


def view(settings: Settings, state: State) -> View:
    """Picture, section, marks, and the chart with its levels."""
    state = _begun(settings, state)
    glass, what = material(settings.glass), piece_of(settings)
    look = picture.look_of(settings)
    if settings.chart == "stress":
        allowed = 1e-6 * limit_of(settings).birefringence / abs(glass.stress_optic)
        chart = charts.stress_chart(state.history, allowed)
    else:
        coming: Programme | None = None
        handles: tuple[Handle, ...] = ()
        if settings.way == "oven":
            told = told_of(settings)
            coming = oven.ahead(told, state.oven)
            handles = programme.handles(told, state.oven, state.time_s)
        levels = (glass.annealing_point - ZERO_C, glass.strain_point - ZERO_C)
        chart = charts.temperature_chart(state.history, levels, coming, handles)
    return View(
        picture.stage(what, state.piece, look),
        picture.section(what, state.piece),
        picture.marks(what, state.piece, look),
        chart=chart,
    )


def drag(settings: Settings, state: State, name: str, x: float, y: float) -> Settings:
    """A point of the programme dragged to `x` hours and `y` degC."""
    begun = _begun(settings, state)
    return programme.dragged(settings, begun.oven, begun.time_s, name, x, y)


def pace(settings: Settings, state: State) -> float:
    """A few hundred degrees in about half a minute, whatever time they really take."""
    return pace_of(settings, _begun(settings, state), told_of(settings))


def _begun(settings: Settings, state: State) -> State:
    """`state`; before the first step, orders may still change altogether."""
    return start(settings) if state.step == 0 else state


def _proposed(proposal: Proposal | None) -> dict[str, float | None]:
    told = None if proposal is None else proposal.schedule
    return {
        "proposed_hours": proposal.seconds / 3600 if proposal else None,
        "proposed_hold_C": told.hold - ZERO_C if told else None,
        "proposed_hold_min": told.hold_time / 60 if told else None,
        "proposed_slow_C_per_h": 3600 * told.slow if told else None,
        "proposed_slow_to_C": told.slow_to - ZERO_C if told else None,
        "proposed_fast_C_per_h": 3600 * told.fast if told else None,
    }


def _around(way: str, now: Oven) -> float:
    """Temperature around the piece, K."""
    return now.temperature if way == "oven" else ROOM


def _faces(way: str, emissivity: float, programme: Programme, began: float, time: float) -> Faces:
    if way == "air":
        face = firing.air_face(emissivity)
    else:
        face = firing.oven_face(programme.at(time - began), emissivity)
    return face, face


def _take_proposal(settings: Settings, state: State) -> Settings:
    """Put the proposed programme into the presenter's own settings."""
    proposal = proposal_of(settings)
    if proposal is None:
        raise InputError(
            "no programme that was tried is good enough",
            place="limit",
            remedy="choose a wider limit or a thinner piece",
        )
    return programme.written(settings, proposal.schedule)


SCENE = Scene(
    id="cooling",
    title="Slow or sudden cooling",
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
    drag=drag,
    pace=pace,
    actions=(
        Action("take_out", "Into the air", lambda settings, _: change(settings, way="air")),
        Action("put_in", "Into the oven", lambda settings, _: change(settings, way="oven")),
        Action("take_proposal", "Take the proposal", _take_proposal),
    ),
)
