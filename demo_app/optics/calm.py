"""Calm pictures: bright stripes dimmed below the published limits, and nothing that comes suddenly.

A picture whose stripes go beyond the limits is dimmed as a whole, as by a grey filter, until its
lightest stripe is below the limit; colours and relative brightness stay. In a sequence every
channel of every pixel may rise by `RISE` of full linear light in a second at most: luminance is a
mean of the channels, and four flashes of a tenth in one second would need a rise of 0.4. Darkening
is gentle too, but need not be slow, since each flash has a rise. A picture that changes more slowly
and has no such stripes comes out byte for byte as it went in.
"""

import functools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.colour import decode, encode
from demo_app.optics.limits import LIMITS, Limits
from demo_app.optics.luminance import Bytes, decoded, grid_of, luminance
from demo_app.optics.share import Space, share
from demo_app.optics.stripes import Stripes, stripes

Fine = NDArray[np.uint16]

RISE = 0.39
"""Most linear light (of full white) that a channel gains in one second."""
FALL = 2.5
"""Most signal (of full white) that a channel loses in one second: black from white in 0.4 s."""
LOOK_S = 0.1
"""Time from one count of stripes to the next, s."""
LONGEST_S = 0.1
"""A longer pause between two pictures allows no larger change, s."""
MARGIN = 0.97
"""Part of the limit to which stripes are dimmed; bytes are rounded."""
EASE = 0.85
"""Part of the limits below which stripes must fall before the picture is let go bright again, so
that it does not go to and fro at the limit."""
STAY_S = 2.0
"""For how long a picture stays dimmed at least once its stripes have gone, s."""
ROWS = 64
_BYTE = np.uint16(8)


@dataclass(frozen=True)
class Calm:
    """What is on the screen, from which the next picture may depart by a little.

    Parameters
    ----------
    signal : numpy.ndarray
        Shape of the picture, uint16: 256 times its bytes, with the part that was too fine for them.
        `calmer` takes this memory over.
    factor : float
        By which linear light is being dimmed.
    at_s, looked_s : float
        Clock when it was made, and when stripes were last counted, s.
    until_s : float
        Clock until which it stays dimmed, s.
    """

    signal: Fine
    factor: float
    at_s: float
    looked_s: float
    until_s: float


def factor_for(pixels: Bytes, before: float = 1.0, limits: Limits = LIMITS) -> float:
    """Factor on linear light that brings the stripes of a picture below the limits.

    Parameters
    ----------
    pixels : numpy.ndarray
        The picture as the model makes it.
    before : float
        Factor in force. It is kept or lowered until the stripes are well below the limits.
    """
    return _factor(stripes(pixels, limits), before, limits)


def _factor(found: Stripes, before: float, limits: Limits) -> float:
    many = found.pairs > limits.pairs
    eased = EASE if before < 1 else 1.0
    if not (many and found.area > eased * limits.area):
        return 1.0
    if found.lightest_cd_m2 <= eased * limits.bright_cd_m2:
        return 1.0
    wanted = MARGIN * limits.bright_cd_m2 / found.lightest_cd_m2
    return min(before, wanted, 1.0)


def dimmed(pixels: Bytes, factor: float) -> Bytes:
    """A picture with its linear light times `factor`; itself if that is one."""
    if factor == 1:
        return pixels
    made = _dimming(factor).take(pixels)
    made >>= 8
    out = made.astype(np.uint8)
    out[..., 3] = 255
    return out


def still(pixels: Bytes, limits: Limits = LIMITS) -> tuple[Bytes, float]:
    """A single picture made calm, and the factor that was needed."""
    factor = factor_for(pixels, limits=limits)
    return dimmed(pixels, factor), factor


def first(pixels: Bytes, now_s: float, limits: Limits = LIMITS) -> tuple[Bytes, Calm]:
    """The first picture of a sequence."""
    factor = factor_for(pixels, limits=limits)
    shown = dimmed(pixels, factor)
    return shown, Calm(shown.astype(np.uint16) << _BYTE, factor, now_s, now_s, now_s + STAY_S)


