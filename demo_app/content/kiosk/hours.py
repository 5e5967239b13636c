"""Opening hours: whether it is open now, and when that changes.

All is worked out anew from the time of day, so a clock that jumps, or summer time, needs no care:
hours are those that a clock on the wall shows.
"""

import datetime
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

DAY_MIN = 24 * 60
FIRST_YEAR = 2025
"""A clock before that was never set: the battery behind it is flat."""
_LOOK_AHEAD_DAYS = 400


@dataclass(frozen=True)
class Span:
    """Opened and closed at these minutes after midnight; `closes_min` may be on the next day."""

    opens_min: int
    closes_min: int


Spans = tuple[Span, ...]


@dataclass(frozen=True)
class Hours:
    """When a place is open.

    Parameters
    ----------
    week : tuple of tuple of Span
        Seven days from Monday; empty: always open.
    exceptions : mapping
        Days that differ from their weekday; no span: closed.
    """

    week: tuple[Spans, ...] = ()
    exceptions: Mapping[datetime.date, Spans] = field(default_factory=lambda: MappingProxyType({}))

    def on(self, day: datetime.date) -> Spans:
        """Spans that begin on `day`."""
        if day in self.exceptions:
            return self.exceptions[day]
        return self.week[day.weekday()] if self.week else (Span(0, DAY_MIN),)


def local(now_s: float, zone: datetime.tzinfo | None = None) -> datetime.datetime:
    """Instant, s since 1970, as a clock on the wall shows it; `zone`: None for the computer's."""
    return datetime.datetime.fromtimestamp(now_s, zone or datetime.UTC).astimezone(zone)


def clock_is_set(now_s: float) -> bool:
    """Whether the computer's clock can be right at all."""
    return now_s >= datetime.datetime(FIRST_YEAR, 1, 1, tzinfo=datetime.UTC).timestamp()


def is_open(hours: Hours, now_s: float, zone: datetime.tzinfo | None = None) -> bool:
    """Whether it is open.

    Parameters
    ----------
    hours : Hours
    now_s : float
        Seconds since 1970. Where the clock was never set nobody knows, and it is open.
    zone : datetime.tzinfo, optional
        Default: that of the computer.
    """
    if not clock_is_set(now_s):
        return True
    wall = local(now_s, zone).replace(tzinfo=None)
    return any(begin <= wall < end for begin, end in _around(hours, wall.date(), 1))


def next_opening(hours: Hours, now_s: float, zone: datetime.tzinfo | None = None) -> float | None:
    """When it opens next, s since 1970; None if it is open, or not within a year."""
    if is_open(hours, now_s, zone):
        return None
    wall = local(now_s, zone).replace(tzinfo=None)
    begins = sorted(begin for begin, end in _around(hours, wall.date(), _LOOK_AHEAD_DAYS))
    return next((_instant(one, zone) for one in begins if one > wall), None)


def closing(hours: Hours, now_s: float, zone: datetime.tzinfo | None = None) -> float | None:
    """When it closes, s since 1970; None if it is closed, or does not close within a week."""
    if not is_open(hours, now_s, zone) or not clock_is_set(now_s):
        return None
    wall = local(now_s, zone).replace(tzinfo=None)
    ends = wall
    for begin, end in sorted(_around(hours, wall.date(), 8)):
        if begin <= ends:
            ends = max(ends, end)
    return None if ends - wall > datetime.timedelta(days=7) else _instant(ends, zone)


def _around(
    hours: Hours, day: datetime.date, ahead_days: int
) -> Iterator[tuple[datetime.datetime, datetime.datetime]]:
    """Beginnings and ends on the wall, from the day before (it may reach past midnight) on."""
    for number in range(-1, ahead_days + 1):
        if not datetime.date.min.toordinal() < day.toordinal() + number < _LAST_DAY:
            continue
        one = day + datetime.timedelta(days=number)
        midnight = datetime.datetime.combine(one, datetime.time())
        for span in hours.on(one):
            opens, closes = (
                midnight + datetime.timedelta(minutes=minutes)
                for minutes in (span.opens_min, span.closes_min)
            )
            yield opens, closes


_LAST_DAY = datetime.date.max.toordinal() - 2


def _instant(wall: datetime.datetime, zone: datetime.tzinfo | None) -> float:
    """First instant at which the wall shows `wall`; one that is left out counts as after it."""
    return wall.replace(tzinfo=zone).timestamp()
