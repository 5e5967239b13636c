"""What the clocks of a show say, and what a presenter may fall back on."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from demo_app.content.cues.records import Contingency, Sheet, Step
from demo_app.content.cues.shorten import Cut, Proposal, proposal, shorten
from demo_app.content.running.records import ANSWERED, Running, step_of
from demo_app.content.running.walking import spent_now


@dataclass(frozen=True)
class Clock:
    """Times of a show, s; those left go below zero once they are over.

    Parameters
    ----------
    step_spent, step_left : float
        Of the step shown, earlier visits too.
    spent : float
        Since the show began.
    left : float or None
        Until the slot is over; None: the show has not begun.
    needed : float
        What the rest of this step and the kept steps after it take as planned.
    late : float
        By how much `needed` overruns `left`; below zero: there is time in hand.
    """

    step_spent: float
    step_left: float
    spent: float
    left: float | None
    needed: float
    late: float


def clock(running: Running, sheet: Sheet, now: float) -> Clock:
    """Read the clocks; those of a finished show stand still."""
    if running.finished is not None:
        now = min(now, running.finished)
    step = step_of(running, sheet)
    in_step = spent_now(running, now)
    coming = sum(one.seconds for one in to_come(running, sheet)[1:])
    needed = max(step.seconds - in_step, 0.0) + coming
    left = None if running.ends is None else running.ends - now
    begun = running.show_begun
    return Clock(
        step_spent=in_step,
        step_left=step.seconds - in_step,
        spent=0.0 if begun is None else max(now - begun, 0.0),
        left=left,
        needed=needed,
        late=needed - (60 * sheet.minutes if left is None else left),
    )


def to_come(running: Running, sheet: Sheet) -> tuple[Step, ...]:
    """The step shown and the kept ones after it."""
    return tuple(sheet.steps[place] for place in running.kept if place >= running.place)


def coming(running: Running, sheet: Sheet) -> Step | None:
    """The step after the one shown, or None."""
    return next(iter(to_come(running, sheet)[1:]), None)


def in_time(running: Running, sheet: Sheet, now: float) -> Cut:
    """The cut with which the rest fits into what is left of the slot.

    The step shown counts with what it still needs, and is never cut.
    """
    found = clock(running, sheet, now)
    here, *rest = to_come(running, sheet)
    here = replace(here, priority=1, seconds=max(found.step_left, 0.0))
    return shorten((here, *rest), 60 * sheet.minutes if found.left is None else found.left)


def rehearsed(running: Running, sheet: Sheet, now: float) -> Proposal:
    """What a rehearsal teaches: the time of each step that was shown, and the cut that fits."""
    times: Mapping[str, float] = running.spent
    if running.on:
        times = {**times, running.id: spent_now(running, now)}
    return proposal(sheet, times)


def catch_up(running: Running, sheet: Sheet) -> str:
    """One line for those who come late: this step's, else the last one before it; or ""."""
    before = [sheet.steps[place] for place in running.kept if place <= running.place]
    return next((step.catch_up for step in reversed(before) if step.catch_up), "")


def contingencies(running: Running, sheet: Sheet) -> tuple[Contingency, ...]:
    """What to say and show when something real goes another way in this step."""
    return step_of(running, sheet).contingencies


@dataclass(frozen=True)
class Wanted:
    """What a session has to show.

    Parameters
    ----------
    scene : str
        Id of a scene.
    settings : mapping
        Other than the scene's defaults.
    at_s : float
        Model time to go to, s.
    play : bool
        Whether it runs from there.
    """

    scene: str
    settings: Mapping[str, object]
    at_s: float
    play: bool


def wanted(running: Running, sheet: Sheet, contingency: Contingency | None = None) -> Wanted:
    """What is to be shown in this step and phase.

    The reveal is the live run with what the question changes; a contingency changes the settings
    on top.
    """
    step = step_of(running, sheet)
    settings = dict(step.settings)
    question = step.question
    answering = running.phase in ANSWERED and question is not None
    if question is not None and answering:
        settings.update(question.settings)
    if contingency is not None:
        settings.update(contingency.settings)
    return Wanted(step.scene, settings, step.at_s, step.play or answering)
