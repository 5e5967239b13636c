"""What a lesson plan holds, as frozen records."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from demo_app.content.cues.records import NO_SETTINGS, Question
from demo_app.content.lessons.item_records import NumericItem

STAGES = ("welcome", "predict", "observe", "explain", "task", "challenge")
"""What a step may be; the first of them opens a lesson, the middle three follow each other."""


@dataclass(frozen=True)
class Words:
    """One paragraph, or one point of a list.

    Parameters
    ----------
    text : str
    point : bool
        Whether it is a point of a list.
    """

    text: str
    point: bool = False


@dataclass(frozen=True)
class Item:
    """One thing of the kit.

    Parameters
    ----------
    name : str
    count : str
        How many, and for whom: "1 a group".
    hazards : tuple of str
        Real hazards that it brings.
    note : str
        What to mind with it.
    """

    name: str
    count: str = ""
    hazards: tuple[str, ...] = ()
    note: str = ""


@dataclass(frozen=True)
class Simulated:
    """What a class is told where the screen shows what the room must not have.

    Parameters
    ----------
    says : str
        That it is simulated.
    not_at_home : str
        What not to do at home.
    """

    says: str
    not_at_home: str


@dataclass(frozen=True)
class Misconception:
    """What pupils commonly believe.

    Parameters
    ----------
    id : str
    text : str
        The belief, as a pupil would say it.
    source : str
        Where teaching research names it, or "common practice".
    read : bool
        Whether the source was looked at; else it is cited from memory.
    meet : str
        How to meet it.
    """

    id: str
    text: str
    source: str
    read: bool
    meet: str


@dataclass(frozen=True)
class Link:
    """A line of a public curriculum.

    Parameters
    ----------
    code : str
    wording : str
    source : str
    read : bool
        Whether the wording was compared with a copy; else it is from memory.
    """

    code: str
    wording: str
    source: str
    read: bool


@dataclass(frozen=True)
class Bound:
    """How far pupils may change one setting.

    Parameters
    ----------
    name : str
        Of the setting.
    low, high : float
        For numbers.
    choices : tuple
        For words and yes-no: those that may be chosen; empty for numbers.
    """

    name: str
    low: float = 0.0
    high: float = 0.0
    choices: tuple[str | bool, ...] = ()

    def holds(self, value: Any) -> bool:
        """Whether `value` may be chosen."""
        if self.choices:
            return value in self.choices
        return self.low <= float(value) <= self.high


@dataclass(frozen=True)
class Goal:
    """What a challenge asks of one number or verdict.

    Parameters
    ----------
    names : tuple of str
        Readings or settings; the goal is about their sum if there are several.
    low, high : float or None
        At least `low` and below `high`; None: no such limit.
    equals : object
        A word, yes or no that it has to be; None: not asked.
    """

    names: tuple[str, ...]
    low: float | None = None
    high: float | None = None
    equals: str | bool | None = None


@dataclass(frozen=True)
class Challenge:
    """What groups try to reach with settings of their own.

    Parameters
    ----------
    ask : str
    goals : tuple of Goal
        All have to be met.
    solution : mapping
        Settings that meet them, for the teacher.
    hint : str
        For a group that is stuck.
    most, least : str
        Reading by which groups that met the goals are ranked; at most one of the two.
    """

    ask: str
    goals: tuple[Goal, ...]
    solution: Mapping[str, Any]
    hint: str
    most: str = ""
    least: str = ""


@dataclass(frozen=True)
class Step:
    """One step of a lesson.

    Parameters
    ----------
    id : str
        Unique in its lesson.
    stage : str
        One of `STAGES`.
    title : str
    minutes : float
    body : tuple of Words
        For the teacher: what to say and to do.
    hazards : tuple of str
        Real hazards of its hands-on part.
    scene : str
        Id of a scene; "" where nothing is shown.
    settings : mapping
        Other than the scene's defaults.
    at_s : float
        Model time at which it opens, s.
    play : bool
        Whether it runs when it opens.
    question : Question or None
        A prediction, private on paper first.
    beliefs : tuple of str
        For each answer of the question the id of the misconception behind it, or "".
    bounds : tuple of Bound
        What pupils may change; nothing else.
    challenge : Challenge or None
    line : int
    """

    id: str
    stage: str
    title: str
    minutes: float
    body: tuple[Words, ...] = ()
    hazards: tuple[str, ...] = ()
    scene: str = ""
    settings: Mapping[str, Any] = field(default_factory=lambda: NO_SETTINGS)
    at_s: float = 0.0
    play: bool = False
    question: Question | None = None
    beliefs: tuple[str, ...] = ()
    bounds: tuple[Bound, ...] = ()
    challenge: Challenge | None = None
    line: int = 0


@dataclass(frozen=True)
class Exit:
    """The question with which pupils leave, and what a good answer says."""

    ask: str
    answer: str


@dataclass(frozen=True)
class Lesson:
    """A whole lesson plan.

    Parameters
    ----------
    title, aim : str
    ages : tuple of int
        From and to.
    minutes : float
    language : str
        A BCP 47 tag.
    profile : str
        Name of a profile of `demo_app.content.lessons.hazards`.
    allows : tuple of str
        Hazards that may be met, of those of the profile; a step with any other is a mistake.
    kit : tuple of Item
    simulated : Simulated or None
        Only where something simulated is allowed.
    misconceptions : tuple of Misconception
    curriculum : tuple of Link
    steps : tuple of Step
    items : tuple of NumericItem
    exit : Exit
    home : tuple of Words
        What to do at home.
    path : pathlib.Path or None
    """

    title: str
    aim: str
    ages: tuple[int, int]
    minutes: float
    language: str
    profile: str
    allows: tuple[str, ...]
    kit: tuple[Item, ...]
    simulated: Simulated | None
    misconceptions: tuple[Misconception, ...]
    curriculum: tuple[Link, ...]
    steps: tuple[Step, ...]
    items: tuple[NumericItem, ...]
    exit: Exit
    home: tuple[Words, ...]
    path: Path | None = None

    def belief(self, id: str) -> Misconception:
        """The misconception called `id`, which has to be there."""
        return next(one for one in self.misconceptions if one.id == id)
