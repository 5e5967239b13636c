"""A card of plain words over the whole stage: a welcome, a break, an emergency."""

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from demo_app.ui import theme
from demo_app.ui.fitted_label import TWO_LINES, FittedLabel

SIGN = "⚠"


@dataclass(frozen=True)
class Card:
    """Words for everybody in the room.

    Parameters
    ----------
    title : str
    lines : tuple of str
        Up to six, a sentence each.
    alert : bool
        Whether it stands above everything, a dark stage too, with a warning sign and a border.
    """

    title: str
    lines: tuple[str, ...] = ()
    alert: bool = False


class CardView(QWidget):
    """Shows one `Card`, all of its lines in one type size."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.card: Card | None = None
        self._sizes = theme.Sizes.of(0)
        self._title = FittedLabel(self, bold=True)
        self._title.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._lines: list[FittedLabel] = []
        self._box = QVBoxLayout(self)
        self._box.addStretch(1)
        self._box.addWidget(self._title)
        self._box.addStretch(1)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._sizes = sizes
        self._title.setFixedHeight(round(sizes.sentence * 2 * TWO_LINES))
        self._title.set_largest(sizes.sentence * 2)
        for label in self._lines:
            self._size(label)
        edge = sizes.gap * 6
        self._box.setSpacing(sizes.gap)
        self._box.setContentsMargins(edge, edge, edge, edge)

    def show_card(self, card: Card | None) -> None:
        """Show a card's words; None: there is no card any more."""
        self.card = card
        if card is None:
            return
        self._title.say(f"{SIGN} {card.title}" if card.alert else card.title)
        while len(self._lines) < len(card.lines):
            label = FittedLabel(self, alike=self._lines)
            label.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
            self._size(label)
            self._box.insertWidget(self._box.count() - 1, label, 3)
        for place, label in enumerate(self._lines):
            label.say(card.lines[place] if place < len(card.lines) else "")
            label.setVisible(place < len(card.lines))
        self.setAccessibleName("\n".join((card.title, *card.lines)))
        self.update()

    def _size(self, label: FittedLabel) -> None:
        largest = round(self._sizes.sentence * 1.4)
        label.setMaximumHeight(round(largest * TWO_LINES))
        label.set_largest(largest)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        super().paintEvent(event)
        if self.card is None or not self.card.alert:
            return
        width = self._sizes.gap * 1.5
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(theme.ALERT), width))
            room = QRectF(self.rect()).adjusted(width, width, -width, -width)
            painter.drawRoundedRect(room, 2 * width, 2 * width)
