"""The scene touch: what it must show, and what a presenter can do with the warm tip."""

import dataclasses
import itertools

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.scenes.run import state_at, states
from demo_app.scenes.settings import make
from demo_app.scenes.touch import HEIGHT_MM, SCENE, Settings, point, read, say, seconds, view

DEFAULT = Settings()


def after(settings, time_s):
    return state_at(SCENE, settings, time_s)


def led(settings, places, state=None):
    """State after one step with the tip at each of `places` (None: lifted)."""
    state = SCENE.start(settings) if state is None else state
    for place in places:
        state = SCENE.advance(settings, point(settings, state, place))
    return state


def retardation(settings, state):
    (piece,) = view(settings, state).stage.pieces
    return piece.map, piece.map.retardation_nm()


def at(found, values, x_mm, y_mm):
    column = int(np.argmin(np.abs(found.along_mm - x_mm)))
    row = int(np.argmin(np.abs(found.across * HEIGHT_MM / 2 - y_mm)))
    return float(values[row, column])


def test_the_default_story():
    story = state_at(SCENE, DEFAULT)
    found = read(DEFAULT, story)
    # A rise of about 50 K is grey to white.
    assert found["spot_C"] == pytest.approx(70.0, abs=3.0)
    assert 100 < found["retardation_peak_nm"] < 300
    # 36 to 46 s in 3 to 10 mm glass for a spot that was put there at once (see the closed form in
    # the sheet's tests); it has spread a little by the time that the tip is lifted.
    assert 40 < found["fade_half_s"] < 50
    assert found["crack_runs"] is False
    # Squeezed inside, pulled around, less hard.
    assert found["compression_MPa"] < -2 * found["tension_MPa"] < 0
    assert say(DEFAULT, story).id == "fading"


def test_a_fingers_warmth_is_faint():
    # 0.298 E alpha T C h from the closed form of a Gaussian spot: 30 nm for 10 K in 6 mm.
    settings = make(Settings, {"power_W": 7.5})
    found = read(settings, after(settings, settings.seconds))
    share = found["retardation_peak_nm"] / (found["spot_C"] - 20.0)
    assert share == pytest.approx(2.98, rel=0.05)


def test_there_is_no_half_time_before_it():
    assert read(DEFAULT, after(DEFAULT, 2.0))["fade_half_s"] is None
    assert read(DEFAULT, after(DEFAULT, 30.0))["fade_half_s"] is None


def test_it_fades_more_slowly_the_wider_the_spot():
    half = {}
    for spot in (10.0, 20.0, 30.0):
        settings = make(Settings, {"spot_mm": spot, "seconds": 0.5, "power_W": 20})
        half[spot] = read(settings, state_at(SCENE, settings))["fade_half_s"]
    # The diameter squared, less what the air takes in the longer time.
    assert 3.2 < half[20.0] / half[10.0] < 4.1
    assert 1.7 < half[30.0] / half[20.0] < 2.3


def test_the_stress_returns_to_zero():
    settings = make(Settings, {"thickness_mm": 3, "spot_mm": 10, "power_W": 10})
    late = after(settings, 2500.0)
    assert 1e9 * late.retardation < 0.5
    assert np.abs(late.stress).max() < 0.05e6
    assert say(settings, late).id == "gone"


def test_petals_with_a_dark_cross():
    state = after(DEFAULT, 5.0)
    found, nm = retardation(DEFAULT, state)
    bright = at(found, nm, 13.0, 0.0)
    assert at(found, nm, 0.0, 0.0) < 0.05 * bright
    # Between crossed polarizers along the axes' diagonals only v1 lights up.
    for x, y in itertools.product((9.0, -9.0), repeat=2):
        assert abs(at(found, found.v1, x, y)) < 0.1 * bright
        assert abs(at(found, found.v2, x, y)) > 0.5 * bright


def test_the_picture_follows_the_tip():
    state = led(DEFAULT, [(40.0, 20.0)] * 30)
    found, nm = retardation(DEFAULT, state)
    row, column = np.unravel_index(nm.argmax(), nm.shape)
    away = np.hypot(found.along_mm[column] - 40.0, found.across[row] * HEIGHT_MM / 2 - 20.0)
    assert 8 < away < 20


def test_a_letter_stays_where_it_was_written():
    down = [(-30.0, 30.0 - 2.0 * k) for k in range(30)]
    across = [(-30.0 + 2.0 * k, -30.0) for k in range(30)]
    settings = make(Settings, {"spot_mm": 12, "power_W": 60})
    state = led(settings, [*down, *across, None])
    rise = state.rise.reshape(81, 49)
    column, row = 81 // 2 - 12, 49 // 2
    assert rise[column, row] > 0.5 * rise.max()
    assert rise[-column, row] < 0.05 * rise.max()


