"""Keeping the kiosk's window alive: started, listened to, restarted; no Qt, no numbers.

The window says "beat" on its standard output each second, from the thread that draws. The
supervisor starts a window again that crashed, and ends one that fell silent; where one crashes at
once, again and again, the next waits longer each time.
"""

import contextlib
import os
import queue
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import IO, Protocol

from demo_app.shells.watching import Watch, heard, looked, wait_after

STAFF_QUIT = 10
"""Exit status of a window that staff closed: the one that ends the supervisor."""
START_ANEW = 11
"""Exit status of a window that asks to be started again at once (new texts)."""
LISTENED = "LEHRLIGHT_KIOSK_LISTENED"
"""Name in the surroundings of a window whose standard output somebody listens to."""
BEAT = b"beat\n"

GRACE_S = 10.0
"""How long a window may take to end when it is asked to, s."""
LOOK_S = 0.25


class Window(Protocol):
    """A window's process, as far as the supervisor is concerned."""

    def beats(self) -> int:
        """How often it was heard since the last call."""

    def status(self) -> int | None:
        """Its exit status; None while it runs."""

    def ask_to_end(self) -> None:
        """Let it end by itself."""

    def kill(self) -> None:
        """End it, whatever it does, and wait until it is gone."""


class WindowProcess:
    """The window in a process of its own."""

    def __init__(self, command: Sequence[str]) -> None:
        self._process = subprocess.Popen(
            command,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            env={**os.environ, LISTENED: "1"},
        )
        self._heard: queue.SimpleQueue[None] = queue.SimpleQueue()
        assert self._process.stdout is not None
        self._ear = threading.Thread(
            target=_listen, args=(self._process.stdout, self._heard), name="ear", daemon=True
        )
        self._ear.start()

    def beats(self) -> int:  # noqa: D102
        count = 0
        with contextlib.suppress(queue.Empty):
            while True:
                self._heard.get_nowait()
                count += 1
        return count

    def status(self) -> int | None:  # noqa: D102
        return self._process.poll()

    def ask_to_end(self) -> None:  # noqa: D102
        self._process.terminate()

    def kill(self) -> None:  # noqa: D102
        self._process.kill()
        self._process.wait()


def _listen(pipe: IO[bytes], heard: "queue.SimpleQueue[None]") -> None:
    with contextlib.suppress(OSError, ValueError), pipe:
        for line in pipe:
            if line == BEAT:
                heard.put(None)


@dataclass
class _Asked:
    """Whether somebody asked the supervisor to end: written by signals, read by its loop."""

    end: bool = False


def supervise(
    start: Callable[[], Window],
    *,
    tell: Callable[[str], None],
    asked: Callable[[], bool],
    clock: Callable[[], float] = time.monotonic,
    sleep: Callable[[float], None] = time.sleep,
) -> int:
    """Keep a window alive until staff close it or somebody asks for the end.

    Parameters
    ----------
    start : callable
        Starts a window.
    tell : callable
        Takes a line for the system's log.
    asked : callable
        Whether the end was asked for.
    clock, sleep : callable
        Time that never goes back, s, and waiting.

    Returns
    -------
    int
        Exit status: 0.
    """
    falls = 0
    while not asked():
        try:
            window = start()
        except OSError as error:
            tell(f"the window cannot be started: {error}")
            wait_s, falls = wait_after(Watch(clock(), falls=falls), clock())
        else:
            now_s = clock()
            status, watch = _watched(
                window, Watch(now_s, looked_s=now_s, falls=falls), tell, asked, clock, sleep
            )
            if status == STAFF_QUIT or asked():
                return 0
            wait_s, falls = (0.0, 0) if status == START_ANEW else wait_after(watch, clock())
            why = "hung" if status is None else f"ended with {status}"
            tell(f"the window {why}; the next starts in {wait_s:g} s")
        until_s = clock() + wait_s
        while clock() < until_s and not asked():
            sleep(LOOK_S)
    return 0


def _watched(
    window: Window,
    watch: Watch,
    tell: Callable[[str], None],
    asked: Callable[[], bool],
    clock: Callable[[], float],
    sleep: Callable[[float], None],
) -> tuple[int | None, Watch]:
    """Its exit status, None if it hung, and what is known of it."""
    try:
        while True:
            status = window.status()
            if status is not None:
                return status, watch
            if asked():
                return _ended(window, clock, sleep), watch
            now_s = clock()
            if window.beats():
                watch = heard(watch, now_s)
            hangs, watch = looked(watch, now_s)
            if hangs:
                window.kill()
                return None, watch
            sleep(LOOK_S)
    except BaseException:
        window.kill()  # No window without its supervisor.
        raise


def _ended(
    window: Window, clock: Callable[[], float], sleep: Callable[[float], None]
) -> int | None:
    window.ask_to_end()
    until_s = clock() + GRACE_S
    while clock() < until_s:
        status = window.status()
        if status is not None:
            return status
        sleep(LOOK_S)
    window.kill()
    return None


def window_command() -> list[str]:
    """Words that start the window: this program again."""
    own = [sys.executable] if getattr(sys, "frozen", False) else [sys.executable, "-m", "demo_app"]
    return [*own, "kiosk", "--window"]


def run(command: Sequence[str] | None = None) -> int:
    """Supervise the window until the end; returns the exit status."""
    words = window_command() if command is None else command
    asked = _Asked()

    def ask(_number: int, _frame: object) -> None:
        asked.end = True

    names = ("SIGTERM", "SIGINT", "SIGHUP", "SIGBREAK")
    numbers = [getattr(signal, name) for name in names if hasattr(signal, name)]
    before = {number: signal.signal(number, ask) for number in numbers}
    try:
        return supervise(lambda: WindowProcess(words), tell=_tell, asked=lambda: asked.end)
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)


def _tell(line: str) -> None:
    with contextlib.suppress(OSError, ValueError):  # A full log is no reason to end.
        print(f"lehrlight kiosk: {line}", file=sys.stderr, flush=True)  # noqa: T201


def end_with_supervisor() -> None:
    """Let the system end this window when its supervisor is gone, even if it hangs then.

    Linux alone knows that; elsewhere a window that beats finds out by itself.
    """
    if sys.platform != "linux" or os.environ.get(LISTENED) != "1":
        return
    import ctypes

    parent_death_signal = 1  # PR_SET_PDEATHSIG of prctl(2)
    with contextlib.suppress(OSError, AttributeError):
        ctypes.CDLL(None).prctl(parent_death_signal, int(signal.SIGKILL), 0, 0, 0)


def beat() -> bool:
    """Say from the window that it is alive; call it each second from the thread that draws.

    Returns
    -------
    bool
        False if the supervisor is gone: the window has to end then, for the next supervisor
        starts a window of its own.
    """
    if os.environ.get(LISTENED) != "1":
        return True
    try:
        if hasattr(os, "set_blocking"):
            os.set_blocking(1, False)  # A supervisor that stands still must not hold up the window.
        os.write(1, BEAT)
    except BlockingIOError:
        return True
    except OSError:
        return False
    return True
