"""The kiosk: an unattended touch screen.

Start-up order: site, texts and counts are opened, each with something to stand in for it; the
window covers the screen and asks for its first picture; once that is there the texts in use are
kept, and the supervisor hears a beat each second.
"""

import contextlib
from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QObject, QTimer

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.base.process import release_collector
from demo_app.content.kiosk import update
from demo_app.content.kiosk.counts import Counts
from demo_app.content.kiosk.fallback import load_or_last_good
from demo_app.shells import supervising
from demo_app.shells.kiosking.house import House
from demo_app.shells.kiosking.window import KioskWindow
from demo_app.ui import application

BEAT_MS = 1000
STATUSES = {0: supervising.STAFF_QUIT, 1: 1, 2: supervising.START_ANEW}
"""Why the window ended, and what the supervisor is told."""


def run(argv: Sequence[str]) -> int:
    """Cover the screen until staff quit; see `run_window`."""
    folder: Path | None = None
    with contextlib.suppress(InputError):
        folder = data_folder()
    return run_window(folder, argv)


def run_window(
    folder: Path | None,
    argv: Sequence[str],
    *,
    beat: Callable[[], bool] = supervising.beat,
    full: bool = True,
) -> int:
    """Show the kiosk's window until it ends.

    Parameters
    ----------
    folder : pathlib.Path or None
        The kiosk's data; None: nothing can be kept.
    argv : sequence of str
        For Qt.
    beat : callable
        Says that the window is alive, each second; false where nobody listens any more.
    full : bool
        Whether it covers the screen.

    Returns
    -------
    int
        Exit status: `demo_app.shells.supervising.STAFF_QUIT` after staff quit, `START_ANEW` for
        new texts, 1 after many faults, 0 when the system asked for the end.
    """
    site, problems = load_or_last_good(folder)
    texts, more = update.open_texts(folder)
    app = application.make(argv)
    app.setQuitOnLastWindowClosed(False)
    counts = Counts(folder)
    guard, log = application.FaultGuard(), application.log_to(folder)
    window = KioskWindow(House(site, texts, counts, folder, (*problems, *more)))
    statuses = [0]
    guard.caught.connect(window.recover)
    guard.install()

    def leave(why: int) -> None:
        statuses[0] = STATUSES[why]
        app.exit(STATUSES[why])

    window.left.connect(leave)
    window.invited.connect(lambda: _invited(folder, window))
    heart = Heart(beat, lambda: app.exit(0))
    if full:
        window.showFullScreen()
    else:
        application.show(window)
    window.begin()

    def close() -> None:
        heart.stop()
        window.end()
        window.close()
        counts.close()
        application.stop_log(log)

    try:
        return application.execute(app, close)
    finally:
        guard.uninstall()


class Heart(QObject):
    """Says each second, from the thread that draws, that the window is alive.

    Parameters
    ----------
    beat : callable
        Says it; false where nobody listens any more.
    alone : callable
        Called then, once.
    """

    def __init__(self, beat: Callable[[], bool], alone: Callable[[], object]) -> None:
        super().__init__()
        self._beat, self._alone = beat, alone
        self._timer = QTimer(self)
        self._timer.setInterval(BEAT_MS)
        self._timer.timeout.connect(self.beat)
        self._timer.start()

    def beat(self) -> None:
        """Say it now."""
        if not self._beat():
            self.stop()
            self._alone()

    def stop(self) -> None:
        """Fall silent."""
        self._timer.stop()


def _invited(folder: Path | None, window: KioskWindow) -> None:
    """The inviting view is there: the texts in use stay, and start-up's memory is let go."""
    release_collector()
    for line in update.started(folder):
        window.take_problem(line)
