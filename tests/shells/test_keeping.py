"""What a presenter's window keeps on the disk, and how a sheet's file is followed."""

import dataclasses
import datetime
import json
from pathlib import Path

import pytest
import shows
from PySide6.QtCore import Qt
from shows import SHEET, Key, spin

from demo_app.content import venue as rules
from demo_app.content import venue_file
from demo_app.content.cues.load import load
from demo_app.content.running import walking
from demo_app.content.running.saving import digest_of
from demo_app.shells.presenting import keeping
from demo_app.shells.presenting.house import House
from demo_app.shells.presenting.keeping import Keeping
from demo_app.shells.presenting.opening import gone_on, opened_sheet
from demo_app.ui import keymap_file, words
from demo_app.ui.application import FaultGuard
from demo_app.ui.keymap import Keymap
from demo_app.ui.saved import offer, read_favourites

Alt, Shift = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ShiftModifier
TEXT = """# Written by hand.
title = "Two plates"
venue = "Millrace Glass House (invented)"
minutes = 4

[[step]]
title = "Push and pull"
id = "push"
scene = "push-pull"
seconds = 60
say = ["A bar."]

[[step]]
title = "More load"
id = "more"
scene = "push-pull"
settings = { load = 200 }
seconds = 60
say = ["More."]
"""


@pytest.fixture
def bars(play, home):
    """The small show, which has no file, and what it keeps."""
    show = play(running=walking.ready(SHEET)).begin()
    show.keeping = Keeping(show.window, home)
    show.keeping.load()
    yield show
    show.keeping.close(forget=False)


@pytest.fixture
def filed(play, home, tmp_path, monkeypatch):
    """A show on a sheet's file."""
    monkeypatch.setattr(keeping, "SETTLE_MS", 20)
    path = tmp_path / "two.toml"
    path.write_text(TEXT, "utf-8")
    opening = opened_sheet(path)
    show = play(opening.sheet, (shows.BAR,), running=opening.running).begin()
    show.keeping, show.path = Keeping(show.window, home), path
    yield show
    show.keeping.close(forget=False)


def test_each_place_is_on_the_disk_before_anything_else_happens(bars, home):
    show = bars
    for _ in range(4):
        show.next()
        found = offer(home)
        assert (found.running.id, found.running.phase) == show.at()
        assert found.running == show.running
    show.press(Key.Key_1)
    show.session.pause()
    show.press(Key.Key_BracketRight)
    spin(lambda: offer(home).back is not None)
    found = offer(home)
    assert found.running.votes == {"breaks": (1, 0)}
    assert found.shown.light.polarizer_deg == found.back.light.polarizer_deg + 5


def test_a_play_in_the_first_step_is_saved_as_it_goes(bars, home):
    bars.next()
    bars.session.play()
    spin(lambda: bars.session.time_s > 0.5)
    spin(lambda: offer(home).shown.playing and offer(home).shown.time_s > 0.3)
    bars.session.pause()


def test_a_visit_is_put_back_with_its_way_home(play, bars, home):
    show = bars
    show.next(2)
    show.wait()
    show.window.show_scene("beam")
    show.wait()
    show.session.scrub(2.0)
    show.wait()
    show.keeping.autosave.save_now(10)
    found = offer(home)
    assert (found.shown.scene, found.back.scene) == ("beam", "bar")
    again = play(running=found.running).begin(found.shown, found.back)
    assert again.session.scene.id == "beam"
    assert again.session.time_s == pytest.approx(2.0)
    assert again.at() == ("breaks", "open")
    again.press(Key.Key_F)
    again.wait()
    assert again.session.scene.id == "bar"
    assert again.session.time_s == pytest.approx(3.0)
    assert not again.conductor.astray


def test_a_show_that_ended_in_good_order_is_forgotten(bars, home):
    bars.next(3)
    assert offer(home) is not None
    bars.keeping.close(forget=True)
    assert offer(home) is None


def test_favourites_and_keys_are_kept(play, bars, home):
    show = bars
    show.press(Key.Key_4, Alt | Shift)
    assert set(read_favourites(home)) == {4}
    keymap = Keymap().teach("freeze", "Y")
    show.window.teach.changed.emit(keymap)
    assert keymap_file.load(home / keymap_file.NAME)[0].keys["freeze"] == ("Z", "Y")
    show.keeping.close(forget=True)
    again = play().begin()
    kept = Keeping(again.window, home)
    kept.load()
    again.press(Key.Key_4, Alt)
    assert again.conductor.favourites[4].name == "A bar"
    assert words.text("favourite.none", number=4) not in again.line
    kept.close(forget=True)


def test_a_second_window_saves_nothing_and_says_so(play, bars, home):
    bars.next(2)
    other = play().begin()
    kept = Keeping(other.window, home)
    assert other.line == words.text("autosave.second")
    other.next(4)
    kept.autosave.save_now(10)
    assert other.at() == ("breaks", "count")
    assert offer(home).running.phase == "open"
    kept.close(forget=True)
    assert offer(home).running == bars.running


def test_without_a_folder_it_says_so_once(play):
    show = play().begin()
    kept = Keeping(show.window, None)
    kept.load()
    assert show.line == words.text("keeping.none")
    show.next(2)
    assert show.running.on
    kept.close(forget=False)


