"""A thin plate with a warm spot and an old crack: closed forms for warmth, stress and K."""

import functools
import itertools

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq

from demo_app.physics.heat import ROOM
from demo_app.physics.material_files import material
from demo_app.physics.plan.cut import (
    cut_line,
    cut_stress,
    intensity,
    jumps,
    line_load,
    open_rows,
    released,
    runs_to,
)
from demo_app.physics.plan.membrane import elastic_membrane
from demo_app.physics.plan.sheet import displacement, nodal_stress, sheet, still_air_loss, warmed
from demo_app.physics.plan.spot import TIP, spot_flux, tip_share
from demo_app.physics.plan.touching import principal, spreading_time

GLASS = material("soda-lime")
HINDERED = GLASS.youngs_modulus * GLASS.expansion
"""Stress for each kelvin of a bar that is held, Pa/K."""


@functools.cache
def square(elements, side=0.24, thickness=6e-3, loss=None):
    half = side / 2
    ends = np.linspace(-half, half, elements + 1)
    return sheet(GLASS, thickness, ends, ends, loss=loss)


@functools.cache
def cracked():
    plate = sheet(GLASS, 6e-3, np.linspace(-0.1, 0.1, 41), np.linspace(-0.06, 0.06, 25))
    return plate, cut_line(plate, 0.0)


def spot(plate, radius, peak, x=0.0, y=0.0):
    mesh = plate.mesh
    return peak * np.exp(-((mesh.x - x) ** 2 + (mesh.y - y) ** 2).ravel() / radius**2)


def stress_of(plate, rise):
    return nodal_stress(plate, rise, displacement(plate, rise))


def load_of(plate, line, rise):
    moved = displacement(plate, rise)
    return line_load(line, rise, moved, nodal_stress(plate, rise, moved))


def test_even_warmth_leaves_no_stress():
    plate = square(12)
    assert np.abs(stress_of(plate, np.full(plate.mesh.nodes, 50.0))).max() < 1.0


def test_warmth_that_grows_evenly_leaves_no_stress():
    # A temperature that is linear in the plane bends an unheld plate without stress (Timoshenko
    # and Goodier, Theory of Elasticity, section 153).
    plate = square(12)
    rise = 300.0 * plate.mesh.x.ravel() - 200.0 * plate.mesh.y.ravel()
    assert np.abs(stress_of(plate, rise)).max() < 1.0


def test_hot_spot_in_a_wide_plate():
    # Timoshenko and Goodier, section 150, a disc with its rim far away: sigma_r = -E alpha / r**2
    # * integral(T r dr), sigma_theta = -sigma_r - E alpha T.
    radius, peak = 8e-3, 50.0
    plate = square(64)
    stress = stress_of(plate, spot(plate, radius, peak))
    middle = plate.mesh.x.shape[1] // 2
    x = plate.mesh.x[:, middle]
    near = (np.abs(x) < 4 * radius) & (np.abs(x) > 1e-9)
    s = (x[near] / radius) ** 2
    radial = -HINDERED * peak * (1 - np.exp(-s)) / (2 * s)
    hoop = -radial - HINDERED * peak * np.exp(-s)
    most = HINDERED * peak / 2
    assert np.abs(stress[0][near, middle] - radial).max() < 0.015 * most
    assert np.abs(stress[1][near, middle] - hoop).max() < 0.015 * most
    assert stress[0][middle, middle] == pytest.approx(-most, rel=0.015)


def test_the_edges_are_free():
    plate = square(64)
    stress = stress_of(plate, spot(plate, 0.01, 50.0, x=0.09))
    most = np.abs(stress).max()
    assert np.abs(stress[0][[0, -1]]).max() < 0.01 * most
    assert np.abs(stress[1][:, [0, -1]]).max() < 0.01 * most
    assert np.abs(stress[2][[0, -1]]).max() < 0.01 * most


