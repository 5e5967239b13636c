"""Which language the app speaks: as a person has chosen it, else as the system does."""

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.ui import preferences, words
from demo_app.ui.fields import Choice
from demo_app.ui.languages import Language, languages, use, wanted


def begin() -> Language:
    """Use the language that is kept; called once, before a window is built."""
    return use(wanted(preferences.read(kept_in()).language))


def kept_in() -> Path | None:
    """Folder of what is kept; None where there can be none."""
    try:
        return data_folder()
    except InputError:
        return None


class LanguageChoice(Choice):
    """List of the languages, each by its own name.

    Attributes
    ----------
    chosen : Signal(str)
        Code of a language, or "" for the system's, that a person has chosen.
    """

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.addItem("", "")
        for one in languages():
            self.addItem(one.name, one.code)
        self.say()
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.activated.connect(self._choose)

    def say(self) -> None:
        """Say the words that are not names of languages in the language in use."""
        self.setItemText(0, words.text("language.system"))
        self.setAccessibleName(words.text("language"))

    def code(self) -> str:
        """The code that is chosen."""
        return str(self.currentData())

    def show_code(self, code: str) -> None:
        """Show what is chosen, without sending it."""
        self.setCurrentIndex(max(self.findData(code), 0))

    def _choose(self) -> None:
        self.chosen.emit(self.code())
