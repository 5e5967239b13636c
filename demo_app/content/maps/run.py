"""Running a map: what is not finished yet, through any executor, coarse points first."""

import multiprocessing
import os
from collections.abc import Callable, Iterator, Mapping
from concurrent.futures import (
    BrokenExecutor,
    CancelledError,
    Future,
    ProcessPoolExecutor,
    as_completed,
)
from contextlib import contextmanager
from pathlib import Path
from typing import Any, Protocol

from demo_app.base.errors import InputError
from demo_app.base.process import one_thread_for_matrices
from demo_app.content.maps.plan import MapPlan
from demo_app.content.maps.store import Store
from demo_app.content.maps.work import Cell, cells, settle

CHUNK = 4
"""Points that one call of a worker runs: a kill loses no more than these."""
MOST_WORKERS = 256


class Submits(Protocol):
    """Anything that follows `concurrent.futures.Executor` as far as ``submit``."""

    def submit(self, fn: Callable[..., Any], /, *args: Any) -> Future[Any]:
        """Have ``fn(*args)`` done somewhere."""


@contextmanager
def processes(workers: int | None = None) -> Iterator[ProcessPoolExecutor]:
    """Processes of this machine, one a core unless `workers` says otherwise.

    Raises
    ------
    InputError
        For a useless number of workers.
    """
    count = os.cpu_count() or 1 if workers is None else workers
    if not 1 <= count <= MOST_WORKERS:
        raise InputError(
            f"{count} workers cannot be",
            place="--workers",
            remedy=f"write a whole number 1 to {MOST_WORKERS}",
        )
    # Workers inherit it: it must be in place before they import numpy.
    one_thread_for_matrices()
    pool = ProcessPoolExecutor(count, multiprocessing.get_context("spawn"), settle)
    try:
        yield pool
    finally:
        pool.shutdown(wait=True, cancel_futures=True)


def run_map(
    plan: MapPlan,
    executor: Submits,
    store: Path | None = None,
    *,
    progress: Callable[[int, int], None] = lambda done, count: None,
    arrived: Callable[[tuple[Cell, ...]], None] = lambda cells: None,
    cancelled: Callable[[], bool] = lambda: False,
    chunk: int = CHUNK,
) -> Mapping[int, Cell]:
    """Run what `store` does not hold yet.

    Parameters
    ----------
    plan : MapPlan
        What to run.
    executor : Submits
        Where: `processes`, a cluster's, or any other.
    store : pathlib.Path, optional
        File that keeps finished points; None: nothing is kept.
    progress : callable
        Told ``(done, count)``, at first with what was on disk, then after each chunk.
    arrived : callable
        Given the points of each chunk, those from the disk first: for a map that fills up.
    cancelled : callable
        Asked after each chunk; True ends the run with what is done.
    chunk : int
        Points a call.

    Returns
    -------
    mapping
        Finished points by index: all ``plan.count``, unless cancelled.

    Raises
    ------
    InputError
        If the store is of another map, or a worker was ended from outside.
    """
    if store is None:
        return _run(plan, executor, None, progress, arrived, cancelled, chunk)
    with Store(store, plan) as kept:
        return _run(plan, executor, kept, progress, arrived, cancelled, chunk)


def _run(
    plan: MapPlan,
    executor: Submits,
    kept: Store | None,
    progress: Callable[[int, int], None],
    arrived: Callable[[tuple[Cell, ...]], None],
    cancelled: Callable[[], bool],
    chunk: int,
) -> dict[int, Cell]:
    done: dict[int, Cell] = dict(kept.found) if kept else {}
    progress(len(done), plan.count)
    if done:
        arrived(tuple(done.values()))
    todo = [index for index in coarse_first(plan.count) if index not in done]
    futures: list[Future[Any]] = []
    try:
        # Not a list comprehension: what was handed in is cancelled whatever happens.
        for first in range(0, len(todo), chunk):
            futures.append(executor.submit(cells, plan, tuple(todo[first : first + chunk])))
        for future in as_completed(futures) if futures else ():
            found = future.result()
            if kept:
                kept.add(found)
            done.update((one.index, one) for one in found)
            arrived(found)
            progress(len(done), plan.count)
            if cancelled():
                break
    except CancelledError:
        pass  # Whoever owns the executor has stopped it: what is done is done.
    except BrokenExecutor:
        raise InputError(
            "a worker was ended from outside",
            place="map",
            remedy="run the same map again, with fewer workers if memory is short: it goes on",
        ) from None
    finally:
        for future in futures:
            future.cancel()
    return done


def coarse_first(count: int) -> list[int]:
    """All numbers below `count`, spread ever more finely: every part of a map shows early.

    Examples
    --------
    >>> coarse_first(8)
    [0, 4, 2, 6, 1, 3, 5, 7]
    """
    stride = 1 << max(0, count - 1).bit_length()
    order = list(range(0, count, stride)) if count else []
    while stride > 1:
        order += range(stride // 2, count, stride)
        stride //= 2
    return order
