"""Before the doors open: time there is, what has to lie ready, the venue's rules, the projector."""

import datetime

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from demo_app.content.checklist import Item
from demo_app.content.cues.records import Sheet
from demo_app.content.cues.shorten import Cut
from demo_app.content.venue import Venue
from demo_app.scenes.settings import Setting
from demo_app.ui import show_words, theme, words
from demo_app.ui.fields import Tick, control_for
from demo_app.ui.pages.parts import Page, TickList, label
from demo_app.ui.pages.venue_form import VenueForm

LEAST_MIN, MOST_MIN = 3.0, 120.0


class BeforePage(Page):
    """Checklist of the coming show.

    Attributes
    ----------
    minutes_chosen : Signal(float)
        How long the show may take, min.
    rehearsal_chosen : Signal(bool)
    """

    minutes_chosen = Signal(float)
    rehearsal_chosen = Signal(bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = label("", "title", self)
        self.minutes = control_for(
            Setting(
                "minutes",
                words.text("before.minutes"),
                "min",
                15.0,
                low=LEAST_MIN,
                high=MOST_MIN,
                step=1.0,
                help=words.text("before.minutes.help"),
            ),
            self,
        )
        self.minutes.chosen.connect(self._minutes)
        self.cut = label("", "", self)
        self.rehearsal = Tick(words.text("before.rehearsal"), self)
        self.rehearsal.toggled.connect(self.rehearsal_chosen)
        self.lists = {
            name: TickList(words.text(f"before.{name}"), self)
            for name in ("props", "samples", "eyewear", "helpers", "cautions")
        }
        self.form = VenueForm(self)
        for widget in (self.title, self.minutes, self.cut, self.rehearsal):
            self.box.addWidget(widget)
        for listed in self.lists.values():
            self.box.addWidget(listed)
        self.box.addWidget(self.form)
        self.box.addStretch(1)

    def show_sheet(self, sheet: Sheet) -> None:
        """Draw the checklist from a sheet."""
        self.title.setText(f"{sheet.title} · {sheet.venue}")
        titles = {step.id: step.title for step in sheet.steps}
        drawn = show_words.checklist_of(sheet)
        helpers = tuple(
            Item(
                words.text(
                    "show.helper",
                    briefing=one.helper.briefing,
                    eyewear=one.helper.eyewear or words.text("none"),
                    place=one.helper.place,
                    exit=one.helper.exit,
                ),
                (one.step,),
            )
            for one in drawn.helpers
        )
        items = {
            "props": drawn.props,
            "samples": drawn.samples,
            "eyewear": drawn.eyewear,
            "helpers": helpers,
            "cautions": drawn.cautions,
        }
        for name, listed in self.lists.items():
            listed.show_items(items[name], titles)
        self.minutes.show_value(sheet.minutes)

    def show_cut(self, sheet: Sheet, cut: Cut) -> None:
        """Say which steps a shorter show leaves out."""
        titles = {step.id: step.title for step in sheet.steps}
        if cut.missing_s > 0:
            said = words.text("before.cut.missing", seconds=round(cut.missing_s))
        elif cut.dropped:
            dropped = "; ".join(titles[step] for step in cut.dropped)
            said = words.text("before.cut", steps=dropped)
        else:
            said = words.text("before.cut.none")
        self.cut.setText(said)

    def show_venue(self, venue: Venue, today: datetime.date) -> None:
        """Show the venue's rules and their state."""
        self.form.show_venue(venue, today)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing."""
        super().set_sizes(sizes)
        self.minutes.setMaximumWidth(sizes.panel * 30)

    def _minutes(self, _name: str, value: object) -> None:
        self.minutes_chosen.emit(float(str(value)))
