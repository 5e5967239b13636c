"""The venue's rules: no defaults, amber until reviewed, every mistake with its line."""

import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from demo_app.base.errors import InputError
from demo_app.base.locate import assets
from demo_app.content import venue_file
from demo_app.content.venue import (
    FIELDS,
    NAMES,
    REVIEWED,
    STATES,
    Rule,
    Venue,
    amber,
    review_line,
    reviewed,
    shown,
    state,
    states,
    with_value,
)

TODAY = datetime.date(2026, 11, 25)
VALUES = {
    "number": 4.5,
    "words": 'Behind the "bench", left',
    "list": ("By the foyer", "Behind the stage"),
}


def millrace():
    """An invented venue in which everything is said and nothing is reviewed."""
    venue = Venue("Millrace Glass House", review_valid_days=365)
    for field in FIELDS:
        venue = with_value(venue, field.name, VALUES[field.kind])
    return venue


def test_nothing_has_a_default():
    """Published distances conflict, so a rule may come from the venue alone."""
    empty = Venue("Millrace Glass House", review_valid_days=365)
    assert set(states(empty, TODAY).values()) == {"missing"}
    assert [empty.value(name) for name in NAMES] == [None] * len(NAMES)
    assert amber(empty, TODAY) == FIELDS


def test_what_the_show_needs_is_asked_for():
    for name in (
        *("audience_distance_m", "eyewear_presenter", "eyewear_helpers", "eyewear_audience"),
        *("approver", "extinguisher_place", "burner_shut_off_place", "exits", "assembly_point"),
        *("emergency_number", "first_aid", "warning", "hall_depth_m"),
        *("picture_height_m", "picture_width_m"),
    ):
        assert name in NAMES


def test_the_four_states():
    name = "audience_distance_m"
    venue = millrace()
    assert state(venue, name, TODAY) == "unreviewed"
    done = reviewed(venue, (name,), "safety officer", TODAY)
    for days, expected in ((0, "reviewed"), (365, "reviewed"), (366, "out of date")):
        assert state(done, name, TODAY + datetime.timedelta(days)) == expected
    assert state(done, name, TODAY - datetime.timedelta(1)) == "unreviewed"
    assert len(amber(done, TODAY)) == len(FIELDS) - 1


def test_a_changed_value_needs_a_new_review():
    done = reviewed(millrace(), NAMES, "safety officer", TODAY)
    assert amber(done, TODAY) == ()
    changed = with_value(done, "exits", ("By the foyer",))
    assert [field.name for field in amber(changed, TODAY)] == ["exits"]


def test_without_a_term_no_review_counts():
    done = reviewed(millrace(), NAMES, "safety officer", TODAY)
    endless = Venue(done.name, done.rules)
    assert amber(endless, TODAY) == FIELDS
    assert "how long" in review_line(endless, "exits", TODAY)


@given(
    st.none() | st.integers(1, 1000),
    st.none() | st.dates(datetime.date(2020, 1, 1), datetime.date(2030, 1, 1)),
    st.sampled_from(["", "safety officer"]),
)
def test_green_only_with_role_day_and_term(days, on, by):
    venue = Venue("A", {"exits": Rule(("Left",), by, on)}, days)
    found = state(venue, "exits", TODAY)
    assert found in STATES
    green = bool(by) and on is not None and days is not None and 0 <= (TODAY - on).days <= days
    assert (found == REVIEWED) == green
    assert review_line(venue, "exits", TODAY).startswith("Reviewed by safety officer") == green


def test_words_with_units():
    venue = millrace()
    assert shown(venue, "audience_distance_m") == "4.5 m"
    assert shown(venue, "exits") == "By the foyer; Behind the stage"
    assert shown(Venue("A"), "exits") == ""


