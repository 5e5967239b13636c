"""What a lesson's pupils read for themselves, as plain sentences: for a measure of its words."""

import re
from collections.abc import Iterator

from demo_app.content.lessons.records import Lesson


def read_by_pupils(lesson: Lesson) -> str:
    """All that stands on the worksheet, sentence after sentence; numbers stand for drawn values.

    What teachers read (steps, key, beliefs) is left out, and so are answers to choose: fragments
    of a few words, which would flatter any measure.
    """
    return " ".join(_sentence(one) for one in _texts(lesson) if one)


def _texts(lesson: Lesson) -> Iterator[str]:
    if lesson.simulated is not None:
        yield from (lesson.simulated.says, lesson.simulated.not_at_home)
    for step in lesson.steps:
        if step.question is not None:
            yield step.question.ask
        if step.challenge is not None:
            yield step.challenge.ask
    for item in lesson.items:
        yield re.sub(r"\{\w+\}", "10", item.ask)
    yield lesson.exit.ask
    yield from (one.text for one in lesson.home)


def _sentence(text: str) -> str:
    return text if text[-1:] in ".?!)" else f"{text}."
