"""Answers: without a fault, exactly one is right whatever the reading says."""

import itertools
import math

from hypothesis import given
from hypothesis import strategies as st

from demo_app.content.cues.answers import faults, judge
from demo_app.content.cues.records import Answer, Question

_LIMIT = st.one_of(st.none(), st.integers(-4, 4).map(float))
_RANGE = st.builds(lambda low, high: Answer("a", low=low, high=high), _LIMIT, _LIMIT)
_SPARE = st.just(Answer("rest", otherwise=True))
_WORD = st.builds(lambda word: Answer("w", equals=word), st.sampled_from(["yes", "no"]))
_FLAG = st.builds(lambda flag: Answer("f", equals=flag), st.booleans())


def _right(answer: Answer, value: object) -> bool:
    """An answer's own condition, said again in the plainest way."""
    if answer.equals is not None:
        return answer.equals == value
    assert isinstance(value, float)
    return (answer.low is None or answer.low <= value) and (
        answer.high is None or value < answer.high
    )


def _check(answers: list[Answer], values: list[object]) -> None:
    told = [answer for answer in answers if not answer.otherwise]
    spare = len(answers) - len(told)
    counts = [sum(_right(answer, value) for answer in told) for value in values]
    well = (
        all(count + (spare if count == 0 else 0) == 1 for count in counts)
        and all(any(_right(answer, value) for value in values) for answer in told)
        and (spare == 0 or 0 in counts)
    )
    assert (faults(answers) == ()) == well
    if well:
        for value in values:
            chosen = answers[judge(Question("?", "r", tuple(answers)), value)]
            assert chosen.otherwise or _right(chosen, value)


# Half steps lie inside every range whose ends are whole numbers.
_NUMBERS: list[object] = [-1e9, *(half / 2 for half in range(-9, 10)), 1e9]


@given(st.lists(st.one_of(_RANGE, _RANGE, _SPARE), min_size=2, max_size=5))
def test_ranges(answers: list[Answer]) -> None:
    if any(not answer.otherwise for answer in answers):
        _check(answers, _NUMBERS)


@given(st.lists(st.integers(-4, 4), min_size=1, max_size=4, unique=True))
def test_ranges_that_meet_are_in_order(ends: list[int]) -> None:
    limits = [-math.inf, *map(float, sorted(ends)), math.inf]
    answers = [
        Answer("a", None if low == -math.inf else low, None if high == math.inf else high)
        for low, high in itertools.pairwise(limits)
    ]
    assert faults(answers) == ()
    _check(answers, _NUMBERS)


@given(st.lists(st.one_of(_FLAG, _SPARE), min_size=2, max_size=4))
def test_yes_and_no(answers: list[Answer]) -> None:
    if any(not answer.otherwise for answer in answers):
        _check(answers, [True, False])


@given(st.lists(st.one_of(_WORD, _SPARE), min_size=2, max_size=4))
def test_words(answers: list[Answer]) -> None:
    if any(not answer.otherwise for answer in answers):
        _check(answers, ["yes", "no", "anything else"])
