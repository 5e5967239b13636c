"""The open journal: rows go to the disk, or to memory until the disk is there again."""

import contextlib
import re
import sqlite3
import time
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from demo_app.base.errors import InputError
from demo_app.base.places import HOME, data_folder
from demo_app.content.journal.files import (
    NAME,
    DamagedError,
    copy_to_memory,
    move_aside,
    open_file,
    open_memory,
)
from demo_app.content.journal.schema import MIGRATIONS, NewerFileError, version

RETRY_S = 30.0
"""How long a journal in memory waits before it tries the disk again, s."""
RETRY_PATIENCE_S = 0.2

Value = str | int | float | None
Row = dict[str, Any]
_Statement = tuple[str, tuple[Value, ...]]


class Journal:
    """A journal that is open; a show never stops because of it.

    Use `open_journal`. When the disk fails, it goes on in memory with all that could be read, says
    so in `news`, and writes what is missing once the disk answers again. It belongs to the thread
    that opened it.

    Attributes
    ----------
    place : pathlib.Path or None
        The file; None if there can be none in this run.
    """

    def __init__(
        self, db: sqlite3.Connection, place: Path | None, *, on_disk: bool, news: Sequence[str] = ()
    ) -> None:
        self.place = place
        self._db = db
        self._on_disk = on_disk
        self._news = list(news)
        self._done: list[_Statement] = []
        self._safe = 0
        self._tried = time.monotonic()

    @property
    def on_disk(self) -> bool:
        """Whether rows go to the disk at present."""
        return self._on_disk

    @property
    def unsaved(self) -> int:
        """Changes that live in memory alone."""
        return len(self._done) - self._safe

    def news(self) -> tuple[str, ...]:
        """What a person should be told about the journal, a line each; each is told once."""
        told, self._news = tuple(self._news), []
        return told

    def insert(self, table: str, **values: Value) -> int:
        """Add a row; it is on the disk when this returns, if `on_disk`.

        Returns
        -------
        int
            The row's id.

        Raises
        ------
        InputError
            If a value does not suit the table.
        """
        self._return_to_disk()
        marks = ", ".join("?" * len(values))
        sql = f"INSERT INTO {table} ({', '.join(values)}) VALUES ({marks})"
        number = int(self._run(sql, tuple(values.values()), table).lastrowid or 0)
        # With its id, so that the same row comes about wherever this is said again.
        again = f"INSERT INTO {table} (id, {', '.join(values)}) VALUES (?, {marks})"
        self._keep(again, (number, *values.values()))
        return number

    def change(self, table: str, number: int, **values: Value) -> None:
        """Give a row other values.

        Raises
        ------
        InputError
            If the row is not there, or a value does not suit the table.
        """
        self._return_to_disk()
        sql = f"UPDATE {table} SET {', '.join(f'{name} = ?' for name in values)} WHERE id = ?"
        arguments = (*values.values(), number)
        if self._run(sql, arguments, table).rowcount != 1:
            raise InputError(f"has no {number}", place=table, remedy="'lehrlight journal' lists it")
        self._keep(sql, arguments)

    def rows(self, sql: str, *arguments: Value) -> list[Row]:
        """Rows that a SELECT finds, as dictionaries."""
        try:
            return self._found(sql, arguments)
        except sqlite3.DatabaseError as error:
            self._fall_back(error)
            return self._found(sql, arguments)

    def columns(self, sql: str) -> list[str]:
        """Names of the columns of a SELECT whose places may stay empty."""
        marks = re.findall(r"\?\d*", sql)
        cursor = self._db.execute(sql, (None,) * len(set(marks)))
        return [one[0] for one in cursor.description]

    def close(self) -> None:
        """Write what is missing if that can be, and let go of the file."""
        self._tried = -RETRY_S
        self._return_to_disk()
        self._db.close()

    def _found(self, sql: str, arguments: tuple[Value, ...]) -> list[Row]:
        return [dict(row) for row in self._db.execute(sql, arguments)]

    def _run(self, sql: str, arguments: tuple[Value, ...], place: str) -> sqlite3.Cursor:
        for _ in range(2):
            try:
                return self._db.execute(sql, arguments)
            except (sqlite3.IntegrityError, sqlite3.ProgrammingError, OverflowError) as error:
                raise InputError(
                    f"cannot be written down ({error})", place=place, remedy="mend the value"
                ) from None
            except sqlite3.Error as error:
                if not self._on_disk:
                    raise
                self._fall_back(error)
        raise AssertionError

    def _keep(self, sql: str, arguments: tuple[Value, ...]) -> None:
        self._done.append((sql, arguments))
        if self._on_disk:
            self._safe = len(self._done)

    def _fall_back(self, error: sqlite3.Error) -> None:
        """Go on in memory, with all that the file still gives or else this run's own rows."""
        if not self._on_disk:
            raise error
        memory = open_memory()
        try:
            self._db.backup(memory)
            whole = version(memory) == len(MIGRATIONS)
        except sqlite3.Error:
            whole = False
        if not whole:
            memory.close()
            memory = open_memory()
            memory.execute("PRAGMA foreign_keys = OFF")  # What they refer to cannot be read.
            for sql, arguments in self._done:
                memory.execute(sql, arguments)
        with contextlib.suppress(sqlite3.Error):
            self._db.close()
        self._db, self._on_disk, self._tried = memory, False, time.monotonic()
        self._news.append(in_memory_line(self.place, str(error)))

    def _return_to_disk(self) -> None:
        """Say again on the disk what was said in memory, wholly or not at all."""
        if self._on_disk or self.place is None or time.monotonic() - self._tried < RETRY_S:
            return
        self._tried = time.monotonic()
        try:
            self.place.parent.mkdir(parents=True, exist_ok=True)
            db = open_file(self.place, RETRY_PATIENCE_S)
        except (DamagedError, NewerFileError, OSError, sqlite3.Error):
            return
        try:
            db.execute("BEGIN IMMEDIATE")
            for sql, arguments in self._done[self._safe :]:
                db.execute(sql, arguments)
            db.execute("COMMIT")
        except sqlite3.Error:
            db.close()
            return
        self._db.close()
        self._db, self._on_disk = db, True
        self._safe = len(self._done)
        self._news.append(f"The journal is on the disk again: {self.place}")


