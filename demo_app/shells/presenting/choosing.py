"""Which show: go on with the one that was interrupted, a cue sheet, or scenes without one."""

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QFileDialog, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from demo_app.base.errors import InputError
from demo_app.content.cues.load import load, own_sheets
from demo_app.ui import theme, words
from demo_app.ui.clock_bar import minutes
from demo_app.ui.saved import Saved


@dataclass(frozen=True)
class Show:
    """One show to choose.

    Parameters
    ----------
    kind : str
        "go-on", "sheet" or "free".
    title, note : str
        What stands on its button.
    path : pathlib.Path or None
        Of the sheet.
    """

    kind: str
    title: str
    note: str
    path: Path | None = None


def shows(saved: Saved | None, folder: Path | None) -> tuple[Show, ...]:
    """What there is to choose from: sheets of the app and of the data folder's ``cue_sheets``."""
    found = [] if saved is None else _going_on(saved)
    own = sorted((folder / "cue_sheets").glob("*.toml")) if folder is not None else []
    for path in (*own, *own_sheets()):
        try:
            sheet = load(path)
        except InputError as error:
            found.append(Show("broken", path.name, f"{error.problem}; {error.remedy}", path))
            continue
        hazards = ", ".join(words.text(f"hazard.{name}") for name in sheet.allows)
        note = words.text(
            "choose.sheet",
            minutes=words.number(sheet.minutes),
            steps=len(sheet.steps),
            hazards=hazards or words.text("choose.no_hazard"),
        )
        found.append(Show("sheet", sheet.title, note, path))
    return (*found, Show("free", words.text("choose.free"), words.text("choose.free.help")))


def _going_on(saved: Saved) -> list[Show]:
    running = saved.running
    if running is None or saved.sheet is None:
        return []
    try:
        sheet = load(Path(saved.sheet))
    except InputError:
        return []
    titles = {step.id: step.title for step in sheet.steps}
    title = words.text("choose.go_on", title=titles.get(running.id, running.id))
    spent = minutes(sum(running.spent.values()))
    note = words.text("choose.go_on.help", sheet=sheet.title, spent=spent)
    return [Show("go-on", title, note, Path(saved.sheet))]


class ChooseWindow(QWidget):
    """One button a show.

    Attributes
    ----------
    chosen : Signal(Show)
    """

    chosen = Signal(object)

    def __init__(self, found: Sequence[Show]) -> None:
        super().__init__()
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle(words.text("app"))
        self._sizes: theme.Sizes | None = None
        self._title = QLabel(words.text("choose.title"), self)
        page = QWidget()
        page.setObjectName("stage")
        self._list = QVBoxLayout(page)
        self.buttons: list[ShowButton] = []
        for show in found:
            made = ShowButton(show)
            made.opened.connect(self.chosen)
            self.buttons.append(made)
            self._list.addWidget(made)
        self._list.addStretch(1)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(page)
        self._other = QPushButton(words.text("choose.other"), self)
        self._other.clicked.connect(self._open)
        self.line = QLabel(self)
        self.line.setObjectName("alert")
        self.line.setWordWrap(True)
        self._box = QVBoxLayout(self)
        for widget in (self._title, area, self.line):
            self._box.addWidget(widget)
        self._box.addWidget(self._other, 0, Qt.AlignmentFlag.AlignLeft)
        self._box.setStretch(1, 1)
        self.buttons[0].setFocus()

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(1280, 720)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        sizes = theme.Sizes.of(self.height())
        if sizes != self._sizes:
            self._sizes = sizes
            self.setStyleSheet(theme.style_sheet(sizes))
            self._title.setStyleSheet(f"font-size: {round(sizes.sentence * 1.3)}px;")
            margin = sizes.gap * 5
            self._box.setContentsMargins(margin * 2, margin, margin * 2, margin)
            self._box.setSpacing(sizes.gap * 2)
            self._list.setSpacing(sizes.gap)
            for button in self.buttons:
                button.set_sizes(sizes)

    def _open(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, words.text("choose.other"), "", "*.toml")
        if not path:
            return
        try:
            sheet = load(Path(path))
        except InputError as error:
            self.line.setText(str(error))
            return
        self.chosen.emit(Show("sheet", sheet.title, "", Path(path)))


class ShowButton(QPushButton):
    """A large button with a title and a note below it.

    Attributes
    ----------
    opened : Signal(Show)
    """

    opened = Signal(object)

    def __init__(self, show: Show, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.show_ = show
        self.setObjectName("main" if show.kind == "go-on" else "door")
        self.setEnabled(show.kind != "broken")
        self.setAccessibleName(show.title)
        self.setAccessibleDescription(show.note)
        self._box = QVBoxLayout(self)
        self._labels = [QLabel(said, self) for said in (show.title, show.note)]
        for label in self._labels:
            label.setWordWrap(True)
            label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
            self._box.addWidget(label)
        self._least = 0
        self.clicked.connect(self._choose)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and height."""
        ink = " color: #06110e;" if self.show_.kind == "go-on" else ""
        for label, size in zip(self._labels, (0.95, 0.65), strict=True):
            weight = 700 if label is self._labels[0] else 400
            label.setStyleSheet(
                f"font-size: {round(sizes.sentence * size)}px; font-weight: {weight};"
                f" background: transparent;{ink}"
            )
        self._box.setContentsMargins(sizes.gap * 2, sizes.gap, sizes.gap * 2, sizes.gap)
        self._least = round(sizes.sentence * 3.2)
        self._fit(self.width())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fit(event.size().width())

    def _fit(self, width: int) -> None:
        """A button asks for one line's height whatever its layout holds."""
        self.setFixedHeight(max(self._box.totalHeightForWidth(width), self._least))

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        if event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self.click()
        else:
            super().keyPressEvent(event)

    def _choose(self) -> None:
        self.opened.emit(self.show_)
