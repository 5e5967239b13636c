"""The picture between the polarizers, with its outline, marks and scale."""

from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QEventPoint,
    QImage,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QTouchEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from demo_app.optics.retardation import Stage
from demo_app.scenes.scene import Mark, Outline
from demo_app.ui import theme
from demo_app.ui.field import Field, outlines
from demo_app.ui.hand import HOVERING, TOUCHING, soft_ring
from demo_app.ui.light_notes import light_notes
from demo_app.ui.marks import MarkPainter, plate, plate_size, scale_bar
from demo_app.ui.request import Pixels

MOST_PIXELS = 1920 * 1080
HAND_MS = 12
MOST_SHRUNK = 2
"""Times smaller than its memory that a picture is drawn straight away."""


class PictureView(QWidget):
    """Paints one picture's memory as it is, and words over it.

    Attributes
    ----------
    sized : Signal()
        The size of the picture to make has changed; see `picture_size`.
    tapped : Signal()
        The picture was touched or clicked without being dragged.
    pointed : Signal(object)
        Where a finger or the mouse is on the stage, (x, y) in mm; None once it is lifted. Sent in
        place of `tapped` while `pointing` is true.
    """

    sized = Signal()
    tapped = Signal()
    pointed = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # Left and right are those of the glass and of time, whichever way the words run.
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self._pixels: Pixels | None = None
        self._stage: Stage | None = None
        self._marks: tuple[Mark, ...] = ()
        self._gain = self._dimmed = 1.0
        self._caption = ""
        self._size_px = 16
        self.pointing = False
        # Diameter of what a hand touches, mm, and where it is; drawn here and not by the model,
        # so that it follows without waiting for a picture.
        self._hand_mm: float | None = None
        self._hand: QPointF | None = None
        # A hand moves oftener than pictures come: each that comes shows it, else this does.
        self._hand_due = QTimer(self)
        self._hand_due.setSingleShot(True)
        self._hand_due.setInterval(HAND_MS)
        self._hand_due.timeout.connect(self.update)
        self._outlines: tuple[Outline, ...] = ()
        self._finger: int | None = None
        self._down: QPointF | None = None
        self.installEventFilter(self)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setAttribute(Qt.WidgetAttribute.WA_AcceptTouchEvents)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(960, 540)

    def picture_size(self) -> tuple[int, int]:
        """Width and height in device pixels, at most as many as a full-HD picture has."""
        ratio = self.devicePixelRatioF()
        width, height = self.width() * ratio, self.height() * ratio
        shrink = min(1.0, (MOST_PIXELS / max(width * height, 1)) ** 0.5)
        return max(int(width * shrink), 1), max(int(height * shrink), 1)

    @property
    def shape(self) -> tuple[int, int] | None:
        """Width and height of the picture shown, pixels; None while there is none."""
        return None if self._pixels is None else (self._pixels.shape[1], self._pixels.shape[0])

    def set_pointing(self, pointing: bool, hand_mm: float | None) -> None:
        """Whether a finger does something here, and how wide a ring follows it, mm."""
        self.pointing, self._hand_mm = pointing, hand_mm
        self.setMouseTracking(pointing)
        self.update()

    def set_type_size(self, size: int) -> None:
        """Height of the words, pixels."""
        self._size_px = size
        self.update()

    def show_picture(
        self,
        pixels: Pixels,
        stage: Stage,
        marks: tuple[Mark, ...],
        outlines: tuple[Outline, ...],
        gain: float,
        caption: str,
        dimmed: float = 1.0,
    ) -> None:
        """Show a picture; the memory is not copied and must stay as it is while shown.

        `gain` and `dimmed`, by which it is brighter or darker than it would be, are told on it.
        """
        self._pixels, self._stage, self._marks = pixels, stage, marks
        self._outlines = outlines
        self._gain, self._caption, self._dimmed = gain, caption, dimmed
        self.update()

    def own(self) -> None:
        """Copy the picture's memory, which from now on may change."""
        if self._pixels is not None:
            self._pixels = self._pixels.copy()
            self.update()

    def clear(self) -> None:
        """Show nothing."""
        self._pixels = self._stage = None
        self._marks, self._outlines = (), ()
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self.sized.emit()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        self._hand_due.stop()
        with QPainter(self) as painter:
            if self._pixels is None or self._stage is None:
                painter.fillRect(self.rect(), QColor(theme.STAGE))
                return
            height, width = self._pixels.shape[:2]
            stride = self._pixels.strides[0]
            image = QImage(self._pixels.data, width, height, stride, QImage.Format.Format_RGB32)
            box = self._box(self._stage, width, height)
            if not box.contains(QRectF(self.rect())):
                blue, green, red = (int(part) for part in self._pixels[0, 0, :3])
                painter.fillRect(self.rect(), QColor(red, green, blue))
            ratio = self.devicePixelRatioF()
            if MOST_SHRUNK * box.width() * ratio < width:
                # Smooth drawing looks at four pixels, which would lose a fine fringe.
                image = image.scaled(
                    (box.size() * ratio).toSize(),
                    Qt.AspectRatioMode.IgnoreAspectRatio,
                    Qt.TransformationMode.SmoothTransformation,
                )
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            painter.drawImage(box, image, QRectF(image.rect()))
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint_over(painter, Field.of(self._stage, self.width(), self.height()))

    def _box(self, stage: Stage, width: int, height: int) -> QRectF:
        """Where a picture that was made in another size goes, so that the stage is in its place."""
        whole = QRectF(self.rect())
        scale = (
            Field.of(stage, width, height).mm_per_px
            / Field.of(stage, whole.width(), whole.height()).mm_per_px
        )
        box = QRectF(0, 0, width * scale, height * scale)
        box.moveCenter(whole.center())
        rounded = abs(box.width() - whole.width()) < 2 and abs(box.height() - whole.height()) < 2
        return whole if rounded else box

    def _paint_over(self, painter: QPainter, field: Field) -> None:
        assert self._stage is not None
        painter.setPen(QPen(QColor(190, 200, 210, 170), 1.3))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for path in outlines(self._stage.pieces, field):
            painter.drawPath(path)
        for line in self._outlines:
            self._paint_line(painter, line, field)
        font = self.font()
        font.setPixelSize(self._size_px)
        painter.setFont(font)
        led = self._hand_mm is not None and self._down is not None
        marks = [mark for mark in self._marks if not (led and mark.kind == "touch")]
        MarkPainter(painter, field, self._size_px).all(marks)
        if self._hand is not None and self._hand_mm is not None:
            strength = TOUCHING if led else HOVERING
            soft_ring(painter, self._hand, field.length(self._hand_mm / 2), strength)
        scale_bar(painter, field, self._size_px)
        margin = self._size_px * 0.6
        if self._caption:
            said = painter.fontMetrics().elidedText(
                self._caption, Qt.TextElideMode.ElideRight, int(self.width() - 4 * margin)
            )
            size = plate_size(font, said)
            plate(painter, QRectF(margin, margin, *size), said)
        light_notes(painter, QRectF(self.rect()), self._size_px, self._gain, self._dimmed)

    def _paint_line(self, painter: QPainter, line: Outline, field: Field) -> None:
        dashed = line.kind in {"cut", "interlayer"}
        pen = QPen(QColor(theme.INK), 1.6)
        pen.setStyle(Qt.PenStyle.DashLine if dashed else Qt.PenStyle.SolidLine)
        points = [field.point(x, y) for x, y in zip(line.x_mm, line.y_mm, strict=True)]
        if line.kind == "crack":
            # Dark beside light, so that it is seen on black and on white fringes.
            painter.setPen(QPen(QColor(theme.STAGE), 4.5))
            painter.drawPolyline(points)
            pen.setWidthF(2.0)
        painter.setPen(pen)
        if line.kind == "shard":
            painter.drawPolygon(points)
        else:
            painter.drawPolyline(points)

    # One pointer: the mouse, or the first finger; other fingers are ignored. Touches come through a
    # filter, as an exception in a paint event below a Python `event` ends PySide 6.11 on 3.11.

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: D102
        kind = event.type()
        if kind == QEvent.Type.TouchCancel:
            self._finger = None
            self._lift()
            return True
        if not isinstance(event, QTouchEvent):
            return False
        if kind == QEvent.Type.TouchBegin:
            point = event.points()[0]
            self._finger = point.id()
            self._press(point.position())
        else:
            for point in event.points():
                if point.id() != self._finger:
                    continue
                if point.state() == QEventPoint.State.Released:
                    self._finger = None
                    self._release(point.position())
                elif point.state() == QEventPoint.State.Updated:
                    self._move(point.position())
        event.accept()
        return True

    def leaveEvent(self, event: QEvent) -> None:  # noqa: D102
        super().leaveEvent(event)
        if self._down is None:
            self._show_hand(None)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        if event.button() == Qt.MouseButton.LeftButton:
            self._press(event.position())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        if event.button() == Qt.MouseButton.LeftButton:
            self._release(event.position())
            self._show_hand(event.position())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        self._move(event.position())

    def _press(self, position: QPointF) -> None:
        self._down = position
        self._move(position)

    def _move(self, position: QPointF) -> None:
        self._show_hand(position)
        if self.pointing and self._down is not None and self._stage is not None:
            field = Field.of(self._stage, self.width(), self.height())
            self.pointed.emit(field.place(position))

    def _show_hand(self, position: QPointF | None) -> None:
        if self.pointing and position != self._hand:
            self._hand = position
            if not self._hand_due.isActive():
                self._hand_due.start()

    def _lift(self) -> None:
        self._down = None
        self._show_hand(None)
        if self.pointing:
            self.pointed.emit(None)

    def _release(self, position: QPointF) -> None:
        if self._down is not None:
            moved = (position - self._down).manhattanLength()
            self._lift()
            if not self.pointing and moved < theme.TOUCH_PX / 2:
                self.tapped.emit()
