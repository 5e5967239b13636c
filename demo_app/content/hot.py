"""Reminders of hot glass: "hot until at least", from the model; never that it may be touched."""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

import numpy as np

from demo_app.base.errors import InputError
from demo_app.content.journal.listing import clock
from demo_app.physics.heat import ROOM, ZERO_C
from demo_app.physics.hot_piece import Profile, profile_cooling_time, wall_cooling_time
from demo_app.physics.material_files import material
from demo_app.scenes.scene import Section, View

REMINDER_C = 45.0
"""Temperature down to which a piece is called hot, °C. Burn thresholds for a long contact, whatever
the material: 51 for 1 min, 48 for 10 min, 43 for 8 h and longer (ISO 13732-1:2006, from memory)."""

HANDLE = "Tongs and the insulated mat; hot glass looks cold."
ENGLISH: Mapping[str, str] = MappingProxyType(
    {
        "handle": HANDLE,
        "always": "{name}: hot. {handle}",
        "hot": "{name}: hot until at least {until}. {handle}",
        "was": "{name}: was hot until at least {until} and may be still. {handle}",
    }
)
"""What a reminder says."""


@dataclass(frozen=True)
class HotPiece:
    """One piece that was hot.

    Parameters
    ----------
    name : str
        Which.
    noted_at : float
        When it was put down, s since 1970.
    start_C, reach_C : float
        Its temperature then; the temperature down to which it is called hot.
    seconds : float
        How long it stays above `reach_C` at least, s; infinite if the air is as warm.
    """

    name: str
    noted_at: float
    start_C: float
    reach_C: float
    seconds: float

    @property
    def until(self) -> float:
        """Time until which it is hot at least, s since 1970."""
        return self.noted_at + self.seconds

    def left_s(self, now: float) -> float:
        """How long it is still hot at least, s; 0 afterwards. `now` in s since 1970."""
        return max(0.0, self.until - now)

    def words(self, now: float, texts: Mapping[str, str] = ENGLISH) -> str:
        """The reminder in one line; it never says that the piece may be touched."""
        handle = texts["handle"]
        if math.isinf(self.seconds):
            return texts["always"].format(name=self.name, handle=handle)
        line = "hot" if self.left_s(now) > 0 else "was"
        return texts[line].format(name=self.name, until=clock(self.until), handle=handle)


def hot_piece(
    name: str,
    glass: str,
    thickness_mm: float,
    start_C: float,
    now: float,
    *,
    reach_C: float = REMINDER_C,
    air_C: float = ROOM - ZERO_C,
) -> HotPiece:
    """A piece of one temperature that is put down to cool.

    Parameters
    ----------
    name : str
        Which.
    glass : str
        Id of its material.
    thickness_mm : float
        Of its wall where it is thickest, mm.
    start_C : float
        °C.
    now : float
        s since 1970.
    reach_C, air_C : float
        Temperature down to which it is called hot; of the room, °C.

    Raises
    ------
    InputError
        If the glass is unknown or a number cannot be.
    """
    _within("thickness_mm", thickness_mm, 0.1, 200, "mm")
    _within("start_C", start_C, -20, 1600, "°C")
    _check(reach_C, air_C)
    seconds = wall_cooling_time(
        material(glass), 1e-3 * thickness_mm, *(t + ZERO_C for t in (start_C, reach_C, air_C))
    )
    return HotPiece(name, now, start_C, reach_C, seconds)


def hot_in_view(
    name: str,
    glass: str,
    view: View,
    now: float,
    *,
    reach_C: float = REMINDER_C,
    air_C: float = ROOM - ZERO_C,
) -> HotPiece | None:
    """The piece that a scene shows at this instant, put down to cool.

    Parameters
    ----------
    name, glass, now, reach_C, air_C
        As for `hot_piece`.
    view : View
        What the scene shows.

    Returns
    -------
    HotPiece or None
        None if the scene shows no section, whose temperatures are needed.

    Raises
    ------
    InputError
        If the glass is unknown or a number cannot be.
    """
    if view.section is None:
        return None
    _check(reach_C, air_C)
    profile = profile_of(view.section)
    seconds = profile_cooling_time(material(glass), profile, reach_C + ZERO_C, air_C + ZERO_C)
    return HotPiece(name, now, float(view.section.temperature_C.max()), reach_C, seconds)


def profile_of(section: Section) -> Profile:
    """A section's wall: place along it, thickness, and mean temperature through it."""
    x, y = 1e-3 * section.x_mm, 1e-3 * section.y_mm
    apart = np.hypot(np.diff(x, axis=0), np.diff(y, axis=0))
    thickness = apart.sum(axis=0)
    temperature = section.temperature_C + ZERO_C
    mean = ((temperature[1:] + temperature[:-1]) / 2 * apart).sum(axis=0) / thickness
    along = np.hypot(np.diff(x.mean(axis=0)), np.diff(y.mean(axis=0)))
    return Profile(np.concatenate([[0.0], np.cumsum(along)]), thickness, mean)


def _check(reach_C: float, air_C: float) -> None:
    _within("reach_C", reach_C, 30, 100, "°C")
    _within("air_C", air_C, -20, 60, "°C")


def _within(name: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:
        raise InputError(
            f"{value:g} is out of range", place=name, remedy=f"write {low:g} to {high:g} {unit}"
        )
