"""sRGB, white balance and CIELAB against colour-science 0.4.7, and the gamut rule's invariants."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays
from optics_reference import colour

from demo_app.optics.colour import (
    LUMINANCE,
    SCREEN_WHITE,
    XYZ_TO_RGB,
    decode,
    desaturate,
    encode,
    lightness_chroma_hue,
    white_balance,
)
from demo_app.optics.light_data import lamp

LIGHT = arrays(float, (3,), elements=st.floats(-0.5, 3, width=32))


def test_transfer_function_is_that_of_colour_science():
    linear = np.linspace(0, 1, 5001)
    np.testing.assert_allclose(encode(linear), colour.cctf_encoding(linear, "sRGB"), atol=1e-12)
    np.testing.assert_allclose(decode(encode(linear)), linear, atol=1e-6)


def test_matrix_is_that_of_the_standard():
    np.testing.assert_allclose(
        XYZ_TO_RGB, colour.RGB_COLOURSPACES["sRGB"].matrix_XYZ_to_RGB, atol=5e-5
    )


@pytest.mark.parametrize("name", ["daylight", "incandescent", "white-led"])
def test_white_balance_is_bradfords(name):
    white = lamp(name).white
    theirs = colour.adaptation.matrix_chromatic_adaptation_VonKries(
        white, SCREEN_WHITE, transform="Bradford"
    )
    np.testing.assert_allclose(white_balance(white), theirs, atol=1e-10)
    np.testing.assert_allclose(XYZ_TO_RGB @ white_balance(white) @ white, 1, atol=1e-12)


@given(LIGHT)
def test_desaturated_light_fits_and_keeps_its_luminance(linear):
    shown = desaturate(linear)
    assert shown.min() >= 0
    assert shown.max() <= 1
    np.testing.assert_allclose(shown @ LUMINANCE, np.clip(linear @ LUMINANCE, 0, 1), atol=1e-9)


@given(LIGHT)
def test_desaturated_light_lies_between_grey_and_itself(linear):
    shown, grey = desaturate(linear), np.clip(linear @ LUMINANCE, 0, 1)
    if grey == linear @ LUMINANCE:
        offset, original = shown - grey, linear - grey
        np.testing.assert_allclose(np.cross(offset, original), 0, atol=1e-9)
        assert offset @ original >= -1e-9


def test_colours_within_the_gamut_stay():
    inside = np.random.default_rng(1).uniform(0.01, 0.99, (200, 3))
    np.testing.assert_allclose(desaturate(inside), inside, atol=1e-12)


def test_lab_is_that_of_colour_science():
    xyz = np.random.default_rng(2).uniform(0, 1, (200, 3))
    white = np.array([0.95047, 1.0, 1.08883])
    lab = colour.XYZ_to_Lab(xyz, colour.XYZ_to_xy(white))
    chroma = np.hypot(lab[:, 1], lab[:, 2])
    hue = np.degrees(np.arctan2(lab[:, 2], lab[:, 1])) % 360
    ours = lightness_chroma_hue(xyz, white)
    np.testing.assert_allclose(ours, [lab[:, 0], chroma, hue], rtol=1e-6, atol=1e-6)
