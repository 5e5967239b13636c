"""Bars and disks under the force of hands: plane stress, and what a cut through them carries.

Half of a bar or a quarter of a disk is solved; its left edge, ``x = 0``, is the cut. Stresses do
not depend on the modulus and are linear in the force, so one field serves a whole run. What the
cut carries is the virtual work of the computed stress when the cut's nodes move: the weak form
balances it with the hands exactly, however coarse the mesh.
"""

import itertools
import math
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.band import Factor
from demo_app.physics.materials import Array, Material
from demo_app.physics.plan.membrane import (
    MembraneForm,
    elastic_membrane,
    free_membrane_modulus,
    membrane_form,
    stiffness_form,
)
from demo_app.physics.plan.mesh import PlanMesh, mapped, rectangle

Pressure = Callable[[Array, Array], Array]
"""Where the hands press: a weight, any scale, at places (x, y) of the rim."""


@dataclass(frozen=True, eq=False)
class Piece:
    """A piece with its mirror lines, and the forces that hands exert on it.

    Parameters
    ----------
    material : Material
        Elastic.
    mesh : PlanMesh
        Half or quarter of the piece.
    form : MembraneForm
        Matrices of equilibrium.
    load : numpy.ndarray
        Shape (2 * nodes,): the hands' force for each N/m of theirs, 1.
    cut : numpy.ndarray
        Nodes on the cut, from below to above.
    solid : Factor
        Of the stiffness.
    """

    material: Material
    mesh: PlanMesh
    form: MembraneForm
    load: Array
    cut: NDArray[np.int64]
    solid: Factor

    @property
    def copies(self) -> int:
        """How many mirror images make the cut whole."""
        return 2 if self.mesh.mirrored_y else 1


@dataclass(frozen=True, eq=False)
class Field:
    """Stress and displacement of a piece.

    Parameters
    ----------
    stress : numpy.ndarray
        Shape (3, points), Pa: xx, yy, xy at the quadrature points.
    nodal : numpy.ndarray
        Shape (3, columns, rows), Pa: the same at the nodes.
    moved : numpy.ndarray
        Shape (2 * nodes,), m.
    """

    stress: Array
    nodal: Array
    moved: Array


def bar(material: Material, length: float, height: float) -> Piece:
    """A bar that no hand holds, `length` by `height`, m."""
    return _piece(material, _bar_mesh(length, height, ()), lambda mesh: _nothing(mesh))


def pulled(material: Material, length: float, height: float) -> Piece:
    """A bar pulled at its two ends, each held over its whole height; negative forces squeeze."""
    mesh = _bar_mesh(length, height, ())
    end = _pressed(mesh, lambda x, y: (x > length / 2 * (1 - 1e-9)).astype(float), 1.0)
    return _piece(material, mesh, lambda _: _along(end, 0))


def bent(
    material: Material, length: float, height: float, inner: float, outer: float, pad: float
) -> Piece:
    """A bar on two pads below, pressed by one or two pads above.

    Parameters
    ----------
    material : Material
        Of the bar.
    length, height : float
        m.
    inner, outer : float
        Distance of the pads above and of those below, middle to middle, m. With no distance above
        there is one pad in the middle: three-point bending.
    pad : float
        Width of each pad, m; it presses evenly.
    """
    ends = [abs(inner / 2 + s * pad / 2) for s in (-1, 1)]
    ends += [outer / 2 + s * pad / 2 for s in (-1, 1)]
    mesh = _bar_mesh(length, height, tuple(ends))

    def under(middle: float, side: float) -> Array:
        def weight(x: Array, y: Array) -> Array:
            near = np.abs(x - middle) < pad / 2 * (1 + 1e-9)
            return np.asarray((near & (side * y > height / 2 * (1 - 1e-9))).astype(float))

        return _pressed(mesh, weight, 0.5)

    both = under(outer / 2, -1.0) - under(inner / 2, 1.0)
    return _piece(material, mesh, lambda _: _along(both, 1))


def pressed_disk(material: Material, radius: float, pad: float) -> Piece:
    """A disk squeezed across its upright diameter between two pads of width `pad`, m.

    The square mesh is carried onto the disk by ``x = u sqrt(1 - v**2 / 2)`` and its mirror image.
    """
    edge = pad / 2 / radius * math.sqrt(2)
    across = np.concatenate(([0, 0.5], _graded(edge, 1.0, 13))) * np.r_[edge, edge, np.ones(13)]
    up = 1 - np.concatenate(([0, 0.5], _graded(edge, 1.0, 13))) * np.r_[edge, edge, np.ones(13)]

    def place(u: Array, v: Array) -> tuple[Array, Array]:
        return radius * u * np.sqrt(1 - v**2 / 2), radius * v * np.sqrt(1 - u**2 / 2)

    mesh = mapped(across, up[::-1], place, mirrored_x=True, mirrored_y=True)
    top = _pressed(mesh, lambda x, y: ((y > x) & (x < pad / 2)).astype(float), 0.5)
    return _piece(material, mesh, lambda _: _along(-top, 1))


