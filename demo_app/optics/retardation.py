"""The retardation map: all that light knows of stress."""

from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True)
class RetardationMap:
    """Retardation along parallel lines of sight through one piece, in picture coordinates.

    Picture coordinates: x to the right (``along``), y upward (``across``), in millimetres.
    ``v1 = C * integral(sigma_xx - sigma_yy)`` and ``v2 = C * integral(2 * sigma_xy)``, both in
    nanometres, so the retardation is ``hypot(v1, v2)`` and the axis, counted from x,
    ``atan2(v2, v1) / 2``.

    Parameters
    ----------
    v1, v2 : numpy.ndarray
        Shape (rows, cols), float32, nm.
    across : numpy.ndarray
        Shape (rows,), increasing. Fraction of `half_width_mm`: from 0 to 1 if `mirrored`,
        else from -1 to 1.
    along_mm : numpy.ndarray
        Shape (cols,), increasing, mm.
    half_width_mm : numpy.ndarray
        Shape (cols,), mm: half the height of the outline at each column.
    mirrored : bool
        If true the piece is its own mirror image about y = 0; below it v1 is the same and v2
        changes sign, and only the upper half is stored.
    """

    v1: NDArray[np.float32]
    v2: NDArray[np.float32]
    across: NDArray[np.float64]
    along_mm: NDArray[np.float64]
    half_width_mm: NDArray[np.float64]
    mirrored: bool

    def retardation_nm(self) -> NDArray[np.float32]:
        """Retardation at the stored points, shape (rows, cols), nm."""
        return np.hypot(self.v1, self.v2)


@dataclass(frozen=True)
class Placed:
    """A piece on the stage: its map moved by (x_mm, y_mm).

    Parameters
    ----------
    map : RetardationMap
        Its light.
    x_mm, y_mm : float
        Where the map's origin lies on the stage, mm.
    rim : tuple of numpy.ndarray or None
        Places x and y, shape (points,), mm, of its closed outline in the map's coordinates; None
        where `map.half_width_mm` is its outline.
    """

    map: RetardationMap
    x_mm: float = 0.0
    y_mm: float = 0.0
    rim: tuple[NDArray[np.float64], NDArray[np.float64]] | None = None


@dataclass(frozen=True)
class Stage:
    """What lies between the polarizers: pieces in a field of view centred on (0, 0).

    Parameters
    ----------
    pieces : tuple of Placed
        Pieces do not overlap; where they do the later one hides the earlier one.
    width_mm : float
        Width of the field of view; its height follows from the picture's shape.
    height_mm : float
        Height that must stay visible; the field is widened if the picture is too flat.
    centre_mm : tuple of float
        Point (x, y) of the stage in the middle of the picture.
    """

    pieces: tuple[Placed, ...]
    width_mm: float
    height_mm: float
    centre_mm: tuple[float, float] = (0.0, 0.0)


def blend(first: Stage, second: Stage, share: float) -> Stage:
    """Stage between two steps of one run, linear in the maps.

    Parameters
    ----------
    first, second : Stage
        Two stages; where their pieces differ in number or shape, `first` is returned.
    share : float
        From 0 (first) to 1 (second).
    """
    if len(first.pieces) != len(second.pieces):
        return first
    pieces: list[Placed] = []
    for a, b in zip(first.pieces, second.pieces, strict=True):
        if a.map.v1.shape != b.map.v1.shape:
            return first
        part = np.float32(share)
        changes: dict[str, Any] = {
            "v1": a.map.v1 + part * (b.map.v1 - a.map.v1),
            "v2": a.map.v2 + part * (b.map.v2 - a.map.v2),
        }
        pieces.append(replace(b, map=replace(b.map, **changes)))
    return Stage(tuple(pieces), second.width_mm, second.height_mm, second.centre_mm)
