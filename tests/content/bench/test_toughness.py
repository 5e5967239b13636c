"""Toughness: forwards and backwards agree, and standards' borders hold."""

import numpy as np
import pytest
from scipy.stats import weibull_min

from demo_app.content.bench import sampling
from demo_app.content.bench.answer import never, quiet
from demo_app.content.bench.toughness import ToughnessQuestion, _plate, first, full
from demo_app.physics.material_files import material
from demo_app.physics.plates import (
    Load,
    break_probability,
    even_bending,
    fatigue_factor,
    flaws,
    median_load,
)
from demo_app.physics.strength import FRACTILE, TEST_AREA, handled, probability

SODA = material("soda-lime")


@pytest.mark.parametrize(
    ("squeeze", "grade"),
    [(20.0, "annealed"), (30.0, "heat-strengthened"), (52.0, "heat-strengthened"),
     (100.0, "toughened")],
)  # fmt: skip
def test_grades_by_a_surface_reading(squeeze, grade):
    """ASTM C1048: heat-strengthened from 24 to 52 MPa, fully tempered from 69."""
    answer = first(ToughnessQuestion(known="face", face_MPa=squeeze, reading_tol_pct=3.0))
    shares = {row[0]: row[1] for row in answer.tables[0].rows}
    assert shares[grade] == 100


def test_an_edge_reading_is_the_stress_times_the_path():
    """40 MPa in the middle over 50 mm at 2.62 B: 5240 nm, 9.3 orders of 565 nm."""
    glass = SODA.stress_optic
    seen = 5240.0 * glass / 2.62e-12
    question = ToughnessQuestion(known="edge", edge_nm=seen, path_mm=50.0, edge_at="skin")
    assert _plate(question).surface == pytest.approx(40e6, rel=1e-3)


@pytest.mark.parametrize("edge_at", ["middle", "skin"])
def test_backwards_from_the_edge_finds_what_the_cooling_gave(edge_at, monkeypatch):
    made = _plate(ToughnessQuestion())
    stress = made.middle if edge_at == "middle" else made.surface
    seen = 1e9 * SODA.stress_optic * 50e-3 * stress
    monkeypatch.setattr(sampling, "FIRST", 64)
    answer = next(
        full(ToughnessQuestion(known="edge", edge_at=edge_at, edge_nm=seen), quiet, never)
    )
    found = answer.figure("surface")
    assert found.low < 1e-6 * made.surface < found.high
    assert found.middle == pytest.approx(1e-6 * made.surface, rel=0.06)
    assert (found.high - found.low) < 0.4 * found.middle


def test_harder_jets_make_it_tougher_and_the_dice_smaller():
    soft, hard = (first(ToughnessQuestion(jet_W_m2K=jets)) for jets in (150.0, 400.0))
    for id in ("surface", "middle", "particles", "ratio", "blow"):
        assert soft.figure(id).high < hard.figure(id).low


def test_still_air_hardly_toughens_and_leaves_shards():
    answer = first(ToughnessQuestion(jet_W_m2K=30.0, thickness_mm=4.0))
    assert [one.id for one in answer.sentences][1] == "shards"
    assert answer.figure("ratio").high < 2


def test_doubt_about_the_grade_is_told(monkeypatch):
    monkeypatch.setattr(sampling, "FIRST", 64)
    answer = next(full(ToughnessQuestion(known="face", face_MPa=24.0), quiet, never))
    assert answer.sentences[0].id == "unsure"
    shares = [row[1] for row in answer.tables[0].rows]
    assert sum(shares) == pytest.approx(100)


def test_the_range_of_a_reading_is_that_of_its_tolerance(monkeypatch):
    """Even within 8 %: nine of ten lie within 7.2 %."""
    monkeypatch.setattr(sampling, "FIRST", 256)
    question = ToughnessQuestion(known="face", face_MPa=100.0, reading_tol_pct=8.0, runs="256")
    found = next(full(question, quiet, never)).figure("surface")
    assert (found.low, found.middle, found.high) == pytest.approx((92.8, 100, 107.2), abs=0.2)


def test_weibull_statistics_are_scipys():
    """Even pull: the distribution of strength is scipy's weibull_min, scaled by the area."""
    for wear in ("new", "used"):
        found = flaws(SODA, wear)
        for area in (0.001, 0.02, 0.24):
            scale = found.scale * area ** (-1 / found.modulus)
            law = weibull_min(found.modulus, scale=scale)
            for stress in (15e6, 40e6, 90e6):
                one = probability(found.risk(np.array([stress]), np.array([area])))
                assert one == pytest.approx(law.cdf(stress), rel=1e-9)
            assert found.median_strength(area) == pytest.approx(law.median(), rel=1e-9)
            load = even_bending(area, 1.0)
            limit = median_load(found, load, 30e6, 1800.0)
            assert limit == pytest.approx(30e6 + fatigue_factor(1800.0) * law.median(), rel=1e-6)


def test_uneven_pull_is_the_product_of_its_parts():
    """Parts survive independently (Weibull 1939): their survivals multiply."""
    found = flaws(SODA, "used")
    stress, area = np.array([20e6, 35e6, 50e6]), np.array([0.01, 0.004, 0.001])
    survives = np.prod(
        [
            weibull_min(found.modulus, scale=found.scale * a ** (-1 / found.modulus)).sf(s)
            for s, a in zip(stress, area, strict=True)
        ]
    )
    whole = break_probability(found, Load(stress, area), 1.0, 0.0, 5.0)
    assert 1 - whole == pytest.approx(survives, rel=1e-9)


def test_the_characteristic_strength_is_the_fractile_of_the_standards_test():
    """EN 572-1: 45 MPa, 5 % fractile on 0.24 m2 (EN 1288-2)."""
    found = handled(45e6, 7.0)
    law = weibull_min(7.0, scale=found.scale * TEST_AREA ** (-1 / 7.0))
    assert law.ppf(FRACTILE) == pytest.approx(45e6, rel=1e-9)
