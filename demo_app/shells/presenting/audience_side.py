"""What the audience sees of a show: in a window of its own, or in the presenter's."""

import datetime
from collections.abc import Callable, Mapping
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

from demo_app.content.running.records import ANSWERED
from demo_app.content.venue import Venue
from demo_app.scenes.scene import Reading
from demo_app.shells.audience import AudienceWindow
from demo_app.ui import show_words
from demo_app.ui.audience_view import LIVE, AudienceView, sizes_of
from demo_app.ui.captioning import Captioning
from demo_app.ui.conductor import Conductor
from demo_app.ui.languages import in_use
from demo_app.ui.playing import Session
from demo_app.ui.preferences import Preferences
from demo_app.ui.request import Frame
from demo_app.ui.show_page import ShowPage

if TYPE_CHECKING:
    from demo_app.ui.languages import Language
    from demo_app.ui.projector_card import ProjectorCard

MIRROR_MS = 2000
FADED_MS = 450


class AudienceSide(QObject):
    """Keeps the audience's view in step with the show.

    Parameters
    ----------
    conductor : Conductor
    page : ShowPage
        The stage in the presenter's window, which is the audience's while there is one screen.
    reader : callable
        Whether the presenter reads what is seen.
    parent : QObject or None

    Attributes
    ----------
    out : AudienceWindow or None
        The audience's own window.
    captioning : Captioning
    preferences : Preferences
    """

    def __init__(
        self,
        conductor: Conductor,
        page: ShowPage,
        reader: Callable[[], bool],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._conductor, self._page, self._reader = conductor, page, reader
        self.out: AudienceWindow | None = None
        self.preferences = Preferences()
        self._second: Language | None = None
        self._card: ProjectorCard | None = None
        self.captioning = Captioning(lambda: conductor.session, self._listened_to, self)
        self.captioning.said.connect(self._caption)
        self._mirroring = QTimer(self)
        self._mirroring.setInterval(MIRROR_MS)
        self._mirroring.timeout.connect(self._copy)
        self._faded = QTimer(self)
        self._faded.setSingleShot(True)
        self._faded.setInterval(FADED_MS)
        self._faded.timeout.connect(self._copy)
        conductor.left.connect(self._let_go)

    @property
    def views(self) -> tuple[AudienceView, ...]:
        """The views that are the audience's: the presenter's window's, or the projector's."""
        return (self._page.view,) if self.out is None else (self.out.view,)

    @property
    def all_views(self) -> tuple[AudienceView, ...]:
        """Every view of the session, the presenter's own copy too."""
        return tuple(dict.fromkeys((self._page.view, *self.views)))

    def end(self) -> None:
        """Stop all timers."""
        self.captioning.stop()
        self._mirroring.stop()
        self._faded.stop()

    def set_out(self, out: AudienceWindow | None) -> None:
        """The audience has a window of its own from now on, or none."""
        was, self.out = self.out, out
        if was is not None:
            # What is not followed must neither hold a session nor lead it, nor come back stale.
            was.view.changed.disconnect(self._mirror)
            was.view.stages.set_leads(False)
            was.view.stages.clear()
        own, session = self._page.view, self._conductor.session
        own.stages.set_leads(out is None)
        for act in (own.show_question, own.show_card, own.show_widget):
            act(None)
        own.set_caption_languages(0)
        own.set_blank(False)
        own.set_frozen(False)
        if out is None:
            self._mirroring.stop()
            return
        out.view.stages.set_leads(True)
        out.view.changed.connect(self._mirror)
        if session is not None:
            out.view.set_session(session)
        self._mirroring.start()
        self.set_preferences(self.preferences)
        # Whoever looks for a copy shall not find the old one, or none.
        self._mirror()

    def set_preferences(self, preferences: Preferences) -> None:
        """How the audience's view looks, moves and speaks."""
        self.preferences = preferences
        self._second = _language(preferences.second)
        for view in self.all_views:
            view.set_motion(preferences.motion)
            view.set_sizing(partial(sizes_of, scale=preferences.look.scale))
        if self.out is not None:
            self.out.set_look(preferences.look)

    def refresh(self, venue: Venue, *, emergency: bool) -> None:
        """Question, cards, captions, frozen, dark: as the show's record says."""
        conductor = self._conductor
        running, sheet = conductor.running, conductor.sheet
        began = not sheet.minutes or show_words.began(running)
        card = None if began else show_words.welcome(sheet, venue, datetime.date.today())
        if emergency:
            card = show_words.pause_card()
        languages = 1 if self._second is None else 2
        for view in self.views:
            view.show_question(show_words.poll_of(running, sheet, conductor.outcome))
            view.show_card(card)
            view.set_caption_languages(languages if running.captions else 0)
            view.set_frozen(running.frozen)
            view.set_blank(running.blank)

    def show_session(self, session: Session, mode: str) -> None:
        """The session of a step is ready; `mode` is what the section shows."""
        for view in self.all_views:
            view.set_session(session)
            view.stages.set_section_mode(mode)

    def set_section_mode(self, mode: str) -> None:
        """Colour the section by "temperature" or "stress"."""
        for view in self.all_views:
            view.stages.set_section_mode(mode)

    def choose_traces(self, traces: tuple[Reading, ...]) -> None:
        """Choose the chart's curves."""
        for view in self.all_views:
            view.stages.choose_traces(traces)

    def show_projector_card(self, venue: Venue, on: bool) -> None:
        """The projector card, or what was there."""
        if on:
            from demo_app.content.projector import Hall
            from demo_app.ui.projector_card import ProjectorCard

            self._card = self._card or ProjectorCard()
            self._card.set_hall(
                Hall(venue.number("picture_height_m"), venue.number("hall_depth_m"))
            )
        for view in self.views:
            view.show_widget(self._card if on else None)

    def _let_go(self) -> None:
        for view in self.all_views:
            view.stages.let_go()

    def _listened_to(self) -> bool:
        """Whether anybody reads what is seen."""
        return self._conductor.running.captions or self._reader()

    def _caption(self, said: str, frame: Frame) -> None:
        """Captions: what the sheet has written for the step, else what is seen."""
        conductor, session = self._conductor, self._conductor.session
        running = conductor.running
        # A frozen picture keeps its words.
        if not running.captions or running.frozen or session is None:
            return
        # What a step teaches would give the answer away while its question is open.
        step = conductor.step
        told_by_now = step.question is None or running.phase in ANSWERED
        written: Mapping[str, str] = step.captions if told_by_now else {}
        # Scenes without a sheet are told in the language in use.
        first = conductor.sheet.language if conductor.sheet.minutes else in_use().code
        spoken = [(first, _language(first), said)]
        if self._second is not None:
            spoken.append((self._second.code, self._second, said))
        lines = [
            written.get(code)
            or (one.spoken(session.scene, frame.settings, frame, frame.instrument) if one else told)
            for code, one, told in spoken
        ]
        for view in self.views:
            view.set_captions(lines)

    def _mirror(self) -> None:
        """Copy what the audience sees now, and again once it has faded in."""
        self._copy()
        self._faded.start()

    def _copy(self) -> None:
        out = self.out
        if out is not None and out.isVisible() and self._page.isVisible():
            state = out.view.state
            said = show_words.state_words(state, self._conductor.running)
            self._page.mirror.copy(out.view, said, live=state == LIVE)


def _language(code: str) -> "Language | None":
    """The language called `code`; None for English, which needs none, and for one not known."""
    if code in ("", "en"):
        return None
    from demo_app.ui.languages import codes, language

    return language(code) if code in codes() else None
