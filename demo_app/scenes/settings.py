"""Settings of a scene: declared once, checked everywhere, turned into controls by the window."""

import dataclasses
import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, TypeVar

from demo_app.base.errors import InputError

Value = float | str | bool
S = TypeVar("S")


@dataclass(frozen=True)
class Setting:
    """What a person may change in a scene.

    Parameters
    ----------
    name : str
        Name on the command line and in files; its unit is part of it.
    label : str
        Name on the screen, in English.
    unit : str
        Unit on the screen, or "".
    default : float, str or bool
        Its kind is the setting's kind: a number, a choice (or several of them, with commas
        between) or a yes-no.
    low, high, step : float
        Allowed range and the step of a control; numbers only.
    choices : tuple of str
        Allowed words; choices only.
    most : int
        How many of the choices may be taken, each once; 0: it is one choice.
    help : str
        One sentence, in English.
    live : bool
        False where a change must start the run again (a shape, a glass).
    """

    name: str
    label: str
    unit: str
    default: Value
    low: float = 0.0
    high: float = 0.0
    step: float = 1.0
    choices: tuple[str, ...] = ()
    most: int = 0
    help: str = ""
    live: bool = True

    def check(self, value: Any) -> Value:
        """Return `value` as this setting's kind, or raise `InputError`."""
        if isinstance(self.default, bool):
            return self._check_flag(value)
        if isinstance(self.default, str):
            return self._check_several(value) if self.most else self._check_choice(value)
        return self._check_number(value)

    def _check_flag(self, value: Any) -> bool:
        words = {"yes": True, "true": True, "1": True, "no": False, "false": False, "0": False}
        word = str(value).strip().lower()
        if word not in words:
            raise self._error(f"'{value}' is neither yes nor no", "write yes or no")
        return words[word]

    def _check_choice(self, value: Any) -> str:
        if value not in self.choices:
            raise self._error(f"'{value}' is not known", f"write one of {', '.join(self.choices)}")
        return str(value)

    def _check_several(self, value: Any) -> str:
        words = [word for word in map(str.strip, str(value).split(",")) if word]
        if not words:
            raise self._error("none is named", f"write some of {', '.join(self.choices)}")
        for word in words:
            self._check_choice(word)
        twice = [word for place, word in enumerate(words) if word in words[:place]]
        if twice:
            raise self._error(f"'{twice[0]}' is named twice", "name each once")
        if len(words) > self.most:
            raise self._error(f"{len(words)} are too many", f"write at most {self.most} of them")
        return ",".join(words)

    def _check_number(self, value: Any) -> float:
        allowed = f"write a number from {self.low:g} to {self.high:g} {self.unit}".rstrip()
        try:
            if isinstance(value, bool):
                raise ValueError
            number = float(value)
        except (TypeError, ValueError):
            raise self._error(f"'{value}' is not a number", allowed) from None
        if not (math.isfinite(number) and self.low <= number <= self.high):
            raise self._error(f"{value} is out of range", allowed)
        return number

    def _error(self, problem: str, remedy: str) -> InputError:
        return InputError(problem, place=self.name, remedy=remedy)


def number(
    label: str,
    unit: str,
    default: float,
    low: float,
    high: float,
    *,
    step: float = 1.0,
    help: str,
    live: bool = True,
) -> Any:
    """Field of a settings record that holds a number from `low` to `high`."""
    return _field(float(default), label, unit, low=low, high=high, step=step, help=help, live=live)


def choice(
    label: str, default: str, choices: tuple[str, ...], *, help: str, live: bool = True
) -> Any:
    """Field of a settings record that holds one of `choices`."""
    return _field(default, label, "", choices=choices, help=help, live=live)


def several(
    label: str, default: str, choices: tuple[str, ...], most: int, *, help: str, live: bool = True
) -> Any:
    """Field of a settings record that holds one to `most` of `choices`, with commas between."""
    return _field(default, label, "", choices=choices, most=most, help=help, live=live)


def flag(label: str, default: bool, *, help: str, live: bool = True) -> Any:
    """Field of a settings record that holds yes or no."""
    return _field(default, label, "", help=help, live=live)


def _field(default: Value, label: str, unit: str, **rest: Any) -> Any:
    spec = {"default": default, "label": label, "unit": unit, **rest}
    return dataclasses.field(default=default, metadata={"setting": spec})


def settings_of(record: type) -> tuple[Setting, ...]:
    """Settings that a settings record (a frozen dataclass) declares, in its order."""
    return tuple(Setting(name=f.name, **f.metadata["setting"]) for f in dataclasses.fields(record))


def make(record: type[S], values: Mapping[str, Any]) -> S:
    """Settings record with `values` put in over the defaults, each checked.

    Raises
    ------
    InputError
        For an unknown name, a value out of range, or values that contradict each other
        (the record's own ``__post_init__``).
    """
    known = {setting.name: setting for setting in settings_of(record)}
    for name in values:
        if name not in known:
            raise InputError(
                f"no setting is called '{name}'",
                place=name,
                remedy=f"write one of {', '.join(known)}",
            )
    return record(**{name: known[name].check(value) for name, value in values.items()})


def change(settings: S, **values: Any) -> S:
    """Copy of `settings` with some values changed and checked."""
    # A settings record is always a dataclass; no type says "any dataclass".
    return make(type(settings), {**dataclasses.asdict(settings), **values})  # type: ignore[call-overload]
