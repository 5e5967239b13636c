"""What cooling leaves in a plate, against published annealing results, and the proposals."""

import dataclasses
import math
from dataclasses import replace

import numpy as np
import pytest

from demo_app.physics import stepped
from demo_app.physics.annealing import (
    LIMITS,
    STRAIN_DISC,
    birefringence,
    steady_rate,
    steady_surface_stress,
    temper_number,
)
from demo_app.physics.annealing_search import (
    SAFE_PULL,
    Proposal,
    fastest,
    propose,
    prove,
    worked_at,
)
from demo_app.physics.column import advance as column
from demo_app.physics.column.heat import Face
from demo_app.physics.column.readings import centre_stress
from demo_app.physics.column.wall import plate
from demo_app.physics.firing import fired, in_air
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.physics.materials import HeatCapacity, Material, Prony
from demo_app.physics.oven import Schedule, whole
from demo_app.physics.relaxation import from_elastic, shear_left

_SODA = material("soda-lime")
_AN_HOUR = 1 / 3600
# Soda-lime of the closed forms: 70 GPa, 9e-6 /K, nu 0.2, k 1 W/mK, diffusivity 5.556e-7 m2/s.
_PLAIN = replace(
    _SODA,
    conductivity=(1.0, 0.0),
    heat_capacity=HeatCapacity((math.inf,), (720.0,), (0.0,), (0.0,)),
    expansion=9e-6,
    poisson_ratio=0.2,
)


def _cooled_at(glass: Material, millimetres: float, rate_C_per_h: float):
    """Surface and centre in MPa after one steady rate of the faces from 700 degC to the room."""
    what = stepped.piece(glass, (1e-3 * millimetres,), joined=False)
    rate, hot = rate_C_per_h * _AN_HOUR, 700 + ZERO_C
    state = stepped.start(what, hot)
    ends = (hot - ROOM) / rate

    def faces(time):
        face = Face(hot - rate * time, 1e4)
        return face, face

    while state.time < ends:
        state = stepped.step(what, state, faces, state.time, ends, longest=2.5 / rate)
    cold = stepped.settled(what, state, ROOM).parts[0]
    return cold.surface[0] / 1e6, centre_stress(what.walls[0], cold) / 1e6


# Still air


@pytest.mark.parametrize(
    ("millimetres", "surface", "centre"), [(4, -16, 8), (10, -38, 17), (20, -68, 29)]
)
def test_still_air(millimetres, surface, centre):
    """An independent calculation from 650 degC, emissivity 0.9 and 9 W/(m2 K); a second opinion."""
    glass = replace(_SODA, emissivity=0.9)
    what = stepped.piece(glass, (1e-3 * millimetres,), joined=False)
    cold = in_air(what, stepped.start(what, 650 + ZERO_C)).parts[0]
    assert cold.surface[0] / 1e6 == pytest.approx(surface, rel=0.05)
    assert centre_stress(what.walls[0], cold) / 1e6 == pytest.approx(centre, rel=0.05)


# Steady cooling


@pytest.mark.parametrize(
    ("millimetres", "surface"), [(3, -0.0177), (6, -0.0709), (10, -0.197), (20, -0.788)]
)
def test_adams_and_williamson_closed_form(millimetres, surface):
    """Adams and Williamson 1920, J. Franklin Inst. 190; values for 1 K/min."""
    found = steady_surface_stress(_PLAIN, 1e-3 * millimetres, 1 / 60, 700.0)
    assert found / 1e6 == pytest.approx(surface, rel=0.005)


def test_steady_cooling_without_structure_is_the_closed_form():
    """Adams and Williamson 1920: -0.197 and +0.0985 MPa in 10 mm for each K/min."""
    law = dataclasses.replace(_PLAIN.relaxation, expansion_liquid=_PLAIN.expansion, share=1.0)
    surface, centre = _cooled_at(replace(_PLAIN, relaxation=law), 10, 60)
    assert surface == pytest.approx(-0.197, rel=0.005)
    assert centre == pytest.approx(0.0985, rel=0.005)


