"""Light of a finished picture: relative luminance of a coarse grid of its pixels."""

import functools
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.colour import LUMINANCE, decode

Bytes = NDArray[np.uint8]
Floats = NDArray[np.float32]

T = TypeVar("T", bound=np.generic)

COLUMNS = 320
"""Most columns of the grid: stripes of six pixels or more in a full-HD picture are told apart."""


@functools.cache
def decoded() -> Floats:
    """Linear light of every byte, shape (256,)."""
    return decode(np.arange(256) / 255).astype(np.float32)


def grid_of(pixels: NDArray[T], columns: int = COLUMNS) -> NDArray[T]:
    """Every n-th pixel of every n-th row, so that at most `columns` columns are left.

    Pixels are picked, not averaged: an average would hide fine bright stripes.

    Parameters
    ----------
    pixels : numpy.ndarray
        Shape (height, width, ...), such as `demo_app.optics.picture.colour` returns.
    """
    every = max(1, -(-pixels.shape[1] // columns))
    first = (every - 1) // 2
    return pixels[first::every, first::every]


def linear(pixels: Bytes) -> Floats:
    """Linear red, green, blue (0 to 1) of the bytes of a picture, shape (..., 3)."""
    return decoded()[pixels[..., 2::-1]]


def luminance(pixels: Bytes) -> Floats:
    """Relative luminance (0 to 1) of the bytes of a picture, shape (...)."""
    red, green, blue = (np.float32(part) * decoded() for part in LUMINANCE)
    return np.asarray(red[pixels[..., 2]] + green[pixels[..., 1]] + blue[pixels[..., 0]])
