"""Gaps between the pictures that the stage paints while a scene plays and its model is solved.

Each window runs in a fresh process with Qt's own event loop. Beside the scenes there is a bare
window that does nothing but repaint itself at the tick of the same timer: what Qt and the machine
allow.
"""

import os
import subprocess
import sys
from typing import Any

import colouring
import numpy as np

FRAME_MS = 1e3 / 60
"""Time between two frames of the stage."""
SCENES = ("bubble", "ring")
SHARES = (50, 95, 99)

# How both windows note when they paint, and stop.
_NOTED = """
import sys, time
from PySide6.QtCore import QEvent, QObject, Qt, QTimer
class Noted(QObject):
    def __init__(self):
        super().__init__()
        self.at = []
    def eventFilter(self, watched, event):
        if event.type() == QEvent.Type.Paint:
            self.at.append(time.perf_counter())
        return False
noted = Noted()
def told():
    print(" ".join(str(1e3 * (b - a)) for a, b in zip(noted.at, noted.at[1:])))
"""

_SCENE = """
from demo_app.base.process import hold_collector, one_thread_for_matrices, release_collector
one_thread_for_matrices()
hold_collector()
from demo_app.ui import application
app = application.make(sys.argv[:1])
from demo_app.scenes import catalogue
from demo_app.shells.present import PresentWindow
window = PresentWindow([catalogue.load(sys.argv[1])], sys.argv[1])
window.begin()
window.resize(1280, 720)
window.show()
release_collector()
def begin():
    window.stage.picture.installEventFilter(noted)
    window.session.toggle()
    watch.start()
def look():
    if not window.session.playing:
        app.quit()
watch = QTimer(interval=200)
watch.timeout.connect(look)
QTimer.singleShot(3000, begin)
QTimer.singleShot(60000, app.quit)
app.exec()
window.close()
told()
"""

_BARE = """
from PySide6.QtWidgets import QApplication, QWidget
from demo_app.ui.engine import TICK_MS
app = QApplication(sys.argv)
window = QWidget()
window.resize(1280, 720)
window.show()
window.installEventFilter(noted)
tick = QTimer(interval=TICK_MS, timerType=Qt.TimerType.PreciseTimer)
tick.timeout.connect(window.update)
tick.start()
QTimer.singleShot(8000, app.quit)
app.exec()
told()
"""


def gaps(program: str, *words: str) -> np.ndarray:
    """Milliseconds between the paintings of one window."""
    command = [sys.executable, "-W", "ignore", "-c", _NOTED + program, *words]
    where = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(
        command, check=True, capture_output=True, text=True, timeout=120, env=where
    )
    return np.array([float(word) for word in done.stdout.split()])


def measure() -> dict[str, np.ndarray]:
    """Percentiles `SHARES` of the gaps, ms: of each of `SCENES`, and of the ``bare`` window."""
    found = {"bare": gaps(_BARE), **{name: gaps(_SCENE, name) for name in SCENES}}
    return {name: np.percentile(one, SHARES) for name, one in found.items()}


def rows() -> list[dict[str, Any]]:
    """Rows of the benchmarks' table: name, milliseconds, ratio, reference."""
    taken = measure()
    table = []
    for name, of in taken.items():
        who = "a bare window" if name == "bare" else f"{name} while it plays"
        for k, share in enumerate(SHARES):
            references = {"a frame of 60 a second": FRAME_MS}
            if name != "bare":
                references[f"the bare window's, p{share}"] = taken["bare"][k]
            table += [
                {
                    "name": f"{who}: gap between paintings, p{share}",
                    "milliseconds": float(of[k]),
                    "ratio": float(of[k] / base),
                    "reference": reference,
                }
                for reference, base in references.items()
            ]
    return table


if __name__ == "__main__":
    colouring.show(rows())
