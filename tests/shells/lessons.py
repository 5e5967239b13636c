"""A lesson in its window, and hands that work it: with keys alone, or with touches alone."""

import itertools

from PySide6.QtCore import QCoreApplication, QEvent, QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QSlider, QTabBar
from shows import spin

from demo_app.content.lessons.load import load, own_lessons
from demo_app.content.running.records import DRIVE, VOTING
from demo_app.shells.audience import AudienceWindow
from demo_app.shells.teaching.window import PAGES, OutreachWindow

Key = Qt.Key
LESSONS = {path.stem: path for path in own_lessons()}
TOUCH_PX = 44
"""Least size of what is touched (WCAG 2.2, 2.5.5)."""


class Class:
    """A lesson that runs."""

    def __init__(self, lesson, *, two=False, size=(1280, 720)):
        self.window = OutreachWindow(load(LESSONS[lesson]) if isinstance(lesson, str) else lesson)
        seconds = itertools.count(100.0)
        self.window.remote._clock = lambda _event: next(seconds)
        self.out = AudienceWindow() if two else None
        self.window.resize(*size)
        self.window.begin()
        self.window.show()
        self.window.setFocus()
        if self.out is not None:
            self.out.resize(640, 360)
            self.out.show()
            self.window.set_out(self.out)
        for view in {self.window.show_page.view, *self.window.views}:
            view.set_motion(False)
        self.wait()

    @property
    def session(self):
        return self.window.session

    @property
    def running(self):
        return self.window.running

    @property
    def step(self):
        """The lesson's step that is shown."""
        return self.window.step

    @property
    def view(self):
        """What the class sees."""
        return self.window.views[0]

    def at(self):
        return self.running.id, self.running.phase

    @property
    def last(self):
        return self.running.place == len(self.running.ids) - 1

    def wait(self, until=None):
        spin(until or self.there)

    def there(self):
        """Whether the step's picture is there."""
        session = self.session
        return session is None or (session.frame is not None and not session.restoring)

    def press(self, key, held=Qt.KeyboardModifier.NoModifier):
        QTest.keyClick(QApplication.focusWidget() or self.window, key, held)
        QCoreApplication.processEvents()

    def touch(self, widget):
        """A tap in the middle of what is seen of a widget."""
        assert widget.isVisible()
        assert widget.isEnabled()
        for area in self.window.findChildren(type(self.window.panel.page)):
            if area.isAncestorOf(widget):
                area.ensureWidgetVisible(widget)
        QTest.mouseClick(widget, Qt.MouseButton.LeftButton, pos=widget.rect().center())
        QCoreApplication.processEvents()

    def go_to(self, id, phase="open"):
        """Open a step and walk to one of its parts."""
        if self.running.phase == DRIVE:
            self.window.act("next")
        self.window.act(f"jump.{self.running.ids.index(id)}")
        self.wait()
        while self.running.phase != phase:
            self.window.act("next")
            self.wait()
        assert self.at() == (id, phase)

    def check(self):
        """Nothing is shown, and nothing can be, but what the lesson has written for this place."""
        window, shown = self.window, self.window.conductor.step
        session = self.session
        assert window.pages.currentWidget() in [window.named[name] for name in PAGES]
        if not shown.scene:
            assert session is None
            return
        if session is None:
            return
        assert session.scene.id == shown.scene
        step = self.step
        bounds = {one.name: one for one in step.bounds} if self.running.phase == DRIVE else {}
        allowed = {**shown.settings}
        if self.running.phase in ("reveal", "result"):
            allowed |= shown.question.settings
        for entry in session.timeline.plan:
            for name in entry.settings.__dataclass_fields__:
                value = getattr(entry.settings, name)
                if name in bounds:
                    assert bounds[name].holds(value), (name, value)
                elif name not in LIGHT.get(shown.scene, ()) and self.running.phase != "share":
                    default = getattr(session.scene.settings(), name)
                    assert value == allowed.get(name, default), (name, value)

    def small(self):
        """What can be touched and is too small for a finger."""
        kinds = (QAbstractButton, QComboBox, QSlider, QTabBar)
        found = [one for kind in kinds for one in self.window.findChildren(kind)]
        return [
            (type(one).__name__, one.accessibleName(), one.width(), one.height())
            for one in found
            if one.isVisibleTo(self.window)
            and not one.visibleRegion().isEmpty()
            and min(one.width(), one.height()) < TOUCH_PX
        ]

    def close(self):
        self.window.close()
        assert self.window.worker.isFinished()
        if self.out is not None:
            self.out.close()
            self.out.deleteLater()
        self.window.deleteLater()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


