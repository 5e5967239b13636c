"""What an eye makes of a stage: light and colour on a coarse grid that follows each piece.

The grid lies in the piece's own shape (across it from edge to edge, along it from end to end), so
that "at the edge" means the same for a bar and for a bottle.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.colour import LUMINANCE
from demo_app.optics.instrument import Instrument
from demo_app.optics.luminance import decoded
from demo_app.optics.picture import peak_nm
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.optics.table import HALF_TURN, ColourTable, colour_table, light_scale, reach_for

Floats = NDArray[np.float32]
Array = NDArray[np.float64]

ROWS, COLUMNS = 61, 81
TOUCHING_MM = 1.0


@dataclass(frozen=True)
class Seen:
    """One piece, or several that touch end to end, as far as they lie within the picture.

    Parameters
    ----------
    rgb : numpy.ndarray
        Shape (rows, cols, 3), linear light; the open field between parallel polarizers is 1. The
        first row is the top edge.
    x_mm : numpy.ndarray
        Shape (cols,): columns on the stage, mm.
    y_mm : float
        Height of its middle on the stage, mm.
    half_mm : float
        Half of its largest height, mm.
    """

    rgb: Floats
    x_mm: Array
    y_mm: float
    half_mm: float

    @property
    def light(self) -> Floats:
        """Luminance, shape (rows, cols)."""
        return np.asarray(self.rgb @ LUMINANCE.astype(np.float32), np.float32)


def look(stage: Stage, instrument: Instrument) -> tuple[Seen, ...]:
    """All pieces of a stage, from left to right."""
    table = colour_table(instrument, reach_for(peak_nm(stage)))
    scale = _to_open_field(instrument)
    half = stage.width_mm / 2
    window = stage.centre_mm[0] - half, stage.centre_mm[0] + half
    found = [_piece(placed, table, scale, window) for placed in stage.pieces]
    return _joined(sorted((one for one in found if one is not None), key=lambda one: one.x_mm[0]))


def bare(instrument: Instrument) -> Floats:
    """Linear light of the field where there is no stress, shape (3,)."""
    packed = np.uint32(colour_table(instrument, reach_for(0.0)).bare)
    return np.asarray(_linear(packed.reshape(1))[0] * _to_open_field(instrument), np.float32)


def _to_open_field(instrument: Instrument) -> np.float32:
    """Factor from the screen's linear light to shares of the open field's, gain kept."""
    return np.float32(instrument.gain / light_scale(instrument))


def _piece(
    placed: Placed, table: ColourTable, scale: np.float32, window: tuple[float, float]
) -> Seen | None:
    m = placed.map
    left = max(m.along_mm[0], window[0] - placed.x_mm)
    right = min(m.along_mm[-1], window[1] - placed.x_mm)
    if right <= left:
        return None
    along = np.linspace(left, right, COLUMNS)
    v1, v2 = _sampled(m, along)
    rgb = _linear(_packed(table, v1, v2)) * scale
    half = float(np.interp(along, m.along_mm, m.half_width_mm).max())
    return Seen(rgb, along + placed.x_mm, placed.y_mm, half)


def _sampled(m: RetardationMap, along: Array) -> tuple[Array, Array]:
    """v1 and v2 from the top edge down, shape (ROWS, columns)."""
    across = np.linspace(1.0, -1.0, ROWS)
    row = np.interp(np.abs(across) if m.mirrored else across, m.across, np.arange(m.across.size))
    column = np.interp(along, m.along_mm, np.arange(m.along_mm.size))
    v1, v2 = (_bilinear(values, row, column) for values in (m.v1, m.v2))
    if m.mirrored:
        v2 = np.where(across[:, None] < 0, -v2, v2)
    return v1, v2


def _bilinear(values: Floats, row: Array, column: Array) -> Array:
    i, j = (
        np.clip(place.astype(int), 0, size - 2)
        for place, size in zip((row, column), values.shape, strict=True)
    )
    up, on = (row - i)[:, None], column - j
    first, second = (values[k][:, j] * (1 - on) + values[k][:, j + 1] * on for k in (i, i + 1))
    return np.asarray(first * (1 - up) + second * up)


def _packed(table: ColourTable, v1: Array, v2: Array) -> NDArray[np.uint32]:
    """Table's colours; see `demo_app.optics.table` for the angle."""
    rows = len(table.pixels)
    row = np.rint(np.hypot(v1, v2) / table.row_nm).astype(int)
    row = row % (rows - 1) if table.wraps else np.minimum(row, rows - 1)
    turn = np.copysign(1 - v1 / np.maximum(np.abs(v1) + np.abs(v2), 1e-30), v2)
    column = np.rint((turn / 2 + 1) * HALF_TURN).astype(int)
    return np.asarray(table.pixels[row, column], np.uint32)


def _linear(packed: NDArray[np.uint32]) -> Floats:
    """Linear red, green, blue of packed colours, shape (..., 3)."""
    return np.stack([decoded()[packed >> shift & 0xFF] for shift in (16, 8, 0)], axis=-1)


def _joined(pieces: list[Seen]) -> tuple[Seen, ...]:
    """Pieces with those put together that touch end to end."""
    found: list[Seen] = []
    for piece in pieces:
        last = found[-1] if found else None
        if last is None or last.y_mm != piece.y_mm or _apart(last, piece):
            found.append(piece)
            continue
        x_mm = np.linspace(last.x_mm[0], piece.x_mm[-1], COLUMNS)
        source = np.concatenate([last.x_mm, piece.x_mm])
        nearest = np.rint(np.interp(x_mm, source, np.arange(source.size))).astype(int)
        rgb = np.concatenate([last.rgb, piece.rgb], axis=1)[:, nearest]
        found[-1] = Seen(rgb, x_mm, piece.y_mm, max(last.half_mm, piece.half_mm))
    return tuple(found)


def _apart(left: Seen, right: Seen) -> bool:
    return abs(float(right.x_mm[0] - left.x_mm[-1])) > TOUCHING_MM
