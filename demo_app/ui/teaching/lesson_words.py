"""What a lesson puts in front of its class, and what its buttons say."""

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from demo_app.content.cues.records import Step as Shown
from demo_app.content.lessons.as_sheet import AGAIN, EXIT, Taught
from demo_app.content.lessons.challenges import SPOTS, Outcome
from demo_app.content.lessons.records import Challenge, Goal, Lesson, Step
from demo_app.content.lessons.trying import Tries
from demo_app.content.running.records import ASK, BARS, COUNT, DRIVE, OPEN, SHARE, Running
from demo_app.scenes.scene import Reading, Scene
from demo_app.scenes.settings import Setting, settings_of
from demo_app.ui import show_words, words
from demo_app.ui.answering import Outcome as Answered
from demo_app.ui.cards import Card
from demo_app.ui.language_ids import scene_context
from demo_app.ui.question_view import Poll

SPOT = Reading(SPOTS, "", "nm")
ADULT = 18
NOTES = {ASK: "outreach.paper", COUNT: "outreach.count", BARS: "outreach.bars"}


def poll_of(taught: Taught, running: Running, outcome: Answered | None) -> Poll | None:
    """The question as the class sees it: first alone with pen and paper, then the hands."""
    poll = show_words.poll_of(running, taught.sheet, outcome)
    if poll is None or running.phase not in NOTES:
        return poll
    name = NOTES[running.phase]
    if taught.kind(running) == AGAIN:
        # The answer has been seen by now: nothing to wait for.
        name = {ASK: "outreach.again.paper", COUNT: name}.get(running.phase, "")
    return replace(poll, note=words.text(name) if name else "")


def card_of(
    taught: Taught, running: Running, labels: Sequence[str], tries: Tries, scene: Scene | None
) -> Card | None:
    """The card that lies over the stage; None where the stage or a question is seen.

    Parameters
    ----------
    taught, running
        The lesson and where it is.
    labels : sequence of str
        What pupils may change in this step.
    tries : Tries
        At the step's challenge.
    scene : Scene or None
        The step's scene.
    """
    shown, step = taught.sheet.steps[running.place], taught.step(running)
    kind = taught.kind(running)
    if not show_words.began(running):
        return _cover(taught)
    if kind == EXIT:
        return Card(shown.title, (words.text("outreach.exit"),))
    if kind == AGAIN:
        lines = (words.text("outreach.again.line"), words.text("outreach.again.paper"))
        return Card(words.text("outreach.again"), lines) if running.phase == OPEN else None
    if not shown.scene:
        return Card(shown.title, _told(taught) if kind == "welcome" else ())
    if DRIVE in shown.phases and step is not None:
        return _task(running, shown, step, labels, tries, scene)
    return None


def ages_said(lesson: Lesson) -> str:
    """For whom a lesson is."""
    low, high = lesson.ages
    return words.text("outreach.adults" if low >= ADULT else "outreach.ages", low=low, high=high)


def _cover(taught: Taught) -> Card:
    return Card(taught.lesson.title, (ages_said(taught.lesson), *_told(taught)))


def _told(taught: Taught) -> tuple[str, ...]:
    """That what is seen is simulated, and what not to do at home."""
    simulated = taught.lesson.simulated
    return (simulated.says, simulated.not_at_home) if simulated is not None else ()


def _task(
    running: Running,
    shown: Shown,
    step: Step,
    labels: Sequence[str],
    tries: Tries,
    scene: Scene | None,
) -> Card | None:
    challenge = step.challenge
    if running.phase == OPEN:
        may = words.text("outreach.may", labels=", ".join(labels))
        return Card(
            challenge.ask if challenge else shown.title, (may, words.text("outreach.first"))
        )
    if running.phase != SHARE:
        return None
    if challenge is None:
        return Card(shown.title, (words.text("outreach.tell"),))
    lines = (tries_said(tries), *best_said(challenge, tries, scene), words.text("outreach.why"))
    return Card(challenge.ask, lines)


def tries_said(tries: Tries) -> str:
    """How a group stands, in a few words."""
    if tries.reached_at is not None:
        return words.text("outreach.reached", count=tries.reached_at)
    if tries.count:
        said = words.text("outreach.tries", count=tries.count)
        return f"{said} · {words.text('outreach.not_yet')}"
    return words.text("outreach.ready")


def best_said(challenge: Challenge, tries: Tries, scene: Scene | None) -> tuple[str, ...]:
    """The best of all groups, where they are ranked."""
    found = []
    groups = tries.groups + bool(tries.count)
    if groups > 1:
        found.append(words.text("outreach.by", count=tries.reached_by, groups=groups))
    name = challenge.most or challenge.least
    if tries.best is not None and scene is not None and name:
        spec = next(one for one in scene.readings if one.name == name)
        context = scene_context(scene)
        value = words.reading(spec, tries.best, context)
        found.append(words.text("outreach.best", label=words.label(context, spec), value=value))
    return tuple(found)


def goal_line(challenge: Challenge, tries: Tries) -> str:
    """The goal and how it stands, in one line under the picture."""
    return words.text("outreach.goal.line", ask=challenge.ask, tries=tries_said(tries))


def outcome_lines(challenge: Challenge, outcome: Outcome, scene: Scene) -> tuple[str, ...]:
    """What the model said to each part of the goal."""
    return tuple(
        words.text(
            "outreach.goal.met" if met else "outreach.goal.missed",
            label=_label(goal, scene),
            value=_value(goal, value, scene),
        )
        for goal, met, value in zip(challenge.goals, outcome.met, outcome.values, strict=True)
    )


def _label(goal: Goal, scene: Scene) -> str:
    return " + ".join(
        words.text("outreach.peak")
        if name == SPOTS
        else words.label(scene_context(scene), _spec(name, scene))
        for name in goal.names
    )


def _value(goal: Goal, value: Any, scene: Scene) -> str:
    if value is None:
        return words.text("none")
    spec = SPOT if goal.names[0] == SPOTS else _spec(goal.names[0], scene)
    context = scene_context(scene)
    if isinstance(spec, Reading):
        return words.reading(spec, value, context)
    return words.value_of(spec, value, context)


def _spec(name: str, scene: Scene) -> Reading | Setting:
    settings = (one for one in settings_of(scene.settings) if one.name == name)
    return next(settings, None) or next(one for one in scene.readings if one.name == name)


def next_words(taught: Taught, running: Running) -> str:
    """What the Next button leads to."""
    if running.show_begun is None:
        return words.text("outreach.begin")
    phases = taught.sheet.steps[running.place].phases
    at = phases.index(running.phase)
    if at + 1 < len(phases) and phases[at + 1] in (DRIVE, SHARE):
        return words.text(f"outreach.{phases[at + 1]}")
    return show_words.next_words(running, taught.sheet)
