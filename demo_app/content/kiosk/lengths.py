"""How much a visitor reads while standing: bounds on sentences, labels and lines.

Sources: Smithsonian exhibition guidelines (si.edu, exhibit design, section B): sentences of at
most 25 words, labels of at most 75, lines of at most 55 letters.
"""

import re
import unicodedata

from demo_app.base.toml_table import Table

SENTENCE_WORDS = 25
LABEL_WORDS = 75
LINE_LETTERS = 55
_END = re.compile(r"(?<=[.!?…])[\"”“»]?\s+")


def sentences(text: str) -> list[str]:
    """Sentences of `text`; a full stop inside a number ends none."""
    return [one for one in _END.split(text.strip()) if one]


def paragraph(table: Table, key: str, most_sentences: int = 6) -> str:
    """Text at `key`, within the bounds.

    Raises
    ------
    InputError
        If it is missing, too long for somebody who stands, or holds signs that are no letters.
    """
    text = plain(table, key, table.words(key))
    found = sentences(text)
    if len(found) > most_sentences:
        raise table.error(key, f"{len(found)} sentences", f"write at most {most_sentences}")
    for one in found:
        count = len(one.split())
        if count > SENTENCE_WORDS:
            raise table.error(
                key, f"a sentence of {count} words", f"write at most {SENTENCE_WORDS} a sentence"
            )
    count = len(text.split())
    if count > LABEL_WORDS:
        raise table.error(key, f"{count} words", f"write at most {LABEL_WORDS}")
    return text


def line(table: Table, key: str, letters: int = LINE_LETTERS) -> str:
    """Text at `key` that fits on one line of so many letters; raises as `paragraph` does."""
    return short(table, key, table.words(key), letters)


def short(table: Table, key: str, text: str, letters: int, *further: str | int) -> str:
    """`text`, found at `key`, if it has no more `letters` and no sign that is none."""
    plain(table, key, text, *further)
    if len(text) > letters:
        raise table.error(key, f"{len(text)} letters", f"write at most {letters}", *further)
    return text


def plain(table: Table, key: str, text: str, *further: str | int) -> str:
    """`text` if it is words alone: no control signs, no mark-up, no word longer than a line."""
    for sign in text:
        if sign in "<>" or unicodedata.category(sign) in ("Cc", "Cf", "Cs", "Co", "Cn"):
            raise table.error(
                key, f"the sign {sign!a} is no part of words", "take it out", *further
            )
    longest = max(map(len, text.split()), default=0)
    if longest > LINE_LETTERS:
        raise table.error(
            key, f"a word of {longest} letters", f"write at most {LINE_LETTERS}", *further
        )
    return text
