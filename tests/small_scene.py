"""A scene of a few lines for tests of what stands around scenes: a bar that is let go."""

import math
from dataclasses import dataclass

import numpy as np

from demo_app.base.errors import InputError
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.scenes.scene import Message, Reading, Scene, View
from demo_app.scenes.settings import choice, flag, number


@dataclass(frozen=True)
class BarSettings:
    load_N: float = number("Load", "N", 100, 0, 500, help="Pull at the ends.")
    width_mm: float = number("Width", "mm", 20, 5, 40, help="Width of the bar.")
    glass: str = choice("Glass", "soda-lime", ("soda-lime", "borosilicate"), help="What it is.")
    held: bool = flag("Held", False, help="Whether the load stays.")

    def __post_init__(self):
        if self.load_N > 400 and self.width_mm < 10:
            raise InputError("too much for so thin a bar", place="load_N", remedy="write 400 N")


@dataclass(frozen=True)
class BarState:
    time_s: float
    step: int


def _share(settings, state):
    return 1.0 if settings.held else math.exp(-state.time_s / 4)


def _tension_MPa(settings, state):
    return np.float64(settings.load_N / (settings.width_mm * 5) * _share(settings, state))


def _view(settings, state):
    retardation = np.float32(13.0 * _tension_MPa(settings, state))
    across, along = np.linspace(-1, 1, 5), np.linspace(-40.0, 40.0, 9)
    v1 = np.full((5, 9), retardation, dtype=np.float32)
    half = np.full(9, settings.width_mm / 2)
    piece = RetardationMap(v1, np.zeros_like(v1), across, along, half, mirrored=False)
    return View(Stage((Placed(piece),), width_mm=100, height_mm=60))


SCENE = Scene(
    id="bar",
    title="A bar, let go",
    settings=BarSettings,
    readings=(
        Reading("tension_MPa", "Tension", "MPa"),
        Reading("verdict", "What it does", ""),
        Reading("whole", "Whole", "", help="Whether it is one piece."),
        Reading("break_at_s", "Breaks after", "s"),
    ),
    traces=(Reading("tension_MPa", "Tension", "MPa"),),
    texts={"fades": "The pull of {tension:.1f} MPa fades.", "stays": "The pull stays."},
    start=lambda settings: BarState(0.0, 0),
    advance=lambda settings, state: BarState((state.step + 1) * 0.5, state.step + 1),
    seconds=lambda settings: 6.0,
    read=lambda settings, state: {
        "tension_MPa": _tension_MPa(settings, state),
        "verdict": "holds" if settings.held else "lets go",
        "whole": np.bool_(True),
        "break_at_s": None,
    },
    trace=lambda settings, state: {"tension_MPa": _tension_MPa(settings, state)},
    view=_view,
    say=lambda settings, state: (
        Message("stays")
        if settings.held
        else Message("fades", {"tension": float(_tension_MPa(settings, state))})
    ),
)
