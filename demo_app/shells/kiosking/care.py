"""Care of the screen: nothing stays in one place for months, and nobody is lit for nothing."""

SHIFT_PX = 6
"""How far everything moves from the middle at most, pixels."""
STEP_S = 45.0
"""Time between two moves of one pixel, s: too slow to be seen."""
DIM_AFTER_S = 600.0
DIM = 0.6
"""Share of the light once nobody has been there for `DIM_AFTER_S`."""


def shift(now_s: float) -> tuple[int, int]:
    """Where everything stands, pixels from the middle: once round a square, a pixel at a time."""
    side = 2 * SHIFT_PX
    place = int(now_s / STEP_S) % (4 * side)
    edge, along = divmod(place, side)
    x, y = ((along, 0), (side, along), (side - along, side), (0, side - along))[edge]
    return x - SHIFT_PX, y - SHIFT_PX


def light(brightness: float, untouched_s: float, *, away: bool) -> float:
    """Share of the screen's light.

    Parameters
    ----------
    brightness : float
        As staff have set it, up to 1.
    untouched_s : float
        How long nothing was touched, s.
    away : bool
        Whether the inviting view is shown.
    """
    return brightness * (DIM if away and untouched_s >= DIM_AFTER_S else 1.0)
