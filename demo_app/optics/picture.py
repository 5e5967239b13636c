"""From a stage to a picture: retardation maps to screen pixels, fast enough to be live.

The maps' components v1 and v2 are interpolated, not their colours, which turn several times within
a few map points. Each pixel then costs one look-up in the instrument's colour table.
"""

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.fading import contrast
from demo_app.optics.instrument import Instrument
from demo_app.optics.painting import paint_piece
from demo_app.optics.retardation import RetardationMap, Stage
from demo_app.optics.sampling import Plan, plan_for
from demo_app.optics.table import ColourTable, colour_table, reach_for

Bytes = NDArray[np.uint8]


def colour(
    stage: Stage,
    instrument: Instrument,
    width_px: int,
    height_px: int,
    out: Bytes | None = None,
) -> Bytes:
    """Picture of `stage` in `instrument`.

    Parameters
    ----------
    stage : Stage
        Pieces between the polarizers; where there is none, the bare field is seen.
    instrument : Instrument
        Its colour table is built on first use and kept.
    width_px, height_px : int
        Size of the picture.
    out : numpy.ndarray, optional
        Buffer of the returned shape to paint into, which saves getting one from the system.

    Returns
    -------
    numpy.ndarray
        Shape (height_px, width_px, 4), uint8, in the order blue, green, red, 255: on the usual
        (little-endian) machines the bytes of QImage's Format_RGB32.

    Raises
    ------
    ValueError
        If the picture has no pixels or `out` has another shape.
    """
    plan = plan_for(stage, width_px, height_px)
    return paint(stage, plan, colour_table(instrument, reach_for(peak_nm(stage))), out)


def paint(stage: Stage, plan: Plan, table: ColourTable, out: Bytes | None = None) -> Bytes:
    """Picture of `stage` by its `plan` and a colour table; `colour` explains the rest."""
    shape = (plan.view.height_px, plan.view.width_px, 4)
    picture = np.empty(shape, np.uint8) if out is None else out
    if picture.shape != shape or picture.dtype != np.uint8 or not picture.flags.c_contiguous:
        raise ValueError(f"the buffer must be contiguous bytes of shape {shape}")
    pixels = picture.view("<u4")[..., 0]
    if not plan.covered:
        pixels.fill(table.bare)
    for placed, piece in zip(stage.pieces, plan.pieces, strict=True):
        if piece is not None:
            faded = contrast(placed.map, plan.view.px_per_mm, table.middle_nm)
            paint_piece(placed.map, piece, table, faded, pixels)
    return picture


def peak_nm(stage: Stage) -> float:
    """Largest retardation on the stage, nm."""
    squares = [float(np.max(p.map.v1**2 + p.map.v2**2)) for p in stage.pieces]
    return float(np.sqrt(max(squares, default=0.0)))


def point_reading(stage: Stage, x_mm: float, y_mm: float) -> tuple[float, float] | None:
    """Retardation (nm) and axis (degrees from x, -90 to 90) at a point of the stage.

    Returns
    -------
    tuple of float or None
        None where there is no piece. The axis of the topmost piece counts.
    """
    for placed in reversed(stage.pieces):
        found = _components_at(placed.map, x_mm - placed.x_mm, y_mm - placed.y_mm)
        if found is not None:
            v1, v2 = found
            return float(np.hypot(v1, v2)), float(np.degrees(np.arctan2(v2, v1)) / 2)
    return None


def _components_at(m: RetardationMap, x: float, y: float) -> tuple[float, float] | None:
    half = float(np.interp(x, m.along_mm, m.half_width_mm))
    if not (m.along_mm[0] <= x <= m.along_mm[-1] and abs(y) <= half and half > 0):
        return None
    below = m.mirrored and y < 0
    share_of_half = abs(y) / half if m.mirrored else y / half
    v1, v2 = (
        float(
            np.interp(
                share_of_half, m.across, [float(np.interp(x, m.along_mm, line)) for line in values]
            )
        )
        for values in (m.v1, m.v2)
    )
    return v1, -v2 if below else v2
