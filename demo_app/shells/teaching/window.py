"""The teacher's window: a lesson runs here, and nothing but the lesson can be reached."""

from functools import partial

from PySide6.QtCore import QSize, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from demo_app.base.errors import InputError
from demo_app.content.cues.records import Step as Shown
from demo_app.content.lessons.allowance import Allowance, admitted, allowance
from demo_app.content.lessons.as_sheet import Taught, taught
from demo_app.content.lessons.counted import votes_of
from demo_app.content.lessons.records import Lesson, Step
from demo_app.content.lessons.votes import Votes
from demo_app.content.running import clock
from demo_app.content.running.records import DRIVE, RESULT, VOTING, Running, counts_of
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Scene
from demo_app.shells.audience import AudienceWindow
from demo_app.shells.teaching import acts, laying, showing, tasks
from demo_app.shells.teaching.class_side import ClassSide
from demo_app.shells.teaching.group import Group
from demo_app.shells.teaching.task_bar import TaskBar
from demo_app.ui import theme, words
from demo_app.ui.action_strip import ActionStrip
from demo_app.ui.audience_view import AudienceView
from demo_app.ui.conductor import Conductor
from demo_app.ui.keymap import Context, Keymap, label
from demo_app.ui.pages.screens import ScreensPage
from demo_app.ui.playing import Session
from demo_app.ui.preferences import Preferences
from demo_app.ui.remote import Remote
from demo_app.ui.show_header import ShowHeader
from demo_app.ui.show_page import ShowPage
from demo_app.ui.stage_view import StageView
from demo_app.ui.teaching import lesson_panel
from demo_app.ui.teaching.bound_session import BoundSession
from demo_app.ui.teaching.handout_page import HandoutPage
from demo_app.ui.teaching.lesson_panel import LessonPanel
from demo_app.ui.teaching.votes_page import VotesPage
from demo_app.ui.worker import Worker

SECOND_MS = 500
AGAIN_S = 5.0
PAGES = ("show", "votes", "handout", "screens")


