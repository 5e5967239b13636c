"""Filling, stretch and freezing of a moulded tray against closed forms."""

import itertools
import math

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from scipy.special import erf

from demo_app.physics.column.advance import carry
from demo_app.physics.column.advance import start as start_column
from demo_app.physics.column.wall import plate as column_wall
from demo_app.physics.filling import cast_glass, freezing, moulded, tray
from demo_app.physics.filling.flow import (
    Cavity,
    Front,
    advance,
    channel_flow,
    empty,
    inflow,
    slopes,
    solve,
)
from demo_app.physics.filling.melt import POLYSTYRENE
from demo_app.physics.filling.moulding import (
    LAYERS,
    Shot,
    depths,
    retardation,
    run,
    start,
    step,
    temperature,
)
from demo_app.physics.filling.slab import excess_in_layers, excess_left, frozen_skin
from demo_app.physics.heat import ROOM
from demo_app.physics.material_files import material
from demo_app.physics.plan.mesh import rectangle

PLASTIC = material("polystyrene")
HOT, MOULD = 463.15, 313.15
GAP = 2e-3


def cavity(columns, rows, gate, cell=1e-3):
    return Cavity(np.full((columns, rows), GAP), cell, gate)


def driven(room, full, flow, law, rounds=40):
    """Pressure in a cavity of which the cells `full` are full."""
    half = room.gap / 2
    first = empty(room, half, flow, *law)
    front = Front(np.where(full, 1.0, 0.0), first.conductance, first.pressure)
    return solve(room, front, half, flow, law, rounds)


@pytest.mark.parametrize("index", [1.0, 0.5, 0.27])
def test_channel_flow_and_its_wall_shear_stress(index):
    # Power-law melt between parallel walls (Bird, Stewart and Lightfoot, Transport Phenomena):
    # wall shear stress = slope times half gap = K (flow (2 n + 1) / (2 n h2))**n.
    room, flow, consistency = cavity(60, 10, (0, 5)), 1e-6, 1e4
    full = np.ones(room.gap.shape, dtype=bool)
    full[-1] = False
    found = driven(room, full, flow, (consistency, index))
    slope, across = slopes(room, found.pressure, found.full)
    half, width = GAP / 2, 10e-3
    rate = flow / width * (2 * index + 1) / (2 * index) / half**2
    assert slope[30] * half == pytest.approx(consistency * rate**index, rel=1e-3)
    assert np.abs(across[30]).max() < 1e-3 * slope[30].max()


def test_newtonian_channel_flow_is_hele_shaws():
    # flow = gap**3 / (12 viscosity) * slope.
    slope, viscosity = 3e8, 700.0
    found = channel_flow(np.array(slope), np.array(GAP / 2), viscosity, 1.0)
    assert found == pytest.approx(GAP**3 / (12 * viscosity) * slope, rel=1e-12)


@pytest.mark.parametrize(("index", "tolerance"), [(1.0, 0.03), (0.5, 0.04)])
def test_radial_flow_from_a_gate(index, tolerance):
    # Between two plates from a point: slope at r is that of a channel of width 2 pi r; Newtonian
    # p = 6 viscosity flow / (pi gap3) ln(R / r) (Middleman, Fundamentals of Polymer Processing).
    room, flow, consistency = cavity(61, 61, (30, 30)), 1e-6, 1e3
    x, y = np.indices(room.gap.shape) - 30
    r = np.hypot(x, y) * 1e-3
    found = driven(room, r < 25.5e-3, flow, (consistency, index), rounds=60)
    # The pressure is zero in the middles of the cells that the melt has just reached.
    reached = inflow(room, found) > 0
    end = float(r[reached].mean())
    places = np.linspace(0, end, 20001)[1:]
    each = channel_flow(np.array(1.0), np.array(GAP / 2), consistency, index)
    slope = (flow / (2 * math.pi * places) / each) ** index
    fallen = np.concatenate([[0], np.cumsum((slope[1:] + slope[:-1]) / 2 * np.diff(places))])
    for cells in (5, 10, 15):
        at = cells * 1e-3
        expected = fallen[-1] - np.interp(at, places, fallen)
        assert found.pressure[30 + cells, 30] == pytest.approx(expected, rel=tolerance)
    if index == 1.0:
        handbook = 6 * consistency * flow / (math.pi * GAP**3) * math.log(end / 10e-3)
        assert found.pressure[40, 30] == pytest.approx(handbook, rel=tolerance)


