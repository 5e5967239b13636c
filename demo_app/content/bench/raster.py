"""Charts and colour strips as small pictures for paper: lines on white, without words.

Words and numbers stand around a picture as text, where they can be searched and are sharp.
"""

import numpy as np
from numpy.typing import NDArray

from demo_app.content.bench.answer import Strip
from demo_app.scenes.scene import Chart

Pixels = NDArray[np.uint8]

INKS = ((0, 70, 140), (190, 60, 0), (90, 90, 90), (0, 120, 70))
"""Colours of the curves, in their order: told apart in grey too, each with its own dashes."""
DASHES = ((1, 0), (18, 10), (5, 7), (26, 8))
_PAPER, _GRID, _FRAME, _LEVEL = 255, (225, 225, 225), (110, 110, 110), (60, 60, 60)
_LINES = 5
_WIDTH = 4


def ends_of(chart: Chart) -> tuple[float, float, float, float]:
    """Ends of both axes: least and largest x, then y with all levels; never empty."""
    xs = np.concatenate([curve.x for curve in chart.curves])
    ys = np.concatenate([*(curve.y for curve in chart.curves), [y for _, y in chart.levels]])
    low, high = float(np.min(ys)), float(np.max(ys))
    if low > 0 and low < 0.5 * high:
        low = 0.0
    if high - low < 1e-12:
        high = low + 1.0
    left, right = float(xs.min()), float(xs.max())
    return left, right if right > left else left + 1.0, low, high


def chart_picture(chart: Chart, width: int = 1200, height: int = 400) -> Pixels:
    """Picture of a chart's curves, shape (height, width, 3), uint8."""
    picture = np.full((height, width, 3), _PAPER, np.uint8)
    for k in range(_LINES):
        y = round(k / (_LINES - 1) * (height - 1))
        x = round(k / (_LINES - 1) * (width - 1))
        picture[max(0, y - 1) : y + 1] = _GRID
        picture[:, max(0, x - 1) : x + 1] = _GRID
    left, right, low, high = ends_of(chart)

    def places(x: NDArray[np.float64], y: NDArray[np.float64]) -> NDArray[np.float64]:
        across = (x - left) / (right - left) * (width - 1 - 2 * _WIDTH) + _WIDTH
        down = (high - y) / (high - low) * (height - 1 - 2 * _WIDTH) + _WIDTH
        return np.stack([across, down], axis=-1)

    for _, level in chart.levels:
        line = places(np.array([left, right]), np.array([level, level]))
        _draw(picture, line, _LEVEL, (8, 8), 2)
    for k, curve in enumerate(chart.curves):
        line = places(np.asarray(curve.x, float), np.asarray(curve.y, float))
        _draw(picture, line, INKS[k % len(INKS)], DASHES[k % len(DASHES)], _WIDTH)
    picture[[0, 1, -2, -1]] = _FRAME
    picture[:, [0, 1, -2, -1]] = _FRAME
    return picture


def key_picture(place: int, width: int = 90, height: int = 14) -> Pixels:
    """The line of the curve at `place`, for the key beside its name."""
    picture = np.full((height, width, 3), _PAPER, np.uint8)
    line = np.array([[2.0, height / 2], [width - 3.0, height / 2]])
    _draw(picture, line, INKS[place % len(INKS)], DASHES[place % len(DASHES)], _WIDTH)
    return picture


def strip_picture(strip: Strip, width: int = 1200, height: int = 90) -> Pixels:
    """Picture of a strip of colours; marked parts have a black bar under them."""
    at = np.linspace(0, len(strip.colours) - 1, width).round().astype(int)
    picture = np.full((height, width, 3), _PAPER, np.uint8)
    picture[: height - 20] = strip.colours[at]
    for low, high in strip.spans:
        ends = (np.array([low, high]) - strip.low_nm) / (strip.high_nm - strip.low_nm)
        first, last = np.clip(np.round(ends * (width - 1)), 0, width - 1).astype(int)
        picture[height - 14 : height - 4, max(0, first - 1) : last + 2] = 0
    return picture


def _draw(
    picture: Pixels,
    line: NDArray[np.float64],
    ink: tuple[int, int, int],
    dashes: tuple[int, int],
    wide: int,
) -> None:
    """Draw a line through points (across, down), pixels, with a square pen."""
    if len(line) < 2:
        line = np.concatenate([line, line + 0.5])
    steps = np.hypot(*np.diff(line, axis=0).T)
    along = np.concatenate([[0.0], np.cumsum(steps)])
    walk = np.arange(0.0, along[-1] + 0.5, 0.5)
    on, off = dashes
    walk = walk[(walk % (on + off)) < on] if off else walk
    places = [np.interp(walk, along, line[:, k]) for k in (0, 1)]
    across, down = (np.round(one).astype(int) for one in places)
    rows, columns = picture.shape[:2]
    for dy in range(-(wide // 2), wide - wide // 2):
        for dx in range(-(wide // 2), wide - wide // 2):
            y, x = np.clip(down + dy, 0, rows - 1), np.clip(across + dx, 0, columns - 1)
            picture[y, x] = ink
