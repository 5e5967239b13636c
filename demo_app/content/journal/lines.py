"""What may be written into the journal: single lines, and nobody's address."""

import re

from demo_app.base.errors import InputError

LONGEST = 300
_ADDRESS = re.compile(r"[\w.+-]+@[\w-]+\.\w+|(?:\+|\b00)\d[\d ()/-]{7,}\d|\b0\d{2,}[ /-]?\d{5,}")


def line(text: str, place: str) -> str:
    """`text` as one line, spaces in order; may be empty.

    Raises
    ------
    InputError
        If it is too long, or holds an address or a telephone number: the journal keeps no
        personal data. (A name cannot be told from a word: whoever types is asked for roles.)
    """
    said = " ".join("".join(sign if sign.isprintable() else " " for sign in text).split())
    if len(said) > LONGEST:
        raise InputError(
            f"has {len(said)} signs", place=place, remedy=f"write at most {LONGEST}, in one line"
        )
    if _ADDRESS.search(said):
        raise InputError(
            "holds an address or a telephone number",
            place=place,
            remedy="write a role instead: the journal keeps no personal data",
        )
    return said


def words(text: str, place: str) -> str:
    """`line`, but not empty."""
    said = line(text, place)
    if not said:
        raise InputError("is empty", place=place, remedy="write a line")
    return said


def count(value: int, place: str, least: int = 0) -> int:
    """A whole number from `least` to a million; `InputError` for any other."""
    if isinstance(value, bool) or not isinstance(value, int) or not least <= value <= 1_000_000:
        raise InputError(
            f"{value!r} cannot be a count", place=place, remedy=f"write a whole number from {least}"
        )
    return value
