"""Playing, scrubbing, changing, holding."""

import time
from dataclasses import replace

import bar_scene
import numpy as np
import pytest

from demo_app.ui.playing import FASTEST, SLOWEST, Session


def picture(session):
    return session.frame.pixels.copy()


def test_scrub_back_gives_identical_bytes(session, settle):
    session.begin()
    settle(session)
    seen = {}
    for time_s in (2.0, 3.33, 7.77, 9.9, 12.0):
        session.scrub(time_s)
        settle(session)
        seen[time_s] = (picture(session), session.frame.readings, session.frame.time_s)
    for time_s, (pixels, readings, shown) in reversed(seen.items()):
        session.scrub(time_s)
        settle(session)
        assert session.frame.time_s == shown
        assert session.frame.readings == readings
        np.testing.assert_array_equal(session.frame.pixels, pixels)


def test_scrub_back_across_a_change_of_settings(session, settle):
    session.scrub(2.0)
    settle(session)
    session.set_setting("rate_MPa_s", 1.0)
    session.scrub(4.0)
    settle(session)
    assert session.frame.readings["edge_MPa"] == pytest.approx(2.0 * 4 + 2.0 * 1, abs=0.3)
    late = picture(session)
    session.scrub(1.0)
    settle(session)
    session.scrub(4.0)
    settle(session)
    np.testing.assert_array_equal(session.frame.pixels, late)


def test_live_settings_keep_the_state_and_others_start_again(session, settle):
    session.scrub(3.0)
    settle(session)
    session.set_setting("rate_MPa_s", 8.0)
    settle(session)
    assert session.time_s == pytest.approx(3.0)
    assert session.frame.readings["edge_MPa"] == pytest.approx(12.0, abs=0.3)
    session.set_setting("height_mm", 40)
    settle(session)
    assert session.time_s == 0
    assert session.frame.readings["edge_MPa"] == 0


def test_one_signal_a_change(session, settle, count):
    session.begin()
    settle(session)
    changed = count(session.changed)
    session.set_setting("rate_MPa_s", 5.0)
    assert len(changed) == 1
    session.set_setting("rate_MPa_s", 5.0)
    assert len(changed) == 1
    settle(session)
    session.act(session.scene.actions[0])
    assert len(changed) == 2
    session.pause()
    session.set_light(polarizer_deg=30.0)
    assert len(changed) == 4


def test_refused_value_changes_nothing_and_is_told(session, settle, count):
    session.begin()
    settle(session)
    told = count(session.told)
    before = session.settings
    session.set_setting("rate_MPa_s", 99)
    assert session.settings == before
    assert "from 0 to 20" in told[-1][0]
    session.set_light(polarizer_deg=900.0)
    assert "-360 to 360" in told[-1][0]


def test_action_takes_effect_now(session, settle, qtbot):
    session.scrub(2.0)
    settle(session)
    session.act(session.scene.actions[0])
    assert session.playing
    assert session.settings.drop_at_s == pytest.approx(2.0)
    qtbot.waitUntil(lambda: session.time_s > 2.2)
    session.pause()
    settle(session)
    assert session.frame.readings["edge_MPa"] > 17


def test_pictures_keep_coming_while_a_slider_is_dragged(session, settle, qtbot, count):
    session.scrub(3.0)
    settle(session)
    framed = count(session.framed)
    for tenth in range(1, 60):
        session.set_setting("rate_MPa_s", tenth / 10)
        qtbot.wait(2)
    settle(session)
    assert len(framed) > 5
    assert framed[-1][0].settings.rate_MPa_s == 5.9
    assert session.time_s == pytest.approx(3.0)
    late = [f.settings.rate_MPa_s for (f,) in framed]
    assert late == sorted(late)


def test_a_finger_on_the_piece_is_remembered(worker, settle):
    def point(settings, state, place):
        return replace(state, edge_MPa=state.edge_MPa + (10.0 if place else 0.0))

    session = Session(replace(bar_scene.SCENE, point=point), worker)
    session.size = (240, 120)
    session.scrub(2.0)
    settle(session)
    session.point((1.0, 2.0))
    session.point(None)
    session.pause()
    settle(session)
    assert session.frame.readings["edge_MPa"] == pytest.approx(18.0, abs=0.3)
    session.scrub(4.0)
    settle(session)
    late = (session.frame.pixels.copy(), session.frame.readings)
    assert late[1]["edge_MPa"] == pytest.approx(26.0, abs=0.3)
    session.scrub(1.0)
    settle(session)
    assert session.frame.readings["edge_MPa"] == pytest.approx(4.0, abs=0.3)
    session.scrub(4.0)
    settle(session)
    assert session.frame.readings == late[1]
    np.testing.assert_array_equal(session.frame.pixels, late[0])
    session.close()


def test_steps_back_and_on(session, settle):
    session.scrub(2.0)
    settle(session)
    first, start = session.frame.last[0].step, picture(session)
    session.step(-1)
    settle(session)
    assert session.frame.last[0].step == first - 1
    session.step(1)
    settle(session)
    assert session.frame.last[0].step == first
    np.testing.assert_array_equal(session.frame.pixels, start)
    session.scrub(0)
    settle(session)
    session.step(-1)
    settle(session)
    assert session.time_s == 0


class Clock:
    """Wall time that a test moves."""

    def __init__(self):
        self.now = 0.0

    def __call__(self):
        return self.now


