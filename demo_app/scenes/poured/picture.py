"""What is seen of the pour: both tumblers upright."""

import numpy as np

from demo_app.optics.retardation import Placed, Stage
from demo_app.physics.revolve.tumbler import Tumbler
from demo_app.scenes.poured.record import (
    APART_MM,
    HEIGHT_MM,
    Cup,
    Settings,
    State,
    cups_of,
    halfway,
    lines_of,
)
from demo_app.scenes.scene import Mark, Outline, View


def view(settings: Settings, state: State) -> View:
    """Both tumblers upright, with arrows at the outside of each wall."""
    placed, marks, lines = [], [], []
    for side, cup, made in zip(
        (-0.5, 0.5), (state.thick, state.thin), cups_of(settings), strict=True
    ):
        x = side * APART_MM
        placed.append(Placed(cup.map, x, 0.0, lines_of(made)[1].rim))
        marks += _marks(x, cup, made)
        if cup.cracked_s is not None:
            lines.append(_crack(x, cup, made))
    stage = Stage(tuple(placed), 2.2 * APART_MM, 1.25 * HEIGHT_MM)
    return View(stage, marks=tuple(marks), outlines=tuple(lines))


def _place(cup: Tumbler, column: int) -> tuple[float, float]:
    """Stage place (mm, from the tumbler's middle) of a node column's outside."""
    mesh = cup.piece.mesh
    return 1e3 * float(mesh.r[column, 0]), 1e3 * float(mesh.z[column, 0]) - HEIGHT_MM / 2


def _marks(x: float, cup: Cup, made: Tumbler) -> list[Mark]:
    column = halfway(made)
    radius, height = _place(made, column)
    bore = 1e3 * made.bore
    found = []
    for place, stress in (
        (radius, cup.pull.wall.hoop[column, 0]),
        (0.55 * bore, cup.pull.wall.hoop[column, -1]),
    ):
        if abs(stress) > 1e6:
            found.append(Mark("pull" if stress > 0 else "squeeze", x + place, height, 8.0, 90.0))
    if cup.cracked_s is not None:
        found.append(Mark("crack", x, _place(made, cup.pull.scratch)[1]))
    return found


def _crack(x: float, cup: Cup, made: Tumbler) -> Outline:
    radius, height = _place(made, cup.pull.scratch)
    if cup.pull.around:
        return Outline("crack", np.array([x - radius, x + radius]), np.array([height, height]))
    return Outline("crack", np.array([x, x]), np.array([-HEIGHT_MM / 2, HEIGHT_MM / 2]))
