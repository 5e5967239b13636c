"""The presenter's window: keys, touch, faults, words that fit."""

import dataclasses
import itertools
import sys

import bar_scene
import numpy as np
import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QPoint, Qt
from PySide6.QtGui import QFontMetrics, QPointingDevice
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QLayout

from demo_app.base.errors import InputError
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Chart, Curve, Outline
from demo_app.shells.present import PresentWindow
from demo_app.shells.start import DOORS, StartWindow
from demo_app.ui import application, chart_view, theme, words
from demo_app.ui.application import FaultGuard
from demo_app.ui.field import Field
from demo_app.ui.keymap import ACTS

Key = Qt.Key


def press(qtbot, window, key, held=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(window.focusWidget() or window, key, held)
    # Acts are done from the event loop: see `remote`.
    QCoreApplication.processEvents()


@pytest.fixture
def second_by_second(window, monkeypatch):
    """Let a second pass between presses, so that none is taken for a bounce."""
    seconds = itertools.count(100.0)
    monkeypatch.setattr(window.remote, "_clock", lambda _event: next(seconds))


def test_keys_work_the_session(window, qtbot, settle):
    session = window.session
    press(qtbot, window, Key.Key_Space)
    assert session.playing
    qtbot.waitUntil(lambda: session.time_s > 0.2)
    press(qtbot, window, Key.Key_Space)
    assert not session.playing
    settle(session)
    step = session.frame.last[0].step
    press(qtbot, window, Key.Key_Right)
    settle(session)
    assert session.frame.last[0].step == step + 1
    press(qtbot, window, Key.Key_Left)
    settle(session)
    assert session.frame.last[0].step == step
    press(qtbot, window, Key.Key_Up)
    assert session.speed == 2.0
    press(qtbot, window, Key.Key_Down)
    assert session.speed == 1.0
    press(qtbot, window, Key.Key_X)
    assert not session.instrument.crossed
    press(qtbot, window, Key.Key_BracketRight)
    assert session.instrument.polarizer_deg == 50
    press(qtbot, window, Key.Key_T)
    assert session.instrument.tint_plate_nm == 565
    press(qtbot, window, Key.Key_S)
    assert window.stage.section.mode == "stress"
    assert window.controls.light.section.value() == "stress"
    press(qtbot, window, Key.Key_H)
    assert session.held is not None
    press(qtbot, window, Key.Key_R)
    settle(session)
    assert session.time_s == 0
    press(qtbot, window, Key.Key_D)
    assert session.playing
    assert session.settings.drop_at_s == 0
    session.pause()
    press(qtbot, window, Key.Key_F2)
    assert not window.controls.isVisible()
    press(qtbot, window, Key.Key_F2)
    assert window.controls.isVisible()
    settle(session)


def test_keys_stay_out_of_fields(window, qtbot, settle):
    session = window.session
    session.scrub(3.0)
    settle(session)
    box = window.controls.controls["rate_MPa_s"].box
    box.setFocus()
    for key in (Key.Key_R, Key.Key_Space, Key.Key_H, Key.Key_X, Key.Key_D, Key.Key_B):
        press(qtbot, box, key)
    assert session.time_s == pytest.approx(3.0)
    assert not session.playing
    assert session.held is None
    assert not window.stage.isHidden()
    assert not window.conductor.running.blank
    qtbot.keyClick(box, Key.Key_Return)
    assert not box.hasFocus()


@pytest.mark.usefixtures("second_by_second")
def test_escape_never_quits_nor_leaves_the_full_screen(window, qtbot):
    # The offscreen platform's screen is 800 pixels wide, and a window that needs more room is
    # taken out of the full screen by it.
    window.layout().setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
    window.setMinimumSize(1, 1)
    press(qtbot, window, Key.Key_F11)
    assert window.isFullScreen()
    for opened in (True, False, True, False):
        press(qtbot, window, Key.Key_Escape)
        assert window.strip.is_open == opened
        assert window.isVisible()
        assert window.isFullScreen()
    press(qtbot, window, Key.Key_F11)
    assert not window.isFullScreen()
    assert window.isVisible()


@pytest.mark.usefixtures("second_by_second")
def test_b_blanks_and_v_replays_the_break(window, qtbot, settle):
    session = window.session
    session.scrub(14.0)
    settle(session)
    assert window.stage.isVisible()
    press(qtbot, window, Key.Key_B)
    assert not window.stage.isVisible()
    assert window.isVisible()
    assert session.speed == 1.0
    view = window.show_page.view
    qtbot.waitUntil(lambda: not view._pace.isActive())
    press(qtbot, window, Key.Key_B)
    assert window.stage.isVisible()
    press(qtbot, window, Key.Key_V)
    assert session.speed == pytest.approx(1 / 50)
    session.pause()
    settle(session)


def test_tap_on_the_picture_plays(window, qtbot):
    picture = window.stage.picture
    qtbot.mouseClick(picture, Qt.MouseButton.LeftButton)
    assert window.session.playing
    qtbot.mousePress(picture, Qt.MouseButton.LeftButton, pos=QPoint(50, 50))
    qtbot.mouseRelease(picture, Qt.MouseButton.LeftButton, pos=QPoint(250, 50))
    assert window.session.playing
    window.session.pause()


@pytest.fixture
def finger():
    return QTest.createTouchDevice(QPointingDevice.DeviceType.TouchScreen)


def test_first_finger_counts(window, finger):
    picture, session = window.stage.picture, window.session
    touch = QTest.touchEvent(picture, finger, False)
    touch.press(1, QPoint(100, 100), picture)
    touch.commit(True)
    touch.stationary(1)
    touch.press(2, QPoint(200, 100), picture)
    touch.commit(True)
    touch.stationary(1)
    touch.release(2, QPoint(200, 100), picture)
    touch.commit(True)
    assert not session.playing
    touch.release(1, QPoint(102, 101), picture)
    touch.commit(True)
    assert session.playing
    session.pause()


def test_chart_takes_no_mouse(window, qtbot, settle):
    window.session.scrub(5.0)
    settle(window.session)
    qtbot.waitUntil(lambda: window.stage.chart.ready)
    plot = window.stage.chart._plot
    assert plot.testAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
    assert not plot.getPlotItem().menuEnabled()
    assert plot.getViewBox().state["mouseEnabled"] == [False, False]


def test_chart_shows_the_run_and_its_instant(window, qtbot, settle):
    qtbot.waitUntil(lambda: window.stage.chart.ready)
    window.session.scrub(5.0)
    settle(window.session)
    x, y = window.stage.chart._curves[0].getData()
    assert x[-1] >= 5.0
    assert y[100] == pytest.approx(4 * x[100] / 40)
    assert window.stage.chart._cursor.value() == pytest.approx(5.0)


@pytest.fixture
def open_scene(app, qtbot):
    opened = []

    def make(**changes):
        made = PresentWindow([dataclasses.replace(bar_scene.SCENE, **changes)], "bar")
        qtbot.addWidget(made)
        made.begin()
        made.resize(1280, 720)
        made.show()
        opened.append(made)
        return made

    yield make
    for made in opened:
        made.close()


def test_a_finger_points_at_stage_millimetres(open_scene, qtbot, settle):
    places = []

    def point(settings, state, place):
        places.append(place)
        return state

    window = open_scene(point=point)
    settle(window.session)
    picture = window.stage.picture
    middle = picture.rect().center()
    qtbot.mousePress(picture, Qt.MouseButton.LeftButton, pos=middle)
    qtbot.mouseMove(picture, middle + QPoint(100, -40))
    qtbot.mouseRelease(picture, Qt.MouseButton.LeftButton, pos=middle + QPoint(100, -40))
    settle(window.session)
    # The bar's field of view is 1.25 times its 160 mm wide, or 2.4 times its 30 mm high.
    scale = max(200 / picture.width(), 72 / picture.height())
    assert places[0] == pytest.approx((0, 0), abs=scale)
    there = [place for place in places if place is not None and place[0] > 5]
    assert there[0] == pytest.approx((100 * scale, 40 * scale), abs=scale)
    assert None in places
    assert window.session.playing  # what is touched gets warm at once


def test_chart_of_the_instant_takes_the_place_of_the_traces(open_scene, qtbot, settle):
    depth = np.linspace(0, 30, 31)
    chart = Chart("depth", "mm", "bending", "MPa", (Curve("bending", depth, depth - 15),))
    crack = Outline("crack", np.array([0.0, 1.0]), np.array([-15.0, 15.0]))

    def view(settings, state):
        return dataclasses.replace(bar_scene.view(settings, state), chart=chart, outlines=(crack,))

    window = open_scene(view=view)
    settle(window.session)
    qtbot.waitUntil(lambda: window.stage.chart.ready)
    x, y = window.stage.chart._curves[0].getData()
    np.testing.assert_array_equal(x, depth)
    np.testing.assert_array_equal(y, depth - 15)
    assert not window.stage.chart._cursor.isVisible()
    assert "along the bar" in window.stage.chart._head.text()
    # The crack is drawn light on the dark field that an unstressed bar shows.
    image = window.stage.picture.grab().toImage()
    field = Field.of(window.stage.picture._stage, image.width(), image.height())
    place = field.point(0.5, 0.0).toPoint()
    assert image.pixelColor(place).lightness() > 200


@pytest.mark.parametrize(
    ("end_s", "known_s", "reach"),
    [(17, 3, 17), (17, 25, 25), (170, 0, 30), (170, 40, 50), (170, 160, 170), (170, 200, 200)],
)
def test_time_axis_opens_up_with_a_long_story(end_s, known_s, reach):
    assert chart_view._reach(end_s, known_s) == pytest.approx(reach)


def test_held_picture_stands_beside_the_live_one(window, settle):
    session, stage = window.session, window.stage
    session.scrub(4.0)
    settle(session)
    session.hold()
    settle(session)
    session.set_setting("thickness_mm", 4)
    settle(session)
    assert stage.held.isVisible()
    live, held = stage.picture._pixels, stage.held._pixels
    assert live.shape == held.shape == (*reversed(stage.picture.picture_size()), 4)
    assert "Thickness: 8\u00a0mm → 4\u00a0mm" in stage.picture._caption
    assert "4.00" in stage.held._caption
    session.hold()
    settle(session)
    assert not stage.held.isVisible()


def test_sentence_follows_the_scene(window, settle):
    window.session.scrub(5.0)
    settle(window.session)
    assert "20.0 MPa" in window.stage.sentence.text()
    window.session.scrub(14.0)
    settle(window.session)
    assert "broken" in window.stage.sentence.text()
    assert window.stage.picture.accessibleName() == window.stage.sentence.text()


def test_saved_picture_is_the_one_shown(window, settle, tmp_path, monkeypatch):
    from PySide6.QtCore import QStandardPaths
    from PySide6.QtGui import QImage

    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _kind: str(tmp_path))
    window.session.scrub(5.0)
    settle(window.session)
    window.save()
    window.save()
    files = sorted(tmp_path.iterdir())
    assert [f.name for f in files] == ["lehrlight-bar-5.00s-2.png", "lehrlight-bar-5.00s.png"]
    assert str(files[0]) in window.controls.line.text()
    image = QImage(str(files[0])).convertToFormat(QImage.Format.Format_RGB32)
    shown = window.session.frame.pixels
    read = np.frombuffer(image.constBits(), np.uint8).reshape(shown.shape)
    np.testing.assert_array_equal(read[..., :3], shown[..., :3])


