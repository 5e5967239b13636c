"""What stands around a presenter's window: the audience's screen, and what is kept on the disk.

None of it is needed for the first picture, so it is loaded after that.
"""

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

from demo_app.base.process import release_collector
from demo_app.scenes import catalogue
from demo_app.shells.audience import AudienceWindow
from demo_app.shells.presenting.window import PresentWindow
from demo_app.ui import application, words
from demo_app.ui.placer import Placer
from demo_app.ui.screen_memory import keep_place, read_place
from demo_app.ui.screens import Place

if TYPE_CHECKING:
    from demo_app.shells.presenting.diary import Diary
    from demo_app.shells.presenting.keeping import Keeping
    from demo_app.ui.awake import Awake

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


class House(QObject):
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
        self._awake: Awake | None = None
        self._first = QTimer(self)
        self._first.setSingleShot(True)
        self._first.timeout.connect(self._settle)
        # Of whichever session is the first to come that far: somebody may have gone on meanwhile.
        window.conductor.staged.connect(self._staged)
        if window.session is None:
            self._first.start(AFTER_FIRST_MS)

    def _staged(self, _session: object) -> None:
        self._window.conductor.staged.disconnect(self._staged)
        release_collector()
        self._first.start(AFTER_FIRST_MS)

    def _settle(self) -> None:
        """Load what is kept, and the other scenes; after the first picture, which comes first."""
        from demo_app.content.journal.following import Entry, resumed
        from demo_app.content.journal.store import open_journal
        from demo_app.shells.presenting.diary import Diary
        from demo_app.shells.presenting.keeping import Keeping
        from demo_app.ui.awake import Awake

        if self._keeping is not None:
            return
        window, folder = self._window, self._folder
        self._keeping = Keeping(window, folder)
        journal = open_journal(folder)
        entry = resumed(journal, window.conductor.running.digest) if self._goes_on else Entry()
        self._diary = Diary(window, journal, entry)
        self._keeping.load()
        self._guard.caught.connect(self._diary.fault)
        window.screens.swapped.connect(self._placer.swap)
        self._show_place()
        self._awake = Awake()
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
        if self._awake is not None:
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
