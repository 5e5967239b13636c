"""The command `bench`, without a screen."""

import json

import pytest

from demo_app.base.errors import InputError
from demo_app.cli import main
from demo_app.content.bench.answer import quiet
from demo_app.content.bench.command import bench, listed
from demo_app.content.site.devices import device, values_of
from demo_app.scenes import catalogue


def unprinted(made, path):
    raise AssertionError("nothing was to be printed")


def asked(id, *sets, out=None, printing=unprinted, **words):
    return bench(id, list(sets), out, quiet, printing, **words)


def test_all_questions_are_listed_with_their_inputs():
    text = listed()
    for word in ("flame:", "oven:", "toughness:", "bubbles:", "colour:", "matching:"):
        assert word in text
    assert "  wall_mm = 3 mm" in text


def test_an_answer_in_words_and_for_programs():
    assert "Retardation" in asked("colour", "seen_nm=620")
    record = json.loads(asked("colour", "seen_nm=620", json=True))
    assert record["question"]["seen_nm"] == 620
    assert record["figures"][0]["unit"] == "nm"


def test_a_page_of_html_is_one_file(tmp_path):
    out = tmp_path / "colour.html"
    asked("colour", out=str(out))
    text = out.read_text("utf-8")
    assert "data:image/png;base64," in text
    assert "src='strip" not in text


def test_a_pdf_is_handed_to_whoever_prints(tmp_path):
    printed = []
    out = tmp_path / "colour.pdf"
    asked("colour", out=str(out), printing=lambda made, path: printed.append((made.title, path)))
    assert printed == [("Prep bench: Reading a colour", out)]


@pytest.mark.parametrize(
    ("id", "sets", "out", "said"),
    [
        ("weather", [], None, "write one of flame"),
        ("oven", ["thickness_mm"], None, "NAME=VALUE"),
        ("oven", ["thickness_mm=10", "thickness_mm=12"], None, "given twice"),
        ("oven", [], "oven.txt", "FILE.pdf or FILE.html"),
        ("oven", [], "missing/oven.pdf", "its folder is missing"),
    ],
)
def test_what_the_command_cannot_use(id, sets, out, said, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    with pytest.raises(InputError, match=said.replace(".", r"\.")):
        asked(id, *sets, out=out)
    assert list(tmp_path.iterdir()) == []


def test_what_matching_found_is_kept_and_used_by_the_scenes(tmp_path, monkeypatch):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path))
    asked("matching", keep="Jets of the big frame")
    found = device("jets-of-the-big-frame")
    assert found.setting == "jet_W_m2K"
    assert found.low < found.value < found.high
    assert [one.reading for one in found.readings] == ["surface_MPa", "centre_MPa", "edge_nm"]
    scene = catalogue.scene(found.scene)
    assert values_of(found, scene, {})["jet_W_m2K"] == found.value
    with pytest.raises(InputError, match="there already"):
        asked("matching", keep="Jets of the big frame")


@pytest.mark.parametrize(
    ("id", "sets", "keep"),
    [("oven", [], "Oven"), ("matching", [], "!"), ("matching", ["third_reading=1500"], "Jets")],
)
def test_what_cannot_be_kept(id, sets, keep, tmp_path, monkeypatch):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path))
    with pytest.raises(InputError):
        asked(id, *sets, keep=keep)
    assert not list(tmp_path.rglob("*.toml"))


def test_the_command_line_answers_and_refuses(capsys, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    assert main(["bench", "--list"]) == 0
    assert "flame:" in capsys.readouterr().out
    assert main(["bench", "colour", "--set", "seen_nm=700", "--first", "--json"]) == 0
    out, err = capsys.readouterr()
    assert json.loads(out)["page"] == "colour"
    assert err == ""
    assert main(["bench", "colour", "--set", "lamp=sodium", "--out", "colour.html"]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert err.count("\n") == 1
    assert "no colours to read" in err
    assert list(tmp_path.iterdir()) == []
