"""The kiosk's window: its parts joined, the staff's door, and what happens after a fault."""

import time
from collections import deque
from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QPointF, QTimer, Signal

from demo_app.scenes import catalogue
from demo_app.scenes.scene import Scene
from demo_app.shells.kiosking import where as ways
from demo_app.shells.kiosking.house import House, count
from demo_app.shells.kiosking.watching import HOURS_S, Watching
from demo_app.shells.kiosking.where import ATTRACT, PHASES, STEP, Where
from demo_app.ui.kiosk.corners import LEFT, RIGHT, Corners, pressed, released
from demo_app.ui.playing import Session

FAULTS, FAULTS_S = 5, 60.0
"""So many faults in so short a time, and the window ends itself for another start."""
QUIT, FAULTY, ANEW = 0, 1, 2
"""Why it ended: staff quit, faults, other texts."""


class KioskWindow(Watching):
    """Everything a visitor sees; see `Pane` for its parameters.

    Attributes
    ----------
    left : Signal(int)
        It is time to end: `QUIT`, `FAULTY` or `ANEW`.
    """

    left = Signal(int)

    def __init__(
        self,
        house: House,
        *,
        scene: Callable[[str], Scene] = catalogue.scene,
        clock: Callable[[], float] = time.monotonic,
        wall: Callable[[], float] = time.time,
    ) -> None:
        super().__init__(house, scene=scene, clock=clock, wall=wall)
        self._corners = Corners()
        self._faults: deque[float] = deque(maxlen=FAULTS)
        self._connect_parts()
        self._take_house(house)

    def begin(self) -> None:
        """Show the inviting view; the clockwork starts."""
        self.guard.install()
        self._tick.start()
        self._look_at_hours()
        self.go(Where())

    def end(self) -> None:
        """Let go of everything; may be called twice."""
        self._leaving = True
        self.guard.remove()
        for timer in (self._tick, self._next_scenery):
            timer.stop()
        self._captioning.stop()
        self.runner.end()
        self.worker.end()

    def recover(self, problem: str) -> None:
        """Something went wrong that nobody caught: the step begins anew."""
        now_s = self._clock()
        self.take_problem(problem)
        self._faults.append(now_s)
        if len(self._faults) == FAULTS and now_s - self._faults[0] < FAULTS_S:
            self._leave(FAULTY)
            return
        count(self.house, "reset", "fault")
        if self.where.page == STEP and self.where.phase in PHASES:
            self._open(self.where.step)
            self.announce(self.spoken.words["step_reset"])
        elif self.where.page == ATTRACT:
            self._turn_scenery()
            self.go(Where())
        else:
            self.go(ways.home())

    def fail(self, problem: str) -> None:
        """A run cannot be shown: once more from its start, then without it."""
        self._failed += 1
        self.take_problem(problem)
        count(self.house, "reset", "fault")
        if self._failed > 3 * len(self.house.texts.attract):
            return
        # Not within the signal of what failed.
        failed = self.runner.session
        QTimer.singleShot(0, self, lambda: self._after_failure(failed))

    def take_problem(self, line: str) -> None:
        """A line for staff."""
        self.house = self.house.with_problem(line)
        self.staff.house = self.house

    def knock(self) -> None:
        """Ask for the staff's code."""
        self._hide_warning()
        if self._focused is None:
            self._focused = self.focusWidget()
        self.staff.pad.setGeometry(self.rect())
        self.staff.page.setGeometry(self.rect())
        self.body.setEnabled(False)
        self.staff.knock(self.house.texts.spoken[self.house.language])
        self.dark.raise_()
        self._focus(self.staff.pad.first())

    def _connect_parts(self) -> None:
        self.invite.started.connect(self.begin_visit)
        self.home.opened.connect(self.open_step)
        self.home.eased.connect(self.set_ease)
        self.step_page.answered.connect(self._predict)
        self.step_page.acted.connect(self._act)
        self.step_page.chosen.connect(self.runner.set_setting)
        self.languages.chosen.connect(self.set_language)
        self.bar.pressed.connect(self._press_bar)
        self.warning.answered.connect(self._answer_warning)
        self.closed.answered.connect(self._tell_closed)
        for signal, act in (
            (self.staff.changed, self._take_house),
            (self.staff.wiping, self.clean),
            (self.staff.closed, self._close_staff),
            (self.staff.quitting, lambda: self._leave(QUIT)),
            (self.staff.anew, lambda: self._leave(ANEW)),
            (self.runner.left, self.stage.let_go),
            (self.runner.made, self.stage.set_session),
            (self.runner.changed, self._show_playing),
            (self.runner.answered, self._answered),
            (self.runner.ended, self._ended),
            (self.runner.failed, self.fail),
            (self.stage.shown, self._shown),
            (self.guard.active, self._active),
            (self.guard.keyed, self._set_keyed),
            (self.guard.backed, self._back),
            (self.guard.woken, self._answer_warning),
            (self.guard.quitting, self._let_go),
            (self.guard.pressed, self._pressed),
            (self.guard.released, self._released),
        ):
            signal.connect(act)

    def _after_failure(self, failed: Session | None) -> None:
        if self.runner.session is not failed:
            return
        if self.where.page != STEP:
            self._turn_scenery()
        elif self._failed > 1:
            self._turn_scenery()
            self.go(ways.home())
            self._show_scenery()
        else:
            self._open(self.where.step)

    def _close_staff(self) -> None:
        self._hide_over(self.staff.pad)
        self.rest()

    def _pressed(self, place: QPointF) -> None:
        self._corners = pressed(self._corners, self._corner(place), self._clock())

    def _released(self, place: QPointF) -> None:
        self._corners = released(self._corners, self._corner(place), self._clock())
        if self._corners.complete:
            self._corners = Corners()
            if self.staff.over is None and self._cleaned_s is None:
                # After the release has done what it does.
                QTimer.singleShot(0, self, self.knock)

    def _corner(self, place: QPointF) -> str:
        side = 2 * self.measures.target
        top = self.measures.low.top() if self.measures.tall else 0
        if not top <= place.y() < top + side:
            return ""
        if place.x() < side:
            return LEFT
        return RIGHT if place.x() >= self.width() - side else ""

    def _take_house(self, house: House) -> None:
        self.house = house
        self.idle = replace(self.idle, idle_s=house.site.idle_s, warning_s=house.site.warning_s)
        self.runner.calm = house.site.calm
        if self.tag not in house.languages:
            self.tag = house.language
        self.home.show_steps(house.steps)
        self.languages.show_languages({tag: one.name for tag, one in house.languages.items()})
        self.ease = self._usual() if self.where.page == ATTRACT else self.ease
        self._looked_s = -HOURS_S
        self._speak()
        self._take_ease()
        self._take_light(self._clock())

    def _let_go(self) -> None:
        """From now on the window may be closed."""
        self._leaving = True

    def _leave(self, status: int) -> None:
        self._let_go()
        self.left.emit(status)
