"""A piece of revolution seen from the side, slice after slice along each ray.

Where the axes of stress turn along the ray (a thick round foot) slices act one after the other, and
the sum of their v1 and v2 is not what light sees. Behind the axis a ray meets the same slices in
reverse order. Such a row of retarders acts as one retarder without any turn behind it, since its
Jones matrix is symmetric (Hurwitz and Jones 1941, J. Opt. Soc. Am. 31, 493), so a retardation map
still holds all of it, at one wavelength.
"""

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import RetardationMap
from demo_app.optics.sightlines import Sightlines

Array = NDArray[np.float64]
Floats = NDArray[np.float32]

ALLOWED_NM = 5.0
"""Error of the sum from which on the product takes its place, nm."""
GREEN_NM = 550.0
"""Wavelength for which the product is taken, nm: near the eye's best."""
_RATE = np.pi / GREEN_NM
_SINGLE = np.float32(_RATE)


def slices(lines: Sightlines, stress: Array, stress_optic: float) -> tuple[Floats, Floats]:
    """What each slice of the front half adds to v1 and v2, nm: shape (levels, rays, samples).

    Light meets the last sample first; behind the axis come the same slices the other way round.
    """
    levels, _, samples = lines.along_weight.shape
    scaled = (0.5e9 * stress_optic * (lines.sample @ stress.T)).astype(np.float32)
    radial, hoop, axial, shear = scaled.T.reshape(4, levels, 1, samples)
    v1 = lines.along_weight * axial - lines.hoop_weight * hoop - lines.radial_weight * radial
    return v1, lines.shear_weight * shear


def through_slices(
    lines: Sightlines, summed: RetardationMap, stress: Array, stress_optic: float
) -> RetardationMap:
    """The map `summed`, with the product of slices wherever the sum errs by more than 5 nm.

    Parameters
    ----------
    lines : Sightlines
        Operator that made the map.
    summed : RetardationMap
        ``lines.map(stress, stress_optic)``.
    stress : numpy.ndarray
        Shape (4, nodes), Pa.
    stress_optic : float
        1/Pa.
    """
    v1, v2 = slices(lines, stress, stress_optic)
    level, ray = np.nonzero(_may_err(v1, v2))
    if level.size == 0:
        return summed
    front = v1[level, ray].T[::-1], v2[level, ray].T[::-1]
    plain = 2 * front[0].sum(axis=0), 2 * front[1].sum(axis=0)
    exact = there_and_back(*front)
    # A turn of Poincare's sphere apart: where both are whole wavelengths nothing errs, whatever
    # their axes.
    apart = np.stack(exact) - np.stack(_retarder(*plain))
    errs = np.sqrt((apart**2).sum(axis=0)) > _RATE * ALLOWED_NM
    found = [summed.v1.copy(), summed.v2.copy()]
    for into, value in zip(found, one_retarder(exact, near=plain), strict=True):
        into[ray[errs], level[errs]] = value[errs]
    return replace(summed, v1=found[0], v2=found[1])


def _may_err(v1: Floats, v2: Floats) -> NDArray[np.bool_]:
    """Rays whose sum may err, shape (levels, rays).

    Slices that read the same from both ends do not err in second order. In third order they err by
    a quarter at most of ``(pi / wavelength)**2 size**2 aside``: `size` is the length of all slices
    in the plane of v1 and v2, `aside` how far their path leaves its straight line (the factor was
    found on computed flasks: with an eighth it missed two of 5,000 rays).
    """
    size = 2 * np.sqrt(v1 * v1 + v2 * v2).sum(axis=2)
    straight = 2 * np.hypot(v1.sum(axis=2), v2.sum(axis=2))
    aside = np.sqrt(2 * size * np.maximum(size - straight, 0.0))
    return np.asarray(0.25 * _RATE**2 * size**2 * aside > ALLOWED_NM)


Turn = tuple[Floats, Floats, Floats]
"""A retarder's Jones matrix ``w - i (x Z + y X)`` by its parts w, x, y, with Pauli's X and Z."""


def _retarder(v1: Floats, v2: Floats) -> Turn:
    a, b = _SINGLE * v1, _SINGLE * v2
    half = np.sqrt(a * a + b * b)
    scale = np.sin(half) / np.maximum(half, np.float32(1e-12))
    return np.cos(half), scale * a, scale * b


def there_and_back(v1: Floats, v2: Floats) -> Turn:
    """Slices of shape (slices, n), nm, and then the same in reverse order, as one retarder."""
    w, x = np.ones_like(v1[0]), np.zeros_like(v1[0])
    y, z = np.zeros_like(x), np.zeros_like(x)
    for one, other in zip(v1, v2, strict=True):
        c, a, b = _retarder(one, other)
        w, x, y, z = (
            c * w - a * x - b * y,
            c * x + a * w + b * z,
            c * y + b * w - a * z,
            c * z + a * y - b * x,
        )
    # Back through the same slices: times the mirror image, in which z changes its sign.
    return w * w - x * x - y * y + z * z, 2 * (w * x + y * z), 2 * (w * y - x * z)


def one_retarder(turn: Turn, near: tuple[Floats, Floats]) -> tuple[Floats, Floats]:
    """v1 and v2, nm, of a retarder.

    Any number of whole wavelengths more acts the same at this one: of all, the `near`est counts.
    """
    whole, along, slant = turn
    size = np.hypot(along, slant)
    half = np.arctan2(size, whole)
    unit = along / np.maximum(size, np.float32(1e-30)), slant / np.maximum(size, np.float32(1e-30))
    wanted = _RATE * (near[0] * unit[0] + near[1] * unit[1])
    half = half + 2 * np.pi * np.round((wanted - half) / (2 * np.pi))
    length = half / _SINGLE
    return np.asarray(length * unit[0]), np.asarray(length * unit[1])
