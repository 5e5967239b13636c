"""Worksheets and keys: from one seed, computed by the model, for eyes, ears and printers."""

import base64
import functools
import json
import os
import re
import shlex
import struct
import subprocess
import sys
import zlib
from html.parser import HTMLParser
from pathlib import Path

import numpy as np
import pytest
from pypdf import PdfReader
from small_lesson import GOOD

from demo_app.cli import main
from demo_app.content.handouts.make import Handout, handout
from demo_app.content.handouts.page import page
from demo_app.content.lessons.drawn import LETTERS
from demo_app.content.lessons.load import load, own_lessons

ROOT = Path(__file__).resolve().parents[3]
PATHS = {path.stem: path for path in own_lessons()}
LONG = bool(os.environ.get("LEHRLIGHT_LONG"))
SEEDS = range(20) if LONG else range(2)
CHEAP = ("ages-07-09-squash-bend-glow", "ages-09-11-hidden-push-and-pull")
QUICK = (*CHEAP, "ages-14-16-slow-ovens-fast-jets", "ages-16-18-reading-stress")
VOID = {"meta", "img", "br", "hr"}


@functools.cache
def made(name: str, seed: int = 3, key: bool = False) -> Handout:
    return handout(load(PATHS[name]), seed, key)


@functools.cache
def html(name: str, key: bool = False) -> str:
    return page(made(name, key=key))


@functools.cache
def solved(command: str) -> dict:
    """What a process of its own prints."""
    words = shlex.split(command)
    assert words[0] == "lehrlight"
    done = subprocess.run(
        [sys.executable, "-m", "demo_app", *words[1:]],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
        timeout=120,
    )
    return json.loads(done.stdout)


@pytest.mark.timeout(3600 if LONG else 300)
@pytest.mark.parametrize("name", PATHS if LONG else CHEAP)
def test_numbers_equal_those_of_a_process_of_its_own(name: str) -> None:
    for seed in SEEDS:
        for item in made(name, seed).items[: None if LONG else 2]:
            told = solved(item.command)
            assert told["readings"] == {item.item.reading: item.value}
            for setting, value in item.settings.items():
                assert told["settings"][setting] == value


