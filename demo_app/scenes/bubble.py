"""A free-blown flask with a heavy foot: it bears a blow outside, and dies of a scratch inside."""

import math

from demo_app.physics.annealing_search import worked_at
from demo_app.physics.revolve.cooling import hot
from demo_app.physics.revolve.cooling import step as cool
from demo_app.scenes.blown.picture import view
from demo_app.scenes.blown.record import Settings, State, end_s, flask_of, programme_of
from demo_app.scenes.blown.words import READINGS, TEXTS, TRACES, read, say, trace
from demo_app.scenes.scene import Action, Scene
from demo_app.scenes.settings import change

__all__ = ["SCENE", "Settings", "State"]


def start(settings: Settings) -> State:
    """Fresh from the maker's hands: soft, of one temperature, free of stress."""
    what = flask_of(settings)
    return State(0, hot(what, worked_at(what.piece.material)))


def advance(settings: Settings, state: State) -> State:
    """One step of the full answer later."""
    return State(state.step + 1, cool(flask_of(settings), state.cooling, programme_of(settings)))


def pace(settings: Settings, state: State) -> float:
    """Quick, and quicker still once all of it is stiff; half a minute for the whole story."""
    what = flask_of(settings)
    soft = float(state.cooling.warmth.temperature.max()) > what.piece.material.strain_point
    share = 80 if soft and settings.way == "air" else 12
    wanted = end_s(settings) / share
    decade = 10.0 ** math.floor(math.log10(wanted))
    return max(1.0, decade * max(k for k in (1, 2, 5) if k * decade <= wanted))


def _hit(settings: Settings, state: State) -> Settings:
    return change(settings, test="blow")


def _scratch(settings: Settings, state: State) -> Settings:
    return change(settings, test="scratch")


def _whole(settings: Settings, state: State) -> Settings:
    return change(settings, test="none")


SCENE = Scene(
    id="bubble",
    title="Bubble",
    settings=Settings,
    readings=READINGS,
    traces=TRACES,
    texts=TEXTS,
    start=start,
    advance=advance,
    seconds=end_s,
    read=read,
    trace=trace,
    view=view,
    say=say,
    pace=pace,
    section_shows="stress",
    actions=(
        Action("hit", "Hit it outside", _hit),
        Action("scratch", "Scratch it inside", _scratch),
        Action("whole", "A whole one again", _whole),
    ),
)
