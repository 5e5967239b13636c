"""A bar in four-point bending whose load grows with time, in closed form, to try the window with.

Bending stress M y / I between the inner supports; its retardation is the stress-optic
coefficient times the stress times the thickness. It breaks at a stated stress.
"""

from dataclasses import dataclass, replace

import numpy as np

from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.scenes.scene import Action, Mark, Message, Reading, Scene, Seam, Section, View
from demo_app.scenes.settings import change, choice, flag, number

STEP_S = 0.05
STRESS_OPTIC_PER_PA = 2.7e-12
YOUNG_PA = 70e9


@dataclass(frozen=True)
class BarSettings:
    """Settings of the bar."""

    glass: str = choice("Glass", "soft", ("soft", "hard"), help="Which glass.", live=False)
    length_mm: float = number("Length", "mm", 160, 60, 300, help="Length of the bar.", live=False)
    height_mm: float = number("Height", "mm", 30, 10, 60, help="Height of the bar.", live=False)
    thickness_mm: float = number(
        "Thickness", "mm", 8, 2, 20, step=0.5, help="Path of the light.", live=False
    )
    rate_MPa_s: float = number(
        "Loading rate", "MPa/s", 4, 0, 20, step=0.1, help="How fast the edge stress grows."
    )
    strength_MPa: float = number("Strength", "MPa", 40, 5, 200, help="Where it breaks.")
    flip: bool = flag("Load from below", False, help="Turns the bending round.")
    drop_at_s: float = number(
        "Extra load at", "s", 60, 0, 60, step=0.01, help="When 10 MPa more come on."
    )


@dataclass(frozen=True)
class BarState:
    """One instant."""

    time_s: float
    step: int
    edge_MPa: float
    dropped: bool
    broke_at_s: float | None


def start(settings: BarSettings) -> BarState:
    return BarState(0.0, 0, 0.0, False, None)


def advance(settings: BarSettings, state: BarState) -> BarState:
    now = (state.step + 1) * STEP_S
    if state.broke_at_s is not None:
        return replace(state, time_s=now, step=state.step + 1)
    edge = state.edge_MPa + settings.rate_MPa_s * STEP_S
    dropped = state.dropped
    if not dropped and now >= settings.drop_at_s:
        edge, dropped = edge + 10, True
    broke = now if edge > settings.strength_MPa else None
    return BarState(now, state.step + 1, edge, dropped, broke)


def _sign(settings: BarSettings) -> float:
    return -1.0 if settings.flip else 1.0


def view(settings: BarSettings, state: BarState) -> View:
    half = settings.height_mm / 2
    length = settings.length_mm
    x = np.linspace(-length / 2, length / 2, 161)
    across = np.linspace(-1, 1, 61)
    held = np.clip((1 - np.abs(x) / (length / 2)) / 0.4, 0, 1)
    whole = state.broke_at_s is None
    edge = state.edge_MPa if whole else 0.0
    stress_Pa = -_sign(settings) * across[:, None] * held * edge * 1e6
    v1 = STRESS_OPTIC_PER_PA * stress_Pa * settings.thickness_mm * 1e-3 * 1e9
    halves = np.full(x.shape, half)

    def piece(cols: slice, shift: float) -> Placed:
        m = RetardationMap(
            v1[:, cols].astype(np.float32),
            np.zeros_like(v1[:, cols], dtype=np.float32),
            across,
            x[cols],
            halves[cols],
            False,
        )
        return Placed(m, shift, 0.0)

    pieces = (piece(slice(None), 0.0),)
    if not whole:
        pieces = (piece(slice(None, 81), -3.0), piece(slice(80, None), 3.0))
    stage = Stage(pieces, length * 1.25, settings.height_mm * 2.4)
    cols = np.linspace(-length / 2, length / 2, 41)
    rows = np.linspace(-half, half, 9)
    gx, gy = np.meshgrid(cols, rows)
    shape = np.clip((1 - np.abs(cols) / (length / 2)) / 0.4, 0, 1)
    stress = -_sign(settings) * gy / half * shape * edge
    bend_um = _sign(settings) * edge * 1e6 / (YOUNG_PA * half * 1e-3) * 1e6
    moved_y = -0.5 * bend_um * ((gx * 1e-3) ** 2 - (length / 2e3) ** 2)
    section = Section(
        gx,
        gy,
        np.zeros_like(gx),
        moved_y,
        20 + 2 * edge * np.exp(-((gx / 30) ** 2)) * (gy + half) / half,
        stress,
        "bending",
        5.0,
        seams=() if whole else (Seam(20, rows.size),),
    )
    marks: tuple[Mark, ...] = (
        Mark("ring", 0, half, length * 0.4),
        Mark("score", 6, half),
        Mark("flame", 0, -half, 8),
    )
    if edge > 1:
        marks += (
            Mark("squeeze", -length * 0.2, 0.7 * half, 12),
            Mark("pull", -length * 0.2, -0.7 * half, 12),
        )
    if state.dropped:
        marks += (Mark("drop", 0, half, 2),)
    if not whole:
        marks += (Mark("crack", 0, 0),)
    return View(stage, section, marks)


def read(settings: BarSettings, state: BarState) -> dict[str, object]:
    whole = state.broke_at_s is None
    return {
        "edge_MPa": state.edge_MPa if whole else 0.0,
        "intensity_ratio": state.edge_MPa / settings.strength_MPa,
        "breaks": not whole,
        "break_at_s": state.broke_at_s,
    }


def trace(settings: BarSettings, state: BarState) -> dict[str, float]:
    return {
        "intensity_ratio": state.edge_MPa / settings.strength_MPa,
        "edge_MPa": state.edge_MPa if state.broke_at_s is None else 0.0,
        "inner_MPa": 0.4 * state.edge_MPa if state.broke_at_s is None else 0.0,
    }


def say(settings: BarSettings, state: BarState) -> Message:
    if state.broke_at_s is not None:
        return Message("broken")
    return Message("bent", {"edge": f"{state.edge_MPa:.1f}"})


def drop_now(settings: BarSettings, state: BarState) -> BarSettings:
    return change(settings, drop_at_s=state.time_s)


SCENE = Scene(
    id="bar",
    title="Bent bar",
    settings=BarSettings,
    readings=(
        Reading("edge_MPa", "Stress at the edge", "MPa", "At the outer face."),
        Reading("intensity_ratio", "Share of the strength", ""),
        Reading("breaks", "Broken", ""),
        Reading("break_at_s", "Broke at", "s"),
    ),
    traces=(
        Reading("intensity_ratio", "Share of the strength", ""),
        Reading("edge_MPa", "Edge stress", "MPa"),
        Reading("inner_MPa", "Inner stress", "MPa"),
    ),
    texts={
        "bent": "The bar bends: its lower edge is pulled with {edge} MPa, its upper edge is "
        "squeezed just as hard, and the middle stays dark because nothing acts there.",
        "broken": "It has broken, and with the load gone both pieces are dark.",
        "bending": "along the bar",
    },
    start=start,
    advance=advance,
    seconds=lambda settings: 15.0,
    read=read,
    trace=trace,
    view=view,
    say=say,
    actions=(Action("drop", "Drop now", drop_now),),
)
