"""Temperature and stress over time, for the scene `cooling`."""

from dataclasses import dataclass

import numpy as np

from demo_app.physics.heat import ZERO_C
from demo_app.physics.oven import Programme
from demo_app.physics.stepped import Piece, PieceState
from demo_app.scenes.scene import Chart, Curve, Handle

_SHORT_H = 3.0
"""Runs in the air up to this length are drawn in minutes; an oven's programme is in hours."""


@dataclass(frozen=True)
class Instant:
    """What the chart keeps of an instant; tuples hold one value a part.

    Parameters
    ----------
    time : float
        s.
    around : float
        Air or oven, degC.
    outside, inside : tuple of float
        degC.
    surface, centre : tuple of float
        In-plane stress, along the joint if there is one, MPa.
    """

    time: float
    around: float
    outside: tuple[float, ...]
    inside: tuple[float, ...]
    surface: tuple[float, ...]
    centre: tuple[float, ...]


def instant(what: Piece, state: PieceState, around: float) -> Instant:
    """The instant of `state`, with `around` in K."""
    pairs = tuple(zip(what.walls, state.parts, strict=True))
    return Instant(
        time=state.time,
        around=around - ZERO_C,
        outside=tuple(float(part.temperature[0]) - ZERO_C for _, part in pairs),
        inside=tuple(float(np.interp(0.0, w.z, part.temperature)) - ZERO_C for w, part in pairs),
        surface=tuple(1e-6 * part.surface[0] for _, part in pairs),
        centre=tuple(1e-6 * float(np.interp(0.0, w.point_z, part.stress)) for w, part in pairs),
    )


def temperature_chart(
    history: tuple[Instant, ...],
    levels: tuple[float, float],
    coming: Programme | None,
    handles: tuple[Handle, ...] = (),
) -> Chart:
    """Outside, inside and oven over time.

    Parameters
    ----------
    history : tuple of Instant
        From the start to now.
    levels : tuple of float
        Annealing and strain point, degC.
    coming : Programme or None
        What the oven is going to do, from now on; None where there is no oven.
    handles : tuple of Handle
        Its points, in hours.
    """
    unit, scale = ("h", 3600.0) if coming else _unit(history[-1].time)
    time = np.array([one.time for one in history]) / scale
    curves = [
        Curve("outside", time, np.array([one.outside[0] for one in history])),
        Curve("inside", time, np.array([one.inside[0] for one in history])),
    ]
    if len(history[0].inside) > 1:
        curves.append(Curve("second_inside", time, np.array([one.inside[1] for one in history])))
    if coming:
        ahead = history[-1].time + np.array(coming.times[1:])
        oven = np.array([one.around for one in history])
        planned = np.array(coming.temperatures[1:]) - ZERO_C
        curves.append(Curve("oven", np.append(time, ahead / scale), np.append(oven, planned)))
    named = (("anneal", levels[0]), ("strain", levels[1]))
    return Chart("time_h", unit, "temperature", "°C", tuple(curves), named, handles)


def stress_chart(history: tuple[Instant, ...], allowed: float) -> Chart:
    """Surface and centre over time, with what is `allowed` at the end, MPa, as levels."""
    unit, scale = _unit(history[-1].time)
    time = np.array([one.time for one in history]) / scale
    curves = [
        Curve("surface", time, np.array([one.surface[0] for one in history])),
        Curve("centre", time, np.array([one.centre[0] for one in history])),
    ]
    if len(history[0].surface) > 1:
        curves += [
            Curve("second_surface", time, np.array([one.surface[1] for one in history])),
            Curve("second_centre", time, np.array([one.centre[1] for one in history])),
        ]
    named = (("allowed_pull", allowed), ("allowed_squeeze", -allowed))
    return Chart("time_h", unit, "stress", "MPa", tuple(curves), named)


def _unit(seconds: float) -> tuple[str, float]:
    """Unit of the time axis, and its length in seconds."""
    return ("h", 3600.0) if seconds > 3600 * _SHORT_H else ("min", 60.0)