def test_stress_converges_at_second_order_or_better():
    def shared(elements):
        plate = square(elements, side=0.08)
        stress = stress_of(plate, spot(plate, 0.012, 10.0, x=0.003, y=-0.005))
        return stress[:, :: elements // 8, :: elements // 8]

    finest = shared(64)
    errors = [np.sqrt(((shared(n) - finest) ** 2).mean()) for n in (8, 16, 32)]
    for coarse, fine in itertools.pairwise(errors):
        assert coarse > 3.5 * fine


def test_heat_is_kept_where_no_air_takes_it():
    plate = square(16, loss=0.0)
    rise = spot(plate, 0.02, 50.0, x=0.05)
    stored = np.asarray(plate.capacity.sum(axis=0)).ravel()
    later = rise
    for _ in range(20):
        later = warmed(plate, later, 1.0, np.zeros_like(rise))
    assert stored @ later == pytest.approx(stored @ rise, rel=1e-9)
    assert later.max() < rise.max()


def test_the_tips_heat_arrives():
    plate = square(64, loss=0.0)
    flux = spot_flux(plate.mesh, 20.0, 0.02, (0.0, 0.0), (0.03, 0.01))
    rise = warmed(plate, np.zeros(plate.mesh.nodes), 0.5, flux)
    heat = plate.thickness * float((plate.capacity @ rise).sum())
    assert heat == pytest.approx(10.0, rel=1e-3)


def test_a_spot_spreads_and_cools_as_the_heat_kernel():
    # A Gaussian stays one: its middle falls as exp(-t/loss time) / (1 + t/T) (Carslaw and Jaeger,
    # Conduction of Heat in Solids, section 10.3, with a linear loss, section 1.9).
    plate, radius, peak, dt = square(64), 0.01, 50.0, 0.5
    rise = spot(plate, radius, peak)
    for _ in range(120):
        rise = warmed(plate, rise, dt, np.zeros_like(rise))
    spreading = spreading_time(GLASS, 2 * radius)
    stored = GLASS.density * float(GLASS.heat_capacity(np.array([ROOM]))[0]) * plate.thickness
    lost = np.exp(-60.0 * 2 * still_air_loss(GLASS) / stored)
    assert rise.max() == pytest.approx(peak * lost / (1 + 60.0 / spreading), rel=0.003)


def half_time(diameter, thickness, loss=None):
    plate = square(48, side=0.2, thickness=thickness, loss=loss)
    rise, dt = spot(plate, diameter / 2, 50.0), diameter**2 * 1000

    def peak(warmth):
        larger, smaller = principal(stress_of(plate, warmth))
        return float((larger - smaller).max())

    first = now = peak(rise)
    time = 0.0
    while now > first / 2:
        before = now
        rise = warmed(plate, rise, dt, np.zeros_like(rise))
        now, time = peak(rise), time + dt
    return time - dt * (first / 2 - now) / (before - now)


def test_fading_takes_as_long_as_the_diameter_squared():
    once, twice = (half_time(diameter, 6e-3, loss=0.0) for diameter in (0.012, 0.024))
    assert twice == pytest.approx(4 * once, rel=0.05)
    # In a plate without end that loses nothing the picture halves with the middle.
    assert once == pytest.approx(spreading_time(GLASS, 0.012), rel=0.05)


@pytest.mark.parametrize("thickness", [3e-3, 6e-3, 10e-3])
def test_half_time_of_a_spot_with_losses(thickness):
    # The closed form for the middle, of which the picture's strength is a constant share.
    stored = GLASS.density * float(GLASS.heat_capacity(np.array([ROOM]))[0]) * thickness
    loss = 2 * still_air_loss(GLASS) / stored
    spreading = spreading_time(GLASS, 0.02)
    expected = brentq(lambda t: np.exp(-loss * t) / (1 + t / spreading) - 0.5, 1.0, 200.0)
    assert half_time(0.02, thickness) == pytest.approx(expected, rel=0.05)
    assert 36 < expected < 46


def test_a_tip_makes_nothing_hotter_than_itself():
    assert tip_share(np.array([0.0, TIP - ROOM, 500.0])).tolist() == [1.0, 0.0, 0.0]


@settings(max_examples=10, deadline=None)
@given(st.floats(-0.08, 0.08), st.floats(-0.05, 0.05), st.floats(0.006, 0.03))
def test_forces_balance_at_every_node(x, y, radius):
    plate, _ = cracked()
    rise = spot(plate, radius, 30.0, x, y)
    moved = displacement(plate, rise)
    force = plate.swell @ rise
    answer = plate.form.load(elastic_membrane(GLASS, plate.form.strains(moved)))
    assert np.abs(answer - force).max() < 1e-9 * np.abs(force).max()


def test_a_closed_cut_changes_nothing():
    plate, line = cracked()
    rise = spot(plate, 0.01, 50.0, 0.01, -0.02)
    whole = stress_of(plate, rise)
    left, right = cut_stress(line, rise, displacement(plate, rise), 0)
    # Away from the line, at which one side alone is looked at.
    assert np.abs(left[:, :-4] - whole[:, : line.column - 3]).max() < 0.01e6
    assert np.abs(right[:, 4:] - whole[:, line.column + 4 :]).max() < 0.01e6


@pytest.mark.parametrize("length", [0.015, 0.025, 0.035])
def test_weight_function_agrees_with_the_energy_of_the_cut(length):
    # K**2 = E G (Irwin 1957), G from the energy that the finite elements set free; the weight
    # function is Bueckner's (1970), for an endless strip.
    plate, line = cracked()
    load = load_of(plate, line, spot(plate, 0.01, 50.0))
    count = open_rows(line, length)
    more, less = (released(line, load, count + step) for step in (2, -2))
    rate = (more - less) / (line.height[count + 2] - line.height[count - 2])
    by_energy = np.sqrt(GLASS.youngs_modulus * rate)
    assert intensity(line, load, float(line.height[count])) == pytest.approx(by_energy, rel=0.03)


def test_k_passes_from_one_way_to_the_other_at_half_the_plate():
    plate, line = cracked()
    load = load_of(plate, line, spot(plate, 0.012, 50.0, y=0.03))
    half = float(line.lengths[-1])
    assert intensity(line, load, half + 1e-6) == pytest.approx(
        intensity(line, load, half), rel=0.05
    )


def test_a_crack_runs_to_where_k_falls_below():
    plate, line = cracked()
    load = load_of(plate, line, spot(plate, 0.01, 80.0))
    reached = runs_to(line, load, 0.03)
    assert 0.04 < reached < 0.062
    assert intensity(line, load, reached) < GLASS.fracture_toughness
    assert runs_to(line, load, reached) == reached
    weak = load_of(plate, line, spot(plate, 0.01, 8.0))
    assert runs_to(line, weak, 0.03) == 0.03


def test_pressed_faces_stay_together():
    plate, line = cracked()
    load = load_of(plate, line, spot(plate, 0.02, 50.0, y=-0.06))
    assert not jumps(line, load.force, open_rows(line, 0.01)).any()
    assert intensity(line, load, 0.01) == 0.0


def test_opened_faces_are_free_of_stress():
    plate, line = cracked()
    rise = spot(plate, 0.012, 50.0, 0.02, 0.0)
    moved = displacement(plate, rise)
    through = cut_stress(line, rise, moved, line.height.size)
    whole = np.abs(nodal_stress(plate, rise, moved)).max()
    for side, face in zip(through, (-1, 0), strict=True):
        assert np.abs(side[0, face]).max() < 0.04 * whole
        assert np.abs(side[2, face]).max() < 0.04 * whole


@settings(max_examples=15, deadline=None)
@given(st.floats(-0.05, 0.05), st.floats(-0.05, 0.05), st.integers(2, 40))
def test_a_longer_cut_never_takes_energy(x, y, count):
    plate, line = cracked()
    load = load_of(plate, line, spot(plate, 0.015, 50.0, x, y))
    assert released(line, load, count) >= -1e-12
    assert (jumps(line, load.force, count)[::2] >= -1e-15).all()


def test_a_crack_longer_than_half_the_plate_is_followed_too():
    # Warmth with its ridge along the middle squeezes the middle and pulls both long edges.
    plate, line = cracked()
    ridge = 60.0 * (1 - (plate.mesh.y.ravel() / 0.06) ** 2)
    load = load_of(plate, line, ridge)
    reached = runs_to(line, load, 0.01)
    assert 0.065 < reached < 0.1
    assert intensity(line, load, reached) < GLASS.fracture_toughness
    assert intensity(line, load, 0.06) > intensity(line, load, 0.07) > GLASS.fracture_toughness
