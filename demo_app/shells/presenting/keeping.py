"""What a presenter's window keeps on the disk: the show, favourites, keys, the venue's rules."""

import dataclasses
from pathlib import Path

from PySide6.QtCore import QFileSystemWatcher, QLockFile, QObject, QTimer

from demo_app.base.errors import InputError
from demo_app.content import venue_file
from demo_app.content.cues.load import load
from demo_app.content.cues.records import Sheet
from demo_app.content.cues.save import Captured, append_step
from demo_app.content.running.records import Running
from demo_app.content.running.saving import digest_of
from demo_app.content.venue import Venue
from demo_app.shells.presenting.window import PresentWindow
from demo_app.ui import keymap_file, preferences, saved, words
from demo_app.ui.autosave import Autosave, hold
from demo_app.ui.keymap import Keymap
from demo_app.ui.preferences import Preferences
from demo_app.ui.saved import Saved

SETTLE_MS = 250
"""After a sheet's file has changed: many editors write it in two goes."""


class Keeping(QObject):
    """Saves and loads for one window.

    Parameters
    ----------
    window : PresentWindow
    folder : pathlib.Path or None
        The data folder; None: nothing can be kept, and that is told once.
    """

    def __init__(self, window: PresentWindow, folder: Path | None) -> None:
        super().__init__(window)
        self._window, self._folder = window, folder
        self._lock: QLockFile | None = hold(folder) if folder is not None else None
        ours = folder if self._lock is not None else None
        self.autosave = Autosave(ours, self.collect, self)
        self.autosave.told.connect(window.tell)
        self._favourites = window.conductor.favourites
        self._running = window.conductor.running
        conductor = window.conductor
        conductor.changed.connect(self._changed)
        conductor.made.connect(self.autosave.watch)
        self.autosave.watch(conductor.session)
        window.teach.changed.connect(self._keep_keys)
        window.before.form.changed.connect(self._keep_venue)
        window.before.form.told.connect(window.tell)
        window.screens.chosen.connect(self._keep_preferences)
        window.step_saved.connect(self._save_step)
        self._watcher = QFileSystemWatcher(self)
        self._watcher.fileChanged.connect(self._touched)
        self._watcher.directoryChanged.connect(self._touched)
        self._settled = QTimer(self)
        self._settled.setSingleShot(True)
        self._settled.setInterval(SETTLE_MS)
        self._settled.timeout.connect(self._reload)
        self._watch()
        if folder is not None and self._lock is None:
            window.tell(words.text("autosave.second"))

    def collect(self) -> Saved:
        """The show as it is."""
        window, conductor = self._window, self._window.conductor
        session, sheet = conductor.session, conductor.sheet
        shown = None if session is None else session.snapshot(window.stage.section.mode)
        back = conductor.before_visit
        if back is None and session is not None:
            back = session.point_of_return
        return Saved(
            shown=shown,
            back=back,
            running=conductor.running,
            sheet=None if sheet.path is None else str(sheet.path),
            saved_at=conductor.now(),
        )

    def load(self) -> None:
        """Favourites and the venue's rules, where there are any."""
        if self._folder is None:
            self._window.tell(words.text("keeping.none"))
            return
        tell = self._window.tell
        self._window.set_preferences(preferences.read(self._folder))
        self._favourites = saved.read_favourites(self._folder, tell)
        self._window.conductor.favourites = self._favourites
        try:
            place = venue_file.own_place()
            self._window.show_venue(venue_file.load(place) if place.exists() else Venue(""))
        except InputError as error:
            tell(str(error))

    def close(self, *, forget: bool) -> None:
        """End the saving; `forget` if the show was closed in good order."""
        if forget:
            self.autosave.forget()
        self.autosave.close()
        if self._lock is not None:
            self._lock.unlock()

    def _changed(self) -> None:
        conductor = self._window.conductor
        if _where(conductor.running) != _where(self._running):
            # On the disk before it is seen: a restart offers the step that the audience saw.
            self.autosave.save_now()
        self._running = conductor.running
        self.autosave.touch()
        if conductor.favourites is not self._favourites:
            self._favourites = conductor.favourites
            self._keep_favourites()

    def _keep_favourites(self) -> None:
        if self._folder is not None:
            try:
                saved.write_favourites(self._folder, self._favourites)
            except InputError as error:
                self._window.tell(str(error))

    def _keep_preferences(self, chosen: Preferences) -> None:
        preferences.write(self._folder, chosen)

    def _keep_keys(self, keymap: Keymap) -> None:
        if self._folder is not None:
            try:
                keymap_file.save(keymap, self._folder / keymap_file.NAME)
            except InputError as error:
                self._window.tell(str(error))

    def _keep_venue(self, venue: Venue) -> None:
        if not venue.name:
            venue = dataclasses.replace(venue, name=self._window.conductor.sheet.venue or "venue")
        try:
            venue_file.save(venue, venue_file.own_place())
        except InputError as error:
            self._window.tell(str(error))
        self._window.show_venue(venue)

    def _save_step(self) -> None:
        """Put what is shown down as one more step of the sheet."""
        session, sheet = self._window.session, self._window.conductor.sheet
        if session is None or sheet.path is None:
            self._window.tell(words.text("step.no_sheet"))
            return
        captured = Captured(session.scene.title, session.scene.id, session.settings, session.time_s)
        try:
            append_step(sheet.path, captured)
        except InputError as error:
            self._window.tell(str(error))
            return
        self._window.tell(words.text("step.saved", sheet=sheet.path.name))

    # The sheet's file

    def _watch(self) -> None:
        path = self._window.conductor.sheet.path
        if path is not None:
            # Its folder too: an editor that writes a new file takes the watched one away.
            self._watcher.addPaths([str(path), str(path.parent)])

    def _touched(self, _path: str) -> None:
        self._settled.start()

    def _reload(self) -> None:
        conductor = self._window.conductor
        path = conductor.sheet.path
        if path is None or not path.exists():
            return
        self._watcher.addPath(str(path))
        try:
            digest = digest_of(path.read_bytes())
            if digest == conductor.running.digest:
                # As it was read: a mistake that was told is mended.
                self._window.tell("")
                return
            sheet: Sheet = load(path)
        except (OSError, InputError) as error:
            self._window.tell(words.text("sheet.broken", problem=error))
            return
        self._window.show_sheet(sheet, digest)
        self._window.tell(words.text("sheet.reloaded"))


def _where(running: Running) -> tuple[int, str, bool]:
    return running.place, running.phase, running.on
