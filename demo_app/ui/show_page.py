"""The middle of the presenter's window: the stage, and with two screens what nobody else sees."""

from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from demo_app.content.cues.records import Question, Step
from demo_app.ui import theme
from demo_app.ui.audience_view import AudienceView
from demo_app.ui.hands_panel import HandsPanel
from demo_app.ui.mirror import Mirror
from demo_app.ui.prompts import Prompts

ONE, TWO = (11, 5), (9, 7)
"""Shares of the height of stage and notes, with one screen and with two.

With two the audience has a window of its own, and the presenter needs words more than pictures.
"""


class ShowPage(QWidget):
    """The stage; below it notes, hands to count and a copy of the audience's window.

    With one screen the stage is the audience's and has all the room, unless notes are asked for.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.view = AudienceView(self)
        self.prompts = Prompts(self)
        self.hands = HandsPanel(self)
        self.mirror = Mirror(self)
        self._notes = QStackedWidget(self)
        self._notes.addWidget(self.prompts)
        self._notes.addWidget(self.hands)
        self._below = QWidget(self)
        self._below.setObjectName("page")
        below = QHBoxLayout(self._below)
        below.setContentsMargins(0, 0, 0, 0)
        below.addWidget(self._notes, 1)
        below.addWidget(self.mirror)
        self._box = QVBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(0)
        self._box.addWidget(self.view, ONE[0])
        self._box.addWidget(self._below, ONE[1])
        self._step: tuple[Step, Step | None] | None = None
        self.set_mode(two=False, notes=False)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing; the stage sees to its own."""
        for part in (self.prompts, self.hands, self.mirror):
            part.set_sizes(sizes)

    def set_mode(self, *, two: bool, notes: bool) -> None:
        """With two screens, or with one; whether notes stand below the stage."""
        self.mirror.setVisible(two)
        for place, share in enumerate(TWO if two else ONE):
            self._box.setStretch(place, share)
        self._below.setVisible(notes)

    def show_step(self, step: Step, coming: Step | None) -> None:
        """Notes of a step."""
        if (step, coming) == self._step:
            return
        self._step = (step, coming)
        self.prompts.show_step(step, coming)
        if step.question is not None:
            self.hands.set_question(step.question)

    def show_hands(self, question: Question | None, counts: tuple[int, ...]) -> None:
        """Hands to count while a question is put, else the notes."""
        self._notes.setCurrentWidget(self.prompts if question is None else self.hands)
        self.hands.show_counts(counts)
