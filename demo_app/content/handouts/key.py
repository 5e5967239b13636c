"""What the teacher gets: right letters with their numbers, why others are wrong, plan and kit."""

from html import escape

from demo_app.content.handouts.make import Handout, Predicted
from demo_app.content.handouts.parts import listed, paragraph, points, table, tolerance
from demo_app.content.lessons.drawn import LETTERS, Drawn
from demo_app.content.lessons.records import Lesson, Link, Misconception, Step
from demo_app.content.readings import in_words

MEMORY = "from memory"
BELIEFS = ("Belief", "How to meet it", "Source")


def answers(what: Handout) -> list[str]:
    """Body of the answer key."""
    lesson = what.lesson
    numbered = list(enumerate(what.letters, start=1))
    parts = [
        "<h2>Right letters</h2>",
        table("By question", ("Question", "Letter"), [(str(n), one) for n, one in numbered]),
        "<h2>Predictions</h2>",
    ]
    for number, one in enumerate(what.predictions, start=1):
        parts += _prediction(number, one, lesson)
    parts += ["<h2>Numbers</h2>"]
    for number, item in enumerate(what.items, start=len(what.predictions) + 1):
        parts += _item(number, item, lesson)
    for step in lesson.steps:
        if step.challenge is not None:
            parts += _challenge(step)
    parts += [
        "<h2>Exit question</h2>",
        paragraph(lesson.exit.ask),
        paragraph(f"A good answer: {lesson.exit.answer}"),
        "<h2>What pupils may believe</h2>",
        table(
            "Beliefs, how to meet them, and who names them",
            BELIEFS,
            map(_belief, lesson.misconceptions),
        ),
        "<h2>Plan and kit</h2>",
        paragraph(lesson.aim),
        table("Steps", ("Step", "Kind", "Minutes"), map(_step, lesson.steps)),
        listed(_kit(lesson)),
        "<h2>Curriculum</h2>",
        table("Links", ("Code", "Wording", "Source"), map(_link, lesson.curriculum)),
        "<h2>At home</h2>",
        listed(points(lesson.home)),
    ]
    return parts


def _prediction(number: int, one: Predicted, lesson: Lesson) -> list[str]:
    question = one.step.question
    assert question is not None
    right = question.answers[one.truth.index]
    at = f"{in_words(float(f'{one.truth.at_s:.3g}'))} s"
    wrong = [
        f"{LETTERS[at_]}, {answer.text}: {lesson.belief(belief).text}"
        for at_, (answer, belief) in enumerate(zip(question.answers, one.step.beliefs, strict=True))
        if at_ != one.truth.index and belief
    ]
    return [
        f"<h3>Question {number}: {one.letter}</h3>",
        *([one.after.as_html(number)] if one.after else []),
        paragraph(question.ask),
        paragraph(
            f"{one.letter}, {right.text}. The model at {at}: {question.reading} ="
            f" {one.truth.words}."
        ),
        listed(wrong),
    ]


def _item(number: int, item: Drawn, lesson: Lesson) -> list[str]:
    wrong = [
        f"{LETTERS[at]}, {one.words}: {lesson.belief(one.belief).text}"
        for at, one in enumerate(item.options)
        if at != item.right
    ]
    right = item.options[item.right]
    return [
        f"<h3>Question {number}: {item.letter}</h3>",
        paragraph(item.ask),
        paragraph(
            f"{item.letter}, {right.words}; right within {tolerance(item)}. {item.item.because}"
        ),
        listed(wrong),
        paragraph(f"The model again: {item.command}"),
    ]


def _challenge(step: Step) -> list[str]:
    challenge = step.challenge
    assert challenge is not None
    shown = ", ".join(f"{name} = {in_words(one)}" for name, one in challenge.solution.items())
    hint = [paragraph(f"Hint: {challenge.hint}")] if challenge.hint else []
    return [
        f"<h2>Challenge: {escape(step.title)}</h2>",
        paragraph(challenge.ask),
        paragraph(f"One way that the model accepts: {shown}."),
        *hint,
    ]


def _belief(one: Misconception) -> tuple[str, str, str]:
    source = one.source if one.read else f"{one.source} ({MEMORY})"
    return one.text, one.meet, source


def _link(one: Link) -> tuple[str, str, str]:
    return one.code, one.wording, one.source if one.read else f"{one.source} ({MEMORY})"


def _step(step: Step) -> tuple[str, str, str]:
    return step.title, step.stage, in_words(step.minutes)


def _kit(lesson: Lesson) -> list[str]:
    return [
        f"{one.name}"
        + (f", {one.count}" if one.count else "")
        + (f". {', '.join(one.hazards)}: {one.note}" if one.hazards else "")
        for one in lesson.kit
    ]
