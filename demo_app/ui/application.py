"""The application object, and what happens when something goes wrong.

Start-up order: `make` builds the QApplication; a shell builds its window and shows it; the first
picture is asked for; what is not needed for it (the chart's library) is loaded after it.
"""

import logging
import signal
import socket
import sys
import threading
from collections.abc import Callable, Sequence
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType
from typing import Any

from PySide6.QtCore import QLocale, QObject, QSocketNotifier, Qt, QTimer, Signal
from PySide6.QtGui import QFont, QFontDatabase
from PySide6.QtWidgets import QApplication, QWidget

from demo_app.base.errors import InputError
from demo_app.base.locate import assets
from demo_app.ui import theme, words

LOG = logging.getLogger("lehrlight")
SWITCH_S = 0.002
QUIET_MS = 1000
FRAME_PX = 48
"""Room that a window's own frame and title take at most."""
LOG_NAME, LOG_BYTES = "lehrlight.log", 500_000


def make(argv: Sequence[str]) -> QApplication:
    """The one QApplication: software drawing, Fusion, dark, fractions of a pixel ratio kept."""
    running = QApplication.instance()
    if isinstance(running, QApplication):
        app = running
    else:
        QApplication.setHighDpiScaleFactorRoundingPolicy(
            Qt.HighDpiScaleFactorRoundingPolicy.PassThrough
        )
        QApplication.setAttribute(Qt.ApplicationAttribute.AA_UseSoftwareOpenGL)
        app = QApplication(list(argv))
        # Numbers are typed as the words are said: in English until another language is used.
        QLocale.setDefault(QLocale(QLocale.Language.English))
    app.setApplicationName("lehrlight")
    app.setApplicationDisplayName(words.text("app"))
    app.setStyle("Fusion")
    app.setPalette(theme.palette())
    _bundled_font(app)
    # The worker runs Python between numpy calls: hand over often, so that a slider never waits.
    sys.setswitchinterval(SWITCH_S)
    return app


def _bundled_font(app: QApplication) -> None:
    """Use the font that comes with the app: words are as wide, and signs there, everywhere."""
    for file in sorted((assets() / "fonts").glob("*.ttf")):
        QFontDatabase.addApplicationFont(str(file))
    app.setFont(QFont(theme.FONT))


def show(window: QWidget) -> None:
    """Show a window as large as it would like to be, if the screen is.

    Qt by itself stops at two thirds of the screen, which on a projector is too small for its words.
    """
    wanted, room = window.sizeHint(), window.screen().availableSize()
    window.resize(wanted.boundedTo(room))
    if room.height() - FRAME_PX < wanted.height() <= room.height():
        # Its frame would hang over the edge.
        window.showMaximized()
    else:
        window.show()


def log_to(folder: Path | None) -> logging.Handler | None:
    """Write the log into the data folder too, in files that do not grow for ever.

    Parameters
    ----------
    folder : pathlib.Path or None
        None, or one that cannot be written: the log goes to standard error alone.

    Returns
    -------
    logging.Handler or None
        To be closed and removed when the window has gone.
    """
    if folder is None:
        return None
    try:
        made = RotatingFileHandler(
            folder / LOG_NAME, maxBytes=LOG_BYTES, backupCount=2, encoding="utf-8", delay=False
        )
    except OSError as error:
        LOG.warning("no log file: %s", error)
        return None
    made.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
    LOG.addHandler(made)
    return made


def stop_log(handler: logging.Handler | None) -> None:
    """Close what `log_to` has opened."""
    if handler is not None:
        LOG.removeHandler(handler)
        handler.close()


class FaultGuard(QObject):
    """Catches what nobody caught: writes it to the log and hands one line to `caught`.

    Exceptions in slots, in paint events and in threads come here; the event loop goes on. Lines
    that follow within a second are logged alone, so that a fault in every repaint cannot spin.

    Attributes
    ----------
    caught : Signal(str)
        What went wrong, in one line; sent in the main thread.
    """

    caught = Signal(str)
    _raised = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._quiet = QTimer(self)
        self._quiet.setSingleShot(True)
        self._quiet.setInterval(QUIET_MS)
        self._before: tuple[Any, Any] | None = None
        # Queued: nothing is torn down inside the paint event that failed.
        self._raised.connect(self._pass_on, Qt.ConnectionType.QueuedConnection)

    def install(self) -> None:
        """Take the place of Python's hooks."""
        self._before = (sys.excepthook, threading.excepthook)
        sys.excepthook = self.take
        threading.excepthook = self._take_from_thread

    def uninstall(self) -> None:
        """Put the hooks back."""
        if self._before is not None:
            sys.excepthook, threading.excepthook = self._before
            self._before = None
        self._quiet.stop()

    def take(
        self, kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        """A `sys.excepthook`."""
        if issubclass(kind, KeyboardInterrupt):
            QApplication.quit()
            return
        LOG.error("caught", exc_info=(kind, error, trace))
        said = f"{error.problem}; {error.remedy}" if isinstance(error, InputError) else str(error)
        self._raised.emit(said or kind.__name__)

    def _take_from_thread(self, args: threading.ExceptHookArgs) -> None:
        if args.exc_value is not None:
            self.take(args.exc_type, args.exc_value, args.exc_traceback)

    def _pass_on(self, said: str) -> None:
        if not self._quiet.isActive():
            self._quiet.start()
            self.caught.emit(words.text("reset.fault", problem=said))


class SignalQuit(QObject):
    """Ends the application in good order on Ctrl+C or a polite kill.

    Qt's loop would not see Python's signal handlers; a socket that the interpreter writes to wakes
    it up.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._read, self._write = socket.socketpair()
        for end in (self._read, self._write):
            end.setblocking(False)
        self._wake_before = signal.set_wakeup_fd(self._write.fileno())
        self._before = {
            number: signal.signal(number, self._quit) for number in (signal.SIGINT, signal.SIGTERM)
        }
        self._notifier = QSocketNotifier(self._read.fileno(), QSocketNotifier.Type.Read, self)
        self._notifier.activated.connect(self._drain)

    def close(self) -> None:
        """Put the handlers back."""
        self._notifier.setEnabled(False)
        for number, handler in self._before.items():
            signal.signal(number, handler)
        signal.set_wakeup_fd(self._wake_before)
        self._read.close()
        self._write.close()

    def _drain(self) -> None:
        # Reading lets the interpreter run the handler that is due.
        self._read.recv(64)

    @staticmethod
    def _quit(_number: int, _frame: Any) -> None:
        QApplication.quit()


def execute(app: QApplication, closing: Callable[[], object]) -> int:
    """Run the event loop; `closing` always runs after it.

    Returns
    -------
    int
        Exit status.
    """
    quitting = SignalQuit()
    try:
        return app.exec()
    finally:
        closing()
        quitting.close()
