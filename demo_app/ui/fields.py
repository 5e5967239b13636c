"""One control for one setting: made from what the setting says of itself."""

import functools
import math
from typing import Any

from PySide6.QtCore import (
    QEvent,
    QObject,
    QPoint,
    QPointF,
    QRect,
    QRectF,
    QSignalBlocker,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QSizePolicy,
    QSlider,
    QStyledItemDelegate,
    QVBoxLayout,
    QWidget,
)

from demo_app.scenes.settings import Setting, Value
from demo_app.ui import theme, words

MOST_TICKS = 1000


class WheelGuard(QObject):
    """Lets the wheel scroll the page unless the control under it has the focus."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: D102
        if (
            event.type() == QEvent.Type.Wheel
            and isinstance(watched, QWidget)
            and not watched.hasFocus()
        ):
            event.ignore()
            return True
        return super().eventFilter(watched, event)


class Tick(QCheckBox):
    """Check box whose frame and tick are seen on a dark panel.

    Parameters
    ----------
    said : str
    parent : QWidget or None
    wraps : bool
        Whether a long line goes on below, so that its whole length does not widen the page.
    """

    def __init__(self, said: str, parent: QWidget | None = None, *, wraps: bool = False) -> None:
        super().__init__(said, parent)
        self._wraps = wraps
        if wraps:
            policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
            policy.setHeightForWidth(True)
            self.setSizePolicy(policy)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        side = self._side()
        mirrored = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        left = self.width() - side - 2 if mirrored else 2
        box = QRectF(left, (self.height() - side) / 2, side, side)
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            on, ready = self.isChecked(), self.isEnabled()
            frame = theme.INK if self.hasFocus() else theme.DIM if ready else theme.EDGE
            painter.setPen(QPen(QColor(frame), 2))
            painter.setBrush(QColor(theme.ACCENT if on and ready else theme.STAGE))
            painter.drawRoundedRect(box, 5, 5)
            if on:
                painter.setPen(QPen(QColor("#06110e" if ready else theme.EDGE), side * 0.14))
                corners = ((0.22, 0.52), (0.43, 0.74), (0.80, 0.28))
                painter.drawPolyline(
                    [QPointF(box.x() + a * side, box.y() + b * side) for a, b in corners]
                )
            painter.setPen(QColor(theme.INK if ready else "#8b949d"))
            gap = self._words_left()
            words_box = QRectF(0 if mirrored else gap, 0, self.width() - gap, self.height())
            flow = Qt.TextFlag.TextWordWrap if self._wraps else Qt.TextFlag.TextSingleLine
            painter.drawText(words_box, Qt.AlignmentFlag.AlignVCenter | flow, self.text())

    def heightForWidth(self, width: int) -> int:  # noqa: D102
        if not self._wraps:
            return super().heightForWidth(width)
        room = QRect(0, 0, max(width - self._words_left(), 1), 100_000)
        needed = self.fontMetrics().boundingRect(room, Qt.TextFlag.TextWordWrap, self.text())
        return max(needed.height() + 4, super().sizeHint().height())

    def minimumSizeHint(self) -> QSize:  # noqa: D102
        hint = super().minimumSizeHint()
        if not self._wraps:
            return hint
        return QSize(self._words_left() + 10 * self.fontMetrics().averageCharWidth(), hint.height())

    def hitButton(self, pos: QPoint) -> bool:  # noqa: D102
        return self.rect().contains(pos)

    def _side(self) -> float:
        """Side of the frame, pixels."""
        return self.fontMetrics().height() * 1.25

    def _words_left(self) -> int:
        """Where the words begin, pixels."""
        return round(self._side()) + 12


class Choice(QComboBox):
    """List of words with an arrow of its own, as the style sheet takes Fusion's away."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # The delegate that a box comes with does not heed the style sheet's height of its rows.
        self.setItemDelegate(QStyledItemDelegate(self))
        # A click chooses and leaves the keyboard to the show; only Tab gives it to the list.
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: D102
        super().paintEvent(event)
        half = self.fontMetrics().height() * 0.3
        x, y = self.width() - 3.5 * half, self.height() / 2
        if self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
            x = self.width() - x
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(theme.INK if self.isEnabled() else theme.EDGE), 2))
            painter.drawPolyline(
                [
                    QPointF(x - half, y - half / 2),
                    QPointF(x, y + half / 2),
                    QPointF(x + half, y - half / 2),
                ]
            )


