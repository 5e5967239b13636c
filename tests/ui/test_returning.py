"""What if: anything may be changed, and one act puts every bit back."""

import dataclasses
import itertools

import bar_scene
import pytest
from exact import all_of, bits

from demo_app.base.errors import InputError
from demo_app.scenes.catalogue import scenes
from demo_app.scenes.settings import settings_of
from demo_app.ui.playing import Session
from demo_app.ui.snapshot import as_json, from_json, opening
from demo_app.ui.timeline import in_force

SMALL = (96, 54)


@pytest.fixture
def opened(worker, settle):
    """Sessions of any scene, closed at the end."""
    made = []

    def open_scene(scene, size=SMALL):
        session = Session(scene, worker)
        session.size = size
        session.begin()
        settle(session)
        made.append(session)
        return session

    yield open_scene
    for session in made:
        session.close()


def other_value(setting, now):
    """A value of a setting that it does not have now."""
    if isinstance(setting.default, bool):
        return not now
    if isinstance(setting.default, str):
        return next(word for word in setting.choices if word != now)
    middle = (setting.low + setting.high) / 2
    return middle if middle != now else setting.low


def change_some(session, count):
    """Change up to `count` settings, one after the other; live ones first."""
    done = 0
    for setting in sorted(settings_of(session.scene.settings), key=lambda one: not one.live):
        if done == count:
            break
        before = session.settings
        session.set_setting(
            setting.name, other_value(setting, getattr(session.settings, setting.name))
        )
        done += session.settings != before
    return done


def go_on(session, settle, steps):
    """Let the run go on by some steps of its own length."""
    state = session.here
    for _ in range(steps):
        state = session.scene.advance(session.settings, state)
    session.scrub(state.time_s)
    settle(session)


def twin(session, opened):
    """Another session of the same scene, put to the same instant from the written snapshot."""
    other = opened(session.scene, session.size)
    other.restore(from_json(as_json(session.snapshot())))
    return other


FIVE = {
    "ring_width_mm": 14.0,
    "flame_kW_m2": 120.0,
    "heat_s": 30.0,
    "drop_at_s": 34.0,
    "drop_offset_mm": 3.0,
}


def test_ring_in_the_flame_comes_back_bit_by_bit(opened, settle, count, qtbot):
    session = opened(scenes()["ring"], (320, 180))
    session.set_setting("heat_s", 60.0)
    session.set_setting("drop_at_s", 60.0)
    session.scrub(6.0)
    settle(session)
    session.mark_return()
    assert not session.changed_by_hand
    was = all_of(session, 100)
    heat, when = session.here.moment, session.time_s
    assert "flame" in {mark.kind for mark in session.frame.marks}
    for name, value in FIVE.items():
        session.set_setting(name, value)
        settle(session)
    session.set_speed(1000.0)
    session.play()
    qtbot.waitUntil(lambda: session.time_s >= when + 30, timeout=100_000)
    session.pause()
    settle(session)
    then = all_of(session)
    assert then["picture"] != was["picture"]
    assert then["state"] != was["state"]
    assert session.changed_by_hand
    changed = count(session.changed)
    assert session.return_back()
    assert len(changed) == 1
    settle(session)
    assert not session.changed_by_hand
    assert all_of(session, 100) == was
    assert bits(session.here.moment) == bits(heat)
    assert not session.return_back()


@pytest.mark.parametrize("name", sorted(scenes()))
def test_every_scene_comes_back_bit_by_bit(name, opened, settle):
    session = opened(scenes()[name])
    go_on(session, settle, 5)
    was = all_of(session, 3)
    change_some(session, 3)
    settle(session)
    session.set_light(polarizer_deg=20.0)
    go_on(session, settle, 3)
    assert all_of(session) != was
    session.return_back()
    settle(session)
    assert all_of(session, 3) == was


@pytest.mark.parametrize("name", sorted(scenes()))
def test_every_scene_comes_back_from_its_written_snapshot(name, opened, settle):
    session = opened(scenes()[name])
    # Changes at the start and on the way, so that the written plan has several parts.
    change_some(session, 1)
    settle(session)
    go_on(session, settle, 4)
    change_some(session, 2)
    settle(session)
    go_on(session, settle, 4)
    session.set_light(polarizer_deg=20.0)
    settle(session)
    other = twin(session, opened)
    settle(other)
    assert all_of(other, 5) == all_of(session, 5)


