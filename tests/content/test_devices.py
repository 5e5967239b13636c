"""Devices: a fitted value, kept in a file that people can read, and taken by every command."""

import dataclasses
import json
from datetime import date

import pytest

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.fitting.fit import fit
from demo_app.content.fitting.records import Observed, Unknown
from demo_app.content.site.devices import (
    device,
    device_ids,
    device_of,
    id_of,
    load_device,
    values_of,
)
from demo_app.content.site.saving import as_toml, save_device
from demo_app.scenes.catalogue import scene

NAME = "Jets of the big frame"


def found(*values):
    observed = [
        Observed("surface_MPa", values[0], 2.0, 1.5, "gauge"),
        Observed("surface_MPa", values[1], 2.0, 1.5, "gauge"),
        Observed("centre_MPa", values[2], 3.0, at_s=12.0),
    ]
    return fit(lambda x: [-x / 3, -x / 3, x / 6], Unknown("jet_W_m2K", 15.0, 1500.0), observed)


@pytest.fixture
def jets():
    return device_of(found(-99.0, -101.0, 51.0), NAME, "toughen", date(2026, 3, 4), "0.1.0")


@pytest.fixture
def home(tmp_path, monkeypatch):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path / "home"))
    return tmp_path / "home"


def test_a_device_comes_back_as_it_was(jets, tmp_path):
    path = save_device(jets, tmp_path)
    assert path.name == "jets-of-the-big-frame.toml"
    assert load_device(path) == jets
    assert device_ids(tmp_path) == (jets.id,)
    assert device(jets.id, tmp_path) == jets
    odd = dataclasses.replace(jets, name='Say "hot"\n= [é] \\')
    save_device(odd, tmp_path, over=True)
    assert device(jets.id, tmp_path) == odd


def test_a_device_is_not_overwritten_unasked(jets, tmp_path):
    save_device(jets, tmp_path)
    with pytest.raises(InputError, match="there already"):
        save_device(dataclasses.replace(jets, value=301.0), tmp_path)
    assert device(jets.id, tmp_path).value == jets.value


def test_readings_that_settle_nothing_make_no_device():
    bad = found(-60.0, -140.0, 51.0)
    assert bad.verdict == "inconsistent"
    with pytest.raises(InputError, match="do not settle jet_W_m2K"):
        device_of(bad, NAME, "toughen", date(2026, 3, 4), "0.1.0")


def test_every_scene_with_the_setting_takes_it(jets):
    toughen = scene("toughen")
    assert values_of(jets, toughen, {"thickness_mm": "4"}) == {
        "jet_W_m2K": jets.value,
        "thickness_mm": "4",
    }
    assert values_of(jets, toughen, {"jet_W_m2K": "99"}) == {"jet_W_m2K": "99"}
    with pytest.raises(InputError, match="which scene ring does not have; use it in toughen"):
        values_of(jets, scene("ring"), {})
    with pytest.raises(InputError, match="out of range"):
        values_of(dataclasses.replace(jets, value=9e4), toughen, {})


def test_commands_take_it(jets, home, capsys):
    save_device(jets)
    assert (home / "devices" / f"{jets.id}.toml").is_file()
    words = ["solve", "toughen", "--device", jets.id, "--at", "0", "--json"]
    assert main(words) == 0
    assert json.loads(capsys.readouterr().out)["settings"]["jet_W_m2K"] == jets.value
    assert main([*words, "--set", "jet_W_m2K=50"]) == 0
    assert json.loads(capsys.readouterr().out)["settings"]["jet_W_m2K"] == 50


def test_an_unknown_device_is_refused(jets, home, capsys):
    assert main(["solve", "toughen", "--device", "jets"]) == 2
    assert "none is saved yet" in capsys.readouterr().err
    assert not home.exists()
    save_device(jets)
    assert main(["solve", "toughen", "--device", "../x"]) == 2
    assert f"write one of {jets.id}" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("old", "new", "say"),
    [
        ("fitted_on = 2026-03-04", 'fitted_on = "2026-03-04"', "line 3.*is no date"),
        ("fitted_on = 2026-03-04", "fitted_on = 2026-03-04T10:00:00", "is no date"),
        ('name = "', 'nome = "', "line 2.*unknown key"),
        ("low = ", "low = 1", "above high"),
        ("value = 3", "value = 93", "out of range"),
        ("sd = 2.0", "sd = 0", "sd.*out of range"),
        ("sd = 2.0", "", "missing"),
        ("setting = ", "setting = 3 #", "not a text"),
        ("[[reading]]", "[reading]", "reading"),
        ('scene = "', "scene = ", "is not TOML"),
    ],
)
def test_mistakes_in_a_file_are_named(jets, tmp_path, old, new, say):
    path = tmp_path / "x.toml"
    text = as_toml(jets)
    assert old in text
    path.write_text(text.replace(old, new), encoding="utf-8")
    with pytest.raises(InputError, match=say):
        load_device(path)


@pytest.mark.parametrize("name", ["", "  ", "é", "x" * 61, "..."])
def test_names_that_make_no_file_are_refused(name):
    with pytest.raises(InputError, match="makes no file name"):
        id_of(name)
