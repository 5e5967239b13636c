"""A show saves itself within a second, and no disk can stop it."""

import json
import os
import subprocess
import sys
import threading
from dataclasses import replace

import bar_scene
import pytest
import shiboken6

from demo_app.base import atomic
from demo_app.base.errors import InputError
from demo_app.content.cues.records import Sheet, Step
from demo_app.content.running import walking
from demo_app.ui import autosave as autosaving
from demo_app.ui import saved as files
from demo_app.ui.autosave import Autosave, hold
from demo_app.ui.playing import Session
from demo_app.ui.saved import Favourite, Saved, offer
from demo_app.ui.snapshot import Done, Snapshot

SHOWN = Snapshot("bar", (Done(0, {"rate_MPa_s": 4.0}),), 2.5, 50)
SHEET = Sheet("Bars", "Millrace Glass House", 5, (Step("a", "A", "bar"), Step("b", "B", "bar")))
SAVED = Saved(
    SHOWN,
    replace(SHOWN, time_s=1.0),
    walking.ready(SHEET, digest="abc"),
    "bars.toml",
    {"card": None, "captions": "de"},
    12345.5,
)


@pytest.fixture
def saving(tmp_path, app):
    """Autosaves of what a list holds, closed at the end."""
    made = []

    def make(what, folder=tmp_path):
        made.append(Autosave(folder, lambda: what[-1]))
        return made[-1]

    yield make
    for one in made:
        one.close()


def test_a_show_comes_back_from_its_file(tmp_path):
    text = files.as_text(SAVED)
    assert files.from_text(text) == SAVED
    assert offer(tmp_path) is None
    assert offer(tmp_path / "missing") is None
    (tmp_path / files.NAME).write_text(text)
    assert offer(tmp_path) == SAVED
    files.forget(tmp_path)
    assert offer(tmp_path) is None


@pytest.mark.parametrize("text", ["", "{", "[]", '{"version": 1}', '{"version": 9}', "[" * 99999])
def test_a_broken_file_gives_way_to_the_one_before(text, tmp_path):
    (tmp_path / files.NAME).write_text(text)
    told = []
    assert offer(tmp_path, told.append) is None
    assert len(told) == 1
    assert files.NAME in told[0]
    (tmp_path / files.LAST).write_text(files.as_text(SAVED))
    assert offer(tmp_path) == SAVED
    (tmp_path / files.NAME).write_bytes(b"\xff\xfe\x00")
    assert offer(tmp_path, told.append) == SAVED
    assert len(told) == 2


def test_a_cut_off_file_is_never_taken_for_whole(tmp_path):
    text = files.as_text(SAVED)
    for length in range(0, len(text) - 1, 37):
        with pytest.raises(InputError):
            files.from_text(text[:length])


def test_a_change_is_on_the_disk_within_a_second(saving, tmp_path, qtbot, session, settle):
    what = [SAVED]
    save = saving(what)
    save.watch(session)
    session.begin()
    settle(session)
    assert offer(tmp_path) is None
    with qtbot.waitSignal(save.saved, timeout=1000 * 30):
        session.set_setting("rate_MPa_s", 7.0)
        assert 0 < save._timer.remainingTime() <= 500
    assert offer(tmp_path) == SAVED
    what.append(replace(SAVED, saved_at=2.0))
    # A change while a later writing is due brings it forward; one more does not put it off.
    save._wait(autosaving.PLAYING_MS)
    save.touch()
    left = save._timer.remainingTime()
    assert left <= autosaving.AFTER_MS
    save.touch()
    assert save._timer.remainingTime() <= left
    qtbot.waitSignal(save.saved, timeout=30_000).wait()
    assert offer(tmp_path).saved_at == 2.0
    assert files.from_text((tmp_path / files.LAST).read_text()) == SAVED


def test_a_run_that_plays_is_saved_now_and_then(saving, qtbot, session, settle):
    save = saving([SAVED])
    session.begin()
    settle(session)
    session.play()
    save.watch(session)
    qtbot.waitUntil(save._timer.isActive)
    assert save._timer.remainingTime() > autosaving.AFTER_MS
    session.pause()


def test_a_session_that_is_gone_is_let_go(saving, worker):
    save = saving([SAVED])
    first, second = Session(bar_scene.SCENE, worker), Session(bar_scene.SCENE, worker)
    save.watch(first)
    first.close()
    shiboken6.delete(first)
    save.watch(second)
    second.changed.emit()
    assert save._timer.isActive()
    second.close()
    shiboken6.delete(second)


