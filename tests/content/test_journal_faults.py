"""What may happen to a journal: kill -9, a full disk, a lock, a closed folder, a damaged file."""

import contextlib
import os
import signal
import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest

from demo_app.content.journal import events, listing, shows, store
from demo_app.content.journal.files import NAME, open_file
from demo_app.content.journal.schema import MIGRATIONS
from demo_app.content.journal.store import open_journal, opened

ROOT = Path(__file__).resolve().parents[2]
NOW = 1_790_000_000.0

SHOWING = """
import sys, time
from pathlib import Path
from demo_app.content.journal import events, shows
from demo_app.content.journal.store import open_journal
journal = open_journal(Path(sys.argv[1]))
show = shows.begin_show(journal, "A show", time.time())
print("show", show, flush=True)
number = 0
while True:
    step = shows.begin_step(journal, show, f"step-{number}", "A step", time.time())
    print("steps", step, flush=True)
    shows.end_step(journal, step, 1.5)
    print("questions", events.add_question(journal, f"Why {number}?", time.time(), show=show),
          flush=True)
    number += 1
"""


def killed(folder, rows):
    """Numbers of the rows that a process had told of when it was killed in its work."""
    child = subprocess.Popen(
        [sys.executable, "-c", SHOWING, str(folder)], cwd=ROOT, stdout=subprocess.PIPE, text=True
    )
    try:
        told = [child.stdout.readline().split() for _ in range(rows)]
        child.send_signal(signal.SIGKILL)
        told += [line.split() for line in child.stdout if line.endswith("\n")]
    finally:
        child.kill()
        child.wait()
        child.stdout.close()
    assert child.returncode == -signal.SIGKILL
    return told


def kill_again_and_again(folder, times):
    """Kill a show `times`; return how many rows there were in all."""
    known = {"shows": set(), "steps": set(), "questions": set()}
    for turn in range(times):
        for name, number in killed(folder, 2 + 3 * turn % 17):
            known["shows" if name == "show" else name].add(int(number))
        with opened(folder) as journal:
            assert journal.on_disk
            assert journal.news() == ()
            for table, numbers in known.items():
                there = {row["id"] for row in listing.rows(journal, table)}
                assert numbers <= there
                assert len(there) <= len(numbers) + turn + 1  # Killed before it could tell.
            assert shows.unfinished(journal)[0]["id"] == max(known["shows"])
    assert not list(folder.glob("*damaged*"))
    return sum(map(len, known.values()))


@pytest.mark.skipif(os.name == "nt", reason="POSIX signals")
def test_rows_outlive_kill_9(tmp_path):
    assert kill_again_and_again(tmp_path, 5) > 30


@pytest.mark.slow
@pytest.mark.skipif(os.name == "nt", reason="POSIX signals")
def test_rows_outlive_kill_9_fifty_times(tmp_path):
    assert kill_again_and_again(tmp_path, 50) > 400


def test_every_commit_is_pushed_to_the_disk(tmp_path):
    """Write-ahead log and full synchronisation: what SQLite's pragma pages promise for a crash."""
    with contextlib.closing(open_file(tmp_path / NAME)) as db:
        assert db.execute("PRAGMA journal_mode").fetchone()[0] == "wal"
        assert db.execute("PRAGMA synchronous").fetchone()[0] == 2
        assert db.execute("PRAGMA foreign_keys").fetchone()[0] == 1
        assert db.execute("PRAGMA user_version").fetchone()[0] == len(MIGRATIONS)
        strict = db.execute("SELECT name, strict FROM pragma_table_list WHERE schema = 'main'")
        assert all(row[1] for row in strict if not row[0].startswith("sqlite_"))


@pytest.fixture
def patient(monkeypatch):
    """A journal that tries the disk again at once, and waits for a lock no longer than 50 ms."""
    monkeypatch.setattr(store, "RETRY_S", 0.0)
    monkeypatch.setattr(store, "RETRY_PATIENCE_S", 0.05)


def texts(journal):
    return [row["text"] for row in listing.rows(journal, "questions")]


def test_a_full_disk_stops_no_show_and_rows_reach_the_disk_later(tmp_path, monkeypatch):
    journal = open_journal(tmp_path)
    show = shows.begin_show(journal, "A", NOW)
    # No page more: SQLite refuses just as it does on a full disk (SQLITE_FULL).
    (pages,) = journal._db.execute("PRAGMA page_count").fetchone()
    journal._db.execute(f"PRAGMA max_page_count = {pages}")
    long = "and why? " * 30
    for number in range(30):
        events.add_question(journal, f"Why {number} {long}", NOW, show=show)
    assert not journal.on_disk
    assert 0 < journal.unsaved < 30
    assert len(texts(journal)) == 30
    (line,) = journal.news()
    assert "disk is full" in line
    assert "goes on in memory" in line
    monkeypatch.setattr(store, "RETRY_S", 0.0)
    events.add_question(journal, "And now?", NOW, show=show)
    assert (journal.on_disk, journal.unsaved) == (True, 0)
    assert journal.news() == (f"The journal is on the disk again: {tmp_path / NAME}",)
    journal.close()
    with opened(tmp_path) as again:
        assert [text.split()[1] for text in texts(again)] == [*map(str, range(30)), "now?"]


