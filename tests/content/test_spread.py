"""Spread: quasi-random points over tolerances, ranges, odds, and what matters most."""

import dataclasses
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import binomtest, lognorm, sobol_indices, truncnorm

from demo_app.base.errors import InputError
from demo_app.content.spread.estimates import odds, range_of, wilson
from demo_app.content.spread.monte_carlo import spread, spreading
from demo_app.content.spread.scene_model import scene_model
from demo_app.content.spread.sensitivity import indices, rank
from demo_app.content.spread.tolerance import (
    Tolerance,
    between,
    factor,
    normal,
    relative,
    within_ranges,
)
from demo_app.scenes.catalogue import scene

ISHIGAMI = (7.0, 0.1)
ANGLES = tuple(between(name, -math.pi, math.pi) for name in "xyz")


def ishigami(values):
    a, b = ISHIGAMI
    x, y, z = (values[name] for name in "xyz")
    return {"f": math.sin(x) + a * math.sin(y) ** 2 + b * z**4 * math.sin(x)}


def ishigami_shares():
    """First and total indices (Ishigami and Homma 1990; closed form in Saltelli et al. 2010)."""
    a, b = ISHIGAMI
    alone = 0.5 * (1 + b * math.pi**4 / 5) ** 2, a**2 / 8, 0.0
    both = b**2 * math.pi**8 * (1 / 18 - 1 / 50)
    whole = sum(alone) + both
    return (
        [one / whole for one in alone],
        [(alone[0] + both) / whole, alone[1] / whole, both / whole],
    )


def straight(values):
    return {"y": 3 * values["x"], "ok": values["x"] > 0, "word": "up" if values["x"] > 1 else "low"}


def test_ranking_agrees_with_the_closed_form():
    (found,) = rank(ishigami, {}, ANGLES, ["f"], seed=5, base=4096)
    shares = {one.name: one for one in found.shares}
    first, total = ishigami_shares()
    for place, name in enumerate("xyz"):
        one = shares[name]
        assert one.first == pytest.approx(first[place], abs=0.02)
        assert one.total == pytest.approx(total[place], abs=0.02)
        assert one.total_low <= total[place] <= one.total_high
        assert one.first_low - 0.01 <= first[place] <= one.first_high
    assert [one.name for one in found.shares] == ["x", "y", "z"]
    assert found.clear
    assert found.points == 5 * 4096


def sampled(count=256):
    rng = np.random.default_rng(2)
    a, b = rng.uniform(-math.pi, math.pi, (2, count, 3))
    blocks = [a, b]
    for place in range(3):
        mixed = a.copy()
        mixed[:, place] = b[:, place]
        blocks.append(mixed)
    return np.array(
        [[ishigami(dict(zip("xyz", row, strict=True)))["f"] for row in block] for block in blocks]
    )


def test_estimators_are_scipys():
    values = sampled()
    theirs = sobol_indices(
        func={"f_A": values[:1], "f_B": values[1:2], "f_AB": values[2:, None]}, n=values.shape[1]
    )
    ours = indices(values)
    meant = np.clip([theirs.first_order, theirs.total_order], 0, 1)
    assert ours == pytest.approx(meant, abs=1e-12)


def test_estimators_agree_with_an_independent_library():
    """SALib 1.6 on the same runs; it takes the mean off over all of them."""
    sobol = pytest.importorskip("SALib.analyze.sobol")
    values = sampled(1024)
    problem = {"num_vars": 3, "names": list("xyz"), "bounds": 3 * [[-math.pi, math.pi]]}
    rows = np.column_stack([values[0], *values[2:], values[1]]).ravel()
    theirs = sobol.analyze(problem, rows, calc_second_order=False, seed=1)
    ours = indices(values)
    assert ours[0] == pytest.approx(np.clip(theirs["S1"], 0, 1), abs=0.02)
    assert ours[1] == pytest.approx(theirs["ST"], abs=1e-3)


def test_a_reading_that_does_not_move_has_no_shares():
    (found,) = rank(lambda values: {"y": 4.0}, {}, ANGLES, ["y"], seed=1, base=8)
    assert [one.total for one in found.shares] == [0, 0, 0]
    assert not found.clear


