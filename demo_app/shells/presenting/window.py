"""The presenter's window: the show runs here, and the audience sees what it is to see."""

import datetime
from collections.abc import Sequence
from functools import cached_property
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QSize, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from demo_app.content.cues.free import free_sheet
from demo_app.content.cues.records import Sheet
from demo_app.content.running import clock, walking
from demo_app.content.running.records import VOTING, Running, counts_of
from demo_app.content.venue import Venue
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Scene
from demo_app.shells.audience import AudienceWindow
from demo_app.shells.presenting import acts
from demo_app.shells.presenting.audience_side import AudienceSide
from demo_app.ui import show_words, theme, words
from demo_app.ui.action_strip import ActionStrip
from demo_app.ui.audience_view import AudienceView
from demo_app.ui.conductor import Conductor
from demo_app.ui.controls import Controls
from demo_app.ui.keymap import Context, Keymap
from demo_app.ui.language_ids import LANGUAGE, NAME, SELF
from demo_app.ui.playing import Session
from demo_app.ui.preferences import Preferences
from demo_app.ui.remote import TYPING, Remote
from demo_app.ui.request import Frame
from demo_app.ui.show_header import ShowHeader
from demo_app.ui.show_page import ShowPage
from demo_app.ui.stage_view import StageView
from demo_app.ui.worker import Worker

if TYPE_CHECKING:
    from demo_app.ui.pages.after import AfterPage
    from demo_app.ui.pages.before import BeforePage
    from demo_app.ui.pages.between import BetweenPage
    from demo_app.ui.pages.emergency import EmergencyPage
    from demo_app.ui.pages.screens import ScreensPage
    from demo_app.ui.pages.steps import StepsPage
    from demo_app.ui.teach_page import TeachPage

SECOND_MS = 500
LEAST = (960, 540)
"""Room that all words need, device-independent pixels; on a smaller screen the window scrolls."""
EMERGENCY = "emergency"
AGAIN_S = 5.0
"""A window that is closed while a show runs asks for it a second time within this."""


class _Column(QVBoxLayout):
    """A column that takes the height there is.

    A scroll area would give it the height that its wrapped words would like best, and push what
    stands below out of sight.
    """

    def hasHeightForWidth(self) -> bool:
        return False