def open_journal(folder: Path | None = None) -> Journal:
    """Open the journal, or begin one.

    Parameters
    ----------
    folder : pathlib.Path, optional
        Where it lives; default: the person's data folder.

    Returns
    -------
    Journal
        In memory if the folder cannot be used; its `news` says why.
    """
    try:
        path = (data_folder() if folder is None else folder) / NAME
    except InputError as error:
        return _in_memory(None, f"{error.place} {error.problem}")
    news = []
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        try:
            db = open_file(path)
        except DamagedError as error:
            aside = move_aside(path)
            news.append(
                f"The journal was damaged ({error}): it is kept as {aside}, a new one began"
            )
            db = open_file(path)
    except NewerFileError:
        return _in_memory(path, "a newer Lehrlight wrote it")
    except (DamagedError, OSError, sqlite3.Error) as error:
        return _in_memory(path, str(error), news)
    return Journal(db, path, on_disk=True, news=news)


@contextlib.contextmanager
def opened(folder: Path | None = None) -> Iterator[Journal]:
    """`open_journal`, closed at the end."""
    journal = open_journal(folder)
    try:
        yield journal
    finally:
        journal.close()


def in_memory_line(place: Path | None, why: str) -> str:
    """The line that says that the journal is in memory."""
    where = f" {place}" if place else ""
    return (
        f"The journal{where} cannot be written ({why}): it goes on in memory and is lost when "
        f"Lehrlight closes; make room, or let {HOME} name a folder of your own"
    )


def _in_memory(path: Path | None, why: str, news: Sequence[str] = ()) -> Journal:
    db = copy_to_memory(path) if path is not None and path.is_file() else open_memory()
    return Journal(db, path, on_disk=False, news=[*news, in_memory_line(path, why)])
