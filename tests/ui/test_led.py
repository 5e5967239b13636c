"""A finger that leads a run, the scene's own pace, and handles of the chart."""

import time
from dataclasses import dataclass, replace

import bar_scene
import pytest

from demo_app.ui.playing import Session


@dataclass(frozen=True)
class HandState:
    """Keeps where a finger was."""

    time_s: float
    step: int
    places: tuple


def hand_scene(step_s=0.05, **changes):
    def start(settings):
        return HandState(0.0, 0, ())

    def advance(settings, state):
        return HandState(state.time_s + step_s, state.step + 1, state.places)

    def point(settings, state, place):
        return HandState(state.time_s, state.step, (*state.places, (state.time_s, place)))

    bar = bar_scene.BarState(0.0, 0, 1.0, False, None)
    return replace(
        bar_scene.SCENE,
        start=start,
        advance=advance,
        point=point,
        read=lambda settings, state: bar_scene.read(settings, bar),
        trace=lambda settings, state: bar_scene.trace(settings, bar),
        view=lambda settings, state: bar_scene.view(settings, bar),
        say=lambda settings, state: bar_scene.say(settings, bar),
        **changes,
    )


@pytest.fixture
def hand(worker, settle):
    made = []

    def open_with(**changes):
        session = Session(hand_scene(**changes), worker)
        session.size = (120, 60)
        session.begin()
        settle(session)
        made.append(session)
        return session

    yield open_with
    for session in made:
        session.close()


def test_a_hand_faster_than_the_pictures_does_not_stop_the_clock(hand, qtbot, settle):
    session = hand()
    for index in range(400):
        session.point((float(index), 0.0))
        qtbot.wait(1)
    session.point(None)
    session.pause()
    settle(session)
    assert session.time_s > 0.2
    places = [place for _, place in session.here.places]
    assert places[0] == (0.0, 0.0)
    assert places[-2:] == [(399.0, 0.0), None]


def test_a_touch_in_a_long_step_does_not_begin_before_the_finger_came(hand, qtbot, settle):
    """What was computed beyond the state that is touched is dropped: nothing of it is shown."""
    session = hand(step_s=8.0)
    session.set_speed(100.0)
    session.play()
    qtbot.waitUntil(lambda: 8.5 < session.time_s < 14)
    before = session.here
    assert before.time_s < session.time_s
    session.pause()
    settle(session)
    session.set_speed(1.0)
    session.point((1.0, 2.0))
    assert session.time_s == session.here.time_s
    touched = session.here.time_s
    session.point(None)
    session.pause()
    settle(session)
    assert [when for when, _ in session.here.places] == [touched, touched]
    assert session.time_s - touched < 1.0


def test_a_run_that_is_touched_does_not_end_under_the_finger(hand, qtbot, settle):
    session = hand(seconds=lambda settings: 0.5)
    session.scrub(0.4)
    settle(session)
    session.point((0.0, 0.0))
    qtbot.waitUntil(lambda: session.time_s > 1.2, timeout=5000)
    session.point(None)
    qtbot.waitUntil(lambda: not session.playing, timeout=5000)
    session.reset()
    assert session.end_s == 0.5


def test_the_story_has_its_own_pace_until_a_person_chooses_one(worker, settle):
    def pace(settings, state):
        return 20.0 if settings.rate_MPa_s > 10 else 5.0 if state.time_s < 3 else 2.0

    session = Session(replace(bar_scene.SCENE, pace=pace), worker)
    session.begin()
    settle(session)
    assert session.speed == 5.0
    session.scrub(4.0)
    settle(session)
    assert session.speed == 2.0
    session.set_setting("rate_MPa_s", 15.0)
    assert session.speed == 20.0
    session.set_speed(10.0)
    session.set_setting("rate_MPa_s", 5.0)
    settle(session)
    assert session.speed == 10.0
    session.defaults()
    settle(session)
    assert session.speed in {2.0, 5.0}
    session.close()


def test_a_dragged_handle_changes_the_settings(worker, settle):
    calls = []

    def drag(settings, state, name, x, y):
        calls.append((name, x, y, state.step))
        return replace(settings, rate_MPa_s=x)

    session = Session(replace(bar_scene.SCENE, drag=drag), worker)
    session.begin()
    settle(session)
    session.drag("end", 7.5, 1.0)
    settle(session)
    assert calls == [("end", 7.5, 1.0, 0)]
    assert session.settings.rate_MPa_s == 7.5
    session.close()


def test_a_run_that_is_paused_under_the_finger_does_not_go_back_before_the_touch(
    worker, settle, qtbot
):
    """The picture in the making when it is paused may end on the way to what was wanted."""

    def slow(settings, state):
        time.sleep(0.01)
        return HandState(state.time_s + 0.05, state.step + 1, state.places)

    session = Session(replace(hand_scene(), advance=slow), worker)
    session.size = (120, 60)
    session.begin()
    settle(session)
    session.set_speed(100.0)
    session.point((1.0, 2.0))
    for _ in range(5):
        session.play()
        began = session.time_s
        qtbot.waitUntil(lambda began=began: session.time_s > began + 0.2, timeout=20_000)
        qtbot.waitUntil(lambda: session._flying, timeout=20_000)
        session.point(None)
        session.pause()
        settle(session)
        assert session.here.places[-1][1] is None
        assert session.timeline.plan[-1].step <= session.here.step
        session.point((1.0, 2.0))
    session.close()
