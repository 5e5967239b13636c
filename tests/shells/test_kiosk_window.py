"""The kiosk's window: targets, ways, idle, hours, staff, and that nothing leads out of it.

Figures, and where they come from, stand beside each test.
"""

import dataclasses
import itertools
import shutil

import pytest
from kiosks import Kiosk, own_texts
from overlap import overlapping
from PySide6.QtCore import QEvent, QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import (
    QCloseEvent,
    QContextMenuEvent,
    QDragEnterEvent,
    QDropEvent,
    QKeyEvent,
    QMouseEvent,
)
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from shows import spin

from demo_app.content.kiosk.code import hashed
from demo_app.content.kiosk.hours import Hours, Span, local
from demo_app.content.kiosk.site import Site
from demo_app.content.kiosk.site_file import load
from demo_app.content.kiosk.texts import own_folder
from demo_app.ui import theme
from demo_app.ui.answering import Outcome
from demo_app.ui.kiosk.measures import CAPITAL_SHARE, MM_PER_INCH, TARGET_MM
from demo_app.ui.kiosk.staff import SECTIONS
from demo_app.ui.kiosk.words_label import WordsLabel

Key = Qt.Key
SIZES = [(1280, 720), (1920, 1080), (1080, 1920)]
CODE = "246813"
SITE = Site(code=hashed(CODE, bytes(16)))
MONDAY_NOON_S = 1_700_481_600.0 + 2 * 365 * 86400
"""Some instant after the year from which a clock counts as set."""


@pytest.fixture
def kiosk_of(app, home):
    made = []

    def make(*args, **kwargs):
        made.append(Kiosk(*args, **kwargs))
        return made[-1].begin()

    yield make
    for one in made:
        one.close()


@pytest.fixture
def kiosk(kiosk_of):
    return kiosk_of()


def states(kiosk):
    """Walks a kiosk through everything it can show, and says where it is."""
    window = kiosk.window
    yield "attract"
    window.begin_visit()
    yield "home"
    window._press_bar("languages")
    yield "languages"
    window._press_bar("back")
    for name in window.house.steps:
        window.open_step(name)
        kiosk.wait()
        yield f"{name} predict"
        window._predict(0)
        yield f"{name} do"
        window._act("do")
        kiosk.wait()
        yield f"{name} see"
        window._act("next")
        kiosk.wait(lambda: window.where.phase == "why")
        yield f"{name} why"
        window._act("try")
        yield f"{name} try"
        window._press_bar("home")
    kiosk.pass_time(window.house.site.idle_s + 1)
    yield "warning"
    window._answer_warning()
    window.knock()
    yield "pad"
    window.staff.pad.hide()
    window.staff.page.show()
    for name in (*SECTIONS, "quit"):
        window.staff.page.open(name)
        yield f"staff {name}"
    window.staff.close()


def small(kiosk):
    """Targets with a side under 10 mm, by the pixels' true size."""
    per_mm = kiosk.window.measures.per_mm
    return [
        (one.accessibleName(), one.width(), one.height())
        for one in kiosk.targets()
        if min(one.width(), one.height()) / per_mm < TARGET_MM - 0.01
    ]


@pytest.mark.parametrize(
    ("size", "dpi"), [*((size, 96.0) for size in SIZES), ((1080, 1920), 50.0)], ids=str
)
def test_targets_are_ten_millimetres(kiosk_of, size, dpi):
    # WCAG 2.2: 24 px (2.5.8), 44 px (2.5.5); here 10 mm of the panel's own pixels and 44 px.
    kiosk = kiosk_of(size=size, dpi=dpi, site=SITE)
    assert kiosk.window.measures.per_mm == pytest.approx(dpi / MM_PER_INCH, rel=1e-6)
    seen = 0
    for state in states(kiosk):
        assert not small(kiosk), state
        assert all(min(one.width(), one.height()) >= theme.TOUCH_PX for one in kiosk.targets())
        seen += len(kiosk.targets())
    assert seen > 200


