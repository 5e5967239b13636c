"""What an audience sees: freezing, passing from scene to scene, questions, cards, captions."""

import gc
import itertools
import math
from dataclasses import replace

import bar_scene
import numpy as np
import overlap
import psutil
import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QPoint, Qt
from PySide6.QtGui import QCloseEvent, QGuiApplication
from PySide6.QtWidgets import QLabel, QWidget

from demo_app.base.errors import InputError
from demo_app.shells import audience
from demo_app.shells.audience import AudienceWindow
from demo_app.ui import theme
from demo_app.ui.audience_view import AudienceView, sizes_of
from demo_app.ui.captions import pieces, reading_s
from demo_app.ui.cards import Card
from demo_app.ui.field import Field
from demo_app.ui.playing import Session
from demo_app.ui.question_view import Poll
from demo_app.ui.stage_view import StageView

Key = Qt.Key


@pytest.fixture
def opened(worker):
    made = []

    def make(scene=bar_scene.SCENE):
        session = Session(scene, worker)
        session.begin()
        made.append(session)
        return session

    def close(session):
        made.remove(session)
        session.close()

    make.close = close
    yield make
    for session in made:
        session.close()


@pytest.fixture
def view(app, qtbot):
    made = AudienceView()
    qtbot.addWidget(made)
    made.setStyleSheet(theme.style_sheet(theme.Sizes.of(720)))
    made.set_motion(False)
    made.resize(1280, 720)
    made.show()
    yield made
    made.stages.clear()


@pytest.fixture
def session(view, opened, settle, qtbot):
    made = opened()
    view.set_session(made)
    settle(made)
    qtbot.waitUntil(lambda: view.stage.chart.ready)
    made.scrub(3.0)
    settle(made)
    return made


def picture(widget):
    """Pixels of a widget as they are on the screen."""
    image = widget.grab().toImage()
    return np.frombuffer(image.constBits(), np.uint8).copy()


def seen(view):
    return picture(view.stage)


# Freezing


def test_a_frozen_stage_keeps_everything_while_the_session_goes_on(view, session, settle, qtbot):
    before = seen(view)
    view.set_frozen(True)
    assert view.state == "frozen"
    for _ in range(8):  # the worker uses the memory of old pictures again
        session.step(1)
        settle(session)
    session.set_setting("flip", True)
    session.hold()
    view.stage.set_section_mode("stress")
    view.stage.choose_traces(())
    settle(session)
    np.testing.assert_array_equal(seen(view), before)
    view.set_frozen(False)
    settle(session)
    assert view.state == "live"
    assert view.stage.section.mode == "stress"
    assert not view.stage.chart.isVisible()
    assert view.stage.held.isVisible()
    assert view.stage.picture._pixels is session.frame.pixels


def test_freezing_leaves_the_session_alone(view, session, settle):
    frame, size = session.frame, session.size
    view.set_frozen(True)
    view.set_frozen(False)
    settle(session)
    assert session.frame is frame
    assert session.size == size


# Two views of one session


def test_only_the_leading_view_sets_the_pictures_size(view, session, app, qtbot, settle):
    other = StageView(leads=False)
    qtbot.addWidget(other)
    other.set_session(session)
    other.resize(500, 400)
    other.show()
    session.step(1)
    settle(session)
    assert session.size == view.stage.picture.picture_size()
    assert other.picture.shape == session.size
    other.set_leads(True)
    settle(session)
    assert session.size == other.picture.picture_size()
    other.clear()


@pytest.mark.parametrize("size", [(400, 300), (300, 600), (1100, 320)])
def test_a_view_that_does_not_lead_shows_the_piece_in_its_place(app, qtbot, view, session, size):
    other = StageView(leads=False)
    qtbot.addWidget(other)
    other.set_session(session)
    other.resize(*size)
    other.show()
    other.show_frame(session.frame)
    for one in (other.picture, view.stage.picture):
        one._marks = ()  # words are as large in a small view
    image = other.picture.grab().toImage()
    large = view.stage.picture.grab().toImage()
    # In millimetres: the middle of the bar is dark, its edges are bright, around it is dark.
    for x_mm, y_mm in ((0, 0), (20, 12), (-20, -12), (60, 8), (0, 22)):
        found = []
        for one in (image, large):
            field = Field.of(session.frame.stage, one.width(), one.height())
            place = field.point(x_mm, y_mm).toPoint()
            found.append(one.pixelColor(place).lightness())
        assert abs(found[0] - found[1]) < 24
    other.clear()


# From scene to scene


