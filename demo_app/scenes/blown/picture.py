"""What is seen of the bubble: from the side, in section, and the stress through its foot."""

import functools

import numpy as np

from demo_app.optics.retardation import Placed, Stage
from demo_app.physics.heat import ZERO_C
from demo_app.physics.revolve.flask import Flask
from demo_app.physics.revolve.proof import Proof
from demo_app.physics.revolve.shattering import cells
from demo_app.scenes.blown.record import (
    Settings,
    State,
    broken,
    first_answer,
    flask_of,
    map_of,
    map_of_pieces,
    proof_of,
    shards_of,
)
from demo_app.scenes.scene import Chart, Curve, Mark, Outline, Section, View

_LEAST_MPA = 1.0
"""Stress from which on an arrow is drawn."""


def view(settings: Settings, state: State) -> View:
    """Flask from the side with arrows at its foot, its half section, stress through the foot."""
    what = flask_of(settings)
    done = proof_of(what, state.cooling)
    broke = broken(settings, state)
    blow = settings.blow_J if settings.test == "blow" else 0.0
    seen = map_of_pieces(what, state.cooling, done, blow) if broke else map_of(what, state.cooling)
    middle = settings.length_mm / 2
    stage = Stage(
        (Placed(seen, -middle),), 1.15 * settings.length_mm, 1.15 * settings.outer_diameter_mm
    )
    return View(
        stage,
        _section(what, state, done, middle),
        _marks(settings, done, middle, broke=broke),
        _outlines(done, blow, middle) if broke else (),
        _chart(settings, done) if state.cold else None,
    )


def _section(what: Flask, state: State, done: Proof, middle: float) -> Section:
    """Upper half of the cut, from the foot to the shoulder."""
    mesh = what.piece.mesh
    columns = slice(0, what.middle + 1)
    shape = mesh.r[columns].T.shape
    temperature = state.cooling.warmth.temperature.reshape(mesh.r.shape)[columns].T
    return Section(
        x_mm=(1e3 * mesh.z[columns] - middle).T,
        y_mm=1e3 * mesh.r[columns].T,
        moved_x_um=np.zeros(shape),
        moved_y_um=np.zeros(shape),
        temperature_C=temperature - ZERO_C,
        stress_MPa=1e-6 * done.wall.hoop[columns].T,
        stress_id="stress",
        magnified=1.0,
    )


def _marks(settings: Settings, done: Proof, middle: float, *, broke: bool) -> tuple[Mark, ...]:
    if broke:
        return (Mark("crack", -middle, 0.0),)
    outside, inside = (1e-6 * float(done.wall.along[0, row]) for row in (0, -1))
    found = []
    for place, stress in ((0.0, outside), (settings.base_mm, inside)):
        if abs(stress) > _LEAST_MPA:
            kind = "pull" if stress > 0 else "squeeze"
            found.append(Mark(kind, place - middle, 0.0, 0.15 * settings.outer_diameter_mm, 90.0))
    return tuple(found)


@functools.lru_cache(maxsize=4)
def _outlines(done: Proof, blow: float, middle: float) -> tuple[Outline, ...]:
    return tuple(
        Outline("shard", 1e3 * cell[:, 0] - middle, 1e3 * cell[:, 1])
        for cell in cells(done, shards_of(done, blow))
    )


def _chart(settings: Settings, done: Proof) -> Chart:
    depth = 1e3 * done.what.piece.mesh.depth
    first = first_answer(settings)
    # The first answer's plate is nearly a parabola: its surface and its middle say all of it.
    share = (1 - depth / settings.base_mm) ** 2
    foreseen = 1e-6 * (first.base_inside + (first.base_outside - first.base_inside) * share)
    return Chart(
        "depth",
        "mm",
        "pull",
        "MPa",
        (
            Curve("through_foot", depth, 1e-6 * done.wall.along[0]),
            Curve("through_first", depth, foreseen),
        ),
    )
