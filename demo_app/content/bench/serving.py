"""Answers worked out in a process of their own, so that a window never waits for one.

Two of them make a bench: one that only answers first, so that a first figure never queues behind
runs of a question that nobody asks any more, and one that makes all finer answers.
"""

import os
import threading
from collections.abc import Mapping
from dataclasses import dataclass
from multiprocessing.connection import Connection
from typing import Any

from demo_app.content.maps.work import settle

_BESIDE = 10
"""How much the finer answers stand back behind the window and the first answer, as in ``nice``."""


@dataclass(frozen=True)
class Ask:
    """A question by its page and the values of its inputs; `number` rises with every one."""

    number: int
    page: str
    values: Mapping[str, Any]


@dataclass(frozen=True)
class Told:
    """What comes back for the question `number`.

    Parameters
    ----------
    number : int
        Of the question.
    kind : str
        "ready" (the libraries are loaded), "answer", "progress", "end", "refused" or "failed".
    content : object
        Answer; ``(done, most)``; None; ``(place, problem, remedy)``; or what went wrong.
    """

    number: int
    kind: str
    content: Any = None


def stand_back() -> None:
    """Make a worker process ready that lets the window and the first answers go before it."""
    settle()
    if hasattr(os, "nice"):
        os.nice(_BESIDE)


def serve(connection: Connection, quickly: bool) -> None:
    """Answer what comes through `connection` until its other end is closed.

    A newer `Ask` takes the place of the one in hand at its next run; None only stops that one.

    Parameters
    ----------
    connection : multiprocessing.connection.Connection
        Brings `Ask` or None, takes `Told`.
    quickly : bool
        Whether to give the first answers; else the finer ones.
    """
    settle() if quickly else stand_back()
    inbox = _Inbox(connection)
    from demo_app.content.bench.catalogue import pages

    pages()
    connection.send(Told(0, "ready"))
    while True:
        _answer(connection, inbox, inbox.take(), quickly)


class _Inbox:
    """The newest question; older ones that still wait are forgotten."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self._changed = threading.Condition()
        self._newest = 0
        self._waiting: Ask | None = None
        threading.Thread(target=self._listen, name="inbox", daemon=True).start()

    def _listen(self) -> None:
        while True:
            try:
                asked = self._connection.recv()
            except (EOFError, OSError):
                os._exit(0)  # The window is gone: nobody wants the answer in hand.
            with self._changed:
                self._waiting = asked
                self._newest = -1 if asked is None else asked.number
                self._changed.notify()

    def take(self) -> Ask:
        """Wait for a question."""
        with self._changed:
            self._changed.wait_for(lambda: self._waiting is not None)
            asked, self._waiting = self._waiting, None
            assert asked is not None
            return asked

    def overtaken(self, asked: Ask) -> bool:
        """Whether another question, or none, has been asked since."""
        return self._newest != asked.number


def _answer(connection: Connection, inbox: _Inbox, asked: Ask, quickly: bool) -> None:
    # Imported here: what a process is sent must load before its libraries do.
    from demo_app.base.errors import InputError
    from demo_app.content.bench.catalogue import page
    from demo_app.scenes.settings import make

    def tell(kind: str, content: Any = None) -> None:
        connection.send(Told(asked.number, kind, content))

    try:
        chosen = page(asked.page)
        question: Any = make(chosen.question, asked.values)
        if quickly:
            tell("answer", chosen.first(question))
            return
        for answer in chosen.full(
            question,
            lambda done, most: tell("progress", (done, most)),
            lambda: inbox.overtaken(asked),
        ):
            tell("answer", answer)
        if not inbox.overtaken(asked):
            tell("end")
    except InputError as error:
        # It does not survive the way between processes: its words do.
        tell("refused", (error.place, error.problem, error.remedy))
    except OSError:
        os._exit(0)
    except Exception as error:
        tell("failed", str(error) or type(error).__name__)