def other_scene(**changes):
    return replace(bar_scene.SCENE, id="other", **changes)


def test_the_old_picture_stays_until_the_new_one_is_there(view, session, opened, settle, qtbot):
    old, before = view.stage, seen(view)
    opened.close(session)
    new = opened(other_scene())
    view.set_session(new)
    assert view.stages.waiting
    assert view.stage is old
    np.testing.assert_array_equal(seen(view), before)
    settle(new)
    assert not view.stages.waiting
    assert view.stage is not old
    assert view.stage.session is new
    # The stage that came stands as it will stay: its picture has the size of its place.
    assert view.stage.picture.shape == view.stage.picture.picture_size()
    assert view.stage.geometry() == old.geometry()
    assert old.picture.shape is None  # its memory is gone


def test_a_scene_that_never_comes_leaves_the_old_one(view, session, opened, qtbot, caplog):
    def broken(settings):
        raise ValueError("no start")

    before = seen(view)
    opened.close(session)
    with caplog.at_level("CRITICAL", logger="lehrlight"):
        new = opened(other_scene(start=broken))
        view.set_session(new)
        qtbot.waitUntil(lambda: new.settled)
    assert new.frame is None
    np.testing.assert_array_equal(seen(view), before)
    # The show goes on with the next one.
    opened.close(new)
    third = opened()
    view.set_session(third)
    qtbot.waitUntil(lambda: view.stage.session is third)


def test_a_frozen_view_passes_on_once_it_thaws(view, session, opened, settle, qtbot):
    view.set_frozen(True)
    before = seen(view)
    opened.close(session)
    new = opened(other_scene())
    view.set_session(new)
    settle(new)
    np.testing.assert_array_equal(seen(view), before)
    view.set_frozen(False)
    assert view.stage.session is new


def test_old_stages_do_not_act_on_their_session(view, session, opened, qtbot, count):
    tapped = count(view.stages.tapped)
    opened.close(session)
    view.set_session(opened(other_scene()))
    qtbot.mouseClick(view.stage.picture, Qt.MouseButton.LeftButton)
    assert tapped == []
    qtbot.waitUntil(lambda: not view.stages.waiting)
    qtbot.mouseClick(view.stage.picture, Qt.MouseButton.LeftButton)
    assert tapped == [()]


def test_one_scene_fades_into_the_next(view, session, opened, qtbot):
    view.set_motion(True)
    before = seen(view).astype(int)
    opened.close(session)
    view.set_session(opened(other_scene()))
    qtbot.waitUntil(lambda: not view.stages.waiting)
    fader = view.stages._fader
    assert fader.isVisible()
    # At its beginning the old picture is nearly all that is seen.
    first = picture(view.stages).astype(int)
    assert np.abs(first - before).mean() < 0.5 * max(np.abs(seen(view) - before).mean(), 1e-9) + 8
    qtbot.waitUntil(lambda: not fader.isVisible(), timeout=3000)
    assert fader._picture is None


@pytest.mark.slow
def test_a_thousand_scenes_take_no_more_memory_than_a_few(view, worker, settle, qtbot):
    process = psutil.Process()

    def switch(times):
        for _ in range(times):
            old = view.stages.session
            new = Session(bar_scene.SCENE, worker)
            new.begin()
            if old is not None:
                old.close()
            view.set_session(new)
            qtbot.waitUntil(lambda new=new: view.stage.session is new)
            if old is not None:
                old.deleteLater()
                # As the event loop does it, which a test is never back in.
                QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)

    switch(100)
    gc.collect()
    before = process.memory_info().rss
    widgets = len(view.findChildren(QWidget))
    switch(900)
    gc.collect()
    grown = (process.memory_info().rss - before) / 2**20
    assert len(view.findChildren(QWidget)) == widgets
    # A picture of this view has 2 MB: 900 that were kept would take 1,800.
    assert grown < 40
    view.stages.session.close()


# Over the stage


POLL = Poll("Where?", ("Here", "There", "Nowhere"), (4, 1, 0))


def rows(view):
    return view.question.rows[: len(view.question.poll.answers)]


