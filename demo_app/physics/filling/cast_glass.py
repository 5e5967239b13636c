"""The same tray cast in glass and left to cool in the open air from its softening point.

One layer: the temperature is the mean through the thickness (half thickness times coefficient over
conductivity is below 0.15), so that the squeeze of the skin, which would only help, is left out.
"""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from demo_app.physics.band import band_form, bandwidth_of, factorise
from demo_app.physics.filling.freezing import Frozen, Plate, energy, frozen, largest
from demo_app.physics.heat import ROOM, radiation_coefficient
from demo_app.physics.materials import Array
from demo_app.physics.plates import STAYS, Load, break_probability, flaws

STILL_AIR = 9.0
"""Coefficient of still air on a hot plate of 0.1 m, W/(m2 K): Churchill and Chu 1975 gives 8.6 at
200 and 9.9 at 600 degrees Celsius."""
_STEP, _STEP_LIQUID = 10.0, 25.0
"""Largest change of any temperature in a step, K: while some of it may freeze, and before."""
_LIQUID = 50.0
"""Kelvin above the annealing point down to which no stress lasts."""
_FLOWS = 150.0
"""Kelvin below the strain point down to which glass may flow."""
_REST = 2000.0
"""Time in which the solid tray becomes as cold as the room, s."""


@dataclass(frozen=True)
class Cast:
    """The cold glass tray.

    Parameters
    ----------
    state : Frozen
        Its stress.
    peak : numpy.ndarray
        Shape (points,), Pa: largest tension that each place has had on the way.
    energy : float
        Held by its stress, J.
    """

    state: Frozen
    peak: Array
    energy: float


def cast(piece: Plate) -> Cast:
    """The tray after cooling in still air from its softening point, where it holds its shape."""
    peak = np.zeros(piece.thickness.size)
    last: Frozen | None = None
    for state in frozen(piece, _cooling(piece)):
        solid = state.temperature[0] < piece.material.annealing_point
        peak = np.maximum(peak, np.where(solid, largest(state.mean), 0.0))
        last = state
    assert last is not None
    return Cast(last, peak, energy(piece, last))


def break_odds(piece: Plate, found: Cast) -> float:
    """Probability that the stress, which stays, breaks the tray: both faces, handled surfaces."""
    load = Load(found.peak, 2 * piece.form.weight)
    return break_probability(flaws(piece.material, "new"), load, 1.0, 0.0, STAYS)


def _cooling(piece: Plate) -> Iterator[tuple[float, Array]]:
    """Times (s) and temperatures (1, points), K, until all is solid; then the cold plate.

    Crank and Nicolson's step, with the material's values and radiation of the middle of the step,
    guessed from the one before.
    """
    material, points = piece.material, piece.mesh.inside
    wide = bandwidth_of(points.value)
    weight, faces = points.weight * piece.thickness, 2 * points.weight
    store = band_form(((1.0, points.value),), weight, wide)
    conduct = band_form(((1.0, points.slope_x), (1.0, points.slope_y)), weight, wide)
    lose = band_form(((1.0, points.value),), faces, wide)
    value, slopes = points.value.matrix(), (points.slope_x.matrix(), points.slope_y.matrix())
    time, rise = 0.0, np.full(piece.mesh.nodes, material.softening_point - ROOM)
    rate = np.zeros_like(rise)
    yield time, ROOM + (value @ rise)[None]
    while ROOM + rise.max() > material.strain_point - _FLOWS:
        at = ROOM + value @ rise
        fastest = _coefficient(at, material.emissivity) * (at - ROOM) / piece.thickness
        liquid = float(at.min()) > material.annealing_point + _LIQUID
        most = _STEP_LIQUID if liquid else _STEP
        dt = most / float((2 * fastest / (material.density * material.heat_capacity(at))).max())
        at = at + value @ rate * dt / 2
        heat = material.density * material.heat_capacity(at)
        conductivity, drawn = material.conductivity_at(at), _coefficient(at, material.emissivity)
        drain = value.T @ (faces * drawn * (value @ rise))
        for slope in slopes:
            drain = drain + slope.T @ (weight * conductivity * (slope @ rise))
        band = store.band(heat) / dt + (conduct.band(conductivity) + lose.band(drawn)) / 2
        change = factorise(np.asfortranarray(band)).solve(-np.asarray(drain))
        rise, rate, time = rise + change, change / dt, time + dt
        yield time, ROOM + (value @ rise)[None]
    yield time + _REST, np.full((1, points.x.size), ROOM)


def _coefficient(at: Array, emissivity: float) -> Array:
    """Still air and radiation to the room, W/(m2 K)."""
    return STILL_AIR + radiation_coefficient(at, ROOM, emissivity)
