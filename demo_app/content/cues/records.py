"""What a cue sheet holds, as frozen records."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from types import MappingProxyType
from typing import Any

NO_SETTINGS: Mapping[str, Any] = MappingProxyType({})
NO_CAPTIONS: Mapping[str, str] = MappingProxyType({})

HAZARDS = ("flame", "hot-glass", "breakage", "sharp-edges", "hot-water", "stored-energy")
"""Flags that a step may carry and a sheet may allow."""

EYEWEAR_FOR = ("flame", "hot-glass", "breakage", "hot-water", "stored-energy")
"""Those that ask for eyewear of whoever comes near (common practice; the venue decides)."""


@dataclass(frozen=True)
class Answer:
    """One answer to a question, and when the model says that it is right.

    Parameters
    ----------
    text : str
        What the audience reads.
    low, high : float or None
        Right if the reading is at least `low` and below `high`; None: no such limit.
    equals : object
        Right if the reading is this word, yes or no; None: not asked.
    otherwise : bool
        Right if no other answer is.
    """

    text: str
    low: float | None = None
    high: float | None = None
    equals: str | bool | None = None
    otherwise: bool = False


@dataclass(frozen=True)
class Question:
    """A prediction that the audience makes before it sees what happens.

    Parameters
    ----------
    ask : str
        Question in large letters.
    reading : str
        Name of the scene's reading that decides.
    answers : tuple of Answer
        Two to six.
    settings : mapping
        What the reveal changes of the step's settings: the live run that answers.
    at_s : float or None
        Model time at which the reading counts, s; None: the end of the story.
    """

    ask: str
    reading: str
    answers: tuple[Answer, ...]
    settings: Mapping[str, Any] = field(default_factory=lambda: NO_SETTINGS)
    at_s: float | None = None


@dataclass(frozen=True)
class Helper:
    """Somebody of the audience who is asked for."""

    briefing: str
    eyewear: str
    place: str
    exit: str


@dataclass(frozen=True)
class Contingency:
    """What to say and show when something real goes another way.

    Parameters
    ----------
    when : str
        In a few words: "it cracked early".
    say : str
        Words to say.
    settings : mapping
        What to change of the step's settings so that the model shows the same.
    """

    when: str
    say: str
    settings: Mapping[str, Any] = field(default_factory=lambda: NO_SETTINGS)


@dataclass(frozen=True)
class Step:
    """One step of a show.

    Parameters
    ----------
    id : str
        Unique in its sheet; from the title unless written.
    title : str
    scene : str
        Id of a scene.
    settings : mapping
        Settings other than the scene's defaults, by name, checked values.
    at_s : float
        Model time at which the step opens, s.
    play : bool
        Whether it runs when it opens.
    seconds : float
        How long the step takes in front of an audience, s.
    priority : int
        1 is never cut; 3 is cut first.
    say : tuple of str
        What to say, a line each.
    hold : str
        What to hold or point at.
    catch_up : str
        One line for those who come late.
    captions : mapping
        Language (a BCP 47 tag) to the line that the audience reads under the picture.
    props : tuple of str
        Things that have to lie ready.
    samples : tuple of str
        Pieces of glass or plastic that have to lie ready: they are counted out and in.
    hazards : tuple of str
        Some of `HAZARDS`.
    cautions : tuple of str
        What to mind, a line each.
    helper : Helper or None
    question : Question or None
    contingencies : tuple of Contingency
    phases : tuple of str
        Parts that it walks through (see `demo_app.content.running.records`), where they are others
        than usual.
    line : int
        Line of the file on which the step begins; 0 if it has none.
    """

    id: str
    title: str
    scene: str
    settings: Mapping[str, Any] = field(default_factory=lambda: NO_SETTINGS)
    at_s: float = 0.0
    play: bool = False
    seconds: float = 60.0
    priority: int = 1
    say: tuple[str, ...] = ()
    hold: str = ""
    catch_up: str = ""
    captions: Mapping[str, str] = field(default_factory=lambda: NO_CAPTIONS)
    props: tuple[str, ...] = ()
    samples: tuple[str, ...] = ()
    hazards: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    helper: Helper | None = None
    question: Question | None = None
    contingencies: tuple[Contingency, ...] = ()
    phases: tuple[str, ...] = ()
    line: int = 0


@dataclass(frozen=True)
class Sheet:
    """A whole cue sheet.

    Parameters
    ----------
    title, venue : str
    minutes : float
        Length of the slot that it was written for.
    steps : tuple of Step
    allows : tuple of str
        Hazards that the venue's slot allows; a step with any other is a mistake.
    language : str
        Language of its words, a BCP 47 tag.
    path : pathlib.Path or None
        File that it came from.
    """

    title: str
    venue: str
    minutes: float
    steps: tuple[Step, ...]
    allows: tuple[str, ...] = ()
    language: str = "en"
    path: Path | None = None
