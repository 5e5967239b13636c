"""What the bench answers: figures with ranges, sentences, tables, and what they are worth."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_app.content.fitting.records import Fit
from demo_app.scenes.scene import Chart, Message

Array = NDArray[np.float64]

Progress = Callable[[int, int], None]
"""Told ``(done, most)`` runs."""
Cancelled = Callable[[], bool]
"""Asked before each run; True ends the answers with the last whole one."""

LOW, HIGH = 0.05, 0.95
"""Shares of all runs below the ends of a figure's range."""


def quiet(done: int, most: int) -> None:
    """Progress that nobody wants to hear of."""


def never() -> bool:
    """Whether to stop: no."""
    return False


@dataclass(frozen=True)
class Figure:
    """A number and the range in which nine of ten lie.

    Parameters
    ----------
    id : str
        Text id of its label.
    low, middle, high : float or None
        None: there is no such number at this end (no depth breaks it).
    unit : str
        "%" for a probability.
    """

    id: str
    low: float | None
    middle: float | None
    high: float | None
    unit: str


@dataclass(frozen=True)
class Column:
    """A column of a table; `id` is the text id of its name."""

    id: str
    unit: str = ""


@dataclass(frozen=True)
class Table:
    """A table; `id` is the text id of its title. Cells: numbers, text ids of words, or None."""

    id: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[float | str | None, ...], ...]


@dataclass(frozen=True)
class Strip:
    """A strip of computed colours along a retardation.

    Parameters
    ----------
    id : str
        Text id of its title.
    low_nm, high_nm : float
        Its ends, nm.
    colours : numpy.ndarray
        Shape (places, 3), uint8: screen colours, evenly spaced.
    spans : tuple of (float, float)
        Parts that are marked, nm.
    """

    id: str
    low_nm: float
    high_nm: float
    colours: NDArray[np.uint8]
    spans: tuple[tuple[float, float], ...] = ()


@dataclass(frozen=True)
class Answer:
    """One answer; later ones of the same question are finer.

    Parameters
    ----------
    page : str
        Id of the question's page.
    question : object
        The inputs.
    figures : tuple of Figure
        The main one first.
    sentences : tuple of Message
        In plain words.
    limits, cautions : tuple of Message
        For what the answer holds, and what it must not be taken for.
    tables, charts, strips : tuple
        What goes with it.
    runs, most : int
        Runs that are in it, and in the last one. None in it: a first estimate.
    seed : int or None
        Gives the same chances again; None: nothing was drawn by chance.
    fit : Fit or None
        What was fitted, where the answer is one that may be kept as a device.
    """

    page: str
    question: Any
    figures: tuple[Figure, ...]
    sentences: tuple[Message, ...]
    limits: tuple[Message, ...]
    cautions: tuple[Message, ...]
    tables: tuple[Table, ...] = ()
    charts: tuple[Chart, ...] = ()
    strips: tuple[Strip, ...] = ()
    runs: int = 0
    most: int = 0
    seed: int | None = None
    fit: Fit | None = None

    @property
    def done(self) -> bool:
        """Whether no finer answer follows."""
        return self.runs >= self.most

    def figure(self, id: str) -> Figure:
        """The figure called `id`."""
        return next(one for one in self.figures if one.id == id)


@dataclass(frozen=True)
class Page:
    """One question of the bench.

    Parameters
    ----------
    id, title, help : str
        Name on the command line; name on the screen and what is asked, in English.
    question : type
        Frozen dataclass whose fields come from `demo_app.scenes.settings`.
    texts : mapping
        English texts by message id.
    first : callable
        ``first(question) -> Answer``, in well under a second.
    full : callable
        ``full(question, progress, cancelled)``: an iterator of ever finer answers.
    """

    id: str
    title: str
    help: str
    question: type
    texts: Mapping[str, str]
    first: Callable[[Any], Answer]
    full: Callable[[Any, Progress, Cancelled], Iterator[Answer]]


def ranged(id: str, values: Sequence[float] | Array, unit: str, scale: float = 1.0) -> Figure:
    """Figure of many runs: their median, and the ends between which nine of ten lie."""
    low, middle, high = np.quantile(scale * np.asarray(values, float), [LOW, 0.5, HIGH])
    return Figure(id, float(low), float(middle), float(high), unit)


def chance(id: str, values: Sequence[float] | Array) -> Figure:
    """Probability (%) of something whose odds differ from run to run.

    Its middle is the mean, which is the probability over all; its ends are those between which
    nine of ten runs lie.
    """
    found = 100 * np.asarray(values, float)
    low, high = np.quantile(found, [LOW, HIGH])
    middle = float(found.mean())
    return Figure(id, min(float(low), middle), middle, max(float(high), middle), "%")
