"""The scene `cooling` as a person meets it: sentences beside pictures, points to drag, its pace."""

import itertools
import re

import pytest

from demo_app.scenes.cooling import SCENE
from demo_app.scenes.run import states
from demo_app.scenes.settings import make, settings_of

DARK_NM = 20.0  # at 550 nm, sin^2(pi 20 / 550) = 1.3 % of the light


def _settings(**values):
    return make(SCENE.settings, values)


def _story(settings):
    end = SCENE.seconds(settings)
    for state in states(SCENE, settings):
        yield state
        if state.time_s >= end:
            return


def _peak_nm(settings, state):
    maps = [piece.map for piece in SCENE.view(settings, state).stage.pieces]
    return max(float(one.retardation_nm().max()) for one in maps)


@pytest.mark.parametrize(
    "values",
    [
        {},
        {"look": "face-on"},
        {"thickness_mm": 1},
        {"second_thickness_mm": 4},
        {"second_thickness_mm": 4, "look": "face-on"},
        {"second_thickness_mm": 20, "joined": False},
        {"way": "oven"},
        {"way": "oven", "slow_C_per_h": 600, "path_mm": 100},
        {"way": "oven", "hold_C": 400},
        {"way": "oven", "programme": "proposed", "second_thickness_mm": 20},
        {"way": "oven", "programme": "proposed", "second_thickness_mm": 20, "look": "face-on"},
    ],
)
def test_no_sentence_contradicts_the_picture_beside_it(values):
    settings = _settings(**values)
    for state in _story(settings):
        said = SCENE.say(settings, state)
        words = said.words(SCENE.texts)
        peak = _peak_nm(settings, state)
        if "stays dark" in words:
            assert peak < DARK_NM, words
        if said.id in {"catching_up", "skin_pulled", "joined", "joined_first", "face_joined"}:
            assert peak >= DARK_NM, words
        assert not re.search(r"(pulled|squeezed) with -", words), words


def test_sentences_stay_long_enough_to_be_read():
    settings = _settings()
    told = [(state.time_s, SCENE.say(settings, state).id) for state in _story(settings)]
    stretches = [list(found) for _, found in itertools.groupby(told, lambda one: one[1])]
    starts = [stretch[0][0] for stretch in stretches]
    assert len(starts) == 5
    assert min(b - a for a, b in itertools.pairwise(starts[1:])) > 10


def _handles(settings, state):
    return {point.id: point for point in SCENE.view(settings, state).chart.handles}


def _dragged(settings, state, name, x, y):
    return SCENE.drag(settings, state, name, x, y)


def test_the_oven_has_three_points_and_the_air_none():
    oven, air = _settings(way="oven"), _settings()
    assert list(_handles(oven, SCENE.start(oven))) == ["hold_end", "slow_end", "end"]
    assert not _handles(air, SCENE.start(air))


@pytest.mark.parametrize("programme", ["own", "proposed"])
@pytest.mark.parametrize(
    ("name", "x", "y"), [("hold_end", 0.5, 560), ("slow_end", 2.0, 400), ("end", 6.0, 20)]
)
def test_a_dragged_point_goes_where_it_is_dragged_to(programme, name, x, y):
    settings = _settings(way="oven", programme=programme)
    state = SCENE.start(settings)
    new = _dragged(settings, state, name, x, y)
    assert new.programme == "own"
    point = _handles(new, state)[name]
    # Rates keep three digits: 0.5 % of the hours.
    assert (point.x, point.y) == pytest.approx((x, y), rel=0.005)


def test_a_dragged_point_leaves_the_rates_after_it_alone():
    settings = _settings(way="oven")
    state = SCENE.start(settings)
    new = _dragged(settings, state, "hold_end", 1.0, 555)
    assert (new.hold_C, new.hold_min) == (555, 60)
    assert (new.slow_C_per_h, new.fast_C_per_h) == (50, 600)


FAR = (-1e9, -3.0, 0.0, 0.1, 5.0, 1e9)


@pytest.mark.parametrize("at", [0, 30, 90, 140])
def test_no_drag_is_an_error_and_none_goes_uphill(at):
    settings = _settings(way="oven")
    state = next(itertools.islice(states(SCENE, settings), at, None))
    for name in ("hold_end", "slow_end", "end", "unknown"):
        for x, y in itertools.product(FAR, (-1e9, 20.0, 300.0, 549.6, 1e9)):
            new = _dragged(settings, state, name, x, y)
            heights = [point.y for point in SCENE.view(new, state).chart.handles]
            assert heights == sorted(heights, reverse=True)
            for spec in settings_of(SCENE.settings):
                spec.check(getattr(new, spec.name))


def test_a_point_behind_is_there_no_longer():
    settings = _settings(way="oven")
    past_hold = next(s for s in _story(settings) if s.oven.cooling)
    assert list(_handles(settings, past_hold)) == ["slow_end", "end"]
    assert _dragged(settings, past_hold, "hold_end", 3.0, 500) == settings


def test_orders_changed_before_the_first_step_hold_from_the_start():
    """Nothing has happened yet: the oven need not go from one hold to the other."""
    old, new = _settings(way="oven"), _settings(way="oven", hold_C=580)
    first, other = SCENE.advance(new, SCENE.start(old)), SCENE.advance(new, SCENE.start(new))
    assert first.oven == other.oven
    assert first.history == other.history


@pytest.mark.parametrize(
    "values",
    [
        {},
        {"thickness_mm": 3},
        {"thickness_mm": 25},
        {"way": "oven"},
        {"way": "oven", "programme": "proposed", "thickness_mm": 4},
    ],
)
def test_at_its_pace_the_story_takes_half_a_minute(values):
    """Readable, and over before the audience is lost: 15 to 45 s by itself."""
    settings = _settings(**values)
    wall = 0.0
    for before, after in itertools.pairwise(_story(settings)):
        pace = SCENE.pace(settings, before)
        assert pace in {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000}
        wall += (after.time_s - before.time_s) / pace
    assert 15 < wall < 45