def test_touches_come_back(opened, settle, qtbot):
    session = opened(scenes()["touch"])
    session.point((10.0, 20.0))
    qtbot.waitUntil(lambda: session.time_s > 0.3, timeout=20_000)
    session.point((40.0, -20.0))
    qtbot.waitUntil(lambda: session.time_s > 0.6, timeout=20_000)
    session.point(None)
    session.pause()
    settle(session)
    session.set_setting("power_W", 60.0)
    session.scrub(1.5)
    settle(session)
    assert len({place for entry in session.timeline.plan for place in entry.touches}) == 3
    session.mark_return()
    was = all_of(session, 10)
    session.point((-50.0, 0.0))
    qtbot.waitUntil(lambda: session.time_s > 2.0, timeout=20_000)
    session.point(None)
    session.pause()
    settle(session)
    assert all_of(session) != was
    session.return_back()
    settle(session)
    assert all_of(session, 10) == was
    other = twin(session, opened)
    settle(other)
    assert all_of(other, 10) == was


def test_a_finger_and_settings_at_one_step_come_back_in_their_order(opened, settle):
    """What a finger does may depend on the settings of that moment, not on later ones."""

    def point(settings, state, place):
        return dataclasses.replace(state, edge_MPa=state.edge_MPa + settings.rate_MPa_s)

    session = opened(dataclasses.replace(bar_scene.SCENE, point=point))
    session.scrub(1.0)
    settle(session)
    session.point((1.0, 1.0))
    session.pause()
    settle(session)
    session.set_setting("rate_MPa_s", 9.0)
    session.point(None)
    settle(session)
    session.set_setting("rate_MPa_s", 2.0)
    settle(session)
    other = twin(session, opened)
    settle(other)
    assert all_of(other, 5) == all_of(session, 5)


def test_the_point_of_return_moves_with_the_play_until_a_hand_changes_something(session, settle):
    session.scrub(1.0)
    settle(session)
    session.scrub(3.0)
    session.set_speed(5.0)
    session.step(1)
    settle(session)
    assert not session.changed_by_hand
    when = session.time_s
    session.set_setting("rate_MPa_s", 9.0)
    session.scrub(7.0)
    settle(session)
    session.set_setting("strength_MPa", 9.0)
    settle(session)
    assert session.changed_by_hand
    session.return_back()
    settle(session)
    assert session.time_s == when
    assert session.settings == bar_scene.BarSettings()
    assert session.speed == 5.0


ACTS = {
    "setting": lambda session: session.set_setting("rate_MPa_s", 9.0),
    "shape": lambda session: session.set_setting("height_mm", 50),
    "light": lambda session: session.set_light(polarizer_deg=10.0),
    "gain": lambda session: session.brighten(),
    "button": lambda session: session.act(session.scene.actions[0]),
    "hold": lambda session: session.hold(),
}


@pytest.mark.parametrize("act", ACTS)
def test_each_kind_of_change_can_be_taken_back(act, session, settle):
    session.scrub(3.0)
    settle(session)
    was = all_of(session, 3)
    ACTS[act](session)
    session.pause()
    settle(session)
    assert session.changed_by_hand
    session.return_back()
    settle(session)
    assert session.held is None
    assert all_of(session, 3) == was


def test_what_changes_nothing_leaves_the_point_of_return_alone(session, settle):
    session.scrub(3.0)
    settle(session)
    session.set_setting("rate_MPa_s", session.settings.rate_MPa_s)
    session.set_setting("rate_MPa_s", 1e9)
    session.set_light(polarizer_deg=session.instrument.polarizer_deg)
    session.reset()
    session.defaults()
    settle(session)
    assert not session.changed_by_hand


def test_a_run_that_played_plays_on_after_its_return(session, settle, qtbot):
    session.scrub(2.0)
    settle(session)
    session.play()
    qtbot.waitUntil(lambda: session.time_s > 2.2)
    session.set_setting("rate_MPa_s", 15.0)
    left = session.point_of_return.time_s
    qtbot.waitUntil(lambda: session.time_s > left + 0.3)
    session.return_back()
    qtbot.waitUntil(lambda: session.playing and session.time_s > left)
    assert session.settings.rate_MPa_s == 4
    session.pause()
    session.mark_return()
    session.restore(session.snapshot(), play=True)
    qtbot.waitUntil(lambda: session.playing)


