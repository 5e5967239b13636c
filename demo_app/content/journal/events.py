"""What is typed in one line during or after a show: breakages, near misses, questions, notes."""

from demo_app.base.errors import InputError
from demo_app.content.journal.lines import line, words
from demo_app.content.journal.store import Journal, Row

KINDS = ("state", "fault", "order", "note")
"""Kinds of note: how the stand was left, what does not work, what to order, anything else."""


def add_breakage(
    journal: Journal,
    what: str,
    now: float,
    *,
    meant: bool,
    show: int | None = None,
    step: str = "",
) -> int:
    """Something broke; `meant` if it was to. Pieces are counted with `pieces.move`."""
    said = words(what, "breakage")
    step = line(step, "step")
    return journal.insert(
        "breakages", show=show, step=step, at=float(now), what=said, meant=int(meant)
    )


def add_near_miss(
    journal: Journal, what: str, place: str, now: float, *, show: int | None = None, step: str = ""
) -> int:
    """Something nearly went wrong: what, and where. Roles, never names."""
    said, where = words(what, "near miss"), line(place, "place")
    step = line(step, "step")
    return journal.insert(
        "near_misses", show=show, step=step, at=float(now), what=said, place=where
    )


def add_question(
    journal: Journal, text: str, now: float, *, show: int | None = None, step: str = ""
) -> int:
    """An odd question from the audience, open until it is closed."""
    said, step = words(text, "question"), line(step, "step")
    return journal.insert("questions", show=show, step=step, at=float(now), text=said)


def add_note(journal: Journal, kind: str, text: str, now: float, *, show: int | None = None) -> int:
    """A note of one of `KINDS`, open until it is closed.

    Raises
    ------
    InputError
        If the kind is unknown or the text cannot be kept.
    """
    if kind not in KINDS:
        raise InputError(
            f"'{kind}' is not known", place="note", remedy=f"write one of {', '.join(KINDS)}"
        )
    return journal.insert("notes", show=show, at=float(now), kind=kind, text=words(text, kind))


def close_note(journal: Journal, number: int, now: float) -> None:
    """A fault is mended, an order placed, a state over."""
    journal.change("notes", number, closed=float(now))


def close_question(journal: Journal, number: int, now: float) -> None:
    """A question has its answer."""
    journal.change("questions", number, closed=float(now))


def open_notes(journal: Journal, kind: str) -> tuple[Row, ...]:
    """Notes of a kind that are not closed, the oldest first."""
    sql = "SELECT * FROM notes WHERE kind = ? AND closed IS NULL ORDER BY id"
    return tuple(journal.rows(sql, kind))


def open_questions(journal: Journal) -> tuple[Row, ...]:
    """Questions that have no answer, the oldest first."""
    return tuple(journal.rows("SELECT * FROM questions WHERE closed IS NULL ORDER BY id"))
