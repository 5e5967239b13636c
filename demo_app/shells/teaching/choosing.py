"""Which lesson: one button a lesson, and nothing else."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFileDialog, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from demo_app.base.errors import InputError
from demo_app.content.lessons.allowance import admitted
from demo_app.content.lessons.as_sheet import taught
from demo_app.content.lessons.load import load, own_lessons
from demo_app.shells.presenting.choosing import Show, ShowButton
from demo_app.ui import theme, words
from demo_app.ui.languages import in_use
from demo_app.ui.teaching.lesson_words import ages_said


def lessons(paths: Sequence[Path] | None = None) -> tuple[Show, ...]:
    """What there is to choose from; a lesson with a mistake stands there with its mistake."""
    found = []
    for path in own_lessons(in_use().code) if paths is None else paths:
        try:
            lesson = load(path)
            admitted(taught(lesson))
        except InputError as error:
            found.append(Show("broken", path.name, f"{error.problem}; {error.remedy}", path))
            continue
        note = words.text(
            "outreach.choose.note",
            ages=ages_said(lesson),
            minutes=words.number(lesson.minutes),
            steps=len(lesson.steps),
        )
        found.append(Show("lesson", lesson.title, note, path))
    return tuple(found)


class ChooseLesson(QWidget):
    """One button a lesson.

    Attributes
    ----------
    chosen : Signal(pathlib.Path)
    """

    chosen = Signal(object)

    def __init__(self, found: Sequence[Show]) -> None:
        super().__init__()
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle(words.text("app"))
        self._sizes: theme.Sizes | None = None
        self._title = QLabel(words.text("outreach.choose"), self)
        page = QWidget()
        page.setObjectName("stage")
        self._list = QVBoxLayout(page)
        self.buttons = [ShowButton(show) for show in found]
        for made in self.buttons:
            made.opened.connect(self._take)
            self._list.addWidget(made)
        self._list.addStretch(1)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(page)
        self._other = QPushButton(words.text("outreach.choose.other"), self)
        self._other.clicked.connect(self._open)
        self.line = QLabel(self)
        self.line.setObjectName("alert")
        self.line.setWordWrap(True)
        self._box = QVBoxLayout(self)
        for widget in (self._title, area, self.line):
            self._box.addWidget(widget)
        self._box.addWidget(self._other, 0, Qt.AlignmentFlag.AlignLeft)
        self._box.setStretch(1, 1)
        if self.buttons:
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

    def take(self, path: Path) -> None:
        """Choose the lesson at `path`; one with a mistake is told and not chosen."""
        try:
            admitted(taught(load(path)))
        except InputError as error:
            self.line.setText(str(error))
            return
        self.chosen.emit(path)

    def _take(self, show: Show) -> None:
        if show.path is not None:
            self.take(show.path)

    def _open(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self, words.text("outreach.choose.other"), "", "Markdown (*.md)"
        )
        if name:
            self.take(Path(name))
