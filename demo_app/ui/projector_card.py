"""A card for the audience's window before a show: is every grey seen, every edge, every letter?"""

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from demo_app.content.projector import (
    CAPITAL,
    CLOSED_ARCMIN,
    EDGES,
    GAIN,
    LEAST_ARCMIN,
    PREFERRED_ARCMIN,
    STEPS_NM,
    Hall,
    grey_steps,
    type_px,
)
from demo_app.optics.instrument import Instrument
from demo_app.ui import theme, words

LETTERS = "E 5"
_FINE = (1, 2, 3)


class ProjectorCard(QWidget):
    """Grey steps, black and white, fine lines, frames at the edge, letters for the back row."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._hall = Hall()
        self._instrument = Instrument()
        self._name()

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(1280, 720)

    def set_hall(self, hall: Hall) -> None:
        """Size of the picture on the wall and depth of the hall, as far as known."""
        self._hall = hall
        self._name()
        self.update()

    def set_instrument(self, instrument: Instrument) -> None:
        """The instrument that colours the grey steps."""
        self._instrument = instrument
        self.update()

    def hall_words(self) -> str:
        """What the letters' sizes are worked out from, or that nobody has said."""
        if not self._hall.known:
            return words.text("projector.unknown")
        return words.text(
            "projector.hall",
            height=words.number(self._hall.picture_height_m or 0.0),
            depth=words.number(self._hall.depth_m or 0.0),
        )

    def _name(self) -> None:
        said = [words.text(f"projector.{part}") for part in ("grey", "fine", "edges", "letters")]
        self.setAccessibleName(". ".join([words.text("projector.title"), *said, self.hall_words()]))

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), Qt.GlobalColor.black)
            self._paint_edges(painter)
            inner = self.rect().toRectF()
            aside, down = inner.width() * 0.07, inner.height() * 0.075
            inner.adjust(aside, down, -aside, -down)
            self._paint_greys(painter, inner)
            self._paint_fine(painter, inner)
            self._paint_letters(painter, inner)

    def _font(self, painter: QPainter, size: float, *, bold: bool = False) -> QFontMetricsF:
        font = QFont(theme.FONT)
        font.setPixelSize(max(1, round(size)))
        font.setBold(bold)
        painter.setFont(font)
        return QFontMetricsF(font)

    def _small(self) -> float:
        return theme.Sizes.of(self.height()).stage

    def _say(
        self,
        painter: QPainter,
        box: QRectF,
        said: str,
        where: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignLeft,
        colour: str = theme.INK,
    ) -> None:
        """One line in the usual small type, smaller where it would not fit."""
        size = self._small()
        while size > 9 and self._font(painter, size).horizontalAdvance(said) > box.width():
            size -= 1
        painter.setPen(QColor(colour))
        painter.drawText(box, where | Qt.AlignmentFlag.AlignVCenter, said)

    def _paint_edges(self, painter: QPainter) -> None:
        """Frames at 0, 2.5 and 5 % of width and height, each named on its upper side."""
        size = self._small() * 0.8
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for share, colour in zip(EDGES, (theme.INK, theme.ACCENT, theme.ALERT), strict=True):
            aside, down = share * self.width(), share * self.height()
            painter.setPen(QPen(QColor(colour), 1))
            painter.drawRect(
                QRectF(aside, down, self.width() - 2 * aside - 1, self.height() - 2 * down - 1)
            )
        metrics = self._font(painter, size)
        for place, share in enumerate(EDGES):
            said = words.text("projector.edge", percent=words.number(100 * share))
            left = self.width() * (0.5 + 0.12 * (place - 1))
            top = share * self.height()
            box = QRectF(left, top - metrics.height() / 2, *_size(metrics, said))
            if share == 0:
                box.moveTop(1)
            painter.fillRect(box, Qt.GlobalColor.black)
            painter.setPen(QColor((theme.INK, theme.ACCENT, theme.ALERT)[place]))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, said)

    def _paint_greys(self, painter: QPainter, inner: QRectF) -> None:
        """Two rows of grey steps: as they are, and brightened with a label; black and white."""
        line = self._small() * 1.5
        high = inner.height() * 0.16
        top = inner.top()
        self._say(painter, QRectF(inner.left(), top, inner.width(), line), _text("title"))
        self._say(
            painter,
            QRectF(inner.left(), top, inner.width(), line),
            self.hall_words(),
            Qt.AlignmentFlag.AlignRight,
            theme.INK if self._hall.known else theme.ALERT,
        )
        top += line
        for gain in (1.0, GAIN):
            label = _text("grey") if gain == 1 else words.text("projector.gain", gain=f"{gain:g}")
            colour = theme.INK if gain == 1 else theme.ALERT
            box = QRectF(inner.left(), top, inner.width() * 0.8, line)
            self._say(painter, box, label, colour=colour)
            top += line
            self._paint_row(painter, QRectF(inner.left(), top, inner.width() * 0.78, high), gain)
            top += high
        side = inner.width() * 0.08
        left = inner.right() - 2 * side
        box = QRectF(left, inner.top() + 2 * line, side, 2 * high + line)
        painter.fillRect(box, Qt.GlobalColor.black)
        painter.fillRect(box.translated(side, 0), Qt.GlobalColor.white)
        painter.setPen(QPen(QColor(theme.EDGE), 1))
        painter.drawRect(box)
        self._say(
            painter,
            QRectF(left, inner.top() + line, 2 * side, line),
            _text("black_white"),
            Qt.AlignmentFlag.AlignRight,
        )

    def _paint_row(self, painter: QPainter, row: QRectF, gain: float) -> None:
        line = self._small() * 1.4
        wide = row.width() / len(STEPS_NM)
        for place, (nm, rgb) in enumerate(
            zip(STEPS_NM, grey_steps(self._instrument, gain), strict=True)
        ):
            step = QRectF(row.left() + place * wide, row.top(), wide, row.height() - line)
            painter.fillRect(step, QColor(*(int(part) for part in rgb)))
            said = words.quantity(nm, "nm")
            under = QRectF(step.left(), step.bottom(), wide, line)
            self._say(painter, under, said, Qt.AlignmentFlag.AlignHCenter)

    def _paint_fine(self, painter: QPainter, inner: QRectF) -> None:
        """Fields of lines one to four pixels wide, upright and level, and a line of fine print."""
        line = self._small() * 1.5
        top = inner.top() + inner.height() * 0.32 + 3.4 * line
        self._say(painter, QRectF(inner.left(), top, inner.width() * 0.5, line), _text("fine"))
        top += line
        side = round(inner.height() * 0.09)
        for place, wide in enumerate(_FINE):
            for turned in (False, True):
                left = round(inner.left() + (2 * place + turned) * side * 1.15)
                self._lines(painter, left, round(top), side, wide, level=turned)
        size = max(9.0, self._small() * 0.5)
        self._font(painter, size)
        painter.setPen(QColor(theme.INK))
        beside = inner.left() + 2 * len(_FINE) * side * 1.15 + line
        box = QRectF(beside, top, inner.right() - beside, side)
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
        painter.drawText(box, int(flags), words.text("projector.print", px=f"{size:g}"))

    def _lines(
        self, painter: QPainter, left: int, top: int, side: int, wide: int, *, level: bool
    ) -> None:
        for at in range(0, side - wide + 1, 2 * wide):
            x, y = (left, top + at) if level else (left + at, top)
            painter.fillRect(
                x, y, side if level else wide, wide if level else side, QColor(theme.INK)
            )

    def _paint_letters(self, painter: QPainter, inner: QRectF) -> None:
        """Letters of the sizes that the standards ask for at the back row."""
        line = self._small() * 1.5
        top = inner.top() + inner.height() * 0.43 + 4.7 * line
        self._say(painter, QRectF(inner.left(), top, inner.width(), line), _text("letters"))
        top += line * 1.1
        rows = (LEAST_ARCMIN, PREFERRED_ARCMIN[0], PREFERRED_ARCMIN[1], CLOSED_ARCMIN)
        sizes = [type_px(arcmin, self.height(), self._hall) for arcmin in rows]
        room = QRectF(inner.left(), top, inner.width(), inner.bottom() - top)
        if None in sizes:
            self._say(painter, room, words.text("projector.unknown"), colour=theme.ALERT)
            return
        left = inner.left()
        for arcmin, size in zip(rows, sizes, strict=True):
            assert size is not None
            said = words.text("projector.arcmin", arcmin=words.number(arcmin), px=f"{size:.0f}")
            small = self._font(painter, self._small() * 0.8)
            metrics = self._font(painter, size)
            wide = max(metrics.horizontalAdvance(LETTERS), small.horizontalAdvance(said)) + line
            if left + wide - line > room.right() or CAPITAL * size + line > room.height():
                self._font(painter, self._small() * 0.8)
                painter.setPen(QColor(theme.ALERT))
                box = QRectF(left, room.top(), room.right() - left, room.height())
                flags = Qt.AlignmentFlag.AlignBottom | Qt.TextFlag.TextWordWrap
                painter.drawText(box, int(flags), words.text("projector.too_big", said=said))
                return
            painter.setPen(QColor(theme.INK))
            painter.drawText(QPointF(left, room.bottom() - line), LETTERS)
            self._font(painter, self._small() * 0.8)
            painter.drawText(QPointF(left, room.bottom() - line * 0.15), said)
            left += wide


def _text(name: str) -> str:
    return words.text(f"projector.{name}")


def _size(metrics: QFontMetricsF, said: str) -> tuple[float, float]:
    return metrics.horizontalAdvance(said) + metrics.height() * 0.6, metrics.height()