def test_picture_that_cannot_be_saved_is_told(window, settle, tmp_path, monkeypatch):
    from PySide6.QtCore import QStandardPaths

    blocked = tmp_path / "file"
    blocked.write_text("no folder")
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _kind: str(blocked))
    window.save()
    assert "Could not save" in window.controls.line.text()


def test_fault_in_a_slot_resets_and_tells(window, qtbot, settle, caplog):
    guard = FaultGuard()
    guard.caught.connect(window.recover)
    window.session.scrub(6.0)
    settle(window.session)
    with caplog.at_level("CRITICAL", logger="lehrlight"):
        try:
            {}["lost"]
        except KeyError:
            guard.take(*sys.exc_info())
        qtbot.waitUntil(lambda: window.controls.line.isVisible())
    settle(window.session)
    assert "lost" in window.controls.line.text()
    assert window.session.time_s == 0
    assert window.isVisible()
    guard.uninstall()


def test_guard_takes_and_gives_back_the_hooks(app):
    before = sys.excepthook
    guard = FaultGuard()
    guard.install()
    assert sys.excepthook == guard.take
    guard.uninstall()
    assert sys.excepthook is before


def test_guard_does_not_repeat_itself(app, qtbot, count, caplog):
    guard = FaultGuard()
    caught = count(guard.caught)
    with caplog.at_level("CRITICAL", logger="lehrlight"):
        for _ in range(50):
            guard.take(ValueError, ValueError("each repaint"), None)
    qtbot.wait(50)
    assert caught == [("Something went wrong and the scene was reset: each repaint",)]
    guard.uninstall()


