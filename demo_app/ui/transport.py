"""Play, pause, steps, reset, the scene's own buttons, time and speed."""

import itertools
from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSizePolicy,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from demo_app.scenes.scene import Action
from demo_app.ui import theme, words
from demo_app.ui.engine import BREAK
from demo_app.ui.icons import icon
from demo_app.ui.language_ids import scene_context
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame

SPEEDS = (
    *(1 / 50, 1 / 20, 1 / 10, 1 / 5, 1 / 2),
    *(1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0),
)
SCRUB_TICKS = 2000
GAP = 6
ABREAST = 2
"""The scene's own buttons in one row."""


def button(name: str, parent: QWidget, *, sign: str = "", said: bool = True) -> QPushButton:
    """Push button with words, help and accessible name from one place."""
    made = QPushButton(words.text(name) if said else "", parent)
    made.setToolTip(words.text(f"{name}.help"))
    made.setAccessibleName(words.text(name))
    made.setAccessibleDescription(words.text(f"{name}.help"))
    made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    if sign:
        made.setIcon(icon(sign, theme.INK))
        made.setIconSize(QSize(20, 20))
    return made


class ActionButton(QPushButton):
    """One of the scene's own buttons.

    Attributes
    ----------
    asked : Signal(Action)
    """

    asked = Signal(object)

    def __init__(self, action: Action, parent: QWidget | None = None, context: str = "") -> None:
        super().__init__(words.label(context, action), parent)
        self.action = action
        self.setAccessibleName(self.text())
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.clicked.connect(self._ask)

    def _ask(self) -> None:
        self.asked.emit(self.action)


