"""Page on which keys are taught: choose an act, press the button of the remote, done."""

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QHideEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from demo_app.base.errors import InputError
from demo_app.ui import theme, words
from demo_app.ui.fields import Tick
from demo_app.ui.key_names import checked, spoken
from demo_app.ui.keymap import GROUPS, Keymap, label
from demo_app.ui.remote import Remote


class TeachPage(QWidget):
    """All acts with their keys; teaches the keymap of a `Remote`.

    Parameters
    ----------
    remote : Remote
        Hears the key that is taught, and gets the changed keymap at once.
    parent : QWidget, optional

    Attributes
    ----------
    changed : Signal(Keymap)
        Another keymap is in use, to be kept on the disk.
    """

    changed = Signal(object)

    def __init__(self, remote: Remote, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("page")
        self.setAccessibleName(words.text("teach.title"))
        self._remote = remote
        self._act = ""
        self._key = ""
        self.rows: dict[str, _Row] = {}
        self.line = QLabel(words.text("teach.help"), self)
        self.line.setWordWrap(True)
        self.take = self._button("teach.take", self._take)
        self.leave = self._button("teach.cancel", self.cancel)
        answers = QHBoxLayout()
        answers.addWidget(self.take)
        answers.addWidget(self.leave)
        self.characters = Tick(words.text("teach.characters"), self)
        self.characters.setToolTip(words.text("teach.characters.help"))
        self.characters.setAccessibleDescription(words.text("teach.characters.help"))
        self.characters.setChecked(True)
        self.characters.clicked.connect(self._switch)
        help_line = QLabel(words.text("teach.characters.help"), self)
        help_line.setObjectName("quiet")
        help_line.setWordWrap(True)
        self.defaults = self._button("defaults", self._defaults)
        self._box = QVBoxLayout(self)
        self._box.addWidget(self.line)
        self._box.addLayout(answers)
        self._box.addWidget(self._table(), 1)
        self._box.addWidget(self.characters)
        self._box.addWidget(help_line)
        self._box.addWidget(self.defaults)
        remote.heard.connect(self._hear)
        self._ask(False, False)
        self.refresh()

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing."""
        self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, sizes.gap)
        self._box.setSpacing(sizes.gap)

    def refresh(self) -> None:
        """Show the keys of the remote's keymap."""
        for act, row in self.rows.items():
            row.show_keys(self._remote.keymap.told(act))
        self.characters.setChecked(self._remote.keymap.characters)

    def teach(self, act: str) -> None:
        """Wait for the key that shall do `act`."""
        self._act, self._key = act, ""
        self._remote.listen(True)
        self._say("teach.press", label=label(act))
        self._ask(False, True)

    def cancel(self) -> None:
        """Wait no longer, and change nothing."""
        self._end()
        self._say("teach.cancelled")

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: D102
        super().hideEvent(event)
        if self._act:
            # An ear left open would take the next key of the show.
            self.cancel()

    def _hear(self, key: str) -> None:
        if not self._act:
            return
        try:
            self._key = checked(key)
        except InputError as error:
            self._end()
            self.line.setText(f"{error.problem}; {error.remedy}")
            return
        losing = self._remote.keymap.holders(self._key, self._act)
        if losing:
            self._say("teach.clash", others=_all(losing), **self._both())
            self._ask(True, True)
            self.leave.setText(words.text("teach.keep"))
        else:
            self._take()

    def _take(self) -> None:
        keymap = self._remote.keymap
        losing = keymap.holders(self._key, self._act)
        done = "teach.moved" if losing else "teach.done"
        self._say(done, others=_all(losing), **self._both())
        self._use(keymap.teach(self._act, self._key))
        self._end()

    def _clear(self, act: str) -> None:
        self._end()
        self._use(self._remote.keymap.clear(act))
        self._say("teach.cleared", label=label(act))

    def _defaults(self) -> None:
        self._end()
        self._use(Keymap())
        self._say("teach.defaults")

    def _switch(self, on: bool) -> None:
        self._use(self._remote.keymap.with_characters(on))

    def _use(self, keymap: Keymap) -> None:
        self._remote.keymap = keymap
        self.refresh()
        self.changed.emit(keymap)

    def _end(self) -> None:
        self._act = self._key = ""
        self._remote.listen(False)
        self._ask(False, False)

    def _both(self) -> dict[str, str]:
        return {"key": spoken(self._key), "label": label(self._act)}

    def _say(self, name: str, **values: str) -> None:
        self.line.setText(words.text(name, **values))

    def _ask(self, take: bool, leave: bool) -> None:
        """Which of the two answers can be given; their room stays, so that no row moves."""
        self.take.setEnabled(take)
        self.leave.setEnabled(leave)
        self.leave.setText(words.text("teach.cancel"))

    def _button(self, name: str, act: object) -> QPushButton:
        made = QPushButton(words.text(name), self)
        made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        made.clicked.connect(act)
        return made

    def _table(self) -> QScrollArea:
        page = QWidget()
        page.setObjectName("page")
        box = QVBoxLayout(page)
        box.setContentsMargins(0, 0, 8, 0)
        for group, acts in GROUPS.items():
            title = QLabel(words.text(f"teach.{group}"), page)
            title.setObjectName("title")
            title.setWordWrap(True)
            box.addWidget(title)
            for act in acts:
                row = _Row(label(act), page)
                row.teach.clicked.connect(partial(self.teach, act))
                row.clear.clicked.connect(partial(self._clear, act))
                box.addWidget(row)
                self.rows[act] = row
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(page)
        return area


class _Row(QWidget):
    """One act: what it is called, its keys, and the buttons that teach and clear."""

    def __init__(self, said: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.name = QLabel(said, self)
        self.name.setWordWrap(True)
        self.keys = QLabel(self)
        self.keys.setObjectName("value")
        self.keys.setWordWrap(True)
        self.teach = QPushButton(words.text("teach.teach"), self)
        self.teach.setAccessibleName(words.text("teach.teach.help", label=said))
        self.clear = QPushButton("×", self)
        self.clear.setAccessibleName(words.text("teach.clear", label=said))
        self.clear.setToolTip(words.text("teach.clear", label=said))
        box = QGridLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setVerticalSpacing(0)
        box.setColumnStretch(0, 1)
        box.addWidget(self.name, 0, 0)
        box.addWidget(self.keys, 1, 0)
        for column, button in enumerate((self.teach, self.clear), 1):
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            button.setMinimumWidth(theme.TOUCH_PX)
            box.addWidget(button, 0, column, 2, 1)

    def show_keys(self, told: str) -> None:
        """Show the keys; an act without any says so."""
        self.keys.setText(told or words.text("teach.none"))
        self.keys.setStyleSheet("" if told else "color: palette(bright-text);")
        self.clear.setEnabled(bool(told))


def _all(acts: tuple[str, ...]) -> str:
    return ", ".join(f"“{label(act)}”" for act in acts)
