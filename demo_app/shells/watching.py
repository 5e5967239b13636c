"""What a supervisor knows of a window by its beats: whether it hangs, and how long to wait then."""

from dataclasses import dataclass, replace

START_PATIENCE_S = 90.0
"""Silence of a window that has not said anything yet, s: a cold start from a slow card."""
PATIENCE_S = 15.0
"""Silence after which a window counts as hung, s."""
LIVED_S = 60.0
"""A window that lived so long did not crash at once, s."""
FIRST_WAIT_S, LONGEST_WAIT_S = 1.0, 60.0


@dataclass(frozen=True)
class Watch:
    """What the supervisor knows at an instant of a clock that never goes back.

    Parameters
    ----------
    started_s : float
        When the window was started.
    heard_s : float or None
        When it was last heard; None: not yet.
    looked_s : float
        When this was last looked at.
    falls : int
        How often in a row a window crashed at once.
    """

    started_s: float
    heard_s: float | None = None
    looked_s: float = 0.0
    falls: int = 0


def heard(watch: Watch, now_s: float) -> Watch:
    """The window said something."""
    return replace(watch, heard_s=now_s)


def looked(watch: Watch, now_s: float) -> tuple[bool, Watch]:
    """Whether the window hangs.

    Where the supervisor itself stood still (the computer slept, or was busy), the silence proves
    nothing and the window gets its time anew.
    """
    if now_s - watch.looked_s > PATIENCE_S / 2:
        back = now_s if watch.heard_s is not None else None
        return False, replace(
            watch, looked_s=now_s, heard_s=back, started_s=_later(watch, now_s - watch.looked_s)
        )
    since, patience = (
        (watch.started_s, START_PATIENCE_S)
        if watch.heard_s is None
        else (watch.heard_s, PATIENCE_S)
    )
    return now_s - since > patience, replace(watch, looked_s=now_s)


def _later(watch: Watch, lost_s: float) -> float:
    return watch.started_s + lost_s if watch.heard_s is None else watch.started_s


def wait_after(watch: Watch, now_s: float) -> tuple[float, int]:
    """How long to wait before the next start, s, and how many falls in a row there are now."""
    falls = 1 if now_s - watch.started_s >= LIVED_S else watch.falls + 1
    return min(FIRST_WAIT_S * 2.0 ** min(falls - 1, 10), LONGEST_WAIT_S), falls
