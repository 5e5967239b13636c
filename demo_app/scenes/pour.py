"""Boiling water into a thick and a thin tumbler: most people bet on the wrong one."""

import functools
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.base.errors import InputError
from demo_app.optics.retardation import Placed, RetardationMap, Stage
from demo_app.optics.sightlines import Sightlines, sightlines
from demo_app.optics.upright import Upright, upright
from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import glasses, material
from demo_app.physics.materials import Material
from demo_app.physics.plates import flaws
from demo_app.physics.revolve.cracking import intensity_weights
from demo_app.physics.revolve.pouring import (
    FULL,
    Filled,
    Pour,
    Pull,
    empty,
    poured,
    pulled,
    step_seconds,
)
from demo_app.physics.revolve.tumbler import Tumbler, tumbler
from demo_app.physics.revolve.verdict import ordinary_flaw
from demo_app.physics.strength import DEEPEST, HALF_PENNY, probability
from demo_app.scenes.scene import Action, Mark, Message, Outline, Reading, Scene, View
from demo_app.scenes.settings import change, choice, flag, number

Array = NDArray[np.float64]

DIAMETER_MM, HEIGHT_MM = 75.0, 95.0
"""Both tumblers."""
APART_MM = 105.0
"""From the middle of one tumbler to that of the other."""
AFTERWARDS_S = 40.0
"""What is watched after the pouring: the pull of a thick wall comes late."""


@dataclass(frozen=True)
class Settings:
    """What a presenter may change."""

    glass: str = choice("Glass", "soda-lime", glasses(), help="Of both tumblers.", live=False)
    thick_mm: float = number(
        "Thick wall", "mm", 6, 2, 12, step=0.5, help="Wall and base of one tumbler.", live=False
    )
    thin_mm: float = number(
        "Thin wall", "mm", 1.2, 0.8, 5, step=0.1, help="Wall and base of the other.", live=False
    )
    water_C: float = number(
        "Water", "°C", 100, 0, 100, step=5, help="Temperature of the water as it is poured."
    )
    tumbler_C: float = number(
        "Tumblers", "°C", 20, 0, 95, step=5, help="Of the glass before; warm it first.", live=False
    )
    pour_s: float = number(
        "Pour for", "s", 4, 1, 30, step=0.5, help="Time in which they are filled.", live=False
    )
    worn: bool = flag("Worn", True, help="Used for years, or new.", live=False)
    scratch_um: float = number(
        "Scratch",
        "µm",
        0,
        0,
        1000,
        step=50,
        help="Depth of a long scratch outside, where it is worst; 0: none.",
        live=False,
    )

    def __post_init__(self) -> None:
        """Refuse a thin wall that is not the thinner one and a scratch that is half through it."""
        if self.thin_mm >= self.thick_mm:
            raise InputError(
                "the thin tumbler is not thinner than the thick one",
                place="thin_mm",
                remedy=f"write less than {self.thick_mm:g}",
            )
        if self.scratch_um > 1e3 * DEEPEST * self.thin_mm:
            raise InputError(
                "the scratch is deeper than half the thin wall",
                place="scratch_um",
                remedy=f"write at most {1e3 * DEEPEST * self.thin_mm:g}",
            )


@dataclass(frozen=True)
class Cup:
    """One tumbler: its state, what pulls at it, its picture, and its peaks.

    Parameters
    ----------
    filled, pull : Filled, Pull
        Of this instant; of the last instant before it cracked.
    map : RetardationMap
        Its picture, upright.
    tension, inside, risk, ratio, nm : float
        Largest over the run: pull outside and inside (Pa), Weibull risk, K over K_IC, retardation.
    cracked_s : float or None
        When the stated scratch became a crack, s.
    """

    filled: Filled
    pull: Pull
    map: RetardationMap
    tension: float = 0.0
    inside: float = 0.0
    risk: float = 0.0
    ratio: float = 0.0
    nm: float = 0.0
    cracked_s: float | None = None


@dataclass(frozen=True)
class State:
    """One instant."""

    time_s: float
    step: int
    thick: Cup
    thin: Cup


