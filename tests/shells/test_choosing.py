"""Which show: what is offered, and what one is told of a file that cannot be one."""

import dataclasses

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog
from test_keeping import TEXT

from demo_app.base.errors import InputError
from demo_app.content.cues.load import load, own_sheets
from demo_app.content.running import walking
from demo_app.shells import present
from demo_app.shells.presenting.choosing import ChooseWindow, shows
from demo_app.shells.presenting.opening import opened_sheet
from demo_app.ui import words
from demo_app.ui.saved import Saved

Key = Qt.Key


@pytest.fixture
def sheet(home):
    """A sheet of a person's own, in the data folder."""
    folder = home / "cue_sheets"
    folder.mkdir()
    path = folder / "two.toml"
    path.write_text(TEXT, "utf-8")
    return path


@pytest.fixture
def interrupted(sheet):
    """A show on that sheet, two minutes after its start."""
    found = load(sheet)
    running = walking.begin(walking.ready(found), found, 1000.0)
    return Saved(None, running=walking.next_(running, found, 1120.0), sheet=str(sheet))


@pytest.fixture
def choose(app):
    made = []

    def open_window(found):
        window = ChooseWindow(found)
        made.append(window)
        window.resize(1000, 700)
        window.show()
        window.taken = []
        window.chosen.connect(window.taken.append)
        return window

    yield open_window
    for window in made:
        window.close()
        window.deleteLater()


def test_everything_there_is_can_be_chosen(home, sheet, interrupted):
    found = shows(interrupted, home)
    assert [one.kind for one in found] == ["go-on", *["sheet"] * (1 + len(own_sheets())), "free"]
    assert "More load" in found[0].title
    assert "2:00" in found[0].note
    assert [one.path for one in found[1:-1]] == [sheet, *own_sheets()]
    assert words.text("choose.no_hazard") in found[1].note
    assert "open flame" in found[2].note or "open flame" in found[3].note
    assert shows(None, None)[-1].kind == "free"


def test_a_broken_sheet_stands_there_with_its_mistake_and_cannot_be_chosen(home, sheet, choose):
    sheet.write_text(TEXT.replace("load", "lod"), "utf-8")
    found = shows(None, home)
    assert found[0].kind == "broken"
    assert "lod" in found[0].note
    window = choose(found)
    assert not window.buttons[0].isEnabled()
    QTest.mouseClick(window.buttons[0], Qt.MouseButton.LeftButton)
    assert window.taken == []
    QTest.keyClick(window.buttons[1], Key.Key_Return)
    assert [one.path for one in window.taken] == [found[1].path]


def test_a_show_whose_sheet_has_gone_is_not_offered(home, sheet, interrupted):
    sheet.unlink()
    assert shows(interrupted, home)[0].kind == "sheet"
    nothing = dataclasses.replace(interrupted, running=None)
    assert shows(nothing, home)[0].kind == "sheet"


def test_another_file_may_be_opened_and_a_bad_one_is_told_in_one_line(
    home, sheet, choose, monkeypatch, tmp_path
):
    window = choose(shows(None, home))
    bad = tmp_path / "bad.toml"
    bad.write_text(TEXT.replace("push-pull", "push-pul"), "utf-8")
    answers = iter([("", ""), (str(bad), ""), (str(sheet), "")])
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_args: next(answers))
    window._other.click()
    assert (window.taken, window.line.text()) == ([], "")
    window._other.click()
    assert window.taken == []
    assert "bad.toml, line 9" in window.line.text()
    assert "\n" not in window.line.text()
    window._other.click()
    assert [one.path for one in window.taken] == [sheet]


def test_opening_a_sheet_with_a_mistake_raises_its_first_one(tmp_path):
    bad = tmp_path / "bad.toml"
    bad.write_text("minutes = 'many'\n", "utf-8")
    with pytest.raises(InputError, match=r"bad\.toml"):
        opened_sheet(bad)
    with pytest.raises(InputError, match=r"none\.toml"):
        opened_sheet(tmp_path / "none.toml")


def test_opening_begins_at_the_first_step(sheet):
    opening = opened_sheet(sheet, rehearsal=True)
    assert opening.running == walking.ready(
        opening.sheet, digest=opening.running.digest, rehearsal=True
    )
    assert opening.running.digest
    assert opening.saved is None


@pytest.mark.parametrize(
    ("what", "offered"),
    [(None, True), ("that", True), ("eight-minutes", False), ("ring", False)],
)
def test_an_interrupted_show_is_offered_where_it_suits(interrupted, sheet, what, offered):
    from demo_app.content.cues.named import sheet_called

    named = str(sheet) if what == "that" else what
    path = None if named is None else sheet_called(named)
    assert present._suits(interrupted, path, named) == offered
    ended = walking.finish(interrupted.running, load(sheet), 2000.0)
    assert not present._suits(dataclasses.replace(interrupted, running=ended), path, named)
