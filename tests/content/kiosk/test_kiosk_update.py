"""New texts: checked whole, swapped in one step, taken back where the start with them fails."""

import shutil

import pytest

from demo_app.base.errors import InputError
from demo_app.content.kiosk import update
from demo_app.content.kiosk.texts import own_folder


def stick(folder, word):
    """A folder with texts that say `word` in the inviting view."""
    source = folder / f"stick-{word}"
    shutil.copytree(own_folder(), source)
    english = source / "texts.en.toml"
    text = english.read_text(encoding="utf-8")
    english.write_text(text.replace("Touch to begin", word), encoding="utf-8")
    return source


def said(data):
    texts, problems = update.open_texts(data)
    return texts.spoken["en"].words["invite"], problems


@pytest.fixture
def data(tmp_path):
    folder = tmp_path / "data"
    folder.mkdir()
    return folder


def test_new_texts_come_with_the_next_start_and_stay(data, tmp_path):
    assert said(data) == ("Touch to begin", ())
    update.install(stick(tmp_path, "New"), data)
    assert said(data) == ("New", ())
    assert update.started(data) == ()
    assert said(data) == ("New", ())


def test_a_start_that_fails_brings_the_previous_ones_back(data, tmp_path):
    update.install(stick(tmp_path, "Good"), data)
    assert said(data)[0] == "Good"
    update.started(data)
    update.install(stick(tmp_path, "Bad"), data)
    assert said(data)[0] == "Bad"  # And then it crashes: nobody says that it started.
    word, problems = said(data)
    assert word == "Good"
    assert "failed" in problems[0]
    update.started(data)
    assert said(data) == ("Good", ())


def test_the_previous_ones_can_be_asked_for_and_back(data, tmp_path):
    for word in ("One", "Two"):
        update.install(stick(tmp_path, word), data)
        update.open_texts(data)
        update.started(data)
    update.roll_back(data)
    assert said(data)[0] == "One"
    update.started(data)
    update.roll_back(data)
    assert said(data)[0] == "Two"


def test_before_the_first_update_the_previous_ones_are_the_apps(data, tmp_path):
    update.install(stick(tmp_path, "New"), data)
    said(data)
    update.started(data)
    update.roll_back(data)
    assert said(data)[0] == "Touch to begin"


def test_the_same_texts_twice_change_nothing(data, tmp_path):
    source = stick(tmp_path, "New")
    assert update.install(source, data) == update.install(source, data)
    said(data)
    update.started(data)
    before = (data / "kiosk-texts" / "in-use.json").read_bytes()
    update.install(source, data)
    assert (data / "kiosk-texts" / "in-use.json").read_bytes() == before


def test_two_sets_are_kept_and_no_rubbish(data, tmp_path):
    for word in ("One", "Two", "Three", "Four"):
        update.install(stick(tmp_path, word), data)
        said(data)
        update.started(data)
    (data / "kiosk-texts" / ".part-left").mkdir()
    update.install(stick(tmp_path, "Five"), data)
    names = sorted(path.name for path in (data / "kiosk-texts").iterdir())
    assert len([name for name in names if len(name) == 32]) <= 3
    assert not [name for name in names if name.startswith(".")]


def test_a_set_that_was_spoilt_is_installed_anew(data, tmp_path):
    source = stick(tmp_path, "New")
    digest = update.install(source, data)
    (data / "kiosk-texts" / digest / "texts.de.toml").write_text("spoilt")
    assert "kiosk-texts" in said(data)[1][0]
    update.install(source, data)
    assert said(data)[0] == "New"


def test_an_answer_that_the_model_does_not_give_is_refused(data, tmp_path):
    source = stick(tmp_path, "New")
    steps = source / "steps.toml"
    text = steps.read_text(encoding="utf-8")
    # An old crack that cannot run is no crack at all: the reading says nothing.
    changed = text.replace('reading = "fade_half_s"', 'reading = "fade_half_s"\nat_s = 1')
    assert changed != text
    steps.write_text(changed, encoding="utf-8")
    with pytest.raises(InputError, match=r"step warm-touch: .*says nothing"):
        update.install(source, data)
    assert not (data / "kiosk-texts").exists()


def test_a_missing_stick_is_refused(data, tmp_path):
    with pytest.raises(InputError, match=r"steps\.toml: cannot be read"):
        update.install(tmp_path / "none", data)


def test_a_disk_that_refuses_changes_nothing(data, tmp_path, monkeypatch):
    source = stick(tmp_path, "New")

    def full(*_words):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("demo_app.content.kiosk.update.os.fsync", full)
    with pytest.raises(InputError, match="No space left"):
        update.install(source, data)
    assert said(data)[0] == "Touch to begin"