@pytest.mark.parametrize(("millimetres", "rate"), [(6, 300), (10, 300), (10, 60)])
def test_structure_makes_two_fifths_of_the_annealing_stress(millimetres, rate):
    """Gardon and Narayanaswamy 1970, J. Am. Ceram. Soc. 53, 380: about 40 %, so 1.67 in all.

    An independent calculation with the same constants has 1.58; 1.45 to 1.75 is accepted.
    """
    law = dataclasses.replace(_SODA.relaxation, expansion_liquid=_SODA.expansion, share=1.0)
    with_it = _cooled_at(_SODA, millimetres, rate)
    without = _cooled_at(replace(_SODA, relaxation=law), millimetres, rate)
    assert 1.45 < with_it[0] / without[0] < 1.75


@pytest.mark.parametrize(
    ("millimetres", "rate", "surface", "centre"), [(6, 600, -1.45, 0.72), (10, 1200, -8.1, 4.0)]
)
def test_an_annealed_plate_keeps_what_an_independent_calculation_finds(
    millimetres, rate, surface, centre
):
    """6 mm at 10 K/min, 10 mm at 20 K/min; k 1.4, rho c 3.125e6, nu 0.22 (a second opinion)."""
    heat = HeatCapacity((math.inf,), (1250.0,), (0.0,), (0.0,))
    glass = replace(_SODA, conductivity=(1.4, 0.0), heat_capacity=heat, expansion=9.1e-6)
    found = _cooled_at(glass, millimetres, rate)
    assert found[0] == pytest.approx(surface, rel=0.02)
    assert found[1] == pytest.approx(centre, rel=0.02)


def test_twice_as_fast_leaves_twice_the_stress():
    slow, quick = _cooled_at(_SODA, 10, 30), _cooled_at(_SODA, 10, 60)
    assert quick[0] / slow[0] == pytest.approx(2, rel=0.05)
    assert quick[1] / slow[1] == pytest.approx(2, rel=0.05)


def test_twice_as_thick_allows_a_quarter_of_the_rate():
    """Shand, Glass Engineering Handbook (from memory): allowed rate as 1 / thickness squared."""
    assert steady_rate(_SODA, 0.01, 1e-6) / steady_rate(_SODA, 0.02, 1e-6) == pytest.approx(4)
    assert _cooled_at(_SODA, 12, 30)[0] / _cooled_at(_SODA, 6, 30)[0] == pytest.approx(4, rel=0.03)


def test_surface_is_squeezed_twice_as_much_as_the_centre_is_pulled():
    """A parabola that sums to zero has exactly 2 : 1."""
    surface, centre = _cooled_at(_SODA, 10, 60)
    assert -surface / centre == pytest.approx(2, rel=0.03)


@pytest.mark.parametrize(
    ("thickness", "told"),
    [
        (0.01, Schedule(823.15, 1800.0, 60 * _AN_HOUR, 733.15, 600 * _AN_HOUR)),
        (0.003, Schedule(823.15, 1800.0, 600 * _AN_HOUR, 733.15, 2000 * _AN_HOUR)),
        (0.03, Schedule(823.15, 7200.0, 6 * _AN_HOUR, 733.15, 100 * _AN_HOUR)),
    ],
)
def test_half_the_step_and_half_the_mesh_move_the_stress_by_under_a_hundredth(thickness, told):
    def kept(cells, finer):
        what = stepped.piece(_SODA, (thickness,), joined=False, cells=cells)
        start = stepped.start(what, worked_at(_SODA))
        state = fired(what, start, whole(told), finer=finer)
        return birefringence(_SODA, stepped.settled(what, state, ROOM))

    usual = kept(40, 1)
    assert kept(40, 2) == pytest.approx(usual, rel=0.01)
    assert kept(80, 1) == pytest.approx(usual, rel=0.01)


# Stress relief in a hold


