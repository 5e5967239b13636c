"""Tables of a TOML file that know their file and their lines, so that each mistake names its own.

A reader of a kind of file takes the values of a `Table` one after the other; what cannot be used
raises `InputError` with file, line and remedy. To find all mistakes at once it wraps each taking
into `attempt`.
"""

import dataclasses
import difflib
import math
import re
import tomllib
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Self, TypeVar

from demo_app.base.errors import InputError
from demo_app.base.toml_lines import Place, line_of

T = TypeVar("T")
TableT = TypeVar("TableT", bound="Table")


@dataclass(frozen=True)
class Table:
    """One table of a file.

    Parameters
    ----------
    path : pathlib.Path
        The file.
    text : str
        All of its text, in which lines are looked up.
    content : dict
        Keys and values of this table.
    names : tuple of str and int
        Names of this table and of those around it, the outermost first; empty for the file. A
        number is that of an element, from 0.
    """

    path: Path
    text: str
    content: dict[str, Any]
    names: Place = ()

    def line(self, *keys: str | int) -> int | None:
        """Line of what is at `keys`, or of the nearest table around it."""
        return line_of(self.text, (*self.names, *keys))

    def error(self, key: str, problem: str, remedy: str, *further: str | int) -> InputError:
        """The mistake at `key` (and `further` in), or at the table itself if `key` is empty."""
        names = (*self.names, key, *further) if key else self.names
        line = line_of(self.text, names)
        place = f"{self.path}, line {line}" if line else str(self.path)
        spoken = _spoken(names)
        return InputError(f"{spoken}: {problem}" if spoken else problem, place=place, remedy=remedy)

    def unknown(self, *known: str) -> tuple[InputError, ...]:
        """Mistakes: one for each key that is not `known`."""
        return tuple(
            self.error(key, "unknown key", nearest(key, known))
            for key in self.content
            if key not in known
        )

    def only(self, *known: str) -> None:
        """Raise for the first key that is not `known`."""
        for error in self.unknown(*known):
            raise error

    def mended(self, *known: str) -> Self:
        """As it was probably meant: unknown keys go by their nearest `known` names.

        It is for reading on after the mistakes of `unknown`: what is misspelt is not missing too.
        """
        content = {key: value for key, value in self.content.items() if key in known}
        for key, value in self.content.items():
            for meant in _like(key, known) if key not in known else ():
                content.setdefault(meant, value)
        return dataclasses.replace(self, content=content)

    def get(self, key: str) -> Any:
        """Value at `key`; raises if it is missing."""
        if key not in self.content:
            raise self.error(key, "missing", f"add {key} = ...")
        return self.content[key]

    def words(self, key: str, default: str | None = None) -> str:
        """Text at `key`, not empty; `default`, if there is one, stands for a missing key."""
        if default is not None and key not in self.content:
            return default
        return self._text(key, self.get(key))

    def texts(self, key: str) -> tuple[str, ...]:
        """Texts at `key`: a list, or one text alone; none if it is missing."""
        value = self.content.get(key, [])
        if isinstance(value, str):
            return (self._text(key, value),)
        if not isinstance(value, list):
            raise self.error(key, f"{value!r} is no list of texts", 'write ["...", "..."]')
        return tuple(self._text(key, one, at) for at, one in enumerate(value))

    def number(
        self, key: str, low: float, high: float, default: float | None = None, unit: str = ""
    ) -> float:
        """Number at `key` from `low` to `high`; `default` as for `words`."""
        if default is not None and key not in self.content:
            return default
        allowed = f"write a number from {low:g} to {high:g} {unit}".rstrip()
        value = self.get(key)
        if isinstance(value, bool) or not isinstance(value, int | float) or value != value:
            raise self.error(key, f"{value!r} is not a number", allowed)
        if not low <= value <= high:
            raise self.error(key, f"{value!s:.12} is out of range", allowed)
        return float(value)

    def flag(self, key: str, default: bool | None = None) -> bool:
        """Yes or no at `key`; `default` as for `words`."""
        if default is not None and key not in self.content:
            return default
        value = self.get(key)
        if not isinstance(value, bool):
            raise self.error(
                key, f"{value!r} is neither true nor false", "write true or false, without quotes"
            )
        return value

    def table(self, key: str, remedy: str = "") -> Self:
        """Table at `key`; the file may write it inline or under a head of its own."""
        value = self.get(key)
        if not isinstance(value, dict):
            head = ".".join(name for name in (*self.names, key) if isinstance(name, str))
            raise self.error(key, "is not a table", remedy or f"write it under a line [{head}]")
        return dataclasses.replace(self, content=value, names=(*self.names, key))

    def tables(self, key: str) -> tuple[Self, ...]:
        """Tables of the list at `key`, inline or each under its own head; none if it is missing."""
        value = self.content.get(key, [])
        head = ".".join(name for name in (*self.names, key) if isinstance(name, str))
        remedy = f"begin each with a line [[{head}]]"
        if not isinstance(value, list):
            raise self.error(key, "is one alone, not a list of them", remedy)
        for at, one in enumerate(value):
            if not isinstance(one, dict):
                raise self.error(key, f"{one!r} is not a table", remedy, at)
        return tuple(
            dataclasses.replace(self, content=one, names=(*self.names, key, at))
            for at, one in enumerate(value)
        )

    def numbers(
        self, key: str, value: Any, form: str, *, count: int = 0, infinite: bool = False
    ) -> tuple[float, ...]:
        """`value` as numbers; raises with `form` as remedy if it is no list of `count` numbers.

        Parameters
        ----------
        key : str
            Name for the message.
        value : object
            What the file says.
        form : str
            What to write.
        count : int
            How many; 0 for any number but none.
        infinite : bool
            Whether an infinite number may be among them.
        """
        if not isinstance(value, list) or not value or (count and len(value) != count):
            raise self.error(key, f"{value!r} has the wrong form", form)
        for number in value:
            if isinstance(number, bool) or not isinstance(number, int | float):
                raise self.error(key, f"{number!r} is not a number", form)
            if math.isnan(number) or (math.isinf(number) and not infinite):
                raise self.error(key, f"{number!r} is not finite", form)
        return tuple(float(number) for number in value)

    def _text(self, key: str, value: Any, *further: int) -> str:
        if not isinstance(value, str):
            raise self.error(key, f"{value!r} is not a text", 'write words between ""', *further)
        if not value.strip():
            raise self.error(key, f"{value!r} is not a text: it is empty", _FILL, *further)
        return value