def test_a_lock_that_is_held_stops_no_show(tmp_path, patient):
    journal = open_journal(tmp_path)
    journal._db.execute("PRAGMA busy_timeout = 50")
    events.add_question(journal, "before", NOW)
    other = sqlite3.connect(tmp_path / NAME, isolation_level=None)
    other.execute("BEGIN EXCLUSIVE")
    events.add_question(journal, "meanwhile", NOW)
    assert texts(journal) == ["before", "meanwhile"]
    assert "locked" in journal.news()[0]
    assert not journal.on_disk
    other.execute("COMMIT")
    other.close()
    journal.close()  # Its last chance, which it takes.
    with opened(tmp_path) as again:
        assert texts(again) == ["before", "meanwhile"]


def test_two_programs_may_write_in_turn(tmp_path):
    with opened(tmp_path) as one, opened(tmp_path) as other:
        for number in range(5):
            events.add_question(one, f"one {number}", NOW)
            events.add_question(other, f"other {number}", NOW)
        assert one.on_disk
        assert other.on_disk
        assert len(texts(one)) == len(texts(other)) == 10


@contextlib.contextmanager
def as_a_stranger():
    """Give up the rights of the administrator for a while, whom no folder is closed to."""
    if os.geteuid() != 0:
        yield
        return
    os.seteuid(65534)
    try:
        yield
    finally:
        os.seteuid(0)


@pytest.mark.skipif(os.name == "nt", reason="POSIX rights")
def test_a_folder_that_may_only_be_read(tmp_path):
    home = tmp_path / "home"
    with opened(home) as journal:
        events.add_question(journal, "before", NOW)
    for place in (home, *home.iterdir()):
        place.chmod(0o555 if place.is_dir() else 0o444)
    for above in (*tmp_path.parents[:2], tmp_path) if os.geteuid() == 0 else ():
        above.chmod(0o755)
    try:
        with as_a_stranger(), opened(home) as journal:
            assert not journal.on_disk
            assert "cannot be written" in journal.news()[0]
            events.add_question(journal, "meanwhile", NOW)
            assert texts(journal) == ["before", "meanwhile"]
        with as_a_stranger():
            assert texts(listing.read_journal(home)) == ["before"]
    finally:
        home.chmod(0o755)


def test_a_folder_that_cannot_be_made(tmp_path, monkeypatch):
    (tmp_path / "file").write_text("in the way")
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "file" / "home"))
    with opened() as journal:
        assert "LEHRLIGHT_HOME" in journal.news()[0]
        assert journal.news() == ()
        show = shows.begin_show(journal, "A", NOW)
        shows.end_show(journal, show, NOW + 60, 12)
        assert listing.summary(journal)[0]["attendance"] == 12


@pytest.mark.parametrize("part", ["all", "head", "middle"])
def test_a_damaged_file_is_moved_aside_and_told(tmp_path, part):
    with opened(tmp_path) as journal:
        for number in range(200):
            events.add_question(journal, f"Why {number}, and why so often?", NOW)
    path = tmp_path / NAME
    data = bytearray(path.read_bytes())
    ends = {"all": (0, len(data)), "head": (0, 100), "middle": (8192, len(data) - 4096)}[part]
    data[slice(*ends)] = b"\xa5" * (ends[1] - ends[0])
    path.write_bytes(data)
    with opened(tmp_path) as journal:
        (line,) = journal.news()
        (aside,) = tmp_path.glob("*damaged*.sqlite")
        assert str(aside) in line
        assert aside.read_bytes() == bytes(data)
        assert journal.on_disk
        assert texts(journal) == []
        events.add_question(journal, "after", NOW)
    with opened(tmp_path) as journal:
        assert journal.news() == ()
        assert texts(journal) == ["after"]


def test_two_damaged_files_keep_their_own_names(tmp_path):
    for _ in range(3):
        (tmp_path / NAME).write_bytes(b"damaged" * 1000)
        open_journal(tmp_path).close()
    assert len(list(tmp_path.glob("*damaged*.sqlite"))) == 3


def test_a_file_of_a_newer_program_is_left_as_it_is(tmp_path):
    with contextlib.closing(open_file(tmp_path / NAME)) as db:
        db.execute(f"PRAGMA user_version = {len(MIGRATIONS) + 1}")
    before = (tmp_path / NAME).read_bytes()
    with opened(tmp_path) as journal:
        assert "newer" in journal.news()[0]
        events.add_question(journal, "Why?", NOW)
        assert not journal.on_disk
    assert (tmp_path / NAME).read_bytes() == before


def test_a_file_lost_in_the_middle_of_a_show(tmp_path, patient):
    """The disk gives nothing back any more: this run's own rows are still there."""
    journal = open_journal(tmp_path)
    show = shows.begin_show(journal, "A", NOW)
    events.add_question(journal, "before", NOW, show=show)
    journal._db.close()
    journal._db = sqlite3.connect("file:nowhere?mode=memory", uri=True, isolation_level=None)
    journal._db.execute("PRAGMA query_only = ON")
    journal._db.row_factory = sqlite3.Row
    events.add_question(journal, "after", NOW, show=show)
    assert texts(journal) == ["before", "after"]
    journal.close()
