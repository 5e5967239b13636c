"""What the faces and the rim of a plate meet, place by place."""

from dataclasses import dataclass

import numpy as np

from demo_app.physics.heat import STEFAN_BOLTZMANN
from demo_app.physics.materials import Array
from demo_app.physics.plan.mesh import PlanMesh


@dataclass(frozen=True)
class Air:
    """Surroundings of both faces alike.

    Parameters
    ----------
    coolant : float
        Temperature of the air and of the surroundings, K.
    coefficient : numpy.ndarray
        Shape (nodes,), W/(m2 K), on each face. A coefficient that a setting names is the whole of
        it, radiation included; then the emissivity stays zero.
    emissivity : float
        Of the faces, for grey radiation on top of the coefficient.
    rim : float
        Coefficient along the rim, W/(m2 K).
    """

    coolant: float
    coefficient: Array
    emissivity: float = 0.0
    rim: float = 0.0

    def heat(self, temperature: Array) -> Array:
        """Heat into each face, W/m2, at its `temperature` (nodes,), K."""
        radiated = self.emissivity * STEFAN_BOLTZMANN * (self.coolant**4 - temperature**4)
        return np.asarray(self.coefficient * (self.coolant - temperature) + radiated)

    def slope(self, temperature: Array) -> Array:
        """Fall of `heat` with temperature, W/(m2 K)."""
        return self.coefficient + 4 * self.emissivity * STEFAN_BOLTZMANN * temperature**3


def jets(mesh: PlanMesh, mean: float, uneven: float, pitch: float) -> Array:
    """Coefficient under a square lattice of jets, one of them over the origin, shape (nodes,).

    Parameters
    ----------
    mesh : PlanMesh
        The plate.
    mean : float
        Over a cell of the lattice, W/(m2 K).
    uneven : float
        Share by which it is larger right under a jet, and smaller between four of them.
    pitch : float
        Distance of neighbouring jets, m.
    """
    wave = 2 * np.pi / pitch
    lattice = (np.cos(wave * mesh.x) + np.cos(wave * mesh.y)) / 2
    return np.asarray(mean * (1 + uneven * lattice)).ravel()
