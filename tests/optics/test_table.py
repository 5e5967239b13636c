"""The colour table against full sums over the spectrum."""

import numpy as np
import pytest
from optics_reference import ciede2000

from demo_app.optics.colour import LUMINANCE, decode
from demo_app.optics.instrument import Instrument
from demo_app.optics.light_data import LAMPS
from demo_app.optics.table import (
    HALF_TURN,
    REACHES_NM,
    ColourTable,
    colour_table,
    exact_signal,
    reach_for,
)

# The look-up's goal; rounding to 8 bits alone makes up to 1.16 of it.
FURTHEST = 1.5


def bytes_of(packed):
    return np.stack([(packed >> shift) & 255 for shift in (16, 8, 0)], axis=-1)


def looked_up(table: ColourTable, retardation, axis_deg):
    """sRGB signal by the definition of the table's rows and columns."""
    angle = np.radians(2 * axis_deg)
    along, slant = np.cos(angle), np.sin(angle)
    walk = np.copysign(1 - along / (np.abs(along) + np.abs(slant)), slant)
    row = np.rint(retardation / table.row_nm).astype(int)
    if table.wraps:
        row %= len(table.pixels) - 1
    packed = table.pixels[row, np.rint((walk / 2 + 1) * HALF_TURN).astype(int)]
    return bytes_of(packed) / 255


INSTRUMENTS = [
    Instrument(),
    Instrument(polarizer_deg=22.5),
    Instrument(analyser_deg=0),
    Instrument(quarter_wave=True),
    Instrument(tint_plate_nm=565),
    Instrument(lamp="incandescent"),
    Instrument(lamp="white-led", polarizer_deg=30),
    Instrument(lamp="sodium"),
    Instrument(lamp="green", quarter_wave=True, polarizer_deg=10),
]


@pytest.mark.parametrize("instrument", INSTRUMENTS)
def test_look_up_is_close_to_the_exact_spectra(instrument):
    rng = np.random.default_rng(4)
    retardation = np.concatenate([rng.uniform(0, 3000, 4000), rng.uniform(0, 60, 1000)])
    axis = rng.uniform(-90, 90, 5000)
    # Near the dark brushes the eye is most sensitive.
    axis[::4] = (instrument.polarizer_deg + rng.normal(0, 3, 1250) + 90) % 180 - 90
    exact = exact_signal(instrument, retardation, axis)
    seen = looked_up(colour_table(instrument, 3000.0), retardation, axis)
    assert ciede2000(seen, exact).max() < FURTHEST


def test_far_retardations_stay_close():
    retardation = np.random.default_rng(5).uniform(3000, 5990, 3000)
    axis = np.zeros(3000)
    exact = exact_signal(Instrument(), retardation, axis)
    seen = looked_up(colour_table(Instrument(), 6000.0), retardation, axis)
    assert ciede2000(seen, exact).max() < FURTHEST


def test_beyond_the_table_white_light_is_pale():
    table = colour_table(Instrument(), 6000.0)
    assert (table.pixels[-1] == table.mean).all()
    mean = bytes_of(table.mean)[HALF_TURN]
    assert np.ptp(mean.astype(int)) <= 1
    # Half the light of the open field: the mean of sin^2.
    assert decode(mean / 255) @ LUMINANCE == pytest.approx(0.8 / 2, abs=0.003)


@pytest.mark.parametrize("lamp", LAMPS)
def test_dark_without_stress(lamp):
    table = colour_table(Instrument(lamp=lamp, gain=50), 750.0)
    assert table.bare == 0xFF000000
    assert (table.pixels[0] == 0xFF000000).all()


def test_open_parallel_polarizers_are_neutral_at_the_exposure():
    for name in ("daylight", "incandescent", "white-led"):
        shown = exact_signal(Instrument(lamp=name, analyser_deg=0), np.array(0.0), np.array(0.0))
        np.testing.assert_allclose(decode(shown), 0.8, atol=1e-9)


def test_one_colour_light_keeps_its_hue_and_comes_back():
    table = colour_table(Instrument(lamp="sodium"), 1500.0)
    assert table.wraps
    assert (table.pixels[-1] == table.pixels[0]).all()
    red, green, blue = bytes_of(table.pixels).reshape(-1, 3).max(axis=0)
    assert red > green > blue


def test_gain_multiplies_the_light():
    faint = np.array(8.0)
    plain, raised = (
        decode(exact_signal(Instrument(gain=gain), faint, np.array(0.0))) @ LUMINANCE
        for gain in (1, 10)
    )
    assert raised / plain == pytest.approx(10, rel=1e-6)


@pytest.mark.parametrize(
    ("instrument", "symmetric"),
    [
        (Instrument(), True),
        (Instrument(polarizer_deg=0, quarter_wave=True, analyser_deg=40), False),
        (Instrument(polarizer_deg=30), False),
        (Instrument(polarizer_deg=90), True),
    ],
)
def test_symmetric_tables_are_their_own_mirror_image(instrument, symmetric):
    table = colour_table(instrument, 750.0)
    assert table.symmetric == symmetric
    assert (table.pixels == table.pixels[:, ::-1]).all() == symmetric


def test_reach():
    assert reach_for(0.0) == REACHES_NM[0]
    assert reach_for(750.0) == 1500.0
    assert reach_for(1e5) == REACHES_NM[-1]
    assert len(colour_table(Instrument(), 1500.0).pixels) == 1025


def test_a_brightened_faint_picture_has_no_steps():
    """Rows of a short table differ by less than an eye tells apart on a dark ground."""
    table = colour_table(Instrument(gain=10.0), reach_for(50.0))
    column = table.pixels[: round(30 / table.row_nm), HALF_TURN]
    grey = (column >> 8 & 0xFF).astype(int)
    assert grey.max() > 90
    assert np.abs(np.diff(grey)).max() <= 2
