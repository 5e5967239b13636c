"""Through the wall of a wide plate: nodes from one face to the other, graded towards the faces."""

import itertools
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics.materials import Array, Material

CELLS = 40
"""Cells through the wall unless stated: stresses of a tempering run are within 1 %."""

_GRADED = 0.85


@dataclass(frozen=True)
class Layer:
    """A layer of the wall: its material and thickness, m."""

    material: Material
    thickness: float


@dataclass(frozen=True)
class Wall:
    """Layers with their mesh. A node between two layers is a stress point of each.

    Parameters
    ----------
    layers : tuple of Layer
        From the left face to the right one.
    z : numpy.ndarray
        Shape (n,): nodes, m, 0 in the middle of the wall.
    spans : tuple of slice
        Nodes of each layer, those at its two ends included.
    points : numpy.ndarray
        Shape (p,): node of each stress point, layer after layer.
    weights : numpy.ndarray
        Shape (p,), m: the integral over the wall is the sum of weights times values.
    """

    layers: tuple[Layer, ...]
    z: Array
    spans: tuple[slice, ...]
    points: NDArray[np.intp]
    weights: Array

    @property
    def thickness(self) -> float:
        """Of all layers, m."""
        return float(self.z[-1] - self.z[0])

    @property
    def point_z(self) -> Array:
        """Place of each stress point, shape (p,), m."""
        return self.z[self.points]

    @property
    def sections(self) -> tuple[slice, ...]:
        """Stress points of each layer."""
        ends = np.cumsum([0, *(span.stop - span.start for span in self.spans)])
        return tuple(slice(int(a), int(b)) for a, b in itertools.pairwise(ends))


def plate(material: Material, thickness: float, cells: int = CELLS) -> Wall:
    """Wall of one material, `thickness` in m, with `cells` cells graded towards both faces."""
    return laminate([Layer(material, thickness)], cells)


def laminate(layers: Sequence[Layer], cells: int = CELLS) -> Wall:
    """Wall of several layers bonded together, each with `cells` cells."""
    z = [np.array([0.0])]
    for layer in layers:
        z.append(z[-1][-1] + layer.thickness * _graded(cells)[1:])
    nodes = np.concatenate(z)
    spans = tuple(slice(k * cells, (k + 1) * cells + 1) for k in range(len(layers)))
    return Wall(
        layers=tuple(layers),
        z=nodes - nodes[-1] / 2,
        spans=spans,
        points=np.concatenate([np.arange(span.start, span.stop) for span in spans]),
        weights=np.concatenate([trapezoid(nodes[span]) for span in spans]),
    )


def trapezoid(z: Array) -> Array:
    """Weights of the trapezoidal rule on nodes `z`, shape (n,), m."""
    half = np.diff(z) / 2
    weights = np.zeros_like(z)
    weights[:-1] += half
    weights[1:] += half
    return weights


def _graded(cells: int) -> Array:
    """Nodes from 0 to 1, finer towards both ends, a mirror image about the middle."""
    even = np.linspace(-1.0, 1.0, cells + 1)
    place = (1 - _GRADED) * even + _GRADED * np.sin(np.pi / 2 * even)
    return np.asarray((1 + place) / 2)
