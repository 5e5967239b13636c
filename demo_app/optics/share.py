"""Sharing one picture's work between two threads, each with work space that it keeps."""

import functools
import math
import os
import threading
from collections import deque
from collections.abc import Callable, Iterable
from concurrent.futures import ThreadPoolExecutor
from typing import Any, TypeVar

import numpy as np
from numpy.typing import DTypeLike, NDArray

Task = TypeVar("Task")

BLOCK = 1 << 17
"""Array elements a step: small enough for the caches, large beside a call and a thread switch."""


class Space:
    """Work space of one thread: arrays by name, which keep no meaning between two uses.

    Fresh memory has to be cleared by the system page by page, which costs more than the
    arithmetic done in it.
    """

    def __init__(self) -> None:
        self._raw: dict[str, NDArray[np.uint8]] = {}

    def array(
        self, name: str, shape: tuple[int, ...], dtype: DTypeLike = np.float32
    ) -> NDArray[Any]:
        """The array called `name`, as large as asked for, with anything in it."""
        size = math.prod(shape) * np.dtype(dtype).itemsize
        raw = self._raw.get(name)
        if raw is None or raw.size < size:
            raw = self._raw[name] = np.empty(size, np.uint8)
        return raw[:size].view(dtype).reshape(shape)


def own_space() -> Space:
    """Work space of the calling thread."""
    return _space(threading.get_ident())


@functools.lru_cache(maxsize=4)
def _space(thread: int) -> Space:
    return Space()


def share(work: Callable[[Space, Task], None], tasks: Iterable[Task]) -> None:
    """Do every task, the caller and one helper thread taking turns.

    Parameters
    ----------
    work : callable
        ``work(space, task)``, with the work space of the thread it runs in; spends its time in
        numpy, which lets other threads run.
    tasks : iterable
        What is to be done, in any order.
    """
    waiting = deque(tasks)
    helper = None
    if len(waiting) > 1 and (os.cpu_count() or 1) > 1:
        helper = _helper().submit(_drain, work, waiting)
    _drain(work, waiting)
    if helper is not None:
        helper.result()


def _drain(work: Callable[[Space, Task], None], waiting: deque[Task]) -> None:
    while True:
        try:
            task = waiting.popleft()
        except IndexError:
            return
        work(own_space(), task)


@functools.cache
def _helper() -> ThreadPoolExecutor:
    """The one helper thread of the process."""
    return ThreadPoolExecutor(1, thread_name_prefix="optics")
