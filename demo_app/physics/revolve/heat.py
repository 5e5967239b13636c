"""Conduction in a wall of revolution: implicit, second order in time, one factor a step."""

import math
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.band import BandForm, band_form, bandwidth_of, factorise
from demo_app.physics.heat import Surface
from demo_app.physics.materials import Material
from demo_app.physics.revolve.mesh import Points, WallMesh

Array = NDArray[np.float64]

_GAMMA = 1 - 1 / math.sqrt(2)


@dataclass(frozen=True)
class SurfaceForm:
    """Exchange on one surface.

    Parameters
    ----------
    band : BandForm
        Matrix from the coefficients at the surface's points.
    value : scipy.sparse matrix
        Shape (points, nodes): nodes to points.
    load : scipy.sparse matrix
        Shape (nodes, points): flux at the points (W/m2) to heat at the nodes (W).
    """

    band: BandForm
    value: Any
    load: Any


@dataclass(frozen=True)
class HeatForm:
    """All matrices of conduction in one mesh; coefficients are put in at each step."""

    capacity: BandForm
    conduction: BandForm
    value: Any
    outer: SurfaceForm
    inner: SurfaceForm


def heat_form(mesh: WallMesh) -> HeatForm:
    """Matrices of conduction for `mesh`."""
    wide = bandwidth_of(mesh.wall.value)
    wall = mesh.wall
    return HeatForm(
        band_form(((1.0, wall.value),), wall.weight, wide),
        band_form(((1.0, wall.slope_r), (1.0, wall.slope_z)), wall.weight, wide),
        wall.value.matrix(),
        _surface(mesh.outer, wide),
        _surface(mesh.inner, wide),
    )


def _surface(points: Points, wide: int) -> SurfaceForm:
    value = points.value.matrix()
    band = band_form(((1.0, points.value),), points.weight, wide)
    return SurfaceForm(band, value, value.T.multiply(points.weight).tocsr())


def heat_step(
    form: HeatForm,
    material: Material,
    temperature: Array,
    seconds: float,
    outer: Surface,
    inner: Surface,
) -> Array:
    """Temperature at the nodes after a step.

    Two-stage singly diagonally implicit Runge-Kutta of second order, stiffly accurate (Alexander
    1977, SIAM J. Numer. Anal. 14, 1006), with the material's conductivity and heat capacity of
    the step's start.

    Parameters
    ----------
    form : HeatForm
        Of the mesh.
    material : Material
        Gives conductivity, heat capacity and density.
    temperature : numpy.ndarray
        Shape (nodes,), K.
    seconds : float
        Length of the step, s.
    outer, inner : Surface
        What the two surfaces meet.

    Returns
    -------
    numpy.ndarray
        Shape (nodes,), K.
    """
    at_points = form.value @ temperature
    capacity = form.capacity.band(material.density * material.heat_capacity(at_points))
    conduction = form.conduction.band(material.conductivity_at(at_points))
    drawn = conduction + form.outer.band.band(outer.coefficient)
    drawn += form.inner.band.band(inner.coefficient)
    given = form.outer.load @ (outer.coefficient * outer.ambient + outer.flux)
    given = given + form.inner.load @ (inner.coefficient * inner.ambient + inner.flux)
    factor = factorise(np.asfortranarray(capacity + (_GAMMA * seconds) * drawn))
    # Solved for the change, so that a uniform temperature stays exactly uniform.
    rate = factor.solve(given - multiply(drawn, temperature))
    middle = temperature + (1 - _GAMMA) * seconds * rate
    last = factor.solve(given - multiply(drawn, middle))
    return np.asarray(middle + _GAMMA * seconds * last)


def multiply(band: Array, vector: Array) -> Array:
    """Product of a symmetric lower `band` (bandwidth + 1, size) and a `vector` (size,)."""
    result = band[0] * vector
    for below in range(1, band.shape[0]):
        low = band[below, : vector.size - below]
        result[below:] += low * vector[: vector.size - below]
        result[: vector.size - below] += low * vector[below:]
    return np.asarray(result)