def test_the_venues_rules_are_amber_until_a_role_has_reviewed_them(bars, home):
    show = bars
    form = show.window.before.form
    assert {state.objectName() for state in form.states.values()} == {"alert"}
    assert all(line.text() == "" for line in form.lines.values())

    def write(name, said):
        form.lines[name].setText(said)
        form.lines[name].editingFinished.emit()

    name = next(one.name for one in rules.FIELDS if one.kind == "number")
    write(name, "far away")
    assert "not a number" in show.line
    assert not venue_file.own_place().exists()
    write(name, "3,5")
    assert venue_file.load(venue_file.own_place()).value(name) == 3.5
    assert form.states[name].objectName() == "alert"
    form.review.line.setText("duty manager")
    form.review.button.click()
    # A review without a term counts for nothing.
    assert form.states[name].objectName() == "alert"
    form.days.setText("90")
    form.days.editingFinished.emit()
    assert form.states[name].objectName() == "quiet"
    assert "duty manager" in form.states[name].text()
    kept = venue_file.load(venue_file.own_place())
    assert kept.rules[name].reviewed_on == datetime.date.today()
    assert {n for n, state in form.states.items() if state.objectName() == "quiet"} == {name}
    # Another value has to be reviewed anew.
    write(name, "4")
    assert form.states[name].objectName() == "alert"


def test_a_step_is_saved_into_the_sheet_and_the_show_goes_on(filed):
    show = filed
    show.next(2)
    show.wait()
    show.session.set_setting("load", 120.0)
    show.session.scrub(1.0)
    show.wait()
    at, time_s = show.at(), show.session.time_s
    show.window.step_saved.emit()
    assert words.text("step.saved", sheet="two.toml") in show.line
    spin(lambda: len(show.conductor.sheet.steps) == 3)
    assert show.path.read_text("utf-8").startswith(TEXT.rstrip("\n"))
    saved = load(show.path).steps[-1]
    assert (saved.scene, saved.settings["load"]) == ("push-pull", 120.0)
    assert saved.at_s == pytest.approx(time_s)
    # Nothing moved: the step is shown as it was, changed by hand.
    assert show.at() == at
    assert show.session.settings.load == 120.0
    assert show.running.digest == digest_of(show.path.read_bytes())
    show.next()
    show.wait()
    assert show.running.place == 2
    assert show.session.settings.load == 120.0


def test_without_a_file_there_is_nothing_to_save_into(bars):
    bars.window.step_saved.emit()
    assert bars.line == words.text("step.no_sheet")


def test_a_saved_sheet_is_read_again(filed):
    show = filed
    show.next(2)
    show.wait()
    show.path.write_text(TEXT.replace("More load", "Most load").replace("200", "220"), "utf-8")
    spin(lambda: show.line == words.text("sheet.reloaded"))
    assert show.at() == ("more", "open")
    assert show.conductor.step.title == "Most load"
    show.wait()
    assert show.session.settings.load == 220.0


@pytest.mark.parametrize("way", ["replaced", "written"])
def test_a_broken_save_changes_nothing_and_is_told_in_one_line(filed, way):
    show = filed
    show.next(2)
    show.wait()
    before, session = show.running, show.session

    def write(text):
        if way == "written":
            show.path.write_text(text, "utf-8")
        else:
            other = show.path.with_suffix(".new")
            other.write_text(text, "utf-8")
            other.replace(show.path)

    write(TEXT.replace("load = 200", "lod = 200"))
    spin(lambda: "lod" in show.line)
    assert "\n" not in show.line
    assert "two.toml" in show.line
    assert "line 17" in show.line
    assert show.running == before
    assert show.session is session
    write(TEXT.replace("load = 200", "load = 90"))
    spin(lambda: show.line == words.text("sheet.reloaded"))
    show.wait()
    assert show.session.settings.load == 90.0


def test_a_sheet_that_goes_away_changes_nothing(filed):
    show = filed
    show.next(2)
    before = show.running
    show.path.unlink()
    shows.spin(lambda: not show.keeping._settled.isActive() and not show.path.exists())
    show.next()
    assert show.running.ids == before.ids
    show.path.write_text(TEXT.replace("A bar.", "Another bar."), "utf-8")
    spin(lambda: show.conductor.sheet.steps[0].say == ("Another bar.",))


def test_going_on_with_a_sheet_that_has_changed_meanwhile(filed, home):
    show = filed
    show.next(2)
    show.wait()
    show.keeping.autosave.save_now(10)
    found = offer(home)
    same = gone_on(found, 1e9)
    assert same.saved is found
    assert same.running == found.running
    show.path.write_text(TEXT.replace("200", "210").replace("More load", "Most load"), "utf-8")
    changed = gone_on(found, 1e9)
    # Its settings are the new ones: what was on the stage then is not put back over them.
    assert changed.saved is None
    assert changed.running.id == "more"
    assert changed.running.on
    assert changed.sheet.steps[1].title == "Most load"
    moved = dataclasses.replace(found, sheet=str(Path(show.path).with_name("gone.toml")))
    with pytest.raises(Exception, match=r"gone\.toml"):
        gone_on(moved, 1e9)


def test_the_file_holds_no_more_than_plain_values(bars, home):
    bars.next(2)
    assert json.loads((home / "autosave.json").read_text("utf-8"))["running"]["place"] == 1


@pytest.mark.parametrize("steps", [0, 8])
def test_a_show_is_kept_however_soon_its_presenter_goes_on(play, home, steps):
    """Steps may be left before their first picture has come."""
    show = play(running=walking.ready(SHEET, digest="d"))
    window = show.window
    window.conductor.begin()
    window.show()
    house = House(window, home, FaultGuard(), goes_on=False)
    for _ in range(steps):
        window.act("next")
    spin(lambda: window.findChild(Keeping) is not None)
    window.act("next")
    assert offer(home).running == show.running
    assert (home / "journal.sqlite").exists()
    house.close()
