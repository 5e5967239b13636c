"""Water in a tumbler: the slab's series, the heat that goes over, and customary shocks."""

import dataclasses
import math

import numpy as np
import pytest
from revolve_pieces import DIFFUSIVITY, PLAIN, SODA, UNIT, exchange

from demo_app.base.errors import InputError
from demo_app.physics.heat import ROOM, WATER_HEAT
from demo_app.physics.plates import flaws
from demo_app.physics.revolve.body import advance, nodal_stress
from demo_app.physics.revolve.cracking import intensity_weights, wall_stress
from demo_app.physics.revolve.pouring import (
    FULL,
    STREAM,
    Pour,
    empty,
    poured,
    pulled,
    step_seconds,
    water_convection,
    wetted,
)
from demo_app.physics.revolve.tumbler import tumbler
from demo_app.physics.strength import HALF_PENNY, probability

DIAMETER, HEIGHT = 0.075, 0.095
BIAXIAL = UNIT / (1 - PLAIN.poisson_ratio)


def filling(cup, pour, warm=ROOM, seconds=30.0):
    """Every instant of a pouring, its time with it."""
    filled, now = empty(cup, warm, pour.water), 0.0
    while now < seconds:
        length = step_seconds(pour, now)
        filled = poured(cup, pour, filled, now, length)
        now += length
        yield now, filled


def peak_pull(cup, pour, warm=ROOM):
    weights = HALF_PENNY * intensity_weights(cup.piece.mesh, 20e-6)
    worn = flaws(cup.piece.material, "used")
    seen = [pulled(cup, filled, worn, weights) for _, filled in filling(cup, pour, warm)]
    return (
        max(pull.outside for pull in seen),
        max(pull.inside for pull in seen),
        probability(max(pull.risk for pull in seen)),
    )


# Largest stress in a slab that meets a bath of another temperature on both sides, as a share of
# E alpha dT / (1 - nu): surface, and middle (the other sign). Exact series, Carslaw and Jaeger.
SERIES = [(1.0, 0.2083, 0.102), (2.0, 0.3166, 0.152), (5.0, 0.4778, 0.218)]


@pytest.mark.parametrize(("biot", "at_surface", "in_middle"), SERIES)
def test_a_wall_wetted_on_one_side_is_half_of_a_slab_in_a_bath(biot, at_surface, in_middle):
    wall = 2e-3
    cup = tumbler(PLAIN, 0.3, wall, 0.3, through=9)
    piece, mesh = cup.piece, cup.piece.mesh
    coefficient = biot * PLAIN.conductivity[0] / wall
    far = int(np.argmin(np.abs(mesh.z[:, 0] - 0.17)))
    glass = empty(cup, ROOM, ROOM).glass
    dry, wet = exchange(piece.heat.outer), exchange(piece.heat.inner, coefficient, ROOM + 1)
    inside, outside = [], []
    for fourier in np.diff(np.geomspace(1e-4, 1.0, 160)):
        glass = advance(piece, glass, fourier * wall**2 / DIFFUSIVITY, dry, wet)
        hoop = wall_stress(mesh, nodal_stress(piece, glass)).hoop[far] / BIAXIAL
        inside.append(hoop[-1])
        outside.append(hoop[0])
    # A ring has one strain all around: the slab that may not bend, at a radius of 75 walls.
    assert -min(inside) == pytest.approx(at_surface, rel=0.03)
    assert max(outside) == pytest.approx(in_middle, rel=0.03)


def test_no_pull_exceeds_that_of_a_shock_without_delay():
    # Hasselman 1969, J. Am. Ceram. Soc. 52, 600: E alpha dT / (1 - nu).
    bound = SODA.youngs_modulus * SODA.expansion * 80 / (1 - SODA.poisson_ratio)
    for wall in (1.2e-3, 6e-3):
        outside, inside, _ = peak_pull(tumbler(SODA, DIAMETER, wall, HEIGHT), Pour(ROOM + 80, 4.0))
        assert 0.05 * bound < outside < bound
        assert inside < bound


def test_ware_bears_the_customary_shock():
    # Soda-lime containers go from hot into water 42 K colder (ISO 7459; the figure is common
    # practice): practically all must live.
    cup = tumbler(SODA, DIAMETER, 3e-3, HEIGHT)
    *_, odds = peak_pull(cup, Pour(ROOM, 4.0), ROOM + 42)
    assert odds < 1e-3


