"""What is seen of the table: the samples in their places, the reading glass, the chart."""

import itertools
import math
from dataclasses import dataclass, replace

from demo_app.optics.picture import point_reading
from demo_app.optics.reading_glass import magnified
from demo_app.optics.retardation import Placed, Stage
from demo_app.scenes.scene import Chart, Mark, Outline, Span, View
from demo_app.scenes.tray.record import Settings, State, samples
from demo_app.scenes.tray.sample import Sample, moved

CELL_MM = (140.0, 80.0)
"""Least width and height of a place; a larger sample has a larger one."""
GAP_MM = 14.0
"""Between places."""
WORDS_MM = 10.0
"""Room above and below for the samples' names."""
GLASS_MM, GLASS_TIMES = 40.0, 4.0
"""Diameter of the reading glass, and how much larger things look in it."""
_SHORTEST_NM = 600.0
"""The chart shows the whole first order at least."""

Place = tuple[float, float]


@dataclass(frozen=True)
class Layout:
    """Where the samples lie.

    Parameters
    ----------
    places : tuple of (x, y)
        Middles of the places, row after row from the upper left, mm.
    width_mm, height_mm : float
        Of the field that holds them all with their words.
    """

    places: tuple[Place, ...]
    width_mm: float
    height_mm: float

    def stage(self, pieces: list[Placed]) -> Stage:
        """Field of view with `pieces` in it."""
        return Stage(tuple(pieces), self.width_mm, self.height_mm)


def view(settings: Settings, state: State) -> View:
    """Samples that lie there, named; the chart once there are any."""
    lying = samples(settings, state)
    layout = _layout(lying)
    pieces: list[Placed] = []
    outlines: list[Outline] = []
    marks: list[Mark] = []
    for (x, y), one in zip(layout.places, lying, strict=True):
        if one is None:
            continue
        pieces += [replace(part, x_mm=part.x_mm + x, y_mm=part.y_mm + y) for part in one.pieces]
        outlines += [moved(line, x, y) for line in one.outlines]
        marks.append(Mark(f"{words_of(one.id)}, {one.look}", x, _edge(y, one)))
    found = [one for one in lying if one is not None]
    if state.place is not None and found:
        x, y = state.place
        pieces.append(magnified(layout.stage(pieces), x, y, GLASS_MM / 2, GLASS_TIMES))
        side = 1 if y >= 0 else -1
        marks.append(Mark(f"{GLASS_TIMES:g} × larger", x, y + side * GLASS_MM / 2))
    here = pointed(settings, state)
    return View(
        layout.stage(pieces),
        marks=tuple(marks),
        outlines=tuple(outlines),
        chart=_chart(found, None if here is None else here[1]) if found else None,
    )


def words_of(name: str) -> str:
    """A sample's name as it is said."""
    return "toughened" if name == "toughened-face" else name.replace("-", " ")


def pointed(settings: Settings, state: State) -> tuple[Sample, float] | None:
    """The sample under the reading glass and its retardation there, nm; None beside them all."""
    if state.place is None:
        return None
    lying = samples(settings, state)
    for (x, y), one in zip(_layout(lying).places, lying, strict=True):
        if one is not None:
            own = Stage(one.pieces, 1.0, 1.0)
            found = point_reading(own, state.place[0] - x, state.place[1] - y)
            if found is not None:
                return one, found[0]
    return None


def _layout(lying: tuple[Sample | None, ...]) -> Layout:
    """Rows of at most three; each column and row is as large as what lies in it."""
    columns = len(lying) if len(lying) <= 3 else math.ceil(len(lying) / 2)
    rows = math.ceil(len(lying) / columns)
    wide, high = [CELL_MM[0]] * columns, [CELL_MM[1]] * rows
    for k, one in enumerate(lying):
        if one is not None:
            wide[k % columns] = max(wide[k % columns], one.size_mm[0])
            high[k // columns] = max(high[k // columns], one.size_mm[1])
    x, width = _middles(wide)
    y, height = _middles(high)
    places = tuple((x[k % columns], -y[k // columns]) for k in range(len(lying)))
    return Layout(places, width, height + 2 * WORDS_MM)


def _middles(sizes: list[float]) -> tuple[list[float], float]:
    """Middles of places beside one another, about zero, and the length of them all, mm."""
    whole = sum(sizes) + GAP_MM * len(sizes)
    ends = itertools.accumulate(size + GAP_MM for size in sizes)
    return [
        end - (size + GAP_MM) / 2 - whole / 2 for end, size in zip(ends, sizes, strict=True)
    ], whole


def _edge(y: float, one: Sample) -> float:
    """Where the word of a sample stands: above it in the upper row, else below it."""
    half = one.size_mm[1] / 2
    return y + half if y >= 0 else y - half


def _chart(found: list[Sample], here_nm: float | None) -> Chart:
    spans = [Span(one.id, one.spread.low, one.spread.median, one.spread.high) for one in found]
    if here_nm is not None:
        spans.append(Span("here", here_nm, here_nm, here_nm))
    reach = 1.05 * max(_SHORTEST_NM, *(span.high for span in spans))
    return Chart(
        "retardation", "nm", "sample", "", (), spans=tuple(spans), colours=True, reach=reach
    )
