"""Which tolerance matters most: against sums whose shares are known, and an independent library."""

import numpy as np
import pytest
from scipy.stats import qmc

from demo_app.content.bench.answer import never, quiet
from demo_app.content.bench.matters import shares
from demo_app.content.bench.sampling import drawn, within
from demo_app.content.spread.sensitivity import rank
from demo_app.content.spread.tolerance import between


def test_shares_of_a_weighted_sum():
    """Var(sum a x) = sum a**2 Var(x) for independent x: 9 / 14, 4 / 14, 1 / 14."""
    points = qmc.Sobol(3, rng=np.random.default_rng(2)).random(256)
    found = shares(points, points @ [3.0, -2.0, 1.0])
    assert found == pytest.approx([9 / 14, 4 / 14, 1 / 14], abs=0.02)


def test_what_acts_together_is_left_over():
    points = qmc.Sobol(2, rng=np.random.default_rng(2)).random(512) - 0.5
    assert shares(points, points[:, 0] * points[:, 1]).sum() < 0.05


def test_nothing_is_shared_out_where_nothing_spreads_or_runs_are_few():
    points = np.random.default_rng(1).random((20, 3))
    assert not shares(points, np.full(20, 7.0)).any()
    assert not shares(points[:4], points[:4, 0]).any()


def test_shares_are_first_sobol_indices_of_a_line():
    """The same function through the ranking that is checked against an independent library."""
    tolerances = [between("a", 0.0, 2.0), between("b", 0.0, 1.0)]

    def model(point):
        return {"y": 5 + 2 * point["a"] + 3 * point["b"]}

    ranking = rank(model, {}, tolerances, ["y"], seed=3, base=256)
    assert ranking is not None
    indices = {one.name: one.first for one in ranking[0].shares}
    *_, found = drawn(
        lambda point: model(point)["y"], tolerances, seed=3, most=256, progress=quiet,
        cancelled=never,
    )  # fmt: skip
    mine = dict(zip(found.names, shares(found.points, np.array(found.results)), strict=True))
    for name, share in indices.items():
        assert mine[name] == pytest.approx(share, abs=0.03)


def test_points_lie_within_their_tolerances():
    *_, found = drawn(
        lambda point: point["x"], within("x", 10.0), seed=1, most=64, progress=quiet,
        cancelled=never,
    )  # fmt: skip
    assert 0.9 <= min(found.results) < 0.91
    assert 1.09 < max(found.results) <= 1.1
    assert within("x", 0.0) == ()
