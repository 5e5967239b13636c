"""Sections of the staff's page: lists of lines, of switches, a table of opening hours."""

from collections.abc import Callable, Mapping, Sequence

from PySide6.QtCore import QRect, Signal
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.hours import DAY_MIN, Hours, Span
from demo_app.ui.kiosk.button import BigButton
from demo_app.ui.kiosk.measures import grid
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.words_label import LEFT, WordsLabel

HALF_HOUR = 30
DAYS = 7
USUAL = Span(10 * 60, 17 * 60)


class Lines(Page):
    """Lines to read."""

    def __init__(self, lines: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.labels = [WordsLabel(self, "body", LEFT) for _ in lines]
        for label, line in zip(self.labels, lines, strict=True):
            label.say(line)

    def place(self) -> None:  # noqa: D102
        gap, width = self.measures.gap, self.width()
        needs = [label.needs(width) + gap // 2 for label in self.labels]
        share = min(self.height() / max(sum(needs), 1), 1.0)
        top = 0
        for label, need in zip(self.labels, needs, strict=True):
            label.setGeometry(0, top, width, round(need * share))
            top += round(need * share)


class Buttons(Page):
    """Buttons below one another, perhaps switches; lines above them.

    Attributes
    ----------
    pressed : Signal(str, bool)
        Name of a button, and whether it is on.
    """

    pressed = Signal(str, bool)

    def __init__(
        self,
        names: Mapping[str, str],
        on: Callable[[str], bool] | None = None,
        *,
        lines: Sequence[str] = (),
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.labels = [WordsLabel(self, "body", LEFT) for _ in lines]
        for label, line in zip(self.labels, lines, strict=True):
            label.say(line)
        self._on = on
        self.buttons: dict[str, BigButton] = {}
        for name, said in names.items():
            button = BigButton(self)
            button.say(said)
            if on is not None:
                button.setCheckable(True)
                button.setChecked(on(name))
            button.clicked.connect(lambda state, name=name: self._press(name, state))
            self.buttons[name] = button

    def show_again(self) -> None:
        """Show what is on by now."""
        if self._on is not None:
            for name, button in self.buttons.items():
                button.setChecked(self._on(name))

    def place(self) -> None:  # noqa: D102
        gap, width = self.measures.gap, self.width()
        top = 0
        for label in self.labels:
            high = label.needs(width) + gap // 2
            label.setGeometry(0, top, width, high)
            top += high
        count = len(self.buttons)
        high = min(2 * self.measures.target, (self.height() - top) // max(-(-count // 2), 1))
        rows = -(-count // 2)
        boxes = grid(QRect(0, top, width, rows * high), count, 2, gap)
        for button, box in zip(self.buttons.values(), boxes, strict=True):
            button.setGeometry(box)

    def _press(self, name: str, state: bool) -> None:
        self.pressed.emit(name, state)
        self.show_again()


class HoursTable(Page):
    """A row a day: closed or open, from when, until when, by half hours.

    Attributes
    ----------
    changed : Signal(Hours)
    """

    changed = Signal(object)

    def __init__(
        self, hours: Hours, word: Callable[[str], str], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.hours, self._word = hours, word
        self.always = BigButton(self)
        self.always.setCheckable(True)
        self.always.say(word("staff.always_open"))
        self.always.clicked.connect(self._set_always)
        self.rows: list[tuple[BigButton, list[BigButton], WordsLabel]] = []
        for day in range(DAYS):
            name = word(f"day.{day}")
            shut = BigButton(self)
            shut.setCheckable(True)
            shut.clicked.connect(lambda _on=False, day=day: self._switch(day))
            parts = [BigButton(self, sign=sign) for sign in "−+−+"]
            for place, part in enumerate(parts):
                part.setAccessibleName(f"{name} {'−+−+'[place]}")
                part.clicked.connect(
                    lambda _on=False, day=day, place=place: self._shift(day, place)
                )
            self.rows.append((shut, parts, WordsLabel(self, "body", LEFT)))
        self._show()

    def place(self) -> None:  # noqa: D102
        gap, width = self.measures.gap, self.width()
        high = max(self.measures.target, (self.height() - DAYS * gap // 2) // (DAYS + 1))
        high = min(high, 2 * self.measures.target)
        self.always.setGeometry(0, 0, round(0.4 * width), high)
        side = max(self.measures.target, round(0.09 * width))
        for day, (shut, parts, label) in enumerate(self.rows):
            top = (day + 1) * (high + gap // 2)
            shut.setGeometry(0, top, round(0.28 * width), high)
            left = shut.width() + gap
            parts[0].setGeometry(left, top, side, high)
            parts[1].setGeometry(left + side + gap, top, side, high)
            middle = left + 2 * side + 2 * gap
            parts[3].setGeometry(width - side, top, side, high)
            parts[2].setGeometry(width - 2 * side - gap, top, side, high)
            label.setGeometry(middle, top, width - 2 * side - 2 * gap - middle, high)

    def _span(self, day: int) -> Span | None:
        spans = self.hours.week[day] if self.hours.week else ()
        return spans[0] if spans else None

    def _set_always(self, on: bool) -> None:
        self._take(() if on else ((USUAL,),) * DAYS)

    def _switch(self, day: int) -> None:
        week = self.hours.week or ((USUAL,),) * DAYS
        spans = () if week[day] else (USUAL,)
        self._take((*week[:day], spans, *week[day + 1 :]))

    def _shift(self, day: int, place: int) -> None:
        span = self._span(day)
        if span is None:
            return
        by = HALF_HOUR if place % 2 else -HALF_HOUR
        opens, closes = span.opens_min, span.closes_min
        if place < 2:
            opens = min(max(opens + by, 0), closes - HALF_HOUR)
        else:
            closes = min(max(closes + by, opens + HALF_HOUR), DAY_MIN)
        week = self.hours.week
        spans = (Span(opens, closes), *week[day][1:])
        self._take((*week[:day], spans, *week[day + 1 :]))

    def _take(self, week: tuple[tuple[Span, ...], ...]) -> None:
        self.hours = Hours(week, self.hours.exceptions)
        self._show()
        self.changed.emit(self.hours)

    def _show(self) -> None:
        self.always.setChecked(not self.hours.week)
        for day, (shut, parts, label) in enumerate(self.rows):
            span = self._span(day)
            open_ = span is not None or not self.hours.week
            shut.setChecked(open_)
            shut.say(self._word(f"day.{day}"))
            for part in parts:
                part.setEnabled(span is not None)
            more = " …" if self.hours.week and len(self.hours.week[day]) > 1 else ""
            if span is not None:
                said = f"{_clock(span.opens_min)} – {_clock(span.closes_min)}{more}"
            else:
                said = self._word("staff.always_open" if open_ else "staff.closed_day")
            label.say(said)


def _clock(minutes: int) -> str:
    return f"{minutes // 60:02d}:{minutes % 60:02d}"
