"""Cost of the bubble: its first answer and the whole run."""

import time
from dataclasses import replace
from typing import Any

import colouring
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


def measure(repeats: int = 7) -> dict[str, float]:
    """Milliseconds: medians of runs, 95th percentile of steps."""
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
    return taken


def rows(repeats: int = 7) -> list[dict[str, Any]]:
    """Rows of the benchmarks' table: name, milliseconds, ratio, reference."""
    taken = measure(repeats)
    copied, whole = "copying a frame", "bubble: full run"
    table = [
        ("bubble: first answer", "first", "copy", copied),
        (whole, "run", "copy", copied),
        ("bubble: one step, p95", "step", "copy", copied),
        ("bubble: light as a product of slices", "light", "copy", copied),
        ("bubble: all matrices built anew at each step", "naive", "run", whole),
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
