"""Cost of the scene touch, a whole frame of it, beside copying one picture in the same run.

Run it as ``python tests/benchmarks/touch.py`` from the top of the repository.
"""

import statistics
import time
from collections.abc import Callable
from typing import Any

import numpy as np

from demo_app.optics.instrument import Instrument
from demo_app.optics.picture import colour
from demo_app.physics.plan.sheet import (
    displacement,
    factor,
    nodal_stress,
    sheet_stiffness,
    warmed,
)
from demo_app.physics.plan.touching import TICK
from demo_app.scenes import touch

SIZE = (1920, 1080)


def rows() -> list[dict[str, Any]]:
    """One row a measurement: name, milliseconds, ratio and what the ratio refers to."""
    settings = touch.Settings()
    state = touch.start(settings)
    for _ in range(90):
        state = touch.advance(settings, state)
    plate = touch._plate(settings)
    width, height = SIZE
    frame = np.zeros((height, width, 4), np.uint8)
    copy, instrument = np.empty_like(frame), Instrument()
    still = np.zeros(plate.mesh.nodes)

    def step() -> None:
        touch.advance(settings, state)

    def mapped() -> None:
        touch.view(settings, touch.advance(settings, state))

    def coloured() -> None:
        seen = touch.view(settings, touch.advance(settings, state))
        colour(seen.stage, instrument, width, height, frame)

    def once_factorised() -> None:
        rise = warmed(plate, state.rise, TICK, still)
        nodal_stress(plate, rise, displacement(plate, rise))

    def naively() -> None:
        gamma = 1 - 2**-0.5
        heat = factor(plate.capacity + gamma * TICK * plate.drain)
        rate = heat.solve(-(plate.drain @ state.rise))
        middle = state.rise + (1 - gamma) * TICK * rate
        rise = middle + gamma * TICK * heat.solve(-(plate.drain @ middle))
        stiff = sheet_stiffness(plate.form, plate.material)
        solid = factor(stiff[plate.free][:, plate.free])
        moved = np.zeros(2 * plate.mesh.nodes)
        moved[plate.free] = solid.solve((plate.swell @ rise)[plate.free])
        nodal_stress(plate, rise, moved)

    copying = _median(lambda: np.copyto(copy, frame), 60)
    lean, naive = _median(once_factorised, 40), _median(naively, 8)
    of_copy = "copying one 1080p frame"
    return [
        _row("touch: copying one 1080p frame", copying, copying, of_copy),
        _row("touch: one step", _median(step, 60), copying, of_copy),
        _row("touch: one step and its map", _median(mapped, 60), copying, of_copy),
        _row("touch: step, map and 1080p colours", _median(coloured, 40), copying, of_copy),
        _row("touch: warmth and stress, factorised once", lean, lean, "itself"),
        _row("touch: the same, factorised at each step", naive, lean, "factorised once"),
    ]


def _row(name: str, seconds: float, reference: float, words: str) -> dict[str, Any]:
    return {
        "name": name,
        "milliseconds": 1e3 * seconds,
        "ratio": seconds / reference,
        "reference": words,
    }


def _median(run: Callable[[], Any], count: int) -> float:
    run()
    taken = []
    for _ in range(count):
        began = time.perf_counter()
        run()
        taken.append(time.perf_counter() - began)
    return statistics.median(taken)


if __name__ == "__main__":
    for one in rows():
        print(
            f"{one['name']:45s} {one['milliseconds']:8.2f} ms  {one['ratio']:7.1f} x "
            f"{one['reference']}"
        )
