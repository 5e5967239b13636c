"""Air, radiation, flame and water on a surface, against an independent library and balances."""

import math
from dataclasses import replace

import ht
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from revolve_pieces import PLAIN, coarse_bottle, heat_content, nodal

from demo_app.physics.heat import (
    BOILING,
    FILM_BOILING,
    FOAM_LIMIT,
    ROLLS_OFF,
    ROOM,
    STEFAN_BOLTZMANN,
    WATER_EFFUSIVITY,
    WATER_HEAT,
    WATER_LATENT,
    WETTED,
    ZERO_C,
    Water,
    drop,
    flame_flux,
    floats,
    outlasts_water,
    radiation_coefficient,
    still_air_coefficient,
    warm_water,
    water_coefficient,
    wets_below,
)
from demo_app.physics.revolve.body import cold
from demo_app.physics.revolve.surroundings import (
    INSIDE_AIR,
    Firing,
    dried,
    heated,
    outer_places,
    watered,
)

GLASS = 1500.0
"""Effusivity of hot soda-lime, J/(m2 K sqrt(s))."""


@pytest.mark.parametrize("diameter", [0.04, 0.07, 0.12])
@pytest.mark.parametrize(
    ("film", "kinematic", "conductivity", "prandtl"),
    [
        (300, 15.89e-6, 26.3e-3, 0.707),
        (400, 26.41e-6, 33.8e-3, 0.690),
        (500, 38.79e-6, 40.7e-3, 0.684),
        (600, 52.69e-6, 46.9e-3, 0.685),
    ],
)
def test_still_air_around_a_cylinder(diameter, film, kinematic, conductivity, prandtl):
    """Library ht (Churchill and Chu), with air of Incropera, table A.4 (from memory); 3 %."""
    surface = 2 * film - ROOM
    grashof = 9.80665 / film * (surface - ROOM) * diameter**3 / kinematic**2
    nusselt = ht.Nu_horizontal_cylinder_Churchill_Chu(prandtl, grashof)
    found = still_air_coefficient(np.array(surface), ROOM, diameter)
    assert found == pytest.approx(nusselt * conductivity / diameter, rel=0.03)


def test_still_air_around_a_wide_cylinder():
    """0.1 m in air at 20 degC: 5.1 (50 degC) to 8.9 W/m2K (600 degC), library ht 1.2.0."""
    found = still_air_coefficient(np.array([50, 600]) + ZERO_C, ROOM, 0.1)
    assert found == pytest.approx([5.1, 8.9], rel=0.02)


@pytest.mark.parametrize(
    ("celsius", "coefficient"),
    [(50, 6.0), (100, 7.7), (200, 12.1), (300, 18.3), (400, 26.6), (500, 37.2), (600, 50.5)],
)
def test_grey_radiation(celsius, coefficient):
    """Emissivity 0.9 to 20 degC, library ht 1.2.0, ht.q_rad."""
    kelvin = celsius + ZERO_C
    found = float(radiation_coefficient(np.array(kelvin), ROOM, 0.9))
    assert found == pytest.approx(coefficient, abs=0.06)
    assert found * (kelvin - ROOM) == pytest.approx(ht.q_rad(0.9, kelvin, ROOM), rel=1e-5)


@given(kelvin=st.floats(200, 1500), ambient=st.floats(250, 350), emissivity=st.floats(0, 1))
def test_radiation_is_the_fourth_power_law(kelvin, ambient, emissivity):
    flux = radiation_coefficient(np.array(kelvin), ambient, emissivity) * (kelvin - ambient)
    exact = emissivity * STEFAN_BOLTZMANN * (kelvin**4 - ambient**4)
    assert flux == pytest.approx(exact, rel=1e-9, abs=1e-9)


def test_the_flame_has_half_its_flux_at_half_its_width():
    places = np.array([0.05, 0.046, 0.054, 0.02])
    found = flame_flux(places, 0.05, 8e-3, 8e4)
    assert found[:3] == pytest.approx([8e4, 4e4, 4e4])
    assert found[3] < 1.0


def test_a_drop_is_a_cold_cap():
    places = np.linspace(-0.01, 0.01, 2001)
    water = drop(places, 0.002)
    assert np.ptp(places[water.depth > 0]) == pytest.approx(6e-3, rel=0.01)
    assert places[water.depth.argmax()] == pytest.approx(0.002, abs=1e-9)
    assert water.depth.max() == pytest.approx(1.2e-3)
    # area of a parabola's cap: two thirds of width times height
    area = np.trapezoid(water.depth, places)
    assert area == pytest.approx(2 / 3 * 6e-3 * 1.2e-3, rel=1e-3)
    assert (water.temperature == ROOM).all()


