"""Numbers of the projector card: how high letters stand at the back row, grey steps, edges.

Sources
-------
ISO 9241-303:2011 (and ISO 9241-3 before it): capital letters of 16 minutes of arc at least, 20 to
22 preferred. EN 301 549, 5.1.4: 0.7 degrees where people cannot enlarge the text themselves. The
height of a capital is what they count.
"""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.optics.instrument import Instrument
from demo_app.optics.table import exact_signal

LEAST_ARCMIN = 16.0
PREFERRED_ARCMIN = (20.0, 22.0)
CLOSED_ARCMIN = 42.0
"""0.7 degrees."""

CAPITAL = 0.729
"""Height of a capital of DejaVu Sans as a share of its type size (1493 of 2048 units)."""

STEPS_NM = (0.0, 10.0, 20.0, 30.0, 40.0, 50.0)
"""Retardations of the grey steps, nm."""
GAIN = 10.0
"""Gain of the second row, which is labelled."""
EDGES = (0.0, 0.025, 0.05)
"""Where frames stand in from the picture's edge, as a share of its width and height."""


@dataclass(frozen=True)
class Hall:
    """Picture and hall, in metres; None where nobody has measured.

    Parameters
    ----------
    picture_height_m : float or None
        Height of the projected picture.
    depth_m : float or None
        From the screen to the eyes in the last row.

    Raises
    ------
    InputError
        For a length that is not above zero.
    """

    picture_height_m: float | None = None
    depth_m: float | None = None

    def __post_init__(self) -> None:
        for name in ("picture_height_m", "depth_m"):
            length = getattr(self, name)
            if length is not None and not (math.isfinite(length) and length > 0):
                raise InputError(
                    f"{length} cannot be a length", place=name, remedy="write metres above 0"
                )

    @property
    def known(self) -> bool:
        """Whether both have been measured."""
        return self.picture_height_m is not None and self.depth_m is not None


def letter_px(picture_px: float, picture_height_m: float, depth_m: float, arcmin: float) -> float:
    """Height of a capital in pixels that is seen under `arcmin` from the last row.

    Parameters
    ----------
    picture_px : float
        Height of the picture, pixels.
    picture_height_m, depth_m : float
        Its height on the wall, and the distance of the eyes from it, m.
    arcmin : float
        Angle, minutes of arc.
    """
    height_m = 2 * depth_m * math.tan(math.radians(arcmin / 60) / 2)
    return picture_px * height_m / picture_height_m


def seen_arcmin(
    capital_px: float, picture_px: float, picture_height_m: float, depth_m: float
) -> float:
    """Angle under which a capital of `capital_px` pixels is seen from the last row, minutes."""
    height_m = capital_px * picture_height_m / picture_px
    return 60 * math.degrees(2 * math.atan(height_m / (2 * depth_m)))


def type_arcmin(type_px: float, picture_px: float, hall: Hall) -> float | None:
    """Angle of a capital of a type size (pixels) at the back row; None without the hall's size."""
    if hall.picture_height_m is None or hall.depth_m is None:
        return None
    return seen_arcmin(CAPITAL * type_px, picture_px, hall.picture_height_m, hall.depth_m)


def type_px(arcmin: float, picture_px: float, hall: Hall) -> float | None:
    """Type size in pixels whose capitals are seen under `arcmin`; None without the hall's size."""
    if hall.picture_height_m is None or hall.depth_m is None:
        return None
    return letter_px(picture_px, hall.picture_height_m, hall.depth_m, arcmin) / CAPITAL


def deepest_m(type_size_px: float, picture_px: float, picture_height_m: float) -> float:
    """Deepest hall in which capitals of a type size still have 16 minutes of arc, m."""
    height_m = CAPITAL * type_size_px * picture_height_m / picture_px
    return height_m / (2 * math.tan(math.radians(LEAST_ARCMIN / 60) / 2))


def grey_steps(instrument: Instrument, gain: float = 1.0) -> NDArray[np.uint8]:
    """Screen colours of `STEPS_NM` at 45 degrees to the polarizer, shape (steps, 3): R, G, B."""
    values = {**vars(instrument), "gain": gain}
    axis = np.array(instrument.polarizer_deg - 45)
    signal = exact_signal(Instrument(**values), np.array(STEPS_NM), axis)
    return np.rint(255 * signal).astype(np.uint8)
