"""The language in use: chosen, kept, said by windows, written with its decimal sign; files not."""

import dataclasses
import json
import tomllib

import pytest
from bar_scene import SCENE
from PySide6.QtCore import QCoreApplication, QLocale, Qt

from demo_app.content import venue as rules
from demo_app.content.cues.load import own_sheets
from demo_app.content.cues.save import Captured, append_step
from demo_app.content.sweep import parse_vary, points, table
from demo_app.scenes import catalogue
from demo_app.scenes.settings import settings_of
from demo_app.shells import start
from demo_app.shells.start import DOORS, StartWindow
from demo_app.ui import preferences, show_words, speaking, words
from demo_app.ui.chart_view import ChartView
from demo_app.ui.fields import control_for
from demo_app.ui.language_ids import scene_context
from demo_app.ui.languages import in_use, language, use, wanted
from demo_app.ui.pages.screens import ScreensPage
from demo_app.ui.preferences import Preferences
from demo_app.ui.theme import SCALES, Look


@pytest.fixture
def speak(app):
    yield use
    use("en")


@pytest.fixture
def home(tmp_path, monkeypatch):
    monkeypatch.setenv("LEHRLIGHT_HOME", str(tmp_path))
    return tmp_path


def test_english_is_the_english_texts_byte_for_byte(speak):
    speak("de")
    speak("en")
    for name, said in words.ENGLISH.items():
        assert words.said("ui", name, said) is said or words.said("ui", name, said) == said
        if "{" not in said:
            assert words.text(name) == said
    scene = catalogue.load("toughen")
    assert dict(words.texts(scene)) == dict(scene.texts)
    assert words.number(1234.5) == "1\u202f234"
    assert words.number(2.5) == "2.5"


@pytest.mark.parametrize(
    ("system", "code"), [("de_AT", "de"), ("es_MX", "es"), ("fr_FR", "en"), ("en_GB", "en")]
)
def test_without_a_choice_the_systems_language_is_used(app, system, code):
    assert wanted("", QLocale(system)) == code
    assert wanted("es", QLocale(system)) == "es"
    assert wanted("xx", QLocale(system)) == code


@pytest.mark.parametrize("code", ["de", "es"])
def test_words_come_in_the_language_in_use(speak, code):
    spoken = speak(code)
    assert in_use() is spoken
    scene = catalogue.load("toughen")
    assert words.text("play") == spoken.text("play") != words.ENGLISH["play"]
    assert words.title(scene) == spoken.title(scene) != scene.title
    context = scene_context(scene)
    for spec in scene.readings:
        assert words.label(context, spec) == spoken.label(scene, spec)
        assert words.help_of(context, spec) == spoken.help(scene, spec)
    for setting in settings_of(scene.settings):
        assert words.label(context, setting) == spoken.label(scene, setting)
        for one in setting.choices:
            assert words.choice_of(context, setting, one) == spoken.choice(scene, setting, one)
    state = scene.start(scene.settings())
    message = scene.say(scene.settings(), state)
    assert words.sentence(scene, message) == spoken.sentence(scene, message)
    grade = next(one for one in scene.readings if one.name == "grade")
    assert words.reading(grade, "toughened", context) == spoken.reading(scene, grade, "toughened")


@pytest.mark.parametrize("code", ["de", "es"])
def test_numbers_have_a_comma_on_the_screen(speak, code, qtbot):
    speak(code)
    assert words.number(2.5) == words.number(2.5, 2) == "2,5"
    assert words.quantity(2.5, "mm") == "2,5\u00a0mm"
    assert words.clock(2.5) == "2,50\u00a0s"
    assert words.odds(0.125) == "12,5 %"
    assert words.number(12345.0) == "12\u202f345"
    number = next(one for one in settings_of(SCENE.settings) if isinstance(one.default, float))
    control = control_for(dataclasses.replace(number, step=0.5, low=0.0, high=9.0, default=2.5))
    qtbot.addWidget(control)
    assert control.box.text().startswith("2,5")
    heard = []
    control.chosen.connect(lambda _name, value: heard.append(value))
    control.box.selectAll()
    qtbot.keyClicks(control.box, "4,5")
    qtbot.keyClick(control.box, Qt.Key.Key_Return)
    assert heard == [4.5]
    chart = ChartView()
    qtbot.addWidget(chart)
    chart._build()
    axis = chart._plot.getPlotItem().getAxis("left")
    assert axis.tickStrings([0.5, 1.5], 1, 0.5) == ["0,5", "1,5"]


