"""What pupils get: predictions, numbers, challenge, exit question, something for home."""

from html import escape

from demo_app.content.handouts.make import Handout, Predicted
from demo_app.content.handouts.parts import listed, options, paragraph, points, tolerance
from demo_app.content.lessons.drawn import Drawn
from demo_app.content.lessons.records import Step

WRITE = "My letter: ______ because ______________________________________________"
LINE = "_" * 66


def worksheet(what: Handout) -> list[str]:
    """Body of the worksheet, heads in order, nothing told by colour alone."""
    lesson = what.lesson
    parts = [
        paragraph("Group (a letter, no names): ______"),
        "<h2>Predict first</h2>",
        paragraph("Write your letter before anybody speaks. Nobody marks it."),
    ]
    for number, one in enumerate(what.predictions, start=1):
        parts += _prediction(number, one)
    parts += ["<h2>Numbers</h2>", paragraph("Choose the answer that you think is nearest.")]
    first = len(what.predictions) + 1
    for number, item in enumerate(what.items, start=first):
        parts += _item(number, item)
    for step in lesson.steps:
        if step.challenge is not None:
            parts += _challenge(step)
    parts += [
        "<h2>Before you leave</h2>",
        paragraph(lesson.exit.ask),
        paragraph(LINE, "write"),
        paragraph(LINE, "write"),
        "<h2>At home</h2>",
        listed(points(lesson.home)),
    ]
    return parts


def _prediction(number: int, one: Predicted) -> list[str]:
    question = one.step.question
    assert question is not None
    return [
        f"<h3>Question {number}</h3>",
        *([one.before.as_html(number)] if one.before else []),
        paragraph(question.ask),
        options(answer.text for answer in question.answers),
        paragraph(WRITE, "write"),
    ]


def _item(number: int, item: Drawn) -> list[str]:
    return [
        f"<h3>Question {number}</h3>",
        paragraph(item.ask),
        options(one.words for one in item.options),
        paragraph(f"Right within {tolerance(item)}. My letter: ______"),
    ]


def _challenge(step: Step) -> list[str]:
    assert step.challenge is not None
    return [
        f"<h2>Challenge: {escape(step.title)}</h2>",
        paragraph(step.challenge.ask),
        paragraph("What we set: ______________________________  What came out: ______________"),
    ]
