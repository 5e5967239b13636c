"""Sightlines through a piece of revolution: Abel transforms, closed forms, pieces, signs."""

import functools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad

from demo_app.optics.sightlines import abel_weights, sightlines
from demo_app.physics.heat import ROOM
from demo_app.physics.material_files import material
from demo_app.physics.revolve.body import body, cold, nodal_stress, strained
from demo_app.physics.revolve.mesh import graded, through, wall_mesh
from demo_app.physics.revolve.profile import bottle, cylinder

SODA = material("soda-lime")
OPTIC = 2.62e-12
OUTER, WALL, LENGTH = 0.035, 3e-3, 0.06


@functools.cache
def tube():
    return wall_mesh(
        cylinder(2 * OUTER, WALL, LENGTH), np.linspace(0, LENGTH, 13), through(WALL, 2e-4, 4)
    )


@functools.cache
def flask():
    """A bottle, closed below, with a coarse mesh."""
    profile = bottle(0.07, WALL)
    ends = graded(profile, profile.arc_length_at_height(0.08), fine=2e-3, flat=0.01, coarse=0.012)
    return wall_mesh(profile, ends, through(WALL, 2e-4, 4))


@functools.cache
def lines(mesh, **options):
    return sightlines(mesh, **options)


def stress(mesh, radial=0.0, hoop=0.0, axial=0.0, shear=0.0):
    """Nodal stress (4, nodes) from fields of shape (columns, rows) or numbers, Pa."""
    parts = (radial, hoop, axial, shear)
    return np.stack([np.broadcast_to(part, mesh.r.shape).ravel() for part in parts]).astype(float)


def chord(radius, x):
    return 2 * np.sqrt(np.maximum(radius**2 - x**2, 0))


@given(
    inner=st.floats(0, 0.9),
    values=st.lists(st.floats(-5, 5), min_size=4, max_size=4),
    ray=st.floats(0, 0.999),
)
@settings(max_examples=40, deadline=None)
def test_abel_weights_are_exact_for_straight_pieces(inner, values, ray):
    r = inner + (1 - inner) * np.array([0, 0.2, 0.7, 1.0])
    found = float(abel_weights(r[None], np.array([[ray]]))[0, 0] @ values)
    # r = x cosh(u) takes the root out of the integral; u is not defined on the axis
    exact = 0.0
    for low, high in zip(np.maximum(r[:-1], ray), np.maximum(r[1:], ray), strict=True):
        if high > low:
            a, b = math.sqrt(low**2 - ray**2), math.sqrt(high**2 - ray**2)
            exact += quad(lambda y: np.interp(math.hypot(y, ray), r, values), a, b)[0]
    assert found == pytest.approx(exact, abs=1e-6)


def test_a_known_abel_pair():
    """``sqrt(1-r**2)`` and ``pi/2 (1-x**2)`` (Bracewell, The Fourier Transform; from memory)."""
    r = np.sin(np.linspace(0, np.pi / 2, 200))[None]
    x = np.linspace(0, 0.95, 12)[None]
    found = 2 * abel_weights(r, x)[0] @ np.sqrt(1 - r[0] ** 2)
    assert found == pytest.approx(np.pi / 2 * (1 - x[0] ** 2), abs=2e-4)


def test_a_pull_along_a_tube_is_seen_as_its_path_through_glass():
    found = lines(tube()).map(stress(tube(), axial=10e6), OPTIC)
    x = found.across[:, None] * OUTER
    exact = 1e9 * OPTIC * 10e6 * (chord(OUTER, x) - chord(OUTER - WALL, x))
    assert found.v1 == pytest.approx(np.broadcast_to(exact, found.v1.shape), abs=0.02)
    assert np.abs(found.v2).max() == 0
    assert found.half_width_mm == pytest.approx(1e3 * OUTER)


def test_five_megapascal_through_ten_millimetres():
    """``C sigma t``: 131 nm with C 2.62 Brewster (ASTM C770 and F218): two walls of 5 mm."""
    mesh = wall_mesh(cylinder(0.07, 5e-3, 0.02), np.linspace(0, 0.02, 5), np.linspace(0, 5e-3, 3))
    found = lines(mesh).map(stress(mesh, axial=5e6), OPTIC)
    assert found.retardation_nm()[0] == pytest.approx(131, abs=0.05)


@pytest.mark.parametrize("mesh", [tube(), flask()])
def test_pressure_alone_is_dark(mesh):
    field = 50e6 * (1 + mesh.z / 0.1 + mesh.r / 0.03)
    found = lines(mesh).map(stress(mesh, field, field, field), OPTIC)
    assert found.retardation_nm().max() < 0.02


@pytest.mark.parametrize("mesh", [tube(), flask()])
def test_no_stress_is_dark(mesh):
    assert lines(mesh).map(stress(mesh), OPTIC).retardation_nm().max() == 0