def test_a_slow_replay_and_the_break_come_back(session, settle, qtbot, opened):
    session.scrub(12.0)
    settle(session)
    session.set_speed(3.0)
    broke = session.break_s
    session.replay_break()
    qtbot.waitUntil(lambda: session.playing)
    session.set_setting("strength_MPa", 100.0)
    assert session.break_s is None
    session.pause()
    settle(session)
    session.return_back()
    qtbot.waitUntil(lambda: session.playing)
    assert session.break_s == broke
    assert session.speed == pytest.approx(1 / 50)
    qtbot.waitUntil(lambda: not session.playing, timeout=15_000)
    assert session.speed == 3.0


def test_a_held_picture_comes_back_from_the_file(session, settle, opened):
    session.scrub(4.0)
    settle(session)
    session.set_setting("rate_MPa_s", 7.0)
    session.set_light(analyser_deg=30.0)
    session.scrub(5.0)
    settle(session)
    session.hold()
    session.set_setting("thickness_mm", 4)
    session.scrub(2.0)
    settle(session)
    other = twin(session, opened)
    assert other.restoring
    settle(other)
    assert not other.restoring
    assert all_of(other, 3) == all_of(session, 3)
    mine, theirs = session.held, other.held
    assert (theirs.time_s, theirs.settings) == (mine.time_s, mine.settings)
    assert bits(theirs.instrument) == bits(mine.instrument)
    assert bits([piece.map for piece in theirs.stage.pieces]) == bits(
        [piece.map for piece in mine.stage.pieces]
    )
    assert as_json(other.snapshot()) == as_json(session.snapshot())


def slow_scene():
    import time

    def advance(settings, state):
        time.sleep(0.01)
        return bar_scene.advance(settings, state)

    return dataclasses.replace(bar_scene.SCENE, advance=advance)


def test_no_picture_of_the_way_is_shown_and_no_hand_comes_between(opened, settle, count):
    session = opened(slow_scene())
    session.scrub(6.0)
    settle(session)
    other = opened(slow_scene())
    was = other.frame
    framed, told = count(other.framed), count(other.told)
    other.restore(from_json(as_json(session.snapshot())))
    other.set_setting("rate_MPa_s", 9.0)
    other.set_light(polarizer_deg=3.0)
    other.point((0.0, 0.0))
    other.scrub(1.0)
    other.hold()
    assert told[-1][0].startswith("One moment")
    assert other.frame is was
    other.set_size(100, 60)
    settle(other)
    assert {frame.time_s for (frame,) in framed} == {session.time_s}
    assert other.settings == session.settings
    assert other.light == session.light
    assert bits(other.here) == bits(session.here)
    assert not other.changed_by_hand


def test_playing_can_be_chosen_on_the_way(opened, settle, qtbot):
    session = opened(slow_scene())
    session.scrub(2.0)
    settle(session)
    other = opened(slow_scene())
    other.restore(from_json(as_json(session.snapshot())))
    other.play()
    assert not other.playing
    qtbot.waitUntil(lambda: other.playing and other.time_s > 2.0)
    assert not other.restoring


def test_a_return_after_a_restart_uses_what_the_run_has_in_common(opened, settle):
    """The way to the point of return is not walked a second time."""
    calls = []

    def advance(settings, state):
        calls.append(state.step)
        return bar_scene.advance(settings, state)

    scene = dataclasses.replace(bar_scene.SCENE, advance=advance)
    session = opened(scene)
    session.scrub(5.0)
    settle(session)
    was = all_of(session, 3)
    session.set_setting("rate_MPa_s", 9.0)
    session.scrub(8.0)
    settle(session)
    shown, back = (from_json(as_json(one)) for one in (session.snapshot(), session.point_of_return))
    other = opened(scene)
    other.restore(shown, back=back)
    settle(other)
    assert other.changed_by_hand
    calls.clear()
    other.return_back()
    settle(other)
    assert len(calls) < 5
    assert all_of(other, 3) == was


