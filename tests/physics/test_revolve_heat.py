"""Conduction in a wall of revolution against closed forms and its own mesh and steps.

Carslaw and Jaeger 1959, Conduction of Heat in Solids (from memory; each value computed again from
the series or formula beside it).
"""

import dataclasses
import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from revolve_pieces import (
    DIFFUSIVITY,
    PLAIN,
    SODA,
    both,
    by_column,
    coarse_bottle,
    exchange,
    heat_content,
    nodal,
    tube,
)
from scipy.optimize import brentq
from scipy.special import erfc

from demo_app.physics.heat import ROOM, flame_flux
from demo_app.physics.revolve.heat import heat_step
from demo_app.physics.revolve.mesh import through
from demo_app.physics.revolve.surroundings import outer_places

WIDE = 20.0  # diameter (m) at which a wall of some millimetres is as good as flat


def stepped(piece, temperature, times, outer, inner, material=PLAIN):
    """Temperature after steps that end at `times`."""
    for a, b in itertools.pairwise(times):
        temperature = heat_step(piece.heat, material, temperature, b - a, outer, inner)
    return temperature


def slab_series(biot, fourier, place):
    """Share of the excess left at `place` (0 centre, 1 surface) of a slab that was uniformly hot.

    Carslaw and Jaeger section 3.11; ``place`` None: the mean.
    """
    total = 0.0
    for n in range(60):
        low, high = n * math.pi + 1e-12, n * math.pi + math.pi / 2 - 1e-12
        root = brentq(lambda x: x * math.sin(x) - biot * math.cos(x), low, high)
        size = 4 * math.sin(root) / (2 * root + math.sin(2 * root))
        shape = math.sin(root) / root if place is None else math.cos(root * place)
        total += size * math.exp(-(root**2) * fourier) * shape
    return total


def test_the_series_is_the_tabulated_one():
    """Centre of Bi 1, Fo 1: first term 1.1191 exp(-0.8603**2) = 0.534 (Incropera, table 5.1)."""
    assert slab_series(1, 1, 0) == pytest.approx(1.1191 * math.exp(-(0.86033**2)), rel=2e-3)


@pytest.mark.parametrize("biot", [0.1, 1.0, 10.0])
def test_a_slab_between_two_convective_faces(biot):
    half = 3e-3
    depths = np.concatenate([through(half, 1e-4, 6), (2 * half - through(half, 1e-4, 6))[-2::-1]])
    piece = tube(WIDE, 2 * half, 6e-3, 1, depths)
    outer, inner = both(piece, biot * PLAIN.conductivity[0] / half)
    temperature = nodal(piece, ROOM + 100)
    middle = piece.mesh.depth.size // 2
    before = 0.0
    for fourier in (0.05, 0.2, 0.5, 1.0):
        # steps grow from the start of the cooling
        shares = np.linspace(math.sqrt(before), math.sqrt(fourier), 41) ** 2
        times = shares * half**2 / DIFFUSIVITY
        temperature = stepped(piece, temperature, times, outer, inner)
        excess = (by_column(piece, temperature)[0] - ROOM) / 100
        assert excess[middle] == pytest.approx(slab_series(biot, fourier, 0), abs=1e-3)
        assert excess[0] == pytest.approx(slab_series(biot, fourier, 1), abs=1e-3)
        assert excess[-1] == pytest.approx(slab_series(biot, fourier, 1), abs=1e-3)
        mean = heat_content(piece, temperature - ROOM, PLAIN) / heat_content(
            piece, nodal(piece, 100.0), PLAIN
        )
        assert mean == pytest.approx(slab_series(biot, fourier, None), abs=1e-3)
        before = fourier


def thick_wall():
    """Wall that stays cold inside for a minute."""
    return tube(WIDE, 0.04, 4e-3, 1, through(0.04, 1e-4, 14))


@pytest.mark.parametrize(("seconds", "rise"), [(1, 168.2), (5, 376.1), (10, 531.9), (20, 752.2)])
def test_a_half_space_under_a_constant_flux(seconds, rise):
    """``(2 q / k) sqrt(kappa t / pi)``, section 2.9: 200 kW/m2 on 1 W/mK; 0.2 %."""
    piece = thick_wall()
    assert 4e5 * math.sqrt(DIFFUSIVITY * seconds / math.pi) == pytest.approx(rise, abs=0.1)
    times = seconds * np.linspace(0, 1, 61) ** 2
    end = stepped(
        piece,
        nodal(piece, ROOM),
        times,
        exchange(piece.heat.outer, flux=2e5),
        exchange(piece.heat.inner),
    )
    assert by_column(piece, end)[0, 0] - ROOM == pytest.approx(rise, rel=2e-3)


@pytest.mark.parametrize(("seconds", "share"), [(1, 0.148), (10, 0.369), (60, 0.611)])
def test_a_half_space_under_convection(seconds, share):
    """``1 - exp(u**2) erfc(u)``, u = h sqrt(kappa t) / k, section 2.7: 200 W/m2K; 0.2 %."""
    u = 200 * math.sqrt(DIFFUSIVITY * seconds)
    exact = 1 - math.exp(u**2) * erfc(u)
    assert exact == pytest.approx(share, abs=6e-4)
    piece = thick_wall()
    end = stepped(
        piece,
        nodal(piece, ROOM),
        seconds * np.linspace(0, 1, 61) ** 2,
        exchange(piece.heat.outer, 200.0, ROOM + 300),
        exchange(piece.heat.inner),
    )
    assert (by_column(piece, end)[0, 0] - ROOM) / 300 == pytest.approx(exact, rel=2e-3)