def scroll_to(window, page):
    window.controls.pages.setCurrentIndex(page)


def cut_words(window):
    """Words on the window's pages that do not fit where they stand."""
    cut = []
    for page in range(window.controls.pages.count()):
        scroll_to(window, page)
        QTest.qWait(20)
        for label in window.findChildren(QLabel):
            if label.isVisible() and label.text() and label.textFormat() != Qt.TextFormat.RichText:
                cut += [] if fits(label) else [label.text()]
        for button in window.findChildren(QAbstractButton):
            if button.isVisible() and button.text():
                cut += longer(button, button.text(), button.width() - 4)
        for combo in window.findChildren(QComboBox):
            if combo.isVisible():
                for index in range(combo.count()):
                    cut += longer(combo, combo.itemText(index), combo.width() - 30)
        for control in window.controls.controls.values():
            if control.isVisible() and hasattr(control, "box"):
                for value in (control.setting.low, control.setting.high):
                    said = control.box.textFromValue(value) + control.box.suffix()
                    cut += longer(control.box, said, control.box.width() - 20)
    tabs = window.controls.pages.tabBar()
    for index in range(tabs.count()):
        cut += longer(tabs, tabs.tabText(index), tabs.tabRect(index).width())
    return cut


def longer(widget, said, room):
    return [said] if QFontMetrics(widget.font()).horizontalAdvance(said) > room else []


