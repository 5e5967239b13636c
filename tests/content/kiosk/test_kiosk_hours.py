"""Opening hours over midnight, summer time and clocks that jump."""

import datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from demo_app.content.kiosk.hours import Hours, Span, clock_is_set, closing, is_open, next_opening

BERLIN = ZoneInfo("Europe/Berlin")
DAY = (Span(10 * 60, 17 * 60 + 30),)
WEEK = Hours(((), DAY, DAY, DAY, DAY, DAY, (Span(9 * 60, 12 * 60), Span(13 * 60, 24 * 60))))


def at(text, zone=BERLIN, fold=0):
    return datetime.datetime.fromisoformat(text).replace(tzinfo=zone, fold=fold).timestamp()


def wall(instant_s, zone=BERLIN):
    return datetime.datetime.fromtimestamp(instant_s, zone).strftime("%Y-%m-%d %H:%M")


@pytest.mark.parametrize(
    ("when", "open_"),
    [
        ("2026-11-23 12:00", False),  # A Monday.
        ("2026-11-24 09:59:59", False),
        ("2026-11-24 10:00", True),
        ("2026-11-24 17:29:59", True),
        ("2026-11-24 17:30", False),
        ("2026-11-29 12:30", False),
        ("2026-11-29 23:59:59", True),
        ("2026-11-30 00:00", False),
    ],
)
def test_hours_are_those_of_the_wall(when, open_):
    assert is_open(WEEK, at(when), BERLIN) is open_


def test_it_says_when_it_opens_and_closes():
    assert next_opening(WEEK, at("2026-11-22 23:59"), BERLIN) is None
    assert wall(next_opening(WEEK, at("2026-11-23 03:00"), BERLIN)) == "2026-11-24 10:00"
    assert wall(next_opening(WEEK, at("2026-11-29 12:10"), BERLIN)) == "2026-11-29 13:00"
    assert next_opening(WEEK, at("2026-11-24 11:00"), BERLIN) is None
    assert wall(closing(WEEK, at("2026-11-24 11:00"), BERLIN)) == "2026-11-24 17:30"
    assert wall(closing(WEEK, at("2026-11-29 20:00"), BERLIN)) == "2026-11-30 00:00"
    assert closing(WEEK, at("2026-11-23 11:00"), BERLIN) is None


def test_no_hours_are_always():
    assert is_open(Hours(), at("2026-11-23 03:00"), BERLIN)
    assert closing(Hours(), at("2026-11-23 03:00"), BERLIN) is None


def test_never_open_has_no_opening():
    assert next_opening(Hours(((),) * 7), at("2026-11-23 03:00"), BERLIN) is None


def test_exceptions_come_over_the_week():
    day = datetime.date(2026, 12, 25)
    hours = Hours(WEEK.week, {day: (), datetime.date(2026, 12, 28): (Span(600, 660),)})
    assert not is_open(hours, at("2026-12-25 12:00"), BERLIN)
    assert is_open(hours, at("2026-12-28 10:30"), BERLIN)
    assert wall(next_opening(hours, at("2026-12-24 20:00"), BERLIN)) == "2026-12-26 10:00"


def test_a_span_may_reach_past_midnight():
    night = Hours(((),) * 5 + ((Span(18 * 60, 26 * 60),), ()))
    assert is_open(night, at("2026-11-29 01:59"), BERLIN)
    assert not is_open(night, at("2026-11-29 02:00"), BERLIN)
    assert wall(closing(night, at("2026-11-28 23:00"), BERLIN)) == "2026-11-29 02:00"


# Summer time in Berlin: from 2 to 3 on 2027-03-28, back from 3 to 2 on 2026-10-25 (tz database).
def test_summer_time_begins():
    assert wall(next_opening(WEEK, at("2027-03-27 18:00"), BERLIN)) == "2027-03-28 09:00"
    gap = next_opening(WEEK, at("2027-03-27 18:00"), BERLIN) - at("2027-03-27 18:00")
    assert gap == 14 * 3600
    early = Hours(((Span(2 * 60 + 30, 5 * 60),),) * 7)
    # Half past two is left out: it is open from the first instant after it.
    assert not is_open(early, at("2027-03-28 01:59:59"), BERLIN)
    assert is_open(early, at("2027-03-28 03:00"), BERLIN)
    opens = next_opening(early, at("2027-03-28 01:00"), BERLIN)
    assert abs(opens - at("2027-03-28 03:00")) <= 1800


def test_summer_time_ends():
    gap = next_opening(WEEK, at("2026-10-24 18:00"), BERLIN) - at("2026-10-24 18:00")
    assert gap == 16 * 3600
    early = Hours(((Span(60, 2 * 60 + 30),),) * 7)
    # Half past two comes twice, and what the wall shows decides.
    assert is_open(early, at("2026-10-25 02:15"), BERLIN)
    assert not is_open(early, at("2026-10-25 02:45"), BERLIN)
    assert is_open(early, at("2026-10-25 02:15", fold=1), BERLIN)


def test_a_clock_that_was_never_set_does_not_close():
    assert not clock_is_set(0)
    assert is_open(Hours(((),) * 7), 0.0, BERLIN)
    assert next_opening(WEEK, 0.0, BERLIN) is None
    assert closing(WEEK, 0.0, BERLIN) is None


def test_a_clock_that_jumps_leaves_nothing_behind():
    there = [at("2026-11-24 11:00"), at("2031-01-06 11:00"), at("2026-11-24 11:00")]
    assert [is_open(WEEK, one, BERLIN) for one in there] == [True, False, True]


spans = st.lists(
    st.tuples(st.integers(0, 1439), st.integers(1, 1440)).map(lambda two: Span(two[0], sum(two))),
    max_size=3,
).map(tuple)


@given(st.lists(spans, min_size=7, max_size=7).map(tuple), st.integers(0, 400 * 86400))
def test_it_is_open_from_its_opening_on_and_closed_from_its_closing_on(week, later_s):
    now = at("2026-01-01 00:00") + later_s
    hours = Hours(week)
    opens, closes = next_opening(hours, now, BERLIN), closing(hours, now, BERLIN)
    if opens is not None:
        assert opens > now
        # Where summer time begins or ends, an hour of the wall is missing or comes twice.
        if not summer_changes(now, opens):
            assert is_open(hours, opens, BERLIN)
            assert not is_open(hours, opens - 1, BERLIN)
    if closes is not None and not summer_changes(now, closes):
        assert closes > now
        assert not is_open(hours, closes, BERLIN)
        assert is_open(hours, closes - 1, BERLIN)


def summer_changes(first_s, second_s):
    ends = (first_s - 7200, second_s + 7200)
    return len({datetime.datetime.fromtimestamp(one, BERLIN).utcoffset() for one in ends}) > 1