def steady_pipe(rows):
    """Largest error (K) of a steady pipe of 10 and 30 mm radius between two fluids.

    The logarithmic profile, with ``q = dT / (1/(a h_a) + ln(b/a)/k + 1/(b h_b))`` for each radian
    and metre (section 7.2).
    """
    piece = tube(0.06, 0.02, 4e-3, 1, rows)
    outer = exchange(piece.heat.outer, 50.0, ROOM)
    inner = exchange(piece.heat.inner, 300.0, ROOM + 200)
    end = stepped(piece, nodal(piece, ROOM), [0, 1e9, 2e9], outer, inner)
    flow = 200 / (1 / (0.01 * 300) + math.log(3) / 1.0 + 1 / (0.03 * 50))
    r = piece.mesh.r[0]
    exact = ROOM + flow / (0.03 * 50) + flow * np.log(0.03 / r)
    return float(np.abs(by_column(piece, end)[0] - exact).max())


def test_a_steady_pipe_has_the_logarithmic_profile():
    assert steady_pipe(6) < 0.01


def test_quadratic_elements_converge_with_the_third_power_or_better():
    errors = [steady_pipe(rows) for rows in (2, 4, 8)]
    for coarse, fine in itertools.pairwise(errors):
        assert math.log2(coarse / fine) > 2.9


def cooled_pipe(steps, material=PLAIN):
    piece = tube(WIDE, 6e-3, 6e-3, 1, 4)
    start = nodal(piece, ROOM + 300 * np.cos(np.pi * piece.mesh.depth / 12e-3))
    outer, inner = both(piece, 300.0)
    return stepped(piece, start, np.linspace(0, 10.0, steps + 1), outer, inner, material)


def test_steps_converge_with_the_second_power():
    exact = cooled_pipe(320)
    errors = [np.abs(cooled_pipe(steps) - exact).max() for steps in (5, 10, 20)]
    for coarse, fine in itertools.pairwise(errors):
        assert math.log2(coarse / fine) == pytest.approx(2.0, abs=0.25)


def test_halved_steps_agree_where_conductivity_and_heat_capacity_depend_on_temperature():
    few, many = cooled_pipe(40, SODA), cooled_pipe(80, SODA)
    assert few - ROOM == pytest.approx(many - ROOM, rel=0.01)


@given(seed=st.integers(0, 2**32 - 1), seconds=st.floats(1e-3, 1e4))
@settings(max_examples=20, deadline=None)
def test_an_insulated_piece_keeps_its_heat(seed, seconds):
    piece = tube(0.07, 3e-3, 0.02, 4, 2)
    start = np.random.default_rng(seed).uniform(ROOM, 700, piece.mesh.nodes)
    end = heat_step(piece.heat, PLAIN, start, seconds, *both(piece))
    assert heat_content(piece, end, PLAIN) == pytest.approx(
        heat_content(piece, start, PLAIN), rel=1e-10
    )


@given(kelvin=st.floats(200, 1500), seconds=st.floats(1e-3, 1e5), coefficient=st.floats(0, 1e4))
@settings(max_examples=20, deadline=None)
def test_a_piece_as_warm_as_its_surroundings_stays_as_it_is(kelvin, seconds, coefficient):
    piece = coarse_bottle()
    start = nodal(piece, kelvin)
    end = heat_step(piece.heat, SODA, start, seconds, *both(piece, coefficient, kelvin))
    assert end == pytest.approx(start, abs=1e-9 * kelvin)


def test_a_flame_ring_brings_the_heat_of_its_bell():
    """Integral of a Gaussian: peak times full width at half peak times sqrt(pi / (4 ln 2))."""
    columns = np.linspace(0, 0.08, 41)
    piece = tube(0.07, 3e-3, 0.08, columns, 3)
    flux = flame_flux(outer_places(piece), 0.04, 8e-3, 8e4)
    start = nodal(piece, ROOM)
    outer, inner = exchange(piece.heat.outer, flux=flux), exchange(piece.heat.inner)
    end = stepped(piece, start, np.linspace(0, 10, 21), outer, inner)
    gain = heat_content(piece, end, PLAIN) - heat_content(piece, start, PLAIN)
    bell = 8e4 * 8e-3 * math.sqrt(math.pi / (4 * math.log(2)))
    assert gain == pytest.approx(10 * bell * math.pi * 0.07, rel=1e-4)


def test_a_flame_off_the_middle_gives_the_mirrored_temperature():
    piece = tube(0.07, 3e-3, 0.08, 40, 2)

    def after(place):
        flux = flame_flux(outer_places(piece), place, 8e-3, 8e4)
        outer = exchange(piece.heat.outer, 10.0, flux=flux)
        inner = exchange(piece.heat.inner, 5.0)
        times = np.linspace(0, 5, 11)
        return by_column(piece, stepped(piece, nodal(piece, ROOM), times, outer, inner, SODA))

    assert after(0.031) == pytest.approx(after(0.049)[::-1], abs=1e-9)


def test_a_better_conductor_gets_less_hot_at_its_surface():
    better = dataclasses.replace(PLAIN, conductivity=(2.0, 0.0))
    piece = thick_wall()
    hot = [
        stepped(
            piece,
            nodal(piece, ROOM),
            np.linspace(0, 2, 21),
            exchange(piece.heat.outer, flux=1e5),
            exchange(piece.heat.inner),
            material,
        ).max()
        - ROOM
        for material in (PLAIN, better)
    ]
    # sqrt(k rho c) grows by the square root of two
    assert hot[0] / hot[1] == pytest.approx(math.sqrt(2), rel=0.01)