def test_cold_water_pulls_at_the_inside_of_a_hot_tumbler():
    outside, inside, _ = peak_pull(tumbler(SODA, DIAMETER, 4e-3, HEIGHT), Pour(ROOM, 4.0), 353.15)
    assert inside > 3 * outside > 0


def test_the_water_gives_what_the_glass_takes():
    cup = tumbler(PLAIN, DIAMETER, 4e-3, HEIGHT)
    pour = Pour(353.15, 4.0)
    mesh, heat = cup.piece.mesh, cup.piece.heat
    lost, filled_before, t0 = 0.0, empty(cup, ROOM, pour.water), 0.0
    bore = math.pi * cup.bore**2
    for now, filled in filling(cup, pour, seconds=25.0):
        # The water's own book: what came in, less what is left, is what it gave.
        came = WATER_HEAT * bore * filled.level * pour.water
        left = WATER_HEAT * bore * filled.level * filled.water
        assert came - left == pytest.approx(filled.given, rel=1e-9, abs=1e-6)
        outside = (
            heat.outer.value @ (filled.glass.temperature + filled_before.glass.temperature) / 2
        )
        lost += 12.0 * float(mesh.outer.weight @ (outside - ROOM)) * (now - t0)
        filled_before, t0 = filled, now
    rise = heat.value @ (filled.glass.temperature - ROOM)
    taken = PLAIN.density * 720.0 * float(mesh.wall.weight @ rise)
    # 12 W/(m2 K) stands for air and radiation, which take but a small part.
    assert lost < 0.1 * taken
    assert filled.given == pytest.approx(taken + lost, rel=0.02)


def test_water_moves_heat_as_a_bath_does():
    # 1,000 to 3,000 W/(m2 K) for glass in water (common practice).
    found = water_convection(360.0, np.array([295.0, 330.0, 358.0]))
    assert (np.diff(found) < 0).all()
    assert 800 < found[1] < 2000
    assert 1000 <= STREAM <= 3000


def test_the_water_rises_to_its_mark():
    cup = tumbler(SODA, DIAMETER, 3e-3, HEIGHT)
    *_, (_, last) = filling(cup, Pour(353.15, 3.0), seconds=5.0)
    assert last.level == pytest.approx(FULL * (HEIGHT - 3e-3))
    share = wetted(np.array([0.0, last.level, last.level + 0.05]), last.level)
    assert share.tolist() == [1.0, 1.0, 0.0]


def test_evenly_warm_glass_is_free_of_stress():
    cup = tumbler(SODA, DIAMETER, 5e-3, HEIGHT)
    glass = empty(cup, ROOM + 50, ROOM + 50).glass
    still = exchange(cup.piece.heat.outer), exchange(cup.piece.heat.inner)
    later = advance(cup.piece, glass, 1.0, *still)
    assert np.abs(later.stress).max() < 1.0


def test_halving_the_steps_changes_little():
    cup, pour = tumbler(SODA, DIAMETER, 5e-3, HEIGHT), Pour(368.15, 4.0)
    filled, now, finer = empty(cup, ROOM, pour.water), 0.0, []
    while now < 15.0:
        half = step_seconds(pour, now) / 2
        for _ in range(2):
            filled = poured(cup, pour, filled, now, half)
            now += half
        finer.append(pulled(cup, filled, flaws(SODA, "used"), np.zeros(cup.piece.mesh.depth.size)))
    coarse = [
        pulled(cup, one, flaws(SODA, "used"), np.zeros(cup.piece.mesh.depth.size))
        for _, one in filling(cup, pour, seconds=15.0)
    ]
    assert max(p.outside for p in coarse) == pytest.approx(max(p.outside for p in finer), rel=0.01)


def test_more_elements_change_little():
    pour = Pour(368.15, 4.0)
    coarse, fine = (
        peak_pull(tumbler(SODA, DIAMETER, 6e-3, HEIGHT, through=count), pour)[0]
        for count in (7, 11)
    )
    assert coarse == pytest.approx(fine, rel=0.01)


def test_a_wall_as_thick_as_the_tumbler_is_refused():
    with pytest.raises(InputError, match="leave no room"):
        tumbler(SODA, 0.05, 0.022, HEIGHT)


def test_a_softer_expansion_pulls_less():
    less = dataclasses.replace(SODA, expansion=SODA.expansion / 2)
    pour = Pour(368.15, 4.0)
    one, other = (
        peak_pull(tumbler(glass, DIAMETER, 5e-3, HEIGHT), pour)[0] for glass in (SODA, less)
    )
    assert other == pytest.approx(one / 2, rel=1e-6)
