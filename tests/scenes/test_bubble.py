"""The scene bubble: hard outside, doomed inside, and its twin from the oven."""

import functools

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.physics.revolve.verdict import SCORE_SPREAD
from demo_app.physics.strength import deeper_than
from demo_app.scenes.blown.record import flask_of, map_of, proof_of
from demo_app.scenes.blown.words import net_force
from demo_app.scenes.bubble import SCENE, Settings
from demo_app.scenes.run import state_at, states
from demo_app.scenes.settings import change, make


@functools.cache
def cold(**values):
    settings = make(Settings, values)
    return settings, state_at(SCENE, settings)


def after(name="none", way="air", **values):
    """The cold flask of the usual shape after a test: the test itself takes no steps."""
    settings, state = cold(way=way)
    settings = change(settings, test=name, **values)
    return settings, state, SCENE.read(settings, state), SCENE.say(settings, state)


def test_in_the_air_the_foot_locks_in_tens_of_megapascals():
    *_, found, said = after()
    assert -100 < found["base_outside_MPa"] < -30
    assert 15 < found["base_inside_MPa"] < 70
    assert found["wall_outside_MPa"] < 0 < found["wall_inside_MPa"]
    assert abs(found["wall_outside_MPa"]) < abs(found["base_outside_MPa"])
    assert said.id == "locked"


def test_a_scratch_of_a_tenth_of_a_millimetre_breaks_it():
    *_, found, _ = after()
    assert 50 < found["scratch_to_break_um"] < 250


def test_from_the_oven_less_than_one_megapascal_is_left():
    *_, found, said = after(way="oven")
    names = ("base_outside_MPa", "base_inside_MPa", "wall_outside_MPa", "wall_inside_MPa")
    assert max(abs(found[name]) for name in names) < 1
    assert found["scratch_to_break_um"] is None
    assert found["retardation_peak_nm"] < 30
    assert found["hours"] > 5
    assert said.id == "calm"


def test_the_first_answer_is_there_at_once_and_the_full_one_replaces_it():
    settings, state = cold()
    first = SCENE.read(settings, SCENE.start(settings))
    full = SCENE.read(settings, state)
    assert (first["answer"], full["answer"]) == ("first", "full")
    assert (first["progress_pct"], full["progress_pct"]) == (0, 100)
    assert first["base_outside_MPa"] == pytest.approx(full["base_outside_MPa"], rel=0.2)
    assert first["scratch_to_break_um"] == pytest.approx(full["scratch_to_break_um"], rel=1.5)


def test_progress_only_rises():
    settings = Settings()
    seen = []
    for state in states(SCENE, settings):
        seen.append(100 * state.time_s / SCENE.seconds(settings))
        if state.cold:
            break
    assert (np.diff(seen) > 0).all()
    assert seen[-1] == pytest.approx(100)
    # One step at a time, so that the stage keeps its frame rate.
    assert 50 < state.step < 400


def test_the_outside_bears_what_would_break_its_calm_twin():
    *_, hard, _ = after()
    *_, calm, _ = after(way="oven")
    assert hard["blow_to_break_J"] > 1.5 * calm["blow_to_break_J"] > 0
    between = (hard["blow_to_break_J"] * calm["blow_to_break_J"]) ** 0.5
    *_, one, said = after("blow", blow_J=between)
    assert not one["breaks"]
    assert said.id == "blow_held"
    *_, other, said = after("blow", way="oven", blow_J=between)
    assert other["breaks"]
    assert said.id == "blow_broke"


def test_the_twin_bears_the_scratch_that_shatters_the_other():
    settings, state, found, said = after("scratch", scratch_um=150)
    assert found["breaks"]
    assert found["runs_by_itself"]
    assert said.id == "scratch_shattered"
    kinds = {line.kind for line in SCENE.view(settings, state).outlines}
    assert kinds == {"shard"}
    settings, state, found, said = after("scratch", way="oven", scratch_um=150)
    assert not found["breaks"]
    assert found["break_probability"] == 0
    assert said.id == "scratch_held_calm"
    # Honest about the load: a scratched twin bears less than a whole one does.
    assert 0.05 < said.values["load"] < found["blow_to_break_J"]
    assert not SCENE.view(settings, state).outlines


def test_the_odds_are_those_of_hand_made_scratches():
    _, _, found, _ = after("scratch", scratch_um=120)
    depth = found["scratch_to_break_um"]
    assert found["break_probability"] == pytest.approx(deeper_than(depth, 120, SCORE_SPREAD))
    *_, said = after("scratch", scratch_um=40)
    assert said.id == "scratch_held"


