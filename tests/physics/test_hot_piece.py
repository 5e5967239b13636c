"""Cooling in still air, against closed forms and against another way to integrate."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from demo_app.physics.column.wall import plate
from demo_app.physics.heat import ROOM, ZERO_C, still_air_coefficient
from demo_app.physics.hot_piece import (
    SMALL,
    Profile,
    fast_loss,
    profile_cooling_time,
    wall_cooling_time,
)
from demo_app.physics.material_files import glasses, material

SODA = material("soda-lime")
REACH = 45 + ZERO_C


def even(thickness, temperature, length=0.2, count=60):
    place = np.linspace(0, length, count)
    return Profile(place, np.full(count, thickness), np.full(count, temperature))


def steady(value):
    return lambda surface, _air: np.full_like(surface, value)


@pytest.mark.parametrize("thickness", [1e-4, 1e-3, 3e-3])
def test_newtons_law_of_cooling(thickness):
    """Newton: t = rho c L / (2 h) ln(excess ratio), c its mean over the excess's logarithm."""
    h, start = 10.0, 150 + ZERO_C
    found = wall_cooling_time(
        SODA, thickness, start, REACH, coefficient=steady(h), emissivity=0.0, finer=4
    )
    stored, _ = quad(
        lambda t: float(SODA.heat_capacity(np.array([t]))[0]) / (t - ROOM), REACH, start
    )
    exact = SODA.density * thickness / (2 * h) * stored
    # The surface runs ahead of the mean by Bi/3 of the excess; Bi = h L / (2 k).
    biot = h * thickness / 2 / float(SODA.conductivity_at(np.array([350.0]))[0])
    assert found == pytest.approx(exact, rel=5e-4 + biot)


def test_a_thick_wall_against_the_series():
    """First term of the slab's series (Carslaw and Jaeger; Incropera, table 5.1), Bi = 1."""
    thickness, start = 0.05, REACH + 1.0
    air = REACH - 0.6  # Little changes, so that k and c are those of 45 °C.
    k = float(SODA.conductivity_at(np.array([REACH]))[0])
    h = k / (thickness / 2)
    ratio = (REACH - air) / (start - air)
    root = brentq(lambda z: z * np.tan(z) - 1.0, 1e-6, 1.5)
    first = 4 * np.sin(root) / (2 * root + np.sin(2 * root)) * np.cos(root)
    fourier = -np.log(ratio / first) / root**2
    exact = fourier * (thickness / 2) ** 2 / SODA.diffusivity(REACH)
    assert fourier > 0.2  # Where one term is enough.
    found = wall_cooling_time(
        SODA, thickness, start, REACH, air, coefficient=steady(h), emissivity=0.0, finer=8
    )
    assert found == pytest.approx(exact, rel=3e-3)


@pytest.mark.parametrize("thickness", [1e-3, 6e-3])
@pytest.mark.parametrize("start_C", [60, 185, 500])
def test_a_thin_wall_against_an_integral(thickness, start_C):
    """Lumped: t = integral of rho c L / (2 loss) over temperature, whatever the loss is."""

    def slowness(temperature):
        at = np.array([temperature])
        capacity = SODA.density * float(SODA.heat_capacity(at)[0]) * thickness / 2
        return capacity / float(fast_loss(at, ROOM)[0])

    exact, _ = quad(slowness, REACH, start_C + ZERO_C)
    start = np.array([start_C + ZERO_C])
    coefficient = float(fast_loss(start, ROOM)[0]) / (start_C + ZERO_C - ROOM)
    # A surface that runs ahead of the mean, by Bi/3 of the excess at most (Bi = h L / (2 k)), loses
    # less heat, and is sooner there.
    biot = coefficient * thickness / 2 / float(SODA.conductivity_at(start)[0])
    through = wall_cooling_time(SODA, thickness, start_C + ZERO_C, REACH, finer=4)
    sooner = biot / 3 / np.log((start_C + ZERO_C - ROOM) / (REACH - ROOM))
    assert 1 - 1e-3 - sooner < through / exact < 1 + 1e-3 + biot / 3
    along = profile_cooling_time(SODA, even(thickness, start_C + ZERO_C), REACH)
    assert along == pytest.approx(exact, rel=1e-3)


def test_half_the_step_changes_little():
    coarse = wall_cooling_time(SODA, 0.006, 500 + ZERO_C, REACH)
    fine = wall_cooling_time(SODA, 0.006, 500 + ZERO_C, REACH, finer=2)
    assert fine == pytest.approx(coarse, rel=0.01)


def test_a_hot_band_spreads_as_a_gaussian_does():
    """No loss: peak = excess / sqrt(1 + 4 kappa t / w2) (Carslaw and Jaeger, section 2.2)."""
    width, excess, rest = 4e-3, 2.0, REACH - 1.0  # So little that k and c stay.
    place = np.linspace(-0.08, 0.08, 641)
    profile = Profile(
        place, np.full(place.size, 3e-3), rest + excess * np.exp(-((place / width) ** 2))
    )
    found = profile_cooling_time(
        SODA, profile, REACH, rest - 5, loss=lambda t, air: np.zeros_like(t)
    )
    kappa = SODA.diffusivity(REACH)
    assert found == pytest.approx(3 * width**2 / (4 * kappa), rel=2e-3)


@given(st.floats(0.5, 30), st.floats(1.01, 3), st.floats(46, 600), st.floats(1, 200))
def test_thicker_or_hotter_stays_hot_longer(thickness_mm, factor, start_C, more):
    first = wall_cooling_time(SODA, 1e-3 * thickness_mm, start_C + ZERO_C, REACH)
    assert first > 0
    assert wall_cooling_time(SODA, 1e-3 * thickness_mm * factor, start_C + ZERO_C, REACH) > first
    assert wall_cooling_time(SODA, 1e-3 * thickness_mm, start_C + more + ZERO_C, REACH) > first


@pytest.mark.parametrize("glass", glasses())
def test_it_is_a_lower_bound_of_what_the_model_gives_elsewhere(glass):
    """Any real size, emissivity and one face on a mat cool more slowly than what is claimed."""
    what = material(glass)
    claimed = wall_cooling_time(what, 0.005, 300 + ZERO_C, REACH)
    for diameter in (SMALL, 0.07, 0.3):
        likely = wall_cooling_time(
            what,
            0.005,
            300 + ZERO_C,
            REACH,
            coefficient=lambda t, air, d=diameter: still_air_coefficient(t, air, d),
            emissivity=what.emissivity,
        )
        assert 1.1 < likely / claimed < 2.5


def test_what_is_cold_already_and_what_cannot_cool():
    assert wall_cooling_time(SODA, 0.003, REACH, REACH) == 0
    assert wall_cooling_time(SODA, 0.003, 400.0, REACH, REACH) == np.inf
    assert profile_cooling_time(SODA, even(0.003, REACH - 1), REACH) == 0
    assert profile_cooling_time(SODA, even(0.003, 400.0), REACH, REACH + 1) == np.inf
    assert plate(SODA, 0.003).thickness == pytest.approx(0.003)
