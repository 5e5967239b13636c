"""Plates side by side and in one piece, against the Column and closed forms."""

import dataclasses

import numpy as np
import pytest

from demo_app.physics import stepped
from demo_app.physics.column import advance as column
from demo_app.physics.column.heat import Face
from demo_app.physics.column.wall import plate
from demo_app.physics.firing import fired, in_air, oven_face
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.oven import Schedule, whole
from demo_app.physics.stepped import mean_stress

_SODA = material("soda-lime")
_HOT = 650 + ZERO_C


def _from_air(thicknesses, *, joined, **changes):
    what = stepped.piece(_SODA, thicknesses, joined=joined, **changes)
    return what, in_air(what, stepped.start(what, _HOT))


def test_parts_that_are_not_joined_are_columns():
    what, state = _from_air((0.010, 0.004), joined=False)
    face = Face(ROOM, 9.0, _SODA.emissivity)
    for wall, part in zip(what.walls, state.parts, strict=True):
        alone = column.cooled(wall, _HOT, face)
        assert part.stress == pytest.approx(alone.stress, rel=0.01, abs=2e4)


def test_a_joined_piece_of_one_thickness_is_a_column():
    alone = _from_air((0.010,), joined=False)[1]
    for thicknesses in ((0.010,), (0.010, 0.010)):
        _, state = _from_air(thicknesses, joined=True)
        for part, crosswise in zip(state.parts, state.crosswise, strict=True):
            assert part.stress == pytest.approx(alone.parts[0].stress, rel=1e-6, abs=1.0)
            assert crosswise == pytest.approx(part.stress, rel=1e-6, abs=1.0)


def test_mutual_load_of_two_strips_of_which_one_is_warmed():
    """Two bars on one length: sigma_1 = -E alpha dT h2 / (h1 + h2) (strength of materials)."""
    thick, thin, rise = 0.010, 0.004, 10.0
    what = stepped.piece(_SODA, (thick, thin), joined=True)
    cold = stepped.start(what, ROOM)
    warmed = cold.parts[0].temperature + rise
    state = stepped.carry(what, cold, (warmed, cold.parts[1].temperature), 1.0)
    whole_misfit = _SODA.youngs_modulus * _SODA.expansion * rise
    expected = -whole_misfit * thin / (thick + thin), whole_misfit * thick / (thick + thin)
    for wall, part, crosswise, one in zip(
        what.walls, state.parts, state.crosswise, expected, strict=True
    ):
        assert part.stress == pytest.approx(np.full(wall.z.size, one), rel=1e-6)
        assert crosswise == pytest.approx(np.zeros(wall.z.size), abs=1.0)


def test_no_force_is_left_along_the_joint_nor_across_it():
    what = stepped.piece(_SODA, (0.010, 0.004), joined=True)
    face = Face(ROOM, 9.0, _SODA.emissivity)
    state = stepped.start(what, _HOT)
    for _ in range(60):
        state = stepped.step(what, state, lambda _: (face, face), state.time, np.inf)
        forces = [
            mean_stress(wall, part.stress) * wall.thickness
            for wall, part in zip(what.walls, state.parts, strict=True)
        ]
        largest = max(float(np.abs(part.stress).max()) for part in state.parts)
        assert abs(sum(forces)) < 1e-9 * max(largest, 1e3)
        for wall, crosswise in zip(what.walls, state.crosswise, strict=True):
            assert abs(mean_stress(wall, crosswise)) < 1e-6 * max(largest, 1e3)


def test_the_thick_part_is_pulled_and_the_thin_one_squeezed():
    """What freezes first is squeezed by what freezes last (common practice)."""
    what, state = _from_air((0.010, 0.004), joined=True)
    loads = [mean_stress(w, p.stress) for w, p in zip(what.walls, state.parts, strict=True)]
    assert loads[0] > 10e6
    assert loads[1] == pytest.approx(-loads[0] * 10 / 4, rel=1e-6)


def test_mutual_load_after_steady_cooling():
    """Without structural relaxation the parts keep what their steady lags have in common.

    Lag of a plate's mean behind the oven: rho c a / h + a**2 / (3 kappa) for each K/s (heat
    balance of a plate that cools at a constant rate); the difference of the two lags at the glass
    transition is frozen in, and each part takes its share by thickness.
    """
    law = dataclasses.replace(_SODA.relaxation, expansion_liquid=_SODA.expansion, share=1.0)
    glass = dataclasses.replace(_SODA, relaxation=law)
    thick, thin, rate = 0.020, 0.005, 60 / 3600
    what = stepped.piece(glass, (thick, thin), joined=True, cells=16)
    told = Schedule(560 + ZERO_C, 3600.0, rate, ROOM, rate)
    cold = stepped.settled(what, fired(what, stepped.start(what, _HOT), whole(told)), ROOM)

    def lag(thickness, at):
        heat = glass.density * float(glass.heat_capacity(np.array([at]))[0])
        half, kappa = thickness / 2, glass.diffusivity(at)
        return heat * half / oven_face(at, glass.emissivity).slope(at) + half**2 / (3 * kappa)

    def expected(at):
        behind = rate * (lag(thick, at) - lag(thin, at))
        misfit = glass.youngs_modulus * glass.expansion * behind
        return misfit * thin / (thick + thin)

    found = mean_stress(what.walls[0], cold.parts[0].stress)
    # It freezes bit by bit, from the annealing point down to well below the strain point.
    assert expected(glass.annealing_point) < found < expected(glass.strain_point - 60)
    assert found == pytest.approx(expected(glass.strain_point - 15), rel=0.05)


def test_settling_takes_away_what_passes():
    wall = plate(_SODA, 0.01)
    what = stepped.Piece((wall,))
    uneven = ROOM + 5 * np.cos(np.pi * wall.z / wall.thickness)
    strained = stepped.carry(what, stepped.start(what, ROOM), (uneven,), 1.0)
    assert np.abs(strained.parts[0].stress).max() > 1e5
    assert np.abs(stepped.settled(what, strained, ROOM).parts[0].stress).max() < 1.0