def test_both_twins_bear_a_soft_blow():
    for way in ("air", "oven"):
        *_, found, said = after("blow", way=way, blow_J=1.0)
        assert not found["breaks"]
        assert said.id in {"blow_held", "blow_held_calm"}


def test_what_flies_to_pieces_lets_go_of_its_stress():
    settings, state, found, _ = after("scratch", scratch_um=150)
    whole = map_of(flask_of(settings), state.cooling)
    left = SCENE.view(settings, state).stage.pieces[0].map
    foot = whole.along_mm < settings.base_mm
    assert float(left.retardation_nm()[:, foot].max()) < 1
    assert float(whole.retardation_nm()[:, foot].max()) > 500
    assert found["pieces"] > 5
    # The readings are the last before the break.
    assert found["base_outside_MPa"] < -30


def test_a_thinner_foot_and_another_glass_hold_less():
    *_, usual, _ = after()
    thin = SCENE.read(*cold(base_mm=5))
    boro = SCENE.read(*cold(glass="borosilicate"))
    for found in (thin, boro):
        assert abs(found["base_outside_MPa"]) < abs(usual["base_outside_MPa"])
        assert found["stored_energy_J"] < usual["stored_energy_J"]
        assert found["scratch_to_break_um"] > usual["scratch_to_break_um"]


def test_pull_and_squeeze_cancel_across_the_wall():
    settings, state = cold()
    what = flask_of(settings)
    wall = proof_of(what, state.cooling).wall.along[what.middle]
    squeezed = 1e6 * 2 * np.pi * 0.028 * 0.001
    assert np.abs(wall).max() > 1e6
    assert abs(net_force(what, state)) < 1e-6 * squeezed
    # The light that is linear in the stress sums to nothing over the picture as well.
    assert abs(SCENE.read(settings, state)["net_force_N"]) < 1e-3


def test_the_sentence_follows_the_cooling():
    for way, expected in (("air", ["fresh", "soft", "shrinking", "locked"]),
                          ("oven", ["fresh_oven", "even", "calm"])):  # fmt: skip
        settings = make(Settings, {"way": way})
        told = []
        for state in states(SCENE, settings):
            said = SCENE.say(settings, state).id
            if not told or told[-1] != said:
                told.append(said)
            if state.cold:
                break
        assert told == expected


def test_a_test_waits_until_the_flask_is_cold():
    settings = make(Settings, {"test": "scratch"})
    state = SCENE.start(settings)
    assert SCENE.say(settings, state).id == "wait"
    assert not SCENE.read(settings, state)["breaks"]


def test_each_button_does_what_it_says():
    settings, state = cold()
    hit, scratched, whole = (action.apply(settings, state) for action in SCENE.actions)
    assert (hit.test, scratched.test, whole.test) == ("blow", "scratch", "none")


def test_arrows_show_the_squeezed_outside_and_the_pulled_inside():
    settings, state = cold()
    marks = SCENE.view(settings, state).marks
    assert [mark.kind for mark in marks] == ["squeeze", "pull"]
    assert marks[0].x_mm < marks[1].x_mm


def test_the_chart_shows_both_answers_through_the_foot():
    settings, state = cold()
    chart = SCENE.view(settings, state).chart
    full, first = chart.curves
    assert full.y[0] < 0 < full.y[-1]
    assert first.y[0] < 0 < first.y[-1]
    assert SCENE.view(settings, SCENE.start(settings)).chart is None


@pytest.mark.parametrize(
    ("values", "place", "words"),
    [
        ({"base_mm": 90, "length_mm": 80}, "base_mm", "thicker than the piece is long"),
        ({"base_mm": 29}, "base_mm", "walls would cross"),
        ({"wall_mm": 5, "outer_diameter_mm": 34}, "wall_mm", "walls would cross"),
        ({"length_mm": 60}, "length_mm", "too short"),
    ],
)
def test_shapes_that_cannot_be_are_refused(values, place, words):
    with pytest.raises(InputError, match=words) as refusal:
        make(Settings, values)
    assert refusal.value.place == place


def test_the_story_is_paced_to_about_half_a_minute():
    for way in ("air", "oven"):
        settings = make(Settings, {"way": way})
        seconds, before = 0.0, 0.0
        for state in states(SCENE, settings):
            seconds += (state.time_s - before) / SCENE.pace(settings, state)
            before = state.time_s
            if state.cold:
                break
        assert 8 < seconds < 60
