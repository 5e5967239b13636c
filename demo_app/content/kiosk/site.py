"""What one gallery says of its kiosk: a frozen record with harmless defaults."""

from dataclasses import dataclass, field
from pathlib import Path

from demo_app.content.kiosk.hours import Hours

IDLE_S, WARNING_S = 90.0, 20.0
SCALES = (1.0, 1.3, 1.6)
"""Sizes of type, as the windows offer them."""


@dataclass(frozen=True)
class Site:
    """One kiosk.

    Parameters
    ----------
    hours : Hours
        Outside them the screen is black.
    languages : tuple of str
        Languages that are offered, in this order.
    language : str
        The one that it begins with and goes back to.
    steps_off : tuple of str
        Ids of steps that are not offered.
    brightness : float
        Share of full brightness, 0.2 to 1.
    idle_s : float
        Untouched for so long it warns, s.
    warning_s : float
        And after so long a warning it goes back to the inviting view, s; at least 20
        (WCAG 2.2, 2.2.1).
    high_contrast : bool
    scale : float
        Size of type when nobody has chosen, one of `SCALES`.
    calm : bool
        Whether bright stripes are held below the limits for people who react to them.
    motion : bool
        Whether things move that need not.
    code : str
        Hash of the staff's code; "": none is set, and the staff page does not open.
    updates : pathlib.Path or None
        Folder in which new texts may lie (a stick's).
    width_mm, height_mm : float or None
        The lit picture, measured with a ruler; None: as the screen says itself.
    path : pathlib.Path or None
        File that it came from.
    """

    hours: Hours = field(default_factory=Hours)
    languages: tuple[str, ...] = ("en", "de", "es")
    language: str = "en"
    steps_off: tuple[str, ...] = ()
    brightness: float = 1.0
    idle_s: float = IDLE_S
    warning_s: float = WARNING_S
    high_contrast: bool = False
    scale: float = 1.0
    calm: bool = True
    motion: bool = True
    code: str = ""
    updates: Path | None = None
    width_mm: float | None = None
    height_mm: float | None = None
    path: Path | None = None


def steps_on(site: Site, ids: tuple[str, ...]) -> tuple[str, ...]:
    """Those of the steps `ids` that are offered; all of them if none would be left."""
    return tuple(one for one in ids if one not in site.steps_off) or ids
