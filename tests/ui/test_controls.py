"""Controls say what the session says, and the session what the controls say."""

import dataclasses

import bar_scene
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QDoubleSpinBox, QSlider

from demo_app.scenes.settings import Setting, settings_of
from demo_app.ui import theme
from demo_app.ui.fields import ChoiceControl, FlagControl, NumberControl, control_for
from demo_app.ui.transport import SPEEDS

NUMBER = Setting("wall_mm", "Wall", "mm", 3.0, 1.5, 6.0, 0.1, help="Thickness.")


def test_every_setting_has_a_control_with_words(window):
    controls = window.controls.controls
    assert list(controls) != []
    for setting in settings_of(bar_scene.BarSettings):
        control = controls[setting.name]
        assert control.value() == setting.default
        for part in (QSlider, QDoubleSpinBox, QComboBox):
            for widget in control.findChildren(part):
                assert widget.accessibleName() == setting.label
                assert setting.help in widget.toolTip()


def test_kind_chooses_the_control(qtbot):
    made = {type(s.default): control_for(s) for s in settings_of(bar_scene.BarSettings)}
    for control in made.values():
        qtbot.addWidget(control)
    kinds = {kind: type(control) for kind, control in made.items()}
    assert kinds == {str: ChoiceControl, float: NumberControl, bool: FlagControl}


@pytest.mark.parametrize("typed", ["99", "1", "-3", "1e9", "abc"])
def test_out_of_range_cannot_be_entered(qtbot, typed, count):
    control = NumberControl(NUMBER)
    qtbot.addWidget(control)
    control.show()
    chosen = count(control.chosen)
    control.box.setFocus()
    control.box.selectAll()
    qtbot.keyClicks(control.box, typed)
    qtbot.keyClick(control.box, Qt.Key.Key_Return)
    assert 1.5 <= control.value() <= 6.0
    assert all(1.5 <= value <= 6.0 for _, value in chosen)


def test_typing_sends_once_with_the_unit_in_place(qtbot, count):
    control = NumberControl(NUMBER)
    qtbot.addWidget(control)
    control.show()
    chosen = count(control.chosen)
    control.box.setFocus()
    control.box.lineEdit().setSelection(0, 3)
    qtbot.keyClicks(control.box, "4.5")
    assert chosen == []
    qtbot.keyClick(control.box, Qt.Key.Key_Return)
    assert chosen == [("wall_mm", 4.5)]
    assert control.box.text() == "4.5 mm"


def test_slider_and_box_move_together(qtbot, count):
    control = NumberControl(NUMBER)
    qtbot.addWidget(control)
    chosen = count(control.chosen)
    control.slider.setValue(control.slider.maximum())
    assert control.box.value() == 6.0
    control.box.setValue(1.5)
    assert control.slider.value() == 0
    assert chosen == [("wall_mm", 6.0), ("wall_mm", 1.5)]
    control.show_value(4.0)
    assert len(chosen) == 2
    assert control.slider.value() == 25


def test_controls_change_the_session_and_show_it(window, settle):
    controls, session = window.controls.controls, window.session
    controls["rate_MPa_s"].slider.setValue(100)
    assert session.settings.rate_MPa_s == pytest.approx(10.0)
    session.set_setting("flip", True)
    assert controls["flip"].value() is True
    session.set_settings(dataclasses.replace(session.settings, glass="hard", height_mm=22))
    assert controls["glass"].value() == "hard"
    assert controls["height_mm"].value() == 22
    settle(session)


def test_light_controls_change_the_instrument(window, settle):
    light, session = window.controls.light.controls, window.session
    light["turn"].slider.setValue(10)
    assert session.instrument.polarizer_deg == 10
    light["parallel"].check.click()
    assert not session.instrument.crossed
    light["quarter"].check.click()
    light["tint"].check.click()
    light["gain"].box.setValue(5)
    light["lamp"].combo.setCurrentIndex(3)
    light["lamp"].combo.activated.emit(3)
    made = session.instrument
    assert (made.quarter_wave, made.tint_plate_nm, made.gain) == (True, 565.0, 5.0)
    assert made.lamp == "sodium"
    settle(session)


def test_speed_says_its_words(window):
    transport = window.controls.transport
    transport.speed.setValue(SPEEDS.index(1 / 10))
    assert transport.speed_label.text() == "1/10 of real speed"
    transport.speed.setValue(SPEEDS.index(1000))
    assert transport.speed_label.text() == "1,000 × real speed".replace(",", "\u202f")


def test_buttons_work_the_session(window, qtbot, settle):
    transport, session = window.controls.transport, window.session
    transport.play.click()
    assert session.playing
    assert transport.play.text() == "Pause"
    qtbot.waitUntil(lambda: session.time_s > 0.1)
    transport.forward.click()
    assert not session.playing
    transport.scrub.setValue(1000)
    settle(session)
    assert session.time_s == pytest.approx(7.5, abs=0.05)
    assert not transport.replay.isEnabled()
    transport.scrub.setValue(2000)
    settle(session)
    assert transport.replay.isEnabled()
    transport.reset.click()
    settle(session)
    assert session.time_s == 0
    assert window.controls.numbers.values["edge_MPa"].text() == "0\u00a0MPa"


def test_dragging_a_slider_does_not_wait_for_pictures(window, settle):
    control = window.controls.controls["height_mm"]
    framed = []
    window.session.framed.connect(framed.append)
    for place in range(control.slider.maximum() + 1):
        control.slider.setValue(place)
    assert framed == []
    settle(window.session)
    assert framed[-1].settings.height_mm == 60
    assert len(framed) < control.slider.maximum()


def test_wheel_scrolls_the_page_not_the_value(window):
    control = window.controls.controls["rate_MPa_s"]
    before = control.value()
    for widget in (control.slider, control.box):
        place = QPointF(widget.rect().center())
        event = QWheelEvent(
            place,
            QPointF(widget.mapToGlobal(widget.rect().center())),
            QPoint(0, 120),
            QPoint(0, 120),
            Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier,
            Qt.ScrollPhase.NoScrollPhase,
            False,
        )
        QApplication.sendEvent(widget, event)
    assert control.value() == before


def test_targets_are_large_enough_for_a_finger(window):
    for page in range(window.controls.pages.count()):
        window.controls.pages.setCurrentIndex(page)
        kinds = (QAbstractButton, QSlider, QComboBox, QDoubleSpinBox)
        for kind in kinds:
            for widget in window.controls.findChildren(kind):
                if widget.isVisible():
                    assert widget.height() >= theme.TOUCH_PX, widget.accessibleName()


def test_all_can_be_reached_by_keyboard(window):
    focused = set()
    window.setFocus()
    for _ in range(60):
        window.focusNextChild()
        focused.add(QApplication.focusWidget())
    transport = window.controls.transport
    wanted = [transport.play, transport.back, transport.reset, transport.hold, transport.speed]
    wanted += [transport.scrub, transport.save, window.controls.pages.tabBar()]
    wanted += [window.controls.controls["rate_MPa_s"].box, window.controls.controls["flip"].check]
    assert not [w.accessibleName() for w in wanted if w not in focused]
