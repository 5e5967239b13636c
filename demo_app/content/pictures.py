"""Pictures as the command line asks for them: a stage between the polarizers."""

from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.content.lines import trace_lines
from demo_app.content.words import parse_number
from demo_app.optics.instrument import GAIN_RANGE, TINT_PLATE_NM, Instrument
from demo_app.optics.picture import colour
from demo_app.optics.retardation import Stage
from demo_app.optics.sampling import view_of
from demo_app.scenes.scene import Scene, View

FULL_HD = (1920, 1080)


def arranged(scene: Scene, settings: Any, words: Any) -> tuple[Any, Instrument]:
    """Settings and instrument as the command line asks for them.

    What is asked for by name goes before what the scene's settings ask of the light.

    Parameters
    ----------
    scene, settings : Scene, object
        What will be shown, and its settings record.
    words : argparse.Namespace
        With ``turn``, ``gain``, ``lamp`` (text or None) and ``parallel``, ``quarter_wave``,
        ``tint_plate`` (bool).

    Returns
    -------
    settings, instrument
        The instrument is the one that stands around the stage.

    Raises
    ------
    InputError
        For a number out of range or an unknown lamp.
    """
    asked = _asked(words)
    told = scene.relit(settings, replace(scene.light(settings, Instrument()), **asked))
    return told, scene.light(told, replace(Instrument(), **asked))


def _asked(words: Any) -> dict[str, Any]:
    """Parts of the instrument that are asked for by name."""
    low, high = GAIN_RANGE
    asked: dict[str, Any] = {}
    if words.lamp is not None:
        asked["lamp"] = words.lamp
    if words.turn is not None:
        asked["polarizer_deg"] = parse_number(
            words.turn, place="--turn", low=-360, high=360, unit="degrees"
        )
    if words.parallel:
        asked["analyser_deg"] = 0.0
    if words.quarter_wave:
        asked["quarter_wave"] = True
    if words.tint_plate:
        asked["tint_plate_nm"] = TINT_PLATE_NM
    if words.gain is not None:
        asked["gain"] = parse_number(words.gain, place="--gain", low=low, high=high)
    return asked


def check_name(path: Path) -> Path:
    """Return `path` if it is named as a picture, else raise `InputError`."""
    if path.suffix.lower() != ".png":
        raise InputError(
            f"'{path.name}' does not end in .png", place="--out", remedy="write FILE.png"
        )
    return path


def draw(
    stage: Stage, size: tuple[int, int] = FULL_HD, instrument: Instrument | None = None
) -> NDArray[np.uint8]:
    """Colour `stage` as `instrument` shows it, on `size` (width, height) pixels.

    Returns
    -------
    numpy.ndarray
        Shape (height, width, 4), as `demo_app.optics.picture.colour` returns it.
    """
    return colour(stage, instrument or Instrument(), *size)


def drawn(
    view: View, size: tuple[int, int] = FULL_HD, instrument: Instrument | None = None
) -> NDArray[np.uint8]:
    """All that a window would show of `view` in its picture, words apart: colours and outlines.

    Returns
    -------
    numpy.ndarray
        Shape (height, width, 4), as `draw` returns it.
    """
    pixels = draw(view.stage, size, instrument)
    trace_lines(pixels, view_of(view.stage, *size), view.stage.pieces, view.outlines)
    return pixels
