"""The question of a step: read, and held to what an audience can read and a reading can decide."""

from typing import Any

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, expect, nearest
from demo_app.content.cues.answers import faults
from demo_app.content.cues.records import Answer, Question
from demo_app.content.cues.stage import Stage, instant_of, settings_of_table

# From eight picture heights away (common practice for the last row), letters of 20 minutes of arc
# (ISO 9241-3, preferred) are 0.047 of a picture's height; with lines two such letters high that
# is ten lines of some forty letters on a 16:9 picture. Six answers take a line each, the
# question three; a number, a bar and a count stand beside each answer.
QUESTION_LETTERS = 90
ANSWER_LETTERS = 32
FEWEST, MOST = 2, 6


def question_of(
    wrong: list[InputError], step: Table, stage: Stage | None, opens_s: float
) -> Question | None:
    """The question of `step`, which opens at `opens_s`, if it asks one.

    What is `wrong` with it is added there.
    """
    if "question" not in step.content:
        return None
    table = attempt(wrong, step.table, "question")
    if table is None:
        return None
    table = expect(wrong, table, "ask", "reading", "settings", "at_s", "answers")
    settings, record = settings_of_table(wrong, table, stage)
    at_s = attempt(wrong, instant_of, table, stage if record is not None else None, record)
    question = Question(
        ask=attempt(wrong, _short, table, "ask", QUESTION_LETTERS) or "",
        reading=attempt(wrong, _reading, table, stage) or "",
        answers=_answers(wrong, table),
        settings=settings,
        at_s=at_s,
    )
    if not settings and at_s is not None and at_s <= opens_s:
        wrong.append(
            table.error(
                "at_s",
                "the step opens when its answer can already be seen",
                "write settings that the reveal changes, or a later at_s",
            )
        )
    return question


def _short(table: Table, key: str, letters: int) -> str:
    words = table.words(key)
    if len(words) > letters:
        raise table.error(
            key,
            f"{len(words)} letters cannot be read from the back row",
            f"write at most {letters}",
        )
    return words


def _reading(table: Table, stage: Stage | None) -> str:
    name = table.words("reading")
    known = [reading.name for reading in stage.scene.readings] if stage else [name]
    if name not in known:
        assert stage is not None
        raise table.error(
            "reading", f"scene {stage.scene.id} has no such reading", nearest(name, known)
        )
    return name


def _answers(wrong: list[InputError], table: Table) -> tuple[Answer, ...]:
    tables = attempt(wrong, table.tables, "answers")
    if tables is None:
        return ()
    if not FEWEST <= len(tables) <= MOST:
        wrong.append(
            table.error("answers", f"{len(tables)} answers", f"write {FEWEST} to {MOST} of them")
        )
    read = [(inner, _answer(wrong, inner)) for inner in tables]
    answers = tuple(answer for _, answer in read if answer is not None)
    if len(answers) < len(tables) or len(tables) < FEWEST:
        return answers
    for fault in faults(answers):
        if fault.index is None:
            wrong.append(table.error("answers", fault.problem, fault.remedy))
        else:
            wrong.append(tables[fault.index].error("", fault.problem, fault.remedy))
    texts = [answer.text.strip().casefold() for answer in answers]
    for at, text in enumerate(texts):
        if text in texts[:at]:
            wrong.append(
                tables[at].error("text", "another answer has the same words", "tell them apart")
            )
    return answers


def _answer(wrong: list[InputError], table: Table) -> Answer | None:
    before = len(wrong)
    table = expect(wrong, table, "text", "from", "below", "is", "otherwise")
    text = attempt(wrong, _short, table, "text", ANSWER_LETTERS)
    limits = [attempt(wrong, _limit, table, key) for key in ("from", "below")]
    equals = attempt(wrong, _equals, table)
    otherwise = attempt(wrong, table.flag, "otherwise", False)
    ways = sum((limits != [None, None], equals is not None, bool(otherwise)))
    if len(wrong) == before and ways != 1:
        wrong.append(
            table.error(
                "",
                "nothing says when it is right" if ways == 0 else "it is right in several ways",
                "write one: from and below, or is, or otherwise = true",
            )
        )
    if len(wrong) > before:
        return None
    return Answer(text or "", limits[0], limits[1], equals, bool(otherwise))


def _limit(table: Table, key: str) -> float | None:
    return table.number(key, -1e12, 1e12) if key in table.content else None


def _equals(table: Table) -> Any:
    value = table.content.get("is")
    if value is None or isinstance(value, bool | str):
        return value
    raise table.error(
        "is", f"{value!r} is neither a word nor true or false", "write from and below for numbers"
    )
