"""Numbers, odds and clock times as the screen writes them."""

import pytest

from demo_app.scenes.scene import Reading
from demo_app.ui import words


@pytest.mark.parametrize(
    ("value", "said"),
    [
        (0.0, "under 0.1 %"),
        (1.3e-6, "under 0.1 %"),
        (0.001, "0.1 %"),
        (0.367, "36.7 %"),
        (0.998, "99.8 %"),
        (0.99995, "over 99.9 %"),
        (1.0, "over 99.9 %"),
    ],
)
def test_odds_are_never_nought_or_all(value, said):
    assert words.odds(value) == said
    for name in ("break_probability", "break_probability_beside"):
        assert words.reading(Reading(name, "Odds", ""), value) == said


@pytest.mark.parametrize(
    ("value", "said"),
    [
        (0.0, "0"),
        (-0.0, "0"),
        (-0.0002, "0"),
        (-18.26, "\u221218.3"),
        (0.5374, "0.537"),
        (1963.03, "1\u202f963"),
        (float("nan"), "\u2013"),
    ],
)
def test_numbers(value, said):
    assert words.number(value) == said


@pytest.mark.parametrize(
    ("seconds", "said"),
    [(9.5, "9.50 s"), (99.99, "99.99 s"), (199, "3 min 19 s"), (7260, "2 h 01 min")],
)
def test_clock(seconds, said):
    assert words.clock(seconds).replace("\u00a0", " ") == said
