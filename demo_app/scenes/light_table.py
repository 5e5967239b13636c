"""Up to six samples side by side in one polariscope, on one scale of length and of light."""

from dataclasses import replace

from demo_app.scenes.scene import Action, Scene
from demo_app.scenes.settings import change
from demo_app.scenes.tray.record import (
    STAGES,
    Settings,
    State,
    light,
    others,
    relit,
    samples,
)
from demo_app.scenes.tray.view import GLASS_MM, Place, view
from demo_app.scenes.tray.words import READINGS, TEXTS, read, say

__all__ = ["SCENE", "Settings", "State"]

STEP_S = 0.5
"""From one sample to the next."""


def start(settings: Settings) -> State:
    """The plates lie there already; while it is being built up, nothing does."""
    return State(0.0, 0)


def advance(settings: Settings, state: State) -> State:
    """One more sample is laid down."""
    later = State(state.time_s + STEP_S, state.step + 1, state.place)
    samples(settings, later)
    return later


def seconds(settings: Settings) -> float:
    """Until all of them lie there."""
    return STEP_S * (len(others(settings)) + 1)


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Nothing changes over time."""
    return {}


def point(settings: Settings, state: State, place: Place | None) -> State:
    """The reading glass is held over `place`; lifted, it stays there so that it can be read."""
    return state if place is None else replace(state, place=place)


def reach_mm(settings: Settings) -> float:
    """Diameter of the reading glass, mm."""
    return GLASS_MM


def _build_up(settings: Settings, state: State) -> Settings:
    """The next part comes in; after the samples it begins again with the lamp alone."""
    place = STAGES.index(settings.built)
    return change(settings, built=STAGES[(place + 1) % len(STAGES)])


SCENE = Scene(
    id="light-table",
    title="Light table",
    settings=Settings,
    readings=READINGS,
    traces=(),
    texts=TEXTS,
    start=start,
    advance=advance,
    seconds=seconds,
    read=read,
    trace=trace,
    view=view,
    say=say,
    actions=(Action("build_up", "Build it up", _build_up),),
    point=point,
    reach_mm=reach_mm,
    light=light,
    relit=relit,
)
