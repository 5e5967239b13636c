"""After a show: heads counted, what broke, what nearly went wrong, what was asked; handover."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QSpinBox, QWidget

from demo_app.content.journal.events import KINDS
from demo_app.ui import words
from demo_app.ui.fields import Choice, Tick
from demo_app.ui.pages.parts import LineEntry, Page, label, push

MOST_HEADS = 5000


class AfterPage(Page):
    """Lines for the journal, each typed and taken in one go.

    Attributes
    ----------
    heads_counted : Signal(int)
    broke : Signal(str, bool)
        What broke, and whether it was meant to.
    nearly : Signal(str)
        A near miss.
    asked : Signal(str)
        An odd question.
    noted : Signal(str, str)
        Kind of the note, and its words.
    handover_asked : Signal()
    ended : Signal()
        The show is over: it is closed in the journal and goes back to its first step.
    """

    heads_counted = Signal(int)
    broke = Signal(str, bool)
    nearly = Signal(str)
    asked = Signal(str)
    noted = Signal(str, str)
    handover_asked = Signal()
    ended = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.line = label("", "quiet", self)
        self.heads = QSpinBox(self)
        self.heads.setRange(0, MOST_HEADS)
        self.heads.setAccessibleName(words.text("after.heads"))
        self.count = push("after.count", self)
        self.count.clicked.connect(self._count)
        heads = QHBoxLayout()
        heads.addWidget(label(words.text("after.heads"), "", self), 1)
        heads.addWidget(self.heads)
        heads.addWidget(self.count)
        self.question = LineEntry("after.question", "after.take", self)
        self.question.entered.connect(self.asked)
        self.miss = LineEntry("after.miss", "after.take", self)
        self.miss.entered.connect(self.nearly)
        self.breakage = LineEntry("after.breakage", "after.take", self)
        self.breakage.entered.connect(self._broke)
        self.meant = Tick(words.text("after.meant"), self)
        self.meant.setChecked(True)
        self.kind: QComboBox = Choice(self)
        self.kind.setAccessibleName(words.text("after.kind"))
        for kind in KINDS:
            self.kind.addItem(words.text(f"note.{kind}"), kind)
        self.note = LineEntry("after.note", "after.take", self)
        self.note.entered.connect(self._note)
        notes = QHBoxLayout()
        notes.addWidget(self.kind)
        notes.addWidget(self.note, 1)
        self.taken = label("", "quiet", self)
        self.end = push("after.end", self)
        self.end.clicked.connect(self.ended)
        self.handover = push("after.handover", self)
        self.handover.clicked.connect(self.handover_asked)
        last = QHBoxLayout()
        last.addWidget(self.end)
        last.addWidget(self.handover)
        last.addStretch(1)
        self.box.addWidget(label(words.text("after.title"), "title", self))
        self.box.addWidget(self.line)
        self.box.addLayout(heads)
        for widget in (self.question, self.miss, self.breakage, self.meant):
            self.box.addWidget(widget)
        self.box.addLayout(notes)
        self.box.addWidget(self.taken)
        self.box.addLayout(last)
        self.box.addStretch(1)

    def show_state(self, line: str, taken: Sequence[str]) -> None:
        """Where the journal is, and the last lines that it took."""
        self.line.setText(line)
        self.taken.setText("\n".join(taken))

    def _count(self) -> None:
        self.heads_counted.emit(self.heads.value())

    def _broke(self, what: str) -> None:
        self.broke.emit(what, self.meant.isChecked())

    def _note(self, said: str) -> None:
        self.noted.emit(str(self.kind.currentData()), said)
