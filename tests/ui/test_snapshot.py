"""A snapshot on paper: every bit comes back, and what is broken is refused in one line."""

import json
import math
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from demo_app.base.errors import InputError
from demo_app.optics.instrument import Instrument
from demo_app.ui.snapshot import Done, Kept, Snapshot, as_json, as_record, from_json, from_record
from demo_app.ui.timeline import Entry, Timeline

FLOATS = st.one_of(st.floats(allow_nan=False), st.just(-0.0), st.just(5e-324), st.just(math.inf))
PLACES = st.one_of(st.none(), st.tuples(FLOATS, FLOATS))
SETTINGS = st.dictionaries(
    st.text(max_size=8), st.one_of(FLOATS, st.booleans(), st.text(max_size=8)), max_size=4
)
LIGHTS = st.builds(
    Instrument,
    polarizer_deg=st.floats(-360, 360),
    analyser_deg=st.floats(-360, 360),
    quarter_wave=st.booleans(),
    gain=st.floats(1, 50),
    filters=st.integers(0, 2),
)


@st.composite
def plans(draw):
    steps = sorted(draw(st.lists(st.integers(0, 10_000), max_size=6)))
    touches = st.lists(PLACES, max_size=3).map(tuple)
    return tuple(Done(step, draw(SETTINGS), draw(touches)) for step in (0, *steps))


SNAPSHOTS = st.builds(
    Snapshot,
    scene=st.text(max_size=8),
    plan=plans(),
    time_s=FLOATS,
    step=st.integers(-1, 10_000),
    snap=st.booleans(),
    light=LIGHTS,
    speed=FLOATS,
    own_speed=st.booleans(),
    playing=st.booleans(),
    legs=st.lists(st.tuples(FLOATS, FLOATS), max_size=3).map(tuple),
    speed_after=st.one_of(st.none(), FLOATS),
    broke=st.one_of(st.none(), st.tuples(FLOATS, FLOATS)),
    touched_s=st.one_of(st.none(), FLOATS),
    held=st.one_of(st.none(), st.builds(Kept, plans(), FLOATS, LIGHTS)),
    mode=st.one_of(st.none(), st.just("stress")),
)


def signed(value):
    """Equality that tells -0.0 from 0.0."""
    return repr(value)


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow])
@given(SNAPSHOTS)
def test_every_bit_comes_back(snapshot):
    again = from_json(as_json(snapshot))
    assert again == snapshot
    assert signed(again) == signed(snapshot)
    assert as_json(again) == as_json(snapshot)


def test_settings_that_many_touches_share_are_written_once():
    shared = {"power_W": 40.0}
    plan = tuple(Done(step, shared, ((1.0, 2.0),)) for step in range(1000))
    record = as_record(Snapshot("touch", plan, 1.0, 10))
    assert record["settings"] == [shared]
    assert len(json.dumps(record)) < 40_000


GOOD = as_record(Snapshot("ring", (Done(0, {}), Done(4, {}, ((1.0, 2.0), None))), 1.0, 5))


@pytest.mark.parametrize(
    "change",
    [
        {"version": 2},
        {"plan": []},
        {"plan": [[1, 0, []]]},
        {"plan": [[0, 0, []], [5, 0, []], [2, 0, []]]},
        {"plan": [[0, 3, []]]},
        {"plan": [[0, 0, [[1.0]]]]},
        {"settings": 3},
        {"light": {"lamp": "candle"}},
        {"light": {"colour": 1}},
        {"time_s": None},
        {"legs": [1]},
        {"held": {}},
    ],
)
def test_what_is_broken_is_refused_in_one_line(change):
    assert from_record(json.loads(json.dumps(GOOD))) == from_record(GOOD)
    with pytest.raises(InputError) as caught:
        from_record({**GOOD, **change})
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize("text", ["", "{", "[]", "null", '{"version": 1}', "3"])
def test_what_is_no_snapshot_is_refused(text):
    with pytest.raises(InputError):
        from_json(text)


def test_states_in_memory_make_no_difference():
    snapshot = from_record(GOOD)
    assert replace(snapshot, known=Timeline(None)) == snapshot
    assert "known" not in as_record(snapshot)


class State:
    """A state of which only step and time count."""

    def __init__(self, step):
        self.step, self.time_s = step, float(step)


ACTS = st.lists(
    st.tuples(st.integers(0, 6), st.sampled_from("ABC"), st.lists(st.integers(0, 3), max_size=2)),
    max_size=12,
)


@given(st.sampled_from("ABC"), ACTS)
def test_a_plan_tells_all_that_was_done_in_its_order(first, acts):
    """A plan walked again does the same as the acts did, one after the other."""
    line = Timeline(first)
    done = [(0, "start", first)]
    for step, chosen, touches in acts:
        done = [one for one in done if one[0] <= step]
        done += [(step, chosen, touch) for touch in touches]
        done = [one for one in done if not (one[1] == "holds" and one[0] == step)]
        done.append((step, "holds", chosen))
        line.change(State(step), chosen, *touches)
    walked = [(0, "start", line.plan[0].settings)]
    walked += [(one.step, one.settings, t) for one in line.plan for t in one.touches]
    assert walked == [one for one in done if one[1] != "holds"]
    for step in range(8):
        in_force = [one[2] for one in done if one[1] == "holds" and one[0] <= step]
        last = [one.settings for one in line.plan if one.step <= step]
        assert last[-1] == (in_force[-1] if in_force else first)


def test_a_timeline_takes_over_what_two_plans_have_in_common():
    line = Timeline("A")
    line.add(map(State, range(10)), (State(9),), [(k, float(k), {}) for k in range(10)])
    other = Timeline.planned((Entry(0, "A"), Entry(4, "B")), line)
    assert [state.step for state in other._kept] == [0, 1, 2, 3]
    assert other.traced == 4
    assert Timeline.planned((Entry(0, "B"),), line).start is None
    narrow = line.narrow(6.5)
    assert [state.step for state in narrow._kept] == [0]
    assert narrow.ready(6.5)[0].step == 6
    assert narrow.plan == line.plan
    assert narrow.plan is not line.plan
