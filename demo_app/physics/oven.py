"""An oven programme: hold, cool slowly through the range where stress is born, then faster."""

import math
from dataclasses import dataclass

import numpy as np

from demo_app.base.errors import InputError
from demo_app.physics.heat import ROOM, ZERO_C

_INSTANT = 1e-6
"""What is shorter than this is over, s: a later point would not differ from now in floating
point, and a step to it would have no length."""


@dataclass(frozen=True)
class Programme:
    """Points of the oven's temperature over time, joined by straight lines.

    Parameters
    ----------
    times : tuple of float
        s, increasing.
    temperatures : tuple of float
        K. From the last of the hottest points on they never rise.

    Raises
    ------
    InputError
        If there are fewer than two points, their times do not increase, or the programme goes up in
        its cooling part.
    """

    times: tuple[float, ...]
    temperatures: tuple[float, ...]

    def __post_init__(self) -> None:
        if len(self.times) != len(self.temperatures) or len(self.times) < 2:
            raise InputError(
                f"a programme of {len(self.times)} times and {len(self.temperatures)} temperatures",
                place="programme",
                remedy="write at least two points, each with its time and temperature",
            )
        late = np.flatnonzero(np.diff(self.times) <= 0)
        if late.size:
            raise InputError(
                "the points' times do not increase",
                place=f"programme, point {late[0] + 2}",
                remedy=f"write a time after {self.times[late[0]]:g} s",
            )
        self._refuse_rise()

    def _refuse_rise(self) -> None:
        hottest = max(self.temperatures)
        top = max(i for i, one in enumerate(self.temperatures) if one == hottest)
        rises = np.flatnonzero(np.diff(self.temperatures[top:]) > 0)
        if rises.size:
            before = top + int(rises[0])
            low, high = (self.temperatures[before + i] - ZERO_C for i in (0, 1))
            raise InputError(
                f"the programme goes up from {low:g} to {high:g} °C in its cooling part",
                place=f"programme, point {before + 2}",
                remedy=f"write at most {low:g} °C",
            )

    @property
    def duration(self) -> float:
        """From the first point to the last, s."""
        return self.times[-1] - self.times[0]

    def next_point(self, time: float) -> float:
        """Time of the first point after `time`, s; infinite after the last."""
        return next((point for point in self.times if point > time), math.inf)

    def rate(self, time: float) -> float:
        """Rise of the temperature just after `time`, K/s."""
        after = int(np.searchsorted(self.times, time, side="right"))
        if not 0 < after < len(self.times):
            return 0.0
        rise = self.temperatures[after] - self.temperatures[after - 1]
        return rise / (self.times[after] - self.times[after - 1])

    def at(self, time: float) -> float:
        """Temperature of the oven at `time` (s), K; the ends' temperatures before and after."""
        return float(np.interp(time, self.times, self.temperatures))


@dataclass(frozen=True)
class Schedule:
    """What an oven is told: hold, slow and fast.

    Parameters
    ----------
    hold : float
        Temperature of the hold, K.
    hold_time : float
        s.
    slow, fast : float
        Cooling rates, K/s.
    slow_to : float
        Temperature at which slow becomes fast, K.
    end : float
        Temperature at which the programme ends, K.

    Raises
    ------
    InputError
        If the hold is shorter than nothing, a rate does not cool, or the slow part ends above the
        hold: the programme would go up in its cooling part.
    """

    hold: float
    hold_time: float
    slow: float
    slow_to: float
    fast: float
    end: float = ROOM

    def __post_init__(self) -> None:
        if self.hold_time < 0:
            raise InputError(
                f"a hold of {self.hold_time / 60:g} minutes",
                place="hold",
                remedy="write 0 or more",
            )
        for name, rate in (("slow", self.slow), ("fast", self.fast)):
            if rate <= 0:
                raise InputError(
                    f"the {name} part does not cool: {3600 * rate:g} °C/h",
                    place=name,
                    remedy="write a cooling rate above 0",
                )
        if self.slow_to > self.hold:
            raise InputError(
                f"the cooling part goes up, from {self.hold - ZERO_C:g} "
                f"to {self.slow_to - ZERO_C:g} °C",
                place="slow_to",
                remedy=f"write at most {self.hold - ZERO_C:g} °C",
            )


@dataclass(frozen=True)
class Oven:
    """An oven at one instant: where it has got to in whatever it is told.

    Parameters
    ----------
    temperature : float
        K.
    held : float
        How long it has held, s.
    cooling : bool
        Whether the hold is over; it never comes back.
    """

    temperature: float
    held: float = 0.0
    cooling: bool = False


def ahead(told: Schedule, now: Oven) -> Programme:
    """What the oven will do from `now` on, by its present orders; times count from now.

    An oven that is told another hold goes there at the fast rate. One that cools goes on from where
    it is, so that a change of orders never makes it jump.
    """
    times, temperatures = [0.0], [now.temperature]

    def go(seconds: float, temperature: float) -> None:
        if seconds > _INSTANT:
            times.append(times[-1] + seconds)
            temperatures.append(temperature)

    if not now.cooling:
        go(abs(told.hold - now.temperature) / told.fast, told.hold)
        go(told.hold_time - now.held, told.hold)
    go((temperatures[-1] - told.slow_to) / told.slow, told.slow_to)
    go((temperatures[-1] - told.end) / told.fast, told.end)
    if len(times) == 1:
        go(1.0, temperatures[-1])
    return Programme(tuple(times), tuple(temperatures))


def over(told: Schedule, now: Oven) -> bool:
    """Whether the oven has done all that it is told, and stays as it is."""
    rest = (now.temperature - min(told.slow_to, told.end)) / max(told.slow, told.fast)
    return now.cooling and rest <= _INSTANT


def later(told: Schedule, now: Oven, seconds: float) -> Oven:
    """The oven `seconds` after `now`."""
    temperature = ahead(told, now).at(seconds)
    if now.cooling:
        return Oven(temperature, now.held, True)
    spent = seconds - abs(told.hold - now.temperature) / told.fast
    held = max(now.held, min(told.hold_time, now.held + spent))
    return Oven(temperature, held, bool(held >= told.hold_time and spent >= 0))


def whole(told: Schedule) -> Programme:
    """The programme from its beginning."""
    return ahead(told, Oven(told.hold))
