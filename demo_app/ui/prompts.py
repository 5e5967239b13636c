"""What the presenter reads while a step is shown: what to say, to hold and to mind."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from demo_app.content.cues.records import Helper, Step
from demo_app.ui import theme, words

WARNING = "\u26a0"
"""Sign before a hazard, so that colour is not what tells it."""


class Prompts(QScrollArea):
    """One step's words for the presenter; never shown to an audience."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("prompts")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setAccessibleName(words.text("show.prompts"))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        page = QWidget()
        page.setObjectName("page")
        self._box = QVBoxLayout(page)
        self.title = self._label("title")
        self.hazards = self._label("alert")
        # What is in the hand is looked up most often, and must not lie below the words.
        self.hold = self._label("value")
        self.say = self._label("say")
        self.helper = self._label("")
        self.cautions = self._label("")
        self.coming = self._label("quiet")
        self._box.addStretch(1)
        self.setWidget(page)

    def _label(self, name: str) -> QLabel:
        made = QLabel(self)
        made.setObjectName(name)
        made.setWordWrap(True)
        made.setTextFormat(Qt.TextFormat.PlainText)
        made.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        self._box.addWidget(made)
        return made

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing: what to say is read at arm's length and more."""
        gap = sizes.gap
        self._box.setContentsMargins(gap, gap, gap, gap)
        self._box.setSpacing(gap)
        self.say.setStyleSheet(f"font-size: {round(sizes.panel * 1.3)}px;")
        self.hazards.setStyleSheet(f"font-size: {round(sizes.panel * 1.15)}px; font-weight: 700;")

    def show_step(self, step: Step, coming: Step | None) -> None:
        """Show what belongs to `step`, and what comes after it."""
        hazards = [words.text(f"hazard.{name}") for name in step.hazards]
        _put(self.title, step.title)
        _put(self.hazards, f"{WARNING} {', '.join(hazards)}" if hazards else "")
        _put(self.say, "\n".join(f"– {line}" for line in step.say))
        _put(self.hold, words.text("show.hold", what=step.hold) if step.hold else "")
        _put(self.helper, _help(step.helper) if step.helper is not None else "")
        _put(self.cautions, _cautions(step.cautions))
        _put(self.coming, _coming(coming))
        self.verticalScrollBar().setValue(0)


def _put(label: QLabel, said: str) -> None:
    label.setText(said)
    label.setVisible(bool(said))


def _help(helper: Helper) -> str:
    return words.text(
        "show.helper",
        briefing=helper.briefing,
        eyewear=helper.eyewear or words.text("none"),
        place=helper.place,
        exit=helper.exit,
    )


def _cautions(cautions: Sequence[str]) -> str:
    return "\n".join(f"{WARNING} {caution}" for caution in cautions)


def _coming(step: Step | None) -> str:
    if step is None:
        return words.text("show.last")
    if step.hold:
        return words.text("show.coming.hold", title=step.title, hold=step.hold)
    return words.text("show.coming", title=step.title)