def test_targets_grow_with_the_pixels(kiosk_of):
    # A small panel of many pixels: 10 mm are 79 of them.
    kiosk = kiosk_of(size=(1920, 1080), dpi=200.0)
    for state in itertools.islice(states(kiosk), 8):
        assert not small(kiosk), state
    assert kiosk.window.measures.target == 79


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_targets_keep_apart(kiosk_of, size):
    kiosk = kiosk_of(size=size, site=SITE)
    for state in states(kiosk):
        window = kiosk.window
        over = window.overlay
        boxes = [
            (one.accessibleName(), one.rect().translated(one.mapTo(window, QPoint(0, 0))))
            for one in kiosk.targets()
            if (over is None or over.isAncestorOf(one)) and one is not window.invite.button
        ]
        for (name, first), (other, second) in itertools.combinations(boxes, 2):
            assert not first.intersects(second), (state, name, other)
        for name, box in boxes:
            assert window.rect().contains(box), (state, name)


def forms():
    """Language, size, large letters: each of them a few times; the long form is all together."""
    for number, form in enumerate(
        itertools.product(("en", "de", "es"), ((1280, 720), (1080, 1920)), (False, True))
    ):
        yield pytest.param(*form, marks=() if number % 3 == 1 else pytest.mark.long)


@pytest.mark.parametrize(("tag", "size", "large"), [*forms()])
def test_no_words_are_cut(kiosk_of, tag, size, large):
    kiosk = kiosk_of(own_texts(), size=size, site=SITE)
    window = kiosk.window
    window.set_language(tag)
    window.set_ease("large_text", large)
    for state in words_only(kiosk):
        bad = [one.text() for one in kiosk.buttons() if not fits(one)]
        assert not bad, (state, bad)
        labels = [
            label.text()
            for label in window.findChildren(WordsLabel)
            if label.isVisible() and label.text() and not label_fits(label)
        ]
        assert not labels, (state, labels)
        if window.overlay is None:
            assert not overlapping(window.body), state


def words_only(kiosk):
    """Every page's words, without running a model."""
    window = kiosk.window
    yield "attract"
    window.go(dataclasses.replace(window.where, page="home"))
    yield "home"
    for name in window.house.steps:
        answers = len(window.house.step(window.tag, name).question.answers)
        for phase in ("predict", "do", "see", "why", "try"):
            for answer in range(answers if phase in {"do", "why"} else 1):
                where = dataclasses.replace(
                    window.where,
                    page="step",
                    step=name,
                    phase=phase,
                    prediction=answer,
                    outcome=Outcome(answers - 1 - answer, ""),
                )
                window.go(where)
                yield f"{name} {phase} {answer}"
    window.go(dataclasses.replace(window.where, page="languages"))
    yield "languages"


def fits(button):
    need = button.words_need()
    return need.height() <= button.height() and need.width() <= button.width()


def label_fits(label):
    return label._height(label.type_size, label.width()) <= label.height() + 1


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_large_letters_are_large_enough(kiosk_of, size):
    # EN 301 549, 5.1.4: a capital H of 0.7 degrees, which is 6.1 mm at 0.5 m.
    kiosk = kiosk_of(own_texts(), size=size)
    window = kiosk.window
    window.set_ease("large_text", True)
    per_mm = window.measures.per_mm
    for state in words_only(kiosk):
        for button in kiosk.buttons():
            assert button.type_size() * CAPITAL_SHARE / per_mm >= 6.1, (state, button.text())
        for label in window.findChildren(WordsLabel):
            if label.isVisible() and label.text() and window.body.isAncestorOf(label):
                assert label.type_size * CAPITAL_SHARE / per_mm >= 6.1, (state, label.text())


def test_controls_of_a_tall_panel_are_low(kiosk_of):
    # ADA 308: hands reach 380 to 1,220 mm above the floor; a panel of 1,220 mm with its lower
    # edge at 700 mm has its controls in its lower 520 mm.
    kiosk = kiosk_of(size=(1080, 1920), dpi=1920 / 1220 * MM_PER_INCH)
    window = kiosk.window
    for state in itertools.islice(states(kiosk), 14):
        for one in kiosk.targets():
            if window.overlay is None and one is not window.invite.button:
                top = one.mapTo(window, QPoint(0, 0)).y()
                above_floor = 700 + (window.height() - top) / window.measures.per_mm
                assert 380 <= above_floor <= 1220 + 35, (state, one.accessibleName(), above_floor)


