"""Every reading of the scene, in words and with its unit."""

from PySide6.QtCore import QElapsedTimer, Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from demo_app.ui import words
from demo_app.ui.language_ids import scene_context
from demo_app.ui.playing import Session
from demo_app.ui.request import Frame

REFRESH_MS = 120


class NumbersPage(QWidget):
    """Table of the scene's readings at the instant shown."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session: Session | None = None
        self.words = QLabel(self)
        self.words.setWordWrap(True)
        self.words.setObjectName("quiet")
        self._grid = QGridLayout()
        box = QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(self.words)
        box.addLayout(self._grid)
        self._grid.setColumnStretch(0, 1)
        self._grid.setVerticalSpacing(10)
        self.values: dict[str, QLabel] = {}
        self._written = QElapsedTimer()

    def set_session(self, session: Session) -> None:
        """Show another session's readings."""
        if self._session is not None:
            self._session.framed.disconnect(self.show_frame)
        while (item := self._grid.takeAt(0)) is not None:
            if (old := item.widget()) is not None:
                old.hide()
                old.deleteLater()
        self._session = session
        self.values = {}
        self.words.clear()
        context = scene_context(session.scene)
        for row, spec in enumerate(session.scene.readings):
            said = words.label(context, spec)
            label, value = QLabel(said, self), QLabel(words.text("none"), self)
            label.setWordWrap(True)
            value.setObjectName("value")
            value.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            for widget in (label, value):
                widget.setToolTip(words.help_of(context, spec))
                self._grid.addWidget(widget, row, int(widget is value))
            value.setAccessibleName(said)
            self.values[spec.name] = value
        session.framed.connect(self.show_frame)

    def show_words(self, said: str) -> None:
        """What is seen, to be read out."""
        self.words.setText(said)
        self.words.setAccessibleName(said)

    def show_frame(self, frame: Frame) -> None:
        """Write the readings of a picture, some eight times a second while playing."""
        session = self._session
        if session is None:
            return
        fresh = not self._written.isValid() or self._written.elapsed() >= REFRESH_MS
        if session.playing and not fresh:
            return
        self._written.restart()
        context = scene_context(session.scene)
        for spec in session.scene.readings:
            said = words.reading(spec, frame.readings.get(spec.name), context)
            if said != self.values[spec.name].text():
                self.values[spec.name].setText(said)
