"""Between two shows: what is put back, glass counted out and in, and how long that takes."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QSpinBox, QWidget

from demo_app.content.checklist import Item
from demo_app.content.journal.pieces import Balance, Stock
from demo_app.ui import show_words, words
from demo_app.ui.clock_bar import minutes
from demo_app.ui.fields import Choice
from demo_app.ui.pages.parts import LineEntry, Page, TickList, label, push

WAYS = ("out", "back", "broken", "delivered")


class BetweenPage(Page):
    """Reset checklist with the turnaround clock, the count of pieces, the hot-piece reminder.

    Attributes
    ----------
    begun : Signal()
        The turnaround begins: its clock starts and the ticks are cleared.
    moved : Signal(str, str, int)
        Batch, one of `WAYS`, and how many pieces.
    batch_named : Signal(str)
        A new batch in one line: name; kind; glass; thickness in mm.
    hot_asked : Signal()
        The piece on the stage is put down hot: a reminder from the model.
    """

    begun = Signal()
    moved = Signal(str, str, int)
    batch_named = Signal(str)
    hot_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.start = push("between.start", self)
        self.start.clicked.connect(self.begun)
        self.clock = label("", "value", self)
        head = QHBoxLayout()
        head.addWidget(self.start)
        head.addWidget(self.clock, 1)
        self.reset = TickList(words.text("between.reset"), self)
        self.hot = push("between.hot", self)
        self.hot.clicked.connect(self.hot_asked)
        self.hot_line = label("", "alert", self)
        hot = QHBoxLayout()
        hot.addWidget(self.hot)
        hot.addWidget(self.hot_line, 1)
        self.batch: QComboBox = Choice(self)
        self.batch.setAccessibleName(words.text("between.batch"))
        self.number = QSpinBox(self)
        self.number.setRange(1, 999)
        self.number.setAccessibleName(words.text("between.number"))
        count = QHBoxLayout()
        count.addWidget(self.batch, 1)
        count.addWidget(self.number)
        self.ways = {}
        for way in WAYS:
            made = push(f"between.{way}", self)
            made.setProperty("way", way)
            made.clicked.connect(self._move)
            count.addWidget(made)
            self.ways[way] = made
        self.balance = label("", "", self)
        self.new_batch = LineEntry("between.new_batch", "after.take", self)
        self.new_batch.entered.connect(self.batch_named)
        self.box.addLayout(head)
        self.box.addWidget(self.reset)
        self.box.addWidget(label(words.text("between.pieces"), "title", self))
        self.box.addLayout(count)
        self.box.addWidget(self.balance)
        self.box.addWidget(self.new_batch)
        self.box.addWidget(label(words.text("between.hot.title"), "title", self))
        self.box.addLayout(hot)
        self.box.addStretch(1)

    def show_items(self, items: Sequence[Item], titles: dict[str, str]) -> None:
        """List what is put back."""
        self.reset.show_items(items, titles)

    def show_turnaround(self, seconds: float | None) -> None:
        """How long the turnaround takes by now; None: it has not begun."""
        self.clock.setText(
            "" if seconds is None else words.text("between.clock", time=minutes(seconds))
        )

    def show_pieces(self, stock: Sequence[Stock], balances: Sequence[Balance]) -> None:
        """Show what there is, and whether this show's count balances."""
        kept = self.batch.currentData()
        self.batch.clear()
        for one in stock:
            self.batch.addItem(
                words.text("between.stock", batch=one.batch, number=one.in_stock), one.batch
            )
        if (at := self.batch.findData(kept)) >= 0:
            self.batch.setCurrentIndex(at)
        for made in (self.batch, self.number, *self.ways.values()):
            made.setEnabled(bool(stock))
        lines = [show_words.balance_line(one) for one in balances] or [
            words.text("between.none" if stock else "between.no_batch")
        ]
        self.balance.setText("\n".join(lines))
        wrong = any(one.missing for one in balances)
        self.balance.setObjectName("alert" if wrong else "")
        self.balance.style().polish(self.balance)

    def show_hot(self, said: str) -> None:
        """The reminder of a hot piece."""
        self.hot_line.setText(said)

    def _move(self) -> None:
        way = self.sender().property("way")
        batch = self.batch.currentData()
        if batch:
            self.moved.emit(str(batch), str(way), self.number.value())
