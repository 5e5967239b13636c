"""All that an audience sees, and nothing else: the stage and what may lie over it."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import QRect, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QWidget

from demo_app.ui import theme
from demo_app.ui.captions import CaptionStrip
from demo_app.ui.cards import Card, CardView
from demo_app.ui.fader import Fader
from demo_app.ui.playing import Session
from demo_app.ui.question_view import Poll, QuestionView
from demo_app.ui.stage_view import StageView
from demo_app.ui.two_stages import TwoStages

FULL_HD = 1080
PACE_MS = 350
"""Least time between dark and not dark: fewer than three changes a second, whoever leans on a key
(WCAG 2.2, 2.3.1 allows three flashes, which are six changes)."""
LIVE, FROZEN, BLANK = "live", "frozen", "blank"
QUESTION, CARD, WIDGET = "question", "card", "widget"


def sizes_of(height: int, scale: float = 1.0) -> theme.Sizes:
    """Type sizes for a picture `height` pixels high: shares of it, and nothing else.

    Far from the screen only the share counts, whatever the pixels' density is.

    Parameters
    ----------
    height : int
        Of the picture, device-independent pixels.
    scale : float
        Larger or smaller than usual.
    """
    usual = theme.Sizes.of(FULL_HD)
    share = height / FULL_HD
    return theme.Sizes(
        sentence=max(round(usual.sentence * share * scale), 1),
        stage=max(round(usual.stage * share * scale), 1),
        panel=max(round(usual.panel * share * scale), 1),
        gap=max(round(usual.gap * share), 1),
    )


class AudienceView(QWidget):
    """A stage with overlays: dark, frozen, a question, a card, any other widget, captions.

    From the top, the first of these that is there is seen: an alert card, the dark, a card, a
    widget, a question, the stage.

    Parameters
    ----------
    parent : QWidget or None
    leads : bool
        Whether sessions make their pictures for this view's size.
    sizes_of : callable
        Type sizes and spacing for a height in pixels.

    Attributes
    ----------
    stages : TwoStages
        The scenes, one passing into the next; its `shown` and `tapped` tell of them.
    changed : Signal()
        The audience sees another thing than before: another state, session, question, card.
    """

    changed = Signal()

    def __init__(
        self,
        parent: QWidget | None = None,
        *,
        leads: bool = True,
        sizes_of: Callable[[int], theme.Sizes] = sizes_of,
    ) -> None:
        super().__init__(parent)
        self.setObjectName("stage")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._sizes_of = sizes_of
        self._sizes: theme.Sizes | None = None
        self.stages = TwoStages(self, leads=leads)
        self.stages.swapped.connect(self.changed)
        self.question, self.card = QuestionView(self), CardView(self)
        self._dark = QWidget(self)
        self._dark.setObjectName("stage")
        self._dark.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._widget: QWidget | None = None
        self.captions = CaptionStrip(self)
        self._fader = Fader(self)
        self._asked = self._blank = self._blank_wanted = False
        self._motion = True
        self._pace = QTimer(self)
        self._pace.setSingleShot(True)
        self._pace.setInterval(PACE_MS)
        self._pace.timeout.connect(self._darken)
        self._arrange()

    @property
    def stage(self) -> StageView:
        """The stage that is seen; another one after each new session."""
        return self.stages.stage

    @property
    def state(self) -> str:
        """`LIVE`, `FROZEN`, `BLANK`, `QUESTION`, `CARD` or `WIDGET`."""
        over = self._over()
        if over is None:
            return FROZEN if self.stages.frozen else LIVE
        named = {self._dark: BLANK, self.card: CARD, self.question: QUESTION}
        return named.get(over, WIDGET)

    @property
    def blank(self) -> bool:
        """Whether a dark stage is asked for."""
        return self._blank_wanted

    @property
    def frozen(self) -> bool:
        """Whether the stage keeps what it showed."""
        return self.stages.frozen

    def sizeHint(self) -> QSize:  # noqa: D102
        return QSize(960, 720)

    def set_session(self, session: Session) -> None:
        """Show another session as soon as its first picture is there."""
        self.stages.set_session(session)

    def set_blank(self, blank: bool) -> None:
        """A dark stage, or what was there before; at most every `PACE_MS`."""
        self._blank_wanted = blank
        if not self._pace.isActive():
            self._darken()

    def set_frozen(self, frozen: bool) -> None:
        """Keep picture, sentence, section and chart as they stand while the session goes on."""
        if frozen != self.stages.frozen:
            self.stages.set_frozen(frozen)
            self.changed.emit()

    def show_question(self, poll: Poll | None) -> None:
        """Put a question over the stage; None takes it away."""
        if poll is not None or self._asked:
            self._over_with(lambda: self._ask(poll), fading=(poll is not None) != self._asked)

    def show_card(self, card: Card | None) -> None:
        """Put a card over the stage; None takes it away."""
        if card != self.card.card:
            self._over_with(lambda: self.card.show_card(card), fading=True)

    def show_widget(self, widget: QWidget | None) -> None:
        """Put any widget over the stage, captions too; None gives the last one back.

        The view is its parent while it shows it; one that was shown before has none.
        """
        if widget is not self._widget:
            self._over_with(lambda: self._put_widget(widget), fading=True)

    def set_caption_languages(self, number: int) -> None:
        """Keep room for captions in 0, 1 or 2 languages."""
        self.captions.set_languages(number)
        self._place()
        self._arrange()

    def set_captions(self, lines: Sequence[str]) -> None:
        """Show what is said, in each language that there is room for."""
        self.captions.show_lines(lines)

    def set_motion(self, motion: bool) -> None:
        """Whether one thing fades into the next; otherwise it changes at once."""
        self._motion = motion
        self.stages.set_motion(motion)
        if not motion:
            self._fader.hide()

    def set_interactive(self, interactive: bool) -> None:
        """Whether mouse and fingers reach the stage."""
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents, not interactive)

    def set_sizing(self, sizes_of: Callable[[int], theme.Sizes]) -> None:
        """Type sizes and spacing for a height in pixels."""
        self._sizes_of = sizes_of
        self._take_sizes()

    def _ask(self, poll: Poll | None) -> None:
        self._asked = poll is not None
        if poll is not None:
            self.question.show_poll(poll)

    def _put_widget(self, widget: QWidget | None) -> None:
        if self._widget is not None:
            self._widget.hide()
            self._widget.setParent(None)
        self._widget = widget
        if widget is not None:
            widget.setParent(self)
            widget.setGeometry(self.rect())

    def _darken(self) -> None:
        if self._blank_wanted != self._blank:
            self._pace.start()
            self._over_with(self._switch_blank, fading=True)

    def _switch_blank(self) -> None:
        self._blank = self._blank_wanted

    def _over(self) -> QWidget | None:
        """What lies over the stage."""
        card = self.card.card
        layers = (
            (self.card, card is not None and card.alert),
            (self._dark, self._blank),
            # The projector card is for the time before a show, when the welcome is there too.
            (self._widget, self._widget is not None),
            (self.card, card is not None),
            (self.question, self._asked),
        )
        return next((layer for layer, there in layers if there), None)

    def _over_with(self, act: Callable[[], None], *, fading: bool) -> None:
        """Change what lies over the stage, and let what was seen fade into it."""
        was = self.grab() if fading and self._motion and self.isVisible() else None
        act()
        self._arrange()
        if was is not None:
            self._fader.fade(was)
        self.changed.emit()

    def _arrange(self) -> None:
        """Show the topmost layer alone: what is hidden is not painted."""
        over = self._over()
        for layer in (self.stages, self._dark, self.card, self.question, self._widget):
            if layer is not None:
                layer.setVisible(layer is over or (over is None and layer is self.stages))
        # Captions tell of the stage: below a card, an emergency's above all, they would mislead.
        bare = over is not None and over in (self._dark, self.card, self._widget)
        self.captions.setVisible(self.captions.languages > 0 and not bare)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: D102
        super().resizeEvent(event)
        self._fader.hide()
        self._take_sizes()
        self._place()

    def _take_sizes(self) -> None:
        sizes = self._sizes_of(self.height())
        if sizes != self._sizes:
            self._sizes = sizes
            for part in (self.stages, self.question, self.card, self.captions):
                part.set_sizes(sizes)
            self._place()

    def _place(self) -> None:
        """Captions along the lower edge, all else above them."""
        low = self.captions.room()
        room = QRect(0, 0, self.width(), max(self.height() - low, 1))
        for part in (self.stages, self.question, self.card):
            part.setGeometry(room)
        self.captions.setGeometry(0, room.bottom() + 1, self.width(), low)
        self._dark.setGeometry(self.rect())
        if self._widget is not None:
            self._widget.setGeometry(self.rect())