@pytest.mark.parametrize(
    ("act", "said"),
    [
        (lambda v: with_value(v, "audience_distance_m", -1), "0.1 to 100 m"),
        (lambda v: with_value(v, "audience_distance_m", True), "0.1 to 100 m"),
        (lambda v: with_value(v, "audience_distance_m", float("nan")), "0.1 to 100 m"),
        (lambda v: with_value(v, "exits", ()), "says nothing"),
        (lambda v: with_value(v, "approver", "  "), "says nothing"),
        (lambda v: with_value(v, "approver", ("a", "b")), "is a list"),
        (lambda v: with_value(v, "mood", "fine"), "no rule is called 'mood'"),
        (lambda v: reviewed(v, ("exits",), " ", TODAY), "role"),
        (lambda v: reviewed(Venue("A"), ("exits",), "r", TODAY), "no value to review"),
    ],
)
def test_what_a_rule_cannot_be(act, said):
    with pytest.raises(InputError, match=said):
        act(millrace())


# The file ---------------------------------------------------------------------------------------


def test_the_file_that_comes_with_the_app_says_nothing(tmp_path):
    text = (assets() / "venue" / "venue.toml").read_text(encoding="utf-8")
    assert text == venue_file.template()
    venue_file.write_template(tmp_path / "mine.toml")
    venue = venue_file.load(tmp_path / "mine.toml")
    assert dict(venue.rules) == {}
    assert venue.review_valid_days is None
    assert "theirs wins" in text
    for field in FIELDS:
        assert field.ask in text
    with pytest.raises(InputError, match="already"):
        venue_file.write_template(tmp_path / "mine.toml")


def test_saved_and_read_again(tmp_path):
    path = tmp_path / "millrace.toml"
    venue = reviewed(millrace(), NAMES[:5], "safety officer", TODAY)
    venue_file.save(venue, path)
    found = venue_file.load(path)
    assert (found.name, found.review_valid_days) == (venue.name, 365)
    assert dict(found.rules) == dict(venue.rules)
    assert found.path == path
    assert venue_file.mistakes(path) == ()


def test_saving_keeps_a_persons_comments(tmp_path):
    path = tmp_path / "mine.toml"
    path.write_text(venue_file.template() + "# our own words\n")
    venue = with_value(venue_file.load(path), "approver", "head of the workshop")
    venue_file.save(venue, path)
    text = path.read_text()
    assert "# our own words" in text
    for field in FIELDS:
        assert f"# {field.ask}" in text
    assert venue_file.load(path).value("approver") == "head of the workshop"
    venue_file.save(Venue("Mine"), path)
    assert venue_file.load(path).value("approver") is None


WRONG = """kind = "venue"
name = ""
review_valid_days = 1.5
colour = 1

[rules.audience_distance_m]
value = "far"

[rules.exits]
value = []

[rules.approver]
value = "head"
reviewed_by = "safety officer"

[rules.first_aid]
reviewed_on = 2026-01-01

[rules.warning]
value = "Bangs"
reviewed_by = "safety officer"
reviewed_on = "2026-01-01"

[rules.exit]
value = ["Left"]
"""


def test_every_mistake_with_its_line_and_remedy(tmp_path):
    path = tmp_path / "wrong.toml"
    path.write_text(WRONG)
    found = venue_file.mistakes(path)
    lines = {int(error.place.rpartition(" ")[2]): error for error in found}
    assert list(lines) == [2, 3, 4, 7, 10, 14, 17, 22, 24]
    assert all(error.remedy for error in found)
    assert all(str(path) in error.place for error in found)
    assert "0.1 to 100 m" in lines[7].remedy
    assert "exits" in lines[24].remedy
    with pytest.raises(InputError):
        venue_file.load(path)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "kind"),
        ("kind = 1", "kind"),
        ("a =", "not TOML"),
        ('kind = "venue"\nrules = 1', "rules"),
    ],
)
def test_files_of_another_kind(tmp_path, text, said):
    path = tmp_path / "other.toml"
    path.write_text(text)
    assert any(said in str(error) for error in venue_file.mistakes(path))


def test_a_file_that_is_not_there(tmp_path):
    (error,) = venue_file.mistakes(tmp_path / "none.toml")
    assert "cannot be read" in error.problem


def test_a_file_that_is_not_toml_is_not_overwritten(tmp_path):
    path = tmp_path / "other.toml"
    path.write_text("a letter to somebody")
    with pytest.raises(InputError, match="not TOML"):
        venue_file.save(millrace(), path)
    assert path.read_text() == "a letter to somebody"
