"""Reading a colour: the computed chart to pick from, with what the tint plate would show."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from demo_app.content.bench.answer import Page
from demo_app.shells.benching.question_page import QuestionPage
from demo_app.ui import words
from demo_app.ui.benching.strips import ColourPicker, TintReading


class ColourPage(QuestionPage):
    """The page `colour` with its charts."""

    def __init__(self, page: Page, parent: QWidget | None = None) -> None:
        super().__init__(page, parent)
        self.tool = QWidget()
        self.bare = ColourPicker(words.text("bench.pick.bare"), self.tool)
        self.plate = ColourPicker(words.text("bench.pick.plate"), self.tool)
        self.tint = TintReading(self.tool)
        box = QVBoxLayout(self.tool)
        box.setContentsMargins(0, 0, 0, 0)
        for widget in (self.bare, self.plate, self.tint):
            box.addWidget(widget)
        self.view.insert_tool(self.tool)
        QWidget.setTabOrder(self.view.area, self.bare)
        QWidget.setTabOrder(self.bare, self.plate)
        self.bare.picked.connect(lambda nm: self.form.set_values({"seen_nm": nm}))
        self.plate.picked.connect(lambda nm: self.form.set_values({"plate_seen_nm": nm}))
        self._follow()

    def change(self) -> None:  # noqa: D102
        self._follow()
        super().change()

    def focus_first(self) -> None:
        """The chart first: that is what the page is about."""
        if self.bare.isHidden():
            super().focus_first()
        else:
            self.bare.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _follow(self) -> None:
        values = self.form.values()
        picking = values["method"] == "colour"
        for picker, name, seen in (
            (self.bare, "seen_nm", "bare"),
            (self.plate, "plate_seen_nm", "plate"),
        ):
            picker.set_lamp(values["lamp"])
            picker.set_value(values[name])
            picker.setVisible(picking and values[seen])
        self.tint.show_reading(values["seen_nm"], values["lamp"], values["plate_nm"])
        self.tint.setVisible(picking and values["bare"] and self.bare.isEnabled())
