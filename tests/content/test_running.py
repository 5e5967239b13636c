"""A running show as pure data: what no order of presses may break."""

import json
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from demo_app.base.errors import InputError
from demo_app.content.cues.records import Answer, Contingency, Question, Sheet, Step
from demo_app.content.running import clock as clocks
from demo_app.content.running import walking
from demo_app.content.running.records import (
    ASK,
    BARS,
    COUNT,
    OPEN,
    PHASES,
    RESULT,
    REVEAL,
    counts_of,
    phases_of,
    question_of,
    step_of,
)
from demo_app.content.running.reloading import reload
from demo_app.content.running.saving import as_record, digest_of, from_record

HALF = Question(
    "Where does it crack?",
    "break_offset_mm",
    (Answer("at the drop", high=1), Answer("beside it", otherwise=True)),
    settings={"drop": True},
)


def step(name, **values):
    return Step(name, name.title(), "ring", **values)


SHEET = Sheet(
    "Rings",
    "Millrace Glass House",
    minutes=5,
    steps=(
        step("hello", seconds=60, catch_up="We look at a bottle.", settings={"heat_s": 5.0}),
        step("guess", seconds=90, priority=2, question=HALF, settings={"heat_s": 8.0}),
        step("extra", seconds=60, priority=3),
        step(
            "end",
            seconds=90,
            at_s=4.0,
            contingencies=(Contingency("it cracked early", "That was the flaw.", {"x": 1}),),
        ),
    ),
)


def pressed(running, sheet, press, now):
    kind, value = press
    if kind == "next":
        return walking.next_(running, sheet, now)
    if kind == "back":
        return walking.back(running, sheet, now)
    if kind == "jump":
        return walking.jump(running, sheet, now, value)
    if kind == "vote":
        return walking.vote(running, sheet, abs(value), 1 if value >= 0 else -1)
    if kind == "cut":
        return walking.cut(running, sheet, [sheet.steps[value % len(sheet.steps)].id])
    if kind == "begin":
        return walking.begin(running, sheet, now)
    if kind == "finish":
        return walking.finish(running, sheet, now)
    return {"blank": walking.blank, "freeze": walking.freeze, "caption": walking.caption}[kind](
        running
    )


KINDS = ("next", "back", "jump", "vote", "cut", "begin", "finish", "blank", "freeze", "caption")
PRESSES = st.lists(st.tuples(st.sampled_from(KINDS), st.integers(-7, 7)), max_size=60)


# Making examples takes longer where other work goes on; that says nothing of the code.
PATIENT = settings(suppress_health_check=[HealthCheck.too_slow])


@st.composite
def sheets(draw):
    count = draw(st.integers(1, 7))
    steps = []
    for number in range(count):
        answers = draw(st.integers(0, 6))
        question = None
        if answers >= 2:
            question = replace(HALF, answers=tuple(Answer(str(k)) for k in range(answers)))
        steps.append(
            step(
                f"s{number}",
                question=question,
                seconds=draw(st.floats(0, 600)),
                priority=draw(st.integers(1, 3)),
            )
        )
    return Sheet("Any", "Millrace Glass House", draw(st.floats(1, 30)), tuple(steps))


def check(running, sheet):
    assert running.ids == tuple(one.id for one in sheet.steps)
    assert running.place in running.kept
    assert list(running.kept) == sorted(set(running.kept))
    assert set(running.kept) <= set(range(len(sheet.steps)))
    assert running.phase in phases_of(step_of(running, sheet))
    for name, counts in running.votes.items():
        assert all(one >= 0 for one in counts)
        question = sheet.steps[running.ids.index(name)].question
        assert len(counts) == len(question.answers)
    assert all(seconds >= 0 for seconds in running.spent.values())
    assert (question_of(running, sheet) is not None) == (running.phase != OPEN)


@PATIENT
@given(sheets(), PRESSES)
def test_no_order_of_presses_leaves_the_show(sheet, presses):
    running = walking.ready(sheet)
    for now, press in enumerate(presses):
        running = pressed(running, sheet, press, float(now))
        check(running, sheet)
        found = clocks.clock(running, sheet, float(now))
        assert found.step_spent >= 0
        assert found.needed >= 0
        assert clocks.wanted(running, sheet).scene == "ring"


@PATIENT
@given(sheets(), PRESSES)
def test_back_undoes_next_and_next_undoes_back(sheet, presses):
    running = walking.ready(sheet)
    for now, press in enumerate(presses):
        running = pressed(running, sheet, press, float(now))
    at = (running.place, running.phase, running.votes)
    there = walking.next_(running, sheet, 100.0)
    if (there.place, there.phase) != at[:2]:
        again = walking.back(there, sheet, 101.0)
        assert (again.place, again.phase, again.votes) == at
    there = walking.back(running, sheet, 100.0)
    if (there.place, there.phase) != at[:2]:
        again = walking.next_(there, sheet, 101.0)
        assert (again.place, again.phase, again.votes) == at


