"""Which tolerance matters most to an answer, told from its own runs.

A straight line through all runs; the square of each standardised slope is the share of the spread
that this tolerance makes (Saltelli et al. 2008, Global Sensitivity Analysis, section 1.2). What the
line leaves over comes of tolerances acting together, or of a bent course.
"""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from demo_app.content.bench.answer import Answer, Array, Column, Table
from demo_app.content.bench.sampling import Drawn
from demo_app.scenes.scene import Message

_CLEAR = 0.5
"""Share from which one tolerance is said to matter most."""
_FEWEST = 8
"""Runs below which nothing is said."""

TEXTS = {
    "matters": "What makes it spread",
    "of": "tolerance",
    "by_wall": "wall",
    "by_flame": "flame",
    "by_aim": "where the drop lands",
    "by_thick": "thickness",
    "by_error": "the oven's thermometer",
    "by_air": "air and draught",
    "by_start": "start of the jets",
    "by_jets": "jets",
    "by_reading": "reading",
    "by_ratio": "from the middle to the surface",
    "by_base": "foot",
    "by_rest": "together, or not in proportion",
    "most_wall": "What makes most of the spread is the wall: measure it.",
    "most_flame": "What makes most of the spread is the flame: set it by a gauge, not by eye.",
    "most_aim": "What makes most of the spread is where the drop lands: use a guide.",
    "most_thick": "What makes most of the spread is the thickness: measure it.",
    "most_error": "What makes most of the spread is the oven's thermometer: have it checked.",
    "most_air": "What makes most of the spread is air and draught: keep them alike.",
    "most_start": "What makes most of the spread is the heat at the start of the jets.",
    "most_jets": "What makes most of the spread is the jets: match them to a real plate first.",
    "most_reading": "What makes most of the spread is the reading: read it again.",
    "most_ratio": "What makes most of the spread is the step from the middle to the surface: read "
    "the skin as well.",
    "most_base": "What makes most of the spread is the foot: sort the flasks by it.",
}


def shares(points: Array, values: Array) -> Array:
    """Share of the variance of `values` (runs,) that each column of `points` (runs, k) makes.

    All zero where the values are the same, or the runs too few for a line.
    """
    count, width = points.shape
    spread = float(values.std())
    if count < width + 2 or spread <= 1e-12 * max(1e-300, float(np.abs(values).max())):
        return np.zeros(width)
    sides = points.std(axis=0)
    scaled = (points - points.mean(axis=0)) / np.where(sides > 0, sides, 1.0)
    slopes = np.linalg.lstsq(scaled, (values - values.mean()) / spread, rcond=None)[0]
    found = slopes**2
    # Points that are not quite independent can add up to a little more than all.
    return np.asarray(found / max(1.0, float(found.sum())))


def ranked(answer: Answer, drawn: Drawn[object], values: Sequence[float]) -> Answer:
    """The answer with a table of what makes `values`, one a run, spread, the largest first."""
    if len(values) < _FEWEST:
        return answer
    found = shares(drawn.points, np.asarray(values, float))
    order = np.argsort(-found)
    if not found.any():
        return answer
    rows = [(f"by_{drawn.names[k]}", 100 * float(found[k])) for k in order]
    rows.append(("by_rest", 100 * max(0.0, 1 - float(found.sum()))))
    table = Table("matters", (Column("of"), Column("share", "%")), tuple(rows))
    told = answer.sentences
    if found[order[0]] >= _CLEAR and len(found) > 1:
        told = (*told, Message(f"most_{drawn.names[order[0]]}"))
    return replace(answer, tables=(*answer.tables, table), sentences=told)
