"""German and Spanish at work: over real states, beside each other, and never an error."""

import functools
import re
import string

import pytest
from PySide6.QtCore import QCoreApplication, QLocale

from demo_app import translating
from demo_app.base.errors import InputError
from demo_app.content import describe
from demo_app.content.describe_words import ENGLISH as DESCRIBED
from demo_app.optics.instrument import TINT_PLATE_NM, Instrument
from demo_app.scenes.catalogue import scene, scenes
from demo_app.scenes.run import states
from demo_app.scenes.scene import Message
from demo_app.scenes.settings import make, settings_of
from demo_app.translating import FINISHED, UNFINISHED, Entry
from demo_app.ui import languages, words
from demo_app.ui.language_ids import UI
from demo_app.ui.language_sources import READ, Source
from demo_app.ui.languages import Language, language, translation
from demo_app.ui.template import Template

CODES = ("de", "es")
LONGEST = 1.4
"""Length that a translation may have against English, as windows leave room for."""

# What no default run comes to by itself.
MORE = (
    ("light-table", {"tint_plate": True}),
    ("light-table", {"lamp": "sodium"}),
    ("light-table", {"built": "one-filter"}),
    ("light-table", {"turn_deg": 0.0}),
    ("light-table", {"built": "lamp"}),
    ("pour", {"tumbler_C": 80.0}),
    ("push-pull", {"kind": "bar-pulled"}),
    ("push-pull", {"kind": "bar-squeezed"}),
    ("push-pull", {"kind": "disk-squeezed"}),
    ("push-pull", {"kind": "locked-in"}),
    ("ring", {"drop": False}),
    ("touch", {"crack_mm": 20.0}),
    ("toughen", {"then": "hit"}),
    ("toughen", {"then": "cut"}),
)
INSTANTS = (0.0, 0.03, 0.2, 0.45, 0.7, 1.0)


@functools.cache
def told():
    """Scene, settings, state and message of each story at some instants."""
    found = []
    for name, changes in (*((one, {}) for one in scenes()), *MORE):
        shown = scene(name)
        settings = make(shown.settings, changes)
        due = [share * shown.seconds(settings) for share in INSTANTS]
        for state in states(shown, settings):
            if state.time_s < due[0] - 1e-9:
                continue
            found.append((shown, settings, state, shown.say(settings, state)))
            due = [at for at in due if at > state.time_s + 1e-9]
            if not due:
                break
    return tuple(found)


def places(text):
    """Places for values, each with how it is written."""
    return {(name, spec) for _, name, spec, _ in string.Formatter().parse(text) if name is not None}


def made_from(found, tmp_path, code="de"):
    """A language of a few entries."""
    file = tmp_path / "some.ts"
    file.write_text(translating.written(code, found), encoding="utf-8")
    compiled = translating.compiled(file, tmp_path / "some.qm")
    return Language(code, translation(compiled), QLocale(code))


@pytest.mark.parametrize("code", CODES)
def test_sentences_of_real_states(code):
    locale = QLocale(code)
    locale.setNumberOptions(QLocale.NumberOption.OmitGroupSeparator)
    spoken_of = set()
    for shown, _settings, _state, message in told():
        said = language(code).sentence(shown, message)
        assert "{" not in said
        assert said != message.words(shown.texts)
        for name, spec in places(shown.texts[message.id]):
            value = message.values[name]
            decimals = re.fullmatch(r"\.(\d)f", spec)
            if decimals:
                number = locale.toString(float(value), "f", int(decimals[1]))
                assert number.replace("-", "−") in said
            elif isinstance(value, str) and not value.isdigit():
                for word in value.split(", "):
                    spoken_of.add(word)
                    assert not re.search(rf"\b{re.escape(word)}\b", said), (word, said)
    assert spoken_of >= {"toughened edge-on", "squeezed", "violet"}, "words of these scenes are met"
    assert len({(shown.id, message.id) for shown, _, _, message in told()}) > 40


