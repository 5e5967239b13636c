"""One instant of a piece in somebody's hands, and of its two small cracks."""

import functools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.physics import beams
from demo_app.physics.beams import Field, Piece
from demo_app.physics.column.advance import ColumnState
from demo_app.physics.column.wall import CELLS, Wall, plate
from demo_app.physics.crack_mouth import inner_opening, surface_crack
from demo_app.physics.material_files import material
from demo_app.physics.materials import Material
from demo_app.physics.strength import handled, probability, uniform_intensity
from demo_app.scenes.pushing.settings import (
    BENT,
    DISK_PAD_MM,
    HEIGHT_MM,
    INNER_MM,
    LENGTH_MM,
    OUTER_MM,
    PAD_MM,
    RADIUS_MM,
    SLICE_MM,
    STRIPS,
    Settings,
)

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Crack:
    """A small crack.

    Parameters
    ----------
    ratio : float
        K over K_IC; below zero it is pressed shut.
    places, opening : numpy.ndarray
        Along the crack from its mouth (in a disk: from one tip to the other) and how far it gapes
        there, m.
    """

    ratio: float
    places: Array
    opening: Array


@dataclass(frozen=True)
class State:
    """One instant.

    Parameters
    ----------
    time_s, step : float, int
        Model time, and steps since the start.
    force : float
        Of the hands, N.
    column : ColumnState or None
        The plate that the slice is cut from.
    field : Field
        Stress and displacement; after a break those of each part.
    peak_nm : float
        Largest retardation so far.
    broke_s : float or None
        When it parted.
    last : tuple of (str, float)
        Names and values of the readings just before it parted.
    """

    time_s: float
    step: int
    force: float
    column: ColumnState | None
    field: Field
    peak_nm: float = 0.0
    broke_s: float | None = None
    last: tuple[tuple[str, float], ...] = ()


@functools.lru_cache(maxsize=8)
def _held(kind: str, name: str) -> tuple[Piece, Field]:
    """The piece and its field under 1 N for each metre of thickness, squeezed ones included."""
    solid, length, height = material(name), 1e-3 * LENGTH_MM, 1e-3 * HEIGHT_MM
    if kind in STRIPS:
        piece = beams.pulled(solid, length, height)
    elif kind in BENT:
        inner = INNER_MM if kind == "bar-bent" else 0.0
        piece = beams.bent(solid, length, height, *(1e-3 * s for s in (inner, OUTER_MM, PAD_MM)))
    else:
        piece = beams.pressed_disk(solid, 1e-3 * RADIUS_MM, 1e-3 * DISK_PAD_MM)
    return piece, beams.held_by_hands(piece)


@functools.lru_cache(maxsize=8)
def _slice(name: str, length_mm: float) -> Piece:
    return beams.bar(material(name), 1e-3 * length_mm, 1e-3 * SLICE_MM)


def piece_of(settings: Settings, state: State) -> Piece:
    """The piece, or each of its two parts."""
    if settings.held:
        return _held(settings.kind, settings.material)[0]
    parts = 1 if state.broke_s is None else 2
    return _slice(settings.material, LENGTH_MM / parts)


@functools.lru_cache(maxsize=8)
def wall_of(name: str) -> Wall:
    """The plate that the slice is cut from."""
    return plate(material(name), 1e-3 * SLICE_MM, CELLS)


def pull(settings: Settings, force: float) -> float:
    """The hands' force as a pull, N for each metre of thickness; a squeeze is negative."""
    sign = -1.0 if settings.kind == "bar-squeezed" else 1.0
    return sign * force / (1e-3 * settings.thickness_mm)


def held_field(settings: Settings, force: float) -> Field:
    """Field under hands of `force`, N."""
    _, unit = _held(settings.kind, settings.material)
    size = pull(settings, force)
    return Field(size * unit.stress, size * unit.nodal, size * unit.moved)


def slice_field(settings: Settings, column: ColumnState, parts: int = 1) -> Field:
    """Field of a narrow slice of the plate as it is now, or of each of its `parts`."""
    piece, wall = _slice(settings.material, LENGTH_MM / parts), wall_of(settings.material)
    there = np.interp(piece.mesh.inside.y, wall.point_z, column.stress)
    return beams.locked_in(piece, beams.locked_stress(piece.material, there))


def profile(settings: Settings, state: State) -> tuple[Array, Array]:
    """Places across the cut (m, upward) and the stress across it there, Pa."""
    piece = piece_of(settings, state)
    y, stress = piece.mesh.y[0], state.field.nodal[0, 0]
    if piece.copies == 2:
        y, stress = np.concatenate([-y[:0:-1], y]), np.concatenate([stress[:0:-1], stress])
    fine = np.linspace(y[0], y[-1], 401)
    return fine, np.interp(fine, y, stress)


