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
    # A ray whose slices all have one axis, or that retards next to nothing, needs no product.
    size = np.hypot(v1, v2).sum(axis=2)
    turned = size - np.hypot(v1.sum(axis=2), v2.sum(axis=2))
    level, ray = np.nonzero((size > ALLOWED_NM) & (turned > 0.02))
    if level.size == 0:
        return summed
    front = v1[level, ray].T[::-1], v2[level, ray].T[::-1]
    plain = 2 * front[0].sum(axis=0), 2 * front[1].sum(axis=0)
    exact = _palindrome(*front, near=plain)
    errs = np.hypot(exact[0] - plain[0], exact[1] - plain[1]) > ALLOWED_NM
    found = [summed.v1.copy(), summed.v2.copy()]
    for into, value in zip(found, exact, strict=True):
        into[ray[errs], level[errs]] = value[errs]
    return replace(summed, v1=found[0], v2=found[1])


def _palindrome(v1: Floats, v2: Floats, near: tuple[Floats, Floats]) -> tuple[Array, Array]:
    """One retarder that acts as the slices (slices, n) and then the same in reverse order, nm.

    Any number of whole wavelengths more acts the same at this one: of all, the `near`est counts.
    """
    # Quaternions: the product of retarders w + (x, y, z), each with no part along z.
    w, x = np.ones(v1.shape[1]), np.zeros(v1.shape[1])
    y, z = np.zeros_like(x), np.zeros_like(x)
    rate = np.pi / GREEN_NM
    for p, q in zip(v1, v2, strict=True):
        half = rate * np.hypot(p, q)
        scale = rate * np.sinc(half / np.pi)
        c, a, b = np.cos(half), scale * p, scale * q
        w, x, y, z = (
            c * w - a * x - b * y,
            c * x + a * w + b * z,
            c * y + b * w - a * z,
            c * z + a * y - b * x,
        )
    # Back through the same slices: times the mirror image, in which z changes its sign.
    whole = w * w - x * x - y * y + z * z
    along, slant = 2 * (w * x + y * z), 2 * (w * y - x * z)
    size = np.hypot(along, slant)
    half = np.arctan2(size, whole)
    unit = along / np.maximum(size, 1e-300), slant / np.maximum(size, 1e-300)
    wanted = rate * (near[0] * unit[0] + near[1] * unit[1])
    half = half + 2 * np.pi * np.round((wanted - half) / (2 * np.pi))
    return half / rate * unit[0], half / rate * unit[1]
