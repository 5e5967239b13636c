"""The scene ring: what it must show, and the second opinions it is held to."""

import dataclasses
import functools
import itertools
import math
import string
from dataclasses import dataclass
from typing import Any

import numpy as np
import pytest

from demo_app.scenes.ring import SCENE, TEXTS, Settings
from demo_app.scenes.run import state_at, states
from demo_app.scenes.settings import change, make


@dataclass(frozen=True)
class Told:
    """What one instant of a run said."""

    time: float
    ratio: float
    retardation: float
    id: str
    words: str


@dataclass(frozen=True)
class Story:
    """A run: its settings, its last state and what each instant said."""

    settings: Settings
    last: Any
    told: tuple[Told, ...]

    def reading(self, name):
        return SCENE.read(self.settings, self.last)[name]

    @property
    def ids(self):
        """Sentences in the order in which they came, each once in a row."""
        return [key for key, _ in itertools.groupby(t.id for t in self.told)]


@functools.cache
def story(until, **values):
    settings = make(Settings, values)
    told = []
    for state in states(SCENE, settings):
        message = SCENE.say(settings, state)
        seen = max(float(p.map.retardation_nm().max()) for p in state.stage.pieces)
        ratio = SCENE.trace(settings, state)["intensity_ratio"]
        told.append(Told(state.time_s, ratio, seen, message.id, message.words(TEXTS)))
        if state.time_s >= until - 1e-9:
            return Story(settings, state, tuple(told))
    raise AssertionError


def default():
    return story(16.0)


def alone():
    return story(36.0, drop=False, heat_s=60)


def mild():
    return story(31.0, flame_kW_m2=25, heat_s=20, score_depth_um=0, drop=False)


def too_hot():
    return story(18.5, flame_kW_m2=400, heat_s=15, drop_at_s=16)


def faded():
    return story(900.0, score_depth_um=0, drop=False)


def softened():
    return story(450.0, flame_kW_m2=320, heat_s=12, score_depth_um=0, drop=False)


def short():
    return story(5.0, drop=False, heat_s=3)


def in_glass(glass):
    return story(23.0, glass=glass, flame_kW_m2=60, heat_s=20, drop_at_s=21)


# What the demonstrator shows: heat, wait, drop


def test_the_drop_cracks_it_and_the_flame_alone_does_not():
    """K over K_IC below 0.8 until the drop and above 1.2 within a second of it."""
    told = default().told
    assert max(t.ratio for t in told if t.time <= 11.0) < 0.8
    assert default().reading("intensity_ratio") > 1.2
    assert state_at(SCENE, Settings(), 12.0).moment.peaks.ratio > 1.2
    assert default().reading("breaks") is True
    assert 11.0 < default().reading("break_at_s") < 12.0
    assert default().reading("break_offset_mm") == pytest.approx(0.0, abs=0.05)
    assert default().reading("break_probability") > 0.9


def test_the_ratios_of_the_second_opinion():
    """An independent calculation (elastic, edge-crack weight function, the same heat).

    0.08 at flame-out; 1.26 to 1.56 under drops of 2,000 to 5,000 W/m2K; the surface 185 degC. At
    flame-out it is what is left of two pulls of some 30 MPa: 0.05 are 2 MPa of them.
    """
    told = default().told
    at_out = min(told, key=lambda t: abs(t.time - 10.0))
    assert at_out.ratio == pytest.approx(0.08, abs=0.05)
    assert 1.26 <= default().reading("intensity_ratio") <= 1.56
    assert default().reading("surface_peak_C") == pytest.approx(185, rel=0.05)
    waited = story(15.0, drop=False)
    assert waited.told[-1].ratio == pytest.approx(0.70, abs=0.1)
    assert not waited.reading("breaks")


def test_a_flame_left_on_cracks_it_by_itself():
    """Second opinion: at about 28 s."""
    assert alone().reading("breaks") is True
    assert 22 < alone().reading("break_at_s") < 34
    assert alone().told[-1].id == "cracked_alone_middle"


@pytest.mark.parametrize("offset", [-2, 2])
def test_the_crack_begins_at_the_score(offset):
    found = story(11.6, score_offset_mm=offset)
    assert found.reading("break_offset_mm") == pytest.approx(offset, abs=1e-6)
    # the skin's pull is widest over the hottest glass: inside it comes out nearer to the middle
    inside = found.reading("break_inside_mm")
    assert math.copysign(1, inside) == math.copysign(1, offset)
    assert abs(inside) < abs(offset)


@pytest.mark.parametrize("offset", [-3, 3])
def test_an_unscored_bottle_cracks_under_the_drop(offset):
    """The drop is 6 mm wide, so nearer than about 2.5 mm it wets the hottest place as well."""
    found = story(11.6, score_depth_um=0, flame_kW_m2=300, drop_offset_mm=offset)
    place = found.reading("break_offset_mm")
    assert 0.4 < abs(place) < 3
    assert math.copysign(1, place) == math.copysign(1, offset)


