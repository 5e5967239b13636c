"""What pupils get: predictions, numbers, challenge, exit question, something for home."""

from collections.abc import Mapping
from html import escape

from demo_app.content.handouts.make import Handout, Predicted
from demo_app.content.handouts.parts import listed, options, paragraph, points, tolerance
from demo_app.content.handouts.words import texts
from demo_app.content.lessons.drawn import Drawn
from demo_app.content.lessons.records import Step

LINE = "_" * 66


def worksheet(what: Handout) -> list[str]:
    """Body of the worksheet, heads in order, nothing told by colour alone."""
    lesson, said = what.lesson, texts(what.lesson.language)
    parts = [
        paragraph(said["group"]),
        f"<h2>{said['first']}</h2>",
        paragraph(said["silent"]),
    ]
    for number, one in enumerate(what.predictions, start=1):
        parts += _prediction(number, one, said)
    parts += [f"<h2>{said['numbers']}</h2>", paragraph(said["nearest"])]
    first = len(what.predictions) + 1
    for number, item in enumerate(what.items, start=first):
        parts += _item(number, item, said)
    for step in lesson.steps:
        if step.challenge is not None:
            parts += _challenge(step, said)
    parts += [
        f"<h2>{said['leave']}</h2>",
        paragraph(lesson.exit.ask),
        paragraph(LINE, "write"),
        paragraph(LINE, "write"),
        f"<h2>{said['home']}</h2>",
        listed(points(lesson.home)),
    ]
    return parts


def _prediction(number: int, one: Predicted, said: Mapping[str, str]) -> list[str]:
    question = one.step.question
    assert question is not None
    return [
        f"<h3>{said['question'].format(number=number)}</h3>",
        *([one.before.as_html(number)] if one.before else []),
        paragraph(question.ask),
        options(answer.text for answer in question.answers),
        paragraph(said["because"], "write"),
    ]


def _item(number: int, item: Drawn, said: Mapping[str, str]) -> list[str]:
    return [
        f"<h3>{said['question'].format(number=number)}</h3>",
        paragraph(item.ask),
        options(one.words for one in item.options),
        paragraph(said["within"].format(tolerance=tolerance(item))),
    ]


def _challenge(step: Step, said: Mapping[str, str]) -> list[str]:
    assert step.challenge is not None
    return [
        f"<h2>{escape(said['challenge'].format(title=step.title))}</h2>",
        paragraph(step.challenge.ask),
        paragraph(said["set"]),
    ]
