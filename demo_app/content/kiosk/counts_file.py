"""The file behind a kiosk's counts, and its table for a spreadsheet."""

import contextlib
import csv
import datetime
import io
import sqlite3
import stat
from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import NamedTuple

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.content.journal.files import DamagedError, move_aside

NAME = "kiosk-counts.sqlite"
VERSION = 1
PATIENCE_S = 1.0
LARGEST = 64 * 1024**2
"""Bytes; a year of full days is some 4 MB."""
COLUMNS = ("hour", "kind", "name", "answer", "count")
_TABLE = """CREATE TABLE IF NOT EXISTS counts (
    hour INTEGER NOT NULL,
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    answer INTEGER NOT NULL,
    count INTEGER NOT NULL CHECK (count > 0),
    PRIMARY KEY (hour, kind, name, answer)
) STRICT, WITHOUT ROWID"""
_BROKEN = (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB)


class Key(NamedTuple):
    """What is counted: hour (its beginning, s since 1970), kind, name, number of the answer."""

    hour: int
    kind: str
    name: str
    answer: int


def open_counts(path: Path, tell: Callable[[str], None]) -> sqlite3.Connection:
    """Open or make the file, ready to be written; a damaged one is moved aside.

    Parameters
    ----------
    path : pathlib.Path
    tell : callable
        Takes a line for the staff.

    Raises
    ------
    sqlite3.Error, OSError
        If it cannot be opened or written.
    """
    if _is_ordinary(path) and path.stat().st_size == 0:
        tell("The file of the counts was empty: they begin anew.")
    try:
        return _open(path)
    except DamagedError as error:
        aside = move_aside(path)
        tell(f"The counts were damaged ({error}): they are kept as {aside}, new ones began.")
        return _open(path)


def add_to(db: sqlite3.Connection, counted: Mapping[Key, int]) -> None:
    """Add to the rows, all in one step; they are on the disk when this returns."""
    db.execute("BEGIN IMMEDIATE")
    try:
        db.executemany(
            "INSERT INTO counts VALUES (?, ?, ?, ?, ?) ON CONFLICT DO UPDATE"
            " SET count = count + excluded.count",
            [(*key, count) for key, count in counted.items()],
        )
        db.execute("COMMIT")
    except BaseException:
        with contextlib.suppress(sqlite3.Error):
            db.execute("ROLLBACK")
        raise


def read_counts(path: Path) -> dict[Key, int]:
    """All rows of the file at `path`; none where it is missing or cannot be read."""
    try:
        return _rows(path)
    except (OSError, sqlite3.Error):
        return {}


def sums(counted: Iterable[Mapping[Key, int]], from_hour: int) -> dict[tuple[str, str, int], int]:
    """Sums over the hours from `from_hour` on, by kind, name and answer."""
    found: dict[tuple[str, str, int], int] = {}
    for rows in counted:
        for key, count in rows.items():
            if key.hour >= from_hour:
                found[key[1:]] = found.get(key[1:], 0) + count
    return found


def export(folder: Path, out: Path) -> int:
    """Write the counts of the kiosk whose data are in `folder` as a table.

    Returns
    -------
    int
        How many rows.

    Raises
    ------
    InputError
        If there are none, they cannot be read, or the table cannot be written.
    """
    path = folder / NAME
    if out.suffix.lower() != ".csv":
        raise InputError(
            f"'{out}' ends in '{out.suffix}'", place="--counts", remedy="name a file.csv"
        )
    if not path.is_file():
        raise InputError("is not there", place=str(path), remedy="let the kiosk run first")
    try:
        rows = sorted(_rows(path).items())
    except (OSError, sqlite3.Error) as error:
        raise InputError(
            f"cannot be read ({error})", place=str(path), remedy="copy it again, or restore it"
        ) from None
    text = io.StringIO()
    table = csv.writer(text, lineterminator="\r\n")
    table.writerow(COLUMNS)
    for key, count in rows:
        hour = datetime.datetime.fromtimestamp(key.hour, datetime.UTC).astimezone()
        answer = "" if key.answer < 0 else key.answer + 1
        table.writerow((hour.isoformat(timespec="minutes"), key.kind, key.name, answer, count))
    write_text(out, text.getvalue())
    return len(rows)


def _is_ordinary(path: Path) -> bool:
    """Whether a file is there; raises if what has the name is none (a pipe lets readers wait)."""
    try:
        about = path.stat()
    except FileNotFoundError:
        return False
    if not stat.S_ISREG(about.st_mode):
        raise OSError(f"{path} is no ordinary file")
    return True


def _open(path: Path) -> sqlite3.Connection:
    if _is_ordinary(path) and path.stat().st_size > LARGEST:
        raise DamagedError("it is too large")  # To look through it would take minutes.
    path.parent.mkdir(parents=True, exist_ok=True)
    db = sqlite3.connect(path, timeout=PATIENCE_S, isolation_level=None)
    try:
        # Write-ahead log, full synchronisation: on the disk when a statement returns.
        db.execute("PRAGMA journal_mode = WAL")
        db.execute("PRAGMA synchronous = FULL")
        _make(db)
    except sqlite3.DatabaseError as error:
        db.close()
        if getattr(error, "sqlite_errorcode", 0) & 0xFF in _BROKEN:
            raise DamagedError(str(error)) from None
        raise
    except BaseException:
        db.close()
        raise
    return db


def _make(db: sqlite3.Connection) -> None:
    """The table, if it is not there; raises if what is there is no such file."""
    found = db.execute("PRAGMA quick_check").fetchone()[0]
    if found != "ok":
        raise DamagedError(str(found).splitlines()[0])
    version = db.execute("PRAGMA user_version").fetchone()[0]
    if version > VERSION:
        raise sqlite3.OperationalError("a newer Lehrlight wrote the file")
    if version < VERSION:
        db.execute("BEGIN IMMEDIATE")
        db.execute(_TABLE)
        db.execute(f"PRAGMA user_version = {VERSION}")
        db.execute("COMMIT")
    columns = tuple(row[1] for row in db.execute("PRAGMA table_info(counts)"))
    if columns != COLUMNS:
        raise DamagedError("it holds another table")


def _rows(path: Path) -> dict[Key, int]:
    """Rows, read without changing the file, also where nothing may be written."""
    if not _is_ordinary(path):
        return {}
    for more in ("mode=ro", "mode=ro&immutable=1"):
        try:
            with contextlib.closing(
                sqlite3.connect(f"{path.absolute().as_uri()}?{more}", uri=True, timeout=PATIENCE_S)
            ) as db:
                found = db.execute("SELECT hour, kind, name, answer, count FROM counts")
                return {Key(*row[:4]): row[4] for row in found}
        except sqlite3.OperationalError:
            # A write-ahead log needs a file beside it; where that cannot be, nobody writes.
            if "immutable" in more:
                raise
    raise AssertionError
