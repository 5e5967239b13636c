"""From XYZ to what a screen shows: sRGB, white balance, gamut and lightness.

Sources
-------
IEC 61966-2-1:1999, the sRGB colour space (matrix and transfer function).
Lam, K. M., Metamerism and colour constancy, 1985 (the "Bradford" adaptation matrix).
CIE 015:2018, Colorimetry (CIELAB).
"""

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

XYZ_TO_RGB: Array = np.array(
    [[3.2406, -1.5372, -0.4986], [-0.9689, 1.8758, 0.0415], [0.0557, -0.2040, 1.0570]]
)
"""Linear sRGB from XYZ (Y = 1 for white), IEC 61966-2-1."""

SCREEN_WHITE: Array = np.asarray(np.linalg.solve(XYZ_TO_RGB, np.ones(3)), np.float64)
"""XYZ that the screen shows as full white (D65)."""

LUMINANCE: Array = np.linalg.inv(XYZ_TO_RGB)[1] / SCREEN_WHITE[1]
"""Share of each linear channel in the luminance, one in all."""

BRADFORD: Array = np.array(
    [[0.8951, 0.2664, -0.1614], [-0.7502, 1.7135, 0.0367], [0.0389, -0.0685, 1.0296]]
)
"""Sharpened cone responses from XYZ, Lam 1985."""


def encode(linear: Array) -> Array:
    """Signal (sRGB) of linear light (any shape, 0 to 1), IEC 61966-2-1."""
    light = np.clip(linear, 0.0, 1.0)
    return np.where(light <= 0.0031308, 12.92 * light, 1.055 * light ** (1 / 2.4) - 0.055)


def decode(signal: Array) -> Array:
    """Linear light of an sRGB signal (any shape, 0 to 1), the inverse of `encode`."""
    return np.where(signal <= 0.04045, signal / 12.92, ((signal + 0.055) / 1.055) ** 2.4)


def white_balance(white: Array) -> Array:
    """Matrix, shape (3, 3), that takes XYZ seen under `white` to XYZ seen under the screen's white.

    Von Kries scaling in the Bradford space: an eye (or a camera) used to the lamp sees the open
    field as white.

    Parameters
    ----------
    white : numpy.ndarray
        Shape (3,): XYZ of the lamp.
    """
    gains = (BRADFORD @ SCREEN_WHITE) / (BRADFORD @ white)
    return np.asarray(np.linalg.solve(BRADFORD, gains[:, None] * BRADFORD))


def desaturate(linear: Array) -> Array:
    """Bring linear RGB into the screen's gamut by mixing in grey of the same luminance.

    Interference colours are purer than a screen can show. Cutting each channel off would turn
    their hue by up to 16 degrees; moving towards grey keeps hue and luminance. Light brighter
    than the screen's white becomes white.

    Parameters
    ----------
    linear : numpy.ndarray
        Shape (..., 3).

    Returns
    -------
    numpy.ndarray
        Shape (..., 3), within 0 and 1.
    """
    grey = np.clip(linear @ LUMINANCE, 0.0, 1.0)[..., None]
    low = linear.min(axis=-1, keepdims=True)
    high = linear.max(axis=-1, keepdims=True)
    keep = np.minimum(_share(grey, grey - low), _share(1 - grey, high - grey))
    return np.clip(grey + keep * (linear - grey), 0.0, 1.0)


def _share(room: Array, wanted: Array) -> Array:
    """Part of `wanted` that fits into `room`, at most one."""
    return room / np.maximum(np.maximum(wanted, room), 1e-12)


def lightness_chroma_hue(xyz: Array, white: Array) -> tuple[Array, Array, Array]:
    """CIELAB lightness (0 to 100), chroma, and hue angle in degrees (0 to 360), CIE 015.

    Parameters
    ----------
    xyz : numpy.ndarray
        Shape (..., 3).
    white : numpy.ndarray
        Shape (3,): the white to compare with.
    """
    ratio = xyz / white
    edge = 6 / 29
    root = np.where(ratio > edge**3, np.cbrt(ratio), ratio / (3 * edge**2) + 4 / 29)
    a = 500 * (root[..., 0] - root[..., 1])
    b = 200 * (root[..., 1] - root[..., 2])
    return 116 * root[..., 1] - 16, np.hypot(a, b), np.degrees(np.arctan2(b, a)) % 360
