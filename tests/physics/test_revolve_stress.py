"""Thermal stress in a wall of revolution against closed forms, and what no stress may violate.

Closed forms: Timoshenko and Goodier, Theory of Elasticity (pipe with a radial gradient);
Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, sections 117 and 118 (thin
cylinders). From memory, each computed again from the formula beside it. Stress in units of
``E alpha dT``.
"""

import dataclasses
import functools
import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from revolve_pieces import SODA, UNIT, by_column, coarse_bottle, imbalance, nodal, tube

from demo_app.physics.heat import ROOM
from demo_app.physics.revolve.body import body, cold, nodal_stress, strained
from demo_app.physics.revolve.mesh import graded
from demo_app.physics.revolve.profile import cylinder

WALL = 3e-3
NU = 0.2
BETA_FORM = (3 * (1 - NU**2)) ** 0.25


def heated(piece, rise):
    """Elastic state of a piece whose nodes warmed by `rise` (columns, rows) or a scalar, K."""
    return strained(piece, cold(piece), nodal(piece, ROOM + np.asarray(rise)), 1.0)


def stresses(piece, rise):
    """Nodal stress, shape (4, columns, rows), Pa."""
    return nodal_stress(piece, heated(piece, rise)).reshape(4, *piece.mesh.r.shape)


def through_wall(piece, field):
    """Mean and bending part (outer face) of a field (columns, rows) of quadratic elements."""
    depth = piece.mesh.depth
    weights = np.zeros(depth.size)
    for i in range(0, depth.size - 2, 2):
        weights[i : i + 3] += np.array([1, 4, 1]) / 6 * (depth[i + 2] - depth[i])
    share = depth / depth[-1]
    mean = field @ weights / depth[-1]
    return mean, 6 * (field @ (weights * (0.5 - share))) / depth[-1]


@pytest.mark.parametrize(
    ("inner", "outer", "at_inner", "at_outer"),
    [(0.030, 0.033, -4.063, 3.812), (0.010, 0.030, -5.275, 2.600)],
)
def test_a_long_pipe_with_a_logarithmic_gradient(inner, outer, at_inner, at_outer):
    """Inside 10 K hotter: ``E al dT / (2 (1-nu) ln(b/a)) (1 - 2 x**2 ln(b/a) / (b**2 - a**2))``.

    x is b at the inner wall and a at the outer one; stress along the axis is the same there.
    """
    ratio = math.log(outer / inner)
    for x, value in ((outer, at_inner), (inner, at_outer)):
        exact = 1 - 2 * x**2 * ratio / (outer**2 - inner**2)
        assert UNIT * 10 / (2 * (1 - NU) * ratio) * exact / 1e6 == pytest.approx(value, abs=0.001)
    length, wall = 0.3, outer - inner
    ends = graded(cylinder(2 * outer, wall, length), 0.15, fine=wall, flat=wall, coarse=3 * wall)
    piece = tube(2 * outer, wall, length, ends, 12)
    found = stresses(piece, 10 * np.log(outer / piece.mesh.r) / ratio)
    middle = int(np.abs(piece.mesh.s - 0.15).argmin())
    for component in (1, 2):
        # linear in an element as they are recovered: 1 % of the steep inner wall
        assert found[component, middle, -1] / 1e6 == pytest.approx(at_inner, rel=0.012)
        assert found[component, middle, 0] / 1e6 == pytest.approx(at_outer, rel=0.005)
    assert np.abs(found[0, middle, [0, -1]]).max() < 0.02 * abs(at_inner) * 1e6


def test_the_recovered_stress_at_a_wall_converges_towards_second_order():
    def error(rows):
        piece = tube(0.06, 0.02, 0.6, 30, rows)
        middle = piece.mesh.s.size // 2
        found = stresses(piece, 10 * np.log(0.03 / piece.mesh.r) / math.log(3))
        return abs(found[1, middle, -1] / 1e6 + 5.275308)

    errors = [error(rows) for rows in (8, 16, 32)]
    for coarse, fine in itertools.pairwise(errors):
        assert math.log2(coarse / fine) > 1.7


