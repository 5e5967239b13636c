"""A rectangular plate seen face-on: membrane stress on a grid of nodes to a retardation map."""

import functools

import numpy as np
from scipy.interpolate import make_interp_spline

from demo_app.optics.retardation import RetardationMap
from demo_app.physics.materials import Array


def face_on(
    x: Array,
    y: Array,
    stress: Array,
    thickness: float,
    stress_optic: float,
    finer: int = 3,
) -> RetardationMap:
    """Retardation of a plate seen face-on.

    The plate's mean stress through the thickness counts: ``v1 = C h (mean xx - mean yy)`` and
    ``v2 = 2 C h mean xy``. Exact while the axes keep their direction through the thickness, as
    they do where the layers differ in amount alone, and for small retardations in any case.

    Parameters
    ----------
    x, y : numpy.ndarray
        Shapes (columns,) and (rows,), m: evenly spaced or not, increasing.
    stress : numpy.ndarray
        Shape (3, columns, rows), Pa: mean of xx, yy and xy through the thickness.
    thickness : float
        m.
    stress_optic : float
        1/Pa.
    finer : int
        Points of the map for each step of the grid; between the nodes runs a cubic spline.

    Returns
    -------
    RetardationMap
        Of the plate in its own place, x and y in mm about the middle of its height.
    """
    to_x, along = _spline(tuple(x.tolist()), finer)
    to_y, up = _spline(tuple(y.tolist()), finer)
    scale = 1e9 * stress_optic * thickness
    v1 = to_y @ ((scale * (stress[0] - stress[1])).T.astype(np.float32)) @ to_x.T
    v2 = to_y @ ((2 * scale * stress[2]).T.astype(np.float32)) @ to_x.T
    middle, half = (y[-1] + y[0]) / 2, (y[-1] - y[0]) / 2
    return RetardationMap(
        v1,
        v2,
        (up - middle) / half,
        1e3 * along,
        np.full(along.size, 1e3 * half),
        mirrored=False,
    )


@functools.lru_cache(maxsize=16)
def _spline(nodes: tuple[float, ...], finer: int) -> tuple[Array, Array]:
    """Matrix of a cubic spline through `nodes` and the places it is taken at."""
    at = np.asarray(nodes)
    fine = np.interp(np.arange((at.size - 1) * finer + 1) / finer, np.arange(at.size), at)
    fine[-1] = at[-1]
    degree = min(3, at.size - 1)
    spline = make_interp_spline(at, np.eye(at.size), k=degree)
    return spline(fine).astype(np.float32), fine


def unfold(
    x: Array, y: Array, stress: Array, *, mirrored_x: bool, mirrored_y: bool
) -> tuple[Array, Array, Array]:
    """The whole plate from its half or quarter.

    Parameters
    ----------
    x, y, stress : numpy.ndarray
        As in `face_on`, from 0 on along a mirrored direction.
    mirrored_x, mirrored_y : bool
        Whether ``x = 0`` and ``y = 0`` are mirror lines. The shear stress changes its sign
        across each.
    """
    odd = np.array([1.0, 1.0, -1.0])[:, None, None]
    if mirrored_x:
        x = np.concatenate([-x[:0:-1], x])
        stress = np.concatenate([odd * stress[:, :0:-1], stress], axis=1)
    if mirrored_y:
        y = np.concatenate([-y[:0:-1], y])
        stress = np.concatenate([odd * stress[:, :, :0:-1], stress], axis=2)
    return x, y, stress
