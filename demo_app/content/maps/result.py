"""A finished map: numbers on a grid, and as a table whose bytes follow from the plan alone."""

import csv
import io
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app import __version__
from demo_app.base.errors import InputError
from demo_app.content.maps.plan import MapPlan
from demo_app.content.maps.work import Cell

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Map:
    """Points of a plan, all of them or those that are finished.

    Parameters
    ----------
    plan : MapPlan
        What was asked.
    cells : mapping
        Finished points by index.
    """

    plan: MapPlan
    cells: Mapping[int, Cell]

    @property
    def whole(self) -> bool:
        """Whether every point is finished."""
        return len(self.cells) == self.plan.count

    @property
    def refused(self) -> tuple[Cell, ...]:
        """Points whose settings cannot be, in order."""
        found = (self.cells[index] for index in sorted(self.cells))
        return tuple(one for one in found if one.refused)

    def across(self) -> Array:
        """Values along the first axis."""
        return np.array(self.plan.across.values)

    def up(self) -> Array:
        """Values along the second axis."""
        return np.array(self.plan.up.values)

    def values(self, reading: str) -> NDArray[np.object_]:
        """A reading on the grid, shape ``(up, across)``; None where it is not stated."""
        place = self._place(reading)
        grid = np.full(self.plan.count, None, object)
        for index, one in self.cells.items():
            if one.values:
                grid[index] = one.values[place]
        return grid.reshape(self.plan.shape)

    def numbers(self, reading: str) -> Array:
        """A reading that is a number or a yes-no (1 or 0) on the grid; NaN where there is none.

        Raises
        ------
        InputError
            If it is in words.
        """
        grid = self.values(reading)
        if any(isinstance(value, str) for value in grid.flat):
            raise InputError(
                f"{reading} is in words", place="--reading", remedy="ask for the border of a word"
            )
        return np.array([[np.nan if v is None else float(v) for v in row] for row in grid])

    def _place(self, reading: str) -> int:
        if reading not in self.plan.readings:
            raise InputError(
                f"the map has no reading called '{reading}'",
                place="--reading",
                remedy=f"write one of {', '.join(self.plan.readings)}",
            )
        return self.plan.readings.index(reading)


def as_csv(found: Map) -> str:
    """Table of a whole map.

    Lines that begin with ``#`` state the app's version and the settings that stay; then a header;
    then one row a point. Neither the order in which points were finished, nor who ran them, nor
    how often the run was stopped is to be seen in it.

    Raises
    ------
    InputError
        If points are missing.
    """
    plan = found.plan
    if not found.whole:
        raise InputError(
            f"{plan.count - len(found.cells)} points are not finished",
            place="map",
            remedy="run the same map again: it goes on",
        )
    text = io.StringIO()
    rows = csv.writer(text, lineterminator="\n")
    text.write(f"# Lehrlight {__version__}, scene {plan.scene}, map\n")
    for name, value in plan.values:
        text.write(f"# {name} = {_cell(value)}\n")
    names = (plan.across.name, plan.up.name)
    rows.writerow([*names, "at_s", *plan.readings, "refused"])
    for index in range(plan.count):
        one, settings = found.cells[index], plan.point(index)
        values = one.values or len(plan.readings) * (None,)
        row = [*(settings[name] for name in names), one.at_s, *values, one.refused]
        rows.writerow(map(_cell, row))
    return text.getvalue()


def _cell(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    return f"{value:.10g}" if isinstance(value, float) else str(value)
