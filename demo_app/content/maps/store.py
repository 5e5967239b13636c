"""Finished points on disk while a map is under way: lines that are only ever added.

Each line has its own checksum: what a kill or a power cut has torn is not believed, and its points
run again. The lines may come in any order, and twice.
"""

import json
import zlib
from collections.abc import Iterable
from pathlib import Path
from types import TracebackType
from typing import Any

from demo_app.base.atomic import check_place, write_text
from demo_app.base.errors import InputError
from demo_app.content.maps.plan import MapPlan
from demo_app.content.maps.result import Map, as_csv
from demo_app.content.maps.work import Cell

_KIND = "lehrlight map"


def part_of(out: Path) -> Path:
    """Where the finished points of the table `out` are kept until it is whole."""
    return out.with_name(f"{out.name}.part")


def write_map(out: Path, found: Map) -> None:
    """Write the table of a whole map, then drop its finished points.

    Raises
    ------
    InputError
        If points are missing, none could be run, or the table cannot be written. In the last case
        the points are kept.
    """
    text = as_csv(found)
    if len(found.refused) == found.plan.count:
        part_of(out).unlink(missing_ok=True)
        raise InputError("no point can be run", place="map", remedy=found.refused[0].refused)
    write_text(out, text)
    part_of(out).unlink(missing_ok=True)


def line(record: Any) -> str:
    """`record` as JSON on one line, after its checksum."""
    text = json.dumps(record, allow_nan=False, ensure_ascii=True)
    return f"{zlib.crc32(text.encode()):08x} {text}\n"


def read_line(text: str) -> Any:
    """Record of a whole line; None for a torn one."""
    check, _, content = text.rstrip("\n").partition(" ")
    if check != f"{zlib.crc32(content.encode()):08x}":
        return None
    try:
        return json.loads(content)
    except ValueError:
        return None


class Store:
    """The file of a map's finished points, open for adding.

    Parameters
    ----------
    path : pathlib.Path
        The file; what it holds of the same plan is in `found`.
    plan : MapPlan
        Whose points.

    Raises
    ------
    InputError
        If the file holds points of another map, or cannot be written.
    """

    def __init__(self, path: Path, plan: MapPlan) -> None:
        self.path = check_place(path)
        records = _records(self.path)
        self.found = _believed(path, records, plan)
        self._file = self.path.open("a", encoding="ascii", newline="\n")
        # A line end first: the last line may be torn.
        self._file.write("\n" if records else f"\n{line([_KIND, plan.fingerprint()])}")
        self._file.flush()

    def add(self, cells: Iterable[Cell]) -> None:
        """Add finished points; they outlive this process from here on."""
        self._file.write(
            "".join(line([one.index, one.at_s, list(one.values), one.refused]) for one in cells)
        )
        self._file.flush()

    def __enter__(self) -> "Store":
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._file.close()


def _records(path: Path) -> list[Any]:
    """Records of the whole lines of a file that may not be there."""
    if not path.exists():
        return []
    lines = path.read_text("ascii", errors="replace").splitlines()
    return [record for record in map(read_line, lines) if record]


def _believed(path: Path, records: list[Any], plan: MapPlan) -> dict[int, Cell]:
    """Finished points of `plan` by index."""
    heads = [one for one in records if one[0] == _KIND]
    if records and any(one[1] != plan.fingerprint() for one in heads or [[_KIND, ""]]):
        raise InputError(
            "holds finished points of another map",
            place=str(path),
            remedy="delete it, or write the table to another place",
        )
    points = [one for one in records if one[0] != _KIND]
    return {one[0]: Cell(one[0], one[1], tuple(one[2]), one[3]) for one in points}