def test_back_and_home_stay_where_they_are(kiosk):
    window = kiosk.window
    places = set()
    for state in states(kiosk):
        if state.split()[0] in {"warning", "pad", "staff", "attract"}:
            continue
        back, home = window.bar.buttons["back"], window.bar.buttons["home"]
        assert back.isVisible()
        assert home.isVisible()
        places.add((back.geometry().getRect(), home.geometry().getRect()))
    assert len(places) == 1
    back = window.bar.buttons["back"]
    assert back.mapTo(window, QPoint(0, 0)).y() > 0.8 * window.height()


def test_any_language_is_two_taps_away(kiosk):
    window = kiosk.window
    for state in ("attract", "home", "step"):
        for tag, one in window.house.languages.items():
            window.rest()
            if state != "attract":
                window.begin_visit()
            if state == "step":
                window.open_step("bubble")
            kiosk.tap(window.bar.buttons["languages"])
            # Each in its own name.
            kiosk.tap(kiosk.button(one.name))
            assert window.tag == tag
            assert window.where.page != "languages"
            assert window.home.title.text() == one.words["choose"]
    assert ("language", "es", None) in kiosk.counts.kept


def test_an_abandoned_visit_goes_back(kiosk):
    # WCAG 2.2, 2.2.1: a warning of at least 20 s that a simple action answers, ten times at least.
    window = kiosk.window
    window.set_language("de")
    window.set_ease("high_contrast", True)
    window.open_step("bubble")
    kiosk.wait()
    kiosk.pass_time(89)
    assert window.warning.isHidden()
    kiosk.pass_time(2)
    assert not window.warning.isHidden()
    for _ in range(12):
        kiosk.tap_at(QPoint(40, 40))
        assert window.warning.isHidden()
        assert kiosk.at == ("step", "predict")
        kiosk.pass_time(90.5)
        assert not window.warning.isHidden()
    kiosk.pass_time(18.5)
    assert not window.warning.isHidden()
    assert kiosk.at == ("step", "predict")
    kiosk.pass_time(2)
    assert kiosk.at == "attract"
    assert window.warning.isHidden()
    assert window.tag == window.house.language
    assert not window.ease.high_contrast
    assert kiosk.counts.kept[-1] == ("reset", "idle", None)
    kiosk.wait(lambda: window.runner.playing)


def test_a_touch_of_the_warning_touches_nothing_below(kiosk):
    window = kiosk.window
    window.begin_visit()
    for place in [one.geometry().center() for one in window.home.doors.values()]:
        kiosk.pass_time(95)
        assert not window.warning.isHidden()
        kiosk.tap_at(window.home.mapTo(window, place))
        assert window.warning.isHidden()
        assert kiosk.at == "home"
    kiosk.pass_time(95)
    kiosk.press(Key.Key_Return)
    assert window.warning.isHidden()
    assert kiosk.at == "home"


def test_a_finger_that_lies_there_is_nobody(kiosk):
    window = kiosk.window
    window.begin_visit()
    window.open_step("dish")
    kiosk.touch_down(QPoint(30, 30))
    kiosk.pass_time(95)
    assert not window.warning.isHidden()
    kiosk.pass_time(20)
    assert kiosk.at == "attract"
    kiosk.touch_up(QPoint(30, 30))


def test_what_moves_can_be_held(kiosk):
    # WCAG 2.2, 2.2.2: what moves by itself for more than 5 s can be paused.
    window = kiosk.window
    pause = window.bar.buttons["pause"]
    kiosk.wait(lambda: window.runner.playing)
    assert pause.isVisible()
    kiosk.tap(pause)
    assert not window.runner.playing
    assert pause.isVisible()
    kiosk.tap(pause)
    assert window.runner.playing
    window.begin_visit()
    assert pause.isVisible()
    window.open_step("bubble")
    window._predict(0)
    window._act("do")
    kiosk.wait(lambda: window.runner.playing)
    assert pause.isVisible()


