"""What is seen of the plates of the scene `cooling`: edge-on, face-on, and cut.

Edge-on the light goes along the joint, through `path_mm` of glass, and sees the stress across the
joint, which is each part's own squeeze and pull. Face-on it goes through the thickness and sees
only what does not cancel in it: the load of joined parts on each other. Close to edges and joint,
within about one thickness, real plates differ.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.physics.column.wall import Wall
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.stepped import Piece, PieceState, mean_stress
from demo_app.scenes.cooling_parts.settings import Settings
from demo_app.scenes.scene import Mark, Seam, Section

Array = NDArray[np.float64]

LONG = 2.6
"""Length of a part that is drawn, over the thickest part's thickness."""
FACE_MM = 60.0
"""Side of a part that is drawn face-on."""
_JOINT = 1e-4
"""Width of the step in the section of one piece, as a share of a part's length; too narrow to
be seen in the picture."""
_GAP = 0.15
"""Gap between parts that are not joined, as a share of a part's length."""
_MARKED = 1.0
"""Stress from which arrows are drawn, MPa."""


@dataclass(frozen=True)
class Look:
    """Which way the light goes.

    Parameters
    ----------
    face_on : bool
        Through the faces, else along the joint.
    path_mm : float
        Path through the glass when seen edge-on.
    stress_optic : float
        1/Pa.
    """

    face_on: bool
    path_mm: float
    stress_optic: float


def look_of(settings: Settings) -> Look:
    """The way the light goes by the settings."""
    optic = material(settings.glass).stress_optic
    return Look(settings.look == "face-on", settings.path_mm, optic)


def seen_nm(what: Piece, state: PieceState, look: Look) -> float:
    """Largest retardation in the picture, nm."""
    paths = [
        abs(mean_stress(wall, across - part.stress)) * wall.thickness
        if look.face_on
        else float(np.abs(across).max()) * 1e-3 * look.path_mm
        for wall, part, across in zip(what.walls, state.parts, state.crosswise, strict=True)
    ]
    return 1e9 * look.stress_optic * max(paths)


def stage(what: Piece, state: PieceState, look: Look) -> Stage:
    """The plates between the polarizers."""
    long = FACE_MM if look.face_on else _length(what)
    ends = _ends(what, long)
    maps: list[tuple[Array, Array, Array, Array]] = []
    for k, wall in enumerate(what.walls):
        if look.face_on:
            load = mean_stress(wall, state.crosswise[k] - state.parts[k].stress)
            across, column = np.array([-1.0, 1.0]), np.full(2, load * wall.thickness)
            half = FACE_MM / 2
        else:
            across, column = _finer(wall, state.crosswise[k])
            column, half = column * 1e-3 * look.path_mm, 500 * wall.thickness
        along = np.array(ends[k])
        seen = 1e9 * look.stress_optic * np.tile(column[:, None], along.size)
        maps.append((across, seen, np.full(along.size, half), along))
    placed = tuple(
        Placed(
            RetardationMap(
                v1=seen.astype(np.float32),
                v2=np.zeros(seen.shape, dtype=np.float32),
                across=across,
                along_mm=along,
                half_width_mm=half,
                mirrored=False,
            )
        )
        for across, seen, half, along in maps
    )
    high = FACE_MM if look.face_on else 1e3 * max(wall.thickness for wall in what.walls)
    return Stage(placed, 1.15 * (ends[-1][1] - ends[0][0]), 1.5 * high)


def section(what: Piece, state: PieceState) -> Section:
    """A cut through the plates with the stress in their plane, along the joint if there is one."""
    ends = _ends(what, _length(what))
    x, y, temperature, stress = [], [], [], []
    for wall, part, (left, right) in zip(what.walls, state.parts, ends, strict=True):
        for at in (left, (left + right) / 2, right):
            x.append(np.full(wall.z.size, at))
            y.append(1e3 * wall.z)
            temperature.append(part.temperature - ZERO_C)
            stress.append(1e-6 * part.stress)
    still = np.zeros((y[0].size, len(y)))
    return Section(
        np.stack(x, axis=1),
        np.stack(y, axis=1),
        still,
        still,
        np.stack(temperature, axis=1),
        np.stack(stress, axis=1),
        "along_joint" if what.joined else "in_plane",
        1.0,
        (Seam(3, y[0].size),) if len(what.walls) > 1 and not what.joined else (),
    )


def marks(what: Piece, state: PieceState, look: Look) -> tuple[Mark, ...]:
    """Arrows for what pulls and what squeezes, where that is worth an arrow."""
    long = FACE_MM if look.face_on else _length(what)
    found = []
    for k, (wall, (left, right)) in enumerate(zip(what.walls, _ends(what, long), strict=True)):
        x, reach = (left + right) / 2, 0.12 * long
        if look.face_on:
            load = 1e-6 * mean_stress(wall, state.parts[k].stress - state.crosswise[k])
            places = [(0.0, load, 90.0)]
        else:
            stress = 1e-6 * state.crosswise[k]
            edge = 480 * wall.thickness
            middle = float(np.interp(0.0, wall.point_z, stress))
            top, bottom = float(stress[-1]), float(stress[0])
            places = [(0.0, middle, 0.0), (edge, top, 0.0), (-edge, bottom, 0.0)]
        found += [
            Mark("pull" if value > 0 else "squeeze", x, y, reach, angle)
            for y, value, angle in places
            if abs(value) > _MARKED
        ]
    return tuple(found)


def _length(what: Piece) -> float:
    """Drawn length of a part seen edge-on, mm."""
    return LONG * 1e3 * max(wall.thickness for wall in what.walls) / len(what.walls)


def _ends(what: Piece, long: float) -> tuple[tuple[float, float], ...]:
    """Left and right end of each part, mm, all of them about x = 0."""
    if len(what.walls) == 1:
        return ((-long / 2, long / 2),)
    near = long * (_JOINT if what.joined else _GAP) / 2
    return ((-near - long, -near), (near, near + long))


def _finer(wall: Wall, stress: Array) -> tuple[Array, Array]:
    """Places from -1 to 1 and stresses there, each cell cut into four."""
    place = wall.point_z / (wall.thickness / 2)
    quarters = np.arange(4 * (place.size - 1) + 1) / 4
    at = np.interp(quarters, np.arange(place.size), place)
    return at, np.interp(at, place, stress)
