"""The Plan body: plane-stress elements against closed forms, layers against the Column."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.special import erfcx

from demo_app.physics.column import advance as column
from demo_app.physics.column.heat import Face
from demo_app.physics.column.readings import centre_stress
from demo_app.physics.column.wall import plate
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.materials import HeatCapacity
from demo_app.physics.plan.air import Air, jets
from demo_app.physics.plan.body import advance, carry, layer_stress, membrane_stress, plan, start
from demo_app.physics.plan.membrane import (
    balance,
    elastic_membrane,
    membrane_form,
    stiffness_form,
    supports,
)
from demo_app.physics.plan.mesh import mapped, rectangle
from demo_app.physics.plan.run import cooled, run
from demo_app.physics.plan.through import half

GLASS = material("soda-lime")


def skewed(u, v):
    """A distorted square: no element keeps its right angles."""
    return u + 0.2 * v + 0.1 * np.sin(3 * v), v + 0.15 * u * v


def relaxed_from(mesh, initial):
    """Stress at the points once a free plate has answered a uniform `initial` stress."""
    form = membrane_form(mesh)
    points = np.repeat(np.array(initial)[:, None], form.weight.size, axis=1)
    moved = balance(form, stiffness_form(mesh).solid(GLASS), points)
    return points + elastic_membrane(GLASS, form.strains(moved))


@settings(max_examples=10, deadline=None)
@given(st.tuples(*[st.floats(-1.0, 1.0)] * 3))
def test_patch_test_on_distorted_elements(initial):
    # A free plate lets go of any uniform stress by a linear displacement (patch test: Irons and
    # Razzaque 1972).
    ends = np.linspace(0.0, 1.0, 4)
    left = relaxed_from(mapped(ends, ends, skewed), initial)
    assert np.abs(left).max() < 1e-9


def hole(count):
    """Kirsch's plate: a quarter of a ring round a hole, far away held at the strain of the pull."""
    outer = 60.0
    radii, angles = np.geomspace(1.0, outer, count + 1), np.linspace(0, np.pi / 2, count // 2 + 1)
    mesh = mapped(
        radii,
        angles,
        lambda r, t: (r * np.cos(t), r * np.sin(t)),
        mirrored_x=True,
        mirrored_y=True,
    )
    far = np.flatnonzero(np.hypot(mesh.x, mesh.y).ravel() > outer * (1 - 1e-9))
    held = np.unique(np.concatenate([supports(mesh), 2 * far, 2 * far + 1]))
    form = membrane_form(mesh, held)
    pull = np.zeros((3, form.weight.size))
    pull[0] = 1.0
    moved = balance(form, stiffness_form(mesh, held).solid(GLASS), pull)
    return mesh, form.recover.nodal(pull + elastic_membrane(GLASS, form.strains(moved)))


def test_hole_in_a_pulled_plate():
    # Kirsch 1898; Timoshenko and Goodier, Theory of Elasticity, section 35: three times the pull
    # beside the hole, its negative before it.
    mesh, stress = hole(32)
    assert stress[0][0, -1] == pytest.approx(3.0, rel=0.01)
    assert stress[1][0, 0] == pytest.approx(-1.0, rel=0.01)
    beside = np.interp([2.0, 3.0], mesh.y[:, -1], stress[0][:, -1])
    assert beside == pytest.approx([1.2188, 1.0741], rel=0.003)


def one_element(layers, thickness):
    ends = np.array([0.0, 0.05])
    return plan(
        GLASS, thickness, rectangle(ends, ends, mirrored_x=True, mirrored_y=True), layers=layers
    )


def both_faces(piece, coefficient, **rest):
    return Air(ROOM, np.full(piece.mesh.nodes, float(coefficient)), **rest)


@pytest.mark.parametrize(("thickness", "coefficient"), [(6.1e-3, 222.0), (10e-3, 106.0)])
def test_one_element_is_the_column(thickness, coefficient):
    # The Column is the same law with one in-plane strain; see there for its own outside checks.
    hot = 650.0 + ZERO_C
    wall = plate(GLASS, thickness)
    alone = column.cooled(wall, hot, Face(ROOM, coefficient))
    piece = one_element(9, thickness)
    state = cooled(piece, hot, both_faces(piece, coefficient))
    xx, yy, xy = layer_stress(piece, state)
    assert xx[-1] == pytest.approx(alone.surface[0], rel=0.01)
    assert xx[0] == pytest.approx(centre_stress(wall, alone), rel=0.01)
    assert np.abs(xx - yy).max() < 1.0
    assert np.abs(xy).max() < 1.0
    assert np.abs(piece.wall.mean(xx)).max() < 1.0


def test_layers_are_the_columns_nodes():
    # The same nodes, the same scheme: what is left is the steps, which the two choose for
    # themselves.
    wall = plate(GLASS, 6.1e-3, 16)
    alone = column.cooled(wall, 650.0 + ZERO_C, Face(ROOM, 222.0))
    piece = one_element(9, 6.1e-3)
    state = cooled(piece, 650.0 + ZERO_C, both_faces(piece, 222.0))
    profile = layer_stress(piece, state)[0, :, 0, 0]
    assert np.abs(profile - alone.stress[8:]).max() < 0.004 * np.abs(profile).max()


def test_halved_steps_change_less_than_a_hundredth():
    piece = one_element(9, 6.1e-3)
    air = both_faces(piece, 222.0)
    once, twice = (
        layer_stress(piece, cooled(piece, 650.0 + ZERO_C, air, finer=n))[0, :, 0, 0] for n in (1, 2)
    )
    assert once[-1] == pytest.approx(twice[-1], rel=0.01)
    assert once[0] == pytest.approx(twice[0], rel=0.01)


def small_plate(layers=5):
    mesh = rectangle(
        np.linspace(0, 0.06, 7), np.linspace(0, 0.045, 6), mirrored_x=True, mirrored_y=True
    )
    return plan(GLASS, 6e-3, mesh, layers=layers)


def test_an_even_plate_is_dark_face_on():
    # Equibiaxial, and zero in the mean through the thickness: no retardation (common practice).
    piece = small_plate()
    state = cooled(piece, 650.0 + ZERO_C, both_faces(piece, 222.0))
    assert layer_stress(piece, state)[0, -1].max() < -70e6
    xx, yy, xy = membrane_stress(piece, state)
    retardation = GLASS.stress_optic * piece.thickness * np.hypot(xx - yy, 2 * xy)
    assert 1e9 * retardation.max() < 0.01


def test_jets_and_rim_leave_membrane_stress_in_balance():
    piece = small_plate()
    pattern = jets(piece.mesh, 222.0, 0.3, 0.03)
    state = cooled(piece, 650.0 + ZERO_C, Air(ROOM, pattern, rim=222.0))
    points = np.stack([piece.wall.mean(state.stress[c]) for c in (0, 1)])
    # Mean-stress theorem: no hand holds the plate, so each component is zero in the mean.
    total = points @ piece.form.weight / piece.mesh.area
    assert np.abs(total).max() < 1e-6 * np.abs(points).max()
    # The rim freezes first and is squeezed along itself when the rest has followed.
    yy = membrane_stress(piece, state)[1]
    assert yy[-1, 0] < -20e6
    assert np.abs(state.stress[2]).max() < 1.0


def test_reheating_without_flow_is_elastic():
    piece = small_plate()
    state = start(piece, ROOM)
    nodes = state.temperature + 40.0 * np.exp(-(piece.mesh.x.ravel() ** 2) / 0.02**2)
    warm = carry(piece, state, nodes, 1.0)
    back = carry(piece, warm, state.temperature, 1.0)
    assert np.abs(membrane_stress(piece, warm)).max() > 1e6
    assert np.abs(membrane_stress(piece, back)).max() < 1.0


def test_the_rim_cools_as_a_half_space():
    # Surface of a half-space under convection, 1 - exp(u**2) erfc(u) (Carslaw and Jaeger, section
    # 2.7): 0.369 after 10 s and 0.611 after 60 s for k 1, h 200, diffusivity 5.556e-7.
    constant = replace(
        GLASS,
        conductivity=(1.0, 0.0),
        heat_capacity=HeatCapacity((np.inf,), (720.0,), (0.0,), (0.0,)),
    )
    ends = 0.1 - 0.1 * np.append(np.geomspace(1, 0.005, 16), 0.0)
    # So high that its upper edge, which cools too, is far away.
    mesh = rectangle(ends, np.array([0.0, 1.0]), mirrored_x=True, mirrored_y=True)
    piece = plan(constant, 6e-3, mesh, layers=2)
    air = Air(ROOM, np.zeros(mesh.nodes), rim=200.0)
    *_, state = run(piece, start(piece, ROOM + 100.0), lambda _: air, until=10.0, finer=4)
    lost = 1 - (state.temperature[0].reshape(mesh.x.shape)[-1, 0] - ROOM) / 100.0
    expected = 1 - erfcx(200.0 * np.sqrt(5.556e-7 * 10.0))
    assert expected == pytest.approx(0.369, abs=1e-3)
    assert lost == pytest.approx(expected, rel=0.01)


def test_bad_plates_are_refused():
    with pytest.raises(ValueError, match="no plate"):
        half(GLASS, 0.0, 5)
    with pytest.raises(ValueError, match="no plate"):
        half(GLASS, 6e-3, 1)


def test_a_step_keeps_an_even_temperature_even():
    piece = small_plate()
    state = start(piece, 700.0)
    after = advance(piece, state, 1.0, both_faces(piece, 50.0), both_faces(piece, 50.0))
    assert np.ptp(after.temperature, axis=1).max() < 1e-9
