"""A lesson in some lines for a terminal: what it holds, and what the model answers."""

from collections.abc import Mapping

from demo_app.content.cues.truth import Truth
from demo_app.content.lessons.records import Lesson


def told(lesson: Lesson, truths: Mapping[str, Truth]) -> tuple[str, ...]:
    """Summary first, then a line for each prediction with the model's answer."""
    low, high = lesson.ages
    planned = sum(step.minutes for step in lesson.steps)
    challenges = sum(step.challenge is not None for step in lesson.steps)
    first = (
        f"lesson {lesson.title}, ages {low} to {high}: {len(lesson.steps)} steps, {planned:g} of"
        f" {lesson.minutes:g} minutes planned, {len(lesson.items)} numeric items,"
        f" {challenges} challenges; profile {lesson.profile}; in order"
    )
    lines = [first]
    for step in lesson.steps:
        if step.question is None or step.id not in truths:
            continue
        found = truths[step.id]
        lines.append(
            f"line {step.line}, {step.id}: {step.question.ask} The model: {step.question.reading}"
            f" = {found.words} at {found.at_s:.4g} s, so"
            f" '{step.question.answers[found.index].text}' is right"
        )
    return tuple(lines)