def test_hoop_stress_rises_at_a_free_end():
    """Linear gradient in a thin wall: +-1/2/(1-nu), and ``1 - nu + sqrt((1-nu**2)/3)`` at the end.

    The factor is 1.366 at nu 0.2; on the outer, colder face.
    """
    radius, length = 0.5, 0.5
    ends = graded(cylinder(2 * radius, WALL, length), 0.0, fine=5e-4, flat=4e-3, coarse=0.02)
    piece = tube(2 * radius, WALL, length, ends, 4)
    hoop = stresses(piece, 10 * piece.mesh.depth / WALL)[1] / (10 * UNIT) * 2 * (1 - NU)
    middle = int(np.abs(piece.mesh.s - length / 2).argmin())
    assert hoop[middle, 0] == pytest.approx(1.0, abs=0.01)
    assert hoop[middle, -1] == pytest.approx(-1.0, abs=0.01)
    assert hoop[0, 0] == pytest.approx(1 - NU + math.sqrt((1 - NU**2) / 3), rel=0.01)


@functools.cache
def shell(radius, half_band):
    """Tube with an element end at each edge of the band; radius of the midline, m."""
    beta = BETA_FORM / math.sqrt(radius * WALL)
    length = 16 / beta
    edges = {length / 2, length / 2 - half_band, length / 2 + half_band}
    regular = [
        x for x in np.linspace(0, length, 161) if min(abs(x - e) for e in edges) > 0.03 / beta
    ]
    ends = np.array(sorted({*edges, *regular}))
    return tube(2 * radius + WALL, WALL, length, ends, 2), beta


def test_a_step_of_temperature_along_a_thin_cylinder():
    """Section 118: hoop +-1/2 at the step; axial bending 0.2792/sqrt(1-nu**2) at (pi/4)/beta."""
    piece, beta = shell(0.35, 0.0)
    x = piece.mesh.s - piece.mesh.profile.length / 2
    rise = np.where(np.abs(x) < 1e-12, 5.0, np.where(x > 0, 10.0, 0.0))
    found = stresses(piece, rise[:, None]) / (10 * UNIT)
    hoop, _ = through_wall(piece, found[1])
    _, bending = through_wall(piece, found[2])
    at = int(np.abs(bending).argmax())
    assert abs(bending[at]) == pytest.approx(0.2792 / math.sqrt(1 - NU**2), rel=0.005)
    assert abs(x[at]) == pytest.approx(math.pi / 4 / beta, rel=0.05)
    # free hoop strain beside the jump, from both sides, by the shell's exp(-bx) cos(bx)
    for side in (-1, 1):
        near = int(np.abs(x - side * 0.3 / beta).argmin())
        exact = -side * 0.5 * math.exp(-0.3) * math.cos(0.3)
        assert hoop[near] == pytest.approx(exact, abs=0.012)


def band(radius, half_band):
    """Membrane hoop stress and axial bending (outer face) in the middle of a heated band."""
    piece, beta = shell(radius, half_band)
    x = np.abs(piece.mesh.s - piece.mesh.profile.length / 2)
    edge = np.abs(x - half_band) < 1e-12
    rise = np.where(edge, 5.0, np.where(x < half_band, 10.0, 0.0))
    found = stresses(piece, rise[:, None]) / (10 * UNIT)
    middle = int(x.argmin())
    hoop, _ = through_wall(piece, found[1])
    _, bending = through_wall(piece, found[2])
    return hoop[middle], bending[middle], beta * half_band


