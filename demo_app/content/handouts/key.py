"""What the teacher gets: right letters with their numbers, why others are wrong, plan and kit."""

from collections.abc import Mapping
from html import escape

from demo_app.content.handouts.make import Handout, Predicted
from demo_app.content.handouts.parts import listed, paragraph, points, table, tolerance
from demo_app.content.handouts.words import texts
from demo_app.content.lessons.drawn import LETTERS, Drawn
from demo_app.content.lessons.records import Lesson, Link, Misconception, Step
from demo_app.content.readings import in_words


def answers(what: Handout) -> list[str]:
    """Body of the answer key."""
    lesson, said = what.lesson, texts(what.lesson.language)
    numbered = list(enumerate(what.letters, start=1))
    parts = [
        f"<h2>{said['letters']}</h2>",
        table(
            said["by_question"],
            (said["question_head"], said["letter_head"]),
            [(str(n), one) for n, one in numbered],
        ),
        f"<h2>{said['predictions']}</h2>",
    ]
    for number, one in enumerate(what.predictions, start=1):
        parts += _prediction(number, one, lesson)
    parts += [f"<h2>{said['numbers']}</h2>"]
    for number, item in enumerate(what.items, start=len(what.predictions) + 1):
        parts += _item(number, item, lesson)
    for step in lesson.steps:
        if step.challenge is not None:
            parts += _challenge(step, said)
    parts += [
        f"<h2>{said['exit']}</h2>",
        paragraph(lesson.exit.ask),
        paragraph(said["good"].format(answer=lesson.exit.answer)),
        f"<h2>{said['may_believe']}</h2>",
        table(
            said["beliefs"],
            (said["belief"], said["meet"], said["source"]),
            (_belief(one, said) for one in lesson.misconceptions),
        ),
        f"<h2>{said['plan']}</h2>",
        paragraph(lesson.aim),
        table(
            said["steps"],
            (said["step"], said["kind"], said["minutes"]),
            map(_step, lesson.steps),
        ),
        listed(_kit(lesson)),
        f"<h2>{said['curriculum']}</h2>",
        table(
            said["links"],
            (said["code"], said["wording"], said["source"]),
            (_link(one, said) for one in lesson.curriculum),
        ),
        f"<h2>{said['home']}</h2>",
        listed(points(lesson.home)),
    ]
    return parts


def _prediction(number: int, one: Predicted, lesson: Lesson) -> list[str]:
    question, said = one.step.question, texts(lesson.language)
    assert question is not None
    right = question.answers[one.truth.index]
    at = f"{in_words(float(f'{one.truth.at_s:.3g}'))} s"
    wrong = [
        f"{LETTERS[at_]}, {answer.text}: {lesson.belief(belief).text}"
        for at_, (answer, belief) in enumerate(zip(question.answers, one.step.beliefs, strict=True))
        if at_ != one.truth.index and belief
    ]
    return [
        f"<h3>{said['question'].format(number=number)}: {one.letter}</h3>",
        *([one.after.as_html(number)] if one.after else []),
        paragraph(question.ask),
        paragraph(
            said["model"].format(
                letter=one.letter,
                right=right.text,
                at=at,
                reading=question.reading,
                value=one.truth.words,
            )
        ),
        listed(wrong),
    ]


def _item(number: int, item: Drawn, lesson: Lesson) -> list[str]:
    wrong = [
        f"{LETTERS[at]}, {one.words}: {lesson.belief(one.belief).text}"
        for at, one in enumerate(item.options)
        if at != item.right
    ]
    right, said = item.options[item.right], texts(lesson.language)
    return [
        f"<h3>{said['question'].format(number=number)}: {item.letter}</h3>",
        paragraph(item.ask),
        paragraph(
            said["right"].format(
                letter=item.letter,
                right=right.words,
                tolerance=tolerance(item),
                because=item.item.because,
            )
        ),
        listed(wrong),
        paragraph(said["again"].format(command=item.command)),
    ]


def _challenge(step: Step, said: Mapping[str, str]) -> list[str]:
    challenge = step.challenge
    assert challenge is not None
    shown = ", ".join(f"{name} = {in_words(one)}" for name, one in challenge.solution.items())
    hint = [paragraph(said["hint"].format(hint=challenge.hint))] if challenge.hint else []
    return [
        f"<h2>{escape(said['challenge'].format(title=step.title))}</h2>",
        paragraph(challenge.ask),
        paragraph(said["one_way"].format(shown=shown)),
        *hint,
    ]


def _belief(one: Misconception, said: Mapping[str, str]) -> tuple[str, str, str]:
    source = one.source if one.read else f"{one.source} ({said['memory']})"
    return one.text, one.meet, source


def _link(one: Link, said: Mapping[str, str]) -> tuple[str, str, str]:
    return one.code, one.wording, one.source if one.read else f"{one.source} ({said['memory']})"


def _step(step: Step) -> tuple[str, str, str]:
    return step.title, step.stage, in_words(step.minutes)


def _kit(lesson: Lesson) -> list[str]:
    return [
        f"{one.name}"
        + (f", {one.count}" if one.count else "")
        + (f". {', '.join(one.hazards)}: {one.note}" if one.hazards else "")
        for one in lesson.kit
    ]
