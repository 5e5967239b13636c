"""A venue's rules as a file that people write: checked by line, saved with its comments."""

import datetime
from pathlib import Path
from types import MappingProxyType
from typing import Any

import tomlkit

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.base.locate import assets
from demo_app.base.places import data_place
from demo_app.base.toml_table import Table, attempt, nearest, parse_text, read
from demo_app.content.venue import FIELDS, FOLLOW, NAMES, Field, Rule, Value, Venue

TOP = ("kind", "name", "review_valid_days", "rules")
RULE = ("value", "reviewed_by", "reviewed_on")
KIND = "venue"
LONGEST_DAYS = 3660


def load(path: Path) -> Venue:
    """Read and check the rules at `path`.

    Raises
    ------
    InputError
        The first mistake, with its line and what to write instead.
    """
    venue, wrong = _read(path, read(path, "venue"))
    if wrong:
        raise wrong[0]
    assert venue is not None
    return venue


def mistakes(path: Path) -> tuple[InputError, ...]:
    """All mistakes of the rules at `path`, in the order of the file."""
    try:
        return _read(path, read(path, "venue"))[1]
    except InputError as error:
        return (error,)


def own_place() -> Path:
    """Where the rules of a person's own venue are, whether they are there or not."""
    return data_place() / "venue.toml"


def template() -> str:
    """A file in which nothing is said yet, with a comment for everything that has to be."""
    lines = [
        "# The rules of your venue, for Lehrlight's checklist. " + FOLLOW,
        "# No rule has a default: what is missing here, or not reviewed, stays amber.",
        "# Roles only, no names of persons. Take away the # before a line to write it.",
        f'kind = "{KIND}"',
        'name = "Name of your venue"',
        "",
        "# For how many days a review holds, as your assessment says; without it none counts.",
        "# review_valid_days =",
    ]
    for one in FIELDS:
        lines += ["", f"[rules.{one.name}]", f"# {one.ask}", f"# value = {_form(one)}"]
        lines += ['# reviewed_by = "role"', "# reviewed_on = year-month-day, without quotes"]
    return "\n".join(lines) + "\n"


def write_template(path: Path) -> None:
    """Write `template` to a new file.

    Raises
    ------
    InputError
        If something is there already or it cannot be written.
    """
    if path.exists():
        raise InputError("is there already", place=str(path), remedy="choose another name")
    write_text(path, (assets() / "venue" / "venue.toml").read_text(encoding="utf-8"))


def save(venue: Venue, path: Path) -> None:
    """Write the rules, whole; comments of a file that is there already stay.

    Raises
    ------
    InputError
        If the file there is not TOML, or it cannot be written.
    """
    text = read(path, "venue") if path.exists() else template()
    parse_text(path, text)
    document: Any = tomlkit.parse(text)
    document["kind"], document["name"] = KIND, venue.name
    _set(document, "review_valid_days", venue.review_valid_days)
    rules = document.setdefault("rules", tomlkit.table(is_super_table=True))
    for name in NAMES:
        rule = venue.rules.get(name)
        if rule is None and name not in rules:
            continue
        entry = rules.setdefault(name, tomlkit.table())
        plain = list(rule.value) if rule and isinstance(rule.value, tuple) else rule and rule.value
        _set(entry, "value", plain)
        _set(entry, "reviewed_by", (rule and rule.reviewed_by) or None)
        _set(entry, "reviewed_on", rule and rule.reviewed_on)
    write_text(path, tomlkit.dumps(document))


def _read(path: Path, text: str) -> tuple[Venue | None, tuple[InputError, ...]]:
    try:
        top = parse_text(path, text)
    except InputError as error:
        return None, (error,)
    wrong = list(top.unknown(*TOP))
    if top.content.get("kind") != KIND:
        wrong.append(top.error("kind", "is not said", f'write kind = "{KIND}"'))
    name = attempt(wrong, top.words, "name")
    days: int | None = None
    if "review_valid_days" in top.content:
        days = attempt(wrong, _days, top)
    rules: dict[str, Rule] = {}
    said = attempt(wrong, top.table, "rules") if "rules" in top.content else None
    if said is not None:
        for key in said.content:
            if key not in NAMES:
                wrong.append(said.error(key, "unknown rule", nearest(key, NAMES)))
        for one in FIELDS:
            rule = attempt(wrong, _rule, said, one) if one.name in said.content else None
            if rule is not None:
                rules[one.name] = rule
    if wrong or name is None:
        return None, tuple(sorted(wrong, key=_line))
    return Venue(name, MappingProxyType(rules), days, path), ()


def _days(top: Table) -> int:
    days = top.number("review_valid_days", 1, LONGEST_DAYS, unit="days")
    if days != int(days):
        raise top.error("review_valid_days", f"{days:g} is no whole number", "write whole days")
    return int(days)


def _rule(said: Table, what: Field) -> Rule | None:
    entry = said.table(what.name)
    entry.only(*RULE)
    if "value" not in entry.content:
        for key in RULE[1:]:
            if key in entry.content:
                raise entry.error(key, "reviews a value that is missing", "write value = ...")
        return None
    return Rule(_value(entry, what), *_review(entry))


def _value(entry: Table, what: Field) -> Value:
    if what.kind == "number":
        return entry.number("value", what.low, what.high, unit=what.unit)
    if what.kind == "list":
        found = entry.texts("value")
        if not found:
            raise entry.error("value", "is empty", 'write ["...", "..."]')
        return found
    return entry.words("value")


def _review(entry: Table) -> tuple[str, datetime.date | None]:
    by = entry.words("reviewed_by", "")
    on = entry.content.get("reviewed_on")
    form = "write a date without quotes, such as 2026-03-31"
    if on is not None and (isinstance(on, datetime.datetime) or not isinstance(on, datetime.date)):
        raise entry.error("reviewed_on", f"{on!r} is no date", form)
    if by and on is None:
        raise entry.error("reviewed_by", "the day of the review is missing", "add reviewed_on")
    if on is not None and not by:
        raise entry.error("reviewed_on", "the role that reviewed is missing", "add reviewed_by")
    return by, on


def _line(error: InputError) -> int:
    number = error.place.rpartition(" ")[2]
    return int(number) if number.isdigit() else 0


def _form(what: Field) -> str:
    return {"number": "(a number)", "list": '["...", "..."]'}.get(what.kind, '"..."')


def _set(table: Any, key: str, value: Any) -> None:
    """Set a key, or take it away if there is nothing to say."""
    if value is None:
        table.pop(key, None)
    else:
        table[key] = value