READINGS = (
    Reading("thick_tension_MPa", "Thick: pull outside", "MPa", "Largest over the run."),
    Reading("thin_tension_MPa", "Thin: pull outside", "MPa", "Largest over the run."),
    Reading("thick_break_probability", "Thick: odds of a crack", "", "Over the spread of flaws."),
    Reading("thin_break_probability", "Thin: odds of a crack", "", "Over the spread of flaws."),
    Reading("thick_inside_MPa", "Thick: pull inside", "MPa", "Largest over the run; water side."),
    Reading("thin_inside_MPa", "Thin: pull inside", "MPa", "Largest over the run; water side."),
    Reading("odds_ratio", "Thick over thin", "", "How many times likelier the thick one cracks."),
    Reading("thick_intensity_ratio", "Thick: K over K_IC", "", "Of the stated flaw, at its peak."),
    Reading("thin_intensity_ratio", "Thin: K over K_IC", "", "Of the stated flaw, at its peak."),
    Reading("thick_breaks", "Thick cracks", "", "The verdict for the stated flaw."),
    Reading("thin_breaks", "Thin cracks", "", "The verdict for the stated flaw."),
    Reading("thick_water_C", "Water in the thick one", "°C"),
    Reading("thin_water_C", "Water in the thin one", "°C"),
    Reading("retardation_peak_nm", "Retardation peak", "nm", "Largest over the run."),
)

TRACES = (
    Reading("thick_outside_MPa", "Thick, outside", "MPa"),
    Reading("thin_outside_MPa", "Thin, outside", "MPa"),
    Reading("thick_wall_MPa", "Thick, inside", "MPa"),
    Reading("thin_wall_MPa", "Thin, inside", "MPa"),
)

TEXTS = {
    "waiting": "Boiling water will go into a thick and a thin tumbler. Most people bet that the "
    "thin one cracks.",
    "waiting_warm": "Both tumblers have been warmed to {warm:.0f} °C. That is the whole trick: the "
    "water can hardly shock them now.",
    "pouring": "The water warms the inside first. It wants to grow, the cold outside is pulled: "
    "thick {thick:.0f} MPa, thin {thin:.0f} MPa.",
    "pouring_cold": "The water chills the inside. It wants to shrink and is pulled: thick "
    "{thick:.0f} MPa, thin {thin:.0f} MPa.",
    "lagging": "The thin wall is warm right through and calm again. The outside of the thick wall "
    "is still cold and pulled with {thick:.0f} MPa.",
    "thick_worse": "Bet lost: the thick one is {times:.0f} times likelier to crack. Its pull "
    "reached {thick:.0f} MPa, that of the thin one {thin:.0f} MPa.",
    "thin_worse": "This time the thin one is {times:.0f} times likelier to crack: its pull "
    "reached {thin:.0f} MPa, that of the thick one {thick:.0f} MPa.",
    "alike": "Both hold alike: the pull reached {thick:.1f} MPa in the thick one and {thin:.1f} "
    "MPa in the thin one.",
    "thick_cracked": "The thick one has cracked after {at:.0f} s: its cold outside was pulled "
    "with {pull:.0f} MPa, and the scratch did the rest.",
    "thin_cracked": "The thin one has cracked after {at:.0f} s: a pull of {pull:.0f} MPa was "
    "enough for this scratch.",
    "both_cracked": "Both have cracked: this scratch is too deep for so hot a pour.",
}


def start(settings: Settings) -> State:
    """Two empty tumblers."""
    cold = [
        _seen(settings, cup, empty(cup, settings.tumbler_C + ZERO_C, settings.water_C + ZERO_C))
        for cup in _cups(settings)
    ]
    return State(0.0, 0, *cold)


def advance(settings: Settings, state: State) -> State:
    """One step later. A tumbler that has cracked stays as it was in its last whole instant."""
    pour, now = _pour(settings), state.time_s
    length = step_seconds(pour, now)
    later = []
    for cup, before in zip(_cups(settings), (state.thick, state.thin), strict=True):
        if before.cracked_s is None:
            filled = poured(cup, pour, before.filled, now, length)
            before = _peaks(before, _seen(settings, cup, filled), now + length)
        later.append(before)
    return State(now + length, state.step + 1, *later)


def seconds(settings: Settings) -> float:
    """Until the thick wall has warmed through."""
    return settings.pour_s + AFTERWARDS_S