def calmer(
    pixels: Bytes, now_s: float, before: Calm, limits: Limits = LIMITS
) -> tuple[Bytes, Calm, bool]:
    """The next picture of a sequence, painted into the memory of `pixels`.

    Parameters
    ----------
    pixels : numpy.ndarray
        The picture as the model makes it; changed in place.
    now_s : float
        The clock, s.
    before : Calm
        Of the picture before, of the same shape.

    Returns
    -------
    pixels : numpy.ndarray
    calm : Calm
    settled : bool
        False while the picture still moves towards the model's, which may stand still by then.
    """
    factor, looked, until = before.factor, before.looked_s, before.until_s
    if now_s - looked >= LOOK_S or now_s < looked:
        needed, looked = _next_factor(pixels, before, limits), now_s
        if needed < 1:
            factor, until = needed, now_s + STAY_S
        elif now_s >= until:
            factor = 1.0
    passed = min(max(now_s - before.at_s, 0.0), LONGEST_S)
    wanted, rise = _dimming(factor), _rises(passed)
    fall = np.uint16(min(round(FALL * passed * 0xFF00), 0xFF00))
    differ: list[bool] = []

    def work(space: Space, rows: slice) -> None:
        new, old = pixels[rows], before.signal[rows]
        aim, high, low = space.array("calm", (3, *new.shape), np.uint16)
        if factor == 1:
            np.left_shift(new, _BYTE, out=aim, casting="unsafe")
        else:
            np.take(wanted, new, out=aim, mode="clip")
            aim[..., 3] = 0xFF00
        if not np.array_equal(aim, old):
            np.right_shift(old, 8, out=low)
            np.take(rise, low, out=high, mode="clip")
            high += old
            np.minimum(old, fall, out=low)
            np.subtract(old, low, out=low)
            np.clip(aim, low, high, out=old)
            differ.append(not np.array_equal(old, aim))
        np.right_shift(old, 8, out=low)
        np.copyto(new, low, casting="unsafe")

    share(work, (slice(top, top + ROWS) for top in range(0, len(pixels), ROWS)))
    return pixels, Calm(before.signal, factor, now_s, looked, until), not any(differ)


def _next_factor(pixels: Bytes, before: Calm, limits: Limits) -> float:
    """Factor for a sequence: stripes of the model's picture count, and of what is on the screen.

    The way from one picture to another may be striped where neither is; then all light is dimmed
    below the limit for stripes.
    """
    factor = factor_for(pixels, before.factor, limits)
    grid = grid_of(pixels)
    shown = (grid_of(before.signal) >> 8).astype(np.uint8)
    if factor == 1 and stripes(shown, limits).exceed(limits):
        lightest = limits.screen_cd_m2 * float(luminance(grid).max())
        factor = min(1.0, MARGIN * limits.bright_cd_m2 / max(lightest, limits.bright_cd_m2))
    return factor


@functools.lru_cache(maxsize=8)
def _dimming(factor: float) -> Fine:
    """256 times the dimmed byte of every byte, shape (256,)."""
    if factor == 1:
        return np.arange(256, dtype=np.uint16) << _BYTE
    codes = np.floor(255 * encode(factor * decoded().astype(float)))
    return codes.astype(np.uint16) << _BYTE


def _rises(passed_s: float) -> Fine:
    """By how much 256 times a byte may rise in a time, shape (256,), for every byte."""
    # From the upper end of what the byte stands for, where the same light is fewer steps.
    fine = np.minimum(np.arange(1, 257) / 255, 1.0)
    risen = encode(np.minimum(decode(fine) + RISE * passed_s, 1.0))
    steps = np.where(fine < 1, risen - fine, 0.0)
    steps[-2:] = steps[-3]
    return np.asarray(np.floor(0xFF00 * np.maximum(steps, 0.0)), np.uint16)
