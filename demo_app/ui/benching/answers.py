"""Answers for a window: asked of two processes, told by signals, the latest question alone."""

import contextlib
import multiprocessing
from collections.abc import Mapping
from multiprocessing.connection import Connection
from typing import Any

from PySide6.QtCore import QObject, QThread, Signal

from demo_app.base.process import one_thread_for_matrices
from demo_app.content.bench.serving import Ask, Told, serve

_PATIENCE_S = 2.0


class _Ear(QThread):
    """Waits for what a process tells.

    Attributes
    ----------
    told : Signal(Told)
    lost : Signal()
        The process has ended without being asked to.
    """

    told = Signal(object)
    lost = Signal()

    def __init__(self, connection: Connection, parent: QObject) -> None:
        super().__init__(parent)
        self._connection = connection

    def run(self) -> None:
        """Thread's body; Qt calls it."""
        while True:
            try:
                told = self._connection.recv()
            except (EOFError, OSError):
                break
            self.told.emit(told)
        self.lost.emit()


class _Line(QObject):
    """One process and the way to it and back."""

    told = Signal(object)
    lost = Signal()

    def __init__(self, quickly: bool, parent: QObject) -> None:
        super().__init__(parent)
        self._quickly = quickly
        self._ear: _Ear | None = None

    def begin(self) -> None:
        """Start the process."""
        context = multiprocessing.get_context("spawn")
        self._mine, theirs = context.Pipe()
        name = "bench-first" if self._quickly else "bench-full"
        self.process = context.Process(
            target=serve, args=(theirs, self._quickly), name=name, daemon=True
        )
        self.process.start()
        theirs.close()
        self._ear = _Ear(self._mine, self)
        self._ear.told.connect(self.told)
        self._ear.lost.connect(self._gone)
        self._ear.start()

    def send(self, asked: Ask | None) -> None:
        """Ask, or stop; a process that was lost is started anew."""
        if self._ear is None:
            if asked is None:
                return
            self.begin()
        with contextlib.suppress(OSError):  # `lost` follows.
            self._mine.send(asked)

    def end(self) -> None:
        """End process and thread, and wait for both."""
        if self._ear is None:
            return
        ear, self._ear = self._ear, None
        ear.lost.disconnect(self._gone)
        self.process.terminate()
        self.process.join(_PATIENCE_S)
        if self.process.is_alive():
            self.process.kill()
            self.process.join()
        ear.wait()
        self._mine.close()
        self.process.close()

    def _gone(self) -> None:
        if self._ear is not None:
            self.end()
            self.lost.emit()


class Answers(QObject):
    """The bench's two processes, seen from the window.

    Attributes
    ----------
    ready : Signal()
        The first figures come quickly from here on.
    first : Signal(int, Answer)
        Number of the question, and its first answer.
    finer : Signal(int, Answer)
    progress : Signal(int, int, int)
        Number of the question, runs done, runs in all.
    ended : Signal(int)
        No finer answer follows.
    refused : Signal(int, str, str, str)
        Number, and place, problem and remedy.
    failed : Signal(int, str)
        What went wrong, where nobody could have known better.
    """

    ready = Signal()
    first = Signal(int, object)
    finer = Signal(int, object)
    progress = Signal(int, int, int)
    ended = Signal(int)
    refused = Signal(int, str, str, str)
    failed = Signal(int, str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._number = 0
        self._asked: Ask | None = None
        self.quick, self.full = _Line(True, self), _Line(False, self)
        self.quick.told.connect(self._quick_told)
        self.full.told.connect(self._full_told)
        for line in (self.quick, self.full):
            line.lost.connect(self._lost)

    def begin(self) -> None:
        """Start both processes, so that the first question need not wait for their libraries."""
        # Children inherit it: it must be in place before they import numpy.
        one_thread_for_matrices()
        self.quick.begin()
        self.full.begin()

    def ask(self, page: str, values: Mapping[str, Any]) -> int:
        """Ask; what was asked before is given up. Returns the question's number."""
        self._number += 1
        self._asked = Ask(self._number, page, dict(values))
        self.full.send(None)
        self.quick.send(self._asked)
        return self._number

    def again(self) -> None:
        """Make the finer answers of the last question anew."""
        if self._asked is not None:
            self.full.send(self._asked)

    def stop(self) -> None:
        """Give up the question in hand; what still comes of it is not told."""
        self.full.send(None)
        self._number += 1
        if self._asked is not None:
            self._asked = Ask(self._number, self._asked.page, self._asked.values)

    @property
    def number(self) -> int:
        """Number of the latest question."""
        return self._number

    def end(self) -> None:
        """End everything."""
        self.quick.end()
        self.full.end()

    def _quick_told(self, told: Told) -> None:
        if told.kind == "ready":
            self.ready.emit()
        elif told.kind == "answer":
            if told.number == self._number:
                self.full.send(self._asked)
                self.first.emit(told.number, told.content)
        else:
            self._pass_on(told)

    def _full_told(self, told: Told) -> None:
        if told.number != self._number:
            return
        if told.kind == "answer":
            self.finer.emit(told.number, told.content)
        elif told.kind == "progress":
            self.progress.emit(told.number, *told.content)
        elif told.kind == "end":
            self.ended.emit(told.number)
        else:
            self._pass_on(told)

    def _pass_on(self, told: Told) -> None:
        if told.number != self._number:
            return
        if told.kind == "refused":
            self.refused.emit(told.number, *told.content)
        elif told.kind == "failed":
            self.failed.emit(told.number, told.content)

    def _lost(self) -> None:
        self.failed.emit(self._number, "")


__all__ = ["Answers"]
