"""When a flaw becomes a crack: stress intensity by weight functions, and flaw populations."""

import functools
import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

HALF_PENNY = 2 / math.pi
"""Stress intensity of a half-penny flaw over that of a long edge crack of the same depth: the
embedded penny's shape factor (Sneddon 1946), so that Y = 1.12 * 2 / pi = 0.713."""
DEEPEST = 0.5
"""Crack depth over wall up to which `edge_crack_points` holds."""
TEST_AREA = 0.24
"""Area under tension in the ring-on-ring test of EN 1288-2, m2 (from memory)."""
FRACTILE = 0.05
"""Share of specimens below the characteristic strength of EN 572-1."""


def edge_crack_points(depth: float, wall: float, count: int = 24) -> tuple[Array, Array]:
    """Depths and weights whose sum over the stress there is a long edge crack's K.

    Weight function of Bueckner 1970 (Z. angew. Math. Mech. 50, 529) for a strip cracked on one
    side, valid to half the wall; its square-root end is removed by ``x = depth * (1 - v**2)``.

    Parameters
    ----------
    depth, wall : float
        Crack depth and wall, m.
    count : int
        Number of Gauss points.

    Returns
    -------
    tuple of numpy.ndarray
        Depths below the surface (m) and weights (sqrt(m)), shape (count,).

    Raises
    ------
    ValueError
        If the crack is deeper than half the wall.
    """
    share = depth / wall
    if not 0 < share <= DEEPEST + 1e-9:
        raise ValueError(f"crack depth {share:g} of the wall is outside 0 to {DEEPEST}")
    gauss, weights = _gauss(count)
    v = (gauss + 1) / 2
    kernel = 4 * math.sqrt(depth / (2 * math.pi)) * edge_crack_shape(v**2, share)
    return depth * (1 - v**2), kernel * weights / 2


def edge_crack_shape(ahead: Array, share: Array | float) -> Array:
    """Weight function of a long edge crack, over ``2 / sqrt(2 pi (depth - x))`` (Bueckner 1970).

    Parameters
    ----------
    ahead : numpy.ndarray
        Distance from the crack's tip, over its depth: ``1 - x / depth``.
    share : numpy.ndarray or float
        Crack depth over wall, at most half.
    """
    m1 = 0.6147 + 17.1844 * share**2 + 8.7822 * share**6
    m2 = 0.2502 + 3.2899 * share**2 + 70.0444 * share**6
    return np.asarray(1 + m1 * ahead + m2 * ahead**2)


@functools.cache
def _gauss(count: int) -> tuple[Array, Array]:
    points, weights = np.polynomial.legendre.leggauss(count)
    return points, weights


def uniform_intensity(stress: float, depth: float, factor: float = 1.12) -> float:
    """``K = Y sigma sqrt(pi a)``, Pa sqrt(m): stress in Pa, depth in m, Y = `factor`."""
    return factor * stress * math.sqrt(math.pi * depth)


def critical_depth(toughness: float, stress: float, factor: float = 1.12) -> float:
    """Depth (m) at which a flaw under a uniform `stress` (Pa) reaches `toughness` (Pa sqrt(m))."""
    return (toughness / (factor * stress)) ** 2 / math.pi


@dataclass(frozen=True)
class Handled:
    """Strength of a surface that has been handled: a Weibull population of flaws.

    Parameters
    ----------
    modulus : float
        Weibull modulus.
    scale : float
        Strength scale for one square metre, Pa.
    """

    modulus: float
    scale: float

    def risk(self, tension: Array, area: Array) -> float:
        """Sum of ``(tension / scale)**modulus * area``; compression adds nothing.

        Parameters
        ----------
        tension : numpy.ndarray
            Largest principal stress at places on the surface, Pa.
        area : numpy.ndarray
            Area that each place stands for, m2.
        """
        return float(np.sum((np.maximum(tension, 0.0) / self.scale) ** self.modulus * area))

    def median_strength(self, area: float) -> float:
        """Uniform stress (Pa) at which half of all pieces with this stressed `area` (m2) break."""
        return float(self.scale * (math.log(2) / area) ** (1 / self.modulus))


def handled(characteristic: float, modulus: float) -> Handled:
    """Population whose 5 % fractile on the standard test area is `characteristic` (Pa)."""
    risk = -math.log(1 - FRACTILE)
    return Handled(modulus, characteristic * (TEST_AREA / risk) ** (1 / modulus))


def probability(risk: float) -> float:
    """Probability of a break for a Weibull `risk`."""
    return -math.expm1(-risk)


def deeper_than(depth: float, median: float, spread: float) -> float:
    """Probability that a log-normal flaw with `median` depth exceeds `depth` (same unit).

    Parameters
    ----------
    depth : float
        May be infinite: then the probability is zero.
    median : float
        Median depth.
    spread : float
        Standard deviation of the logarithm.
    """
    if depth <= 0:
        return 1.0
    if not math.isfinite(depth):
        return 0.0
    return 0.5 * math.erfc(math.log(depth / median) / (spread * math.sqrt(2)))
