"""A picture of what was, fading over what is."""

from PySide6.QtCore import QElapsedTimer, Qt, QTimer
from PySide6.QtGui import QHideEvent, QPainter, QPaintEvent, QPixmap
from PySide6.QtWidgets import QWidget

FADE_MS = 300
FRAME_MS = 30


class Fader(QWidget):
    """Lies over its parent, and lets a picture go within `FADE_MS`; then it is hidden."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._over = parent
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self._picture: QPixmap | None = None
        self._since = QElapsedTimer()
        # One shot at a time: nothing ticks once it is hidden.
        self._tick = QTimer(self)
        self._tick.setSingleShot(True)
        self._tick.setTimerType(Qt.TimerType.PreciseTimer)
        self._tick.setInterval(FRAME_MS)
        self._tick.timeout.connect(self._follow)
        self.hide()

    def fade(self, picture: QPixmap) -> None:
        """Show a picture of the parent, and let it go."""
        self._picture = picture
        self.setGeometry(self._over.rect())
        self.show()
        self.raise_()
        self._since.start()
        self._tick.start()

    def opacity(self) -> float:
        """How much of the old picture is there, 1 to 0."""
        if self._picture is None:
            return 0.0
        return max(1.0 - self._since.elapsed() / FADE_MS, 0.0)

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: D102
        super().hideEvent(event)
        self._tick.stop()
        self._picture = None

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        if self._picture is not None:
            with QPainter(self) as painter:
                painter.setOpacity(self.opacity())
                painter.drawPixmap(0, 0, self._picture)

    def _follow(self) -> None:
        if self.opacity() <= 0:
            self.hide()
        else:
            self.update()
            self._tick.start()
