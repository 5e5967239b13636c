"""A text with places for values, filled in as its language writes numbers."""

import string
from collections.abc import Callable, Mapping
from numbers import Real
from typing import Any

_POINT, _MINUS = ".", "−"


class _Local(string.Formatter):
    """Numbers by Python's own format, then with the language's decimal sign and a true minus."""

    def __init__(self, decimal_point: str) -> None:
        self._signs = str.maketrans({_POINT: decimal_point, "-": _MINUS})

    def format_field(self, value: Any, spec: str) -> str:
        said: str = super().format_field(value, spec)
        return said.translate(self._signs) if isinstance(value, Real) else said


class Template(str):
    """A translated text; `format` puts values in and falls back to English where that fails.

    It can stand wherever a table of English texts is wanted.

    Parameters
    ----------
    said : str
        The words.
    english : str
        The words that they translate.
    decimal_point : str
        The language's.
    word : callable, optional
        Translates a word that is put in, and each of several with ", " between.
    """

    _english: str
    _local: _Local
    _word: Callable[[str], str] | None

    def __new__(
        cls,
        said: str,
        *,
        english: str,
        decimal_point: str = _POINT,
        word: Callable[[str], str] | None = None,
    ) -> "Template":
        """Words with what `format` needs."""
        made = super().__new__(cls, said)
        made._english, made._local, made._word = english, _Local(decimal_point), word
        return made

    def format(self, /, **values: Any) -> str:  # type: ignore[override]
        """The text with `values` put in."""
        try:
            return self._local.vformat(str(self), (), self._worded(values))
        except (LookupError, ValueError):
            # A translation with a place that English has not: nobody but a translator can mend it.
            return self._english.format(**values)

    def _worded(self, values: Mapping[str, Any]) -> Mapping[str, Any]:
        word = self._word
        if word is None:
            return values
        return {
            name: ", ".join(map(word, value.split(", "))) if isinstance(value, str) else value
            for name, value in values.items()
        }
