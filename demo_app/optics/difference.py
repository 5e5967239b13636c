"""How different two colours look: CIEDE2000.

Sources
-------
Sharma, Wu and Dalal 2005, Color Res. Appl. 30, 21 (the formula with its implementation notes).
CIE 015:2018, Colorimetry (CIELAB).
"""

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.colour import lightness_chroma_hue

Array = NDArray[np.float64]

NOTICEABLE = 1.0
"""CIEDE2000 of two colours side by side that are just told apart (common practice)."""


def lab(xyz: Array, white: Array) -> Array:
    """CIELAB of XYZ seen beside a `white` of shape (3,); both of shape (..., 3)."""
    lightness, chroma, hue = lightness_chroma_hue(xyz, white)
    angle = np.radians(hue)
    return np.stack([lightness, chroma * np.cos(angle), chroma * np.sin(angle)], axis=-1)


def ciede2000(one: Array, other: Array) -> Array:
    """Difference of colours given as CIELAB; shapes (..., 3) that broadcast, result (...)."""
    light_1, a_1, b_1 = np.moveaxis(np.asarray(one, float), -1, 0)
    light_2, a_2, b_2 = np.moveaxis(np.asarray(other, float), -1, 0)
    mean = (np.hypot(a_1, b_1) + np.hypot(a_2, b_2)) / 2
    stretch = 1 + (1 - _saturated(mean)) / 2
    chroma_1, chroma_2 = np.hypot(stretch * a_1, b_1), np.hypot(stretch * a_2, b_2)
    hue_1, hue_2 = (
        np.degrees(np.arctan2(b, stretch * a)) % 360 for a, b in ((a_1, b_1), (a_2, b_2))
    )
    grey = chroma_1 * chroma_2 == 0
    turn = (hue_2 - hue_1 + 180) % 360 - 180
    # Hues half a turn apart: the notes take +180 degrees.
    turn = np.where(grey, 0.0, np.where(turn == -180, 180.0, turn))
    far = np.abs(hue_1 - hue_2) > 180
    total = hue_1 + hue_2
    middle = np.where(far, np.where(total < 360, total + 360, total - 360), total) / 2
    middle = np.where(grey, total, middle)
    light, chroma = (light_1 + light_2) / 2, (chroma_1 + chroma_2) / 2
    wave = (
        1
        - 0.17 * _cos(middle - 30)
        + 0.24 * _cos(2 * middle)
        + 0.32 * _cos(3 * middle + 6)
        - 0.20 * _cos(4 * middle - 63)
    )
    by_light = 1 + 0.015 * (light - 50) ** 2 / np.sqrt(20 + (light - 50) ** 2)
    lightness = (light_2 - light_1) / by_light
    chromas = (chroma_2 - chroma_1) / (1 + 0.045 * chroma)
    hues = 2 * np.sqrt(chroma_1 * chroma_2) * np.sin(np.radians(turn / 2))
    hues = hues / (1 + 0.015 * chroma * wave)
    blue = 60 * np.exp(-(((middle - 275) / 25) ** 2))
    rotation = -2 * _saturated(chroma) * np.sin(np.radians(blue))
    found = lightness**2 + chromas**2 + hues**2 + rotation * chromas * hues
    return np.asarray(np.sqrt(np.maximum(found, 0.0)))


def _saturated(chroma: Array) -> Array:
    return np.asarray(np.sqrt(chroma**7 / (chroma**7 + 25.0**7)))


def _cos(degrees: Array) -> Array:
    return np.asarray(np.cos(np.radians(degrees)))
