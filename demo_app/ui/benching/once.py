"""One piece of work in a thread of its own."""

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, QThread, Signal


class Once(QThread):
    """Runs ``work()`` once.

    Attributes
    ----------
    done : Signal(object)
        What it returned.
    failed : Signal(object)
        The exception that it raised.
    """

    done = Signal(object)
    failed = Signal(object)

    def __init__(self, work: Callable[[], Any], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work

    def run(self) -> None:
        """Thread's body; Qt calls it."""
        try:
            found = self._work()
        except Exception as error:
            self.failed.emit(error)
        else:
            self.done.emit(found)
