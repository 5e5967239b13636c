"""A kiosk of bars for tests, with a clock of its own, and fingers, switches and ears for it."""

import dataclasses
import functools
import random

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible, QPointingDevice
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from shows import BAR, spin

from demo_app.content.cues.records import Answer, Question
from demo_app.content.kiosk.records import Control, KioskStep, Scenery, Texts
from demo_app.content.kiosk.site import Site
from demo_app.content.kiosk.texts import load, own_folder
from demo_app.content.kiosk.word_keys import STEP_IDS
from demo_app.shells.kiosking.house import House
from demo_app.shells.kiosking.window import KioskWindow
from demo_app.ui.kiosk.button import BigButton
from demo_app.ui.kiosk.stepper import Slide

QUESTION = Question(
    "Does it break?",
    "breaks",
    (Answer("It holds", equals=False), Answer("It breaks", equals=True)),
    settings={"strength_MPa": 20.0},
)
CONTROLS = (
    Control("strength_MPa", 5.0, 80.0, 5.0, label="Strength"),
    Control("rate_MPa_s", 1.0, 8.0, 1.0, label="Haste"),
)
WHOLE = 1000.0
"""Wall time when the kiosk of a test opens, s since 1970: the clock was never set."""


@functools.cache
def own_texts():
    """The texts that come with the app."""
    return load(own_folder())


@functools.cache
def bar_texts():
    """The app's words, with bars for steps."""
    own = own_texts()

    def step(name, title):
        return KioskStep(
            id=name,
            title=title,
            invitation="Bend it.",
            scene="bar",
            settings={},
            at_s=0.0,
            play=False,
            speed=50.0,
            seconds=30,
            point=False,
            question=QUESTION,
            do="Bend it",
            touch="Make it weaker.",
            see="Look at the middle.",
            why="Nothing is without an end.",
            description="A bar, dark all over.",
            controls=CONTROLS,
        )

    spoken = {
        tag: dataclasses.replace(
            one,
            steps=tuple(
                step(name, like.title) for name, like in zip(STEP_IDS, one.steps, strict=True)
            ),
        )
        for tag, one in own.spoken.items()
    }
    return Texts(
        spoken, (Scenery("bar", speed=5.0), Scenery("bar", {"rate_MPa_s": 6.0}, speed=9.0))
    )


class Counted:
    """Counts in a list."""

    def __init__(self):
        self.kept, self.problems = [], ()

    def add(self, kind, name="", answer=None):
        self.kept.append((kind, name, answer))

    def since(self, _since_s):
        found = {}
        for kind, name, answer in self.kept:
            key = (kind, name, -1 if answer is None else answer)
            found[key] = found.get(key, 0) + 1
        return found


class Kiosk:
    """A kiosk in its window, worked as visitors work it."""

    def __init__(self, texts=None, *, size=(1280, 720), site=None, folder=None, dpi=96.0):
        self.now, self.wall = 100.0, WHOLE
        # As long as the offscreen screen's pixels are not those of the panel that is meant.
        site = site or Site()
        side = 800 / dpi * 25.4
        site = dataclasses.replace(site, width_mm=side, height_mm=side)
        own = texts is None
        self.counts = Counted()
        house = House(site, bar_texts() if own else texts, self.counts, folder)
        more = {"scene": {"bar": BAR}.__getitem__} if own else {}
        self.window = KioskWindow(house, clock=lambda: self.now, wall=lambda: self.wall, **more)
        self.said, self.left = [], []
        self.window.announced.connect(self.said.append)
        self.window.left.connect(self.left.append)
        self.finger = touch_device()
        self.window.resize(*size)

    def begin(self):
        """Show the window, and wait for the first picture."""
        self.window.show()
        self.window.begin()
        self.window.stage.set_motion(False)
        self.wait()
        return self

    def wait(self, until=None, patience_ms=60000):
        """Until something is true, or the newest picture stands where it should."""
        spin(until or self.settled, patience_ms)

    def settled(self):
        session = self.window.runner.session
        return session is None or (session.frame is not None and not session.restoring)

    @property
    def where(self):
        return self.window.where

    @property
    def at(self):
        return (self.where.page, self.where.phase) if self.where.page == "step" else self.where.page

    def pass_time(self, seconds):
        """Let the kiosk's clock go on."""
        self.now += seconds
        self.wall += seconds
        self.window.look()

    # One finger

    def tap(self, widget, place=None):
        """Tap a widget with one finger."""
        at = widget.mapTo(self.window, place or widget.rect().center())
        self.tap_at(at)

    def tap_at(self, at):
        self.touch_down(at)
        self.touch_up(at)

    def touch_down(self, at):
        QTest.touchEvent(self.window, self.finger).press(0, at, self.window).commit()
        QApplication.processEvents()

    def touch_up(self, at):
        QTest.touchEvent(self.window, self.finger).release(0, at, self.window).commit()
        QApplication.processEvents()

    def button(self, said):
        """The button that says something."""
        found = [one for one in self.buttons() if said in (one.text(), one.accessibleName())]
        assert len(found) == 1, (said, [one.text() for one in self.buttons()])
        return found[0]

    def buttons(self):
        """All that can be pressed now."""
        return [one for one in self.targets() if isinstance(one, BigButton) and one.isEnabled()]

    def targets(self):
        """All that a finger can hit now."""
        return [
            one
            for one in self.window.findChildren(QWidget)
            if isinstance(one, (BigButton, Slide))
            and one.isVisible()
            and not one.visibleRegion().isEmpty()
        ]

    # Two switches

    def press(self, key, held=Qt.KeyboardModifier.NoModifier):
        """A key as the system brings it, to whatever has the focus."""
        QTest.keyClick(QApplication.focusWidget() or self.window, key, held)
        QApplication.processEvents()

    def walk_to(self, said):
        """Step with one switch until the focus is on something."""
        for _ in range(40):
            here = QApplication.focusWidget()
            if here is not None and said in (here.accessibleName(), getattr(here, "text", str)()):
                return
            self.press(Qt.Key.Key_Tab)
        raise AssertionError(f"{said!r} is not reached")

    def select(self, said):
        """Both switches: walk there, and select."""
        self.walk_to(said)
        self.press(Qt.Key.Key_Return)

    def close(self):
        self.window.end()
        self.window.close()
        assert self.window.worker.isFinished()
        self.window.deleteLater()
        spin()


_DEVICES = []


def touch_device():
    """The one touch screen: Qt keeps devices for as long as it runs."""
    if not _DEVICES:
        _DEVICES.append(QTest.createTouchDevice(QPointingDevice.DeviceType.TouchScreen))
    return _DEVICES[0]


def tree(interface):
    """An accessible object and all below it that are shown."""
    if interface is None or not interface.isValid():
        return
    state = interface.state()
    if state.invisible:
        return
    yield interface
    for place in range(interface.childCount()):
        yield from tree(interface.child(place))


def named(window, name, role=QAccessible.Role.Button):
    """The accessible object with a name and a role."""
    root = QAccessible.queryAccessibleInterface(window)
    return next(
        one for one in tree(root) if one.role() == role and one.text(QAccessible.Text.Name) == name
    )


def anywhere(random_: random.Random, window):
    """A place in the window."""
    return QPoint(random_.randrange(window.width()), random_.randrange(window.height()))