def test_a_question_tells_more_from_phase_to_phase(view, session):
    view.show_question(POLL)
    assert view.state == "question"
    assert [row.words.text() for row in rows(view)] == ["Here", "There", "Nowhere"]
    assert [row.letter.text() for row in rows(view)] == ["A", "B", "C"]
    assert "4" not in view.question.said()
    view.show_question(replace(POLL, phase="count"))
    assert [row.hands.text() for row in rows(view)] == ["4 hands", "1 hand", "0 hands"]
    assert all(row.bar.share is None for row in rows(view))
    view.show_question(replace(POLL, phase="bars", right=1))
    assert [row.bar.share for row in rows(view)] == [1.0, 0.25, 0.0]
    assert "Right" not in view.question.said()
    view.show_question(replace(POLL, phase="result", right=1, happened="it cracked there"))
    assert [row.framed for row in rows(view)] == [False, True, False]
    assert [row.bar.solid for row in rows(view)] == [False, True, False]
    assert rows(view)[1].verdict.text() == "✓ Right"
    assert "What happened: it cracked there" in view.question.accessibleName()
    view.show_question(None)
    assert view.state == "live"


def test_nothing_moves_from_one_phase_of_a_question_to_the_next(view, session):
    places = []
    for phase in ("ask", "count", "bars", "result"):
        view.show_question(replace(POLL, phase=phase, right=1, happened="it cracked there"))
        parts = [part for row in rows(view) for part in (row, row.words, row.letter)]
        sizes = [row.words.type_size for row in rows(view)]
        places.append(([part.geometry() for part in [view.question.ask, *parts]], sizes))
    assert all(place == places[0] for place in places)


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"phase": "later"}, "no phase"),
        ({"answers": ("One",), "counts": ()}, "1 answers"),
        ({"counts": (1, 2)}, "counts"),
        ({"counts": (1, 2, -3)}, "counts"),
        ({"right": 3}, "number 4 of 3"),
    ],
)
def test_a_question_that_makes_no_sense_is_refused(changes, said):
    with pytest.raises(InputError, match=said):
        replace(POLL, **changes)


def test_an_alert_stands_above_the_dark_and_all_else_below_it(view, session, qtbot):
    view.show_question(POLL)
    view.show_card(Card("Welcome"))
    assert view.state == "card"
    view.set_blank(True)
    assert view.state == "blank"
    assert seen_whole(view).max() <= max(8, 9, 11)
    view.show_card(Card("Stay in your seats", alert=True))
    assert view.state == "card"
    view.show_card(None)
    assert view.state == "blank"
    view.set_blank(False)
    qtbot.waitUntil(lambda: view.state == "question")


def seen_whole(view):
    return picture(view).reshape(-1, 4)[:, :3]


def test_a_leaning_elbow_does_not_make_the_screen_flash(view, session, count, qtbot):
    changed = count(view.changed)
    for _ in range(40):
        view.set_blank(True)
        view.set_blank(False)
    view.set_blank(True)
    assert len(changed) == 1
    assert view.state == "blank"
    qtbot.waitUntil(lambda: not view._pace.isActive())
    assert len(changed) == 1


def test_any_widget_can_be_shown_and_comes_back(view, session):
    card = QLabel("grey steps")
    view.show_widget(card)
    assert view.state == "widget"
    assert card.isVisible()
    assert card.geometry() == view.rect()
    view.show_widget(None)
    assert view.state == "live"
    assert card.parent() is None


def test_the_session_goes_on_below_a_card(view, session, settle):
    view.show_card(Card("A break"))
    session.step(1)
    settle(session)
    view.show_card(None)
    assert view.stage.picture._pixels is session.frame.pixels


# What was done to the light


def notes(view):
    return [one.said for one in overlap.drawn(view) if one.said.startswith(("bright", "Calm"))]


def test_a_gain_and_a_dimming_are_told_on_the_picture_frozen_or_not(view, session, settle):
    assert notes(view) == []
    session.brighten()
    settle(session)
    view.stage.show_frame(replace(session.frame, dimmed=0.4))
    told = ["brightened 10 ×", "Calm picture: dimmed to 40 % because of its stripes"]
    assert notes(view) == told
    view.set_frozen(True)
    session.brighten()
    settle(session)
    assert notes(view) == told
    assert overlap.painted(view) == []


# Captions


def test_captions_keep_their_room(view, session, settle):
    whole = view.stages.height()
    view.set_caption_languages(2)
    room = view.stages.height()
    assert room < whole
    view.set_captions(["The rim is hot.", "Der Rand ist heiß."])
    assert view.captions.shown() == ("The rim is hot.", "Der Rand ist heiß.")
    view.set_captions([])
    assert view.stages.height() == room
    assert view.captions.shown() == ("", "")
    settle(session)


