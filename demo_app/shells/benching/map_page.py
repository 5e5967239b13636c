"""The what-if map: a reading over two settings, run beside the window and kept on the disk."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.content.bench.map_report import LIMIT, map_report
from demo_app.content.maps.plan import MapPlan, plan_map
from demo_app.content.maps.result import Map, as_csv
from demo_app.content.maps.work import Cell
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Scene
from demo_app.shells.benching.footer import Footer
from demo_app.shells.benching.map_choices import FIRST, MapChoices
from demo_app.ui import theme, words
from demo_app.ui.benching.answer_view import cautions
from demo_app.ui.benching.figures import plain
from demo_app.ui.benching.map_picture import MapPicture, Titles
from demo_app.ui.benching.map_run import MapRun
from demo_app.ui.benching.once import Once, printing
from demo_app.ui.benching.question_form import QuestionForm
from demo_app.ui.language_ids import BENCH, scene_context

PAINT_MS = 300
"""How often a map that fills up is painted."""


class MapPage(QWidget):
    """The page of the map; it looks after its own run.

    Attributes
    ----------
    told : Signal(str)
        A line for the window.
    save_asked : Signal()
        The table is to be saved.
    """

    told = Signal(str)
    save_asked = Signal()
    id = "map"

    def __init__(self, workers: int | None = None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._workers = workers
        self._scene: Scene | None = None
        self._sizes: theme.Sizes | None = None
        self._run: MapRun | None = None
        self._printing: Once | None = None
        self._cells: dict[int, Cell] = {}
        self._plan: MapPlan | None = None
        self._reads = ("", "")
        self._titles = Titles("", "", "", "", "")
        self.choices = MapChoices()
        self.form: QuestionForm | None = None
        self.go = QPushButton(words.text("bench.map.run"), self)
        self.go.setObjectName("main")
        self.go.clicked.connect(self.run_map)
        self.title, self.point, self.caution = (plain(self) for _ in range(3))
        self.title.setObjectName("title")
        self.title.setText(words.text("bench.map.help"))
        self.point.setObjectName("value")
        self.caution.setObjectName("caution")
        self.caution.setText(f"{cautions()} {words.said(BENCH, 'limit_map', LIMIT)}")
        self.picture = MapPicture(self)
        self.picture.pointed.connect(self._say_point)
        self.footer = Footer(self)
        self.save_button = QPushButton(words.text("bench.csv"), self.footer)
        self.save_button.setToolTip(words.text("bench.csv.help"))
        self.save_button.clicked.connect(self.save_asked)
        self.footer.add_button(self.save_button)
        self.footer.stopped.connect(self.stop)
        self.footer.resumed.connect(self.run_map)
        self._paint = QTimer(self)
        self._paint.setSingleShot(True)
        self._paint.setInterval(PAINT_MS)
        self._paint.timeout.connect(self._show)
        self._can_save(False)
        self._left, right = QVBoxLayout(), QVBoxLayout()
        self._left.addWidget(self.go)
        for widget in (self.title, self.picture, self.point, self.caution, self.footer):
            right.addWidget(widget)
        right.setStretch(1, 1)
        self._box = QHBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.addLayout(self._left)
        self._box.addLayout(right, 1)
        self.choices.scene_chosen.connect(self.choose_scene)
        self.choices.changed.connect(self._changed)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._sizes = sizes
        self._box.setSpacing(sizes.gap)
        self._left.setContentsMargins(0, 0, 0, sizes.gap)
        self.footer.set_sizes(sizes)
        font = self.picture.font()
        font.setPixelSize(sizes.panel)
        self.picture.setFont(font)
        if self.form is not None:
            self._size_form(self.form, sizes)

    def _size_form(self, form: QuestionForm, sizes: theme.Sizes) -> None:
        form.set_gap(sizes.gap)
        form.setFixedWidth(min(max(round(sizes.panel * 22), 300), 480))

    def load(self) -> None:
        """Load the first scene, when the page is first looked at."""
        if self._scene is None:
            self.choose_scene(FIRST)

    def choose_scene(self, name: str) -> None:
        """Map another scene."""
        self._drop()
        self._scene = catalogue.load(name)
        old, self.form = (
            self.form,
            QuestionForm(self._scene.settings, (), self, scene_context(self._scene)),
        )
        self.form.insert_top(self.choices)
        self.form.changed.connect(self._changed)
        self._left.insertWidget(0, self.form, 1)
        if old is not None:
            old.deleteLater()
        if self._sizes is not None:
            self._size_form(self.form, self._sizes)
        self.choices.offer(self._scene)
        QWidget.setTabOrder(self.form, self.go)

    def focus_first(self) -> None:
        """Give the keyboard to the first choice."""
        self.choices.scene.setFocus()

    def values(self) -> Mapping[str, Any]:
        """Values of the settings that stay."""
        assert self.form is not None
        varied = {self.choices.across.name, self.choices.up.name}
        return {name: v for name, v in self.form.values().items() if name not in varied}

    def run_map(self) -> None:
        """Run what is chosen, but for the points that the disk has from before."""
        if self._run is not None or self._scene is None or self.form is None:
            return
        self.form.clear_problem()
        choices, reads = self.choices, self.choices.reads()
        wanted = list(dict.fromkeys(name for name in reads if name))
        try:
            plan = plan_map(
                self._scene, (choices.across.vary(), choices.up.vary()), wanted, self.values()
            )
        except InputError as error:
            self._problem(error)
            return
        self._cells, self._plan, self._reads = {}, plan, reads
        self._titles = self._titled(self._scene, reads)
        self._show()
        run = MapRun(plan, self._workers, self)
        run.progress.connect(self._progress)
        run.arrived.connect(self._arrived)
        run.failed.connect(self._failed)
        run.finished.connect(self._finished)
        self._run = run
        self.go.setEnabled(False)
        self._can_save(False)
        self.footer.begin(words.text("bench.map.begins"))
        run.start()

    def stop(self) -> None:
        """Stop after the points in hand; they stay on the disk."""
        if self._run is not None:
            self._run.stop()
            self.footer.say(words.text("bench.map.stopping"))

    def end(self) -> None:
        """End what is under way, at once."""
        self._paint.stop()
        if self._printing is not None:
            self._printing.wait()
        if self._run is not None:
            run, self._run = self._run, None
            run.finished.disconnect(self._finished)
            run.end()
            run.deleteLater()

    def _drop(self) -> None:
        """Forget the map that is shown: it is another scene's."""
        self.end()
        self._plan, self._cells = None, {}
        self.picture.clear()
        self.point.clear()
        self.footer.finish()
        self.footer.say("")
        self._can_save(False)
        self.go.setEnabled(True)

    def hold(self) -> None:
        """Another page is shown: the map goes on."""

    @property
    def running(self) -> bool:
        """Whether points are being run."""
        return self._run is not None

    @property
    def found(self) -> Map | None:
        """The map as far as it is done."""
        return None if self._plan is None else Map(self._plan, self._cells)

    def save_to(self, path: Path) -> None:
        """Write the table of the whole map."""
        found = self.found
        if found is None:
            return
        try:
            write_text(path, as_csv(found))
        except InputError as error:
            self.told.emit(f"{error.place}: {error.problem}; {error.remedy}")
        else:
            self.told.emit(words.text("saved", path=path))

    def print_to(self, path: Path) -> None:
        """Print the whole map into a PDF."""
        found = self.found
        if found is None or not found.whole or self._printing is not None:
            return
        made = map_report(found, self.picture.on_paper())
        self._printing = printing(made, path, self)
        self._printing.done.connect(lambda to: self.told.emit(words.text("saved", path=to)))
        self._printing.failed.connect(
            lambda error: self.told.emit(words.text("bench.unprinted", problem=error))
        )
        self._printing.finished.connect(self._printed)
        self._printing.start()

    def _printed(self) -> None:
        self._printing = None

    def _can_save(self, can: bool) -> None:
        self.footer.can_print(can)
        self.save_button.setEnabled(can)

    def _problem(self, error: InputError) -> None:
        assert self.form is not None
        said = f"{error.problem[:1].upper()}{error.problem[1:]}: {error.remedy}."
        self.form.show_problem(error.place, said)

    def _changed(self) -> None:
        if self.form is not None:
            self.form.hide_inputs({self.choices.across.name, self.choices.up.name})
        if self._plan is not None and self._run is None:
            self.footer.say(words.text("bench.map.other"))

    def _progress(self, done: int, count: int) -> None:
        self.footer.progress(done, count)
        run = self._run
        if run is not None and not run.stopping:
            self.footer.say(words.text("bench.map.running", done=done, count=count))

    def _arrived(self, cells: tuple[Cell, ...]) -> None:
        self._cells.update((one.index, one) for one in cells)
        if not self._paint.isActive():
            self._paint.start()

    def _failed(self, error: Exception) -> None:
        if isinstance(error, InputError):
            self._problem(error)
        else:
            self.told.emit(words.text("bench.fault", problem=error))

    def _finished(self) -> None:
        run, self._run = self._run, None
        if run is not None:
            run.deleteLater()
        self._paint.stop()
        self._show()
        self.go.setEnabled(True)
        found = self.found
        if found is None:
            return
        whole = found.whole
        said = words.text(
            "bench.map.whole" if whole else "bench.map.part",
            done=len(found.cells),
            count=found.plan.count,
            refused=len(found.refused),
        )
        if whole:
            self.footer.finish()
            self.footer.say(said)
            if self._reads[1] and not self.picture.has_border:
                self.footer.say(f"{said} {words.text('bench.map.no_border')}")
        else:
            self.footer.stop(said)
        self._can_save(whole)

    def _show(self) -> None:
        found = self.found
        if found is None or self._scene is None:
            return
        self.picture.show_map(found, *self._reads, self._titles)
        self._say_point(self.picture.place)

    def _titled(self, scene: Scene, reads: tuple[str, str]) -> Titles:
        specs = {one.name: one for one in scene.readings}
        reading, verdict = specs[reads[0]], specs.get(reads[1])
        context = scene_context(scene)
        return Titles(
            self.choices.across.title(),
            self.choices.up.title(),
            words.label(context, reading),
            words.unit(reading.unit),
            "" if verdict is None else words.label(context, verdict),
            context,
        )

    def _say_point(self, index: int) -> None:
        found = self.found
        if found is None or self._scene is None:
            return
        cell = self._cells.get(index)
        settings = found.plan.point(index)
        labels = {one.name: one for one in self._scene.readings}
        context = scene_context(self._scene)
        plan = found.plan
        at = [
            f"{title} {words.number(settings[name], 4)}"
            for title, name in (
                (self._titles.across, plan.across.name),
                (self._titles.up, plan.up.name),
            )
        ]
        if cell is None:
            said = words.text("bench.map.not_yet")
        elif cell.refused:
            said = cell.refused
        else:
            said = "; ".join(
                f"{words.label(context, labels[name])} "
                f"{words.reading(labels[name], value, context)}"
                for name, value in zip(found.plan.readings, cell.values, strict=True)
            )
        self.point.setText(f"{'; '.join(at)}:  {said}")
        self.picture.setAccessibleDescription(self.point.text())
