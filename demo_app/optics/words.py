"""Plain words for interference colours, worked out from the colour itself.

The colour is computed (CIELAB, with the open field between parallel polarizers as white) and named
by where it lies: lightness for neutral ones, hue for the others. The hue borders lie about midway
between the hue angles of sRGB's pure colours (red 40, yellow 103, green 136, cyan 196, blue 306,
magenta 328 degrees) or where common usage draws them.
"""

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.colour import SCREEN_WHITE, lightness_chroma_hue
from demo_app.optics.instrument import Instrument, intensity
from demo_app.optics.light_data import lamp

Array = NDArray[np.float64]

_HUES = (
    (50.0, "red"),
    (82.0, "orange"),
    (119.0, "yellow"),
    (200.0, "green"),
    (300.0, "blue"),
    (335.0, "violet"),
    (360.0, "red"),
)
_NEUTRAL_B = -6.0
_NEUTRAL_RADIUS = 15.0
_PALE_CHROMA = 26.0
_PALE_LIGHTNESS = 65.0
_PINK_LIGHTNESS = 60.0
_BLACK_LIGHTNESS = 12.0
_WHITE_LIGHTNESS = 90.0


def interference_colour(retardation_nm: float, instrument: Instrument | None = None) -> str:
    """Word for the colour of one retardation, its axis at 45 degrees to the polarizer.

    Parameters
    ----------
    retardation_nm : float
        Retardation, nm.
    instrument : Instrument, optional
        Crossed polarizers in daylight unless given.

    Examples
    --------
    >>> [interference_colour(d) for d in (0, 150, 260, 450, 600)]
    ['black', 'pale grey', 'white', 'orange', 'blue']
    """
    seen_by = instrument or Instrument()
    light = lamp(seen_by.lamp)
    axis = np.array(seen_by.polarizer_deg - 45)
    seen = intensity(seen_by, np.array(retardation_nm), axis, light.wavelength_nm)
    return colour_word(seen @ light.weights, SCREEN_WHITE if light.one_colour else light.white)


def colour_word(xyz: Array, white: Array) -> str:
    """Word for a colour: black, grey, white, or a hue, with "pale" before it where it is.

    Parameters
    ----------
    xyz, white : numpy.ndarray
        Shape (3,): the colour, and the white that it is seen beside.
    """
    lightness, chroma, hue = (float(part) for part in lightness_chroma_hue(xyz, white))
    if lightness < _BLACK_LIGHTNESS:
        return "black"
    pale = "pale " if lightness > _PALE_LIGHTNESS else ""
    if _distance_from_neutral(chroma, hue) < _NEUTRAL_RADIUS:
        return "white" if lightness > _WHITE_LIGHTNESS else f"{pale}grey"
    name = next(word for border, word in _HUES if hue <= border)
    if name == "red" and lightness > _PINK_LIGHTNESS:
        name = "pink"
    return name if chroma > _PALE_CHROMA else f"{pale}{name}"


def _distance_from_neutral(chroma: float, hue: float) -> float:
    """Distance from what is called neutral: bluish greys still are, yellowish whites are not."""
    angle = np.radians(hue)
    return float(np.hypot(chroma * np.cos(angle), chroma * np.sin(angle) - _NEUTRAL_B))
