"""Strip of actions for the presenter: opened, walked and closed with a remote's four buttons.

It stands on the presenter's window and never takes the focus. It begins at "Close this strip", so
that a press too many of any button does no harm, and it closes by itself: an open strip would
keep Next from the show. Nothing is lost when it closes, so that is no time limit on reading.
"""

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QFocusEvent,
    QHideEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from demo_app.ui import theme, words
from demo_app.ui.keymap import Keymap, label

CLOSE = "strip.close"
ENTRIES = (
    "return",
    "freeze",
    "catch_up",
    "contingency",
    "captions",
    "jump",
    "reset",
    "emergency",
)
"""Acts of the strip after "Close this strip"; the last is one press of Back away. None ends a
show."""
SECONDS = 20.0
# The palette's roles, so that it follows a look of high contrast. Every entry has a frame, seen on
# one, so that no word moves.
STYLE = """
    QFrame#strip { background: palette(window); border: 2px solid palette(placeholder-text);
        border-radius: 10px; }
    QPushButton#entry { border: 3px solid palette(button); padding: 0; }
    QPushButton#entry[here="true"] { border-color: palette(bright-text); }
"""
HERE = "▶"
SIGN_PX = 24


class ActionStrip(QFrame):
    """Actions below one another, the current one marked by frame and sign.

    Attributes
    ----------
    chosen : Signal(str)
        The act that was confirmed; the strip has closed by then. Never sent for closing it.
    closed : Signal()
        However it was closed.
    """

    chosen = Signal(str)
    closed = Signal()

    def __init__(self, parent: QWidget | None = None, *, seconds: float = SECONDS) -> None:
        super().__init__(parent)
        self.setObjectName("strip")
        self.setStyleSheet(STYLE)
        self.setAccessibleName(words.text("actions.title"))
        self._title = QLabel(words.text("actions.title"), self)
        self._title.setObjectName("title")
        self._how = QLabel(self)
        self._how.setWordWrap(True)
        self._alone = QLabel(self)
        self._alone.setWordWrap(True)
        self._alone.setObjectName("quiet")
        page = QWidget()
        page.setObjectName("page")
        self._list = QVBoxLayout(page)
        self._list.setContentsMargins(0, 0, 0, 0)
        self._area = QScrollArea(self)
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._area.setWidget(page)
        self._box = QVBoxLayout(self)
        for widget in (self._title, self._how):
            self._box.addWidget(widget)
        self._box.addWidget(self._area, 1)
        self._box.addWidget(self._alone)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self.close_strip)
        self.entries: tuple[tuple[str, str], ...] = ()
        self.buttons: list[_Entry] = []
        self.place = 0
        self._fill(_usual())
        self.set_seconds(seconds)
        self.set_keymap(Keymap())
        self.set_sizes(theme.Sizes.of(720))
        self.hide()

    @property
    def is_open(self) -> bool:
        """Whether it is open, whether its window is shown or not."""
        return not self.isHidden()

    def set_seconds(self, seconds: float) -> None:
        """Close by itself so many seconds after the last press; 0: never."""
        self._timer.setInterval(round(seconds * 1000))
        self._alone.setText(words.text("actions.alone", seconds=words.number(seconds)))
        self._alone.setVisible(seconds > 0)

    def set_keymap(self, keymap: Keymap) -> None:
        """Say which keys walk and confirm."""
        names = {act: _first(keymap, act) for act in ("next", "back", "blank")}
        self._how.setText(words.text("actions.walk", **names))

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing, and room for words of another size."""
        self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, sizes.gap)
        self._box.setSpacing(sizes.gap)
        self._list.setSpacing(max(sizes.gap // 2, 4))
        for button in self.buttons:
            button.fit()

    def open(self, entries: Sequence[tuple[str, str]] | None = None) -> None:
        """Open at "Close this strip".

        Parameters
        ----------
        entries : sequence of (str, str), optional
            Acts, each with its words, such as the steps to jump to; default: `ENTRIES`.
        """
        self._fill(_usual() if entries is None else entries)
        self.place = 0
        self.show()
        for button in self.buttons:
            button.fit()
        self.raise_()
        self._show_place()

    def close_strip(self) -> None:
        """Close, with nothing done."""
        if self.is_open:
            self.hide()
            self.closed.emit()

    def take(self, act: str) -> bool:
        """Do an act that a key has brought; whether it was one of the strip's.

        ``strip`` opens and closes; while open, the values of `keymap.STRIP` walk, confirm, close.
        """
        if act == "strip" and not self.is_open:
            self.open()
        elif act in ("strip", CLOSE):
            self.close_strip()
        elif act == "strip.confirm":
            self.confirm()
        elif act in ("strip.next", "strip.back"):
            self.walk(1 if act == "strip.next" else -1)
        else:
            return False
        return True

    def walk(self, by: int) -> None:
        """Go `by` entries on, from the last to the first too."""
        if self.is_open:
            self._go((self.place + by) % len(self.entries))

    def confirm(self) -> None:
        """Close, and send the current entry's act."""
        if self.is_open:
            self._choose(self.place)

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: D102
        super().hideEvent(event)
        if self.isHidden():
            self._timer.stop()

    def _choose(self, place: int) -> None:
        act = self.entries[place][0]
        self.close_strip()
        if act != CLOSE:
            self.chosen.emit(act)

    def _go(self, place: int) -> None:
        self.place = place
        self._show_place()

    def _show_place(self) -> None:
        if self._timer.interval() > 0:
            self._timer.start()
        for place, button in enumerate(self.buttons):
            button.mark(place == self.place)
        self._area.ensureWidgetVisible(self.buttons[self.place])
        said = words.text(
            "actions.here",
            label=self.entries[self.place][1],
            place=self.place + 1,
            count=len(self.entries),
        )
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, said))

    def _fill(self, entries: Sequence[tuple[str, str]]) -> None:
        wanted = ((CLOSE, words.text("actions.close")), *entries)
        if wanted == self.entries:
            return
        while (item := self._list.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        self.entries = wanted
        self.buttons = [_Entry(said) for _act, said in wanted]
        for place, button in enumerate(self.buttons):
            button.clicked.connect(partial(self._choose, place))
            button.entered.connect(partial(self._go, place))
            self._list.addWidget(button)
        self._list.addStretch(1)


class _Entry(QPushButton):
    """One action in as many lines as it needs; a sign stands before the current one.

    Attributes
    ----------
    entered : Signal()
        The focus has come by the Tab key.
    """

    entered = Signal()

    def __init__(self, said: str) -> None:
        super().__init__()
        self.setObjectName("entry")
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setAccessibleName(said)
        self.sign, self.said = QLabel(self), QLabel(said, self)
        self.said.setWordWrap(True)
        self.sign.setFixedWidth(SIGN_PX)
        self._box = box = QHBoxLayout(self)
        box.setContentsMargins(8, 6, 8, 6)
        for label_, stretch in ((self.sign, 0), (self.said, 1)):
            label_.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
            label_.setStyleSheet("background: transparent;")
            box.addWidget(label_, stretch)
        self.mark(False)

    def mark(self, here: bool) -> None:
        """Show that this is the current one, or that it is not."""
        self.sign.setText(HERE if here else "")
        if self.property("here") != here:
            self.setProperty("here", here)
            self.style().unpolish(self)
            self.style().polish(self)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit()

    def fit(self) -> None:
        """Be as high as the words need; a button by itself asks for one line's height."""
        inside = self._box.totalHeightForWidth(self.width())
        self.setFixedHeight(max(inside, theme.TOUCH_PX + 6))

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            self.entered.emit()


def _usual() -> tuple[tuple[str, str], ...]:
    return tuple((act, label(act)) for act in ENTRIES)


def _first(keymap: Keymap, act: str) -> str:
    return keymap.told(act).split(", ")[0] or words.text("teach.none")
