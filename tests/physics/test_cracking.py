"""A ring crack in the wall: its stress intensity on the mesh, how deep and where it runs."""

import dataclasses
import functools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from revolve_pieces import coarse_bottle, tube

from demo_app.physics.revolve.cracking import (
    WallStress,
    at_place,
    grown_depth,
    intensity_weights,
    path,
    wall_stress,
)
from demo_app.physics.revolve.mesh import through
from demo_app.physics.strength import edge_crack_points

WALL = 3e-3


@functools.cache
def mesh():
    return tube(0.07, WALL, 0.06, 30, through(WALL, 0.15e-3, 6)).mesh


def uniform(along=0.0, inward=0.0, shear=0.0):
    """The same stress everywhere, Pa."""
    shape = mesh().r.shape
    return WallStress(*(np.full(shape, float(x)) for x in (along, inward, shear, 0.0)))


@given(depth=st.floats(2e-5, WALL / 2), a=st.floats(-1, 1), b=st.floats(-1, 1))
@settings(max_examples=40, deadline=None)
def test_weights_on_the_rows_are_exact_for_quadratic_stress(depth, a, b):
    at, weight = edge_crack_points(depth, WALL)
    exact = float(weight @ (1 + a * at / WALL + b * (at / WALL) ** 2))
    rows = mesh().depth / WALL
    found = float(intensity_weights(mesh(), depth) @ (1 + a * rows + b * rows**2))
    assert found == pytest.approx(exact, rel=1e-9, abs=1e-12)


def test_a_field_is_linear_between_columns():
    s = mesh().s
    field = np.stack([s, s**2], axis=1)
    assert at_place(mesh(), field, s[7])[1] == pytest.approx(s[7] ** 2)
    assert at_place(mesh(), field, (s[7] + s[8]) / 2) == pytest.approx((field[7] + field[8]) / 2)
    assert at_place(mesh(), field, -1.0) == pytest.approx(field[0])
    assert at_place(mesh(), field, 1.0) == pytest.approx(field[-1])


@given(
    stress=st.tuples(*[st.floats(-1e8, 1e8)] * 4),
    column=st.integers(0, 40),
)
@settings(max_examples=40, deadline=None)
def test_stress_in_the_wall_s_directions_is_the_same_stress(stress, column):
    """Trace, determinant and hoop stress stay; and each component by its own projection."""
    bottle = coarse_bottle().mesh
    nodal = np.repeat(np.array(stress)[:, None], bottle.nodes, axis=1)
    turned = wall_stress(bottle, nodal)
    j = column % bottle.s.size
    r, z = bottle.profile.place(np.full(2, bottle.s[j]), np.array([0.0, bottle.depth[-1]]))
    inward = np.array([r[1] - r[0], z[1] - z[0]]) / bottle.depth[-1]
    along = np.array([inward[1], -inward[0]])
    tensor = np.array([[stress[0], stress[3]], [stress[3], stress[2]]])
    size = np.abs(stress).max() + 1.0
    assert turned.along[j, 0] == pytest.approx(along @ tensor @ along, abs=1e-9 * size)
    assert turned.inward[j, 0] == pytest.approx(inward @ tensor @ inward, abs=1e-9 * size)
    assert turned.shear[j, 0] == pytest.approx(along @ tensor @ inward, abs=1e-9 * size)
    assert turned.hoop[j, 0] == stress[1]


def test_along_points_to_larger_arc_lengths():
    bottle = coarse_bottle().mesh
    j = 3
    r, z = bottle.profile.place(bottle.s[[j, j + 1]], np.zeros(2))
    inward = bottle.profile.place(bottle.s[[j]], np.array([1e-3]))
    step = np.array([r[1] - r[0], z[1] - z[0]])
    down = np.array([inward[0][0] - r[0], inward[1][0] - z[0]])
    along = np.array([down[1], -down[0]])
    assert step @ along > 0


def test_a_wide_pull_takes_a_crack_through_the_wall():
    pull = np.full(mesh().depth.size, 60e6)
    assert grown_depth(mesh(), pull, 1e-4, 0.75e6) == WALL


def test_a_crack_that_is_too_shallow_stays():
    pull = np.full(mesh().depth.size, 30e6)
    assert grown_depth(mesh(), pull, 1e-4, 0.75e6) == 1e-4


def test_a_pull_in_the_skin_alone_lets_the_crack_stop_in_the_wall():
    pull = 110e6 * np.exp(-mesh().depth / 2e-4) - 30e6
    grown = grown_depth(mesh(), pull, 1e-4, 0.75e6)
    assert 1e-4 < grown < WALL / 2
    deeper = mesh().depth[mesh().depth > grown + 1e-12][0]
    assert intensity_weights(mesh(), grown) @ pull >= 0.75e6
    assert intensity_weights(mesh(), deeper) @ pull < 0.75e6


@given(pull=st.floats(1e6, 2e8), factor=st.floats(1, 3))
@settings(max_examples=40, deadline=None)
def test_more_pull_never_gives_a_shallower_crack(pull, factor):
    profile = pull * np.exp(-mesh().depth / 5e-4)
    one, more = (grown_depth(mesh(), f * profile, 1e-4, 0.75e6) for f in (1.0, factor))
    assert more >= one


def test_without_shear_a_crack_runs_straight():
    found = path(mesh(), uniform(along=50e6), 0.03, 1e-4)
    assert found == pytest.approx(0.03, abs=0)


@pytest.mark.parametrize("ratio", [-0.1, -0.02, 0.02, 0.1])
def test_a_sheared_crack_turns_across_the_largest_tension(ratio):
    """The tension's principal axis leans by half of atan(2 shear / pull) inwards."""
    stress = uniform(along=50e6, shear=ratio * 50e6)
    found = path(mesh(), stress, 0.03, 1e-4)
    tensor = np.array([[50e6, ratio * 50e6], [ratio * 50e6, 0.0]])
    axis = np.linalg.eigh(tensor)[1][:, -1]
    across = np.array([-axis[1], axis[0]]) * math.copysign(1.0, axis[0])
    lean = (found[-1] - 0.03) / (WALL - mesh().depth[mesh().depth >= 1e-4][0])
    assert math.copysign(1, lean) == math.copysign(1, across[0])
    # Erdogan and Sih 1963, at the tip of the first crack: -2 K_II / K_I for small angles
    assert lean == pytest.approx(-2 * ratio, rel=1e-6)


def test_a_mirrored_shear_gives_the_mirrored_path():
    rng = np.random.default_rng(4)
    along, shear = 5e7 * (1 + rng.random(mesh().r.shape)), 2e7 * rng.random(mesh().r.shape)
    zero = np.zeros_like(along)
    one = path(mesh(), WallStress(along, zero, shear, zero), 0.03, 1e-4)
    other = path(mesh(), WallStress(along[::-1], zero, -shear[::-1], zero), 0.03, 1e-4)
    assert one - 0.03 == pytest.approx(0.03 - other, abs=1e-12)


def test_a_path_stays_in_the_piece():
    stress = uniform(along=1e6, shear=-1e9)
    near = mesh().s[-1] - 1e-4
    found = path(mesh(), stress, float(near), 1e-4)
    assert found[-1] == mesh().s[-1]
    closed = dataclasses.replace(stress, along=-stress.along)
    assert path(mesh(), closed, 0.03, 1e-4) == pytest.approx(0.03, abs=0)
