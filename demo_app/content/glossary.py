"""The glossary: words of the trade in three languages, and where and when glass is treated so.

Each entry and each fact names its source; what was not looked at is marked as from memory.
"""

import functools
from dataclasses import dataclass
from pathlib import Path

from demo_app.base import locate
from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, expect, parse

KIND = "glossary"
LANGUAGES = ("en", "es", "de")
_TERM = ("id", "british", "american", "es", "de", "meaning", "source", "read")
_FACT = ("about", "text", "source", "read")
ABOUT = ("crack-off", "annealing", "toughening", "the unannealed flask")


@dataclass(frozen=True)
class Meaning:
    """A term in one language.

    Parameters
    ----------
    term : str
    meaning : str
        One sentence or two.
    """

    term: str
    meaning: str


@dataclass(frozen=True)
class Term:
    """An entry of the glossary.

    Parameters
    ----------
    id : str
    british, american : str
        The term in both kinds of English; the same where they agree.
    words : mapping of str to Meaning
        By language tag; "en" has the British term.
    source : str
    read : bool
        Whether the source was looked at; else it is cited from memory.
    """

    id: str
    british: str
    american: str
    words: dict[str, Meaning]
    source: str
    read: bool


@dataclass(frozen=True)
class Fact:
    """A fact about uses or history.

    Parameters
    ----------
    about : str
        One of `ABOUT`.
    words : mapping of str to str
        By language tag.
    source : str
    read : bool
        As of a `Term`.
    """

    about: str
    words: dict[str, str]
    source: str
    read: bool


@dataclass(frozen=True)
class Glossary:
    """All of it, in the file's order."""

    terms: tuple[Term, ...]
    facts: tuple[Fact, ...]


@dataclass(frozen=True)
class Examined:
    """A glossary after its examination; None if there is any mistake."""

    glossary: Glossary | None
    mistakes: tuple[InputError, ...]


@functools.cache
def glossary() -> Glossary:
    """The glossary that comes with the app."""
    return load(locate.assets() / "glossary.toml")


def load(path: Path) -> Glossary:
    """Read and check a glossary; `InputError` for its first mistake."""
    found = examine(path)
    if found.glossary is None:
        raise found.mistakes[0]
    return found.glossary


def examine(path: Path) -> Examined:
    """Read a glossary and find all its mistakes, in the order of its lines."""
    try:
        top = parse(path, "glossary")
    except InputError as error:
        return Examined(None, (error,))
    wrong: list[InputError] = []
    top = expect(wrong, top, "kind", "term", "fact")
    terms = [_term(wrong, one) for one in attempt(wrong, top.tables, "term") or ()]
    facts = [_fact(wrong, one) for one in attempt(wrong, top.tables, "fact") or ()]
    if not terms:
        wrong.append(top.error("term", "no term is there", "begin each with a line [[term]]"))
    for at, term in enumerate(terms):
        if term.id in [one.id for one in terms[:at]]:
            wrong.append(
                top.error("term", f"'{term.id}' is there twice", "write another id", at, "id")
            )
    if wrong:
        return Examined(None, tuple(wrong))
    return Examined(Glossary(tuple(terms), tuple(facts)), ())


def summary(found: Glossary) -> str:
    """What it holds, in one line."""
    return (
        f"glossary: {len(found.terms)} terms and {len(found.facts)} facts in"
        f" {', '.join(LANGUAGES)}; in order"
    )


def _term(wrong: list[InputError], table: Table) -> Term:
    table = expect(wrong, table, *_TERM)
    british = attempt(wrong, table.words, "british") or ""
    american = attempt(wrong, table.words, "american", british or "-") or ""
    meaning = attempt(wrong, table.table, "meaning", "write meaning = { en = ..., es = ... }")
    words = {}
    for tag in LANGUAGES:
        term = british if tag == "en" else attempt(wrong, table.words, tag) or ""
        said = attempt(wrong, meaning.words, tag) if meaning is not None else ""
        words[tag] = Meaning(term, said or "")
    if meaning is not None:
        wrong += meaning.unknown(*LANGUAGES)
    return Term(
        attempt(wrong, table.words, "id") or "",
        british,
        american,
        words,
        attempt(wrong, table.words, "source") or "",
        attempt(wrong, table.flag, "read") or False,
    )


def _fact(wrong: list[InputError], table: Table) -> Fact:
    table = expect(wrong, table, *_FACT)
    about = attempt(wrong, table.words, "about") or ""
    if about and about not in ABOUT:
        wrong.append(
            table.error("about", f"'{about}' is no subject", f"write one of {', '.join(ABOUT)}")
        )
    text = attempt(wrong, table.table, "text", "write text = { en = ..., es = ..., de = ... }")
    words = {}
    for tag in LANGUAGES:
        words[tag] = (attempt(wrong, text.words, tag) if text is not None else "") or ""
    if text is not None:
        wrong += text.unknown(*LANGUAGES)
    return Fact(
        about,
        words,
        attempt(wrong, table.words, "source") or "",
        attempt(wrong, table.flag, "read") or False,
    )
