"""Votes of a class before and after: counts alone, as a table for a spreadsheet and as bars."""

import csv
import io
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.content.lessons.drawn import LETTERS
from demo_app.content.lessons.records import Lesson

HEADS = ("lesson", "question", "step", "letter", "answer", "right", "before", "after")
MOST = 500
"""Hands that a count may have."""


@dataclass(frozen=True)
class Tally:
    """Hands for each answer of one prediction.

    Parameters
    ----------
    before, after : tuple of int
        Hands for each answer, before the reveal and at the end; `after` is empty until asked.
    right : int or None
        Index of the answer that the model gave; None while it has not been revealed.
    """

    before: tuple[int, ...]
    after: tuple[int, ...] = ()
    right: int | None = None


@dataclass(frozen=True)
class Votes:
    """What a class voted, by the step's id; no names, no times, no free words."""

    lesson: str
    tallies: Mapping[str, Tally] = field(default_factory=dict)


@dataclass(frozen=True)
class Bar:
    """One answer in the teacher's chart.

    Parameters
    ----------
    letter, text : str
    before, after : float
        Share of the hands, from 0 to 1; `after` is 0 where nobody was asked again.
    right : bool
    """

    letter: str
    text: str
    before: float
    after: float
    right: bool


def voted(
    lesson: Lesson,
    votes: Votes,
    step: str,
    hands: Sequence[int],
    *,
    again: bool = False,
    right: int | None = None,
) -> Votes:
    """`votes` with a count put in.

    Parameters
    ----------
    lesson : Lesson
    votes : Votes
        What there is so far.
    step : str
        Id of a prediction.
    hands : sequence of int
        For each answer.
    again : bool
        Whether this is the vote after.
    right : int, optional
        Index of the right answer, once it is revealed.

    Raises
    ------
    InputError
        If the step asks nothing, or the counts are none.
    """
    count = len(_answers(lesson, step))
    if len(hands) != count:
        raise InputError(
            f"{len(hands)} counts for {count} answers", place=step, remedy="count each answer once"
        )
    for one in hands:
        if isinstance(one, bool) or not isinstance(one, int) or not 0 <= one <= MOST:
            raise InputError(
                f"{one!r} is no count of hands", place=step, remedy=f"count from 0 to {MOST}"
            )
    old = votes.tallies.get(step, Tally(()))
    known = old.right if right is None else right
    new = (
        Tally(old.before or (0,) * count, tuple(hands), known)
        if again
        else Tally(tuple(hands), old.after, known)
    )
    return Votes(votes.lesson, {**votes.tallies, step: new})


def rows(lesson: Lesson, votes: Votes) -> Iterable[tuple[str | int, ...]]:
    """Rows under `HEADS`, in the lesson's order; what was not asked is left empty."""
    number = 0
    for step in lesson.steps:
        if step.question is None:
            continue
        number += 1
        tally = votes.tallies.get(step.id)
        for at, answer in enumerate(step.question.answers):
            before, after, right = "", "", ""
            if tally is not None:
                before = str(tally.before[at])
                after = str(tally.after[at]) if tally.after else ""
                right = "" if tally.right is None else ("yes" if at == tally.right else "no")
            yield (
                *(lesson.title, number, step.id, LETTERS[at], answer.text),
                *(right, before, after),
            )


def as_csv(lesson: Lesson, votes: Votes) -> str:
    """The table as CSV (RFC 4180), numbers as numbers, whatever the interface's language."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(HEADS)
    writer.writerows([_plain(cell) for cell in row] for row in rows(lesson, votes))
    return out.getvalue()


def _plain(cell: str | int) -> str | int:
    """A text that a spreadsheet would take for a formula begins with an apostrophe."""
    return f"'{cell}" if isinstance(cell, str) and cell[:1] in "=+-@\t\r" and cell else cell


def write_csv(path: Path, lesson: Lesson, votes: Votes) -> None:
    """Write the table, whole or not at all; `InputError` if it cannot be written there."""
    write_text(path, as_csv(lesson, votes))


def bars(lesson: Lesson, votes: Votes, step: str) -> tuple[Bar, ...]:
    """The teacher's chart of one prediction: shares of the hands before and after."""
    answers = _answers(lesson, step)
    tally = votes.tallies.get(step, Tally((0,) * len(answers)))
    return tuple(
        Bar(LETTERS[at], text, _share(tally.before, at), _share(tally.after, at), at == tally.right)
        for at, text in enumerate(answers)
    )


def gain(tally: Tally) -> float | None:
    """Share of the possible gain that was made: (after - before) / (1 - before), right answers.

    After Hake 1998, American Journal of Physics 66, 64-74 (normalised gain; from memory). None
    where it has no meaning: no second vote, nothing revealed, or all right before.
    """
    if tally.right is None or not tally.after:
        return None
    before, after = _share(tally.before, tally.right), _share(tally.after, tally.right)
    return None if before >= 1 else (after - before) / (1 - before)


def _share(hands: Sequence[int], at: int) -> float:
    total = sum(hands)
    return hands[at] / total if total else 0.0


def _answers(lesson: Lesson, step: str) -> tuple[str, ...]:
    for one in lesson.steps:
        if one.id == step and one.question is not None:
            return tuple(answer.text for answer in one.question.answers)
    raise InputError(
        f"no prediction is called '{step}'",
        place="votes",
        remedy="count hands at a step that asks something",
    )
