"""What a presenter may change, and what is made of it, worked out once."""

import functools
import math
from dataclasses import dataclass

from demo_app.base.errors import InputError
from demo_app.physics.filling import cast_glass, moulded, tray
from demo_app.physics.filling.cast_glass import Cast
from demo_app.physics.filling.melt import MELTS
from demo_app.physics.filling.moulded import Moulded
from demo_app.physics.filling.moulding import Shot
from demo_app.physics.filling.slab import frozen_skin
from demo_app.physics.filling.tray import Shape
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.scenes.settings import choice, number

SHUT = 0.8
"""Share of the half gap that may freeze while the mould is filled."""


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    plastic: str = choice(
        "Plastic", "polystyrene", tuple(MELTS), help="What it is moulded from.", live=False
    )
    thickness_mm: float = number(
        "Thickness", "mm", 2, 1, 4, step=0.1, help="Of the bottom.", live=False
    )
    rib_mm: float = number(
        "Rim and ribs", "mm", 2.6, 1, 6, step=0.1, help="Thickness of the rim and ribs.", live=False
    )
    gate: str = choice(
        "Gate",
        "corner",
        ("corner", "side", "middle"),
        help="Where the melt comes in: lower left corner, left side or middle.",
        live=False,
    )
    melt_C: float = number(
        "Melt", "°C", 190, 180, 260, step=5, help="Temperature of the melt.", live=False
    )
    mould_C: float = number(
        "Mould", "°C", 40, 20, 80, step=5, help="Temperature of the mould's walls.", live=False
    )
    fill_s: float = number(
        "Filled in", "s", 0.5, 0.2, 5, step=0.1, help="Time to fill the mould.", live=False
    )
    warm_C: float = number(
        "Warm the cold dish to",
        "°C",
        20,
        20,
        150,
        step=1,
        help="Once the dish is cold it is put into warm air of this temperature.",
    )
    warm_min: float = number(
        "Warm for", "min", 20, 1, 120, help="How long it lies in the warm air."
    )
    as_glass: str = choice(
        "Cast instead in", "soda-lime", glasses(), help="For the comparison with glass."
    )

    def __post_init__(self) -> None:
        """Refuse a mould whose gap freezes shut while it is filled."""
        shot = shot_of(self)
        skin = frozen_skin(
            shot.hot, shot.mould, shot.melt.transition, math.sqrt(shot.spread * self.fill_s)
        )
        half = float(shot.cavity.gap.min()) / 2
        if skin > SHUT * half:
            longest = self.fill_s * (SHUT * half / skin) ** 2
            raise InputError(
                f"the melt freezes shut before it has filled {2e3 * half:g} mm of gap",
                place="fill_s",
                remedy=f"write at most {math.floor(100 * longest) / 100:g}, or a hotter melt or "
                "mould, or more thickness",
            )

    @property
    def warms(self) -> bool:
        """Whether the cold dish is warmed at all."""
        return self.warm_C > 25


def shape_of(settings: Settings) -> Shape:
    """Thicknesses of the dish."""
    return Shape(1e-3 * settings.thickness_mm, 1e-3 * settings.rib_mm)


def shot_of(settings: Settings) -> Shot:
    """How the mould is filled."""
    return Shot(
        material(settings.plastic),
        MELTS[settings.plastic],
        tray.cavity(shape_of(settings), settings.gate),
        ZERO_C + settings.melt_C,
        ZERO_C + settings.mould_C,
        settings.fill_s,
    )


def made(settings: Settings) -> Moulded:
    """The whole making of the dish."""
    s = settings
    return _made(s.plastic, s.gate, s.thickness_mm, s.rib_mm, s.melt_C, s.mould_C, s.fill_s)


@functools.lru_cache(maxsize=16)
def _made(
    plastic: str,
    gate: str,
    thickness_mm: float,
    rib_mm: float,
    melt_C: float,
    mould_C: float,
    fill_s: float,
) -> Moulded:
    settings = Settings(plastic, thickness_mm, rib_mm, gate, melt_C, mould_C, fill_s)
    return moulded.mould(shot_of(settings), shape_of(settings))


@dataclass(frozen=True)
class InGlass:
    """The same dish cast in glass and cooled in the open air.

    Parameters
    ----------
    cast : Cast
        The cold dish.
    odds : float
        Probability that it breaks.
    retardation : float
        Largest, m.
    """

    cast: Cast
    odds: float
    retardation: float


def in_glass(settings: Settings) -> InGlass:
    """The same dish in glass."""
    return _in_glass(settings.as_glass, settings.thickness_mm, settings.rib_mm)


@functools.lru_cache(maxsize=8)
def _in_glass(glass: str, thickness_mm: float, rib_mm: float) -> InGlass:
    piece = moulded.plate_of(material(glass), Shape(1e-3 * thickness_mm, 1e-3 * rib_mm))
    cold = cast_glass.cast(piece)
    light = moulded.heat_retardation(piece, cold.state)
    largest = float(((light**2).sum(axis=0) ** 0.5).max())
    return InGlass(cold, cast_glass.break_odds(piece, cold), largest)
