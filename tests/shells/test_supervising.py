"""The kiosk's supervisor: crashes, hangs, waiting longer, and the end."""

import itertools
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from demo_app.shells.supervising import (
    GRACE_S,
    LOOK_S,
    STAFF_QUIT,
    START_ANEW,
    supervise,
    window_command,
)
from demo_app.shells.watching import (
    PATIENCE_S,
    START_PATIENCE_S,
    Watch,
    heard,
    looked,
    wait_after,
)

ROOT = Path(__file__).resolve().parents[2]


class Clock:
    """Time that passes when somebody sleeps."""

    def __init__(self):
        self.now = 1000.0
        self.jumps = {}

    def __call__(self):
        return self.now

    def sleep(self, seconds):
        self.now += seconds + self.jumps.pop(int(self.now), 0.0)


class Told:
    """A window that does what a plan says: lives, beats until, ends with."""

    def __init__(self, clock, lives_s, status, beats_s=1e9, first_s=0.0, obeys=True):
        self._clock, self._began = clock, clock.now
        self._ends, self._status = clock.now + lives_s, status
        self._first, self._silent = clock.now + first_s, clock.now + beats_s
        self._obeys = obeys
        self.asked = self.killed = False

    def beats(self):
        return int(self._first <= self._clock.now < self._silent)

    def status(self):
        if self.asked and self._obeys:
            return 0
        return self._status if self._clock.now >= self._ends else None

    def ask_to_end(self):
        self.asked = True

    def kill(self):
        self.killed = True
        self.killed_after_s = self._clock.now - self._began


def run(plans, *, until_s=None, jumps=()):
    """Supervise windows as planned; the starts' times, the lines, the windows, the status."""
    clock, starts, lines, windows = Clock(), [], [], []
    clock.jumps = dict(jumps)
    left = list(plans)

    def start():
        starts.append(clock.now - 1000)
        plan = left.pop(0)
        if isinstance(plan, OSError):
            raise plan
        windows.append(Told(clock, **plan))
        return windows[-1]

    def asked():
        return until_s is not None and clock.now >= 1000 + until_s

    status = supervise(start, tell=lines.append, asked=asked, clock=clock, sleep=clock.sleep)
    return starts, lines, windows, status


QUIT = {"lives_s": 5, "status": STAFF_QUIT}
CRASH = {"lives_s": 0, "status": -11}


def test_staff_end_it():
    starts, lines, windows, status = run([QUIT])
    assert (len(starts), lines, status) == (1, [], 0)
    assert not windows[0].killed


@pytest.mark.parametrize("status", [0, 1, 2, -6, -9, -11])
def test_any_other_end_is_a_fall(status):
    starts, lines, _, _ = run([{"lives_s": 100, "status": status}, QUIT])
    assert len(starts) == 2
    assert f"ended with {status}" in lines[0]


def test_it_waits_longer_each_time_up_to_a_minute():
    starts, _, _, _ = run([CRASH] * 10 + [QUIT])
    waits = [after - before for before, after in itertools.pairwise(starts)]
    assert waits == pytest.approx([1, 2, 4, 8, 16, 32, 60, 60, 60, 60], abs=2 * LOOK_S)


def test_a_long_life_makes_the_next_wait_short():
    long = {"lives_s": 3600, "status": -11}
    starts, _, _, _ = run([CRASH] * 6 + [long, CRASH, QUIT])
    assert starts[7] - starts[6] == pytest.approx(3601, abs=2 * LOOK_S)
    assert starts[8] - starts[7] == pytest.approx(2, abs=2 * LOOK_S)


def test_new_texts_start_at_once():
    starts, _, _, _ = run([{"lives_s": 3, "status": START_ANEW}, QUIT])
    assert starts[1] == pytest.approx(3, abs=2 * LOOK_S)


def test_a_hung_window_is_ended_and_started_again():
    hung = {"lives_s": 1e9, "status": 0, "beats_s": 100}
    starts, lines, windows, _ = run([hung, QUIT])
    assert windows[0].killed
    assert windows[0].killed_after_s == pytest.approx(100 + PATIENCE_S, abs=2 * LOOK_S)
    assert starts[1] == pytest.approx(100 + PATIENCE_S + 1, abs=3 * LOOK_S)
    assert "hung" in lines[0]


def test_a_window_that_never_says_anything_gets_longer():
    mute = {"lives_s": 1e9, "status": 0, "beats_s": 0}
    _, _, windows, _ = run([mute, QUIT])
    assert windows[0].killed_after_s == pytest.approx(START_PATIENCE_S, abs=2 * LOOK_S)


def test_a_slow_start_is_no_hang():
    slow = {"lives_s": 300, "status": 1, "first_s": START_PATIENCE_S - 2}
    _, _, windows, _ = run([slow, QUIT])
    assert not windows[0].killed


def test_a_computer_that_slept_kills_nothing():
    healthy = {"lives_s": 500, "status": STAFF_QUIT}
    _, lines, windows, _ = run([healthy], jumps=[(1100, 300.0)])
    assert lines == []
    assert not windows[0].killed


def test_silence_before_and_after_a_sleep_does_not_add_up():
    watch = heard(Watch(0.0), 10.0)
    hangs, watch = looked(watch, 10.0 + PATIENCE_S * 20)
    assert not hangs
    now = 10.0 + PATIENCE_S * 20
    for step in range(1, 40):
        hangs, watch = looked(watch, now + step * PATIENCE_S / 20)
        assert hangs == (step > 20)


