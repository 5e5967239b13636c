"""Which screen is the audience's, and a window that follows it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QObject, QRect, Qt, Signal
from PySide6.QtWidgets import QWidget

from demo_app.ui import placer, words
from demo_app.ui.placer import Placer
from demo_app.ui.screens import Place, apart, audience_place

LAPTOP = Place("eDP-1", "", 0, 0, 1280, 720)
PROJECTOR = Place("HDMI-1", "P100", 1280, 0, 1920, 1080)
MONITOR = Place("DP-3", "M7", 3200, 0, 2560, 1440)


def test_the_audience_has_the_first_screen_that_is_not_the_presenters():
    assert audience_place((LAPTOP, PROJECTOR, MONITOR), LAPTOP) == PROJECTOR
    assert audience_place((LAPTOP, PROJECTOR, MONITOR), PROJECTOR) == LAPTOP


def test_the_remembered_screen_comes_first():
    assert audience_place((LAPTOP, PROJECTOR, MONITOR), LAPTOP, Place("DP-3", "M7")) == MONITOR


def test_a_device_is_known_again_at_another_socket():
    moved = Place("DP-9", "M7", 3200, 0, 2560, 1440)
    assert audience_place((LAPTOP, PROJECTOR, moved), LAPTOP, MONITOR) == moved


def test_a_socket_is_known_again_with_another_device():
    other = Place("DP-3", "X", 3200, 0, 800, 600)
    assert audience_place((LAPTOP, PROJECTOR, other), LAPTOP, MONITOR) == other


def test_two_devices_without_a_serial_number_are_told_by_their_sockets():
    first, second = Place("A", "", 1280, 0, 9, 9), Place("B", "", 2000, 0, 9, 9)
    assert audience_place((LAPTOP, first, second), LAPTOP, Place("B")) == second


def test_a_remembered_screen_that_is_the_presenters_now_is_not_taken():
    assert audience_place((LAPTOP, PROJECTOR), PROJECTOR, PROJECTOR) == LAPTOP


def test_one_screen_and_a_mirrored_one_leave_none():
    mirrored = Place("HDMI-1", "P100", 0, 0, 1024, 768)
    assert audience_place((LAPTOP,), LAPTOP) is None
    assert audience_place((LAPTOP, mirrored), LAPTOP) is None
    assert apart((LAPTOP, mirrored, PROJECTOR)) == (LAPTOP, PROJECTOR)


def test_a_place_is_stored_and_read_again():
    assert audience_place((LAPTOP, PROJECTOR), LAPTOP, Place.from_record(PROJECTOR.record()))
    assert Place.from_record(PROJECTOR.record()).likeness(PROJECTOR) == 3


@pytest.mark.parametrize("record", [None, [], {}, {"name": 3}, {"name": "A", "serial": None}])
def test_a_record_that_is_none_is_no_place(record):
    assert Place.from_record(record) is None


numbers = st.integers(-3000, 3000)
sizes = st.integers(1, 3000)
some = st.builds(
    Place, st.sampled_from("ABC"), st.sampled_from(["", "1", "2"]), numbers, numbers, sizes, sizes
)


@given(places=st.lists(some, min_size=1, max_size=5), remembered=st.none() | some)
def test_the_audience_never_gets_any_of_the_presenters_pixels(places, remembered):
    chosen = audience_place(places, places[0], remembered)
    assert chosen is None or not chosen.box.intersects(places[0].box)


# The window that follows


class Screen(QObject):
    """A screen of our own making, as the offscreen platform has but one."""

    geometryChanged = Signal()

    def __init__(self, place, real):
        super().__init__()
        self.place, self.real = place, real

    def name(self):
        return self.place.name

    def serialNumber(self):
        return self.place.serial

    def geometry(self):
        return self.place.box


class Handle(QObject):
    screenChanged = Signal()

    def setScreen(self, screen):
        pass

    def setGeometry(self, box):
        pass


class Fake(QWidget):
    """A top-level window that knows which of our screens it is on."""

    def __init__(self, screens, box):
        super().__init__()
        self._screens = screens
        # The offscreen platform moves a full-screen window to its own screen.
        self.setWindowFlags(
            Qt.WindowType.Window
            | Qt.WindowType.BypassWindowManagerHint
            | Qt.WindowType.FramelessWindowHint
        )
        self.setGeometry(box)

    def screen(self):
        middle = self.geometry().center()
        return next(
            (one for one in self._screens if one.geometry().contains(middle)), self._screens[0]
        )


@pytest.fixture
def desk(app, qtbot, monkeypatch):
    """A laptop and a projector, a presenter's window on the first, and a placer."""
    screens = [Screen(LAPTOP, None), Screen(PROJECTOR, None)]
    presenter, audience = (Fake(screens, QRect(10, 10, 600, 400)) for _ in range(2))
    for one in (presenter, audience):
        qtbot.addWidget(one)
    presenter.show()
    handles = {presenter: Handle(), audience: Handle()}
    monkeypatch.setattr(Placer, "_handle", staticmethod(handles.__getitem__))
    monkeypatch.setattr(placer, "SETTLE_MS", 0)
    monkeypatch.setattr(placer, "LOOK_MS", 0)
    made = Placer(audience, presenter, screens=lambda: screens)
    made.screens, made.presenter, made.audience = screens, presenter, audience
    made.handles = handles
    made.begin()
    yield made
    made.end()


