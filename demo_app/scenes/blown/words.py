"""Readings of the bubble, and the sentence under it."""

from typing import Any

import numpy as np

from demo_app.physics.annealing_search import worked_at
from demo_app.physics.heat import ZERO_C
from demo_app.physics.revolve.flask import Flask
from demo_app.physics.revolve.proof import Proof, blow_limit, opening_blow
from demo_app.physics.revolve.shattering import stored_energy
from demo_app.physics.strength import critical_depth
from demo_app.scenes.blown.record import (
    PLACES,
    Settings,
    State,
    broken,
    end_s,
    first_answer,
    flask_of,
    map_of,
    odds,
    proof_of,
    shards_of,
    stresses_MPa,
)
from demo_app.scenes.scene import Message, Reading

READINGS = (
    Reading("base_outside_MPa", "Foot, outside", "MPa", "Of the cold flask; until then foreseen."),
    Reading("base_inside_MPa", "Foot, inside", "MPa", "Of the cold flask; until then foreseen."),
    Reading("wall_outside_MPa", "Wall, outside", "MPa", "Of the cold flask; until then foreseen."),
    Reading("wall_inside_MPa", "Wall, inside", "MPa", "Of the cold flask; until then foreseen."),
    Reading("inside_peak_MPa", "Largest pull inside", "MPa", "Of the cold flask, anywhere."),
    Reading("answer", "Answer", "", "first: plates twice as thick; full: the whole flask."),
    Reading("progress_pct", "Progress", "%", "Of the full answer."),
    Reading("scratch_to_break_um", "Scratch that breaks it", "µm", "Inside; none: no depth does."),
    Reading("blow_to_break_J", "Blow that breaks it", "J", "Outside; half of such flasks break."),
    Reading("break_probability", "Odds of a break", "", "Of the chosen test."),
    Reading("breaks", "Breaks", "", "The verdict for the test as stated."),
    Reading("runs_by_itself", "Cracks run by themselves", "", "Once they reach the pull."),
    Reading("pieces", "Dice", "", "That the stored energy makes of it; 1: none."),
    Reading("stored_energy_J", "Stored energy", "J"),
    Reading("net_force_N", "Net force", "N", "Across the middle of the wall: pull less squeeze."),
    Reading("hours", "Cooled for", "h"),
    Reading("retardation_peak_nm", "Retardation peak", "nm", "Largest in the picture."),
)

TRACES = (
    # The second curve has the colour of a squeeze, the third that of a pull.
    Reading("wall_outside_MPa", "Wall, outside", "MPa"),
    Reading("base_outside_MPa", "Foot, outside", "MPa"),
    Reading("base_inside_MPa", "Foot, inside", "MPa"),
    Reading("wall_inside_MPa", "Wall, inside", "MPa"),
)

TEXTS = {
    "fresh": "Fresh from the pipe, {hot:.0f} °C. A first answer for the cold foot: outside "
    "squeezed with {squeeze:.0f} MPa, inside pulled with {pull:.0f} MPa.",
    "fresh_oven": "Fresh from the pipe, {hot:.0f} °C, and into the oven. A first answer: after "
    "{hours:.0f} hours hardly {stress:.1f} MPa will be left.",
    "soft": "The outside of the foot is stiff already, its inside is still soft at "
    "{inside:.0f} °C and gives way.",
    "even": "The oven keeps inside and outside alike: {outside:.0f} and {inside:.0f} °C. So both "
    "stiffen together.",
    "shrinking": "All of it is stiff now. The inside is still hotter and shrinks more: it squeezes "
    "the outside with {squeeze:.0f} MPa.",
    "locked": "Cold, and this stays: the outside of the foot is squeezed with {squeeze:.0f} MPa, "
    "the inside pulled with {pull:.0f} MPa.",
    "calm": "Cold and calm after {hours:.0f} hours in the oven: less than {stress:.1f} MPa is "
    "left, and the picture is dark.",
    "wait": "The flask is still hot. The test comes once it is cold.",
    "blow_held": "A blow of {energy:.1f} J from outside, and it holds: half of such flasks bear "
    "{limit:.1f} J. The squeezed skin keeps flaws shut.",
    "blow_held_calm": "A blow of {energy:.1f} J from outside, and it holds. Half of such flasks "
    "bear {limit:.1f} J: no squeezed skin helps this one.",
    "blow_broke": "A blow of {energy:.1f} J was too much: half of such flasks bear {limit:.1f} J.",
    "scratch_held": "A scratch of {depth:.0f} µm inside, and it holds. It takes {limit:.0f} µm for "
    "the pull to open it.",
    "scratch_held_calm": "A scratch of {depth:.0f} µm inside, and nothing happens: in there "
    "nothing pulls. It takes a blow of {load:.2g} J from outside to open it.",
    "scratch_held_weak": "A scratch of {depth:.0f} µm inside, and it holds: the pull in there is "
    "too weak to open any. It takes a blow of {load:.2g} J from outside.",
    "no_scratch": "No scratch, and nothing happens.",
    "scratch_shattered": "A scratch of {depth:.0f} µm inside was enough: the pull opens it from "
    "{limit:.0f} µm on, and the stored {energy:.2f} J shatter the flask.",
    "scratch_cracked": "A scratch of {depth:.0f} µm inside was enough: from {limit:.0f} µm on the "
    "pull opens it. The thin glass stores too little to shatter.",
    "stress": "around the flask",
    "depth": "below the outside",
    "through_foot": "in the foot",
    "through_first": "first answer",
    "pull": "stress",
}


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings: of the cold flask, and until it is cold the first answer."""
    what = flask_of(settings)
    done = proof_of(what, state.cooling)
    found: dict[str, Any] = (
        _full(settings, state, what, done) if state.cold else _foreseen(settings)
    )
    found["progress_pct"] = 100 * min(1.0, state.time_s / end_s(settings))
    found["net_force_N"] = net_force(what, state)
    found["hours"] = state.time_s / 3600
    found["retardation_peak_nm"] = float(map_of(what, state.cooling).retardation_nm().max())
    return {reading.name: found[reading.name] for reading in READINGS}


def _full(settings: Settings, state: State, what: Flask, done: Proof) -> dict[str, Any]:
    broke = shards_of(done, 0.0)
    inside = np.maximum(done.wall.along, done.wall.hoop)[:, -1]
    return {
        **{f"{name}_MPa": value for name, value in stresses_MPa(what, state.cooling).items()},
        "inside_peak_MPa": 1e-6 * float(inside.max()),
        "answer": "full",
        "scratch_to_break_um": None if done.scratch is None else 1e6 * done.scratch,
        "blow_to_break_J": blow_limit(done),
        "break_probability": odds(settings, done),
        "breaks": broken(settings, state),
        "runs_by_itself": broke.by_itself,
        "pieces": max(1, round(broke.pieces)),
        "stored_energy_J": stored_energy(what, state.cooling.glass),
    }


def _foreseen(settings: Settings) -> dict[str, Any]:
    first = first_answer(settings)
    stresses = {f"{name}_MPa": 1e-6 * getattr(first, name) for name in PLACES}
    toughness = flask_of(settings).piece.material.fracture_toughness
    deep = critical_depth(toughness, max(first.base_inside, 1.0))
    known = deep < 0.5e-3 * settings.base_mm
    return {
        **stresses,
        "inside_peak_MPa": max(stresses["base_inside_MPa"], stresses["wall_inside_MPa"]),
        "answer": "first",
        "scratch_to_break_um": 1e6 * deep if known else None,
        "blow_to_break_J": None,
        "break_probability": 0.0,
        "breaks": False,
        "runs_by_itself": None,
        "pieces": None,
        "stored_energy_J": None,
    }


def net_force(what: Flask, state: State) -> float:
    """What the glass above the middle of the wall pulls at the glass below it, N."""
    force = what.piece.stress.load(state.cooling.glass.stress)[1::2]
    return float(force.reshape(-1, what.piece.mesh.depth.size)[what.middle :].sum())


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Present stresses."""
    found = stresses_MPa(flask_of(settings), state.cooling)
    values = {f"{name}_MPa": value for name, value in found.items()}
    return {reading.name: values[reading.name] for reading in TRACES}