def test_mild_heat_without_score_and_drop_holds():
    assert mild().reading("breaks") is False
    assert mild().reading("intensity_ratio") < 0.5
    assert mild().reading("break_probability") < 0.001
    assert mild().told[-1].id == "held"


def test_glasses_stand_the_same_shock_in_the_order_of_hasselman_s_first_parameter():
    """Hasselman 1969, J. Am. Ceram. Soc. 52, 600. Second opinion: 0.65 and 0.11."""
    ratio = {
        glass: in_glass(glass).reading("intensity_ratio")
        for glass in ("soda-lime", "borosilicate", "fused-silica")
    }
    assert ratio["soda-lime"] > 1 > ratio["borosilicate"] > ratio["fused-silica"]
    assert ratio["borosilicate"] == pytest.approx(0.65, rel=0.05)
    assert ratio["fused-silica"] == pytest.approx(0.11, rel=0.05)
    assert ratio["fused-silica"] < 0.2


def test_a_far_too_hot_ring_does_not_crack_and_says_why():
    assert too_hot().reading("breaks") is False
    assert too_hot().reading("surface_peak_C") > 600
    assert too_hot().told[-1].id == "too_hot"
    assert "steam" in too_hot().told[-1].words


# What is seen


def test_mild_heating_stays_below_the_first_colours():
    """Below 280 nm, where white turns to yellow, while the flame burns; the limb counted.

    Second opinion: 250 nm. Afterwards it rises to some 400 nm at the limb: while the flame burns
    the skin is hotter than the glass below it, and the squeeze of that gradient hides half of the
    ring's bending pull along the bottle; it evens out within a second or two, the bending stays.
    """
    assert state_at(SCENE, mild().settings, 20.0).peak_nm < 280
    burning = [t.retardation for t in mild().told if t.time <= 20.0]
    assert max(burning) == pytest.approx(250, rel=0.1)
    after = [t.retardation for t in mild().told if t.time > 20.0]
    assert 350 < max(after) < 450


def test_the_bending_pull_comes_out_when_the_skin_s_gradient_evens_out():
    settings = mild().settings
    now, later = (state_at(SCENE, settings, seconds) for seconds in (20.0, 24.0))
    pulls = [SCENE.trace(settings, s)["axial_outside_MPa"] for s in (now, later)]
    assert pulls[1] > 1.3 * pulls[0] > 0


def test_strong_heating_reaches_colours():
    """Beyond the first order's violet at 551 nm (daylight)."""
    assert default().reading("retardation_peak_nm") > 551


def test_the_picture_is_dark_again_when_it_is_cold():
    assert faded().reading("surface_peak_C") < 500  # below soda-lime's strain point, 511 degC
    assert max(t.retardation for t in faded().told) > 500
    assert faded().told[-1].retardation < 5
    assert faded().told[-1].id == "fading"


def test_the_picture_is_dark_before_it_is_heated():
    assert default().told[0].retardation == 0.0
    cold = story(12.0, flame_kW_m2=0)
    assert max(t.retardation for t in cold.told) < 0.01
    assert cold.ids == ["cold"]


def test_a_ring_that_flowed_stays_bright():
    assert softened().reading("surface_peak_C") > 560
    assert softened().told[-1].id == "locked"
    assert softened().told[-1].retardation > 300
    assert "soft" in softened().ids


def test_the_pieces_let_go_of_their_stress_and_move_apart():
    state = default().last
    assert len(state.stage.pieces) == 2
    low, high = state.stage.pieces
    assert high.x_mm - low.x_mm == pytest.approx(6.0)
    at = next(i for i, t in enumerate(default().told) if t.id.startswith("cracked"))
    before, after = default().told[at - 2].retardation, default().told[-1].retardation
    assert after < 0.8 * before
    section = SCENE.view(default().settings, state).section
    assert len(section.seams) == 1


def test_swelling_is_what_the_picture_magnifies():
    """A narrow ring swells by less than alpha dT r of a ring that is free (70 mm, 9.1e-6 /K)."""
    view = SCENE.view(mild().settings, mild().last)
    free = 9.1e-6 * (mild().reading("surface_peak_C") - 20) * 35_000
    assert 0 < mild().reading("swell_um") < free
    assert view.section.moved_y_um.max() == pytest.approx(mild().reading("swell_um"), rel=0.05)
    assert view.section.magnified == 50


def test_the_heated_ring_is_squeezed_around_and_pulled_along_once_it_soaked():
    assert mild().reading("hoop_MPa") < 0 < mild().reading("axial_outside_MPa")
    assert mild().reading("axial_inside_MPa") < 0


@pytest.mark.parametrize("place", [25, 150, 200])
def test_it_cracks_off_at_the_heel_the_shoulder_and_the_neck(place):
    found = story(11.6, ring_at_mm=place)
    assert found.reading("breaks") is True
    assert found.reading("break_offset_mm") == pytest.approx(0.0, abs=0.05)
    view = SCENE.view(found.settings, found.last)
    assert all(np.isfinite(p.map.v1).all() for p in view.stage.pieces)
    # The ring stands in the middle of the stage, and so does the crack.
    assert [m.kind for m in view.marks] == ["crack"]
    assert view.marks[0].x_mm == pytest.approx(0.0, abs=0.05)


