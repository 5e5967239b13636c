"""A strip of interference colours: a wedge of growing retardation as an instrument shows it."""

import functools

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.instrument import Instrument
from demo_app.optics.table import exact_signal

Bytes = NDArray[np.uint8]


@functools.lru_cache(maxsize=8)
def colour_strip(instrument: Instrument, high_nm: float, count: int = 400) -> Bytes:
    """Colours of retardations from 0 to `high_nm`, evenly spaced.

    The wedge's slow axis stands 45 degrees off the polarizer: first as the tint plate's does, so
    that retardations add up, then across it, so that they are taken from each other. Without a
    tint plate both are the same.

    Returns
    -------
    numpy.ndarray
        Shape (2, count, 3), uint8 red, green, blue: adding, then taking away. Not to be changed.
    """
    retardation = np.linspace(0.0, high_nm, count)
    axes = instrument.polarizer_deg + np.array([-45.0, 45.0])
    signal = exact_signal(instrument, *np.meshgrid(retardation, axes))
    made = np.rint(255 * np.clip(signal, 0, 1)).astype(np.uint8)
    made.flags.writeable = False
    return made