def test_the_front_is_round_and_no_melt_is_lost():
    room, flow, law = cavity(41, 41, (20, 20)), 1e-6, (1e3, 1.0)
    half, time = room.gap / 2, 0.0
    front = empty(room, half, flow, *law)
    while time < 1.2:
        front = solve(room, front, half, flow, law, 1)
        front = advance(room, front, 4e-3)
        time += 4e-3
        inside = (front.filled.sum() - 1) * GAP * room.cell**2
        assert inside == pytest.approx(flow * time, rel=1e-6)
    radius = math.sqrt(front.filled.sum() * 1e-6 / math.pi)
    x, y = np.indices(room.gap.shape) - 20
    edge = (np.hypot(x, y) * 1e-3)[(front.filled > 0) & (front.filled < 1)]
    assert edge.min() > 0.92 * radius
    assert edge.max() < 1.08 * radius
    assert inflow(room, solve(room, front, half, flow, law, 1)).sum() == pytest.approx(flow)


def test_a_symmetric_cavity_fills_symmetrically():
    shape = tray.Shape(2e-3, 2e-3)
    room = Cavity(np.full((21, 21), 2e-3), 2e-3, (10, 10))
    shot = Shot(PLASTIC, POLYSTYRENE, room, HOT, MOULD, 0.5)
    (state,) = run(shot, np.array([0.3]))
    assert state.front.filled == pytest.approx(state.front.filled[::-1], abs=1e-6)
    assert state.front.filled == pytest.approx(state.front.filled.T, abs=1e-6)
    assert shape.bottom == shape.ribs


@pytest.mark.parametrize("gate", tuple(tray.GATES))
def test_the_whole_tray_fills_in_its_time(gate):
    room = tray.cavity(tray.Shape(2e-3, 3e-3), gate)
    shot = Shot(PLASTIC, POLYSTYRENE, room, HOT, MOULD, 0.5)
    half, full = run(shot, np.array([0.25, 0.505]))
    volume = float((half.front.filled * room.gap).sum()) * room.cell**2
    assert volume == pytest.approx(room.volume / 2, rel=0.01)
    assert full.front.full.all()
    assert np.isfinite(full.arrived).all()


def test_a_slab_cools_as_the_handbooks():
    # Carslaw and Jaeger, section 3.3; the series with many terms.
    depth, fourier = np.meshgrid([0.1, 0.3, 0.5], [0.002, 0.02, 0.049, 0.051, 0.2, 0.6])
    k = np.arange(1, 400, 2)[:, None, None]
    waves = np.sin(k * math.pi * depth) * np.exp(-((k * math.pi) ** 2) * fourier)
    series = (4 / (math.pi * k) * waves).sum(axis=0)
    assert excess_left(depth, fourier) == pytest.approx(series, abs=2e-4)
    table = excess_in_layers((0.1, 0.3, 0.5), fourier[:, 0])
    assert pytest.approx(series, abs=3e-4) == table.T


def test_the_skin_freezes_as_the_error_function_says():
    # Carslaw and Jaeger, section 2.4: half space between melt and wall.
    skin = frozen_skin(473.0, 313.0, 373.0, 1e-4)
    assert 313 + 160 * erf(skin / 2e-4) == pytest.approx(373.0)


def test_stretch_follows_the_stress_optical_rule():
    # Janeschitz-Kriegl 1983: birefringence = C times the difference of the principal stresses,
    # along the flow; N1 = 2 J shear**2 (Coleman and Noll 1961; J is the recoverable compliance).
    slope, height = 5e7, np.array([0.0, 5e-4, 1e-3])
    along = POLYSTYRENE.stretched(np.array(slope), np.array(0.0), height)
    shear = slope * height
    assert along[0] == pytest.approx(2 * POLYSTYRENE.compliance * shear**2)
    assert (along[1] == 0).all()
    turned = POLYSTYRENE.stretched(slope * np.sqrt(0.5), slope * np.sqrt(0.5), height)
    assert turned[0] == pytest.approx(0.0, abs=1e-9)
    assert turned[1] == pytest.approx(along[0])
    assert -5e-9 < POLYSTYRENE.stress_optic < -4.5e-9


