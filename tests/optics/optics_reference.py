"""The independent libraries, imported without the warnings that are none of our doing."""

import warnings

import numpy as np

with warnings.catch_warnings():
    # Both grumble on import about optional packages that are not installed.
    warnings.simplefilter("ignore")
    import colour
    from py_pol.mueller import Mueller
    from py_pol.stokes import Stokes

from demo_app.optics.colour import XYZ_TO_RGB, decode

__all__ = ["Mueller", "Stokes", "ciede2000", "colour"]


def ciede2000(one, other):
    """Colour difference of two sRGB signals, shape (..., 3) each, by colour-science."""
    to_xyz = np.linalg.inv(XYZ_TO_RGB).T
    labs = [colour.XYZ_to_Lab(decode(signal) @ to_xyz, [0.3127, 0.3290]) for signal in (one, other)]
    return colour.delta_E(*labs, method="CIE 2000")
