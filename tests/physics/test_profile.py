"""The wall's profile and its mesh: places, heights, volumes."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from demo_app.physics.revolve.mesh import graded, through, wall_mesh
from demo_app.physics.revolve.profile import bottle, cylinder

BOTTLES = [bottle(0.07, 3e-3), bottle(0.04, 1.5e-3), bottle(0.12, 6e-3), bottle(0.05, 6e-3)]


def volume(profile):
    """Volume of a wall by Pappus' rule, ``2 pi integral (r + curvature sin(a) w**2 / 12) w ds``."""
    total = 0.0
    done = 0.0
    for part in profile.parts:
        s = done + part.length * (np.polynomial.legendre.leggauss(40)[0] + 1) / 2
        weight = np.polynomial.legendre.leggauss(40)[1] * part.length / 2
        r, _, angle = profile.at(s)
        curvature = getattr(part, "turn", 0.0) / part.length
        shift = curvature * np.sin(angle) * profile.wall**2 / 12
        total += 2 * math.pi * profile.wall * float(weight @ (r + shift))
        done += part.length
    return total


@pytest.mark.parametrize("profile", BOTTLES)
@given(share=st.floats(0, 1), down=st.floats(0, 1))
@settings(max_examples=60, deadline=None)
def test_a_place_in_the_wall_is_found_again(profile, share, down):
    s, depth = np.array([share * profile.length]), np.array([down * profile.wall])
    r, z = profile.place(s, depth)
    if r[0] < 1e-6:
        return  # on the axis the base has one place for each depth, but r may be below zero
    found_s, found_depth = profile.locate(r, z)
    assert found_s == pytest.approx(s, abs=2e-9)
    assert found_depth == pytest.approx(depth, abs=2e-9)


@pytest.mark.parametrize("profile", BOTTLES)
def test_a_place_outside_the_wall_is_nowhere(profile):
    r, z = profile.place(np.linspace(0.01, profile.length, 50), np.full(50, -1e-4))
    assert np.isnan(profile.locate(r, z)[0]).all()
    assert np.isnan(profile.locate(np.array([0.001]), np.array([0.1]))[0]).all()


@pytest.mark.parametrize("profile", BOTTLES)
def test_a_bottle_stands_on_the_table_and_ends_at_its_mouth(profile):
    s = np.linspace(0, profile.length, 2001)
    _, z = profile.place(s, np.zeros(2001))
    assert profile.closed_on_axis
    assert z.min() == pytest.approx(0.0, abs=1e-12)
    assert z[-1] == pytest.approx(0.22, abs=1e-9)
    assert (profile.place(s, np.full(2001, profile.wall))[0] > -1e-12).all()
    assert (np.diff(profile.at(s)[1]) > -1e-12).all()


@pytest.mark.parametrize("diameter", [0.04, 0.07, 0.12])
def test_a_bottle_is_as_wide_as_it_says(diameter):
    profile = bottle(diameter, 3e-3)
    r = profile.place(np.linspace(0, profile.length, 501), np.zeros(501))[0]
    assert 2 * r.max() == pytest.approx(diameter, abs=1e-9)


@pytest.mark.parametrize("profile", BOTTLES)
def test_arc_length_at_a_height_is_the_inverse_of_the_height(profile):
    for z in (0.03, 0.08, 0.15, 0.2):
        s = profile.arc_length_at_height(z)
        assert profile.at(np.array([s]))[1][0] == pytest.approx(z, abs=1e-6)


@pytest.mark.parametrize("profile", BOTTLES)
def test_direction_and_thickness_go_on_over_the_joints(profile):
    for corner in profile.corners()[1:-1]:
        near = [profile.at(np.array([corner + d])) for d in (-1e-9, 1e-9)]
        for before, after in zip(*near, strict=True):
            assert before == pytest.approx(after, abs=1e-6)


@pytest.mark.parametrize("profile", [*BOTTLES, cylinder(0.07, 3e-3, 0.1)])
def test_the_mesh_fills_the_wall(profile):
    centre = profile.length / 2
    ends = graded(profile, centre, fine=2e-3, flat=0.01, coarse=0.01)
    mesh = wall_mesh(profile, ends, through(profile.wall, 0.2e-3, 4))
    assert mesh.wall.weight.sum() == pytest.approx(volume(profile), rel=1e-5)
    assert (mesh.wall.weight > 0).all()
    assert centre in ends
    for corner in profile.corners():
        assert np.abs(ends - corner).min() < 1e-9 or abs(corner - centre) < 1e-3


def test_the_surfaces_have_the_areas_of_a_tube():
    mesh = wall_mesh(cylinder(0.07, 3e-3, 0.1), np.linspace(0, 0.1, 5), np.linspace(0, 3e-3, 3))
    assert mesh.outer.weight.sum() == pytest.approx(2 * math.pi * 0.035 * 0.1, rel=1e-9)
    assert mesh.inner.weight.sum() == pytest.approx(2 * math.pi * 0.032 * 0.1, rel=1e-9)


@given(first=st.floats(1e-5, 2e-3), count=st.integers(1, 9))
@settings(max_examples=50, deadline=None)
def test_elements_grow_inwards_and_fill_the_wall(first, count):
    ends = through(3e-3, first, count)
    assert ends.size == count + 1
    assert (ends[0], ends[-1]) == (0.0, pytest.approx(3e-3, rel=1e-12))
    assert (np.diff(np.diff(ends)) > -1e-12).all()


def test_a_split_mesh_has_two_faces_at_one_place_and_the_same_glass():
    profile, ends, depths = cylinder(0.07, 3e-3, 0.1), np.linspace(0, 0.1, 11), [0, 1e-3, 3e-3]
    whole = wall_mesh(profile, ends, np.array(depths))
    cut = wall_mesh(profile, ends, np.array(depths), split=ends[4])
    assert cut.s.size == whole.s.size + 1
    assert cut.s[cut.split] == cut.s[cut.split - 1] == ends[4]
    assert cut.wall.weight == pytest.approx(whole.wall.weight, rel=1e-12)
    # no element takes nodes from both pieces
    first = cut.split * cut.depth.size
    lowest, highest = cut.wall.value.dofs.min(axis=1), cut.wall.value.dofs.max(axis=1)
    assert not ((lowest < first) & (highest >= first)).any()


@pytest.mark.parametrize("profile", BOTTLES)
def test_a_field_that_is_linear_in_r_and_z_is_met_exactly(profile):
    ends = graded(profile, 0.1, fine=3e-3, flat=0.01, coarse=0.01)
    mesh = wall_mesh(profile, ends, through(profile.wall, 0.3e-3, 3))
    field = (2 * mesh.r + 3 * mesh.z + 1).ravel()
    wall = mesh.wall
    assert wall.value.matrix() @ field == pytest.approx(2 * wall.r + 3 * wall.z + 1, abs=1e-12)
    assert wall.slope_r.matrix() @ field == pytest.approx(2.0, abs=1e-9)
    assert wall.slope_z.matrix() @ field == pytest.approx(3.0, abs=1e-9)