def test_less_movement_moves_nothing(kiosk):
    window = kiosk.window
    window.begin_visit()
    window.set_ease("still", True)
    window.open_step("bubble")
    kiosk.wait()
    window._predict(1)
    window._act("do")
    kiosk.wait(lambda: window.where.outcome is not None)
    assert not window.runner.playing
    assert window.where.right
    window._press_bar("home")
    kiosk.wait()
    assert not window.runner.playing


def test_the_screen_is_dark_when_closed(kiosk_of):
    hours = Hours(((Span(10 * 60, 17 * 60),),) * 7)
    kiosk = kiosk_of(site=dataclasses.replace(SITE, hours=hours))
    window = kiosk.window
    kiosk.wall = MONDAY_NOON_S
    noon = local_hour(kiosk.wall)
    kiosk.wall += (12 - noon) * 3600
    kiosk.pass_time(6)
    assert window.closed.isHidden()
    # A visitor who is there at closing time is not cut off.
    window.begin_visit()
    kiosk.wall += 5.5 * 3600
    kiosk.pass_time(6)
    assert window.closed.isHidden()
    kiosk.pass_time(115)
    kiosk.pass_time(6)
    assert not window.closed.isHidden()
    assert window.runner.session is None
    image = window.grab().toImage()
    assert all(
        image.pixelColor(x, y).lightness() == 0
        for x in range(0, image.width(), 40)
        for y in range(0, image.height(), 40)
    )
    kiosk.tap_at(QPoint(300, 300))
    assert kiosk.at == "attract"
    assert "10:00" in window.closed.line.text()
    kiosk.pass_time(11)
    assert not window.closed.line.text()
    kiosk.wall += 17 * 3600
    kiosk.pass_time(6)
    assert window.closed.isHidden()
    kiosk.wait(lambda: window.runner.playing)


def local_hour(wall_s):
    return local(wall_s).hour


def test_cleaning_locks_for_thirty_seconds(kiosk):
    window = kiosk.window
    window.begin_visit()
    window.clean()
    for _ in range(29):
        kiosk.pass_time(1)
        kiosk.tap_at(QPoint(640, 300))
        kiosk.press(Key.Key_Return)
        assert not window.cleaning.isHidden()
    assert "1 second" in window.cleaning.title.text()
    kiosk.pass_time(1.1)
    assert window.cleaning.isHidden()
    assert kiosk.at == "attract"
    window.begin_visit()
    kiosk.tap(window.home.doors["bubble"])
    assert kiosk.at == ("step", "predict")


def test_the_picture_does_not_stay_in_one_place(kiosk):
    window = kiosk.window
    seen = set()
    for _ in range(100):
        kiosk.now += 45
        window.idle = dataclasses.replace(window.idle, since_s=kiosk.now)
        window.look()
        seen.add(window.body.pos().toTuple())
        assert window.rect().contains(window.body.geometry())
    assert len(seen) > 40
    assert max(x for x, _ in seen) - min(x for x, _ in seen) == 12


def test_the_screen_dims_when_nobody_comes(kiosk):
    kiosk.pass_time(601)
    assert kiosk.window.dark.share == pytest.approx(0.6)
    kiosk.tap_at(QPoint(300, 300))
    assert kiosk.window.dark.share == 1.0


# Staff


def hold(kiosk, right):
    window = kiosk.window
    y = window.measures.low.top() + 20 if window.measures.tall else 20
    at = QPoint(window.width() - 20 if right else 20, y)
    kiosk.touch_down(at)
    kiosk.now += 0.8
    kiosk.touch_up(at)


@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize("page", ["attract", "home"])
def test_staff_hold_two_corners_and_type_a_code(kiosk_of, size, page):
    kiosk = kiosk_of(size=size, site=SITE)
    window = kiosk.window
    if page == "home":
        window.begin_visit()
    for right in (False, True, True, False):
        assert window.staff.over is None
        hold(kiosk, right)
        spin()
    assert window.staff.over is window.staff.pad
    for digit in "999999":
        kiosk.tap(kiosk.button(digit))
    kiosk.tap(window.staff.pad.enter)
    assert window.staff.over is window.staff.pad
    assert window.staff.pad.line.text()
    for digit in CODE:
        kiosk.tap(kiosk.button(digit))
    kiosk.tap(window.staff.pad.enter)
    assert window.staff.over is window.staff.page
    kiosk.pass_time(121)
    assert window.staff.over is None
    assert kiosk.at == "attract"


