"""Matching: the truth is found again from readings of a finer model, with noise."""

import numpy as np
import pytest

from demo_app.content.bench.answer import never, quiet
from demo_app.content.bench.matching import MatchingQuestion, first, full
from demo_app.physics.column.readings import centre_stress, neutral_depth
from demo_app.physics.material_files import material
from demo_app.physics.toughening import blown, quench
from demo_app.scenes.ring import SCENE as RING
from demo_app.scenes.run import state_at
from demo_app.scenes.settings import make, settings_of
from demo_app.scenes.toughen import SCENE as TOUGHEN

SODA = material("soda-lime")


def plate(jets, thickness_mm=6.0):
    """Readings of a plate on a mesh twice as fine as the fit's."""
    ready = quench(SODA, 1e-3 * thickness_mm, 923.15, jets, cells=64)
    column = blown(ready).column
    surface = -column.stress[0]
    return (
        1e-6 * surface,
        1e-6 * centre_stress(ready.wall, column),
        1e9 * SODA.stress_optic * 15e-3 * surface,
        1e6 * neutral_depth(ready.wall, column),
    )


def last(question):
    *_, found = full(question, quiet, never)
    return found


@pytest.mark.parametrize("truth", [120.0, 280.0, 600.0])
def test_jets_are_found_again(truth):
    surface, middle, edge, _ = plate(truth)
    noise = np.random.default_rng(int(truth)).normal(1.0, 0.03, 3)
    question = MatchingQuestion(
        first_reading=surface * noise[0],
        second_reading=middle * noise[1],
        third_reading=edge * noise[2],
    )
    answer = last(question)
    found = answer.figure("jets")
    assert found.low < truth < found.high
    assert answer.done
    assert answer.sentences[-1].id == "usable"
    assert found.high - found.low < 0.25 * (1500 - 15)


def test_the_first_answer_is_near_the_last():
    quick, slow = first(MatchingQuestion()).figure("jets"), last(MatchingQuestion()).figure("jets")
    assert quick.middle == pytest.approx(slow.middle, rel=0.03)
    assert quick.high - quick.low == pytest.approx(slow.high - slow.low, rel=0.1)


def test_thickness_is_found_again():
    surface, middle, _, neutral = plate(280.0, 8.0)
    question = MatchingQuestion(
        unknown="thickness", first_reading=surface, second_reading=middle, third_reading=neutral
    )
    found = last(question).figure("thickness")
    assert found.low < 8.0 < found.high
    assert found.middle == pytest.approx(8.0, rel=0.03)


def test_a_flame_is_found_again_from_the_scenes_temperatures():
    """Temperatures of the scene `ring`, whose steps are finer than the fit's."""
    times = (4.0, 8.0, 12.0)
    settings = make(
        RING.settings, {"flame_kW_m2": 65.0, "heat_s": 20.0, "drop": False, "score_depth_um": 0.0}
    )
    seen = [RING.read(settings, state_at(RING, settings, at))["surface_peak_C"] for at in times]
    question = MatchingQuestion(
        unknown="flame", thickness_mm=3.0,
        first_reading=seen[0], second_reading=seen[1], third_reading=seen[2],
    )  # fmt: skip
    found = first(question).figure("flame")
    assert found.low < 65.0 < found.high
    assert found.middle == pytest.approx(65.0, rel=0.08)


def test_readings_that_contradict_are_told_and_not_kept():
    answer = first(MatchingQuestion(third_reading=1500.0, reading_pct=1.0, model_pct=1.0))
    assert [one.id for one in answer.sentences] == ["inconsistent", "chance", "not_usable"]


def test_what_is_fitted_is_a_setting_of_the_scenes():
    names = {one.name for one in (*settings_of(TOUGHEN.settings), *settings_of(RING.settings))}
    for unknown in ("jets", "thickness"):
        assert MatchingQuestion(unknown=unknown).kind.unknown.name in names
