"""What lies over a chart: names of its levels, and points that a hand may drag."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from demo_app.scenes.scene import Curve, Handle
from demo_app.ui import theme, words
from demo_app.ui.chart_levels import Box, boxes
from demo_app.ui.marks import plate, plate_size

HANDLE_PX = 9.0
LEADER_PX = 5.0
"""A name farther than this from its line has a leader to it."""


@dataclass(frozen=True)
class Axes:
    """A plot's box in pixels, and the ranges that it shows."""

    box: QRectF
    x: tuple[float, float]
    y: tuple[float, float]

    def across(self, x: np.ndarray) -> np.ndarray:
        """Pixels to the right of values along x."""
        share = (np.asarray(x, dtype=float) - self.x[0]) / (self.x[1] - self.x[0])
        return self.box.left() + share * self.box.width()

    def down(self, y: np.ndarray) -> np.ndarray:
        """Pixels downward of values along y."""
        share = (np.asarray(y, dtype=float) - self.y[0]) / (self.y[1] - self.y[0])
        return self.box.bottom() - share * self.box.height()

    def value(self, at: QPointF) -> tuple[float, float]:
        """Values at a place, in the axes' units; beyond the ends too."""
        along = (at.x() - self.box.left()) / max(self.box.width(), 1.0)
        up = (self.box.bottom() - at.y()) / max(self.box.height(), 1.0)
        return (
            self.x[0] + along * (self.x[1] - self.x[0]),
            self.y[0] + up * (self.y[1] - self.y[0]),
        )


class ChartOver(QWidget):
    """Lies over the plot and sees its pointer, the mouse or one finger.

    Attributes
    ----------
    dragged : Signal(str, float, float)
        A handle's id, and where it is wanted, in the axes' units.
    dropped : Signal()
        It was let go.
    """

    dragged = Signal(str, float, float)
    dropped = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._axes: Axes | None = None
        self._levels: tuple[tuple[str, float], ...] = ()
        self._curves: tuple[Curve, ...] = ()
        self._handles: tuple[Handle, ...] = ()
        self._units = ("", "")
        self._size_px = 14
        self._held: str | None = None
        self._near: str | None = None
        # Where on the handle it was taken: it must not jump into the middle of the pointer.
        self._off = QPointF()
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    @property
    def holding(self) -> bool:
        """Whether a hand holds a handle: the axes must stand still."""
        return self._held is not None

    def set_type_size(self, size: int) -> None:
        """Height of the words, pixels."""
        self._size_px = size
        self.update()

    def show_over(
        self,
        levels: Sequence[tuple[str, float]],
        curves: Sequence[Curve],
        handles: Sequence[Handle],
        units: tuple[str, str],
    ) -> None:
        """Names and heights of the levels, the curves to keep clear of, and the handles."""
        self._levels = tuple((name, level) for name, level in levels if name)
        self._curves, self._handles, self._units = tuple(curves), tuple(handles), units
        if self._held is not None and self._held not in {one.id for one in handles}:
            self._let_go()
        self.update()

    def set_axes(self, axes: Axes) -> None:
        """Where the plot is."""
        self._axes = axes
        self.update()

    def boxes(self) -> list[tuple[str, float, Box]]:
        """Names of the levels, the heights of their lines, and where the names are painted."""
        axes = self._axes
        if axes is None or not self._levels:
            return []
        font = self.font()
        font.setPixelSize(self._size_px)
        sizes = [plate_size(font, name) for name, _ in self._levels]
        box = axes.box
        room = Box(box.left(), box.top(), box.right(), box.bottom())
        heights = axes.down(np.array([level for _, level in self._levels]))
        curves = [(axes.across(curve.x), axes.down(curve.y)) for curve in self._curves]
        found = boxes([float(one) for one in heights], sizes, room, curves)
        names = [name for name, _ in self._levels]
        return list(zip(names, (float(one) for one in heights), found, strict=True))

    def place(self, handle: Handle) -> QPointF:
        """Pixel position of a handle."""
        assert self._axes is not None
        x, y = self._axes.across(np.array(handle.x)), self._axes.down(np.array(handle.y))
        return QPointF(float(x), float(y))

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        if self._axes is None:
            return
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            font = self.font()
            font.setPixelSize(self._size_px)
            painter.setFont(font)
            for name, line, box in self.boxes():
                edge = box.bottom if line > box.bottom else box.top
                if abs(edge - line) > LEADER_PX:
                    middle = (box.left + box.right) / 2
                    painter.setPen(QPen(QColor(theme.ALERT), 1.5))
                    painter.drawLine(QPointF(middle, edge), QPointF(middle, line))
                place = QRectF(box.left, box.top, box.right - box.left, box.bottom - box.top)
                plate(painter, place, name, theme.ALERT)
            for handle in self._handles:
                self._paint_handle(painter, handle)

    def _paint_handle(self, painter: QPainter, handle: Handle) -> None:
        at = self.place(handle)
        chosen = handle.id == (self._held or self._near)
        radius = HANDLE_PX * (1.3 if chosen else 1.0)
        painter.setPen(QPen(QColor(theme.STAGE), 2))
        painter.setBrush(QColor(theme.INK if chosen else theme.ACCENT))
        painter.drawEllipse(at, radius, radius)
        if chosen:
            x, y = (
                words.quantity(value, unit)
                for value, unit in zip((handle.x, handle.y), self._units, strict=True)
            )
            said = f"{x}, {y}"
            width, height = plate_size(painter.font(), said)
            left = min(max(at.x() - width / 2, 0.0), self.width() - width)
            top = at.y() - radius - height - 4
            top = at.y() + radius + 4 if top < 0 else top
            plate(painter, QRectF(left, top, width, height), said)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        handle = self._close_to(event.position())
        if event.button() != Qt.MouseButton.LeftButton or handle is None:
            event.ignore()
            return
        self._held, self._off = handle.id, self.place(handle) - event.position()
        self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        if self._held is not None and self._axes is not None:
            self.dragged.emit(self._held, *self._axes.value(event.position() + self._off))
            return
        handle = self._close_to(event.position())
        near = None if handle is None else handle.id
        if near != self._near:
            self._near = near
            self.setCursor(
                Qt.CursorShape.ArrowCursor if near is None else Qt.CursorShape.SizeAllCursor
            )
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        if self._held is not None:
            self._let_go()

    def _let_go(self) -> None:
        self._held = None
        self.update()
        self.dropped.emit()

    def _close_to(self, at: QPointF) -> Handle | None:
        """The handle that a finger at `at` means."""
        if self._axes is None or not self._handles:
            return None
        away = [(self.place(one) - at).manhattanLength() for one in self._handles]
        nearest = int(np.argmin(away))
        return self._handles[nearest] if away[nearest] <= theme.TOUCH_PX else None
