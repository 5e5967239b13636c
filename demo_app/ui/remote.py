"""One ear for all keys: of the presenter's window and of the audience's, of keyboard and remote.

A remote is a keyboard to the system, and its press goes to whichever window has the focus. So the
keys are taken before any window sees them, by one filter of the application:

- What a remote sends goes to the show at once, even while a field is typed in; a sign, such as
  the full stop of some Blank buttons, belongs to the field then.
- All other keys go first to the control that has the focus (a slider its arrows, a button its
  Space) and come here if it leaves them.

What a key does is found out from the event loop, not inside the filter: an exception in an
act must not pass through Qt's own code, and several keys that waited are done one after another,
each knowing what the one before has opened or closed.
"""

import logging
import time
from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QTextEdit,
    QWidget,
)

from demo_app.ui.key_names import is_character, name_of
from demo_app.ui.keymap import Context, Keymap

LOG = logging.getLogger("lehrlight")
TYPING = (QLineEdit, QTextEdit, QPlainTextEdit, QAbstractSpinBox, QComboBox, QAbstractItemView)
"""Fields to type or to choose in: letters, digits and signs are theirs."""
WHILE_TYPING = frozenset({"keys", "controls", "full_screen", "save"})
"""Acts that work in such a field too, if their key writes nothing."""
REPEATING = frozenset({"step_back", "step_on", "turn_back", "turn_on"})
"""Acts that go on while a key is held down."""
BOUNCE_S = 0.15
"""A remote's button that comes again within this time has bounced (common practice)."""
SETTLE_S = 0.6
"""Blank within this time after it has confirmed an action is the same press in two minds."""


def stamp(event: QKeyEvent) -> float:
    """When a key was pressed, in seconds of some clock.

    The window system's own time where it gives one: a press that had to wait is not judged by when
    it was heard.
    """
    return event.timestamp() / 1e3 if event.timestamp() else time.monotonic()


class Remote(QObject):
    """Turns keys into acts.

    Parameters
    ----------
    keymap : Keymap
        Which key does what.
    context : callable
        What is going on at this moment.
    parent : QObject, optional
    clock : callable
        Time of an event in seconds.

    Attributes
    ----------
    acted : Signal(str)
        Name of an act, see `keymap.ACTS`; one of `keymap.STRIP` while the strip is open.
    heard : Signal(str)
        Name of the one key that `listen` waits for.
    """

    acted = Signal(str)
    heard = Signal(str)
    _taken = Signal(str, float)
    _listened = Signal(str)

    def __init__(
        self,
        keymap: Keymap,
        context: Callable[[], Context] = Context,
        parent: QObject | None = None,
        *,
        clock: Callable[[QKeyEvent], float] = stamp,
    ) -> None:
        super().__init__(parent)
        self.keymap = keymap
        self._context = context
        self._clock = clock
        self._listening = False
        self._last: dict[str, float] = {}
        self._confirmed: float | None = None
        self._taken.connect(self._do, Qt.ConnectionType.QueuedConnection)
        self._listened.connect(self.heard, Qt.ConnectionType.QueuedConnection)

    def install(self) -> None:
        """Begin to hear the keys of every window."""
        app = QCoreApplication.instance()
        if app is not None:
            app.installEventFilter(self)

    def uninstall(self) -> None:
        """Leave the keys alone."""
        app = QCoreApplication.instance()
        if app is not None:
            app.removeEventFilter(self)

    def listen(self, on: bool) -> None:
        """Send the next key to `heard`, whatever it does else; or no longer."""
        self._listening = on

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: D102
        try:
            return isinstance(event, QKeyEvent) and self._takes(watched, event)
        except Exception:
            # Nothing may leave an override that Qt has called: it would end the process.
            LOG.exception("a key was lost")
            return False

    def _takes(self, watched: QObject, event: QKeyEvent) -> bool:
        if event.type() != QEvent.Type.KeyPress:
            return False
        key = name_of(event)
        if not key:
            return False
        if self._listening:
            if not event.isAutoRepeat():
                self._listening = False
                self._listened.emit(key)
            return True
        if self._is_early(key):
            self._press(key, event)
            return True
        if not (isinstance(watched, QWidget) and watched.isWindow()) or not self._is_late(key):
            return False
        self._press(key, event)
        return True

    def _is_early(self, key: str) -> bool:
        """Whether a remote sends `key`, and it is nobody else's for the moment."""
        if not self.keymap.button(key):
            return False
        if is_character(key):
            return not (_types() or _interrupted())
        # A list or a dialog that is open has Esc as its own way out.
        return not (key == "Esc" and _interrupted())

    def _is_late(self, key: str) -> bool:
        """Whether `key` does something, now that no control has used it."""
        context = self._context()
        act = self.keymap.act(key, context)
        if not act or _interrupted():
            return False
        return not _types() or (act in WHILE_TYPING and not is_character(key))

    def _press(self, key: str, event: QKeyEvent) -> None:
        now = self._clock(event)
        if event.isAutoRepeat():
            if self.keymap.act(key, self._context()) in REPEATING:
                self._taken.emit(key, now)
            return
        button = self.keymap.button(key)
        if button:
            before = self._last.get(button)
            self._last[button] = now
            if before is not None and 0 <= now - before < BOUNCE_S:
                return
        self._taken.emit(key, now)

    def _do(self, key: str, now: float) -> None:
        act = self.keymap.act(key, self._context())
        if act == "strip.confirm":
            self._confirmed = now
        elif act == "blank" and self._confirmed is not None:
            if 0 <= now - self._confirmed < SETTLE_S:
                return
            self._confirmed = None
        if act:
            self.acted.emit(act)


def _types() -> bool:
    return isinstance(QApplication.focusWidget(), TYPING)


def _interrupted() -> bool:
    """Whether a list, a menu or a dialog is open that has to be answered first."""
    return QApplication.activePopupWidget() is not None or (
        QApplication.activeModalWidget() is not None
    )
