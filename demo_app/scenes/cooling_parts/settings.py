"""Settings of the scene `cooling`, and what follows from them alone."""

import functools
from dataclasses import dataclass

from demo_app.base.errors import InputError
from demo_app.physics import stepped
from demo_app.physics.annealing import LIMITS, Limit
from demo_app.physics.annealing_search import Proposal, propose
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.physics.oven import Schedule
from demo_app.physics.stepped import Piece
from demo_app.scenes.settings import choice, flag, number

AUTOMATIC_SLOW_TO = 140.0
"""Kelvin below the strain point at which slow becomes fast unless stated: the proposals' own place
for plates of about 10 mm."""


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="What it is made of.", live=False)
    thickness_mm: float = number(
        "Thickness", "mm", 10, 1, 50, step=0.5, help="Of the plate.", live=False
    )
    second_thickness_mm: float = number(
        "Second thickness", "mm", 0, 0, 50, step=0.5, help="Of a part beside it; 0: none.",
        live=False,
    )  # fmt: skip
    joined: bool = flag(
        "One piece", True, help="Whether thick and thin are one stepped piece.", live=False
    )
    way: str = choice("Way", "air", ("air", "oven"), help="Out into the air, or into the oven.")
    programme: str = choice(
        "Programme", "own", ("own", "proposed"),
        help="Your own below, or the shortest that is good enough.",
    )  # fmt: skip
    hold_C: float = number("Hold at", "°C", 550, 20, 1300, help="Where the oven holds.")
    hold_min: float = number("Hold for", "min", 15, 0, 2880, step=5, help="How long it holds.")
    slow_C_per_h: float = number(
        "Slow", "°C/h", 50, 0.1, 2000, help="Cooling through the range where stress is born."
    )
    slow_to_C: float = number(
        "Slow down to", "°C", 0, 0, 1300, step=5,
        help="Where slow becomes fast; 0: 140 °C below the strain point.",
    )  # fmt: skip
    fast_C_per_h: float = number(
        "Fast", "°C/h", 600, 1, 6000, step=10, help="Cooling from there to room temperature."
    )
    limit: str = choice(
        "Good enough for", "optics", tuple(LIMITS),
        help="Lenses (ISO 10110-2: 10 nm/cm), magnifiers (20 nm/cm), ware (ASTM C148: number 4).",
    )  # fmt: skip
    look: str = choice("Seen", "edge-on", ("edge-on", "face-on"), help="Which way the light goes.")
    path_mm: float = number(
        "Light's path", "mm", 20, 5, 300, step=5, help="Width of glass that light passes edge-on."
    )
    chart: str = choice(
        "Chart", "temperature", ("temperature", "stress"), help="What is drawn over time."
    )

    def __post_init__(self) -> None:
        """Refuse what is too thin to be a part, and a programme that goes up while it cools."""
        if 0 < self.second_thickness_mm < 1:
            raise InputError(
                f"a part of {self.second_thickness_mm:g} mm is too thin",
                place="second_thickness_mm",
                remedy="write 0 for none, or at least 1",
            )
        if 0 < self.slow_to_C < 20:
            raise InputError(
                f"{self.slow_to_C:g} °C is colder than the room",
                place="slow_to_C",
                remedy="write at least 20, or 0 for the usual place",
            )
        if self.slow_to_C > self.hold_C:
            raise InputError(
                f"the cooling part goes up, from {self.hold_C:g} to {self.slow_to_C:g} °C",
                place="slow_to_C",
                remedy=f"write at most {self.hold_C:g} (hold_C)",
            )


def limit_of(settings: Settings) -> Limit:
    """The limit that is set."""
    return LIMITS[settings.limit]


def thicknesses_of(settings: Settings) -> tuple[float, ...]:
    """Thickness of each part, m."""
    both = (settings.thickness_mm, settings.second_thickness_mm)
    return tuple(1e-3 * one for one in both if one > 0)


@functools.lru_cache(maxsize=8)
def _made(glass: str, thicknesses: tuple[float, ...], joined: bool) -> Piece:
    return stepped.piece(material(glass), thicknesses, joined=joined)


def piece_of(settings: Settings) -> Piece:
    """The plate, or the plates."""
    thicknesses = thicknesses_of(settings)
    return _made(settings.glass, thicknesses, settings.joined and len(thicknesses) > 1)


def proposal_of(settings: Settings) -> Proposal | None:
    """The shortest programme within the limit."""
    what = piece_of(settings)
    limit = limit_of(settings).birefringence
    return propose(material(settings.glass), thicknesses_of(settings), what.joined, limit)


def told_of(settings: Settings) -> Schedule:
    """The oven's orders: the presenter's own, or the proposed ones."""
    if settings.programme == "proposed":
        proposal = proposal_of(settings)
        if proposal is not None:
            return proposal.schedule
    hold = settings.hold_C + ZERO_C
    usual = material(settings.glass).strain_point - AUTOMATIC_SLOW_TO
    return Schedule(
        hold=hold,
        hold_time=60 * settings.hold_min,
        slow=settings.slow_C_per_h / 3600,
        slow_to=settings.slow_to_C + ZERO_C if settings.slow_to_C else min(hold, usual),
        fast=settings.fast_C_per_h / 3600,
    )
