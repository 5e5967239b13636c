"""The command `bench`, without a screen."""

import json

import pytest

from demo_app.base.errors import InputError
from demo_app.content.bench.answer import quiet
from demo_app.content.bench.command import bench, listed


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
