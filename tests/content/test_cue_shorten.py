"""Shorter shows: what is cut, in which order, and what a rehearsal proposes."""

from hypothesis import given
from hypothesis import strategies as st

from demo_app.content.cues.records import Sheet, Step
from demo_app.content.cues.shorten import late, proposal, shorten


def _steps(*plan: tuple[int, float]) -> tuple[Step, ...]:
    return tuple(
        Step(id=f"s{at}", title="", scene="ring", priority=priority, seconds=seconds)
        for at, (priority, seconds) in enumerate(plan, start=1)
    )


def _sheet(minutes: float, *plan: tuple[int, float]) -> Sheet:
    return Sheet("t", "v", minutes, _steps(*plan))


def test_the_last_of_the_lowest_priority_goes_first() -> None:
    steps = _steps((1, 60), (3, 60), (2, 60), (3, 60), (2, 60), (1, 60))
    cuts = [shorten(steps, seconds).dropped for seconds in (360, 359, 240, 239, 120)]
    assert cuts == [(), ("s4",), ("s2", "s4"), ("s2", "s4", "s5"), ("s2", "s3", "s4", "s5")]


def test_what_is_never_cut_says_how_much_time_is_missing() -> None:
    cut = shorten(_steps((1, 100), (2, 30), (1, 50)), 120)
    assert cut.kept == ("s1", "s3")
    assert (cut.seconds, cut.missing_s) == (150, 30)
    assert shorten(_steps((1, 100)), -20).missing_s == 100


def test_late_start() -> None:
    sheet = _sheet(5, (1, 120), (2, 60), (3, 120))
    assert late(sheet, 0).dropped == ()
    assert late(sheet, 1).dropped == ("s3",)
    assert late(sheet, 121).dropped == ("s2", "s3")


def test_rehearsal_proposes_the_cut_for_the_pace_it_measured() -> None:
    sheet = _sheet(5, (1, 120), (2, 60), (3, 60))
    assert proposal(sheet, {}).cut.dropped == ()
    slow = proposal(sheet, {"s1": 200.0, "s2": 70.0})
    assert slow.cut.dropped == ("s3",)
    assert slow.cut.seconds == 270
    assert [(pace.planned_s, pace.measured_s) for pace in slow.paces] == [
        (120, 200),
        (60, 70),
        (60, None),
    ]


_PLANS = st.lists(st.tuples(st.integers(1, 3), st.integers(5, 300)), min_size=1, max_size=12)


@given(_PLANS, st.integers(0, 3600), st.integers(0, 600))
def test_a_cut_keeps_its_promises(plan: list[tuple[int, int]], seconds: int, less: int) -> None:
    steps = _steps(*plan)
    cut = shorten(steps, seconds)
    of = {step.id: step for step in steps}
    kept = [step.id for step in steps if step.id in cut.kept]
    assert list(cut.kept) == kept  # in order
    assert sorted(cut.kept + cut.dropped) == sorted(of)  # none lost, none twice
    assert all(of[id].priority > 1 for id in cut.dropped)
    assert cut.seconds == sum(of[id].seconds for id in cut.kept)
    assert cut.missing_s == max(0, cut.seconds - seconds)
    if cut.missing_s:
        assert all(of[id].priority == 1 for id in cut.kept)
    if cut.dropped:
        # Put back what went last, and it is too long: nothing goes without need.
        last = min(cut.dropped, key=lambda id: (of[id].priority, steps.index(of[id])))
        assert cut.seconds + of[last].seconds > seconds
        # Whatever stays is at least as precious as whatever went, or comes earlier.
        rank = {step.id: (step.priority, place) for place, step in enumerate(steps)}
        staying = [rank[id] for id in cut.kept if of[id].priority > 1]
        assert all(stays < rank[last] for stays in staying)
    assert set(shorten(steps, seconds - less).kept) <= set(cut.kept)  # nothing comes back
