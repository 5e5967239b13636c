"""The colour table: an instrument as packed screen colours over retardation and axis.

A picture is one look-up a pixel in this table. Rows are evenly spaced in retardation. Columns are
evenly spaced in the "diamond" angle, which needs a division where the true angle needs arctan2:
``p = copysign(1 - v1 / (abs(v1) + abs(v2)), v2)``, from -2 to 2 once round, the walk along the
edge of the square ``abs(v1) + abs(v2) = 1``.
"""

import functools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.colour import LUMINANCE, XYZ_TO_RGB, desaturate, encode, white_balance
from demo_app.optics.instrument import Instrument, angle_functions, angle_waves, intensity
from demo_app.optics.light_data import Lamp, lamp
from demo_app.optics.share import BLOCK, Space, share

Array = NDArray[np.float64]
Floats = NDArray[np.float32]
Packed = NDArray[np.uint32]

ROW_NM = 3000 / 2048
"""Distance of the rows, nm; with `HALF_TURN` it keeps colours within 1.5 of CIEDE2000."""

FEWEST_ROWS = 512
"""Rows of the shortest tables: closer together, so that no steps show in a faint picture that the
gain brightens."""

HALF_TURN = 512
"""Columns for half a turn of the diamond angle, that is, for a quarter turn of the axis."""

REACHES_NM = (94.0, 187.0, 375.0, 750.0, 1500.0, 3000.0, 6000.0)
"""How far a table may reach, nm; beyond the last, white light shows its mean colour."""

_STEPS = 16383
_NOTHING = 1e-6


@dataclass(frozen=True)
class ColourTable:
    """Packed colours over retardation (rows) and axis (columns).

    Parameters
    ----------
    pixels : numpy.ndarray
        Shape (rows, 2 * `HALF_TURN` + 1), uint32 0xffRRGGBB. Column ``k`` stands for the diamond
        angle ``2 * (k / HALF_TURN - 1)``; the first and the last are the same axis. Row ``i``
        stands for ``i * row_nm``.
    mean : numpy.ndarray
        Shape (columns,), uint32: colour of fringes too fine to be told apart.
    row_nm : float
        Distance of the rows, nm.
    wraps : bool
        Whether the last row is the same colour as the first (one-colour light), so that a larger
        retardation may be taken modulo the table; otherwise it is the mean colour.
    middle_nm : float
        Distance of two fringes, nm.
    symmetric : bool
        Whether an axis and its mirror image about x have the same colour.
    """

    pixels: Packed
    mean: Packed
    row_nm: float
    wraps: bool
    middle_nm: float
    symmetric: bool

    @property
    def bare(self) -> int:
        """Packed colour of the empty field."""
        return int(self.pixels[0, 0])


def reach_for(peak_nm: float) -> float:
    """Smallest of `REACHES_NM` that holds `peak_nm`, else the largest."""
    return next((reach for reach in REACHES_NM if peak_nm < reach), REACHES_NM[-1])


@functools.lru_cache(maxsize=3)
def colour_table(instrument: Instrument, reach_nm: float = REACHES_NM[-1]) -> ColourTable:
    """Table of `instrument` up to about `reach_nm`.

    With one-colour light the reach is a whole number of wavelengths instead.
    """
    light = lamp(instrument.lamp)
    rows = max(FEWEST_ROWS, round(reach_nm / ROW_NM))
    row_nm = min(ROW_NM, reach_nm / rows)
    if light.one_colour:
        waves = max(1, round(reach_nm / light.middle_nm))
        row_nm = waves * light.middle_nm / rows
    basis, mean = _basis(instrument, row_nm, rows + 1)
    if not light.one_colour:
        basis[-1] = mean
    symmetric = bool(np.abs(basis[:, :, 2::2]).max() < _NOTHING)
    return ColourTable(
        _paint(basis),
        _paint(mean[None])[0],
        row_nm,
        light.one_colour,
        light.middle_nm,
        symmetric,
    )


def light_scale(instrument: Instrument) -> float:
    """Factor on the light: exposure and gain.

    One-colour light has no white to balance to. It keeps its hue, and its open field is as bright
    as the screen can show that hue times the exposure.
    """
    light = lamp(instrument.lamp)
    scale = instrument.exposure * instrument.gain
    if light.one_colour:
        # Dim enough that `desaturate` meets the lower edge of the gamut only.
        dim = 0.01 * _spectral_weights(light).sum(axis=0)
        scale *= 0.01 / desaturate(dim).max()
    return float(scale)


def exact_signal(instrument: Instrument, retardation_nm: Array, axis_deg: Array) -> Array:
    """Signal (sRGB, 0 to 1) by a full sum over the spectrum; slow, for single points and checks.

    Parameters
    ----------
    retardation_nm, axis_deg : numpy.ndarray
        Shapes that broadcast to (...).

    Returns
    -------
    numpy.ndarray
        Shape (..., 3).
    """
    light = lamp(instrument.lamp)
    seen = intensity(instrument, retardation_nm, axis_deg, light.wavelength_nm)
    return encode(desaturate(light_scale(instrument) * (seen @ _spectral_weights(light))))


def _spectral_weights(light: Lamp) -> Array:
    """Linear sRGB of unit light at each wavelength, shape (n, 3), white-balanced to the lamp."""
    balance = np.eye(3) if light.one_colour else white_balance(light.white)
    return np.asarray(light.weights @ (XYZ_TO_RGB @ balance).T)


