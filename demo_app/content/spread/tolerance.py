"""Tolerances: how far a setting may be from what was meant, and by which law."""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtr, ndtri

from demo_app.base.errors import InputError
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import settings_of

Array = NDArray[np.float64]

LAWS = ("even", "normal", "factor")


@dataclass(frozen=True)
class Tolerance:
    """A setting that spreads; `between`, `normal`, `relative` and `factor` make one.

    Parameters
    ----------
    name : str
        The setting, or any other number that a model takes.
    law : str
        "even": as likely anywhere from `a` to `b`. "normal": mean `a`, standard deviation `b`.
        "factor": median `a`, and two thirds of all lie within a factor `b` (lognormal).
    a, b : float
        Numbers of the law, in the setting's unit.
    low, high : float
        What lies beyond cannot be; the law is cut off there, and nothing heaps up at the ends.
    """

    name: str
    law: str
    a: float
    b: float
    low: float = -math.inf
    high: float = math.inf

    def __post_init__(self) -> None:
        """Refuse a law that says nothing."""
        numbers = (self.a, self.b)
        if self.law not in LAWS:
            raise self._error(f"law '{self.law}' is not known", f"write one of {', '.join(LAWS)}")
        if not all(map(math.isfinite, numbers)):
            raise self._error("a tolerance needs finite numbers", "write two numbers")
        if self.law == "even" and not self.a < self.b:
            raise self._error(
                f"{self.a:g} to {self.b:g} leaves no room", "write the lower end first"
            )
        if self.law == "normal" and not self.b > 0:
            raise self._error(f"a standard deviation of {self.b:g} is none", "write one above zero")
        if self.law == "factor" and not (self.a > 0 and self.b > 1):
            raise self._error(
                f"{self.a:g} within a factor {self.b:g} cannot be",
                "write a median above zero and a factor above 1",
            )
        if not self.cumulative(self.high) - self.cumulative(self.low) > 1e-6:
            raise self._error(
                "almost nothing of it is allowed", f"keep within {self.low:g} to {self.high:g}"
            )

    def cumulative(self, value: float) -> float:
        """Probability of less than `value`, before the law is cut off."""
        if self.law == "even":
            return min(1.0, max(0.0, (value - self.a) / (self.b - self.a)))
        if self.law == "normal":
            return float(ndtr((value - self.a) / self.b))
        return float(ndtr(math.log(value / self.a) / math.log(self.b))) if value > 0 else 0.0

    def ppf(self, share: Array) -> Array:
        """Values below which the `share` (0 to 1, any shape) of all lie."""
        first, last = self.cumulative(self.low), self.cumulative(self.high)
        at = np.clip(first + np.asarray(share) * (last - first), 1e-12, 1 - 1e-12)
        if self.law == "even":
            found = self.a + at * (self.b - self.a)
        elif self.law == "normal":
            found = self.a + self.b * ndtri(at)
        else:
            found = self.a * np.exp(math.log(self.b) * ndtri(at))
        return np.asarray(np.clip(found, self.low, self.high))

    def _error(self, problem: str, remedy: str) -> InputError:
        return InputError(problem, place=f"tolerance of {self.name}", remedy=remedy)


def between(name: str, low: float, high: float) -> Tolerance:
    """As likely anywhere from `low` to `high`."""
    return Tolerance(name, "even", low, high)


def normal(name: str, mean: float, sd: float) -> Tolerance:
    """Normal, with this mean and standard deviation."""
    return Tolerance(name, "normal", mean, sd)


def relative(name: str, nominal: float, percent: float) -> Tolerance:
    """As likely anywhere within `percent` of `nominal` to both sides."""
    half = abs(nominal) * percent / 100
    return Tolerance(name, "even", nominal - half, nominal + half)


def factor(name: str, median: float, within: float) -> Tolerance:
    """Two thirds of all within the factor `within` of the `median`, such as depths of flaws."""
    return Tolerance(name, "factor", median, within)


def check_all(tolerances: Sequence[Tolerance]) -> None:
    """Raise `InputError` for no tolerance, or two of one name."""
    if not tolerances:
        raise InputError("none is stated", place="tolerances", remedy="state at least one")
    names = [one.name for one in tolerances]
    for name in names:
        if names.count(name) > 1:
            raise InputError(
                "is stated twice", place=f"tolerance of {name}", remedy="state it once"
            )


def within_ranges(scene: Scene, tolerances: Sequence[Tolerance]) -> tuple[Tolerance, ...]:
    """Tolerances cut off at the ranges of the settings of `scene`.

    Raises
    ------
    InputError
        For a name that is no number of the scene, or a law that lies outside of its range.
    """
    known = {s.name: s for s in settings_of(scene.settings) if isinstance(s.default, float)}
    for one in tolerances:
        if one.name not in known:
            raise InputError(
                f"scene {scene.id} has no number called '{one.name}'",
                place="tolerances",
                remedy=f"write one of {', '.join(known)}",
            )
    return tuple(
        Tolerance(one.name, one.law, one.a, one.b, known[one.name].low, known[one.name].high)
        for one in tolerances
    )


def point(tolerances: Sequence[Tolerance], shares: Array) -> Mapping[str, float]:
    """Values by name at one point (`shares`, one a tolerance, each 0 to 1)."""
    return {one.name: float(one.ppf(share)) for one, share in zip(tolerances, shares, strict=True)}


def as_record(one: Tolerance) -> dict[str, Any]:
    """Tolerance ready for JSON; ends that do not cut anything off are left out."""
    ends = {"low": one.low, "high": one.high}
    kept = {name: value for name, value in ends.items() if math.isfinite(value)}
    return {"name": one.name, "law": one.law, "a": one.a, "b": one.b, **kept}
