"""A blow in the middle of a plate that rests on its edges: force, stress and energy.

A soft, blunt blow takes longer than the plate's own swing, so that the plate bends as under a
resting load and holds the blow's energy in its bending. A hard, sharp blow bruises the glass first
and needs less.
"""

import functools
from dataclasses import dataclass

import numpy as np

from demo_app.physics.materials import Array, Material
from demo_app.physics.plates import Load

PATCH = 20e-3
"""Side of the square that the blow meets, m: a rubber hammer (common practice)."""
_TERMS = 41
_GRID = 48


@dataclass(frozen=True)
class Blow:
    """What a blow does to a plate.

    Parameters
    ----------
    load : Load
        Larger principal stress (Pa for each N) on the face away from the blow.
    give : float
        Deflection under the blow, m/N.
    """

    load: Load
    give: float

    def energy(self, force: float) -> float:
        """Energy that bends the plate under `force` (N), J."""
        return 0.5 * self.give * force**2

    def force(self, energy: float) -> float:
        """Force of a blow of `energy` (J), N."""
        return float(np.sqrt(2 * energy / self.give))


@functools.lru_cache(maxsize=8)
def blow(
    material: Material, width: float, height: float, thickness: float, patch: float = PATCH
) -> Blow:
    """Blow in the middle of a plate whose four edges rest on a frame.

    Navier's double series for a simply supported plate with a patch load (Timoshenko and
    Woinowsky-Krieger 1959, section 28).

    Parameters
    ----------
    material : Material
        What the plate is made of.
    width, height, thickness : float
        Of the plate, m.
    patch : float
        Side of the square that the blow meets, m.
    """
    poisson = material.poisson_ratio
    stiffness = material.youngs_modulus * thickness**3 / (12 * (1 - poisson**2))
    odd = np.arange(1, 2 * _TERMS, 2)
    m, n = np.meshgrid(odd, odd, indexing="ij")
    sign = (-1.0) ** ((m + n) // 2 - 1)
    spread = np.sinc(m * patch / (2 * width)) * np.sinc(n * patch / (2 * height))
    push = 4 / (width * height) * sign * spread
    wave_x, wave_y = m * np.pi / width, n * np.pi / height
    bend = push / (stiffness * (wave_x**2 + wave_y**2) ** 2)
    give = float(np.sum(bend * sign * spread))

    x, y = (np.arange(_GRID) + 0.5) / _GRID * width, (np.arange(_GRID) + 0.5) / _GRID * height
    sines, cosines = [], []
    for place, side in ((x, width), (y, height)):
        angle = np.outer(place, odd) * np.pi / side
        sines.append(np.sin(angle))
        cosines.append(np.cos(angle))

    def field(amplitude: Array, waves: list[Array]) -> Array:
        return np.asarray(waves[0] @ amplitude @ waves[1].T)

    curve_x, curve_y = field(bend * wave_x**2, sines), field(bend * wave_y**2, sines)
    twist = -field(bend * wave_x * wave_y, cosines)
    scale = 6 * stiffness / thickness**2
    xx, yy = scale * (curve_x + poisson * curve_y), scale * (curve_y + poisson * curve_x)
    xy = scale * (1 - poisson) * twist
    larger = (xx + yy) / 2 + np.hypot((xx - yy) / 2, xy)
    area = np.full(larger.size, width * height / larger.size)
    return Blow(Load(np.asarray(larger.ravel()), area), give)
