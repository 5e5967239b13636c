"""One piece of work in a thread of its own."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, QThread, Signal

from demo_app.content.bench.report import Report
from demo_app.ui.printing import print_pdf


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


def printing(made: Report, path: Path, parent: QObject) -> Once:
    """A thread that prints a report into the PDF `path`, which it returns; not started yet."""

    def work() -> Path:
        print_pdf(made.html, path, images=made.images, title=made.title)
        return path

    return Once(work, parent)
