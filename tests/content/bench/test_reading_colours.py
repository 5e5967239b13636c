"""Reading a colour: against an independent library, the known sequences, and closed forms."""

import math
import warnings

import numpy as np
import pytest

from demo_app.base.errors import InputError
from demo_app.content.bench.colour import OPTIC_TOL_PCT, ColourQuestion, first, wave_of
from demo_app.content.bench.colour_chart import candidates, colours, differences, lab_of
from demo_app.content.bench.tardy import order
from demo_app.optics.colour import lightness_chroma_hue
from demo_app.optics.difference import ciede2000, lab
from demo_app.optics.instrument import Instrument, intensity
from demo_app.optics.light_data import lamp
from demo_app.optics.words import interference_colour
from demo_app.physics.material_files import material

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    import colour as science


def test_ciede2000_is_that_of_an_independent_library():
    """colour-science 0.4.7, on colours all over CIELAB and on the hardest hues."""
    rng = np.random.default_rng(3)
    one = rng.uniform([0, -120, -120], [100, 120, 120], (2000, 3))
    other = np.clip(one + rng.normal(0, 12, one.shape), [0, -128, -128], [100, 128, 128])
    expected = science.delta_E(one, other, method="CIE 2000")
    assert ciede2000(one, other) == pytest.approx(expected, abs=1e-9)


def test_ciede2000_of_published_pairs():
    """Sharma, Wu and Dalal 2005, pairs 1, 7 and 17 of their table (from memory, all three agree
    with colour-science)."""
    one = np.array([[50, 2.6772, -79.7751], [50, 0, 0], [50, 2.5, 0]])
    other = np.array([[50, 0, -82.7485], [50, -1, 2], [73, 25, -18]])
    assert ciede2000(one, other) == pytest.approx([2.0425, 2.3669, 27.1492], abs=1e-4)


def test_lab_is_that_of_the_library():
    xyz = np.array([[0.2, 0.3, 0.1], [0.9, 0.95, 1.0], [0.002, 0.001, 0.003]])
    white = lamp("daylight").white
    xy = white[:2] / white.sum()
    assert lab(xyz, white) == pytest.approx(science.XYZ_to_Lab(xyz, xy), abs=1e-3)


@pytest.mark.parametrize(
    ("grey_nm", "added", "taken"), [(22.8, 298, 319), (114.0, 244, 75), (0.0, 309, 309)]
)
def test_hues_beside_the_tint_plate(grey_nm, added, taken):
    """A plate of 565 nm in daylight: hues (degrees) computed with colour-science, quoted beside
    the practice of ASTM C148 and F218 (the first-order grey turns blue or yellow)."""
    for total, hue in ((565 + grey_nm, added), (565 - grey_nm, taken)):
        instrument = Instrument()
        light = lamp("daylight")
        seen = intensity(instrument, np.array(total), np.array(0.0), light.wavelength_nm)
        found = float(lightness_chroma_hue(seen @ light.weights, light.white)[2])
        assert (found - hue + 180) % 360 - 180 == pytest.approx(0, abs=4)


@pytest.mark.parametrize("grey_nm", [105.0, 120.0, 140.0])
def test_first_order_grey_goes_blue_by_addition_and_yellow_or_orange_by_subtraction(grey_nm):
    """The known sequence: common practice, and any polarizing microscopist's first lesson."""
    assert interference_colour(grey_nm).endswith(("grey", "white"))
    assert interference_colour(565 + grey_nm) == "blue"
    assert interference_colour(565 - grey_nm) in ("orange", "yellow")
    rows = first(ColourQuestion(seen_nm=grey_nm)).tables[0].rows[0]
    assert rows[-2] == "blue"
    assert rows[-1] in ("orange", "yellow")


def test_the_plates_strips_are_the_plain_chart_moved():
    plain = colours("daylight", 0.0, 3000.0, 601).astype(int)
    adds = colours("daylight", 0.0, 3000.0, 601, 565.0).astype(int)
    takes = colours("daylight", 0.0, 3000.0, 601, 565.0, adds=False).astype(int)
    assert np.abs(adds[:480] - plain[113:593]).max() <= 2
    assert np.abs(takes[113:] - plain[:488]).max() <= 2
    assert np.abs(takes[:113] - plain[113:0:-1]).max() <= 2


def test_a_retardation_is_found_again_wherever_it_lies():
    for nm in range(20, 1500, 60):
        found = first(ColourQuestion(seen_nm=float(nm), match=1.0)).figure("retardation")
        assert found.low - 2 <= nm <= found.high + 2


def test_two_candidates_are_told_apart_by_the_plate():
    alone = first(ColourQuestion(seen_nm=620.0, match=6.0))
    assert alone.sentences[0].id == "several"
    totals = {"adds": lambda d: 565 + d, "takes away": lambda d: abs(565 - d)}
    for truth in (620.0, 1160.0):
        for way, total in totals.items():
            told = first(
                ColourQuestion(
                    seen_nm=620.0, match=6.0, plate=True, plate_way=way, plate_seen_nm=total(truth)
                )
            )
            found = told.figure("retardation")
            assert found.low - 10 <= truth <= found.high + 10
            assert told.figure("odds_of_it").middle > 90