@given(water=st.floats(280, 373), effusivity=st.floats(500, 3000))
def test_water_wets_while_the_contact_is_below_the_foam_limit(water, effusivity):
    """Contact temperature of two half-spaces (Carslaw and Jaeger section 2.15)."""
    surface = float(wets_below(np.array(water), effusivity))
    contact = (effusivity * surface + WATER_EFFUSIVITY * water) / (effusivity + WATER_EFFUSIVITY)
    assert contact == pytest.approx(FOAM_LIMIT, rel=1e-12)


def test_cold_water_on_hot_glass_floats_above_some_five_hundred_degrees():
    # 27/32 of water's critical temperature is 273 degC (Spiegler and others 1963)
    assert pytest.approx(273, abs=1) == FOAM_LIMIT - ZERO_C
    assert 450 < outlasts_water(GLASS) - ZERO_C < 650
    # a better conductor gives its heat faster: water floats at a lower temperature
    assert outlasts_water(15_000.0) < outlasts_water(GLASS)
    # warm water floats earlier than cold water
    assert wets_below(np.array(370.0), GLASS) < outlasts_water(GLASS)


def test_the_coefficient_falls_from_wetting_to_floating():
    limit = outlasts_water(GLASS)
    water = Water(np.full(4, 1e-3), np.full(4, ROOM))
    found = water_coefficient(water, limit + np.array([-200, 0, 200, 20.0]), GLASS)
    assert found[0] == pytest.approx(WETTED, rel=1e-3)
    assert found[1] == pytest.approx(math.sqrt(WETTED * FILM_BOILING), rel=1e-6)
    assert found[2] == pytest.approx(FILM_BOILING, rel=1e-3)
    assert FILM_BOILING < found[3] < found[1]


def test_a_dry_place_exchanges_nothing_with_water():
    dry = Water(np.zeros(3), np.full(3, ROOM))
    hot = np.array([300.0, 600.0, 900.0])
    coefficient = water_coefficient(dry, hot, GLASS)
    assert (coefficient == 0).all()
    later = warm_water(dry, hot, coefficient, GLASS, 1.0)
    assert (later.depth == 0).all()
    assert (later.temperature == ROOM).all()


def enthalpy(before, after):
    """Heat (J/m2) that a layer took to become another: warming, then boiling off."""
    warmed = WATER_HEAT * before.depth * (after.temperature - before.temperature)
    return warmed + WATER_LATENT * (before.depth - after.depth)


@given(
    depth=st.floats(1e-5, 2e-3),
    start=st.floats(ROOM, BOILING),
    surface=st.floats(ROOM, 600),
    seconds=st.floats(1e-3, 0.5),
)
@settings(max_examples=100, deadline=None)
def test_a_layer_takes_the_heat_that_its_law_says(depth, start, surface, seconds):
    """Exponential approach to the surface: the heat is all spent on warming and boiling."""
    before = Water(np.array([depth]), np.array([start]))
    hot = np.array([surface])
    coefficient = water_coefficient(before, hot, GLASS)
    after = warm_water(before, hot, coefficient, GLASS, seconds)
    store = WATER_HEAT * depth
    given = store * (1 - math.exp(-coefficient[0] * seconds / store)) * (surface - start)
    if after.depth[0] == 0.0:
        return  # the layer ended within the step
    rolled = float(floats(before, hot, GLASS)[0])
    if rolled < 1e-6:
        assert enthalpy(before, after)[0] == pytest.approx(given, rel=1e-3, abs=1.0)
    assert after.temperature[0] <= BOILING
    assert after.depth[0] <= depth


def test_a_floating_drop_rolls_off():
    surface = np.array([outlasts_water(GLASS) + 200])
    water = Water(np.array([1e-3]), np.array([ROOM]))
    seconds = 1e-3
    for _ in range(300):
        coefficient = water_coefficient(water, surface, GLASS)
        water = warm_water(water, surface, coefficient, GLASS, seconds)
    # after ROLLS_OFF seconds a share of 1/e is left, less what boiled
    assert water.depth[0] == pytest.approx(1e-3 / math.e, rel=0.02)
    assert pytest.approx(0.3) == ROLLS_OFF
    for _ in range(300 * 12):
        coefficient = water_coefficient(water, surface, GLASS)
        water = warm_water(water, surface, coefficient, GLASS, seconds)
    assert water.depth[0] == 0.0


