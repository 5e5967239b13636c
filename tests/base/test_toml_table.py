"""TOML tables: each mistake names its line, however the file is laid out."""

import tomllib
from pathlib import Path
from typing import Any

import pytest
import tomlkit
from hypothesis import given
from hypothesis import strategies as st

from demo_app.base import locate
from demo_app.base.errors import InputError
from demo_app.base.toml_lines import Place, lines
from demo_app.base.toml_table import Table, attempt, parse, parse_text

_FILE = Path("some.toml")
_TEXT = '''# a [[step]] in a comment
title = "one # two"
note = """
[[step]]
title = "not a key"
"""

[[step]]
title = "first"
say = [
    "one",  # ] and ,
    'two',
]
[step.helper]
place = "left"

[[step]]
title = "second"
question = { ask = "what?", answers = [{ text = "a" }, { text = "b" }] }

[[step.contingency]]
when = "early"
[[step.contingency]]
when = "late"
settings."a.b".c = 1
'''


def _places(value: Any, place: Place = ()) -> set[Place]:
    inner = value.items() if isinstance(value, dict) else enumerate(value)
    found = {place} if place else set()
    for key, one in inner:
        further = (*place, key)
        found |= _places(one, further) if isinstance(one, dict | list) else {further}
    return found


@pytest.mark.parametrize(
    ("place", "line"),
    [
        (("title",), 2),
        (("note",), 3),
        (("step", 0), 8),
        (("step", 0, "title"), 9),
        (("step", 0, "say"), 10),
        (("step", 0, "say", 1), 12),
        (("step", 0, "helper", "place"), 15),
        (("step", 1), 17),
        (("step", 1, "question", "answers", 1, "text"), 19),
        (("step", 1, "contingency", 0, "when"), 22),
        (("step", 1, "contingency", 1), 23),
        (("step", 1, "contingency", 1, "settings", "a.b", "c"), 25),
    ],
)
def test_line_of_each_place(place: Place, line: int) -> None:
    assert lines(_TEXT)[place] == line


def test_every_value_has_a_line_and_nothing_else_has() -> None:
    assert set(lines(_TEXT)) == _places(tomllib.loads(_TEXT))
    for path in locate.assets().rglob("*.toml"):
        text = path.read_text(encoding="utf-8")
        assert set(lines(text)) >= _places(tomllib.loads(text)), path


_KEYS = st.text("ab .#\"'[]=é", min_size=1, max_size=4)
_LEAVES = st.one_of(
    st.text("a \n\"'\\[]{}#=,é", max_size=8), st.integers(-9, 9), st.booleans(), st.just(0.5)
)
_VALUES = st.recursive(
    _LEAVES,
    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(_KEYS, inner, max_size=3)),
    max_leaves=8,
)


@given(st.dictionaries(_KEYS, _VALUES, max_size=4))
def test_any_file_that_is_written_can_be_found_again(content: dict[str, Any]) -> None:
    text = tomlkit.dumps(content)
    assert set(lines(text)) >= _places(tomllib.loads(text))


def test_mistake_names_the_element_as_people_count() -> None:
    inner = parse_text(_FILE, _TEXT).tables("step")[1].table("question").tables("answers")[0]
    assert str(inner.error("from", "missing", "add it")) == (
        "some.toml, line 19: step 2.question.answers 1.from: missing; add it"
    )


def test_unknown_key_names_the_nearest() -> None:
    step = parse_text(_FILE, _TEXT).tables("step")[0]
    (error, *rest) = step.unknown("titel", "say", "helper")
    assert not rest
    assert str(error) == (
        "some.toml, line 9: step 1.title: unknown key; write titel, or one of say, helper"
    )


@pytest.mark.parametrize(
    ("text", "take", "message"),
    [
        ("a = 1\nb = 7", lambda t: t.number("b", 0, 5, unit="s"), "line 2: b: 7 is out of range"),
        ("a = nan", lambda t: t.number("a", 0, 5), "line 1: a: nan is not a number"),
        ("a = true", lambda t: t.number("a", 0, 5), "line 1: a: True is not a number"),
        ("a = 'no'", lambda t: t.flag("a"), "'no' is neither true nor false"),
        ("a = ''", lambda t: t.words("a"), "it is empty"),
        ("a = [\n'b',\n3]", lambda t: t.texts("a"), "line 3: a 2: 3 is not a text"),
        ("a = 3", lambda t: t.texts("a"), "3 is no list of texts"),
        ("a = 3", lambda t: t.table("a"), "write it under a line [a]"),
        ("[a]\nb = 1", lambda t: t.tables("a"), "begin each with a line [[a]]"),
        ("a = [1]", lambda t: t.tables("a"), "a 1: 1 is not a table"),
        ("a = 1", lambda t: t.words("b"), "b: missing; add b = ..."),
    ],
)
def test_wrong_value(text: str, take: Any, message: str) -> None:
    mistakes: list[InputError] = []
    assert attempt(mistakes, take, parse_text(_FILE, text)) is None
    assert message in str(mistakes[0])


@pytest.mark.parametrize("text", ["a = ", "a = 1\na = 2", "a = " + "[" * 5000, "a = " + "1" * 5000])
def test_what_is_no_toml(text: str) -> None:
    with pytest.raises(InputError, match=r"some.toml, line \d: is not TOML: "):
        parse_text(_FILE, text)


def test_a_mark_of_utf_8_is_no_mistake(tmp_path: Path) -> None:
    file = tmp_path / "venue.toml"
    file.write_bytes(b"\xef\xbb\xbfa = 1\r\nb = 2\r\n")
    found = parse(file)
    assert found == Table(file, "a = 1\nb = 2\n", {"a": 1, "b": 2})
    assert found.line("b") == 2