class Control(QWidget):
    """Base of the controls: a setting, a value, and a signal when a person changes it.

    Parameters
    ----------
    setting : Setting
    parent : QWidget or None
    context : str
        Of the translations of the setting's words; "": they are said as they are.

    Attributes
    ----------
    chosen : Signal(str, object)
        Name and new value; never sent by `show_value`.
    """

    chosen = Signal(str, object)

    def __init__(self, setting: Setting, parent: QWidget | None = None, context: str = "") -> None:
        super().__init__(parent)
        self.setting, self.context = setting, context

    @property
    def label(self) -> str:
        """Name of the setting, in the language in use."""
        return words.label(self.context, self.setting)

    def value(self) -> Value:
        """The value shown."""
        raise NotImplementedError

    def show_value(self, value: Value) -> None:
        """Show a value without sending it."""
        raise NotImplementedError

    def _describe(self, *widgets: QWidget) -> None:
        setting = self.setting
        help_words = words.help_of(self.context, setting)
        if not isinstance(setting.default, (bool, str)):
            low = words.quantity(setting.low, setting.unit)
            high = words.quantity(setting.high, setting.unit)
            help_words = f"{help_words} ({low} … {high})".strip()
        for widget in widgets:
            widget.setToolTip(help_words)
            widget.setAccessibleName(self.label)
            widget.setAccessibleDescription(help_words)