def test_long_captions_come_in_pieces_at_full_size(view, session, qtbot, monkeypatch):
    monkeypatch.setattr("demo_app.ui.captions.reading_s", lambda said: 0.01)
    view.set_caption_languages(2)
    said = " ".join(f"word{number}" for number in range(60))
    heard = []
    view.set_captions([said, said.upper()])
    while not heard or heard[-1] != view.captions.shown():
        heard.append(view.captions.shown())
        assert [label.type_size for label in view.captions._labels] == [26, 26]
        qtbot.waitUntil(
            lambda: heard[-1] != view.captions.shown() or not view.captions._next.isActive()
        )
    # Capitals are wider and take more pieces: the other language's stay meanwhile.
    texts = zip(*heard, strict=True)
    first, second = ([one for one, _ in itertools.groupby(text)] for text in texts)
    assert " ".join(first) == said
    assert " ".join(second) == said.upper()
    assert len(first) < len(second)


def test_a_short_caption_stays_whole_beside_a_long_one(view, session, qtbot, monkeypatch):
    monkeypatch.setattr("demo_app.ui.captions.reading_s", lambda said: 0.01)
    view.set_caption_languages(2)
    long = " ".join(f"word{number}" for number in range(60))
    view.set_captions(["The rim is hot.", long])
    # Another picture: the short text is the same, and the long one is read to its end first.
    view.set_captions(["The rim is hot.", "Der Rand ist heiß."])
    assert view.captions.shown() == ("The rim is hot.", view.captions.shown()[1])
    assert view.captions.shown()[1].startswith("word0")
    qtbot.waitUntil(lambda: view.captions.shown() == ("The rim is hot.", "Der Rand ist heiß."))


def test_pieces_hold_every_word_once():
    said = "one two three four five six seven"
    for number in range(1, 8):
        cut = pieces(said, number)
        assert len(cut) == number
        assert " ".join(cut) == said


def test_captions_stay_as_long_as_reading_takes():
    # 160 to 180 words a minute is common practice in subtitling (from memory).
    assert reading_s(["one"] * 2 + ["one " * 160]) == pytest.approx(60)
    assert reading_s(["one"]) == 2.0
    assert reading_s(["one " * 16, "one"]) == pytest.approx(6.0)


@pytest.mark.parametrize("height", [360, 480, 720, 1080, 2160])
def test_captions_are_read_from_the_back_row(view, session, height):
    """ISO 9241-3: capitals of 16 minutes of arc at the least, 20 to 22 preferred."""
    sizes = sizes_of(height)
    metrics = view.captions._labels[0].metrics(sizes.sentence * 10)
    capital = metrics.capHeight() / 10
    # The back row five picture heights away (common practice: four to six).
    minutes = math.degrees(math.atan(capital / (5 * height))) * 60
    assert minutes >= 16


# Its window


class FromOutside(QCloseEvent):
    def spontaneous(self):
        return True


@pytest.fixture
def window(app, qtbot):
    made = AudienceWindow()
    qtbot.addWidget(made)
    made.resize(640, 360)
    yield made
    made.close()


def test_the_window_is_closed_by_the_program_alone(window, qtbot):
    window.show()
    wish = FromOutside()
    window.closeEvent(wish)
    assert not wish.isAccepted()
    for key in (Key.Key_Escape, Key.Key_F5, Key.Key_Q, Key.Key_F4):
        qtbot.keyClick(window, key)
    assert window.isVisible()
    assert window.close()


def test_the_window_asks_for_no_focus(window):
    window.show()
    assert window.windowFlags() & Qt.WindowType.FramelessWindowHint
    assert window.windowFlags() & Qt.WindowType.WindowDoesNotAcceptFocus
    assert window.testAttribute(Qt.WidgetAttribute.WA_ShowWithoutActivating)
    assert QGuiApplication.focusWindow() is not window.windowHandle()


@pytest.mark.parametrize(("platform", "managed"), [("xcb", False), ("windows", True)])
def test_x11_window_managers_leave_it_alone(platform, managed):
    bypass = bool(audience.flags(platform) & Qt.WindowType.BypassWindowManagerHint)
    assert bypass is not managed


def test_a_resting_cursor_goes(window, qtbot):
    window.show()
    window._rest.setInterval(10)
    qtbot.mouseMove(window, QPoint(20, 20))
    qtbot.mouseMove(window, QPoint(40, 40))
    qtbot.waitUntil(lambda: window.cursor().shape() == Qt.CursorShape.BlankCursor)
    qtbot.mouseMove(window, QPoint(60, 40))
    assert window.cursor().shape() != Qt.CursorShape.BlankCursor


def test_the_presenters_mouse_leaves_no_trace(window, opened, settle):
    session = opened()
    window.show()
    window.view.set_session(session)
    settle(session)
    assert window.view.testAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
    window.view.stages.clear()
