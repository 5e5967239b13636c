"""The six steps of the kiosk as visitors take them: by one finger, by two switches, by ear."""

import os

import pytest
from kiosks import Kiosk, named, own_texts, tree
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication

from demo_app.content.cues.answers import judge
from demo_app.content.kiosk.word_keys import STEP_IDS
from demo_app.scenes import catalogue
from demo_app.scenes.run import state_at
from demo_app.scenes.settings import make
from demo_app.shells.kiosking.runner import LONGEST_RUN_S, wanted_of

LONG = os.environ.get("LEHRLIGHT_LONG") == "1"
MOST_WORDS = 25
"""Words of a sentence (practice of museums: labels of at most 25 words a sentence)."""


@pytest.fixture
def kiosk(app, home):
    made = Kiosk(own_texts()).begin()
    yield made
    made.close()


def stands_at(kiosk, phase):
    return lambda: kiosk.at == ("step", phase)


def words_of(kiosk):
    return [label.text() for label in kiosk.window.step_page.lines if label.isVisible()]


@pytest.mark.parametrize("name", STEP_IDS)
def test_a_step_by_touch_alone(kiosk, name):
    # WCAG 2.2, 2.5.1 and 2.5.7: no gesture of two fingers, no drag that has no tap instead.
    window = kiosk.window
    step = window.house.step("en", name)
    kiosk.tap_at(QPoint(500, 200))
    assert kiosk.at == "home"
    kiosk.tap(kiosk.button(step.title))
    kiosk.wait()
    assert kiosk.at == ("step", "predict")
    assert words_of(kiosk) == [step.question.ask]
    kiosk.tap(kiosk.button(step.question.answers[0].text))
    assert kiosk.at == ("step", "do")
    kiosk.tap(kiosk.button(step.do))
    assert kiosk.at == ("step", "see")
    kiosk.tap(kiosk.button("Next"))
    kiosk.wait(stands_at(kiosk, "why"))
    # What is told is what the live model answers.
    outcome = window.where.outcome
    scene = catalogue.scene(step.scene)
    settings = make(scene.settings, wanted_of(step))
    readings = scene.read(settings, state_at(scene, settings, step.question.at_s))
    assert outcome.right == judge(step.question, readings[step.question.reading])
    assert words_of(kiosk)[-1] == step.why
    answer = step.question.answers[outcome.right].text
    assert words_of(kiosk)[1] == window.spoken.word("happened", answer=answer)
    right = window.spoken.words["right" if outcome.right == 0 else "surprise"]
    assert words_of(kiosk)[0] == right
    kiosk.tap(kiosk.button("Your turn"))
    assert kiosk.at == ("step", "try")
    before = window.runner.session.settings
    for control in window.step_page.controls:
        parts = getattr(control, "buttons", None)
        part = control.minus if parts is None else list(parts.values())[-1]
        kiosk.tap(part)
    kiosk.wait(lambda: window.runner.session.settings != before)
    kiosk.tap(kiosk.button("Something else"))
    assert kiosk.at == "home"
    assert ("prediction", name, 0) in kiosk.counts.kept


@pytest.mark.parametrize("name", STEP_IDS if LONG else ("one-drop", "dish"))
def test_a_step_by_two_switches(kiosk, name):
    # EN 301 549, 9.2.1.1 (WCAG 2.1.1): all of it from the keyboard; here with two keys of it.
    window = kiosk.window
    step = window.house.step("en", name)
    kiosk.press(Qt.Key.Key_Return)
    assert kiosk.at == "home"
    kiosk.select(step.title)
    kiosk.wait()
    kiosk.select(step.question.answers[-1].text)
    kiosk.select(step.do)
    kiosk.select("Next")
    kiosk.wait(stands_at(kiosk, "why"))
    kiosk.select("Your turn")
    control = window.step_page.controls[0]
    before = window.runner.session.settings
    parts = [one for one in getattr(control, "buttons", {}).values() if not one.isChecked()]
    part = parts[0] if parts else control.plus
    kiosk.walk_to(part.accessibleName())
    assert window.property("keyed")
    kiosk.press(Qt.Key.Key_Space)
    if hasattr(control, "minus"):
        kiosk.walk_to(control.minus.accessibleName())
        kiosk.press(Qt.Key.Key_Return)
        kiosk.press(Qt.Key.Key_Return)
    kiosk.wait(lambda: window.runner.session.settings != before)
    kiosk.select("Home")
    assert kiosk.at == "home"