class NumberControl(Control):
    """Slider for the hand, number box with the unit for the exact."""

    def __init__(self, setting: Setting, parent: QWidget | None = None, context: str = "") -> None:
        super().__init__(setting, parent, context)
        self._step = max(setting.step, (setting.high - setting.low) / MOST_TICKS)
        self.slider = QSlider(Qt.Orientation.Horizontal, self)
        self.slider.setRange(0, max(round((setting.high - setting.low) / self._step), 1))
        # As charts and pictures do, a slider grows to the right whichever way the words run.
        self.slider.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self.slider.setPageStep(max(self.slider.maximum() // 10, 1))
        self.box = QDoubleSpinBox(self)
        self.box.setDecimals(_decimals(setting))
        self.box.setRange(setting.low, setting.high)
        self.box.setSingleStep(setting.step)
        self.box.setSuffix(_suffix(setting.unit))
        self.box.setKeyboardTracking(False)
        # The arrows are hidden by the style sheet: `NoButtons` leaves a styled box without room.
        self.box.lineEdit().setTextMargins(6, 0, 8, 0)
        self.box.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        label = QLabel(self.label, self)
        label.setBuddy(self.box)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.slider, 1)
        row.addWidget(self.box)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        box.addWidget(label)
        box.addLayout(row)
        self._describe(label, self.slider, self.box)
        self._guard = WheelGuard(self)
        for widget in (self.slider, self.box):
            widget.installEventFilter(self._guard)
        # A dragged slider must not take the arrow keys; one reached by Tab may.
        self.slider.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.box.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.box.lineEdit().returnPressed.connect(self.box.clearFocus)
        self.slider.valueChanged.connect(self._slid)
        self.box.valueChanged.connect(self._typed)
        self.show_value(setting.default)

    def value(self) -> float:  # noqa: D102
        return float(self.box.value())

    def show_value(self, value: Value) -> None:  # noqa: D102
        number = float(value)
        if not self.box.hasFocus() or not math.isclose(self.box.value(), number, abs_tol=1e-9):
            with QSignalBlocker(self.box):
                self.box.setValue(number)
        with QSignalBlocker(self.slider):
            self.slider.setValue(round((number - self.setting.low) / self._step))

    def _slid(self, place: int) -> None:
        value = min(self.setting.low + place * self._step, self.setting.high)
        with QSignalBlocker(self.box):
            self.box.setValue(value)
        self.chosen.emit(self.setting.name, self.box.value())

    def _typed(self, value: float) -> None:
        with QSignalBlocker(self.slider):
            self.slider.setValue(round((value - self.setting.low) / self._step))
        self.chosen.emit(self.setting.name, value)


class ChoiceControl(Control):
    """List of words."""

    def __init__(self, setting: Setting, parent: QWidget | None = None, context: str = "") -> None:
        super().__init__(setting, parent, context)
        self.combo = Choice(self)
        for name in setting.choices:
            self.combo.addItem(words.choice_of(context, setting, name), name)
        label = QLabel(self.label, self)
        label.setBuddy(self.combo)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(2)
        box.addWidget(label)
        box.addWidget(self.combo)
        self._describe(label, self.combo)
        self._guard = WheelGuard(self)
        self.combo.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.combo.installEventFilter(self._guard)
        self.show_value(setting.default)
        self.combo.activated.connect(self._picked)

    def value(self) -> str:  # noqa: D102
        return str(self.combo.currentData())

    def show_value(self, value: Value) -> None:  # noqa: D102
        self.combo.setCurrentIndex(self.setting.choices.index(str(value)))

    def _picked(self, _index: int) -> None:
        self.chosen.emit(self.setting.name, self.value())


class SeveralControl(Control):
    """Check boxes, of which only so many may be ticked; what is ticked later comes later."""

    def __init__(self, setting: Setting, parent: QWidget | None = None, context: str = "") -> None:
        super().__init__(setting, parent, context)
        self.checks = {
            name: Tick(words.choice_of(context, setting, name), self) for name in setting.choices
        }
        self._taken: list[str] = []
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(2)
        label = QLabel(self.label, self)
        grid.addWidget(label, 0, 0, 1, 2)
        for place, (name, check) in enumerate(self.checks.items()):
            grid.addWidget(check, 1 + place // 2, place % 2)
            check.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            check.clicked.connect(functools.partial(self._clicked, name))
        self._describe(label, *self.checks.values())
        for check in self.checks.values():
            check.setAccessibleName(f"{self.label}: {check.text()}")
        self.show_value(setting.default)

    def value(self) -> str:  # noqa: D102
        return ",".join(self._taken)

    def show_value(self, value: Value) -> None:  # noqa: D102
        self._taken = str(value).split(",")
        full = len(self._taken) >= self.setting.most
        for name, check in self.checks.items():
            taken = name in self._taken
            check.setChecked(taken)
            # The last one stays, and no more than so many can be added.
            check.setEnabled(len(self._taken) > 1 if taken else not full)

    def _clicked(self, name: str) -> None:
        others = [one for one in self._taken if one != name]
        ticked = self.checks[name].isChecked()
        self.show_value(",".join([*others, name] if ticked else others))
        self.chosen.emit(self.setting.name, self.value())


class FlagControl(Control):
    """Check box."""

    def __init__(self, setting: Setting, parent: QWidget | None = None, context: str = "") -> None:
        super().__init__(setting, parent, context)
        self.check = Tick(self.label, self)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(self.check)
        self._describe(self.check)
        self.check.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.show_value(setting.default)
        self.check.clicked.connect(self._clicked)

    def value(self) -> bool:  # noqa: D102
        return self.check.isChecked()

    def show_value(self, value: Value) -> None:  # noqa: D102
        self.check.setChecked(bool(value))

    def _clicked(self, checked: bool) -> None:
        self.chosen.emit(self.setting.name, checked)


def control_for(setting: Setting, parent: QWidget | None = None, context: str = "") -> Control:
    """The control that fits a setting's kind; `context` is that of its words' translations."""
    if isinstance(setting.default, bool):
        return FlagControl(setting, parent, context)
    if isinstance(setting.default, str):
        return (SeveralControl if setting.most else ChoiceControl)(setting, parent, context)
    return NumberControl(setting, parent, context)


def _decimals(setting: Setting) -> int:
    """Decimals that show the step, the ends and the default exactly."""
    numbers: tuple[Any, ...] = (setting.step, setting.low, setting.high, setting.default)
    return max(len(f"{float(n):.6f}".rstrip("0").split(".")[1]) for n in numbers)


def _suffix(name: str) -> str:
    shown = words.unit(name)
    return shown if shown in {"", "°"} else f" {shown}"