class Transport(QWidget):
    """The row of buttons and the two sliders that every scene has.

    Attributes
    ----------
    save_asked : Signal()
    """

    save_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session: Session | None = None
        self.play = button("play", self)
        self.play.setObjectName("main")
        self.play.setIconSize(QSize(20, 20))
        self.back = button("back", self, sign="back", said=False)
        self.forward = button("forward", self, sign="forward", said=False)
        self.reset = button("reset", self, sign="reset", said=False)
        self.brighten = button("brighten", self, sign="brighten", said=False)
        self.brighten.setCheckable(True)
        self.hold = button("hold", self)
        self.hold.setCheckable(True)
        self.replay = button("replay", self)
        self.save = button("save", self)
        self.scrub = QSlider(Qt.Orientation.Horizontal, self)
        self.scrub.setRange(0, SCRUB_TICKS)
        self.scrub.setToolTip(words.text("time.help"))
        self.scrub.setAccessibleName(words.text("time"))
        self.speed = QSlider(Qt.Orientation.Horizontal, self)
        self.speed.setRange(0, len(SPEEDS) - 1)
        self.speed.setPageStep(1)
        self.speed.setToolTip(words.text("speed.help"))
        self.speed.setAccessibleName(words.text("speed"))
        for slider in (self.scrub, self.speed):
            slider.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            slider.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self.time_label = QLabel(self)
        self.speed_label = QLabel(self)
        self.speed_label.setWordWrap(True)
        self._actions = QGridLayout()
        self._buttons: list[ActionButton] = []
        self._lay_out()
        self.play.clicked.connect(self._toggle)
        self.back.clicked.connect(self._back)
        self.forward.clicked.connect(self._forward)
        self.reset.clicked.connect(self._reset)
        self.brighten.clicked.connect(self._brighten)
        self.hold.clicked.connect(self._hold)
        self.replay.clicked.connect(self._replay)
        self.save.clicked.connect(self.save_asked)
        self.scrub.valueChanged.connect(self._scrub)
        self.speed.valueChanged.connect(self._speed)

    def _lay_out(self) -> None:
        first = QHBoxLayout()
        first.setSpacing(6)
        first.addWidget(self.play, 3)
        for narrow in (self.back, self.forward, self.reset, self.brighten):
            first.addWidget(narrow, 1)
        sliders = QGridLayout()
        sliders.setVerticalSpacing(0)
        sliders.setHorizontalSpacing(8)
        sliders.addWidget(self.time_label, 0, 0)
        sliders.addWidget(self.scrub, 0, 1)
        sliders.addWidget(self.speed_label, 1, 0)
        sliders.addWidget(self.speed, 1, 1)
        sliders.setColumnStretch(1, 1)
        self._last = QGridLayout()
        self._last.setSpacing(GAP)
        for wide in (self.hold, self.replay, self.save):
            wide.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._place_last(3)
        self._actions.setSpacing(6)
        for column in range(ABREAST):
            self._actions.setColumnStretch(column, 1)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(6)
        box.addLayout(first)
        box.addLayout(self._actions)
        box.addLayout(sliders)
        box.addLayout(self._last)

    def _place_last(self, columns: int) -> None:
        """Hold, replay and save in one row, or the last one below where words are long."""
        for column in range(3):
            self._last.setColumnStretch(column, 1 if column < columns else 0)
        for place, wide in enumerate((self.hold, self.replay, self.save)):
            self._last.removeWidget(wide)
            row, column = divmod(place, columns)
            span = 2 if columns == 2 and place == 2 else 1
            self._last.addWidget(wide, row, column, 1, span)

    def _arrange(self) -> None:
        wides = (self.hold, self.replay, self.save)
        room = (self.width() - 2 * GAP) // 3
        wide = max(button.sizeHint().width() for button in wides)
        self._place_last(3 if wide <= room or room <= 0 else 2)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._arrange()

    def set_session(self, session: Session) -> None:
        """Work another session."""
        if self._session is not None:
            self._session.changed.disconnect(self.refresh)
            self._session.framed.disconnect(self._show_time)
        self._session = session
        self.replay.setVisible(BREAK in {reading.name for reading in session.scene.readings})
        self.offer(session.scene.actions)
        session.changed.connect(self.refresh)
        session.framed.connect(self._show_time)
        self.refresh()

    def offer(self, actions: Sequence[Action]) -> None:
        """Which of the scene's own buttons there are."""
        if tuple(actions) == tuple(old.action for old in self._buttons):
            return
        for old in self._buttons:
            self._actions.removeWidget(old)
            old.hide()
            old.deleteLater()
        context = "" if self._session is None else scene_context(self._session.scene)
        self._buttons = [ActionButton(action, self, context) for action in actions]
        for place, new in enumerate(self._buttons):
            new.asked.connect(self._act)
            row, column = divmod(place, ABREAST)
            last = place == len(self._buttons) - 1
            self._actions.addWidget(new, row, column, 1, ABREAST - column if last else 1)
            new.show()
        for one, following in itertools.pairwise(self._in_order()):
            self.setTabOrder(one, following)

    def _in_order(self) -> list[QWidget]:
        """What Tab goes through, row by row."""
        first = [self.play, self.back, self.forward, self.reset, self.brighten]
        last = [self.scrub, self.speed, self.hold, self.replay, self.save]
        return [*first, *self._buttons, *last]

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Keep room for the longest time and speed, so that the sliders stand still."""
        metrics = self.time_label.fontMetrics()
        longest = max(metrics.horizontalAdvance(words.speed(s)) for s in SPEEDS)
        self.speed_label.setFixedWidth(longest + 2)
        self._arrange()

    def refresh(self) -> None:
        """Show what the session says."""
        session = self._session
        if session is None:
            return
        running = session.playing
        self.play.setText(words.text("pause" if running else "play"))
        self.play.setIcon(icon("pause" if running else "play", "#06110e"))
        self.play.setAccessibleName(self.play.text())
        self.brighten.setChecked(session.instrument.gain > 1)
        self.hold.setChecked(session.held is not None)
        self.hold.setText(words.text("hold" if session.held is None else "hold.off"))
        self.replay.setEnabled(session.break_s is not None)
        with QSignalBlocker(self.speed):
            self.speed.setValue(_nearest(session.speed))
        self._show_time(session.frame)

    def _show_time(self, frame: Frame | None) -> None:
        session = self._session
        if session is None:
            return
        said = words.clock(session.time_s)
        self.time_label.setText(f"{words.text('time')}  {said}")
        speed = words.speed(session.speed)
        if session.behind:
            real = words.text("speed.fast", times=words.number(session.real_speed, 2))
            speed = words.text("speed.behind", speed=speed, real=real)
        if speed != self.speed_label.text():
            self.speed_label.setText(speed)
        if not self.scrub.isSliderDown():
            with QSignalBlocker(self.scrub):
                self.scrub.setValue(round(SCRUB_TICKS * session.time_s / self._length()))

    def _length(self) -> float:
        session = self._session
        assert session is not None
        return max(session.end_s, session.time_s, 1e-9)

    def _act(self, action: Action) -> None:
        if self._session is not None:
            self._session.act(action)

    def _toggle(self) -> None:
        if self._session is not None:
            self._session.toggle()

    def _back(self) -> None:
        if self._session is not None:
            self._session.step(-1)

    def _forward(self) -> None:
        if self._session is not None:
            self._session.step(1)

    def _reset(self) -> None:
        if self._session is not None:
            self._session.reset()

    def _brighten(self) -> None:
        if self._session is not None:
            self._session.brighten()

    def _hold(self) -> None:
        if self._session is not None:
            self._session.hold()

    def _replay(self) -> None:
        if self._session is not None:
            self._session.replay_break()

    def _scrub(self, place: int) -> None:
        if self._session is not None:
            self._session.scrub(place / SCRUB_TICKS * self._length())

    def _speed(self, place: int) -> None:
        if self._session is not None:
            self._session.set_speed(SPEEDS[place])


def _nearest(speed: float) -> int:
    """Place of the stated speed that is nearest by ratio."""
    return min(range(len(SPEEDS)), key=lambda i: max(SPEEDS[i] / speed, speed / SPEEDS[i]))
