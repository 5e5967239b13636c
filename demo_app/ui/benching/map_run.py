"""A map run beside the window: on all cores, resumed from the disk, stopped when asked to."""

import multiprocessing
import os
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

from PySide6.QtCore import QObject, QThread, Signal

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.base.process import one_thread_for_matrices
from demo_app.content.bench.serving import stand_back
from demo_app.content.maps.plan import MapPlan
from demo_app.content.maps.run import run_map

FOLDER = "maps"
KEPT = 20
"""Maps whose points are kept on the disk; older ones go."""
_WAIT_MS = 50


def store_of(plan: MapPlan) -> Path | None:
    """File of a plan's finished points; None where nothing can be kept."""
    try:
        folder = data_folder() / FOLDER
        folder.mkdir(exist_ok=True)
        old = sorted(folder.glob("*.part"), key=lambda one: one.stat().st_mtime)
        for path in old[:-KEPT]:
            path.unlink(missing_ok=True)
    except (InputError, OSError):
        return None
    return folder / f"{plan.fingerprint()}.part"


class MapRun(QThread):
    """One run of one plan.

    Attributes
    ----------
    progress : Signal(int, int)
        Points done, and points in all.
    arrived : Signal(object)
        Finished points.
    failed : Signal(object)
        The exception that ended it.
    """

    progress = Signal(int, int)
    arrived = Signal(object)
    failed = Signal(object)

    def __init__(
        self, plan: MapPlan, workers: int | None = None, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.plan = plan
        self._workers = workers
        self._stopping = False
        self._others = {child.pid for child in multiprocessing.active_children()}

    @property
    def stopping(self) -> bool:
        """Whether it was told to stop."""
        return self._stopping

    def stop(self) -> None:
        """Stop after the points in hand; all that are done stay on the disk."""
        self._stopping = True

    def end(self) -> None:
        """Stop at once, with the processes: points in hand are lost, no others."""
        self.stop()
        while not self.wait(_WAIT_MS):
            for child in multiprocessing.active_children():
                if child.pid not in self._others and not child.name.startswith("bench"):
                    child.terminate()

    def _pool(self) -> ProcessPoolExecutor:
        # Workers inherit it: it must be in place before they import numpy.
        one_thread_for_matrices()
        context = multiprocessing.get_context("spawn")
        return ProcessPoolExecutor(self._workers or os.cpu_count() or 1, context, stand_back)

    def run(self) -> None:
        """Thread's body; Qt calls it."""
        try:
            with self._pool() as pool:
                run_map(
                    self.plan,
                    pool,
                    store_of(self.plan),
                    progress=self.progress.emit,
                    arrived=self.arrived.emit,
                    cancelled=lambda: self._stopping,
                    chunk=1,
                )
                pool.shutdown(wait=True, cancel_futures=True)
        except Exception as error:
            if not self._stopping:
                self.failed.emit(error)
