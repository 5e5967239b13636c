"""Bright stripes against the published figures; sources in `demo_app.optics.limits`."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from demo_app.optics.colour import encode
from demo_app.optics.limits import LIMITS, Limits, screen_luminance
from demo_app.optics.stripes import Stripes, lasting, stripes


def grating(pairs, turned_deg=0.0, size=(480, 270), bright=1.0, dark=0.0, share=1.0):
    """Sine grating of `pairs` light-dark pairs over the width, in the left `share` of a picture."""
    width, height = size
    y, x = np.mgrid[:height, :width] + 0.5
    angle = np.radians(turned_deg)
    along = (x * np.cos(angle) + y * np.sin(angle)) / width
    light = dark + (bright - dark) * (1 - np.cos(2 * np.pi * pairs * along)) / 2
    picture = np.zeros((height, width, 4), np.uint8)
    picture[..., :3] = np.rint(255 * encode(light))[..., None]
    picture[:, round(share * width) :, :3] = 0
    picture[..., 3] = 255
    return picture


@pytest.mark.parametrize("turned", [0, 30, 45, 60, 90, 135])
def test_a_bright_grating_alarms_in_any_orientation(turned):
    found = stripes(grating(16, turned))
    assert found.exceed()
    assert found.area > 0.9
    assert found.lightest_cd_m2 == pytest.approx(LIMITS.screen_cd_m2, rel=0.05)


@pytest.mark.parametrize(("pairs", "alarms"), [(3, False), (5, False), (6, True), (12, True)])
def test_more_than_five_pairs(pairs, alarms):
    # Harding et al. 2005: no more than five light-dark pairs.
    found = stripes(grating(pairs))
    assert found.exceed() == alarms
    if pairs >= 5:
        assert found.pairs == pairs


@pytest.mark.parametrize(("share", "alarms"), [(0.2, False), (0.35, True)])
def test_a_quarter_of_the_screen(share, alarms):
    # Wilkins et al. 2005: more than one fourth of the screen.
    found = stripes(grating(40, share=share))
    assert found.pairs > LIMITS.pairs
    assert found.area == pytest.approx(share, abs=0.03)
    assert found.exceed() == alarms


def test_a_picture_that_takes_a_part_of_the_screen_counts_for_that_part():
    assert stripes(grating(12)).exceed()
    assert not stripes(grating(12), screen_share=0.2).exceed()


@pytest.mark.parametrize(("bright", "alarms"), [(0.24, False), (0.27, True)])
def test_fifty_candela(bright, alarms):
    # A quarter of 200 cd/m2 is the published 50 cd/m2.
    assert stripes(grating(12, bright=bright)).exceed() == alarms


def test_faint_contrast_is_no_stripe():
    # Wilkins 1980, from memory: below a tenth of Michelson contrast nothing is provoked.
    assert stripes(grating(12, bright=0.50, dark=0.45)).pairs == 0
    assert stripes(grating(12, bright=0.50, dark=0.35)).exceed()


def test_plain_pictures_have_none():
    assert stripes(np.zeros((270, 480, 4), np.uint8)) == Stripes(0, 0.0, 0.0)
    assert stripes(np.full((270, 480, 4), 255, np.uint8)).area == 0


def test_half_a_second():
    striped, plain = stripes(grating(12)), Stripes(0, 0.0, 0.0)
    assert lasting([(0.0, striped), (0.4, striped), (0.45, plain), (0.9, striped)]) == ()
    assert lasting([(0.0, striped), (0.3, striped), (0.6, striped)]) == (0.6,)


@settings(max_examples=20, deadline=None)
@given(st.integers(0, 2**32 - 1), st.floats(0.1, 0.9))
def test_dimmer_is_never_worse(seed, factor):
    rng = np.random.default_rng(seed)
    picture = grating(rng.integers(2, 30), rng.uniform(0, 180), size=(240, 136))
    found = stripes(picture)
    dim = stripes(picture, Limits(screen_cd_m2=LIMITS.screen_cd_m2 * factor))
    assert dim.lightest_cd_m2 <= found.lightest_cd_m2 + 1e-6


def test_projector_luminance():
    # 4000 lm on 5.1 m2 are 784 lx; a matt white surface returns 1/pi of that.
    assert screen_luminance(4000, 3.0, 1.7) == pytest.approx(784.3 / np.pi, rel=1e-3)
