"""Flashes counted as WCAG 2.2 defines them in 2.3.1."""

import numpy as np
import pytest

from demo_app.optics.flashes import flashes, sampled
from demo_app.optics.limits import LIMITS

FPS = 60


def flicker(hertz, first, second, seconds=2.0, share=1.0):
    """Linear light that alternates between two colours, in the left `share` of the picture."""
    times = np.arange(round(seconds * FPS)) / FPS
    light = np.zeros((len(times), 27, 48, 3), np.float32)
    on = (np.floor(2 * hertz * times + 1e-6) % 2).astype(bool)
    light[:] = first
    light[on, :, : round(share * 48)] = second
    return times, light


BLACK, WHITE, RED = (0, 0, 0), (1, 1, 1), (1, 0, 0)


@pytest.mark.parametrize(("hertz", "alarms"), [(1, False), (3, False), (5, True), (12, True)])
def test_more_than_three_in_a_second(hertz, alarms):
    found = flashes(*flicker(hertz, BLACK, WHITE))
    assert found.exceed() == alarms
    assert found.general == pytest.approx(hertz, abs=1)


def test_a_tenth_of_the_luminance():
    assert flashes(*flicker(6, (0.3, 0.3, 0.3), (0.41, 0.41, 0.41))).exceed()
    assert flashes(*flicker(6, (0.3, 0.3, 0.3), (0.39, 0.39, 0.39))).general == 0


def test_the_darker_below_eight_tenths():
    assert flashes(*flicker(6, (0.85, 0.85, 0.85), WHITE)).general == 0


def test_area_is_a_quarter_of_ten_degrees():
    # The field is a third of the width; a strip of a twentieth is 15 % of it, of a tenth 30 %.
    assert flashes(*flicker(6, BLACK, WHITE, share=0.05)).general == 0
    assert flashes(*flicker(6, BLACK, WHITE, share=0.11)).exceed()


def test_red_counts_where_luminance_does_not():
    dim = (0.09 / 0.2126, 0, 0)  # Nine hundredths of the luminance, from nothing.
    found = flashes(*flicker(6, BLACK, dim))
    assert found.general == 0
    assert found.red > LIMITS.flashes


def test_a_fade_is_no_flash():
    times = np.arange(120) / FPS
    light = np.broadcast_to(np.linspace(0, 1, 120)[:, None, None, None], (120, 9, 16, 3))
    assert flashes(times, light.astype(np.float32)).general == 0
    assert flashes(times[:1], light[:1]).general == 0


def test_sampled_is_linear():
    grey = np.full((54, 96, 4), 188, np.uint8)
    # sRGB code 188 is half of the light (IEC 61966-2-1).
    assert sampled(grey).mean() == pytest.approx(0.5, abs=0.005)
