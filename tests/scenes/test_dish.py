"""The scene dish: orders of colour, their causes, warmth that undoes them, the same in glass."""

import itertools

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.content.pictures import draw
from demo_app.optics.instrument import Instrument
from demo_app.scenes.catalogue import load
from demo_app.scenes.dish_parts import picture
from demo_app.scenes.dish_parts.settings import made
from demo_app.scenes.run import state_at, states
from demo_app.scenes.settings import change, make

SCENE = load("dish")


@pytest.fixture(scope="module")
def cold():
    settings = SCENE.settings()
    return settings, state_at(SCENE, settings)


@pytest.fixture(scope="module")
def found(cold):
    return SCENE.read(*cold)


def warmed(degrees, minutes=20):
    settings = make(SCENE.settings, {"warm_C": degrees, "warm_min": minutes})
    state = state_at(SCENE, settings)
    return SCENE.read(settings, state), SCENE.say(settings, state).id


def test_several_orders_of_colour_against_the_grey_of_glass(found):
    assert found["retardation_peak_nm"] > 1100
    assert found["orders"] == pytest.approx(found["retardation_peak_nm"] / 551)
    # First-order grey and white end near 280 nm (Michel-Levy chart).
    assert found["as_glass_retardation_nm"] < 280


def test_most_of_the_colour_is_frozen_stretch(found):
    # Commonly found in moulded polystyrene: flow outweighs thermal stress (Wales 1976, memory).
    assert 50 < found["flow_share_pct"] < 100
    assert found["flow_peak_nm"] > found["stress_peak_nm"] > 50


def test_nobody_holds_the_dish(found):
    assert abs(found["net_force_N"]) < 1e-6
    assert found["tension_MPa"] > 1
    assert found["compression_MPa"] < -1


def test_the_colours_come_in_order_from_white_to_the_second_green(cold):
    # Interference colours by retardation (Sorensen 2013; D65): 250 white, 400 to 480 orange, 551
    # violet, 600 to 650 blue, 750 green.
    settings, state = cold
    stage = SCENE.view(settings, state).stage
    shown = draw(stage, (1150, 805), Instrument(quarter_wave=True)).astype(int)
    rows, columns = picture.shares(made(settings), state.instant, 1, 1).whole.shape[1:]
    size = np.hypot(*picture.shares(made(settings), state.instant, 1, 1).whole)
    for low, high, test in (
        (430, 470, lambda b, g, r: r > g > b),
        (600, 650, lambda b, g, r: b > g > r),
        (740, 760, lambda b, g, r: g > b and g > r),
    ):
        hits = np.argwhere((size > low) & (size < high))
        right = 0
        for row, column in hits:
            x = 575 + (column / (columns - 1) - 0.5) * 1000
            y = 402.5 - (row / (rows - 1) - 0.5) * 700
            right += test(*shown[int(np.clip(y, 0, 804)), int(np.clip(x, 0, 1149)), :3])
        assert hits.shape[0] > 10
        assert right > 0.8 * hits.shape[0]


def test_before_the_melt_comes_it_is_dark_and_then_it_fills():
    settings = SCENE.settings()
    first = SCENE.start(settings)
    assert draw(SCENE.view(settings, first).stage, (192, 108))[..., :3].max() == 0
    filled = [
        SCENE.trace(settings, state)["filled_pct"]
        for state in itertools.islice(states(SCENE, settings), 26)
    ]
    assert filled[0] == 0
    assert (np.diff(filled) >= 0).all()
    assert filled[13] == pytest.approx(50, abs=8)
    assert filled[-1] > 99.9


def test_the_front_is_drawn_while_it_moves():
    settings = SCENE.settings()
    state = next(itertools.islice(states(SCENE, settings), 10, None))
    fronts = [line for line in SCENE.view(settings, state).outlines if line.kind == "cut"]
    assert len(fronts) == 1
    assert np.hypot(np.ptp(fronts[0].x_mm), np.ptp(fronts[0].y_mm)) > 10


def test_warmth_below_the_transition_leaves_the_molecules():
    found, said = warmed(90)
    assert found["stretch_left_pct"] == pytest.approx(100, abs=0.1)
    assert said == "below"


def test_the_colours_go_above_the_transition():
    left = [warmed(degrees)[0]["stretch_left_pct"] for degrees in (100, 110, 115, 120, 130)]
    assert left[0] > 99
    assert (np.diff(left) < 0).all()
    assert left[-1] < 1
    found, said = warmed(130)
    assert found["colour_left_pct"] < 1
    assert found["stress_left_pct"] < 1
    assert said == "gone"


def test_longer_warmth_does_what_hotter_does():
    short, long = (warmed(113, minutes)[0]["stretch_left_pct"] for minutes in (5, 60))
    assert long < short


def test_warming_the_cold_dish_live(cold):
    settings, state = cold
    hot = change(settings, warm_C=130)
    later = SCENE.advance(hot, state)
    assert later.stretch_left < 1
    assert later.heat_left < 1e-3
    assert SCENE.read(hot, later)["retardation_peak_nm"] == state.peak_nm


def test_hotter_melt_freezes_less_stretch():
    cool, hot = (
        SCENE.read(settings, state_at(SCENE, settings))["flow_peak_nm"]
        for settings in (make(SCENE.settings, {"melt_C": t}) for t in (190, 240))
    )
    assert hot < 0.7 * cool


def test_an_even_dish_has_no_stress_of_thin_and_thick():
    settings = make(SCENE.settings, {"rib_mm": 2, "fill_s": 0.2})
    even = SCENE.read(settings, state_at(SCENE, settings))
    thick = make(SCENE.settings, {"rib_mm": 4})
    uneven = SCENE.read(thick, state_at(SCENE, thick))
    assert even["stress_peak_nm"] < 0.1 * uneven["stress_peak_nm"]
    assert even["as_glass_energy_J"] < 1e-6 < uneven["as_glass_energy_J"]
    assert even["as_glass_survives"]


def test_the_corners_of_an_even_dish_with_a_middle_gate_are_hardly_different():
    settings = make(SCENE.settings, {"gate": "middle"})
    said = SCENE.read(settings, state_at(SCENE, settings))["weak_corner"]
    assert said.split(",")[0] in {"lower left", "lower right", "upper left", "upper right"}


@pytest.mark.parametrize(
    "values", [{"thickness_mm": 1, "fill_s": 5, "melt_C": 180}, {"rib_mm": 1, "fill_s": 5}]
)
def test_a_gap_that_freezes_shut_is_refused(values):
    with pytest.raises(InputError, match="freezes shut") as refused:
        make(SCENE.settings, {**values, "mould_C": 20})
    assert "write at most" in str(refused.value)
    assert refused.value.place == "fill_s"
