"""Nothing but the lesson is reached: every key, button, strip, control and way of the program is
tried at every place of a lesson."""

import dataclasses
import random

import pytest
from lessons import LESSONS, Class
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QFileDialog

from demo_app.base.errors import InputError
from demo_app.content.cues.records import Contingency
from demo_app.content.running.records import DRIVE, phases_of
from demo_app.scenes import catalogue
from demo_app.scenes.settings import change, settings_of
from demo_app.shells.teaching import acts
from demo_app.shells.teaching.window import PAGES
from demo_app.ui.keymap import ACTS as EVERY
from demo_app.ui.keymap import Keymap
from demo_app.ui.saved import Favourite
from demo_app.ui.snapshot import opening

NAME = "ages-11-14-why-glass-cracks"
OTHER = "toughen"
"""A scene that this lesson does not show."""


@pytest.fixture
def taught(app, monkeypatch):
    """A lesson whose dialogs are turned away and whose pictures are not saved."""
    for name in ("getSaveFileName", "getOpenFileName"):
        monkeypatch.setattr(QFileDialog, name, lambda *_: ("", ""))
    monkeypatch.setattr(acts, "save_picture", lambda *_: "")
    made = Class(NAME)
    yield made
    made.close()


def places(taught, phases=None):
    """Every part of every step of the lesson that shows a scene."""
    for step in taught.window.taught.sheet.steps:
        for phase in phases_of(step):
            if step.scene and (phases is None or phase in phases):
                taught.go_to(step.id, phase)
                yield step, phase


def strange(scene, name=OTHER):
    """Settings of a scene as nobody has written them into the lesson."""
    settings = scene.settings()
    for spec in settings_of(scene.settings):
        if isinstance(spec.default, bool):
            yield spec, not getattr(settings, spec.name)
        elif isinstance(spec.default, str):
            yield from ((spec, one) for one in spec.choices)
        else:
            yield from ((spec, one) for one in (spec.low, spec.high))


def test_every_act_of_the_program_at_every_place(taught):
    window = taught.window
    stored = opening(OTHER, catalogue.scene(OTHER).settings())
    window.conductor.favourites = {1: Favourite("Toughened", stored)}
    names = [*EVERY, *acts.ACTS, "contingency.0", "visit", "count.9", "jump.99", "unheard-of"]
    moving = ("next", "back", "jump", "strip", "full_screen")
    still = [name for name in names if name not in moving]
    for step, phase in places(taught, ("open", "bars", DRIVE)):
        for name in still:
            if phase == DRIVE and name in (*acts.BACK_TO_LESSON, "back"):
                continue
            window.act(name)
            assert window.running.id == step.id, (name, step.id, phase)
            assert window.session.scene.id == step.scene, (name, step.id, phase)
            assert window.pages.currentWidget() is window.show_page
            taught.check()
        for name in ("emergency", "blank", "freeze", "captions"):
            if phase != DRIVE:
                window.act(name)  # The other of two states again.


def test_no_setting_leaves_its_bounds(taught):
    window = taught.window
    for step, phase in places(taught, ("open", "reveal", DRIVE)):
        session = taught.session
        within = {one.name: one for one in taught.step.bounds} if phase == DRIVE else {}
        for spec, value in strange(session.scene):
            session.set_setting(spec.name, value)
            taught.check()
            try:
                settings = change(session.settings, **{spec.name: value})
            except InputError:
                continue
            session.set_settings(settings)
            taught.check()
            if spec.name not in within and value != getattr(session.settings, spec.name):
                assert "not part of this lesson" in window.panel.line.text(), (step.id, spec.name)
        session.defaults()
        taught.check()
        for action in session.scene.actions:
            session.act(action)
            session.pause()
            taught.check()
        if session.scene.drag is not None:
            for handle in ("hold", "cold", "end", "0", "1", "2", "3"):
                session.drag(handle, 1.0, 300.0)
                taught.check()
        session.set_light(lamp="sodium", tint_plate_nm=565.0)
        taught.check()


def test_controls_offer_no_more_than_the_bounds(taught):
    for step, _phase in places(taught, (DRIVE,)):
        panel, bounds = taught.window.panel, taught.step.bounds
        assert list(panel.controls) == [one.name for one in bounds]
        assert not panel.light.isVisible()
        assert not panel.hands.isVisible()
        assert not panel.transport.save.isVisible()
        for bound in bounds:
            control = panel.controls[bound.name]
            if hasattr(control, "box"):
                assert (control.box.minimum(), control.box.maximum()) == (bound.low, bound.high)
                for wild in (bound.low - 1e6, bound.high + 1e6):
                    control.box.setValue(wild)
                    taught.check()
                control.slider.setValue(control.slider.maximum())
                assert getattr(taught.session.settings, bound.name) <= bound.high, step.id
            elif hasattr(control, "combo"):
                found = [control.combo.itemData(at) for at in range(control.combo.count())]
                assert found == list(bound.choices)


