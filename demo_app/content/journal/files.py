"""Opening the journal's file: made, mended or moved aside; and a copy in memory where all fails."""

import contextlib
import sqlite3
import time
from collections.abc import Iterator
from pathlib import Path

from demo_app.content.journal.schema import MIGRATIONS, NewerFileError, migrate, version

NAME = "journal.sqlite"
PATIENCE_S = 1.0
"""How long a write waits for another program to let go of the file, s."""
_BROKEN = (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB)


class DamagedError(Exception):
    """What is in the file is no journal any more."""


def open_file(path: Path, patience_s: float = PATIENCE_S) -> sqlite3.Connection:
    """Open or make the journal at `path`, ready to be written.

    Every row is on the disk when the statement that writes it returns: write-ahead log, full
    synchronisation.

    Raises
    ------
    DamagedError
        If the file is no database or its pages do not fit together.
    NewerFileError
        If a later Lehrlight wrote it.
    sqlite3.Error, OSError
        If it cannot be opened or written.
    """
    db = _connect(str(path), patience_s)
    try:
        with _telling_damage():
            _check(db)
            db.execute("PRAGMA journal_mode = WAL")
            db.execute("PRAGMA synchronous = FULL")
            db.execute("PRAGMA foreign_keys = ON")
            migrate(db)
            # A file that may only be read is found out now, not at the first row.
            db.execute("BEGIN IMMEDIATE")
            db.execute(f"PRAGMA user_version = {len(MIGRATIONS)}")
            db.execute("COMMIT")
    except BaseException:
        db.close()
        raise
    return db


def open_to_read(path: Path) -> sqlite3.Connection:
    """Open the journal at `path` without changing it, also where nothing may be written.

    Raises
    ------
    DamagedError, NewerFileError, sqlite3.Error
        As `open_file`; also for a file of an older version than today's.
    """
    address = path.absolute().as_uri()
    for more in ("mode=ro", "mode=ro&immutable=1"):
        db = _connect(f"{address}?{more}", PATIENCE_S)
        try:
            with _telling_damage():
                _check(db)
                if version(db) > len(MIGRATIONS):
                    raise NewerFileError
            return db
        except sqlite3.OperationalError:
            # A write-ahead log needs a file beside it; where that cannot be, nobody writes.
            db.close()
            if "immutable" in more:
                raise
        except BaseException:
            db.close()
            raise
    raise AssertionError


def open_memory() -> sqlite3.Connection:
    """An empty journal that lives as long as the process."""
    db = _connect(":memory:", PATIENCE_S)
    migrate(db)
    db.execute("PRAGMA foreign_keys = ON")
    return db


def copy_to_memory(path: Path) -> sqlite3.Connection:
    """What the file at `path` holds, in memory; an empty journal if it cannot be read."""
    memory = _connect(":memory:", PATIENCE_S)
    try:
        with contextlib.closing(open_to_read(path)) as db:
            db.backup(memory)
        migrate(memory)
    except (DamagedError, NewerFileError, OSError, sqlite3.Error):
        memory.close()
        return open_memory()
    memory.execute("PRAGMA foreign_keys = ON")
    return memory


def move_aside(path: Path) -> Path:
    """Give a damaged journal and its log another name, never one that is taken; return it."""
    stamp = time.strftime("%Y%m%d-%H%M%S")
    aside, count = path.with_name(f"{path.stem}-damaged-{stamp}{path.suffix}"), 1
    while aside.exists():
        count += 1
        aside = path.with_name(f"{path.stem}-damaged-{stamp}-{count}{path.suffix}")
    for end in ("-wal", "-shm"):
        with contextlib.suppress(FileNotFoundError):
            Path(f"{path}{end}").rename(f"{aside}{end}")
    path.rename(aside)
    return aside


def _connect(address: str, patience_s: float) -> sqlite3.Connection:
    uri = address.startswith("file:")
    db = sqlite3.connect(address, timeout=patience_s, isolation_level=None, uri=uri)
    db.row_factory = sqlite3.Row
    return db


def _check(db: sqlite3.Connection) -> None:
    found = db.execute("PRAGMA quick_check").fetchone()[0]
    if found != "ok":
        raise DamagedError(str(found).splitlines()[0])


@contextlib.contextmanager
def _telling_damage() -> Iterator[None]:
    try:
        yield
    except sqlite3.DatabaseError as error:
        if getattr(error, "sqlite_errorcode", 0) & 0xFF in _BROKEN:
            raise DamagedError(str(error)) from None
        raise