_FILL = 'write words between "", or leave the key out where it may be missing'


def parse(path: Path, kind: str = "TOML") -> Table:
    """The file at `path` as a table; `kind` names what it should be, for the remedy.

    Raises
    ------
    InputError
        If it cannot be read, or where it is not TOML.
    """
    return parse_text(path, read(path, kind))


def read(path: Path, kind: str = "TOML") -> str:
    """Text of the file at `path`, in UTF-8 with or without a mark of it.

    Raises
    ------
    InputError
        If it cannot be read.
    """
    try:
        return path.read_text(encoding="utf-8-sig")
    except OSError as error:
        raise InputError(
            f"cannot be read ({error.strerror or error})",
            place=str(path),
            remedy=f"give the path of a {kind} file",
        ) from None
    except UnicodeDecodeError:
        raise InputError(
            "is not text in UTF-8", place=str(path), remedy="save it as UTF-8 text"
        ) from None


def parse_text(path: Path, text: str) -> Table:
    """`text` as a table; `path` is the file that mistakes name. `InputError` if it is not TOML."""
    try:
        return Table(path, text, tomllib.loads(text))
    except (ValueError, RecursionError) as error:  # ValueError: also a number of 5000 digits
        line = re.search(r"at line (\d+)", str(error))
        number = line.group(1) if line else str(text.count("\n") + 1)
        problem = re.sub(r" \(at .*\)$", "", str(error))
        raise InputError(
            f"is not TOML: {problem[:1].lower()}{problem[1:]}",
            place=f"{path}, line {number}",
            remedy="write key = value on this line, texts between quotation marks",
        ) from None


def nearest(word: str, known: Iterable[str]) -> str:
    """Remedy for a wrong `word`: the `known` one that is most like it, and what else there is."""
    choices = tuple(known)
    like = _like(word, choices)
    rest = ", ".join(one for one in choices if one not in like)
    if not like:
        return f"write one of {rest}"
    return f"write {like[0]}, or one of {rest}" if rest else f"write {like[0]}"


def expect(mistakes: list[InputError], table: TableT, *known: str) -> TableT:
    """`table`, mended, and one of the `mistakes` more for each key that is not `known`."""
    mistakes += table.unknown(*known)
    return table.mended(*known)


def attempt(
    mistakes: list[InputError], act: Callable[..., T], *words: Any, **named: Any
) -> T | None:
    """What ``act(*words, **named)`` returns; None, and one of the `mistakes` more, if it raises."""
    try:
        return act(*words, **named)
    except InputError as error:
        mistakes.append(error)
        return None


def _like(word: str, known: Iterable[str]) -> list[str]:
    """None or one of `known`."""
    return difflib.get_close_matches(word, tuple(known), n=1)


def _spoken(names: Place) -> str:
    """Names as people say them: ``step 3.question.ask``, the first element being 1."""
    text = ""
    for name in names:
        if isinstance(name, int):
            text += f" {name + 1}"
        else:
            text += f".{name}" if text else name
    return text
