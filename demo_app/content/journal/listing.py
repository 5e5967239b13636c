"""The journal read without changing it: for people, as JSON, as tables for a spreadsheet."""

import csv
import datetime
import io
import sqlite3
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from demo_app.base.atomic import check_place, make_folder, write_text
from demo_app.base.errors import InputError
from demo_app.base.places import data_place
from demo_app.content.journal.files import NAME, DamagedError, open_memory, open_to_read
from demo_app.content.journal.pieces import balances, stock
from demo_app.content.journal.schema import MIGRATIONS, TABLES, NewerFileError, migrate, version
from demo_app.content.journal.store import Journal, Row

_TIMES = ("begun", "ended", "at", "closed")
_SUMMARY = """
SELECT shows.id AS show, title, sheet_hash, venue, rehearsal, shows.begun, ended, attendance,
    (SELECT count(*) FROM steps WHERE show = shows.id AND NOT skipped) AS steps_shown,
    (SELECT count(*) FROM steps WHERE show = shows.id AND skipped) AS steps_cut,
    (SELECT coalesce(sum(hands), 0) FROM votes WHERE show = shows.id) AS hands,
    (SELECT coalesce(sum(hands), 0) FROM votes WHERE show = shows.id AND correct) AS hands_right,
    (SELECT count(*) FROM breakages WHERE show = shows.id AND meant) AS breakages_meant,
    (SELECT count(*) FROM breakages WHERE show = shows.id AND NOT meant) AS breakages_not_meant,
    (SELECT count(*) FROM near_misses WHERE show = shows.id) AS near_misses,
    (SELECT count(*) FROM questions WHERE show = shows.id) AS questions
FROM shows WHERE ?1 IS NULL OR shows.id = ?1 ORDER BY shows.id
"""


def read_journal(folder: Path | None = None) -> Journal:
    """The journal as it is now, in memory; an empty one if there is none yet.

    Parameters
    ----------
    folder : pathlib.Path, optional
        Where it lives; default: the person's data folder.

    Raises
    ------
    InputError
        If the file cannot be read.
    """
    path = (data_place() if folder is None else folder) / NAME
    memory = open_memory()
    if not path.exists():
        return Journal(memory, None, on_disk=False)
    try:
        db = open_to_read(path)
        try:
            if version(db) == len(MIGRATIONS):
                db.backup(memory)
            else:
                memory.close()
                memory = _older(db)
        finally:
            db.close()
    except NewerFileError:
        raise InputError(
            "was written by a newer Lehrlight", place=str(path), remedy="install that one"
        ) from None
    except (DamagedError, OSError, sqlite3.Error) as error:
        raise InputError(
            f"is no journal that can be read ({error})",
            place=str(path),
            remedy="the next show moves it aside and begins a new one",
        ) from None
    return Journal(memory, None, on_disk=False)


def summary(journal: Journal, show: int | None = None) -> list[Row]:
    """One row a show, with counts of what happened in it."""
    return journal.rows(_SUMMARY, show)


def record(journal: Journal, show: int | None = None) -> dict[str, Any]:
    """All of it for programs; of one show, or everything. Times as ISO 8601 with the offset."""
    found: dict[str, Any] = {name: _stamped(rows(journal, name, show)) for name in TABLES}
    found["shows"] = _stamped(summary(journal, show))
    found["glass"] = [{**vars(one), "missing": one.missing} for one in balances(journal, show)]
    found["stock"] = [vars(one) for one in stock(journal)]
    return found


def rows(journal: Journal, table: str, show: int | None = None) -> list[Row]:
    """Rows of a table, those of one show alone if it is given."""
    if table not in TABLES:
        raise InputError(f"no table '{table}'", place="journal", remedy=", ".join(TABLES))
    key = {"shows": "id", "batches": None}.get(table, "show")
    if show is None or key is None:
        return journal.rows(f"SELECT * FROM {table} ORDER BY id")
    return journal.rows(f"SELECT * FROM {table} WHERE {key} = ? ORDER BY id", show)


def write_tables(journal: Journal, out: Path, show: int | None = None) -> tuple[Path, ...]:
    """Tables for a spreadsheet.

    Parameters
    ----------
    journal : Journal
        What is written.
    out : pathlib.Path
        A name that ends in ``.csv``: one file with one row a show. Any other: a folder, made if
        it is missing, which gets one file a table.
    show : int, optional
        Only what belongs to that show.

    Returns
    -------
    tuple of pathlib.Path
        The files.

    Raises
    ------
    InputError
        If one cannot be written; none is half written.
    """
    if not out.name:
        raise InputError("names no file", place="--csv", remedy="write a folder, or a FILE.csv")
    if out.suffix.lower() == ".csv":
        check_place(out)
        write_text(out, _table(summary(journal, show), journal.columns(_SUMMARY)))
        return (out,)
    make_folder(out)
    files = {name: out / f"{name}.csv" for name in TABLES}
    for file in files.values():
        check_place(file)
    for name, file in files.items():
        columns = journal.columns(f"SELECT * FROM {name}")
        write_text(file, _table(rows(journal, name, show), columns))
    return tuple(files.values())


