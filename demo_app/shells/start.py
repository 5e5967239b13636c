"""The start window: one large door for each way to show the scenes."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from PySide6.QtCore import QEvent, QRect, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from demo_app.ui import application, preferences, speaking, theme, words
from demo_app.ui.languages import use, wanted
from demo_app.ui.speaking import LanguageChoice

LEAST_PX = 11
ROOMY = 2
"""So many doors have room to spare; more of them stand closer."""


class StartWindow(QWidget):
    """Name, one line, and the doors.

    Attributes
    ----------
    chosen : Signal(str)
        Name of the door that was opened.
    """

    chosen = Signal(str)

    def __init__(self, doors: Sequence[str]) -> None:
        super().__init__()
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle(words.text("app"))
        self._sizes: theme.Sizes | None = None
        self._title = QLabel(words.text("app"), self)
        self._tagline = QLabel(self)
        self._tagline.setObjectName("quiet")
        self._box = QVBoxLayout(self)
        self._box.addStretch(2)
        self._box.addWidget(self._title)
        self._box.addWidget(self._tagline)
        self._box.addStretch(1)
        self.doors = [Door(name, self) for name in doors]
        for door in self.doors:
            door.opened.connect(self.chosen)
            self._box.addWidget(door)
        self._box.addStretch(2)
        self.language = LanguageChoice(self)
        self.leave = QPushButton(self)
        self.leave.clicked.connect(self.close)
        below = QHBoxLayout()
        below.addWidget(self.language)
        below.addStretch(1)
        below.addWidget(self.leave)
        self._box.addLayout(below)
        self._say()

    def changeEvent(self, event: QEvent) -> None:  # noqa: D102
        super().changeEvent(event)
        if event.type() == QEvent.Type.LanguageChange:
            self._say()

    def _say(self) -> None:
        """All words, in the language in use by now."""
        self._tagline.setText(words.text("tagline"))
        self.leave.setText(words.text("quit"))
        self.language.say()
        for door in self.doors:
            door.say()

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(1280, 720)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        sizes = theme.Sizes.of(self.height())
        if sizes != self._sizes:
            self._sizes = sizes
            self.setStyleSheet(theme.style_sheet(sizes))
            self._title.setStyleSheet(f"font-size: {sizes.sentence * 2}px; font-weight: 700;")
            self._tagline.setStyleSheet(f"font-size: {sizes.sentence}px;")
            margin = max(round(self.height() * 0.09), sizes.gap * 4)
            self._box.setContentsMargins(margin * 2, margin, margin * 2, margin // 2)
            tight = len(self.doors) > ROOMY
            self._box.setSpacing(sizes.gap if tight else sizes.gap * 2)
            for door in self.doors:
                door.set_sizes(sizes, tight=tight)


class Door(QPushButton):
    """A large button with a name and what waits behind it.

    Attributes
    ----------
    opened : Signal(str)
    """

    opened = Signal(str)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._name, self._largest = name, LEAST_PX
        self.setObjectName("door")
        self._label, self._help = QLabel(self), QLabel(self)
        self._help.setWordWrap(True)
        self._box = QVBoxLayout(self)
        for label in (self._label, self._help):
            label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
            self._box.addWidget(label)
        self.clicked.connect(self._open)
        self.say()

    def say(self) -> None:
        """The words, in the language in use."""
        name, what = words.text(self._name), words.text(f"{self._name}.help")
        self.setAccessibleName(name)
        self.setAccessibleDescription(what)
        self._label.setText(name)
        self._help.setText(what)
        self._fit()

    def set_sizes(self, sizes: theme.Sizes, *, tight: bool = False) -> None:
        """Type sizes and height, which is less where many doors stand together."""
        plain = "background: transparent;"
        self._label.setStyleSheet(
            f"font-size: {round(sizes.sentence * 1.2)}px; font-weight: 700; {plain}"
        )
        self._largest = round(sizes.sentence * 0.75)
        above = sizes.gap if tight else sizes.gap * 2
        self._box.setContentsMargins(sizes.gap * 3, above, sizes.gap * 3, above)
        self.setFixedHeight(round(sizes.sentence * (3.6 if tight else 4.2)))
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """What waits behind the door, as large as its room allows."""
        self._label.ensurePolished()
        edges, font = self._box.contentsMargins(), self._help.font()
        wide = self.width() - edges.left() - edges.right()
        named = self._label.fontMetrics().height() + self._box.spacing()
        high = self.height() - edges.top() - edges.bottom() - named
        size = self._largest
        while size > LEAST_PX:
            font.setPixelSize(size)
            room = QRect(0, 0, wide, 9999)
            flags = int(Qt.TextFlag.TextWordWrap)
            if QFontMetrics(font).boundingRect(room, flags, self._help.text()).height() <= high:
                break
            size -= 1
        self._help.setStyleSheet(f"font-size: {size}px; background: transparent;")

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        if event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self.click()
        else:
            super().keyPressEvent(event)

    def _open(self) -> None:
        self.opened.emit(self._name)


def run(argv: Sequence[str]) -> int:
    """Show the start window; then whatever is behind the door that was opened.

    Returns
    -------
    int
        Exit status.
    """
    app = application.make(argv)
    speaking.begin()
    opened: list[str] = []
    window = StartWindow(list(DOORS))
    window.chosen.connect(opened.append)
    window.chosen.connect(window.close)
    window.language.show_code(preferences.read(speaking.kept_in()).language)
    window.language.chosen.connect(_speak)
    application.show(window)
    status = application.execute(app, window.close)
    if status == 0 and opened:
        return DOORS[opened[-1]](argv)
    return status


def _speak(code: str) -> None:
    """Speak a language at once, and from now on."""
    folder = speaking.kept_in()
    preferences.write(folder, replace(preferences.read(folder), language=code))
    use(wanted(code))


def _present(argv: Sequence[str]) -> int:
    from demo_app.shells import present

    return present.run(None, argv)


def _bench(argv: Sequence[str]) -> int:
    from demo_app.shells import bench

    return bench.run(argv)


def _outreach(argv: Sequence[str]) -> int:
    from demo_app.shells import outreach

    return outreach.run(None, argv)


DOORS: dict[str, Callable[[Sequence[str]], int]] = {
    "present": _present,
    "bench": _bench,
    "outreach": _outreach,
}
