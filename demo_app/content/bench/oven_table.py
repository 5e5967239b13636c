"""An oven programme as a table to hand to the oven's controller."""

from demo_app.content.bench.answer import Column, Table
from demo_app.content.bench.door import celsius, clock
from demo_app.physics.heat import ROOM
from demo_app.physics.oven import Schedule


def segments(told: Schedule, up: float | None = None) -> tuple[Table, float]:
    """The programme as a controller takes it, and how long all of it takes, s.

    Parameters
    ----------
    told : Schedule
        Hold, slow part and fast part.
    up : float or None
        Fastest heating of a piece that comes in cold, K/s: no faster than it is cooled. None: it
        comes in hot.
    """
    clocked = 0.0
    rows: list[tuple[float | str | None, ...]] = []

    def segment(name: str, rate: float | None, to: float, hold: float) -> None:
        rows.append((name, rate, round(celsius(to)), round(hold / 60) or None, clock(clocked)))

    if up is not None:
        rate = min(told.fast, up)
        clocked += (told.hold - ROOM) / rate
        segment("up", round(3600 * rate), told.hold, 0.0)
    clocked += told.hold_time
    segment("hold", None, told.hold, told.hold_time)
    clocked += (told.hold - told.slow_to) / told.slow
    segment("slow", -_three(3600 * told.slow), told.slow_to, 0.0)
    clocked += (told.slow_to - told.end) / told.fast
    segment("fast", -_three(3600 * told.fast), told.end, 0.0)
    columns = (
        Column("segment"),
        Column("rate", "°C/h"),
        Column("to", "°C"),
        Column("for", "min"),
        Column("ends"),
    )
    return Table("segments", columns, tuple(rows)), clocked


def _three(value: float) -> float:
    return float(f"{value:.3g}")
