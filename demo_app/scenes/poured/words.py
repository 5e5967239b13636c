"""Readings of the pour, and the sentence under it."""

from typing import Any

import numpy as np

from demo_app.physics.heat import ZERO_C
from demo_app.physics.strength import probability
from demo_app.scenes.poured.record import Cup, Settings, State, cups_of, halfway
from demo_app.scenes.scene import Message, Reading

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
    # The second curve has the colour of a squeeze, the third that of a pull.
    Reading("thin_outside_MPa", "Thin, outside", "MPa"),
    Reading("thick_wall_MPa", "Thick, inside", "MPa"),
    Reading("thick_outside_MPa", "Thick, outside", "MPa"),
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
        ("thick", "thin"), (state.thick, state.thin), cups_of(settings), strict=True
    ):
        column = halfway(made)
        found[f"{name}_outside_MPa"] = 1e-6 * float(cup.pull.wall.hoop[column, 0])
        found[f"{name}_wall_MPa"] = 1e-6 * float(cup.pull.wall.hoop[column, -1])
    return {reading.name: found[reading.name] for reading in TRACES}


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