@PATIENT
@given(sheets(), PRESSES)
def test_a_show_comes_back_from_its_file(sheet, presses):
    running = walking.ready(sheet, digest="abc", rehearsal=True)
    for now, press in enumerate(presses):
        running = pressed(running, sheet, press, now / 7)
    assert from_record(json.loads(json.dumps(as_record(running)))) == running


@PATIENT
@given(sheets(), PRESSES, sheets(), st.randoms(use_true_random=False))
def test_any_change_of_the_sheet_leaves_a_sound_show(sheet, presses, other, random):
    running = walking.ready(sheet)
    for now, press in enumerate(presses):
        running = pressed(running, sheet, press, float(now))
    mixed = list(other.steps)
    random.shuffle(mixed)
    changed = replace(other, steps=tuple(mixed))
    after = reload(running, changed, 99.0, digest="d")
    check(after, changed)
    if running.id in after.ids:
        assert after.id == running.id
    assert reload(after, changed, 99.0, digest="d") == after
    assert reload(running, sheet, 99.0, digest=running.digest) == running


def test_next_walks_the_phases_then_the_steps_and_stops_at_the_end():
    running = walking.ready(SHEET)
    seen = [(running.id, running.phase)]
    for _ in range(10):
        running = walking.next_(running, SHEET, 0.0)
        seen.append((running.id, running.phase))
    assert seen == [
        ("hello", OPEN),
        *(("guess", phase) for phase in PHASES),
        ("extra", OPEN),
        ("end", OPEN),
        ("end", OPEN),
        ("end", OPEN),
    ]
    assert walking.back(running, SHEET, 0.0).id == "extra"


def test_a_cut_step_is_passed_over_both_ways_and_taken_in_by_a_jump():
    running = walking.cut(walking.ready(SHEET), SHEET, ("guess", "end"))
    assert running.kept == (0, 1, 3)
    running = walking.jump(running, SHEET, 0.0, 3)
    running = walking.back(running, SHEET, 0.0)
    assert (running.id, running.phase) == ("guess", RESULT)
    running = walking.jump(running, SHEET, 0.0, 2)
    assert running.kept == (0, 1, 2, 3)
    assert walking.jump(running, SHEET, 0.0, 9) is running


def test_hands_are_counted_only_while_a_question_is_open():
    running = walking.jump(walking.ready(SHEET), SHEET, 0.0, 1)
    assert walking.vote(running, SHEET, 0) is running
    for phase, counts in ((ASK, (1, 0)), (COUNT, (2, 0)), (BARS, (3, 0))):
        running = walking.next_(running, SHEET, 0.0)
        assert running.phase == phase
        running = walking.vote(running, SHEET, 0)
        assert counts_of(running, SHEET) == counts
    assert walking.vote(running, SHEET, 2) is running
    running = walking.vote(walking.vote(running, SHEET, 1, -1), SHEET, 1, 5)
    assert counts_of(running, SHEET) == (3, 5)
    running = walking.next_(running, SHEET, 0.0)
    assert walking.vote(running, SHEET, 0) is running
    assert counts_of(walking.clear_votes(running, SHEET), SHEET) == (0, 0)
    assert counts_of(running, SHEET, 0) == ()


def test_clocks_of_a_show():
    running = walking.ready(SHEET)
    before = clocks.clock(running, SHEET, 500.0)
    assert (before.left, before.needed, before.late, before.spent) == (None, 300, 0, 0)
    running = walking.begin(running, SHEET, 1000.0)
    assert walking.begin(running, SHEET, 1050.0) is running
    found = clocks.clock(running, SHEET, 1040.0)
    assert (found.step_left, found.left, found.late, found.spent) == (20, 260, 0, 40)
    found = clocks.clock(running, SHEET, 1090.0)
    assert (found.step_left, found.left, found.late) == (-30, 210, 30)
    running = walking.jump(running, SHEET, 1090.0, 3)
    running = walking.jump(running, SHEET, 1100.0, 0)
    found = clocks.clock(running, SHEET, 1105.0)
    assert (found.step_spent, found.left) == (95, 195)
    assert running.spent == {"hello": 90, "end": 10}
    running = walking.finish(running, SHEET, 1110.0)
    assert running.spent == {"hello": 100, "end": 10}
    late = clocks.clock(running, SHEET, 5000.0)
    assert (late.spent, late.left, late.step_spent) == (110, 190, 100)
    assert walking.finish(running, SHEET, 6000.0) is running


def test_a_clock_that_is_set_back_takes_no_time_away():
    running = walking.begin(walking.ready(SHEET), SHEET, 1000.0)
    running = walking.next_(running, SHEET, 900.0)
    assert running.spent == {"hello": 0.0}


