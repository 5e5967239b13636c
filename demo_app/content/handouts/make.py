"""A lesson's worksheet or answer key, from one seed: all of it computed at that moment."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

from demo_app.base.errors import InputError
from demo_app.content.cues.truth import Truth, truth
from demo_app.content.handouts.figures import Figure, figure
from demo_app.content.lessons.drawn import LETTERS, Drawn, drawn
from demo_app.content.lessons.records import Lesson, Step
from demo_app.scenes.catalogue import scene as scene_called
from demo_app.scenes.settings import make

ENDS = (".html", ".pdf")
PAPERS = ("A4", "Letter")
MOST_SEED = 999_999


@dataclass(frozen=True)
class Predicted:
    """A prediction as it is printed.

    Parameters
    ----------
    step : Step
    truth : Truth
        What the model says.
    before, after : Figure or None
        As the step opens; after the reveal. Only one of them is drawn: the sheet's.
    """

    step: Step
    truth: Truth
    before: Figure | None = None
    after: Figure | None = None

    @property
    def letter(self) -> str:
        """Letter of the right answer."""
        return LETTERS[self.truth.index]


@dataclass(frozen=True)
class Handout:
    """What a worksheet or an answer key says.

    Parameters
    ----------
    lesson : Lesson
    seed : int
    key : bool
        Whether it is the answer key.
    predictions : tuple of Predicted
    items : tuple of Drawn
    """

    lesson: Lesson
    seed: int
    key: bool
    predictions: tuple[Predicted, ...]
    items: tuple[Drawn, ...]

    @property
    def letters(self) -> tuple[str, ...]:
        """Right letters, predictions first."""
        predicted = (one.letter for one in self.predictions)
        return (*predicted, *(one.letter for one in self.items))


def handout(lesson: Lesson, seed: int = 1, key: bool = False) -> Handout:
    """Compute the worksheet of `lesson`, or with `key` its answer key; both agree for a seed."""
    asking = [step for step in lesson.steps if step.question is not None]
    return Handout(
        lesson,
        seed,
        key,
        tuple(_predicted(step, key) for step in asking),
        tuple(drawn(item, seed) for item in lesson.items),
    )


def _predicted(step: Step, key: bool) -> Predicted:
    question = step.question
    assert question is not None
    scene = scene_called(step.scene)
    found = truth(scene, step.settings, question)
    if not key:
        before: Any = make(scene.settings, dict(step.settings))
        return Predicted(step, found, before=figure(scene, before, step.at_s))
    after: Any = make(scene.settings, {**step.settings, **question.settings})
    return Predicted(step, found, after=figure(scene, after, question.at_s))


def check_name(path: Path) -> Path:
    """`path`, if its end is one of `ENDS`; `InputError` otherwise."""
    if path.suffix.lower() not in ENDS:
        raise InputError(
            f"'{path.name}' is no handout", place="--out", remedy="let it end in .pdf or .html"
        )
    return path
