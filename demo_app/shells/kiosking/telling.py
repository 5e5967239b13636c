"""What is said aloud where a screen reader listens, and what lies over the pages."""

from typing import Any

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QWidget

from demo_app.shells.kiosking.pane import Pane
from demo_app.ui.captioning import Captioning
from demo_app.ui.kiosk.page import Page
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame

SPOKEN_S = 6.0
"""Least time between two descriptions of a picture that moves, s."""


class Telling(Pane):
    """A pane that describes its picture and announces what changes."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        self._described = ""
        super().__init__(*args, **kwargs)
        self._spoken_s = self._clock()
        self._focused: QWidget | None = None
        self._captioning = Captioning(lambda: self.runner.session, self._listened, self)
        self._captioning.said.connect(self._describe)

    def announce(self, said: str) -> None:
        """Let a screen reader say it."""
        if said:
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, said))
            self.announced.emit(said)

    def _sentence(self, session: Session, frame: Frame) -> str:
        if self.ease.describe:
            return self._described
        return self._language().sentence(session.scene, frame.message)

    def _listened(self) -> bool:
        return self.ease.describe or QAccessible.isActive()

    def _describe(self, english: str, frame: Any) -> None:
        session = self.runner.session
        if session is None:
            return
        said = english
        if self.tag != "en":
            said = self._language().spoken(session.scene, frame.settings, frame, frame.instrument)
        now_s = self._clock()
        if said == self._described or (session.playing and now_s - self._spoken_s < SPOKEN_S):
            return
        self._spoken_s = now_s
        self._set_description(said)
        self.announce(said)

    def _set_description(self, said: str) -> None:
        self._described = said
        self.stage.describe(said)
        self.stage.picture.setAccessibleName(self.spoken.words["picture"])
        if self.ease.describe:
            self.stage.say_again()

    @property
    def overlay(self) -> Page | None:
        """What lies over the pages and takes all that is touched."""
        over = (self.cleaning, self.closed, self.warning)
        return next((one for one in over if not one.isHidden()), None) or self.staff.over

    def _show_over(self, over: Page, *, quiet: bool = False) -> None:
        if not over.isVisible():
            if self._focused is None:
                self._focused = self.focusWidget()
            self.body.setEnabled(False)
            over.setGeometry(self.rect())
            over.show()
            over.raise_()
            self.dark.raise_()
            self._focus(over.first() or over)
            if not quiet:
                self.announce(over.summary())

    def _hide_over(self, over: Page) -> None:
        over.hide()
        if self.overlay is None:
            self.body.setEnabled(True)
            focused, self._focused = self._focused, None
            if focused is not None and focused.isVisible():
                self._focus(focused)