def test_ranking_is_the_same_in_every_run():
    first = rank(ishigami, {}, ANGLES, ["f"], seed=9, base=16)
    assert first == rank(ishigami, {}, ANGLES, ["f"], seed=9, base=16)
    assert first != rank(ishigami, {}, ANGLES, ["f"], seed=10, base=16)


def test_ranking_can_be_stopped():
    told = []
    found = rank(
        ishigami,
        {},
        ANGLES,
        ["f"],
        seed=1,
        base=16,
        progress=lambda done, count: told.append((done, count)),
        cancelled=lambda: len(told) == 7,
    )
    assert found is None
    assert told[-1] == (7, 80)


def test_quantiles_are_those_of_the_law():
    """Normal, cut off and lognormal against scipy.stats."""
    cut = dataclasses.replace(normal("x", 2, 1), low=1.0)
    laws = {
        normal("x", 2, 0.5): truncnorm(-np.inf, np.inf, 2, 0.5),
        cut: truncnorm(-1, np.inf, 2, 1),
        factor("x", 2, 1.3): lognorm(math.log(1.3), scale=2),
    }
    for tolerance, law in laws.items():
        found = spread(straight, {"x": 2.0}, [tolerance], seed=3, most=1024).ranges["y"]
        shares = law.cdf(np.array([found.low, found.middle, found.high]) / 3)
        assert shares == pytest.approx([0.05, 0.5, 0.95], abs=1 / 1024)
        assert found.mean == pytest.approx(3 * law.mean(), rel=2e-3)
        shares = np.linspace(0.01, 0.99, 9)
        assert tolerance.ppf(shares) == pytest.approx(law.ppf(shares), rel=1e-9)


def test_odds_are_those_of_the_law():
    found = spread(straight, {"x": 0.0}, [normal("x", 0.5, 1)], seed=3, most=512)
    meant = truncnorm(-np.inf, np.inf, 0.5, 1).sf(0)
    assert found.odds["ok"].share == pytest.approx(meant, abs=0.005)
    assert found.odds["ok"].low < meant < found.odds["ok"].high
    assert found.words["word"]["up"].share == pytest.approx(0.3085, abs=0.005)
    assert sum(one.share for one in found.words["word"].values()) == pytest.approx(1)


@pytest.mark.parametrize(("hits", "count"), [(0, 10), (1, 16), (8, 10), (16, 16), (500, 1024)])
def test_intervals_of_odds_are_scipys(hits, count):
    meant = binomtest(hits, count).proportion_ci(method="wilson")
    assert wilson(hits, count) == pytest.approx((meant.low, meant.high), abs=1e-12)


def test_first_figures_come_before_the_finest():
    told = []
    answers = list(
        spreading(
            straight,
            {"x": 1.0},
            [between("x", 0, 2)],
            seed=1,
            most=64,
            progress=lambda done, count: told.append((done, count)),
        )
    )
    assert [one.points for one in answers] == [0, 16, 32, 64]
    assert [one.done for one in answers] == [False, False, False, True]
    assert answers[0].nominal == {"y": 3.0, "ok": True, "word": "low"}
    assert answers[0].ranges == {}
    assert told == [(done, 64) for done in range(1, 65)]
    assert answers[-1] == spread(straight, {"x": 1.0}, [between("x", 0, 2)], seed=1, most=64)
    other = spread(straight, {"x": 1.0}, [between("x", 0, 2)], seed=2, most=64)
    assert other.ranges != answers[-1].ranges


def test_stopping_keeps_the_last_whole_answer():
    told = []
    answers = list(
        spreading(
            straight,
            {"x": 1.0},
            [between("x", 0, 2)],
            seed=1,
            progress=lambda done, count: told.append(done),
            cancelled=lambda: len(told) == 40,
        )
    )
    assert [one.points for one in answers] == [0, 16, 32]
    assert len(told) == 40


