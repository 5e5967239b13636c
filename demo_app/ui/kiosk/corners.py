"""The gesture that staff know: two corners held in turn with one finger."""

from dataclasses import dataclass, replace

HOLD_S = 0.7
"""How long each hold lasts at least, s."""
WITHIN_S = 20.0
"""How long all of it may take, s."""
LEFT, RIGHT = "left", "right"
ORDER = (LEFT, RIGHT, RIGHT, LEFT)


@dataclass(frozen=True)
class Corners:
    """What has been held so far.

    Parameters
    ----------
    held : int
        How many of `ORDER` have been held.
    first_s : float
        When the first was pressed.
    down : str
        Corner that is pressed now; "" none.
    down_s : float
        Since when.
    """

    held: int = 0
    first_s: float = 0.0
    down: str = ""
    down_s: float = 0.0

    @property
    def complete(self) -> bool:
        """Whether all have been held."""
        return self.held == len(ORDER)


def pressed(corners: Corners, corner: str, now_s: float) -> Corners:
    """A finger is down in a corner, or elsewhere (""), which begins anew."""
    late = corners.held > 0 and now_s - corners.first_s > WITHIN_S
    so_far = Corners() if late or corners.complete else corners
    if corner and corner == ORDER[so_far.held]:
        first = now_s if so_far.held == 0 else so_far.first_s
        return replace(so_far, down=corner, down_s=now_s, first_s=first)
    # A wrong corner may be the first of another try.
    if corner == ORDER[0]:
        return Corners(0, now_s, corner, now_s)
    return Corners()


def released(corners: Corners, corner: str, now_s: float) -> Corners:
    """The finger has been lifted in a corner, or elsewhere ("")."""
    if not corners.down:
        return corners
    if corner == corners.down and now_s - corners.down_s >= HOLD_S:
        return replace(corners, held=corners.held + 1, down="")
    return Corners()
