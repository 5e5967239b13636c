"""Conduction through a wall: finite volumes around the nodes, one linearly implicit step."""

from dataclasses import dataclass

import numpy as np
from scipy.linalg import lapack

from demo_app.physics.column.wall import Wall
from demo_app.physics.heat import STEFAN_BOLTZMANN
from demo_app.physics.materials import Array

_GAMMA = 1 - 2**-0.5


@dataclass(frozen=True)
class Face:
    """What a face of the wall meets.

    Parameters
    ----------
    coolant : float
        Temperature of the air and of the surroundings, K.
    coefficient : float
        W/(m2 K). A coefficient that a setting names is the whole of it, radiation included; then
        the emissivity stays zero.
    emissivity : float
        Of the face, for grey radiation to large surroundings on top of the coefficient.
    flux : float
        Heat put in whatever the face's temperature, W/m2.
    """

    coolant: float
    coefficient: float
    emissivity: float = 0.0
    flux: float = 0.0

    def heat(self, temperature: float) -> float:
        """Heat into the wall through this face, W/m2."""
        radiated = self.emissivity * STEFAN_BOLTZMANN * (self.coolant**4 - temperature**4)
        return self.flux + self.coefficient * (self.coolant - temperature) + radiated

    def slope(self, temperature: float) -> float:
        """Fall of `heat` with temperature, W/(m2 K)."""
        return self.coefficient + 4 * self.emissivity * STEFAN_BOLTZMANN * temperature**3


Faces = tuple[Face, Face]
"""Left and right face."""


def heat_step(wall: Wall, temperature: Array, dt: float, before: Faces, after: Faces) -> Array:
    """Temperature after a step.

    Two-stage Rosenbrock method ROS2 (Verwer, Spee, Blom and Hundsdorfer 1999, SIAM J. Sci. Comput.
    20): L-stable, and second-order for any approximate Jacobian, so that conductivity and heat
    capacity may follow the temperature without iteration.

    Parameters
    ----------
    wall : Wall
        Geometry and materials.
    temperature : numpy.ndarray
        Shape (n,): nodes, K.
    dt : float
        s.
    before, after : tuple of Face
        What both faces meet at the beginning and at the end of the step.
    """
    capacity = _capacity(wall, temperature)
    flow = _conductance(wall, temperature)
    beside = -_GAMMA * dt * flow
    middle = capacity.copy()
    middle[:-1] -= beside
    middle[1:] -= beside
    middle[0] += _GAMMA * dt * before[0].slope(temperature[0])
    middle[-1] += _GAMMA * dt * before[1].slope(temperature[-1])

    change = np.zeros_like(temperature)
    for node, was, becomes in ((0, before[0], after[0]), (-1, before[1], after[1])):
        change[node] = _GAMMA * (becomes.heat(temperature[node]) - was.heat(temperature[node]))
    first = _solve(beside, middle, _heat(temperature, flow, before) + change)
    ahead = temperature + dt * first
    # A stiff face throws the first stage beyond its coolant, where no heat capacity is known.
    known = np.maximum(ahead, min(temperature.min(), after[0].coolant, after[1].coolant))
    pull = _heat(ahead, _conductance(wall, known), after) / _capacity(wall, known)
    second = _solve(beside, middle, capacity * (pull - 2 * first) - change)
    return np.asarray(temperature + dt * (1.5 * first + 0.5 * second))


def _capacity(wall: Wall, temperature: Array) -> Array:
    """Heat capacity around each node, shape (n,), J/(m2 K)."""
    capacity = np.zeros_like(temperature)
    for layer, span, section in zip(wall.layers, wall.spans, wall.sections, strict=True):
        heat = layer.material.density * layer.material.heat_capacity(temperature[span])
        capacity[span] += wall.weights[section] * heat
    return capacity


def _conductance(wall: Wall, temperature: Array) -> Array:
    """Conductance between neighbouring nodes, shape (n - 1,), W/(m2 K)."""
    middle = (temperature[1:] + temperature[:-1]) / 2
    conductance = 1 / np.diff(wall.z)
    for layer, span in zip(wall.layers, wall.spans, strict=True):
        cells = slice(span.start, span.stop - 1)
        conductance[cells] *= layer.material.conductivity_at(middle[cells])
    return conductance


def _heat(temperature: Array, conductance: Array, faces: Faces) -> Array:
    """Heat into each node's volume, shape (n,), W/m2."""
    flow = conductance * np.diff(temperature)
    heat = np.zeros_like(temperature)
    heat[:-1] += flow
    heat[1:] -= flow
    heat[0] += faces[0].heat(temperature[0])
    heat[-1] += faces[1].heat(temperature[-1])
    return heat


def _solve(beside: Array, middle: Array, right: Array) -> Array:
    """Solve a tridiagonal system whose two side diagonals are the same."""
    *_, solution, info = lapack.dgtsv(beside, middle, beside, right)
    if info:
        raise ArithmeticError("the conduction system is singular")
    return np.asarray(solution)