def test_stress_is_relieved_in_the_times_that_define_the_points():
    """ASTM C162: in about 15 minutes at the annealing point, about 4 hours at the strain point."""
    for point, seconds in ((_SODA.annealing_point, 900.0), (_SODA.strain_point, 4 * 3600.0)):
        at = np.array([point])
        assert shear_left(_SODA, at, at, seconds)[0] < 0.05
        assert shear_left(_SODA, at, at, seconds / 30)[0] > 0.15


def _held(glass: Material, seconds: float, steps: int):
    """Share of a parabola of stress that is left after a hold at the annealing point."""
    wall = plate(glass, 0.01)
    state = column.start(wall, glass.annealing_point)
    y = 2 * wall.point_z / wall.thickness
    before = 5e6 * (1 / 3 - y**2)
    before -= wall.weights @ before / wall.thickness
    stress = np.stack((before, before, np.zeros_like(before)))
    memory = from_elastic(glass, state.temperature, stress, glass.annealing_point)
    state = replace(state, memory=(memory,), stress=before)
    for _ in range(steps):
        state = column.carry(wall, state, state.temperature, seconds / steps)
    assert state.stress == pytest.approx(before * state.stress[0] / before[0], rel=1e-6, abs=1e-3)
    return state.stress[0] / before[0]


def test_a_quarter_of_an_hour_at_the_annealing_point_relieves_a_plate():
    assert 0 <= _held(_SODA, 900.0, 30) < 0.05


@pytest.mark.parametrize("seconds", [10.0, 100.0])
def test_a_maxwell_glass_relaxes_in_its_hold_as_the_closed_form_says(seconds):
    """Held in plane, free across, elastic in bulk: exp(-t / (tau * (1 + 4 G / (3 K)))).

    From Maxwell's law for the deviator, s' + s/tau = 2 G e', with s = sigma/3 and a mean strain of
    2 sigma / (9 K).
    """
    law = replace(
        _SODA.relaxation,
        activation=0.0,
        shear=Prony((1.0,), (50.0,)),
        bulk=Prony((), (), lasting=1.0),
    )
    glass = replace(_SODA, relaxation=law)
    slower = 1 + 4 * glass.shear_modulus / (3 * glass.bulk_modulus)
    assert _held(glass, seconds, 200) == pytest.approx(math.exp(-seconds / 50 / slower), rel=0.002)


# Limits


def test_temper_number_of_astm_c148():
    """Real temper number = apparent one * 4.06 mm / thickness; a disc is 22.8 nm."""
    assert temper_number(STRAIN_DISC / 4.06e-3) == pytest.approx(1)
    apparent, thickness = 3.0, 8e-3
    seen = apparent * STRAIN_DISC / thickness
    assert temper_number(seen) == pytest.approx(apparent * 4.06e-3 / thickness)
    # A disc is 2.14 MPa in 4.06 mm of soda-lime; four discs are 91 nm.
    assert STRAIN_DISC / 4.06e-3 / _SODA.stress_optic / 1e6 == pytest.approx(2.14, rel=0.005)
    assert LIMITS["ware"].birefringence * 4.06e-3 == pytest.approx(91e-9, rel=0.005)
    assert temper_number(LIMITS["ware"].birefringence) == pytest.approx(4)


def test_classes_of_iso_10110_2():
    """10 nm/cm is 0.36 MPa in a crown glass of 2.77e-12 /Pa (Schott's standard class, memory)."""
    assert LIMITS["optics"].birefringence / 2.77e-12 / 1e6 == pytest.approx(0.36, rel=0.01)
    assert LIMITS["optics"].birefringence * 0.01 == pytest.approx(10e-9)
    assert LIMITS["magnifier"].birefringence * 0.01 == pytest.approx(20e-9)


def test_a_megapascal_is_26_nanometres_in_a_centimetre():
    wall = plate(_SODA, 0.01)
    what = stepped.Piece((wall,))
    state = stepped.start(what, ROOM)
    part = replace(state.parts[0], stress=np.linspace(-1e6, 0.5e6, wall.z.size))
    state = stepped.PieceState((part,), (part.stress,))
    assert birefringence(_SODA, state) * 0.01 == pytest.approx(26e-9, rel=0.01)


