"""One question of the bench: inputs on the left, the answer beside them, progress below."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from demo_app.content.bench.answer import Answer, Page
from demo_app.content.bench.report import report
from demo_app.content.bench.words import state_of
from demo_app.shells.benching.footer import Footer
from demo_app.shells.benching.only import ONLY
from demo_app.ui import theme, words
from demo_app.ui.benching.answer_view import AnswerView
from demo_app.ui.benching.once import Once, printing
from demo_app.ui.benching.question_form import QuestionForm
from demo_app.ui.benching.said import common
from demo_app.ui.language_ids import bench_context

PAUSE_MS = 100
"""A change counts once the hand has paused for so long."""


class QuestionPage(QWidget):
    """A page of the bench; who asks and who answers is the window's business.

    Attributes
    ----------
    asked : Signal()
        The inputs have changed: `values` wants an answer.
    stop_asked, again_asked : Signal()
    told : Signal(str)
        A line for the window.
    """

    asked = Signal()
    stop_asked = Signal()
    again_asked = Signal()
    told = Signal(str)

    def __init__(self, page: Page, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.page, self.id = page, page.id
        self.pending = True
        """Whether the inputs have no answer yet, nor one on its way."""
        self.form = QuestionForm(page.question, ONLY.get(page.id, ()), self, bench_context(page.id))
        self.form.setAccessibleName(words.text("bench.inputs"))
        self.view = AnswerView(page, self)
        self.footer = Footer(self)
        self._printing: Once | None = None
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self._ask)
        self.form.changed.connect(self.change)
        self.footer.stopped.connect(self.stop_asked)
        self.footer.resumed.connect(self.again_asked)
        right = QVBoxLayout()
        right.addWidget(self.view, 1)
        right.addWidget(self.footer)
        self._box = QHBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.addWidget(self.form)
        self._box.addLayout(right, 1)

    def values(self) -> Mapping[str, Any]:
        """Values of the inputs."""
        return self.form.values()

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._box.setSpacing(sizes.gap)
        self.form.set_gap(sizes.gap)
        self.form.setFixedWidth(min(max(round(sizes.panel * 22), 300), 480))
        self.view.set_sizes(sizes)
        self.footer.set_sizes(sizes)

    def focus_first(self) -> None:
        """Give the keyboard to the first input."""
        self.form.focus_first()

    def change(self) -> None:
        """Ask once the hand has paused."""
        self.pending = True
        self.form.clear_problem()
        self.view.set_old(True)
        self._pause.start()

    def hold(self) -> None:
        """Ask nothing while another page is shown."""
        self._pause.stop()

    def _ask(self) -> None:
        self.asked.emit()

    def begin(self) -> None:
        """A question is on its way."""
        self.pending = False
        self.footer.begin(words.text("bench.working"))

    def show_answer(self, answer: Answer) -> None:
        """An answer to the inputs as they stand."""
        self.form.clear_problem()
        self.view.show_answer(answer)
        self.footer.say(state_of(answer, common()))
        self.footer.can_print(True)

    def show_progress(self, done: int, most: int) -> None:
        """How far the finer answers are."""
        self.footer.progress(done, most)

    def finish(self) -> None:
        """No finer answer follows."""
        self.footer.finish()

    def stop(self) -> None:
        """The finer answers were given up: what stands here holds for the runs that are in it."""
        answer = self.view.answer
        if answer is None:
            self.pending = True
            self.footer.stop(words.text("bench.stopped"))
        else:
            self.footer.stop(words.text("bench.stopped.at", state=state_of(answer, common())))

    def show_problem(self, place: str, problem: str, remedy: str) -> None:
        """The inputs have no answer: say so beside the one to blame."""
        self.form.show_problem(place, f"{problem[:1].upper()}{problem[1:]}: {remedy}.")
        self.view.clear(words.text("bench.no_answer"))
        self.footer.finish()
        self.footer.say("")
        self.footer.can_print(False)

    def show_fault(self, said: str) -> None:
        """Something went wrong that nobody could have known."""
        self.pending = True
        self.footer.stop(words.text("bench.fault", problem=said or words.text("bench.lost")))

    def print_to(self, path: Path) -> None:
        """Print the answer that is shown into a PDF."""
        answer = self.view.answer
        if answer is None or self._printing is not None:
            return
        self._printing = printing(report(self.page, answer), path, self)
        self._printing.done.connect(lambda to: self.told.emit(words.text("saved", path=to)))
        self._printing.failed.connect(
            lambda error: self.told.emit(words.text("bench.unprinted", problem=error))
        )
        self._printing.finished.connect(self._printed)
        self.footer.can_print(False)
        self._printing.start()

    def end(self) -> None:
        """End what is under way."""
        self._pause.stop()
        if self._printing is not None:
            self._printing.wait()

    def _printed(self) -> None:
        self._printing = None
        self.footer.can_print(self.view.answer is not None)
