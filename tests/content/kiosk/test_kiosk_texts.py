"""The kiosk's own texts: whole in three languages, short enough, and right by the model."""

import os
import re
import string
import tomllib

import pytest

from demo_app.content.checks import checked
from demo_app.content.cues.answers import judge
from demo_app.content.cues.truth import truth
from demo_app.content.kiosk.outline import ends
from demo_app.content.kiosk.texts import FILES, load, own_folder
from demo_app.content.kiosk.word_keys import KEYS, LANGUAGES, ON_BUTTONS, STEP_IDS
from demo_app.content.readings import solve
from demo_app.scenes.catalogue import scene
from demo_app.scenes.settings import make, settings_of

TEXTS = load(own_folder())
STEPS = [pytest.param(language, step, id=f"{language} {step.id}")
         for language, spoken in TEXTS.spoken.items() for step in spoken.steps]  # fmt: skip


def test_six_steps_in_three_languages():
    assert TEXTS.languages == ("en", "de", "es")
    assert set(TEXTS.ids) == set(STEP_IDS)
    assert len(TEXTS.ids) == 6
    for spoken in TEXTS.spoken.values():
        assert tuple(step.id for step in spoken.steps) == TEXTS.ids
        assert set(spoken.words) == set(KEYS)
    assert [spoken.name for spoken in TEXTS.spoken.values()] == ["English", "Deutsch", "Español"]


def strings(value):
    if isinstance(value, str):
        yield value
    for inner in value.values() if isinstance(value, dict) else ():
        yield from strings(inner)
    for inner in value if isinstance(value, list) else ():
        yield from strings(inner)


@pytest.mark.parametrize("name", FILES[1:])
def test_sentences_and_labels_are_short(name):
    """Smithsonian exhibition guidelines: sentences of 25 words, labels of 75."""
    file = tomllib.loads((own_folder() / name).read_text(encoding="utf-8"))
    for text in strings(file):
        assert len(text.split()) <= 75
        for sentence in re.split(r"[.!?]\s", text):
            assert len(sentence.split()) <= 25, sentence


@pytest.mark.parametrize("language", LANGUAGES[1:])
def test_no_sentence_is_left_in_english(language):
    """What is longer than two words is said otherwise in another language."""
    first, other = TEXTS.spoken["en"], TEXTS.spoken[language]
    for key, text in first.words.items():
        if len(text.split()) > 2 and not re.fullmatch(r"[\W]*({\w+}[\W]*)+", text):
            assert other.words[key] != text, key
    for mine, yours in zip(first.steps, other.steps, strict=True):
        for field in ("title", "invitation", "do", "touch", "see", "why", "description"):
            assert getattr(mine, field) != getattr(yours, field)
        for one, two in zip(mine.question.answers, yours.question.answers, strict=True):
            assert one.text != two.text
            assert (one.low, one.high, one.equals) == (two.low, two.high, two.equals)


@pytest.mark.parametrize("spoken", TEXTS.spoken.values(), ids=TEXTS.languages)
def test_places_for_values_are_those_that_are_filled(spoken):
    for key, names in KEYS.items():
        fields = [field for _, field, _, _ in string.Formatter().parse(spoken.words[key]) if field]
        assert sorted(fields) == sorted(names), key
        assert spoken.word(key, **dict.fromkeys(names, 3))
    for key in ON_BUTTONS:
        assert len(spoken.words[key]) <= 32


@pytest.mark.parametrize(("language", "step"), STEPS)
def test_a_step_is_complete_and_within_bounds(language, step):
    assert step.title
    assert len(step.invitation) <= 55
    assert 2 <= len(step.question.answers) <= 4
    assert all(answer.text for answer in step.question.answers)
    assert 0 < step.seconds <= 120
    assert len(step.controls) <= 3
    # A sentence of why: one.
    assert len(re.findall(r"[.!?](\s|$)", step.why)) == 1
    known = {one.name: one for one in settings_of(scene(step.scene).settings)}
    for control in step.controls:
        assert control.label
        setting = known[control.setting]
        if control.choices:
            assert set(control.choices) <= set(setting.choices)
            assert set(control.words) == set(control.choices)
            assert all(control.words.values())
        elif control.high > control.low:
            assert setting.low <= control.low < control.high <= setting.high
        for value in ends(control):
            make(scene(step.scene).settings, {**step.settings, control.setting: value})


@pytest.mark.parametrize("name", STEP_IDS)
def test_the_model_answers_each_question(name):
    """The physics of each answer, in words: fades in a minute; the drop cracks; the oven leaves
    next to nothing; dice; a scratch inside shatters; a moulded dish is full of colours."""
    step = TEXTS.spoken["en"].step(name)
    right = {
        "warm-touch": "It fades within minutes",
        "one-drop": "It cracks",
        "slow-or-sudden": "Hardly any",
        "toughened-or-plain": "Hundreds of small dice",
        "bubble": "The flask shatters",
        "dish": "Many colours",
    }
    found = truth(scene(step.scene), step.settings, step.question)
    assert step.question.answers[found.index].text == right[name]


CONTROLS = [pytest.param(step, control.setting, value, id=f"{step.id} {control.setting} {value}")
            for step in TEXTS.spoken["en"].steps for control in step.controls
            for value in ends(control)]  # fmt: skip


@pytest.mark.slow
@pytest.mark.skipif(not os.environ.get("LEHRLIGHT_LONG"), reason="a minute; LEHRLIGHT_LONG=1")
@pytest.mark.parametrize(("step", "setting", "value"), CONTROLS)
def test_whatever_a_visitor_sets_has_an_answer(step, setting, value):
    values = {**step.settings, **step.question.settings, setting: value}
    made = scene(step.scene)
    found = solve(made, make(made.settings, values), step.question.at_s)
    assert 0 <= judge(step.question, found.readings[step.question.reading]) < 4


def test_the_command_line_checks_them():
    assert checked(own_folder() / "texts.de.toml").mistakes == ()
