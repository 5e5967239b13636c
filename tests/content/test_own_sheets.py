"""The sheets that come with the app: right in the model, plain in words, kept within their slot."""

import re
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from demo_app.cli import main
from demo_app.content.cues.load import examine, own_sheets
from demo_app.content.cues.records import Sheet, Step
from demo_app.content.cues.shorten import shorten
from demo_app.content.readings import solve
from demo_app.scenes.catalogue import scene
from demo_app.scenes.settings import make

SHEETS = {path.stem: path for path in own_sheets()}
LOUD = ("eight-minutes", "fifteen-minutes")
QUIET = "twelve-minutes-quiet"

Readings = dict[str, Any]


@pytest.fixture(scope="module", params=sorted(SHEETS))
def found(request: pytest.FixtureRequest) -> Sheet:
    examined = examine(SHEETS[request.param], run=False)
    assert examined.mistakes == ()
    assert examined.sheet is not None
    return examined.sheet


def _sheet(name: str) -> Sheet:
    sheet = examine(SHEETS[name], run=False).sheet
    assert sheet is not None
    return sheet


def _words(sheet: Sheet) -> Iterator[str]:
    for step in sheet.steps:
        yield from (*step.say, step.hold, step.catch_up, *step.cautions, *step.captions.values())
        yield from (one.say for one in step.contingencies)
        if step.helper:
            yield from (step.helper.briefing, step.helper.eyewear)


def test_three_sheets_of_the_asked_lengths_and_hazards() -> None:
    sheets = {name: _sheet(name) for name in SHEETS}
    assert {name: sheet.minutes for name, sheet in sheets.items()} == {
        "eight-minutes": 8,
        "fifteen-minutes": 15,
        QUIET: 12,
    }
    for name in LOUD:
        used = {hazard for step in sheets[name].steps for hazard in step.hazards}
        assert {"flame", "breakage"} <= used
    assert sheets[QUIET].allows == ()
    assert not [step.id for step in sheets[QUIET].steps if step.hazards]


def test_the_long_one_uses_most_scenes() -> None:
    used = {step.scene for step in _sheet("fifteen-minutes").steps}
    assert used >= {"ring", "touch", "cooling", "push-pull", "light-table", "toughen", "bubble"}


def test_it_fits_its_slot_as_planned(found: Sheet) -> None:
    cut = shorten(found.steps, 60 * found.minutes)
    assert cut.dropped == ()
    assert cut.missing_s == 0


def test_what_is_never_cut_takes_two_thirds_at_most(found: Sheet) -> None:
    assert shorten(found.steps, 60 * found.minutes * 3 / 4).missing_s == 0


def test_most_steps_ask_for_a_prediction_and_explain_it(found: Sheet) -> None:
    asking = [step for step in found.steps if step.question]
    assert len(asking) >= len(found.steps) - 1
    for step in asking:
        starts = [line.split(":")[0] for line in step.say]
        assert {"Predict", "Explain"} <= set(starts), step.id
        assert starts.index("Predict") < starts.index("Explain")


def test_each_step_has_what_a_presenter_needs(found: Sheet) -> None:
    for step in found.steps:
        assert step.say
        assert step.hold
        assert step.catch_up
        assert set(step.captions) == {"en", "de"}


def test_sentences_are_short(found: Sheet) -> None:
    # at most 25 words (museum practice for text that is taken in once)
    for words in _words(found):
        for sentence in re.split(r"(?<=[.?!:])\s", words):
            assert len(sentence.split()) <= 25, sentence


def test_no_promise_of_safety(found: Sheet) -> None:
    for words in _words(found):
        assert not re.search(r"\b(un)?safe(ly|ty)?\b|harmless", words, re.IGNORECASE), words


def test_hazards_have_a_control_a_stop_and_the_venues_rule(found: Sheet) -> None:
    for step in found.steps:
        if step.hazards:
            words = " ".join(step.cautions)
            assert "Stop if" in words, step.id
            assert "theirs wins" in words, step.id


def test_no_flame_and_no_breaking_in_the_quiet_one() -> None:
    words = " ".join(_words(_sheet(QUIET)))
    assert not re.search(r"\b(flame|burner|shatter|smash|hammer|shard)", words, re.IGNORECASE)
    assert "nothing will be broken" in words


def test_the_model_answers_every_question(found: Sheet) -> None:
    assert found.path is not None
    examined = examine(found.path)
    assert examined.mistakes == ()
    assert set(examined.truths) == {step.id for step in found.steps if step.question}


# What the settings of a contingency have to show, in the words of its `when`.
SHOWN: dict[tuple[str, str], Callable[[Readings, Readings], bool]] = {
    ("one-drop", "it cracked early"): lambda now, _: now["breaks"] and now["break_at_s"] < 21,
    ("one-drop", "it would not crack"): lambda now, _: not now["breaks"],
    ("one-drop", "the drop missed the line"): lambda now, _: not now["breaks"],
    ("strong", "it would not break"): lambda now, _: now["breaks_beside"] and not now["breaks"],
    ("strong", "it broke into long shards"): lambda now, _: 2 <= now["pieces"] < 100,
    ("bubble", "it would not break"): lambda now, _: not now["breaks"],
    ("bubble", "the blow outside broke it"): lambda now, _: now["breaks"],
    ("warm-spot", "hardly anything was seen"): lambda now, usual: (
        now["retardation_peak_nm"] == pytest.approx(usual["retardation_peak_nm"] / 4, rel=0.01)
    ),
    ("push-pull", "the bar was hardly bent"): lambda now, usual: (
        now["pulled_N"] == pytest.approx(usual["pulled_N"] / 4, rel=0.01)
    ),
    ("bend", "the bar was hardly bent"): lambda now, usual: (
        now["pulled_N"] == pytest.approx(usual["pulled_N"] / 4, rel=0.01)
    ),
    ("bend", "no helper came forward"): lambda now, _: now["retardation_peak_nm"] > 550,
    ("air-or-oven", "the slowly cooled piece shines too"): lambda now, usual: (
        not now["acceptable"]
        and 5 * now["limit_nm_per_cm"]
        < now["retardation_nm_per_cm"]
        < usual["retardation_nm_per_cm"]
    ),
    ("dish", "somebody asks what does wipe it out"): lambda now, _: now["colour_left_pct"] < 1,
}


def _contingencies() -> Iterator[Any]:
    for name in SHEETS:
        for step in _sheet(name).steps:
            for one in step.contingencies:
                yield pytest.param(step, one, id=f"{name}-{step.id}-{one.when}")


@pytest.mark.parametrize(("step", "contingency"), list(_contingencies()))
def test_a_contingency_shows_what_it_says(step: Step, contingency: Any) -> None:
    chosen = scene(step.scene)

    def run(**more: Any) -> Readings:
        return dict(solve(chosen, make(chosen.settings, {**step.settings, **more})).readings)

    assert SHOWN[step.id, contingency.when](run(**contingency.settings), run())


def test_the_laminated_plate_holds_before_the_hard_blow() -> None:
    step = next(one for one in _sheet("fifteen-minutes").steps if one.id == "film")
    chosen = scene(step.scene)
    opens = solve(chosen, make(chosen.settings, step.settings), step.at_s).readings
    assert not opens["breaks"]
    assert not opens["breaks_beside"]


def test_the_command_says_which_answers_are_right(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(SHEETS["eight-minutes"])]) == 0
    told = capsys.readouterr()
    assert told.err == ""
    assert "5 steps, 7.9 of 8 minutes planned; hazards allowed: flame" in told.out
    assert "breaks = yes at 17.21 s, so 'It cracks' is right" in told.out
