"""What a teacher has on paper: the worksheet with its key to save, the kit, the beliefs to meet."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QSpinBox, QWidget

from demo_app.content.handouts.make import MOST_SEED, PAPERS
from demo_app.content.lessons.records import Lesson
from demo_app.ui import theme, words
from demo_app.ui.fields import Choice
from demo_app.ui.pages.parts import Page, label, push


class HandoutPage(Page):
    """Number and paper of the worksheet, and a button that saves it.

    Attributes
    ----------
    save_asked : Signal()
    """

    save_asked = Signal()

    def __init__(self, lesson: Lesson, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.seed = QSpinBox()
        self.seed.setRange(0, MOST_SEED)
        self.seed.setValue(1)
        self.seed.setMinimumHeight(theme.TOUCH_PX)
        self.seed.setAccessibleName(words.text("handout.seed"))
        self.paper = Choice()
        self.paper.setAccessibleName(words.text("handout.paper"))
        for name in PAPERS:
            self.paper.addItem(name, name)
        self.save = push("handout.save")
        self.save.setObjectName("main")
        self.save.clicked.connect(self.save_asked)
        self.line = label("", "quiet")
        self.box.addWidget(label(words.text("handout.title"), "title"))
        self.box.addWidget(label(words.text("handout.help"), "quiet"))
        for name, field in (("handout.seed", self.seed), ("handout.paper", self.paper)):
            row = QHBoxLayout()
            row.addWidget(label(words.text(name)), 1)
            row.addWidget(field)
            self.box.addLayout(row)
        self.other = push("handout.other")
        self.other.clicked.connect(self._another)
        self.box.addWidget(self.other, 0, Qt.AlignmentFlag.AlignLeft)
        self.box.addWidget(self.save, 0, Qt.AlignmentFlag.AlignLeft)
        self.box.addWidget(self.line)
        self.box.addWidget(label(words.text("handout.kit"), "title"))
        for item in lesson.kit:
            head = f"{item.name} ({item.count})" if item.count else item.name
            self.box.addWidget(label(f"– {head}. {item.note}" if item.note else f"– {head}"))
        self.box.addWidget(label(words.text("handout.beliefs"), "title"))
        for one in lesson.misconceptions:
            self.box.addWidget(label(f"“{one.text}”", "value"))
            self.box.addWidget(label(one.meet))
        self.box.addStretch(1)

    def _another(self) -> None:
        self.seed.setValue(self.seed.value() % MOST_SEED + 1)

    @property
    def number(self) -> int:
        """The seed that is chosen."""
        return self.seed.value()

    @property
    def sheet(self) -> str:
        """The paper that is chosen."""
        return str(self.paper.currentData())

    def show_busy(self, busy: bool) -> None:
        """Whether the worksheet is being computed."""
        self.save.setEnabled(not busy)
        if busy:
            self.line.setText(words.text("handout.busy"))

    def tell(self, said: str) -> None:
        """What came of it."""
        self.line.setText(said)