def _basis(instrument: Instrument, row_nm: float, rows: int) -> tuple[Floats, Floats]:
    """Linear colour of the five angle functions.

    Returns
    -------
    tuple of numpy.ndarray
        Shape (rows, 4, 5): red, green, blue and luminance of F0 to F4 at each row; and shape
        (4, 5), their mean over retardation.
    """
    light = lamp(instrument.lamp)
    weights = light_scale(instrument) * _spectral_weights(light)
    weights = np.concatenate([weights, weights @ LUMINANCE[:, None]], axis=1)
    parts = angle_functions(instrument, light.wavelength_nm)
    cosine, sine = _phase_waves(instrument.lamp, row_nm, rows)
    mean = np.zeros((4, 5), np.float32)
    mean[:, :3] = weights.T @ parts.constant.T
    even = np.einsum("kn,nc->nck", parts.cosine, weights).reshape(len(weights), 12)
    odd = np.einsum("kn,nc->nck", parts.sine, weights).reshape(len(weights), 8)
    basis = np.empty((rows, 4, 5), np.float32)
    basis[..., :3] = (cosine @ even.astype(np.float32)).reshape(rows, 4, 3) + mean[:, :3]
    basis[..., 3:] = (sine @ odd.astype(np.float32)).reshape(rows, 4, 2)
    return basis, mean


@functools.lru_cache(maxsize=3)
def _phase_waves(name: str, row_nm: float, rows: int) -> tuple[Floats, Floats]:
    """Waves cos G and sin G of every row and wavelength, shape (rows, wavelengths) each."""
    phase = 2 * np.pi * row_nm * np.arange(rows)[:, None] / lamp(name).wavelength_nm
    return np.cos(phase).astype(np.float32), np.sin(phase).astype(np.float32)


def _column_axes() -> Array:
    """Axis angle of every column, rad."""
    walk = 2 * np.arange(-HALF_TURN, HALF_TURN + 1) / HALF_TURN
    along = 1 - np.abs(walk)
    across = np.copysign(1 - np.abs(along), walk)
    return np.asarray(np.arctan2(across, along) / 2)


@functools.cache
def _signal_bytes() -> tuple[Packed, Packed, Packed]:
    """Packed red, green and blue bytes of evenly spaced linear light."""
    code = np.rint(255 * encode(np.arange(_STEPS + 1) / _STEPS)).astype(np.uint32)
    red, green, blue = (np.uint32(1 << shift) * code for shift in (16, 8, 0))
    return np.uint32(0xFF000000) | red, green, blue


def _paint(basis: Floats) -> Packed:
    """Packed colours, shape (rows, columns), of linear angle functions, shape (rows, 4, 5).

    Where only the terms in 4t are there, half a turn of columns repeats itself; where none is, all
    columns are the same. Two threads share blocks of rows that fit into the cache.
    """
    count = 2 * HALF_TURN + 1
    if np.abs(basis[:, :, 3:]).max() > _NOTHING:
        painted = count
    else:
        painted = HALF_TURN + 1 if np.abs(basis[:, :, 1:]).max() > _NOTHING else 1
    waves = np.ascontiguousarray(angle_waves(_column_axes()[:painted]), np.float32)
    pixels = np.empty((len(basis), count), np.uint32)
    rows = min(len(basis), max(1, BLOCK // painted))
    share(
        lambda space, start: _paint_rows(
            basis[start : start + rows], waves, pixels[start : start + rows], space
        ),
        range(0, len(basis), rows),
    )
    return pixels


def _paint_rows(basis: Floats, waves: Floats, pixels: Packed, space: Space) -> None:
    """Paint a few rows of the table; `waves` may have fewer columns, which then repeat."""
    shape = (len(basis), waves.shape[1])
    red, green, blue, grey, low, high, keep = space.array("light", (7, *shape))
    whole = space.array("whole", shape, np.int32)
    index = space.array("index", shape, np.intp)
    byte, packed = space.array("bytes", (2, *shape), np.uint32)
    for channel, light in enumerate((red, green, blue, grey)):
        np.matmul(basis[:, channel], waves, out=light)
    _share_within_gamut((red, green, blue), grey, low, high, keep)
    keep *= _STEPS
    np.subtract(_STEPS, keep, out=low)
    low *= grey
    low += 0.5
    packed.fill(0)
    for light, codes in zip((red, green, blue), _signal_bytes(), strict=True):
        light *= keep
        light += low
        np.copyto(whole, light, casting="unsafe")
        np.copyto(index, whole)
        np.take(codes, index, out=byte, mode="clip")
        packed |= byte
    pixels[:, : shape[1]] = packed
    if shape[1] == 1:
        pixels[:, 1:] = packed
    elif shape[1] == HALF_TURN + 1:
        pixels[:, HALF_TURN + 1 :] = packed[:, 1:]


def _share_within_gamut(
    colours: tuple[Floats, Floats, Floats], grey: Floats, low: Floats, high: Floats, keep: Floats
) -> None:
    """Write into `keep` how much colour `demo_app.optics.colour.desaturate` keeps; clip `grey`."""
    red, green, blue = colours
    np.clip(grey, 1e-9, 1 - 1e-6, out=grey)
    np.minimum(red, green, out=low)
    np.minimum(low, blue, out=low)
    np.subtract(grey, low, out=low)
    np.maximum(low, grey, out=low)
    np.divide(grey, low, out=keep)
    np.maximum(red, green, out=high)
    np.maximum(high, blue, out=high)
    np.subtract(high, grey, out=high)
    np.subtract(1, grey, out=low)
    np.maximum(high, low, out=high)
    np.divide(low, high, out=low)
    np.minimum(keep, low, out=keep)
