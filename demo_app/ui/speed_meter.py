"""How fast the model's time really runs."""

LEAST_S = 0.5


class SpeedMeter:
    """Measures the speed that is really reached, over half a second or more."""

    def __init__(self) -> None:
        self._began: tuple[float, float] | None = None

    def clear(self) -> None:
        """Begin anew: the speed asked for, or the run, has changed."""
        self._began = None

    def reached(self, now: float, time_s: float) -> float | None:
        """Model seconds per second since the last answer; None while it is too early to say.

        Parameters
        ----------
        now : float
            Wall clock, s.
        time_s : float
            Model time shown, s.
        """
        if self._began is None or time_s < self._began[1]:
            self._began = (now, time_s)
            return None
        began, first = self._began
        if now - began < LEAST_S:
            return None
        self._began = (now, time_s)
        return (time_s - first) / (now - began)
