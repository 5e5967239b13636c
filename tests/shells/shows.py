"""A small show of bars for tests of the presenter's window, and hands that work it."""

import dataclasses
import itertools

import bar_scene
from PySide6.QtCore import QCoreApplication, QElapsedTimer, QEvent, Qt, QThread
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from demo_app.content.cues.records import Answer, Contingency, Question, Sheet, Step
from demo_app.shells.audience import AudienceWindow
from demo_app.shells.present import PresentWindow

Key = Qt.Key
PATIENCE_MS = 30000
BAR = bar_scene.SCENE
BEAM = dataclasses.replace(BAR, id="beam", title="Beam", seconds=lambda _settings: 12.0)
BREAKS = Question(
    "Does it break?",
    "breaks",
    (Answer("It holds", equals=False), Answer("It breaks", equals=True)),
    settings={"strength_MPa": 20.0},
)
SHARE = Question(
    "How near is it to breaking after ten seconds?",
    "intensity_ratio",
    (Answer("Far", high=0.3), Answer("Half way", low=0.3, high=0.7), Answer("Near", low=0.7)),
    at_s=10.0,
)
EARLY = Contingency("it broke early", "It would not wait.", {"strength_MPa": 6.0})
NEVER = Contingency("it would not break", "No scratch, no crack.", {"strength_MPa": 180.0})
SHEET = Sheet(
    "Bars and beams",
    "Millrace Glass House (invented)",
    6.0,
    (
        Step("still", "A bar", "bar", seconds=60, say=("Here it is.",)),
        Step(
            "breaks",
            "A weak bar",
            "bar",
            {"rate_MPa_s": 6.0},
            at_s=3.0,
            seconds=90,
            question=BREAKS,
            contingencies=(EARLY, NEVER),
            catch_up="A bar is bent.",
        ),
        Step("share", "A beam", "beam", {"length_mm": 240.0}, seconds=90, question=SHARE),
        Step("more", "More of it", "bar", {"rate_MPa_s": 8.0}, at_s=2.0, seconds=60, priority=3),
        Step("end", "The end", "beam", {"thickness_mm": 12.0}, at_s=4.0, seconds=60),
    ),
)


def spin(until=lambda: True, patience_ms=PATIENCE_MS, each=lambda: None):
    """Let Qt run until something is true, at least once; `each` is done after every turn."""
    clock = QElapsedTimer()
    clock.start()
    while True:
        QCoreApplication.processEvents()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        each()
        if until():
            return
        assert clock.elapsed() < patience_ms, "waited in vain"
        QThread.msleep(1)


class Played:
    """A show in its windows, worked as a presenter works it.

    Parameters
    ----------
    two : bool
        Whether the audience has a window of its own.
    """

    def __init__(
        self, sheet=SHEET, scenes=(BAR, BEAM), *, two=False, running=None, size=(640, 480)
    ):
        self.window = PresentWindow(list(scenes), scenes[0].id, sheet, running)
        # Seconds between presses, for no two of a test's are as far apart as a hand's.
        seconds = itertools.count(100.0)
        self.window.remote._clock = lambda _event: next(seconds)
        self.told = []
        self.window.conductor.told.connect(self.told.append)
        self.out = AudienceWindow() if two else None
        self.window.resize(960, 600)

    def begin(self, *put_back, motion=False):
        """Show the windows, and wait for the first picture."""
        self.window.conductor.begin(*put_back)
        self.window.show()
        self.window.setFocus()
        if self.out is not None:
            self.out.resize(640, 360)
            self.out.show()
            self.window.set_out(self.out)
        for view in {self.window.show_page.view, *self.window.views}:
            view.set_motion(motion)
        self.wait()
        return self

    @property
    def conductor(self):
        return self.window.conductor

    @property
    def running(self):
        return self.conductor.running

    @property
    def session(self):
        return self.window.session

    @property
    def view(self):
        """What the audience sees."""
        return self.window.views[0]

    @property
    def line(self):
        """The line for the presenter."""
        return self.window.controls.line.text()

    def settled(self):
        """Whether every picture has come and is on every stage."""
        session = self.session
        stages = [view.stages for view in (self.window.show_page.view, *self.window.views)]
        return (
            session.frame is not None
            and session.settled
            and not session.restoring
            and not session.playing
            and all(one.session is session and not one.waiting for one in stages)
        )

    def wait(self, until=None, each=lambda: None):
        """Wait until something is true, or until all stands still."""
        spin(until or self.settled, each=each)

    def press(self, key, held=Qt.KeyboardModifier.NoModifier):
        """A key as the system brings it, to whatever has the focus."""
        target = QApplication.focusWidget() or self.window
        QTest.keyClick(target, key, held)
        QCoreApplication.processEvents()

    def next(self, times=1):
        for _ in range(times):
            self.press(Key.Key_PageDown)

    def back(self, times=1):
        for _ in range(times):
            self.press(Key.Key_PageUp)

    def at(self):
        """Where the show is: step and phase."""
        return self.running.id, self.running.phase

    def close(self):
        self.window.close()
        assert self.window.worker.isFinished()
        if self.out is not None:
            self.window.end()
            self.out.close()
            self.out.deleteLater()
        self.window.deleteLater()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
