"""Grinding one face of a toughened plate: it curls, and lets go once the wheel meets the pull.

The table holds the plate flat under the wheel; lifted off, it curls. Free to curl all the while,
as in acid, the ground face would stay squeezed.
"""

import numpy as np
from scipy.optimize import brentq

from demo_app.physics.column.advance import ColumnState
from demo_app.physics.column.readings import Ground, grind
from demo_app.physics.column.wall import Wall
from demo_app.physics.strength import edge_crack_points

WHEEL_FLAW = 100e-6
"""Depth of the cracks that a coarse wheel leaves under the ground face, m (common practice)."""
CREEPS_AT = 0.25e6
"""Stress intensity from which a crack in wet soda-lime glass grows while one waits, Pa sqrt(m)
(Wiederhorn and Bolz 1970, J. Am. Ceram. Soc. 53, threshold, from memory)."""


def ground_intensity(left: Ground) -> float:
    """Stress intensity of the wheel's cracks under the ground (left) face, Pa sqrt(m)."""
    wall = float(left.z[-1] - left.z[0])
    depth = min(WHEEL_FLAW, 0.45 * wall)
    places, weights = edge_crack_points(depth, wall)
    return float(weights @ np.interp(places, left.z - left.z[0], left.stress))


def lets_go_at(wall: Wall, state: ColumnState) -> float | None:
    """Depth ground off one face at which the plate breaks, m; None if the middle is reached first.

    The wheel's cracks creep as soon as the pull below the ground face opens them; then they have
    all the pull of the middle before them.
    """

    def beyond(depth: float) -> float:
        return ground_intensity(grind(wall, state, depth, 0.0, bends=False)) - CREEPS_AT

    middle = 0.5 * wall.thickness
    if beyond(middle) < 0:
        return None
    return 0.0 if beyond(0.0) >= 0 else float(brentq(beyond, 0.0, middle, xtol=1e-7))
