"""Strips of computed interference colours: to look at, and to pick a colour from."""

import functools
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetrics,
    QImage,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from demo_app.content.bench.answer import Strip
from demo_app.content.bench.colour_chart import FURTHEST, colours
from demo_app.optics.instrument import Instrument
from demo_app.optics.light_data import lamp
from demo_app.optics.words import interference_colour
from demo_app.ui import theme, words
from demo_app.ui.benching.figures import plain

PLACES = 600
STEP_NM, LEAP_NM = 5.0, 50.0
TICK_NM = 500


@functools.lru_cache(maxsize=16)
def _image(data: bytes) -> QImage:
    """A row of colours, one pixel high."""
    return QImage(data, len(data) // 3, 1, len(data), QImage.Format.Format_RGB888).copy()


def image_of(shown: NDArray[np.uint8]) -> QImage:
    """Colours of shape (places, 3) as a picture one pixel high."""
    return _image(np.ascontiguousarray(shown).tobytes())


class StripView(QWidget):
    """A strip with its title, its marked parts, and nanometres below."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # Left and right are those of the glass and of time, whichever way the words run.
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self._strip: Strip | None = None
        self._title = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(400, round(5.4 * self.fontMetrics().height()))

    def show_strip(self, strip: Strip, title: str) -> None:
        """Show a strip under its title."""
        self._strip, self._title = strip, title
        spans = "; ".join(f"{low:.0f} – {high:.0f} nm" for low, high in strip.spans)
        self.setAccessibleName(f"{title}: {spans}")
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        if self._strip is None:
            return
        strip, line = self._strip, self.fontMetrics().height()
        box = QRectF(8, line * 1.4, self.width() - 16, line * 2)
        with QPainter(self) as painter:
            painter.setPen(QColor(theme.INK))
            painter.drawText(
                QRectF(0, 0, self.width(), line * 1.3), Qt.AlignmentFlag.AlignLeft, self._title
            )
            painter.drawImage(box, image_of(strip.colours))
            spread = strip.high_nm - strip.low_nm
            for low, high in strip.spans:
                left = box.left() + (low - strip.low_nm) / spread * box.width()
                right = box.left() + (high - strip.low_nm) / spread * box.width()
                bar = QRectF(left - 1, box.bottom() + 2, max(right - left, 3) + 2, 6)
                painter.fillRect(bar, QColor(theme.INK))
            scale(painter, box, box.bottom() + 9, strip.low_nm, strip.high_nm)


def scale(painter: QPainter, box: QRectF, top: float, low: float, high: float) -> None:
    """Nanometres under a strip."""
    metrics = QFontMetrics(painter.font())
    painter.setPen(QColor(theme.DIM))
    first = int(np.ceil(low / TICK_NM)) * TICK_NM
    for nm in range(first, int(high) + 1, TICK_NM):
        said = f"{nm} nm" if nm == first or nm + TICK_NM > high else f"{nm}"
        at = box.left() + (nm - low) / (high - low) * box.width()
        wide = metrics.horizontalAdvance(said)
        left = min(max(at - wide / 2, box.left() - 6), box.right() + 6 - wide)
        painter.drawText(QPointF(left, top + metrics.ascent()), said)


class ColourPicker(QWidget):
    """The chart of computed colours with a cursor: by mouse, or by arrow keys.

    Left and Right move by 5 nm, with Page Up and Page Down by 50, Home and End to the ends.

    Attributes
    ----------
    picked : Signal(float)
        A person has moved the cursor: retardation, nm.
    """

    picked = Signal(float)

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._title = title
        self._lamp = "daylight"
        self.value_nm = 0.0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleDescription(words.text("bench.picker.help"))
        self.setToolTip(words.text("bench.picker.help"))
        self._tell()

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(400, max(round(6.2 * self.fontMetrics().height()), theme.TOUCH_PX + 40))

    def set_lamp(self, name: str) -> None:
        """Lamp whose colours are shown; one of a single colour has none to pick from."""
        if name != self._lamp:
            self._lamp = name
            self.setEnabled(not lamp(name).one_colour)
            self.update()

    def set_value(self, nm: float) -> None:
        """Place the cursor."""
        nm = min(max(nm, 0.0), FURTHEST)
        if nm != self.value_nm:
            self.value_nm = nm
            self._tell()
            self.update()

    def _tell(self) -> None:
        colour = words.colour(interference_colour(self.value_nm, Instrument(lamp=self._lamp)))
        self.setAccessibleName(f"{self._title}: {self.value_nm:.0f} nm, {colour}")

    def _box(self) -> QRectF:
        line = self.fontMetrics().height()
        return QRectF(14, line * 1.5, self.width() - 28, line * 2.8)

    def _pick(self, nm: float) -> None:
        nm = round(min(max(nm, 0.0), FURTHEST) / STEP_NM) * STEP_NM
        if nm != self.value_nm:
            self.set_value(nm)
            self.picked.emit(nm)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        self._pick_at(event.position().x())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._pick_at(event.position().x())

    def _pick_at(self, x: float) -> None:
        box = self._box()
        self._pick((x - box.left()) / box.width() * FURTHEST)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        moves = {
            Qt.Key.Key_Left: -STEP_NM,
            Qt.Key.Key_Right: STEP_NM,
            Qt.Key.Key_Down: -STEP_NM,
            Qt.Key.Key_Up: STEP_NM,
            Qt.Key.Key_PageDown: -LEAP_NM,
            Qt.Key.Key_PageUp: LEAP_NM,
            Qt.Key.Key_Home: -FURTHEST,
            Qt.Key.Key_End: FURTHEST,
        }
        move = moves.get(Qt.Key(event.key()))
        if move is None:
            super().keyPressEvent(event)
        else:
            self._pick(self.value_nm + move)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        box, line = self._box(), self.fontMetrics().height()
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QColor(theme.INK))
            above = QRectF(10, 4, self.width() - 12, line * 1.3)
            painter.drawText(above, Qt.AlignmentFlag.AlignLeft, self._title)
            painter.drawImage(box, image_of(colours(self._lamp, 0.0, FURTHEST, PLACES)))
            at = box.left() + self.value_nm / FURTHEST * box.width()
            for colour, wide in (("#000000", 6), ("#ffffff", 2)):
                painter.setPen(QPen(QColor(colour), wide))
                painter.drawLine(QPointF(at, box.top() - 4), QPointF(at, box.bottom() + 4))
            scale(painter, box, box.bottom() + 6, 0.0, FURTHEST)
            if self.hasFocus():
                painter.setPen(QPen(QColor(theme.INK), 2))
                painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 6, 6)


class TintReading(QWidget):
    """What a retardation looks like plainly and with the tint plate, adding and taking away."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.line: QLabel = plain(self)
        self._patches = _Patches(self)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(2)
        box.addWidget(self._patches)
        box.addWidget(self.line)

    def show_reading(self, nm: float, name: str, plate_nm: float) -> None:
        """Show the three looks of `nm` with the lamp `name`."""
        grey = lamp(name).one_colour
        self.setVisible(not grey)
        if grey:
            return
        seen = Instrument(lamp=name)
        said = [
            words.colour(interference_colour(abs(total), seen))
            for total in (nm, plate_nm + nm, plate_nm - nm)
        ]
        self.line.setText(
            words.text("bench.tint", nm=f"{nm:.0f}", bare=said[0], adds=said[1], takes=said[2])
        )
        shown = [
            colours(name, nm, nm, 1, *plate)[0]
            if adds
            else colours(name, nm, nm, 1, *plate, adds=adds)[0]
            for plate, adds in (((), True), ((plate_nm,), True), ((plate_nm,), False))
        ]
        self._patches.show_patches([QColor(*map(int, one)) for one in shown])


class _Patches(QWidget):
    """Three patches of colour beside each other: plain, added, taken away."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._patches: Sequence[QColor] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(300, round(2.2 * self.fontMetrics().height()))

    def show_patches(self, patches: Sequence[QColor]) -> None:
        self._patches = patches
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            wide = self.width() / max(len(self._patches), 1)
            for place, colour in enumerate(self._patches):
                painter.fillRect(QRectF(place * wide, 0, wide - 4, self.height()), colour)