def test_melt_in_steady_flow_shows_the_rule_through_the_gap():
    # Mean of height**2 over the gap is gap**2 / 12, so the retardation of a channel is
    # C * 2 J slope**2 gap**3 / 12 (stress-optical rule with N1 = 2 J shear**2).
    room, slope = cavity(4, 3, (0, 0)), 5e7
    shot = Shot(PLASTIC, POLYSTYRENE, room, HOT, MOULD, 1.0)
    height = (0.5 - np.array(depths(LAYERS))[:, None, None]) * room.gap
    stretch = POLYSTYRENE.stretched(np.full_like(height, slope), np.zeros_like(height), height)
    law = POLYSTYRENE.stress_optic * 2 * POLYSTYRENE.compliance * slope**2 * GAP**3 / 12
    assert retardation(shot, stretch)[0] == pytest.approx(law, rel=0.005)
    assert law < 0


def test_viscosity_of_the_melt_is_that_of_an_injection_grade():
    # General-purpose polystyrene at 220 degrees and 1,000 per second: about 60 to 200 Pa s
    # (handbook range, from memory).
    rate = 1e3
    assert 60 < POLYSTYRENE.consistency(493.15) * rate ** (POLYSTYRENE.index - 1) < 200
    assert POLYSTYRENE.consistency(473.15) > POLYSTYRENE.consistency(493.15)


def test_stretched_molecules_coil_up_above_the_transition_alone():
    times = POLYSTYRENE.relaxation_time(np.array([368.15, 378.15, 398.15, 473.15]))
    assert times[0] > 1e10
    assert (np.diff(times) < 0).all()
    assert times[-1] < 1.0


def test_when_the_flow_stops_hot_layers_forget_and_frozen_ones_do_not():
    room = tray.cavity(tray.Shape(2e-3, 2e-3), "side")
    shot = Shot(PLASTIC, POLYSTYRENE, room, HOT, MOULD, 0.5)
    filled, later = run(shot, np.array([0.5, 60.0]))
    before, after = (np.hypot(*state.stretch)[:, 25, 17] for state in (filled, later))
    warm = temperature(shot, 0.5, filled.arrived, room.gap, before.size)[:, 25, 17]
    frozen = warm < POLYSTYRENE.transition
    assert frozen.any()
    assert after[frozen] == pytest.approx(before[frozen], rel=0.05)
    assert after[-1] < 0.05 * before.max()


def test_half_the_step_changes_the_stretch_little(monkeypatch):
    room = tray.cavity(tray.Shape(2e-3, 2.6e-3), "side")
    shot = Shot(PLASTIC, POLYSTYRENE, room, HOT, MOULD, 0.5)

    def mean():
        (state,) = itertools.islice(run(shot, np.array([5.0])), 1)
        return float(np.hypot(*retardation(shot, state.stretch)).mean())

    coarse = mean()
    monkeypatch.setattr("demo_app.physics.filling.moulding.STEPS", 120)
    monkeypatch.setattr("demo_app.physics.filling.moulding._SHARE", 0.4)
    assert coarse == pytest.approx(mean(), rel=0.01)


def small_plate(solid, thickness):
    mesh = rectangle(np.linspace(-0.02, 0.02, 5), np.linspace(-0.015, 0.015, 4))
    return freezing.plate(solid, mesh, thickness(mesh.inside.x))


def test_an_even_plate_has_the_columns_stress():
    # The Column (Narayanaswamy's plate) is checked against publications in its own tests.
    layers, wall = 20, column_wall(PLASTIC, 3e-3, 60)
    piece = small_plate(PLASTIC, lambda x: np.full(x.size, 3e-3))
    times = np.concatenate([[0.0], 40 * (np.arange(1, 241) / 240) ** 2])
    depth = (np.arange(layers) + 0.5) / layers / 2
    spread = 7e-8 / 3e-3**2

    def warmth(at, time):
        return MOULD + (HOT - MOULD) * excess_left(at, np.array(spread * time))

    points = piece.thickness.size
    instants = [(t, np.repeat(warmth(depth, t)[:, None], points, axis=1)) for t in times]
    *_, plate = freezing.frozen(piece, instants)
    state = start_column(wall, HOT)
    share = 0.5 + wall.z / 3e-3
    for before, after in itertools.pairwise(times):
        state = carry(wall, state, warmth(np.minimum(share, 1 - share), after), after - before)
    expected = np.interp((depth - 0.5) * 3e-3, wall.point_z, state.stress)
    scale = np.abs(expected).max()
    assert scale > 1e6
    # The outermost layer stands for a skin that freezes bit by bit, so it is left out.
    assert plate.stress[0, 1:, 0] == pytest.approx(expected[1:], abs=0.03 * scale)
    assert np.abs(plate.mean).max() < 1e-6 * scale


