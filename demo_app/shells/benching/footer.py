"""Below an answer: how fine it is, how far the rest is, stop or go on, and print."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QPushButton, QVBoxLayout, QWidget

from demo_app.ui import theme, words
from demo_app.ui.benching.figures import plain


class Footer(QWidget):
    """State line, progress, and buttons.

    Attributes
    ----------
    stopped, resumed, print_asked : Signal()
    """

    stopped = Signal()
    resumed = Signal()
    print_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.state = plain(self)
        self.bar = QProgressBar(self)
        policy = self.bar.sizePolicy()
        policy.setRetainSizeWhenHidden(True)
        self.bar.setSizePolicy(policy)
        self.bar.setAccessibleName(words.text("bench.progress"))
        self.stop_button = QPushButton(words.text("bench.stop"), self)
        self.stop_button.clicked.connect(self.stopped)
        self.again_button = QPushButton(words.text("bench.again"), self)
        self.again_button.clicked.connect(self.resumed)
        self.print_button = QPushButton(words.text("bench.print"), self)
        self.print_button.setToolTip(words.text("bench.print.help"))
        self.print_button.clicked.connect(self.print_asked)
        self._row = QHBoxLayout()
        self._row.addWidget(self.bar, 1)
        for button in (self.stop_button, self.again_button, self.print_button):
            self._row.addWidget(button)
        self._box = QVBoxLayout(self)
        self._box.addWidget(self.state)
        self._box.addLayout(self._row)
        self.again_button.hide()
        self.finish()
        self.can_print(False)

    def add_button(self, button: QPushButton) -> None:
        """One more button, at the end."""
        self._row.addWidget(button)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing."""
        self._box.setContentsMargins(0, 0, sizes.gap, sizes.gap)
        self._box.setSpacing(sizes.gap // 2)
        self._row.setSpacing(sizes.gap)

    def say(self, said: str) -> None:
        """How fine the answer is."""
        self.state.setText(said)

    def begin(self, said: str) -> None:
        """Work has begun; how much there is, is not known yet."""
        self.say(said)
        self.bar.setRange(0, 1)
        self.bar.setValue(0)
        self.bar.setFormat(said)
        self._show(running=True)

    def progress(self, done: int, most: int) -> None:
        """So much of so much is done."""
        self.bar.setRange(0, max(most, 1))
        self.bar.setValue(done)
        self.bar.setFormat(words.text("bench.done", done=done, most=most))

    def finish(self) -> None:
        """All is done."""
        self._show(running=False)

    def stop(self, said: str) -> None:
        """It was stopped; it can go on."""
        self.say(said)
        self._show(running=False)
        self._swap(self.stop_button, self.again_button)

    def can_print(self, can: bool) -> None:
        """Whether there is anything to print."""
        self.print_button.setEnabled(can)

    def _show(self, *, running: bool) -> None:
        keep = self.again_button.hasFocus() and running
        self.bar.setEnabled(running)
        self.bar.setVisible(running)
        self.stop_button.setEnabled(running)
        self.stop_button.show()
        if keep:
            self.stop_button.setFocus()
        self.again_button.hide()

    def _swap(self, old: QPushButton, new: QPushButton) -> None:
        had = old.hasFocus()
        new.show()
        if had:
            new.setFocus()
        old.hide()
