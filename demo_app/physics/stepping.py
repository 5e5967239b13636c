"""Walking a body through time: steps that end where its surroundings jump or turn."""

import itertools
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Any, TypeVar

import numpy as np

S = TypeVar("S", bound=Any)
M = TypeVar("M")


def walk(
    state: S,
    met: Callable[[float], M],
    *,
    length: Callable[[S, M, float], float],
    advance: Callable[[S, float, M, M], S],
    over: Callable[[S, float], bool],
    until: float | None,
    changes: tuple[float, ...],
    finer: int,
) -> Iterator[S]:
    """States of a run, the given one first.

    Parameters
    ----------
    state : frozen dataclass
        Where to begin; its `time` is in s.
    met : callable
        ``met(time)``: what the body meets; it may jump or turn at `changes` alone.
    length : callable
        ``length(state, met, since) -> seconds`` of the next step, `since` the last change.
    advance : callable
        ``advance(state, seconds, before, after) -> state``, between what it meets at both ends.
    over : callable
        ``over(state, since)``: whether a run without a last time has ended.
    until : float or None
        Last time, s.
    changes : tuple of float
        Times, s, at which steps end and begin small.
    finer : int
        Divides every step, to see what the step costs in accuracy.
    """
    began = state.time
    stops = sorted({*changes, *(() if until is None else (until,))})
    yield state
    while True:
        since = state.time - max([began, *(t for t in changes if began <= t <= state.time)])
        coming = [t for t in stops if t > state.time]
        if not coming and (until is not None or over(state, since)):
            return
        dt = length(state, met(state.time), since)
        lands = coming[0] if coming and state.time + 1.001 * dt > coming[0] else state.time + dt
        for t0, t1 in itertools.pairwise(np.linspace(state.time, lands, finer + 1)):
            # A jump belongs to one side only: look just inside the step.
            inside = 1e-6 * (t1 - t0)
            before, after = met(float(t0 + inside)), met(float(t1 - inside))
            state = advance(state, float(t1 - t0), before, after)
        state = replace(state, time=float(lands))
        yield state