def test_a_quick_stroke_leaves_no_gaps():
    state = led(make(Settings, {"spot_mm": 10}), [(-60.0, 0.0), (60.0, 0.0)])
    line = state.rise.reshape(81, 49)[20:61, 24]
    assert line.min() > 0.5 * np.median(line)


def test_a_lifted_tip_does_not_slide():
    state = led(DEFAULT, [(-60.0, 0.0), None, (60.0, 0.0)])
    rise = state.rise.reshape(81, 49)
    assert rise[40, 24] < 0.01 * rise.max()


def test_a_tip_beside_the_plate_warms_nothing():
    assert led(DEFAULT, [(500.0, 0.0)] * 3).rise.max() < 1e-9


def test_mirrored_strokes_give_mirrored_pictures():
    right, left = (led(DEFAULT, [(side * 30.0, 10.0)] * 5) for side in (1, -1))
    one, other = (retardation(DEFAULT, state)[0] for state in (right, left))
    assert np.abs(one.v1 - other.v1[:, ::-1]).max() < 1e-3
    assert np.abs(one.v2 + other.v2[:, ::-1]).max() < 1e-3


def test_twice_the_heat_twice_the_stress():
    once, twice = (after(make(Settings, {"power_W": power}), 3.0).stress for power in (10, 20))
    assert np.abs(twice - 2 * once).max() < 1e-9 * np.abs(twice).max()


def test_the_same_strokes_give_the_same_bytes():
    places = [(10.0, 5.0), (12.0, 6.0), None, (0.0, 0.0)]
    settings = make(Settings, {"crack_mm": 10})
    first, second = (led(settings, places).stress.tobytes() for _ in range(2))
    assert first == second


def test_steps_are_short_while_it_is_touched_and_long_when_it_rests():
    run = [state.time_s for state in itertools.islice(states(SCENE, DEFAULT), 500)]
    steps = np.diff(run)
    assert steps[:150] == pytest.approx(1 / 30)
    assert steps[-1] > 1.0
    assert (np.diff(steps) > -1e-9).all()


def test_an_old_crack_runs_and_stops():
    settings = make(Settings, {"crack_mm": 30})
    story = state_at(SCENE, settings)
    found = read(settings, story)
    assert found["crack_runs"] is True
    # It stops below the squeezed middle, 60 mm from the edge.
    assert 45 < found["crack_length_mm"] < 60
    # Followed step by step, K hardly passes K_IC.
    assert 1.0 <= found["intensity_ratio"] < 1.05
    assert story.ratio < 1.0
    assert say(settings, story).id == "crack_ran"


def test_the_crack_lets_the_stress_go():
    with_crack, without = make(Settings, {"crack_mm": 30}), DEFAULT
    state = after(with_crack, 5.0)
    left, right = view(with_crack, state).stage.pieces
    (whole,) = view(without, after(without, 5.0)).stage.pieces
    # Above the cut faces, 20 mm below the middle, the pull across them is gone.
    assert state.ran_at_s is not None
    assert np.isfinite(left.map.v1).all()
    assert np.isfinite(right.map.v1).all()
    # Edge to edge: the window draws no line between them, which would look like a crack.
    assert left.map.along_mm[-1] == right.map.along_mm[0]
    middle = whole.map.v1.shape[1] // 2
    row = int(np.argmin(np.abs(whole.map.across * HEIGHT_MM / 2 + 40.0)))
    assert whole.map.v1[row, middle] > 15.0
    for beside in (left.map.v1[row, -1], right.map.v1[row, 0]):
        assert beside < 0.5 * whole.map.v1[row, middle]


def test_a_short_crack_waits_until_the_warmth_comes_near():
    settings = make(Settings, {"crack_mm": 10})
    assert read(settings, state_at(SCENE, settings, 5.0))["crack_runs"] is False
    near = led(settings, [(0.0, -25.0)] * 150)
    assert near.ran_at_s is not None
    assert 0.010 < near.crack < 0.035
    assert say(settings, near).id == "crack_ran"


def test_the_crack_is_drawn_where_it_is():
    settings = make(Settings, {"crack_mm": 25})
    (line,) = view(settings, SCENE.start(settings)).outlines
    assert line.kind == "crack"
    assert line.x_mm.tolist() == pytest.approx([0.0, 0.0])
    assert line.y_mm.tolist() == pytest.approx([-60.0, -35.0])
    assert view(DEFAULT, SCENE.start(DEFAULT)).outlines == ()


