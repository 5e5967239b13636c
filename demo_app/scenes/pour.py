"""Boiling water into a thick and a thin tumbler: most people bet on the wrong one."""

from demo_app.physics.heat import ZERO_C
from demo_app.physics.revolve.pouring import (
    empty,
    poured,
    step_seconds,
)
from demo_app.scenes.poured.picture import view
from demo_app.scenes.poured.record import (
    AFTERWARDS_S,
    Settings,
    State,
    cups_of,
    pour_of,
    risen,
    seen,
)
from demo_app.scenes.poured.words import READINGS, TEXTS, TRACES, read, say, trace
from demo_app.scenes.scene import Action, Scene
from demo_app.scenes.settings import change

__all__ = ["SCENE", "Settings", "State"]


def start(settings: Settings) -> State:
    """Two empty tumblers."""
    cold = [
        seen(settings, cup, empty(cup, settings.tumbler_C + ZERO_C, settings.water_C + ZERO_C))
        for cup in cups_of(settings)
    ]
    return State(0.0, 0, *cold)


def advance(settings: Settings, state: State) -> State:
    """One step later. A tumbler that has cracked stays as it was in its last whole instant."""
    pour, now = pour_of(settings), state.time_s
    length = step_seconds(pour, now)
    later = []
    for cup, before in zip(cups_of(settings), (state.thick, state.thin), strict=True):
        if before.cracked_s is None:
            filled = poured(cup, pour, before.filled, now, length)
            before = risen(before, seen(settings, cup, filled), now + length)
        later.append(before)
    return State(now + length, state.step + 1, *later)


def seconds(settings: Settings) -> float:
    """Until the thick wall has warmed through."""
    return settings.pour_s + AFTERWARDS_S


def _warm_first(settings: Settings, state: State) -> Settings:
    return change(settings, tumbler_C=60.0)


SCENE = Scene(
    id="pour",
    title="Boiling water",
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
    actions=(Action("warm_first", "Warm them first", _warm_first),),
)
