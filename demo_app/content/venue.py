"""The venue's own rules: none has a default, and each is amber until somebody has reviewed it."""

import datetime
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from types import MappingProxyType

from demo_app.base.errors import InputError

FOLLOW = "Follow your venue's approved assessment; if this differs, theirs wins."

MISSING = "missing"
UNREVIEWED = "unreviewed"
REVIEWED = "reviewed"
OUT_OF_DATE = "out of date"
STATES = (MISSING, UNREVIEWED, REVIEWED, OUT_OF_DATE)

Value = str | float | tuple[str, ...]


@dataclass(frozen=True)
class Field:
    """One thing that a venue has to say.

    Parameters
    ----------
    name : str
        Key of the file.
    label : str
        In English, for a checklist.
    ask : str
        What to find out, for the file's comment.
    kind : str
        "number", "words" or "list".
    unit : str
        Of a number, for people.
    low, high : float
        Range in which a number makes sense; no recommendation.
    """

    name: str
    label: str
    ask: str
    kind: str = "words"
    unit: str = ""
    low: float = 0.0
    high: float = 0.0


FIELDS = (
    Field(
        "audience_distance_m",
        "Audience's distance",
        "From flame and breakage to the nearest seat, m, as your assessment says.",
        "number",
        "m",
        0.1,
        100,
    ),
    Field("eyewear_presenter", "Eyewear, presenter", "What the presenter wears, and when."),
    Field("eyewear_helpers", "Eyewear, helpers", "What a helper wears who comes up, and when."),
    Field("eyewear_audience", "Eyewear, audience", "What the audience wears, or why nothing."),
    Field("approver", "Approves the show", "The role that approves flame and breakage; no name."),
    Field("extinguisher_place", "Extinguisher", "Where it hangs, and of which kind."),
    Field("burner_shut_off_place", "Burner's shut-off", "Where the fuel is shut off."),
    Field("exits", "Exits", "Each way out, as it is announced.", "list"),
    Field("assembly_point", "Assembly point", "Where everybody meets outside."),
    Field("emergency_number", "Emergency number", "What to dial from this room."),
    Field("first_aid", "First aid", "Where the box is, and the role that helps."),
    Field("warning", "Sound and flash warning", "What is said of bangs, light and flashes before."),
    Field("hall_depth_m", "Hall's depth", "Screen to the last row, m.", "number", "m", 1, 200),
    Field("picture_height_m", "Picture's height", "Of the projected picture, m.", "number", "m",
          0.2, 30),
    Field("picture_width_m", "Picture's width", "Of the projected picture, m.", "number", "m",
          0.2, 50),
)  # fmt: skip

NAMES = tuple(one.name for one in FIELDS)
_BY_NAME = {one.name: one for one in FIELDS}


@dataclass(frozen=True)
class Rule:
    """What a venue says of one field, and who reviewed that; reviews name a role, nobody's name."""

    value: Value
    reviewed_by: str = ""
    reviewed_on: datetime.date | None = None


@dataclass(frozen=True)
class Venue:
    """One place where shows are given.

    Parameters
    ----------
    name : str
        Its name.
    rules : mapping
        What it says, by name of a field; what is missing is not in it.
    review_valid_days : int or None
        How long a review holds, days; None: not said yet, and then no review counts.
    path : pathlib.Path or None
        File that it came from.
    """

    name: str
    rules: Mapping[str, Rule] = field(default_factory=lambda: MappingProxyType({}))
    review_valid_days: int | None = None
    path: Path | None = None

    def value(self, name: str) -> Value | None:
        """What it says of a field, reviewed or not; None if nothing."""
        found = self.rules.get(_known(name).name)
        return None if found is None else found.value

    def number(self, name: str) -> float | None:
        """`value` of a field that is a number."""
        found = self.value(name)
        return float(found) if isinstance(found, int | float) else None


def state(venue: Venue, name: str, today: datetime.date) -> str:
    """One of `STATES` for a field; all but "reviewed" are amber.

    A review counts from its day on, for the days that the venue says; one that is dated later
    than today is a slip and counts for nothing.
    """
    rule = venue.rules.get(_known(name).name)
    if rule is None:
        return MISSING
    days = venue.review_valid_days
    if rule.reviewed_on is None or not rule.reviewed_by or days is None:
        return UNREVIEWED
    age = (today - rule.reviewed_on).days
    if age < 0:
        return UNREVIEWED
    return REVIEWED if age <= days else OUT_OF_DATE


