"""What the presenter says, in writing below the stage, in one or two languages."""

import itertools
import math
from collections.abc import Sequence

from PySide6.QtCore import QTimer
from PySide6.QtGui import QHideEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from demo_app.ui import theme
from demo_app.ui.fitted_label import TWO_LINES, FittedLabel

MOST_LANGUAGES = 2
WORDS_A_SECOND = 160 / 60
"""Pace at which captions are read comfortably: 160 words a minute (subtitling practice)."""
LEAST_S = 2.0


def pieces(said: str, number: int) -> tuple[str, ...]:
    """A text cut between words into `number` pieces of about equal length, in order."""
    found = said.split()
    cuts = [round(len(found) * place / number) for place in range(number + 1)]
    return tuple(" ".join(found[a:b]) for a, b in itertools.pairwise(cuts))


def reading_s(said: Sequence[str]) -> float:
    """Time that the longest of some texts takes to read, s."""
    return max(LEAST_S, max(len(text.split()) for text in said) / WORDS_A_SECOND)


class CaptionStrip(QWidget):
    """Two lines at most: both of one language, or one of each of two.

    The room stands still once the number of languages is set. What is too long for it at the full
    type size comes in pieces, each as long as reading it takes; the last one stays.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._size = 26
        self._texts: tuple[str, ...] = ()
        self._renewed: tuple[str, ...] | None = None
        self._pieces: list[tuple[str, ...]] = []
        self._labels = [FittedLabel(self) for _ in range(MOST_LANGUAGES)]
        for label in self._labels:
            label.setObjectName("sentence")
            label.hide()
        self._languages = 0
        self._next = QTimer(self)
        self._next.setSingleShot(True)
        self._next.timeout.connect(self._read)
        self._box = QVBoxLayout(self)
        self._box.setSpacing(0)

    @property
    def languages(self) -> int:
        """Number of languages that there is room for: 0, 1 or 2."""
        return self._languages

    def room(self) -> int:
        """Height that the strip needs, pixels."""
        if self._languages == 0:
            return 0
        edges = self._box.contentsMargins()
        return round(self._size * TWO_LINES) + edges.top() + edges.bottom()

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._size = sizes.sentence
        # A projector's edge may be cut off: keep words away from it.
        self._box.setContentsMargins(sizes.gap, 0, sizes.gap, sizes.gap)
        for label in self._labels:
            label.set_largest(self._size)
        self._begin()

    def set_languages(self, number: int) -> None:
        """Keep room for captions in a number of languages."""
        self._languages = min(max(number, 0), MOST_LANGUAGES)
        for place, label in enumerate(self._labels):
            self._box.removeWidget(label)
            label.setVisible(place < self._languages)
            if place < self._languages:
                self._box.addWidget(label, 1)

    def show_lines(self, lines: Sequence[str]) -> None:
        """Show a text in each language.

        While the first language's text stays as it is, its pieces are shown to their end before
        another language's is renewed: what follows the picture changes too often to be waited for.
        """
        texts = tuple(lines)[: self._languages]
        if self._next.isActive() and texts[:1] == self._texts[:1]:
            self._renewed = None if texts == self._texts else texts
            return
        self._renewed, self._texts = None, texts
        self._begin()

    def shown(self) -> tuple[str, ...]:
        """What stands there now."""
        return tuple(label.text() for label in self._labels[: self._languages])

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._begin()

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: D102
        super().hideEvent(event)
        self._next.stop()

    def showEvent(self, event: QShowEvent) -> None:  # noqa: D102
        super().showEvent(event)
        self._begin()

    def _begin(self) -> None:
        self._next.stop()
        self._pieces = self._cut()
        self._turn()

    def _cut(self) -> list[tuple[str, ...]]:
        """The texts in as few pieces as fit; a short one stays while a longer one goes on."""
        cut = [self._pieces_of(text) for text in self._texts]
        longest = max((len(one) for one in cut), default=1)
        return [tuple(one[place * len(one) // longest] for one in cut) for place in range(longest)]

    def _pieces_of(self, said: str) -> tuple[str, ...]:
        found = pieces(said, 1)
        for number in range(2, len(said.split()) + 1):
            if all(self._fits(one) for one in found):
                break
            found = pieces(said, number)
        return found

    def _fits(self, said: str) -> bool:
        label = self._labels[0]
        metrics = label.metrics(self._size)
        wide = self.width() - 2 * self._box.contentsMargins().left()
        lines = MOST_LANGUAGES // max(self._languages, 1)
        # Words do not break just anywhere: two lines hold a little less than twice one.
        return metrics.horizontalAdvance(said) <= wide * (1 if lines == 1 else 1.8)

    def _turn(self) -> None:
        now = self._pieces.pop(0) if self._pieces else ()
        for place, label in enumerate(self._labels):
            label.say(now[place] if place < len(now) else "")
        if any(now) and self.isVisible():
            self._next.start(math.ceil(1000 * reading_s(now)))

    def _read(self) -> None:
        """What stands there has been read."""
        if self._pieces:
            self._turn()
        elif self._renewed is not None:
            self._texts = self._renewed
            self._renewed = None
            self._begin()
