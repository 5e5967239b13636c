"""All steps of the show: to jump to, to cut, to add to, to rehearse."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from demo_app.content.cues.records import Sheet
from demo_app.content.cues.shorten import Proposal
from demo_app.ui import theme, words
from demo_app.ui.clock_bar import minutes
from demo_app.ui.pages.parts import label, push
from demo_app.ui.step_list import StepList


class StepsPage(QWidget):
    """The list of steps, and what can be done with it.

    Attributes
    ----------
    fit_asked : Signal()
        Leave out what no longer fits into the time left.
    whole_asked : Signal()
        Take every step in again.
    save_asked : Signal()
        Put the state shown down as one more step.
    """

    fit_asked = Signal()
    whole_asked = Signal()
    save_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("page")
        self.list = StepList(self)
        self.fit = push("steps.fit", self)
        self.whole = push("steps.whole", self)
        self.save = push("steps.save", self)
        self.line = label("", "quiet", self)
        self.fit.clicked.connect(self.fit_asked)
        self.whole.clicked.connect(self.whole_asked)
        self.save.clicked.connect(self.save_asked)
        row = QHBoxLayout()
        for button in (self.fit, self.whole, self.save):
            row.addWidget(button)
        row.addStretch(1)
        self._box = QVBoxLayout(self)
        self._box.addLayout(row)
        self._box.addWidget(self.line)
        self._box.addWidget(self.list, 1)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing."""
        self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, sizes.gap)
        self._box.setSpacing(sizes.gap)
        self.list.set_sizes(sizes)

    def show_proposal(self, sheet: Sheet, found: Proposal | None) -> None:
        """What a rehearsal has measured so far, and the cut that it proposes; None: none."""
        if found is None:
            self.line.setText("")
            return
        titles = {step.id: step.title for step in sheet.steps}
        paces = "; ".join(
            words.text(
                "steps.pace",
                title=titles[one.id],
                took=minutes(one.measured_s),
                planned=minutes(one.planned_s),
            )
            for one in found.paces
            if one.measured_s is not None
        )
        dropped = "; ".join(titles[step] for step in found.cut.dropped) or words.text("none")
        self.line.setText(words.text("steps.rehearsed", paces=paces, dropped=dropped))
