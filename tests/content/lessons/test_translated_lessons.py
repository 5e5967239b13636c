"""Lessons in German and Spanish: whole, in order, and the same lesson as the English one."""

import dataclasses
import re
import string

import pytest

from demo_app.base.errors import InputError
from demo_app.content.handouts.make import handout
from demo_app.content.handouts.page import page
from demo_app.content.handouts.words import ENGLISH as ENGLISH_WORDS
from demo_app.content.handouts.words import TEXTS, texts
from demo_app.content.lessons.load import examine, load, own_lessons, translated_lessons
from demo_app.content.lessons.named import lesson_called

PATHS = {f"{path.parent.name}/{path.stem}": path for path in translated_lessons()}
ENGLISH = {path.stem: path for path in own_lessons()}
WANTED = ("ages-09-11-hidden-push-and-pull", "ages-11-14-why-glass-cracks")


def test_both_lessons_are_there_in_both_languages():
    assert set(PATHS) == {f"{code}/{stem}" for code in ("de", "es") for stem in WANTED}
    assert all(path.stem in ENGLISH for path in PATHS.values())


@pytest.mark.parametrize("name", PATHS)
def test_the_model_answers_all_that_it_asks(name):
    found = examine(PATHS[name])
    assert found.mistakes == ()
    assert found.lesson.language == name.split("/")[0]


def skeleton(value):
    """What is the same in every language: numbers, names of settings and readings, structure."""
    if dataclasses.is_dataclass(value):
        return {
            one.name: skeleton(getattr(value, one.name))
            for one in dataclasses.fields(value)
            if one.name not in ("path", "language")
        }
    if isinstance(value, (tuple, list)):
        return [skeleton(one) for one in value]
    if isinstance(value, str):
        return "words" if " " in value or not value.isascii() else bool(value)
    if hasattr(value, "items"):
        return {str(key): skeleton(one) for key, one in value.items()}
    return value


def counted(lesson):
    return [
        (step.stage, step.minutes, step.scene, dict(step.settings), step.bounds, step.beliefs)
        for step in lesson.steps
    ]


@pytest.mark.parametrize("name", PATHS)
def test_it_is_the_same_lesson_as_in_english(name):
    said, english = load(PATHS[name]), load(ENGLISH[PATHS[name].stem])
    assert counted(said) == counted(english)
    assert said.ages == english.ages
    assert said.minutes == english.minutes
    assert len(said.kit) == len(english.kit)
    for one, other in zip(said.misconceptions, english.misconceptions, strict=True):
        assert (one.id, one.source, one.read) == (other.id, other.source, other.read)
        assert one.text != other.text
    for one, other in zip(said.items, english.items, strict=True):
        assert skeleton(dataclasses.replace(one, ask="", because="")) == skeleton(
            dataclasses.replace(other, ask="", because="")
        )
        assert one.ask != other.ask
        assert one.because != other.because


@pytest.mark.parametrize("name", PATHS)
def test_no_line_of_prose_was_forgotten(name):
    text = PATHS[name].read_text("utf-8")
    english = ENGLISH[PATHS[name].stem].read_text("utf-8")
    same = {
        line
        for line in text.splitlines()
        if line in english.splitlines()
        and line
        and not line.startswith(("#", "+", "`", "[", "]", "}", "source", "wording", "code"))
        and " " in line.split("=")[0].strip()
    }
    assert {line for line in same if not line.lstrip().startswith("{")} == set()


def test_a_lesson_is_called_by_its_language():
    for name, path in PATHS.items():
        assert lesson_called(name) == path
    with pytest.raises(InputError, match="no lesson"):
        lesson_called("fr/ages-09-11-hidden-push-and-pull")


def test_where_there_is_a_translation_it_takes_the_place_of_the_english_one():
    found = own_lessons("de")
    assert [path.name for path in found] == [path.name for path in own_lessons()]
    assert {path.parent.name for path in found if path.stem in WANTED} == {"de"}
    assert len({path.parent for path in found}) == 2
    assert own_lessons("xx") == own_lessons()


@pytest.mark.parametrize("code", TEXTS)
def test_a_handouts_words_are_whole_and_have_the_same_places(code):
    assert list(TEXTS[code]) == list(ENGLISH_WORDS)
    for name, said in TEXTS[code].items():
        places = {part[1] for part in string.Formatter().parse(said) if part[1]}
        assert places == {
            part[1] for part in string.Formatter().parse(ENGLISH_WORDS[name]) if part[1]
        }
        assert said
    assert texts("fr") is ENGLISH_WORDS


@pytest.mark.parametrize("name", PATHS)
@pytest.mark.parametrize("key", [False, True], ids=["sheet", "key"])
def test_a_handout_speaks_the_lessons_language(name, key):
    code = name.split("/")[0]
    text = page(handout(load(PATHS[name]), 1, key=key))
    assert f'<html lang="{code}">' in text
    heads = set(re.findall(r"<h[123]>([^<:]*)", text)) | set(re.findall(r"<th[^>]*>([^<]*)", text))
    same = {said for said in heads if said in ENGLISH_WORDS.values()}
    assert same <= set(TEXTS[code].values())
