"""A visitor's way through the kiosk: the inviting view, the list, a step, another language."""

from dataclasses import replace
from typing import Any

from PySide6.QtCore import QTimer, Signal

from demo_app.shells.kiosking import idling
from demo_app.shells.kiosking import where as ways
from demo_app.shells.kiosking.house import count
from demo_app.shells.kiosking.stepping import show_step
from demo_app.shells.kiosking.telling import Telling
from demo_app.shells.kiosking.where import ATTRACT, HOME, LANGUAGES, STEP, Where
from demo_app.ui.answering import Outcome
from demo_app.ui.kiosk import bar as bars
from demo_app.ui.kiosk.home import EASE
from demo_app.ui.request import Frame
from demo_app.ui.timeline import TIME_EPS_S

BETWEEN_MS = 2500
"""How long a scenery's last picture stands, ms."""


class Touring(Telling):
    """A pane that visitors walk through.

    Attributes
    ----------
    invited : Signal()
        The inviting view's first picture is there.
    """

    invited = Signal()

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._hurrying = self._paused = self._started = self._closed = False
        self._failed = 0
        self._scenery, self._scenery_s = 0, self._clock()
        self._next_scenery = QTimer(self)
        self._next_scenery.setSingleShot(True)
        self._next_scenery.setInterval(BETWEEN_MS)
        self._next_scenery.timeout.connect(self._turn_scenery)

    def go(self, where: Where) -> None:
        """Show another place, or the same in other words."""
        before, self.where = self.where, where
        page = self.pages[where.page]
        fresh = before.page == STEP or before.under == STEP or self.runner.session is None
        if where.page in {ATTRACT, HOME} and fresh:
            self._show_scenery()
        for one in self.pages.values():
            one.setVisible(one is page)
        if where.page == STEP:
            self._fill_step()
        self._arrange()
        self.stage.set_pointing(where.page == STEP and where.phase == ways.TRY and self._point())
        self.bar.show_ways(ways=where.page != ATTRACT, home=where.page != HOME)
        self._show_playing()
        away = where.page == ATTRACT
        if away != self.idle.away:
            self.idle = idling.moved(self.idle, self._clock(), away=away)
        moved = (before.page, before.step, before.phase) != (where.page, where.step, where.phase)
        if moved:
            self._focus(page.first())
            self.announce(page.summary())

    def begin_visit(self) -> None:
        """Somebody has touched the inviting view."""
        if self.where.page == ATTRACT:
            count(self.house, "start")
            self.go(ways.home())

    def open_step(self, name: str) -> None:
        """Open a step."""
        if name not in self.house.steps:
            return
        count(self.house, "step", name)
        self._open(name)

    def set_language(self, tag: str) -> None:
        """Speak another language."""
        if tag not in self.house.languages:
            return
        self.tag = tag
        count(self.house, "language", tag)
        self._speak()
        where = self.where
        if where.page == LANGUAGES:
            where = ways.back(where)
            # Nobody chooses a language to go on looking.
            if where.page == ATTRACT:
                count(self.house, "start")
                where = ways.home()
        self.go(where)

    def set_ease(self, name: str, on: bool) -> None:
        """Make something easier, or as it was."""
        if name in EASE:
            self.ease = replace(self.ease, **{name: on})
            self._take_ease()
            if name == "still" and on:
                self.runner.set_playing(False)
            self.announce(f"{self.spoken.words[name]}: {self.spoken.words['on' if on else 'off']}")

    def _open(self, name: str) -> None:
        self._paused = self._hurrying = False
        self._next_scenery.stop()
        step = self.house.step(self.tag, name)
        self.runner.open(step, play=not self.ease.still)
        self._set_description(step.description)
        self.go(ways.opened(name))
        self.announce(step.description)

    def _predict(self, answer: int) -> None:
        if self.where.page == STEP and self.where.phase == ways.PREDICT:
            count(self.house, "prediction", self.where.step, answer)
            self.go(ways.predicted(self.where, answer))

    def _act(self, name: str) -> None:
        if self.where.page != STEP:
            return
        if name == "do" or (name == "again" and self.where.phase == ways.SEE):
            self._hurrying = False
            self.go(ways.done(self.where))
            self.runner.answer(play=not self.ease.still)
        elif name == "again":
            self.runner.again()
        elif name == "next":
            self._explain()
        elif name == "try":
            self.go(ways.tried(self.where))
        elif name == "other":
            self.go(ways.home())

    def _explain(self) -> None:
        if self.where.outcome is None:
            self._hurrying = True
            self.announce(self.spoken.words["working"])
            self.runner.hurry()
        else:
            self.go(ways.explained(self.where))

    def _answered(self, outcome: Outcome) -> None:
        self.where = ways.answered(self.where, outcome)
        if self._hurrying:
            self._hurrying = False
            self.go(ways.explained(self.where))

    def _press_bar(self, name: str) -> None:
        if name == bars.BACK:
            self._back()
        elif name == bars.HOME:
            if self.where.page == STEP:
                count(self.house, "reset", "home")
            self.go(ways.home())
        elif name == bars.PAUSE:
            self._pause()
        else:
            self.go(ways.asked_for_languages(self.where))

    def _back(self) -> None:
        if self.overlay is self.staff.pad:
            self.staff.close()
        if self.overlay is not None or self.where.page == ATTRACT:
            return
        before, where = self.where, ways.back(self.where)
        if before.phase == ways.SEE and before.page == where.page == STEP:
            step = self.house.step(self.tag, where.step)
            self.runner.open(step, play=not self.ease.still)
        self.go(where)

    def _pause(self) -> None:
        waiting = self._next_scenery.isActive()
        if self.runner.playing or waiting:
            self._paused = True
            self._next_scenery.stop()
            self.runner.set_playing(False)
            self.announce(self.spoken.words["picture_still"])
        else:
            self._paused = False
            self.runner.set_playing(True)
        self._show_playing()

    def _fill_step(self) -> None:
        step = self.house.step(self.tag, self.where.step)
        show_step(
            self.step_page,
            self.where,
            step,
            self.spoken,
            self._scene(step.scene),
            self._language(),
        )

    def _point(self) -> bool:
        return self.house.step(self.tag, self.where.step).point

    def _show_playing(self) -> None:
        session = self.runner.session
        waiting = self._next_scenery.isActive()
        moves = session is not None and (session.playing or self._paused or waiting)
        if self.where.page == STEP and self.where.phase not in {ways.PREDICT, ways.DO}:
            moves = session is not None and (
                session.playing or session.time_s < session.end_s - TIME_EPS_S
            )
        # Some scenes count their time in numpy's numbers, whose truth Qt does not take.
        self.bar.show_playing(playing=self.runner.playing or waiting, moves=bool(moves))

    def _show_scenery(self) -> None:
        if self._closed:
            return
        scenery = self.house.texts.attract[self._scenery % len(self.house.texts.attract)]
        self._scenery_s = self._clock()
        self._next_scenery.stop()
        self._paused = False
        self.runner.show(scenery, play=not self.ease.still)
        self._set_description(self.spoken.words["picture"])

    def _turn_scenery(self) -> None:
        self._scenery += 1
        if self.where.page in {ATTRACT, HOME} or self.where.under in {ATTRACT, HOME}:
            self._show_scenery()

    def _ended(self) -> None:
        if self.where.page != STEP and not self._paused:
            self._next_scenery.start()
            self._show_playing()
        elif self.where.page == STEP:
            self._captioning.look()

    def _shown(self, _frame: Frame) -> None:
        self._failed = 0
        if not self._started:
            self._started = True
            self.invited.emit()
