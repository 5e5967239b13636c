"""Pieces, materials and surroundings that the tests of the Revolve body share."""

import dataclasses
import functools
import math

import numpy as np

from demo_app.physics.heat import ROOM, Surface
from demo_app.physics.material_files import material
from demo_app.physics.materials import HeatCapacity
from demo_app.physics.revolve.body import body
from demo_app.physics.revolve.mesh import graded, through, wall_mesh
from demo_app.physics.revolve.profile import bottle, cylinder

SODA = material("soda-lime")
DIFFUSIVITY = 1.0 / 1.8e6

# Soda-lime of the closed forms: 70 GPa, 9e-6 /K, nu 0.2, k 1 W/mK, diffusivity 5.556e-7 m2/s.
PLAIN = dataclasses.replace(
    SODA,
    poisson_ratio=0.2,
    expansion=9e-6,
    conductivity=(1.0, 0.0),
    heat_capacity=HeatCapacity((math.inf,), (720.0,), (0.0,), (0.0,)),
)
UNIT = PLAIN.youngs_modulus * PLAIN.expansion
"""Uniaxial stress of one kelvin held back, Pa."""


def tube(outer_diameter, wall, length, columns, rows, material=PLAIN):
    """Body of an open tube; `columns` and `rows` are element ends or numbers of elements."""
    profile = cylinder(outer_diameter, wall, length)
    if isinstance(columns, int):
        columns = np.linspace(0, profile.length, columns + 1)
    if isinstance(rows, int):
        rows = np.linspace(0, wall, rows + 1)
    return body(material, wall_mesh(profile, columns, rows))


@functools.cache
def coarse_bottle(material=SODA, centre=0.08, fine=2e-3, rows=4):
    """Body of a 70 x 3 mm bottle with fewer elements than the scene's."""
    profile = bottle(0.07, 3e-3)
    at = profile.arc_length_at_height(centre)
    ends = graded(profile, at, fine=fine, flat=0.01, coarse=0.012)
    return body(material, wall_mesh(profile, ends, through(profile.wall, 0.2e-3, rows)))


def exchange(side, coefficient=0.0, ambient=ROOM, flux=0.0):
    """What one side (``piece.heat.outer`` or ``inner``) meets, the same everywhere."""
    size = side.value.shape[0]
    parts = (coefficient, ambient, flux)
    return Surface(*(np.broadcast_to(np.asarray(part, dtype=float), size) for part in parts))


def both(piece, coefficient=0.0, ambient=ROOM):
    """The same surroundings outside and inside."""
    return tuple(
        exchange(side, coefficient, ambient) for side in (piece.heat.outer, piece.heat.inner)
    )


def nodal(piece, field):
    """`field` of shape (columns, rows) or a scalar as a vector over the nodes."""
    return np.broadcast_to(field, piece.mesh.r.shape).astype(float).ravel()


def by_column(piece, vector):
    """Nodal `vector` in shape (columns, rows)."""
    return vector.reshape(piece.mesh.r.shape)


def heat_content(piece, temperature, material):
    """Heat above 0 K where the heat capacity is constant, J."""
    capacity = material.density * material.heat_capacity(np.array(ROOM))
    return float(capacity * (piece.mesh.wall.weight @ (piece.heat.value @ temperature)))


def imbalance(piece, stress):
    """Largest nodal force that a stress (4, points) leaves, as a share of what it would leave."""
    force = np.abs(piece.stress.load(stress))
    held = piece.stress.held
    free = np.delete(force, held[held % 2 == 0])
    return float(free.max() / np.abs(piece.stress.load(np.abs(stress))).max())