def test_a_fault_on_the_way_back_is_told_and_the_scene_starts_again(opened, settle, count, caplog):
    def advance(settings, state):
        if settings.rate_MPa_s == 9.0 and state.step > 30:
            raise RuntimeError("no balance")
        return bar_scene.advance(settings, state)

    session = opened(bar_scene.SCENE)
    session.set_setting("rate_MPa_s", 9.0)
    session.scrub(3.0)
    settle(session)
    other = opened(dataclasses.replace(bar_scene.SCENE, advance=advance))
    told = count(other.told)
    with caplog.at_level("CRITICAL", logger="lehrlight"):
        other.restore(from_json(as_json(session.snapshot())))
        settle(other)
    assert told[-1] == ("no balance",)
    assert not other.restoring
    assert other.time_s == 0


def test_a_snapshot_of_another_scene_or_with_unknown_settings_is_refused(session, settle):
    session.begin()
    settle(session)
    taken = session.snapshot()
    with pytest.raises(InputError, match="scene ring"):
        session.restore(dataclasses.replace(taken, scene="ring"))
    strange = dataclasses.replace(taken.plan[0], settings={"colour": "red"})
    with pytest.raises(InputError, match="colour"):
        session.restore(dataclasses.replace(taken, plan=(strange,), known=None))
    assert not session.restoring


def test_settings_of_the_far_end_hold_before_it_is_reached(session, settle):
    """A run scrubbed back before its last change: the change is still to come after a restart."""
    session.scrub(5.0)
    settle(session)
    session.set_setting("rate_MPa_s", 9.0)
    session.scrub(2.0)
    settle(session)
    taken = from_json(as_json(session.snapshot()))
    assert taken.plan[-1].step > taken.step
    session.defaults()
    session.restore(taken)
    settle(session)
    plan = session.timeline.plan
    assert in_force(plan, session.here.step).rate_MPa_s == 4
    assert session.settings.rate_MPa_s == 9
    assert len(list(itertools.takewhile(lambda entry: entry.step <= 40, plan))) == 1


def test_a_step_opens_without_a_picture_of_the_way(opened, qtbot, count):
    scene = dataclasses.replace(slow_scene(), pace=lambda settings, state: 5.0)
    session = opened(scene)
    framed = count(session.framed)
    wanted = bar_scene.BarSettings(rate_MPa_s=6.0)
    session.restore(opening("bar", wanted, 3.02, play=True))
    qtbot.waitUntil(lambda: session.playing)
    first = framed[0][0]
    assert first.time_s == pytest.approx(3.0)
    assert first.settings == wanted
    assert session.speed == 5.0
    assert not session.changed_by_hand


def test_an_instant_between_two_steps_comes_back(session, settle, qtbot, opened):
    session.scrub(3.0)
    settle(session)
    session.set_speed(1 / 50)
    session.play()
    qtbot.waitUntil(lambda: session.time_s > 3.004)
    session.pause()
    settle(session)
    assert session.time_s != session.here.time_s
    was = all_of(session, 3)
    session.set_setting("rate_MPa_s", 15.0)
    settle(session)
    assert all_of(session)["picture"] != was["picture"]
    session.return_back()
    settle(session)
    assert all_of(session, 3) == was
    other = twin(session, opened)
    settle(other)
    assert all_of(other, 3) == was


@pytest.mark.parametrize("speed", [0.3, 1.0, 20.0])
def test_a_change_while_it_plays_leads_back_to_the_picture_that_was_seen(
    speed, session, settle, qtbot
):
    session.scrub(1.0)
    settle(session)
    session.set_speed(speed)
    session.play()
    qtbot.waitUntil(lambda: session.time_s > 1.3)
    was = all_of(session, 3)
    session.set_setting("rate_MPa_s", 15.0)
    qtbot.wait(100)
    session.restore(session.point_of_return, play=False)
    settle(session)
    assert all_of(session, 3) == was


def test_a_favourite_keeps_little_and_is_there_at_once(opened, settle):
    calls = []

    def advance(settings, state):
        calls.append(state.step)
        return bar_scene.advance(settings, state)

    session = opened(dataclasses.replace(bar_scene.SCENE, advance=advance))
    session.scrub(6.0)
    settle(session)
    was = all_of(session, 3)
    favourite = session.snapshot().narrow()
    assert len(favourite.known._kept) == 1
    session.defaults()
    session.set_setting("height_mm", 50)
    settle(session)
    calls.clear()
    session.restore(favourite)
    settle(session)
    assert len(calls) < 3
    assert all_of(session, 3) == was
    session.scrub(2.0)
    settle(session)
    assert session.frame.readings["edge_MPa"] == pytest.approx(8.0, abs=0.3)
