"""The acts of whoever runs a show: each takes a record and gives the next one."""

from collections.abc import Iterable
from dataclasses import replace
from types import MappingProxyType

from demo_app.base.errors import InputError
from demo_app.content.cues.records import Sheet
from demo_app.content.running.records import OPEN, VOTING, Running, counts_of, phases_of, step_of


def ready(sheet: Sheet, *, digest: str = "", rehearsal: bool = False) -> Running:
    """A show that has not begun, at its first step; its clocks stand still.

    Raises
    ------
    InputError
        If the sheet has no steps.
    """
    if not sheet.steps:
        raise InputError("has no steps", place=sheet.title, remedy="write at least one")
    ids = tuple(step.id for step in sheet.steps)
    return Running(ids, tuple(range(len(ids))), digest=digest, rehearsal=rehearsal)


def begin(running: Running, sheet: Sheet, now: float, ends: float | None = None) -> Running:
    """The audience is there: clocks run from now. A show that runs already is left alone.

    Parameters
    ----------
    running : Running
    sheet : Sheet
    now : float
    ends : float or None
        When the slot is over; None: the sheet's minutes from now.
    """
    if running.on:
        return running
    over = now + 60 * sheet.minutes if ends is None else ends
    return replace(running, show_begun=now, step_begun=now, ends=over, finished=None)


def finish(running: Running, sheet: Sheet, now: float) -> Running:
    """The show is over: clocks stop, what was counted stays."""
    if not running.on:
        return running
    return replace(_left(running, now), step_begun=None, finished=now)


def next_(running: Running, sheet: Sheet, now: float) -> Running:
    """The next phase of this step, else the next step that is not cut; at the end nothing."""
    phases = phases_of(step_of(running, sheet))
    at = phases.index(running.phase)
    if at + 1 < len(phases):
        return replace(running, phase=phases[at + 1])
    later = [place for place in running.kept if place > running.place]
    return _gone(running, later[0], OPEN, now) if later else running


def back(running: Running, sheet: Sheet, now: float) -> Running:
    """What `next_` came from: the phase before, else the last phase of the step before."""
    phases = phases_of(step_of(running, sheet))
    at = phases.index(running.phase)
    if at > 0:
        return replace(running, phase=phases[at - 1])
    earlier = [place for place in running.kept if place < running.place]
    if not earlier:
        return running
    return _gone(running, earlier[-1], phases_of(sheet.steps[earlier[-1]])[-1], now)


def jump(running: Running, sheet: Sheet, now: float, place: int) -> Running:
    """Open the step at `place`; one that was cut is taken in again. No such step: nothing."""
    if not 0 <= place < len(sheet.steps):
        return running
    kept = tuple(sorted({*running.kept, place}))
    if place == running.place:
        return replace(running, kept=kept, phase=OPEN)
    return _gone(replace(running, kept=kept), place, OPEN, now)


def cut(running: Running, sheet: Sheet, kept: Iterable[str]) -> Running:
    """Show only the steps with the ids `kept`, and the one that is shown now.

    Parameters
    ----------
    running : Running
    sheet : Sheet
    kept : iterable of str
        For instance `demo_app.content.cues.shorten.Cut.kept`. Steps that were shown already may
        be missing: whether they are cut makes no difference.
    """
    wanted = set(kept)
    places = {place for place, step in enumerate(sheet.steps) if step.id in wanted}
    return replace(running, kept=tuple(sorted({*places, running.place})))


def vote(running: Running, sheet: Sheet, answer: int, by: int = 1) -> Running:
    """Count hands for an answer (from 0): more, or fewer down to none.

    Nothing happens while no question is open, or where there is no such answer.
    """
    counts = counts_of(running, sheet)
    if running.phase not in VOTING or not 0 <= answer < len(counts):
        return running
    changed = tuple(
        max(count + by, 0) if place == answer else count for place, count in enumerate(counts)
    )
    return replace(running, votes=MappingProxyType({**running.votes, running.id: changed}))


def clear_votes(running: Running, sheet: Sheet) -> Running:
    """Count this step's hands anew."""
    votes = {name: counts for name, counts in running.votes.items() if name != running.id}
    return replace(running, votes=MappingProxyType(votes))


def blank(running: Running, on: bool | None = None) -> Running:
    """Black on the audience's window, or the picture again; None: the other of the two."""
    return replace(running, blank=not running.blank if on is None else on)


def freeze(running: Running, on: bool | None = None) -> Running:
    """Keep the audience's picture while things change behind it, or let it move again."""
    return replace(running, frozen=not running.frozen if on is None else on)


def caption(running: Running, on: bool | None = None) -> Running:
    """Captions on the audience's window, or none."""
    return replace(running, captions=not running.captions if on is None else on)


def spent_now(running: Running, now: float) -> float:
    """Seconds spent in the step shown, earlier visits too; a clock set back counts as nought."""
    before = running.spent.get(running.id, 0.0)
    if running.step_begun is None:
        return before
    return before + max(now - running.step_begun, 0.0)


def _left(running: Running, now: float) -> Running:
    """The time of this visit is added to what was spent in the step."""
    if not running.on:
        return running
    spent = {**running.spent, running.id: spent_now(running, now)}
    return replace(running, spent=MappingProxyType(spent), step_begun=now)


def _gone(running: Running, place: int, phase: str, now: float) -> Running:
    return replace(_left(running, now), place=place, phase=phase)
