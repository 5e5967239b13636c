"""Oven programmes: points over time, and orders that change while the oven runs."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from demo_app.base.errors import InputError
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.oven import Oven, Programme, Schedule, ahead, later, over, whole


def _told(hold=550.0, minutes=30.0, slow=60.0, slow_to=460.0, fast=600.0):
    return Schedule(hold + ZERO_C, 60 * minutes, slow / 3600, slow_to + ZERO_C, fast / 3600)


def test_a_programme_holds_then_cools_slowly_then_fast():
    done = whole(_told())
    assert [t - ZERO_C for t in done.temperatures] == pytest.approx([550, 550, 460, 20])
    assert [t / 3600 for t in done.times] == pytest.approx([0, 0.5, 2.0, 2.0 + 440 / 600])
    assert done.at(3600) - ZERO_C == pytest.approx(520)
    assert 3600 * done.rate(1000) == 0
    assert 3600 * done.rate(4000) == pytest.approx(-60)
    assert 3600 * done.rate(done.times[2]) == pytest.approx(-600)
    assert done.rate(done.times[-1]) == 0
    assert done.next_point(0.0) == done.times[1]
    assert done.next_point(done.times[-1]) == math.inf


def test_a_programme_may_go_up_to_its_hold():
    Programme((0.0, 60.0, 120.0, 180.0), (300.0, 800.0, 800.0, 300.0))


def test_a_programme_that_goes_up_while_it_cools_is_refused():
    with pytest.raises(InputError, match=r"goes up from 476\.85 to 486\.85 °C") as refused:
        Programme((0.0, 60.0, 120.0, 180.0), (800.0, 750.0, 760.0, 300.0))
    assert refused.value.place == "programme, point 3"
    assert refused.value.remedy == "write at most 476.85 °C"


@pytest.mark.parametrize(
    ("times", "temperatures", "words"),
    [
        ((0.0,), (800.0,), "1 times"),
        ((0.0, 1.0), (800.0,), "2 times and 1 temperatures"),
        ((0.0, 60.0, 60.0), (800.0, 700.0, 600.0), "do not increase"),
    ],
)
def test_a_programme_without_a_course_is_refused(times, temperatures, words):
    with pytest.raises(InputError, match=words):
        Programme(times, temperatures)


@pytest.mark.parametrize(
    ("orders", "place"),
    [
        ({"slow_to": 560.0}, "slow_to"),
        ({"minutes": -1.0}, "hold"),
        ({"slow": 0.0}, "slow"),
        ({"fast": -5.0}, "fast"),
    ],
)
def test_orders_that_do_not_cool_are_refused(orders, place):
    with pytest.raises(InputError) as refused:
        _told(**orders)
    assert refused.value.place == place


orders = st.builds(
    _told,
    hold=st.floats(480, 600),
    minutes=st.floats(0, 120),
    slow=st.floats(5, 500),
    slow_to=st.floats(20, 470),
    fast=st.floats(50, 3000),
)
spans = st.floats(0.1, 20_000)


@given(orders, spans, spans)
def test_two_waits_are_one_long_wait(told, first, second):
    start = Oven(told.hold)
    twice = later(told, later(told, start, first), second)
    once = later(told, start, first + second)
    assert twice.temperature == pytest.approx(once.temperature, abs=1e-6)
    assert twice.cooling == once.cooling or told.hold_time == pytest.approx(first + second)


@given(orders, orders, spans, spans)
def test_new_orders_never_make_the_oven_jump_nor_reheat_what_cools(first, second, before, after):
    now = later(first, Oven(first.hold), before)
    assert ahead(second, now).at(0.0) == now.temperature
    then = later(second, now, after)
    assert abs(then.temperature - now.temperature) <= after * max(second.fast, second.slow) + 1e-6
    if now.cooling:
        assert then.cooling
        assert then.temperature <= now.temperature + 1e-9


def test_an_oven_is_over_at_the_end_alone():
    told = _told()
    done = later(told, Oven(told.hold), whole(told).duration + 1.0)
    assert done.temperature == pytest.approx(ROOM)
    assert over(told, done)
    assert not over(told, later(told, Oven(told.hold), 7200.0))
