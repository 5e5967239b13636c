"""Keys by name: one name for one key of the keyboard or of a remote, whatever the layout.

A name is Qt's portable one (``PgDown``, ``Shift+F5``, ``.``), with two differences: a letter is the
same with Shift and without, and the row above the letters is called by place, so that
``Shift+1`` means the same on a keyboard where it writes ``!`` as on one where it writes ``1``.
"""

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence

from demo_app.base.errors import InputError
from demo_app.ui import words

Key, Modifier = Qt.Key, Qt.KeyboardModifier
NO_KEYS = {
    0,
    Key.Key_unknown,
    Key.Key_Shift,
    Key.Key_Control,
    Key.Key_Alt,
    Key.Key_AltGr,
    Key.Key_Meta,
    Key.Key_Super_L,
    Key.Key_Super_R,
    Key.Key_CapsLock,
    Key.Key_NumLock,
    Key.Key_ScrollLock,
}
"""Keys that say nothing by themselves."""
RESERVED = ("Tab", "Shift+Tab", "Return", "Enter", "Alt+F4", "Ctrl+C", "Ctrl+V", "Ctrl+X")
"""Names of keys that controls and systems need, and that no act may have."""
SPOKEN = {
    "PgDown": "key.page_down",
    "PgUp": "key.page_up",
    "Left": "key.left",
    "Right": "key.right",
    "Up": "key.up",
    "Down": "key.down",
    ".": "key.stop",
    ",": "key.comma",
    "Space": "key.space",
}
"""Keys that people read under another name than Qt's, with the id of the words for it."""
ALIASES = {
    "PageDown": "PgDown",
    "PageUp": "PgUp",
    "Backtab": "Shift+Tab",
    "Shift+Backtab": "Shift+Tab",
}
_SIGNS = {ord(sign): place for place, sign in enumerate("!@#$%^&*(", 1)}
_MAC_ROW = {18: 1, 19: 2, 20: 3, 21: 4, 23: 5, 22: 6, 26: 7, 28: 8, 25: 9}
# What has to be taken off a scan code to get the digit: X11 and Wayland count from evdev's + 8.
_ROW_FROM = {"xcb": 9, "wayland": 9, "windows": 1}


def name_of(event: QKeyEvent) -> str:
    """Name of the key of `event`; empty for Shift and the like alone."""
    key = event.key()
    if key in NO_KEYS:
        return ""
    held = event.modifiers() & ~(Modifier.KeypadModifier | Modifier.GroupSwitchModifier)
    digit = _digit(event)
    if _composed(event):
        held &= ~(Modifier.ControlModifier | Modifier.AltModifier)
    if digit:
        key = Key.Key_0 + digit
    elif 0x20 < key < Key.Key_Escape:
        # A sign is what Shift has made of its key, and a letter is one either way.
        held &= ~Modifier.ShiftModifier
    text = QKeySequence(int(held.value) | key).toString(QKeySequence.SequenceFormat.PortableText)
    return ALIASES.get(text, text)


def checked(name: str) -> str:
    """`name` as `name_of` writes it.

    Raises
    ------
    InputError
        If it names no key, several keys after one another, or one of `RESERVED`.
    """
    found = QKeySequence.fromString(
        ALIASES.get(name, name), QKeySequence.SequenceFormat.PortableText
    )
    text = found.toString(QKeySequence.SequenceFormat.PortableText)
    mute = {QKeySequence(int(key)).toString() for key in NO_KEYS}
    if found.count() != 1 or not text or text in mute:
        raise InputError(f"'{name}' is no key", place="key", remedy="write such as PgDown, F5 or B")
    text = ALIASES.get(text, text)
    if text in RESERVED:
        raise InputError(
            f"{spoken(text)} is needed by controls", place="key", remedy="choose another key"
        )
    return text


def is_character(name: str) -> bool:
    """Whether a key alone writes a letter, a digit or a sign (WCAG 2.2, criterion 2.1.4)."""
    return len(name) == 1


def spoken(name: str) -> str:
    """Key as people read it: ``Page Down``, ``Shift + F5``, ``← arrow``."""
    held, plus, last = name.rpartition("+") if len(name) > 1 else ("", "", name)
    if plus and not last:  # the key + itself
        held, last = held.rstrip("+"), "+"
    parts = [*(part for part in held.split("+") if part), last]
    parts[-1] = words.text(SPOKEN[last]) if last in SPOKEN else last
    return "\u00a0+\u00a0".join(parts)


def _digit(event: QKeyEvent) -> int:
    """Digit 1 to 9 of the row above the letters, or of the number pad; 0: none."""
    key, modifiers = event.key(), event.modifiers()
    plain = key - Key.Key_0 if Key.Key_1 <= key <= Key.Key_9 else 0
    if modifiers & Modifier.KeypadModifier or _composed(event):
        return plain
    platform = QGuiApplication.platformName().partition("-")[0]
    if platform == "cocoa":
        return _MAC_ROW.get(event.nativeVirtualKey(), 0)
    if platform in _ROW_FROM and event.nativeScanCode():
        place = event.nativeScanCode() - _ROW_FROM[platform]
        return place if 1 <= place <= 9 else 0
    # Without a scan code: a keyboard of the United States.
    return plain or (_SIGNS.get(key, 0) if modifiers & Modifier.ShiftModifier else 0)


def _composed(event: QKeyEvent) -> bool:
    """Whether AltGr has made the sign, as it does a bracket of the row's 8 in some layouts."""
    modifiers = event.modifiers()
    both = Modifier.ControlModifier | Modifier.AltModifier
    return bool(modifiers & Modifier.GroupSwitchModifier) or (
        modifiers & both == both and event.text() > " "
    )
