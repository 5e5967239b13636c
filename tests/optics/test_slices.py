"""Slices along the ray: they act as one retarder, which the sum is not where axes turn."""

import functools

import numpy as np
import pytest
from revolve_pieces import PLAIN

from demo_app.optics.jones import equivalent, sliced_intensity
from demo_app.optics.sightlines import sightlines
from demo_app.optics.slices import (
    ALLOWED_NM,
    GREEN_NM,
    one_retarder,
    slices,
    there_and_back,
    through_slices,
)
from demo_app.physics.revolve.flask import flask

OPTIC = PLAIN.stress_optic


@functools.cache
def foot():
    """Sightlines of a flask, and a stress that pulls along its round foot but not around it."""
    mesh = flask(PLAIN, 0.06, 0.13, 0.01, 0.002, fineness=1.0, through=4).piece.mesh
    lines = sightlines(mesh, both_faces=True)
    c, s = np.cos(mesh.heading)[:, None], np.sin(mesh.heading)[:, None]
    along = np.linspace(-1, 0.5, mesh.depth.size)[None, :]
    along = along * np.exp(-((mesh.s / 0.03) ** 2))[:, None]
    nodal = np.stack([along * c**2, 0.3 * along, along * s**2, along * s * c])
    return mesh, lines, nodal.reshape(4, -1)


def random_slices(size, count=9, rays=60):
    rng = np.random.default_rng(5)
    return tuple(rng.normal(0, size / count**0.5, (count, rays)).astype(np.float32) for _ in "ab")


def both_ways(v):
    return np.concatenate([v, v[::-1]]).astype(float)


@pytest.mark.parametrize("size", [10.0, 150.0, 600.0])
def test_slices_there_and_back_act_as_one_retarder_without_a_turn(size):
    # Hurwitz and Jones 1941: a row of retarders is one retarder and one rotator; read the same
    # from both ends it has no rotator.
    v1, v2 = random_slices(size)
    *_, turn = equivalent(both_ways(v1), both_ways(v2), GREEN_NM)
    assert np.abs(turn).max() < 1e-6
    one = one_retarder(there_and_back(v1, v2), (2 * v1.sum(axis=0), 2 * v2.sum(axis=0)))
    for angle in (0.0, 20.0, 45.0):
        whole = sliced_intensity(both_ways(v1), both_ways(v2), GREEN_NM, polarizer_deg=angle)
        as_one = sliced_intensity(one[0][None], one[1][None], GREEN_NM, polarizer_deg=angle)
        assert np.abs(whole - as_one).max() < 1e-4


def test_a_fixed_axis_leaves_the_sum():
    v1, _ = random_slices(300.0)
    v2 = 0.7 * v1
    near = 2 * v1.sum(axis=0), 2 * v2.sum(axis=0)
    found = one_retarder(there_and_back(v1, v2), near)
    assert np.allclose(found, near, atol=1e-2)


def test_slices_sum_to_the_map():
    _, lines, nodal = foot()
    v1, v2 = slices(lines, 1e6 * nodal, OPTIC)
    summed = lines.map(1e6 * nodal, OPTIC)
    assert np.allclose(2 * v1.sum(axis=2).T, summed.v1, atol=1e-2)
    assert np.allclose(2 * v2.sum(axis=2).T, summed.v2, atol=1e-2)


def test_little_light_is_left_as_it_is():
    _, lines, nodal = foot()
    summed = lines.map(1e5 * nodal, OPTIC)
    assert float(summed.retardation_nm().max()) < 40
    found = through_slices(lines, summed, 1e5 * nodal, OPTIC)
    assert np.abs(found.v1 - summed.v1).max() <= ALLOWED_NM
    assert through_slices(lines, lines.map(0 * nodal, OPTIC), 0 * nodal, OPTIC).v1.max() == 0


@pytest.mark.parametrize("stress", [8e6, 4e7])
def test_the_map_passes_the_light_of_the_product_at_every_pixel(stress):
    _, lines, nodal = foot()
    summed = lines.map(stress * nodal, OPTIC)
    found = through_slices(lines, summed, stress * nodal, OPTIC)
    v1, v2 = (np.moveaxis(v, 2, 0)[::-1] for v in slices(lines, stress * nodal, OPTIC))

    def passes(one):
        return sliced_intensity(one.v1[None].astype(float), one.v2[None].astype(float), GREEN_NM)

    true = sliced_intensity(both_ways(v1), both_ways(v2), GREEN_NM).T
    worst = np.abs(passes(found) - true).max()
    # Five nanometres at the steepest of the first order.
    assert worst < np.pi * ALLOWED_NM / GREEN_NM + 1e-3
    # The sum alone fails where the axes turn: that is what the product is for.
    assert np.abs(passes(summed) - true).max() > (1.2 if stress < 1e7 else 10) * worst


def test_the_product_is_nearer_than_the_sum_at_other_colours_too():
    _, lines, nodal = foot()
    summed = lines.map(4e7 * nodal, OPTIC)
    found = through_slices(lines, summed, 4e7 * nodal, OPTIC)
    v1, v2 = (np.moveaxis(v, 2, 0)[::-1] for v in slices(lines, 4e7 * nodal, OPTIC))
    for colour in (480.0, 620.0):
        true = sliced_intensity(both_ways(v1), both_ways(v2), colour).T
        product, plain = (
            np.sqrt(np.mean((sliced_intensity(m.v1[None], m.v2[None], colour) - true) ** 2))
            for m in (found, summed)
        )
        assert product < 0.9 * plain


def test_light_on_the_axis_needs_no_product():
    _, lines, nodal = foot()
    summed = lines.map(4e7 * nodal, OPTIC)
    found = through_slices(lines, summed, 4e7 * nodal, OPTIC)
    assert np.allclose(found.v1[0], summed.v1[0], atol=ALLOWED_NM)
    assert np.allclose(found.v2[0], 0, atol=ALLOWED_NM)
