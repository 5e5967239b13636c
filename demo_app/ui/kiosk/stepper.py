"""Controls for a visitor: each can be worked by taps alone, and by two switches."""

from collections.abc import Callable, Mapping
from typing import Protocol

from PySide6.QtCore import QRect, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSlider, QWidget

from demo_app.scenes.settings import Setting, Value
from demo_app.ui import theme
from demo_app.ui.kiosk.button import BigButton, keyed
from demo_app.ui.kiosk.measures import Measures, grid
from demo_app.ui.kiosk.words_label import WordsLabel

TAPS = 8
"""Taps from one end to the other at most: nobody counts on a wall."""
NOTCHES = 40


class Asked(Protocol):
    """What a control is made from: `demo_app.content.kiosk.records.Control`."""

    @property
    def low(self) -> float:
        """Lower bound."""

    @property
    def high(self) -> float:
        """Upper bound."""

    @property
    def step(self) -> float:
        """Step of numbers."""

    @property
    def choices(self) -> tuple[str, ...]:
        """Choices in the order of the buttons."""

    @property
    def label(self) -> str:
        """Name in the visitor's language."""

    @property
    def words(self) -> Mapping[str, str]:
        """Names of the choices."""


class Slide(QSlider):
    """A wide slider that goes to where it is touched, drawn so that a finger finds it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._measures = Measures(1280, 720, 4.0)
        self._shades = theme.shades()
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.PreventContextMenu)

    def fit(self, measures: Measures, look: theme.Look) -> None:
        """Sizes and colours."""
        self._measures, self._shades = measures, theme.shades(look)
        self.update()

    def minimumSizeHint(self) -> QSize:  # noqa: D102
        return QSize(self._measures.target * 2, self._measures.target)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        self._go(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        self._go(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: D102
        event.accept()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        use, half = self._shades, self._measures.target / 2
        middle, wide = self.height() / 2, max(self.width() - 2 * half, 1)
        share = (self.value() - self.minimum()) / max(self.maximum() - self.minimum(), 1)
        at = half + share * wide
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            for end, colour in ((half + wide, use.edge), (at, use.accent)):
                pen = QPen(QColor(colour), max(half / 3, 6))
                pen.setCapStyle(Qt.PenCapStyle.RoundCap)
                painter.setPen(pen)
                painter.drawLine(round(half), round(middle), round(end), round(middle))
            seen = self.hasFocus() and keyed(self)
            painter.setPen(QPen(QColor(use.focus if seen else use.stage), self._measures.ring))
            painter.setBrush(QColor(use.ink if not seen else use.accent))
            side = half - self._measures.ring
            painter.drawEllipse(
                QRect(round(at - side), round(middle - side), *[round(2 * side)] * 2)
            )

    def _go(self, event: QMouseEvent) -> None:
        if event.buttons() & Qt.MouseButton.LeftButton:
            half = self._measures.target / 2
            share = (event.position().x() - half) / max(self.width() - 2 * half, 1)
            span = self.maximum() - self.minimum()
            self.setValue(self.minimum() + round(min(max(share, 0.0), 1.0) * span))
        event.accept()


class Worked(QWidget):
    """Base of the controls.

    Attributes
    ----------
    chosen : Signal(str, object)
        Name of the setting and its new value; never sent by `show_value`.
    """

    chosen = Signal(str, object)

    def __init__(self, setting: Setting, asked: Asked, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setting, self.asked = setting, asked
        self.label = WordsLabel(self)
        self.label.say(asked.label)
        self._measures = Measures(1280, 720, 4.0)

    def fit(self, measures: Measures, look: theme.Look) -> None:
        """Sizes and colours."""
        self._measures = measures
        self.label.fit(measures, look)
        self.place()

    def needs(self, width: int) -> int:
        """Height that it needs in `width` pixels."""
        return round(1.4 * self._measures.least) + self.line(width) + self._measures.gap // 2

    def line(self, width: int) -> int:
        """Height of what is worked, in `width` pixels."""
        measures = self._measures
        return measures.target if measures.large else max(measures.target, measures.base // 17)

    def show_value(self, value: Value) -> None:
        """Show a value without sending it."""
        raise NotImplementedError

    def place(self) -> None:
        """Put its parts where they belong."""
        raise NotImplementedError

    def resizeEvent(self, event: object) -> None:  # noqa: D102
        self.place()

    def _split(self) -> tuple[QRect, QRect]:
        """Room of the label, and of what is worked."""
        high = max(self.height() - self.line(self.width()), round(1.4 * self._measures.least))
        high = min(high, round(1.6 * self._measures.body))
        wide = self.width()
        return QRect(0, 0, wide, high), QRect(0, high, wide, max(self.height() - high, 1))


class NumberStepper(Worked):
    """Minus, a slider, plus: a drag, or taps.

    Parameters
    ----------
    setting, asked, parent
    more, less : str
        Names of the buttons, for a screen reader.
    quantity : callable
        A number in words, with its unit.
    """

    def __init__(
        self,
        setting: Setting,
        asked: Asked,
        parent: QWidget | None,
        *,
        more: str,
        less: str,
        quantity: Callable[[float, str], str],
    ) -> None:
        super().__init__(setting, asked, parent)
        self._quantity = quantity
        self._step = max(asked.step, (asked.high - asked.low) / NOTCHES)
        self.minus, self.plus = BigButton(self, sign="−"), BigButton(self, sign="+")
        self.slide = Slide(self)
        self.slide.setRange(0, max(round((asked.high - asked.low) / self._step), 1))
        self._tap = max(round(self.slide.maximum() / TAPS), 1)
        self.slide.setSingleStep(1)
        self.slide.setPageStep(self._tap)
        self.minus.setAccessibleName(less)
        self.plus.setAccessibleName(more)
        self.minus.clicked.connect(lambda: self._by(-self._tap))
        self.plus.clicked.connect(lambda: self._by(self._tap))
        self.slide.valueChanged.connect(self._slid)
        self.show_value(setting.default)

    @property
    def value(self) -> float:
        """The value shown."""
        return min(self.asked.low + self.slide.value() * self._step, self.asked.high)

    def fit(self, measures: Measures, look: theme.Look) -> None:  # noqa: D102
        for part in (self.minus, self.plus, self.slide):
            part.fit(measures, look)
        super().fit(measures, look)

    def show_value(self, value: Value) -> None:  # noqa: D102
        with QSignalBlocker(self.slide):
            self.slide.setValue(round((float(value) - self.asked.low) / self._step))
        self._say()

    def place(self) -> None:  # noqa: D102
        over, room = self._split()
        self.label.setGeometry(over)
        side = max(self._measures.target, min(room.height(), round(1.4 * self._measures.target)))
        gap = self._measures.gap
        self.minus.setGeometry(room.x(), room.y(), side, room.height())
        self.plus.setGeometry(room.right() - side + 1, room.y(), side, room.height())
        middle = room.adjusted(side + gap, 0, -side - gap, 0)
        self.slide.setGeometry(middle)

    def _by(self, notches: int) -> None:
        self.slide.setValue(self.slide.value() + notches)

    def _slid(self, _place: int) -> None:
        self._say()
        self.chosen.emit(self.setting.name, self.value)

    def _say(self) -> None:
        said = self._quantity(self.value, self.setting.unit)
        self.label.say(f"{self.asked.label}: {said}")
        self.slide.setAccessibleName(self.asked.label)
        self.slide.setAccessibleDescription(said)
        for button in (self.minus, self.plus):
            button.setAccessibleDescription(said)


class ChoiceRow(Worked):
    """One button for each choice, side by side; the chosen one has a tick.

    Parameters
    ----------
    setting, asked, parent
    usual : mapping
        Words for "yes" and "no" where the control has none of its own.
    """

    def __init__(
        self,
        setting: Setting,
        asked: Asked,
        parent: QWidget | None = None,
        *,
        usual: Mapping[str, str],
    ) -> None:
        super().__init__(setting, asked, parent)
        flag = isinstance(setting.default, bool)
        names = ("yes", "no") if flag else asked.choices
        self._values: dict[str, Value] = {name: (name == "yes" if flag else name) for name in names}
        self.buttons: dict[str, BigButton] = {}
        for name in names:
            button = BigButton(self)
            button.setCheckable(True)
            said = asked.words.get(name) or usual.get(name, name)
            button.say(said)
            button.setAccessibleName(f"{asked.label}: {said}")
            button.clicked.connect(lambda _on=False, name=name: self._pick(name))
            self.buttons[name] = button
        self.show_value(setting.default)

    def line(self, width: int) -> int:  # noqa: D102
        rows = -(-len(self.buttons) // self._columns(width))
        words = 1.3 if rows > 1 else 2.5
        high = max(self._measures.target, round(words * self._measures.least))
        return rows * high + (rows - 1) * self._measures.gap

    def _columns(self, width: int) -> int:
        """As many as have room for their longest word."""
        longest = max((button.longest_word() for button in self.buttons.values()), default=1)
        return max(min(len(self.buttons), width // (longest + self._measures.gap)), 1)

    def fit(self, measures: Measures, look: theme.Look) -> None:  # noqa: D102
        for button in self.buttons.values():
            button.fit(measures, look)
        super().fit(measures, look)

    def show_value(self, value: Value) -> None:  # noqa: D102
        for name, button in self.buttons.items():
            button.setChecked(self._values[name] == value)

    def place(self) -> None:  # noqa: D102
        over, room = self._split()
        self.label.setGeometry(over)
        columns = self._columns(self.width())
        boxes = grid(room, len(self.buttons), columns, self._measures.gap)
        for button, box in zip(self.buttons.values(), boxes, strict=True):
            button.setGeometry(box)

    def _pick(self, name: str) -> None:
        self.show_value(self._values[name])
        self.chosen.emit(self.setting.name, self._values[name])