@pytest.mark.parametrize("code", CODES)
@pytest.mark.parametrize("name", [*scenes()])
def test_every_text_of_a_scene_can_be_filled_in(code, name):
    shown = scene(name)
    texts = language(code).texts(shown)
    assert set(texts) == set(shown.texts)
    for text, english in shown.texts.items():
        values = {place: -1234.5 if spec else "plain" for place, spec in places(english)}
        said = texts[text].format(**values)
        assert "{" not in said
        assert "." not in re.sub(r"\.(?= |$)", "", said).replace("c.", ""), said


@pytest.mark.parametrize("code", CODES)
def test_descriptions_of_real_states(code):
    spoken_in = language(code)
    tint = Instrument(tint_plate_nm=TINT_PLATE_NM)
    for shown, settings, state, _message in told()[::3]:
        view = shown.view(settings, state)
        for light in (shown.light(settings, Instrument()), tint):
            said = spoken_in.spoken(shown, settings, view, light)
            english = describe.spoken(shown, settings, view, light)
            assert not re.search(r"[@{}]", said)
            assert said.count(". ") == english.count(". ")
            assert len(said) <= LONGEST * len(english), (said, english)
            assert not said[0].islower()
            # Not one of the words that English puts into its sentences is left.
            left = {DESCRIBED[one] for one in DESCRIBED if re.match(r"spot|place|way", one)}
            assert not [one for one in left if one in said]
            assert language("en").spoken(shown, settings, view, light) == english


def test_english_says_what_it_always_said():
    english = language("en")
    for shown, _settings, _state, message in told():
        assert english.sentence(shown, message) == message.words(shown.texts).replace("-0", "−0")
    for name, text in words.ENGLISH.items():
        values = {place: "x" for place, _ in places(text)}
        assert english.text(name, **values) == words.text(name, **values)


def test_german_and_spanish_write_a_decimal_comma():
    ring = scene("ring")
    message = Message("cracked_drop", {"after": 0.25, "offset": 1.5})
    assert language("de").sentence(ring, message) == (
        "Abgesprengt 0,25 s nach dem Tropfen, 1,5 mm neben der Ringmitte. "
        "Die Teile haben fast alle Spannung verloren."
    )
    assert language("es").sentence(ring, message).startswith("Cortada 0,25 s después de la gota")
    assert language("de").number(-1234.56, 6) == "−1\u202f234,56"
    assert language("es").quantity(3.25, "mm") == "3,25\u00a0mm"
    assert language("en").quantity(3.25, "mm") == words.quantity(3.25, "mm")


def test_words_that_a_scene_puts_in_are_translated_too():
    cooling = Message("cooling", {"does": "squeezed", "skin": 12.4})
    said = language("de").sentence(scene("push-pull"), cooling)
    assert "unter 12 MPa Druck" in said
    values = {"dark": "plain, laminated", "limit": 280.0}
    said = language("es").sentence(scene("light-table"), Message("all_dark", values))
    assert said.startswith("Oscuro: corriente, laminado.")
    tint = Message("tint", {"plate": 565.0, "colour": "pale violet"})
    assert "blassviolett" in language("de").sentence(scene("light-table"), tint)


@pytest.mark.parametrize("code", CODES)
def test_names_of_settings_readings_and_buttons(code):
    used = language(code)
    for shown in scenes().values():
        assert used.title(shown) != shown.title
        for setting in settings_of(shown.settings):
            assert used.label(shown, setting)
            assert used.help(shown, setting) != setting.help
            for choice in setting.choices:
                assert used.choice(shown, setting, choice)
            assert used.value(shown, setting, setting.default)
        for reading in (*shown.readings, *shown.traces):
            assert used.label(shown, reading)
            assert bool(used.help(shown, reading)) == bool(reading.help)
        for action in shown.actions:
            assert used.label(shown, action) != action.label


@pytest.mark.parametrize("code", CODES)
def test_readings_of_real_states(code):
    used = language(code)
    met = set()
    for shown, settings, state, _message in told():
        read = shown.read(settings, state)
        for reading in shown.readings:
            value = read[reading.name]
            said, english = used.reading(shown, reading, value), words.reading(reading, value)
            assert language("en").reading(shown, reading, value) == english
            if isinstance(value, str):
                met.add((shown.id, reading.name))
                for word in value.split(", "):
                    assert word in READ[shown.id, reading.name]
                    assert word not in said.split(", ")
            elif isinstance(value, float) and "under" not in english and "over" not in english:
                assert said == english.replace(".", ",")
    assert met == set(READ), "all of them are met, and no other reading is a word"


