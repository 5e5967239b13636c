"""What a numeric item of a worksheet holds, as frozen records."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from demo_app.content.cues.records import NO_SETTINGS

Value = float | str | bool


@dataclass(frozen=True)
class Wrong:
    """A wrong answer to a numeric item, and the belief that leads to it.

    Parameters
    ----------
    belief : str
        Id of a misconception.
    times, plus : float
        The right value times this, plus that.
    settings : mapping
        Settings whose reading is taken instead, if there are any.
    reading : str
        Reading that is taken instead, or "".
    value : float or None
        A fixed value instead.
    """

    belief: str
    times: float = 1.0
    plus: float = 0.0
    settings: Mapping[str, Any] = field(default_factory=lambda: NO_SETTINGS)
    reading: str = ""
    value: float | None = None


@dataclass(frozen=True)
class Given:
    """A number that the question tells: a reading of the same run, or of one with other settings.

    Parameters
    ----------
    reading : str
        "" for the item's own.
    settings : mapping
        Over those of the item.
    """

    reading: str = ""
    settings: Mapping[str, Any] = field(default_factory=lambda: NO_SETTINGS)


@dataclass(frozen=True)
class NumericItem:
    """A question of the worksheet whose answer is a number of the model.

    Parameters
    ----------
    id : str
    ask : str
        With ``{name}`` where a setting that varies is named, and ``{given}`` where a number that
        is told beforehand stands.
    scene : str
    settings : mapping
        That stay the same.
    vary : mapping
        Setting to the values of which a seed draws one.
    reading : str
    at_s : float or None
        Model time, s; None: the end of the story.
    tolerance : float
        In the reading's unit; 0 if it is a share.
    tolerance_pct : float
        Of the right value, percent; 0 if it is absolute.
    wrong : tuple of Wrong
        Of which a seed draws three.
    because : str
        Why, for the answer key.
    given : Given or None
        Where the number comes from that is told beforehand.
    line : int
    """

    id: str
    ask: str
    scene: str
    settings: Mapping[str, Any]
    vary: Mapping[str, tuple[Value, ...]]
    reading: str
    at_s: float | None
    tolerance: float
    tolerance_pct: float
    wrong: tuple[Wrong, ...]
    because: str
    given: Given | None = None
    line: int = 0
