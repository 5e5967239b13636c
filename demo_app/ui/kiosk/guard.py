"""What reaches a kiosk's window: fingers and a few keys, and nothing that leads out of it."""

import sys
from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QPointF, Qt, Signal
from PySide6.QtGui import QEventPoint, QKeyEvent, QMouseEvent, QTouchEvent
from PySide6.QtWidgets import QApplication, QWidget

Key = Qt.Key
WALK = frozenset({Key.Key_Tab, Key.Key_Backtab})
ARROWS = frozenset({Key.Key_Left, Key.Key_Right, Key.Key_Up, Key.Key_Down})
SELECT = frozenset({Key.Key_Return, Key.Key_Enter, Key.Key_Space, Key.Key_Select})
BACK = frozenset({Key.Key_Escape, Key.Key_Back})
DIGITS = frozenset({*range(Key.Key_0, Key.Key_9 + 1), Key.Key_Backspace})
ALLOWED = WALK | ARROWS | SELECT | DIGITS
"""All other keys do nothing, whatever is held with them."""
HELD = (
    Qt.KeyboardModifier.ControlModifier
    | Qt.KeyboardModifier.AltModifier
    | Qt.KeyboardModifier.MetaModifier
)
Type = QEvent.Type
KEYS = frozenset({Type.KeyPress, Type.KeyRelease, Type.ShortcutOverride, Type.Shortcut})
TOUCHES = frozenset({Type.TouchBegin, Type.TouchUpdate, Type.TouchEnd, Type.TouchCancel})
MOUSE = frozenset(
    {Type.MouseButtonPress, Type.MouseButtonRelease, Type.MouseButtonDblClick, Type.MouseMove}
)
NEVER = frozenset(
    {
        Type.ContextMenu,
        Type.DragEnter,
        Type.DragMove,
        Type.Drop,
        Type.FileOpen,
        Type.NativeGesture,
        Type.Gesture,
        Type.ToolTip,
        Type.WhatsThis,
        Type.QueryWhatsThis,
        Type.EnterWhatsThisMode,
        Type.Wheel,
        Type.InputMethod,
        Type.TabletPress,
        Type.TabletMove,
        Type.TabletRelease,
    }
)
WATCHED = KEYS | TOUCHES | MOUSE | NEVER | {Type.Quit}
MACOS = sys.platform == "darwin"
STILL_PX = 6.0
"""A finger that lies there and trembles is nobody's sign of life."""


class Guard(QObject):
    """An application event filter.

    Parameters
    ----------
    window : QWidget
        The kiosk's only window.
    leaving : callable
        Whether a system's wish to quit is to be heard.

    Attributes
    ----------
    active : Signal()
        Somebody touches, moves a finger or presses a key.
    keyed : Signal(bool)
        Keys, or fingers, are at work by now.
    backed : Signal()
        A key that means Back.
    woken : Signal()
        Any key, while it only wakes.
    quitting : Signal()
        This program is about to quit by itself, or because the system asked it to.
    pressed, released : Signal(QPointF)
        One finger or the mouse, in the window.
    """

    active = Signal()
    keyed = Signal(bool)
    backed = Signal()
    woken = Signal()
    quitting = Signal()
    pressed = Signal(QPointF)
    released = Signal(QPointF)

    def __init__(self, window: QWidget, leaving: Callable[[], bool] = lambda: False) -> None:
        super().__init__(window)
        self._window, self._leaving = window, leaving
        # While it is true nothing reaches the window: the screen is wiped.
        self.locked = False
        # While it is true a key only wakes; fingers meet what lies over the pages.
        self.waking = False
        self._down: QPointF | None = None
        self._moved: QPointF | None = None
        self._swallow = False

    def install(self) -> None:
        """Begin; `remove` ends it."""
        app = QApplication.instance()
        if app is not None:
            app.installEventFilter(self)

    def remove(self) -> None:
        """Let everything pass again."""
        app = QApplication.instance()
        if app is not None:
            app.removeEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: D102
        kind = event.type()
        if kind not in WATCHED:
            return False
        if kind in NEVER:
            event.ignore()
            return True
        if kind == Type.Quit:
            # Elsewhere only this program itself quits; on macOS a key and the dock ask for it.
            refused = MACOS and not self._leaving()
            event.setAccepted(not refused)
            if not refused:
                # Qt asks every window to close first, and would not quit if one refused.
                self.quitting.emit()
            return refused
        if isinstance(event, QKeyEvent):
            return self._key(event, kind)
        if isinstance(event, QTouchEvent):
            return self._touch(event, kind)
        if isinstance(event, QMouseEvent):
            return self._mouse(event, kind)
        return self.locked

    def _key(self, event: QKeyEvent, kind: QEvent.Type) -> bool:
        held = event.modifiers() & HELD
        key = event.key()
        if kind == Type.KeyPress and not event.isAutoRepeat():
            if not self.locked:
                self.active.emit()
                if self.waking:
                    self._swallow = True
                    self.woken.emit()
                    return True
            if key in WALK | SELECT | ARROWS and not held:
                self.keyed.emit(True)
            if key in BACK and not held and not self.locked:
                self.backed.emit()
                return True
        if self._swallow and kind == Type.KeyRelease:
            self._swallow = False
            return True
        return self.locked or bool(held) or key not in ALLOWED

    def _touch(self, event: QTouchEvent, kind: QEvent.Type) -> bool:
        points = event.points()
        if self.locked or not points:
            return self.locked
        place = points[0].globalPosition()
        if kind == Type.TouchBegin:
            self._press(place)
        elif kind == Type.TouchUpdate:
            moving = [p for p in points if p.state() == QEventPoint.State.Updated]
            if moving:
                self._move(moving[0].globalPosition())
        else:
            self._release(place)
        return False

    def _mouse(self, event: QMouseEvent, kind: QEvent.Type) -> bool:
        if self.locked:
            return True
        if kind == Type.MouseMove:
            if event.buttons() & Qt.MouseButton.LeftButton:
                self._move(event.globalPosition())
            return False
        if event.button() != Qt.MouseButton.LeftButton:
            return True
        if kind == Type.MouseButtonRelease:
            self._release(event.globalPosition())
        else:
            self._press(event.globalPosition())
        return False

    def _press(self, place: QPointF) -> None:
        if self._down == place:
            return
        self._down = self._moved = place
        self.active.emit()
        self.keyed.emit(False)
        self.pressed.emit(QPointF(self._window.mapFromGlobal(place)))

    def _move(self, place: QPointF) -> None:
        before = self._moved
        if before is None or (place - before).manhattanLength() > STILL_PX:
            self._moved = place
            self.active.emit()

    def _release(self, place: QPointF) -> None:
        if self._down is not None:
            self._down = self._moved = None
            self.released.emit(QPointF(self._window.mapFromGlobal(place)))
