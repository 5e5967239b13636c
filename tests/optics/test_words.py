"""Plain words against the published order of interference colours."""

import itertools

import pytest

from demo_app.optics.instrument import Instrument
from demo_app.optics.words import interference_colour


def without_pale(word):
    return word.removeprefix("pale ")


# Order of Newton's colours as charted by Sorensen 2013 (Eur. J. Mineral. 25:5), places as in common
# charts (from memory; charts differ by some 20 nm).
@pytest.mark.parametrize(
    ("retardation", "words"),
    [
        (0, {"black"}),
        (100, {"grey"}),
        (200, {"white", "grey"}),
        (259, {"white"}),
        (281, {"yellow"}),
        (332, {"yellow"}),
        (430, {"orange"}),
        (505, {"red"}),
        (551, {"violet"}),
        (575, {"violet"}),
        (600, {"blue"}),
        (664, {"blue"}),
        (747, {"green"}),
        (866, {"yellow"}),
        (910, {"yellow"}),
        (948, {"orange"}),
        (998, {"pink", "red"}),
        (1101, {"violet"}),
        (1334, {"green"}),
        (1800, {"green"}),
    ],
)
def test_words_of_the_chart(retardation, words):
    assert without_pale(interference_colour(float(retardation))) in words


def test_the_first_two_orders_run_as_charted():
    words = [without_pale(interference_colour(float(d))) for d in range(1130)]
    runs = [word for word, _ in itertools.groupby(words)]
    first = ["black", "grey", "white", "yellow", "orange", "red", "violet", "blue", "green"]
    assert runs == [*first, "yellow", "orange", "pink", "red", "violet"]


def test_the_first_order_has_no_green():
    assert not any("green" in interference_colour(float(d)) for d in range(551))


def test_high_orders_are_pale():
    words = {interference_colour(float(d)) for d in range(3700, 5900, 50)}
    assert words <= {"pale grey", "pale green", "pale pink", "pale blue"}


def test_parallel_polarizers_show_the_complement():
    bright = Instrument(analyser_deg=0)
    assert interference_colour(0.0, bright) == "white"
    assert interference_colour(275.0, bright) in {"violet", "black", "red"}


def test_one_colour_light_has_one_hue():
    green = Instrument(lamp="green")
    words = {without_pale(interference_colour(float(d), green)) for d in range(0, 3000, 7)}
    assert words == {"black", "green"}
