"""A sample that lies on the light table, and the range of retardation in it."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import Placed, RetardationMap
from demo_app.scenes.scene import Outline

Array = NDArray[np.float64]

LOW, HIGH = 0.05, 0.95
"""Shares of a sample's area that have less than its range, and less than its upper end."""


@dataclass(frozen=True)
class Spread:
    """Retardation over a sample's area, nm: percentiles 5, 50 and 95."""

    low: float
    median: float
    high: float


@dataclass(frozen=True)
class Sample:
    """What lies in one place of the table.

    Parameters
    ----------
    id : str
        As in the setting `samples`.
    look : str
        How the light goes through it, and of which instant it is, in words.
    pieces : tuple of Placed
        About (0, 0).
    outlines : tuple of Outline
        Lines on them.
    size_mm : tuple of float
        Width and height.
    spread : Spread
        Of its retardation.
    stress_optic : float
        Of its material, 1/Pa.
    path_mm : float or None
        Way of the light through it, mm; None where it differs from place to place.
    stretched : bool
        Whether drawn-out molecules, not stress, make most of its light.
    """

    id: str
    look: str
    pieces: tuple[Placed, ...]
    outlines: tuple[Outline, ...]
    size_mm: tuple[float, float]
    spread: Spread
    stress_optic: float
    path_mm: float | None = None
    stretched: bool = False

    def stress_MPa(self, retardation_nm: float) -> float | None:
        """Difference of the principal stresses, mean along the ray; None where it is not known.

        ``sigma1 - sigma2 = retardation / (C t)`` (ASTM C770, F218).
        """
        if self.path_mm is None or self.stretched:
            return None
        return 1e-12 * retardation_nm / (self.stress_optic * self.path_mm)


def laid(
    name: str,
    look: str,
    pieces: Iterable[Placed],
    outlines: Iterable[Outline],
    stress_optic: float,
    path_mm: float | None,
    *,
    stretched: bool = False,
) -> Sample:
    """Sample of pieces that lie anywhere: its middle is brought to (0, 0)."""
    placed = tuple(pieces)
    left, right, low, high = _frame(placed)
    x, y = (left + right) / 2, (low + high) / 2
    return Sample(
        name,
        look,
        tuple(replace(one, x_mm=one.x_mm - x, y_mm=one.y_mm - y) for one in placed),
        tuple(moved(line, -x, -y) for line in outlines),
        (right - left, high - low),
        spread([one.map for one in placed]),
        stress_optic,
        path_mm,
        stretched,
    )


def moved(line: Outline, x_mm: float, y_mm: float) -> Outline:
    """An outline moved by (x_mm, y_mm)."""
    return replace(line, x_mm=line.x_mm + x_mm, y_mm=line.y_mm + y_mm)


def spread(maps: Iterable[RetardationMap]) -> Spread:
    """Percentiles over the area of some maps.

    Where light meets no glass, beside an upright outline, the map is exactly zero; that is left
    out, unless all of it is.
    """
    values, areas = zip(*map(_values_and_areas, maps), strict=True)
    value, area = np.concatenate(values), np.concatenate(areas)
    if (value > 0).any():
        value, area = value[value > 0], area[value > 0]
    order = np.argsort(value, kind="stable")
    value, reached = value[order], np.cumsum(area[order])
    middle = (reached - area[order] / 2) / reached[-1]
    return Spread(*(float(np.interp(share, middle, value)) for share in (LOW, 0.5, HIGH)))


def _values_and_areas(m: RetardationMap) -> tuple[Array, Array]:
    """Retardation at the map's points (nm), and the area that each stands for."""
    area = np.gradient(m.across)[:, None] * (np.gradient(m.along_mm) * m.half_width_mm)
    return m.retardation_nm().astype(np.float64).ravel(), area.ravel()


def _frame(pieces: tuple[Placed, ...]) -> tuple[float, float, float, float]:
    """Left, right, lower and upper end of some pieces, mm."""
    return (
        min(one.x_mm + float(one.map.along_mm[0]) for one in pieces),
        max(one.x_mm + float(one.map.along_mm[-1]) for one in pieces),
        min(one.y_mm - float(one.map.half_width_mm.max()) for one in pieces),
        max(one.y_mm + float(one.map.half_width_mm.max()) for one in pieces),
    )
