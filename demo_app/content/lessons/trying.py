"""A challenge's tries as they are made: how many, what came of the last, which was the best."""

from dataclasses import dataclass, replace

from demo_app.content.lessons.challenges import Outcome
from demo_app.content.lessons.records import Challenge


@dataclass(frozen=True)
class Tries:
    """What one class has tried at one challenge.

    Parameters
    ----------
    count : int
        Tries of the group that is at it.
    last : Outcome or None
        What the model said to its last one.
    reached_at : int or None
        At which try it reached the goal first.
    best : float or None
        Best score of all groups that reached the goal; None without a ranking.
    groups : int
        Groups before this one.
    reached_by : int
        Groups that have reached the goal, this one too.
    """

    count: int = 0
    last: Outcome | None = None
    reached_at: int | None = None
    best: float | None = None
    groups: int = 0
    reached_by: int = 0

    def add(self, challenge: Challenge, outcome: Outcome) -> "Tries":
        """One try more."""
        count = self.count + 1
        found = replace(self, count=count, last=outcome)
        if not outcome.reached:
            return found
        first = self.reached_at is None
        return replace(
            found,
            reached_at=count if first else self.reached_at,
            reached_by=self.reached_by + first,
            best=_better(challenge, self.best, outcome.score),
        )

    def reset(self) -> "Tries":
        """The next group begins; what was best stays."""
        if not self.count:
            return self
        return replace(self, count=0, last=None, reached_at=None, groups=self.groups + 1)


def _better(challenge: Challenge, before: float | None, now: float | None) -> float | None:
    if before is None or now is None:
        return now if before is None else before
    return max(before, now) if challenge.most else min(before, now)
