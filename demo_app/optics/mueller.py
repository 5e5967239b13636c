"""Polarized light as Stokes vectors, and what a retarder does to them.

Sources
-------
Theocaris and Gdoutos, Matrix Theory of Photoelasticity, 1979.
"""

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


def polarized(angle_deg: float, count: int) -> Array:
    """Stokes vectors, shape (4, count), of unit light polarized at `angle_deg` from x.

    Half of it, as a row, is what an analyser at that angle reads.
    """
    twice = np.radians(2 * angle_deg)
    return np.repeat(np.array([[1.0], [np.cos(twice)], [np.sin(twice)], [0.0]]), count, axis=1)


def retarded(stokes: Array, waves: Array, slow_axis_deg: float) -> Array:
    """Stokes vectors behind a retarder: turned on Poincaré's sphere about the slow axis.

    The rotation by G about n is ``cos G s + (1 - cos G) n (n.s) + sin G n x s`` (Rodrigues).
    With negative `waves` the same turns a reading row from behind the retarder to before it.

    Parameters
    ----------
    stokes : numpy.ndarray
        Shape (4, n).
    waves : numpy.ndarray
        Shape (n,): retardation over wavelength.
    slow_axis_deg : float
        Counted from x.
    """
    phase = 2 * np.pi * waves
    twice = np.radians(2 * slow_axis_deg)
    axis = np.array([np.cos(twice), np.sin(twice), 0.0])
    vector = stokes[1:]
    turned = (
        np.cos(phase) * vector
        + (1 - np.cos(phase)) * axis[:, None] * (axis @ vector)
        + np.sin(phase) * np.cross(axis, vector, axisb=0, axisc=0)
    )
    return np.concatenate([stokes[:1], turned])
