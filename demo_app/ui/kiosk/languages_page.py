"""Every language in its own name: the second of two taps."""

from collections.abc import Mapping

from PySide6.QtCore import QRect, Signal
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import Spoken
from demo_app.ui.kiosk.button import BigButton
from demo_app.ui.kiosk.measures import grid
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.words_label import LEFT, WordsLabel


class LanguagesPage(Page):
    """A button for each language.

    Attributes
    ----------
    chosen : Signal(str)
        Tag of a language.
    """

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = WordsLabel(self, "title", LEFT, bold=True)
        self.buttons: dict[str, BigButton] = {}

    def show_languages(self, names: Mapping[str, str]) -> None:
        """Tags of the languages, each with its own name."""
        if list(self.buttons) == list(names):
            return
        for button in self.buttons.values():
            button.hide()
            button.deleteLater()
        self.buttons = {}
        for tag, name in names.items():
            button = BigButton(self)
            button.setCheckable(True)
            button.say(name)
            button.clicked.connect(lambda _on=False, tag=tag: self.chosen.emit(tag))
            button.show()
            self.buttons[tag] = button
        self.fit(self.measures, self.look)

    def speak(self, spoken: Spoken) -> None:  # noqa: D102
        super().speak(spoken)
        self.title.say(spoken.words["languages"])
        for tag, button in self.buttons.items():
            button.setChecked(tag == spoken.language)

    def first(self) -> QWidget | None:  # noqa: D102
        return next(iter(self.buttons.values()), None)

    def summary(self) -> str:  # noqa: D102
        return self.title.text()

    def place(self) -> None:  # noqa: D102
        gap = self.measures.gap
        high = round(1.6 * self.measures.title)
        self.title.setGeometry(0, 0, self.width(), high)
        count = len(self.buttons)
        columns = 1 if count <= 5 else 2
        rows = -(-count // columns)
        line = min((self.height() - high) // max(rows, 1), 3 * self.measures.target)
        # Low on the page, where hands reach.
        room = QRect(0, self.height() - rows * line, self.width(), rows * line)
        for button, box in zip(self.buttons.values(), grid(room, count, columns, gap), strict=True):
            button.setGeometry(box)
