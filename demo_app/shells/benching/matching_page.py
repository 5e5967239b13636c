"""Matching: what the readings are is said beside them, and the result is kept as a device."""

import datetime

from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from demo_app.base.errors import InputError
from demo_app.content.bench.answer import Answer, Page
from demo_app.content.bench.match_models import KINDS
from demo_app.content.bench.matching import device_from
from demo_app.content.bench.words import texts_of
from demo_app.content.site.devices import device_ids
from demo_app.content.site.saving import save_device
from demo_app.shells.benching.question_page import QuestionPage
from demo_app.ui import words
from demo_app.ui.benching.figures import breakable
from demo_app.ui.benching.question_form import alert_line

_READINGS = ("first_reading", "second_reading", "third_reading")


class MatchingPage(QuestionPage):
    """The page `matching` with a name to keep its result under."""

    def __init__(self, page: Page, parent: QWidget | None = None) -> None:
        super().__init__(page, parent)
        self.tool = QWidget()
        self.name = QLineEdit(self.tool)
        self.name.setPlaceholderText(words.text("bench.keep.name"))
        self.name.setAccessibleName(words.text("bench.keep.name"))
        self.name.setMaxLength(60)
        self.keep = QPushButton(words.text("bench.keep"), self.tool)
        self.keep.setToolTip(words.text("bench.keep.help"))
        self.line = alert_line(self.tool)
        self._over = ""
        row = QHBoxLayout()
        row.addWidget(self.name, 1)
        row.addWidget(self.keep)
        box = QVBoxLayout(self.tool)
        box.setContentsMargins(0, 0, 0, 0)
        box.addLayout(row)
        box.addWidget(self.line)
        self.view.add_tool(self.tool)
        QWidget.setTabOrder(self.view.area, self.name)
        QWidget.setTabOrder(self.name, self.keep)
        self.name.textEdited.connect(self._forget)
        self.name.returnPressed.connect(self.keep_it)
        self.keep.clicked.connect(self.keep_it)
        self._name_readings()
        self._may_keep(None)

    def change(self) -> None:  # noqa: D102
        self._name_readings()
        self._may_keep(None)
        super().change()

    def show_answer(self, answer: Answer) -> None:  # noqa: D102
        super().show_answer(answer)
        self._may_keep(answer)

    def show_problem(self, place: str, problem: str, remedy: str) -> None:  # noqa: D102
        super().show_problem(place, problem, remedy)
        self._may_keep(None)

    def keep_it(self) -> None:
        """Keep the fitted value as a device under the name that was typed."""
        answer = self.view.answer
        if answer is None or not self.keep.isEnabled():
            return
        self.line.show()
        try:
            made = device_from(answer, self.name.text().strip(), datetime.date.today())
            if made.id in device_ids() and self._over != made.id:
                self._over = made.id
                self.keep.setText(words.text("bench.keep.over"))
                self.line.setText(words.text("bench.keep.there", name=made.name))
                return
            path = save_device(made, over=self._over == made.id)
        except InputError as error:
            self._say(f"{error.problem[:1].upper()}{error.problem[1:]}: {error.remedy}.")
            return
        self._forget()
        self.line.show()
        self._say(words.text("bench.kept", name=made.name, id=made.id, path=path))

    def _say(self, said: str) -> None:
        self.line.setText(breakable(said))

    def _forget(self) -> None:
        self._over = ""
        self.keep.setText(words.text("bench.keep"))
        self.line.hide()

    def _may_keep(self, answer: Answer | None) -> None:
        fit = None if answer is None else answer.fit
        self.keep.setEnabled(fit is not None and fit.done and fit.usable)
        if answer is None:
            self._forget()

    def _name_readings(self) -> None:
        """The three readings by what they are for this unknown."""
        texts = texts_of(self.page)
        kind = KINDS[str(self.form.values()["unknown"])]
        for name, reading in zip(_READINGS, kind.readings, strict=True):
            control = self.form.controls[name]
            said = texts[reading]
            label = control.findChild(QLabel)
            if isinstance(label, QLabel):
                label.setWordWrap(True)
                label.setText(said[:1].upper() + said[1:])
            control.box.setAccessibleName(said)  # type: ignore[attr-defined]
            control.slider.setAccessibleName(said)  # type: ignore[attr-defined]
