"""Writes a running show into the journal: what its record says now, beside what it said before."""

from dataclasses import dataclass, replace

from demo_app.content.cues.records import Sheet
from demo_app.content.journal.shows import (
    begin_show,
    begin_step,
    end_show,
    end_step,
    set_votes,
    skip_step,
    unfinished,
)
from demo_app.content.journal.store import Journal
from demo_app.content.running.records import Running
from demo_app.content.running.walking import spent_now


@dataclass(frozen=True)
class Entry:
    """Where the journal is.

    Parameters
    ----------
    show, step : int or None
        Numbers of the show's row and of the step's that is open; None: none is.
    """

    show: int | None = None
    step: int | None = None


def resumed(journal: Journal, digest: str) -> Entry:
    """Where the journal was when a show on the sheet `digest` was interrupted."""
    left = [row for row in unfinished(journal) if row["sheet_hash"] == digest]
    return Entry(show=left[0]["id"]) if left else Entry()


def follow(
    journal: Journal,
    entry: Entry,
    before: Running,
    after: Running,
    sheet: Sheet,
    right: int | None,
    now: float,
) -> Entry:
    """Write down what has changed from `before` to `after`.

    Parameters
    ----------
    journal : Journal
    entry : Entry
        Where it was.
    before, after : Running
        Records of one show.
    sheet : Sheet
    right : int or None
        Which answer the model has given to the question of the step shown.
    now : float
        Seconds since the epoch.

    Returns
    -------
    Entry
        Where it is now.
    """
    if after.on and entry.show is None:
        entry = Entry(
            begin_show(
                journal,
                sheet.title,
                now,
                sheet=after.digest,
                venue=sheet.venue,
                rehearsal=after.rehearsal,
            )
        )
    show = entry.show
    if show is None:
        return entry
    moved = after.id != before.id or not after.on
    if moved and entry.step is not None:
        visit = max(spent_now(before, now) - before.spent.get(before.id, 0.0), 0.0)
        end_step(journal, entry.step, visit)
        entry = replace(entry, step=None)
    if after.on and entry.step is None:
        title = sheet.steps[after.place].title
        entry = replace(entry, step=begin_step(journal, show, after.id, title, now))
    _vote(journal, show, before, after, sheet, right)
    if not after.on:
        for place, step in enumerate(sheet.steps):
            if place not in after.kept and step.id not in after.spent:
                skip_step(journal, show, step.id, step.title, now)
        end_show(journal, show, now)
        entry = Entry()
    return entry


def _vote(
    journal: Journal,
    show: int,
    before: Running,
    after: Running,
    sheet: Sheet,
    right: int | None,
) -> None:
    for step in sheet.steps:
        counts = after.votes.get(step.id)
        known = step.id == after.id and right is not None
        if step.question is None or not counts or not any(counts):
            continue
        if counts == before.votes.get(step.id) and not known:
            continue
        rows = tuple(
            (answer.text, count, place == right if known else None)
            for place, (answer, count) in enumerate(
                zip(step.question.answers, counts, strict=False)
            )
        )
        set_votes(journal, show, step.id, rows)
