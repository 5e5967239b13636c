"""What is remembered of a run, without Qt's event loop."""

import dataclasses

import bar_scene
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from demo_app.scenes.settings import change
from demo_app.ui import timeline as tl
from demo_app.ui.timeline import Timeline, in_force

BAR = bar_scene.BarSettings()


def run(plan, steps):
    state = bar_scene.start(in_force(plan, 0))
    yield state
    for _ in range(steps):
        state = bar_scene.advance(in_force(plan, state.step), state)
        yield state


def filled(steps):
    line = Timeline(BAR)
    for state in run(line.plan, steps):
        line.add([state], (state,), [(state.step, state.time_s, bar_scene.trace(BAR, state))])
    return line


def test_thins_but_keeps_start_and_raster():
    line = filled(3000)
    assert line.every > 1
    kept = [state.step for state in line._kept]
    assert kept[0] == 0
    assert len(kept) <= tl.MOST
    assert all(step % line.every == 0 for step in kept)
    assert line.traced == 3001


@settings(max_examples=30, deadline=None)
@given(st.floats(0, 30), st.integers(1, 700))
def test_any_instant_is_had_back_exactly(time_s, steps):
    line = filled(steps)
    states = list(run(line.plan, steps))
    ready = line.ready(time_s)
    assert ready[0].time_s <= time_s + tl.TIME_EPS_S
    state = ready[0]
    while state.step < steps and states[state.step + 1].time_s <= time_s:
        state = bar_scene.advance(BAR, state)
    assert state == states[state.step]


def test_a_change_forgets_what_was_after_it():
    line = filled(100)
    at = line.ready(2.0)[0]
    faster = change(BAR, rate_MPa_s=8)
    line.change(at, faster)
    assert in_force(line.plan, at.step - 1) == BAR
    assert in_force(line.plan, at.step) == faster
    assert line.traced == at.step + 1
    assert line.ready(99.0) == (at,)


def test_curve_and_time_of_step():
    line = filled(10)
    times, values = line.curve("edge_MPa")
    assert times == pytest.approx([0.05 * k for k in range(11)])
    assert values == pytest.approx([0.2 * k for k in range(11)])
    assert line.time_of(4) == pytest.approx(0.2)
    assert line.time_of(11) is None


@dataclasses.dataclass(frozen=True)
class Heavy:
    step: int
    time_s: float
    own: np.ndarray
    shared: np.ndarray


def test_memory_is_bounded_and_shared_parts_count_once():
    shared = np.zeros(tl.MOST_BYTES // 16)
    line = Timeline(BAR)
    for step in range(200):
        state = Heavy(step, 0.1 * step, np.zeros(tl.MOST_BYTES // 800), shared)
        line.add([state], (state,), [])
    own = sum(state.own.nbytes for state in line._kept)
    assert own + shared.nbytes <= tl.MOST_BYTES
    assert line._weight.total == own + shared.nbytes
    assert len(line._kept) >= 25
