"""The presenter's header: clocks, Back and Next, what the audience's window does, the pages."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QWidget

from demo_app.ui import theme, words
from demo_app.ui.clock_bar import ClockBar
from demo_app.ui.fields import Choice

PAGES = ("show", "steps", "before", "between", "after", "screens", "keys")
NO_SHEET_PAGES = ("show", "screens", "keys")
TOGGLES = ("blank", "freeze")
ONCE = ("return", "strip")


class ShowHeader(QWidget):
    """One row over the whole of the presenter's window.

    Attributes
    ----------
    acted : Signal(str)
        An act, as the keys send it.
    page_chosen : Signal(str)
        One of `PAGES`.
    notes_wanted : Signal(bool)
        With one screen: notes below the picture, which everybody sees.
    """

    acted = Signal(str)
    page_chosen = Signal(str)
    notes_wanted = Signal(bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("page")
        self.clock = ClockBar(self)
        self.place = QLabel(self)
        self.place.setObjectName("quiet")
        self.back = self._button("back", "header.back")
        self.next = self._button("next", "header.next")
        self.next.setObjectName("main")
        self.next.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.buttons: dict[str, QPushButton] = {}
        for act in (*TOGGLES, *ONCE):
            made = self._button(act, f"header.{act}")
            made.setCheckable(act in TOGGLES)
            self.buttons[act] = made
        self.notes = QPushButton(words.text("header.notes"), self)
        self.notes.setCheckable(True)
        self.notes.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.notes.toggled.connect(self.notes_wanted)
        self.pages = Choice(self)
        self.pages.setAccessibleName(words.text("header.page"))
        self.pages.activated.connect(self._choose_page)
        self._box = QHBoxLayout(self)
        self._box.addWidget(self.clock, 5)
        self._box.addWidget(self.back)
        self._box.addWidget(self.next, 4)
        for widget in (*self.buttons.values(), self.notes, self.pages):
            self._box.addWidget(widget)
            widget.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self.set_pages(PAGES)

    def set_pages(self, pages: tuple[str, ...]) -> None:
        """Offer pages."""
        self.pages.clear()
        for name in pages:
            self.pages.addItem(words.text(f"page.{name}"), name)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        self._box.setContentsMargins(sizes.gap, sizes.gap // 2, sizes.gap, sizes.gap // 2)
        self._box.setSpacing(sizes.gap)
        self.clock.set_sizes(sizes)

    def set_free(self, free: bool) -> None:
        """Without a sheet there are no clocks and no steps to walk."""
        for widget in (self.back, self.next):
            widget.setVisible(not free)
        self.set_pages(NO_SHEET_PAGES if free else PAGES)

    def show_next(self, said: str) -> None:
        """What Next leads to, cut short where there is no room."""
        room = max(self.next.width() - 24, 60)
        shown = self.next.fontMetrics().elidedText(said, Qt.TextElideMode.ElideRight, room)
        self.next.setText(shown)
        self.next.setToolTip(said)
        self.next.setAccessibleName(said)

    def show_states(self, *, blank: bool, frozen: bool, astray: bool) -> None:
        """What is on for the audience, and whether there is anything to return from."""
        for act, on in (("blank", blank), ("freeze", frozen)):
            self.buttons[act].setChecked(on)
        self.buttons["return"].setEnabled(astray)

    def show_page(self, name: str) -> None:
        """Which page is shown."""
        self.pages.setCurrentIndex(self.pages.findData(name))

    def _button(self, act: str, name: str) -> QPushButton:
        made = QPushButton(words.text(name), self)
        made.setProperty("act", act)
        made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        made.setToolTip(words.text(f"{name}.help"))
        made.setAccessibleDescription(words.text(f"{name}.help"))
        made.clicked.connect(self._act)
        return made

    def _act(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            # Whether it is down is for the show to say.
            if button.isCheckable():
                button.setChecked(not button.isChecked())
            self.acted.emit(str(button.property("act")))

    def _choose_page(self, _index: int) -> None:
        self.page_chosen.emit(str(self.pages.currentData()))