def test_a_rule_of_the_venue_is_typed_with_a_comma_and_kept_as_a_number(speak):
    speak("de")
    venue = rules.with_value(rules.Venue("Millrace Glass House"), "hall_depth_m", 12.5)
    assert venue.number("hall_depth_m") == 12.5
    line = show_words.review_line(venue, "hall_depth_m", rules.datetime.date(2026, 3, 1))
    assert line == language("de")._said("review", "never", "Not reviewed yet")


def test_files_keep_their_points_whatever_is_spoken(speak, home):
    """CSV, JSON and TOML are the same bytes in every language."""
    scene = catalogue.load("touch")
    settings = scene.settings()
    vary = parse_vary(scene, "power_W=30.5:34.5:2")
    sheet = home / "sheet.toml"
    captured = Captured("Warm", "touch", dataclasses.replace(settings, power_W=33.5), 2.5)

    def written():
        sheet.write_bytes(own_sheets()[0].read_bytes())
        append_step(sheet, captured)
        preferences.write(home, Preferences(look=Look(scale=SCALES[1])))
        return (
            table(scene, points(scene, {}, vary), vary, at_s=0.5),
            (home / preferences.NAME).read_text("utf-8"),
            sheet.read_text("utf-8"),
        )

    english = written()
    speak("de")
    assert written() == english
    assert "\n30.5," in english[0]
    assert json.loads(english[1])["look"]["scale"] == SCALES[1]
    assert tomllib.loads(english[2])["step"][-1]["settings"]["power_W"] == 33.5


def test_the_start_window_speaks_at_once_and_keeps_it(speak, home, qtbot):
    window = StartWindow(list(DOORS))
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.show()
    names = [window.language.itemText(place) for place in range(window.language.count())]
    assert names[1:] == ["English", "Deutsch", "Español"]
    before = window.leave.text()
    start._speak("de")
    QCoreApplication.processEvents()
    assert window.leave.text() == language("de").text("quit") != before
    assert window.doors[0].accessibleName() == language("de").text("present")
    assert preferences.read(home).language == "de"
    assert speaking.begin().code == "de"
    start._speak("en")
    QCoreApplication.processEvents()
    assert window.leave.text() == before


def test_a_choice_on_the_page_is_sent_and_nothing_else_changes(app, qtbot):
    page = ScreensPage()
    qtbot.addWidget(page)
    page.show_preferences(Preferences(calm=True, second="es"))
    sent = []
    page.chosen.connect(sent.append)
    page.language.setCurrentIndex(page.language.findData("de"))
    page.language.activated.emit(page.language.currentIndex())
    assert sent == [Preferences(calm=True, language="de")]


def test_a_show_goes_on_unchanged_when_a_language_is_chosen(window, settle, speak):
    """The page promises it for the next start: nothing of what runs may move."""
    session = window.session
    session.step(3)
    settle(session)
    before, frame = session.snapshot(), session.frame
    title, said = window.windowTitle(), window.stage.sentence.text()
    window.set_preferences(Preferences(language="de"))
    settle(session)
    assert window.session is session
    assert session.snapshot() == before
    assert session.frame.readings == frame.readings
    assert (window.windowTitle(), window.stage.sentence.text()) == (title, said)


def test_a_show_that_goes_on_in_another_language_is_at_the_same_state(window, settle, speak, qtbot):
    from demo_app.shells.present import PresentWindow

    session = window.session
    number = next(
        one for one in settings_of(type(session.settings)) if isinstance(one.default, float)
    )
    session.set_setting(number.name, number.low + 0.25 * (number.high - number.low))
    settle(session)
    session.step(3)
    settle(session)
    kept = session.snapshot()
    speak("de")
    again = PresentWindow([SCENE], "bar")
    qtbot.addWidget(again)
    again.conductor.begin(kept, None)
    again.resize(1280, 720)
    again.show()
    qtbot.waitUntil(lambda: again.session.frame is not None and again.session.settled)
    assert again.session.settings == session.settings
    assert again.session.frame.readings == session.frame.readings
    assert again.controls.pages.tabText(0) == language("de").text("page.run")
    again.close()
