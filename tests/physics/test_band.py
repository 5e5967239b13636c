"""Banded systems against dense linear algebra."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from revolve_pieces import PLAIN, coarse_bottle, tube

from demo_app.physics.band import Rows, band_form, bandwidth_of, factorise, pin
from demo_app.physics.revolve.heat import multiply


def dense(band):
    size = band.shape[1]
    full = np.zeros((size, size))
    for below in range(band.shape[0]):
        for j in range(size - below):
            full[j + below, j] = full[j, j + below] = band[below, j]
    return full


def a_form(seed, size=14, points=40, k=3):
    """Two factors, two random patterns with the same unknowns, and their weights."""
    rng = np.random.default_rng(seed)
    start = rng.integers(0, size - k + 1, points)
    dofs = start[:, None] + np.stack([rng.permutation(k) for _ in range(points)])
    first, second = (Rows(dofs, rng.normal(size=(points, k)), size) for _ in range(2))
    return ((1.0, first), (2.5, second)), rng.uniform(0.5, 2, points), rng


@given(seed=st.integers(0, 2**32 - 1))
@settings(max_examples=25, deadline=None)
def test_a_band_holds_the_sum_of_products(seed):
    parts, weight, rng = a_form(seed)
    coefficient = rng.uniform(0.1, 3, weight.size)
    form = band_form(parts, weight, bandwidth_of(*(rows for _, rows in parts)))
    expected = sum(
        f * (a.T @ np.diag(weight * coefficient) @ a)
        for f, a in ((f, rows.matrix().toarray()) for f, rows in parts)
    )
    assert dense(form.band(coefficient)) == pytest.approx(expected, abs=1e-12)


@given(seed=st.integers(0, 2**32 - 1))
@settings(max_examples=25, deadline=None)
def test_a_factor_solves_and_a_band_multiplies(seed):
    parts, weight, rng = a_form(seed)
    band = band_form(parts, weight, 2).band(np.ones(weight.size))
    band[0] += 1.0
    x = rng.normal(size=band.shape[1])
    assert multiply(band, x) == pytest.approx(dense(band) @ x, abs=1e-12)
    assert factorise(np.asfortranarray(band)).solve(dense(band) @ x) == pytest.approx(x, abs=1e-9)


def test_a_pinned_unknown_stays_at_zero_and_the_others_are_as_if_it_were_gone():
    parts, weight, rng = a_form(7)
    band = band_form(parts, weight, 2).band(np.ones(weight.size))
    band[0] += 1.0
    held, right = np.array([0, 5]), rng.normal(size=band.shape[1])
    right[held] = 0.0
    answer = factorise(np.asfortranarray(pin(band, held))).solve(right)
    free = np.setdiff1d(np.arange(right.size), held)
    assert answer[held] == pytest.approx(0.0, abs=0)
    smaller = np.linalg.solve(dense(band)[np.ix_(free, free)], right[free])
    assert answer[free] == pytest.approx(smaller, abs=1e-10)


def test_an_indefinite_matrix_is_refused():
    with pytest.raises(np.linalg.LinAlgError, match="not positive definite"):
        factorise(np.asfortranarray([[1.0, -1.0], [0.0, 0.0]]))


@pytest.mark.parametrize("piece", [tube(0.07, 3e-3, 0.04, 6, 2), coarse_bottle(PLAIN)])
def test_the_heat_matrices_know_volume_and_that_a_uniform_field_has_no_gradient(piece):
    ones = np.ones(piece.mesh.nodes)
    unit = np.ones(piece.mesh.wall.r.size)
    volume = ones @ multiply(piece.heat.capacity.band(unit), ones)
    assert volume == pytest.approx(piece.mesh.wall.weight.sum(), rel=1e-12)
    flow = multiply(piece.heat.conduction.band(unit), ones)
    assert np.abs(flow).max() < 1e-9 * piece.heat.conduction.band(unit).max()
