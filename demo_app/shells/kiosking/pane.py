"""What the kiosk's window is made of, and where its parts are: sizes, words, colours."""

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QCloseEvent, QColor, QKeyEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import QApplication, QWidget

from demo_app.base.errors import InputError
from demo_app.content.kiosk.records import Spoken
from demo_app.scenes.scene import Scene
from demo_app.shells.kiosking import care
from demo_app.shells.kiosking.house import House
from demo_app.shells.kiosking.idling import Idle
from demo_app.shells.kiosking.runner import Runner
from demo_app.shells.kiosking.staff_room import StaffRoom
from demo_app.shells.kiosking.where import ATTRACT, HOME, LANGUAGES, STEP, Where
from demo_app.ui import theme
from demo_app.ui.kiosk.bar import Bar
from demo_app.ui.kiosk.guard import Guard
from demo_app.ui.kiosk.home import EASE, HomePage
from demo_app.ui.kiosk.invite import Invite
from demo_app.ui.kiosk.languages_page import LanguagesPage
from demo_app.ui.kiosk.measures import Measures, pixels_per_mm, rooms
from demo_app.ui.kiosk.notice import Dark, Notice
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.stage import LiveStage
from demo_app.ui.kiosk.step_page import StepPage
from demo_app.ui.kiosk.wishes import Ease, system_contrast, system_still
from demo_app.ui.languages import Language, language
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame
from demo_app.ui.worker import Worker


class Pane(QWidget):
    """The parts of a `KioskWindow`, and their places.

    Parameters
    ----------
    house : House
    scene : callable
        A scene by its id.
    clock : callable
        Time that only goes forward, s.
    wall : callable
        Time since 1970, s.

    Attributes
    ----------
    where : Where
        Where the visitor is.
    announced : Signal(str)
        What a screen reader was asked to say.
    """

    announced = Signal(str)

    def __init__(
        self,
        house: House,
        *,
        scene: Callable[[str], Scene],
        clock: Callable[[], float],
        wall: Callable[[], float],
    ) -> None:
        super().__init__(None, Qt.WindowType.Window | Qt.WindowType.FramelessWindowHint)
        self.setWindowTitle("Lehrlight")
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setCursor(Qt.CursorShape.BlankCursor)
        self.setProperty("keyed", False)
        self._scene, self._clock, self._wall = scene, clock, wall
        self.where, self.house = Where(), house
        self.ease, self.tag = self._usual(), house.language
        self.measures = Measures(1280, 720, 4.0)
        self.idle = Idle(clock(), True, house.site.idle_s, house.site.warning_s)
        self._leaving = False
        self._make_parts()

    def _make_parts(self) -> None:
        self.body = QWidget(self)
        self.stage = LiveStage(self.body, self._sentence)
        self.invite = Invite(self.body)
        self.home, self.step_page = HomePage(self.body), StepPage(self.body)
        self.languages = LanguagesPage(self.body)
        self.bar = Bar(self.body)
        self.pages: dict[str, Page] = {
            ATTRACT: self.invite,
            HOME: self.home,
            STEP: self.step_page,
            LANGUAGES: self.languages,
        }
        self.warning = Notice(self, button=True)
        self.closed, self.cleaning = Notice(self), Notice(self)
        self.staff = StaffRoom(self.house, self, clock=self._clock)
        self.dark = Dark(self)
        self.worker = Worker(self)
        self.worker.start()
        self.runner = Runner(self.worker, scene=self._scene, parent=self)
        self.guard = Guard(self, lambda: self._leaving)

    @property
    def spoken(self) -> Spoken:
        """Words of the language in use."""
        return self.house.texts.spoken[self.tag]

    def _language(self) -> Language:
        try:
            return language(self.tag)
        except InputError:
            return language("en")

    def _usual(self) -> Ease:
        return self.house.ease(contrast=system_contrast(), still=system_still())

    def _speak(self) -> None:
        for page in (*self.pages.values(), self.bar):
            page.speak(self.spoken)
        self.invite.show_lines(self.spoken, list(self.house.languages.values()))
        self.stage.say_again()
        if self.where.page == STEP:
            self._fill_step()

    def _take_ease(self) -> None:
        use = theme.shades(self.ease.look)
        palette = QPalette(theme.palette(self.ease.look))
        palette.setColor(QPalette.ColorRole.Window, QColor(use.stage))
        self.setPalette(palette)
        self.setStyleSheet(f"QWidget#stage {{ background: {use.stage}; }}")
        self.stage.set_motion(not self.ease.still)
        self.home.show_ease({name: getattr(self.ease, name) for name in EASE})
        self._measure()

    def _measure(self) -> None:
        site, margin = self.house.site, 2 * care.SHIFT_PX
        self.measures = Measures(
            max(self.width() - margin, 1),
            max(self.height() - margin, 1),
            pixels_per_mm(self.screen(), site.width_mm, site.height_mm),
            self.ease.type_scale,
        )
        self._move_body(self._clock())
        for page in (
            *self.pages.values(),
            self.bar,
            self.warning,
            self.closed,
            self.cleaning,
        ):
            page.fit(self.measures, self.ease.look)
        plain = replace(self.measures, scale=1.0)
        for page in (self.staff.pad, self.staff.page):
            page.fit(plain, theme.Look())
        self._arrange()

    def _arrange(self) -> None:
        room = rooms(self.measures)
        whole = self.measures.whole
        page = self.where.page if self.where.page != LANGUAGES else self.where.under
        high = room.sentence if page == STEP else 0
        stage = room.stage
        if page == ATTRACT and self.where.page == ATTRACT:
            stage = whole
        if self.ease.describe and page == STEP:
            high = min(2 * high, stage.height() // 2)
        self.stage.setGeometry(stage)
        self.stage.fit(self.measures, self.ease.look, high)
        self.invite.setGeometry(whole)
        for one in (self.home, self.step_page, self.languages):
            one.setGeometry(room.panel)
        self.bar.setGeometry(room.bar)

    def _move_body(self, now_s: float) -> None:
        x, y = care.shift(now_s)
        margin = care.SHIFT_PX
        self.body.setGeometry(
            margin + x, margin + y, self.width() - 2 * margin, self.height() - 2 * margin
        )

    def _take_light(self, now_s: float) -> None:
        self.dark.set_share(
            care.light(self.house.site.brightness, now_s - self.idle.since_s, away=self.idle.away)
        )

    def _focus(self, widget: QWidget | None) -> None:
        if widget is not None:
            widget.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.setFocus(Qt.FocusReason.OtherFocusReason)

    def _set_keyed(self, keyed: bool) -> None:
        if self.property("keyed") != keyed:
            self.setProperty("keyed", keyed)
            focused = QApplication.focusWidget()
            if focused is not None:
                focused.update()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        for over in (self.warning, self.closed, self.cleaning, self.staff.pad, self.staff.page):
            over.setGeometry(self.rect())
        self.dark.setGeometry(self.rect())
        self._measure()

    def changeEvent(self, event: QEvent) -> None:  # noqa: D102
        super().changeEvent(event)
        if (
            event.type() == QEvent.Type.WindowStateChange
            and self.isMinimized()
            and not self._leaving
        ):
            self.showFullScreen()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: D102
        event.accept()

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: D102
        if self._leaving:
            event.accept()
        else:
            event.ignore()

    def _sentence(self, session: Session, frame: Frame) -> str:
        """What stands under a picture."""
        return self._language().sentence(session.scene, frame.message)

    def _fill_step(self) -> None:
        """Put words into the step's panel."""
