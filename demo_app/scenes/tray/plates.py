"""The table's own samples: plates as in the scene `toughen`, small enough for a table.

Face-on the light goes through the thickness, along which pull and squeeze cancel; edge-on it goes
through a slice, as the scene `toughen` imagines it, along the layers.
"""

import numpy as np

from demo_app.optics.retardation import Placed, RetardationMap
from demo_app.physics.jet_lattice import lattice
from demo_app.physics.material_files import material
from demo_app.physics.toughening import Blown, begin, blow, cold_after
from demo_app.scenes.scene import Outline
from demo_app.scenes.toughening.record import SLICE_PATH, Settings, quench_of
from demo_app.scenes.tray.sample import Array, Sample, laid

WIDTH_MM, HEIGHT_MM = 100.0, 70.0
"""Of all plates."""
_LINES = 160
"""Of a slice's picture."""


def plain() -> Sample:
    """A plate that was cooled slowly, face-on."""
    return _dark("plain", ())


def laminated() -> Sample:
    """Two such plates with a film between them, face-on: the film does not show."""
    return _dark("laminated", ())


def toughened_face() -> Sample:
    """A toughened plate face-on: what jets and edges have left."""
    settings, cold = _blown()
    seen = lattice(
        quench_of(settings),
        (1e-3 * WIDTH_MM, 1e-3 * HEIGHT_MM),
        settings.jet_unevenness_pct / 100,
        cold.column.time,
    )
    optic = material(settings.glass).stress_optic
    scale = 1e6 * optic * settings.thickness_mm
    # The outermost elements' middles are drawn at the edge.
    piece = RetardationMap(
        (scale * (seen.xx - seen.yy)).astype(np.float32),
        (scale * 2 * seen.xy).astype(np.float32),
        seen.y / seen.y[-1],
        seen.x / seen.x[-1] * WIDTH_MM / 2,
        np.full(seen.x.size, HEIGHT_MM / 2),
        mirrored=False,
    )
    return laid("toughened-face", "face-on", (Placed(piece),), (), optic, settings.thickness_mm)


def toughened() -> Sample:
    """A slice of the same plate edge-on: squeezed at both faces, pulled between them."""
    settings, cold = _blown()
    optic = material(settings.glass).stress_optic
    z, stress = quench_of(settings).wall.z, cold.column.stress
    line = 1e9 * optic * SLICE_PATH * _strips(z, stress)
    v1 = np.repeat(line[:, None], 2, axis=1).astype(np.float32)
    piece = RetardationMap(
        v1,
        np.zeros_like(v1),
        np.linspace(-1.0, 1.0, _LINES),
        np.array([-0.5, 0.5]) * WIDTH_MM,
        np.full(2, settings.thickness_mm / 2),
        mirrored=False,
    )
    path = 1e3 * SLICE_PATH
    return laid("toughened", f"{path:g} mm slice, edge-on", (Placed(piece),), (), optic, path)


def _strips(z: Array, stress: Array) -> Array:
    """Means over equal strips: they add up to no force as exactly as the plate's own stress."""
    edges = np.linspace(z[0], z[-1], _LINES + 1)
    both = np.union1d(edges, z)
    at = np.interp(both, z, stress)
    force = np.concatenate([[0.0], np.cumsum(np.diff(both) * (at[1:] + at[:-1]) / 2)])
    return np.asarray(np.diff(np.interp(edges, both, force)) / np.diff(edges))


def _dark(name: str, outlines: tuple[Outline, ...]) -> Sample:
    settings = Settings()
    none = np.zeros((2, 2), np.float32)
    ends = np.array([-1.0, 1.0])
    piece = RetardationMap(
        none, none, ends, ends * WIDTH_MM / 2, np.full(2, HEIGHT_MM / 2), mirrored=False
    )
    optic = material(settings.glass).stress_optic
    return laid(name, "face-on", (Placed(piece),), outlines, optic, settings.thickness_mm)


def _blown() -> tuple[Settings, Blown]:
    """The scene's plate with its default settings, cold."""
    settings = Settings()
    ready = quench_of(settings)
    state, cold = begin(ready), cold_after(ready)
    while state.column.time < cold:
        state = blow(ready, state, cold)
    return settings, state
