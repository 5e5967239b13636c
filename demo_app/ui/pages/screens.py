"""How both windows look, and on which screen the audience's stands."""

from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QWidget

from demo_app.ui import words
from demo_app.ui.fields import Choice, Tick
from demo_app.ui.pages.parts import Page, label, push
from demo_app.ui.preferences import Preferences
from demo_app.ui.speaking import LanguageChoice
from demo_app.ui.theme import SCALES, Look


class ScreensPage(Page):
    """Preferences of the two windows.

    Attributes
    ----------
    chosen : Signal(Preferences)
    swapped : Signal()
        The two windows change screens.
    card_asked : Signal(bool)
        Whether the projector card is to be on the audience's window.
    """

    chosen = Signal(object)
    swapped = Signal()
    card_asked = Signal(bool)

    def __init__(self, languages: tuple[tuple[str, str], ...] = (), parent: QWidget | None = None):
        super().__init__(parent)
        self._preferences = Preferences()
        self.line = label("", "", self)
        self.swap = push("screens.swap", self)
        self.swap.clicked.connect(self.swapped)
        self.card = push("before.card", self)
        self.card.setCheckable(True)
        self.card.toggled.connect(self.card_asked)
        self.ticks = {
            name: self._tick(f"screens.{name}") for name in ("calm", "still", "high_contrast")
        }
        self.scale = self._choice("screens.scale")
        for scale in SCALES:
            self.scale.addItem(words.text("screens.times", times=words.number(scale)), scale)
        self.second = self._choice("screens.second")
        self.second.addItem(words.text("screens.no_second"), "")
        for code, name in languages:
            self.second.addItem(name, code)
        self.language = LanguageChoice(self)
        for box in (self.scale, self.second, self.language):
            box.activated.connect(self._choose)
        self.box.addWidget(label(words.text("screens.title"), "title", self))
        self.box.addWidget(self.line)
        # One below the other: large words have room for one only.
        for button in (self.card, self.swap):
            self.box.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self.box.addWidget(label(words.text("screens.look"), "title", self))
        for name, tick in self.ticks.items():
            self.box.addWidget(tick)
            if name == "calm":
                self.box.addWidget(label(words.text("screens.calm.help"), "quiet", self))
        rows = (
            ("screens.scale", self.scale),
            ("screens.second", self.second),
            ("language", self.language),
        )
        for name, box in rows:
            line = QHBoxLayout()
            line.addWidget(label(words.text(name), "", self), 1)
            line.addWidget(box)
            self.box.addLayout(line)
        self.box.addWidget(label(words.text("language.later"), "quiet", self))
        self.box.addStretch(1)

    def show_preferences(self, preferences: Preferences) -> None:
        """Show what holds, without sending it."""
        self._preferences = preferences
        on = {
            "calm": preferences.calm,
            "still": not preferences.motion,
            "high_contrast": preferences.look.high_contrast,
        }
        for name, tick in self.ticks.items():
            tick.setChecked(on[name])
        self.scale.setCurrentIndex(max(self.scale.findData(preferences.look.scale), 0))
        self.second.setCurrentIndex(max(self.second.findData(preferences.second), 0))
        self.language.show_code(preferences.language)

    def show_place(self, said: str, *, two: bool) -> None:
        """Where the audience's window is."""
        self.line.setText(said)
        self.swap.setEnabled(two)

    def _tick(self, name: str) -> Tick:
        made = Tick(words.text(name), self)
        made.clicked.connect(self._choose)
        return made

    def _choice(self, name: str) -> QComboBox:
        made = Choice(self)
        made.setAccessibleName(words.text(name))
        return made

    def _choose(self) -> None:
        look = Look(self.ticks["high_contrast"].isChecked(), float(self.scale.currentData()))
        self._preferences = replace(
            self._preferences,
            look=look,
            calm=self.ticks["calm"].isChecked(),
            motion=not self.ticks["still"].isChecked(),
            second=str(self.second.currentData()),
            language=self.language.code(),
        )
        self.chosen.emit(self._preferences)
