"""The panel beside the stage in a lesson: hands, or the run, or what pupils may change."""

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from demo_app.content.cues.records import Question
from demo_app.content.lessons.records import Bound, Step
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import Setting, settings_of
from demo_app.ui import theme, words
from demo_app.ui.fields import Control, control_for
from demo_app.ui.hands_panel import HandsPanel
from demo_app.ui.language_ids import scene_context
from demo_app.ui.light_page import LightPage
from demo_app.ui.pages.parts import Page, label
from demo_app.ui.request import Frame
from demo_app.ui.teaching.bound_session import BoundSession
from demo_app.ui.teaching.tries_view import TriesView
from demo_app.ui.transport import Transport

TEACH, HANDS, DRIVE, NOTHING = "teach", "hands", "drive", "nothing"
"""What the panel is for: the teacher, counting, the pupils, or a step without a scene."""


class LessonPanel(QWidget):
    """Only what the lesson allows at this moment; there is no list of scenes and no free setting.

    Attributes
    ----------
    save_asked : Signal()
    """

    save_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self._session: BoundSession | None = None
        self._mode = NOTHING
        self._built: tuple[str, tuple[Bound, ...]] = ("", ())
        self._question: Question | None = None
        self.controls: dict[str, Control] = {}
        self.line = label("", "alert", self)
        self.line.hide()
        self.transport = Transport(self)
        self.transport.save_asked.connect(self.save_asked)
        self.tries = TriesView()
        self.hands = HandsPanel()
        self.light = LightPage()
        self.may = label(words.text("outreach.may.title"), "title")
        self._settings = QVBoxLayout()
        self.page = Page(self)
        for widget in (self.tries, self.may):
            self.page.box.addWidget(widget)
        self.page.box.addLayout(self._settings)
        self.page.box.addWidget(self.hands)
        self.page.box.addWidget(self.light)
        self.page.box.addStretch(1)
        self._box = QVBoxLayout(self)
        self._box.addWidget(self.line)
        self._box.addWidget(self.transport)
        self._box.addWidget(self.page, 1)
        self.show_mode(NOTHING)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing and width from the window's height."""
        self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, sizes.gap)
        self._box.setSpacing(sizes.gap)
        self.setFixedWidth(min(max(round(sizes.panel * 26), 330), 520))
        for part in (self.transport, self.tries, self.hands, self.page):
            part.set_sizes(sizes)
        self.page.box.setContentsMargins(0, 0, 0, 0)
        self._settings.setSpacing(sizes.gap)

    def set_session(self, session: BoundSession) -> None:
        """Control another session."""
        if self._session is not None:
            self._session.changed.disconnect(self.refresh)
            self._session.framed.disconnect(self._offer)
            self._session.told.disconnect(self.tell)
        self._session = session
        self.transport.set_session(session)
        self.transport.offer(())
        self.light.set_session(session)
        session.changed.connect(self.refresh)
        session.framed.connect(self._offer)
        session.told.connect(self.tell)
        self.tell("")

    def show_mode(
        self, mode: str, step: Step | None = None, question: Question | None = None
    ) -> None:
        """Show what belongs to a part of a lesson.

        Parameters
        ----------
        mode : str
            `TEACH`, `HANDS`, `DRIVE` or `NOTHING`.
        step : Step or None
            The lesson's step, for its bounds and challenge.
        question : Question or None
            What hands are counted for.
        """
        self._mode = mode
        driven = mode == DRIVE
        challenge = step.challenge if driven and step is not None else None
        self.transport.setVisible(mode in (TEACH, DRIVE))
        for extra in (self.transport.save, self.transport.hold, self.transport.brighten):
            extra.setVisible(not driven)
        self.light.setVisible(mode == TEACH)
        self.hands.setVisible(mode == HANDS)
        self.tries.setVisible(challenge is not None)
        self.may.setVisible(driven)
        if challenge is not None:
            self.tries.show_hint(bool(challenge.hint))
        if mode == HANDS and question is not None and question is not self._question:
            self._question = question
            self.hands.set_question(question)
        self._build(step.bounds if driven and step is not None else ())
        self.refresh()
        self._offer()

    def tell(self, said: str) -> None:
        """One line for whoever sits here; empty takes it away."""
        self.line.setText(said)
        self.line.setVisible(bool(said))

    def refresh(self) -> None:
        """Show the session's settings."""
        session = self._session
        if session is not None:
            for name, control in self.controls.items():
                control.show_value(getattr(session.settings, name))

    def _build(self, bounds: tuple[Bound, ...]) -> None:
        session = self._session
        if session is None or (session.scene.id, bounds) == self._built:
            return
        for old in self.controls.values():
            self._settings.removeWidget(old)
            old.hide()
            old.deleteLater()
        known = {one.name: one for one in settings_of(session.scene.settings)}
        if not all(one.name in known for one in bounds):
            return  # Its own session is still to come.
        self._built = (session.scene.id, bounds)
        context = scene_context(session.scene)
        self.controls = {
            one.name: control_for(bounded(known[one.name], one), None, context) for one in bounds
        }
        for control in self.controls.values():
            control.chosen.connect(self._choose)
            self._settings.addWidget(control)
            control.show()

    def _choose(self, name: str, value: object) -> None:
        if self._session is not None:
            self._session.set_setting(name, value)

    def _offer(self, _frame: Frame | None = None) -> None:
        """Those of the scene's own buttons that the lesson allows at this instant."""
        session = self._session
        if session is None or session.playing:
            return
        offered = [one for one in session.scene.actions if session.admits(one)]
        self.transport.offer(offered if self._mode in (TEACH, DRIVE) else ())


def bounded(setting: Setting, bound: Bound) -> Setting:
    """A setting that offers no more than a lesson's bounds."""
    if isinstance(setting.default, bool):
        return setting
    if bound.choices:
        choices = tuple(str(one) for one in bound.choices)
        return replace(setting, choices=choices, most=0, default=choices[0])
    default = min(max(float(setting.default), bound.low), bound.high)
    return replace(setting, low=bound.low, high=bound.high, default=default)


def labels_of(scene: Scene | None, bounds: Sequence[Bound]) -> tuple[str, ...]:
    """Names of what may be changed, as they stand on the screen."""
    if scene is None:
        return ()
    context = scene_context(scene)
    known = {one.name: words.label(context, one) for one in settings_of(scene.settings)}
    return tuple(known[one.name] for one in bounds)
