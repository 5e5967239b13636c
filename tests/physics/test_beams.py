"""Bars and disks against closed forms, and what a cut carries."""

import math

import numpy as np
import pytest

from demo_app.physics import beams
from demo_app.physics.crack_mouth import (
    buried_crack,
    edge_intensity,
    edge_opening,
    inner_opening,
    surface_crack,
)
from demo_app.physics.material_files import material
from demo_app.physics.strength import uniform_intensity

GLASS = material("soda-lime")
LENGTH, HEIGHT, THICK = 0.14, 0.02, 0.01
INNER, OUTER, PAD = 0.06, 0.12, 0.006
RADIUS = 0.025
FORCE = 1000.0  # N
LINE = FORCE / THICK  # N for each metre of thickness


def even(stress):
    return lambda depth: np.full_like(depth, stress)


@pytest.fixture(scope="module")
def disk():
    piece = beams.pressed_disk(GLASS, RADIUS, 0.5e-3)
    return piece, beams.held_by_hands(piece)


@pytest.fixture(scope="module")
def bent():
    piece = beams.bent(GLASS, LENGTH, HEIGHT, INNER, OUTER, PAD)
    return piece, beams.held_by_hands(piece)


def test_the_disk_is_round(disk):
    assert 4 * disk[0].mesh.area == pytest.approx(math.pi * RADIUS**2, rel=1e-5)


def test_the_middle_of_the_disk(disk):
    # Timoshenko and Goodier, Theory of Elasticity, art. 41; Frocht 1948: 2P/(pi D t), -6P/(pi D t).
    xx, yy, xy = LINE * disk[1].nodal[:, 0, 0]
    unit = LINE / (math.pi * 2 * RADIUS)
    assert xx == pytest.approx(2 * unit, rel=5e-3)
    assert yy == pytest.approx(-6 * unit, rel=5e-3)
    assert abs(xy) < 1e-3 * unit
    # Fringe order 8 C P / (pi D wavelength), free of the thickness.
    retardation = GLASS.stress_optic * THICK * (xx - yy)
    assert retardation == pytest.approx(8 * GLASS.stress_optic * FORCE / (math.pi * 0.05), rel=5e-3)


def test_the_lying_diameter_of_the_disk(disk):
    # Timoshenko and Goodier, art. 41; Frocht 1948 (from memory), point loads.
    piece, field = disk
    x, d = piece.mesh.x[:, 0], 2 * RADIUS
    unit = 2 * LINE / (math.pi * d)
    xx = unit * ((d**2 - 4 * x**2) / (d**2 + 4 * x**2)) ** 2
    yy = unit * (1 - 4 * d**4 / (d**2 + 4 * x**2) ** 2)
    assert LINE * field.nodal[0, :, 0] == pytest.approx(xx, abs=0.01 * unit)
    assert LINE * field.nodal[1, :, 0] == pytest.approx(yy, abs=0.02 * unit)


def test_the_bent_bar_is_the_handbooks(bent):
    # sigma = 12 M y / (b h3) between the inner pads, black in the middle (any strength of
    # materials); M = F/2 times the distance of an outer from an inner pad.
    piece, field = bent
    y = piece.mesh.y[0]
    moment = FORCE / 2 * (OUTER - INNER) / 2
    expected = -12 * moment * y / (THICK * HEIGHT**3)
    assert LINE * field.nodal[0, 0] == pytest.approx(expected, abs=2e-3 * np.abs(expected).max())
    order = GLASS.stress_optic * THICK * LINE * (field.nodal[0, 0] - field.nodal[1, 0])
    lines = 12 * GLASS.stress_optic * moment * -y / HEIGHT**3
    assert order == pytest.approx(lines, abs=4e-3 * np.abs(lines).max())
    assert THICK * LINE * beams.cut_moment(piece, field) == pytest.approx(moment, rel=1e-9)