def test_the_range_is_where_the_colour_can_be_told():
    """Where CIEDE2000 to both sides is the match, the likelihood is 0.61; the range of 90 % of a
    bell reaches 1.64 times as far."""
    nm = 700.0
    found = first(ColourQuestion(seen_nm=nm, match=2.0)).figure("retardation")
    difference = differences("daylight", nm, 1.0, 0.0, 1)
    near = [float(np.interp(2.0, difference[700:760], np.arange(60.0))),
            float(np.interp(2.0, difference[700:640:-1], np.arange(60.0)))]  # fmt: skip
    assert found.high - nm == pytest.approx(1.645 * near[0], rel=0.35)
    assert nm - found.low == pytest.approx(1.645 * near[1], rel=0.35)


def test_odds_and_quantiles_of_candidates():
    x = np.arange(0, 1000.0)
    likely = np.exp(-0.5 * ((x - 200) / 20) ** 2) + 0.5 * np.exp(-0.5 * ((x - 700) / 20) ** 2)
    one, other = candidates(likely, 1.0)
    assert (one.odds, other.odds) == pytest.approx((2 / 3, 1 / 3), abs=0.01)
    assert (one.low, one.middle, one.high) == pytest.approx((167.6, 200, 232.4), abs=2.0)


def test_stress_of_a_retardation():
    """ASTM F218, C770: stress = retardation / (C path); 50 MPa in 6 mm at 2.62 B is 786 nm."""
    question = ColourQuestion(method="turning", whole_order=1.0, lower_deg=0.0, path_mm=6.0)
    answer = first(question)
    told = answer.figure("stress")
    optic = material("soda-lime").stress_optic
    assert told.middle == pytest.approx(1e-6 * 565e-9 / (optic * 6e-3))
    scaled = told.middle * (786 / 565) * (optic / 2.62e-12)
    assert scaled == pytest.approx(50.0, rel=1e-3)
    assert (told.high - told.low) / 2 > OPTIC_TOL_PCT / 100 * told.middle


@pytest.mark.parametrize("load_N", [300.0, 1000.0, 6000.0])
def test_tardy_on_a_disk_pressed_across_its_diameter(load_N):
    """Middle of a disk: stress difference 8 P / (pi D t), hence 8 C P / (pi D) of retardation,
    whatever its thickness (Frocht 1948, Photoelasticity; Timoshenko and Goodier). 1000 N on 50 mm
    at 2.7 B: 137.5 nm. Both turns are found by darkness in the Mueller calculus."""
    glass = material("soda-lime")
    retardation = 8 * glass.stress_optic * load_N / (math.pi * 50e-3)
    wave = 560.0  # Where the instrument's quarter-wave plates are just that.
    whole = int(1e9 * retardation / wave)
    turns = np.arange(0.0, 180.0, 0.5)

    def darkest(sign):
        light = [
            intensity(
                Instrument(analyser_deg=90.0 + sign * turn, quarter_wave=True),
                np.array(1e9 * retardation),
                np.array(45.0),
                np.array([wave]),
            )[0]
            for turn in turns
        ]
        assert min(light) < 1e-4
        return float(turns[int(np.argmin(light))])

    first_way, other_way = darkest(1), darkest(-1)
    part = 1e9 * retardation / wave - whole
    lower = first_way if abs(first_way / 180 - part) < abs(other_way / 180 - part) else other_way
    higher = first_way + other_way - lower
    found = order(whole, lower, higher, 1.0)
    assert wave * found.middle == pytest.approx(1e9 * retardation, abs=2.0)
    assert found.low < 1e9 * retardation / wave < found.high
    if load_N == 1000.0:
        same = 1e9 * retardation * 2.7e-12 / glass.stress_optic
        assert same == pytest.approx(137.5, abs=0.1)


def test_turns_both_ways_halve_the_doubt_in_squares():
    one, both = order(0, 60.0, None, 2.0), order(0, 60.0, 120.0, 2.0)
    assert (one.middle, both.middle) == pytest.approx((1 / 3, 1 / 3))
    assert (both.high - both.low) == pytest.approx((one.high - one.low) / math.sqrt(2))
    with pytest.raises(InputError, match="180 apart"):
        order(0, 60.0, 100.0, 2.0)


def test_degrees_of_the_analyser():
    """ASTM C148 method B: 3.14 nm a degree at 565 nm, so that a disc of 22.8 nm is 7.26 degrees;
    3.28 at sodium's 589.3 (Senarmont)."""
    by_disc = order(0, 7.26, None, 1.0).middle * wave_of("daylight")
    assert by_disc == pytest.approx(22.8, abs=0.05)
    assert wave_of("sodium") / 180 == pytest.approx(3.27, abs=0.01)


def test_the_darkest_colours_ask_for_the_plate():
    ids = [one.id for one in first(ColourQuestion(seen_nm=10.0)).sentences]
    assert "dark" in ids


def test_the_chart_is_the_instruments():
    assert lab_of("daylight", np.array([0.0]))[0] == pytest.approx([0, 0, 0], abs=0.01)
