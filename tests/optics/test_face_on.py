"""A plate seen face-on: stress to retardation, and a quarter unfolded."""

import numpy as np
import pytest

from demo_app.optics.face_on import face_on, unfold

X, Y = np.linspace(-0.05, 0.05, 11), np.linspace(-0.02, 0.04, 7)


def even(xx, yy, xy):
    return np.broadcast_to(np.array([xx, yy, xy])[:, None, None], (3, X.size, Y.size))


def test_an_even_pull_gives_its_retardation():
    # ASTM C770: delta = C t (sigma1 - sigma2); 5 MPa over 10 mm with 2.62e-12 /Pa is 131 nm.
    found = face_on(X, Y, even(5e6, 0.0, 0.0), 10e-3, 2.62e-12)
    assert found.v1 == pytest.approx(131.0, rel=1e-5)
    assert np.abs(found.v2).max() < 1e-3
    turned = face_on(X, Y, even(2.5e6, 2.5e6, 2.5e6), 10e-3, 2.62e-12)
    assert turned.v2 == pytest.approx(131.0, rel=1e-5)


def test_pull_alike_in_all_directions_is_dark():
    assert not face_on(X, Y, even(80e6, 80e6, 0.0), 6e-3, 2.62e-12).retardation_nm().any()


def test_the_map_lies_where_the_plate_is():
    found = face_on(X, Y, even(0.0, 0.0, 0.0), 6e-3, 2.62e-12, finer=2)
    assert found.v1.shape == (13, 21)
    assert found.along_mm[[0, -1]] == pytest.approx([-50.0, 50.0])
    assert found.across[[0, -1]].tolist() == [-1.0, 1.0]
    assert found.half_width_mm == pytest.approx(30.0)
    assert not found.mirrored


def test_between_nodes_runs_a_smooth_curve():
    x = np.linspace(-0.05, 0.05, 21)
    stress = np.zeros((3, x.size, Y.size))
    stress[0] = 1e6 * np.sin(60 * x)[:, None]
    found = face_on(x, Y, stress, 10e-3, 1e-12, finer=4)
    expected = 10.0 * np.sin(60e-3 * found.along_mm)
    assert np.abs(found.v1 - expected).max() < 0.01


def test_a_quarter_unfolds_into_the_whole():
    half_x, half_y = np.linspace(0, 0.05, 6), np.linspace(0, 0.03, 4)
    x, y = np.meshgrid(half_x, half_y, indexing="ij")
    quarter = np.stack([x**2 + y**2, y**2, x * y])
    whole_x, whole_y, whole = unfold(half_x, half_y, quarter, mirrored_x=True, mirrored_y=True)
    x, y = np.meshgrid(whole_x, whole_y, indexing="ij")
    assert whole == pytest.approx(np.stack([x**2 + y**2, y**2, x * y]))
