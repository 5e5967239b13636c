"""Counts: no person in them, written within a second, safe on a disk that refuses."""

import csv
import datetime
import sqlite3
import threading
import time
from collections import Counter

import pytest

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.kiosk import counts as module
from demo_app.content.kiosk.counts import KINDS, Counts, hour_of
from demo_app.content.kiosk.counts_file import export, read_counts
from demo_app.content.kiosk.word_keys import LANGUAGES, STEP_IDS

NOON = datetime.datetime(2026, 11, 25, 12, 34, 56).timestamp()


def waited_for(what, seconds=5.0):
    until = time.monotonic() + seconds
    while not what() and time.monotonic() < until:
        time.sleep(0.01)
    return what()


def test_what_is_counted_is_a_row_an_hour(tmp_path):
    counts = Counts(tmp_path, now=lambda: NOON)
    for _ in range(3):
        counts.add("start")
    counts.add("step", "dish")
    counts.add("prediction", "dish", 2)
    counts.add("language", "de")
    counts.add("reset", "idle")
    counts.close()
    rows = {
        tuple(key): count for key, count in read_counts(tmp_path / "kiosk-counts.sqlite").items()
    }
    hour = int(datetime.datetime(2026, 11, 25, 12).timestamp())
    assert rows == {
        (hour, "start", "", -1): 3,
        (hour, "step", "dish", -1): 1,
        (hour, "prediction", "dish", 2): 1,
        (hour, "language", "de", -1): 1,
        (hour, "reset", "idle", -1): 1,
    }


def test_no_text_and_no_instant_can_be_kept(tmp_path):
    counts = Counts(tmp_path)
    wrong_ones = [
        *(("start", "Ann"), ("step", "Ann"), ("name", ""), ("prediction", "dish", 4)),
        *(("prediction", "dish"), ("step", "dish", 1), ("prediction", "dish", "Ann")),
    ]
    for wrong in wrong_ones:
        with pytest.raises(ValueError, match="not counted"):
            counts.add(*wrong)
    counts.add("start")
    counts.close()
    db = sqlite3.connect(tmp_path / "kiosk-counts.sqlite")
    tables = db.execute("SELECT sql FROM sqlite_master").fetchall()
    columns = [row[1:3] for row in db.execute("PRAGMA table_info(counts)")]
    hours = [row[0] for row in db.execute("SELECT hour FROM counts")]
    db.close()
    assert len(tables) == 1
    # An hour, a word out of a fixed list twice, the number of an answer, how many.
    assert columns == [("hour", "INTEGER"), ("kind", "TEXT"), ("name", "TEXT"),
                       ("answer", "INTEGER"), ("count", "INTEGER")]  # fmt: skip
    assert all(hour % 900 == 0 for hour in hours)
    known = {"", *KINDS, *STEP_IDS, *LANGUAGES, "idle", "home", "fault"}
    assert {name for names in KINDS.values() for name in names} <= known


def test_it_is_on_the_disk_within_a_second(tmp_path):
    counts = Counts(tmp_path, now=lambda: NOON)
    before = time.monotonic()
    counts.add("start")
    path = tmp_path / "kiosk-counts.sqlite"
    assert waited_for(lambda: bool(read_counts(path)))
    assert time.monotonic() - before < 1 or not counts.waiting
    assert counts.waiting == 0
    counts.close()


def test_a_burst_is_one_write(tmp_path, monkeypatch):
    written = []
    add_to = module.add_to
    monkeypatch.setattr(module, "add_to", lambda db, rows: (written.append(1), add_to(db, rows)))
    counts = Counts(tmp_path, now=lambda: NOON)
    for _ in range(5000):
        counts.add("step", "bubble")
    counts.close()
    assert counts.since(0) == {("step", "bubble", -1): 5000}
    assert len(written) <= 3


