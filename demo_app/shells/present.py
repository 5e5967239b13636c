"""Present: the live show in front of an audience, with a cue sheet or scene by scene.

Start-up order: which show is chosen; the presenter's window asks for its first picture and is
shown; the audience's window is placed; what is kept on the disk is loaded; the other scenes are
loaded while nothing plays.
"""

import time
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QApplication

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.scenes import catalogue
from demo_app.shells.presenting.house import House, Others
from demo_app.shells.presenting.opening import Opening, gone_on, opened_sheet
from demo_app.shells.presenting.window import PresentWindow
from demo_app.ui import application, keymap_file, saved, speaking

if TYPE_CHECKING:
    from demo_app.shells.presenting.choosing import Show

__all__ = ["Others", "PresentWindow", "run"]

FIRST = "ring"


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
    path = None if what is None else _sheet_called(what)
    opening = opened_sheet(path, rehearsal=rehearsal) if path is not None else Opening(scene=what)
    app = application.make(argv)
    speaking.begin()
    folder = _folder()
    before = saved.offer(folder) if folder is not None else None
    if before is not None and not _suits(before, path, what):
        before = None
    if go_on and before is not None:
        opening = gone_on(before, time.time())
    elif what is None or before is not None:
        from demo_app.shells.presenting.choosing import shows

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


def _sheet_called(what: str) -> Path | None:
    if what in catalogue.ids():
        # A scene, as mostly where speed counts: cue sheets are not looked at.
        return None
    from demo_app.content.cues.named import sheet_called

    return sheet_called(what)


def _choose(app: QApplication, found: "Sequence[Show]") -> "tuple[Show | None, int]":
    from demo_app.shells.presenting.choosing import ChooseWindow

    window = ChooseWindow(found)
    taken: list[Show] = []
    window.chosen.connect(taken.append)
    window.chosen.connect(window.close)
    application.show(window)
    status = application.execute(app, window.close)
    return (taken[-1] if taken else None), status


def _opening(chosen: "Show", before: saved.Saved | None, rehearsal: bool) -> Opening:
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
    house = House(window, folder, guard, goes_on=put_back is not None)
    try:
        return application.execute(app, house.close)
    finally:
        guard.uninstall()
        application.stop_log(log)
