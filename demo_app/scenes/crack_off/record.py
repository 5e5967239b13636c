"""The scene `ring`: what a presenter may change, and one instant of it."""

import functools
from dataclasses import dataclass

from demo_app.optics.retardation import Stage
from demo_app.physics.material_files import glasses, material
from demo_app.physics.revolve import crackoff
from demo_app.physics.revolve.cracking import WallStress, at_place
from demo_app.physics.revolve.profile import bottle
from demo_app.physics.revolve.surroundings import Firing
from demo_app.physics.revolve.verdict import Bottle, bottle_of
from demo_app.scenes.settings import choice, flag, number

HEIGHT_MM = 220.0
"""From the base to the mouth of the bottle."""


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What it is made of.", live=False)
    outer_diameter_mm: float = number(
        "Diameter", "mm", 70, 40, 120, help="Outer diameter of the bottle's body.", live=False
    )
    wall_mm: float = number(
        "Wall", "mm", 3, 1.5, 6, step=0.1, help="Thickness of the wall.", live=False
    )
    ring_at_mm: float = number(
        "Ring at", "mm", 80, 25, 205, help="Height of the ring above the base.", live=False
    )
    ring_width_mm: float = number(
        "Ring width", "mm", 8, 4, 30, step=0.5, help="Width of the flame at half its heat."
    )
    flame_kW_m2: float = number(
        "Flame", "kW/m²", 80, 0, 400, step=5, help="Heat into the ring, averaged over the turn."
    )
    heat_s: float = number("Flame for", "s", 10, 0, 120, step=0.5, help="When the flame goes out.")
    score_depth_um: float = number(
        "Score", "µm", 100, 0, 500, step=10, help="Depth of the scored line; 0: none.", live=False
    )
    score_offset_mm: float = number(
        "Score off by", "mm", 0, -8, 8, step=0.5, help="From the middle of the ring.", live=False
    )
    drop: bool = flag("Drop of water", True, help="Whether a drop lands on the ring.")
    drop_at_s: float = number("Drop at", "s", 11, 0, 180, step=0.5, help="When the drop lands.")
    drop_offset_mm: float = number(
        "Drop off by", "mm", 0, -8, 8, step=0.5, help="From the middle of the ring."
    )


@dataclass(frozen=True)
class State:
    """One instant: the crack-off, what is seen of it, and what was read before it broke."""

    moment: crackoff.Moment
    stage: Stage
    wall: WallStress
    peak_nm: float
    unbroken: dict[str, float]

    @property
    def time_s(self) -> float:
        """Model time, s."""
        return self.moment.time_s

    @property
    def step(self) -> int:
        """Number of steps."""
        return self.moment.step


@functools.lru_cache(maxsize=4)
def _ready(
    glass: str, diameter: float, wall: float, ring: float, off: float, deep: float
) -> Bottle:
    profile = bottle(1e-3 * diameter, 1e-3 * wall, height=1e-3 * HEIGHT_MM)
    return bottle_of(material(glass), profile, 1e-3 * ring, 1e-3 * off, 1e-6 * deep)


def bottle_for(settings: Settings) -> Bottle:
    """Bottle of these settings, made once."""
    return _ready(
        settings.glass,
        settings.outer_diameter_mm,
        settings.wall_mm,
        settings.ring_at_mm,
        settings.score_offset_mm,
        settings.score_depth_um,
    )


def firing_for(settings: Settings) -> Firing:
    """What these settings do to it, in SI units."""
    return Firing(
        1e3 * settings.flame_kW_m2,
        1e-3 * settings.ring_width_mm,
        settings.heat_s,
        settings.drop_at_s if settings.drop else None,
        1e-3 * settings.drop_offset_mm,
    )


def stresses_MPa(ready: Bottle, moment: crackoff.Moment, wall: WallStress) -> dict[str, float]:
    """Swelling (µm) and stress (MPa) in the middle of the ring, by the readings' names."""
    piece, glass = crackoff.shown(ready, moment)
    mesh = piece.mesh
    along, hoop = (1e-6 * at_place(mesh, field, ready.ring) for field in (wall.along, wall.hoop))
    outwards = glass.displacement[::2].reshape(mesh.r.shape)[:, 0]
    return {
        "swell_um": float(1e6 * at_place(mesh, outwards, ready.ring)),
        "axial_outside_MPa": float(along[0]),
        "axial_inside_MPa": float(along[-1]),
        "hoop_MPa": float(hoop[0]),
    }
