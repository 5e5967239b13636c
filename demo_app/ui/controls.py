"""The presenter's panel: transport above, settings, light and numbers in pages below."""

from collections.abc import Iterable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QLabel,
    QPushButton,
    QScrollArea,
    QScroller,
    QSizePolicy,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import settings_of
from demo_app.ui import theme, words
from demo_app.ui.fields import Choice, Control, control_for
from demo_app.ui.language_ids import scene_context
from demo_app.ui.light_page import LightPage
from demo_app.ui.numbers_page import NumbersPage
from demo_app.ui.playing import Session
from demo_app.ui.transport import Transport

LEAST_LINES = 2
"""Of what is told, whatever else has to scroll."""


class Controls(QWidget):
    """All controls of one session; may stand anywhere, or be hidden.

    Attributes
    ----------
    save_asked : Signal()
    scene_chosen : Signal(str)
        Id of another scene.
    """

    save_asked = Signal()
    scene_chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self._session: Session | None = None
        self.controls: dict[str, Control] = {}
        self.scenes = Choice(self)
        self.scenes.setAccessibleName(words.text("scene"))
        self.scenes.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.scenes.activated.connect(self._choose_scene)
        self.scenes.hide()
        self.transport = Transport(self)
        self.transport.save_asked.connect(self.save_asked)
        self.line = QLabel(self)
        self.line.setObjectName("alert")
        self.line.setWordWrap(True)
        # All keys in one line are longer than a small window is high: that one scrolls.
        self._long = QScrollArea(self)
        self._long.setWidgetResizable(True)
        self._long.setFrameShape(QFrame.Shape.NoFrame)
        self._long.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._long.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._long.setWidget(self.line)
        QScroller.grabGesture(self._long.viewport(), QScroller.ScrollerGestureType.TouchGesture)
        self._long.hide()
        self.pages = QTabWidget(self)
        self.pages.setDocumentMode(True)
        self.pages.tabBar().setExpanding(True)
        self.pages.tabBar().setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.pages.tabBar().setUsesScrollButtons(False)
        self.light = LightPage(self)
        self.numbers = NumbersPage(self)
        self._box = QVBoxLayout(self)
        for widget in (self.scenes, self.transport, self._long):
            self._box.addWidget(widget)
        self._box.addWidget(self.pages, 1)

    def set_scenes(self, scenes: Iterable[Scene], shown: str) -> None:
        """Offer scenes to choose from; one alone needs no choice."""
        self.scenes.clear()
        for scene in scenes:
            self.scenes.addItem(words.title(scene), scene.id)
        self.scenes.setCurrentIndex(self.scenes.findData(shown))
        self.scenes.setVisible(self.scenes.count() > 1)

    def choose_scene(self, shown: str) -> None:
        """Which of the scenes is shown."""
        self.scenes.setCurrentIndex(self.scenes.findData(shown))

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Spacing and width from the window's height."""
        self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, sizes.gap)
        self._box.setSpacing(sizes.gap)
        self.setFixedWidth(min(max(round(sizes.panel * 26), 330), 520))
        self.transport.set_sizes(sizes)

    def set_session(self, session: Session) -> None:
        """Control another session."""
        if self._session is not None:
            self._session.changed.disconnect(self.refresh)
            self._session.told.disconnect(self.tell)
        self._session = session
        self.transport.set_session(session)
        self.light.set_session(session)
        self.numbers.set_session(session)
        self._build_pages(session)
        session.changed.connect(self.refresh)
        session.told.connect(self.tell)
        self.tell("")
        self.refresh()

    def _build_pages(self, session: Session) -> None:
        for page in (self.light, self.numbers):
            page.setParent(self)
        while self.pages.count():
            old = self.pages.widget(0)
            self.pages.removeTab(0)
            if old is not None:
                old.deleteLater()
        self.controls = {}
        settings = settings_of(session.scene.settings)
        context = scene_context(session.scene)
        for name, live in (("page.run", True), ("page.piece", False)):
            chosen = [setting for setting in settings if setting.live == live]
            if not chosen:
                continue
            made = [control_for(setting, None, context) for setting in chosen]
            for control in made:
                self.controls[control.setting.name] = control
                control.chosen.connect(session.set_setting)
            note = [] if live else [_quiet(words.text("piece.note"))]
            self.pages.addTab(_page([*note, *made, self._defaults()]), words.text(name))
        self.pages.addTab(_page([self.light]), words.text("page.light"))
        self.pages.addTab(_page([self.numbers]), words.text("page.numbers"))

    def _defaults(self) -> QPushButton:
        made = QPushButton(words.text("defaults"))
        made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        if self._session is not None:
            made.clicked.connect(self._session.defaults)
        return made

    def refresh(self) -> None:
        """Show the session's settings."""
        session = self._session
        if session is None:
            return
        for name, control in self.controls.items():
            control.show_value(getattr(session.settings, name))

    def tell(self, said: str) -> None:
        """One line for the presenter; empty takes it away."""
        self.line.setText(said)
        self._long.setVisible(bool(said))
        self._long.verticalScrollBar().setValue(0)
        self._fit_line()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fit_line()

    def _fit_line(self) -> None:
        """As high as the words need, but no more than there is room for."""
        margins, line = self._box.contentsMargins(), self._long
        rest = self._box.minimumSize().height() - (line.minimumHeight() if line.isVisible() else 0)
        most = max(self.height() - rest, LEAST_LINES * self.line.fontMetrics().lineSpacing())
        wide = self.width() - margins.left() - margins.right()
        needed = self.line.heightForWidth(wide)
        if needed > most:
            needed = self.line.heightForWidth(wide - line.verticalScrollBar().sizeHint().width())
        line.setFixedHeight(max(min(needed, most), 1))

    def _choose_scene(self, _index: int) -> None:
        self.scene_chosen.emit(str(self.scenes.currentData()))


def _quiet(said: str) -> QLabel:
    label = QLabel(said)
    label.setObjectName("quiet")
    label.setWordWrap(True)
    return label


def _page(widgets: list[QWidget]) -> QScrollArea:
    """Widgets below one another in a page that scrolls by wheel, bar or finger."""
    page = QWidget()
    page.setObjectName("page")
    box = QVBoxLayout(page)
    box.setContentsMargins(0, 8, 8, 8)
    box.setSpacing(6)
    for widget in widgets:
        box.addWidget(widget)
        widget.show()
    box.addStretch(1)
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setWidget(page)
    QScroller.grabGesture(area.viewport(), QScroller.ScrollerGestureType.TouchGesture)
    return area
