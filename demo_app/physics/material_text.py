"""The text of a material file: tables whose values state their units and sources."""

from pathlib import Path
from typing import Any

from demo_app.base import toml_table

ASSUMED = "assumed"
_FORM = "write { value = ..., unit = ..., source = ... }"


class Table(toml_table.Table):
    """One table of a material file; its values have units and sources."""

    def sourced(self, key: str, units: tuple[str, ...] = ()) -> tuple[Any, str]:
        """Value and unit at `key`, a table with value, unit, source and perhaps status.

        Parameters
        ----------
        key : str
            Name of the value.
        units : tuple of str
            Allowed units; none if the value has no unit.
        """
        entry = self.table(key, _FORM)
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

    def assumed(self) -> tuple[str, ...]:
        """Dotted names of all values in this table whose status is "assumed"."""
        found: list[str] = []
        for key, value in self.content.items():
            if isinstance(value, dict):
                inner = self.table(key)
                found += [".".join(map(str, inner.names))] if value.get("status") == ASSUMED else []
                found += inner.assumed()
        return tuple(found)


def parse(path: Path) -> Table:
    """The material file at `path`; `InputError` if it cannot be read, or where it is not TOML."""
    found = toml_table.parse(path, "material")
    return Table(found.path, found.text, found.content)