@pytest.mark.parametrize("size", [(1280, 720), (1920, 1080)])
def test_no_words_are_cut(window, qtbot, settle, size):
    window.resize(*size)
    session = window.session
    session.scrub(9.0)
    settle(session)
    qtbot.waitUntil(lambda: window.stage.chart.ready)
    session.set_light(gain=4.0)
    settle(session)
    assert cut_words(window) == []
    section = window.stage.section
    font = section.font()
    font.setPixelSize(theme.Sizes.of(size[1]).stage)
    assert QFontMetrics(font).horizontalAdvance(section.words()) <= section.width()
    assert window.width() == size[0]
    assert window.stage.picture.height() >= 0.45 * size[1]


@pytest.mark.parametrize("name", catalogue.ids())
def test_no_words_of_a_scene_are_cut(app, qtbot, settle, name):
    made = PresentWindow([catalogue.load(name)], name)
    qtbot.addWidget(made)
    made.begin()
    made.resize(1280, 720)
    made.show()
    settle(made.session)
    assert cut_words(made) == []
    assert (made.width(), made.height()) == (1280, 720)
    made.close()


@pytest.mark.parametrize("name", ["bubble", "pour"])
def test_names_of_four_curves_are_all_seen(app, qtbot, settle, name):
    made = PresentWindow([catalogue.load(name)], name)
    qtbot.addWidget(made)
    made.begin()
    made.resize(1280, 720)
    made.show()
    qtbot.waitUntil(lambda: made.stage.chart.ready)
    made.session.step(1)
    settle(made.session)
    head = made.stage.chart._head
    assert head.text().count("<b>") == 4
    assert head.heightForWidth(head.width()) <= head.height()
    made.close()


def test_a_scene_says_what_its_section_shows_first(app, qtbot, settle):
    made = PresentWindow([catalogue.load(name) for name in ("push-pull", "ring")], "push-pull")
    qtbot.addWidget(made)
    made.begin()
    made.show()
    settle(made.session)
    section, choice = made.stage.section, made.controls.light.section
    assert (section.mode, choice.value()) == ("stress", "stress")
    side = "Seen from the side · stress along the bar"
    assert section.words() == side
    seen = []
    section.installEventFilter(watch := Words(section, seen))
    made.show_scene("ring")
    settle(made.session)
    qtbot.waitUntil(lambda: made.stage.session is made.session)
    assert (made.stage.section.mode, choice.value()) == ("temperature", "temperature")
    assert made.stage.section.words() == "Cut through the wall · temperature"
    # Until the ring is there the bar's section stays as it was.
    assert set(seen) <= {side}
    section.removeEventFilter(watch)
    made.close()


class Words(QObject):
    """Notes what a section says at each of its paint events."""

    def __init__(self, section, seen):
        super().__init__()
        self.section, self.seen = section, seen

    def eventFilter(self, _watched, event):
        if event.type() == QEvent.Type.Paint:
            self.seen.append(self.section.words())
        return False


def fits(label):
    room = label.contentsRect()
    flags = int(label.alignment()) | (Qt.TextFlag.TextWordWrap if label.wordWrap() else 0)
    metrics = QFontMetrics(label.font())
    needed = metrics.boundingRect(room.adjusted(0, 0, 0, 9999), flags, label.text())
    return needed.width() <= room.width() + 1 and needed.height() <= room.height() + 1


@pytest.mark.parametrize("height", [480, 720, 1080, 2160])
def test_sentence_is_for_the_back_row(app, qtbot, height):
    sizes = theme.Sizes.of(height)
    assert sizes.sentence >= height / 30
    assert sizes.stage >= height / 50


def test_longest_sentence_is_made_to_fit(window, qtbot):
    sentence = window.stage.sentence
    sentence.say("The ring is too hot and the drop floats on its own steam. " * 4)
    assert fits(sentence)
    sentence.say("Short.")
    assert sentence.fits(theme.Sizes.of(720).sentence)