def test_a_program_that_cannot_be_started_is_tried_again():
    starts, lines, _, _ = run([OSError("no memory"), OSError("no memory"), QUIT])
    assert len(starts) == 3
    assert "no memory" in lines[0]


def test_the_end_is_passed_on_and_waited_for():
    forever = {"lives_s": 1e9, "status": 0}
    _, _, windows, status = run([forever], until_s=50)
    assert windows[0].asked
    assert not windows[0].killed
    assert status == 0


def test_a_window_that_does_not_obey_is_ended():
    deaf = {"lives_s": 1e9, "status": 0, "obeys": False}
    _, _, windows, _ = run([deaf], until_s=50)
    assert windows[0].killed_after_s == pytest.approx(50 + GRACE_S, abs=3 * LOOK_S)


def test_the_end_comes_while_it_waits_for_the_next_start():
    starts, _, _, status = run([CRASH] * 10, until_s=40)
    assert len(starts) == 6
    assert status == 0


def test_falls_are_counted_without_end():
    assert wait_after(Watch(0.0, falls=10**6), 1.0) == (60.0, 10**6 + 1)


def test_the_command_is_this_program():
    assert window_command() == [sys.executable, "-m", "demo_app", "kiosk", "--window"]


def test_it_imports_neither_qt_nor_numbers():
    code = (
        "import sys; import demo_app.shells.supervising;"
        "print({'numpy', 'scipy', 'PySide6'} & {name.partition('.')[0] for name in sys.modules})"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert done.stdout.strip() == "set()"


# Real processes: a child that does what its file says.
CHILD = """
import os, pathlib, signal, sys, time
from demo_app.shells.supervising import STAFF_QUIT, beat, end_with_supervisor
folder = pathlib.Path(sys.argv[1])
number = len(list(folder.glob("start-*")))
(folder / f"start-{number}").write_text(str(os.getpid()))
what = sys.argv[2].split(",")[min(number, len(sys.argv[2].split(",")) - 1)]
if what == "hang":
    end_with_supervisor()
    beat()
    time.sleep(600)
beat()
if what == "crash":
    os.abort()
if what == "deaf":
    signal.signal(signal.SIGTERM, signal.SIG_IGN)
if what == "quit":
    sys.exit(STAFF_QUIT)
while beat():
    time.sleep(0.05)
(folder / "alone").write_text("")
"""
SUPERVISOR = """
import sys
from demo_app.shells import supervising, watching
watching.PATIENCE_S = 3.0
watching.FIRST_WAIT_S = 0.1
sys.exit(supervising.run([sys.executable, *sys.argv[1:]]))
"""


@pytest.fixture
def started(tmp_path):
    """Starts a supervisor whose windows behave as told, one after the other."""
    child = tmp_path / "child.py"
    child.write_text(CHILD)
    processes = []

    def start(what):
        process = subprocess.Popen(
            [sys.executable, "-c", SUPERVISOR, str(child), str(tmp_path), what],
            cwd=ROOT,
            env={**os.environ, "PYTHONPATH": str(ROOT)},
            stderr=subprocess.PIPE,
            text=True,
        )
        processes.append(process)
        return process

    yield start
    for process in processes:
        if process.poll() is None:
            process.kill()
        process.communicate()


def wait_for(what, seconds=20.0):
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        if what():
            return True
        time.sleep(0.05)
    return False


def is_gone(number):
    """Whether a process has ended; one that nobody has asked about yet has."""
    try:
        return Path(f"/proc/{number}/stat").read_text().rpartition(")")[2].split()[0] == "Z"
    except FileNotFoundError:
        return True


posix = pytest.mark.skipif(not Path("/proc/self").exists(), reason="signals and /proc of Linux")


@posix
def test_real_crashes_then_staff(started):
    process = started("crash,crash,quit")
    _, lines = process.communicate(timeout=30)
    assert process.returncode == 0
    assert lines.count("ended with -6") == 2


@posix
def test_a_real_hang(started, tmp_path):
    process = started("beat,quit")
    assert wait_for((tmp_path / "start-0").exists)
    number = int((tmp_path / "start-0").read_text() or 0)
    time.sleep(0.5)
    os.kill(number, signal.SIGSTOP)
    _, lines = process.communicate(timeout=30)
    assert process.returncode == 0
    assert "hung" in lines
    assert is_gone(number)


@posix
@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGINT, signal.SIGHUP])
def test_a_real_end(started, tmp_path, number):
    process = started("beat")
    assert wait_for((tmp_path / "start-0").exists)
    time.sleep(0.5)
    process.send_signal(number)
    process.communicate(timeout=20)
    assert process.returncode == 0
    assert is_gone(int((tmp_path / "start-0").read_text()))


@posix
def test_a_window_whose_supervisor_was_killed_ends_by_itself(started, tmp_path):
    process = started("beat")
    assert wait_for((tmp_path / "start-0").exists)
    time.sleep(0.5)
    process.kill()
    process.wait()
    assert wait_for((tmp_path / "alone").exists)
    assert wait_for(lambda: is_gone(int((tmp_path / "start-0").read_text())))


@posix
def test_a_window_that_hangs_does_not_outlive_its_supervisor(started, tmp_path):
    process = started("hang")
    assert wait_for((tmp_path / "start-0").exists)
    time.sleep(0.5)
    process.kill()
    process.wait()
    assert wait_for(lambda: is_gone(int((tmp_path / "start-0").read_text())))