def say(settings: Settings, state: State) -> Message:
    """The plain sentence for this instant."""
    what = flask_of(settings)
    if state.cold:
        return _tested(settings, state, what)
    if settings.test != "none":
        return Message("wait")
    temperature = state.cooling.warmth.temperature.reshape(what.piece.mesh.r.shape)
    outside, inside = (float(temperature[0, k]) - ZERO_C for k in (0, -1))
    if state.step == 0:
        return _fresh(settings, what)
    if settings.way == "oven":
        return Message("even", {"outside": outside, "inside": inside})
    if float(temperature.max()) > what.piece.material.strain_point:
        return Message("soft", {"inside": inside})
    return Message("shrinking", {"squeeze": max(0.0, -trace(settings, state)["base_outside_MPa"])})


def _fresh(settings: Settings, what: Flask) -> Message:
    hot, first = worked_at(what.piece.material) - ZERO_C, first_answer(settings)
    if settings.way == "oven":
        stress = 1e-6 * max(abs(first.base_outside), abs(first.base_inside))
        return Message(
            "fresh_oven", {"hot": hot, "hours": end_s(settings) / 3600, "stress": stress}
        )
    values = {"squeeze": -1e-6 * first.base_outside, "pull": 1e-6 * first.base_inside}
    return Message("fresh", {"hot": hot, **values})


def _tested(settings: Settings, state: State, what: Flask) -> Message:
    done = proof_of(what, state.cooling)
    calm = settings.way == "oven"
    if settings.test == "blow":
        values = {"energy": settings.blow_J, "limit": blow_limit(done)}
        if broken(settings, state):
            return Message("blow_broke", values)
        return Message("blow_held_calm" if calm else "blow_held", values)
    if settings.test == "scratch":
        return _scratched(settings, state, done)
    found = stresses_MPa(what, state.cooling)
    if calm:
        largest = max(abs(value) for value in found.values())
        return Message("calm", {"hours": state.time_s / 3600, "stress": max(0.1, largest + 0.05)})
    pull = max(0.0, found["base_inside"])
    return Message("locked", {"squeeze": max(0.0, -found["base_outside"]), "pull": pull})


def _scratched(settings: Settings, state: State, done: Proof) -> Message:
    if settings.scratch_um == 0:
        return Message("no_scratch")
    if done.scratch is None:
        calm = "scratch_held_calm" if settings.way == "oven" else "scratch_held_weak"
        load = opening_blow(done, 1e-6 * settings.scratch_um)
        return Message(calm, {"depth": settings.scratch_um, "load": load})
    values = {"depth": settings.scratch_um, "limit": 1e6 * done.scratch}
    if not broken(settings, state):
        return Message("scratch_held", values)
    if not shards_of(done, 0.0).by_itself:
        return Message("scratch_cracked", values)
    energy = stored_energy(done.what, state.cooling.glass)
    return Message("scratch_shattered", {**values, "energy": energy})
