"""The inputs of a question: controls made from its record, each with a line for what is wrong."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QScroller, QVBoxLayout, QWidget

from demo_app.scenes.settings import Setting, settings_of
from demo_app.ui.fields import Control, NumberControl, control_for


@dataclass(frozen=True)
class Only:
    """An input that means something only where another one has one of some values."""

    name: str
    where: str
    values: tuple[Any, ...]


class QuestionForm(QScrollArea):
    """All inputs below each other.

    Parameters
    ----------
    record : type
        Frozen dataclass of the question.
    only : sequence of Only
        Inputs that are hidden while they mean nothing.
    parent : QWidget or None
    context : str
        Of the translations of the record's words.

    Attributes
    ----------
    changed : Signal()
        A person has changed an input.
    """

    changed = Signal()

    def __init__(
        self,
        record: type,
        only: Sequence[Only] = (),
        parent: QWidget | None = None,
        context: str = "",
    ) -> None:
        super().__init__(parent)
        self._context = context
        self._only = tuple(only)
        self.controls: dict[str, Control] = {}
        self.lines: dict[str, QLabel] = {}
        body = QWidget()
        body.setObjectName("page")
        self._box = QVBoxLayout(body)
        self.general = alert_line(body)
        self._box.addWidget(self.general)
        for setting in settings_of(record):
            self._add(setting, body)
        self._box.addStretch(1)
        self._body = body
        self.setWidget(body)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        QScroller.grabGesture(self.viewport(), QScroller.ScrollerGestureType.TouchGesture)
        self._show_what_counts()

    def _add(self, setting: Setting, body: QWidget) -> None:
        control, line = control_for(setting, body, self._context), alert_line(body)
        if isinstance(control, NumberControl):
            # Enter answers; the focus stays where the next Tab starts from.
            control.box.lineEdit().returnPressed.disconnect(control.box.clearFocus)
            control.box.lineEdit().returnPressed.connect(control.box.selectAll)
        control.chosen.connect(self._chosen)
        self.controls[setting.name], self.lines[setting.name] = control, line
        self._box.addWidget(control)
        self._box.addWidget(line)

    def set_gap(self, gap: int) -> None:
        """Space between the controls, pixels."""
        self._box.setContentsMargins(gap, gap // 2, gap, gap)
        self._box.setSpacing(max(gap // 2, 4))

    def insert_top(self, widget: QWidget) -> None:
        """Something of a page's own above all inputs."""
        self._box.insertWidget(1, widget)
        widget.show()

    def hide_inputs(self, names: Collection[str]) -> None:
        """Hide inputs that are put in elsewhere; all others are shown."""
        for name, control in self.controls.items():
            control.setVisible(name not in names)

    def values(self) -> dict[str, Any]:
        """Values of all inputs by name, as they stand there."""
        return {name: control.value() for name, control in self.controls.items()}

    def set_values(self, values: Mapping[str, Any]) -> None:
        """Show values as if a person had put them in."""
        for name, value in values.items():
            self.controls[name].show_value(value)
        self._show_what_counts()
        self.changed.emit()

    def show_problem(self, place: str, said: str) -> None:
        """One plain line beside the input that is to blame, or above all if none is shown."""
        self.clear_problem()
        control = self.controls.get(place)
        line = self.general
        if control is not None and not control.isHidden():
            line = self.lines[place]
        line.setText(said)
        line.show()
        self._box.activate()
        self.ensureWidgetVisible(line, 0, 40)

    def clear_problem(self) -> None:
        """Nothing is wrong."""
        for line in (self.general, *self.lines.values()):
            line.hide()
            line.clear()

    @property
    def problem(self) -> str:
        """The line that is shown, or ""."""
        return next((one.text() for one in (self.general, *self.lines.values()) if one.text()), "")

    def focus_first(self) -> None:
        """Give the keyboard to the first input."""
        for control in self.controls.values():
            for widget in control.findChildren(QWidget):
                if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and not control.isHidden():
                    widget.setFocus(Qt.FocusReason.ShortcutFocusReason)
                    return

    def focusNextPrevChild(self, next: bool) -> bool:  # noqa: D102
        moved = super().focusNextPrevChild(next)
        focused = self._body.focusWidget()
        if focused is not None:
            self.ensureWidgetVisible(focused, 0, 60)
        return moved

    def _chosen(self, _name: str, _value: object) -> None:
        self._show_what_counts()
        self.changed.emit()

    def _show_what_counts(self) -> None:
        values = self.values()
        hidden = {one.name for one in self._only if values[one.where] not in one.values}
        for name, control in self.controls.items():
            control.setVisible(name not in hidden)


def alert_line(parent: QWidget) -> QLabel:
    """A line for what is wrong, hidden until there is something."""
    made = QLabel(parent)
    made.setObjectName("alert")
    made.setWordWrap(True)
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.hide()
    return made
