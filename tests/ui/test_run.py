"""The whole window in a process of its own: faults while it runs, and its end."""

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from demo_app.ui.application import LOG_NAME

ROOT = Path(__file__).resolve().parents[2]

PROGRAM = """
import os, signal, sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from demo_app.shells import present
from demo_app.ui.picture_view import PictureView

paint = PictureView.paintEvent
left = [2]

def faulty(self, event):
    if left and self._pixels is not None:
        left.pop()
        raise [ValueError("lost paint"), IndexError("lost paint")][len(left)]
    paint(self, event)

def slot():
    raise KeyError("lost slot")

def look():
    window = next(w for w in QApplication.topLevelWidgets() if isinstance(w, present.PresentWindow))
    print("line:", window.controls.line.text())
    print("pictures:", window.session.frame is not None, "visible:", window.isVisible())
    sys.stdout.flush()
    END()

PictureView.paintEvent = faulty
show = present.PresentWindow.showEvent

def shown(self, event):
    show(self, event)
    QTimer.singleShot(100, slot)
    QTimer.singleShot(2500, look)

present.PresentWindow.showEvent = shown
status = present.run("ring", ["lehrlight"])
print("status:", status)
"""


@pytest.mark.parametrize("end", ["os.kill(os.getpid(), signal.SIGTERM)", "QApplication.quit()"])
def test_goes_on_after_faults_and_ends_in_good_order(end, tmp_path):
    if end.startswith("os.kill") and os.name == "nt":
        pytest.skip(f"no polite {signal.SIGTERM} on Windows")
    done = subprocess.run(
        [sys.executable, "-X", "faulthandler", "-c", PROGRAM.replace("END()", end)],
        cwd=ROOT,
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "LEHRLIGHT_HOME": str(tmp_path)},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert "pictures: True visible: True" in done.stdout
    assert "line: Something went wrong and the scene was reset: " in done.stdout
    assert "status: 0" in done.stdout
    logged = (tmp_path / LOG_NAME).read_text("utf-8")
    assert "KeyError: 'lost slot'" in logged
    assert "lost paint" in logged
    assert "Traceback" in logged
    assert "QThread: Destroyed" not in done.stderr
