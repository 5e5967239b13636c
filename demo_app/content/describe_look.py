"""Where a piece is bright and dark, how many bands it has, and in which colours: measured."""

from collections import Counter
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from demo_app.optics.colour import LUMINANCE, SCREEN_WHITE, XYZ_TO_RGB, lightness_chroma_hue
from demo_app.optics.seen import Seen
from demo_app.optics.words import colour_word

Floats = NDArray[np.float32]

DARK = 0.013
"""Share of the open field's light below which glass is called dark: 20 nm between crossed
polarizers."""
BRIGHT = 0.15
EVEN = 0.02
"""Spread of light within which a piece is called even."""
CLEAR = 1.5
"""How many times as bright one place must be as another to be told apart from it."""
MOST_SHADES = 24
"""Commonest shades that are put into words; the others take too little of a piece."""
LINE = 0.35
"""Share of the brightest row's light below which a row in the middle is a dark line."""
_INNER = {"place.middle", "place.centre", "place.across"}
_FLARE = 0.01
_STEP = np.log(1.35)
"""Ratio of light between a band and its neighbours that is clearly seen, in logarithms."""


@dataclass(frozen=True)
class Zones:
    """Mean light of the parts of a piece that have names."""

    top: float
    bottom: float
    middle: float
    left: float
    right: float
    centre: float
    across: float


def zones(light: Floats) -> Zones:
    """Mean light of each part."""
    rows, columns = light.shape
    edge, end = round(0.12 * rows), round(0.12 * columns)
    inner_rows = slice(round(0.25 * rows), round(0.75 * rows))
    inner_columns = slice(round(0.2 * columns), round(0.8 * columns))
    core_rows = slice(round(0.42 * rows), round(0.58 * rows) + 1)
    core_columns = slice(round(0.42 * columns), round(0.58 * columns) + 1)
    return Zones(
        top=float(light[:edge, inner_columns].mean()),
        bottom=float(light[-edge:, inner_columns].mean()),
        middle=float(light[core_rows, inner_columns].mean()),
        left=float(light[inner_rows, :end].mean()),
        right=float(light[inner_rows, -end:].mean()),
        centre=float(light[core_rows, core_columns].mean()),
        across=float(light[inner_rows, core_columns].mean()),
    )


def places(found: Zones, ring: float | None = None) -> tuple[str, float, str, float]:
    """Text ids of the brightest and the darkest place, each with its mean light.

    Parameters
    ----------
    found : Zones
    ring : float or None
        Mean light near a heated ring, where there is one.
    """
    named = {
        "place.middle": found.middle,
        "place.across": found.across,
        "place.centre": found.centre,
        **_pair("top", "bottom", "both_edges", found.top, found.bottom),
        **_pair("left", "right", "both_ends", found.left, found.right),
    }
    if "place.both_edges" in named and "place.both_ends" in named:
        edges, ends = named["place.both_edges"], named["place.both_ends"]
        if max(edges, ends) < CLEAR * min(edges, ends) + DARK:
            named["place.rim"] = min(edges, ends)
            del named["place.both_edges"], named["place.both_ends"]
    if ring is not None:
        named["place.ring"] = ring
    bright = max(named, key=lambda k: named[k])
    # What lies within the bright place, or around it, is no other place.
    others = {k: v for k, v in named.items() if bright not in _INNER or k not in _INNER}
    dark = min(others, key=lambda k: others[k])
    return bright, named[bright], dark, named[dark]


def _pair(one: str, other: str, both: str, first: float, second: float) -> dict[str, float]:
    """Two opposite sides by one name where they are alike."""
    if max(first, second) < CLEAR * min(first, second) + DARK:
        return {f"place.{both}": (first + second) / 2}
    return {f"place.{one}": first, f"place.{other}": second}


def dark_line(light: Floats) -> bool:
    """Whether a dark line runs along the middle, between brighter edges."""
    rows, columns = light.shape
    profile = light[:, round(0.3 * columns) : round(0.7 * columns)].mean(axis=1)
    middle = profile[round(0.4 * rows) : round(0.6 * rows) + 1]
    top, bottom = float(profile[: rows // 5].max()), float(profile[-(rows // 5) :].max())
    return float(middle.min()) < LINE * min(top, bottom) and min(top, bottom) > DARK


def bands(light: Floats) -> tuple[int, str]:
    """Number of bright bands and the way that they run: across where light changes most."""
    level = np.log(np.maximum(light, 0) + _FLARE)
    down = float(np.median(np.abs(np.diff(level, axis=0)).sum(axis=0)))
    along = float(np.median(np.abs(np.diff(level, axis=1)).sum(axis=1)))
    rows, columns = light.shape
    shares = (0.2, 0.35, 0.5, 0.65, 0.8)
    if down >= along:
        counts = [_bars(light[:, round(share * (columns - 1))]) for share in shares]
        return int(np.median(counts)), "lengthwise"
    return int(np.median([_bars(light[round(share * (rows - 1))]) for share in shares])), "upright"


def _bars(light: Floats) -> int:
    """Maxima between places that are clearly darker; those at the line's ends count too."""
    level = np.log(np.append(np.maximum(light, 0), 0) + _FLARE)
    count, sign, extreme = 0, 1.0, -np.inf
    low = np.log(_FLARE)
    for now in level:
        extreme = max(extreme, sign * now)
        if extreme - sign * now > _STEP:
            count += sign > 0 and extreme > low + _STEP
            sign, extreme = -sign, -sign * now
    return int(count)


def colours(piece: Seen, most: int = 3) -> tuple[str, ...]:
    """Words for the colours that take most of the lit part of a piece, the commonest first."""
    rgb = piece.rgb[::3, ::4].reshape(-1, 3)
    lit = rgb[rgb @ LUMINANCE.astype(np.float32) > DARK]
    if not len(lit):
        return ("black",)
    # Colours are named once for each of 16 levels a channel.
    steps = np.clip(np.rint(15 * np.sqrt(np.clip(lit, 0, 1))), 0, 15).astype(int)
    counted = Counter(map(tuple, steps.tolist()))
    words: Counter[str] = Counter()
    for step, number in counted.most_common(MOST_SHADES):
        words[shade((np.array(step) / 15) ** 2)] += number
    common = [word for word, number in words.most_common(most) if number > 0.06 * len(lit)]
    return tuple(common) or (words.most_common(1)[0][0],)


def shade(rgb: NDArray[np.float64]) -> str:
    """Word for a colour, its lightness first: "dark blue", "bright yellow", "pale grey"."""
    xyz = np.asarray(np.linalg.solve(XYZ_TO_RGB, np.clip(rgb, 0, None)), np.float64)
    word = colour_word(xyz, SCREEN_WHITE)
    lightness, chroma, _ = (float(part) for part in lightness_chroma_hue(xyz, SCREEN_WHITE))
    if word == "grey":
        return "dark grey" if lightness < 40 else "grey"
    if word in {"black", "white"} or word.startswith("pale"):
        return word
    if lightness < 40:
        return f"dark {word}"
    return f"bright {word}" if lightness > 65 and chroma > 26 else word
