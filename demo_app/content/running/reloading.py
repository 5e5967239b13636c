"""A sheet that changed under a running show: the place is kept by its step's id."""

from dataclasses import replace
from types import MappingProxyType

from demo_app.content.cues.records import Sheet
from demo_app.content.running.records import OPEN, Running, phases_of


def reload(running: Running, sheet: Sheet, now: float, *, digest: str = "") -> Running:
    """The same show on a changed sheet.

    The place stays at its step; if that is gone, at the nearest earlier one that was kept. Steps
    that were cut stay cut, new ones are shown, and hands counted stay with their answers' places.
    A phase that the step no longer has becomes its opening.

    Parameters
    ----------
    running : Running
    sheet : Sheet
        As it is now, with at least one step.
    now : float
        Seconds since the epoch: time in a step that is gone ends here.
    digest : str
        Of its content.
    """
    ids = tuple(step.id for step in sheet.steps)
    gone = {name for place, name in enumerate(running.ids) if place not in running.kept}
    kept = tuple(place for place, name in enumerate(ids) if name not in gone)
    place = _place(running, ids, kept)
    kept = tuple(sorted({*kept, place}))
    stays = ids[place] == running.id
    phase = running.phase if stays and running.phase in phases_of(sheet.steps[place]) else OPEN
    votes = {
        step.id: _counts(running.votes[step.id], len(step.question.answers))
        for step in sheet.steps
        if step.question is not None and step.id in running.votes
    }
    return replace(
        running,
        ids=ids,
        kept=kept,
        place=place,
        phase=phase,
        digest=digest,
        step_begun=running.step_begun if stays or not running.on else now,
        spent=MappingProxyType({name: s for name, s in running.spent.items() if name in ids}),
        votes=MappingProxyType(votes),
    )


def _counts(found: tuple[int, ...], number: int) -> tuple[int, ...]:
    """Counts for as many answers as there are now; a new one has none yet."""
    return (*found[:number], *(0 for _ in range(number - len(found))))


def _place(running: Running, ids: tuple[str, ...], kept: tuple[int, ...]) -> int:
    known = [running.ids[place] for place in running.kept if place <= running.place]
    for name in reversed(known):
        if name in ids:
            return ids.index(name)
    return kept[0] if kept else 0
