"""The stage: picture, sentence, section and chart, and no controls."""

from PySide6.QtCore import QElapsedTimer, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from demo_app.optics.retardation import Stage
from demo_app.scenes.scene import Reading
from demo_app.ui import theme, words
from demo_app.ui.chart_view import ChartView, groups
from demo_app.ui.picture_view import PictureView
from demo_app.ui.playing import Session
from demo_app.ui.ranges_view import RangesView
from demo_app.ui.request import Frame, Pixels
from demo_app.ui.section_view import SectionView

CHART_MS = 90
AFTER_FIRST_MS = 40
PICTURES, BELOW, CHART_ALONE = 10, 6, 3
"""Shares of the height: the picture, section and chart, a chart without a section."""


class Sentence(QLabel):
    """One plain sentence in two lines at most, as large as fits."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("sentence")
        self.setWordWrap(True)
        self.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignVCenter)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._largest = 26

    def set_type_size(self, size: int) -> None:
        """Largest height of the words, pixels; room is kept for two lines of them."""
        self._largest = size
        self.setFixedHeight(round(size * 2.75))
        self._fit()

    def say(self, said: str) -> None:
        """Show a sentence."""
        if said != self.text():
            self.setText(said)
            self.setAccessibleName(said)
            self._fit()

    def fits(self, size: int) -> bool:
        """Whether the sentence fits at a type size."""
        font = self.font()
        font.setPixelSize(size)
        room = self.contentsRect()
        flags = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignHCenter)
        needed = QFontMetrics(font).boundingRect(room.adjusted(0, 0, 0, 9999), flags, self.text())
        return needed.height() <= room.height() and needed.width() <= room.width()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        size = self._largest
        while size > 12 and not self.fits(size):
            size -= 1
        self.setStyleSheet(f"font-size: {size}px;")


class StageView(QWidget):
    """Everything the audience sees of one session, free of controls.

    Attributes
    ----------
    shown : Signal(Frame)
        A picture has been handed to the screen.
    """

    shown = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.session: Session | None = None
        self.picture = PictureView(self)
        self.held = PictureView(self)
        self.held.hide()
        self.sentence = Sentence(self)
        self.section = SectionView(self)
        self.chart = ChartView(self)
        self.ranges = RangesView(self)
        self.ranges.hide()
        self._held_pixels: Pixels | None = None
        self._has_traces = False
        self._fed = QElapsedTimer()
        self._first_feed = QTimer(self)
        self._first_feed.setSingleShot(True)
        self._first_feed.setInterval(AFTER_FIRST_MS)
        self._first_feed.timeout.connect(self._feed)
        self._pictures = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._pictures.addWidget(self.held, 1)
        self._pictures.addWidget(self.picture, 1)
        self._below = QHBoxLayout()
        self._below.addWidget(self.section, 1)
        self._below.addWidget(self.chart, 1)
        self._below.addWidget(self.ranges, 1)
        self._box = QVBoxLayout(self)
        self._box.addLayout(self._pictures, PICTURES)
        self._box.addWidget(self.sentence)
        self._box.addLayout(self._below, BELOW)
        self.picture.sized.connect(self._resize_picture)

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(960, 720)

    def set_sizes(self, sizes: theme.Sizes) -> None:
        """Type sizes and spacing."""
        for view in (self.picture, self.held, self.section, self.chart, self.ranges):
            view.set_type_size(sizes.stage)
        self.sentence.set_type_size(sizes.sentence)
        self._pictures.setSpacing(sizes.gap)
        self._below.setSpacing(sizes.gap * 3)
        self._box.setSpacing(sizes.gap)
        # A projector's edge may be cut off: keep words away from it.
        self._box.setContentsMargins(sizes.gap, sizes.gap, sizes.gap, sizes.gap)

    def set_session(self, session: Session) -> None:
        """Show another session."""
        if self.session is not None:
            self.picture.pointed.disconnect(self.session.point)
            self.chart.dragged.disconnect(self.session.drag)
            self.session.framed.disconnect(self.show_frame)
            self.session.changed.disconnect(self.refresh)
        self.session = session
        self.section.hide()
        self.choose_traces(groups(session.scene.traces)[0] if session.scene.traces else ())
        self.picture.pointed.connect(session.point)
        self.chart.dragged.connect(session.drag)
        session.framed.connect(self.show_frame)
        session.changed.connect(self.refresh)
        self._resize_picture()
        self.refresh()

    def choose_traces(self, traces: tuple[Reading, ...]) -> None:
        """Choose the chart's curves."""
        self.chart.set_traces(traces)
        self._has_traces = bool(traces)
        self.chart.setVisible(self._has_traces)
        if self.chart.ready:
            self._feed()

    def set_section_mode(self, mode: str) -> None:
        """Colour the section by "temperature" or "stress"."""
        self.section.set_mode(mode)

    def show_frame(self, frame: Frame) -> None:
        """Show a new picture and all that goes with it."""
        session = self.session
        if session is None:
            return
        scene = session.scene
        if frame.held_pixels is not None:
            self._held_pixels = frame.held_pixels
            self.refresh()
        self._arrange(frame.stage)
        self.picture.show_picture(
            frame.pixels,
            frame.stage,
            frame.marks,
            frame.outlines,
            frame.instrument.gain,
            self._caption(frame),
        )
        self.sentence.say(words.sentence(scene, frame.message))
        section = frame.section
        self.section.setVisible(section is not None)
        self._share_height(alone=section is None)
        if section is not None:
            name = scene.texts.get(section.stress_id, words.choice(section.stress_id))
            fresh, title = frame.last[0].step == 0, scene.texts.get("section_title", "")
            self.section.show_section(section, name, fresh=fresh, title=title)
        chart = frame.chart
        ranged = chart is not None and bool(chart.spans)
        self.chart.setVisible((self._has_traces or chart is not None) and not ranged)
        self.ranges.setVisible(ranged)
        if chart is not None and ranged:
            self.ranges.show_ranges(chart, scene.texts, frame.instrument)
        elif not self.chart.ready:
            # The first picture is painted before the chart's library is loaded.
            if not self._first_feed.isActive():
                self._first_feed.start()
        elif self._fed.elapsed() > CHART_MS or not session.playing:
            self._feed()
        self.picture.setAccessibleName(self.sentence.text())
        self.shown.emit(frame)

    def _feed(self) -> None:
        session = self.session
        if session is not None and session.frame is not None:
            chart = session.frame.chart
            if chart is not None:
                self.chart.show_chart(chart, session.scene.texts)
            else:
                self.chart.feed(session.timeline, session.time_s, session.end_s)
            self._fed.restart()

    def _caption(self, frame: Frame) -> str:
        held = self.session.held if self.session is not None else None
        if held is None:
            return ""
        return f"{words.text('held.now')}: {words.difference(held.settings, frame.settings)}"

    def refresh(self) -> None:
        """Show or take away the held picture; fit the ring of the hand."""
        if self.session is not None:
            scene = self.session.scene
            reach = scene.reach_mm(self.session.settings) if scene.reach_mm is not None else None
            self.picture.set_pointing(scene.point is not None, reach)
        held = self.session.held if self.session is not None else None
        if held is None:
            self._held_pixels = None
            self.held.hide()
            self.held.clear()
            return
        if self._held_pixels is not None:
            self.held.show_picture(
                self._held_pixels,
                held.stage,
                held.marks,
                held.outlines,
                held.instrument.gain,
                words.text("held", time=words.clock(held.time_s)),
            )
        self.held.show()

    def _share_height(self, *, alone: bool) -> None:
        """Most of the height for the picture where no section needs its room."""
        if self._box.stretch(2) != (below := CHART_ALONE if alone else BELOW):
            self._box.setStretch(2, below)

    def _arrange(self, stage: Stage) -> None:
        """Put the held picture where both are largest: beside or above the live one."""
        if self.session is None or self.session.held is None:
            return
        room = self._pictures.geometry()
        beside = min(room.width() / 2 / stage.width_mm, room.height() / stage.height_mm)
        above = min(room.width() / stage.width_mm, room.height() / 2 / stage.height_mm)
        direction = (
            QBoxLayout.Direction.TopToBottom if above > beside else QBoxLayout.Direction.LeftToRight
        )
        if self._pictures.direction() != direction:
            self._pictures.setDirection(direction)

    def _resize_picture(self) -> None:
        if self.session is not None:
            self.session.set_size(*self.picture.picture_size())
