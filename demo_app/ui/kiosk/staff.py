"""The staff's page: a list of sections, and the section that is open beside it."""

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtWidgets import QWidget

from demo_app.content.kiosk.records import Spoken
from demo_app.ui import theme
from demo_app.ui.kiosk.button import BigButton
from demo_app.ui.kiosk.measures import Measures, grid, inset
from demo_app.ui.kiosk.page import Page
from demo_app.ui.kiosk.words_label import LEFT, WordsLabel

SECTIONS = ("problems", "counts", "hours", "languages", "steps", "brightness", "update")
ACTS = ("clean", "quit", "close")


class Staff(Page):
    """Sections to open, and acts.

    Attributes
    ----------
    acted : Signal(str)
        One of `ACTS`, or "really_quit".
    opened : Signal(str)
        A section is about to be shown.
    """

    acted = Signal(str)
    opened = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.title = WordsLabel(self, "title", LEFT, bold=True)
        self.line = WordsLabel(self, "body", LEFT)
        self.buttons = {name: BigButton(self) for name in (*SECTIONS, *ACTS)}
        for name, button in self.buttons.items():
            button.setCheckable(name in SECTIONS)
            button.clicked.connect(lambda _on=False, name=name: self._press(name))
        self.sure, self.cancel = BigButton(self), BigButton(self)
        self.sure.clicked.connect(lambda: self.acted.emit("really_quit"))
        self.cancel.clicked.connect(lambda: self.open("problems"))
        self.section: Page | None = None
        self.name = ""
        self.hide()

    def speak(self, spoken: Spoken) -> None:  # noqa: D102
        super().speak(spoken)
        for name, button in self.buttons.items():
            button.say(spoken.words[f"staff.{name}"])
        self.sure.say(spoken.words["staff.quit"])
        self.cancel.say(spoken.words["staff.cancel"])
        self.title.say(spoken.words["staff.title"])

    def open(self, name: str) -> None:
        """Open a section; `opened` asks for its page, which `show_section` gets."""
        self.name = name
        asking = name == "quit"
        for one, button in self.buttons.items():
            button.setChecked(one == name)
        self.sure.setVisible(asking)
        self.cancel.setVisible(asking)
        if asking:
            self.show_section(None)
            self.tell(self.spoken.words["staff.quit_sure"] if self.spoken else "")
        else:
            self.tell("")
            self.opened.emit(name)
        self.place()

    def show_section(self, section: Page | None) -> None:
        """Show a section's page in place of the last one."""
        if self.section is not None:
            self.section.hide()
            self.section.deleteLater()
        self.section = section
        if section is not None:
            section.setParent(self)
            section.fit(self.measures, self.look)
            section.show()
        self.place()

    def tell(self, said: str) -> None:
        """A line under the title."""
        self.line.say(said)

    def fit(self, measures: Measures, look: theme.Look) -> None:  # noqa: D102
        self.measures, self.look = measures, look
        for label in (self.title, self.line):
            label.fit(measures, look)
        for button in (*self.buttons.values(), self.sure, self.cancel):
            button.fit(measures, look)
        if self.section is not None:
            self.section.fit(measures, look)
        self.place()

    def first(self) -> QWidget | None:  # noqa: D102
        return self.buttons["problems"]

    def summary(self) -> str:  # noqa: D102
        return self.title.text()

    def place(self) -> None:  # noqa: D102
        measures, gap = self.measures, self.measures.gap
        room = inset(self.rect(), gap)
        many = len(self.buttons)
        title, line = round(1.5 * measures.title), round(2.6 * measures.body)
        if measures.tall:
            high = round(0.34 * room.height())
            menu = QRect(room.x(), room.bottom() - high, room.width(), high)
            columns = 2
            page = room.adjusted(0, 0, 0, -high - gap)
        else:
            wide = round(0.24 * room.width())
            menu = QRect(room.x(), room.y(), wide, room.height())
            columns = 1
            page = room.adjusted(wide + 2 * gap, 0, 0, 0)
        for button, box in zip(
            self.buttons.values(), grid(menu, many, columns, gap // 2), strict=True
        ):
            button.setGeometry(box)
        self.title.setGeometry(page.x(), page.y(), page.width(), title)
        self.line.setGeometry(page.x(), page.y() + title, page.width(), line)
        rest = page.adjusted(0, title + line + gap, 0, 0)
        if self.section is not None:
            self.section.setGeometry(rest)
        high = 2 * measures.target
        for button, box in zip(
            (self.cancel, self.sure),
            grid(QRect(rest.x(), rest.y(), rest.width(), high), 2, 2, 3 * gap),
            strict=True,
        ):
            button.setGeometry(box)

    def _press(self, name: str) -> None:
        if name in SECTIONS or name == "quit":
            self.open(name)
        else:
            for one, button in self.buttons.items():
                button.setChecked(one == self.name)
            self.acted.emit(name)
