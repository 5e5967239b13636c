"""Keys of the keyboard and of a remote, heard in whichever window has the focus."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QDialog,
    QDoubleSpinBox,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from demo_app.ui.action_strip import ActionStrip
from demo_app.ui.keymap import ACTS, STRIP, Context, Keymap
from demo_app.ui.remote import BOUNCE_S, SETTLE_S, Remote, stamp

Key, Held = Qt.Key, Qt.KeyboardModifier
SENT = (Key.Key_PageDown, Key.Key_PageUp, Key.Key_Period, Key.Key_B, Key.Key_F5, Key.Key_Escape)


class Clock:
    """Time that goes on by half a second a press, unless a test says otherwise."""

    def __init__(self):
        self.now, self.by = 100.0, 0.5

    def __call__(self, event):
        self.now += self.by
        return self.now


class Show:
    """Two windows, a strip, and what was done."""

    def __init__(self, qtbot):
        self.presenter, self.audience = QWidget(), QWidget()
        self.box = QVBoxLayout(self.presenter)
        for window in (self.presenter, self.audience):
            qtbot.addWidget(window)
            window.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            window.show()
        self.strip = ActionStrip(self.presenter)
        self.clock, self.question, self.acts = Clock(), False, []
        self.remote = Remote(Keymap(), self.context, clock=self.clock)
        self.remote.acted.connect(self.do)
        self.strip.chosen.connect(self.acts.append)
        self.remote.install()
        self.turn_to(self.presenter)

    def context(self):
        return Context(question=self.question, strip=self.strip.is_open)

    def do(self, act):
        if not self.strip.take(act):
            self.acts.append(act)

    def turn_to(self, widget):
        widget.window().activateWindow()
        widget.setFocus()
        QApplication.processEvents()
        assert QApplication.focusWidget() is widget

    def add(self, widget):
        self.box.addWidget(widget)
        self.turn_to(widget)
        return widget

    def press(self, key, held=Held.NoModifier, text="", repeat=False):
        """A key as the system brings it: to the native window of the widget with the focus."""
        target = QApplication.activePopupWidget() or QApplication.focusWidget()
        for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
            event = QKeyEvent(kind, key, held, text, repeat)
            QApplication.sendEvent(target.window().windowHandle(), event)
        self.settle()

    def settle(self):
        QCoreApplication.sendPostedEvents(None, QEvent.Type.MetaCall)

    def did(self):
        acts, self.acts[:] = list(self.acts), []
        return acts

    def end(self):
        self.remote.uninstall()
        self.strip.close_strip()
        for window in (self.presenter, self.audience):
            window.close()


@pytest.fixture
def show(app, qtbot):
    made = Show(qtbot)
    yield made
    made.end()


@pytest.mark.parametrize("window", ["presenter", "audience"])
def test_a_remote_works_in_either_window(show, window):
    show.turn_to(getattr(show, window))
    for key in (Key.Key_PageDown, Key.Key_PageUp, Key.Key_Period, Key.Key_B):
        show.press(key)
    assert show.did() == ["next", "back", "blank", "blank"]
    show.press(Key.Key_F5)
    assert show.strip.is_open
    assert show.strip.window() is show.presenter
    show.press(Key.Key_Escape)
    assert not show.strip.is_open
    show.press(Key.Key_Z)
    assert show.did() == ["freeze"]


def test_one_press_is_one_act_whatever_has_the_focus(show):
    for widget in (
        QPushButton("press"),
        QSlider(),
        QLineEdit(),
        QPlainTextEdit(),
        QDoubleSpinBox(),
    ):
        show.add(widget)
        show.press(Key.Key_PageDown)
        assert show.did() == ["next"]


def test_a_control_sees_its_own_keys_first(show, count):
    button = show.add(QPushButton("press"))
    clicked = count(button.clicked)
    show.press(Key.Key_Space, text=" ")
    assert (len(clicked), show.did()) == (1, [])
    slider = show.add(QSlider(Qt.Orientation.Horizontal))
    show.press(Key.Key_Right)
    assert (slider.value(), show.did()) == (1, [])
    show.turn_to(show.presenter)
    show.press(Key.Key_Space, text=" ")
    show.press(Key.Key_Right)
    assert show.did() == ["play", "step_on"]


def test_what_is_typed_goes_to_the_field(show):
    """WCAG 2.2, criterion 2.1.4: characters typed in a field are no shortcuts."""
    field = show.add(QLineEdit())
    for key, text in [(Key.Key_B, "b"), (Key.Key_Period, "."), (Key.Key_1, "1"), (Key.Key_Z, "z")]:
        show.press(key, text=text)
    show.question = True
    show.press(Key.Key_2, text="2")
    assert field.text() == "b.1z2"
    assert show.did() == []
    show.press(Key.Key_Left)
    assert field.cursorPosition() == 4
    show.press(Key.Key_PageDown)
    show.press(Key.Key_S, Held.ControlModifier)
    show.press(Key.Key_F11)
    assert show.did() == ["next", "save", "full_screen"]
    show.press(Key.Key_Escape)
    assert show.strip.is_open


@pytest.mark.qt_log_ignore("This plugin does not support", extend=True)
def test_an_open_list_and_a_dialog_keep_esc(show):
    combo = show.add(QComboBox())
    combo.addItems(["one", "two"])
    combo.showPopup()
    show.press(Key.Key_Escape)
    assert not combo.view().isVisible()
    assert not show.strip.is_open
    dialog = QDialog(show.presenter)
    dialog.setModal(True)
    dialog.show()
    show.turn_to(dialog)
    show.press(Key.Key_PageDown)
    show.press(Key.Key_Z)
    assert show.did() == ["next"]
    show.press(Key.Key_Escape)
    assert not dialog.isVisible()
    assert not show.strip.is_open


def test_bouncing_is_ignored(show):
    show.clock.by = BOUNCE_S * 0.9
    for _ in range(8):
        show.press(Key.Key_PageDown)
    assert show.did() == ["next"]
    show.clock.by = BOUNCE_S * 1.1
    for _ in range(3):
        show.press(Key.Key_PageDown)
    assert show.did() == ["next"] * 3
    # Another button at once is no bounce; the two keys of the alternating one are.
    show.clock.by = 0.01
    show.press(Key.Key_PageUp)
    show.press(Key.Key_F5)
    show.press(Key.Key_Escape)
    assert show.did() == ["back"]
    assert show.strip.is_open


def test_digits_may_come_fast(show):
    show.question, show.clock.by = True, 0.05
    for _ in range(5):
        show.press(Key.Key_1, text="1")
    show.press(Key.Key_Exclam, Held.ShiftModifier, "!")
    assert show.did() == ["count.1"] * 5 + ["less.1"]


def test_a_key_held_down_counts_once_but_where_it_turns_or_steps(show):
    for key in (Key.Key_PageDown, Key.Key_R, Key.Key_Right, Key.Key_BracketLeft, Key.Key_Space):
        show.press(key)
        show.press(key, repeat=True)
        show.press(key, repeat=True)
    assert show.did() == ["next", "reset", *["step_on"] * 3, *["turn_back"] * 3, "play"]


def test_the_strip_is_walked_and_confirmed(show):
    for key in (Key.Key_F5, Key.Key_PageDown, Key.Key_PageDown, Key.Key_PageUp, Key.Key_Period):
        show.press(key)
    assert show.did() == ["return"]
    assert not show.strip.is_open
    # Emergency: three presses.
    for key in (Key.Key_Escape, Key.Key_PageUp, Key.Key_Period):
        show.press(key)
    assert show.did() == ["emergency"]


def test_confirming_twice_does_not_blank(show):
    show.press(Key.Key_F5)
    show.press(Key.Key_PageDown)
    show.press(Key.Key_Period)
    show.clock.by = SETTLE_S * 0.9
    show.press(Key.Key_Period)
    assert show.did() == ["return"]
    show.clock.by = SETTLE_S * 1.1
    show.press(Key.Key_Period)
    assert show.did() == ["blank"]


def test_keys_that_waited_are_done_in_order(show):
    """A slow moment brings several at once: each must know what the one before has opened."""
    window = show.presenter.windowHandle()
    for key in (Key.Key_F5, Key.Key_PageDown, Key.Key_Period, Key.Key_PageDown):
        QApplication.sendEvent(window, QKeyEvent(QEvent.Type.KeyPress, key, Held.NoModifier))
    assert show.did() == []
    show.settle()
    assert show.did() == ["return", "next"]


def test_a_fault_in_an_act_leaves_the_keys_working(show, qtbot):
    def fail(act):
        raise IndexError(act)

    show.remote.acted.connect(fail)
    with qtbot.captureExceptions() as caught:
        show.press(Key.Key_PageDown)
    assert [kind for kind, *_ in caught] == [IndexError]
    show.remote.acted.disconnect(fail)
    show.press(Key.Key_PageDown)
    assert show.did() == ["next", "next"]


def test_a_fault_in_the_filter_leaves_the_key_alone(show, caplog, monkeypatch):
    monkeypatch.setattr(show.remote, "_context", lambda: {}["lost"])
    with caplog.at_level("CRITICAL", logger="lehrlight"):
        show.press(Key.Key_Z)
    monkeypatch.undo()
    show.press(Key.Key_Z)
    assert show.did() == ["freeze"]


def test_a_key_is_heard_for_teaching_and_does_nothing_else(show, count):
    heard = count(show.remote.heard)
    show.remote.listen(True)
    show.press(Key.Key_Shift, Held.ShiftModifier)
    show.press(Key.Key_PageDown, repeat=True)
    assert heard == []
    show.press(Key.Key_Escape)
    assert heard == [("Esc",)]
    assert not show.strip.is_open
    show.press(Key.Key_PageDown)
    assert show.did() == ["next"]
    assert len(heard) == 1


def test_an_uninstalled_remote_hears_nothing(show):
    show.remote.uninstall()
    show.press(Key.Key_PageDown)
    assert show.did() == []


def test_time_is_the_window_systems_own():
    event = QKeyEvent(QEvent.Type.KeyPress, Key.Key_B, Held.NoModifier)
    event.setTimestamp(12345)
    assert stamp(event) == 12.345


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60)
@given(
    st.lists(
        st.tuples(
            st.sampled_from([*SENT, Key.Key_F5, Key.Key_Escape]),
            st.sampled_from([0.02, 0.2, 1.0]),
            st.sampled_from(["presenter", "audience"]),
            st.booleans(),
        ),
        max_size=25,
    )
)
def test_no_sequence_of_a_remotes_keys_ends_a_show(show, presses):
    show.strip.close_strip()
    show.did()
    for key, by, window, repeat in presses:
        show.turn_to(getattr(show, window))
        show.clock.by = by
        show.press(key, repeat=repeat)
        assert show.presenter.isVisible()
        assert show.audience.isVisible()
    harmless = {"next", "back", "blank", *(act for act, _said in show.strip.entries)}
    assert set(show.did()) <= harmless <= {*ACTS, *STRIP.values()}


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=40)
@given(st.lists(st.integers(0, 3), min_size=12, max_size=12))
def test_stray_presses_of_the_alternating_button_do_not_lose_a_step(show, strays):
    """Whoever sees the strip open presses that button once more; each Next then counts."""
    show.strip.close_strip()
    show.did()
    pair = iter([Key.Key_F5, Key.Key_Escape] * 40)
    show.clock.by = 1.0
    for stray in strays:
        for _ in range(stray):
            show.press(next(pair))
        if show.strip.is_open:
            show.press(next(pair))
        show.press(Key.Key_PageDown)
    assert show.did() == ["next"] * 12
