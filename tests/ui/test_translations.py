"""The German and Spanish files: complete, fitting, up to date."""

import string

import pytest

from demo_app import translating
from demo_app.translating import FINISHED, VANISHED
from demo_app.ui import words
from demo_app.ui.language_ids import UI
from demo_app.ui.language_sources import sources
from demo_app.ui.languages import FOLDER, STEM, translation

CODES = ("de", "es")
NOT_YET: tuple[str, ...] = ()
"""Beginnings of names in `demo_app.ui.words` that are still being written and not translated yet.
Whoever adds words there runs ``python -m demo_app.translating`` and finishes them, or names them
here until somebody does. What an audience reads is never named here."""
AUDIENCE = ("audience.", "emergency.", "welcome.", "outcome", "mark.", "section.", "gain", "calm")

LONGEST = 1.4
"""Length that a translation may have against English, as windows leave room for; from 60 signs on,
as single words differ more."""


def waits(source):
    """Whether nobody has to have translated a text yet."""
    return source.context == UI and bool(NOT_YET) and source.id.startswith(NOT_YET)


def folder():
    return translating.assets() / FOLDER


def entries(code):
    return translating.read(folder() / f"{STEM}{code}.ts")


def places(text):
    """Places for values, each with how it is written."""
    return {(name, spec) for _, name, spec, _ in string.Formatter().parse(text) if name is not None}


@pytest.mark.parametrize("code", CODES)
def test_every_text_is_translated(code):
    finished = {one.source for one in entries(code) if one.state == FINISHED and one.said}
    missing = [one for one in sources() if one not in finished and not waits(one)]
    assert not missing, "run python -m demo_app.translating and finish these"


def test_what_is_not_translated_yet_is_only_that():
    finished = {one.source for one in entries("de") if one.state == FINISHED and one.said}
    for name in NOT_YET:
        named = [one for one in sources() if one.context == UI and one.id.startswith(name)]
        assert set(named) - finished, f"{name} is translated: it need not be named"
        assert not any(one.id.startswith(AUDIENCE) for one in named)
    assert all(any(name.startswith(one) for name in words.ENGLISH) for one in AUDIENCE)


@pytest.mark.parametrize("code", CODES)
def test_no_entry_is_unused_and_the_file_is_as_the_tool_writes_it(code):
    held = entries(code)
    kept = tuple(one for one in held if not waits(one.source))
    wanted = [one for one in sources() if not waits(one)]
    assert translating.merge(wanted, kept) == kept, "run python -m demo_app.translating --drop"
    assert not [one for one in kept if one.state == VANISHED]
    text = (folder() / f"{STEM}{code}.ts").read_text(encoding="utf-8")
    assert translating.written(code, held) == text


@pytest.mark.parametrize("code", CODES)
def test_the_compiled_file_holds_what_the_text_says(code, tmp_path):
    anew = translation(translating.compiled(folder() / f"{STEM}{code}.ts", tmp_path / "anew.qm"))
    kept = translation(folder() / f"{STEM}{code}.qm")
    for one in entries(code):
        key = (one.source.context, one.source.english, one.source.id)
        said = one.said if one.state == FINISHED else ""
        assert anew.translate(*key) == kept.translate(*key) == said


@pytest.mark.parametrize("code", CODES)
def test_places_for_values_are_the_same(code):
    for one in entries(code):
        assert not one.said or places(one.said) == places(one.source.english)


@pytest.mark.parametrize("code", CODES)
def test_translations_leave_nothing_open(code):
    for one in entries(code):
        if not one.said:
            continue
        assert one.said == one.said.strip() or one.source.english != one.source.english.strip()
        assert (one.said[-1:] == ".") == (one.source.english[-1:] == "."), one
        assert "ß" not in one.said or code == "de"
        english, said = len(one.source.english), len(one.said)
        assert english < 60 or said <= LONGEST * english, one
