"""How far a crack gapes: opening along its depth, by the weight function that also gives its K."""

import math
from collections.abc import Callable

import numpy as np

from demo_app.physics.materials import Array
from demo_app.physics.strength import edge_crack_points, edge_crack_shape

Stress = Callable[[Array], Array]
"""Stress (Pa) at depths (m) below the surface, across the crack, as if there were no crack."""

_POINTS = 24
_KNOWN = 21
_TERMS = 12


def edge_intensity(stress: Stress, depth: float, wall: float) -> float:
    """K of a crack from the surface, Pa sqrt(m); below zero the crack is pressed shut."""
    places, weights = edge_crack_points(depth, wall)
    return float(weights @ stress(places))


def edge_opening(
    stress: Stress, depth: float, wall: float, modulus: float, count: int = 13
) -> tuple[Array, Array]:
    """Opening of a crack from the surface, plane stress.

    ``opening(x) = 2 / E * integral from x to depth of K(a) m(x, a) da`` (Rice 1972, Int. J. Solids
    Struct. 8, 751), with the weight function m of `demo_app.physics.strength`. The faces cannot
    pass through each other: where the sum is negative the crack is shut.

    Parameters
    ----------
    stress : callable
        Stress across the crack at depths below the surface.
    depth, wall : float
        Of the crack and of the piece, m; the crack at most half the wall.
    modulus : float
        Young's modulus, Pa.
    count : int
        Places from the mouth to the tip.

    Returns
    -------
    tuple of numpy.ndarray
        Depths and openings, shape (count,), m.
    """
    places = depth * np.linspace(0, 1, count)
    known = depth * np.linspace(0, 1, _KNOWN)[1:]
    # K over the root of the depth runs smoothly from the mouth on.
    smooth = np.array([edge_intensity(stress, float(a), wall) for a in known]) / np.sqrt(known)
    gauss, weights = np.polynomial.legendre.leggauss(_POINTS)
    opening = np.zeros(count)
    for k, x in enumerate(places[:-1]):
        # With a = x + s**2 the weight function's root at a = x is gone.
        root = math.sqrt(depth - x)
        s = root * (gauss + 1) / 2
        at = x + s**2
        ks = np.interp(at, known, smooth) * np.sqrt(at)
        opening[k] = float(root / 2 * weights @ (ks * _weight_times_root(x, at, wall) * 2))
    return places, np.maximum(0.0, 2 / modulus * opening)


def _weight_times_root(x: float, depth: Array, wall: float) -> Array:
    """Weight function at `x` of cracks of `depth`, times sqrt(depth - x)."""
    return 2 / math.sqrt(2 * math.pi) * edge_crack_shape(1 - x / depth, depth / wall)


def inner_opening(
    stress: float, half_length: float, modulus: float, count: int = 13
) -> tuple[Array, Array]:
    """Opening of a short crack inside a sheet under an even `stress` (Pa): half an ellipse.

    ``4 stress / E * sqrt(a**2 - x**2)`` (Griffith 1921, Phil. Trans. A 221, 163); none if squeezed.

    Returns
    -------
    tuple of numpy.ndarray
        Places along the crack from -a to a and openings, shape (count,), m.
    """
    places = half_length * np.linspace(-1, 1, count)
    ellipse = np.sqrt(np.maximum(0.0, half_length**2 - places**2))
    return places, np.maximum(0.0, 4 * stress / modulus * ellipse)


def buried_crack(
    stress: Stress, top: float, tip: float, modulus: float, count: int = 13
) -> tuple[float, float, Array, Array]:
    """A crack of which only the part between depths `top` and `tip` (m) is open.

    The surface is taken as far away. With the stress written in Chebyshev polynomials of the second
    kind, ``sum b_n U_n``, the opening is ``4 c / E sqrt(1 - s**2) sum b_n U_n / (n + 1)`` over the
    half length c, and K at its ends ``sqrt(pi c) sum (+-1)**n b_n`` (Kaya and Erdogan 1987, Q.
    Appl. Math. 45, 105, from memory).

    Returns
    -------
    tuple
        K at the top and at the tip (Pa sqrt(m)), depths and openings (m), shape (count,).
    """
    half, middle = (tip - top) / 2, (tip + top) / 2
    theta = np.pi * np.arange(1, _POINTS + 1) / (_POINTS + 1)
    values = stress(middle + half * np.cos(theta))
    n = np.arange(_TERMS)
    share = 2 / (_POINTS + 1) * (np.sin(np.outer(n + 1, theta)) @ (np.sin(theta) * values))
    ends = [math.sqrt(math.pi * half) * float(sign**n @ share) for sign in (-1.0, 1.0)]
    at = np.linspace(-1, 1, count)
    # sqrt(1 - s**2) U_n(s) is sin((n + 1) angle).
    waves = np.sin(np.outer(n + 1, np.arccos(at)))
    opening = 4 * half / modulus * ((share / (n + 1)) @ waves)
    return ends[0], ends[1], middle + half * at, np.maximum(0.0, opening)


def surface_crack(
    stress: Stress, depth: float, wall: float, modulus: float
) -> tuple[float, Array, Array]:
    """A crack from the surface whose faces cannot pass through each other.

    Where the skin is squeezed its mouth stays shut; if it reaches a pull further in, it opens there
    alone, from where it closes smoothly (K zero) to its tip.

    Returns
    -------
    tuple
        K at the tip (Pa sqrt(m)), below zero if it is shut all along; depths and openings (m).
    """
    intensity = edge_intensity(stress, depth, wall)
    places, opening = edge_opening(stress, depth, wall, modulus)
    if float(stress(np.array([0.0]))[0]) >= 0 or opening[0] > 0:
        return intensity, places, opening
    along = np.linspace(0, depth, 2 * _KNOWN)
    pulled = np.flatnonzero(stress(along) > 0)
    if pulled.size == 0 or along[pulled[0]] >= depth:
        return min(intensity, 0.0), places, np.zeros_like(places)
    low, high = 0.0, float(along[pulled[0]])
    if buried_crack(stress, low, depth, modulus)[0] < 0:
        for _ in range(40):
            between = (low + high) / 2
            shut = buried_crack(stress, between, depth, modulus)[0] < 0
            low, high = (between, high) if shut else (low, between)
    _, tip, places, opening = buried_crack(stress, high, depth, modulus)
    places = np.concatenate(([0.0], places))
    return tip, places, np.concatenate(([0.0], opening))
