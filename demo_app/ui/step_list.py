"""All steps of a show to jump to, with their times and what a late start cuts."""

from collections.abc import Mapping, Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QPushButton, QScrollArea, QVBoxLayout, QWidget

from demo_app.content.cues.records import Sheet
from demo_app.ui import theme, words
from demo_app.ui.clock_bar import minutes

HERE, DONE, CUT = "▶", "✓", "✂"
"""Signs before a step that is shown, was shown, is cut."""


class StepList(QScrollArea):
    """One button a step; a cut step may still be chosen.

    Attributes
    ----------
    chosen : Signal(int)
        Place of a step in the sheet.
    """

    chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(words.text("show.steps"))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        page = QWidget()
        page.setObjectName("page")
        self._box = QVBoxLayout(page)
        self._box.addStretch(1)
        self.buttons: list[QPushButton] = []
        self.setWidget(page)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing."""
        self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, sizes.gap)
        self._box.setSpacing(max(sizes.gap // 2, 4))

    def set_sheet(self, sheet: Sheet) -> None:
        """List another sheet's steps."""
        for old in self.buttons:
            self._box.removeWidget(old)
            old.deleteLater()
        self.buttons = []
        for place in range(len(sheet.steps)):
            made = QPushButton()
            made.setObjectName("step")
            made.setStyleSheet("text-align: left;")
            made.setCheckable(True)
            made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            made.clicked.connect(partial(self._choose, place))
            self._box.insertWidget(place, made)
            self.buttons.append(made)

    def show_run(
        self, sheet: Sheet, place: int, kept: Sequence[int], spent: Mapping[str, float]
    ) -> None:
        """Mark the step shown, those that were shown, and those that are cut."""
        for number, (step, button) in enumerate(zip(sheet.steps, self.buttons, strict=True)):
            cut = number not in kept
            done = step.id in spent and number != place
            sign = HERE if number == place else CUT if cut else DONE if done else "  "
            times = minutes(step.seconds)
            if step.id in spent:
                times = words.text("show.step.spent", spent=minutes(spent[step.id]), planned=times)
            state = words.text("show.step.cut") if cut else words.text(f"priority.{step.priority}")
            button.setText(f"{sign} {number + 1}  {step.title}  ·  {times}  ·  {state}")
            button.setChecked(number == place)

    def _choose(self, place: int) -> None:
        # Which one is shown is for the show to say.
        self.buttons[place].setChecked(not self.buttons[place].isChecked())
        self.chosen.emit(place)
