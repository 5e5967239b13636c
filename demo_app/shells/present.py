"""Present: the live show in front of an audience, with a cue sheet or scene by scene.

Start-up order: which show is chosen; the presenter's window asks for its first picture and is
shown; the audience's window is placed; what is kept on the disk is loaded; the other scenes are
loaded while nothing plays.
"""

import time
from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QApplication

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.base.process import release_collector
from demo_app.content.cues.named import sheet_called
from demo_app.content.journal.following import Entry, resumed
from demo_app.content.journal.store import open_journal
from demo_app.scenes import catalogue
from demo_app.shells.audience import AudienceWindow
from demo_app.shells.presenting.choosing import ChooseWindow, Show, shows
from demo_app.shells.presenting.diary import Diary
from demo_app.shells.presenting.keeping import Keeping
from demo_app.shells.presenting.opening import Opening, gone_on, opened_sheet
from demo_app.shells.presenting.window import PresentWindow
from demo_app.ui import application, keymap_file, saved, words
from demo_app.ui.awake import Awake
from demo_app.ui.placer import Placer
from demo_app.ui.screen_memory import keep_place, read_place
from demo_app.ui.screens import Place

__all__ = ["Others", "PresentWindow", "run"]

FIRST = "ring"
BETWEEN_SCENES_MS = 300
AFTER_FIRST_MS = 150


class Others(QObject):
    """Loads the other scenes after the first picture, one at a time while nothing plays.

    One that cannot be loaded is told and left out; the scene shown goes on.
    """

    def __init__(self, window: PresentWindow) -> None:
        super().__init__(window)
        self._window = window
        shown = window.session.scene.id if window.session is not None else ""
        first = [step.scene for step in window.conductor.sheet.steps]
        # Those of the sheet first, in its order.
        rest = [name for name in catalogue.ids() if name not in first]
        self._waiting = [name for name in dict.fromkeys((*first, *rest)) if name != shown]
        if self._waiting:
            # Room for the list from the start, so that no button moves under a hand.
            window.controls.scenes.show()
        self._timer = QTimer(self)
        self._timer.setInterval(BETWEEN_SCENES_MS)
        self._timer.timeout.connect(self._next)
        self._timer.start()

    def stop(self) -> None:
        """Load no more."""
        self._timer.stop()

    def _next(self) -> None:
        session = self._window.session
        if not self._waiting or session is None:
            self._timer.stop()
        elif session.frame is not None and not session.playing:
            name = self._waiting.pop(0)
            try:
                self._window.offer(catalogue.load(name))
            except Exception as error:
                application.LOG.error("scene %s cannot be loaded", name, exc_info=error)
                self._window.tell(words.text("unloaded", scene=name, problem=error))


def run(
    what: str | None,
    argv: Sequence[str],
    *,
    minutes: float | None = None,
    rehearsal: bool = False,
    go_on: bool = False,
) -> int:
    """Open the presenter's window and run until it is closed.

    Parameters
    ----------
    what : str or None
        Id of a scene, name or path of a cue sheet; None: a window asks.
    argv : sequence of str
        For Qt.
    minutes : float or None
        Time there is: what does not fit is left out by the steps' priorities.
    rehearsal : bool
        Whether nobody watches: times are measured, and a cut is proposed.
    go_on : bool
        Whether to go on with a show that was interrupted, without asking.

    Returns
    -------
    int
        Exit status.

    Raises
    ------
    InputError
        For a scene or sheet that is not known, or a sheet with a mistake.
    """
    path = None if what is None else sheet_called(what)
    opening = opened_sheet(path, rehearsal=rehearsal) if path is not None else Opening(scene=what)
    app = application.make(argv)
    folder = _folder()
    before = saved.offer(folder) if folder is not None else None
    if before is not None and not _suits(before, path, what):
        before = None
    if go_on and before is not None:
        opening = gone_on(before, time.time())
    elif what is None or before is not None:
        found = shows(before, folder)
        if path is not None:
            found = tuple(one for one in found if one.path is not None and _same(one.path, path))
        chosen, status = _choose(app, found)
        if chosen is None:
            return status
        opening = _opening(chosen, before, rehearsal)
    return _show(app, opening, folder, minutes)


def _folder() -> Path | None:
    try:
        return data_folder()
    except InputError as error:
        application.LOG.warning("nothing can be kept: %s", error)
        return None


def _same(first: Path, second: Path) -> bool:
    return first.resolve() == second.resolve()