def test_a_slot_that_is_late_cuts_by_priority():
    running = walking.begin(walking.ready(SHEET), SHEET, 0.0, ends=250.0)
    found = clocks.in_time(running, SHEET, 0.0)
    assert found.dropped == ("extra",)
    running = walking.cut(running, SHEET, found.kept)
    assert [one.id for one in clocks.to_come(running, SHEET)] == ["hello", "guess", "end"]
    assert clocks.clock(running, SHEET, 0.0).late == -10
    assert clocks.coming(running, SHEET).id == "guess"
    running = walking.jump(running, SHEET, 10.0, 2)
    assert "extra" in clocks.in_time(running, SHEET, 249.0).kept  # it is on the screen


def test_a_rehearsal_times_each_step_and_proposes_a_cut():
    running = walking.begin(walking.ready(SHEET, rehearsal=True), SHEET, 0.0)
    running = walking.jump(running, SHEET, 80.0, 1)
    found = clocks.rehearsed(running, SHEET, 200.0)
    assert [(one.id, one.measured_s) for one in found.paces] == [
        ("hello", 80),
        ("guess", 120),
        ("extra", None),
        ("end", None),
    ]
    assert found.cut.dropped == ("extra",)
    assert found.cut.seconds == 290


def test_what_is_to_be_shown_follows_the_phase_and_the_contingency():
    running = walking.jump(walking.ready(SHEET), SHEET, 0.0, 1)
    assert clocks.wanted(running, SHEET) == clocks.Wanted("ring", {"heat_s": 8.0}, 0.0, False)
    for _ in range(4):
        running = walking.next_(running, SHEET, 0.0)
    for phase in (REVEAL, RESULT):
        assert running.phase == phase
        found = clocks.wanted(running, SHEET)
        assert found == clocks.Wanted("ring", {"heat_s": 8.0, "drop": True}, 0.0, True)
        running = walking.next_(running, SHEET, 0.0)
    running = walking.jump(running, SHEET, 0.0, 3)
    early = clocks.contingencies(running, SHEET)[0]
    assert clocks.wanted(running, SHEET, early) == clocks.Wanted("ring", {"x": 1}, 4.0, False)


def test_late_comers_hear_the_last_line_there_is():
    running = walking.jump(walking.ready(SHEET), SHEET, 0.0, 3)
    assert clocks.catch_up(running, SHEET) == "We look at a bottle."
    nothing = replace(SHEET, steps=SHEET.steps[1:])
    assert clocks.catch_up(walking.ready(nothing), nothing) == ""


def test_a_step_that_vanished_leads_to_the_nearest_kept_one_before_it():
    running = walking.cut(walking.ready(SHEET), SHEET, ("hello", "guess", "end"))
    running = walking.begin(walking.jump(running, SHEET, 0.0, 3), SHEET, 0.0)
    shorter = replace(SHEET, steps=(SHEET.steps[0], SHEET.steps[1], SHEET.steps[2]))
    after = reload(running, shorter, 50.0)
    assert (after.id, after.phase, after.kept) == ("guess", OPEN, (0, 1))
    assert after.step_begun == 50.0
    fresh = replace(SHEET, steps=(step("new"), step("newer")))
    assert reload(running, fresh, 50.0).id == "new"


def test_hands_stay_with_their_question():
    running = walking.jump(walking.ready(SHEET), SHEET, 0.0, 1)
    running = walking.next_(walking.next_(running, SHEET, 0.0), SHEET, 0.0)
    running = walking.vote(walking.vote(running, SHEET, 1), SHEET, 1)
    three = replace(HALF, answers=(*HALF.answers, Answer("nowhere")))
    asked = replace(SHEET, steps=(step("new"), replace(SHEET.steps[1], question=three)))
    after = reload(running, asked, 0.0)
    assert (after.place, after.phase) == (1, COUNT)
    assert counts_of(after, asked) == (0, 2, 0)
    plain = replace(SHEET, steps=(replace(SHEET.steps[1], question=None),))
    assert reload(running, plain, 0.0).votes == {}
    assert reload(running, plain, 0.0).phase == OPEN


@pytest.mark.parametrize(
    "change",
    [
        {"version": 0},
        {"place": 9},
        {"kept": [1]},
        {"kept": [1, 0]},
        {"phase": "over"},
        {"votes": {"guess": [-1]}},
        {"votes": {"guess": ["many"]}},
        {"ids": ["a", "a", "a", "a"]},
        {"spent": [1]},
        {"show_begun": "now"},
    ],
)
def test_a_damaged_show_is_refused_in_one_line(change):
    record = {**as_record(walking.ready(SHEET)), **change}
    with pytest.raises(InputError, match="saved show"):
        from_record(record)
    with pytest.raises(InputError, match="saved show"):
        from_record([])


def test_a_sheet_without_steps_cannot_run():
    with pytest.raises(InputError, match="no steps"):
        walking.ready(replace(SHEET, steps=()))


def test_sheets_are_told_apart_by_their_content():
    assert digest_of(b"one") == digest_of(b"one") != digest_of(b"two")
