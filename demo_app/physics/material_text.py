"""The text of a material file: TOML tables that know their file, their lines and their sources."""

import math
import re
import tomllib
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from demo_app.base.errors import InputError

ASSUMED = "assumed"


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
    names : tuple of str
        Names of this table and of those around it, the outermost first; empty for the file.
    """

    path: Path
    text: str
    content: dict[str, Any]
    names: tuple[str, ...] = ()

    def error(self, key: str, problem: str, remedy: str) -> InputError:
        """The mistake at `key`, or at the table itself if `key` is empty."""
        names = (*self.names, key) if key else self.names
        line = _line_of(self.text, names)
        place = f"{self.path}, line {line}" if line else str(self.path)
        return InputError(f"{'.'.join(names)}: {problem}", place=place, remedy=remedy)

    def only(self, *known: str) -> None:
        """Raise for the first key that is not `known`."""
        for key in self.content:
            if key not in known:
                raise self.error(key, "unknown key", f"write one of {', '.join(known)}")

    def get(self, key: str) -> Any:
        """Value at `key`; raises if it is missing."""
        if key not in self.content:
            raise self.error(key, "missing", f"add {key} = ...")
        return self.content[key]

    def words(self, key: str) -> str:
        """Text at `key`, not empty."""
        value = self.get(key)
        if not isinstance(value, str) or not value.strip():
            raise self.error(key, f"{value!r} is not a text", 'write words between ""')
        return value

    def table(self, key: str) -> "Table":
        """Table at `key`."""
        value = self.get(key)
        if not isinstance(value, dict):
            raise self.error(
                key, "is not a table", "write { value = ..., unit = ..., source = ... }"
            )
        return Table(self.path, self.text, value, (*self.names, key))

    def sourced(self, key: str, units: tuple[str, ...] = ()) -> tuple[Any, str]:
        """Value and unit at `key`, a table with value, unit, source and perhaps status.

        Parameters
        ----------
        key : str
            Name of the value.
        units : tuple of str
            Allowed units; none if the value has no unit.
        """
        entry = self.table(key)
        entry.only("value", "source", "status", *(("unit",) if units else ()))
        return entry.get("value"), entry.check_source(units)

    def check_source(self, units: tuple[str, ...] = ()) -> str:
        """Check unit, source and status of this table; return its unit ("" if it has none)."""
        source = self.content.get("source")
        if not isinstance(source, str) or not source.strip():
            raise self.error("source", "no source is given", 'add source = "author, year"')
        if self.content.get("status", ASSUMED) != ASSUMED:
            raise self.error(
                "status",
                f"status {self.content['status']!r} is not known",
                f'write status = "{ASSUMED}" or leave it out',
            )
        if not units:
            return ""
        unit = self.get("unit")
        if unit not in units:
            allowed = " or ".join(f'unit = "{name}"' for name in units)
            raise self.error("unit", f"unit {unit!r} is not known here", f"write {allowed}")
        return str(unit)

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

    def assumed(self) -> tuple[str, ...]:
        """Dotted names of all values in this table whose status is "assumed"."""
        found: list[str] = []
        for key, value in self.content.items():
            if isinstance(value, dict):
                inner = Table(self.path, self.text, value, (*self.names, key))
                found += [".".join(inner.names)] if value.get("status") == ASSUMED else []
                found += inner.assumed()
        return tuple(found)


def parse(path: Path) -> Table:
    """The file at `path` as a table.

    Raises
    ------
    InputError
        If it cannot be read, or where it is not TOML.
    """
    try:
        text = path.read_text(encoding="utf-8")
    except OSError as error:
        raise InputError(
            f"cannot be read ({error.strerror or error})",
            place=str(path),
            remedy="give the path of a material file",
        ) from None
    except UnicodeDecodeError:
        raise InputError(
            "is not text in UTF-8", place=str(path), remedy="save it as UTF-8 text"
        ) from None
    try:
        return Table(path, text, tomllib.loads(text))
    except tomllib.TOMLDecodeError as error:
        line = re.search(r"at line (\d+)", str(error))
        number = line.group(1) if line else str(text.count("\n") + 1)
        problem = re.sub(r" \(at .*\)$", "", str(error))
        raise InputError(
            f"is not TOML: {problem[:1].lower()}{problem[1:]}",
            place=f"{path}, line {number}",
            remedy="write key = value on this line, texts between quotation marks",
        ) from None


def _line_of(text: str, names: tuple[str, ...]) -> int | None:
    """Number of the line that sets `names`, or else that of the nearest table around them."""
    for depth in range(len(names), 0, -1):
        wanted = names[:depth]
        header: tuple[str, ...] = ()
        for number, line in enumerate(text.splitlines(), start=1):
            if opened := re.match(r"\s*\[([^\[\]]+)\]\s*(#.*)?$", line):
                header = tuple(part.strip().strip("\"'") for part in opened[1].split("."))
                if header == wanted:
                    return number
            elif assigned := re.match(r"\s*([\w.\"'-]+)\s*=", line):
                key = tuple(part.strip("\"'") for part in assigned[1].split("."))
                if (*header, *key) == wanted:
                    return number
    return None
