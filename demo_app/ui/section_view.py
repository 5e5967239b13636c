"""The cut through the wall: bulging, hot or cold, pulled or squeezed."""

import numpy as np
from PySide6.QtCore import QElapsedTimer, QPointF, QRectF, QSize, QSizeF, Qt, QTimer
from PySide6.QtGui import QColor, QFont, QImage, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from demo_app.scenes.scene import Seam, Section
from demo_app.ui import theme, words
from demo_app.ui.marks import arrows, fitted, plate, plate_size
from demo_app.ui.section_labels import label_box
from demo_app.ui.section_picture import Drawn, coloured, edges, place, ramp, round_up, shade

REDRAW_MS = 60
SHADES = {
    "temperature": ramp(theme.HEAT),
    "stress": ramp((theme.COMPRESSION, theme.NEUTRAL, theme.TENSION)),
}
COARSE = 2
QUIET_MPA = 0.5
ROOM_C = 20.0


class SectionView(QWidget):
    """Paints a `Section`: its shape, its colours, a legend with numbers, and the truth in words.

    It repaints some 16 times a second at most, whatever the pictures do.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # Left and right are those of the glass and of time, whichever way the words run.
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self._section: Section | None = None
        self._stress_name = self._title = ""
        self._size_px = 16
        self._mode = "temperature"
        self._limits = {"temperature": 100.0, "stress": 1.0}
        self._painted = QElapsedTimer()
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self.update)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(480, 220)

    @property
    def mode(self) -> str:
        """What the colours mean: "temperature" or "stress"."""
        return self._mode

    def set_mode(self, mode: str) -> None:
        """Colour by "temperature" or by "stress"."""
        self._mode = mode
        self.update()

    def set_type_size(self, size: int) -> None:
        """Height of the words, pixels."""
        self._size_px = size
        self.update()

    def show_section(
        self, section: Section | None, stress_name: str, *, fresh: bool, title: str = ""
    ) -> None:
        """Show a section under its `title`; `fresh` lets the colour scales begin anew."""
        self._section, self._stress_name, self._title = section, stress_name, title
        if section is not None:
            heat = round_up(float(section.temperature_C.max()))
            stress = round_up(float(np.abs(section.stress_MPa).max()))
            known = {"temperature": 100.0, "stress": 1.0} if fresh else self._limits
            self._limits = {
                "temperature": max(heat, known["temperature"]),
                "stress": max(stress, known["stress"]),
            }
        if not self._painted.isValid() or self._painted.elapsed() >= REDRAW_MS:
            self.update()
        elif not self._later.isActive():
            self._later.start(REDRAW_MS - int(self._painted.elapsed()))

    def words(self) -> str:
        """Heading: what the colours mean, and by how much the movement is magnified."""
        section = self._section
        if section is None:
            return ""
        name = words.text("section.heat")
        if self._mode == "stress":
            name = words.text("section.stress", name=self._stress_name)
        return f"{self._title or words.text('section.title')} · {name}"

    def truth(self) -> str:
        """How the drawing differs from the wall, in words."""
        section = self._section
        if section is None:
            return ""
        moved = float(np.hypot(section.moved_x_um, section.moved_y_um).max())
        said = []
        if moved > 0:
            really = words.quantity(moved, "um", 2)
            times = words.number(section.magnified)
            said.append(words.text("section.swell", times=times, really=really))
        stretch = place(section, self.width(), self._room().height()).stretch
        if stretch != 1:
            said.append(words.text("section.thick", times=str(stretch)))
        return " · ".join(said)

    def _room(self) -> QRectF:
        """Box of the drawing, between heading and legend."""
        line = self._size_px * 1.35
        return QRectF(0, 2.3 * line, self.width(), max(self.height() - 3.9 * line, 20))

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        self._painted.restart()
        if self._section is None:
            return
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            font = self.font()
            font.setPixelSize(self._size_px)
            painter.setFont(font)
            self._paint(painter, self._section)

    def _paint(self, painter: QPainter, section: Section) -> None:
        room = self._room()
        drawn = place(section, room.width(), room.height())
        values = section.stress_MPa if self._mode == "stress" else section.temperature_C
        low, high = self._range()
        width, height = int(room.width()) // COARSE, int(room.height()) // COARSE
        coarse = Drawn(drawn.x / COARSE, drawn.y / COARSE, drawn.stretch)
        field, glass = shade(coarse, values, section.seams, width, height)
        pixels = np.ascontiguousarray(coloured(field, glass, low, high, SHADES[self._mode]))
        image = QImage(pixels.data, width, height, 4 * width, QImage.Format.Format_RGBA8888)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(QRectF(0, room.top(), COARSE * width, COARSE * height), image)
        painter.translate(room.topLeft())
        self._paint_edges(painter, drawn, section.seams)
        self._paint_words(painter, drawn, values, room)
        painter.translate(-room.topLeft())
        self._paint_heading(painter)
        self._paint_legend(painter, low, high)

    def _range(self) -> tuple[float, float]:
        limit = self._limits[self._mode]
        return (-limit, limit) if self._mode == "stress" else (min(ROOM_C, limit / 2), limit)

    def _paint_edges(self, painter: QPainter, drawn: Drawn, seams: tuple[Seam, ...]) -> None:
        painter.setPen(QPen(QColor(theme.INK), 1.4))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for around in edges(drawn, seams):
            painter.drawPolygon([QPointF(x, y) for x, y in around])

    def _paint_words(
        self, painter: QPainter, drawn: Drawn, values: np.ndarray, room: QRectF
    ) -> None:
        """The highest value in words at its place; for stress the lowest one too, with arrows."""
        if self._mode == "temperature":
            self._paint_label(
                painter,
                drawn,
                inmost(values, drawn.x),
                words.quantity(float(values.max()), "C"),
                room,
                [],
            )
            return
        taken: list[QRectF] = []
        for place_of, name in (
            (inmost(values, drawn.x), "tension"),
            (inmost(-values, drawn.x), "compression"),
        ):
            value = float(values.flat[place_of])
            right_sign = value > QUIET_MPA if name == "tension" else value < -QUIET_MPA
            if right_sign:
                said = f"{words.text(name)} {words.quantity(abs(value), 'MPa', 2)}"
                self._paint_label(painter, drawn, place_of, said, room, taken, kind=name)

    def _paint_label(
        self,
        painter: QPainter,
        drawn: Drawn,
        place_of: int,
        said: str,
        room: QRectF,
        taken: list[QRectF],
        kind: str = "",
    ) -> None:
        at = QPointF(float(drawn.x.flat[place_of]), float(drawn.y.flat[place_of]))
        colour = {"tension": theme.TENSION, "compression": theme.COMPRESSION}.get(kind, theme.INK)
        width, height = plate_size(painter.font(), said)
        span = self._size_px * 1.3 if kind else 0.0
        whole = width + 2 * span + (self._size_px * 0.4 if kind else 0)
        box = label_box(drawn, place_of, QSizeF(whole, height), room, taken, 0.5 * self._size_px)
        taken.append(box)
        left, level = box.left(), box.center().y()
        painter.setPen(QPen(QColor(colour), 1.5))
        painter.drawLine(at, QPointF(min(max(at.x(), left), left + whole), level))
        painter.setBrush(QColor(colour))
        painter.drawEllipse(at, 2.5, 2.5)
        plate(painter, QRectF(left, level - height / 2, whole, height), "")
        if kind:
            middle = QPointF(left + span + self._size_px * 0.2, level)
            arrows(
                painter,
                middle,
                QPointF(1, 0),
                span,
                pull=kind == "tension",
                width=self._size_px * 0.17,
            )
        painter.setPen(QColor(colour))
        box = QRectF(left + whole - width, level - height / 2, width, height)
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, said)

    def _paint_heading(self, painter: QPainter) -> None:
        line = self._size_px * 1.35
        flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        plain = painter.font()
        small = painter.font()
        small.setPixelSize(round(self._size_px * 0.82))
        rows = ((self.words(), plain, theme.INK), (self.truth(), small, theme.DIM))
        for row, (said, font, colour) in enumerate(rows):
            painter.setFont(fitted(font, said, self.width()))
            painter.setPen(QColor(colour))
            painter.drawText(QRectF(0, row * line, self.width(), line), flags, said)
        painter.setFont(plain)

    def _paint_legend(self, painter: QPainter, low: float, high: float) -> None:
        table = np.ascontiguousarray(SHADES[self._mode][None])
        bar = QImage(table.data, len(table[0]), 1, QImage.Format.Format_RGBA8888)
        line = self._size_px * 1.35
        if self._mode == "stress":
            left = f"{words.text('compression')} {words.quantity(-low, 'MPa')}"
            right = f"{words.quantity(high, 'MPa')} {words.text('tension')}"
        else:
            left, right = words.quantity(low, "C"), words.quantity(high, "C")
        gap = self._size_px * 0.6
        metrics = painter.fontMetrics()
        needed = metrics.horizontalAdvance(left + right) + 3 * gap + 2 * self._size_px
        if needed > self.width():
            # A narrow section keeps its colours apart from its words: smaller words.
            font = QFont(painter.font())
            font.setPixelSize(max(int(font.pixelSize() * self.width() / needed), 7))
            painter.setFont(font)
            metrics = painter.fontMetrics()
        first, second = metrics.horizontalAdvance(left), metrics.horizontalAdvance(right)
        length = min(self.width() - first - second - 3 * gap, self.width() * 0.4)
        top = self.height() - line
        box = QRectF(first + gap, top + line * 0.28, length, line * 0.44)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, False)
        painter.drawImage(box, bar)
        painter.setPen(QColor(theme.INK))
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(QRectF(0, top, first + 1, line), middle | Qt.AlignmentFlag.AlignLeft, left)
        painter.drawText(QRectF(box.right() + gap, top, second + 2, line), middle, right)


def inmost(values: np.ndarray, x: np.ndarray) -> int:
    """Flat index of the largest value; of several that are equal, the one in their middle."""
    equal = np.flatnonzero(values >= values.max() - 1e-3 * np.ptp(values))
    along = x.flat[equal]
    return int(equal[np.abs(along - (along.min() + along.max()) / 2).argmin()])
