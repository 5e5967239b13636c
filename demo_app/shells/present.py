"""The presenter's window: the stage, and the controls beside it."""

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QObject, QSize, QStandardPaths, Qt, QTimer
from PySide6.QtGui import QCloseEvent, QKeyEvent, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QWidget

from demo_app.base.process import release_collector
from demo_app.scenes import catalogue
from demo_app.scenes.scene import Scene
from demo_app.ui import application, theme, words
from demo_app.ui.controls import Controls
from demo_app.ui.keys import Acts, Key, take
from demo_app.ui.playing import Session
from demo_app.ui.saving import save_picture
from demo_app.ui.stage_view import StageView
from demo_app.ui.transport import SPEEDS
from demo_app.ui.worker import Worker

TURN_DEG = 5.0
FIRST = "ring"
BETWEEN_SCENES_MS = 300


class PresentWindow(QWidget):
    """One window with one scene at a time.

    Parameters
    ----------
    scenes : sequence of Scene
        To choose from.
    shown : str
        Id of the first one.
    """

    def __init__(self, scenes: Sequence[Scene], shown: str) -> None:
        super().__init__()
        self.setWindowTitle(words.text("app"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._scenes = {scene.id: scene for scene in scenes}
        self._sizes: theme.Sizes | None = None
        self.worker = Worker(self)
        self.worker.setObjectName("worker")
        self.worker.start()
        # The worker begins with the model while the widgets are being made.
        self.session: Session | None = self._open(shown)
        try:
            self._build(scenes, shown)
        except BaseException:
            # A thread that outlives its window would take the process down with it.
            self.end()
            raise

    def _build(self, scenes: Sequence[Scene], shown: str) -> None:
        self.stage = StageView(self)
        self.controls = Controls(self)
        box = QHBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(0)
        box.addWidget(self.stage, 1)
        box.addWidget(self.controls)
        self.controls.set_scenes(scenes, shown)
        self.controls.save_asked.connect(self.save)
        self.controls.scene_chosen.connect(self.show_scene)
        self.controls.light.mode_chosen.connect(self.stage.set_section_mode)
        self.controls.light.traces_chosen.connect(self.stage.choose_traces)
        self.stage.picture.tapped.connect(self._toggle)
        self._save_key = QShortcut(QKeySequence(QKeySequence.StandardKey.Save), self)
        self._save_key.activated.connect(self.save)
        self._keys = self._acts()
        if self.session is not None:
            self.stage.set_session(self.session)
            self.controls.set_session(self.session)

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(1280, 720)

    def show_scene(self, name: str) -> None:
        """Start another scene."""
        old = self.session
        if old is not None:
            old.close()
        session = self._open(name)
        self.session = session
        self.stage.set_session(session)
        self.controls.set_session(session)
        if old is not None:
            old.deleteLater()

    def _open(self, name: str) -> Session:
        session = Session(self._scenes[name], self.worker, parent=self)
        session.begin()
        return session

    def offer(self, scene: Scene) -> None:
        """Offer one more scene to choose from."""
        self._scenes[scene.id] = scene
        known = sorted(self._scenes.values(), key=lambda found: found.title)
        shown = self.session.scene.id if self.session is not None else ""
        self.controls.set_scenes(known, shown)

    def save(self) -> None:
        """Save the picture shown, and say where."""
        if self.session is not None and self.session.frame is not None:
            folder = QStandardPaths.writableLocation(
                QStandardPaths.StandardLocation.PicturesLocation
            )
            self.controls.tell(save_picture(self.session.scene.id, self.session.frame, folder))

    def recover(self, problem: str) -> None:
        """After a fault: start the scene again and say so."""
        if self.session is not None:
            self.session.recover(problem)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        sizes = theme.Sizes.of(self.height())
        if sizes != self._sizes:
            self._sizes = sizes
            self.setStyleSheet(theme.style_sheet(sizes))
            self.stage.set_sizes(sizes)
            self.controls.set_sizes(sizes)

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: D102
        self.end()
        super().closeEvent(event)

    def end(self) -> None:
        """Stop timer and thread; may be called twice."""
        if self.session is not None:
            self.session.close()
            self.session = None
        self.worker.end()

    # Keys

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        if not take(event, self._keys):
            super().keyPressEvent(event)

    def _acts(self) -> Acts:
        return {
            Key.Key_Space: self._toggle,
            Key.Key_Left: self._step_back,
            Key.Key_Right: self._step_on,
            Key.Key_Up: self._faster,
            Key.Key_Down: self._slower,
            Key.Key_R: self._reset,
            Key.Key_H: self._hold,
            Key.Key_B: self._replay,
            Key.Key_D: self._first_action,
            Key.Key_G: self._brighten,
            **{Key(Key.Key_1 + place): partial(self._act, place) for place in range(9)},
            Key.Key_S: self._switch_section,
            Key.Key_X: self._cross,
            Key.Key_Q: self._quarter,
            Key.Key_T: self._tint,
            Key.Key_BracketLeft: self._turn_back,
            Key.Key_BracketRight: self._turn_on,
            Key.Key_F1: self._list_keys,
            Key.Key_F2: self._hide_controls,
            Key.Key_F11: self._full_screen,
            Key.Key_Escape: self._leave_full_screen,
        }

    def _toggle(self) -> None:
        if self.session is not None:
            self.session.toggle()

    def _step_back(self) -> None:
        if self.session is not None:
            self.session.step(-1)

    def _step_on(self) -> None:
        if self.session is not None:
            self.session.step(1)

    def _faster(self) -> None:
        self._shift_speed(1)

    def _slower(self) -> None:
        self._shift_speed(-1)

    def _shift_speed(self, by: int) -> None:
        slider = self.controls.transport.speed
        place = min(max(slider.value() + by, 0), len(SPEEDS) - 1)
        if self.session is not None:
            self.session.set_speed(SPEEDS[place])

    def _reset(self) -> None:
        if self.session is not None:
            self.session.reset()

    def _hold(self) -> None:
        if self.session is not None:
            self.session.hold()

    def _replay(self) -> None:
        if self.session is not None:
            self.session.replay_break()

    def _first_action(self) -> None:
        self._act(0)

    def _act(self, place: int) -> None:
        if self.session is not None and place < len(self.session.scene.actions):
            self.session.act(self.session.scene.actions[place])

    def _brighten(self) -> None:
        if self.session is not None:
            self.session.brighten()

    def _switch_section(self) -> None:
        mode = "stress" if self.stage.section.mode == "temperature" else "temperature"
        self.controls.light.section.show_value(mode)
        self.stage.set_section_mode(mode)

    def _cross(self) -> None:
        if self.session is not None:
            crossed = self.session.instrument.crossed
            self.session.set_light(analyser_deg=0.0 if crossed else 90.0)

    def _quarter(self) -> None:
        if self.session is not None:
            self.session.set_light(quarter_wave=not self.session.instrument.quarter_wave)

    def _tint(self) -> None:
        if self.session is not None:
            self.controls.light.controls["tint"].chosen.emit(
                "tint", self.session.light.tint_plate_nm == 0
            )

    def _turn_back(self) -> None:
        self._turn(-TURN_DEG)

    def _turn_on(self) -> None:
        self._turn(TURN_DEG)

    def _turn(self, by: float) -> None:
        if self.session is not None:
            turned = (self.session.light.polarizer_deg + by) % 180
            self.session.set_light(polarizer_deg=turned)

    def _list_keys(self) -> None:
        self.controls.tell("" if self.controls.line.isVisible() else words.text("keys"))

    def _hide_controls(self) -> None:
        self.controls.setVisible(not self.controls.isVisible())

    def _full_screen(self) -> None:
        self.setWindowState(self.windowState() ^ Qt.WindowState.WindowFullScreen)

    def _leave_full_screen(self) -> None:
        self.setWindowState(self.windowState() & ~Qt.WindowState.WindowFullScreen)


class Others(QObject):
    """Loads the other scenes after the first picture, one at a time while nothing plays.

    One that cannot be loaded is told and left out; the scene shown goes on.
    """

    def __init__(self, window: PresentWindow) -> None:
        super().__init__(window)
        self._window = window
        shown = window.session.scene.id if window.session is not None else ""
        self._waiting = [name for name in catalogue.ids() if name != shown]
        if self._waiting:
            # Room for the list from the start, so that no button moves under a hand.
            window.controls.scenes.show()
        self._timer = QTimer(self)
        self._timer.setInterval(BETWEEN_SCENES_MS)
        self._timer.timeout.connect(self._next)
        self._timer.start()

    def stop(self) -> None:
        """Load no more."""
        self._timer.stop()

    def _next(self) -> None:
        session = self._window.session
        if not self._waiting or session is None:
            self._timer.stop()
        elif session.frame is not None and not session.playing:
            name = self._waiting.pop(0)
            try:
                self._window.offer(catalogue.load(name))
            except Exception as error:
                application.LOG.error("scene %s cannot be loaded", name, exc_info=error)
                self._window.controls.tell(words.text("unloaded", scene=name, problem=error))


def _started(_frame: object) -> None:
    release_collector()


def run(scene_id: str | None, argv: Sequence[str]) -> int:
    """Open the presenter's window on a scene and run until it is closed.

    Parameters
    ----------
    scene_id : str or None
        Scene to begin with; `FIRST` if None.
    argv : sequence of str
        For Qt.

    Returns
    -------
    int
        Exit status.

    Raises
    ------
    InputError
        For a scene that is not known.
    """
    app = application.make(argv)
    first = catalogue.scene(scene_id if scene_id is not None else FIRST)
    guard = application.FaultGuard()
    window = PresentWindow([first], first.id)
    started = window.session
    if started is not None:
        started.framed.connect(_started)
    others = Others(window)
    guard.caught.connect(window.recover)
    guard.install()
    application.show(window)
    window.setFocus()
    try:
        return application.execute(app, window.end)
    finally:
        others.stop()
        guard.uninstall()
