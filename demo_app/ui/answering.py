"""What the live run answers to a question: the same as its truth, taken from what is shown."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from demo_app.content.cues.answers import judge
from demo_app.content.cues.records import Question
from demo_app.content.readings import result
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import make
from demo_app.ui import words
from demo_app.ui.language_ids import scene_context
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame
from demo_app.ui.timeline import TIME_EPS_S, Entry


@dataclass(frozen=True)
class Outcome:
    """What the live run answered: place of the right answer, and the reading in words."""

    right: int
    said: str


def outcome(
    session: Session, frame: Frame, question: Question, wanted: Mapping[str, object]
) -> Outcome | None:
    """The answer, once the run has come to the instant that the question asks about.

    Parameters
    ----------
    session : Session
    frame : Frame
        Its newest picture.
    question : Question
    wanted : mapping
        Settings with which the run has to go from its start; what ran otherwise answers nothing.

    Raises
    ------
    InputError
        If the reading suits no answer.
    """
    settings: Any = make(session.scene.settings, wanted)
    if session.timeline.plan != (Entry(0, settings),) or frame.plan is not session.timeline.plan:
        return None
    state = _due(session, frame, session.end_s if question.at_s is None else question.at_s)
    if state is None:
        return None
    value = result(session.scene, settings, state).readings.get(question.reading)
    return Outcome(judge(question, value), _said(session.scene, question.reading, value))


def _due(session: Session, frame: Frame, due: float) -> Any:
    """The first state at or after `due`, as `scenes.run.state_at` takes it; None: not yet.

    A fast run passes over states: those are made once more from the last one known before.
    """
    limit, timeline = due - TIME_EPS_S, session.timeline
    reached = next((state for state in frame.last if state.time_s >= limit), None)
    if reached is None or reached is not frame.last[0] or reached.step == 0:
        return reached
    earlier = timeline.time_of(reached.step - 1)
    if earlier is not None and earlier < limit:
        return reached
    state = timeline.ready(limit - 2 * TIME_EPS_S)[0]
    while state.time_s < limit:
        state = session.scene.advance(session.settings, state)
    return state


def _said(scene: Scene, name: str, value: Any) -> str:
    spec = next(one for one in scene.readings if one.name == name)
    context = scene_context(scene)
    return words.text(
        "outcome", reading=words.label(context, spec), value=words.reading(spec, value, context)
    )
