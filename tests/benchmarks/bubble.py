"""Cost of the bubble: its first answer, the whole run, and the stage's frames meanwhile."""

import subprocess
import sys
import time
from dataclasses import replace
from typing import Any

import numpy as np

from demo_app.physics.annealing_search import worked_at
from demo_app.physics.revolve.body import body, nodal_stress
from demo_app.physics.revolve.cooling import Cooling, hot
from demo_app.physics.revolve.cooling import step as cool
from demo_app.physics.revolve.flask import flask
from demo_app.physics.revolve.foreseen import foreseen
from demo_app.scenes import bubble
from demo_app.scenes.blown import record
from demo_app.scenes.run import state_at
from tests.benchmarks import colouring

FRAME_MS = 1e3 / 60
"""Time between two frames of the stage."""

_WINDOW = """
import sys, time
from demo_app.ui import application
app = application.make(sys.argv[:1])
from demo_app.scenes import catalogue
from demo_app.shells.present import PresentWindow
window = PresentWindow([catalogue.load("bubble")], "bubble")
window.resize(1280, 720)
window.show()
def turn(seconds, going):
    end = time.time() + seconds
    while time.time() < end and going():
        app.processEvents()
        time.sleep(0.0005)
turn(3.0, lambda: True)
came = []
window.session.framed.connect(lambda frame: came.append(time.time()))
window.session.toggle()
turn(40.0, lambda: window.session.playing or len(came) < 3)
print(" ".join(str(1e3 * (b - a)) for a, b in zip(came, came[1:])))
window.close()
"""


def _forget() -> None:
    for kept in (flask, foreseen, record.cold_after, record.lines_of):
        kept.cache_clear()


def _first() -> None:
    """First answer of a scene that has just been opened: shape, plates, readings."""
    _forget()
    settings = bubble.Settings()
    bubble.SCENE.start(settings)
    record.first_answer(settings)


def _run(settings: Any, *, naive: bool = False) -> list[float]:
    """Milliseconds of each step of the full run; a naive one builds all its matrices each time."""
    what = record.flask_of(settings)
    now: Cooling = hot(what, worked_at(what.piece.material))
    taken = []
    while not now.warmth.cold:
        start = time.perf_counter()
        if naive:
            what = replace(what, piece=body(what.piece.material, what.piece.mesh))
        now = cool(what, now, None)
        taken.append((time.perf_counter() - start) * 1e3)
    return taken


def frame_gaps() -> np.ndarray:
    """Milliseconds between the pictures of a window that plays a bubble's whole story."""
    command = [sys.executable, "-W", "ignore", "-c", _WINDOW]
    done = subprocess.run(command, check=True, capture_output=True, text=True, timeout=120)
    return np.array([float(word) for word in done.stdout.split()])


def measure(repeats: int = 7) -> dict[str, float]:
    """Milliseconds: medians of runs, 95th percentiles of steps and of the gaps between pictures."""
    settings = bubble.Settings()
    frame = np.zeros((colouring.HEIGHT, colouring.WIDTH, 4), np.uint8)
    other = np.empty_like(frame)
    jobs = {"copy": lambda: np.copyto(other, frame), "first": _first}
    taken = colouring.medians(jobs, repeats)
    steps = [_run(settings) for _ in range(repeats)]
    taken["run"] = float(np.median([sum(one) for one in steps]))
    taken["step"] = float(np.percentile(np.concatenate(steps), 95))
    taken["naive"] = sum(_run(settings, naive=True))
    last = state_at(bubble.SCENE, settings)
    what = record.flask_of(settings)
    nodal = nodal_stress(what.piece, last.cooling.glass)
    record.lines_of(what)
    taken |= colouring.medians({"light": lambda: record.seen(what, nodal)}, repeats)
    taken["gap"], taken["frame"] = float(np.percentile(frame_gaps(), 95)), FRAME_MS
    return taken


def rows(repeats: int = 7) -> list[dict[str, Any]]:
    """Rows of the benchmarks' table: name, milliseconds, ratio, reference."""
    taken = measure(repeats)
    copied, whole, frame = "copying a frame", "bubble: full run", "a frame of 60 a second"
    table = [
        ("bubble: first answer", "first", "copy", copied),
        (whole, "run", "copy", copied),
        ("bubble: one step, p95", "step", "copy", copied),
        ("bubble: light as a product of slices", "light", "copy", copied),
        ("bubble: all matrices built anew at each step", "naive", "run", whole),
        ("bubble: gap between pictures while it plays, p95", "gap", "frame", frame),
    ]
    return [
        {
            "name": name,
            "milliseconds": taken[key],
            "ratio": taken[key] / taken[base],
            "reference": reference,
        }
        for name, key, base, reference in table
    ]


if __name__ == "__main__":
    colouring.show(rows())
