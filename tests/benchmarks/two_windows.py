"""Gaps between the pictures of two windows that show one session, as in front of an audience.

The audience's window leads at 1920 × 1080; the presenter's, at 1280 × 720, scales what it gets.
Beside them the audience's window alone. A heartbeat of 5 ms tells how long the event loop, which
keys and clicks go through, was busy at the most.
"""

from typing import Any

import colouring
import numpy as np
from frames import FRAME_MS, SCENES, SHARES, gaps

_TWO = """
from demo_app.base.process import one_thread_for_matrices
one_thread_for_matrices()
from demo_app.ui import application, theme
app = application.make(sys.argv[:1])
from demo_app.scenes import catalogue
from demo_app.shells.audience import AudienceWindow
from demo_app.ui.playing import Session
from demo_app.ui.stage_view import StageView
from demo_app.ui.worker import Worker
worker = Worker()
worker.start()
session = Session(catalogue.load(sys.argv[1]), worker)
session.begin()
audience = AudienceWindow()
audience.resize(1920, 1080)
audience.view.set_session(session)
audience.show()
presenter = StageView(leads=False)
presenter.resize(1280, 720)
presenter.setStyleSheet(theme.style_sheet(theme.Sizes.of(720)))
presenter.set_sizes(theme.Sizes.of(720))
if sys.argv[2] == "two":
    presenter.set_session(session)
    presenter.show()
beats = []
def begin():
    audience.view.stage.picture.installEventFilter(noted)
    session.toggle()
    watch.start()
    heart.start()
def look():
    if not session.playing:
        app.quit()
watch = QTimer(interval=200)
watch.timeout.connect(look)
heart = QTimer(interval=5, timerType=Qt.TimerType.PreciseTimer)
heart.timeout.connect(lambda: beats.append(time.perf_counter()))
QTimer.singleShot(3000, begin)
QTimer.singleShot(20000, app.quit)
app.exec()
session.close()
worker.end()
if sys.argv[3] == "beats":
    noted.at = beats
told()
"""


def measure() -> dict[str, np.ndarray]:
    """Percentiles `SHARES` of the gaps, ms: by scene, windows, and what is counted."""
    return {
        f"{scene}, {windows}: {what}": np.percentile(gaps(_TWO, scene, windows, what), SHARES)
        for scene in SCENES
        for windows in ("one", "two")
        for what in ("paintings", "beats")
    }


def rows() -> list[dict[str, Any]]:
    """Rows of the benchmarks' table: name, milliseconds, ratio, reference."""
    return [
        {
            "name": f"{name}, p{share}",
            "milliseconds": float(value),
            "ratio": float(value / FRAME_MS),
            "reference": "a frame of 60 a second",
        }
        for name, of in measure().items()
        for share, value in zip(SHARES, of, strict=True)
    ]


if __name__ == "__main__":
    colouring.show(rows())
