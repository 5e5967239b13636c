"""The heat of a warm tip that is held against a plate, or drawn over it."""

import math

import numpy as np

from demo_app.physics.heat import ROOM
from demo_app.physics.materials import Array
from demo_app.physics.plan.mesh import PlanMesh

TIP = 423.15
"""Temperature of the hottest tip, K: 150 degrees Celsius (assumed: a hand-held heated tip). A tip
cannot make glass hotter than itself."""
NEAR_TIP = 20.0
"""Within this many kelvin of the tip's temperature the heat falls off to nothing (assumed)."""
Place = tuple[float, float]


def spot_flux(mesh: PlanMesh, power: float, diameter: float, start: Place, end: Place) -> Array:
    """Mean flux at the nodes while a warm tip goes straight from `start` to `end`, W/m2.

    A Gaussian, in which 63 % of the heat falls within `diameter`.

    Parameters
    ----------
    mesh : PlanMesh
        A rectangular plate.
    power : float
        Of the tip, both faces together, W.
    diameter : float
        m; there the flux is 1/e of that in the middle.
    start, end : tuple of float
        x, y, m.
    """
    radius = diameter / 2
    way = math.hypot(end[0] - start[0], end[1] - start[1])
    count = 1 + math.ceil(way / (0.5 * radius))
    shares = (np.arange(count) + 0.5) / count
    x = start[0] + shares * (end[0] - start[0])
    y = start[1] + shares * (end[1] - start[1])
    along = np.exp(-(((mesh.x[:, :1] - x) / radius) ** 2))
    across = np.exp(-(((mesh.y[0][:, None] - y) / radius) ** 2))
    peak = power / (math.pi * radius**2)
    return np.asarray(peak / count * (along @ across.T)).ravel()


def tip_share(rise: Array) -> Array:
    """Share of the heat that still flows into glass with this `rise` above the room, K."""
    return np.clip((TIP - ROOM - rise) / NEAR_TIP, 0.0, 1.0)
