"""What is read off a Column: stresses, depths, energy, and what is left after grinding."""

from dataclasses import dataclass

import numpy as np

from demo_app.base.errors import InputError
from demo_app.physics.column.advance import ColumnState, balance
from demo_app.physics.column.wall import Wall, trapezoid
from demo_app.physics.materials import Array


@dataclass(frozen=True)
class Ground:
    """What is left of a wall after grinding, in balance again.

    Parameters
    ----------
    z : numpy.ndarray
        Shape (m,): places through what is left, m, counted as in the whole wall.
    stress : numpy.ndarray
        Shape (m,): in-plane stress, Pa.
    strain, curvature : float
        Strain at ``z = 0`` and curvature (1/m) that the release has added.
    """

    z: Array
    stress: Array
    strain: float
    curvature: float


def centre_stress(wall: Wall, state: ColumnState) -> float:
    """In-plane stress in the middle of the wall, Pa."""
    return float(np.interp(0.0, wall.point_z, state.stress))


def neutral_depth(wall: Wall, state: ColumnState) -> float | None:
    """Depth below the left face of the first place without stress, m; None if there is none."""
    z, stress = wall.point_z, state.stress
    crossings = np.flatnonzero(stress[:-1] * stress[1:] < 0)
    if crossings.size == 0:
        return None
    k = int(crossings[0])
    share = stress[k] / (stress[k] - stress[k + 1])
    return float(z[k] + share * (z[k + 1] - z[k]) - z[0])


def net_force(wall: Wall, state: ColumnState) -> float:
    """Integral of the stress over the wall, N/m."""
    return float(wall.weights @ state.stress)


def net_moment(wall: Wall, state: ColumnState) -> float:
    """Integral of stress times place over the wall, N."""
    return float(wall.weights * wall.point_z @ state.stress)


def grind(
    wall: Wall, state: ColumnState, left: float, right: float, *, bends: bool = True
) -> Ground:
    """Grind away `left` and `right` metres; the rest springs back elastically.

    Parameters
    ----------
    wall, state : Wall, ColumnState
        The cold wall.
    left, right : float
        Depth ground from each face, m.
    bends : bool
        Whether what is left may bend.

    Raises
    ------
    InputError
        If a depth is negative or nothing would be left.
    """
    if left < 0 or right < 0 or left + right >= wall.thickness:
        raise InputError(
            f"grinding {1e3 * left:g} and {1e3 * right:g} mm leaves nothing",
            place="grinding",
            remedy=f"write depths that sum to less than {1e3 * wall.thickness:g} mm",
        )
    z, low, high = wall.point_z, wall.z[0] + left, wall.z[-1] - right
    inner = (z > low) & (z < high)
    kept = np.concatenate(([low], z[inner], [high]))
    locked = np.concatenate(
        ([np.interp(low, z, state.stress)], state.stress[inner], [np.interp(high, z, state.stress)])
    )
    stiffness = np.interp(kept, z, _stiffness(wall))
    stiffness[1:-1] = _stiffness(wall)[inner]
    strain, curvature = balance(trapezoid(kept), kept, locked, stiffness, bends)
    return Ground(kept, locked + stiffness * (strain + curvature * kept), strain, curvature)


def _stiffness(wall: Wall) -> Array:
    """Equibiaxial stress for each in-plane strain of the solid, E/(1 - nu), shape (p,), Pa."""
    parts = [
        np.full(section.stop - section.start,
                layer.material.youngs_modulus / (1 - layer.material.poisson_ratio))
        for layer, section in zip(wall.layers, wall.sections, strict=True)
    ]  # fmt: skip
    return np.concatenate(parts)
