"""Fringes finer than the pixels: they fade to their mean instead of making false patterns."""

from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import RetardationMap

Floats = NDArray[np.float32]

VISIBLE = 0.98
"""Contrast above which fading is left out."""


def contrast(m: RetardationMap, px_per_mm: float, fringe_nm: float) -> Floats | None:
    """Contrast that square pixels leave of the fringes at each map point.

    A pixel is the mean over its square, so a fringe pattern that advances by g nm a pixel keeps
    ``sinc(g / fringe)``; beyond one fringe a pixel it is taken as gone. The change of (v1, v2) is
    taken for g, so a quickly turning axis fades too.

    Parameters
    ----------
    m : RetardationMap
        The piece.
    px_per_mm : float
        Scale of the picture.
    fringe_nm : float
        Distance of two fringes, nm.

    Returns
    -------
    numpy.ndarray or None
        Shape (rows, cols), 0 to 1; None where all of it is above `VISIBLE`.
    """
    field = m.v1 + np.complex64(1j) * m.v2
    x_px = (m.along_mm * px_per_mm).astype(np.float32)
    half_px = np.maximum(m.half_width_mm * px_per_mm, 1e-3).astype(np.float32)
    along = _steps(np.abs(np.diff(field, axis=1)) / np.diff(x_px), 1)
    across = _steps(np.abs(np.diff(field, axis=0)) / np.diff(m.across)[:, None], 0) / half_px
    if max(along.max(), across.max()) < _faintest(fringe_nm):
        return None
    kept = np.sinc(np.minimum(along / fringe_nm, 1)) * np.sinc(np.minimum(across / fringe_nm, 1))
    return np.asarray(kept, np.float32)


def _steps(gradient: NDArray[np.floating[Any]], axis: int) -> Floats:
    """Gradient at the points from that between them: the larger of both sides."""
    pad = [(0, 0), (0, 0)]
    pad[axis] = (1, 1)
    wide = np.pad(gradient, pad)
    if axis == 0:
        return np.maximum(wide[1:], wide[:-1]).astype(np.float32)
    return np.maximum(wide[:, 1:], wide[:, :-1]).astype(np.float32)


def _faintest(fringe_nm: float) -> float:
    """Gradient (nm a pixel) that leaves `VISIBLE`: sinc(x) is near 1 - (pi x)^2 / 6."""
    return float(fringe_nm * np.sqrt(6 * (1 - VISIBLE)) / np.pi)
