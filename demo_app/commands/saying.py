"""Lines of a command: what a person can mend, and how far a long run is."""

import sys
from collections.abc import Callable


def tell(line: str) -> int:
    """Write one line about something that a person can mend; the exit status that goes with it."""
    print(f"lehrlight: {' '.join(line.split())}", file=sys.stderr)
    return 2


def progress() -> Callable[[int, int], None]:
    """Shows how far a long run is, where somebody watches."""
    return _shown if sys.stderr is not None and sys.stderr.isatty() else _quiet


def _shown(done: int, count: int) -> None:
    print(f"\r{done} of {count}", end="\n" if done == count else "", file=sys.stderr, flush=True)


def _quiet(done: int, count: int) -> None:
    pass
