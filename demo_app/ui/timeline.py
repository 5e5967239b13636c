"""What is remembered of a run: enough frozen states to have any instant back exactly."""

import bisect
import dataclasses
import itertools
from collections.abc import Iterable
from typing import Any

import numpy as np

MOST_BYTES = 32_000_000
FEWEST, MOST = 8, 240
TIME_EPS_S = 1e-9

Place = tuple[float, float] | None


@dataclasses.dataclass(frozen=True)
class Entry:
    """What a person did at one step.

    One step may have several entries, in order: what a finger does depends on the settings of
    that moment, and a start state on those it was made with.

    Parameters
    ----------
    step : int
        From this step on `settings` hold.
    settings : object
    touches : tuple of (x, y) or None
        Where a finger went on the stage at this step, mm; None: it was lifted.
    """

    step: int
    settings: Any
    touches: tuple[Place, ...] = ()


Plan = tuple[Entry, ...]
Traced = tuple[int, float, dict[str, float]]


class Timeline:
    """States of one run, thinned, with the settings in force from each step on.

    Every ``every``-th state is kept; when there are too many, every second of them goes. The
    steps between are made again from the nearest earlier state, which gives the same bytes
    because a step depends on settings and state alone.

    Parameters
    ----------
    settings : object
        Settings in force from the start.
    start : object, optional
        The start state, if it is known already.

    Attributes
    ----------
    plan : tuple of Entry
        What was done, by step.
    every : int
        Distance in steps between kept states.
    """

    def __init__(self, settings: Any, start: Any = None) -> None:
        self.plan: Plan = (Entry(0, settings),)
        self.every = 1
        self._kept: list[Any] = [] if start is None else [start]
        self._last: tuple[Any, ...] = ()
        self._weight = _Weight(self._kept)
        self._trace: list[Traced] = []

    @property
    def settings(self) -> Any:
        """The settings in force at the far end."""
        return self.plan[-1].settings

    @property
    def traced(self) -> int:
        """Steps whose traces are known."""
        return len(self._trace)

    @property
    def start(self) -> Any:
        """The start state, or None."""
        return self._kept[0] if self._kept else None

    def add(self, made: Iterable[Any], last: tuple[Any, ...], traced: Iterable[Traced]) -> None:
        """Take in what a run has brought.

        Parameters
        ----------
        made : iterable of states
            New states in order; those that do not fall on the raster are not kept.
        last : tuple of states
            One or two neighbouring states, always kept until the next call.
        traced : iterable of (step, time_s, values)
            Values for the chart.
        """
        self._last = last
        for state in made:
            self._keep(state)
        for entry in traced:
            if entry[0] == len(self._trace):
                self._trace.append(entry)

    def _keep(self, state: Any) -> None:
        if state.step % self.every:
            return
        steps = [kept.step for kept in self._kept]
        place = bisect.bisect_left(steps, state.step)
        if place < len(steps) and steps[place] == state.step:
            return
        self._kept.insert(place, state)
        self._weight.add(state)
        while len(self._kept) > MOST or (
            self._weight.total > MOST_BYTES and len(self._kept) > FEWEST
        ):
            self.every *= 2
            self._kept = [kept for kept in self._kept if kept.step % self.every == 0]
            self._weight = _Weight(self._kept)

    def ready(self, time_s: float) -> tuple[Any, ...]:
        """Neighbouring states to go on from so as to reach `time_s`: the nearest earlier ones."""
        found: tuple[Any, ...] = ()
        limit = time_s + TIME_EPS_S
        place = bisect.bisect_right([kept.time_s for kept in self._kept], limit)
        if place:
            found = (self._kept[place - 1],)
        if self._last and self._last[0].time_s <= limit:
            later = self._last if self._last[-1].time_s > limit else self._last[-1:]
            if not found or later[0].step >= found[0].step:
                found = later
        return found

    def change(self, state: Any, settings: Any, *touches: Place) -> None:
        """Let `settings` hold from `state` on; what was after it is forgotten.

        With `touches` the state is the one that these have made of the former one of its step.
        """
        step = state.step
        self.plan = _noted(self.plan, Entry(step, settings, touches))
        self._kept = [kept for kept in self._kept if kept.step < step]
        self._weight = _Weight(self._kept)
        self._last = (state,)
        self._keep(state)
        del self._trace[step + 1 :]

    def copy(self) -> "Timeline":
        """A timeline that knows the same and goes its own way; frozen states are shared."""
        made = Timeline(self.settings)
        made.plan = _own(self.plan)
        made.every, made._last, made._trace = self.every, self._last, list(self._trace)
        made._kept, made._weight = list(self._kept), self._weight.copy()
        return made

    def narrow(self, time_s: float) -> "Timeline":
        """A copy that knows the start and the states around `time_s` alone, to be kept for long."""
        made = self.copy()
        made._last = self.ready(time_s)
        made._kept = made._kept[:1] if self.start is not None else []
        made._weight = _Weight(made._kept)
        return made

    @classmethod
    def planned(cls, plan: Plan, other: "Timeline | None" = None) -> "Timeline":
        """A timeline of `plan`, with what `other` knows of the part that both have in common."""
        made = cls(plan[-1].settings)
        made.plan = _own(plan)
        if other is not None:
            same = _parting(plan, other.plan)
            made.every = other.every
            made._kept = [state for state in other._kept if state.step < same]
            made._weight = _Weight(made._kept)
            made._trace = [entry for entry in other._trace if entry[0] < same]
        return made

    def time_of(self, step: int) -> float | None:
        """Model time of a step that has been reached, or None."""
        return self._trace[step][1] if 0 <= step < len(self._trace) else None

    def curve(self, name: str) -> tuple[np.ndarray, np.ndarray]:
        """Times (s) and values of one trace so far, each of shape (steps,)."""
        times = np.array([entry[1] for entry in self._trace])
        return times, np.array([entry[2][name] for entry in self._trace], dtype=float)


