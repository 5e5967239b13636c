"""A melt that cools between two mould walls: temperature and frozen skin in closed form."""

import functools

import numpy as np
from scipy.special import erf, erfc, erfinv

from demo_app.physics.materials import Array

_ROOTS = np.linspace(0.0, 1.6, 8001)
"""Roots of the Fourier numbers of the table; beyond the last one nothing is left."""
_EARLY = 0.05
"""Fourier number (of the whole thickness) up to which the images are used, then the series."""


def excess_left(depth: Array, fourier: Array) -> Array:
    """Share of the first temperature excess over the walls that is left in a slab.

    Images for short times, Fourier's series for long ones (Carslaw and Jaeger, sections 3.3, 3.4).

    Parameters
    ----------
    depth : numpy.ndarray
        Below one wall, as a share of the thickness, 0 to 1.
    fourier : numpy.ndarray
        Diffusivity times time over thickness squared, at least 0; broadcasts with `depth`.
    """
    depth, fourier = np.broadcast_arrays(depth, fourier)
    root = 2 * np.sqrt(np.clip(fourier, 1e-12, _EARLY))
    early = erf(depth / root) - erfc((1 - depth) / root) + erfc((1 + depth) / root)
    late = np.zeros_like(early)
    for k in (1, 3, 5):
        decay = np.exp(-((k * np.pi) ** 2) * np.maximum(fourier, _EARLY))
        late = late + 4 / (np.pi * k) * np.sin(k * np.pi * depth) * decay
    return np.asarray(np.where(fourier < _EARLY, np.maximum(early, 0.0), late))


def excess_in_layers(depths: tuple[float, ...], fourier: Array) -> Array:
    """`excess_left` at a few `depths` and many Fourier numbers, from a table: within 1e-4.

    Returns
    -------
    numpy.ndarray
        Shape (depths, ...): for each depth the shape of `fourier`.
    """
    root = np.sqrt(fourier)
    return np.stack([np.interp(root, _ROOTS, _table(depth)) for depth in depths])


@functools.cache
def _table(depth: float) -> Array:
    return excess_left(np.array(depth), _ROOTS**2)


def frozen_skin(melt: float, mould: float, transition: float, spread: float) -> float:
    """Depth frozen on each wall, m, for ``sqrt(diffusivity * time)`` = `spread`, m.

    ``erf(d / (2 spread)) = (transition - mould) / (melt - mould)``; all temperatures in K.
    """
    return float(2 * spread * erfinv((transition - mould) / (melt - mould)))
