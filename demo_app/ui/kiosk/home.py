"""The list of steps: a large button for each, and what makes the kiosk easier to use."""

from collections.abc import Mapping

from PySide6.QtCore import QRect, Signal
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import KioskStep, Spoken
from demo_app.ui.kiosk.button import QUIET, BigButton
from demo_app.ui.kiosk.measures import grid
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.words_label import LEFT, WordsLabel

EASE = ("large_text", "high_contrast", "still", "describe")


class HomePage(Page):
    """Doors to the steps.

    Attributes
    ----------
    opened : Signal(str)
        Id of a step.
    eased : Signal(str, bool)
        One of `EASE`, and whether it is on.
    """

    opened = Signal(str)
    eased = Signal(str, bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = WordsLabel(self, "title", LEFT, bold=True)
        self.doors: dict[str, BigButton] = {}
        self.ease = {name: BigButton(self, QUIET) for name in EASE}
        for name, button in self.ease.items():
            button.setCheckable(True)
            button.clicked.connect(lambda on, name=name: self.eased.emit(name, on))

    def speak(self, spoken: Spoken) -> None:  # noqa: D102
        super().speak(spoken)
        self.title.say(spoken.words["choose"])
        for name, button in self.ease.items():
            button.say(spoken.words[name])
        for name, door in self.doors.items():
            self._say(door, spoken.step(name))

    def show_steps(self, ids: tuple[str, ...]) -> None:
        """Doors to these steps and no others."""
        if ids == tuple(self.doors):
            return
        for door in self.doors.values():
            door.hide()
            door.deleteLater()
        self.doors = {}
        before: QWidget = self.title
        for name in ids:
            door = BigButton(self)
            door.clicked.connect(lambda _on=False, name=name: self.opened.emit(name))
            door.show()
            if before is not self.title:
                QWidget.setTabOrder(before, door)
            self.doors[name] = before = door
        for button in self.ease.values():
            QWidget.setTabOrder(before, button)
            before = button
        self.fit(self.measures, self.look)
        if self.spoken is not None:
            self.speak(self.spoken)

    def show_ease(self, on: Mapping[str, bool]) -> None:
        """Which of `EASE` are on."""
        for name, button in self.ease.items():
            button.setChecked(on[name])

    def first(self) -> QWidget | None:  # noqa: D102
        return next(iter(self.doors.values()), None)

    def summary(self) -> str:  # noqa: D102
        return self.title.text()

    def place(self) -> None:  # noqa: D102
        gap, width = self.measures.gap, self.width()
        high = round(2.6 * self.measures.title) if not self.measures.tall else 0
        high = high or round(1.6 * self.measures.title)
        self.title.setGeometry(0, 0, width, high)
        columns = 4 if self.measures.tall and not self.measures.large else 2
        rows = len(EASE) // columns
        line = max(self.measures.target, round(2.5 * self.measures.least))
        low = rows * line + (rows - 1) * gap
        room = QRect(0, high + gap, width, self.height() - high - low - 3 * gap)
        for door, box in zip(self.doors.values(), grid(room, len(self.doors), 2, gap), strict=True):
            door.setGeometry(box)
        strip = QRect(0, self.height() - low, width, low)
        for button, box in zip(self.ease.values(), grid(strip, 4, columns, gap), strict=True):
            button.setGeometry(box)

    def _say(self, door: BigButton, step: KioskStep) -> None:
        door.say(step.title, step.invitation)
        door.set_line(step.invitation)
