"""What pupils see of their own tries: how many, what the model said, and the buttons."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from demo_app.ui import theme, words
from demo_app.ui.pages.parts import label, push

READY, RUNNING, WORKING = "ready", "running", "working"


class TriesView(QWidget):
    """A challenge as the group at the screen has it.

    Attributes
    ----------
    asked : Signal()
        Try what is set, or show at once what comes of it.
    fresh : Signal()
        The next group begins.
    hinted : Signal()
    """

    asked = Signal()
    fresh = Signal()
    hinted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.count = label("", "value", self)
        self.result = label("", "", self)
        self.try_ = push("outreach.try", self)
        self.try_.setObjectName("main")
        self.next = push("outreach.fresh", self)
        self.hint = push("outreach.hint", self)
        self.try_.clicked.connect(self.asked)
        self.next.clicked.connect(self.fresh)
        self.hint.clicked.connect(self.hinted)
        row = QHBoxLayout()
        row.addWidget(self.next, 1)
        row.addWidget(self.hint, 1)
        self._box = QVBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        for widget in (self.try_, self.count, self.result):
            self._box.addWidget(widget)
        self._box.addLayout(row)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing."""
        self._box.setSpacing(sizes.gap)

    def show_hint(self, there: bool) -> None:
        """Whether there is a hint."""
        self.hint.setVisible(there)

    def show_tries(self, said: str, lines: Sequence[str]) -> None:
        """How many, and what came of the last one."""
        self.count.setText(said)
        self.result.setText("\n".join(lines))
        self.result.setVisible(bool(lines))

    def show_state(self, state: str) -> None:
        """`READY` for a try; it is `RUNNING`, or the model still `WORKING`."""
        said = {READY: "outreach.try", RUNNING: "outreach.look", WORKING: "outreach.working"}
        self.try_.setText(words.text(said[state]))
        self.try_.setEnabled(state != WORKING)
        self.next.setEnabled(state == READY)