def test_what_freezes_last_is_pulled_and_all_adds_up_to_zero():
    piece = small_plate(PLASTIC, lambda x: np.where(np.abs(x) < 0.01, 4e-3, 2e-3))
    times = np.concatenate([[0.0], 200 * (np.arange(1, 31) / 30) ** 2])
    spread = 7e-8 / piece.thickness**2
    depth = np.array([[0.1], [0.3], [0.5]])
    instants = [(t, MOULD + (HOT - MOULD) * excess_left(depth, spread * t)) for t in times]
    instants.append((500.0, np.full((3, piece.thickness.size), ROOM)))
    *_, state = freezing.frozen(piece, instants)
    y = piece.mesh.inside.y
    thick = (np.abs(piece.mesh.inside.x) < 0.01) & (np.abs(y) < 0.005)
    thin = (np.abs(piece.mesh.inside.x) > 0.012) & (np.abs(y) < 0.005)
    assert state.mean[1, thick].mean() > 1e6
    assert state.mean[1, thin].mean() < -1e6
    for cut in (2, 4, 6):
        assert abs(freezing.cut_force(piece, state, cut)) < 1e-6


def test_energy_of_an_even_pull():
    # sigma**2 / (2 E) times the volume.
    piece = small_plate(PLASTIC, lambda x: np.full(x.size, 2e-3))
    state = next(iter(freezing.frozen(piece, [(0.0, np.full((1, piece.thickness.size), HOT))])))
    pulled = np.zeros_like(state.stress)
    pulled[0] = 5e6
    held = freezing.energy(piece, freezing.Frozen(0.0, state.temperature, pulled, state.memory))
    volume = 0.04 * 0.03 * 2e-3
    assert held == pytest.approx(5e6**2 / (2 * PLASTIC.youngs_modulus) * volume)


def test_glass_of_one_thickness_cools_without_stress():
    glass = material("soda-lime")
    piece = small_plate(glass, lambda x: np.full(x.size, 3e-3))
    found = cast_glass.cast(piece)
    assert found.peak.max() < 1e3
    assert cast_glass.break_odds(piece, found) < 1e-12


def test_glass_cools_as_its_heat_balance_says():
    # rho c h/2 dT/dt = - (convection + radiation), solved by itself.
    glass = material("soda-lime")
    piece = small_plate(glass, lambda x: np.full(x.size, 3e-3))

    def rate(_, t):
        lost = cast_glass.STILL_AIR * (t - ROOM) + 5.670374e-8 * glass.emissivity * (t**4 - ROOM**4)
        return -lost / (glass.density * glass.heat_capacity(t) * 1.5e-3)

    states = list(cast_glass._cooling(piece))[:-1]
    end, mean = states[-1][0], float(states[-1][1].mean())
    alone = solve_ivp(rate, (0, end), [glass.softening_point], rtol=1e-8, max_step=1.0).y[0, -1]
    assert mean == pytest.approx(alone, abs=1.5)


def test_half_the_step_changes_the_glass_little(monkeypatch):
    piece = moulded.plate_of(material("soda-lime"), tray.Shape(2e-3, 3.5e-3))
    coarse = cast_glass.cast(piece)
    monkeypatch.setattr(cast_glass, "_STEP", cast_glass._STEP / 2)
    monkeypatch.setattr(cast_glass, "_STEP_LIQUID", cast_glass._STEP_LIQUID / 2)
    fine = cast_glass.cast(piece)
    assert coarse.peak.max() == pytest.approx(fine.peak.max(), rel=0.01)
    assert coarse.energy == pytest.approx(fine.energy, rel=0.02)


def test_a_step_does_not_pass_its_stop():
    shot = Shot(PLASTIC, POLYSTYRENE, tray.cavity(tray.Shape(2e-3, 2e-3), "side"), HOT, MOULD, 0.5)
    assert step(shot, start(shot), 1e-4).time <= 1e-4
