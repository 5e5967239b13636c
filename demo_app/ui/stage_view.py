"""The stage: picture, sentence, section and chart, and no controls."""

from PySide6.QtCore import QElapsedTimer, QSize, Qt, QTimer, Signal
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from demo_app.optics.retardation import Stage
from demo_app.scenes.scene import Reading
from demo_app.ui import theme, words
from demo_app.ui.chart_view import ChartView, groups
from demo_app.ui.fitted_label import Sentence
from demo_app.ui.language_ids import scene_context
from demo_app.ui.picture_view import PictureView
from demo_app.ui.playing import Session
from demo_app.ui.ranges_view import RangesView
from demo_app.ui.request import Frame, Pixels
from demo_app.ui.section_view import SectionView

CHART_MS = 90
AFTER_FIRST_MS = 40
PICTURES, BELOW, CHART_ALONE = 10, 6, 3
"""Shares of the height: the picture, section and chart, a chart without a section."""


class StageView(QWidget):
    """Everything the audience sees of one session, free of controls.

    Parameters
    ----------
    parent : QWidget or None
    leads : bool
        Whether the session makes its pictures for this view's size. Where several views show one
        session, one of them leads and the others scale what they get.

    Attributes
    ----------
    shown : Signal(Frame)
        A picture has been handed to the screen.
    """

    shown = Signal(object)

    def __init__(self, parent: QWidget | None = None, *, leads: bool = True) -> None:
        super().__init__(parent)
        self.setObjectName("stage")
        self.leads = leads
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
        for view in (self.picture, self.held, self.section, self.chart, self.ranges):
            # Only the shares count, however few pixels there are for them.
            view.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self._held_pixels: Pixels | None = None
        self._traces: tuple[Reading, ...] = ()
        self._mode = self.section.mode
        self._frozen = False
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

    @property
    def frozen(self) -> bool:
        """Whether it keeps what it shows while its session goes on."""
        return self._frozen

    def lay_out(self) -> bool:
        """Share the room now; whether the picture shown was made for what it got."""
        self._box.activate()
        self._resize_picture()
        return not self.leads or self.picture.shape == self.picture.picture_size()

    def set_session(self, session: Session) -> None:
        """Show another session."""
        self._leave()
        self.session, self._frozen = session, False
        self.section.hide()
        self.choose_traces(groups(session.scene.traces)[0] if session.scene.traces else ())
        self.picture.pointed.connect(session.point)
        self.chart.dragged.connect(session.drag)
        session.framed.connect(self.show_frame)
        session.changed.connect(self.refresh)
        self._resize_picture()
        self.refresh()

    def let_go(self) -> None:
        """Leave the session, and keep showing its last picture."""
        if self.session is not None:
            self._keep()
            self._leave()
            self.picture.set_pointing(False, None)

    def clear(self) -> None:
        """Leave the session and show nothing; the pictures' memory goes."""
        self._leave()
        self._first_feed.stop()
        self._frozen, self._held_pixels = False, None
        self.picture.clear()
        self.held.clear()
        self.held.hide()

    def set_frozen(self, frozen: bool) -> None:
        """Keep everything as it stands, or show what the session shows by now."""
        if frozen == self._frozen or self.session is None:
            return
        if frozen:
            self._keep()
            self._frozen = True
            self.picture.set_pointing(False, None)
            return
        self._frozen = False
        session = self.session
        self.section.set_mode(self._mode)
        self.chart.set_traces(self._traces, scene_context(session.scene))
        self.refresh()
        if session.frame is not None:
            self.show_frame(session.frame)
            self._feed()

    def set_leads(self, leads: bool) -> None:
        """Whether the session makes its pictures for this view's size."""
        self.leads = leads
        self._resize_picture()

    def feed_now(self) -> None:
        """Put the chart's curves in at once, where they would be waited for."""
        if self._first_feed.isActive():
            self._first_feed.stop()
            self._feed()
            self.chart.settle()

    def _keep(self) -> None:
        """Make the pictures this view's own: a session lends its memory for one picture only."""
        self.feed_now()
        self.picture.own()
        self.held.own()

    def _leave(self) -> None:
        if self.session is not None:
            self.picture.pointed.disconnect(self.session.point)
            self.chart.dragged.disconnect(self.session.drag)
            self.session.framed.disconnect(self.show_frame)
            self.session.changed.disconnect(self.refresh)
            self.session = None

    def choose_traces(self, traces: tuple[Reading, ...]) -> None:
        """Choose the chart's curves; a frozen chart changes once it goes on."""
        self._traces = traces
        if self._frozen:
            return
        context = "" if self.session is None else scene_context(self.session.scene)
        self.chart.set_traces(traces, context)
        self.chart.setVisible(bool(traces))
        if self.chart.ready:
            self._feed()

    def set_section_mode(self, mode: str) -> None:
        """Colour the section by "temperature" or "stress"; a frozen one once it goes on."""
        self._mode = mode
        if not self._frozen:
            self.section.set_mode(mode)

    def show_frame(self, frame: Frame) -> None:
        """Show a new picture and all that goes with it."""
        session = self.session
        if session is None or self._frozen:
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
            frame.dimmed,
        )
        self.sentence.say(words.sentence(scene, frame.message))
        section = frame.section
        self.section.setVisible(section is not None)
        self._share_height(alone=section is None)
        if section is not None:
            texts = words.texts(scene)
            name = texts.get(section.stress_id, words.choice(section.stress_id))
            fresh, title = frame.last[0].step == 0, texts.get("section_title", "")
            self.section.show_section(section, name, fresh=fresh, title=title)
        chart = frame.chart
        ranged = chart is not None and bool(chart.spans)
        self.chart.setVisible((bool(self._traces) or chart is not None) and not ranged)
        self.ranges.setVisible(ranged)
        if chart is not None and ranged:
            self.ranges.show_ranges(chart, words.texts(scene), frame.instrument)
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
        if session is not None and session.frame is not None and not self._frozen:
            chart = session.frame.chart
            if chart is not None:
                self.chart.show_chart(chart, words.texts(session.scene))
            else:
                self.chart.feed(session.timeline, session.time_s, session.end_s)
            self._fed.restart()

    def _caption(self, frame: Frame) -> str:
        if self.session is None or self.session.held is None:
            return ""
        context = scene_context(self.session.scene)
        changed = words.difference(self.session.held.settings, frame.settings, context)
        return f"{words.text('held.now')}: {changed}"

    def refresh(self) -> None:
        """Show or take away the held picture; fit the ring of the hand."""
        if self._frozen:
            return
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
        if self.session is not None and self.leads:
            self.session.set_size(*self.picture.picture_size())