def test_the_step_is_saved_before_it_is_shown(saving, tmp_path):
    what = [SAVED]
    save = saving(what)
    for number in range(5):
        what.append(replace(SAVED, saved_at=float(number)))
        assert save.save_now(60)
        assert offer(tmp_path).saved_at == number


def test_a_full_disk_is_told_once_and_the_show_goes_on(saving, tmp_path, qtbot, monkeypatch, count):
    def full(path, content):
        raise OSError(28, "No space left on device")

    save = saving([SAVED])
    told = count(save.told)
    assert save.save_now(60)
    monkeypatch.setattr(os, "fsync", lambda file: full(None, None))
    for _ in range(3):
        assert not save.save_now(60)
    qtbot.waitUntil(lambda: len(told) == 1)
    qtbot.wait(20)
    assert len(told) == 1
    assert "No space left" in told[0][0]
    assert "goes on" in told[0][0]
    assert offer(tmp_path) == SAVED
    assert not list(tmp_path.glob(".lehrlight-*"))
    monkeypatch.undo()
    with qtbot.waitSignal(save.saved, timeout=30_000):
        save.save_now(60)
    assert len(told) == 1


def test_a_folder_that_is_gone_is_told(saving, tmp_path, qtbot, count):
    save = saving([SAVED], tmp_path / "missing")
    told = count(save.told)
    assert not save.save_now(60)
    qtbot.waitUntil(lambda: len(told) == 1)


def test_a_disk_that_hangs_does_not_hold_the_show(saving, tmp_path, monkeypatch):
    go = threading.Event()
    write = atomic.write_text

    def slow(path, text):
        assert go.wait(60)
        write(path, text)

    monkeypatch.setattr(atomic, "write_text", slow)
    save = saving([SAVED])
    assert not save.save_now(0.01)
    save._due()  # waits for the writing in hand instead of piling up
    assert save._timer.isActive()
    go.set()
    save.close()
    assert offer(tmp_path) == SAVED


def test_without_a_folder_nothing_is_saved(saving):
    save = saving([SAVED], None)
    save.touch()
    assert not save._timer.isActive()
    assert not save.save_now()
    save.forget()


def test_a_show_that_was_closed_in_good_order_is_not_offered(saving, tmp_path):
    save = saving([SAVED])
    save.save_now(60)
    save.touch()
    save.forget()
    save.close()
    save.close()
    assert offer(tmp_path) is None


def test_closing_writes_what_waits(saving, tmp_path):
    save = saving([SAVED])
    save.touch()
    save.close()
    assert offer(tmp_path) == SAVED


HOLDER = """
import sys
from pathlib import Path
from demo_app.ui.autosave import hold
lock = hold(Path(sys.argv[1]))
print("held" if lock else "free", flush=True)
sys.stdin.read()
"""


def test_one_window_saves_and_a_killed_one_hands_over(tmp_path):
    with subprocess.Popen(
        [sys.executable, "-c", HOLDER, str(tmp_path)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    ) as other:
        assert other.stdout.readline() == "held\n"
        assert hold(tmp_path) is None
        other.kill()
        other.wait(60)
        lock = hold(tmp_path)
        assert lock is not None
        assert hold(tmp_path) is None
        lock.unlock()


def test_parts_that_a_killed_process_has_left_are_swept_after_a_day(tmp_path):
    old, new = tmp_path / ".lehrlight-0.json", tmp_path / ".lehrlight-1.json"
    for part in (old, new):
        part.write_text("{")
    os.utime(old, (0, 0))
    hold(tmp_path).unlock()
    assert not old.exists()
    assert new.exists()


def test_favourites_are_kept_by_number(tmp_path):
    assert files.read_favourites(tmp_path) == {}
    kept = {3: Favourite("The flame", SHOWN), 9: Favourite("The drop", replace(SHOWN, time_s=9.0))}
    files.write_favourites(tmp_path, kept)
    assert files.read_favourites(tmp_path) == kept
    told = []
    for text in ("{", json.dumps({"version": 1, "favourites": {"x": 1}})):
        (tmp_path / files.FAVOURITES).write_text(text)
        assert files.read_favourites(tmp_path, told.append) == {}
    assert len(told) == 2
    with pytest.raises(InputError):
        files.write_favourites(tmp_path / "missing", kept)
