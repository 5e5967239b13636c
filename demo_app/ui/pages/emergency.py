"""The presenter's emergency card: what the venue has written down, large."""

from collections.abc import Sequence

from PySide6.QtWidgets import QGridLayout, QLabel

from demo_app.ui import show_words, theme, words
from demo_app.ui.pages.parts import Page, label


class EmergencyPage(Page):
    """Whom to call, where things are, which way out; nothing that the venue has not said."""

    def __init__(self) -> None:
        super().__init__()
        self.title = label(words.text("emergency.presenter"), "alert", self)
        self._grid = QGridLayout()
        self._grid.setColumnStretch(1, 1)
        self._labels: list[QLabel] = []
        self._size = 16
        self.box.addWidget(self.title)
        self.box.addLayout(self._grid)
        self.box.addWidget(label(words.text("emergency.back"), "quiet", self))
        self.box.addWidget(label(show_words.follow(), "quiet", self))
        self.box.addStretch(1)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        super().set_sizes(sizes)
        self._size = round(sizes.panel * 1.6)
        self._grid.setVerticalSpacing(sizes.gap * 2)
        self._grid.setHorizontalSpacing(sizes.gap * 3)
        self.title.setStyleSheet(f"font-size: {self._size}px; font-weight: 700;")
        self._type()

    def show_lines(self, lines: Sequence[tuple[str, str]]) -> None:
        """Show labels with what the venue says."""
        for old in self._labels:
            self._grid.removeWidget(old)
            old.deleteLater()
        self._labels = []
        for row, pair in enumerate(lines):
            for column, said in enumerate(pair):
                made = label(said, "quiet" if column == 0 else "", self)
                self._grid.addWidget(made, row, column)
                self._labels.append(made)
        self._type()

    def _type(self) -> None:
        for one in self._labels:
            one.setStyleSheet(f"font-size: {self._size}px;")