def read(settings: Settings, state: State) -> dict[str, Any]:
    """Readings: peaks over the run, of a cracked tumbler until it cracked."""
    thick, thin = state.thick, state.thin
    return {
        "thick_tension_MPa": 1e-6 * thick.tension,
        "thin_tension_MPa": 1e-6 * thin.tension,
        "thick_break_probability": probability(thick.risk),
        "thin_break_probability": probability(thin.risk),
        "thick_inside_MPa": 1e-6 * thick.inside,
        "thin_inside_MPa": 1e-6 * thin.inside,
        "odds_ratio": _times(thick.risk, thin.risk),
        "thick_intensity_ratio": thick.ratio,
        "thin_intensity_ratio": thin.ratio,
        "thick_breaks": thick.cracked_s is not None,
        "thin_breaks": thin.cracked_s is not None,
        "thick_water_C": thick.filled.water - ZERO_C,
        "thin_water_C": thin.filled.water - ZERO_C,
        "retardation_peak_nm": max(thick.nm, thin.nm),
    }


def trace(settings: Settings, state: State) -> dict[str, float]:
    """Stress around the wall at half the water's height."""
    found = {}
    for name, cup, made in zip(
        ("thick", "thin"), (state.thick, state.thin), _cups(settings), strict=True
    ):
        column = _halfway(made)
        found[f"{name}_outside_MPa"] = 1e-6 * float(cup.pull.wall.hoop[column, 0])
        found[f"{name}_wall_MPa"] = 1e-6 * float(cup.pull.wall.hoop[column, -1])
    return {reading.name: found[reading.name] for reading in TRACES}


def view(settings: Settings, state: State) -> View:
    """Both tumblers upright, with arrows at the outside of each wall."""
    placed, marks, lines = [], [], []
    for side, cup, made in zip(
        (-0.5, 0.5), (state.thick, state.thin), _cups(settings), strict=True
    ):
        x = side * APART_MM
        placed.append(Placed(cup.map, x, 0.0))
        marks += _marks(x, cup, made)
        if cup.cracked_s is not None:
            lines.append(_crack(x, cup, made))
    stage = Stage(tuple(placed), 2.2 * APART_MM, 1.25 * HEIGHT_MM)
    return View(stage, marks=tuple(marks), outlines=tuple(lines))


def say(settings: Settings, state: State) -> Message:
    """The plain sentence for this instant."""
    thick, thin = state.thick, state.thin
    if thick.cracked_s is not None and thin.cracked_s is not None:
        return Message("both_cracked")
    for name, cup in (("thick_cracked", thick), ("thin_cracked", thin)):
        if cup.cracked_s is not None:
            return Message(name, {"at": cup.cracked_s, "pull": 1e-6 * cup.tension})
    if state.step == 0:
        if settings.tumbler_C > 40 and settings.water_C > settings.tumbler_C:
            return Message("waiting_warm", {"warm": settings.tumbler_C})
        return Message("waiting")
    hotter = settings.water_C >= settings.tumbler_C
    if state.time_s <= settings.pour_s:
        now = {
            name: 1e-6 * max(0.0, cup.pull.outside if hotter else cup.pull.inside)
            for name, cup in (("thick", thick), ("thin", thin))
        }
        return Message("pouring" if hotter else "pouring_cold", now)
    walls = trace(settings, state)
    outside, calm = walls["thick_outside_MPa"], abs(walls["thin_outside_MPa"])
    if hotter and outside > 1 and calm < 0.3 * outside and state.time_s < settings.pour_s + 20:
        return Message("lagging", {"thick": outside})
    return _verdict(thick, thin)


def _verdict(thick: Cup, thin: Cup) -> Message:
    values = {
        name: 1e-6 * max(cup.tension, cup.inside)
        for name, cup in (("thick", thick), ("thin", thin))
    }
    times = _times(thick.risk, thin.risk)
    if times is None or 0.5 < times < 2:
        return Message("alike", values)
    if times > 1:
        return Message("thick_worse", {**values, "times": times})
    return Message("thin_worse", {**values, "times": 1 / times})


def _times(one: float, other: float) -> float | None:
    """Ratio of two Weibull risks; None where one of them is nothing."""
    if one <= 1e-30 or other <= 1e-30:
        return None
    return float(np.expm1(-one) / np.expm1(-other))


