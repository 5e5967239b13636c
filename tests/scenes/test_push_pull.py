"""The scene push-pull: pull and squeeze add up, cracks open and shut, hands may not do anything."""

import math

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.content.pictures import draw
from demo_app.scenes.catalogue import load
from demo_app.scenes.pushing.settings import KINDS
from demo_app.scenes.run import state_at
from demo_app.scenes.settings import make

SCENE = load("push-pull")


def told(**values):
    settings = make(SCENE.settings, values)
    state = state_at(SCENE, settings)
    return settings, state, SCENE.read(settings, state)


@pytest.mark.parametrize("kind", ["bar-bent", "bar-bent-three", "disk-squeezed", "locked-in"])
def test_what_is_bent_or_locked_in_adds_up_to_zero(kind):
    _, _, found = told(kind=kind, crack_mm=0)
    assert found["pulled_N"] > 50
    assert abs(found["net_force_N"]) < 1e-6
    assert abs(found["net_moment_Nm"]) < 1e-6
    assert found["retardation_peak_nm"] > 100


@pytest.mark.parametrize(("kind", "sign"), [("bar-pulled", 1), ("bar-squeezed", -1)])
def test_what_is_pulled_or_squeezed_adds_up_to_the_hands(kind, sign):
    _, _, found = told(kind=kind, load=1200)
    assert found["hands_N"] == sign * 1200
    assert found["net_force_N"] == pytest.approx(sign * 1200, abs=1e-6)
    assert abs(found["net_moment_Nm"]) < 1e-6


def test_a_pulled_bar_shows_its_stress():
    # C sigma b with 2.62 Brewster (ASTM C770): 5 MPa along 10 mm of soda-lime are 131 nm.
    _, _, found = told(kind="bar-pulled", load=1000)
    assert found["tension_MPa"] == pytest.approx(5.0, rel=1e-6)
    assert found["compression_MPa"] == 0
    assert found["retardation_peak_nm"] == pytest.approx(131, abs=0.5)


def test_polystyrene_shows_about_four_times_as_much():
    # Rudd and Gurnee 1957: 10 Brewster; soda-lime 2.62.
    glass, plastic = (told(kind="bar-bent", load=400, material=m)[2] for m in MATERIALS)
    assert plastic["tension_MPa"] == pytest.approx(glass["tension_MPa"], rel=1e-3)
    ratio = plastic["retardation_middle_nm"] / glass["retardation_middle_nm"]
    assert ratio == pytest.approx(10 / 2.62, rel=2e-3)


MATERIALS = ("soda-lime", "polystyrene")


def test_a_disk_is_as_colourful_thick_or_thin():
    thin, thick = (told(kind="disk-squeezed", thickness_mm=t)[2] for t in (5, 10))
    assert thin["tension_MPa"] == pytest.approx(2 * thick["tension_MPa"])
    assert thin["retardation_middle_nm"] == pytest.approx(thick["retardation_middle_nm"])


@pytest.mark.parametrize(
    ("kind", "opens"),
    [
        ("bar-pulled", (True, True)),
        ("bar-squeezed", (False, False)),
        ("bar-bent", (True, False)),
        ("disk-squeezed", (True, False)),
        ("locked-in", (False, False)),
    ],
)
def test_a_pull_opens_a_crack_and_a_squeeze_shuts_it(kind, opens):
    settings, state, _ = told(kind=kind, load=500)
    drawn = [line for line in SCENE.view(settings, state).outlines if line.kind == "crack"]
    assert len(drawn) == 2
    for line, opened in zip(drawn, opens, strict=True):
        wide = min(np.ptp(line.x_mm), np.ptp(line.y_mm))
        assert (wide > 0) == opened


def test_a_deep_scratch_reaches_the_pull_inside_a_toughened_slice():
    shallow, deep = (told(kind="locked-in", crack_mm=depth) for depth in (1.0, 5.0))
    assert shallow[2]["intensity_ratio"] == 0
    assert not shallow[2]["breaks"]
    assert deep[2]["breaks"]
    # Each part is in balance by itself, so hardly paler than before.
    after = SCENE.view(*deep[:2]).stage
    assert len(after.pieces) == 2
    assert np.abs(after.pieces[0].map.v1).max() > 0.9 * deep[2]["retardation_middle_nm"]


def test_a_longer_crack_breaks_the_bar_and_lets_the_stress_go():
    # K = 1.12 sigma sqrt(pi a): 18 MPa need 0.44 mm at 0.75 MPa m^0.5.
    settings, state, found = told(crack_mm=0.6)
    assert found["breaks"]
    assert found["intensity_ratio"] == pytest.approx(1.0, abs=0.05)
    stage = SCENE.view(settings, state).stage
    assert len(stage.pieces) == 2
    assert all(np.abs(part.map.v1).max() == 0 for part in stage.pieces)
    assert SCENE.say(settings, state).id == "broke"


def test_without_stress_it_is_dark_and_the_neutral_line_stays_dark():
    settings = SCENE.settings()
    assert draw(SCENE.view(settings, SCENE.start(settings)).stage, (192, 108))[..., :3].max() == 0
    picture = draw(SCENE.view(settings, state_at(SCENE, settings)).stage, (384, 216))
    column = picture[:, 192, :3].max(axis=1)
    assert column[108] < 20
    assert column.max() > 100


def test_the_colours_of_a_bent_bar_come_in_order():
    # Interference colours by retardation (Michel-Levy; Sorensen 2013): grey and white below 280 nm,
    # yellow to red up to 550, then violet and blue.
    settings, state, found = told(load=1000, material="polystyrene", crack_mm=0)
    assert found["retardation_middle_nm"] > 1100
    picture = draw(SCENE.view(settings, state).stage, (960, 540)).astype(int)
    column = picture[270:317, 480]
    blue, green, red = (column[:, k] for k in range(3))
    first = int(np.argmax(red - blue > 60))  # yellow
    then = int(np.argmax(blue - red > 60))  # blue
    later = then + int(np.argmax(green[then:] - red[then:] > 60))  # green of the second order
    assert 0 < first < then <= later


def test_the_force_grows_before_the_audience():
    settings = SCENE.settings()
    half = state_at(SCENE, settings, 1.6)
    assert half.force == pytest.approx(400)
    assert SCENE.read(settings, half)["tension_MPa"] == pytest.approx(9, rel=0.01)
    assert math.isclose(state_at(SCENE, settings).force, 800)


def test_a_thin_squeezed_bar_is_refused():
    with pytest.raises(InputError, match="bows out sideways"):
        make(
            SCENE.settings,
            {"kind": "bar-squeezed", "material": "polystyrene", "thickness_mm": 3, "load": 1000},
        )


def test_unknown_kinds_are_refused_with_the_known_ones():
    with pytest.raises(InputError, match="bar-bent") as refused:
        make(SCENE.settings, {"kind": "twisted"})
    assert all(kind in str(refused.value) for kind in KINDS)
