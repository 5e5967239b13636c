"""The app's words in other languages, from Qt translation files.

A `Language` is asked for words, so two languages can stand side by side, as captions do. One of
them is in use for the whole application, by Qt's own translator: `use`. What has no translation,
or one that does not fit, is said in English: an audience never sees an error.
"""

import functools
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from demo_app.base.errors import InputError
from demo_app.base.locate import assets
from demo_app.content import describe
from demo_app.content.describe_drawn import Shown
from demo_app.content.describe_words import ENGLISH as DESCRIBED
from demo_app.optics.instrument import Instrument
from demo_app.scenes.scene import Action, Message, Reading, Scene
from demo_app.scenes.settings import Setting, Value
from demo_app.ui import words
from demo_app.ui.language_ids import (
    DESCRIBE,
    LANGUAGE,
    NAME,
    SELF,
    UI,
    choice_id,
    help_id,
    label_id,
    scene_context,
    text_id,
    value_id,
)
from demo_app.ui.template import Template

ENGLISH_CODE = "en"
STEM = "lehrlight_"
FOLDER = "translations"


class _Texts(Mapping[str, Template]):
    """A table of English texts as one language says them, each looked up when it is asked for."""

    def __init__(self, english: Mapping[str, str], translated: Callable[[str], Template]) -> None:
        self._english, self._translated = english, translated

    def __getitem__(self, name: str) -> Template:
        if name not in self._english:
            raise KeyError(name)
        return self._translated(name)

    def __iter__(self) -> Iterator[str]:
        return iter(self._english)

    def __len__(self) -> int:
        return len(self._english)


@dataclass(frozen=True, eq=False)
class Language:
    """Words and numbers in one language.

    Parameters
    ----------
    code : str
        "en", "de", "es".
    translator : PySide6.QtCore.QTranslator or None
        None for English. It may be installed by whoever wants Qt to translate too.
    locale : PySide6.QtCore.QLocale
        How numbers are written.
    """

    code: str
    translator: QTranslator | None
    locale: QLocale

    @property
    def name(self) -> str:
        """The language's own name, for a menu."""
        return self._said(LANGUAGE, NAME, SELF)

    def text(self, name: str, /, **values: Any) -> str:
        """Words of the window called `name` in `demo_app.ui.words`, with values put in."""
        return self._template(UI, name, words.ENGLISH[name]).format(**values)

    def title(self, scene: Scene) -> str:
        """Name of a scene."""
        return self._said(scene_context(scene), "title", scene.title)

    def texts(self, scene: Scene) -> Mapping[str, Template]:
        """Texts of a scene by id: sentences, and names of curves, axes and stresses."""
        context = scene_context(scene)
        return _Texts(
            scene.texts,
            lambda name: self._template(context, text_id(name), scene.texts[name], scene),
        )

    def sentence(self, scene: Scene, message: Message) -> str:
        """What a scene says of an instant."""
        return message.words(self.texts(scene))

    def label(self, scene: Scene, what: Setting | Reading | Action) -> str:
        """Name of a setting, a reading, a curve over time or a button of a scene."""
        return self._said(scene_context(scene), label_id(what), what.label)

    def help(self, scene: Scene, what: Setting | Reading) -> str:
        """The sentence that explains a setting or a reading; "" where there is none."""
        return self._said(scene_context(scene), help_id(what), what.help) if what.help else ""

    def choice(self, scene: Scene, setting: Setting, choice: str) -> str:
        """One of a setting's choices."""
        return self._said(scene_context(scene), choice_id(setting, choice), words.choice(choice))

    def value(self, scene: Scene, setting: Setting, value: Value) -> str:
        """Value of a setting, with its unit."""
        if isinstance(value, bool):
            return self.text("yes" if value else "no")
        if isinstance(value, str):
            return ", ".join(self.choice(scene, setting, one) for one in value.split(","))
        return self.quantity(value, setting.unit, 4)

    def reading(self, scene: Scene, spec: Reading, value: Any) -> str:
        """Value of a reading, with its unit; None is a dash."""
        if value is None:
            return self.text("none")
        if isinstance(value, bool):
            return self.text("yes" if value else "no")
        if isinstance(value, str):
            context = scene_context(scene)
            parts = value.split(", ")
            return ", ".join(self._said(context, value_id(spec, one), one) for one in parts)
        return self.odds(value) if "_probability" in spec.name else self.quantity(value, spec.unit)

    def odds(self, value: float) -> str:
        """Probability in percent, as `demo_app.ui.words.odds` tells it."""
        least = words.LEAST_ODDS
        name = "odds.under" if value < least else "odds.over" if value > 1 - least else "odds"
        return self.text(name, percent=self.number(100 * min(max(value, least), 1 - least)))

    def number(self, value: float, digits: int = 3) -> str:
        """Number as `demo_app.ui.words.number` rounds it."""
        return words.plain_number(value, digits).replace(".", self.locale.decimalPoint())

    def quantity(self, value: float, unit: str, digits: int = 3) -> str:
        """Number with its unit."""
        return words.with_unit(self.number(value, digits), unit)

    @property
    def described(self) -> Mapping[str, Template]:
        """Texts of `demo_app.content.describe`, which takes them as `texts`."""
        return _Texts(DESCRIBED, lambda name: self._template(DESCRIBE, name, DESCRIBED[name]))

    def spoken(
        self,
        scene: Scene,
        settings: Any,
        shown: Shown,
        instrument: Instrument,
        earlier: Shown | None = None,
    ) -> str:
        """What is seen, in words that can be read out: `demo_app.content.describe.spoken`."""
        return describe.spoken(scene, settings, shown, instrument, earlier, self.described)

    def _said(self, context: str, name: str, english: str) -> str:
        """The translation, or the English words."""
        if self.translator is None:
            return english
        return self.translator.translate(context, english, name) or english

    def _template(
        self, context: str, name: str, english: str, scene: Scene | None = None
    ) -> Template:
        """A text as this language says it, its numbers and the words in it too."""
        return Template(
            self._said(context, name, english),
            english=english,
            decimal_point=self.locale.decimalPoint(),
            word=(lambda part: self._word(scene, part)) if scene is not None else None,
        )

    def _word(self, scene: Scene, english: str) -> str:
        """A word that a scene puts into its sentence: a text of its own, a colour, a direction."""
        tables = (
            (scene_context(scene), text_id, scene.texts),
            (DESCRIBE, str, _DESCRIBED_WORDS),
            (UI, str, _UI_WORDS),
        )
        for context, id_of, table in tables:
            for name, text in table.items():
                if text == english:
                    return self._said(context, id_of(name), english)
        return english