def test_points_that_cannot_be_are_counted_and_left_out():
    def model(values):
        if values["x"] > 1.5:
            raise InputError("too much", place="x", remedy="write less")
        return {"y": values["x"], "z": None if values["x"] < 0.5 else values["x"]}

    found = spread(model, {"x": 1.0}, [between("x", 0, 2)], seed=1, most=64)
    assert (found.points, found.refused) == (48, 16)
    assert found.done
    assert found.ranges["y"].high < 1.5
    assert (found.ranges["y"].count, found.ranges["z"].count) == (48, 32)
    with pytest.raises(InputError, match="too much"):
        spread(model, {"x": 1.9}, [between("x", 0, 2)], seed=1)
    with pytest.raises(InputError, match="too much"):
        rank(model, {}, [between("x", 0, 2)], ["y"], seed=1, base=16)
    with pytest.raises(InputError, match="not a number at every point"):
        rank(model, {}, [between("x", 0, 1)], ["z"], seed=1, base=16)


@given(
    st.sampled_from(["even", "normal", "factor"]),
    st.floats(0.1, 10),
    st.floats(1.01, 3),
    st.lists(st.floats(0, 1), min_size=2, max_size=9),
)
def test_values_rise_with_their_share_and_stay_within_the_ends(law, a, b, shares):
    one = Tolerance("x", law, a, a + b if law == "even" else b, low=a * 0.9, high=a * 1.6)
    found = one.ppf(np.sort(shares))
    assert np.all(np.diff(found) >= 0)
    assert np.all((found >= one.low) & (found <= one.high))


@given(st.lists(st.floats(-1e6, 1e6), min_size=1, max_size=50))
def test_a_range_is_in_order(values):
    found = range_of(values)
    assert min(values) <= found.low <= found.middle <= found.high <= max(values)
    assert found.mean_low <= found.mean <= found.mean_high
    assert found.count == len(values)


@given(st.integers(1, 200).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_odds_are_a_probability(hits_count):
    found = odds(*hits_count)
    assert 0 <= found.low <= found.share <= found.high <= 1
    assert found.low < found.high


@pytest.mark.parametrize(
    ("act", "words"),
    [
        (lambda: between("x", 2, 1), "leaves no room"),
        (lambda: normal("x", 2, 0), "is none"),
        (lambda: normal("x", math.nan, 1), "finite"),
        (lambda: factor("x", -1, 2), "cannot be"),
        (lambda: factor("x", 1, 1), "cannot be"),
        (lambda: relative("x", 0, 10), "leaves no room"),
        (lambda: Tolerance("x", "odd", 1, 2), "not known"),
        (lambda: Tolerance("x", "normal", 0, 1, low=9), "almost nothing"),
        (lambda: spread(straight, {"x": 1.0}, [], seed=1), "none is stated"),
        (lambda: spread(straight, {"x": 1.0}, 2 * [between("x", 0, 1)], seed=1), "stated twice"),
        (lambda: spread(straight, {"x": 1.0}, [between("x", 0, 1)], seed=1, most=20), "not even"),
        (lambda: within_ranges(scene("toughen"), [between("glass", 0, 1)]), "no number called"),
        (lambda: within_ranges(scene("toughen"), [normal("jet_W_m2K", 9e4, 1)]), "almost nothing"),
    ],
)
def test_what_says_nothing_is_refused(act, words):
    with pytest.raises(InputError, match=words):
        act()


def test_a_scene_spreads_and_says_what_matters():
    """Jets within 20 % matter more to a plate than 0.1 mm of its thickness."""
    toughen = scene("toughen")
    model = scene_model(toughen, {"then": "nothing"}, ("surface_MPa", "grade", "runs_by_itself"))
    nominal = {"jet_W_m2K": 280.0, "thickness_mm": 6.0}
    loose = within_ranges(toughen, [relative("jet_W_m2K", 280, 20), normal("thickness_mm", 6, 0.1)])
    found = spread(model, nominal, loose, seed=4, most=16)
    assert found.ranges["surface_MPa"].low < found.nominal["surface_MPa"]
    assert found.ranges["surface_MPa"].high > found.nominal["surface_MPa"]
    assert found.odds["runs_by_itself"].hits == 16
    assert found.words["grade"]["toughened"].count == 16
    (ranked,) = rank(model, nominal, loose, ["surface_MPa"], seed=4, base=8)
    assert [one.name for one in ranked.shares] == ["jet_W_m2K", "thickness_mm"]
    assert ranked.shares[0].total > 0.8
