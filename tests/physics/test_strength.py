"""When a flaw becomes a crack, against handbooks and scipy's distributions."""

import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import lognorm, weibull_min

from demo_app.physics.material_files import glasses, material
from demo_app.physics.strength import (
    FRACTILE,
    HALF_PENNY,
    TEST_AREA,
    Handled,
    critical_depth,
    deeper_than,
    edge_crack_points,
    handled,
    probability,
    uniform_intensity,
)

WALL = 3e-3
SHARES = [0.02, 0.1, 0.2, 0.3, 0.4, 0.5]


def factor(stress, share):
    """K of an edge crack under ``stress(depth / WALL)``, over sqrt(pi a)."""
    at, weight = edge_crack_points(share * WALL, WALL)
    return float(weight @ stress(at / WALL)) / math.sqrt(math.pi * share * WALL)


def test_a_shallow_edge_crack_has_the_factor_of_a_half_space():
    """1.1215: Tada, Paris and Irwin, Stress Analysis of Cracks Handbook (from memory); 1 %."""
    assert factor(np.ones_like, 1e-4) == pytest.approx(1.1215, rel=0.01)


@pytest.mark.parametrize("share", SHARES)
def test_an_edge_crack_under_tension(share):
    """Handbook polynomial, good to half a percent up to 0.6 of the strip (from memory); 2 %."""
    x = share
    book = 1.12 - 0.231 * x + 10.55 * x**2 - 21.72 * x**3 + 30.39 * x**4
    assert factor(np.ones_like, share) == pytest.approx(book, rel=0.02)


@pytest.mark.parametrize("share", SHARES)
def test_an_edge_crack_under_bending(share):
    """Handbook polynomial, good to half a percent up to 0.6 of the strip (from memory); 2 %."""
    x = share
    book = 1.122 - 1.40 * x + 7.33 * x**2 - 13.08 * x**3 + 14.0 * x**4
    assert factor(lambda at: 1 - 2 * at, share) == pytest.approx(book, rel=0.02)


def test_a_pull_that_ends_above_the_tip_counts_less_than_one_that_reaches_it():
    skin = factor(lambda at: np.exp(-at / 0.02), 0.1)
    tip = factor(lambda at: np.exp(-(0.1 - at) / 0.02), 0.1)
    assert 0 < skin < 0.5 * tip < 0.5 * factor(np.ones_like, 0.1)


@given(share=st.floats(1e-4, 0.5), count=st.integers(24, 60))
@settings(max_examples=30, deadline=None)
def test_the_quadrature_has_converged_for_a_drop_s_skin(share, count):
    def stress(at):
        return np.exp(-at / 0.1) - 0.3

    few = edge_crack_points(share * WALL, WALL)
    many = edge_crack_points(share * WALL, WALL, count)
    values = [float(w @ stress(at / WALL)) for at, w in (few, many)]
    assert values[0] == pytest.approx(values[1], rel=1e-6, abs=1e-9)


@pytest.mark.parametrize("share", [-0.1, 0.0, 0.51, 1.0, math.nan])
def test_a_crack_outside_the_weight_function_is_refused(share):
    with pytest.raises(ValueError, match="crack depth"):
        edge_crack_points(share * WALL, WALL)


@pytest.mark.parametrize(
    ("stress", "shape", "micrometres"),
    [
        (45, 1.12, 70),
        (45, 1.12 * HALF_PENNY, 174),
        (45, HALF_PENNY, 218),
        (120, 1.12, 9.9),
        (20, 1.12, 357),
    ],
)
def test_critical_depths(stress, shape, micrometres):
    """``(K_IC / (Y sigma))**2 / pi`` with 0.75 MPa sqrt(m) (Griffith, Irwin; from memory)."""
    depth = critical_depth(0.75e6, stress * 1e6, shape)
    assert 1e6 * depth == pytest.approx(micrometres, rel=0.01)
    assert uniform_intensity(stress * 1e6, depth, shape) == pytest.approx(0.75e6, rel=1e-12)


@given(
    modulus=st.floats(3, 20),
    scale=st.floats(1e7, 2e8),
    area=st.floats(1e-4, 1),
    pull=st.floats(0, 3e8),
)
@settings(max_examples=60, deadline=None)
def test_handled_glass_breaks_as_scipy_s_weibull(modulus, scale, area, pull):
    population = Handled(modulus, scale)
    shares = np.array([0.2, 0.5, 0.3]) * area
    found = probability(population.risk(np.full(3, pull), shares))
    reference = weibull_min(modulus, scale=scale * area ** (-1 / modulus))
    assert found == pytest.approx(reference.cdf(pull), rel=1e-9, abs=1e-300)
    assert population.median_strength(area) == pytest.approx(reference.median(), rel=1e-9)


def test_compression_breaks_nothing():
    assert Handled(6.0, 5e7).risk(np.array([-1e9, -1.0, 0.0]), np.ones(3)) == 0.0


@pytest.mark.parametrize("glass", glasses())
def test_one_in_twenty_test_plates_is_weaker_than_the_characteristic_strength(glass):
    it = material(glass)
    population = handled(it.characteristic_strength, it.weibull_modulus)
    risk = population.risk(np.array([it.characteristic_strength]), np.array([TEST_AREA]))
    assert probability(risk) == pytest.approx(FRACTILE, rel=1e-9)


def test_a_small_piece_is_stronger_than_a_large_one():
    """Ratio of areas to the power 1/m (Weibull 1939)."""
    population = handled(45e6, 6.0)
    strengths = [population.median_strength(area) for area in (0.0064, 0.1, 1.6)]
    for small, large in itertools.pairwise(strengths):
        assert small / large == pytest.approx((0.1 / 0.0064) ** (1 / 6), rel=1e-2)


@given(depth=st.floats(1e-6, 1e-2), median=st.floats(1e-5, 1e-3), spread=st.floats(0.05, 1.5))
@settings(max_examples=60, deadline=None)
def test_deeper_flaws_are_as_rare_as_scipy_s_lognormal(depth, median, spread):
    reference = lognorm(spread, scale=median).sf(depth)
    assert deeper_than(depth, median, spread) == pytest.approx(reference, rel=1e-6, abs=1e-14)


def test_no_flaw_is_endlessly_deep_and_every_flaw_has_a_depth():
    assert deeper_than(math.inf, 1e-4, 0.3) == 0.0
    assert deeper_than(0.0, 1e-4, 0.3) == 1.0


def test_first_parameter_of_thermal_shock():
    """``sigma (1-nu) / (E alpha)``: borosilicate stands nearly three times what soda-lime stands
    at the same strength, fused silica ten times more (Hasselman 1969, J. Am. Ceram. Soc. 52, 600).
    """
    shock = {}
    for glass in ("soda-lime", "borosilicate", "fused-silica"):
        it = material(glass)
        shock[glass] = 45e6 * (1 - it.poisson_ratio) / (it.youngs_modulus * it.expansion)
    assert shock["soda-lime"] == pytest.approx(57, rel=0.05)
    assert shock["borosilicate"] == pytest.approx(170, rel=0.05)
    assert shock["borosilicate"] / shock["soda-lime"] == pytest.approx(2.98, rel=0.06)
    assert shock["fused-silica"] > 5 * shock["borosilicate"]
