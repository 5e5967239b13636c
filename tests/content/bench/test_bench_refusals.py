"""Bad and contradictory input of the bench: one plain line that says what to write instead."""

import pytest

from demo_app.base.errors import InputError
from demo_app.content.bench.catalogue import page
from demo_app.scenes.settings import make

BAD = [
    # kind of mistake, question, values, place, words of the remedy or the problem
    ("unknown input", "flame", {"bottle": "blue"}, "bottle", "no setting is called"),
    ("not a number", "flame", {"wall_mm": "thick"}, "wall_mm", "1.5 to 6 mm"),
    ("not finite", "flame", {"wall_mm": "nan"}, "wall_mm", "1.5 to 6 mm"),
    ("out of range", "oven", {"thickness_mm": 80}, "thickness_mm", "1 to 50 mm"),
    ("unknown word", "oven", {"glass": "jade"}, "glass", "soda-lime"),
    ("neither yes nor no", "oven", {"door": "ajar"}, "door", "yes or no"),
    ("no flame", "flame", {"flame_kW_m2": 0}, "flame_kW_m2", "without a flame"),
    ("wall against diameter", "flame", {"wall_mm": 6, "outer_diameter_mm": 40}, "wall_mm",
     "at most 4.8"),
    ("score against wall", "flame", {"wall_mm": 1.5, "score_depth_um": 500}, "score_depth_um",
     "at most 276"),
    ("drop after the end", "flame", {"delay_s": 8, "longest_s": 6}, "delay_s", "shorter wait"),
    ("nothing spreads", "flame", {"wall_tol_pct": 0, "flame_tol_pct": 0, "aim_mm": 0},
     "flame_tol_pct", "above 0"),
    ("half a seed", "flame", {"seed": 1.5}, "seed", "whole number"),
    ("block from one face", "oven", {"faces": "one", "thickness_mm": 40}, "thickness_mm",
     "both faces"),
    ("door after the end", "oven", {"door": "yes", "door_at_min": 6000}, "door_at_min",
     "the programme is over"),
    ("door that warms", "oven", {"door": "yes", "door_C": 700}, "door_C", "cools"),
    ("quench of solid glass", "toughness", {"start_C": 400}, "start_C", "strain point"),
    ("quench of a puddle", "toughness", {"start_C": 900}, "start_C", "softening point"),
    ("stress that cannot be", "toughness", {"known": "edge", "edge_nm": 60000, "path_mm": 20},
     "edge_nm", "longer path"),
    ("path inside the edge", "toughness", {"known": "edge", "edge_nm": 300, "path_mm": 3},
     "path_mm", "at least 6"),
    ("foot thinner than wall", "bubbles", {"base_mm": 2, "wall_mm": 2}, "wall_mm", "at most"),
    ("foot that fills the bottom", "bubbles", {"base_mm": 25}, "base_mm", "at most"),
    ("too short", "bubbles", {"length_mm": 60, "outer_diameter_mm": 100}, "length_mm",
     "at least"),
    ("half a flask", "bubbles", {"batch": 2.5}, "batch", "whole number"),
    ("no test at all", "bubbles", {"blow_J": 0, "scratch_um": 0}, "scratch_um", "nothing"),
    ("colours of one colour", "colour", {"lamp": "sodium"}, "lamp", "by turning"),
    ("nothing looked at", "colour", {"bare": "no"}, "bare", "one of both"),
    ("looks that contradict", "colour",
     {"plate": "yes", "plate_way": "adds", "plate_seen_nm": 200}, "plate_seen_nm", "look again"),
    ("half an order", "colour", {"method": "turning", "whole_order": 0.5}, "whole_order",
     "no whole order"),
    ("no turn", "colour", {"method": "turning", "lower_came": "no"}, "lower_deg", "one or both"),
    ("turns that contradict", "colour",
     {"method": "turning", "higher_came": "yes", "higher_deg": 60}, "higher_deg", "180"),
    ("middle above surface", "matching", {"second_reading": 200}, "second_reading", "balance"),
    ("reading of nothing", "matching", {"first_reading": 0}, "first_reading", "0"),
    ("times upside down", "matching", {"unknown": "flame", "second_s": 2}, "second_s", "order"),
    ("flame that cools", "matching",
     {"unknown": "flame", "first_reading": 200, "second_reading": 150}, "second_reading",
     "hotter"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("id", "values", "place", "words"), [row[1:] for row in BAD], ids=[row[0] for row in BAD]
)
def test_bad_input_is_answered_in_plain_words(id, values, place, words):
    with pytest.raises(InputError) as caught:
        make(page(id).question, values)
    error = caught.value
    assert error.place == place
    assert words in str(error)
    assert error.problem[0] != error.problem[0].upper() or not error.problem[0].isalpha()
    assert not error.problem.endswith(".")
    assert error.remedy


def test_there_are_twenty_kinds_and_more():
    assert len({row[0] for row in BAD}) == len(BAD) >= 20


def test_an_unknown_question_names_those_that_are_known():
    with pytest.raises(InputError, match="write one of flame, oven"):
        page("weather")
