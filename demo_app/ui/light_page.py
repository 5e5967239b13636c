"""The instrument's controls: polarizers, plates, lamp, gain; and what section and chart show."""

from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from demo_app.optics.instrument import GAIN_RANGE, TINT_PLATE_NM
from demo_app.optics.light_data import LAMPS
from demo_app.scenes.settings import Setting
from demo_app.ui import words
from demo_app.ui.chart_view import groups
from demo_app.ui.fields import ChoiceControl, Control, control_for
from demo_app.ui.language_ids import VIEW, scene_context
from demo_app.ui.playing import Session

MODES = ("temperature", "stress")


class LightPage(QWidget):
    """Turns polarizers and puts plates in; chooses the section's colours and the chart's curves.

    Attributes
    ----------
    mode_chosen : Signal(str)
        "temperature" or "stress".
    traces_chosen : Signal(tuple of Reading)
    """

    mode_chosen = Signal(str)
    traces_chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session: Session | None = None
        self.controls: dict[str, Control] = {}
        self._box = QVBoxLayout(self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(6)
        for setting in _settings():
            control = control_for(setting, self, VIEW)
            control.chosen.connect(self._changed)
            self.controls[setting.name] = control
            self._box.addWidget(control)
        self.section = self._choice("section", MODES)
        self.section.chosen.connect(self._choose_mode)
        self._box.addWidget(self.section)
        self.chart: ChoiceControl | None = None

    def _choice(self, name: str, choices: tuple[str, ...]) -> ChoiceControl:
        label, help_words = words.text(f"{name}.choice"), words.text(f"{name}.choice.help")
        setting = Setting(name, label, "", choices[0], choices=choices, help=help_words)
        return ChoiceControl(setting, self, VIEW)

    def set_session(self, session: Session) -> None:
        """Work another session's light."""
        if self._session is not None:
            self._session.changed.disconnect(self.refresh)
        self._session = session
        session.changed.connect(self.refresh)
        # Told to nobody: the stage that is seen may still be another session's.
        self.section.show_value(session.scene.section_shows)
        if self.chart is not None:
            self._box.removeWidget(self.chart)
            self.chart.hide()
            self.chart.deleteLater()
            self.chart = None
        found = groups(session.scene.traces)
        if len(found) > 1:
            names = tuple(", ".join(t.label for t in group) for group in found)
            self.chart = self._choice("chart", names)
            context = scene_context(session.scene)
            for place, group in enumerate(found):
                said = ", ".join(words.label(context, trace) for trace in group)
                self.chart.combo.setItemText(place, said)
            self.chart.chosen.connect(self._choose_traces)
            self._box.addWidget(self.chart)
        self.refresh()

    def refresh(self) -> None:
        """Show the session's instrument."""
        session = self._session
        if session is None:
            return
        light = session.light
        self.controls["turn"].show_value(light.polarizer_deg % 180)
        self.controls["parallel"].show_value(abs(light.analyser_deg) < 1e-9)
        self.controls["quarter"].show_value(light.quarter_wave)
        self.controls["tint"].show_value(light.tint_plate_nm > 0)
        self.controls["lamp"].show_value(light.lamp)
        self.controls["gain"].show_value(light.gain)

    def _changed(self, name: str, value: Any) -> None:
        if self._session is not None:
            self._session.set_light(**light_values(name, value))

    def _choose_mode(self, _name: str, mode: str) -> None:
        self.mode_chosen.emit(mode)

    def _choose_traces(self, _name: str, chosen: str) -> None:
        if self._session is not None and self.chart is not None:
            place = self.chart.setting.choices.index(chosen)
            self.traces_chosen.emit(groups(self._session.scene.traces)[place])


def light_values(name: str, value: Any) -> dict[str, Any]:
    """What a control of this page changes in the instrument."""
    known: dict[str, dict[str, Any]] = {
        "turn": {"polarizer_deg": value},
        "parallel": {"analyser_deg": 0.0 if value else 90.0},
        "quarter": {"quarter_wave": value},
        "tint": {"tint_plate_nm": TINT_PLATE_NM if value else 0.0},
        "lamp": {"lamp": value},
        "gain": {"gain": value},
    }
    return known[name]


def _settings() -> tuple[Setting, ...]:
    def named(name: str, unit: str, default: Any, **rest: Any) -> Setting:
        label, help_words = words.text(f"light.{name}"), words.text(f"light.{name}.help")
        return Setting(name, label, unit, default, help=help_words, **rest)

    low, high = GAIN_RANGE
    return (
        named("turn", "deg", 45.0, low=0.0, high=180.0),
        named("parallel", "", False),
        named("quarter", "", False),
        named("tint", "", False),
        named("lamp", "", "daylight", choices=tuple(LAMPS)),
        named("gain", "", 1.0, low=low, high=high),
    )
