"""What was read off a real piece, what is unknown, and what a fit found."""

import math
from dataclasses import dataclass

from demo_app.base.errors import InputError

LEAST = 3
"""Fewer readings than this cannot contradict each other: nothing would be noticed."""
WIDE = 0.25
"""Share of the range beyond which an interval says little."""


@dataclass(frozen=True)
class Observed:
    """One reading of the real piece.

    Parameters
    ----------
    reading : str
        Which reading of the model it is compared with.
    value : float
        What was read.
    sd : float
        Its own uncertainty: one standard deviation, above zero.
    bias : float
        How far all readings of the same instrument may be off together: one standard deviation.
    instrument : str
        Readings that share one share its bias; "": this reading is off by itself.
    at_s : float or None
        Instant of the model, s; None: the end of the story.
    """

    reading: str
    value: float
    sd: float
    bias: float = 0.0
    instrument: str = ""
    at_s: float | None = None

    def __post_init__(self) -> None:
        """Refuse a reading without an uncertainty."""
        if not math.isfinite(self.value):
            raise self._error(f"{self.value} is no reading", "write a number")
        if not (math.isfinite(self.sd) and self.sd > 0):
            raise self._error(
                f"an uncertainty of {self.sd:g} cannot be",
                "write how far off it may well be, above zero",
            )
        if not (math.isfinite(self.bias) and self.bias >= 0):
            raise self._error(f"a bias of {self.bias:g} cannot be", "write zero or more")

    def _error(self, problem: str, remedy: str) -> InputError:
        return InputError(problem, place=f"reading {self.reading}", remedy=remedy)


@dataclass(frozen=True)
class Unknown:
    """The one setting that is looked for.

    Parameters
    ----------
    name : str
        The setting.
    low, high : float
        Where it is looked for, in the setting's unit.
    """

    name: str
    low: float
    high: float

    def __post_init__(self) -> None:
        """Refuse a range without room."""
        if not (math.isfinite(self.low) and math.isfinite(self.high) and self.low < self.high):
            raise InputError(
                f"{self.low:g} to {self.high:g} leaves no room",
                place=self.name,
                remedy="write the lower end first",
            )

    @property
    def by_factors(self) -> bool:
        """Whether the range spans so much that it is walked by equal factors."""
        return self.low > 0 and self.high / self.low > 10


@dataclass(frozen=True)
class Compared:
    """A reading beside what the fitted model states.

    Parameters
    ----------
    observed : Observed
        The reading.
    fitted : float
        The model's value.
    pull : float
        Difference in units of the reading's whole uncertainty; beyond 2 it is doubtful.
    """

    observed: Observed
    fitted: float
    pull: float


@dataclass(frozen=True)
class Fit:
    """What the readings say of the unknown.

    Parameters
    ----------
    unknown : Unknown
        What was looked for.
    value : float
        Where the model suits the readings best.
    low, high : float
        The 95 % interval, from the lowest to the highest value that suits.
    regions : tuple of (float, float)
        Its separate parts, more than one if several values suit.
    compared : tuple of Compared
        The readings at `value`.
    misfit : float
        Sum of squares of the readings' differences in units of their uncertainties (chi-square).
    freedom : int
        Readings less one.
    chance : float
        Probability of so large a misfit if all uncertainties are as stated.
    notes : tuple of str
        Ids of `demo_app.content.fitting.words.TEXTS`, the gravest first; "found" if all is well.
    runs : int
        Runs of the model.
    done : bool
        Whether more runs would change nothing.
    """

    unknown: Unknown
    value: float
    low: float
    high: float
    regions: tuple[tuple[float, float], ...]
    compared: tuple[Compared, ...]
    misfit: float
    freedom: int
    chance: float
    notes: tuple[str, ...]
    runs: int
    done: bool

    @property
    def verdict(self) -> str:
        """Id of the gravest note."""
        return self.notes[0]

    @property
    def usable(self) -> bool:
        """Whether the value may be kept as a device's: it is known, and nothing contradicts."""
        return not {"nothing", "several", "inconsistent"} & set(self.notes)
