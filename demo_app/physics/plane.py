"""Points of a plate in a step: free across it, strained in its plane.

The stress across a plate is zero, so each point swells or shrinks across as its strain in the plane
and its own free strain ask for.
"""

import numpy as np

from demo_app.physics.materials import Array
from demo_app.physics.relaxation import Increment

_FLOOR = 1e-12
"""Stiffness added to a liquid, as a share of its bulk modulus: far below any stress that counts, it
keeps a plate that is all liquid solvable."""


def plane_response(step: Increment) -> tuple[Array, Array, Array, Array]:
    """Stress of points held in plane, and how it rises with the in-plane strains.

    Written so that no bulk stress cancels in a liquid.

    Returns
    -------
    tuple of numpy.ndarray
        Each of shape (p,), Pa: held stress along and across; its rise with the strain in its own
        and in the other direction.
    """
    uniaxial = step.bulk_modulus + 4 / 3 * step.shear_modulus
    through = step.remembered[2]
    kept = 2 * step.shear_modulus / uniaxial
    free = 3 * step.bulk_modulus * kept * step.free_strain - kept * through
    floor = _FLOOR * step.bulk_modulus
    own = 2 * kept * (step.bulk_modulus + step.shear_modulus / 3) + floor
    other = kept * (step.bulk_modulus - 2 / 3 * step.shear_modulus)
    along, across = (step.remembered[i] - through - free for i in (0, 1))
    return along, across, own, other


def plane_strains(step: Increment, along: Array | float, across: Array | float) -> Array:
    """Strain increments, shape (3, p), that leave no stress through the plate."""
    through = through_strain(step, along + across)
    one = np.ones_like(through)
    return np.stack((along * one, across * one, through))


def through_strain(step: Increment, swelling: Array | float) -> Array:
    """Strain increment through the plate, shape (p,), for the sum of those in its plane."""
    uniaxial = step.bulk_modulus + 4 / 3 * step.shear_modulus
    lame = step.bulk_modulus - 2 / 3 * step.shear_modulus
    free = 3 * step.bulk_modulus * step.free_strain
    return np.asarray((free - step.remembered[2] - lame * swelling) / uniaxial)
