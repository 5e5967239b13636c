"""The oven's programme as points on the chart, for the scene `cooling`: shown, and dragged."""

import math

from demo_app.physics.heat import ZERO_C
from demo_app.physics.oven import Oven, Schedule
from demo_app.scenes.cooling_parts.settings import Settings, told_of
from demo_app.scenes.scene import Handle
from demo_app.scenes.settings import change, settings_of

_LIMITS = {one.name: (one.low, one.high) for one in settings_of(Settings)}
_COLDEST_C = 20.0
"""Lowest place where slow may become fast; 0 stands for the usual place."""


def handles(told: Schedule, now: Oven, time_s: float) -> tuple[Handle, ...]:
    """Points that are still to come: ends of the hold, of the slow part and of the fast one."""
    time, temperature = time_s, now.temperature
    found = []
    if not now.cooling:
        time += _way_to_hold(told, now) + max(0.0, told.hold_time - now.held)
        temperature = told.hold
        found.append(("hold_end", time, temperature))
    for name, rate, to in (("slow_end", told.slow, told.slow_to), ("end", told.fast, told.end)):
        if temperature > to:
            time += (temperature - to) / rate
            temperature = to
            found.append((name, time, temperature))
    return tuple(Handle(name, at / 3600, kelvin - ZERO_C) for name, at, kelvin in found)


def dragged(
    settings: Settings, now: Oven, time_s: float, name: str, x_h: float, y_C: float
) -> Settings:
    """Settings whose programme has the point `name` as close to (hours, degC) as can be.

    The end of the hold sets the hold's temperature and time, the end of the slow part its rate and
    where it ends, the end of all the fast rate. What comes after the point keeps its rates.
    """
    told = told_of(settings)
    places = {point.id: point for point in handles(told, now, time_s)}
    if name not in places:
        return settings
    own = written(settings, told) if settings.programme == "proposed" else settings
    if name == "hold_end":
        lowest = own.slow_to_C if own.slow_to_C else _COLDEST_C
        hold = _within("hold_C", max(round(y_C), lowest))
        # At the very start the oven is at whatever its hold is.
        way = abs(hold + ZERO_C - now.temperature) / told.fast if time_s > 0 else 0.0
        minutes = (3600 * x_h - time_s - way + now.held) / 60
        return change(own, hold_C=hold, hold_min=_within("hold_min", round(minutes)))
    if name == "slow_end":
        began = places.get("hold_end", Handle("", time_s / 3600, now.temperature - ZERO_C))
        highest = min(began.y, own.hold_C)
        slow_to = min(max(round(y_C), _COLDEST_C), highest)
        rate = _rate("slow_C_per_h", began.y - slow_to, x_h - began.x, own.slow_C_per_h)
        return change(own, slow_C_per_h=rate, slow_to_C=slow_to)
    ends = places["end"]
    before = list(places.values())[-2] if len(places) > 1 else None
    began = before or Handle("", time_s / 3600, now.temperature - ZERO_C)
    rate = _rate("fast_C_per_h", began.y - ends.y, x_h - began.x, own.fast_C_per_h)
    return change(own, fast_C_per_h=rate)


def written(settings: Settings, told: Schedule) -> Settings:
    """The presenter's own programme put to what the oven is told."""
    return change(
        settings,
        programme="own",
        hold_C=told.hold - ZERO_C,
        hold_min=told.hold_time / 60,
        slow_C_per_h=3600 * told.slow,
        slow_to_C=told.slow_to - ZERO_C,
        fast_C_per_h=3600 * told.fast,
    )


def _way_to_hold(told: Schedule, now: Oven) -> float:
    """Time until the oven is at its hold, s."""
    return abs(told.hold - now.temperature) / told.fast


def _rate(name: str, fall_C: float, hours: float, now: float) -> float:
    """Cooling rate (degC/h) of a fall, to three digits and within the setting's range."""
    if fall_C <= 0:
        return now
    if hours <= 0:
        return _LIMITS[name][1]
    rate = fall_C / hours
    return _within(name, round(rate, 2 - math.floor(math.log10(rate))))


def _within(name: str, value: float) -> float:
    low, high = _LIMITS[name]
    return float(min(max(value, low), high))