def lost_and_taken(seconds, steps):
    """Heat (J) that the glass lost to the drop, and heat that the drop took, in `seconds`."""
    piece = coarse_bottle(PLAIN, fine=1e-3, rows=6)
    ring = piece.mesh.profile.arc_length_at_height(0.08)
    firing = Firing(0.0, 8e-3, 0.0, 0.0, 0.0)
    rise = 250 * np.exp(-(((piece.mesh.s - ring) / 6e-3) ** 2))[:, None]
    glass = replace(cold(piece), temperature=nodal(piece, ROOM + rise))
    start = heat_content(piece, glass.temperature, PLAIN)
    water, dt = watered(piece, ring, firing, None, 0.0), seconds / steps
    to_air, taken = 0.0, 0.0
    for _ in range(steps):
        before = glass
        glass = heated(piece, ring, firing, before, water, 0.0, dt)
        to_air += dt * air_takes(piece, before, glass, water.depth == 0)
        later, _ = dried(piece, glass, water, dt)
        taken += float(piece.mesh.outer.weight @ enthalpy(water, later))
        water = later
    assert water.temperature.max() <= BOILING
    return start - heat_content(piece, glass.temperature, PLAIN) - to_air, taken


def air_takes(piece, before, after, dry):
    """Heat flow (W) into the air inside and, where `dry`, outside, in the mean of two instants."""
    total = 0.0
    for side, area, where in (
        (piece.heat.outer, piece.mesh.outer.weight, dry),
        (piece.heat.inner, piece.mesh.inner.weight, True),
    ):
        one, two = side.value @ before.temperature, side.value @ after.temperature
        coefficient = radiation_coefficient(one, ROOM, PLAIN.emissivity)
        outside = side is piece.heat.outer
        diameter = 2 * float(piece.mesh.r.max())
        coefficient += still_air_coefficient(one, ROOM, diameter) if outside else INSIDE_AIR
        total += float(np.sum(area * where * coefficient * ((one + two) / 2 - ROOM)))
    return total


def test_the_drop_takes_the_heat_that_the_glass_loses():
    """Water and glass step by turns, so their heats differ by an error of first order."""
    gaps = []
    for steps in (75, 150, 300):
        lost, taken = lost_and_taken(1.5, steps)
        gaps.append((lost - taken) / taken)
    assert abs(gaps[0]) < 0.04
    assert gaps[0] / gaps[1] == pytest.approx(2, rel=0.1)
    assert gaps[1] / gaps[2] == pytest.approx(2, rel=0.1)
    assert abs(2 * gaps[2] - gaps[1]) < 1e-3


def test_a_dry_bottle_meets_air_and_a_wet_one_water_where_it_is_wet():
    piece = coarse_bottle(fine=1e-3, rows=6)
    ring = piece.mesh.profile.arc_length_at_height(0.08)
    firing = Firing(0.0, 8e-3, 0.0, 0.0, 0.0)
    warm = replace(cold(piece), temperature=np.full(piece.mesh.nodes, 450.0))
    dry = heated(piece, ring, firing, warm, None, 0.0, 0.02)
    wet = heated(piece, ring, firing, warm, watered(piece, ring, firing, None, 0.0), 0.0, 0.02)
    colder = (dry.temperature - wet.temperature).reshape(piece.mesh.r.shape)[:, 0]
    near = np.abs(piece.mesh.s - ring)
    assert colder[near < 2e-3].min() > 1.0
    assert np.abs(colder[near > 8e-3]).max() < 1e-3


def test_the_drop_lands_at_its_time_and_only_once_and_a_second_one_joins_it():
    piece = coarse_bottle()
    firing = Firing(0.0, 8e-3, 0.0, 2.0, 1e-3)
    ring = piece.mesh.profile.arc_length_at_height(0.08)
    assert watered(piece, ring, firing, None, 1.9) is None
    landed = watered(piece, ring, firing, None, 2.0)
    assert outer_places(piece)[landed.depth.argmax()] == pytest.approx(ring + 1e-3, abs=1e-3)
    half = Water(landed.depth / 2, landed.temperature)
    assert watered(piece, ring, firing, half, 2.5) is half
    warm = Water(landed.depth / 2, landed.temperature + 30)
    second = watered(piece, ring, replace(firing, drop_at=4.0), warm, 4.0)
    assert second.depth == pytest.approx(1.5 * landed.depth)
    assert second.temperature[second.depth > 0] == pytest.approx(ROOM + 10)
    without = Firing(0.0, 8e-3, 0.0, None, 0.0)
    assert watered(piece, ring, without, None, 5.0) is None