def sums(settings: Settings, state: State) -> tuple[float, float]:
    """All the pull and all the squeeze in the cut, N; the squeeze is negative.

    The pull is added up place by place; the squeeze is what is then left of the whole.
    """
    y, stress = profile(settings, state)
    thickness = 1e-3 * settings.thickness_mm
    net = cut_sums(settings, state)[0]
    pull = thickness * float(np.trapezoid(np.maximum(stress, 0.0), y))
    squeeze = net - pull
    return (pull, squeeze) if squeeze < -1e-6 * abs(net) else (net, 0.0)


def cut_sums(settings: Settings, state: State) -> tuple[float, float, float]:
    """Net force (N) and moment (Nm) of the cut's stress, and the hands' moment on one half."""
    piece, thickness = piece_of(settings, state), 1e-3 * settings.thickness_mm
    force = thickness * beams.cut_force(piece, state.field)
    moment = thickness * beams.cut_moment(piece, state.field)
    size = 0.0 if state.broke_s is not None else state.force
    return force, moment, size * beams.hands_moment(piece)


def cracks(settings: Settings, state: State) -> tuple[Crack, ...]:
    """The two cracks: of a bar below and above, of a disk upright and lying."""
    depth = 1e-3 * settings.crack_mm
    if depth == 0 or state.broke_s is not None:
        return ()
    if settings.held:
        unit = _unit_cracks(settings.kind, settings.material, depth)
        return tuple(_scaled(one, abs(pull(settings, state.force))) for one in unit)
    y, stress = profile(settings, state)
    return _edge_cracks(material(settings.material), y, stress, depth)


def _scaled(crack: Crack, size: float) -> Crack:
    return Crack(size * crack.ratio, crack.places, size * crack.opening)


@functools.lru_cache(maxsize=16)
def _unit_cracks(kind: str, name: str, depth: float) -> tuple[Crack, ...]:
    """Cracks under hands of 1 N for each metre of thickness."""
    solid = material(name)
    piece, unit = _held(kind, name)
    if kind == "disk-squeezed":
        return tuple(_inner_crack(solid, float(unit.nodal[k, 0, 0]), depth) for k in (0, 1))
    sign = -1.0 if kind == "bar-squeezed" else 1.0
    return _edge_cracks(solid, piece.mesh.y[0], sign * unit.nodal[0, 0], depth)


def _inner_crack(solid: Material, stress: float, half: float) -> Crack:
    """Crack through the middle of the disk; longer ones feel the rim: Atkinson 1982 (memory)."""
    near_rim = 1 + 1.5 * (half / (1e-3 * RADIUS_MM)) ** 2
    ratio = uniform_intensity(stress, half, near_rim) / solid.fracture_toughness
    return Crack(ratio, *inner_opening(stress, half, solid.youngs_modulus))


def _edge_cracks(solid: Material, y: Array, stress: Array, depth: float) -> tuple[Crack, ...]:
    wall = float(y[-1] - y[0])
    found = []
    for values in (stress, stress[::-1]):

        def across(at: Array, values: Array = values) -> Array:
            return np.interp(at, y - y[0], values)

        tip, *gap = surface_crack(across, depth, wall, solid.youngs_modulus)
        found.append(Crack(tip / solid.fracture_toughness, *gap))
    return tuple(found)


def break_odds(settings: Settings, state: State) -> float:
    """Probability that the piece breaks without the two cracks, from flaws of handled surfaces.

    Its two faces and its edges count, each place with its largest tension.
    """
    if state.broke_s is not None:
        return 1.0
    piece, thickness = piece_of(settings, state), 1e-3 * settings.thickness_mm
    found = handled(piece.material.characteristic_strength, piece.material.weibull_modulus)
    images = 2 * piece.copies
    around = piece.mesh.rim.value.matrix() @ state.field.nodal.reshape(3, -1).T
    risk = found.risk(largest(state.field.stress), 2 * images * piece.mesh.inside.weight)
    risk += found.risk(largest(around.T), images * thickness * piece.mesh.rim.weight)
    return probability(risk)


def largest(stress: Array) -> Array:
    """Larger principal stress of (3, ...) components."""
    xx, yy, xy = stress
    return np.asarray((xx + yy + np.hypot(xx - yy, 2 * xy)) / 2)


def smallest(stress: Array) -> Array:
    """Smaller principal stress of (3, ...) components."""
    return -largest(-stress)


def retardation(settings: Settings, stress: Array) -> Array:
    """Retardation of (3, ...) components, nm."""
    path = 1e9 * material(settings.material).stress_optic * 1e-3 * settings.thickness_mm
    xx, yy, xy = stress
    return np.asarray(abs(path) * np.hypot(xx - yy, 2 * xy))
