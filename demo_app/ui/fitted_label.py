"""Words that are as large as their room allows."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

LEAST = 0.46
"""Smallest type, of the largest."""
TWO_LINES = 2.75
"""Room for two lines of type, in its heights."""


class FittedLabel(QLabel):
    """Plain words, wrapped, at the largest type between `LEAST` and all of a given one that fits.

    Parameters
    ----------
    parent : QWidget or None
    align : Qt.AlignmentFlag
        Where each line begins; the lines stand in the middle of the height.
    alike : list of FittedLabel or None
        Labels that all take the size of the one that fits least; this one joins them.
    bold : bool
    """

    def __init__(
        self,
        parent: QWidget | None = None,
        align: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignHCenter,
        alike: "list[FittedLabel] | None" = None,
        *,
        bold: bool = False,
    ) -> None:
        super().__init__(parent)
        self._weight = "font-weight: 600; " if bold else ""
        self.setStyleSheet(self._weight)
        self._alike = [] if alike is None else alike
        self._alike.append(self)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setAlignment(align | Qt.AlignmentFlag.AlignVCenter)
        self._largest = self._fitting = 26
        self._size = 0

    @property
    def type_size(self) -> int:
        """Height of the words as they stand, pixels."""
        return self._size

    def set_largest(self, size: int) -> None:
        """Largest height of the words, pixels."""
        self._largest = size
        self._fit()

    def say(self, said: str) -> None:
        """Show words."""
        if said != self.text():
            self.setText(said)
            self.setAccessibleName(said)
            self._fit()

    def metrics(self, size: int) -> QFontMetrics:
        """Measures of its type at a size."""
        self.ensurePolished()
        font = self.font()
        font.setPixelSize(size)
        return QFontMetrics(font)

    def fits(self, size: int) -> bool:
        """Whether the words fit at a type size."""
        room = self.contentsRect()
        flags = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignHCenter)
        needed = self.metrics(size).boundingRect(room.adjusted(0, 0, 0, 9999), flags, self.text())
        return needed.height() <= room.height() and needed.width() <= room.width()

    def fitting(self) -> int:
        """Largest type size at which the words fit, pixels."""
        size = self._largest
        while size > LEAST * self._largest and not self.fits(size):
            size -= 1
        return size

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        self._fitting = self.fitting()
        size = min(label._fitting for label in self._alike)
        for label in self._alike:
            label._take(size)

    def _take(self, size: int) -> None:
        if size != self._size:
            self._size = size
            self.setStyleSheet(f"{self._weight}font-size: {size}px;")


class Sentence(FittedLabel):
    """One plain sentence in two lines at most, as large as fits."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("sentence")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_type_size(self, size: int) -> None:
        """Largest height of the words, pixels; room is kept for two lines of them."""
        self.setFixedHeight(round(size * TWO_LINES))
        self.set_largest(size)
