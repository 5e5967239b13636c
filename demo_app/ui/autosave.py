"""A show saves itself: within a second of each change, whole, and away from the window's thread."""

import contextlib
import time
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor, TimeoutError
from pathlib import Path

from PySide6.QtCore import QLockFile, QObject, Qt, QTimer, Signal

from demo_app.base import atomic
from demo_app.base.errors import InputError
from demo_app.ui import saved as files
from demo_app.ui import words
from demo_app.ui.playing import Session
from demo_app.ui.saved import Saved

AFTER_MS = 500
"""From a change to its writing; the rest of the second is for the disk."""
PLAYING_MS = 2000
LOCK = "lehrlight.lock"
DAY_S = 86_400


class Autosave(QObject):
    """Writes what `collect` gives.

    Parameters
    ----------
    folder : pathlib.Path or None
        The data folder; None: nothing is ever written.
    collect : callable
        ``collect() -> Saved``, called in the window's thread.

    Attributes
    ----------
    told : Signal(str)
        One line, once, if it cannot be written; the show goes on.
    saved : Signal
        The file is whole again.
    """

    told = Signal(str)
    saved = Signal()
    _written = Signal(str)

    def __init__(
        self, folder: Path | None, collect: Callable[[], Saved], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._folder, self._collect = folder, collect
        self._complained = False
        self._session: Session | None = None
        self._thread = ThreadPoolExecutor(1, thread_name_prefix="autosave")
        self._writing: Future[None] | None = None
        self._writer = _Writer(folder) if folder is not None else None
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._due)
        self._written.connect(self._note)

    def watch(self, session: Session | None) -> None:
        """Save when this session changes and, now and then, while it plays; None: no session."""
        old, self._session = self._session, session
        if old is not None:
            # One that Qt has deleted already has nothing to let go of.
            with contextlib.suppress(RuntimeError):
                old.changed.disconnect(self.touch)
                old.framed.disconnect(self._framed)
        if session is not None:
            session.changed.connect(self.touch)
            session.framed.connect(self._framed)

    def touch(self) -> None:
        """Something has changed: write it within a second."""
        self._wait(AFTER_MS)

    def save_now(self, wait_s: float = 0.5) -> bool:
        """Write at once and wait for the disk, but not for ever.

        Called before a step is shown, so that a restart offers the step that is seen.

        Returns
        -------
        bool
            Whether it is on the disk.
        """
        self._timer.stop()
        writing = self._write()
        if writing is None:
            return False
        with contextlib.suppress(TimeoutError, InputError):
            writing.result(wait_s)
            return True
        return False

    def forget(self) -> None:
        """Offer nothing at the next start: the show was closed in good order."""
        self._timer.stop()
        if self._folder is not None:
            self._thread.submit(files.forget, self._folder)

    def close(self) -> None:
        """Write what still waits and end the thread; may be called twice."""
        self.watch(None)
        if self._timer.isActive():
            self._timer.stop()
            self._write()
        self._folder = None
        self._thread.shutdown(wait=True)

    def _framed(self) -> None:
        if self._session is not None and self._session.playing:
            self._wait(PLAYING_MS)

    def _wait(self, ms: int) -> None:
        if self._folder is None:
            return
        if not self._timer.isActive() or self._timer.remainingTime() > ms:
            self._timer.start(ms)

    def _due(self) -> None:
        if self._writing is not None and not self._writing.done():
            # A slow disk gets the newest when it is ready for it.
            self._timer.start(AFTER_MS)
        else:
            self._write()

    def _write(self) -> Future[None] | None:
        if self._writer is None or self._folder is None:
            return None
        text = files.as_text(self._collect())
        self._writing = self._thread.submit(self._writer.write, text)
        self._writing.add_done_callback(self._end)
        return self._writing

    def _end(self, writing: Future[None]) -> None:
        """In the writer's thread: hand the outcome over."""
        error = writing.exception()
        if error is None:
            self._written.emit("")
        else:
            self._written.emit(str(error) or type(error).__name__)

    def _note(self, problem: str) -> None:
        if not problem:
            self._complained = False
            self.saved.emit()
        elif not self._complained:
            self._complained = True
            self.told.emit(words.text("autosave.unsaved", problem=problem))


class _Writer:
    """Writes the file and keeps the one before it; lives in the thread."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._before: str | None = None

    def write(self, text: str) -> None:
        before = self._before if self._before is not None else self._found()
        if before is not None:
            atomic.write_text(self._folder / files.LAST, before)
        atomic.write_text(self._folder / files.NAME, text)
        self._before = text

    def _found(self) -> str | None:
        """What an earlier run has left, if it is whole."""
        try:
            text = (self._folder / files.NAME).read_text("utf-8")
            files.from_text(text)
        except (OSError, ValueError):
            return None
        return text


def hold(folder: Path) -> QLockFile | None:
    """The lock of the one window that saves its show; keep it as long as the window is open.

    A lock that a killed process has left is taken over.

    Returns
    -------
    QLockFile or None
        None if another process has it, or the folder is closed: then nothing is to be saved.
    """
    lock = QLockFile(str(folder / LOCK))
    # Never stale by age: a show may be open for days. A dead owner is seen by its number.
    lock.setStaleLockTime(0)
    if not lock.tryLock(0):
        return None
    _sweep(folder)
    return lock


def _sweep(folder: Path) -> None:
    """Take away half-written files of processes that were killed, once they are a day old."""
    for part in folder.glob(".lehrlight-*.json"):
        with contextlib.suppress(OSError):
            if time.time() - part.stat().st_mtime > DAY_S:
                part.unlink()