def disk_square(x: Array, y: Array) -> tuple[Array, Array]:
    """Place (u, v) on the square mesh of a point (x, y) of the unit disk's first quarter."""
    both, root = x**2 - y**2, 2 * math.sqrt(2)

    def one(difference: Array, along: Array) -> Array:
        plus, minus = 2 + difference + root * along, 2 + difference - root * along
        return np.asarray((np.sqrt(np.maximum(plus, 0)) - np.sqrt(np.maximum(minus, 0))) / 2)

    return np.clip(one(both, x), 0, 1), np.clip(one(-both, y), 0, 1)


def held_by_hands(piece: Piece) -> Field:
    """Field under hands of 1 N for each metre of thickness."""
    return _answer(piece, piece.load, np.zeros((3, piece.form.weight.size)))


def locked_in(piece: Piece, stress: Array) -> Field:
    """Field of a `stress` (3, points), Pa, that was locked in while everything was held."""
    return _answer(piece, -piece.form.load(stress), stress)


def cut_force(piece: Piece, field: Field) -> float:
    """What the stress in the cut adds up to, N for each metre of thickness; a pull is positive."""
    return -piece.copies * float(_cut_forces(piece, field).sum())


def cut_moment(piece: Piece, field: Field) -> float:
    """Bending moment of the stress in the cut, N; a pull below is positive."""
    y = piece.mesh.y.ravel()[piece.cut]
    # A mirror image below turns the other way.
    return 0.0 if piece.copies == 2 else float(y @ _cut_forces(piece, field))


def hands_moment(piece: Piece) -> float:
    """What the hands turn the right half with, about the middle of the cut, N for 1 N/m."""
    if piece.copies == 2:
        return 0.0
    x, y = piece.mesh.x.ravel(), piece.mesh.y.ravel()
    return float(x @ piece.load[1::2] - y @ piece.load[::2])


def bowing_limit(material: Material, length: float, height: float, thickness: float) -> float:
    """Force at which a squeezed bar with flat, held ends bows out, N (Euler)."""
    thin, wide = sorted((height, thickness))
    second_moment = wide * thin**3 / 12
    return 4 * math.pi**2 * material.youngs_modulus * second_moment / length**2


def _answer(piece: Piece, force: Array, stress: Array) -> Field:
    form = piece.form
    right = force.copy()
    right[form.held] = 0.0
    moved = piece.solid.solve(right)
    whole = stress + elastic_membrane(piece.material, form.strains(moved))
    return Field(whole, form.recover.nodal(whole), moved)


def _cut_forces(piece: Piece, field: Field) -> Array:
    """Force of the left part on the right one at each node of the cut, N/m."""
    return np.asarray(piece.form.load(field.stress)[2 * piece.cut])


def _piece(material: Material, mesh: PlanMesh, load: Callable[[PlanMesh], Array]) -> Piece:
    cut = np.flatnonzero(np.abs(mesh.x.ravel()) < 1e-9 * float(np.ptp(mesh.x)))
    solid = stiffness_form(mesh).solid(material)
    return Piece(material, mesh, membrane_form(mesh), load(mesh), cut, solid)


def _nothing(mesh: PlanMesh) -> Array:
    return np.zeros(2 * mesh.nodes)


def _pressed(mesh: PlanMesh, weight: Pressure, force: float) -> Array:
    """Nodal forces, shape (nodes,), of an even pressure where `weight` is one, `force` in all."""
    rim = mesh.rim
    share = weight(rim.x, rim.y) * rim.weight
    spread: Array = rim.value.matrix().T @ share
    return spread * (force / float(share.sum()))


def _along(force: Array, axis: int) -> Array:
    whole = np.zeros(2 * force.size)
    whole[axis::2] = force
    return whole


def _bar_mesh(length: float, height: float, ends: tuple[float, ...]) -> PlanMesh:
    """Half a bar, elements near square, with element ends at `ends`."""
    stops = sorted({0.0, length / 2, *(round(end, 9) for end in ends)})
    parts = []
    for low, high in itertools.pairwise(stops):
        count = max(1, round((high - low) / (height / 8)))
        parts.append(np.linspace(low, high, count + 1)[:-1])
    columns = np.concatenate([*parts, [length / 2]])
    return rectangle(columns, np.linspace(-height / 2, height / 2, 11), mirrored_x=True)


def _graded(low: float, high: float, count: int) -> Array:
    """Places from `low` to `high`, each step the same factor longer at first, then even."""
    return np.asarray(low + (high - low) * np.linspace(0, 1, count) ** 1.6)


def locked_stress(material: Material, plate_stress: Array) -> Array:
    """Stress (3, points), Pa, that held points of a narrow slice have.

    A wide plate has the same stress in both directions of its plane; a narrow slice of it lets the
    one across the slice go. The strain that was locked in, and that stays, is the plate's stress
    over E / (1 - nu).

    Parameters
    ----------
    material : Material
        Elastic from here on.
    plate_stress : numpy.ndarray
        Shape (points,), Pa: of the wide plate there.
    """
    strain = plate_stress / free_membrane_modulus(material)
    stress = np.zeros((3, strain.size))
    stress[0] = material.youngs_modulus * strain
    return stress
