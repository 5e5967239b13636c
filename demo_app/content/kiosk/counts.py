"""Counts without people: how often what happened in which hour, and nothing else.

No row is about a person or one visit: a row is an hour, a kind, a name out of a fixed list, the
number of an answer and how many. Rows are added to, so not even an order is kept.
"""

import contextlib
import datetime
import threading
import time
from collections import Counter
from collections.abc import Callable
from pathlib import Path

from demo_app.content.kiosk.counts_file import NAME, Key, add_to, open_counts, read_counts, sums
from demo_app.content.kiosk.word_keys import LANGUAGES, STEP_IDS

KINDS = {
    "start": ("",),
    "step": STEP_IDS,
    "prediction": STEP_IDS,
    "language": LANGUAGES,
    "reset": ("idle", "home", "fault"),
}
"""What is counted, and the names that it may have."""
MOST_ANSWERS = 4
GATHER_S = 0.2
"""How long counts gather before they are written, s: a burst of touches is one write."""
RETRY_S = 30.0
MOST_WAITING = 20_000
"""Rows that wait in memory at most where the disk never answers: a month of full days."""


class Counts:
    """Counts that are open; a kiosk never waits for its disk.

    `add` returns at once; a thread of its own writes within a second, and tries again every half
    minute where the disk is full, read-only or gone. `close` ends that thread.
    """

    def __init__(
        self, folder: Path | None, *, now: Callable[[], float] = time.time, retry_s: float = RETRY_S
    ) -> None:
        self._path = None if folder is None else folder / NAME
        self._now, self._retry_s = now, retry_s
        self._waiting: Counter[Key] = Counter()
        self._lock = threading.Lock()
        self._work, self._end = threading.Event(), threading.Event()
        self._problem = "" if folder is not None else "There is no folder for the counts."
        self._news: list[str] = []
        self._thread = threading.Thread(target=self._run, name="kiosk-counts", daemon=True)
        self._thread.start()

    def add(self, kind: str, name: str = "", answer: int | None = None) -> None:
        """Count one more.

        Parameters
        ----------
        kind : str
            One of `KINDS`.
        name : str
            One of its names.
        answer : int, optional
            Number of the predicted answer, from 0; predictions alone.

        Raises
        ------
        ValueError
            For anything else, so that no free text can ever be kept.
        """
        answers = range(MOST_ANSWERS) if kind == "prediction" else (None,)
        if name not in KINDS.get(kind, ()) or answer not in answers:
            raise ValueError(f"{kind!r}, {name!r}, {answer!r} is not counted")
        key = Key(hour_of(self._now()), kind, name, -1 if answer is None else answer)
        with self._lock:
            if key in self._waiting or len(self._waiting) < MOST_WAITING:
                self._waiting[key] += 1
        self._work.set()

    @property
    def problems(self) -> tuple[str, ...]:
        """What the staff page tells, a line each."""
        with self._lock:
            return (*self._news, self._problem) if self._problem else tuple(self._news)

    @property
    def waiting(self) -> int:
        """How many counts are in memory alone."""
        with self._lock:
            return sum(self._waiting.values())

    def since(self, since_s: float) -> dict[tuple[str, str, int], int]:
        """Sums over the hours from that of `since_s` on, by kind, name and answer (-1: none)."""
        kept = read_counts(self._path) if self._path is not None else {}
        with self._lock:
            return sums([kept, self._waiting], hour_of(since_s))

    def close(self) -> None:
        """Write what waits, and end the thread."""
        self._end.set()
        self._work.set()
        self._thread.join()

    def _run(self) -> None:
        while not self._end.is_set():
            self._work.wait()
            self._end.wait(GATHER_S)
            self._work.clear()
            if not self._write():
                self._end.wait(self._retry_s)
                self._work.set()

    def _write(self) -> bool:
        if self._path is None:
            return True
        with self._lock:
            taken = Counter(self._waiting)
        if not taken:
            return True
        try:
            # Opened anew each time: a stick or a share may have come and gone, and between two
            # visits nothing of the file is held open when the power goes.
            with contextlib.closing(open_counts(self._path, self._tell)) as db:
                add_to(db, taken)
        except Exception as error:
            with self._lock:
                self._problem = f"Counts wait in memory: {' '.join(str(error).split())[:200]}"
            return False
        with self._lock:
            self._waiting -= taken
            self._problem = ""
        return True

    def _tell(self, line: str) -> None:
        with self._lock:
            self._news = [*self._news[-4:], line]


def hour_of(now_s: float) -> int:
    """Beginning of the local hour of `now_s`, s since 1970."""
    wall = datetime.datetime.fromtimestamp(now_s, datetime.UTC).astimezone()
    return int(wall.replace(minute=0, second=0, microsecond=0).timestamp())
