"""Keeps the journal of a window's shows, and serves the pages for the time between and after."""

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog

from demo_app.base.errors import InputError
from demo_app.content.journal import events, pieces, shows
from demo_app.content.journal.following import Entry, follow
from demo_app.content.journal.store import Journal
from demo_app.content.running import walking
from demo_app.content.running.records import Running
from demo_app.scenes.scene import View
from demo_app.shells.presenting.window import PresentWindow
from demo_app.ui import show_words, words
from demo_app.ui.answering import Outcome

if TYPE_CHECKING:
    from demo_app.content.hot import HotPiece

LAST_LINES = 4


class Diary(QObject):
    """Writes what a window's show does, and what is typed on its pages.

    Parameters
    ----------
    window : PresentWindow
    journal : Journal

    Attributes
    ----------
    told : Signal(str)
        One line for the presenter.
    """

    told = Signal(str)

    def __init__(self, window: PresentWindow, journal: Journal, entry: Entry = Entry()) -> None:  # noqa: B008 (frozen)
        super().__init__(window)
        self._window, self._journal = window, journal
        self._conductor = window.conductor
        self.entry = entry
        # The show that rows typed after its end still belong to.
        self._show: int | None = entry.show
        self._before: Running = self._conductor.running
        self._outcome: Outcome | None = None
        self._begun: float | None = None
        self._hot: HotPiece | None = None
        self._lines: tuple[str, ...] = ()
        self._connect()
        self.refresh()

    def _connect(self) -> None:
        window, after, between = self._window, self._window.after, self._window.between
        self.told.connect(window.tell)
        self._conductor.changed.connect(self.follow)
        window.page_changed.connect(self.refresh)
        window.ticked.connect(self._tick)
        after.heads_counted.connect(self._heads)
        after.broke.connect(self._broke)
        after.nearly.connect(self._nearly)
        after.asked.connect(self._asked)
        after.noted.connect(self._noted)
        after.ended.connect(self._end)
        after.handover_asked.connect(self._hand_over)
        between.begun.connect(self._turn_round)
        between.moved.connect(self._move)
        between.batch_named.connect(self._batch)
        between.hot_asked.connect(self._put_down)

    def follow(self) -> None:
        """Write down where the show is."""
        conductor = self._conductor
        running, outcome = conductor.running, conductor.outcome
        if running is self._before and outcome is self._outcome:
            return
        before, self._before, self._outcome = self._before, running, outcome
        if not conductor.sheet.minutes:
            return  # Scenes without a sheet are no show.
        right = None if outcome is None else outcome.right
        self.entry = follow(
            self._journal, self.entry, before, running, conductor.sheet, right, conductor.now()
        )
        self._show = self.entry.show or self._show
        self._news()

    def fault(self, problem: str) -> None:
        """Something went wrong and was mended: for the handover page."""
        self._try(
            partial(
                events.add_note, self._journal, "fault", problem, self._now, show=self.entry.show
            )
        )

    def refresh(self) -> None:
        """Show what the journal holds on the pages."""
        stock = pieces.stock(self._journal)
        balances = () if self._show is None else pieces.balances(self._journal, self._show)
        between = self._window.between
        between.show_pieces(stock, balances)
        sheet = self._conductor.sheet
        if not between.reset.ticks:
            titles = {step.id: step.title for step in sheet.steps}
            between.show_items(show_words.checklist_of(sheet).reset, titles)
        place = words.text("journal.disk" if self._journal.on_disk else "journal.memory")
        number = words.text("none") if self._show is None else str(self._show)
        self._window.after.show_state(
            words.text("journal.line", show=number, place=place), self._lines
        )

    def close(self) -> None:
        """Let go of the journal; what was written is on the disk."""
        self._journal.close()

    @property
    def _now(self) -> float:
        return self._conductor.now()

    @property
    def _step(self) -> str:
        return self._conductor.running.id if self.entry.show is not None else ""

    def _try(self, act: Callable[[], object], line: str = "") -> None:
        """Do it; what cannot be is told, and what was taken is shown."""
        try:
            act()
        except InputError as error:
            self.told.emit(f"{error.problem}; {error.remedy}")
            return
        if line:
            self._lines = (line, *self._lines)[:LAST_LINES]
        self.refresh()
        self._news()

    def _news(self) -> None:
        for line in self._journal.news():
            self.told.emit(line)

    def _heads(self, number: int) -> None:
        if self._show is None:
            self.told.emit(words.text("journal.no_show"))
            return
        self._try(
            partial(shows.count_heads, self._journal, self._show, number),
            words.text("after.taken", kind=words.text("after.heads"), text=str(number)),
        )

    def _broke(self, what: str, meant: bool) -> None:
        act = partial(
            events.add_breakage,
            *(self._journal, what, self._now),
            meant=meant,
            show=self._show,
            step=self._step,
        )
        self._try(act, words.text("after.taken", kind=words.text("after.breakage"), text=what))

    def _nearly(self, what: str) -> None:
        place = self._window.conductor.step.title
        act = partial(
            events.add_near_miss,
            *(self._journal, what, place, self._now),
            show=self._show,
            step=self._step,
        )
        self._try(act, words.text("after.taken", kind=words.text("after.miss"), text=what))

    def _asked(self, said: str) -> None:
        act = partial(
            events.add_question,
            *(self._journal, said, self._now),
            show=self._show,
            step=self._step,
        )
        self._try(act, words.text("after.taken", kind=words.text("after.question"), text=said))

    def _noted(self, kind: str, said: str) -> None:
        act = partial(events.add_note, self._journal, kind, said, self._now, show=self._show)
        self._try(act, words.text("after.taken", kind=words.text(f"note.{kind}"), text=said))

    def _end(self) -> None:
        conductor = self._conductor
        if not conductor.running.on:
            self.told.emit(words.text("journal.no_show"))
            return
        conductor.take(walking.finish(conductor.running, conductor.sheet, self._now))
        conductor.start_over()
        self.refresh()

    def _hand_over(self) -> None:
        path, _ = QFileDialog.getSaveFileName(
            self._window, words.text("after.handover"), "handover.pdf", "PDF (*.pdf);;HTML (*.html)"
        )
        if path:
            self._try(partial(self.save_handover, Path(path)))
            self.told.emit(words.text("saved", path=path))

    def save_handover(self, path: Path) -> None:
        """Write the handover page of today as PDF or HTML.

        Raises
        ------
        InputError
            If the file's name ends in neither, or it cannot be written.
        """
        from demo_app.base.atomic import write_text
        from demo_app.content import handover
        from demo_app.ui.printing import print_pdf

        handover.check_name(path)
        html = handover.page(handover.gathered(self._journal, handover.parse_day(None)))
        if path.suffix.lower() == ".html":
            write_text(path, html)
        else:
            print_pdf(html, path)

    def _turn_round(self) -> None:
        self._begun = self._now
        self._window.between.reset.clear_ticks()
        self._tick()

    def _move(self, batch: str, way: str, number: int) -> None:
        show = None if way == "delivered" else self._show
        self._try(partial(pieces.move, self._journal, batch, way, number, self._now, show=show))

    def _batch(self, said: str) -> None:
        parts = [part.strip() for part in said.split(";")]
        try:
            name, kind, glass, thickness = parts
            thick = float(thickness.replace(",", "."))
        except ValueError:
            self.told.emit(words.text("between.batch_form"))
            return
        self._try(partial(pieces.add_batch, self._journal, name, kind, glass, thick))

    def _put_down(self) -> None:
        session = self._window.session
        if session is None or session.here is None:
            return
        from demo_app.content.hot import hot_in_view

        scene, settings = session.scene, session.settings
        view: View = scene.view(settings, session.here)
        glass = str(getattr(settings, "glass", ""))
        found = hot_in_view(words.title(scene), glass, view, self._now) if glass else None
        self._hot = found
        if found is None:
            self.told.emit(words.text("between.hot.none"))
        self._tick()

    def _tick(self) -> None:
        begun = self._begun
        self._window.between.show_turnaround(None if begun is None else self._now - begun)
        said = "" if self._hot is None else show_words.hot_line(self._hot, self._now)
        self._window.between.show_hot(said)