_DESCRIBED_WORDS = {name: said for name, said in DESCRIBED.items() if name.startswith("colour.")}
_UI_WORDS = {name: words.ENGLISH[name] for name in ("tension", "compression")}


@functools.cache
def codes() -> tuple[str, ...]:
    """Languages that there are, English first."""
    found = sorted(_folder().glob(f"{STEM}*.qm"))
    return (ENGLISH_CODE, *(file.stem.removeprefix(STEM) for file in found))


@functools.cache
def language(code: str) -> Language:
    """The language with the code `code`, such as "de".

    Raises
    ------
    InputError
        For a code that there is no translation for, or one that cannot be read.
    """
    if code not in codes():
        raise InputError(
            f"there is no language '{code}'",
            place="language",
            remedy=f"write one of {', '.join(codes())}",
        )
    if code == ENGLISH_CODE:
        return Language(code, None, QLocale(code))
    return Language(code, translation(_folder() / f"{STEM}{code}.qm"), QLocale(code))


def languages() -> tuple[Language, ...]:
    """All of them, for a menu."""
    return tuple(map(language, codes()))


def wanted(code: str, system: QLocale | None = None) -> str:
    """Code of the language to use: `code` if there is one, else the system's, else English."""
    if code in codes():
        return code
    told = (system or QLocale.system()).name()
    return next((one for one in (told, told.split("_")[0]) if one in codes()), ENGLISH_CODE)


def use(code: str) -> Language:
    """Make a language the one that `demo_app.ui.words` says, and that numbers are typed in.

    Texts that stand in windows already stay: use it before they are built.
    """
    chosen = language(code)
    QLocale.setDefault(chosen.locale)
    # Nothing is installed while English is used: its files need not be read.
    for known in () if in_use().code == ENGLISH_CODE else languages():
        for translator in (known.translator, _qt_words(known.code)):
            if translator is not None:
                QCoreApplication.removeTranslator(translator)
    for translator in (_qt_words(code), chosen.translator):
        if translator is not None:
            QCoreApplication.installTranslator(translator)
    return chosen


@functools.cache
def _qt_words(code: str) -> QTranslator | None:
    """Words of Qt's own windows, such as those that ask for a file; None where they are English."""
    found = QTranslator()
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    return found if code != ENGLISH_CODE and found.load(f"qtbase_{code}", folder) else None


def in_use() -> Language:
    """The language that is used."""
    name = words.said(LANGUAGE, NAME, SELF)
    if name == SELF:
        return language(ENGLISH_CODE)
    return next((one for one in languages() if one.name == name), language(ENGLISH_CODE))


def translation(file: Path) -> QTranslator:
    """A compiled translation file; `InputError` where it is none."""
    found = QTranslator()
    if not found.load(str(file)):
        raise InputError(
            "is no translation that can be read", place=str(file), remedy="install Lehrlight again"
        )
    return found


def _folder() -> Path:
    return assets() / FOLDER
