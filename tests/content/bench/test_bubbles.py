"""Bubble batch: one flask as the scene has it, and how many of many behave."""

import numpy as np
import pytest

from demo_app.content.bench import bubbles, sampling
from demo_app.content.bench.answer import never, quiet
from demo_app.content.bench.bubble_run import BLOWS, borne, cooled_flask
from demo_app.content.bench.bubbles import BubblesQuestion, counts, first, full, spare
from demo_app.content.readings import solve
from demo_app.physics.material_files import material
from demo_app.physics.revolve.proof import blow_odds
from demo_app.scenes.bubble import SCENE
from demo_app.scenes.settings import make

SODA = material("soda-lime")


@pytest.fixture(scope="module")
def proof():
    return cooled_flask(SODA, bubbles._sizes(BubblesQuestion()), None, 1.0)


def test_one_flask_is_the_scenes(proof):
    found = solve(SCENE, make(SCENE.settings, {})).readings
    one = borne(proof)
    assert 1e-6 * one.base_outside == pytest.approx(found["base_outside_MPa"], rel=1e-6)
    assert 1e-6 * one.base_inside == pytest.approx(found["base_inside_MPa"], rel=1e-6)
    assert 1e6 * one.scratch == pytest.approx(found["scratch_to_break_um"], rel=1e-6)
    assert one.blow_for(0.5) == pytest.approx(found["blow_to_break_J"], rel=0.02)


def test_odds_between_the_kept_blows(proof):
    one = borne(proof)
    for energy in (4.0, 8.0, 11.0):
        assert one.blow_odds(energy) == pytest.approx(blow_odds(proof, energy), abs=0.02)
    assert one.blow_odds(0.0) == 0.0
    assert (np.diff(one.blows) >= 0).all()
    assert BLOWS[0] < 0.1


def test_a_coarse_flask_tells_nearly_the_same(proof):
    coarse = borne(cooled_flask(SODA, bubbles._sizes(BubblesQuestion()), None, 1.0, coarse=True))
    fine = borne(proof)
    assert coarse.base_outside == pytest.approx(fine.base_outside, rel=0.05)
    assert coarse.scratch == pytest.approx(fine.scratch, rel=0.1)


def test_more_draught_locks_in_more():
    sizes = bubbles._sizes(BubblesQuestion())
    weak, strong = (borne(cooled_flask(SODA, sizes, None, air, coarse=True)) for air in (0.7, 1.4))
    assert strong.base_outside < weak.base_outside < 0
    assert strong.scratch < weak.scratch


def test_flasks_that_differ_by_themselves_are_tossed_coins():
    """Independent trials of differing odds drawn anew have the mean's binomial distribution."""
    odds = [0.95, 0.6, 0.8]
    share = counts(odds, 10, alike=False)
    rng = np.random.default_rng(5)
    drawn = (rng.random((40000, 10)) < rng.choice(odds, (40000, 10))).sum(axis=1)
    assert share == pytest.approx(np.bincount(drawn, minlength=11) / 40000, abs=0.01)
    assert share @ np.arange(11) == pytest.approx(10 * np.mean(odds))


def test_a_batch_that_is_alike_spreads_wider_about_the_same_mean():
    odds = [0.95, 0.6, 0.8]
    one, other = (counts(odds, 10, alike=alike) for alike in (False, True))
    k = np.arange(11)
    assert one.sum() == pytest.approx(1)
    assert other.sum() == pytest.approx(1)
    assert one @ k == pytest.approx(other @ k)
    assert other @ k**2 > one @ k**2
    rng = np.random.default_rng(6)
    drawn = rng.binomial(10, rng.choice(odds, 40000))
    assert other == pytest.approx(np.bincount(drawn, minlength=11) / 40000, abs=0.01)


def test_spare_flasks():
    """Nine of ten behave: 12 give ten with 88.9 %, 13 with 96.6 % (binomial tables)."""
    assert spare([0.9], 10, alike=False) == 13
    assert counts([0.9], 12, alike=False)[10:].sum() == pytest.approx(0.889, abs=0.001)
    assert spare([0.0], 1, alike=False) is None
    assert spare([1.0], 10, alike=True) == 10


def test_an_oven_takes_the_wonder_out():
    answer = first(BubblesQuestion(way="oven"))
    assert answer.figure("scratch_needed").middle is None
    assert [one.id for one in answer.sentences] == ["none_behave", "calm"]


def test_a_deeper_scratch_and_a_softer_blow_make_more_behave(monkeypatch):
    monkeypatch.setattr(sampling, "FIRST", 4)
    mild, bold = (
        next(full(BubblesQuestion(scratch_um=deep, blow_J=blow), quiet, never))
        for deep, blow in ((80.0, 12.0), (200.0, 2.0))
    )
    assert bold.figure("behave").middle > mild.figure("behave").middle + 30
    assert bold.figure("count").middle > mild.figure("count").middle
    assert mild.figure("scratch_needed") == bold.figure("scratch_needed")