def test_arrows_name_squeeze_and_pull():
    marks = {mark.kind: mark for mark in view(DEFAULT, after(DEFAULT, 5.0)).marks}
    assert set(marks) == {"squeeze", "pull"}
    assert np.hypot(marks["squeeze"].x_mm, marks["squeeze"].y_mm) < 1.0
    pull = marks["pull"]
    assert 12 < np.hypot(pull.x_mm, pull.y_mm) < 30
    # The pull goes around the spot.
    around = np.degrees(np.arctan2(pull.y_mm, pull.x_mm)) + 90 - pull.angle_deg
    assert abs((around + 90) % 180 - 90) < 5


def test_without_heat_it_stays_dark():
    settings = make(Settings, {"power_W": 0})
    story = state_at(SCENE, settings)
    assert story.retardation == 0
    assert read(settings, story)["fade_half_s"] is None
    assert say(settings, story).id == "cold"


@pytest.mark.parametrize(
    ("values", "word"),
    [
        ({"thickness_mm": 0}, "thickness_mm"),
        ({"spot_mm": "wide"}, "spot_mm"),
        ({"crack_mm": 60}, "crack_mm"),
        ({"power_W": float("nan")}, "power_W"),
        ({"glass": "polystyrene"}, "glass"),
    ],
)
def test_bad_settings_are_told_in_words(values, word):
    with pytest.raises(InputError, match=f"^{word}: .*; write"):
        make(Settings, values)


def test_a_place_that_is_no_place_is_refused():
    with pytest.raises(InputError, match="point: the tip cannot be at nan, 0; give"):
        point(DEFAULT, SCENE.start(DEFAULT), (float("nan"), 0.0))


def test_a_state_is_frozen_and_the_story_ends():
    state = SCENE.start(DEFAULT)
    with pytest.raises(dataclasses.FrozenInstanceError):
        state.time_s = 1.0
    assert 60 < seconds(DEFAULT) < 600


def test_a_plate_cut_all_the_way_is_told_and_drawn():
    settings = make(Settings, {"crack_mm": 30})
    state = after(settings, 5.0)
    parted = dataclasses.replace(state, crack=1e-3 * HEIGHT_MM)
    assert say(settings, parted).id == "parted"
    shown = view(settings, parted)
    assert shown.outlines[0].y_mm.tolist() == pytest.approx([-60.0, 60.0])
    # Each half balances itself now (mean-stress theorem).
    for piece in shown.stage.pieces:
        weight = np.outer(np.gradient(piece.map.across), np.gradient(piece.map.along_mm))
        total = (weight * piece.map.v1).sum()
        assert abs(total) < 0.03 * (weight * np.abs(piece.map.v1)).sum()
    halves = view(settings, state).stage.pieces
    assert abs(halves[0].map.v1 - shown.stage.pieces[0].map.v1).max() > 1.0


@pytest.mark.parametrize("values", [{}, {"power_W": 5}, {"seconds": 0.5}])
def test_no_sentence_contradicts_the_picture_beside_it(values):
    """Dark and faint below 20 nm: at 550 nm 1.3 % of the light."""
    settings = make(SCENE.settings, values)
    story = itertools.takewhile(lambda s: s.time_s < 60, states(SCENE, settings))
    for state in itertools.islice(story, 0, None, 7):
        said = SCENE.say(settings, state).id
        peak = max(
            float(p.map.retardation_nm().max()) for p in SCENE.view(settings, state).stage.pieces
        )
        if said in {"cold", "gone", "faint"}:
            assert peak < 20
        if said == "just_let_go":
            assert peak > 19


def test_the_ring_of_the_tip_is_where_it_touches():
    settings = make(SCENE.settings, {"spot_mm": 30})
    start = SCENE.start(settings)
    (ring,) = [m for m in SCENE.view(settings, start).marks if m.kind == "touch"]
    assert (ring.x_mm, ring.y_mm, ring.size_mm) == (0, 0, 30)
    led = SCENE.point(settings, start, (40.0, -20.0))
    (ring,) = [m for m in SCENE.view(settings, led).marks if m.kind == "touch"]
    assert (ring.x_mm, ring.y_mm) == pytest.approx((40, -20))
    lifted = SCENE.point(settings, led, None)
    assert not [m for m in SCENE.view(settings, lifted).marks if m.kind == "touch"]
