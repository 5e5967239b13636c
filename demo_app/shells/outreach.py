"""Outreach: a lesson for a class, on one screen or two, with no flame and no breakage.

Start-up order: which lesson is chosen; the teacher's window is shown with the lesson's card; the
class's window is placed; the lesson's scenes are loaded while nobody waits for them.
"""

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QApplication

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.base.process import release_collector
from demo_app.content.lessons.load import load
from demo_app.content.lessons.named import lesson_called
from demo_app.scenes import catalogue
from demo_app.shells.audience import AudienceWindow
from demo_app.shells.teaching.choosing import ChooseLesson, lessons
from demo_app.shells.teaching.papers import Papers
from demo_app.shells.teaching.window import OutreachWindow
from demo_app.ui import application, keymap_file, preferences, speaking, words
from demo_app.ui.awake import Awake
from demo_app.ui.placer import Placer
from demo_app.ui.preferences import Preferences
from demo_app.ui.screen_memory import keep_place, read_place
from demo_app.ui.screens import Place

AHEAD_MS = 400


def run(what: str | None, argv: Sequence[str]) -> int:
    """Open the teacher's window and run until it is closed.

    Parameters
    ----------
    what : str or None
        Name or path of a lesson; None: a window asks.
    argv : sequence of str
        For Qt.

    Returns
    -------
    int
        Exit status.

    Raises
    ------
    InputError
        For a lesson that is not known, has a mistake, or shows what its profile does not allow.
    """
    lesson = load(lesson_called(what, "outreach")) if what is not None else None
    app = application.make(argv)
    speaking.begin()
    if lesson is None:
        path, status = _choose(app)
        if path is None:
            return status
        lesson = load(path)
    folder = _folder()
    keymap, broken = (
        keymap_file.load(folder / keymap_file.NAME) if folder is not None else (None, "")
    )
    guard, log = application.FaultGuard(), application.log_to(folder)
    window = OutreachWindow(lesson, keymap)
    guard.caught.connect(window.recover)
    guard.install()
    window.begin()
    application.show(window)
    window.setFocus()
    window.set_preferences(preferences.read(folder))
    window.tell(broken)
    release_collector()
    house = House(window, folder)
    try:
        return application.execute(app, house.close)
    finally:
        guard.uninstall()
        application.stop_log(log)


def _folder() -> Path | None:
    try:
        return data_folder()
    except InputError as error:
        application.LOG.warning("nothing can be kept: %s", error)
        return None


def _choose(app: QApplication) -> tuple[Path | None, int]:
    window = ChooseLesson(lessons())
    taken: list[Path] = []
    window.chosen.connect(taken.append)
    window.chosen.connect(window.close)
    application.show(window)
    status = application.execute(app, window.close)
    return (taken[-1] if taken else None), status


class House(QObject):
    """What stands around a teacher's window: the class's screen, what is kept, what comes next.

    Parameters
    ----------
    window : OutreachWindow
        Shown already.
    folder : pathlib.Path or None
        The data folder.
    """

    def __init__(self, window: OutreachWindow, folder: Path | None) -> None:
        super().__init__()
        self._window, self._folder = window, folder
        self.papers = Papers(window, folder)
        self._out = AudienceWindow()
        self._placer = Placer(self._out, window, read_place(folder))
        self._placer.placed.connect(self._take_out)
        self._placer.single.connect(self._take_in)
        self._placer.told.connect(window.tell)
        self._placer.chosen.connect(partial(keep_place, folder))
        window.screens.swapped.connect(self._placer.swap)
        window.screens.chosen.connect(self._keep)
        self._placer.begin()
        self._awake = Awake()
        self._awake.start()
        self._waiting = list(
            dict.fromkeys(step.scene for step in window.taught.sheet.steps if step.scene)
        )
        self._ahead = QTimer(self)
        self._ahead.setInterval(AHEAD_MS)
        self._ahead.timeout.connect(self._load)
        self._ahead.start()

    def close(self) -> None:
        """Put everything away."""
        self._ahead.stop()
        self._placer.end()
        self.papers.close()
        self._window.end()
        self._out.close()
        self._awake.stop()

    def _load(self) -> None:
        """The lesson's scenes, one at a time while nothing plays: the next step waits for none."""
        session = self._window.session
        if not self._waiting:
            self._ahead.stop()
        elif session is None or not session.playing:
            try:
                catalogue.scene(self._waiting.pop(0))
            except InputError as error:
                self._window.tell(str(error))

    def _keep(self, chosen: Preferences) -> None:
        preferences.write(self._folder, chosen)

    def _take_out(self, place: Place) -> None:
        self._window.set_out(self._out)
        self._window.screens.show_place(words.text("audience.two", name=place.name), two=True)

    def _take_in(self) -> None:
        self._window.set_out(None)
        self._window.screens.show_place(words.text("audience.one"), two=False)
