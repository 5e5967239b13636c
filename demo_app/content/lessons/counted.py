"""A class's hands before and after, from the running lesson; as a table without any name."""

import csv
import io
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from demo_app.content.lessons.as_sheet import AGAIN, Taught, again_id
from demo_app.content.running.records import Running

COLUMNS = ("lesson", "question", "ask", "answer", "text", "before", "after", "right", "belief")
LETTERS = "ABCDEF"


@dataclass(frozen=True)
class Asked:
    """One prediction and the hands that were counted for it.

    Parameters
    ----------
    id : str
        Of its step.
    ask : str
    answers : tuple of str
    beliefs : tuple of str
        Id of the misconception behind each answer, or "".
    before, after : tuple of int
        Hands for each answer; nothing but noughts: not counted.
    right : int or None
        Place of the right answer, once the live run has shown it.
    """

    id: str
    ask: str
    answers: tuple[str, ...]
    beliefs: tuple[str, ...]
    before: tuple[int, ...]
    after: tuple[int, ...]
    right: int | None = None


def asked(taught: Taught, running: Running, right: Mapping[str, int]) -> tuple[Asked, ...]:
    """All predictions of a lesson with the hands counted so far.

    Parameters
    ----------
    taught : Taught
    running : Running
    right : mapping
        Step id to the right answer's place, for those that the live run has answered.
    """
    found = []
    for kind, step in zip(taught.kinds, taught.steps, strict=True):
        if step is None or step.question is None or kind == AGAIN:
            continue
        answers = tuple(answer.text for answer in step.question.answers)
        beliefs = step.beliefs or ("",) * len(answers)
        before, after = (
            _counts(running, name, len(answers)) for name in (step.id, again_id(step.id))
        )
        found.append(
            Asked(
                step.id, step.question.ask, answers, beliefs, before, after, right.get(step.id)
            )
        )
    return tuple(found)


def _counts(running: Running, id: str, wanted: int) -> tuple[int, ...]:
    counts = running.votes.get(id, ())[:wanted]
    return (*counts, *(0 for _ in range(wanted - len(counts))))


def counted(votes: Sequence[Asked]) -> bool:
    """Whether a hand has been counted at all."""
    return any(any((*one.before, *one.after)) for one in votes)


def table(title: str, votes: Sequence[Asked]) -> str:
    """The votes as CSV text: a row an answer; "" where nobody was asked or knows.

    Parameters
    ----------
    title : str
        Of the lesson.
    votes : sequence of Asked
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for one in votes:
        for place, answer in enumerate(one.answers):
            right = "" if one.right is None else "yes" if place == one.right else "no"
            hands = [counts[place] if any(counts) else "" for counts in (one.before, one.after)]
            row = [title, one.id, one.ask, LETTERS[place], answer, *hands, right]
            writer.writerow([_plain(cell) for cell in (*row, one.beliefs[place])])
    return out.getvalue()


def _plain(cell: object) -> object:
    """A text that a spreadsheet would take for a formula begins with an apostrophe."""
    if isinstance(cell, str) and cell[:1] in ("=", "+", "-", "@", "\t", "\r"):
        return f"'{cell}"
    return cell
