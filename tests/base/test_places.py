"""Where a person's own data lives."""

import pytest
from platformdirs import user_data_path

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder, data_place


def test_the_systems_place_unless_another_is_named(monkeypatch):
    monkeypatch.delenv("LEHRLIGHT_HOME", raising=False)
    assert data_place() == user_data_path("lehrlight", appauthor=False)
    monkeypatch.setenv("LEHRLIGHT_HOME", "  ")
    assert data_place() == user_data_path("lehrlight", appauthor=False)


def test_it_is_made_when_it_is_wanted(monkeypatch, tmp_path):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "a" / "b"))
    assert data_place() == tmp_path / "a" / "b"
    assert not (tmp_path / "a").exists()
    assert data_folder().is_dir()
    assert data_folder() == tmp_path / "a" / "b"


def test_a_relative_name_becomes_whole(monkeypatch, tmp_path):
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("LEHRLIGHT_HOME", "here")
    assert data_folder() == tmp_path / "here"


def test_a_home_in_which_nothing_can_be_made(monkeypatch, tmp_path):
    (tmp_path / "file").write_text("")
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "file" / "home"))
    with pytest.raises(InputError, match=r"cannot be made .*let LEHRLIGHT_HOME name"):
        data_folder()