def test_three_pads_pull_a_little_less_than_the_beam_formula():
    # Seewald 1927 and Timoshenko and Goodier, art. 40 (from memory): under a point load the lower
    # edge has 0.133 P / (b h / 2) less than 3 P L / (2 b h2).
    piece = beams.bent(GLASS, LENGTH, HEIGHT, 0.0, OUTER, 1e-3)
    pull = LINE * beams.held_by_hands(piece).nodal[0, 0, 0]
    beam = 3 * LINE * OUTER / (2 * HEIGHT**2)
    assert beam - pull == pytest.approx(0.133 * LINE / (HEIGHT / 2), rel=0.05)


def test_a_pulled_bar_is_even():
    piece = beams.pulled(GLASS, LENGTH, HEIGHT)
    field = beams.held_by_hands(piece)
    assert field.nodal[0] == pytest.approx(1 / HEIGHT, rel=1e-9)
    assert THICK * LINE * beams.cut_force(piece, field) == pytest.approx(FORCE, rel=1e-9)
    stretch = 2 * LINE * field.moved[::2].max() / LENGTH
    assert stretch == pytest.approx(FORCE / (THICK * HEIGHT) / GLASS.youngs_modulus, rel=1e-9)


@pytest.mark.parametrize("shape", ["disk", "bent"])
def test_hands_that_do_not_pull_along_leave_no_net_force(shape, request):
    piece, field = request.getfixturevalue(shape)
    assert abs(LINE * THICK * beams.cut_force(piece, field)) < 1e-8 * FORCE
    turned = beams.hands_moment(piece) - beams.cut_moment(piece, field)
    assert abs(turned) < 1e-9 * OUTER


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_whatever_is_locked_in_adds_up_to_zero(seed):
    piece = beams.bar(GLASS, LENGTH, HEIGHT)
    stress = np.random.default_rng(seed).normal(0, 1e7, (3, piece.mesh.inside.y.size))
    field = beams.locked_in(piece, stress)
    assert abs(beams.cut_force(piece, field)) < 1e-6
    assert abs(beams.cut_moment(piece, field)) < 1e-8
    assert np.abs(field.stress).max() > 1e6


def test_a_narrow_slice_keeps_the_plates_stress_less_poisson():
    # The stress across the slice is let go, so E / (1 - nu) becomes E (Timoshenko and Goodier,
    # Thermal stresses: strip against plate).
    piece = beams.bar(GLASS, LENGTH, HEIGHT)
    y = piece.mesh.inside.y

    def plate(at):
        return 50e6 * (1 - 3 * (2 * at / HEIGHT) ** 2)

    field = beams.locked_in(piece, beams.locked_stress(GLASS, plate(y)))
    middle = (1 - GLASS.poisson_ratio) * plate(piece.mesh.y[0])
    assert field.nodal[0, 0] == pytest.approx(middle, abs=0.3e6)
    assert np.abs(field.nodal[0, -1]).max() < 0.15 * np.abs(middle).max()


@pytest.mark.parametrize(
    ("name", "stress", "path", "expected"),
    [
        ("soda-lime", 5e6, 10e-3, 131),
        ("soda-lime", 50e6, 6e-3, 786),
        ("polystyrene", 5e6, 2e-3, 100),
    ],
)
def test_retardation_is_coefficient_times_stress_times_path(name, stress, path, expected):
    # ASTM C770, F218: 2.62 Brewster for soda-lime; Rudd and Gurnee 1957: 10 for polystyrene.
    solid = material(name)
    field = beams.held_by_hands(beams.pulled(solid, LENGTH, HEIGHT))
    seen = 1e9 * solid.stress_optic * path * stress * HEIGHT * (field.nodal[0] - field.nodal[1])
    assert seen == pytest.approx(expected, abs=0.6)


