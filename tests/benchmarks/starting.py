"""Time to the first painted picture of a stressed piece, and peak memory: fresh processes."""

import os
import statistics
import subprocess
import sys
import time
from typing import Any

_BARE = """
import sys, time
from PySide6.QtWidgets import QApplication
import pyqtgraph
app = QApplication(sys.argv)
plot = pyqtgraph.PlotWidget()
plot.resize(1280, 720)
plot.show()
plot.repaint()
app.processEvents()
print(time.time() - float(sys.argv[1]))
"""

# The same order as `demo_app.cli` and `demo_app.shells.present.run`.
_APP = """
import sys, time
from demo_app.base.process import hold_collector, one_thread_for_matrices, release_collector
one_thread_for_matrices()
hold_collector()
from demo_app.ui import application
app = application.make(sys.argv[:1])
from demo_app.scenes import catalogue
from demo_app.shells.present import Others, PresentWindow
window = PresentWindow([catalogue.load("ring")], "ring")
window.begin()
others = Others(window)
window.resize(1280, 720)
window.show()
window.session.toggle()
painted = None
def framed(frame):
    global painted
    release_collector()
    peak = max(float(p.map.retardation_nm().max()) for p in frame.stage.pieces)
    if painted is None and peak > 20.0:
        window.stage.picture.repaint()
        painted = time.time() - float(sys.argv[1])
window.session.framed.connect(framed)
end = time.time() + 60
while painted is None and time.time() < end:
    app.processEvents()
    time.sleep(0.001)
print(painted)
if len(sys.argv) > 2:
    import resource
    end = time.time() + float(sys.argv[2])
    while time.time() < end:
        app.processEvents()
        time.sleep(0.002)
    print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024)
others.stop()
window.close()
"""


def _run(script: str, *words: str) -> list[float]:
    command = [sys.executable, "-W", "ignore", "-c", script, str(time.time()), *words]
    surroundings = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(command, env=surroundings, capture_output=True, text=True, check=True)
    return [float(line) for line in done.stdout.split()]


def rows(repeats: int = 5) -> list[dict[str, Any]]:
    """Rows of the benchmarks' table: name, milliseconds, ratio, reference; and the peak memory."""
    bare, ours = [], []
    for _ in range(repeats):
        bare.append(_run(_BARE)[0])
        ours.append(_run(_APP)[0])
    window, picture = (1e3 * statistics.median(x) for x in (bare, ours))
    megabytes = _run(_APP, "20")[1]
    return [
        {
            "name": "start to the first picture of a stressed piece",
            "milliseconds": picture,
            "ratio": picture / window,
            "reference": f"a bare window with an empty plot ({window:.0f} ms)",
        },
        {
            "name": "peak memory of the app, 20 s of the ring scene",
            "megabytes": megabytes,
            "ratio": megabytes / 400.0,
            "reference": "400 MB",
        },
    ]