def test_a_window_is_as_large_as_it_likes_or_as_the_screen(app, qtbot):
    made = StartWindow(list(DOORS))
    qtbot.addWidget(made)
    application.show(made)
    assert made.size() == made.sizeHint().boundedTo(made.screen().availableSize())


def test_every_key_is_listed(window, qtbot):
    """Each key that does something stands in the line that F1 shows."""
    press(qtbot, window, Key.Key_F1)
    keymap, line = window.remote.keymap, window.controls.line.text()
    assert window.controls.line.isVisible()
    listed = line.split(" · ")
    for act in ACTS:
        name, _, number = act.partition(".")
        if number in ("", "1"):
            called = " ".join(words.text(f"act.{name}", number="").split())
            keys = keymap.told(act)
            said = [one for one in listed if one.startswith(keys) and one.endswith(called)]
            assert len(said) == 1, act
        else:
            # Numbered ones stand from the first to the last; those between go up by one.
            assert keymap.keys[act][0].endswith(number)
    assert sum(len(keys) for keys in keymap.keys.values()) > 50
    press(qtbot, window, Key.Key_F1)
    assert not window.controls.line.isVisible()


def test_contrast():
    for back in (theme.STAGE, theme.PANEL, theme.RAISED):
        for ink in (theme.INK, theme.DIM, theme.ALERT, theme.TENSION, theme.COMPRESSION):
            assert theme.contrast(ink, back) >= 4.5
    assert theme.contrast(theme.ACCENT, theme.PANEL) >= 3
    assert theme.contrast("#06110e", theme.ACCENT) >= 4.5
    # White on black is 21 to 1 (WCAG 2.1).
    assert theme.contrast("#ffffff", "#000000") == pytest.approx(21)


def test_calls_do_not_lose_references_to_none(window):
    # PySide6 6.12.0 lost one at every void call under Python 3.11.
    label = QLabel(window)
    before = sys.getrefcount(None)
    for number in range(500):
        label.setText(str(number))
    assert sys.getrefcount(None) >= before - 20


def test_scenes_are_switched(app, qtbot, settle):
    other = dataclasses.replace(bar_scene.SCENE, id="other", title="Other bar")
    window = PresentWindow([bar_scene.SCENE, other], "bar")
    qtbot.addWidget(window)
    window.begin()
    window.show()
    settle(window.session)
    assert window.controls.scenes.isVisible()
    for name in ("other", "bar", "other"):
        window.show_scene(name)
        settle(window.session)
        assert window.session.scene.id == name
    assert "rate_MPa_s" in window.controls.controls
    window.close()
    assert window.worker.isFinished()


def test_other_scenes_are_offered_once_there_is_a_picture(window, qtbot, settle, monkeypatch):
    from demo_app.shells import present

    more = {n: dataclasses.replace(bar_scene.SCENE, id=n, title=n) for n in ("aaa", "zzz")}
    monkeypatch.setattr(present.catalogue, "ids", lambda: ("aaa", "bar", "zzz"))
    monkeypatch.setattr(present.catalogue, "load", more.__getitem__)
    others = present.Others(window)
    qtbot.waitUntil(lambda: window.controls.scenes.count() == 3)
    assert window.controls.scenes.currentText() == "Bent bar"
    assert [window.controls.scenes.itemData(i) for i in range(3)] == ["bar", "aaa", "zzz"]
    others.stop()


def test_a_scene_that_cannot_be_loaded_does_not_disturb_the_one_shown(
    window, qtbot, settle, monkeypatch, caplog
):
    from demo_app.shells import present

    def broken(name):
        raise InputError("unit 'psi' is not known", place="glass.toml, line 7", remedy="write GPa")

    monkeypatch.setattr(present.catalogue, "ids", lambda: ("bar", "zzz"))
    monkeypatch.setattr(present.catalogue, "load", broken)
    window.session.scrub(5.0)
    settle(window.session)
    others = present.Others(window)
    assert not window.controls.scenes.isHidden()
    qtbot.waitUntil(lambda: "glass.toml, line 7" in window.controls.line.text())
    assert window.session.time_s == pytest.approx(5.0, abs=0.06)
    assert window.controls.scenes.count() == 1
    assert "zzz" in caplog.text
    others.stop()


def test_doors(app, qtbot, count):
    window = StartWindow(list(DOORS))
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.show()
    chosen = count(window.chosen)
    qtbot.keyClick(window.doors[0], Key.Key_Return)
    assert chosen == [("present",)]
    assert words.text("present") == window.doors[0].accessibleName()
