"""The venue's own rules as a form: nothing is filled in, and what nobody reviewed is amber."""

import datetime
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QLineEdit, QWidget

from demo_app.base.errors import InputError
from demo_app.content import venue as rules
from demo_app.content.venue import FIELDS, Field, Venue
from demo_app.ui import show_words, words
from demo_app.ui.pages.parts import LineEntry, label

AMBER, GREEN = "⚠", "✓"


class VenueForm(QWidget):
    """One row a rule: its name, what the venue says, its state in words.

    Attributes
    ----------
    changed : Signal(Venue)
        The rules after what was typed or reviewed.
    told : Signal(str)
        One line about something that cannot be.
    """

    changed = Signal(object)
    told = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._venue = Venue("")
        self._today = datetime.date(1970, 1, 1)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setColumnStretch(1, 3)
        grid.setColumnStretch(2, 2)
        grid.addWidget(label(words.text("venue.title"), "title", self), 0, 0, 1, 3)
        grid.addWidget(label(show_words.follow(), "quiet", self), 1, 0, 1, 3)
        self.lines: dict[str, QLineEdit] = {}
        self.states: dict[str, QLabel] = {}
        for place, one in enumerate(FIELDS, start=2):
            said, ask = show_words.rule_label(one), show_words.rule_ask(one)
            name = label(said + (f" ({one.unit})" if one.unit else ""), "", self)
            name.setToolTip(ask)
            line = QLineEdit(self)
            line.setPlaceholderText(ask)
            line.setAccessibleName(said)
            line.editingFinished.connect(partial(self._typed, one))
            state = label("", "", self)
            for column, widget in enumerate((name, line, state)):
                grid.addWidget(widget, place, column)
            self.lines[one.name], self.states[one.name] = line, state
        last = len(FIELDS) + 2
        self.days = QLineEdit(self)
        self.days.setPlaceholderText(words.text("venue.days.ask"))
        self.days.setAccessibleName(words.text("venue.days"))
        self.days.editingFinished.connect(self._days_typed)
        grid.addWidget(label(words.text("venue.days"), "", self), last, 0)
        grid.addWidget(self.days, last, 1)
        self.review = LineEntry("venue.role", "venue.reviewed", self)
        self.review.entered.connect(self._reviewed)
        grid.addWidget(self.review, last + 1, 0, 1, 3)

    def show_venue(self, venue: Venue, today: datetime.date) -> None:
        """Show a venue's rules and how they stand today."""
        self._venue, self._today = venue, today
        states = rules.states(venue, today)
        for one in FIELDS:
            good = states[one.name] == rules.REVIEWED
            line, state = self.lines[one.name], self.states[one.name]
            if not line.hasFocus() or not line.isModified():
                line.setText(_typed_form(venue, one))
            state.setObjectName("quiet" if good else "alert")
            said = show_words.review_line(venue, one.name, today)
            state.setText(f"{GREEN if good else AMBER} {said}")
            state.style().polish(state)
        self.days.setText("" if venue.review_valid_days is None else str(venue.review_valid_days))

    def _typed(self, what: Field) -> None:
        line = self.lines[what.name]
        said = line.text().strip()
        if said == _typed_form(self._venue, what) or not said:
            return
        try:
            value = _value(what, said)
            venue = rules.with_value(self._venue, what.name, value)
        except InputError as error:
            self.told.emit(f"{show_words.rule_label(what)}: {error.problem}; {error.remedy}")
            return
        line.setModified(False)
        self.changed.emit(venue)

    def _days_typed(self) -> None:
        said = self.days.text().strip()
        if not said or said == str(self._venue.review_valid_days):
            return
        if not said.isdigit() or not 1 <= int(said) <= 3660:
            self.told.emit(words.text("venue.days.wrong"))
            return
        self.changed.emit(Venue(self._venue.name, self._venue.rules, int(said), self._venue.path))

    def _reviewed(self, role: str) -> None:
        told = tuple(one.name for one in FIELDS if self._venue.value(one.name) is not None)
        if not told:
            self.told.emit(words.text("venue.nothing"))
            return
        try:
            self.changed.emit(rules.reviewed(self._venue, told, role, self._today))
        except InputError as error:
            self.told.emit(f"{error.problem}; {error.remedy}")


def _typed_form(venue: Venue, what: Field) -> str:
    """A rule as it is typed: no unit, list with semicolons."""
    value = venue.value(what.name)
    if isinstance(value, tuple):
        return "; ".join(value)
    if isinstance(value, float | int):
        return f"{value:g}".replace(".", words.decimal_point())
    return value or ""


def _value(what: Field, said: str) -> rules.Value:
    if what.kind == "number":
        try:
            return float(said.replace(",", "."))
        except ValueError:
            raise InputError(
                f"'{said}' is not a number", place=what.name, remedy="write a number"
            ) from None
    if what.kind == "list":
        return tuple(part.strip() for part in said.split(";") if part.strip())
    return said