def test_guessing_the_code_is_slow(kiosk_of):
    kiosk = kiosk_of(site=SITE)
    pad = kiosk.window.staff.pad
    kiosk.window.knock()
    for _ in range(3):
        kiosk.window.staff._enter("111111")
    assert "5" in pad.line.text()
    kiosk.window.staff._enter(CODE)
    assert kiosk.window.staff.over is pad
    kiosk.now += 6
    kiosk.window.staff._enter(CODE)
    assert kiosk.window.staff.over is kiosk.window.staff.page


def test_other_holds_open_nothing(kiosk_of):
    kiosk = kiosk_of(site=SITE)
    for order in itertools.product((False, True), repeat=4):
        if order == (False, True, True, False):
            continue
        for right in order:
            hold(kiosk, right)
            spin()
        kiosk.tap_at(QPoint(640, 300))
        assert kiosk.window.staff.over is None, order


def test_staff_set_what_the_site_says(kiosk_of, home):
    kiosk = kiosk_of(site=SITE, folder=home)
    window, room = kiosk.window, kiosk.window.staff
    window.knock()
    room._enter(CODE)
    page = room.page
    page.open("steps")
    kiosk.tap(page.section.buttons["bubble"])
    page.open("languages")
    kiosk.tap(page.section.buttons["es"])
    kiosk.tap(page.section.buttons["1:de"])
    page.open("brightness")
    kiosk.tap(page.section.buttons["0.6"])
    page.open("hours")
    kiosk.tap(page.section.always)
    kiosk.tap(page.section.rows[0][0])
    kiosk.tap(page.section.rows[1][1][1])
    site = load(home / "kiosk.toml")
    assert site.steps_off == ("bubble",)
    assert site.languages == ("en", "de")
    assert site.language == "de"
    assert site.brightness == 0.6
    assert site.hours.week[0] == ()
    assert site.hours.week[1] == (Span(10 * 60 + 30, 17 * 60),)
    assert site.code == SITE.code
    kiosk.tap(page.buttons["close"])
    assert window.tag == "de"
    assert "bubble" not in window.home.doors
    assert window.dark.share == pytest.approx(0.6)


def test_not_every_step_can_be_taken_away(kiosk_of, home):
    kiosk = kiosk_of(site=SITE, folder=home)
    room = kiosk.window.staff
    for name in kiosk.window.house.texts.ids:
        room._set_step(name, False)
    assert len(kiosk.window.house.steps) == 1
    for tag in ("en", "de", "es"):
        room._set_language(tag, False)
    assert len(kiosk.window.house.languages) == 1


def test_new_texts_come_from_a_folder(kiosk_of, home, tmp_path):
    stick = tmp_path / "stick"
    shutil.copytree(own_folder(), stick / "new words")
    kiosk = kiosk_of(site=dataclasses.replace(SITE, updates=stick), folder=home)
    window, room = kiosk.window, kiosk.window.staff
    window.knock()
    room._enter(CODE)
    room.page.open("update")
    kiosk.tap(room.page.section.buttons["0"])
    assert window.spoken.words["staff.update_done"] == room.page.line.text()
    kiosk.wait(lambda: kiosk.left == [2], 5000)
    room.page.open("update")
    (stick / "new words" / "texts.de.toml").write_text("kaputt")
    kiosk.tap(room.page.section.buttons["0"])
    assert room.page.line.text() == window.spoken.words["staff.update_refused"]
    assert "texts.de.toml" in room.page.section.labels[0].text()


def test_quitting_is_asked_twice(kiosk_of):
    kiosk = kiosk_of(site=SITE)
    window, room = kiosk.window, kiosk.window.staff
    window.knock()
    room._enter(CODE)
    kiosk.tap(room.page.buttons["quit"])
    assert not kiosk.left
    kiosk.tap(room.page.cancel)
    assert not kiosk.left
    kiosk.tap(room.page.buttons["quit"])
    kiosk.tap(room.page.sure)
    assert kiosk.left == [0]


# Nothing leaves

