"""What is seen of the table: the samples in their places, the reading glass, the chart."""

import math

from demo_app.optics.picture import point_reading
from demo_app.optics.reading_glass import magnified
from demo_app.optics.retardation import Placed, Stage
from demo_app.scenes.scene import Chart, Mark, Outline, Span, View
from demo_app.scenes.tray.record import Settings, State, samples
from demo_app.scenes.tray.sample import Sample, moved

CELL_MM = (140.0, 80.0)
"""Least width and height of a place; they grow with the largest sample."""
GAP_MM = 14.0
"""Between places."""
WORDS_MM = 10.0
"""Room above and below for the samples' names."""
GLASS_MM, GLASS_TIMES = 40.0, 4.0
"""Diameter of the reading glass, and how much larger things look in it."""
_SHORTEST_NM = 600.0
"""The chart shows the whole first order at least."""

Place = tuple[float, float]


def view(settings: Settings, state: State) -> View:
    """Samples that lie there, named; the chart once there are any."""
    lying = samples(settings, state)
    cell = _cell(lying)
    places = _places(len(lying), cell)
    pieces: list[Placed] = []
    outlines: list[Outline] = []
    marks: list[Mark] = []
    for (x, y), one in zip(places, lying, strict=True):
        if one is None:
            continue
        pieces += [Placed(part.map, part.x_mm + x, part.y_mm + y) for part in one.pieces]
        outlines += [moved(line, x, y) for line in one.outlines]
        marks.append(Mark(f"{words_of(one.id)}, {one.look}", x, _edge(y, one)))
    stage = _stage(pieces, len(lying), cell)
    found = [one for one in lying if one is not None]
    if state.place is not None and found:
        glass = magnified(stage, *state.place, GLASS_MM / 2, GLASS_TIMES)
        stage = _stage([*pieces, glass], len(lying), cell)
        x, y = state.place
        side = 1 if y >= 0 else -1
        marks.append(Mark(f"{GLASS_TIMES:g} × larger", x, y + side * GLASS_MM / 2))
    here = None if state.place is None else pointed(settings, state)
    return View(
        stage,
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
    for (x, y), one in zip(_places(len(lying), _cell(lying)), lying, strict=True):
        if one is not None:
            own = Stage(one.pieces, 1.0, 1.0)
            found = point_reading(own, state.place[0] - x, state.place[1] - y)
            if found is not None:
                return one, found[0]
    return None


def _cell(lying: tuple[Sample | None, ...]) -> tuple[float, float]:
    """Width and height of a place, mm."""
    sizes = [CELL_MM, *(one.size_mm for one in lying if one is not None)]
    return max(width for width, _ in sizes), max(height for _, height in sizes)


def _grid(count: int) -> tuple[int, int]:
    """Columns and rows."""
    columns = count if count <= 3 else math.ceil(count / 2)
    return columns, math.ceil(count / columns)


def _places(count: int, cell: tuple[float, float]) -> list[Place]:
    """Middles of the places, row after row from the upper left, mm."""
    columns, rows = _grid(count)
    pitch_x, pitch_y = cell[0] + GAP_MM, cell[1] + GAP_MM
    return [
        (
            (k % columns - (columns - 1) / 2) * pitch_x,
            ((rows - 1) / 2 - k // columns) * pitch_y,
        )
        for k in range(count)
    ]


def _stage(pieces: list[Placed], count: int, cell: tuple[float, float]) -> Stage:
    columns, rows = _grid(count)
    return Stage(
        tuple(pieces),
        columns * (cell[0] + GAP_MM),
        rows * (cell[1] + GAP_MM) + 2 * WORDS_MM,
    )


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
