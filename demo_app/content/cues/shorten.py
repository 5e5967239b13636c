"""Which steps are shown when there is less time than the sheet was written for."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from demo_app.content.cues.records import Sheet, Step

KEPT_ALWAYS = 1
NO_TIMES: Mapping[str, float] = {}


@dataclass(frozen=True)
class Cut:
    """Steps that are shown, and steps that are not.

    Parameters
    ----------
    kept, dropped : tuple of str
        Ids, each in the sheet's order.
    seconds : float
        What those kept take, s.
    missing_s : float
        By how much even those that are never cut exceed the time there is, s; 0: they fit.
    """

    kept: tuple[str, ...]
    dropped: tuple[str, ...]
    seconds: float
    missing_s: float


@dataclass(frozen=True)
class Pace:
    """One step in rehearsal: planned and measured, s; `measured_s` is None if it was left out."""

    id: str
    planned_s: float
    measured_s: float | None


@dataclass(frozen=True)
class Proposal:
    """What a rehearsal teaches: the pace of each step, and the cut that fits the slot."""

    paces: tuple[Pace, ...]
    cut: Cut


def shorten(steps: Sequence[Step], seconds: float, times: Mapping[str, float] = NO_TIMES) -> Cut:
    """Choose the steps for `seconds`.

    One after the other goes, those of priority 3 before those of 2, the last of the sheet first,
    until the rest fits. A step that has gone never comes back when time gets shorter still, so a
    presenter can rely on what is struck out.

    Parameters
    ----------
    steps : sequence of Step
        Those that are still to come, in order.
    seconds : float
        Time there is, s.
    times : mapping
        Step id to what it took in rehearsal, s; others count as planned.
    """
    takes = {step.id: times.get(step.id, step.seconds) for step in steps}
    first_to_go = sorted(
        (place for place, step in enumerate(steps) if step.priority > KEPT_ALWAYS),
        key=lambda place: (-steps[place].priority, -place),
    )
    gone: set[str] = set()
    for place in first_to_go:
        if _sum(steps, takes, gone) <= seconds:
            break
        gone.add(steps[place].id)
    total = _sum(steps, takes, gone)
    return Cut(
        kept=tuple(step.id for step in steps if step.id not in gone),
        dropped=tuple(step.id for step in steps if step.id in gone),
        seconds=total,
        missing_s=max(0.0, total - max(seconds, 0.0)),
    )


def late(sheet: Sheet, late_s: float, times: Mapping[str, float] = NO_TIMES) -> Cut:
    """The cut of `sheet` for a start that is `late_s` seconds late but must end on time."""
    return shorten(sheet.steps, 60 * sheet.minutes - late_s, times)


def proposal(sheet: Sheet, times: Mapping[str, float]) -> Proposal:
    """What to cut so that the sheet, at the pace of a rehearsal, fits its minutes.

    Parameters
    ----------
    sheet : Sheet
        What was rehearsed.
    times : mapping
        Step id to measured seconds; a step that was not reached counts as planned.
    """
    paces = tuple(Pace(step.id, step.seconds, times.get(step.id)) for step in sheet.steps)
    return Proposal(paces, shorten(sheet.steps, 60 * sheet.minutes, times))


def _sum(steps: Sequence[Step], takes: Mapping[str, float], gone: set[str]) -> float:
    return sum(takes[step.id] for step in steps if step.id not in gone)