def _pour(settings: Settings) -> Pour:
    return Pour(settings.water_C + ZERO_C, settings.pour_s)


def _cups(settings: Settings) -> tuple[Tumbler, Tumbler]:
    glass = material(settings.glass)
    thick, thin = (
        tumbler(glass, 1e-3 * DIAMETER_MM, 1e-3 * wall, 1e-3 * HEIGHT_MM)
        for wall in (settings.thick_mm, settings.thin_mm)
    )
    return thick, thin


@functools.lru_cache(maxsize=8)
def _lines(cup: Tumbler) -> tuple[Sightlines, Upright]:
    lines = sightlines(cup.piece.mesh, rays=72, samples=29, both_faces=True)
    still = lines.map(np.zeros((4, cup.piece.mesh.nodes)), cup.piece.material.stress_optic)
    return lines, upright(still)


@functools.lru_cache(maxsize=16)
def _flaw(cup: Tumbler, glass: Material, scratch_um: float) -> Array:
    if scratch_um > 0:
        return intensity_weights(cup.piece.mesh, 1e-6 * scratch_um)
    depth = min(ordinary_flaw(glass), DEEPEST * float(cup.piece.mesh.depth[-1]))
    return HALF_PENNY * intensity_weights(cup.piece.mesh, depth)


def _seen(settings: Settings, cup: Tumbler, filled: Filled) -> Cup:
    glass = cup.piece.material
    population = flaws(glass, "used" if settings.worn else "new")
    pull = pulled(cup, filled, population, _flaw(cup, glass, settings.scratch_um))
    lines, stood = _lines(cup)
    return Cup(filled, pull, stood.turned(lines.map(pull.nodal, glass.stress_optic)))


def _peaks(before: Cup, now: Cup, time: float) -> Cup:
    pull = now.pull
    return Cup(
        now.filled,
        pull,
        now.map,
        max(before.tension, pull.outside),
        max(before.inside, pull.inside),
        max(before.risk, pull.risk),
        max(before.ratio, pull.ratio),
        max(before.nm, float(now.map.retardation_nm().max())),
        time if pull.ratio >= 1 else None,
    )


def _halfway(cup: Tumbler) -> int:
    """Node column of the wall at half the height of the water."""
    height = cup.floor + FULL * (cup.mouth - cup.floor) / 2
    return int(np.argmin(np.abs(cup.piece.mesh.z[:, 0] - height)))


def _place(cup: Tumbler, column: int) -> tuple[float, float]:
    """Stage place (mm, from the tumbler's middle) of a node column's outside."""
    mesh = cup.piece.mesh
    return 1e3 * float(mesh.r[column, 0]), 1e3 * float(mesh.z[column, 0]) - HEIGHT_MM / 2


def _marks(x: float, cup: Cup, made: Tumbler) -> list[Mark]:
    column = _halfway(made)
    radius, height = _place(made, column)
    bore = 1e3 * made.bore
    found = []
    for place, stress in (
        (radius, cup.pull.wall.hoop[column, 0]),
        (0.55 * bore, cup.pull.wall.hoop[column, -1]),
    ):
        if abs(stress) > 1e6:
            found.append(Mark("pull" if stress > 0 else "squeeze", x + place, height, 8.0, 90.0))
    if cup.cracked_s is not None:
        found.append(Mark("crack", x, _place(made, cup.pull.scratch)[1]))
    return found


def _crack(x: float, cup: Cup, made: Tumbler) -> Outline:
    radius, height = _place(made, cup.pull.scratch)
    if cup.pull.around:
        return Outline("crack", np.array([x - radius, x + radius]), np.array([height, height]))
    return Outline("crack", np.array([x, x]), np.array([-HEIGHT_MM / 2, HEIGHT_MM / 2]))


def _warm_first(settings: Settings, state: State) -> Settings:
    return change(settings, tumbler_C=60.0)


SCENE = Scene(
    id="pour",
    title="Boiling water",
    settings=Settings,
    readings=READINGS,
    traces=TRACES,
    texts=TEXTS,
    start=start,
    advance=advance,
    seconds=seconds,
    read=read,
    trace=trace,
    view=view,
    say=say,
    actions=(Action("warm_first", "Warm them first", _warm_first),),
)