def unplug(desk, qtbot):
    gone = desk.screens.pop()
    desk._removed(gone)
    return gone


def plug(desk, screen):
    desk.screens.append(screen)
    desk._added(screen)


def test_the_window_stands_on_the_projector(desk, count):
    assert desk.audience.isVisible()
    assert desk.audience.geometry() == PROJECTOR.box
    assert desk.place_now == PROJECTOR


def test_it_is_hidden_at_once_and_comes_back(desk, qtbot, count):
    told, single, placed = count(desk.told), count(desk.single), count(desk.placed)
    gone = unplug(desk, qtbot)
    assert not desk.audience.isVisible()
    assert single == [()]
    assert told == [(words.text("audience.gone"),)]
    qtbot.waitUntil(lambda: not desk._later.isActive())
    assert not desk.audience.isVisible()
    plug(desk, gone)
    qtbot.waitUntil(desk.audience.isVisible)
    assert placed == [(PROJECTOR,)]
    assert desk.audience.geometry() == PROJECTOR.box


def test_a_lost_laptop_screen_hides_the_audiences_window_too(desk, qtbot):
    lost = desk.screens.pop(0)
    desk._removed(lost)
    assert not desk.audience.isVisible()
    desk.presenter.move(1300, 10)  # the system moves the presenter's window to what is left
    qtbot.waitUntil(lambda: not desk._later.isActive())
    assert not desk.audience.isVisible()


def test_mirroring_hides_it(desk, qtbot):
    desk.screens[1].place = Place("HDMI-1", "P100", 0, 0, 1280, 720)
    desk.audience.setGeometry(0, 0, 1280, 720)  # the system moves it along
    desk.screens[1].geometryChanged.emit()
    assert not desk.audience.isVisible()


def test_two_windows_change_screens(desk, qtbot, count):
    chosen = count(desk.chosen)
    desk.screens[1].availableGeometry = lambda: PROJECTOR.box
    desk.swap()
    assert not desk.audience.isVisible()
    qtbot.waitUntil(desk.audience.isVisible)
    assert desk.presenter.screen().place == PROJECTOR
    assert desk.audience.geometry() == LAPTOP.box
    assert chosen == [(LAPTOP,)]


def test_a_window_that_does_not_reach_its_screen_is_taken_away(desk, qtbot, count):
    told = count(desk.told)
    stuck = QRect(1300, 40, 300, 200)
    desk.audience.setGeometry = lambda box: QWidget.setGeometry(desk.audience, stuck)
    desk.audience.setGeometry(None)
    desk.place()
    qtbot.waitUntil(lambda: not desk.audience.isVisible() and not desk._look.isActive())
    assert told[-1] == (words.text("audience.unplaced", name="HDMI-1"),)


def test_one_screen_is_told_once(desk, qtbot, count):
    unplug(desk, qtbot)
    told = count(desk.told)
    for _ in range(3):
        desk.place()
    assert told == []
