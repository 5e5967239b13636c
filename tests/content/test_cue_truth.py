"""What really happens comes from the model, and follows its settings."""

import dataclasses

import pytest

from demo_app.base.errors import InputError
from demo_app.content.cues.answers import judge
from demo_app.content.cues.records import Answer, Question
from demo_app.content.cues.truth import truth
from demo_app.content.readings import solve
from demo_app.scenes.catalogue import scene
from demo_app.scenes.settings import make

DICE = Question(
    "What becomes of it?",
    "pieces",
    (
        Answer("It holds", high=2),
        Answer("Shards", low=2, high=100),
        Answer("Dice", low=100),
    ),
    {"then": "hit", "blow_J": 4.0},
)


def test_the_truth_is_the_models_own() -> None:
    toughen = scene("toughen")
    found = truth(toughen, {"then": "nothing"}, DICE)
    run = solve(toughen, make(toughen.settings, DICE.settings))
    assert found.value == run.readings["pieces"]
    assert (found.index, found.at_s, found.sentence) == (2, run.at_s, run.sentence)


def test_the_truth_changes_with_the_settings() -> None:
    toughen = scene("toughen")
    soft = dataclasses.replace(DICE, settings={"then": "hit", "blow_J": 1.2})
    answers = [
        truth(toughen, {}, soft).index,
        truth(toughen, {"jet_W_m2K": 100.0}, DICE).index,
        truth(toughen, {"jet_W_m2K": 280.0}, DICE).index,
    ]
    assert answers == [0, 1, 2]


def test_the_truth_changes_with_the_instant() -> None:
    bar = scene("push-pull")
    ask = Question("?", "pulled_N", (Answer("little", high=500), Answer("much", low=500)))
    early = dataclasses.replace(ask, at_s=1.5)
    assert truth(bar, {}, early).index == 0
    assert truth(bar, {}, early).at_s == pytest.approx(1.5, abs=0.1)
    assert truth(bar, {}, ask).index == 1


def test_words_carry_the_unit() -> None:
    ask = Question("?", "hands_N", (Answer("squeeze", high=0), Answer("pull", low=0)))
    pulled = truth(scene("push-pull"), {"kind": "bar-pulled", "load": 600.0}, ask)
    assert (pulled.words, pulled.unit, pulled.index) == ("600 N", "N", 1)


@pytest.mark.parametrize(
    ("value", "index"), [(-3, 0), (1.999, 0), (2, 1), (99, 1), (100, 2), (1e9, 2)]
)
def test_a_range_takes_its_lower_end(value: float, index: int) -> None:
    assert judge(DICE, value) == index


def test_the_spare_answer_takes_the_rest() -> None:
    ask = Question("?", "grade", (Answer("other", otherwise=True), Answer("t", equals="toughened")))
    assert [judge(ask, word) for word in ("toughened", "annealed")] == [1, 0]


@pytest.mark.parametrize(
    ("value", "message"),
    [
        (None, r"says nothing \(none\) there; ask for another reading"),
        ("word", 'is a word; write is = "..." with each answer'),
        (True, "is yes or no; write is = true"),
    ],
)
def test_a_value_that_no_answer_is_for(value: object, message: str) -> None:
    with pytest.raises(InputError, match=message):
        judge(DICE, value)
    partly = Question("?", "pieces", DICE.answers[:2])
    with pytest.raises(InputError, match="581 there, which no answer allows"):
        judge(partly, 581)


def test_unknown_names_are_refused() -> None:
    with pytest.raises(InputError, match="no reading called 'dice'"):
        truth(scene("toughen"), {}, dataclasses.replace(DICE, reading="dice"))
    with pytest.raises(InputError, match="no setting is called 'hammer'"):
        truth(scene("toughen"), {"hammer": 1}, DICE)