def test_the_focus_goes_everywhere_and_back(kiosk):
    # WCAG 2.2, 2.1.2 and 2.4.3: no trap, and an order that keeps the meaning.
    window = kiosk.window
    window.begin_visit()
    seen = []
    for _ in range(20):
        seen.append(QApplication.focusWidget())
        kiosk.press(Qt.Key.Key_Tab)
    inside = [*window.home.doors.values(), *window.home.ease.values()]
    inside += [one for one in window.bar.buttons.values() if one.isVisible() and one.isEnabled()]
    assert seen[: len(inside)] == inside
    assert seen[len(inside)] is inside[0]


def test_a_step_with_eyes_shut(kiosk):
    """Through the accessibility interface alone: what is said, and what can be pressed."""
    # EN 301 549, 5.1.3 and 11.5.2: names, roles and actions for assistive technology; what
    # changes is announced.
    window, said = kiosk.window, kiosk.said
    step = window.house.step("en", "bubble")

    def do(name):
        found = named(window, name)
        action = found.actionInterface()
        assert action.pressAction() in action.actionNames()
        before = kiosk.where
        action.doAction(action.pressAction())
        # Qt lets the button be seen pressed for a moment.
        kiosk.wait(lambda: window.where is not before)

    invites = [one.words["invite"] for one in window.house.languages.values()]
    do(window.invite.button.accessibleName())
    assert all(one in window.invite.button.accessibleName() for one in invites)
    assert said[-1] == window.spoken.words["choose"]
    do(step.title)
    kiosk.wait()
    assert step.question.ask in said[-2]
    assert said[-1] == step.description
    picture = QAccessible.queryAccessibleInterface(window.stage.picture)
    assert picture.text(QAccessible.Text.Name) == window.spoken.words["picture"]
    assert picture.text(QAccessible.Text.Description) == step.description
    do(step.question.answers[0].text)
    assert step.see in said[-1]
    # As if a screen reader had been there from the beginning.
    window._captioning._wanted = lambda: True
    do(step.do)

    def told():
        return [one for one in said if "crack" in one.lower() or "piece" in one.lower()]

    # The picture has changed, and that is said in the model's own words.
    kiosk.wait(lambda: told() and not window.runner.playing)
    assert window.where.outcome is not None
    assert picture.text(QAccessible.Text.Description) == told()[-1]
    do("Next")
    assert step.why in said[-1]
    assert window.spoken.words["right"] in said[-1]
    do("Home")
    assert said[-1] == window.spoken.words["choose"]


def test_all_that_can_be_pressed_has_a_name(kiosk):
    window = kiosk.window
    for page in ("attract", "home", "languages"):
        if page == "home":
            window.begin_visit()
        if page == "languages":
            window._press_bar("languages")
        found = [
            one
            for one in tree(QAccessible.queryAccessibleInterface(window))
            if one.role() in {QAccessible.Role.Button, QAccessible.Role.CheckBox}
        ]
        assert found
        assert all(one.text(QAccessible.Text.Name).strip() for one in found)
    window._press_bar("back")
    window.open_step("one-drop")
    kiosk.wait()
    window.go(window.where.__class__("step", "one-drop", "try"))
    slider = next(
        one
        for one in tree(QAccessible.queryAccessibleInterface(window))
        if one.role() == QAccessible.Role.Slider
    )
    assert slider.text(QAccessible.Text.Name) == "Depth of the scratch"
    assert "100" in slider.text(QAccessible.Text.Description)


def test_a_step_takes_two_minutes_at_most(kiosk):
    # The run that answers, at the speed of the kiosk: reading and choosing take the rest.
    for name in STEP_IDS:
        step = kiosk.window.house.step("en", name)
        words = " ".join([step.question.ask, step.see, step.touch, step.why, step.description])
        # Slow readers: 100 words a minute (common practice).
        reading_s = len(words.split()) / 100 * 60
        assert LONGEST_RUN_S + reading_s <= 120, name
        assert all(len(line.split()) <= MOST_WORDS for line in (step.see, step.touch))