def test_a_thin_bar_bows_out():
    # Euler, both ends held flat: four times that of hinged ones, pi2 E I / L2.
    hinged = math.pi**2 * GLASS.youngs_modulus * (0.02 * 0.003**3 / 12) / LENGTH**2
    assert beams.bowing_limit(GLASS, LENGTH, 0.02, 0.003) == pytest.approx(4 * hinged)


def test_an_edge_crack_gapes_as_tabulated():
    # Tada, Paris and Irwin: mouth 4 sigma a / E times 1.454, K = 1.1215 sigma sqrt(pi a), for a
    # long edge crack; the weight function's mouth is 2.4 % wide of it, its K 0.7 %.
    depth, stress = 1e-4, 1e7
    _, opening = edge_opening(even(stress), depth, HEIGHT, GLASS.youngs_modulus)
    tabulated = 4 * 1.454 * stress * depth / GLASS.youngs_modulus
    assert opening[0] == pytest.approx(tabulated, rel=0.03)
    assert opening[-1] == 0
    assert (np.diff(opening) < 0).all()
    found = edge_intensity(even(stress), depth, HEIGHT)
    assert found == pytest.approx(uniform_intensity(stress, depth, 1.1215), rel=0.01)


def test_near_its_tip_a_crack_opens_as_its_intensity_says():
    # Irwin 1957: opening 8 K / E sqrt(r / (2 pi)), plane stress.
    depth, stress = 1e-3, 1e7
    places, opening = edge_opening(even(stress), depth, HEIGHT, GLASS.youngs_modulus, count=401)
    r = depth - places[-3]
    k = edge_intensity(even(stress), depth, HEIGHT)
    expected = 8 * k / GLASS.youngs_modulus * math.sqrt(r / (2 * math.pi))
    assert opening[-3] == pytest.approx(expected, rel=0.02)


def test_squeeze_shuts_a_crack():
    _, opening = edge_opening(even(-1e7), 1e-3, HEIGHT, GLASS.youngs_modulus)
    assert (opening == 0).all()
    assert edge_intensity(even(-1e7), 1e-3, HEIGHT) < 0
    assert (inner_opening(-1e7, 1e-3, GLASS.youngs_modulus)[1] == 0).all()


def test_an_inner_crack_is_an_ellipse():
    # Griffith 1921: area of the opened crack 2 pi sigma a2 / E.
    places, opening = inner_opening(1e7, 1e-3, GLASS.youngs_modulus, count=20001)
    area = np.trapezoid(opening, places)
    assert area == pytest.approx(2 * math.pi * 1e7 * 1e-6 / GLASS.youngs_modulus, rel=1e-5)


def test_a_buried_crack_under_an_even_or_slanting_pull():
    # Griffith 1921; slanting pull s x / c: K at the tip is half of sqrt(pi c) s (Tada handbook).
    top, tip, _, opening = buried_crack(even(1e7), 1e-3, 3e-3, 7e10)
    assert top == pytest.approx(1e7 * math.sqrt(math.pi * 1e-3), rel=1e-9)
    assert tip == pytest.approx(top)
    assert opening == pytest.approx(inner_opening(1e7, 1e-3, 7e10)[1], rel=1e-9, abs=1e-15)
    _, slant, _, _ = buried_crack(lambda x: 1e7 * (x - 2e-3) / 1e-3, 1e-3, 3e-3, 7e10)
    assert slant == pytest.approx(top / 2, rel=1e-9)


def test_behind_a_squeezed_skin_a_crack_opens_only_inside():
    def stress(depth):
        return 1e8 * (2.5 * depth / HEIGHT * 2 - 1)

    shut, _, gap = surface_crack(stress, 2e-3, HEIGHT, 7e10)
    assert shut < 0
    assert (gap == 0).all()
    reached, places, gap = surface_crack(stress, 7e-3, HEIGHT, 7e10)
    assert reached > 0
    assert gap[places < 2.5e-3].max() == 0
    assert gap.max() > 0
