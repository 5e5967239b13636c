"""Lamps and the eye: spectra and colour-matching functions read from assets/light."""

import functools
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.base.locate import assets

Array = NDArray[np.float64]

LAMPS = ("daylight", "incandescent", "white-led", "sodium", "green")


@dataclass(frozen=True)
class Lamp:
    """A lamp as the eye weighs it.

    Parameters
    ----------
    name : str
        One of `LAMPS`.
    wavelength_nm : numpy.ndarray
        Shape (n,): evenly spaced, or the one line of a one-colour lamp.
    weights : numpy.ndarray
        Shape (n, 3): lamp power times x, y, z of the CIE 1931 2-degree observer, scaled so that
        the y column sums to one; a transmittance summed with them is an XYZ with Y = 1 for white.
    """

    name: str
    wavelength_nm: Array
    weights: Array

    @property
    def white(self) -> Array:
        """XYZ of the lamp itself, shape (3,), Y = 1."""
        return np.asarray(self.weights.sum(axis=0))

    @property
    def one_colour(self) -> bool:
        """Whether the lamp is a single line, whose hue no eye takes for white."""
        return self.wavelength_nm.size == 1

    @property
    def middle_nm(self) -> float:
        """Wavelength at the middle of what the eye sees of it (weighted by luminance), nm."""
        return float(self.wavelength_nm @ self.weights[:, 1])


@functools.cache
def lamp(name: str) -> Lamp:
    """The lamp called `name`.

    Raises
    ------
    InputError
        For an unknown name or an unreadable file.
    """
    if name not in LAMPS:
        raise InputError(
            f"no lamp is called '{name}'", place="lamp", remedy=f"write one of {', '.join(LAMPS)}"
        )
    folder = assets() / "light"
    wavelength, power = _columns(folder / f"{name}.csv", 2).T
    observer = _columns(folder / "observer.csv", 4)
    matching = np.stack(
        [np.interp(wavelength, observer[:, 0], observer[:, k]) for k in (1, 2, 3)], axis=1
    )
    seen = power[:, None] * matching
    return Lamp(name, wavelength, seen / seen[:, 1].sum())


def _columns(path: Path, count: int) -> Array:
    """Numbers of a comma-separated file, shape (rows, count), below its comments and names."""
    try:
        lines = [line for line in path.read_text("utf-8").splitlines() if line[:1] != "#"]
        table = np.array([[float(cell) for cell in line.split(",")] for line in lines[1:] if line])
    except (OSError, ValueError) as error:
        raise InputError(
            f"cannot be read ({error})", place=str(path), remedy="install Lehrlight again"
        ) from None
    if table.ndim != 2 or table.shape[1] != count or not np.isfinite(table).all():
        raise InputError(
            f"needs rows of {count} numbers", place=str(path), remedy="install Lehrlight again"
        )
    return table
