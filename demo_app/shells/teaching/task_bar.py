"""What stands over the stage while pupils drive: the task, and one button back to the lesson."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from demo_app.ui import theme
from demo_app.ui.fitted_label import TWO_LINES, FittedLabel
from demo_app.ui.pages.parts import push


class TaskBar(QWidget):
    """The task in large letters, and the button.

    Attributes
    ----------
    left : Signal()
        Back to the lesson.
    """

    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("page")
        self.goal = FittedLabel(self, bold=True)
        self.back = push("outreach.back", self)
        self.back.setObjectName("main")
        self.back.clicked.connect(self.left)
        self._box = QHBoxLayout(self)
        self._box.addWidget(self.back)
        self._box.addWidget(self.goal, 1)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._box.setContentsMargins(sizes.gap, sizes.gap // 2, sizes.gap, sizes.gap // 2)
        self._box.setSpacing(sizes.gap * 2)
        self.goal.setFixedHeight(round(sizes.sentence * TWO_LINES))
        self.goal.set_largest(sizes.sentence)
