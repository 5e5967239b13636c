"""The journal's tables, and how an older file becomes one of today's.

No table holds a visitor's name: roles, counts and single lines alone.
"""

import sqlite3

FIRST = (
    """CREATE TABLE shows (
        id INTEGER PRIMARY KEY,
        title TEXT NOT NULL,
        sheet_hash TEXT NOT NULL,
        venue TEXT NOT NULL,
        rehearsal INTEGER NOT NULL CHECK (rehearsal IN (0, 1)),
        begun REAL NOT NULL,
        ended REAL CHECK (ended >= begun),
        attendance INTEGER CHECK (attendance >= 0)
    ) STRICT""",
    """CREATE TABLE steps (
        id INTEGER PRIMARY KEY,
        show INTEGER NOT NULL REFERENCES shows (id),
        step TEXT NOT NULL,
        title TEXT NOT NULL,
        begun REAL NOT NULL,
        seconds REAL CHECK (seconds >= 0),
        skipped INTEGER NOT NULL CHECK (skipped IN (0, 1))
    ) STRICT""",
    """CREATE TABLE votes (
        id INTEGER PRIMARY KEY,
        show INTEGER NOT NULL REFERENCES shows (id),
        step TEXT NOT NULL,
        answer TEXT NOT NULL,
        hands INTEGER NOT NULL CHECK (hands >= 0),
        correct INTEGER CHECK (correct IN (0, 1)),
        UNIQUE (show, step, answer)
    ) STRICT""",
    """CREATE TABLE breakages (
        id INTEGER PRIMARY KEY,
        show INTEGER REFERENCES shows (id),
        step TEXT NOT NULL,
        at REAL NOT NULL,
        what TEXT NOT NULL,
        meant INTEGER NOT NULL CHECK (meant IN (0, 1))
    ) STRICT""",
    """CREATE TABLE near_misses (
        id INTEGER PRIMARY KEY,
        show INTEGER REFERENCES shows (id),
        step TEXT NOT NULL,
        at REAL NOT NULL,
        what TEXT NOT NULL,
        place TEXT NOT NULL
    ) STRICT""",
    """CREATE TABLE batches (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL UNIQUE,
        kind TEXT NOT NULL,
        glass TEXT NOT NULL,
        thickness_mm REAL CHECK (thickness_mm > 0),
        order_below INTEGER NOT NULL CHECK (order_below >= 0)
    ) STRICT""",
    """CREATE TABLE movements (
        id INTEGER PRIMARY KEY,
        batch INTEGER NOT NULL REFERENCES batches (id),
        show INTEGER REFERENCES shows (id),
        at REAL NOT NULL,
        way TEXT NOT NULL CHECK (way IN ('delivered', 'corrected', 'out', 'back', 'broken')),
        pieces INTEGER NOT NULL CHECK (pieces > 0 OR (way = 'corrected' AND pieces <> 0)),
        note TEXT NOT NULL
    ) STRICT""",
    """CREATE TABLE questions (
        id INTEGER PRIMARY KEY,
        show INTEGER REFERENCES shows (id),
        step TEXT NOT NULL,
        at REAL NOT NULL,
        text TEXT NOT NULL,
        closed REAL
    ) STRICT""",
    """CREATE TABLE notes (
        id INTEGER PRIMARY KEY,
        show INTEGER REFERENCES shows (id),
        at REAL NOT NULL,
        kind TEXT NOT NULL CHECK (kind IN ('state', 'fault', 'order', 'note', 'clock')),
        text TEXT NOT NULL,
        closed REAL
    ) STRICT""",
    "CREATE INDEX steps_of ON steps (show)",
    "CREATE INDEX movements_of ON movements (batch, show)",
)

MIGRATIONS: tuple[tuple[str, ...], ...] = (FIRST,)
"""Statements that lead from each version to the next; the file's ``user_version`` counts them."""

TABLES = (
    "shows",
    "steps",
    "votes",
    "breakages",
    "near_misses",
    "batches",
    "movements",
    "questions",
    "notes",
)


class NewerFileError(Exception):
    """The file was written by a later Lehrlight than this one."""


def version(db: sqlite3.Connection) -> int:
    """How many migrations the file has had."""
    return int(db.execute("PRAGMA user_version").fetchone()[0])


def migrate(db: sqlite3.Connection, migrations: tuple[tuple[str, ...], ...] = MIGRATIONS) -> None:
    """Bring a file to today's version: each migration wholly or not at all.

    Raises
    ------
    NewerFileError
        If the file is ahead of this program.
    sqlite3.Error
        If the file cannot be changed.
    """
    if version(db) > len(migrations):
        raise NewerFileError
    while version(db) < len(migrations):
        db.execute("BEGIN IMMEDIATE")
        try:
            have = version(db)  # Another process may have been here while this one waited.
            if have < len(migrations):
                for statement in migrations[have]:
                    db.execute(statement)
                db.execute(f"PRAGMA user_version = {have + 1}")
            db.execute("COMMIT")
        except BaseException:
            db.execute("ROLLBACK")
            raise
