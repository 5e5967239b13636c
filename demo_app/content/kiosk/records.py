"""What the steps of a kiosk hold, as frozen records."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from types import MappingProxyType
from typing import Any

from demo_app.content.cues.records import NO_SETTINGS, Question

NO_WORDS: Mapping[str, str] = MappingProxyType({})


@dataclass(frozen=True)
class Control:
    """A setting that a visitor may change.

    Parameters
    ----------
    setting : str
        Its name in the scene.
    low, high, step : float
        Bounds and step for numbers, never wider than the scene's own; else 0.
    choices : tuple of str
        Some of the scene's choices, in the order of the buttons; empty for numbers and for
        yes or no.
    label : str
        Its name in the visitor's language, without the unit.
    words : mapping
        Choice to its name in the visitor's language; for yes or no the keys "yes" and "no".
    """

    setting: str
    low: float = 0.0
    high: float = 0.0
    step: float = 0.0
    choices: tuple[str, ...] = ()
    label: str = ""
    words: Mapping[str, str] = field(default_factory=lambda: NO_WORDS)


@dataclass(frozen=True)
class KioskStep:
    """One self-guided step in one language: predict, do, see, why.

    Parameters
    ----------
    id : str
        The same in every language.
    title : str
        On its door in the inviting view, and above it.
    invitation : str
        One line under the title of the door.
    scene : str
        Id of a scene.
    settings : mapping
        Settings with which the picture opens, checked values, those other than the default.
    at_s : float
        Model time at which the picture opens, s.
    play : bool
        Whether it moves when it opens.
    speed : float or None
        Model seconds for each second; None: the scene's own pace.
    seconds : float
        Longest time that the step takes in front of the screen, s; at most 120.
    point : bool
        Whether a finger on the picture does something.
    question : Question
        What is predicted; its settings are what the button `do` changes.
    do : str
        On the button that lets it happen.
    touch : str
        What may be tried after that, one sentence.
    see : str
        What to look for, one sentence.
    why : str
        One sentence.
    description : str
        The picture as it opens, in words, for who does not see it.
    controls : tuple of Control
        At most three.
    """

    id: str
    title: str
    invitation: str
    scene: str
    settings: Mapping[str, Any]
    at_s: float
    play: bool
    speed: float | None
    seconds: float
    point: bool
    question: Question
    do: str
    touch: str
    see: str
    why: str
    description: str
    controls: tuple[Control, ...] = ()


@dataclass(frozen=True)
class Spoken:
    """All words of the kiosk in one language.

    Parameters
    ----------
    language : str
        A BCP 47 tag: "en", "de", "es".
    name : str
        The language's own name.
    words : mapping
        Every key of `demo_app.content.kiosk.word_keys.KEYS` to its words.
    steps : tuple of KioskStep
        In the order of their doors.
    """

    language: str
    name: str
    words: Mapping[str, str]
    steps: tuple[KioskStep, ...]

    def word(self, key: str, /, **values: Any) -> str:
        """The words called `key` with `values` put in."""
        return self.words[key].format(**values)

    def step(self, name: str) -> KioskStep:
        """The step with the id `name`; `KeyError` if there is none."""
        for one in self.steps:
            if one.id == name:
                return one
        raise KeyError(name)


@dataclass(frozen=True)
class Scenery:
    """A run of a scene that is shown for its own sake.

    Parameters
    ----------
    scene : str
        Id of a scene.
    settings : mapping
        Checked values, those other than the default.
    at_s : float
        Model time at which it opens, s.
    speed : float or None
        Model seconds for each second; None: the scene's own pace.
    """

    scene: str
    settings: Mapping[str, Any] = field(default_factory=lambda: NO_SETTINGS)
    at_s: float = 0.0
    speed: float | None = None


@dataclass(frozen=True)
class Texts:
    """The kiosk's texts in all their languages.

    Parameters
    ----------
    spoken : mapping
        Language tag to its words, in the order in which languages are offered.
    attract : tuple of Scenery
        What moves in the inviting view, one after the other.
    folder : pathlib.Path or None
        Where they came from.
    """

    spoken: Mapping[str, Spoken]
    attract: tuple[Scenery, ...]
    folder: Path | None = None

    @property
    def languages(self) -> tuple[str, ...]:
        """Tags of the languages."""
        return tuple(self.spoken)

    @property
    def ids(self) -> tuple[str, ...]:
        """Ids of the steps, the same in every language."""
        return tuple(step.id for step in next(iter(self.spoken.values())).steps)