def listed(journal: Journal) -> str:
    """One line a show, for people."""
    found = summary(journal)
    if not found:
        return "The journal has no shows yet."
    lines = [_show_line(row) for row in found]
    for one in balances(journal):
        if one.missing:
            lines.append(f"  show {one.show}: {one.words}")
    return "\n".join(lines)


def told(journal: Journal, show: int) -> str:
    """One show for people, step by step."""
    found = summary(journal, show)
    if not found:
        raise InputError(
            f"there is no show {show}", place="--show", remedy="'lehrlight journal' lists them"
        )
    lines = [_show_line(found[0])]
    votes = rows(journal, "votes", show)
    for step in rows(journal, "steps", show):
        took = "cut" if step["skipped"] else _seconds(step["seconds"])
        lines.append(f"  {clock(step['begun'])}  {took:>8}  {step['title'] or step['step']}")
        for vote in (one for one in votes if one["step"] == step["step"]):
            mark = {1: "  (right)", 0: "", None: ""}[vote["correct"]]
            lines.append(f"{'':21}{vote['hands']:4d}  {vote['answer']}{mark}")
        votes = [one for one in votes if one["step"] != step["step"]]
    for one in rows(journal, "breakages", show):
        lines.append(
            f"  {clock(one['at'])}  broke{'' if one['meant'] else ' (not meant)'}: {one['what']}"
        )
    for one in rows(journal, "near_misses", show):
        where = f" ({one['place']})" if one["place"] else ""
        lines.append(f"  {clock(one['at'])}  near miss: {one['what']}{where}")
    for one in rows(journal, "questions", show):
        lines.append(f"  {clock(one['at'])}  asked: {one['text']}")
    for one in rows(journal, "notes", show):
        lines.append(f"  {clock(one['at'])}  {one['kind']}: {one['text']}")
    lines += [f"  {one.words}" for one in balances(journal, show)]
    return "\n".join(lines)


def day(at: float) -> str:
    """Date of a time (s since 1970) where the computer is: 2026-05-04."""
    return _local(at).strftime("%Y-%m-%d")


def clock(at: float) -> str:
    """Hours and minutes of a time (s since 1970) where the computer is."""
    return _local(at).strftime("%H:%M")


def _local(at: float) -> datetime.datetime:
    return datetime.datetime.fromtimestamp(at).astimezone()


def _older(db: sqlite3.Connection) -> sqlite3.Connection:
    """A copy of an older file, brought to today's version."""
    memory = sqlite3.connect(":memory:", isolation_level=None)
    memory.row_factory = sqlite3.Row
    db.backup(memory)
    migrate(memory)
    return memory


def _show_line(row: Row) -> str:
    what = "rehearsal" if row["rehearsal"] else "show"
    took = f"{(row['ended'] - row['begun']) / 60:.0f} min" if row["ended"] else "no end"
    came = "" if row["attendance"] is None else f", {row['attendance']} people"
    shown = f"steps shown {row['steps_shown']}, cut {row['steps_cut']}"
    more = [
        f"{name}: {row[key]}"
        for key, name in (
            ("breakages_not_meant", "broken by accident"),
            ("near_misses", "near misses"),
            ("questions", "questions"),
        )
        if row[key]
    ]
    tail = f" ({', '.join(more)})" if more else ""
    begun = f"{day(row['begun'])} {clock(row['begun'])}"
    return f"{row['show']:4d}  {begun}  {what}: {row['title']}, {took}, {shown}{came}{tail}"


def _seconds(seconds: float | None) -> str:
    if seconds is None:
        return "no end"
    return f"{int(seconds) // 60}:{int(seconds) % 60:02d}"


def _stamped(found: Iterable[Row]) -> list[Row]:
    return [
        {
            key: _local(value).isoformat(timespec="seconds")
            if key in _TIMES and value is not None
            else value
            for key, value in row.items()
        }
        for row in found
    ]


def _table(found: Iterable[Row], columns: list[str]) -> str:
    text = io.StringIO()
    out = csv.writer(text, lineterminator="\n")
    out.writerow(columns)
    for row in _stamped(found):
        out.writerow([_cell(row[name]) for name in columns])
    return text.getvalue()


def _cell(value: Any) -> Any:
    # A spreadsheet would take such a text for a formula and run it.
    if isinstance(value, str) and value[:1] in ("=", "+", "-", "@", "\t"):
        return f"'{value}"
    return "" if value is None else value
