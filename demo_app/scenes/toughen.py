"""A plate heated and blown with air on both sides, next to a plain one; then broken."""

import functools
from dataclasses import replace

from demo_app.physics.toughening import begin, blow, cold_after
from demo_app.scenes.scene import Action, Scene, round_pace
from demo_app.scenes.settings import change
from demo_app.scenes.toughening.picture import view
from demo_app.scenes.toughening.readings import READINGS, TRACES, read, trace
from demo_app.scenes.toughening.record import (
    ACT_S,
    RAMP_S,
    STRIKE_S,
    TICK_S,
    Settings,
    State,
    blown_piece,
    lets_go,
    other_piece,
    quench_of,
)
from demo_app.scenes.toughening.words import TEXTS, say

LOCKED_SHARE = 0.05
"""Share of the cooling in which the stress is locked in."""
LOCKING_S, COOLING_S = 15.0, 15.0
"""How long the locking-in and the rest of the cooling may take to tell, about, s."""


def start(settings: Settings) -> State:
    """Hot plate, jets about to blow."""
    return State(0.0, 0, begin(quench_of(settings)))


def advance(settings: Settings, state: State) -> State:
    """One step later: of the quench, or of what is done to both plates."""
    ready = quench_of(settings)
    cold, step = cold_after(ready), state.step + 1
    if state.blown.column.time < cold:
        later = blow(ready, state.blown, cold)
        return replace(state, time_s=later.column.time, step=step, blown=later)
    if settings.then != state.act:
        # Another act is for another pair of plates, just as cold.
        state = State(state.time_s, state.step, state.blown, settings.then)
    began = state.began_s
    if began is None and settings.then != "nothing":
        wait = settings.act_at_s - state.time_s
        if wait > 1e-9:
            return replace(state, time_s=state.time_s + min(wait, _patience(state)), step=step)
        began = state.time_s
    if began is None:
        return replace(state, time_s=state.time_s + _patience(state), step=step)
    return _acted(settings, replace(state, time_s=state.time_s + TICK_S, step=step, began_s=began))


def _patience(state: State) -> float:
    """Length of a step in which nothing happens, s."""
    return 1.0 + 0.05 * state.time_s


def _acted(settings: Settings, state: State) -> State:
    since = state.time_s - (state.began_s or 0.0)
    share = min(1.0, since / RAMP_S)
    struck = since >= STRIKE_S
    blown, other = blown_piece(settings, state), other_piece(settings)
    breaks, other_breaks, ground = False, False, state.ground
    if settings.then == "bend":
        load = 1e6 * settings.bend_MPa * share
        breaks, other_breaks = load >= blown.bend_limit(), load >= other.bend_limit()
    elif settings.then == "hit" and struck:
        breaks = settings.blow_J >= blown.blow_limit()
        other_breaks = settings.blow_J >= other.blow_limit()
    elif settings.then == "cut" and struck:
        breaks = other_breaks = True
    elif settings.then == "grind_one_face" and state.broke_s is None:
        ground = max(ground, 1e-3 * settings.grind_mm * share)
        limit = lets_go(settings, state)
        breaks = limit is not None and ground >= limit
    return replace(
        state,
        ground=ground,
        broke_s=state.time_s if breaks and state.broke_s is None else state.broke_s,
        other_broke_s=state.time_s
        if other_breaks and state.other_broke_s is None
        else state.other_broke_s,
    )


def seconds(settings: Settings) -> float:
    """Until the plate is cold and the act is over."""
    cold = cold_after(quench_of(settings))
    return cold if settings.then == "nothing" else max(cold, settings.act_at_s) + ACT_S


def pace(settings: Settings, state: State) -> float:
    """Slow enough to follow the locking-in and the act; the long cooling between in brief."""
    cold = cold_after(quench_of(settings))
    locked = LOCKED_SHARE * cold
    if state.time_s < locked:
        return round_pace(locked / LOCKING_S)
    return round_pace((cold - locked) / COOLING_S) if state.time_s < cold else 1.0


def _now(settings: Settings, state: State, act: str) -> Settings:
    return change(settings, then=act, act_at_s=min(40000.0, state.time_s))


SCENE = Scene(
    id="toughen",
    title="Toughening",
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
    pace=pace,
    section_shows="stress",
    actions=(
        Action("hit_now", "Hit both", functools.partial(_now, act="hit")),
        Action("bend_now", "Bend both", functools.partial(_now, act="bend")),
        Action("cut_now", "Cut both", functools.partial(_now, act="cut")),
        Action("grind_now", "Grind one face", functools.partial(_now, act="grind_one_face")),
    ),
)
