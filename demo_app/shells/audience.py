"""The audience's window: a whole screen, no frame, no controls, no dialogs."""

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import (
    QCloseEvent,
    QGuiApplication,
    QHideEvent,
    QKeyEvent,
    QMouseEvent,
    QResizeEvent,
    QShowEvent,
)
from PySide6.QtWidgets import QVBoxLayout, QWidget

from demo_app.ui import theme, words
from demo_app.ui.audience_view import AudienceView

CURSOR_MS = 2000


def flags(platform: str) -> Qt.WindowType:
    """Kind of window: no frame and no focus; under X11 one that the window manager leaves alone.

    When a projector goes, an X11 window manager moves what stood there onto the presenter's screen
    at once, before this program can hide it.
    """
    kind = (
        Qt.WindowType.Window
        | Qt.WindowType.FramelessWindowHint
        | Qt.WindowType.WindowDoesNotAcceptFocus
    )
    return kind | Qt.WindowType.BypassWindowManagerHint if platform == "xcb" else kind


class AudienceWindow(QWidget):
    """Holds an `AudienceView`; takes no key, no focus and no click, and hides a resting cursor.

    A window system's wish to close it (Alt+F4, a stray click in a task switcher) is refused; the
    program's own `close` works. A `Placer` shows and hides it.

    Parameters
    ----------
    view : AudienceView or None
        One of its own if None.
    """

    def __init__(self, view: AudienceView | None = None) -> None:
        super().__init__(None, flags(QGuiApplication.platformName()))
        self.setWindowTitle(words.text("audience.title"))
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAttribute(Qt.WidgetAttribute.WA_ShowWithoutActivating)
        # The presenter's window alone decides when the app ends.
        self.setAttribute(Qt.WidgetAttribute.WA_QuitOnClose, False)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setMouseTracking(True)
        self._sizes: theme.Sizes | None = None
        self._look = theme.Look()
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(CURSOR_MS)
        self._rest.timeout.connect(self._hide_cursor)
        self._box = QVBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self.view = view if view is not None else AudienceView(self)
        self.view.set_interactive(False)
        self._box.addWidget(self.view)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._size()

    def set_look(self, look: theme.Look) -> None:
        """Contrast and size of type."""
        self._look, self._sizes = look, None
        self._size()

    def _size(self) -> None:
        sizes = theme.Sizes.of(self.height(), self._look)
        if sizes != self._sizes:
            self._sizes = sizes
            self.setPalette(theme.palette(self._look))
            self.setStyleSheet(theme.style_sheet(sizes, self._look))

    def showEvent(self, event: QShowEvent) -> None:  # noqa: D102
        super().showEvent(event)
        self._rest.start()

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: D102
        super().hideEvent(event)
        self._rest.stop()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        self.unsetCursor()
        self._rest.start()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        event.accept()

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: D102
        if event.spontaneous():
            event.ignore()
        else:
            super().closeEvent(event)

    def _hide_cursor(self) -> None:
        self.setCursor(Qt.CursorShape.BlankCursor)
