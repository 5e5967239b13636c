"""Which of a question's answers is right for a value, and whether exactly one always is."""

import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from demo_app.base.errors import InputError
from demo_app.content.cues.records import Answer, Question


@dataclass(frozen=True)
class Fault:
    """What is wrong with a question's answers.

    Parameters
    ----------
    index : int or None
        The answer at fault, from 0; None: all of them together.
    problem, remedy : str
        As of an `InputError`.
    """

    index: int | None
    problem: str
    remedy: str


def judge(question: Question, value: Any) -> int:
    """Index of the answer that is right when the reading is `value`.

    Parameters
    ----------
    question : Question
        Checked: at most one answer is right.
    value : float, str, bool or None
        What the scene's reading says.

    Returns
    -------
    int
        From 0.

    Raises
    ------
    InputError
        If the reading says nothing, is of another kind than the answers ask for, or suits none.
    """
    if value is None:
        raise InputError(
            f"{question.reading} says nothing (none) there",
            place=question.reading,
            remedy="ask for another reading, or at another at_s",
        )
    kind = _kind_of(value)
    asked = {_asked(answer) for answer in question.answers if not answer.otherwise}
    if asked != {kind}:
        raise InputError(
            f"{question.reading} is {_KINDS[kind]}",
            place=question.reading,
            remedy=f"write {_FORMS[kind]} with each answer",
        )
    for index, answer in enumerate(question.answers):
        if not answer.otherwise and _suits(answer, value):
            return index
    for index, answer in enumerate(question.answers):
        if answer.otherwise:
            return index
    raise InputError(
        f"{question.reading} is {value!r} there, which no answer allows",
        place=question.reading,
        remedy="add an answer for it, or one with otherwise = true",
    )


def faults(answers: Sequence[Answer]) -> tuple[Fault, ...]:
    """Why for some value none or several of `answers` would be right, or one never is."""
    return tuple(_faults(answers))


_KINDS = {"number": "a number", "flag": "yes or no", "word": "a word"}
_FORMS = {
    "number": "from = ... or below = ... or both",
    "flag": "is = true or is = false",
    "word": 'is = "..."',
}


def _kind_of(value: Any) -> str:
    if isinstance(value, bool):
        return "flag"
    return "word" if isinstance(value, str) else "number"


def _asked(answer: Answer) -> str:
    return "number" if answer.equals is None else _kind_of(answer.equals)


def _suits(answer: Answer, value: Any) -> bool:
    if answer.equals is not None:
        return bool(answer.equals == value)
    low, high = _ends(answer)
    return low <= float(value) < high


def _ends(answer: Answer) -> tuple[float, float]:
    low = -math.inf if answer.low is None else answer.low
    high = math.inf if answer.high is None else answer.high
    return low, high


def _faults(answers: Sequence[Answer]) -> Iterator[Fault]:
    spare = [index for index, answer in enumerate(answers) if answer.otherwise]
    for index in spare[1:]:
        yield Fault(index, "is the second with otherwise = true", "leave one of them")
    told = [index for index, answer in enumerate(answers) if not answer.otherwise]
    if not told:
        return
    kind = _asked(answers[told[0]])
    odd = [index for index in told if _asked(answers[index]) != kind]
    for place in odd:
        yield Fault(
            place, "asks for another kind of reading than the first", f"write {_FORMS[kind]}"
        )
    if odd:
        return
    last = spare[0] if spare else None
    if kind == "number":
        yield from _faults_of_ranges(answers, told, last)
    else:
        yield from _faults_of_words(answers, told, last, kind)


def _faults_of_ranges(
    answers: Sequence[Answer], told: Sequence[int], spare: int | None
) -> Iterator[Fault]:
    empty = [index for index in told if _ends(answers[index])[0] >= _ends(answers[index])[1]]
    for index in empty:
        low, high = _ends(answers[index])
        yield Fault(
            index,
            f"can never be right: nothing is from {low:g} and below {high:g}",
            "write from below the value of below",
        )
    order = sorted((index for index in told if index not in empty), key=lambda i: _ends(answers[i]))
    gaps: list[tuple[float, float, int | None]] = []
    reached = -math.inf
    for place, index in enumerate(order):
        low, high = _ends(answers[index])
        if place and low < reached:
            yield Fault(
                index,
                f"overlaps another answer from {low:g} to {min(reached, high):g}",
                f"write from = {reached:g}" if reached < high else "take one of the two out",
            )
        elif low > reached:
            gaps.append((reached, low, index))
        reached = max(reached, high)
    if reached < math.inf:
        gaps.append((reached, math.inf, None))
    if empty:
        return
    if spare is None:
        for low, high, after in gaps:
            yield Fault(after, _gap(low, high), "close the gap, or add one with otherwise = true")
    elif not gaps:
        yield Fault(spare, "can never be right: the others leave no gap", "take it out")


def _gap(low: float, high: float) -> str:
    if low == -math.inf:
        return f"no answer is right below {high:g}"
    if high == math.inf:
        return f"no answer is right from {low:g} on"
    return f"no answer is right from {low:g} to {high:g}"


def _faults_of_words(
    answers: Sequence[Answer], told: Sequence[int], spare: int | None, kind: str
) -> Iterator[Fault]:
    for earlier, index in itertools.combinations(told, 2):
        if answers[earlier].equals == answers[index].equals:
            yield Fault(index, "is right when another one is", "give each its own")
            return
    covered = kind == "flag" and {answers[index].equals for index in told} == {True, False}
    if not covered and spare is None:
        missing = "the opposite" if kind == "flag" else "any other word"
        yield Fault(
            None,
            f"no answer is right if the reading is {missing}",
            "add an answer for it, or one with otherwise = true",
        )
    if covered and spare is not None:
        yield Fault(spare, "can never be right: yes and no are taken", "take it out")