# Proposals


def _finely(glass: Material, thicknesses, joined, found: Proposal) -> float:
    what = stepped.piece(glass, thicknesses, joined=joined, cells=60)
    state = fired(what, stepped.start(what, worked_at(glass)), whole(found.schedule), finer=2)
    return birefringence(glass, stepped.settled(what, state, ROOM))


@pytest.mark.parametrize(
    ("glass", "millimetres", "joined", "limit"),
    [
        ("soda-lime", (10,), False, "optics"),
        ("soda-lime", (3,), False, "magnifier"),
        ("soda-lime", (50,), False, "ware"),
        ("soda-lime", (10, 4), True, "optics"),
        ("borosilicate", (10,), False, "optics"),
        ("lead-crystal", (10, 4), False, "ware"),
    ],
)
def test_a_proposal_passes_on_a_fine_mesh(glass, millimetres, joined, limit):
    thicknesses = tuple(1e-3 * one for one in millimetres)
    allowed = LIMITS[limit].birefringence
    found = propose(material(glass), thicknesses, joined, allowed)
    assert found is not None
    assert _finely(material(glass), thicknesses, joined, found) < allowed
    told = found.schedule
    assert material(glass).strain_point - 1 <= told.hold <= material(glass).annealing_point + 11
    assert told.slow <= told.fast * 1.0001


def test_the_proposal_for_a_plate_leaves_less_than_a_megapascal():
    found = propose(_SODA, (0.01,), False, LIMITS["optics"].birefringence)
    assert found is not None
    assert found.birefringence / _SODA.stress_optic < 1e6
    # Trade rule: a soak of 1 h for each 1/4 inch is long enough for anything (common practice).
    assert found.schedule.hold_time <= 3600 * 10 / 6.35


@pytest.mark.slow
@pytest.mark.parametrize(("hold", "slow_to"), [(10, 0), (-10, 0), (0, 40), (0, -40), (10, -40)])
def test_no_neighbour_of_the_proposal_is_much_quicker(hold, slow_to):
    limit = LIMITS["optics"].birefringence
    found = propose(_SODA, (0.01,), False, limit)
    assert found is not None
    what = stepped.piece(_SODA, (0.01,), joined=False, cells=16)
    told = replace(
        found.schedule, hold=found.schedule.hold + hold, slow_to=found.schedule.slow_to + slow_to
    )
    low, high = 0.2 * told.slow, 3 * told.slow
    for _ in range(9):
        slow = math.sqrt(low * high)
        tried = prove(_SODA, what, replace(told, slow=slow))
        low, high = (slow, high) if tried.birefringence <= limit else (low, slow)
    best = prove(_SODA, what, replace(told, slow=low))
    assert best.birefringence <= limit
    assert best.seconds > 0.85 * found.seconds


def test_a_thicker_plate_takes_longer_and_a_wider_limit_less_time():
    def hours(millimetres, limit):
        found = propose(_SODA, (1e-3 * millimetres,), False, LIMITS[limit].birefringence)
        assert found is not None
        return found.seconds / 3600

    assert hours(3, "optics") < hours(10, "optics") < hours(20, "optics")
    assert hours(10, "ware") < hours(10, "magnifier") < hours(10, "optics")


@pytest.mark.parametrize("glass", glasses())
def test_the_fast_part_keeps_the_pull_on_the_skin_safe(glass):
    """The temporary pull of steady cooling is the closed form with its sign turned."""
    for thickness in (0.003, 0.01, 0.05):
        one = material(glass)
        rate = fastest(one, thickness)
        pull = -steady_surface_stress(one, thickness, rate, one.strain_point)
        assert 0 < pull <= SAFE_PULL * 1.001


def test_diffusivity_of_plain_soda_lime():
    """k 1 W/mK, 2500 kg/m3, 720 J/kgK: 5.556e-7 m2/s (EN 572-1's values)."""
    assert _PLAIN.diffusivity(300.0) == pytest.approx(5.556e-7, rel=1e-3)