# Sentences


def test_every_sentence_comes_up():
    aside = (story(11.6, score_offset_mm=2), story(30.0, heat_s=60, drop=False, score_offset_mm=1))
    stories = (default(), alone(), mild(), too_hot(), faded(), softened(), short(), *aside)
    said = {t.id for one in stories for t in one.told}
    names = {SCENE.view(default().settings, default().last).section.stress_id}
    assert said == set(TEXTS) - names


def test_sentences_come_in_the_order_of_events():
    first = ["cold", "heating", "soaking", "chilled", "cracking", "cracked_drop_middle"]
    assert default().ids == first
    assert alone().ids == ["cold", "heating", "cracking", "cracked_alone_middle"]
    assert faded().ids == ["cold", "heating", "soaking", "held", "fading"]
    assert short().ids == ["cold", "heating", "evening", "soaking"]
    assert softened().ids == ["cold", "heating", "soft", "soaking", "held", "locked"]


def test_every_sentence_can_be_put_into_words():
    for one in (default(), alone(), mild(), too_hot(), faded(), softened(), short()):
        for t in one.told:
            assert "{" not in t.words
            assert "nan" not in t.words
            assert "-" not in t.words.replace("K_IC", "")  # no value of a sentence is negative
    for text in TEXTS.values():
        for _, field, form, _ in string.Formatter().parse(text):
            assert field is None or form


# Settings, actions, repetition


def fingerprint(settings, state):
    maps = [p.map for p in state.stage.pieces]
    words = str(SCENE.read(settings, state)).encode()
    return words + b"".join(m.v1.tobytes() + m.v2.tobytes() for m in maps)


def onward(settings, state, steps):
    for _ in range(steps):
        state = SCENE.advance(settings, state)
    return state


def test_settings_put_back_give_the_same_bytes():
    settings = Settings()
    middle = onward(settings, SCENE.start(settings), 30)
    plain = onward(settings, middle, 15)
    for other in (
        change(settings, flame_kW_m2=300, ring_width_mm=20),
        change(settings, drop_at_s=middle.time_s, drop_offset_mm=4),
        change(settings, glass="borosilicate", wall_mm=5, ring_at_mm=150),
    ):
        if (other.glass, other.wall_mm) == (settings.glass, settings.wall_mm):
            onward(other, middle, 4)
        else:
            onward(other, SCENE.start(other), 2)
        back = change(other, **dataclasses.asdict(settings))
        assert back == settings
        assert fingerprint(settings, onward(back, middle, 15)) == fingerprint(settings, plain)


def action(name):
    return next(a for a in SCENE.actions if a.id == name).apply


def test_a_live_change_takes_effect_from_that_instant():
    settings = Settings()
    middle = onward(settings, SCENE.start(settings), 25)
    off = action("flame_out")(settings, middle)
    assert off.heat_s == middle.time_s
    burnt, cooled = onward(settings, middle, 6), onward(off, middle, 20)
    assert cooled.moment.glass.temperature.max() < middle.moment.glass.temperature.max()
    assert burnt.moment.glass.temperature.max() > middle.moment.glass.temperature.max()


def test_drop_now_lets_a_drop_fall_at_once():
    settings = make(Settings, {"drop": False})
    middle = onward(settings, SCENE.start(settings), 25)
    now = action("drop_now")(settings, middle)
    assert now.drop
    assert now.drop_at_s == middle.time_s
    wet = onward(now, middle, 2)
    assert wet.moment.water.depth.max() > 1e-3
    assert any(m.kind == "drop" for m in SCENE.view(now, wet).marks)
    assert not any(m.kind == "drop" for m in SCENE.view(settings, middle).marks)
    assert SCENE.say(now, wet).id == "chilled"


def test_drop_now_lets_a_second_drop_fall():
    settings = make(Settings, {"flame_kW_m2": 25, "heat_s": 2, "drop_at_s": 2})
    one = state_at(SCENE, settings, 3.0)
    again = action("drop_now")(settings, one)
    two = onward(again, one, 1)
    assert two.moment.water.depth.max() > 1.2 * one.moment.water.depth.max()


@pytest.mark.parametrize(
    ("diameter", "wall", "place"), list(itertools.product((40, 120), (1.5, 6), (25, 205)))
)
def test_every_shape_can_be_made_and_heated(diameter, wall, place):
    settings = make(
        Settings,
        {
            "outer_diameter_mm": diameter,
            "wall_mm": wall,
            "ring_at_mm": place,
            "score_depth_um": 500,
            "score_offset_mm": 8,
        },
    )
    state = onward(settings, SCENE.start(settings), 3)
    readings = SCENE.read(settings, state)
    assert readings["surface_peak_C"] > 21
    assert readings["hoop_MPa"] < 0
    assert all(np.isfinite(p.map.v1).all() for p in state.stage.pieces)