HELD = [
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.AltModifier,
    Qt.KeyboardModifier.MetaModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier,
]
WAYS = {Key.Key_Tab, Key.Key_Backtab, Key.Key_Return, Key.Key_Enter, Key.Key_Space, Key.Key_Select}
WAYS |= {Key.Key_Escape, Key.Key_Back, Key.Key_Left, Key.Key_Right, Key.Key_Up, Key.Key_Down}


def test_no_key_leads_out(kiosk):
    window = kiosk.window
    window.begin_visit()
    before = window.where
    for key in Key:
        for held in HELD:
            if key in WAYS and held in (HELD[0], HELD[4]):
                continue
            QApplication.sendEvent(window, QKeyEvent(QEvent.Type.KeyPress, key.value, held))
            QApplication.sendEvent(window, QKeyEvent(QEvent.Type.KeyRelease, key.value, held))
        assert window.where == before, key
    spin()
    assert window.isVisible()
    assert not kiosk.left
    assert outside(window) == []


def outside(window):
    """Windows, menus and dialogs besides the kiosk's."""
    return [
        one
        for one in QApplication.topLevelWidgets()
        # Charts of other tests' windows have left menus of their own, never shown.
        if one is not window and one.isVisible()
    ]


def test_it_is_not_closed_from_outside(kiosk):
    window = kiosk.window
    for _ in range(5):
        event = QCloseEvent()
        QApplication.sendEvent(window, event)
        assert not event.isAccepted()
        assert not window.close()
        QTest.keyClick(window, Key.Key_F4, Qt.KeyboardModifier.AltModifier)
    assert window.isVisible()


def test_neither_menus_nor_drops_nor_other_buttons(kiosk):
    window = kiosk.window
    window.begin_visit()
    data = QMimeData()
    data.setUrls([QUrl("file:///etc/passwd")])
    for widget in [window, *kiosk.targets()]:
        place = widget.rect().center()
        event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, place, widget.mapToGlobal(place))
        QApplication.sendEvent(widget, event)
        drag = QDragEnterEvent(
            place,
            Qt.DropAction.CopyAction,
            data,
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
        QApplication.sendEvent(widget, drag)
        assert not drag.isAccepted()
        drop = QDropEvent(
            QPointF(place),
            Qt.DropAction.CopyAction,
            data,
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
        QApplication.sendEvent(widget, drop)
        assert not drop.isAccepted()
        for button in (Qt.MouseButton.RightButton, Qt.MouseButton.MiddleButton):
            for kind in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease):
                mouse = QMouseEvent(
                    kind,
                    QPointF(place),
                    QPointF(widget.mapToGlobal(place)),
                    button,
                    button,
                    Qt.KeyboardModifier.NoModifier,
                )
                QApplication.sendEvent(widget, mouse)
    assert kiosk.at == "home"
    assert outside(window) == []


# Faults


def test_a_fault_opens_the_step_anew(kiosk):
    window = kiosk.window
    window.begin_visit()
    window.open_step("dish")
    window._predict(1)
    assert kiosk.at == ("step", "do")
    window.recover("something broke")
    assert kiosk.at == ("step", "predict")
    assert window.spoken.words["step_reset"] in kiosk.said
    assert "something broke" in window.house.problems
    assert ("reset", "fault", None) in kiosk.counts.kept
    for _ in range(4):
        window.recover("something broke")
    # So many within a minute: the supervisor makes a new window.
    assert kiosk.left == [1]


def test_a_model_that_fails_leads_home(kiosk_of, monkeypatch):
    kiosk = kiosk_of()
    window = kiosk.window
    window.begin_visit()

    class BrokenError(Exception):
        pass

    def broken(_settings, _state):
        raise BrokenError

    scene = window._scene("bar")
    monkeypatch.setattr(
        window.runner, "_scene", lambda _name: dataclasses.replace(scene, say=broken)
    )
    window.open_step("dish")
    kiosk.wait(lambda: kiosk.at == "home")
    spin(patience_ms=500)
    monkeypatch.setattr(window.runner, "_scene", lambda _name: scene)
    window.open_step("bubble")
    kiosk.wait()
    assert kiosk.at == ("step", "predict")
    assert window.house.problems
