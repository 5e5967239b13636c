"""Words that wrap, as large as their room allows, between two sizes."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QLabel, QWidget

from demo_app.ui import theme
from demo_app.ui.kiosk.measures import Measures

LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
CENTRE = Qt.AlignmentFlag.AlignCenter


class WordsLabel(QLabel):
    """Plain words.

    Parameters
    ----------
    parent : QWidget or None
    share : str
        Which of the measures' types is the largest: "body" or "title".
    align : Qt.AlignmentFlag
    bold : bool
    """

    def __init__(
        self,
        parent: QWidget | None = None,
        share: str = "body",
        align: Qt.AlignmentFlag = LEFT,
        *,
        bold: bool = False,
    ) -> None:
        super().__init__(parent)
        self._share, self._bold = share, bold
        self._measures = Measures(1280, 720, 4.0)
        self._ink = theme.INK
        self._style = ""
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setAlignment(align)
        self.setTextInteractionFlags(Qt.TextInteractionFlag.NoTextInteraction)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def say(self, said: str) -> None:
        """Show words."""
        if said != self.text():
            self.setText(said)
            self.setAccessibleName(said)
            self._fit()

    def fit(self, measures: Measures, look: theme.Look, *, quiet: bool = False) -> None:
        """Sizes and colours."""
        self._measures = measures
        shades = theme.shades(look)
        self._ink = shades.dim if quiet else shades.ink
        self._fit()

    @property
    def type_size(self) -> int:
        """Height of the words, pixels."""
        return self._size()

    def has_room(self, said: str) -> bool:
        """Whether other words would fit at the smallest type."""
        room = self.contentsRect()
        return self._height(self._measures.least, room.width(), said) <= room.height()

    def needs(self, width: int) -> int:
        """Height that the words take at their largest type in `width` pixels."""
        return self._height(self._largest(), width)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fit()

    def _largest(self) -> int:
        return int(getattr(self._measures, self._share))

    def _height(self, size: int, width: int, said: str | None = None) -> int:
        self.ensurePolished()
        font = self.font()
        font.setPixelSize(size)
        flags = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft)
        box = QFontMetrics(font).boundingRect(
            0, 0, max(width, 1), 99999, flags, self.text() if said is None else said
        )
        # A word wider than the room sticks out: such a size does not fit.
        return box.height() if box.width() <= width else 99999

    def _size(self) -> int:
        room, least, size = self.contentsRect(), self._measures.least, self._largest()
        while size > least and self._height(size, room.width()) > room.height():
            size -= 1
        return size

    def _fit(self) -> None:
        weight = "font-weight: 600; " if self._bold else ""
        style = f"{weight}color: {self._ink}; background: transparent; font-size: {self._size()}px;"
        if style != self._style:
            self._style = style
            self.setStyleSheet(style)