@pytest.mark.parametrize(
    ("half_band", "hoop", "axial"), [(5, -0.426, 0.556), (10, -0.083, 0.474), (20, 0.065, 0.078)]
)
def test_a_heated_band_of_a_thin_cylinder(half_band, hoop, axial):
    """Hoop ``-exp(-bc) cos(bc)``, axial bending ``sqrt(3/(1-nu**2)) exp(-bc) sin(bc)``, outer face
    pulled; superposed from section 118. Values for R 35 mm, h 3 mm, whose wall is scaled here.
    """
    exact = half_band / 7.87
    assert -math.exp(-exact) * math.cos(exact) == pytest.approx(hoop, abs=0.001)
    bent = math.sqrt(3 / (1 - NU**2)) * math.exp(-exact) * math.sin(exact)
    assert bent == pytest.approx(axial, abs=0.002)
    radius = 0.7
    found_hoop, found_axial, _ = band(radius, exact * math.sqrt(radius * WALL) / BETA_FORM)
    assert found_hoop == pytest.approx(hoop, abs=0.006)
    assert found_axial == pytest.approx(axial, abs=0.004)


@pytest.mark.parametrize(("half_band", "axial"), [(2, 0.345), (5, 0.545), (10, 0.459)])
def test_a_heated_band_of_a_bottle(half_band, axial):
    """R 35 mm, h 3 mm: an independent two-dimensional calculation; 2 %."""
    _, found, _ = band(0.035, 1e-3 * half_band)
    assert found == pytest.approx(axial, rel=0.02)


@pytest.mark.parametrize("kelvin", [250.0, 310.0, 600.0])
def test_a_uniformly_warm_free_bottle_has_no_stress(kelvin):
    piece = coarse_bottle()
    glass = heated(piece, kelvin - ROOM)
    full = SODA.youngs_modulus * SODA.expansion * abs(kelvin - ROOM)
    assert np.abs(glass.stress).max() < 1e-7 * full
    swell = glass.displacement[::2]
    free = SODA.expansion * (kelvin - ROOM) * piece.mesh.r.ravel()
    assert swell == pytest.approx(free, abs=1e-9 * 0.035)


def a_rise(piece, seed):
    """Smooth random rise of temperature of up to some 100 K."""
    rng = np.random.default_rng(seed)
    s = piece.mesh.s[:, None] / piece.mesh.s[-1]
    d = piece.mesh.depth[None, :] / piece.mesh.depth[-1]
    waves = sum(
        a * np.cos(k * np.pi * s + p)
        for a, k, p in zip(rng.uniform(-40, 40, 6), range(1, 7), rng.uniform(0, 6, 6), strict=True)
    )
    return waves * (1 + rng.uniform(-1, 1) * d) + rng.uniform(-30, 30) * d**2


@given(seed=st.integers(0, 2**32 - 1))
@settings(max_examples=15, deadline=None)
def test_forces_balance_in_any_temperature(seed):
    piece = coarse_bottle()
    glass = heated(piece, a_rise(piece, seed))
    assert np.isfinite(glass.stress).all()
    # the axial support, of which there is one, bears nothing either
    assert imbalance(piece, glass.stress) < 1e-7
    # no hand holds it: stress along the axis and in the cross-section sums to zero over the volume
    radial, hoop, axial, _ = glass.stress
    size = piece.stress.weight @ np.abs(glass.stress).sum(axis=0)
    assert abs(piece.stress.weight @ axial) < 1e-7 * size
    assert abs(piece.stress.weight @ (radial + hoop)) < 1e-7 * size


@given(seed=st.integers(0, 2**32 - 1))
@settings(max_examples=10, deadline=None)
def test_no_cut_across_the_body_bears_a_net_force(seed):
    """Stress along the axis, as recovered at the nodes, summed over level cuts of the body."""
    piece = coarse_bottle()
    found = stresses(piece, a_rise(piece, seed))[2] * piece.mesh.r
    level = np.flatnonzero(np.ptp(piece.mesh.z, axis=1) < 1e-12)[2:-2]
    assert level.size > 20
    pull, _ = through_wall(piece, found[level])
    size, _ = through_wall(piece, np.abs(found[level]))
    assert np.abs(pull).max() < 0.01 * size.max()


