"""What a lesson leaves behind: the votes as a table, worksheet and key.

Nothing of it is needed to teach, so a disk that cannot be written changes a line of words alone.
"""

import datetime
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from demo_app.base.atomic import make_folder, write_text
from demo_app.base.errors import InputError
from demo_app.content.handouts.make import check_name, handout
from demo_app.content.handouts.page import page
from demo_app.content.lessons.records import Lesson
from demo_app.content.lessons.votes import Votes, write_csv
from demo_app.content.running.records import COUNT
from demo_app.shells.teaching.window import OutreachWindow
from demo_app.ui import words
from demo_app.ui.benching.once import Once
from demo_app.ui.printing import print_pdf

FOLDER = "votes"


class Papers(QObject):
    """Keeps and saves for one window; its dialogs stand on the teacher's window alone.

    Parameters
    ----------
    window : OutreachWindow
    folder : pathlib.Path or None
        The data folder; None: the votes are kept only where somebody saves them.
    """

    def __init__(self, window: OutreachWindow, folder: Path | None) -> None:
        super().__init__(window)
        self._window, self._folder = window, folder
        self._kept: Votes = window.votes
        begun = datetime.datetime.fromtimestamp(window.conductor.now())
        path = window.taught.lesson.path
        self.name = f"{begun:%Y-%m-%d-%H%M%S}-{path.stem if path is not None else 'lesson'}.csv"
        self._once: Once | None = None
        window.conductor.changed.connect(self.follow)
        window.votes_page.save_asked.connect(self._ask_votes)
        window.handout.save_asked.connect(self._ask_handout)

    def follow(self) -> None:
        """Put the votes on the disk whenever a count is over."""
        window = self._window
        if window.running.phase != COUNT:
            self.keep()

    def keep(self) -> None:
        """Put the votes on the disk now, if there are others than before."""
        window, votes = self._window, self._window.votes
        if votes == self._kept or not votes.tallies:
            return
        self._kept = votes
        try:
            if self._folder is None:
                raise InputError("there is none", place="data folder", remedy="save them yourself")
            folder = self._folder / FOLDER
            make_folder(folder)
            write_csv(folder / self.name, window.taught.lesson, votes)
        except InputError:
            window.unkept = True
            window.votes_page.tell(words.text("votes.unkept"))
        else:
            window.unkept = False
            window.votes_page.tell(words.text("votes.kept", path=folder / self.name))

    def save_votes(self, path: Path) -> None:
        """Write the votes as a table; what cannot be is told."""
        window = self._window
        try:
            write_csv(path, window.taught.lesson, window.votes)
        except InputError as error:
            window.votes_page.tell(str(error))
            return
        self._kept, window.unkept = window.votes, False
        window.votes_page.tell(words.text("votes.kept", path=path))

    def save_handout(self, path: Path) -> None:
        """Write a worksheet at `path` and its key beside it; the model computes both meanwhile."""
        shown = self._window.handout
        try:
            check_name(path)
        except InputError as error:
            shown.tell(str(error))
            return
        if self._once is not None:
            return
        shown.show_busy(True)
        lesson = self._window.taught.lesson
        once = Once(partial(_pages, lesson, shown.number, shown.sheet), self)
        once.done.connect(partial(self._write, path, shown.sheet))
        once.failed.connect(self._failed)
        once.finished.connect(once.deleteLater)
        self._once = once
        once.start()

    def close(self) -> None:
        """Keep the last count, and wait for a worksheet that is being computed."""
        self.keep()
        once, self._once = self._once, None
        if once is not None:
            once.wait()

    def _ask_votes(self) -> None:
        path, _ = QFileDialog.getSaveFileName(
            self._window, words.text("votes.save"), self.name, "CSV (*.csv)"
        )
        if path:
            self.save_votes(Path(path))

    def _ask_handout(self) -> None:
        path, _ = QFileDialog.getSaveFileName(
            self._window,
            words.text("handout.save"),
            f"worksheet-{self._window.handout.number}.pdf",
            "PDF (*.pdf);;HTML (*.html)",
        )
        if path:
            self.save_handout(Path(path))

    def _write(self, path: Path, paper: str, pages: tuple[str, str]) -> None:
        shown, self._once = self._window.handout, None
        shown.show_busy(False)
        beside = path.with_name(f"{path.stem}-key{path.suffix}")
        try:
            for text, file in zip(pages, (path, beside), strict=True):
                if path.suffix.lower() == ".pdf":
                    print_pdf(text, file, paper)
                else:
                    write_text(file, text)
        except InputError as error:
            shown.tell(str(error))
            return
        shown.tell(words.text("handout.saved", paths=f"{path}, {beside}"))

    def _failed(self, error: Exception) -> None:
        self._once = None
        self._window.handout.show_busy(False)
        self._window.handout.tell(str(error))


def _pages(lesson: Lesson, seed: int, paper: str) -> tuple[str, str]:
    """Worksheet and key as HTML."""
    sheet, key = (page(handout(lesson, seed, one), paper) for one in (False, True))
    return sheet, key