def in_force(plan: Plan, step: int) -> Any:
    """Settings that hold at `step`."""
    return next(entry.settings for entry in reversed(plan) if entry.step <= step)


def touches(plan: Plan, step: int) -> tuple[tuple[Any, Place], ...]:
    """Where a finger went at `step`, each with the settings that held then."""
    return tuple(
        (entry.settings, place) for entry in plan if entry.step == step for place in entry.touches
    )


def _own(plan: Plan) -> Plan:
    """The same plan as another object, by which pictures are told apart."""
    return (*plan[:-1], plan[-1])


def _parting(one: Plan, other: Plan) -> float:
    """The step from which on two plans may differ; infinite if they are the same."""
    for mine, yours in itertools.zip_longest(one, other):
        if mine != yours:
            return min(entry.step for entry in (mine, yours) if entry is not None)
    return float("inf")


def _noted(plan: Plan, done: Entry) -> Plan:
    """`plan` with what was done at one step; what was to come after it goes.

    Settings that were replaced before anything came of them are left out, but never the first
    of a run: its start was made with them.
    """
    before = [entry for entry in plan if entry.step <= done.step]
    last = before[-1]
    if last.step == done.step and not last.touches and len(before) > 1:
        before.pop()
    last = before[-1]
    if last.step == done.step and last.settings == done.settings:
        before[-1] = Entry(last.step, last.settings, (*last.touches, *done.touches))
        return tuple(before)
    return (*before, done)


class _Weight:
    """Memory that a growing set of states holds; what states share counts once."""

    def __init__(self, states: Iterable[Any] = ()) -> None:
        self._seen: set[int] = set()
        self.total = 0
        for state in states:
            self.add(state)

    def copy(self) -> "_Weight":
        """The same sum, to go on from."""
        made = _Weight()
        made._seen, made.total = set(self._seen), self.total
        return made

    def add(self, value: Any) -> None:
        """Count the arrays in `value`, those in its records, tuples and sparse matrices too."""
        if value is None or isinstance(value, (bool, int, float, str)) or id(value) in self._seen:
            return
        self._seen.add(id(value))
        if isinstance(value, np.ndarray):
            self.total += value.nbytes
        elif dataclasses.is_dataclass(value):
            for field in dataclasses.fields(value):
                self.add(getattr(value, field.name))
        elif isinstance(value, (tuple, list)):
            for item in value:
                self.add(item)
        elif hasattr(value, "indptr"):
            for part in (value.data, value.indices, value.indptr):
                self.add(part)