def _suits(before: saved.Saved, path: Path | None, what: str | None) -> bool:
    """Whether the show that was interrupted is the one that is asked for."""
    if before.sheet is None or before.running is None or not before.running.on:
        return False
    return what is None or (path is not None and _same(Path(before.sheet), path))


def _choose(app: QApplication, found: Sequence[Show]) -> tuple[Show | None, int]:
    window = ChooseWindow(found)
    taken: list[Show] = []
    window.chosen.connect(taken.append)
    window.chosen.connect(window.close)
    application.show(window)
    status = application.execute(app, window.close)
    return (taken[-1] if taken else None), status


def _opening(chosen: Show, before: saved.Saved | None, rehearsal: bool) -> Opening:
    if chosen.kind == "go-on" and before is not None:
        return gone_on(before, time.time())
    if chosen.path is not None:
        return opened_sheet(chosen.path, rehearsal=rehearsal)
    return Opening()


def _show(app: QApplication, opening: Opening, folder: Path | None, minutes: float | None) -> int:
    name = opening.scene or FIRST
    scenes = [catalogue.scene(name)] if opening.sheet is None else []
    keymap, broken = (
        keymap_file.load(folder / keymap_file.NAME) if folder is not None else (None, "")
    )
    guard, log = application.FaultGuard(), application.log_to(folder)
    window = PresentWindow(scenes, name, opening.sheet, opening.running, keymap)
    put_back = opening.saved
    if put_back is None:
        window.begin()
    else:
        window.conductor.begin(put_back.shown, put_back.back)
    guard.caught.connect(window.recover)
    guard.install()
    application.show(window)
    window.setFocus()
    window.tell(broken)
    if minutes is not None and opening.sheet is not None:
        window.cut(minutes)
    house = _House(window, folder, guard, goes_on=put_back is not None)
    try:
        return application.execute(app, house.close)
    finally:
        guard.uninstall()
        application.stop_log(log)


class _House(QObject):
    """What stands around a presenter's window once its first picture is there."""

    def __init__(
        self,
        window: PresentWindow,
        folder: Path | None,
        guard: application.FaultGuard,
        *,
        goes_on: bool,
    ) -> None:
        super().__init__()
        self._window, self._folder, self._guard, self._goes_on = window, folder, guard, goes_on
        self._keeping: Keeping | None = None
        self._diary: Diary | None = None
        self._others: Others | None = None
        self._out = AudienceWindow()
        self._placer = Placer(self._out, window, read_place(folder))
        self._placer.placed.connect(self._take_out)
        self._placer.single.connect(self._take_in)
        self._placer.told.connect(window.tell)
        self._placer.chosen.connect(partial(keep_place, folder))
        self._placer.begin()
        self._awake = Awake()
        self._first = QTimer(self)
        self._first.setSingleShot(True)
        self._first.timeout.connect(self._settle)
        if window.session is not None:
            window.session.framed.connect(self._framed)

    def _framed(self, _frame: object) -> None:
        session = self._window.session
        if session is not None:
            session.framed.disconnect(self._framed)
        release_collector()
        self._first.start(AFTER_FIRST_MS)

    def _settle(self) -> None:
        """Load what is kept, and the other scenes; after the first picture, which comes first."""
        window, folder = self._window, self._folder
        self._keeping = Keeping(window, folder)
        journal = open_journal(folder)
        entry = resumed(journal, window.conductor.running.digest) if self._goes_on else Entry()
        self._diary = Diary(window, journal, entry)
        self._keeping.load()
        self._guard.caught.connect(self._diary.fault)
        window.screens.swapped.connect(self._placer.swap)
        self._show_place()
        self._awake.start()
        self._others = Others(window)

    def close(self) -> None:
        """Put everything away; the show is forgotten unless it is running."""
        self._first.stop()
        if self._others is not None:
            self._others.stop()
        self._placer.end()
        if self._keeping is not None:
            self._keeping.close(forget=not self._window.conductor.running.on)
        if self._diary is not None:
            self._diary.close()
        self._window.end()
        self._out.close()
        self._awake.stop()

    def _take_out(self, _place: Place) -> None:
        self._window.set_out(self._out)
        self._show_place()

    def _take_in(self) -> None:
        self._window.set_out(None)
        self._show_place()

    def _show_place(self) -> None:
        """Say on the page about screens which one the audience sees."""
        if self._keeping is None:
            return
        place = self._placer.place_now
        said = words.text(
            "audience.one" if place is None else "audience.two", name=place and place.name
        )
        self._window.screens.show_place(said, two=place is not None)
