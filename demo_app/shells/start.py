"""The start window: one large door for each way to show the scenes."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from demo_app.ui import application, theme, words

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
        self._tagline = QLabel(words.text("tagline"), self)
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
        self.leave = QPushButton(words.text("quit"), self)
        self.leave.clicked.connect(self.close)
        self._box.addWidget(self.leave, 0, Qt.AlignmentFlag.AlignRight)

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
        self._name = name
        self.setObjectName("door")
        self.setAccessibleName(words.text(name))
        self.setAccessibleDescription(words.text(f"{name}.help"))
        self._label = QLabel(words.text(name), self)
        self._help = QLabel(words.text(f"{name}.help"), self)
        self._help.setWordWrap(True)
        self._box = QVBoxLayout(self)
        for label in (self._label, self._help):
            label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
            self._box.addWidget(label)
        self.clicked.connect(self._open)

    def set_sizes(self, sizes: theme.Sizes, *, tight: bool = False) -> None:
        """Type sizes and height, which is less where many doors stand together."""
        plain = "background: transparent;"
        self._label.setStyleSheet(
            f"font-size: {round(sizes.sentence * 1.2)}px; font-weight: 700; {plain}"
        )
        self._help.setStyleSheet(f"font-size: {round(sizes.sentence * 0.75)}px; {plain}")
        above = sizes.gap if tight else sizes.gap * 2
        self._box.setContentsMargins(sizes.gap * 3, above, sizes.gap * 3, above)
        self.setFixedHeight(round(sizes.sentence * (3.6 if tight else 4.2)))

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
    opened: list[str] = []
    window = StartWindow(list(DOORS))
    window.chosen.connect(opened.append)
    window.chosen.connect(window.close)
    application.show(window)
    status = application.execute(app, window.close)
    if status == 0 and opened:
        return DOORS[opened[-1]](argv)
    return status


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