class PresentWindow(QWidget):
    """One window for a show, or for scenes without a sheet.

    Parameters
    ----------
    scenes : sequence of Scene
        Those that are loaded already; others are taken from the catalogue.
    shown : str
        Id of the scene to begin with, where there is no sheet.
    sheet : Sheet or None
        None: every scene is a step, without times.
    running : Running or None
        A show that goes on.
    keymap : Keymap or None

    Attributes
    ----------
    page_changed : Signal(str)
        Another page is shown.
    ticked : Signal()
        Clocks go on.
    step_saved : Signal()
        What is shown is to be put down as a step of the sheet.
    """

    page_changed = Signal(str)
    ticked = Signal()
    step_saved = Signal()

    def __init__(
        self,
        scenes: Sequence[Scene],
        shown: str,
        sheet: Sheet | None = None,
        running: Running | None = None,
        keymap: Keymap | None = None,
    ) -> None:
        super().__init__()
        self.setWindowTitle(words.text("app"))
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._scenes = {scene.id: scene for scene in scenes}
        self._sizes: theme.Sizes | None = None
        self.free = sheet is None
        if sheet is None:
            sheet = free_sheet(scenes, named=words.title)
            running = walking.ready(sheet)
            running = walking.jump(running, sheet, 0.0, _place(sheet, shown))
        self.venue = Venue("")
        self.worker = Worker(self)
        self.worker.setObjectName("worker")
        self.worker.start()
        self.conductor = Conductor(
            sheet, self.worker, running, scene=self._scene_called, parent=self
        )
        # The worker begins with the model while the widgets are being made.
        self._notes = False
        self._emergency = False
        self._closing = -AGAIN_S
        try:
            self._build(keymap or Keymap())
        except BaseException:
            # A thread that outlives its window would take the process down with it.
            self.end()
            raise

    @property
    def session(self) -> Session | None:
        """What is shown."""
        return self.conductor.session

    @property
    def stage(self) -> StageView:
        """The stage in this window."""
        return self.show_page.view.stage

    @property
    def out(self) -> AudienceWindow | None:
        """The audience's own window, while it has one."""
        return self.side.out

    @property
    def views(self) -> tuple[AudienceView, ...]:
        """The views that are the audience's: this window's, or the projector's."""
        return self.side.views

    def _build(self, keymap: Keymap) -> None:
        self.remote = Remote(keymap, self._context, self)
        self.header = ShowHeader(self)
        self.header.set_free(self.free)
        self.show_page = ShowPage(self)
        self.controls = Controls(self)
        self.strip = ActionStrip(self)
        self.pages = QStackedWidget(self)
        # All other pages are made when they are first asked for: the picture comes first.
        self._made: dict[str, Any] = {"show": self.show_page}
        self.pages.addWidget(self.show_page)
        body = QHBoxLayout()
        body.setSpacing(0)
        body.addWidget(self.pages, 1)
        body.addWidget(self.controls)
        room = QWidget()
        room.setObjectName("page")
        room.setMinimumSize(*LEAST)
        box = _Column(room)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        box.addWidget(self.header)
        box.addLayout(body, 1)
        # A screen that is too small for it, such as 1280x720 at twice the size, scrolls.
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(room)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(area)
        self.controls.set_scenes(self._scenes.values(), self.conductor.step.scene)
        self._ticking = QTimer(self)
        self._ticking.setInterval(SECOND_MS)
        self._ticking.timeout.connect(self._tick)
        self.side = AudienceSide(self.conductor, self.show_page, self._read, self)
        self._connect()
        self.strip.set_keymap(keymap)
        self.remote.install()
        self._ticking.start()

    def _connect(self) -> None:
        conductor = self.conductor
        conductor.changed.connect(self.refresh)
        conductor.made.connect(self._take_session)
        conductor.staged.connect(self._show_session)
        conductor.told.connect(self.tell)
        self.remote.acted.connect(self.act)
        self.strip.chosen.connect(self.act)
        self.header.acted.connect(self.act)
        self.header.page_chosen.connect(self.show_page_called)
        self.header.notes_wanted.connect(self._set_notes)
        self.show_page.hands.counted.connect(conductor.vote)
        self.show_page.view.stages.tapped.connect(self._tapped)
        self.side.captioning.said.connect(self._describe)
        self.controls.save_asked.connect(self.save)
        self.controls.scene_chosen.connect(self.show_scene)
        self.controls.light.mode_chosen.connect(self.side.set_section_mode)
        self.controls.light.traces_chosen.connect(self.side.choose_traces)

    # Pages

    @cached_property
    def steps(self) -> "StepsPage":
        """The page with all steps."""
        from demo_app.ui.pages.steps import StepsPage

        page = StepsPage()
        page.list.chosen.connect(self._jump)
        page.fit_asked.connect(self.conductor.fit)
        page.whole_asked.connect(self.conductor.take_all)
        page.save_asked.connect(self.step_saved)
        page.list.set_sheet(self.conductor.sheet)
        self._add("steps", page)
        self._show_steps(page)
        return page

    @cached_property
    def before(self) -> "BeforePage":
        """The page for the time before a show."""
        from demo_app.ui.pages.before import BeforePage

        page = BeforePage()
        page.minutes_chosen.connect(self.cut)
        page.rehearsal_chosen.connect(self.conductor.rehearse)
        page.show_sheet(self.conductor.sheet)
        page.show_venue(self.venue, _today())
        self._add("before", page)
        return page

    @cached_property
    def between(self) -> "BetweenPage":
        """The page for the time between two shows."""
        from demo_app.ui.pages.between import BetweenPage

        page = BetweenPage()
        self._add("between", page)
        return page

    @cached_property
    def after(self) -> "AfterPage":
        """The page for the time after a show."""
        from demo_app.ui.pages.after import AfterPage

        page = AfterPage()
        self._add("after", page)
        return page

    @cached_property
    def screens(self) -> "ScreensPage":
        """The page about both windows."""
        from demo_app.ui.languages import ENGLISH_CODE, languages

        known = [(one.code, one.name) for one in languages() if one.code != ENGLISH_CODE]
        from demo_app.ui.pages.screens import ScreensPage

        page = ScreensPage(tuple(known))
        page.chosen.connect(self.set_preferences)
        page.card_asked.connect(self._show_card)
        page.show_preferences(self.side.preferences)
        self._add("screens", page)
        return page

    @cached_property
    def teach(self) -> "TeachPage":
        """The page on which keys are taught."""
        from demo_app.ui.teach_page import TeachPage

        page = TeachPage(self.remote)
        page.changed.connect(self.strip.set_keymap)
        self._add("keys", page)
        return page

    @cached_property
    def emergency(self) -> "EmergencyPage":
        """The presenter's emergency card."""
        from demo_app.ui.pages.emergency import EmergencyPage

        page = EmergencyPage()
        page.show_lines(show_words.emergency_lines(self.venue))
        self._add(EMERGENCY, page)
        return page

    def _page(self, name: str) -> Any:
        """The page called `name`, made if it is not there yet."""
        if name not in self._made:
            getattr(self, "teach" if name == "keys" else name)
        return self._made[name]

    def _add(self, name: str, page: Any) -> None:
        self._made[name] = page
        self.pages.addWidget(page)
        if self._sizes is not None:
            page.set_sizes(self._sizes)

    def _show_steps(self, page: "StepsPage") -> None:
        conductor, running, sheet = self.conductor, self.conductor.running, self.conductor.sheet
        page.list.show_run(sheet, running.place, running.kept, running.spent)
        rehearsed = clock.rehearsed(running, sheet, conductor.now()) if running.rehearsal else None
        page.show_proposal(sheet, rehearsed)

    def begin(self) -> None:
        """Show the first step; called once, when the window is about to be shown."""
        self.conductor.begin()

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(1280, 720)

    # What is shown

    def set_out(self, out: AudienceWindow | None) -> None:
        """The audience has a window of its own from now on, or none."""
        if out is not self.out:
            self.side.set_out(out)
            if "screens" in self._made:
                self.screens.card.setChecked(False)
            self._lay_out()
            self.refresh()

    def refresh(self) -> None:
        """Everything that depends on the running show."""
        conductor, running, sheet = self.conductor, self.conductor.running, self.conductor.sheet
        self.side.refresh(self.venue, emergency=self._emergency)
        question = conductor.question if running.phase in VOTING else None
        self.show_page.show_step(conductor.step, clock.coming(running, sheet))
        self.show_page.show_hands(question, counts_of(running, sheet))
        self.header.show_next(show_words.next_words(running, sheet))
        self.header.show_states(blank=running.blank, frozen=running.frozen, astray=conductor.astray)
        if "steps" in self._made:
            self._show_steps(self.steps)
        self._tick()

    def _tick(self) -> None:
        running, sheet = self.conductor.running, self.conductor.sheet
        self.ticked.emit()
        now = self.conductor.now()
        wall = datetime.datetime.fromtimestamp(now).strftime("%H:%M")
        if self.free:
            self.header.clock.show_times(wall, None, None)
            return
        found = clock.clock(running, sheet, now)
        left = found.left if found.left is not None else self.conductor.slot_s
        self.header.clock.show_times(wall, found.step_left, left, found.late)

    def _read(self) -> bool:
        """Whether the page is open on which what is seen is read."""
        return self.controls.numbers.isVisible()

    def _describe(self, said: str, frame: Frame) -> None:
        """What is seen, in words, for the presenter to read out."""
        if self.session is not None and words.said(LANGUAGE, NAME, SELF) != SELF:
            from demo_app.ui.languages import in_use

            said = in_use().spoken(self.session.scene, frame.settings, frame, frame.instrument)
        self.controls.numbers.show_words(said)

    def _take_session(self, session: Session) -> None:
        """A new session has been made: the controls are its from now on."""
        self.controls.set_session(session)
        if session.scene.id not in self._scenes:
            self.offer(session.scene)
        self.controls.choose_scene(session.scene.id)

    def _show_session(self, session: Session) -> None:
        self.side.show_session(session, str(self.controls.light.section.value()))

    def show_page_called(self, name: str) -> None:
        """Show one of the pages; what is typed in ends, so that all keys are the show's again."""
        typed = QApplication.focusWidget()
        chosen_by_key = typed is self.header.pages
        if isinstance(typed, TYPING) and self.isAncestorOf(typed) and not chosen_by_key:
            self.setFocus()
        self.pages.setCurrentWidget(self._page(name))
        if name != EMERGENCY:
            self.header.show_page(name)
        self.page_changed.emit(name)

    def tell(self, said: str) -> None:
        """One line for the presenter; the audience never sees it where it has its own window."""
        self.controls.tell(said)

    def show_sheet(self, sheet: Sheet, digest: str) -> None:
        """The sheet as it was saved just now; the show stays at its step."""
        if "steps" in self._made:
            self.steps.list.set_sheet(sheet)
        if "before" in self._made:
            self.before.show_sheet(sheet)
        self.conductor.reload(sheet, digest)

    def set_preferences(self, preferences: Preferences) -> None:
        """How both windows look, and how calm they are."""
        if "screens" in self._made:
            self.screens.show_preferences(preferences)
        self.conductor.set_calm(preferences.calm)
        self.side.set_preferences(preferences)
        self._size(again=True)
        self.refresh()

    def show_venue(self, venue: Venue) -> None:
        """The venue's own rules."""
        self.venue = venue
        if "before" in self._made:
            self.before.show_venue(venue, _today())
        if EMERGENCY in self._made:
            self.emergency.show_lines(show_words.emergency_lines(venue))
        self.refresh()

    # Scenes without a sheet

    def show_scene(self, name: str) -> None:
        """Start another scene."""
        if self.free:
            self._jump(_place(self.conductor.sheet, name))
        else:
            self.conductor.visit(name)

    def offer(self, scene: Scene) -> None:
        """Offer one more scene to choose from."""
        self._scenes[scene.id] = scene
        known = sorted(self._scenes.values(), key=words.title)
        shown = self.session.scene.id if self.session is not None else ""
        self.controls.set_scenes(known, shown)
        if self.free:
            sheet = free_sheet(known, named=words.title)
            if "steps" in self._made:
                self.steps.list.set_sheet(sheet)
            self.conductor.reload(sheet, "")

    def _scene_called(self, name: str) -> Scene:
        if name not in self._scenes:
            self._scenes[name] = catalogue.scene(name)
        return self._scenes[name]

    # Acts

    def act(self, name: str) -> None:
        """Do what a key, a button or the strip asks for."""
        self._place_strip()
        if not self.strip.take(name):
            acts.act(self, name)

    @property
    def emergency_on(self) -> bool:
        """Whether the audience reads the emergency card."""
        return self._emergency

    def set_emergency(self, on: bool) -> None:
        """A calm card for the audience, and the venue's own numbers and places here."""
        self._emergency = on
        self.show_page_called(EMERGENCY if on else "show")
        if on and self.session is not None:
            self.session.pause()
        self.refresh()

    def cut(self, minutes: float) -> None:
        """Leave out what does not fit into the time there is, from now."""
        cut = self.conductor.cut_to(minutes * 60)
        self.before.show_cut(self.conductor.sheet, cut)

    def save(self) -> None:
        """Save the picture shown, and say where."""
        acts.save(self)

    def recover(self, problem: str) -> None:
        """After a fault: start the scene again and say so; the audience sees nothing of it."""
        self.conductor.recover(problem)

    def _jump(self, place: int) -> None:
        acts.jump(self, place)

    def _tapped(self) -> None:
        if self.session is not None:
            self.session.toggle()

    def _show_card(self, on: bool) -> None:
        """The projector card on the audience's window, or what was there."""
        self.side.show_projector_card(self.venue, on)

    def _set_notes(self, notes: bool) -> None:
        self._notes = notes
        self._lay_out()

    def _context(self) -> Context:
        question = self.conductor.running.phase in VOTING and not self.free
        return Context(question=question, strip=self.strip.is_open)

    # Layout

    def _lay_out(self) -> None:
        two = self.out is not None
        self.header.notes.setVisible(not two and not self.free)
        self.show_page.set_mode(two=two, notes=(two or self._notes) and not self.free)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._size()

    def _size(self, *, again: bool = False) -> None:
        """Type sizes, spacing and colours of all parts."""
        look = self.side.preferences.look
        sizes = theme.Sizes.of(self.height(), look)
        if sizes != self._sizes or again:
            self._sizes = sizes
            self.setPalette(theme.palette(look))
            self.setStyleSheet(theme.style_sheet(sizes, look))
            for part in (self.header, self.controls, self.strip, *self._made.values()):
                part.set_sizes(sizes)
            self._lay_out()
        self._place_strip()

    def _place_strip(self) -> None:
        width = min(max(self.controls.width(), 340), self.width())
        top = self.header.height() if self.header.isVisible() else 0
        self.strip.setGeometry(self.width() - width, top, width, self.height() - top)

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: D102
        now = self.conductor.now()
        if event.spontaneous() and self.conductor.running.on and now > self._closing + AGAIN_S:
            # A stray Alt+F4 in front of 200 people ends nothing.
            self._closing = now
            self.tell(words.text("close.again", seconds=round(AGAIN_S)))
            event.ignore()
            return
        self.end()
        super().closeEvent(event)

    def end(self) -> None:
        """Stop timers and thread; may be called twice."""
        if hasattr(self, "_ticking"):
            self._ticking.stop()
            self.side.end()
            self.remote.uninstall()
            self.strip.close_strip()
        self.conductor.end()
        self.worker.end()


def _place(sheet: Sheet, scene: str) -> int:
    return next((place for place, step in enumerate(sheet.steps) if step.scene == scene), 0)


def _today() -> datetime.date:
    return datetime.date.today()
