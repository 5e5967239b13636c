"""Runs of a Plan body in steps that its state chooses, small where something just changed."""

from collections.abc import Callable, Iterator

import numpy as np

from demo_app.physics.materials import Array
from demo_app.physics.plan.air import Air
from demo_app.physics.plan.body import Plan, PlanState, advance, start
from demo_app.physics.stepping import walk

_NEAR_TRANSITION = 80.0
"""Kelvin below the strain point down to which steps stay small."""
_STEP_NEAR = 10.0
_STEP_SOLID = 40.0
"""Largest change of any temperature in a step, K, near the transition and below it."""
_GROWTH = 0.25
"""Largest step as a share of the time since the last sudden change."""
_REST = 0.5
"""A run without a stated end is over when less change than this is still to come, K."""


def step_length(piece: Plan, state: PlanState, air: Air, since: float) -> float:
    """Length of the next step, s: it follows from the state alone, as the Column's does.

    Parameters
    ----------
    piece, state : Plan, PlanState
        The plate.
    air : Air
        What it meets now.
    since : float
        Time since what it meets last jumped or turned, s.
    """
    hot = state.temperature
    near = hot > piece.material.strain_point - _NEAR_TRANSITION
    allowed = np.where(near, _STEP_NEAR, _STEP_SOLID)
    at = hot[-1:].mean(axis=1)
    cell = float(np.diff(piece.wall.z).min())
    capacity = cell * piece.material.density * float(piece.material.heat_capacity(at)[0])
    conductance = float(piece.material.conductivity_at(at)[0]) / cell
    first = capacity / (conductance + 2 * float(air.slope(hot[-1]).max()))
    return min(float((allowed / (np.abs(state.rate) + 1e-12)).min()), first + _GROWTH * since)


def run(
    piece: Plan,
    state: PlanState,
    air: Callable[[float], Air],
    *,
    until: float | None = None,
    changes: tuple[float, ...] = (),
    finer: int = 1,
) -> Iterator[PlanState]:
    """States of a run, the given one first.

    Parameters
    ----------
    piece : Plan
        The plate.
    state : PlanState
        Where to begin.
    air : callable
        ``air(time) -> Air``; it may jump or turn at `changes` alone.
    until : float, optional
        Last time, s; if left out, the run ends when the plate is as cold as the air.
    changes : tuple of float
        Times, s, at which what the plate meets jumps or turns.
    finer : int
        Divides every step, to see what the step costs in accuracy.
    """
    return walk(
        state,
        air,
        length=lambda one, met, since: step_length(piece, one, met, since),
        advance=lambda one, dt, before, after: advance(piece, one, dt, before, after),
        over=lambda one, since: _over(piece, one, since),
        until=until,
        changes=changes,
        finer=finer,
    )


def cooled(piece: Plan, temperature: float, air: Air, finer: int = 1) -> PlanState:
    """The cold plate after cooling from one temperature (K) in air that stays."""
    state = start(piece, temperature)
    for later in run(piece, state, lambda _: air, finer=finer):
        state = later
    return state


def _over(piece: Plan, state: PlanState, since: float) -> bool:
    """Whether hardly any change of temperature is still to come."""
    patience = max(since, _soak_time(piece, state.temperature))
    return bool(since > 0 and np.abs(state.rate).max() * patience < _REST)


def _soak_time(piece: Plan, temperature: Array) -> float:
    """Time in which heat crosses the thickness, s."""
    return piece.thickness**2 / piece.material.diffusivity(float(temperature.mean()))
