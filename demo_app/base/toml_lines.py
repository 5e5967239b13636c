"""On which line of a TOML text each key, table and element of a list stands."""

import bisect
import functools
import re
import tomllib
from collections.abc import Mapping
from types import MappingProxyType

Place = tuple[str | int, ...]
"""Way to a value from the top of a file: keys, and numbers of elements from 0."""

_BLANK = re.compile(r"(?:\s|#[^\n]*)*")
_KEY = re.compile(r"\"(?:[^\"\\\n]|\\.)*\"|'[^'\n]*'|[A-Za-z0-9_-]+")
_DOT = re.compile(r"[ \t]*\.[ \t]*")
_TEXT = re.compile(
    r"\"\"\"(?:[^\\]|\\.)*?\"{3,5}|'''.*?'{3,5}|\"(?:[^\"\\\n]|\\.)*\"|'[^'\n]*'", re.DOTALL
)
_BARE = re.compile(r"[^,\]}#\n]+")


@functools.lru_cache(maxsize=16)
def lines(text: str) -> Mapping[Place, int]:
    """Lines of everything in `text`, which has to be TOML.

    Parameters
    ----------
    text : str
        A whole file.

    Returns
    -------
    mapping
        Place to number of a line, the first being 1. A table stands at its head, a key where it
        is set, an element of a list where it begins.
    """
    found: dict[Place, int] = {}
    breaks = [at for at, sign in enumerate(text) if sign == "\n"]

    def note(place: Place, at: int) -> None:
        found.setdefault(place, bisect.bisect_left(breaks, at) + 1)

    def keys(at: int) -> tuple[tuple[str, ...], int]:
        names: tuple[str, ...] = ()
        while True:
            name, at = _token(_KEY, text, at)
            names += (_plain(name),)
            dot = _DOT.match(text, at)
            if dot is None:
                return names, at
            at = dot.end()

    def pair(around: Place, at: int) -> int:
        names, after = keys(at)
        for depth in range(1, len(names) + 1):
            note((*around, *names[:depth]), at)
        _, after = _token(_BLANK, text, after)
        _, after = _token(_BLANK, text, after + 1)  # past the equals sign
        return value((*around, *names), after)

    def value(place: Place, at: int) -> int:
        if text[at] in "[{":
            return many(place, at)
        _, at = _token(_TEXT if text[at] in "\"'" else _BARE, text, at)
        return at

    def many(place: Place, at: int) -> int:
        end = "]" if text[at] == "[" else "}"
        count = 0
        _, at = _token(_BLANK, text, at + 1)
        while text[at] != end:
            if end == "}":
                at = pair(place, at)
            else:
                note((*place, count), at)
                at = value((*place, count), at)
            count += 1
            _, at = _token(_BLANK, text, at)
            if text[at] == ",":
                _, at = _token(_BLANK, text, at + 1)
        return at + 1

    counts: dict[Place, int] = {}
    around: Place = ()
    _, at = _token(_BLANK, text, 0)
    while at < len(text):
        if text[at] != "[":
            at = pair(around, at)
        else:
            start, listed = at, text.startswith("[[", at)
            _, at = _token(_BLANK, text, at + (2 if listed else 1))
            names, at = keys(at)
            around = _within(names, counts, listed)
            for depth in range(1, len(around) + 1):
                note(around[:depth], start)
            at = text.index("]", at) + (2 if listed else 1)
        _, at = _token(_BLANK, text, at)
    return MappingProxyType(found)


def line_of(text: str, place: Place) -> int | None:
    """Line of `place` in `text`, or else that of the nearest table around it, if any."""
    known = lines(text)
    for depth in range(len(place), 0, -1):
        if place[:depth] in known:
            return known[place[:depth]]
    return None


def _within(names: tuple[str, ...], counts: dict[Place, int], listed: bool) -> Place:
    """Place of a table's head: names that are lists get the number of their latest element."""
    place: Place = ()
    for depth, name in enumerate(names, start=1):
        place += (name,)
        if listed and depth == len(names):
            counts[place] = counts.get(place, -1) + 1
        if place in counts:
            place += (counts[place],)
    return place


def _token(form: re.Pattern[str], text: str, at: int) -> tuple[str, int]:
    met = form.match(text, at)
    assert met is not None, f"no {form.pattern} at {at}"
    return met[0], met.end()


def _plain(key: str) -> str:
    return next(iter(tomllib.loads(f"{key} = 0"))) if key[0] in "\"'" else key