def test_odds_are_told_as_in_english():
    spec = next(one for one in scene("pour").readings if "_probability" in one.name)
    german, shown = language("de"), scene("pour")
    assert german.reading(shown, spec, 0.0) == "unter 0,1 %"
    assert german.reading(shown, spec, 1.0) == "über 99,9 %"
    assert german.reading(shown, spec, 0.367) == "36,7 %"
    assert german.reading(shown, spec, None) == "–"


def test_values_of_settings():
    ring, table = scene("ring"), scene("light-table")
    by_name = {one.name: one for one in (*settings_of(ring.settings), *settings_of(table.settings))}
    german = language("de")
    assert german.value(ring, by_name["wall_mm"], 2.5) == "2,5\u00a0mm"
    assert german.value(ring, by_name["drop"], True) == "ja"
    said = german.value(table, by_name["samples"], "plain,dish")
    assert said == "Normal, Schale"


def test_languages_stand_side_by_side_and_nothing_is_installed(qapp):
    names = [one.name for one in languages.languages()]
    assert names == ["English", "Deutsch", "Español"]
    assert [language(code).text("pause") for code in ("en", *CODES)] == ["Pause", "Pause", "Pausa"]
    title = words.ENGLISH["audience.title"]
    assert QCoreApplication.translate(UI, title, "audience.title") == title
    assert language("de") is language("de")


def test_qt_itself_can_translate_with_the_same_file(qapp):
    """What a window in another language needs: the same keys through Qt's own call."""
    german = language("de")
    qapp.installTranslator(german.translator)
    try:
        said = QCoreApplication.translate(UI, words.ENGLISH["no"], "no")
    finally:
        qapp.removeTranslator(german.translator)
    assert said == german.text("no") == "nein"


def test_an_unknown_language_is_refused_with_a_remedy():
    with pytest.raises(InputError, match="no language 'xx'; write one of en, de, es"):
        language("xx")


def test_a_file_that_is_no_translation_is_refused(tmp_path):
    bad = tmp_path / "lehrlight_xx.qm"
    bad.write_text("no")
    with pytest.raises(InputError, match=r"lehrlight_xx\.qm: is no translation"):
        translation(bad)


@pytest.mark.parametrize("said", ["Kaputt {nothing:.1f}", "Kaputt {swell", "{swell:.1q}", "{0}"])
def test_a_translation_that_does_not_fit_is_said_in_english(tmp_path, said):
    ring = scene("ring")
    english = ring.texts["heating"]
    broken = made_from(
        [Entry(Source("scene.ring", "text.heating", english), said, FINISHED)], tmp_path
    )
    message = Message("heating", {"swell": 4.0, "squeeze": 12.0})
    assert broken.sentence(ring, message) == message.words(ring.texts)


def test_what_is_missing_unfinished_or_of_other_words_is_said_in_english(tmp_path):
    ring = scene("ring")
    poor = made_from(
        [
            Entry(Source("scene.ring", "title", ring.title), "Halbfertig", UNFINISHED),
            Entry(Source("scene.ring", "text.cold", "Other words."), "Andere Worte.", FINISHED),
        ],
        tmp_path,
    )
    assert poor.title(ring) == ring.title
    assert poor.sentence(ring, Message("cold")) == ring.texts["cold"]
    assert poor.text("play") == "Play"
    assert poor.described["stays"] == DESCRIBED["stays"]


def test_a_template_writes_numbers_of_any_kind():
    import numpy as np

    text = Template("{a:.1f} {b} {c:g} {d}", english="", decimal_point=",")
    values = {"a": np.float32(-1.5), "b": np.int64(-3), "c": 2.5, "d": "a-b.c"}
    assert text.format(**values) == "−1,5 −3 2,5 a-b.c"
