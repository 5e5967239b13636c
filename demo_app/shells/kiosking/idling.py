"""When nobody is there: the warning, and the way back, as functions of a clock."""

from dataclasses import dataclass, replace

IDLE_S = 90.0
WARNING_S = 20.0
"""How long a warning waits for one touch: WCAG 2.2, 2.2.1 asks for 20 s at least, a simple action
and at least ten times; here there is no end to it."""
AWAKE, WARNING, GONE = "awake", "warning", "gone"


@dataclass(frozen=True)
class Idle:
    """Since when nothing was touched.

    Parameters
    ----------
    since_s : float
        Time of the last sign of anybody, s, of a clock that only goes forward.
    away : bool
        Whether the inviting view is shown, to which nothing has to lead back.
    idle_s, warning_s : float
        How long until the warning, and how long it waits.
    """

    since_s: float
    away: bool = True
    idle_s: float = IDLE_S
    warning_s: float = WARNING_S

    def state(self, now_s: float) -> str:
        """`AWAKE`, `WARNING` or `GONE`."""
        passed = now_s - self.since_s
        if self.away or passed < self.idle_s:
            return AWAKE
        return WARNING if passed < self.idle_s + self.warning_s else GONE

    def left_s(self, now_s: float) -> float:
        """Time until the way back, s."""
        return max(self.since_s + self.idle_s + self.warning_s - now_s, 0.0)


def touched(idle: Idle, now_s: float) -> Idle:
    """Somebody is there."""
    return replace(idle, since_s=now_s)


def moved(idle: Idle, now_s: float, *, away: bool) -> Idle:
    """Another page is shown."""
    return replace(idle, since_s=now_s, away=away)
