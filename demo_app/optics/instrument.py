"""A polariscope as a frozen record, and its Mueller calculus for one retarder between the plates.

Angles are counted from x (along the piece) towards y (up). A retarder's angle is that of its slow
axis; glass under tension is slow along the tension, since its stress-optic coefficient is positive.
The order along the light is: lamp, polarizer, first quarter-wave plate (slow axis 45 degrees before
the polarizer), piece, second quarter-wave plate (45 degrees after it, so that the two cancel when
nothing lies between), tint plate (slow axis 45 degrees before the polarizer), analyser. Turning
the polarizer turns all of it.

The quarter-wave plates are the plain film usual in a demonstration polariscope: a fixed
retardation of 140 nm, hence a quarter wave at 560 nm alone (common practice). Red and blue leave a
faint trace of the axis behind, as they do on the bench. The dispersion of birefringence is left
out throughout.

Sources
-------
Theocaris and Gdoutos, Matrix Theory of Photoelasticity, 1979 (Mueller calculus of polariscopes).
"""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.optics.light_data import LAMPS
from demo_app.optics.mueller import polarized, retarded

Array = NDArray[np.float64]

QUARTER_WAVE_NM = 140.0
"""Retardation of a quarter-wave film, nm."""

TINT_PLATE_NM = 565.0
"""Retardation of the usual tint plate, nm (common practice)."""

GAIN_RANGE = (1.0, 50.0)
"""How many times the light may be multiplied for a faint picture."""


@dataclass(frozen=True)
class Instrument:
    """What stands around the piece.

    Parameters
    ----------
    lamp : str
        One of `demo_app.optics.light_data.LAMPS`.
    polarizer_deg : float
        Direction that the polarizer lets through, counted from x.
    analyser_deg : float
        Direction that the analyser lets through, counted from the polarizer's: 90 crossed,
        0 parallel, others for compensation after Senarmont or Tardy.
    quarter_wave : bool
        Whether the two quarter-wave plates are in (circular polariscope).
    tint_plate_nm : float
        Retardation of the tint plate, nm; 0 for none, else mostly `TINT_PLATE_NM`.
    exposure : float
        Linear light of the open field between parallel polarizers; below one, so that pure
        colours fit into the screen's gamut.
    gain : float
        Factor on the light for faint pictures; a picture with a gain above one must say so.
    filters : int
        Polarizing filters that are in: 2, or 1 (the analyser is out), or 0 (the lamp alone, twice
        as bright as the open field between parallel polarizers, since a filter takes half).

    Raises
    ------
    InputError
        For a value out of range.
    """

    lamp: str = "daylight"
    polarizer_deg: float = 45.0
    analyser_deg: float = 90.0
    quarter_wave: bool = False
    tint_plate_nm: float = 0.0
    exposure: float = 0.8
    gain: float = 1.0
    filters: int = 2

    def __post_init__(self) -> None:
        if self.lamp not in LAMPS:
            raise InputError(
                f"no lamp is called '{self.lamp}'",
                place="lamp",
                remedy=f"write one of {', '.join(LAMPS)}",
            )
        _within("polarizer_deg", self.polarizer_deg, -360, 360)
        _within("analyser_deg", self.analyser_deg, -360, 360)
        _within("tint_plate_nm", self.tint_plate_nm, 0, 2000)
        _within("exposure", self.exposure, 0.05, 1)
        _within("gain", self.gain, *GAIN_RANGE)
        _within("filters", self.filters, 0, 2)

    @property
    def crossed(self) -> bool:
        """Whether the analyser stands across the polarizer."""
        return math.isclose(self.analyser_deg % 180, 90.0)


@dataclass(frozen=True)
class AngleFunctions:
    """How bright one retarder is, for each wavelength: five terms in its axis angle t.

    ``I = F0 + F1 cos 4t + F2 sin 4t + F3 cos 2t + F4 sin 2t``; with G = 2 pi * retardation /
    wavelength, F0, F1, F2 are ``constant + cosine * cos G`` and F3, F4 are ``sine * sin G``.

    Parameters
    ----------
    constant, cosine : numpy.ndarray
        Shape (3, wavelengths): of F0, F1, F2.
    sine : numpy.ndarray
        Shape (2, wavelengths): of F3, F4.
    """

    constant: Array
    cosine: Array
    sine: Array


