"""Retarders behind each other: where the sum of integrals is exact, and where it stops being so."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from optics_reference import Mueller, Stokes, ciede2000

from demo_app.optics.colour import XYZ_TO_RGB, encode, white_balance
from demo_app.optics.instrument import Instrument, intensity
from demo_app.optics.jones import equivalent, sliced_intensity, sum_error_nm
from demo_app.optics.light_data import lamp

GREEN = 560.0


def walls(nm, angles_deg):
    angles = 2 * np.radians(angles_deg)
    return nm * np.cos(angles), nm * np.sin(angles)


def by_sum(v1, v2, wavelength, instrument):
    one, two = v1.sum(axis=0), v2.sum(axis=0)
    axis = np.degrees(np.arctan2(two, one)) / 2
    return intensity(instrument, np.hypot(one, two), axis, np.array([wavelength]))[..., 0]


@given(st.floats(0, 1500), st.floats(-90, 90), st.floats(-90, 90), st.floats(0, 180))
def test_one_slice_is_the_instrument_itself(nm, axis, polarizer, analyser):
    v1, v2 = walls(nm, np.array([axis]))
    ours = sliced_intensity(v1, v2, GREEN, polarizer, analyser)
    theirs = by_sum(v1, v2, GREEN, Instrument(polarizer_deg=polarizer, analyser_deg=analyser))
    assert ours == pytest.approx(float(theirs), abs=1e-11)


def test_the_product_is_that_of_py_pol():
    rng = np.random.default_rng(7)
    nm, angles = rng.uniform(0, 400, 6), rng.uniform(-90, 90, 6)
    v1, v2 = nm * np.cos(2 * np.radians(angles)), nm * np.sin(2 * np.radians(angles))
    light = np.asarray(Stokes().linear_light(azimuth=np.radians(20)).M).reshape(4)
    for retardation, angle in zip(nm, angles, strict=True):
        plate = Mueller().retarder_linear(
            ret=2 * np.pi * retardation / GREEN, azimuth=np.radians(angle)
        )
        light = np.asarray(plate.M)[..., 0] @ light
    analyser = np.asarray(Mueller().diattenuator_perfect(azimuth=np.radians(95)).M)[..., 0]
    theirs = (analyser @ light)[0]
    assert sliced_intensity(v1, v2, GREEN, 20, 75) == pytest.approx(theirs, abs=1e-12)


@given(
    st.lists(st.floats(-800, 800), min_size=1, max_size=8), st.floats(-90, 90), st.floats(-90, 90)
)
def test_the_sum_is_exact_where_the_axis_is_fixed(slices, axis, polarizer):
    direction = 2 * np.radians(axis)
    v1, v2 = np.array(slices) * np.cos(direction), np.array(slices) * np.sin(direction)
    ours = sliced_intensity(v1, v2, GREEN, polarizer)
    assert ours == pytest.approx(
        float(by_sum(v1, v2, GREEN, Instrument(polarizer_deg=polarizer))), abs=1e-10
    )


def furthest_colour(nm, between_deg):
    """Largest CIEDE2000 of the sum for two equal walls, over all turns of the pair, D65."""
    light = lamp("daylight")
    turns = np.arange(0, 180, 2.5)
    v1, v2 = walls(nm, np.stack([turns, turns + between_deg]))
    exact = np.stack([sliced_intensity(v1, v2, w) for w in light.wavelength_nm], axis=-1)
    summed = np.stack([by_sum(v1, v2, w, Instrument()) for w in light.wavelength_nm], axis=-1)
    to_rgb = light.weights @ (XYZ_TO_RGB @ white_balance(light.white)).T
    signals = [encode(np.clip(seen @ to_rgb, 0, 1)) for seen in (exact, summed)]
    return ciede2000(*signals).max()


@pytest.mark.parametrize("between", [10, 20, 45, 75])
def test_the_sum_holds_up_to_30_nm_a_wall(between):
    assert furthest_colour(30, between) < 1.55


def test_the_sum_fails_at_100_nm_a_wall():
    assert furthest_colour(100, 10) > 5
    assert furthest_colour(100, 45) > 20
    assert furthest_colour(100, 90) < 1e-6


@pytest.mark.parametrize("wavelength", [450.0, 560.0, 650.0])
def test_the_error_of_the_sum_grows_with_the_third_power(wavelength):
    errors = [
        sum_error_nm(*walls(nm, np.array([0.0, 30.0])), wavelength) for nm in (4.0, 8.0, 16.0)
    ]
    # The leading term (of Baker, Campbell and Hausdorff) of second order is a turn, not a retarder.
    orders = np.log2(np.array(errors[1:]) / errors[:-1])
    np.testing.assert_allclose(orders, 3, atol=0.1)


@given(
    st.lists(st.tuples(st.floats(0, 45), st.floats(-90, 90)), min_size=1, max_size=6),
    st.floats(-90, 90),
    st.floats(0, 180),
)
def test_the_equivalent_retarder_and_turn_act_as_the_slices(slices, polarizer, analyser):
    nm, angles = np.array(slices).T
    v1, v2 = nm * np.cos(2 * np.radians(angles)), nm * np.sin(2 * np.radians(angles))
    one, two, turn = equivalent(v1, v2, GREEN)
    ours = sliced_intensity(v1, v2, GREEN, polarizer, analyser)
    # Light turned by an angle behind the retarder meets an analyser turned back by it.
    theirs = sliced_intensity(
        np.array([one]), np.array([two]), GREEN, polarizer, analyser - float(turn)
    )
    assert float(ours) == pytest.approx(float(theirs), abs=1e-9)


def test_slices_come_in_any_shape():
    rng = np.random.default_rng(8)
    v1, v2 = rng.normal(0, 50, (2, 5, 3, 4))
    all_at_once = sliced_intensity(v1, v2, GREEN)
    assert all_at_once.shape == (3, 4)
    assert all_at_once[1, 2] == pytest.approx(
        float(sliced_intensity(v1[:, 1, 2], v2[:, 1, 2], GREEN))
    )
