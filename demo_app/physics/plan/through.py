"""Conduction through the half thickness of a plate, at all its places at once.

The Column's scheme on its nodes: finite volumes and a linearly implicit step, with the middle of
the plate as a mirror.
"""

from dataclasses import dataclass

import numpy as np

from demo_app.physics.column.wall import plate, trapezoid
from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.air import Air

_GAMMA = 1 - 2**-0.5


@dataclass(frozen=True)
class Half:
    """Nodes through the half thickness of a plate.

    Parameters
    ----------
    z : numpy.ndarray
        Shape (layers,), m: from 0 in the middle to the face.
    weights : numpy.ndarray
        Shape (layers,), m: the integral over the half is the sum of weights times values.
    """

    z: Array
    weights: Array

    def mean(self, values: Array) -> Array:
        """Mean through the thickness of `values`, shape (layers, ...)."""
        return np.tensordot(self.weights / self.z[-1], values, axes=1)


def half(material: Material, thickness: float, layers: int) -> Half:
    """Nodes of the Column of this `thickness` (m) from its middle on: `layers` of them, at least 2.

    Raises
    ------
    ValueError
        For fewer than two layers or no thickness.
    """
    if layers < 2 or thickness <= 0:
        raise ValueError(f"{layers} layers in {thickness:g} m are no plate")
    whole = plate(material, thickness, 2 * (layers - 1))
    z = whole.z[layers - 1 :].copy()
    z[0] = 0.0
    return Half(z, trapezoid(z))


def through_step(
    material: Material, wall: Half, temperature: Array, dt: float, before: Air, after: Air
) -> Array:
    """Temperature after a step: two-stage Rosenbrock method, as `column.heat.heat_step`.

    Parameters
    ----------
    material : Material
        Gives conductivity, heat capacity and density.
    wall : Half
        Nodes through the half thickness.
    temperature : numpy.ndarray
        Shape (layers, places), K.
    dt : float
        s.
    before, after : Air
        At the beginning and at the end of the step.
    """
    capacity = _capacity(material, wall, temperature)
    flow = _conductance(material, wall, temperature)
    beside = -_GAMMA * dt * flow
    middle = capacity.copy()
    middle[:-1] -= beside
    middle[1:] -= beside
    middle[-1] += _GAMMA * dt * before.slope(temperature[-1])
    change = np.zeros_like(temperature)
    change[-1] = _GAMMA * (after.heat(temperature[-1]) - before.heat(temperature[-1]))

    first = _solve(beside, middle, _heat(temperature, flow, before) + change)
    ahead = temperature + dt * first
    # A stiff face throws the first stage beyond its coolant, where no heat capacity is known.
    known = np.maximum(ahead, np.minimum(temperature.min(axis=0), after.coolant))
    pull = _heat(ahead, _conductance(material, wall, known), after)
    pull /= _capacity(material, wall, known)
    second = _solve(beside, middle, capacity * (pull - 2 * first) - change)
    return np.asarray(temperature + dt * (1.5 * first + 0.5 * second))


def _capacity(material: Material, wall: Half, temperature: Array) -> Array:
    return wall.weights[:, None] * material.density * material.heat_capacity(temperature)


def _conductance(material: Material, wall: Half, temperature: Array) -> Array:
    middle = (temperature[1:] + temperature[:-1]) / 2
    return material.conductivity_at(middle) / np.diff(wall.z)[:, None]


def _heat(temperature: Array, conductance: Array, air: Air) -> Array:
    flow = conductance * np.diff(temperature, axis=0)
    heat = np.zeros_like(temperature)
    heat[:-1] += flow
    heat[1:] -= flow
    heat[-1] += air.heat(temperature[-1])
    return heat


def _solve(beside: Array, middle: Array, right: Array) -> Array:
    """Tridiagonal systems, one a column; diagonally dominant, so no pivots are needed."""
    pivot, answer = middle.copy(), right.copy()
    for k in range(1, middle.shape[0]):
        share = beside[k - 1] / pivot[k - 1]
        pivot[k] -= share * beside[k - 1]
        answer[k] -= share * answer[k - 1]
    answer[-1] /= pivot[-1]
    for k in range(middle.shape[0] - 2, -1, -1):
        answer[k] = (answer[k] - beside[k] * answer[k + 1]) / pivot[k]
    return answer
