"""Calm pictures: below the limits, and unchanged where they already are."""

import numpy as np
import pytest
from test_stripes import grating

from demo_app.optics.calm import RISE, calmer, dimmed, first, still
from demo_app.optics.flashes import flashes, sampled
from demo_app.optics.limits import LIMITS
from demo_app.optics.luminance import decoded, luminance
from demo_app.optics.stripes import lasting, stripes

FPS = 60


def grey(value, size=(96, 54)):
    picture = np.full((size[1], size[0], 4), 255, np.uint8)
    picture[..., :3] = value
    return picture


def calmed(pictures, fps=FPS):
    """Pictures as calm mode shows them."""
    shown, calm, out = None, None, []
    for number, picture in enumerate(pictures):
        if calm is None:
            shown, calm = first(picture.copy(), 0.0)
        else:
            shown, calm, _ = calmer(picture.copy(), number / fps, calm)
        out.append(shown.copy())
    return out


def test_a_still_grating_is_dimmed_below_the_limit():
    picture = grating(12)
    out, factor = still(picture)
    assert stripes(picture).exceed()
    assert not stripes(out).exceed()
    assert stripes(out).lightest_cd_m2 == pytest.approx(LIMITS.bright_cd_m2, rel=0.06)
    # As by a grey filter: all light times one factor, to within a byte's step.
    wanted = factor * luminance(picture)
    np.testing.assert_allclose(luminance(out), wanted, atol=0.005)


@pytest.mark.parametrize("pairs", [2, 4])
def test_a_picture_below_the_limits_stays_as_it_is(pairs):
    picture = grating(pairs)
    out, factor = still(picture)
    assert factor == 1
    assert out is picture
    assert dimmed(picture, 1.0) is picture


def test_what_stands_still_comes_out_byte_for_byte():
    picture = grating(4)
    for out in calmed([picture] * 5):
        np.testing.assert_array_equal(out, picture)


def test_a_slow_change_comes_out_byte_for_byte():
    # A tenth of full light in a second is a quarter of what calm mode allows.
    codes = [
        round(float(np.interp(0.1 + 0.1 * k / FPS, decoded(), np.arange(256)))) for k in range(90)
    ]
    for out, code in zip(calmed([grey(code) for code in codes]), codes, strict=True):
        assert abs(int(out[0, 0, 0]) - code) <= 1
    np.testing.assert_array_equal(calmed([grey(codes[0])] * 3)[-1], grey(codes[0]))


def test_a_sudden_change_arrives_in_the_end():
    out = calmed([grey(0)] + [grey(230)] * 240)
    light = np.array([decoded()[picture[0, 0, 0]] for picture in out])
    assert np.diff(light).min() >= 0
    assert light[60] <= RISE * 1.05
    np.testing.assert_array_equal(out[-1], grey(230))


@pytest.mark.parametrize("hertz", [2, 3, 4, 5, 7.5, 10, 15, 30])
@pytest.mark.parametrize(("low", "high"), [(0, 255), (0, 200), (90, 255)])
def test_no_flicker_gets_through(hertz, low, high):
    on = [(2 * hertz * k / FPS) % 2 >= 1 for k in range(3 * FPS)]
    pictures = [grey(high if lit else low) for lit in on]
    times = np.arange(len(pictures)) / FPS
    assert flashes(times, np.array([sampled(p) for p in pictures])).exceed() == (hertz > 3)
    assert not flashes(times, np.array([sampled(p) for p in calmed(pictures)])).exceed()


def test_stripes_that_come_suddenly_go_below_the_limit_in_time():
    pictures = [grey(200, (480, 270))] * 10 + [grating(12)] * 60
    out = calmed(pictures)
    found = [(k / FPS, stripes(picture)) for k, picture in enumerate(out)]
    assert lasting([(k / FPS, stripes(picture)) for k, picture in enumerate(pictures)])
    assert not lasting(found)
    assert not found[-1][1].exceed()
