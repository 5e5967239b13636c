"""A thin plate that stays solid: mean temperature through the thickness, elastic membrane stress.

The membrane forces, all that light sees face-on, follow from the temperature's mean through the
thickness alone: what is left of it bends the plate or balances itself within the thickness. Under
a tip that gives a flux q, both faces together, they are about ``q d / (12 k)`` warmer than the
mean of the thickness d.
Properties are those at room temperature; for a rise of 60 K soda-lime's heat capacity is 5 % and
its conductivity 5 % larger.
"""

import functools
import math
from dataclasses import dataclass
from typing import Any

import numpy as np
import scipy.sparse as sp
from numpy.typing import NDArray
from scipy.sparse.linalg import splu

from demo_app.physics.heat import ROOM, radiation_coefficient
from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.membrane import (
    MembraneForm,
    free_membrane_modulus,
    membrane_form,
    plane_stress_share,
)
from demo_app.physics.plan.mesh import PlanMesh, rectangle

STILL_AIR = 5.0
"""Coefficient of still air on a plate some 30 K warmer, W/(m2 K): Churchill and Chu 1975 (Int. J.
Heat Mass Transfer 18, 1323) gives 4.8 to 5.7 for a vertical plate of 0.1 m."""

_GAMMA = 1 - 1 / math.sqrt(2)


@dataclass(frozen=True, eq=False)
class Sheet:
    """Everything that does not change while a plate warms and cools.

    Parameters
    ----------
    material : Material
        Its glass.
    thickness : float
        m.
    mesh : PlanMesh
        Its elements.
    form : MembraneForm
        Matrices of equilibrium.
    free : numpy.ndarray
        Unknowns of the displacement that are not held.
    solid : scipy.sparse.linalg.SuperLU
        Factor of the stiffness of the free unknowns, for each metre of thickness.
    swell : scipy.sparse matrix
        Shape (2 * nodes, nodes): temperature rise (K) to the forces (N/m) that it exerts.
    answer : scipy.sparse matrix
        Shape (3 * best, 2 * nodes): displacement to elastic stress at the best points, Pa/m.
    hinder : scipy.sparse matrix
        Shape (best, nodes): temperature rise to the normal stress if nothing moved, Pa/K.
    spread : scipy.sparse matrix
        Shape (nodes, nodes), m2: integrates a flux at the nodes.
    capacity, drain : scipy.sparse matrix
        Shape (nodes, nodes): heat stored (J/K) and heat drawn away (W/K), for each metre of
        thickness.
    """

    material: Material
    thickness: float
    mesh: PlanMesh
    form: MembraneForm
    free: NDArray[np.int64]
    solid: Any
    swell: Any
    answer: Any
    hinder: Any
    spread: Any
    capacity: Any
    drain: Any


def sheet(
    material: Material,
    thickness: float,
    columns: Array,
    rows: Array,
    *,
    loss: float | None = None,
) -> Sheet:
    """Rectangular plate.

    Parameters
    ----------
    material : Material
        Its glass.
    thickness : float
        m.
    columns, rows : numpy.ndarray
        Element ends along x and y, increasing, m.
    loss : float, optional
        Coefficient on each face and along the rim, W/(m2 K); still air and radiation if left out.
    """
    mesh = rectangle(columns, rows)
    form = membrane_form(mesh)
    if loss is None:
        loss = still_air_loss(material)
    inside = mesh.inside
    value, slopes = inside.value.matrix(), (inside.slope_x.matrix(), inside.slope_y.matrix())
    mass = (value.T.multiply(inside.weight) @ value).tocsc()
    conduction = sum(slope.T.multiply(inside.weight) @ slope for slope in slopes)
    around = mesh.rim.value.matrix()
    rim = around.T.multiply(mesh.rim.weight) @ around
    at_room = np.array([ROOM])
    stored = material.density * float(material.heat_capacity(at_room)[0])
    conductivity = float(material.conductivity_at(at_room)[0])
    drain = conductivity * conduction + loss * (2 / thickness * mass + rim)
    free = np.setdiff1d(np.arange(2 * mesh.nodes), form.held)
    stiff = sheet_stiffness(form, material)
    hindered = free_membrane_modulus(material) * material.expansion
    normal = (form.strain[0] + form.strain[1]).T.multiply(form.weight)
    return Sheet(
        material,
        thickness,
        mesh,
        form,
        free,
        factor(stiff[free][:, free]),
        (hindered * (normal @ value)).tocsr(),
        best_answer(form, material),
        (-hindered * (form.recover.to_best @ value)).tocsr(),
        mass,
        (stored * mass).tocsc(),
        drain.tocsc(),
    )