def angle_functions(instrument: Instrument, wavelength_nm: Array) -> AngleFunctions:
    """Angle functions of `instrument` at wavelengths of shape (n,); one for open parallel plates.

    A retarder turns the Stokes vector s about its axis n by G:
    ``R s = cos G s + (1 - cos G) n (n.s) + sin G n x s`` (Rodrigues); the analyser's side reads the
    result with the row a, so that I = a0 s0 + a.(R s).
    """
    s0, s1, s2, s3 = _light_on_piece(instrument, wavelength_nm)
    a0, a1, a2, a3 = _reading_row(instrument, wavelength_nm)
    along, across, slant = a1 * s1, a2 * s2, a1 * s2 + a2 * s1
    even = (along + across) / 2
    half = (along - across) / 2
    constant = np.stack([a0 * s0 + even, half, slant / 2])
    cosine = np.stack([even + a3 * s3, -half, -slant / 2])
    return AngleFunctions(constant, cosine, np.stack([a3 * s2 - a2 * s3, a1 * s3 - a3 * s1]))


def intensity(
    instrument: Instrument, retardation_nm: Array, axis_deg: Array, wavelength_nm: Array
) -> Array:
    """Light through `instrument` with one retarder in it; open parallel polarizers give one.

    Parameters
    ----------
    retardation_nm, axis_deg : numpy.ndarray
        Shapes that broadcast to (...).
    wavelength_nm : numpy.ndarray
        Shape (n,).

    Returns
    -------
    numpy.ndarray
        Shape (..., n). Exposure and gain are left out.
    """
    parts = angle_functions(instrument, wavelength_nm)
    phase = 2 * np.pi * np.asarray(retardation_nm)[..., None] / wavelength_nm
    waves = angle_waves(np.radians(np.asarray(axis_deg)))[..., None]
    even = [parts.constant[k] + parts.cosine[k] * np.cos(phase) for k in range(3)]
    odd = [parts.sine[k] * np.sin(phase) for k in range(2)]
    return np.asarray(sum(f * w for f, w in zip(even + odd, waves, strict=True)))


def angle_waves(axis: Array) -> Array:
    """1, cos 4t, sin 4t, cos 2t, sin 2t of the axis angle t (rad, shape (...)); shape (5, ...)."""
    twice, fourfold = 2 * axis, 4 * axis
    return np.stack(
        [np.ones_like(axis), np.cos(fourfold), np.sin(fourfold), np.cos(twice), np.sin(twice)]
    )


def _within(name: str, value: float, low: float, high: float) -> None:
    if not low <= value <= high:
        raise InputError(
            f"{value} is out of range",
            place=name,
            remedy=f"write a number from {low:g} to {high:g}",
        )


def _light_on_piece(instrument: Instrument, wavelength: Array) -> Array:
    """Stokes vectors in front of the piece, shape (4, n)."""
    if instrument.filters == 0:
        return np.repeat([[2.0], [0.0], [0.0], [0.0]], wavelength.size, axis=1)
    light = polarized(instrument.polarizer_deg, wavelength.size)
    if instrument.quarter_wave:
        light = retarded(light, QUARTER_WAVE_NM / wavelength, instrument.polarizer_deg - 45)
    return light


def _reading_row(instrument: Instrument, wavelength: Array) -> Array:
    """Rows that read the intensity from the Stokes vectors behind the piece, shape (4, n)."""
    if instrument.filters < 2:
        return np.repeat([[1.0], [0.0], [0.0], [0.0]], wavelength.size, axis=1)
    polarizer = instrument.polarizer_deg
    row = polarized(polarizer + instrument.analyser_deg, wavelength.size) / 2
    row = retarded(row, -instrument.tint_plate_nm / wavelength, polarizer - 45)
    if instrument.quarter_wave:
        row = retarded(row, -QUARTER_WAVE_NM / wavelength, polarizer + 45)
    return row
