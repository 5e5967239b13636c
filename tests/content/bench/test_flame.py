"""Time in the flame: odds, their window, and the same physics as the scene's."""

import numpy as np
import pytest

from demo_app.content.bench import flame, sampling
from demo_app.content.bench.answer import never, quiet
from demo_app.content.bench.flame import FlameQuestion, first, full
from demo_app.content.bench.flame_run import FINE, QUICK, Pace, course, fate
from demo_app.content.readings import solve
from demo_app.physics.material_files import material
from demo_app.scenes.ring import SCENE
from demo_app.scenes.settings import make

SODA = material("soda-lime")


@pytest.fixture(scope="module")
def followed():
    return course(SODA, flame._burn(FlameQuestion()), FINE)


def test_the_three_fates_are_all_there_is(followed):
    found = fate(followed, np.linspace(0, 60, 61))
    total = found.drop + found.alone + found.none
    assert total == pytest.approx(1.0, abs=1e-12)
    assert (found.drop >= 0).all()
    assert (found.alone >= 0).all()
    assert (found.none >= 0).all()


def test_heat_alone_cracks_more_the_longer_it_burns(followed):
    alone = fate(followed, np.linspace(0, 60, 121)).alone
    assert (np.diff(alone) >= -1e-9).all()
    assert alone[0] < 1e-6
    assert alone[-1] > 0.99


@pytest.mark.parametrize("heat_s", [6.0, 8.0, 11.0])
def test_the_odds_are_those_of_the_scene_ring(followed, heat_s):
    """One run with a drop by the scene's own steps, against interpolation between other times."""
    settings = make(SCENE.settings, {"heat_s": heat_s, "drop_at_s": heat_s + 1.0})
    whole = solve(SCENE, settings).readings["break_probability"]
    found = fate(followed, np.array([heat_s]))
    assert float((found.drop + found.alone)[0]) == pytest.approx(whole, abs=0.05)


def test_interpolation_between_heating_times_costs_little(followed):
    ticks = np.linspace(0, float(followed.seconds[-1]), 40)
    many = course(SODA, flame._burn(FlameQuestion()), Pace(FINE.growth, FINE.longest, 21))
    few, more = fate(followed, ticks), fate(many, ticks)
    assert np.abs(few.drop - more.drop).max() < 0.05


def test_quick_steps_tell_nearly_the_same_window():
    ticks = np.linspace(0, 40, 161)
    windows = [
        flame._window(
            ticks, fate(course(SODA, flame._burn(FlameQuestion()), pace), ticks).drop, 0.8
        )
        for pace in (QUICK, FINE)
    ]
    assert windows[0] == pytest.approx(windows[1], abs=0.5)


def test_a_deeper_score_opens_the_window_earlier_and_more_glass_later():
    def opens(**values):
        return first(FlameQuestion(**values)).figure("opens").middle

    assert opens(score_depth_um=160.0) < opens() < opens(wall_mm=4.0)
    assert opens(flame_kW_m2=100.0) < opens()


def test_borosilicate_needs_far_more_heat():
    found = {
        glass: first(FlameQuestion(glass=glass, longest_s=60.0)).figure("best_s").middle
        for glass in ("soda-lime", "borosilicate")
    }
    assert found["borosilicate"] > 1.5 * found["soda-lime"]


def test_without_a_window_the_best_time_is_told():
    answer = first(FlameQuestion(score_depth_um=0.0, flame_kW_m2=20.0, longest_s=10.0))
    assert [one.id for one in answer.sentences] == ["no_window"]
    assert answer.figure("best_odds").middle < 80


def asked(**values):
    return FlameQuestion(wall_tol_pct=0.0, aim_mm=0.0, longest_s=16.0, **values)


def test_bottles_that_differ_widen_the_range(monkeypatch):
    monkeypatch.setattr(sampling, "FIRST", 2)
    monkeypatch.setattr(flame, "FINE", QUICK)
    found = {
        tol: next(
            full(FlameQuestion(flame_tol_pct=tol, wall_tol_pct=0.0, aim_mm=0.0), quiet, never)
        )
        for tol in (2.0, 20.0)
    }
    width = {tol: one.figure("opens").high - one.figure("opens").low for tol, one in found.items()}
    assert width[20.0] > 3 * width[2.0]
