"""Keeping the screen awake while a show runs; where the system has no way, nothing but a line."""

import logging
from collections.abc import Callable
from types import TracebackType
from typing import Any, Protocol, Self

LOG = logging.getLogger("lehrlight")


class Keeper(Protocol):
    """What holds the screen awake between its two ends, as wakepy's modes do."""

    active: bool

    def __enter__(self) -> Any: ...

    def __exit__(self, *raised: Any) -> object: ...


class Awake:
    """Holds the screen awake from `start` to `stop`; a context manager too.

    It must be started and stopped in one thread. To keep still where it cannot work is meant: a
    show goes on, and the log says once that the screen may go dark.

    Parameters
    ----------
    make : callable, optional
        Makes the keeper; default: the system's own ways, by wakepy.
    """

    def __init__(self, make: Callable[[], Keeper] | None = None) -> None:
        self._make = _system if make is None else make
        self._keeper: Keeper | None = None

    @property
    def active(self) -> bool:
        """Whether the screen is being held awake."""
        return self._keeper is not None

    def start(self) -> bool:
        """Begin, unless it has begun; whether the screen is being held awake."""
        if self._keeper is not None:
            return True
        try:
            keeper = self._make()
            keeper.__enter__()
            if keeper.active:
                self._keeper = keeper
            else:
                keeper.__exit__(None, None, None)
        except Exception as error:
            self._tell(error)
        else:
            if self._keeper is None:
                self._tell("this system offers no way")
        return self._keeper is not None

    def stop(self) -> None:
        """End; may be called at any time."""
        keeper, self._keeper = self._keeper, None
        if keeper is not None:
            try:
                keeper.__exit__(None, None, None)
            except Exception as error:
                LOG.warning("the screen may stay awake: %s", error)

    def __enter__(self) -> Self:
        self.start()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.stop()

    @staticmethod
    def _tell(why: object) -> None:
        LOG.warning("the screen cannot be held awake (%s): see to it in the system's settings", why)


def _system() -> Keeper:
    from wakepy import keep

    return keep.presenting(on_fail="pass")
