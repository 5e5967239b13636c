"""The prep bench: questions to plan a show with, one page each, and the what-if map."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QCloseEvent, QFontMetrics, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from demo_app.base.process import release_collector
from demo_app.content.bench.answer import Answer
from demo_app.content.bench.catalogue import IDS, page
from demo_app.shells.benching.colour_page import ColourPage
from demo_app.shells.benching.map_page import MapPage
from demo_app.shells.benching.matching_page import MatchingPage
from demo_app.shells.benching.question_page import QuestionPage
from demo_app.ui import application, speaking, theme, words
from demo_app.ui.benching.answers import Answers
from demo_app.ui.benching.figures import breakable, plain
from demo_app.ui.benching.style import style_sheet

PAGES = (*IDS, "map")
KINDS: dict[str, type[QuestionPage]] = {"colour": ColourPage, "matching": MatchingPage}


class BenchWindow(QWidget):
    """List of the questions, and the page of the one that is chosen.

    Parameters
    ----------
    shown : str
        Id of the page that is shown first.
    workers : int or None
        Processes of a map; None: one a core.
    """

    def __init__(self, shown: str = PAGES[0], workers: int | None = None) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle(words.text("bench.title"))
        self._sizes: theme.Sizes | None = None
        self._workers = workers
        self._made: dict[str, QuestionPage | MapPage] = {}
        self._asker: QuestionPage | None = None
        self.answers = Answers(self)
        self.list = QListWidget(self)
        self.list.setAccessibleName(words.text("bench.questions"))
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for number, id in enumerate(PAGES, start=1):
            item = QListWidgetItem(words.text("bench.item", number=number, title=_title(id)))
            item.setToolTip(words.text("bench.item.help", number=number))
            self.list.addItem(item)
        self.keys = plain(self)
        self.keys.setObjectName("quiet")
        self.keys.setText(words.text("bench.keys"))
        self.line = QLabel(self)
        self.line.setObjectName("alert")
        self.line.setWordWrap(True)
        self.stack = QStackedWidget(self)
        side = QVBoxLayout()
        heading = plain(self)
        heading.setObjectName("title")
        heading.setText(words.text("bench"))
        for widget in (heading, self.list, self.line, self.keys):
            side.addWidget(widget)
        side.setStretch(1, 1)
        self._box = QHBoxLayout(self)
        self._box.addLayout(side)
        self._box.addWidget(self.stack, 1)
        self._keys()
        self._connect()
        self.list.setCurrentRow(PAGES.index(shown))
        self.list.currentRowChanged.connect(self._choose)

    def _keys(self) -> None:
        for number in range(1, len(PAGES) + 1):
            key = QShortcut(QKeySequence(f"Ctrl+{number}"), self)
            key.activated.connect(lambda row=number - 1: self.open(PAGES[row]))
        for keys, act in (("Ctrl+P", self.write), ("Ctrl+S", self.save), ("Esc", self.stop)):
            QShortcut(QKeySequence(keys), self).activated.connect(act)
        QShortcut(QKeySequence("Ctrl+L"), self).activated.connect(self.list.setFocus)

    def _connect(self) -> None:
        answers = self.answers
        answers.first.connect(self._answered)
        answers.finer.connect(self._answered)
        answers.progress.connect(self._progress)
        answers.ended.connect(self._ended)
        answers.refused.connect(self._refused)
        answers.failed.connect(self._failed)

    def begin(self) -> None:
        """Start the processes and ask the first question."""
        self.answers.begin()
        self._choose(self.list.currentRow())

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(1920, 1080)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        sizes = theme.Sizes.of(self.height())
        if sizes != self._sizes:
            self._sizes = sizes
            self.setStyleSheet(style_sheet(sizes))
            self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, 0)
            self._box.setSpacing(sizes.gap)
            wide = min(max(round(sizes.panel * 14), 190), 320)
            self.list.setFixedWidth(wide)
            self._size_items(wide)
            self.keys.setFixedWidth(wide)
            self.line.setFixedWidth(wide)
            for made in self._made.values():
                made.set_sizes(sizes)

    def _size_items(self, wide: int) -> None:
        """Items as high as their words, broken where they must be."""
        assert self._sizes is not None
        font = self.list.font()
        font.setPixelSize(self._sizes.panel)
        room = QRect(0, 0, wide - 2 * self._sizes.gap - 16, 999)
        for row in range(self.list.count()):
            item = self.list.item(row)
            words_box = QFontMetrics(font).boundingRect(
                room, int(Qt.TextFlag.TextWordWrap), item.text()
            )
            high = max(words_box.height() + 12, theme.TOUCH_PX, 2 * self._sizes.panel)
            item.setSizeHint(QSize(wide - 8, high))

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: D102
        self.end()
        super().closeEvent(event)

    def end(self) -> None:
        """End all threads and processes."""
        for made in self._made.values():
            made.end()
        self.answers.end()

    @property
    def page(self) -> QuestionPage | MapPage:
        """The page that is shown."""
        return self._made[PAGES[self.list.currentRow()]]

    def open(self, id: str) -> None:
        """Show a page and give it the keyboard."""
        self.list.setCurrentRow(PAGES.index(id))
        self.page.focus_first()

    def tell(self, said: str) -> None:
        """One line for whoever sits here."""
        self.line.setText(breakable(said))

    def write(self) -> None:
        """Ask for a file, then print what is shown into it."""
        shown = self.page
        if shown.footer.print_button.isEnabled():
            path = self._where(words.text("bench.print"), f"{shown.id}.pdf", "PDF (*.pdf)")
            if path is not None:
                shown.print_to(path)

    def save(self) -> None:
        """Ask for a file, then save the map's table into it."""
        shown = self.page
        if isinstance(shown, MapPage) and shown.save_button.isEnabled():
            path = self._where(words.text("bench.csv"), "map.csv", "CSV (*.csv)")
            if path is not None:
                shown.save_to(path)

    def _where(self, title: str, name: str, kinds: str) -> Path | None:
        found, _ = QFileDialog.getSaveFileName(self, title, name, kinds)
        if not found:
            return None
        path = Path(found)
        return path if path.suffix else path.with_suffix(Path(name).suffix)

    def stop(self) -> None:
        """Give up what is under way on this page."""
        shown = self.page
        if isinstance(shown, MapPage):
            shown.stop()
        elif shown is self._asker and shown.footer.stop_button.isEnabled():
            self.answers.stop()
            shown.stop()

    def _choose(self, row: int) -> None:
        for made in self._made.values():
            made.hold()
        shown = self._page(PAGES[row])
        self.stack.setCurrentWidget(shown)
        self.tell("")
        if isinstance(shown, MapPage):
            shown.load()
        elif shown.pending:
            self._ask(shown)

    def _page(self, id: str) -> QuestionPage | MapPage:
        if id in self._made:
            return self._made[id]
        made: QuestionPage | MapPage
        if id == "map":
            made = MapPage(self._workers, self)
            made.save_asked.connect(self.save)
        else:
            made = KINDS.get(id, QuestionPage)(page(id), self)
            made.asked.connect(lambda: self._ask(made))
            made.stop_asked.connect(self.stop)
            made.again_asked.connect(lambda: self._again(made))
        made.told.connect(self.tell)
        made.footer.print_asked.connect(self.write)
        if self._sizes is not None:
            made.set_sizes(self._sizes)
        self._made[id] = made
        self.stack.addWidget(made)
        return made

    def _ask(self, asker: QuestionPage) -> None:
        before, self._asker = self._asker, asker
        if before is not None and before is not asker and before.footer.stop_button.isEnabled():
            before.stop()
            before.pending = True
        asker.begin()
        self.tell("")
        self.answers.ask(asker.id, asker.values())

    def _again(self, asker: QuestionPage) -> None:
        if asker.view.answer is None or asker is not self._asker:
            self._ask(asker)
            return
        asker.begin()
        self.answers.again()

    def _answered(self, number: int, answer: Answer) -> None:
        if self._asker is not None and not self._asker.pending:
            self._asker.show_answer(answer)
            if answer.done:
                self._asker.finish()

    def _ended(self, _number: int) -> None:
        if self._asker is not None:
            self._asker.finish()

    def _progress(self, _number: int, done: int, most: int) -> None:
        if self._asker is not None and not self._asker.pending:
            self._asker.show_progress(done, most)

    def _refused(self, _number: int, place: str, problem: str, remedy: str) -> None:
        if self._asker is not None and not self._asker.pending:
            self._asker.show_problem(place, problem, remedy)

    def _failed(self, _number: int, said: str) -> None:
        if self._asker is not None:
            self._asker.show_fault(said)


def _title(id: str) -> str:
    return words.text("bench.map" if id == "map" else f"bench.{id}")


def run(argv: Sequence[str]) -> int:
    """Open the bench and run until it is closed.

    Returns
    -------
    int
        Exit status.
    """
    app = application.make(argv)
    speaking.begin()
    window = BenchWindow()
    guard = application.FaultGuard()
    guard.caught.connect(window.tell)
    guard.install()
    application.show(window)
    window.begin()
    window.list.setFocus()
    release_collector()
    try:
        return application.execute(app, window.close)
    finally:
        guard.uninstall()