@pytest.mark.parametrize("name", PATHS if LONG else QUICK)
def test_every_item_equals_the_command_line(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    for item in made(name).items:
        assert main(shlex.split(item.command)[1:]) == 0
        told = json.loads(capsys.readouterr().out)
        assert told["readings"][item.item.reading] == item.value


@pytest.mark.parametrize("name", CHEAP)
def test_sheet_and_key_of_a_seed_agree_and_other_seeds_differ(name: str) -> None:
    for seed in range(3):
        sheet, key = made(name, seed), made(name, seed, True)
        assert sheet.letters == key.letters
        assert [one.options for one in sheet.items] == [one.options for one in key.items]
    assert len({made(name, seed).letters for seed in range(3)}) > 1
    assert page(made(name, 2)) == page(handout(load(PATHS[name]), 2))


def test_another_setting_makes_another_answer_right(tmp_path: Path) -> None:
    path = tmp_path / "small.md"
    path.write_text(GOOD, encoding="utf-8")
    first = handout(load(path), 4)
    reveal = "settings = { load = 200 }\nanswers"
    assert GOOD.count(reveal) == 1
    path.write_text(GOOD.replace(reveal, "settings = { load = 500 }\nanswers"), encoding="utf-8")
    second = handout(load(path), 4)
    assert (first.predictions[0].letter, second.predictions[0].letter) == ("B", "C")


class Outline(HTMLParser):
    """Heads, pictures, tables and nesting of a page."""

    def __init__(self) -> None:
        super().__init__()
        self.heads: list[int] = []
        self.alts: list[str] = []
        self.scopes: list[str | None] = []
        self.lang = ""
        self.title = ""
        self.open: list[str] = []
        self.styles: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        if tag not in VOID:
            self.open.append(tag)
        if re.fullmatch("h[1-6]", tag):
            self.heads.append(int(tag[1]))
        if tag == "img":
            self.alts.append(given.get("alt") or "")
        if tag == "th":
            self.scopes.append(given.get("scope"))
        if tag == "html":
            self.lang = given.get("lang") or ""
        self.styles += [given["style"] or ""] if "style" in given else []

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        self.title += data if self.open and self.open[-1] == "title" else ""


@pytest.mark.parametrize("key", [False, True])
@pytest.mark.parametrize("name", PATHS)
def test_a_screen_reader_can_walk_through_it(name: str, key: bool) -> None:
    text = html(name, key)
    found = Outline()
    found.feed(text)
    assert found.open == []
    assert found.lang == "en"
    assert ("Answer key: " if key else "Worksheet: ") in found.title
    assert found.heads.count(1) == 1
    assert found.heads[0] == 1
    assert all(b - a <= 1 for a, b in zip(found.heads, found.heads[1:], strict=False))
    assert len(found.alts) == len(made(name).predictions) >= 1
    assert all(len(alt.split()) >= 4 for alt in found.alts)
    assert set(found.scopes) <= {"col", "row"}
    assert "http" not in text
    # Nothing is told by colour: all ink is one, and no element has a style of its own.
    assert set(re.findall(r"color: (#\w+)", text)) == {"#111111"}
    assert found.styles == []


@pytest.mark.parametrize("name", CHEAP)
def test_pictures_are_grey(name: str) -> None:
    for text in (html(name), html(name, True)):
        for data in re.findall(r"data:image/png;base64,([A-Za-z0-9+/=]+)", text):
            pixels = unpacked(base64.b64decode(data))
            assert pixels.shape == (540, 960, 3)
            assert (pixels == pixels[..., :1]).all()
            # Mostly paper: a sheet is not printed black.
            assert pixels.mean() > 100


def unpacked(png: bytes) -> np.ndarray:
    """Pixels of a PNG whose lines have filter 0 (ISO/IEC 15948)."""
    width, height = struct.unpack(">II", png[16:24])
    at, data = 8, b""
    while at < len(png):
        size, kind = struct.unpack(">I4s", png[at : at + 8])
        data += png[at + 8 : at + 8 + size] if kind == b"IDAT" else b""
        at += size + 12
    lines = np.frombuffer(zlib.decompress(data), np.uint8).reshape(height, 1 + 3 * width)
    assert not lines[:, 0].any()
    return lines[:, 1:].reshape(height, width, 3)


def test_the_key_tells_what_the_sheet_does_not() -> None:
    name = CHEAP[1]
    sheet, key = html(name), html(name, True)
    assert "The model again: lehrlight solve" in key
    assert "The model again" not in sheet
    assert "from memory" in key
    assert made(name).lesson.exit.answer not in sheet
    for number, letter in enumerate(made(name).letters, start=1):
        assert f"<h3>Question {number}: {letter}</h3>" in key
        assert f"<h3>Question {number}</h3>" in sheet
    assert all(letter in LETTERS for letter in made(name).letters)


@pytest.mark.parametrize(("paper", "size_mm"), [("A4", (210, 297)), ("Letter", (215.9, 279.4))])
@pytest.mark.parametrize("key", [False, True])
def test_it_prints_on_both_papers_and_can_be_searched(
    tmp_path: Path, paper: str, size_mm: tuple[float, float], key: bool
) -> None:
    out = tmp_path / "sheet.pdf"
    words = ["handout", CHEAP[0], "--out", str(out), "--paper", paper, "--seed", "3"]
    assert main([*words, *(["--key"] if key else [])]) == 0
    pages = PdfReader(out).pages
    for one in pages:
        box = [float(side) / 72 * 25.4 for side in (one.mediabox.width, one.mediabox.height)]
        assert box == pytest.approx(size_mm, abs=0.5)
    text = " ".join(" ".join(one.extract_text() for one in pages).split())
    for item in made(CHEAP[0]).items:
        assert item.ask in text
        assert all(option.words in text for option in item.options)
    assert ("Right letters" in text) == key
    fonts = {
        str(font.get_object()["/BaseFont"])
        for one in pages
        for font in one["/Resources"]["/Font"].values()
    }
    assert fonts
    assert all("DejaVu" in font for font in fonts)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["nothing", "--out", "a.pdf"], "is no lesson"),
        ([CHEAP[0], "--out", "a.txt"], "is no handout"),
        ([CHEAP[0], "--out", "no/such/a.pdf"], "folder is missing"),
        ([CHEAP[0], "--out", "a.pdf", "--seed", "x"], "--seed"),
        (["missing.md", "--out", "a.pdf"], "cannot be read"),
    ],
)
def test_bad_words_are_one_line(
    words: list[str],
    told: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["handout", *words]) == 2
    error = capsys.readouterr().err
    assert told in error
    assert error.count("\n") == 1
    assert list(tmp_path.iterdir()) == []


def test_a_read_only_home_is_enough(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    home = tmp_path / "home"
    home.mkdir()
    home.chmod(0o500)
    monkeypatch.setenv("HOME", str(home))
    monkeypatch.setenv("LEHRLIGHT_HOME", str(home / "not-there"))
    out = tmp_path / "sheet.html"
    assert main(["handout", CHEAP[0], "--out", str(out)]) == 0
    assert out.read_text(encoding="utf-8").startswith("<!DOCTYPE html>")
    assert list(home.iterdir()) == []
