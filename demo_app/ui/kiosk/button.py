"""A button for a finger, a switch or a screen reader: its words wrap, and its frame says it all."""

import math

from PySide6.QtCore import QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QPushButton, QWidget

from demo_app.ui import theme
from demo_app.ui.kiosk.measures import Measures

PLAIN, MAIN, QUIET = "plain", "main", "quiet"
ROUND = 0.22
FLAGS = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap


class BigButton(QPushButton):
    """Words as large as fit between two sizes, with an optional sign before them.

    It acts when it is let go within its bounds, so that a finger can change its mind (WCAG 2.2,
    2.5.2), and on Enter as on Space.

    Parameters
    ----------
    parent : QWidget or None
    kind : str
        `PLAIN`, `MAIN` (the one to press next), `QUIET` (beside other things).
    sign : str
        A character of the bundled font, or "".
    """

    def __init__(self, parent: QWidget | None = None, kind: str = PLAIN, sign: str = "") -> None:
        super().__init__(parent)
        self.kind, self.sign = kind, sign
        self.note = self.line = ""
        self._measures = Measures(1280, 720, 4.0)
        self._shades = theme.shades()
        self._largest = 0
        self.setAutoDefault(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.PreventContextMenu)

    def say(self, said: str, described: str = "") -> None:
        """Words on it and for a screen reader, which may be told more."""
        if said != self.text():
            self.setText(said)
        self.setAccessibleName(said)
        self.setAccessibleDescription(described)

    def set_sign(self, sign: str) -> None:
        """Another sign before the words."""
        if sign != self.sign:
            self.sign = sign
            self.update()

    def set_note(self, note: str) -> None:
        """Quiet words in the upper corner, such as a number of minutes or a tick."""
        if note != self.note:
            self.note = note
            self.update()

    def set_line(self, line: str) -> None:
        """A quieter line below the words, shown where there is room for all of it."""
        if line != self.line:
            self.line = line
            self.update()

    def fit(self, measures: Measures, look: theme.Look, largest: int = 0) -> None:
        """Sizes and colours; `largest` type in pixels, by default that of buttons."""
        self._measures, self._shades = measures, theme.shades(look)
        self._largest = largest
        self.update()

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(self._measures.target * 3, self._measures.target)

    def minimumSizeHint(self) -> QSize:  # noqa: D102
        return QSize(self._measures.target, self._measures.target)

    def type_size(self) -> int:
        """Height of its words, pixels: the largest that fits, and never less than the least."""
        least = self._measures.least
        size = max(self._largest or self._measures.body, least)
        while size > least and not self._fits(size):
            size -= 1
        return size

    def longest_word(self) -> int:
        """Width that it needs for its longest word in the smallest type, pixels."""
        metrics = QFontMetrics(self._font(self._measures.least))
        words = [f"✓ {word}" if self.isCheckable() else word for word in self.text().split()]
        longest = max((metrics.horizontalAdvance(word) for word in words), default=0)
        return longest + 4 * self._measures.ring + 6

    def words_need(self) -> QRect:
        """Room that its words take, in its own pixels."""
        return self._box(self._font(self.type_size()), self._room())

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        if event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter} and not event.isAutoRepeat():
            self.click()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        use = self._shades
        ready, chosen = self.isEnabled(), self.isCheckable() and self.isChecked()
        ground, ink, border = use.raised, use.ink, use.edge
        if self.kind == MAIN:
            ground, ink, border = use.accent, use.on_accent, use.on_edge
        elif self.kind == QUIET:
            ground = use.panel
        if chosen:
            ground, border = use.pressed, use.accent
        if self.isDown():
            ground, ink = use.pressed, use.ink
        if not ready:
            ground, ink, border = use.off, use.off_ink, use.off
        ring = self._measures.ring
        box = QRectF(self.rect()).adjusted(ring / 2, ring / 2, -ring / 2, -ring / 2)
        corner = ROUND * min(self._measures.target, self.height())
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(border), ring if chosen else max(ring / 2, 2)))
            painter.setBrush(QColor(ground))
            painter.drawRoundedRect(box, corner, corner)
            if self.hasFocus() and keyed(self):
                # Two lines, light in dark, so that one of them differs from any ground.
                for colour, by, wide in ((use.stage, ring, ring), (use.focus, 0, ring)):
                    painter.setBrush(Qt.BrushStyle.NoBrush)
                    painter.setPen(QPen(QColor(colour), wide))
                    painter.drawRoundedRect(box.adjusted(by, by, -by, -by), corner, corner)
            painter.setPen(QColor(ink))
            painter.setFont(self._font(self.type_size()))
            words, below = self._split()
            painter.drawText(words, int(FLAGS), self._said())
            if below is not None:
                painter.setPen(QColor(use.dim if ready else use.off_ink))
                painter.setFont(self._font(self._small()))
                painter.drawText(below, int(FLAGS), self.line)
            if self.note:
                painter.setFont(self._font(self._measures.least))
                room = self.rect().adjusted(2 * ring, ring, -2 * ring, -ring)
                flags = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop
                painter.drawText(room, int(flags), self.note)

    def _small(self) -> int:
        return max(round(0.8 * self._measures.body), self._measures.least)

    def _split(self) -> tuple[QRect, QRect | None]:
        """Room of the words, and of the line below them if both fit."""
        room = self._room()
        if not self.line or self._measures.large:
            return room, None
        high = self.words_need().height()
        low = QFontMetrics(self._font(self._small())).boundingRect(
            room.adjusted(0, 0, 0, 9999), int(FLAGS), self.line
        )
        spare = room.height() - high - low.height()
        if spare < self._measures.ring:
            return room, None
        top = room.y() + spare // 3
        words = QRect(room.x(), top, room.width(), high)
        below = QRect(room.x(), words.bottom() + spare // 3, room.width(), low.height() + 2)
        return words, below

    def _said(self) -> str:
        """Its words, after the sign and, once chosen, a tick: not by colour alone."""
        tick = "✓" if self.isCheckable() and self.isChecked() else ""
        return " ".join(part for part in (tick, self.sign, self.text()) if part)

    def _room(self) -> QRect:
        side = 2 * self._measures.ring + 2
        note = self._measures.least if self.note else 0
        return self.rect().adjusted(side, self._measures.ring + note, -side, -self._measures.ring)

    def _font(self, size: int) -> QFont:
        font = QFont(theme.FONT)
        font.setPixelSize(size)
        font.setWeight(QFont.Weight.DemiBold if self.kind == MAIN else QFont.Weight.Normal)
        return font

    def _box(self, font: QFont, room: QRect) -> QRect:
        # Unbounded downwards: what is needed, not what there is.
        return QFontMetrics(font).boundingRect(
            room.adjusted(0, 0, 0, 9999), int(Qt.AlignmentFlag.AlignHCenter | FLAGS), self._said()
        )

    def _fits(self, size: int) -> bool:
        font, room = self._font(size), self._room()
        box = self._box(font, room)
        longest = max(
            (QFontMetrics(font).horizontalAdvance(word) for word in self._said().split()),
            default=0,
        )
        return box.height() <= room.height() and math.ceil(longest) <= room.width()


def keyed(widget: QWidget) -> bool:
    """Whether keys or switches work the window by now, so that the focus is to be seen."""
    return bool(widget.window().property("keyed"))
