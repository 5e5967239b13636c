"""Conduction in the plane of a plate, and the heat that leaves through its rim."""

import math
from dataclasses import dataclass
from typing import Any

import numpy as np

from demo_app.physics.band import BandForm, band_form, bandwidth_of, factorise
from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.air import Air
from demo_app.physics.plan.mesh import PlanMesh
from demo_app.physics.plan.through import Half

_GAMMA = 1 - 1 / math.sqrt(2)


@dataclass(frozen=True)
class PlaneHeat:
    """Matrices of conduction in one mesh; coefficients are put in at each step.

    Parameters
    ----------
    capacity, conduction : BandForm
        From heat capacity and conductivity at the points.
    value : scipy.sparse matrix
        Shape (points, nodes).
    slopes : tuple of scipy.sparse matrix
        Shape (points, nodes), 1/m: derivatives along x and y.
    weight : numpy.ndarray
        Shape (points,), m2: quadrature weights.
    rim : numpy.ndarray
        Band of the heat that a unit coefficient draws away along the rim.
    rim_matrix : scipy.sparse matrix
        The same, shape (nodes, nodes).
    rim_load : numpy.ndarray
        Shape (nodes,), m: length of rim that each node stands for.
    """

    capacity: BandForm
    conduction: BandForm
    value: Any
    slopes: tuple[Any, Any]
    weight: Array
    rim: Array
    rim_matrix: Any
    rim_load: Array


def plane_heat(mesh: PlanMesh) -> PlaneHeat:
    """Matrices of conduction for `mesh`."""
    inside, rim = mesh.inside, mesh.rim
    wide = bandwidth_of(inside.value)
    around = rim.value.matrix()
    along = band_form(((1.0, rim.value),), rim.weight, wide)
    return PlaneHeat(
        band_form(((1.0, inside.value),), inside.weight, wide),
        band_form(((1.0, inside.slope_x), (1.0, inside.slope_y)), inside.weight, wide),
        inside.value.matrix(),
        (inside.slope_x.matrix(), inside.slope_y.matrix()),
        inside.weight,
        along.band(np.ones(rim.weight.size)),
        (around.T.multiply(rim.weight) @ around).tocsr(),
        np.asarray(around.T @ rim.weight),
    )


class PlaneStep:
    """Steps of one length in the plane, with one factor for all layers.

    The capacity and the conductivity at a place are those of its mean over the layers, so that
    layers of one place that differ in temperature conduct alike; the heat that they hold together
    is kept. Two-stage SDIRK of second order (Alexander 1977, SIAM J. Numer. Anal. 14, 1006).

    Parameters
    ----------
    form : PlaneHeat
        Of the mesh.
    material : Material
        Gives conductivity, heat capacity and density.
    wall : Half
        Layers.
    temperature : numpy.ndarray
        Shape (layers, nodes), K: at which the material's values are taken.
    dt : float
        s.
    air : Air
        Of the rim.
    """

    def __init__(
        self,
        form: PlaneHeat,
        material: Material,
        wall: Half,
        temperature: Array,
        dt: float,
        air: Air,
    ) -> None:
        at_points = (form.value @ temperature.T).T
        conductivity = wall.mean(material.conductivity_at(at_points))
        capacity = wall.mean(material.density * material.heat_capacity(at_points))
        self._form, self._dt, self._rim = form, dt, air.rim
        self._through = (conductivity * form.weight)[:, None]
        self._given = (air.rim * air.coolant * form.rim_load)[:, None]
        drain = form.conduction.band(conductivity) + air.rim * form.rim
        stored = form.capacity.band(capacity)
        self._factor = factorise(np.asfortranarray(stored + _GAMMA * dt * drain))

    def __call__(self, temperature: Array) -> Array:
        """Temperature (layers, nodes), K, one step later."""
        now = np.ascontiguousarray(temperature.T)
        rate = self._factor.solve(self._heat(now))
        middle = now + (1 - _GAMMA) * self._dt * rate
        last = self._factor.solve(self._heat(middle))
        return np.ascontiguousarray((middle + _GAMMA * self._dt * last).T)

    def _heat(self, columns: Array) -> Array:
        """Heat into each node, W for each metre of thickness, at temperatures (nodes, layers)."""
        heat = self._given - self._rim * (self._form.rim_matrix @ columns)
        for slope in self._form.slopes:
            heat = heat - slope.T @ (self._through * (slope @ columns))
        return np.asarray(heat)
