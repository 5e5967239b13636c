"""Inputs that questions share: tolerances, the number of runs, and the seed."""

from typing import Any

from demo_app.base.errors import InputError
from demo_app.scenes.settings import choice, number

RUNS = ("16", "32", "64", "128", "256")


def tolerance(label: str, percent: float, *, help: str) -> Any:
    """Field for how far something may be from what is stated, to both sides, %."""
    return number(label, "%", percent, 0, 50, help=help)


def runs(default: str) -> Any:
    """Field for the number of runs of the finest answer."""
    return choice("Runs", default, RUNS, help="More take longer and say it more finely.")


def seed() -> Any:
    """Field for the seed."""
    return number("Seed", "", 1, 0, 9999, help="The same seed draws the same chances again.")


def check_seed(value: float) -> None:
    """Raise `InputError` for a seed that is no whole number."""
    if value != int(value):
        raise InputError(
            f"{value:g} is no whole number", place="seed", remedy="write one such as 1"
        )


def check_spread(*tolerances: float, place: str) -> None:
    """Raise `InputError` where nothing spreads, so that no range could be stated."""
    if not any(tolerances):
        raise InputError(
            "no two pieces are the same, but every tolerance is 0",
            place=place,
            remedy="write at least one tolerance above 0",
        )
