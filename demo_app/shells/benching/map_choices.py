"""What a map is of: scene, two settings with their ranges, the reading, and the verdict."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDoubleSpinBox, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from demo_app.content.sweep import Vary
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import Setting, settings_of
from demo_app.ui import words
from demo_app.ui.benching.figures import plain
from demo_app.ui.fields import Choice, WheelGuard
from demo_app.ui.language_ids import scene_context

FIRST = "toughen"
AXES = {"toughen": ("thickness_mm", "jet_W_m2K")}
"""Settings that are varied at first, by scene; else its first two numbers."""
READS = {"toughen": ("surface_MPa", "grade")}
"""Reading and verdict at first, by scene."""
POINTS, MOST_POINTS = 12, 60


class AxisChoice(QWidget):
    """A setting, from where to where, and how many values.

    Attributes
    ----------
    changed : Signal()
    """

    changed = Signal()

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._title = title
        self.setting = Choice(self)
        self._known: dict[str, Setting] = {}
        self.low, self.high, self.count = (QDoubleSpinBox(self) for _ in range(3))
        self.count.setDecimals(0)
        self.count.setRange(2, MOST_POINTS)
        self.count.setValue(POINTS)
        self._guard = WheelGuard(self)
        label = plain(self)
        label.setText(title)
        label.setBuddy(self.setting)
        row = QHBoxLayout()
        row.setSpacing(6)
        for name, box in (("from", self.low), ("to", self.high), ("points", self.count)):
            said = words.text(f"bench.map.{name}")
            column = QVBoxLayout()
            column.setSpacing(0)
            above = QLabel(said, self)
            above.setObjectName("quiet")
            above.setBuddy(box)
            column.addWidget(above)
            column.addWidget(box)
            row.addLayout(column, 1)
            box.setKeyboardTracking(False)
            box.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            box.lineEdit().setTextMargins(4, 0, 6, 0)
            box.setStyleSheet("QDoubleSpinBox { min-width: 50px; }")
            box.setAccessibleName(f"{title}: {said}")
            box.installEventFilter(self._guard)
            box.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            box.valueChanged.connect(self.changed)
        self.setting.setAccessibleName(title)
        self.setting.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setting.installEventFilter(self._guard)
        self.setting.activated.connect(self._range)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(2)
        whole.addWidget(label)
        whole.addWidget(self.setting)
        whole.addLayout(row)

    def offer(self, scene: Scene, shown: str) -> None:
        """Offer a scene's numbers."""
        numbers = [one for one in settings_of(scene.settings) if isinstance(one.default, float)]
        self._known = {one.name: one for one in numbers}
        self.setting.clear()
        context = scene_context(scene)
        for one in numbers:
            unit, label = words.unit(one.unit), words.label(context, one)
            self.setting.addItem(f"{label} ({unit})" if unit else label, one.name)
        self.setting.setCurrentIndex(self.setting.findData(shown))
        self._range()

    @property
    def name(self) -> str:
        """The setting that varies."""
        return str(self.setting.currentData())

    def title(self) -> str:
        """The setting's label with its unit."""
        return self.setting.currentText()

    def vary(self) -> Vary:
        """The setting and its values, evenly spaced."""
        count = round(self.count.value())
        low, high = self.low.value(), self.high.value()
        return Vary(self.name, tuple(low + (high - low) * k / (count - 1) for k in range(count)))

    def _range(self) -> None:
        one = self._known[self.name]
        decimals = max(len(f"{n:.6f}".rstrip("0").split(".")[1]) for n in (one.step, one.low))
        for box, value in ((self.low, one.low), (self.high, one.high)):
            box.blockSignals(True)
            box.setDecimals(decimals)
            box.setRange(one.low, one.high)
            box.setSingleStep(one.step)
            box.setValue(value)
            box.blockSignals(False)
        self.changed.emit()


class MapChoices(QWidget):
    """All choices of a map.

    Attributes
    ----------
    scene_chosen : Signal(str)
    changed : Signal()
        Something else was chosen: the map that is shown is another one's.
    """

    scene_chosen = Signal(str)
    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.scene, self.reading, self.verdict = (Choice(self) for _ in range(3))
        self.across = AxisChoice(words.text("bench.map.across"), self)
        self.up = AxisChoice(words.text("bench.map.up"), self)
        self._guard = WheelGuard(self)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        named = {"scene": self.scene, "reading": self.reading, "verdict": self.verdict}
        for name, choice in named.items():
            said = words.text("scene" if name == "scene" else f"bench.map.{name}")
            label = plain(self)
            label.setText(said)
            label.setBuddy(choice)
            choice.setAccessibleName(said)
            choice.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            choice.installEventFilter(self._guard)
            box.addWidget(label)
            box.addWidget(choice)
            if name == "scene":
                box.addWidget(self.across)
                box.addWidget(self.up)
        for name in catalogue.ids():
            self.scene.addItem(words.scene_name(name), name)
        self.scene.setCurrentIndex(self.scene.findData(FIRST))
        self.scene.activated.connect(lambda _i: self.scene_chosen.emit(self.scene.currentData()))
        for choice in (self.reading, self.verdict):
            choice.activated.connect(lambda _i: self.changed.emit())
        for axis in (self.across, self.up):
            axis.changed.connect(self.changed)

    def offer(self, scene: Scene) -> None:
        """Offer a scene's settings and readings."""
        numbers = [
            one.name for one in settings_of(scene.settings) if isinstance(one.default, float)
        ]
        first = AXES.get(scene.id, (numbers[0], numbers[1]))
        reads = READS.get(scene.id, (scene.readings[0].name, _first_verdict(scene)))
        self.blockSignals(True)
        for axis, name in zip((self.across, self.up), first, strict=True):
            axis.offer(scene, name)
        for choice in (self.reading, self.verdict):
            choice.clear()
        self.verdict.addItem(words.text("bench.map.no_verdict"), "")
        context = scene_context(scene)
        for one in scene.readings:
            unit, label = words.unit(one.unit), words.label(context, one)
            self.reading.addItem(f"{label} ({unit})" if unit else label, one.name)
            if not one.unit:
                self.verdict.addItem(label, one.name)
        self.reading.setCurrentIndex(self.reading.findData(reads[0]))
        self.verdict.setCurrentIndex(max(self.verdict.findData(reads[1]), 0))
        self.blockSignals(False)
        self.changed.emit()

    def reads(self) -> tuple[str, str]:
        """The reading, and the verdict whose border is drawn or ""."""
        return str(self.reading.currentData()), str(self.verdict.currentData())


def _first_verdict(scene: Scene) -> str:
    names = [one.name for one in scene.readings if not one.unit]
    return next((one for one in names if one == "breaks" or one.endswith("_breaks")), "")
