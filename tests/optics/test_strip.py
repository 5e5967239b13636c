"""The strip of colours against the published order, and what a tint plate adds or takes away."""

import itertools

import numpy as np

from demo_app.optics.instrument import Instrument
from demo_app.optics.strip import colour_strip
from demo_app.optics.words import colour_word

# IEC 61966-2-1: linear sRGB to XYZ.
TO_XYZ = np.array([[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]])


def xyz_at(nm, instrument=None, row=0):
    strip = colour_strip(instrument or Instrument(), 2000.0, 2001)[row, nm] / 255
    linear = np.where(strip <= 0.04045, strip / 12.92, ((strip + 0.055) / 1.055) ** 2.4)
    return TO_XYZ @ linear


def word_at(nm, instrument=None, row=0):
    # White is the open field, which is drawn with 0.8 of the screen's light.
    return colour_word(xyz_at(nm, instrument, row) / 0.8, TO_XYZ.sum(axis=1))


def test_the_order_of_the_colours_is_the_published_one():
    # Sorensen, Eur. J. Mineral. 25 (2013) 5: black, grey, white, yellow, orange, red, violet, blue,
    # green, yellow, orange, red, violet, green. Pink is a light red.
    said = [word_at(nm).removeprefix("pale ") for nm in range(0, 1350, 3)]
    seen = ["red" if word == "pink" else word for word in said]
    runs = [word for word, _ in itertools.groupby(seen)]
    wanted = "black grey white yellow orange red violet blue green yellow orange red violet green"
    rest = iter(runs)
    assert all(word in rest for word in wanted.split()), runs


def test_a_tint_plate_turns_small_retardations_blue_or_yellow():
    tinted = Instrument(tint_plate_nm=565)
    # Murphy and Davidson, Fundamentals of Light Microscopy, 2012: parallel slow axes add and give
    # blue, crossed ones take away and give yellow or orange.
    assert word_at(114, tinted, 0).endswith(("blue", "green"))
    assert word_at(114, tinted, 1).endswith(("yellow", "orange"))
    both = colour_strip(tinted, 100.0, 11)
    np.testing.assert_array_equal(both[0, 0], both[1, 0])
    # The plate and 114 nm together are one wedge of 679 nm without it; taken away, one of 451 nm.
    for row, nm in enumerate((679.0, 451.0)):
        plain = colour_strip(Instrument(), nm, 2)[0, 1].astype(int)
        assert np.abs(plain - colour_strip(tinted, 114.0, 2)[row, 1]).max() <= 1


def test_without_a_tint_plate_the_direction_does_not_count():
    for instrument in (Instrument(), Instrument(polarizer_deg=10, lamp="sodium")):
        both = colour_strip(instrument, 1500.0, 200).astype(int)
        assert np.abs(both[0] - both[1]).max() <= 1


def test_the_lamp_alone_shows_no_colours():
    for filters in (0, 1):
        strip = colour_strip(Instrument(filters=filters, exposure=0.5), 1000.0, 50)
        assert np.ptp(strip.reshape(-1, 3), axis=0).max() == 0
