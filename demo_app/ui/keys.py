"""Keys of the presenter: one filter for the whole application."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLineEdit,
    QSlider,
    QTabBar,
    QTextEdit,
    QWidget,
)

Key = Qt.Key
TEXT_FIELDS = (QLineEdit, QTextEdit, QAbstractSpinBox)
REPEATING = {Key.Key_Left, Key.Key_Right, Key.Key_BracketLeft, Key.Key_BracketRight}


class Keys(QObject):
    """Gives keys to the presenter's acts, unless a text field wants them.

    Parameters
    ----------
    acts : mapping
        What each key does. Keys pressed with Ctrl, Alt or Meta are left alone.
    window : QWidget
        Keys count in this window and its children alone.
    """

    def __init__(self, acts: Mapping[Qt.Key, Callable[[], None]], window: QWidget) -> None:
        super().__init__(window)
        self._acts = dict(acts)
        self._window = window
        app = QApplication.instance()
        if app is not None:
            app.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: D102
        if event.type() != QEvent.Type.KeyPress or not isinstance(event, QKeyEvent):
            return False
        if not isinstance(watched, QWidget) or watched.window() is not self._window:
            return False
        act = self._acts.get(Qt.Key(event.key()))
        if act is None or event.modifiers() & ~(
            Qt.KeyboardModifier.ShiftModifier | Qt.KeyboardModifier.KeypadModifier
        ):
            return False
        if self._wanted_elsewhere(Qt.Key(event.key())):
            return False
        if not event.isAutoRepeat() or event.key() in REPEATING:
            act()
        return True

    def _wanted_elsewhere(self, key: Qt.Key) -> bool:
        """Whether the control with the focus needs this key itself."""
        focus = QApplication.focusWidget()
        if isinstance(focus, TEXT_FIELDS):
            return key not in {Key.Key_F2, Key.Key_F11, Key.Key_F1}
        if isinstance(focus, (QComboBox, QAbstractItemView)):
            return key in {Key.Key_Up, Key.Key_Down, Key.Key_Space, Key.Key_Escape} or (
                Key.Key_A <= key <= Key.Key_Z
            )
        if isinstance(focus, QSlider):
            return key in {Key.Key_Left, Key.Key_Right, Key.Key_Up, Key.Key_Down}
        if isinstance(focus, QTabBar):
            return key in {Key.Key_Left, Key.Key_Right}
        return isinstance(focus, QAbstractButton) and key == Key.Key_Space
