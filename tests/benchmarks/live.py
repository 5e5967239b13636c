"""Cost of one live tick of the scene ring at 1920 x 1080: heat, stress, sightlines, colour."""

import os
import time
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import colouring
from PySide6.QtGui import QImage, QPainter, QPaintEvent
from PySide6.QtWidgets import QApplication, QWidget

from demo_app.optics.instrument import Instrument
from demo_app.optics.picture import colour
from demo_app.physics.revolve.body import body, nodal_stress, strained
from demo_app.physics.revolve.surroundings import heated
from demo_app.scenes import ring
from demo_app.scenes.crack_off.record import bottle_for, firing_for
from demo_app.scenes.run import state_at

WIDTH, HEIGHT = 1920, 1080


class _Canvas(QWidget):
    def __init__(self, frame: Any) -> None:
        super().__init__()
        self.resize(WIDTH, HEIGHT)
        self._image = QImage(frame.data, WIDTH, HEIGHT, QImage.Format.Format_RGB32)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.drawImage(0, 0, self._image)
        painter.end()


def measure(repeats: int = 60) -> dict[str, float]:
    """Medians in milliseconds; jobs take turns, and each runs twice with the second run counted.

    Returns
    -------
    dict
        ``copy``: `numpy.copyto` of the RGBA frame; ``heat``: conduction; ``stress``: equilibrium
        and recovery at the nodes; ``step``: a whole step of the scene, sightlines and all;
        ``colour``, ``paint``: of the frame; ``tick``: step, colour and paint together, on a bottle
        one second before the drop lands; ``naive``: the same with the stiffness assembled and
        factorised anew and each pixel's spectrum summed (the pixels measured on a patch, scaled).
    """
    app = QApplication.instance() or QApplication([])
    settings = ring.Settings()
    state = state_at(ring.SCENE, settings, 10.0)
    ready, firing = bottle_for(settings), firing_for(settings)
    piece, glass = ready.piece, state.moment.glass
    warmer = ring.advance(settings, state).moment.glass.temperature
    frame = np.empty((HEIGHT, WIDTH, 4), np.uint8)
    other = np.zeros_like(frame)
    light = Instrument()
    canvas = _Canvas(frame)
    canvas.show()
    app.processEvents()

    def tick() -> None:
        later = ring.advance(settings, state)
        colour(later.stage, light, WIDTH, HEIGHT, frame)
        canvas.repaint()

    jobs: dict[str, Callable[[], Any]] = {
        "copy": lambda: np.copyto(frame, other),
        "heat": lambda: heated(piece, ready.ring, firing, glass, None, 10.0, 0.02),
        "stress": lambda: nodal_stress(piece, strained(piece, glass, warmer, 0.02)),
        "step": lambda: ring.advance(settings, state),
        "colour": lambda: colour(state.stage, light, WIDTH, HEIGHT, frame),
        "paint": canvas.repaint,
        "tick": tick,
    }
    taken = colouring.medians(jobs, repeats)
    taken["heat"] -= taken["stress"]
    start = time.perf_counter()
    again = body(piece.material, piece.mesh)
    strained(replace(again), glass, warmer, 0.02)
    taken["refactorised"] = (time.perf_counter() - start) * 1e3
    start = time.perf_counter()
    colouring.naive_patch(state.stage, light)
    pixels = WIDTH * HEIGHT / (colouring.PATCH[0] * colouring.PATCH[1])
    taken["naive"] = (time.perf_counter() - start) * 1e3 * pixels + taken["refactorised"]
    canvas.close()
    taken["peak_nm"] = float(max(p.map.retardation_nm().max() for p in state.stage.pieces))
    return taken


def rows(repeats: int = 60) -> list[dict[str, Any]]:
    """Rows of the benchmarks' table: name, milliseconds, ratio, reference."""
    taken = measure(repeats)
    copied = "copying the frame"
    words = {
        "copy": "copying one 1920 x 1080 frame",
        "heat": "ring: conduction, one step",
        "stress": "ring: stress, one step",
        "step": "ring: whole step with sightlines and strength",
        "colour": f"ring: colouring (peak {taken['peak_nm']:.0f} nm)",
        "paint": "ring: painting the widget",
        "tick": "ring: whole live tick",
    }
    table = [
        {
            "name": name,
            "milliseconds": taken[key],
            "ratio": taken[key] / taken["copy"],
            "reference": copied,
        }
        for key, name in words.items()
    ]
    table.append(
        {
            "name": "ring: matrices built anew, every pixel's spectrum summed",
            "milliseconds": taken["naive"],
            "ratio": taken["naive"] / taken["tick"],
            "reference": words["tick"],
        }
    )
    return table


if __name__ == "__main__":
    colouring.show(rows())