def states(venue: Venue, today: datetime.date) -> Mapping[str, str]:
    """State of every field, in the order of `FIELDS`."""
    return {name: state(venue, name, today) for name in NAMES}


def amber(venue: Venue, today: datetime.date) -> tuple[Field, ...]:
    """Fields that somebody has to see to before a show."""
    return tuple(one for one in FIELDS if state(venue, one.name, today) != REVIEWED)


REVIEW_LINES: Mapping[str, str] = MappingProxyType(
    {
        "missing": "Missing: ask who approves the show",
        "reviewed": "Reviewed by {role} on {day}",
        "late": "Review out of date: by {role} on {day}",
        "ahead": "Not reviewed: the review by {role} on {day} lies ahead",
        "days": "Not reviewed: how long the review by {role} on {day} holds is not said",
        "never": "Not reviewed yet",
    }
)
"""What `review_line` says, in English."""


def review_line(
    venue: Venue,
    name: str,
    today: datetime.date,
    texts: Mapping[str, str] = REVIEW_LINES,
    written: Callable[[datetime.date], str] = str,
) -> str:
    """State of a field in one line, with role and date where there is a review.

    Parameters
    ----------
    venue : Venue
    name : str
        Of the field.
    today : datetime.date
    texts : mapping
        `REVIEW_LINES`, in whatever language.
    written : callable
        How a day is written there.
    """
    rule = venue.rules.get(_known(name).name)
    if rule is None:
        return texts["missing"]
    if rule.reviewed_on is None:
        return texts["never"]
    found = state(venue, name, today)
    ahead = "ahead" if rule.reviewed_on > today else "days"
    line = {REVIEWED: "reviewed", OUT_OF_DATE: "late"}.get(found, ahead)
    return texts[line].format(role=rule.reviewed_by, day=written(rule.reviewed_on))


def shown(venue: Venue, name: str) -> str:
    """What the venue says of a field as words with the unit; empty if nothing."""
    value = venue.value(name)
    if value is None:
        return ""
    if isinstance(value, tuple):
        return "; ".join(value)
    unit = _known(name).unit
    return f"{value:g} {unit}".strip() if isinstance(value, int | float) else value


def with_value(venue: Venue, name: str, value: Value) -> Venue:
    """The venue with another value of a field, whose review is gone.

    Raises
    ------
    InputError
        If the value does not suit the field.
    """
    rule = Rule(checked(_known(name), value))
    return replace(venue, rules=MappingProxyType({**venue.rules, name: rule}))


def reviewed(venue: Venue, names: tuple[str, ...], role: str, on: datetime.date) -> Venue:
    """The venue after a role has reviewed some fields on a day.

    Raises
    ------
    InputError
        If a field has no value yet or no role is given.
    """
    by = " ".join(role.split())
    if not by:
        raise InputError("is empty", place="reviewed_by", remedy="write the role that reviewed it")
    rules = dict(venue.rules)
    for name in names:
        if _known(name).name not in rules:
            raise InputError("has no value to review", place=name, remedy="write its value first")
        rules[name] = replace(rules[name], reviewed_by=by, reviewed_on=on)
    return replace(venue, rules=MappingProxyType(rules))


def checked(what: Field, value: Value) -> Value:
    """`value` if it suits the field.

    Raises
    ------
    InputError
        Otherwise.
    """
    if what.kind == "number":
        number = isinstance(value, int | float) and not isinstance(value, bool)
        if not (number and what.low <= float(value) <= what.high):  # type: ignore[arg-type]
            raise InputError(
                f"{value!r} cannot be",
                place=what.name,
                remedy=f"write a number from {what.low:g} to {what.high:g} {what.unit}",
            )
        return float(value)  # type: ignore[arg-type]
    many = value if isinstance(value, tuple) else (value,)
    if not many or not all(isinstance(one, str) and one.strip() for one in many):
        raise InputError(f"{value!r} says nothing", place=what.name, remedy="write words")
    if what.kind == "list":
        return tuple(str(one) for one in many)
    if isinstance(value, tuple):
        raise InputError("is a list", place=what.name, remedy="write one text")
    return value


def _known(name: str) -> Field:
    if name not in _BY_NAME:
        raise InputError(
            f"no rule is called '{name}'", place="venue", remedy=f"write one of {', '.join(NAMES)}"
        )
    return _BY_NAME[name]
