"""The bar along the lower edge: Back, Home, Pause and the languages, always in the same place."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import Spoken
from demo_app.ui.kiosk.button import BigButton
from demo_app.ui.kiosk.measures import grid
from demo_app.ui.kiosk.page import Page

BACK, HOME, PAUSE, LANGUAGES = NAMES = ("back", "home", "pause", "languages")
SIGNS = {BACK: "◀", HOME: "⌂", PAUSE: "❚❚", LANGUAGES: ""}
PAUSED = "▶"


class Bar(Page):
    """Four buttons.

    Attributes
    ----------
    pressed : Signal(str)
        One of `NAMES`.
    """

    pressed = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.buttons = {name: BigButton(self, sign=SIGNS[name]) for name in NAMES}
        for name, button in self.buttons.items():
            button.clicked.connect(lambda _on=False, name=name: self.pressed.emit(name))
        self._playing = False

    def speak(self, spoken: Spoken) -> None:  # noqa: D102
        super().speak(spoken)
        for name in (BACK, HOME, LANGUAGES):
            self.buttons[name].say(spoken.words[name])
        self._say_pause()

    def show_ways(self, *, ways: bool, home: bool) -> None:
        """Whether there is anywhere to go back to, and whether Home is not where one is."""
        self.buttons[BACK].setVisible(ways)
        self.buttons[HOME].setVisible(ways)
        self.buttons[HOME].setEnabled(home)

    def show_playing(self, *, playing: bool, moves: bool) -> None:
        """What Pause does: hold, or go on; and whether there is anything that moves."""
        self._playing = playing
        self.buttons[PAUSE].setVisible(moves)
        self._say_pause()

    def place(self) -> None:  # noqa: D102
        gap = self.measures.gap
        room = self.rect().adjusted(gap, 0, -gap, -gap)
        for button, box in zip(self.buttons.values(), grid(room, 4, 4, gap), strict=True):
            button.setGeometry(box)

    def _say_pause(self) -> None:
        button = self.buttons[PAUSE]
        button.set_sign(SIGNS[PAUSE] if self._playing else PAUSED)
        if self.spoken is not None:
            button.say(self.spoken.words["pause" if self._playing else "go_on"])
