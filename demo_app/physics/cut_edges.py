"""The faint net that light shows in broken toughened glass: membrane stress along the cracks.

A crack frees the faces that it makes of the stress across them. What balances inside the plate then
leans on the glass beside it, so that along the crack the mean through the thickness is no longer
zero, within about half the thickness.
"""

import numpy as np
from scipy.spatial import KDTree

from demo_app.physics.materials import Array

AT_EDGE = -0.165
"""Mean stress along the edge over the tension in the middle of the whole plate: plane strain, nu
0.22, parabola through the thickness (finite elements, done again in the tests)."""
_FADE, _WAVE = 4.212, 2.251
"""Decay and wave number times the thickness: first eigenvalue of the semi-infinite strip, 2.106 +
1.125i on its half thickness (Fadle 1940, Ing.-Arch. 11, from memory)."""
_NEIGHBOURS = 5
_REACH = 1.5


def along_edge(depth: Array) -> Array:
    """Mean stress along a cut edge over the middle tension; `depth` over the thickness, any shape.

    Its integral over the depth is zero, as no force acts along a free edge.
    """
    wave = _WAVE * depth
    fade = np.exp(-_FADE * depth)
    return np.asarray(AT_EDGE * fade * (np.cos(wave) - _FADE / _WAVE * np.sin(wave)))


def net(seeds: Array, x: Array, y: Array, thickness: float) -> tuple[Array, Array]:
    """Membrane stress in dice over the middle tension of the plate that they were.

    Each die's edges add up, each as if it were long.

    Parameters
    ----------
    seeds : numpy.ndarray
        Shape (dice, 2), m: places to which each die's points are nearest.
    x, y : numpy.ndarray
        Shapes (cols,) and (rows,), m: where to look.
    thickness : float
        m.

    Returns
    -------
    tuple of numpy.ndarray
        ``xx - yy`` and ``2 xy``, shape (rows, cols).
    """
    places = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
    count = min(_NEIGHBOURS, len(seeds))
    away, order = KDTree(seeds).query(places, k=count)
    difference, shear = np.zeros(len(places)), np.zeros(len(places))
    for k in range(1, count):
        across = seeds[order[:, k]] - seeds[order[:, 0]]
        apart = np.hypot(across[:, 0], across[:, 1])
        depth = (away[:, k] ** 2 - away[:, 0] ** 2) / (2 * apart) / thickness
        stress = np.where(depth < _REACH, along_edge(np.minimum(depth, _REACH)), 0.0)
        # It acts along the edge, and so at a right angle to the line between both seeds.
        cosine, sine = across[:, 0] / apart, across[:, 1] / apart
        difference -= stress * (cosine**2 - sine**2)
        shear -= stress * 2 * cosine * sine
    shape = (y.size, x.size)
    return difference.reshape(shape), shear.reshape(shape)
