"""The reading glass shows what lies below it, larger."""

import numpy as np
import pytest

from demo_app.optics.picture import point_reading
from demo_app.optics.reading_glass import components, magnified
from demo_app.optics.retardation import Placed, RetardationMap, Stage


def wedge(*, mirrored):
    """v1 grows along x, v2 across."""
    along = np.linspace(-30.0, 30.0, 7)
    across = np.linspace(0.0 if mirrored else -1.0, 1.0, 5)
    v1, v2 = np.meshgrid(10 * along, 200 * across)
    return RetardationMap(
        v1.astype(np.float32),
        v2.astype(np.float32),
        across,
        along,
        np.linspace(8.0, 12.0, 7),
        mirrored=mirrored,
    )


@pytest.mark.parametrize("mirrored", [False, True])
def test_components_are_those_of_a_single_point(mirrored):
    stage = Stage((Placed(wedge(mirrored=mirrored), 5.0, -3.0),), 100, 60)
    rng = np.random.default_rng(1)
    x, y = rng.uniform(-40, 40, 200), rng.uniform(-20, 20, 200)
    v1, v2 = components(stage, x, y)
    for k in range(x.size):
        found = point_reading(stage, x[k], y[k])
        if found is None:
            assert v1[k] == v2[k] == 0
        else:
            assert np.hypot(v1[k], v2[k]) == pytest.approx(found[0], abs=1e-3)


def test_lengths_in_the_glass_are_larger():
    stage = Stage((Placed(wedge(mirrored=False)),), 100, 60)
    glass = Stage((*stage.pieces, magnified(stage, 2.0, 1.0, 15.0, 4.0)), 100, 60)
    for dx, dy in ((0.0, 0.0), (8.0, -4.0), (-4.0, 10.0)):
        seen = point_reading(glass, 2 + dx, 1 + dy)
        below = point_reading(stage, 2 + dx / 4, 1 + dy / 4)
        assert seen == pytest.approx(below, abs=0.5)
    # Beside the glass nothing has changed.
    assert point_reading(glass, 25.0, 1.0) == point_reading(stage, 25.0, 1.0)
