"""Keeps the audience's window on its screen, whatever happens to the cable."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import QObject, Qt, QTimer, Signal
from PySide6.QtGui import QGuiApplication, QScreen, QWindow
from PySide6.QtWidgets import QApplication, QWidget

from demo_app.ui import words
from demo_app.ui.screens import Place, audience_place

SETTLE_MS = 300
"""After a screen has come: the system moves windows about for a moment."""
LOOK_MS = 400
"""After placing: by now the window manager has done what it was asked to."""
MOST_TRIES = 3


class Placer(QObject):
    """Shows the audience's window on a screen of its own, and hides it where there is none.

    Sessions are left alone: only windows move.

    Parameters
    ----------
    window : QWidget
        The audience's, a top-level window that is not shown yet.
    presenter : QWidget
        The presenter's top-level window.
    remembered : Place or None
        The audience's screen of another day.
    screens : callable
        The screens there are.

    Attributes
    ----------
    placed : Signal(Place)
        The audience's window has its screen: two screens.
    single : Signal()
        There is no screen for it: the show goes on in the presenter's window.
    chosen : Signal(Place)
        A person has chosen a screen: remember it.
    told : Signal(str)
        One line for the presenter.
    """

    placed = Signal(object)
    single = Signal()
    chosen = Signal(object)
    told = Signal(str)

    def __init__(
        self,
        window: QWidget,
        presenter: QWidget,
        remembered: Place | None = None,
        screens: Callable[[], Sequence[QScreen]] = QGuiApplication.screens,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._window, self._presenter = window, presenter
        self._remembered = remembered
        self._screens = screens
        self._wayland = QGuiApplication.platformName().startswith("wayland")
        self._place: Place | None = None
        self._alone = False
        self._tries = 0
        self._begun = False
        self._later = self._timer(SETTLE_MS, self.place)
        self._look = self._timer(LOOK_MS, self._check)
        self._app = QApplication.instance()

    def _timer(self, milliseconds: int, then: Callable[[], None]) -> QTimer:
        timer = QTimer(self)
        timer.setSingleShot(True)
        timer.setInterval(milliseconds)
        timer.timeout.connect(then)
        return timer

    @property
    def place_now(self) -> Place | None:
        """Where the audience's window is; None while there is one screen."""
        return self._place

    def places(self) -> tuple[Place, ...]:
        """Every screen there is."""
        return tuple(Place.of(screen) for screen in self._screens())

    def begin(self) -> None:
        """Place the audience's window and follow the screens; the presenter's window is shown."""
        app = self._app
        if self._begun or not isinstance(app, QApplication):
            return
        self._begun = True
        app.screenAdded.connect(self._added)
        app.screenRemoved.connect(self._removed)
        for screen in self._screens():
            screen.geometryChanged.connect(self._changed)
        handle = self._handle(self._presenter)
        if handle is not None:
            handle.screenChanged.connect(self._changed)
        self.place()

    def end(self) -> None:
        """Follow no more, and hide the audience's window."""
        self._later.stop()
        self._look.stop()
        app = self._app
        if self._begun and isinstance(app, QApplication):
            self._begun = False
            app.screenAdded.disconnect(self._added)
            app.screenRemoved.disconnect(self._removed)
        self._window.hide()

    def choose(self, place: Place) -> None:
        """Put the audience on a screen; if the presenter's window is there, both change places."""
        here = Place.of(self._presenter.screen())
        if place.mirrors(here):
            others = [other for other in self.places() if not other.mirrors(place)]
            if not others:
                return
            self._hide()
            self._move_presenter(others[0])
        self._remembered = place
        self.chosen.emit(place)
        self._later.start()

    def swap(self) -> None:
        """Let the two windows change screens."""
        if self._place is not None:
            self.choose(Place.of(self._presenter.screen()))

    def place(self) -> None:
        """Show the audience's window where it belongs, or hide it."""
        self._tries = 0
        self._put()

    # What happens to the screens

    def _added(self, screen: QScreen) -> None:
        screen.geometryChanged.connect(self._changed)
        self._later.start()

    def _removed(self, screen: QScreen) -> None:
        """Hide the window before the system moves it over the presenter's."""
        gone = Place.of(screen)
        left = [place for place in self.places() if place != gone]
        here = Place.of(self._presenter.screen())
        lost = self._place is not None and gone.likeness(self._place) == 3
        if lost or here == gone or audience_place(left, here) is None:
            self._hide()
        self._later.start()

    def _changed(self) -> None:
        """Screens have moved, or the presenter's window has gone to another one."""
        self._later.start()
        here = Place.of(self._presenter.screen())
        if self._window.isVisible() and self._window.frameGeometry().intersects(here.box):
            self._hide()

    # Placing

    def _put(self) -> None:
        here = Place.of(self._presenter.screen())
        place = audience_place(self.places(), here, self._remembered)
        if place is None:
            self._hide()
            return
        if place == self._place and self._stands(place):
            return
        screen = next(one for one in self._screens() if Place.of(one) == place)
        self._tries += 1
        handle = self._handle(self._window)
        if handle is None:
            return
        # A window that stays full-screen is not moved by every window manager.
        if self._window.isVisible():
            self._window.hide()
        handle.setScreen(screen)
        if not self._wayland:
            # The widget too: it believes its own geometry until the system answers.
            self._window.setGeometry(screen.geometry())
            handle.setGeometry(screen.geometry())
        if not self._window.windowFlags() & Qt.WindowType.BypassWindowManagerHint:
            # As `showFullScreen`, which would ask for the keyboard's focus as well.
            self._window.setWindowState(Qt.WindowState.WindowFullScreen)
        self._window.show()
        told = self._place is None
        self._place, self._alone = place, False
        self._look.start()
        self.placed.emit(place)
        if told:
            self.told.emit(words.text("audience.two", name=place.name))

    def _check(self) -> None:
        """Try again if the window is not where it was put; after that take it away."""
        place = self._place
        if place is None or self._stands(place):
            return
        if self._tries < MOST_TRIES:
            self._put()
            return
        self._hide()
        self.told.emit(words.text("audience.unplaced", name=place.name))

    def _stands(self, place: Place) -> bool:
        if not self._window.isVisible() or Place.of(self._window.screen()) != place:
            return False
        return self._wayland or self._window.geometry() == place.box

    def _hide(self) -> None:
        self._look.stop()
        self._window.hide()
        was, self._place = self._place, None
        if was is None and self._alone:
            return
        self._alone = True
        self.single.emit()
        self.told.emit(words.text("audience.one" if was is None else "audience.gone"))

    def _move_presenter(self, place: Place) -> None:
        screen = next(one for one in self._screens() if Place.of(one) == place)
        handle = self._handle(self._presenter)
        if handle is None:
            return
        state = self._presenter.windowState()
        self._presenter.showNormal()
        handle.setScreen(screen)
        if not self._wayland:
            room = screen.availableGeometry()
            self._presenter.resize(self._presenter.size().boundedTo(room.size()))
            self._presenter.move(room.topLeft())
        self._presenter.setWindowState(state)

    @staticmethod
    def _handle(window: QWidget) -> QWindow | None:
        """The window's native side, made if it is not there yet."""
        window.winId()
        return window.windowHandle()
