"""A state saved as a step: the file keeps every byte that was there, or is left alone."""

import dataclasses
from pathlib import Path

import pytest

from demo_app.base.errors import InputError
from demo_app.content.cues.load import load, own_sheets
from demo_app.content.cues.save import TO_BE_WRITTEN, Captured, append_step
from demo_app.scenes.catalogue import scene
from demo_app.scenes.settings import change, make

SMALL = """\
# Ours, and   oddly laid out.
title   = "Small"   # really
venue = "Millrace Glass House"
minutes = 5

[[step]]
  title = "Ring"
  scene = "ring"
  say = ["Look."]   # no more"""


@pytest.fixture
def sheet(tmp_path: Path) -> Path:
    path = tmp_path / "show.toml"
    path.write_text(SMALL, encoding="utf-8")
    return path


def _captured(**settings: object) -> Captured:
    ring = scene("ring")
    return Captured('The "early" crack', "ring", make(ring.settings, settings), 12.3)


def test_everything_that_was_there_stays(sheet: Path) -> None:
    after = append_step(sheet, _captured(drop=False, heat_s=20, flame_kW_m2=82.5))
    text = sheet.read_text(encoding="utf-8")
    assert text.startswith(SMALL)
    assert "settings = {flame_kW_m2 = 82.5, heat_s = 20, drop = false}" in text
    assert load(sheet) == after
    new = after.steps[-1]
    assert (new.id, new.title, new.at_s) == ("the-early-crack", 'The "early" crack', 12.3)
    assert new.settings == {"drop": False, "heat_s": 20.0, "flame_kW_m2": 82.5}
    assert (new.say, new.priority) == ((TO_BE_WRITTEN,), 3)


def test_a_state_comes_back_as_it_was(sheet: Path) -> None:
    table = scene("light-table")
    settings = make(table.settings, {"samples": "plain,dish", "turn_deg": 12.5, "tint_plate": True})
    new = append_step(sheet, Captured("Table", "light-table", settings, 1e9)).steps[-1]
    assert make(table.settings, new.settings) == settings
    assert new.at_s <= table.seconds(settings)  # later than the story counts as its end
    assert change(settings, turn_deg=45) != settings


@pytest.mark.parametrize("own", own_sheets(), ids=lambda path: path.stem)
def test_own_sheets_take_a_step(own: Path, tmp_path: Path) -> None:
    copy = tmp_path / own.name
    copy.write_bytes(own.read_bytes())
    before = load(copy)
    after = append_step(copy, _captured(drop=False))
    assert copy.read_bytes().startswith(own.read_bytes())
    assert after.steps[:-1] == before.steps


def test_a_second_one_of_the_same_name_gets_a_number(sheet: Path) -> None:
    for _ in range(3):
        after = append_step(sheet, _captured())
    assert [step.id for step in after.steps[1:]] == [
        "the-early-crack",
        "the-early-crack-2",
        "the-early-crack-3",
    ]


def test_line_ends_and_a_mark_of_windows_stay(sheet: Path) -> None:
    raw = b"\xef\xbb\xbf" + SMALL.replace("\n", "\r\n").encode()
    sheet.write_bytes(raw)
    append_step(sheet, _captured())
    after = sheet.read_bytes()
    assert after.startswith(raw)
    assert after.count(b"\n") == after.count(b"\r\n")
    assert len(load(sheet).steps) == 2


def test_what_somebody_wrote_meanwhile_stays(sheet: Path) -> None:
    append_step(sheet, _captured())
    sheet.write_text(sheet.read_text().replace("Look.", "Look here."), encoding="utf-8")
    assert append_step(sheet, _captured()).steps[0].say == ("Look here.",)


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ('"ring"', '"rig"', r"line 8: the step was not saved, for the sheet has a mistake.*'rig'"),
        ("minutes = 5", "minutes = ", r"line 4: the step was not saved.*is not TOML"),
        ("minutes = 5", "minutes = 1", r"line 1\d: the step was not saved, for with it"),
    ],
)
def test_a_sheet_that_cannot_take_it_is_left_alone(
    sheet: Path, old: str, new: str, message: str
) -> None:
    sheet.write_text(SMALL.replace(old, new), encoding="utf-8")
    before = sheet.read_bytes()
    with pytest.raises(InputError, match=message):
        append_step(sheet, dataclasses.replace(_captured(), seconds=70))
    assert sheet.read_bytes() == before
    assert [path.name for path in sheet.parent.iterdir()] == ["show.toml"]


def test_a_sheet_that_is_gone(tmp_path: Path) -> None:
    with pytest.raises(InputError, match="cannot be read"):
        append_step(tmp_path / "gone.toml", _captured())
    assert not list(tmp_path.iterdir())


def test_steps_in_one_list_cannot_be_added_to(sheet: Path) -> None:
    text = SMALL[: SMALL.index("[[step]]")]
    sheet.write_text(f'{text}step = [{{ title = "A", scene = "ring", say = "x" }}]\n', "utf-8")
    before = sheet.read_bytes()
    assert len(load(sheet).steps) == 1
    with pytest.raises(InputError, match="the step was not saved"):
        append_step(sheet, _captured())
    assert sheet.read_bytes() == before
