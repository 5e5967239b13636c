"""A small copy of what the audience's window shows, for the presenter."""

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPixmap
from PySide6.QtWidgets import QSizePolicy, QWidget

from demo_app.ui import theme, words


class Mirror(QWidget):
    """Copies another widget when asked; says in words what the audience sees."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._copy = QPixmap()
        self._said = ""
        self._live = True
        self._size = 14

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Width and height from the type size."""
        self._size = sizes.panel
        self.setFixedSize(QSize(round(sizes.panel * 14), round(sizes.panel * 14 * 9 / 16)))

    def copy(self, shown: QWidget, said: str, *, live: bool) -> None:
        """Copy what `shown` shows; `said` names it, `live` whether it moves with the model."""
        ratio = self.devicePixelRatioF()
        grabbed = shown.grab()
        self._copy = grabbed.scaled(
            (self.size() * ratio),
            Qt.AspectRatioMode.KeepAspectRatio,
            Qt.TransformationMode.SmoothTransformation,
        )
        self._copy.setDevicePixelRatio(ratio)
        self._said, self._live = said, live
        self.setAccessibleName(words.text("mirror", state=said))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), QColor(theme.STAGE))
            size = self._copy.deviceIndependentSize()
            painter.drawPixmap(
                round((self.width() - size.width()) / 2),
                round((self.height() - size.height()) / 2),
                self._copy,
            )
            ink = theme.ACCENT if self._live else theme.ALERT
            painter.setPen(QPen(QColor(ink), 3))
            painter.drawRect(QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5))
            font = painter.font()
            font.setPixelSize(round(self._size * 0.9))
            font.setBold(True)
            painter.setFont(font)
            wide = painter.fontMetrics().horizontalAdvance(self._said) + 2 * self._size * 0.5
            tall = painter.fontMetrics().height() * 1.2
            label = QRectF(0, 0, wide, tall)
            painter.fillRect(label, QColor(ink))
            painter.setPen(QColor("#06110e"))
            painter.drawText(label, Qt.AlignmentFlag.AlignCenter, self._said)