@pytest.mark.parametrize(
    ("change", "factor"), [("expansion", 2.5), ("youngs_modulus", 0.4), ("stress_optic", 3.0)]
)
def test_stress_scales_with_expansion_and_stiffness_alone(change, factor):
    piece = coarse_bottle()
    other = dataclasses.replace(SODA, **{change: factor * getattr(SODA, change)})
    rise = a_rise(piece, 3)
    expected = heated(piece, rise).stress * (1.0 if change == "stress_optic" else factor)
    found = heated(body(other, piece.mesh), rise).stress
    assert found == pytest.approx(expected, rel=1e-6, abs=1e-6 * np.abs(expected).max())


def test_stress_is_linear_in_the_temperature():
    piece = coarse_bottle()
    a, b = a_rise(piece, 1), a_rise(piece, 2)
    both = heated(piece, 2 * a - b).stress
    parts = 2 * heated(piece, a).stress - heated(piece, b).stress
    assert both == pytest.approx(parts, abs=1e-7 * np.abs(parts).max())


def test_a_tube_turned_upside_down_gives_the_mirrored_stress():
    piece = tube(0.07, WALL, 0.1, 40, 3)
    rise = a_rise(piece, 5)
    one, other = stresses(piece, rise), stresses(piece, rise[::-1])[:, ::-1]
    sign = np.array([1, 1, 1, -1])[:, None, None]
    assert one == pytest.approx(sign * other, abs=1e-7 * np.abs(one).max())


@given(a=st.floats(-1e-3, 1e-3), b=st.floats(-1e-3, 1e-3), c=st.floats(-1e-3, 1e-3))
@settings(max_examples=20, deadline=None)
def test_strains_of_simple_motions(a, b, c):
    """``u_r = a r + c z``, ``u_z = b z``: strain (a + cz/r on the hoop), b and shear c/2."""
    piece = coarse_bottle()
    r, z = piece.mesh.r, piece.mesh.z
    moved = np.stack([a * r + c * z, np.broadcast_to(b * z, r.shape)], axis=-1).ravel()
    radial, hoop, axial, shear = piece.stress.strains(moved)
    points = piece.mesh.wall
    assert radial == pytest.approx(a, abs=1e-12)
    assert hoop == pytest.approx(a + c * points.z / points.r, abs=1e-10)
    assert axial == pytest.approx(b, abs=1e-12)
    assert shear == pytest.approx(c / 2, abs=1e-12)


def test_heated_glass_is_squeezed_and_chilled_skin_pulled():
    """Signs (common practice): the hot ring squeezed around, the chilled skin in tension."""
    piece = coarse_bottle()
    ring = piece.mesh.profile.arc_length_at_height(0.08)
    near = np.exp(-(((piece.mesh.s - ring) / 5e-3) ** 2))[:, None]
    j = int(near[:, 0].argmax())
    hot = stresses(piece, 100 * near)
    assert hot[1, j].max() < 0
    assert hot[2, j, 0] > 0 > hot[2, j, -1]
    skin = stresses(piece, -100 * near * np.exp(-piece.mesh.depth / 3e-4))
    assert skin[1, j, 0] > 0
    assert skin[2, j, 0] > 0


def test_halved_elements_move_the_largest_stress_by_less_than_one_percent():
    found = []
    for fine, rows in ((1e-3, 6), (0.5e-3, 12)):
        piece = coarse_bottle(fine=fine, rows=rows)
        ring = piece.mesh.profile.arc_length_at_height(0.08)
        near = np.exp(-(((piece.mesh.s - ring) / 5e-3) ** 2))[:, None]
        rise = 100 * near * (1 - 0.5 * np.exp(-piece.mesh.depth / 4e-4))
        found.append(by_column(piece, stresses(piece, rise)[2].ravel())[:, 0].max())
    assert found[0] == pytest.approx(found[1], rel=0.01)
