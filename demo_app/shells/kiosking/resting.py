"""What a program that runs for a year does while nobody watches: it gives memory back."""

import contextlib
import ctypes
import functools
import gc
import sys
from collections.abc import Callable


def give_back() -> None:
    """Collect what is unreachable, and hand what the allocator keeps back to the system.

    Pictures of many sizes leave holes between them that the C library keeps for later; over a day
    of visitors these came to tens of megabytes.
    """
    gc.collect()
    _trim()(0)


@functools.cache
def _trim() -> Callable[[int], object]:
    """The C library's own way to do so, where it has one (glibc)."""
    if sys.platform == "linux":
        with contextlib.suppress(OSError, AttributeError):
            found: Callable[[int], object] = ctypes.CDLL("libc.so.6").malloc_trim
            return found
    return lambda _left: None
