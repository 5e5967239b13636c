"""What really happens: the answer to a question, taken from the model."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from demo_app.content.cues.answers import judge
from demo_app.content.cues.records import Question, Step
from demo_app.content.readings import check_names, in_words, solve
from demo_app.scenes.catalogue import scene as scene_called
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import make


@dataclass(frozen=True)
class Truth:
    """The right answer, and why.

    Parameters
    ----------
    index : int
        Of the right answer, from 0.
    value : float, str or bool
        What the reading says.
    unit : str
        Of the reading, or "".
    at_s : float
        Model time, s.
    sentence : str
        What is seen then, in plain English, from the scene.
    """

    index: int
    value: float | str | bool
    unit: str
    at_s: float
    sentence: str

    @property
    def words(self) -> str:
        """The value as people write it, with its unit."""
        return f"{in_words(self.value)} {self.unit}".rstrip()


def truth(scene: Scene, settings: Mapping[str, Any], question: Question) -> Truth:
    """Run `scene` and find the right answer.

    Parameters
    ----------
    scene : Scene
        What runs.
    settings : mapping
        The step's settings; those of the question come over them.
    question : Question
        What is asked.

    Raises
    ------
    InputError
        If a setting or the reading is unknown, or the model's value suits no answer.
    """
    check_names(scene, [question.reading])
    record: Any = make(scene.settings, {**settings, **question.settings})
    found = solve(scene, record, question.at_s)
    value = found.readings[question.reading]
    index = judge(question, value)
    unit = next(one.unit for one in scene.readings if one.name == question.reading)
    return Truth(index, value, unit, found.at_s, found.sentence)


def truth_of(step: Step) -> Truth:
    """The right answer to the question of `step`, which has to have one."""
    assert step.question is not None
    return truth(scene_called(step.scene), step.settings, step.question)
