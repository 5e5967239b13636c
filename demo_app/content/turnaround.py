"""Between two shows: a clock, and what has to be done before the doors open again."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from demo_app.base.errors import InputError

RESET = (
    ("hot-pieces", "Hot pieces on the mat, each with its time"),
    ("glass-counted", "Glass counted out and in"),
    ("shards-binned", "Shards binned, bench and floor looked over"),
    ("burner-off", "Burner shut off"),
    ("samples-laid", "Samples and props for the next show laid out"),
    ("first-step", "App at the first step, hands cleared"),
    ("journal", "Journal: people, breakages, near misses, odd questions"),
)
"""Id and words of each thing to do."""


@dataclass(frozen=True)
class Item:
    """One thing to do, and when it was done (s since 1970; None: not yet)."""

    id: str
    label: str
    done_at: float | None = None


@dataclass(frozen=True)
class Turnaround:
    """The time between two shows.

    Parameters
    ----------
    begun : float
        When the last show ended, s since 1970.
    items : tuple of Item
        What has to be done.
    next_at : float or None
        When the next show begins, s since 1970.
    """

    begun: float
    items: tuple[Item, ...]
    next_at: float | None = None

    @property
    def open(self) -> tuple[Item, ...]:
        """What is still to be done."""
        return tuple(item for item in self.items if item.done_at is None)

    @property
    def ready_at(self) -> float | None:
        """When the last thing was done; None if something is open."""
        return None if self.open else max((item.done_at or 0.0 for item in self.items), default=0.0)

    def elapsed_s(self, now: float) -> float:
        """Time since the last show, s, until now or until all was done; never negative."""
        end = now if self.ready_at is None else self.ready_at
        return max(0.0, end - self.begun)

    def left_s(self, now: float) -> float | None:
        """Time until the next show, s, negative once it is late; None if none is planned."""
        return None if self.next_at is None else self.next_at - now


def begin(now: float, next_at: float | None = None, more: tuple[str, ...] = ()) -> Turnaround:
    """A turnaround with the things of `RESET` and `more` things of the venue's own."""
    own = tuple((f"own-{number}", label) for number, label in enumerate(more, start=1))
    return Turnaround(now, tuple(Item(id, label) for id, label in (*RESET, *own)), next_at)


def tick(turn: Turnaround, id: str, now: float | None) -> Turnaround:
    """The turnaround with one thing done at `now`, or not done after all (None).

    Raises
    ------
    InputError
        If there is no such thing.
    """
    if id not in (item.id for item in turn.items):
        known = ", ".join(item.id for item in turn.items)
        raise InputError(f"no '{id}'", place="turnaround", remedy=f"write one of {known}")
    items = tuple(replace(one, done_at=now) if one.id == id else one for one in turn.items)
    return replace(turn, items=items)


def as_record(turn: Turnaround) -> dict[str, Any]:
    """The turnaround as plain data for JSON."""
    items = [vars(item) for item in turn.items]
    return {"begun": turn.begun, "next_at": turn.next_at, "items": items}


def from_record(record: Mapping[str, Any]) -> Turnaround:
    """The turnaround that `as_record` made into plain data."""
    items = tuple(Item(**item) for item in record["items"])
    return Turnaround(record["begun"], items, record["next_at"])