def test_hoop_and_radial_stress_count_by_their_share_across_the_ray():
    """``integral(hoop sin**2 + radial cos**2)``: for equal ones the path, and apart in closed form.

    Over a chord the integral of (x/r)**2 is ``2 x atan(sqrt(R**2-x**2) / x)``.
    """
    found = lines(tube()).map(stress(tube(), radial=10e6), OPTIC)
    x = found.across[1:, None] * OUTER

    def share(radius):
        return 2 * x * np.arctan(chord(radius, x) / 2 / x)

    exact = -1e9 * OPTIC * 10e6 * (share(OUTER) - share(OUTER - WALL))
    assert found.v1[1:] == pytest.approx(np.broadcast_to(exact, found.v1[1:].shape), abs=0.25)
    around = lines(tube()).map(stress(tube(), hoop=10e6), OPTIC)
    both = lines(tube()).map(stress(tube(), radial=10e6, hoop=10e6), OPTIC)
    assert around.v1 + found.v1 == pytest.approx(both.v1, abs=0.02)
    assert np.abs(found.v1[0]).max() < 0.02


def test_shear_in_closed_form():
    """``2 C tau integral(x/r)`` over both walls: ``4 C tau x (acosh(b/x) - acosh(a/x))``."""
    found = lines(tube()).map(stress(tube(), shear=10e6), OPTIC)
    x = found.across[1:, None] * OUTER
    inner = np.arccosh(np.maximum((OUTER - WALL) / x, 1.0))
    exact = 4e9 * OPTIC * 10e6 * x * (np.arccosh(OUTER / x) - inner)
    assert found.v2[1:] == pytest.approx(np.broadcast_to(exact, found.v2[1:].shape), abs=0.25)
    assert (found.v2[1:-1] > 0).all()
    assert np.abs(found.v1).max() == 0


@pytest.mark.parametrize("degrees", [-60, -30, -5, 5, 30, 60])
def test_the_axis_turns_as_a_known_pull_does(degrees):
    """A pull of direction ``degrees`` from the axis towards the outside, seen near the limb."""
    angle = math.radians(degrees)
    pull = 10e6
    field = stress(
        tube(),
        radial=pull * math.sin(angle) ** 2,
        axial=pull * math.cos(angle) ** 2,
        shear=pull * math.sin(angle) * math.cos(angle),
    )
    found = lines(tube()).map(field, OPTIC)
    j = int(np.searchsorted(found.across, 0.995))
    axis = np.degrees(np.arctan2(found.v2[j], found.v1[j]) / 2)
    assert axis == pytest.approx(degrees, abs=0.6)


def test_the_map_is_linear_in_stress_and_coefficient():
    rng = np.random.default_rng(1)
    a, b = rng.normal(0, 1e7, (2, 4, flask().nodes))
    view = lines(flask())
    both = view.map(2 * a - b, OPTIC)
    one, other = view.map(a, OPTIC), view.map(b, OPTIC)
    size = float(np.abs(one.v1).max())
    assert both.v1 == pytest.approx(2 * one.v1 - other.v1, abs=1e-5 * size)
    assert both.v2 == pytest.approx(2 * one.v2 - other.v2, abs=1e-5 * size)
    assert view.map(a, 2 * OPTIC).v1 == pytest.approx(2 * one.v1, abs=1e-5 * size)
    assert view.map(a, -OPTIC).v1 == pytest.approx(-one.v1, abs=1e-5 * size)


def along_a_ray(mesh, field, x, z):
    """Path integrals of v1 and v2 (m Pa) from smooth fields of r and z by brute force; the path."""
    reach = mesh.profile.place(mesh.s, np.zeros(mesh.s.size))[0].max() * 1.001
    y = (np.arange(60_000) + 0.5) / 60_000 * math.sqrt(reach**2 - x**2)
    r = np.hypot(x, y)
    s, _ = mesh.profile.locate(r, np.full_like(r, z))
    inside = ~np.isnan(s)
    radial, hoop, axial, shear = field(r, z)
    cosine = x / r
    across = radial * cosine**2 + hoop * (1 - cosine**2)
    step = 2 * (y[1] - y[0])
    v1 = step * float(((axial - across) * inside).sum())
    return v1, step * float((2 * shear * cosine * inside).sum()), step * float(inside.sum())


def smooth(r, z):
    """Four smooth stress fields, Pa."""
    return (
        20e6 * np.cos(40 * r) + 0 * z,
        -30e6 * (1 + 10 * r) * np.cos(15 * z),
        40e6 * np.sin(20 * z + 30 * r),
        10e6 * np.cos(25 * z) * (30 * r),
    )