def still_air_loss(material: Material) -> float:
    """Still air and radiation on a face some 30 K above the room, W/(m2 K)."""
    warm = np.asarray(ROOM + 30.0)
    return STILL_AIR + float(radiation_coefficient(warm, ROOM, material.emissivity))


def sheet_stiffness(
    form: MembraneForm, material: Material, elements: NDArray[np.bool_] | None = None
) -> Any:
    """Stiffness as a sparse matrix, N/m for each metre of thickness.

    Parameters
    ----------
    form : MembraneForm
        Of the mesh.
    material : Material
        The solid.
    elements : numpy.ndarray, optional
        Shape (points,), bool: points that count; all if left out.
    """
    weight = form.weight if elements is None else form.weight * elements
    shear = material.shear_modulus
    area = float(plane_stress_share(np.asarray(material.bulk_modulus), np.asarray(shear)))
    xx, yy, xy = form.strain
    parts = ((2 * shear, xx), (2 * shear, yy), (4 * shear, xy), (area, xx + yy))
    return sum(f * (rows.T.multiply(weight) @ rows) for f, rows in parts).tocsc()


def best_answer(form: MembraneForm, material: Material) -> Any:
    """Displacement to elastic stress at the best points, the three components stacked."""
    shear = material.shear_modulus
    area = float(plane_stress_share(np.asarray(material.bulk_modulus), np.asarray(shear)))
    xx, yy, xy = (form.recover.to_best @ rows for rows in form.strain)
    swelling = area * (xx + yy)
    return sp.vstack([2 * shear * xx + swelling, 2 * shear * yy + swelling, 2 * shear * xy]).tocsr()


def factor(matrix: Any) -> Any:
    """LU factor of a symmetric positive definite sparse matrix, ordered for little fill-in."""
    return splu(
        matrix.tocsc(),
        permc_spec="MMD_AT_PLUS_A",
        diag_pivot_thresh=0.0,
        options={"SymmetricMode": True},
    )


def displacement(piece: Sheet, rise: Array) -> Array:
    """Displacement (2 * nodes,), m, of the free plate with a temperature `rise` (nodes,), K."""
    moved = np.zeros(2 * piece.mesh.nodes)
    moved[piece.free] = piece.solid.solve((piece.swell @ rise)[piece.free])
    return moved


def best_stress(piece: Sheet, rise: Array, moved: Array) -> Array:
    """Membrane stress on the grid of best points, (3, best_x, best_y), Pa."""
    recover = piece.form.recover
    stress = (piece.answer @ moved).reshape(3, -1)
    stress[:2] += piece.hinder @ rise
    return np.asarray(stress).reshape(3, recover.along.shape[1], -1)


def nodal_stress(piece: Sheet, rise: Array, moved: Array) -> Array:
    """Membrane stress at the nodes, (3, columns, rows), Pa, from rise and displacement."""
    return piece.form.recover.spread(best_stress(piece, rise, moved))


def warmed(piece: Sheet, rise: Array, seconds: float, flux: Array) -> Array:
    """Temperature rise at the nodes, K, after a step.

    Two-stage singly diagonally implicit Runge-Kutta of second order, stiffly accurate (Alexander
    1977, SIAM J. Numer. Anal. 14, 1006); its matrix is factorised once for each length of step.

    Parameters
    ----------
    piece : Sheet
        The plate.
    rise : numpy.ndarray
        Shape (nodes,), K above the room.
    seconds : float
        Length of the step, s.
    flux : numpy.ndarray
        Shape (nodes,), W/m2: heat put in through both faces together.
    """
    lu = _step_factor(piece, seconds)
    given = piece.spread @ (flux / piece.thickness)
    rate = lu.solve(given - piece.drain @ rise)
    middle = rise + (1 - _GAMMA) * seconds * rate
    return np.asarray(middle + _GAMMA * seconds * lu.solve(given - piece.drain @ middle))


@functools.lru_cache(maxsize=24)
def _step_factor(piece: Sheet, seconds: float) -> Any:
    return factor(piece.capacity + (_GAMMA * seconds) * piece.drain)