def test_other_scenes_and_what_was_kept_of_them_are_refused(taught):
    window, conductor = taught.window, taught.window.conductor
    taught.go_to("watch-the-ring")
    session = taught.session
    for name in (OTHER, "pour", "unheard-of"):
        conductor.visit(name)
        assert taught.session is session
    stored = opening(OTHER, catalogue.scene(OTHER).settings())
    conductor.favourites = {1: Favourite("Toughened", stored)}
    with pytest.raises(InputError, match="not part of this lesson"):
        conductor.recall(1)
    assert taught.session is session
    other = dataclasses.replace(session.settings, ring_at_mm=session.settings.ring_at_mm + 5)
    with pytest.raises(InputError, match="not part of this lesson"):
        session.restore(opening("ring", other))
    with pytest.raises(InputError, match="not part of this lesson"):
        session.restore(opening("ring", session.settings), back=opening("ring", other))
    with pytest.raises(InputError, match="not part of this lesson"):
        conductor.fall_back(Contingency("it broke", "So it did.", {"score_depth_um": 300.0}))
    taught.check()
    assert not hasattr(window, "controls")
    assert not hasattr(window.panel, "scenes")


def test_a_fault_goes_back_to_the_lessons_settings(taught):
    taught.go_to("thick-or-thin", "open")
    for _ in range(2):
        taught.window.recover("something")
        taught.check()
        assert taught.session.settings.water_C == 20
    taught.wait()
    taught.check()


def test_pages_and_the_strip_are_the_lessons(taught):
    window = taught.window
    assert [window.header.pages.itemData(at) for at in range(window.header.pages.count())] == [
        *PAGES
    ]
    for name in ("steps", "before", "between", "after", "keys", "controls", "scenes"):
        window.show_page_called(name)
        assert window.pages.currentWidget() is window.show_page
    window.act("strip")
    assert [name for name, _ in window.strip.entries][1:] == list(acts.STRIP)
    window.act("strip")
    window.act("jump")
    titles = [step.title for step in window.taught.sheet.steps]
    assert [said.split("  ", 1)[1] for _, said in window.strip.entries[1:]] == titles
    window.act("strip")
    taught.go_to("crack-it-at-40-mm", DRIVE)
    for name in PAGES:
        window.show_page_called(name)
        assert window.pages.currentWidget() is window.show_page
    for name in ("strip", "jump", "blank", "keys", "save", "emergency"):
        if name != "strip":
            window.act(name)
        assert not window.strip.is_open
        assert window.running.phase == DRIVE


def test_keys_that_do_nothing_in_a_lesson_have_no_act(taught):
    keymap = taught.window.remote.keymap
    for name in EVERY:
        word = name.partition(".")[0]
        wanted = word not in ("favourite", "store", "contingency", "catch_up", "controls")
        assert bool(keymap.keys[name]) == (wanted and bool(Keymap().keys[name])), name


@pytest.mark.parametrize("seed", range(3))
def test_stray_hands_stay_in_the_lesson(taught, seed):
    dice = random.Random(seed)
    window = taught.window
    keys = [getattr(Qt.Key, name) for name in dir(Qt.Key) if len(name) == 5]
    keys += [Qt.Key.Key_F1, Qt.Key.Key_F2, Qt.Key.Key_F5, Qt.Key.Key_Tab, Qt.Key.Key_PageDown]
    held = [Qt.KeyboardModifier.NoModifier] * 3
    held += [Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier]
    window.act(f"jump.{dice.randrange(len(window.taught.sheet.steps))}")
    taught.wait()
    seen = set()
    for _ in range(150):
        buttons = [
            one
            for one in window.findChildren(QAbstractButton)
            if one.isVisible() and one.isEnabled()
        ]
        if dice.random() < 0.5 and buttons:
            dice.choice(buttons).click()
        else:
            taught.press(dice.choice(keys), dice.choice(held))
        if dice.random() < 0.2:
            taught.wait()
        taught.check()
        seen.add(taught.at())
    assert len(seen) > 5
    assert set(LESSONS) >= {NAME}