def test_a_bottle_by_brute_force():
    """Body, shoulder, neck, heel and base; rays near the axis and near the limb."""
    mesh = flask()
    view = lines(mesh)
    found = view.map(stress(mesh, *smooth(mesh.r, mesh.z)), OPTIC)
    worst = []  # as shares of the largest stress over the whole path
    for z in (0.0012, 0.0045, 0.03, 0.08, 0.15, 0.165, 0.2):
        j = int(np.abs(view.z - z).argmin())
        for share in (0.02, 0.4, 0.8, 0.97):
            i = int(np.abs(found.across - share).argmin())
            x = found.across[i] * view.half_width[j]
            v1, v2, path = along_a_ray(mesh, smooth, x, view.z[j])
            size = 1e9 * OPTIC * 40e6 * path
            worst.append((found.v1[i, j] - 1e9 * OPTIC * v1) / size)
            worst.append((found.v2[i, j] - 1e9 * OPTIC * v2) / size)
    assert np.abs(worst).max() < 0.005


def test_the_outline_is_the_bottle_s():
    view = lines(flask())
    found = view.map(stress(flask()), OPTIC)
    profile = flask().profile
    assert found.along_mm[0] == pytest.approx(0, abs=1e-3)
    assert found.along_mm[-1] == pytest.approx(220, abs=1e-3)
    s = np.linspace(0, profile.length, 20_001)
    r, z = profile.place(s, np.zeros(s.size))
    for height in (2.0, 10.0, 80.0, 150.0, 165.0, 210.0):
        j = int(np.abs(found.along_mm - height).argmin())
        at = int(np.abs(z - view.z[j]).argmin())
        assert found.half_width_mm[j] == pytest.approx(1e3 * r[at], abs=0.02)
    assert found.across[[0, -1]] == pytest.approx([0, 1])


def test_the_pieces_of_a_cut_bottle_are_seen_each_alone():
    """Where a level meets one piece alone the picture is that of the whole bottle."""
    whole = flask()
    split = wall_mesh(whole.profile, whole.s[::2], whole.depth[::2], split=float(whole.s[::2][20]))
    cut = split.split
    height = 1e3 * whole.profile.at(split.s[[cut]])[1][0]
    field = smooth(split.r, split.z)
    total = lines(whole).map(stress(whole, *smooth(whole.r, whole.z)), OPTIC)
    below = sightlines(split, columns=slice(0, cut)).map(stress(split, *field), OPTIC)
    above = sightlines(split, columns=slice(cut, None)).map(stress(split, *field), OPTIC)
    assert below.along_mm.max() == pytest.approx(height, abs=1e-3)
    assert above.along_mm.min() == pytest.approx(height, abs=1e-3)
    for piece in (below, above):
        for row in (0, 40, 90):
            expected = np.interp(piece.along_mm, total.along_mm, total.v1[row])
            assert piece.v1[row] == pytest.approx(expected, abs=1.5)
    # over the picture the two pieces are the whole
    assert volume_sum(below) + volume_sum(above) == pytest.approx(volume_sum(total), rel=2e-3)


def volume_sum(found):
    """Integral of v1 over the whole outline, nm mm2."""
    across = np.trapezoid(found.v1, found.across, axis=0) * found.half_width_mm
    return 2 * float(np.trapezoid(across, found.along_mm))


@functools.cache
def hot_flask():
    """Nodal stress of the bottle with a ring that is hotter by some 100 K, most of it outside."""
    mesh = flask()
    piece = body(SODA, mesh)
    at = mesh.profile.arc_length_at_height(0.08)
    near = np.exp(-(((mesh.s - at) / 6e-3) ** 2))[:, None] * (1 - 0.4 * mesh.depth / WALL)
    return nodal_stress(piece, strained(piece, cold(piece), (ROOM + 100 * near).ravel(), 1.0))


def test_a_free_bottle_sums_to_nothing_over_the_picture():
    """Mean-stress theorem: each component sums to zero over the volume, so v1 over the picture."""
    found = lines(flask()).map(hot_flask(), OPTIC)
    size = np.abs(np.trapezoid(np.abs(found.v1), found.across, axis=0) * found.half_width_mm)
    scale = 2 * float(np.trapezoid(size, found.along_mm))
    assert abs(volume_sum(found)) < 0.01 * scale
    assert found.retardation_nm().max() > 300


@pytest.mark.parametrize("finer", [{"samples": 58}, {"rays": 192}])
def test_more_samples_and_rays_change_little(finer):
    default = lines(flask()).map(hot_flask(), OPTIC)
    better = sightlines(flask(), **finer).map(hot_flask(), OPTIC)
    assert better.along_mm == pytest.approx(default.along_mm)
    peak = float(default.retardation_nm().max())
    for name in ("v1", "v2"):
        old, new = getattr(default, name), getattr(better, name)
        on_old = np.stack(
            [np.interp(default.across, better.across, new[:, j]) for j in range(new.shape[1])],
            axis=1,
        )
        change = np.abs(on_old - old) / peak
        # beside the inner wall's edge the path has a cusp, 0.2 mm wide, that no ray hits
        assert np.quantile(change, 0.99) < 0.01
        assert change.mean() < 5e-4
        assert change.max() < 0.06
    assert better.retardation_nm().max() == pytest.approx(peak, rel=0.01)
