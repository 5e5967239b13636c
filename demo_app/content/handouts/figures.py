"""Pictures for black-and-white printing: grey for light, hatching where there is no piece."""

import base64
import html
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.content.describe import spoken
from demo_app.content.pictures import draw, drawn
from demo_app.content.readings import in_words, result
from demo_app.optics.instrument import Instrument
from demo_app.optics.png import png_bytes
from demo_app.optics.retardation import Placed, Stage
from demo_app.scenes.run import state_at
from demo_app.scenes.scene import Scene

SIZE = (960, 540)
SHOWN_PX = (440, 248)
"""Width and height on paper, pixels of 1/96 inch."""
HATCH = "Slanted lines: nothing is there; on the screen it is dark."
ALL_DARK = "Crossed lines: the piece is dark all over."
_WEIGHTS = np.array([0.0722, 0.7152, 0.2126])
"""Of blue, green and red (ITU-R BT.709)."""
_EVERY, _WIDE, _INK, _PAPER = 12, 2, 190, 255
_DARK_INK, _DARK = 90, 40
_BRIGHT_NM = 275.0

Grey = NDArray[np.uint8]


@dataclass(frozen=True)
class Figure:
    """A picture on paper.

    Parameters
    ----------
    png : bytes
    alt : str
        What is seen, in words.
    caption : str
    """

    png: bytes
    alt: str
    caption: str

    def as_html(self, number: int) -> str:
        """As HTML that carries its data."""
        data = base64.b64encode(self.png).decode("ascii")
        width, height = SHOWN_PX
        alt = html.escape(self.alt, quote=True)
        return (
            f'<div class="figure"><img src="data:image/png;base64,{data}" width="{width}"'
            f' height="{height}" alt="{alt}">'
            f'<p class="caption">Figure {number}. {html.escape(self.caption)}</p></div>'
        )


def figure(scene: Scene, settings: Any, at_s: float | None = None) -> Figure:
    """The picture of a run at `at_s` (default: the end of its story), computed now.

    Parameters
    ----------
    scene, settings : Scene, object
        What runs, and its settings record.
    at_s : float, optional
        Model time, s.
    """
    state = state_at(scene, settings, at_s)
    found = result(scene, settings, state)
    view = scene.view(settings, state)
    light = scene.light(settings, Instrument())
    bare = light.filters < 2
    picture = grey(drawn(view, SIZE, light))
    note = ""
    if not bare:
        piece = inside(view.stage)
        light_alone = grey(draw(view.stage, SIZE, light))
        dark = not piece.any() or float(np.quantile(light_alone[piece], 0.99)) < _DARK
        # A page of black costs ink and shows nothing.
        shown = crossed(SIZE) if dark else picture
        picture = np.where(piece, shown, hatching(SIZE))
        note = f" {ALL_DARK if dark and piece.any() else ''} {HATCH}".replace("  ", " ")
    alt = spoken(scene, settings, view, light)
    when = f"{in_words(float(f'{found.at_s:.3g}'))} s after the start"
    caption = f"{scene.title}, {when}. {found.sentence}{note}"
    return Figure(png_bytes(np.repeat(picture[..., None], 4, axis=2)), alt, caption)


def grey(picture: NDArray[np.uint8]) -> Grey:
    """A picture of shape (height, width, 4), blue first, as grey of shape (height, width)."""
    light: Grey = np.round(picture[..., :3] @ _WEIGHTS).astype(np.uint8)
    return light


def hatching(size: tuple[int, int]) -> Grey:
    """Thin slanted lines on white, shape (height, width)."""
    columns, rows = np.meshgrid(np.arange(size[0]), np.arange(size[1]))
    return np.where((columns + rows) % _EVERY < _WIDE, _INK, _PAPER).astype(np.uint8)


def crossed(size: tuple[int, int]) -> Grey:
    """Lines both ways on white, closer than those of `hatching`, shape (height, width)."""
    columns, rows = np.meshgrid(np.arange(size[0]), np.arange(size[1]))
    half = _EVERY // 2
    ink = ((columns + rows) % half < 1) | ((columns - rows) % half < 1)
    return np.where(ink, _DARK_INK, _PAPER).astype(np.uint8)


def inside(stage: Stage) -> NDArray[np.bool_]:
    """Where pieces lie on the picture, shape (height, width): all would be bright there."""
    lit = tuple(_lit(piece) for piece in stage.pieces)
    picture = draw(replace(stage, pieces=lit), SIZE, Instrument())
    return np.asarray(picture[..., :3].max(axis=2) > 40, np.bool_)


def _lit(piece: Placed) -> Placed:
    bright = np.full_like(piece.map.v1, _BRIGHT_NM)
    return replace(piece, map=replace(piece.map, v1=bright, v2=np.zeros_like(bright)))
