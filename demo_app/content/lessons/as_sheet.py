"""A lesson as the steps of a running show: predictions, tasks, a second vote, the exit question."""

from dataclasses import dataclass, replace

from demo_app.content.cues.records import Sheet
from demo_app.content.cues.records import Step as Shown
from demo_app.content.lessons.hazards import SIMULATED
from demo_app.content.lessons.reach import hazards_of
from demo_app.content.lessons.records import Lesson, Step
from demo_app.content.running.records import (
    ASK,
    BARS,
    COUNT,
    DRIVE,
    OPEN,
    RESULT,
    REVEAL,
    SHARE,
    Running,
)

AGAIN, EXIT = "again", "exit"
"""Kinds of step that no lesson plan writes: the second vote, and the last question."""
PREDICTED = (OPEN, ASK, COUNT, BARS)
"""A prediction whose answer the next step shows."""
ANSWERED_AT_ONCE = (*PREDICTED, REVEAL)
"""A prediction that the live run answers within its own step."""
VOTED_AGAIN = (OPEN, ASK, COUNT, BARS, RESULT)
DRIVEN = (OPEN, DRIVE, SHARE)
AGAIN_S = 60.0


@dataclass(frozen=True)
class Taught:
    """A lesson that can be run.

    Parameters
    ----------
    lesson : Lesson
    sheet : Sheet
        Its steps, and those that it does not write.
    kinds : tuple of str
        For each of them: one of `demo_app.content.lessons.records.STAGES`, `AGAIN` or `EXIT`.
    steps : tuple of Step or None
        For each of them the lesson's step that it comes from.
    """

    lesson: Lesson
    sheet: Sheet
    kinds: tuple[str, ...]
    steps: tuple[Step | None, ...]

    def kind(self, running: Running) -> str:
        """Kind of the step shown."""
        return self.kinds[running.place]

    def step(self, running: Running) -> Step | None:
        """The lesson's step that is shown."""
        return self.steps[running.place]

    @property
    def scenes(self) -> frozenset[str]:
        """Ids of all scenes that it shows."""
        return frozenset(step.scene for step in self.sheet.steps if step.scene)


def again_id(id: str) -> str:
    """Id of the second vote on the prediction `id`."""
    return f"{id}-again"


def taught(lesson: Lesson) -> Taught:
    """The lesson as a show: after each explanation hands are counted a second time."""
    found: list[tuple[str, Step | None, Shown]] = []
    waiting: list[Step] = []
    for place, step in enumerate(lesson.steps):
        explained = bool(found) and found[-1][0] == "explain" and step.stage != "explain"
        if waiting and explained:
            found, waiting = _voted(found, waiting), []
        following = lesson.steps[place + 1] if place + 1 < len(lesson.steps) else None
        found.append((step.stage, step, _shown(lesson, step, following)))
        if step.question is not None:
            waiting.append(step)
    found = _voted(found, waiting)
    found.append((EXIT, None, _exit(lesson, sum(one.seconds for _, _, one in found))))
    sheet = Sheet(
        title=lesson.title,
        venue="",
        minutes=lesson.minutes,
        steps=tuple(one for _, _, one in found),
        allows=lesson.allows,
        language=lesson.language,
        path=lesson.path,
    )
    kinds, steps = tuple(kind for kind, _, _ in found), tuple(step for _, step, _ in found)
    return Taught(lesson, sheet, kinds, steps)


def _shown(lesson: Lesson, step: Step, following: Step | None) -> Shown:
    simulated = lesson.simulated
    screen = any(name in SIMULATED for name in hazards_of(step)) if step.scene else False
    cautions = (simulated.says, simulated.not_at_home) if simulated and screen else ()
    return Shown(
        id=step.id,
        title=step.title,
        scene=step.scene,
        settings=step.settings,
        at_s=step.at_s,
        play=step.play,
        seconds=60 * step.minutes,
        say=tuple(one.text for one in step.body),
        hazards=step.hazards,
        cautions=cautions,
        question=step.question,
        phases=_phases(step, following),
        line=step.line,
    )


def _phases(step: Step, following: Step | None) -> tuple[str, ...]:
    if step.scene and step.bounds:
        return DRIVEN
    if step.question is None:
        return (OPEN,)
    return PREDICTED if _answers(step, following) else ANSWERED_AT_ONCE


def _answers(step: Step, following: Step | None) -> bool:
    """Whether the step after a prediction shows the very run that answers it."""
    assert step.question is not None
    if following is None or following.scene != step.scene:
        return False
    return {**step.settings, **step.question.settings} == dict(following.settings)


def _voted(
    found: list[tuple[str, Step | None, Shown]], waiting: list[Step]
) -> list[tuple[str, Step | None, Shown]]:
    """With a second vote on each of the predictions that wait for one."""
    if not waiting or not found:
        return found
    # The second vote is part of the explanation's time.
    *before, (kind, step, last) = found
    seconds = min(AGAIN_S, last.seconds / 3)
    last = replace(last, seconds=last.seconds - seconds)
    votes = [_again(one, seconds / len(waiting)) for one in waiting]
    return [*before, (kind, step, last), *((AGAIN, one, vote) for one, vote in votes)]


def _again(step: Step, seconds: float) -> tuple[Step, Shown]:
    shown = Shown(
        id=again_id(step.id),
        title=step.title,
        scene=step.scene,
        settings=step.settings,
        at_s=step.at_s,
        seconds=seconds,
        question=step.question,
        phases=VOTED_AGAIN,
        line=step.line,
    )
    return step, shown


def _exit(lesson: Lesson, taken_s: float) -> Shown:
    home = tuple(one.text for one in lesson.home)
    return Shown(
        id=EXIT,
        title=lesson.exit.ask,
        scene="",
        seconds=max(60 * lesson.minutes - taken_s, 0.0),
        say=(lesson.exit.answer, *home),
        phases=(OPEN,),
    )
