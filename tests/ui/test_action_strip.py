"""The strip of actions: walking, marks, time, touch, words that fit."""

import dataclasses

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QLabel, QWidget
from test_window import fits

from demo_app.ui import theme, words
from demo_app.ui.action_strip import CLOSE, ENTRIES, HERE, SECONDS, ActionStrip
from demo_app.ui.keymap import ACTS, Keymap


@pytest.fixture
def strip(app, qtbot):
    window = QWidget()
    qtbot.addWidget(window)
    window.resize(346, 720)
    sizes = theme.Sizes.of(720)
    window.setStyleSheet(theme.style_sheet(sizes))
    made = ActionStrip(window)
    made.set_sizes(sizes)
    made.setGeometry(0, 0, 346, 720)
    window.show()
    yield made
    made.close_strip()
    window.close()


def here(strip):
    return [place for place, button in enumerate(strip.buttons) if button.property("here")]


def test_it_begins_at_closing_it(strip, count):
    chosen, closed = count(strip.chosen), count(strip.closed)
    assert not strip.is_open
    strip.open()
    assert strip.entries[strip.place][0] == CLOSE
    strip.walk(3)
    strip.close_strip()
    strip.open()
    assert strip.place == 0
    strip.confirm()
    strip.confirm()
    assert not strip.is_open
    assert chosen == []
    assert len(closed) == 2


def test_walking_goes_round_and_marks_one(strip):
    strip.open()
    seen = []
    for _ in range(len(strip.entries)):
        assert here(strip) == [strip.place]
        assert [b.sign.text() for b in strip.buttons].count(HERE) == 1
        assert strip.buttons[strip.place].sign.text() == HERE
        seen.append(strip.entries[strip.place][0])
        strip.walk(1)
    assert seen == [CLOSE, *ENTRIES]
    assert strip.place == 0
    strip.walk(-1)
    assert strip.entries[strip.place][0] == "emergency"


def test_its_actions_are_acts_and_none_ends_a_show():
    assert set(ENTRIES) <= set(ACTS)


def test_an_action_comes_after_the_strip_has_closed(strip):
    states = []
    strip.chosen.connect(lambda act: states.append((act, strip.is_open)))
    strip.open()
    strip.walk(2)
    strip.confirm()
    assert states == [(ENTRIES[1], False)]


def test_keys_acts(strip, count):
    chosen = count(strip.chosen)
    assert strip.take("strip")
    assert strip.is_open
    assert all(strip.take(act) for act in ("strip.next", "strip.next", "strip.back"))
    assert strip.take("strip.confirm")
    assert chosen == [(ENTRIES[0],)]
    assert strip.take("strip")
    assert strip.take("strip.close")
    assert not strip.is_open
    assert not strip.take("next")
    # A closed strip has nothing to walk or to confirm.
    assert strip.take("strip.next")
    assert strip.take("strip.confirm")
    assert len(chosen) == 1


def test_mouse_and_keyboard_reach_every_entry(strip, qtbot, count):
    chosen = count(strip.chosen)
    strip.open()
    qtbot.mouseClick(strip.buttons[3], Qt.MouseButton.LeftButton)
    assert chosen == [(ENTRIES[2],)]
    strip.open()
    strip.buttons[5].setFocus(Qt.FocusReason.TabFocusReason)
    assert here(strip) == [5]
    qtbot.keyClick(strip.buttons[5], Qt.Key.Key_Space)
    assert chosen[-1] == (ENTRIES[4],)


def test_it_does_not_take_the_focus(strip, qtbot):
    window = strip.window()
    window.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    window.setFocus()
    strip.open()
    strip.walk(1)
    assert window.hasFocus()


def test_it_closes_by_itself_and_each_press_gives_it_time(strip, count):
    closed = count(strip.closed)
    timer = strip.findChild(QTimer)
    strip.open()
    assert (timer.isActive(), timer.interval()) == (True, SECONDS * 1000)
    before = timer.remainingTime()
    strip.walk(1)
    assert timer.remainingTime() >= before - 1
    timer.timeout.emit()
    assert not strip.is_open
    assert not timer.isActive()
    assert len(closed) == 1


def test_it_can_be_told_to_stay_open(strip):
    """WCAG 2.2, criterion 2.2.1: a time limit can be turned off."""
    strip.set_seconds(0)
    strip.open()
    assert not strip.findChild(QTimer).isActive()
    assert not strip._alone.isVisible()


def test_other_entries_such_as_steps(strip, count):
    chosen = count(strip.chosen)
    steps = [(f"step.{n}", f"{n + 1} Step") for n in range(15)]
    strip.open(steps)
    strip.walk(-1)
    button = strip.buttons[strip.place]
    top = button.mapTo(strip, button.rect().topLeft()).y()
    assert 0 < top < strip.height() - button.height()
    strip.confirm()
    assert chosen == [("step.14",)]
    strip.open()
    assert [act for act, _said in strip.entries] == [CLOSE, *ENTRIES]


def test_targets_names_and_contrast(strip):
    """WCAG 2.2: target size (2.5.5) 44 px, name (4.1.2), contrast of marks (1.4.11) 3:1."""
    strip.open()
    for button in strip.buttons:
        assert button.height() >= 44
        assert button.accessibleName()
    assert strip.accessibleName()
    for behind in (theme.PANEL, theme.RAISED):
        assert theme.contrast(theme.ALERT, behind) >= 3
        assert theme.contrast(theme.INK, behind) >= 4.5


@pytest.mark.parametrize("longer", [1.0, 1.4])
@pytest.mark.parametrize(
    ("width", "height", "words_"), [(346, 720, 1.0), (346, 720, 1.6), (480, 1080, 1.0)]
)
def test_no_words_are_cut(strip, app, longer, width, height, words_):
    window = strip.window()
    plain = theme.Sizes.of(height)
    sizes = dataclasses.replace(plain, panel=round(plain.panel * words_))
    window.resize(width, height)
    strip.setGeometry(0, 0, width, height)
    strip.set_keymap(Keymap().teach("next", "Ctrl+Shift+F12"))
    entries = [(act, said + " wort" * round(len(said) * (longer - 1) / 5)) for act, said in usual()]
    strip.open(entries)
    # The size of its words may change while it is open.
    window.setStyleSheet(theme.style_sheet(sizes))
    strip.set_sizes(sizes)
    app.processEvents()
    for label in strip.findChildren(QLabel):
        if label.isVisible() and label.text():
            assert fits(label), label.text()


def usual():
    return [(act, words.text(f"act.{act}")) for act in ENTRIES]
