"""Shows and rehearsals in the journal: begun, their steps, the votes, ended.

Every function takes the time as `now`, s since 1970; a clock that is set back never makes a show
end before it began.
"""

import hashlib

from demo_app.base.errors import InputError
from demo_app.content.journal.lines import count, line, words
from demo_app.content.journal.store import Journal, Row

CLOCK_SLACK_S = 2.0
"""A clock that goes back by less is not worth a note, s."""


def sheet_hash(text: str) -> str:
    """Twelve signs that tell one version of a cue sheet's `text` from another."""
    return hashlib.sha256(text.encode("utf-8")).hexdigest()[:12]


def begin_show(
    journal: Journal,
    title: str,
    now: float,
    *,
    sheet: str = "",
    venue: str = "",
    rehearsal: bool = False,
) -> int:
    """A show begins.

    Parameters
    ----------
    journal : Journal
        Where it is written.
    title : str
        The cue sheet's title.
    now : float
        s since 1970.
    sheet : str
        Its `sheet_hash`.
    venue : str
        Where it is given.
    rehearsal : bool
        Whether nobody watches.

    Returns
    -------
    int
        The show's number.
    """
    return journal.insert(
        "shows",
        title=words(title, "title"),
        sheet_hash=line(sheet, "sheet"),
        venue=line(venue, "venue"),
        rehearsal=int(rehearsal),
        begun=float(now),
    )


def end_show(journal: Journal, show: int, now: float, attendance: int | None = None) -> None:
    """A show is over; `attendance` may also be counted later with `count_heads`."""
    if attendance is not None:
        count_heads(journal, show, attendance)
    ended = not_before(journal, show, now)
    steps = journal.rows("SELECT * FROM steps WHERE show = ? ORDER BY id", show)
    # A step that a crash left open lasted until the next one began.
    ends = [*(step["begun"] for step in steps[1:]), ended]
    for step, end in zip(steps, ends, strict=False):  # Without steps there is an end alone.
        if step["seconds"] is None:
            journal.change("steps", step["id"], seconds=max(0.0, end - step["begun"]))
    journal.change("shows", show, ended=ended)


def count_heads(journal: Journal, show: int, attendance: int) -> None:
    """How many people came."""
    journal.change("shows", show, attendance=count(attendance, "attendance"))


def begin_step(journal: Journal, show: int, step: str, title: str, now: float) -> int:
    """A step of the show begins; returns the number to end it with."""
    return _step(journal, show, step, title, now, skipped=False)


def skip_step(journal: Journal, show: int, step: str, title: str, now: float) -> int:
    """A step of the show was cut."""
    return _step(journal, show, step, title, now, skipped=True)


def end_step(journal: Journal, number: int, seconds: float) -> None:
    """A step is over after `seconds`, counted by a clock that nobody sets."""
    journal.change("steps", number, seconds=max(0.0, float(seconds)))


def set_votes(
    journal: Journal,
    show: int,
    step: str,
    answers: tuple[tuple[str, int, bool | None], ...],
) -> None:
    """Hands that were counted; a second count of the same question replaces the first.

    Parameters
    ----------
    journal : Journal
        Where they are written.
    show : int
        The show's number.
    step : str
        Id of the step that asks.
    answers : tuple of (str, int, bool or None)
        Text, hands, and whether the model says that it is right (None: not known yet).
    """
    for text, hands, right in answers:
        said, correct = words(text, "answer"), None if right is None else int(right)
        old = journal.rows(
            "SELECT id FROM votes WHERE show = ? AND step = ? AND answer = ?", show, step, said
        )
        values = {"hands": count(hands, "hands"), "correct": correct}
        if old:
            journal.change("votes", old[0]["id"], **values)
        else:
            journal.insert("votes", show=show, step=step, answer=said, **values)


def show_row(journal: Journal, show: int) -> Row:
    """The show of that number.

    Raises
    ------
    InputError
        If there is none.
    """
    found = journal.rows("SELECT * FROM shows WHERE id = ?", show)
    if not found:
        raise InputError(
            f"there is no show {show}", place="journal", remedy="'lehrlight journal' lists them"
        )
    return found[0]


def unfinished(journal: Journal) -> tuple[Row, ...]:
    """Shows that have no end, the latest first: after a crash one of them goes on."""
    return tuple(journal.rows("SELECT * FROM shows WHERE ended IS NULL ORDER BY id DESC"))


def step_times(journal: Journal, sheet: str, *, rehearsals: bool = True) -> dict[str, list[float]]:
    """How long each step of a version of a cue sheet took, s, the oldest first, by the step's id.

    Parameters
    ----------
    journal : Journal
        Where it is written.
    sheet : str
        The `sheet_hash`.
    rehearsals : bool
        Of rehearsals; else of shows.
    """
    found: dict[str, list[float]] = {}
    for row in journal.rows(
        "SELECT step, seconds FROM steps JOIN shows ON shows.id = steps.show "
        "WHERE sheet_hash = ? AND rehearsal = ? AND seconds IS NOT NULL AND NOT skipped "
        "ORDER BY steps.id",
        sheet,
        int(rehearsals),
    ):
        found.setdefault(row["step"], []).append(row["seconds"])
    return found


def not_before(journal: Journal, show: int, now: float) -> float:
    """`now`, or the latest time of that show if the clock was set back; then a note says so."""
    begun = float(show_row(journal, show)["begun"])
    (last,) = journal.rows(
        "SELECT max(begun + coalesce(seconds, 0)) AS at FROM steps WHERE show = ?", show
    )
    latest = max(begun, float(last["at"] or begun))
    if now >= latest:
        return float(now)
    if latest - now > CLOCK_SLACK_S:
        said = f"The computer's clock went back by {latest - now:.0f} s during the show"
        journal.insert("notes", show=show, at=latest, kind="clock", text=said, closed=latest)
    return latest


def _step(journal: Journal, show: int, step: str, title: str, now: float, *, skipped: bool) -> int:
    return journal.insert(
        "steps",
        show=show,
        step=words(step, "step"),
        title=line(title, "title"),
        begun=not_before(journal, show, now),
        seconds=0.0 if skipped else None,
        skipped=int(skipped),
    )