LIGHT = {"light-table": ("turn_deg", "tint_plate", "lamp")}


class Keys:
    """Hands on the keyboard alone."""

    def __init__(self, taught):
        self.taught = taught

    def next(self):
        self.taught.press(Key.Key_PageDown)

    def vote(self, answer):
        self.taught.press(getattr(Key, f"Key_{answer + 1}"))

    def reach(self, widget):
        """Walk to a control with Tab."""
        for _ in range(80):
            if QApplication.focusWidget() is widget:
                return
            self.taught.press(Key.Key_Tab)
        raise AssertionError(f"Tab does not reach {widget.accessibleName() or widget}")

    def push(self, button):
        self.reach(button)
        self.taught.press(Key.Key_Space)

    def nudge(self, control):
        """Change what pupils may change by the smallest amount that the control has."""
        if hasattr(control, "slider"):
            self.reach(control.slider)
            before = control.slider.value()
            self.taught.press(Key.Key_Right)
            if control.slider.value() == before:
                self.taught.press(Key.Key_Left)
        else:
            self.reach(getattr(control, "combo", None) or control.check)
            kind = Key.Key_Down if hasattr(control, "combo") else Key.Key_Space
            self.taught.press(kind)


class Touches:
    """Fingers on the screen alone."""

    def __init__(self, taught):
        self.taught = taught

    def next(self):
        window = self.taught.window
        driven = self.taught.running.phase == DRIVE
        self.taught.touch(window.bar.back if driven else window.header.next)

    def vote(self, answer):
        self.taught.touch(self.taught.window.panel.hands._rows[answer][3])

    def push(self, button):
        self.taught.touch(button)

    def nudge(self, control):
        if hasattr(control, "slider"):
            slider = control.slider
            for share in (0.25, 0.75):
                before = slider.value()
                at = QPoint(round(slider.width() * share), slider.height() // 2)
                QTest.mouseClick(slider, Qt.MouseButton.LeftButton, pos=at)
                if slider.value() != before:
                    break
        elif hasattr(control, "check"):
            self.taught.touch(control.check)
        else:
            QTest.keyClick(control.combo, Key.Key_Down)  # A list's popup is a window of its own.
        QCoreApplication.processEvents()


def taught_to_the_end(taught, hands, *, tries=True):
    """Run a lesson from its cover to its exit question; what was walked through.

    Each prediction gets as many hands as its answers' places say, each challenge a try, and each
    task a change of every setting that pupils may change.
    """
    window, walked = taught.window, [("cover", "open")]
    for _ in range(200):
        before = taught.at()
        if taught.running.phase == "count" and taught.window.mode == "hands":
            for answer in range(len(window.conductor.question.answers)):
                for _ in range(answer + 1):
                    hands.vote(answer)
        if taught.running.phase == DRIVE:
            taught.wait()
            for control in window.panel.controls.values():
                value = control.value()
                hands.nudge(control)
                taught.check()
                assert control.value() != value, control.setting.name
            if taught.step.challenge is not None and tries:
                hands.push(window.panel.tries.try_)
                taught.wait(lambda: window.group.state != "ready")
                hands.push(window.panel.tries.try_)
                taught.wait(lambda: window.group.tries(taught.step).count == 1)
        if taught.last:
            return walked
        hands.next()
        taught.wait()
        taught.check()
        if taught.running.phase == "result":
            taught.wait(lambda: window.conductor.outcome is not None)
        assert taught.at() != before or len(walked) == 1
        walked.append(taught.at())
    raise AssertionError("the lesson has no end")


__all__ = ["LESSONS", "VOTING", "Class", "Keys", "Touches", "taught_to_the_end"]
