"""What must be set in the process before the number libraries are imported."""

import gc
import os

_ONE_THREAD = ("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS")


def one_thread_for_matrices() -> None:
    """Keep the matrix library to one thread, unless the surroundings say otherwise.

    Bands of a few thousand unknowns gain nothing from a second thread, and where the picture
    works on the other core they wait for it: several times slower, seen on two cores. It must
    come before numpy is imported.
    """
    for name in _ONE_THREAD:
        os.environ.setdefault(name, "1")


def hold_collector() -> None:
    """Stop looking for unreachable objects: start-up makes many objects and no waste."""
    gc.disable()


def release_collector() -> None:
    """Go on looking, and leave what start-up made out of it."""
    if not gc.isenabled():
        gc.freeze()
        gc.enable()
