"""The kiosk's window as a process of its own: its beat, its end, its faults."""

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from demo_app.shells import supervising
from demo_app.ui.application import LOG_NAME

ROOT = Path(__file__).parent.parent.parent
PATIENCE_S = 60
PROGRAM = """
import sys
from PySide6.QtCore import QTimer
from demo_app.shells import kiosk
from demo_app.shells.kiosking.window import KioskWindow
after = sys.argv[1]
begin = KioskWindow.begin

def begun(window):
    begin(window)
    window.invited.connect(lambda: QTimer.singleShot(500, lambda: act(window)))

def act(window):
    if after == "quit":
        window.staff.quitting.emit()
    elif after == "faults":
        timer = QTimer(window)
        timer.timeout.connect(lambda: 1 / 0)
        timer.start(1100)

KioskWindow.begin = begun
sys.exit(kiosk.run(sys.argv[:1]))
"""


def start(home, after):
    home.mkdir(exist_ok=True)
    surroundings = {
        **os.environ,
        "QT_QPA_PLATFORM": "offscreen",
        "LEHRLIGHT_HOME": str(home),
        supervising.LISTENED: "1",
    }
    return subprocess.Popen(
        [sys.executable, "-c", PROGRAM, after],
        cwd=ROOT,
        env=surroundings,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )


@pytest.fixture
def started(tmp_path):
    made = []

    def make(after):
        made.append(start(tmp_path / "home", after))
        return made[-1]

    yield make
    for process in made:
        if process.poll() is None:
            process.kill()
        process.communicate()


def test_it_beats_each_second_and_ends_when_it_is_asked_to(started):
    process = started("")
    at = []
    for _ in range(4):
        assert process.stdout.readline() == supervising.BEAT
        at.append(time.monotonic())
    process.send_signal(signal.SIGTERM)
    _, said = process.communicate(timeout=PATIENCE_S)
    assert process.returncode == 0
    assert b"Traceback" not in said


def test_staff_end_the_supervisor_too(started, tmp_path):
    process = started("quit")
    process.communicate(timeout=PATIENCE_S)
    assert process.returncode == supervising.STAFF_QUIT
    use = tmp_path / "home" / "kiosk-texts" / "in-use.json"
    assert not use.exists() or json.loads(use.read_text())["trial"] == 0


def test_fault_upon_fault_asks_for_another_window(started, tmp_path):
    process = started("faults")
    _, said = process.communicate(timeout=PATIENCE_S)
    assert process.returncode == 1
    assert b"Traceback" not in said
    log = (tmp_path / "home" / LOG_NAME).read_text("utf-8")
    assert log.count("ZeroDivisionError") >= 5


def test_it_ends_when_nobody_listens(started):
    process = started("")
    assert process.stdout.readline() == supervising.BEAT
    process.stdout.close()
    process.wait(timeout=PATIENCE_S)
    assert process.returncode == 0
    # Nothing is left to read.
    process.stdout = None
