"""A step's panel: what is asked, what to do, what to look for, why."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import QRect, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import Spoken
from demo_app.scenes.settings import Value
from demo_app.ui import theme
from demo_app.ui.kiosk.button import MAIN, PLAIN, BigButton
from demo_app.ui.kiosk.measures import grid
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.stepper import Worked
from demo_app.ui.kiosk.words_label import LEFT, WordsLabel

MOST_ANSWERS = 6


class Progress(QWidget):
    """How far a step has come, as so many filled bars of four."""

    COUNT = 4

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.place_ = 0
        self._look = theme.Look()

    def fit(self, _measures: object, look: theme.Look) -> None:
        """Colours."""
        self._look = look

    def show_place(self, place: int) -> None:
        """From 0; what is past is filled too."""
        self.place_ = place
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        use = theme.shades(self._look)
        gap = 6
        wide = (self.width() - gap * (self.COUNT - 1)) / self.COUNT
        with QPainter(self) as painter:
            for place in range(self.COUNT):
                done = place <= self.place_
                high = self.height() if done else self.height() / 3
                box = QRectF(place * (wide + gap), (self.height() - high) / 2, wide, high)
                painter.fillRect(box, QColor(use.accent if done else use.edge))


class StepPage(Page):
    """Heading, a few sentences, controls, and the buttons that lead on.

    Attributes
    ----------
    answered : Signal(int)
        Place of the answer that was chosen.
    acted : Signal(str)
        One of the names given to `show_acts`.
    chosen : Signal(str, object)
        A setting and its new value.
    """

    answered = Signal(int)
    acted = Signal(str)
    chosen = Signal(str, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.progress = Progress(self)
        self.title = WordsLabel(self, "body", LEFT)
        self.heading = WordsLabel(self, "title", LEFT, bold=True)
        self.lines = [WordsLabel(self, "title" if n == 0 else "body", LEFT) for n in range(3)]
        self.answers = [BigButton(self) for _ in range(MOST_ANSWERS)]
        for place, button in enumerate(self.answers):
            button.clicked.connect(lambda _on=False, place=place: self.answered.emit(place))
        self.acts: dict[str, BigButton] = {}
        self.controls: list[Worked] = []
        self._count = 0
        self._spare = [BigButton(self) for _ in range(3)]
        for place, button in enumerate(self._spare):
            button.clicked.connect(lambda _on=False, place=place: self._act(place))

    def speak(self, spoken: Spoken) -> None:  # noqa: D102
        super().speak(spoken)

    def show_words(self, place: int, title: str, heading: str, lines: Sequence[str]) -> None:
        """How far the step has come, its name, a heading and up to three sentences."""
        self.progress.show_place(place)
        self.title.say(title)
        self.heading.say(heading)
        for number, label in enumerate(self.lines):
            said = lines[number] if number < len(lines) else ""
            label.say(said)
            label.setVisible(bool(said))

    def show_answers(self, answers: Sequence[str]) -> None:
        """Answers to choose from; none: another phase."""
        self._count = len(answers)
        for number, button in enumerate(self.answers):
            button.setVisible(number < self._count)
            if number < self._count:
                button.say(answers[number])

    def show_acts(self, acts: Sequence[tuple[str, str]], main: str = "") -> None:
        """Buttons that lead on: names, each with its words; `main` is the one to press next."""
        self.acts = {}
        for button, act in zip(self._spare, [*acts, None, None, None], strict=False):
            button.setVisible(act is not None)
            if act is not None:
                name, said = act
                button.kind = MAIN if name == main else PLAIN
                button.say(said)
                button.update()
                self.acts[name] = button

    def show_controls(self, make: Callable[[QWidget], Sequence[Worked]] | None) -> None:
        """Controls, made with this page as their parent; None: none."""
        for control in self.controls:
            control.hide()
            control.deleteLater()
        self.controls = list(make(self)) if make is not None else []
        for control in self.controls:
            control.fit(self.measures, self.look)
            control.chosen.connect(self.chosen)
            control.show()
        self._order()
        self.place()

    def show_value(self, name: str, value: Value) -> None:
        """The value that a setting has by now."""
        for control in self.controls:
            if control.setting.name == name:
                control.show_value(value)

    def first(self) -> QWidget | None:  # noqa: D102
        if self._count:
            return self.answers[0]
        if self.controls:
            return self.controls[0].nextInFocusChain()
        return next((one for one in self.acts.values() if one.kind == MAIN), None) or next(
            iter(self.acts.values()), None
        )

    def summary(self) -> str:  # noqa: D102
        labels = (self.title, self.heading, *self.lines)
        return " ".join(one.text() for one in labels if one.text())

    def place(self) -> None:  # noqa: D102
        measures, gap, width = self.measures, self.measures.gap, self.width()
        low = self.height()
        boxes: list[QRect] = []
        button = max(measures.target, round(2.5 * measures.least) + 4 * measures.ring)
        if self._count:
            high = min(round(1.3 * button), (low * 6 // 10 - gap) // self._count - gap)
            high = max(high, measures.target)
            room = high * self._count + gap * (self._count - 1)
            boxes = grid(QRect(0, low - room, width, room), self._count, 1, gap)
            for one, box in zip(self.answers, boxes, strict=False):
                one.setGeometry(box)
            low -= room + gap
        elif self.acts:
            many = len(self.acts)
            high = button if self.controls else round(1.3 * button)
            boxes = grid(QRect(0, low - high, width, high), many, many, gap)
            for one, box in zip(self.acts.values(), boxes, strict=True):
                one.setGeometry(box)
            low -= high + gap
        for control in reversed(self.controls):
            high = control.needs(width)
            control.setGeometry(0, low - high, width, high)
            low -= high + gap // 2
        self._place_words(low)

    def _place_words(self, low: int) -> None:
        measures, gap, width = self.measures, self.measures.gap, self.width()
        thick = max(gap // 2, 6)
        self.progress.setGeometry(0, 0, width, thick)
        top = thick + gap // 2
        # Large words need the room that the step's name would take.
        self.title.setVisible(not measures.large)
        heads: tuple[tuple[WordsLabel, int], ...] = (
            (self.title, measures.body),
            (self.heading, measures.title),
        )
        self.heading.setVisible(not (measures.large and self.controls))
        if measures.large:
            heads = () if self.controls else heads[1:]
        for label, size in heads:
            label.setGeometry(0, top, width, round(1.4 * size))
            top += round(1.4 * size)
        shown = [label for label in self.lines if label.text()]
        room = max(low - top, 1)
        needs = [label.needs(width) + gap for label in shown]
        share = min(room / max(sum(needs), 1), 1.0)
        for label, need in zip(shown, needs, strict=True):
            label.setGeometry(0, top, width, round(need * share))
            top += round(need * share)

    def _act(self, place: int) -> None:
        names = list(self.acts)
        if place < len(names):
            self.acted.emit(names[place])

    def _order(self) -> None:
        """Answers, controls, buttons: in the order in which they stand."""
        before: QWidget = self.answers[-1]
        for control in self.controls:
            for part in control.findChildren(QWidget):
                if part.focusPolicy() != Qt.FocusPolicy.NoFocus:
                    QWidget.setTabOrder(before, part)
                    before = part
        for button in self._spare:
            QWidget.setTabOrder(before, button)
            before = button
