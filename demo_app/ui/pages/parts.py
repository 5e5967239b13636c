"""What the pages are made of: a scrolling page, titles, notes, a list to tick, a line to type."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QScroller,
    QVBoxLayout,
    QWidget,
)

from demo_app.content.checklist import Item
from demo_app.ui import theme, words
from demo_app.ui.fields import Tick


class Page(QScrollArea):
    """Widgets below one another that scroll by wheel, bar or finger."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        page = QWidget()
        page.setObjectName("page")
        self.box = QVBoxLayout(page)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWidget(page)
        QScroller.grabGesture(self.viewport(), QScroller.ScrollerGestureType.TouchGesture)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing."""
        self.box.setContentsMargins(sizes.gap * 2, sizes.gap, sizes.gap * 2, sizes.gap)
        self.box.setSpacing(sizes.gap)


def label(said: str, name: str = "", parent: QWidget | None = None) -> QLabel:
    """Words that wrap; `name` chooses their look ("title", "quiet", "alert")."""
    made = QLabel(said, parent)
    made.setObjectName(name)
    made.setWordWrap(True)
    made.setTextFormat(Qt.TextFormat.PlainText)
    return made


def push(name: str, parent: QWidget | None = None, **values: str) -> QPushButton:
    """Button with the words called `name`."""
    made = QPushButton(words.text(name, **values), parent)
    made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    return made


class TickList(QWidget):
    """Lines to tick off under a title that counts them.

    Attributes
    ----------
    ticked : Signal()
    """

    ticked = Signal()

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._title = title
        self._box = QVBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(2)
        self.heading = label("", "title", self)
        self._box.addWidget(self.heading)
        self.ticks: list[Tick] = []

    def show_items(self, items: Sequence[Item], titles: dict[str, str]) -> None:
        """List other items, none of them ticked; `titles` names the steps by id."""
        for old in self.ticks:
            self._box.removeWidget(old)
            old.deleteLater()
        self.ticks = []
        for item in items:
            where = ", ".join(titles.get(step, step) for step in item.steps)
            tick = Tick(item.text, self, wraps=True)
            tick.setAccessibleName(f"{item.text} ({where})" if where else item.text)
            tick.setToolTip(where)
            tick.toggled.connect(self._count)
            self._box.addWidget(tick)
            self.ticks.append(tick)
        self.setVisible(bool(items))
        self._count()

    @property
    def done(self) -> bool:
        """Whether every line is ticked."""
        return all(tick.isChecked() for tick in self.ticks)

    def clear_ticks(self) -> None:
        """Nothing is done yet."""
        for tick in self.ticks:
            tick.setChecked(False)

    def _count(self) -> None:
        ticked = sum(tick.isChecked() for tick in self.ticks)
        self.heading.setText(
            words.text("ticks", title=self._title, done=ticked, all=len(self.ticks))
        )
        self.ticked.emit()


class LineEntry(QWidget):
    """One line to type, and a button that takes it.

    Attributes
    ----------
    entered : Signal(str)
        What was typed, without blanks around it; never empty.
    """

    entered = Signal(str)

    def __init__(self, hint: str, button: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.line = QLineEdit(self)
        self.line.setPlaceholderText(words.text(hint))
        self.line.setAccessibleName(words.text(hint))
        self.line.setMaxLength(400)
        self.button = push(button, self)
        box = QHBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(self.line, 1)
        box.addWidget(self.button)
        self.line.returnPressed.connect(self._enter)
        self.button.clicked.connect(self._enter)

    def _enter(self) -> None:
        said = " ".join(self.line.text().split())
        if said:
            self.entered.emit(said)
            self.line.clear()
