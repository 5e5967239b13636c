"""Fractions of an order by turning the analyser (Tardy's method), both ways.

Between crossed polarizers with quarter-wave plates, the polarizers along and across the stress, an
analyser turned by an angle moves the dark fringe of a whole order to the place that is measured.
One way round the lower order comes, the other way the higher one: ``N = n + a / 180`` and
``N = n + 1 - b / 180`` (Tardy 1929, Rev. Opt. 8, 59; ASTM C148 method B for n = 0).
"""

from dataclasses import dataclass

from demo_app.base.errors import InputError


@dataclass(frozen=True)
class Order:
    """A fractional order with the ends of its range."""

    low: float
    middle: float
    high: float


def order(
    whole: int, lower_deg: float | None, higher_deg: float | None, within_deg: float
) -> Order:
    """Order between `whole` and the next.

    Parameters
    ----------
    whole : int
        The lower of the two fringes beside the place.
    lower_deg, higher_deg : float or None
        Turns that brought the lower and the higher fringe, degrees; None: not tried.
    within_deg : float
        How closely an angle is read; nine of ten lie within it.

    Raises
    ------
    InputError
        If no turn is stated, or both together are not half a turn.
    """
    found = []
    if lower_deg is not None:
        found.append(whole + lower_deg / 180)
    if higher_deg is not None:
        found.append(whole + 1 - higher_deg / 180)
    if lower_deg is not None and higher_deg is not None:
        both = lower_deg + higher_deg
        if abs(both - 180) > 3 * within_deg:
            raise InputError(
                f"both turns make {both:g} degrees, but two neighbouring fringes are 180 apart",
                place="higher_deg",
                remedy="read them again, or leave one out",
            )
    if not found:
        raise InputError(
            "no turn of the analyser is stated", place="lower_deg", remedy="state one or both"
        )
    middle = sum(found) / len(found)
    half = within_deg / 180 / len(found) ** 0.5
    return Order(max(0.0, middle - half), middle, middle + half)