def test_a_disk_that_refuses_costs_nothing_and_is_told(tmp_path, monkeypatch):
    """A full disk, as SQLite tells it."""
    full, opened = [True], module.open_counts

    def refusing(path, tell):
        if full[0]:
            raise sqlite3.OperationalError("database or disk is full")
        return opened(path, tell)

    monkeypatch.setattr(module, "open_counts", refusing)
    counts = Counts(tmp_path, now=lambda: NOON, retry_s=0.02)
    counts.add("start")
    assert waited_for(lambda: bool(counts.problems))
    counts.add("start")
    assert "disk is full" in counts.problems[0]
    assert counts.waiting == 2
    assert counts.since(0) == {("start", "", -1): 2}
    full[0] = False
    assert waited_for(lambda: counts.waiting == 0)
    counts.close()
    assert counts.problems == ()
    assert counts.since(0) == {("start", "", -1): 2}


def test_a_write_that_fails_halfway_counts_nothing_twice(tmp_path, monkeypatch):
    failing, add_to = [True], module.add_to

    def breaking(db, rows):
        if failing:
            failing.clear()
            db = Halfway(db)
        add_to(db, rows)

    monkeypatch.setattr(module, "add_to", breaking)
    counts = Counts(tmp_path, now=lambda: NOON, retry_s=0.02)
    counts.add("start")
    counts.add("step", "dish")
    assert waited_for(lambda: counts.waiting == 0 and not failing)
    counts.close()
    assert counts.since(0) == {("start", "", -1): 1, ("step", "dish", -1): 1}


class Halfway:
    """A connection whose commit finds the disk full."""

    def __init__(self, db):
        self._db = db

    def execute(self, sql):
        if sql == "COMMIT":
            raise sqlite3.OperationalError("database or disk is full")
        return self._db.execute(sql)

    def executemany(self, *words):
        return self._db.executemany(*words)


def test_a_folder_without_a_disk_is_no_trouble():
    counts = Counts(None)
    counts.add("start")
    assert counts.since(0) == {("start", "", -1): 1}
    assert counts.problems
    counts.close()


def test_memory_has_an_end(tmp_path, monkeypatch):
    monkeypatch.setattr(module, "MOST_WAITING", 10)
    hours = iter(range(100))
    counts = Counts(None, now=lambda: NOON + 3600 * next(hours))
    for _ in range(100):
        counts.add("start")
    assert counts.waiting == 10
    counts.close()


def test_threads_end(tmp_path):
    before = threading.active_count()
    for _ in range(20):
        Counts(tmp_path).close()
    assert threading.active_count() == before


def test_the_local_hour_begins_where_the_clock_says_so():
    assert hour_of(NOON) == datetime.datetime(2026, 11, 25, 12).timestamp()


def test_the_table_for_a_spreadsheet(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path))
    counts = Counts(tmp_path, now=lambda: NOON)
    counts.add("start")
    counts.add("prediction", "bubble", 0)
    counts.close()
    out = tmp_path / "counts.csv"
    assert main(["kiosk", "--counts", str(out)]) == 0
    with out.open(newline="", encoding="utf-8") as file:
        rows = list(csv.reader(file))
    assert rows[0] == ["hour", "kind", "name", "answer", "count"]
    assert Counter(tuple(row[1:]) for row in rows[1:]) == Counter(
        [("prediction", "bubble", "1", "1"), ("start", "", "", "1")]
    )
    assert {datetime.datetime.fromisoformat(row[0]).timestamp() for row in rows[1:]} == {
        datetime.datetime(2026, 11, 25, 12).timestamp()
    }
    assert "2 rows" in capsys.readouterr().out


def test_no_counts_and_wrong_names_are_refused(tmp_path):
    with pytest.raises(InputError, match="let the kiosk run first"):
        export(tmp_path, tmp_path / "x.csv")
    with pytest.raises(InputError, match=r"file\.csv"):
        export(tmp_path, tmp_path / "x.txt")
    (tmp_path / "kiosk-counts.sqlite").write_bytes(b"noise" * 1000)
    with pytest.raises(InputError, match="cannot be read"):
        export(tmp_path, tmp_path / "x.csv")
    assert not (tmp_path / "x.csv").exists()