@pytest.mark.parametrize("speed", [SLOWEST, 1.0, 20.0])
def test_speed_is_kept(worker, settle, speed):
    clock = Clock()
    session = Session(bar_scene.SCENE, worker, clock=clock)
    session.size = (120, 60)
    session.begin()
    settle(session)
    session.set_speed(speed)
    session.play()
    session._timer.stop()
    for _ in range(20):
        clock.now += 0.02
        session._tick()
        settle(session)
    assert session.time_s == pytest.approx(min(speed * 0.4, 15.0), abs=0.05 + 1e-9)
    session.close()


def test_fastest_runs_as_fast_as_can_be_and_says_so(worker, settle):
    clock = Clock()

    def slow_advance(settings, state):
        clock.now += 0.004
        return bar_scene.advance(settings, state)

    scene = replace(bar_scene.SCENE, advance=slow_advance, seconds=lambda s: 1e6)
    session = Session(scene, worker, clock=clock)
    session.size = (60, 40)
    session.begin()
    settle(session)
    session.set_speed(1e9)
    assert session.speed == FASTEST
    session.play()
    session._timer.stop()
    for _ in range(30):
        clock.now += 0.05
        session._tick()
        settle(session)
    assert session.behind
    assert 0 < session.real_speed < FASTEST
    session.close()


def test_a_model_slower_than_the_clock_is_played_to_its_end(worker, settle, qtbot):
    def slow_advance(settings, state):
        time.sleep(0.003)
        return bar_scene.advance(settings, state)

    scene = replace(bar_scene.SCENE, advance=slow_advance)
    session = Session(scene, worker)
    session.size = (1920, 1080)  # drawing takes longer than a tick
    session.begin()
    settle(session)
    session.set_speed(FASTEST)
    session.play()
    qtbot.waitUntil(lambda: not session.playing, timeout=60_000)
    assert session.time_s == pytest.approx(15.0, abs=0.06)
    session.close()


def test_slowest_moves_between_two_steps(worker, settle):
    clock = Clock()
    session = Session(bar_scene.SCENE, worker, clock=clock)
    session.size = (240, 120)
    session.scrub(5.0)
    settle(session)
    session.set_speed(0)
    assert session.speed == SLOWEST
    session.play()
    session._timer.stop()
    seen = []
    for _ in range(4):
        clock.now += 0.1
        session._tick()
        settle(session)
        seen.append((session.time_s, session.frame.last[0].step))
    assert len({step for _, step in seen}) == 1
    assert len({time_s for time_s, _ in seen}) == 4
    session.close()


def test_play_stops_at_the_end_and_begins_again(session, settle, qtbot):
    session.scrub(14.9)
    settle(session)
    session.play()
    qtbot.waitUntil(lambda: not session.playing)
    assert session.time_s == pytest.approx(15.0, abs=0.06)
    session.play()
    qtbot.waitUntil(lambda: session.time_s < 1)
    session.pause()


def test_reset_keeps_settings_and_defaults_do_not(session, settle):
    session.set_setting("rate_MPa_s", 7.0)
    session.scrub(3.0)
    settle(session)
    session.reset()
    settle(session)
    assert (session.time_s, session.settings.rate_MPa_s) == (0, 7.0)
    session.defaults()
    assert session.settings == bar_scene.BarSettings()


def test_slow_replay_of_the_break(session, settle, qtbot):
    session.begin()
    settle(session)
    assert session.break_s is None
    session.replay_break()
    assert not session.playing
    session.scrub(14.0)
    settle(session)
    broke = session.break_s
    assert broke == pytest.approx(10.0, abs=0.051)
    session.set_speed(5.0)
    session.replay_break()
    qtbot.waitUntil(lambda: session.playing)  # once its first picture has come
    assert session.speed == SLOWEST
    qtbot.waitUntil(lambda: session.time_s < broke)
    qtbot.waitUntil(lambda: not session.playing, timeout=10000)
    assert session.time_s == pytest.approx(broke + 3 * SLOWEST, abs=0.05)
    assert session.frame.readings["breaks"]
    assert session.speed == 5.0
    session.scrub(2.0)
    settle(session)
    session.set_setting("rate_MPa_s", 1.0)
    assert session.break_s is None


def test_hold_and_compare(session, settle):
    session.scrub(4.0)
    settle(session)
    was = picture(session)
    session.hold()
    settle(session)
    session.set_setting("thickness_mm", 4)
    session.scrub(4.0)
    settle(session)
    assert session.held.settings.thickness_mm == 8
    assert not np.array_equal(session.frame.pixels, was)
    session.set_size(200, 90)
    settle(session)
    assert session.frame.pixels.shape == (90, 200, 4)
    session.hold()
    assert session.held is None


def test_a_fault_resets_and_does_not_spin(worker, qtbot, count, caplog):
    calls = []

    def broken(settings, state):
        calls.append(state)
        raise RuntimeError("no balance of forces")

    session = Session(replace(bar_scene.SCENE, advance=broken), worker)
    told = count(session.told)
    with caplog.at_level("CRITICAL", logger="lehrlight"):
        session.begin()
        qtbot.waitUntil(lambda: len(told) == 3)
        qtbot.wait(100)
    assert len(calls) == 3
    assert told[-1] == ("no balance of forces",)
    assert not session.playing
    session.close()


def test_requests_that_have_not_begun_are_forgotten(session, settle, count):
    session.begin()
    settle(session)
    framed = count(session.framed)
    for height in range(20, 40):
        session.set_setting("height_mm", height)
    settle(session)
    assert framed[-1][0].settings.height_mm == 39
    assert len(framed) < 20