class OutreachWindow(QWidget):
    """One window for a lesson.

    Parameters
    ----------
    lesson : Lesson
    keymap : Keymap or None

    Attributes
    ----------
    page_changed : Signal(str)
        Another page is shown.

    Raises
    ------
    InputError
        If the lesson holds anything that its profile does not allow.
    """

    page_changed = Signal(str)

    def __init__(self, lesson: Lesson, keymap: Keymap | None = None) -> None:
        super().__init__()
        self.setWindowTitle(words.text("app"))
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.taught: Taught = admitted(taught(lesson))
        self.unkept = False
        self.sizes: theme.Sizes | None = None
        self.notes = self._emergency = False
        self._closing = -AGAIN_S
        self._before: tuple[str, str] | None = None
        self._right: dict[str, int] = {}
        self.worker = Worker(self)
        self.worker.setObjectName("worker")
        self.worker.start()
        self.conductor = Conductor(
            self.taught.sheet,
            self.worker,
            scene=self._scene_called,
            session=self._session_for,
            parent=self,
        )
        self.group = Group(lambda: self.session, self)
        try:
            self._build(acts.taught_keys(keymap or Keymap()))
        except BaseException:
            # A thread that outlives its window would take the process down with it.
            self.end()
            raise

    # What there is

    @property
    def running(self) -> Running:
        """Where the lesson is."""
        return self.conductor.running

    @property
    def session(self) -> BoundSession | None:
        """What is shown."""
        session = self.conductor.session
        return session if isinstance(session, BoundSession) else None

    @property
    def step(self) -> Step | None:
        """The lesson's step that is shown; None at the exit question."""
        return self.taught.step(self.running)

    @property
    def stage(self) -> StageView:
        """The stage in this window."""
        return self.show_page.view.stage

    @property
    def views(self) -> tuple[AudienceView, ...]:
        """The views that are the class's: this window's, or the projector's."""
        return self.side.views

    @property
    def teaching(self) -> bool:
        """Whether the stage is seen, and the teacher works it."""
        return self.mode == lesson_panel.TEACH

    @property
    def emergency_on(self) -> bool:
        """Whether the class reads the emergency card."""
        return self._emergency

    @property
    def votes(self) -> Votes:
        """Hands counted so far, before and after."""
        return votes_of(self.taught, self.running, self._right)

    @property
    def allowance(self) -> Allowance:
        """What may be shown now."""
        return allowance(self.taught, self.running)

    def _scene_called(self, name: str) -> Scene:
        if name != self.conductor.step.scene:
            raise InputError(
                f"the scene '{name}' is not part of this lesson here",
                place="lesson",
                remedy="go on with the lesson",
            )
        return catalogue.scene(name)

    @property
    def scene(self) -> Scene | None:
        """The step's scene."""
        name = self.conductor.step.scene
        return self._scene_called(name) if name else None

    def _session_for(self, scene: Scene, worker: Worker, parent: QWidget) -> Session:
        return BoundSession(scene, worker, parent=parent, allowed=lambda: self.allowance)

    # Widgets

    def _build(self, keymap: Keymap) -> None:
        self.remote = Remote(keymap, self._context, self)
        self.header = ShowHeader(self)
        self.header.set_pages(PAGES)
        self.bar = TaskBar(self)
        self.show_page = ShowPage(self)
        self.votes_page = VotesPage()
        self.handout = HandoutPage(self.taught.lesson)
        self.screens = ScreensPage()
        self.panel = LessonPanel(self)
        self.strip = ActionStrip(self)
        self.pages = QStackedWidget(self)
        self.named = {
            "show": self.show_page,
            "votes": self.votes_page,
            "handout": self.handout,
            "screens": self.screens,
        }
        for page in self.named.values():
            self.pages.addWidget(page)
        body = QHBoxLayout()
        body.setSpacing(0)
        body.addWidget(self.pages, 1)
        body.addWidget(self.panel)
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        for widget in (self.header, self.bar):
            box.addWidget(widget)
        box.addLayout(body, 1)
        self._ticking = QTimer(self)
        self._ticking.setInterval(SECOND_MS)
        self._ticking.timeout.connect(self._tick)
        self.side = ClassSide(self.conductor, self.show_page, lambda: False, self)
        self.mode = lesson_panel.NOTHING
        self._connect()
        self.strip.set_keymap(keymap)
        self.remote.install()
        self._ticking.start()

    def _connect(self) -> None:
        conductor, panel = self.conductor, self.panel
        conductor.changed.connect(self.refresh)
        conductor.made.connect(self._take_session)
        conductor.staged.connect(self._show_session)
        conductor.told.connect(self.tell)
        self.remote.acted.connect(self.act)
        self.strip.chosen.connect(self.act)
        self.header.acted.connect(self.act)
        self.header.page_chosen.connect(self.show_page_called)
        self.header.notes_wanted.connect(self._set_notes)
        self.bar.left.connect(conductor.next_)
        self.show_page.view.stages.tapped.connect(self._tapped)
        panel.hands.counted.connect(conductor.vote)
        panel.save_asked.connect(self._save)
        panel.light.mode_chosen.connect(self.side.set_section_mode)
        panel.light.traces_chosen.connect(self.side.choose_traces)
        panel.tries.asked.connect(partial(tasks.try_, self))
        panel.tries.fresh.connect(partial(tasks.begin_afresh, self))
        panel.tries.hinted.connect(partial(tasks.hint, self))
        self.group.changed.connect(self._show)
        self.group.failed.connect(partial(tasks.tell_failed, self))
        self.screens.chosen.connect(self.set_preferences)
        self.screens.card.hide()

    def begin(self) -> None:
        """Show the first step; called once, when the window is about to be shown."""
        self.conductor.begin()
        self.refresh()

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(1280, 720)

    # What is shown

    def set_out(self, out: AudienceWindow | None) -> None:
        """The class has a window of its own from now on, or none."""
        if out is not self.side.out:
            self.side.set_out(out)
            laying.lay_out(self)
            self.refresh()

    def refresh(self) -> None:
        """Everything that depends on the running lesson."""
        conductor, running, sheet = self.conductor, self.running, self.conductor.sheet
        here, before = (running.id, running.phase), self._before
        if here != before:
            self._before = here
            tasks.moved(self, before)
        if running.phase == RESULT and conductor.outcome is not None and self.step is not None:
            self._right[self.step.id] = conductor.outcome.right
        shown: Shown = conductor.step
        self.show_page.show_step(shown, clock.coming(running, sheet))
        self.header.show_states(blank=running.blank, frozen=running.frozen, astray=conductor.astray)
        self.panel.hands.show_counts(counts_of(running, sheet))
        self.votes_page.show_votes(self.taught.lesson, self.votes)
        self.group.look()
        showing.show(self)
        showing.show_clock(self)

    def _show(self) -> None:
        showing.show(self)

    def _tick(self) -> None:
        showing.show_clock(self)

    def _take_session(self, session: BoundSession) -> None:
        self.panel.set_session(session)
        session.framed.connect(self._look)

    def _look(self, _frame: object) -> None:
        self.group.look()

    def _show_session(self, session: BoundSession) -> None:
        self.side.show_session(session, str(self.panel.light.section.value()))
        showing.show(self)

    def show_page_called(self, name: str) -> None:
        """Show one of the pages; while pupils drive there is only the stage."""
        if name not in self.named or (self.running.phase == DRIVE and name != "show"):
            return
        self.pages.setCurrentWidget(self.named[name])
        self.header.show_page(name)
        self.page_changed.emit(name)

    def tell(self, said: str) -> None:
        """One line for the teacher."""
        self.panel.tell(said)

    def set_preferences(self, preferences: Preferences) -> None:
        """How both windows look, and how calm they are."""
        self.screens.show_preferences(preferences)
        self.conductor.set_calm(preferences.calm)
        self.side.set_preferences(preferences)
        laying.size(self, again=True)
        self.refresh()

    # Acts

    def act(self, name: str) -> None:
        """Do what a key, a button or the strip asks for."""
        laying.place_strip(self)
        if name.startswith("strip.") or (name == "strip" and self.strip.is_open):
            self.strip.take(name)
        else:
            acts.act(self, name)

    def open_strip(self) -> None:
        """The strip of actions, with those that a lesson has."""
        self.strip.open([(name, label(name)) for name in acts.STRIP])

    def set_emergency(self, on: bool) -> None:
        """A calm card for the class, and the run stands still."""
        self._emergency = on
        if on and self.session is not None:
            self.session.pause()
        self.refresh()

    def recover(self, problem: str) -> None:
        """After a fault: start the scene again and say so."""
        self.conductor.recover(problem)
        self.tell(problem)

    def _save(self) -> None:
        acts.save(self)

    def _tapped(self) -> None:
        if self.session is not None:
            self.session.toggle()

    def _set_notes(self, notes: bool) -> None:
        self.notes = notes
        laying.lay_out(self)

    def _context(self) -> Context:
        return Context(question=self.running.phase in VOTING, strip=self.strip.is_open)

    # Layout

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        laying.size(self)
        showing.show_clock(self)

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: D102
        now, running = self.conductor.now(), self.running
        last = running.place == len(self.conductor.sheet.steps) - 1
        asks = (running.on and not last) or self.unkept
        if event.spontaneous() and asks and now > self._closing + AGAIN_S:
            self._closing = now
            name = "votes.close" if self.unkept else "close.again"
            self.tell(words.text(name, seconds=round(AGAIN_S)))
            event.ignore()
            return
        self.end()
        super().closeEvent(event)

    def end(self) -> None:
        """Stop timers and threads; may be called twice."""
        if hasattr(self, "_ticking"):
            self._ticking.stop()
            self.side.end()
            self.remote.uninstall()
            self.strip.close_strip()
        self.group.end()
        self.conductor.end()
        self.worker.end()
