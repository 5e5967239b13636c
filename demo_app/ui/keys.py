"""Keys of the presenter, left alone where a control wants them."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLineEdit,
    QTextEdit,
)

Key = Qt.Key
Acts = Mapping[Qt.Key, Callable[[], None]]
TYPING = (QLineEdit, QTextEdit, QAbstractSpinBox, QComboBox, QAbstractItemView)
ALWAYS = {Key.Key_F1, Key.Key_F2, Key.Key_F11}
REPEATING = {Key.Key_Left, Key.Key_Right, Key.Key_BracketLeft, Key.Key_BracketRight}
PLAIN = Qt.KeyboardModifier.ShiftModifier | Qt.KeyboardModifier.KeypadModifier


def take(event: QKeyEvent, acts: Acts) -> bool:
    """Do what a key that no control has used is for.

    A control with the focus sees its keys first (a slider its arrows, a button its Space); here
    come the others. Nothing happens while a field to type or choose in has the focus.

    Returns
    -------
    bool
        Whether the key was used.
    """
    key = Qt.Key(event.key())
    act = acts.get(key)
    if act is None or event.modifiers() & ~PLAIN:
        return False
    if key not in ALWAYS and isinstance(QApplication.focusWidget(), TYPING):
        return False
    if not event.isAutoRepeat() or key in REPEATING:
        act()
    return True
