"""What the kiosk does by the clock: idle visitors, opening hours, cleaning, the screen's care."""

from typing import Any

from PySide6.QtCore import QTimer

from demo_app.content.kiosk.hours import is_open, local, next_opening
from demo_app.shells.kiosking import idling
from demo_app.shells.kiosking.house import count
from demo_app.shells.kiosking.resting import give_back
from demo_app.shells.kiosking.touring import Touring
from demo_app.shells.kiosking.where import ATTRACT, Where

TICK_MS = 200
CLEANING_S = 30.0
STAFF_IDLE_S = 120.0
LONGEST_SCENERY_S = 45.0
HOURS_S = 5.0
"""Time between two looks at the hours, s."""
TOLD_S = 10.0
"""How long the dark screen says that it is closed, once touched, s."""


class Watching(Touring):
    """A pane that looks at the clock."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._cleaned_s: float | None = None
        self._told_s: float | None = None
        self._looked_s = -HOURS_S
        self._tick = QTimer(self)
        self._tick.setInterval(TICK_MS)
        self._tick.timeout.connect(self.look)

    def look(self) -> None:
        """Look at the clock; the timer does, and tests may."""
        now_s = self._clock()
        if self._cleaned_s is not None:
            self._look_at_cleaning(now_s, self._cleaned_s)
            return
        if now_s - self._looked_s >= HOURS_S:
            self._looked_s = now_s
            self._look_at_hours()
            self._move_body(now_s)
            self._take_light(now_s)
        if self._told_s is not None and now_s - self._told_s > TOLD_S:
            self._told_s = None
            self.closed.say("")
        if self.staff.over is not None:
            if now_s - self.idle.since_s > STAFF_IDLE_S:
                self.staff.close()
            return
        self._look_at_idle(now_s)
        if (
            self.where.page == ATTRACT
            and self.runner.playing
            and now_s - self._scenery_s > LONGEST_SCENERY_S
        ):
            self._turn_scenery()

    def rest(self) -> None:
        """Back to the inviting view as nobody has touched it: language, looks, everything."""
        self._hide_warning()
        self.tag, self.ease = self.house.language, self._usual()
        self._set_keyed(False)
        self._speak()
        self._take_ease()
        if self._paused and self.where.page == ATTRACT:
            self._show_scenery()
        self.go(Where())

    def clean(self) -> None:
        """Hear nothing for a while: the screen is wiped."""
        self._cleaned_s = self._clock() + CLEANING_S
        self.guard.locked = True
        self.cleaning.say(self.spoken.word("cleaning", seconds=round(CLEANING_S)))
        self._show_over(self.cleaning)

    def _look_at_idle(self, now_s: float) -> None:
        state = self.idle.state(now_s)
        if state == idling.WARNING:
            left = max(round(self.idle.left_s(now_s)), 1)
            fresh = self.warning.isHidden()
            words = self.spoken.words
            line = self.spoken.word("goes_back", seconds=left)
            self.warning.say(words["still_there"], line, words["stay"])
            if fresh:
                self.guard.waking = True
                self._show_over(self.warning)
            elif left in {10, 5}:
                self.announce(line)
        elif not self.warning.isHidden():
            self._hide_warning()
        if state == idling.GONE:
            count(self.house, "reset", "idle")
            self.rest()
            give_back()
        elif self.idle.away and now_s - self.idle.since_s > self.idle.idle_s and self._touched():
            self.rest()

    def _touched(self) -> bool:
        usual = self.tag == self.house.language and self.ease == self._usual()
        return not usual or self._paused

    def _look_at_cleaning(self, now_s: float, until_s: float) -> None:
        left = until_s - now_s
        if left > 0:
            self.cleaning.say(self.spoken.word("cleaning", seconds=max(round(left), 1)))
            return
        self._cleaned_s = None
        self.guard.locked = False
        self._hide_over(self.cleaning)
        self.idle = idling.touched(self.idle, now_s)
        self.rest()

    def _look_at_hours(self) -> None:
        now_s = self._wall()
        shut = not is_open(self.house.site.hours, now_s)
        if shut == self._closed or (shut and self.where.page != ATTRACT):
            return
        self._closed = shut
        if shut:
            self._next_scenery.stop()
            self.runner.end()
            self.closed.say("")
            self.closed.set_veil(255)
            self._show_over(self.closed, quiet=True)
        else:
            self._hide_over(self.closed)
            self._show_scenery()
            self.go(Where())

    def _tell_closed(self) -> None:
        opens_s = next_opening(self.house.site.hours, self._wall())
        line = ""
        if opens_s is not None:
            at = local(opens_s)
            when = f"{self.spoken.words[f'day.{at.weekday()}']} {at:%H:%M}"
            line = self.spoken.word("opens", when=when)
        self._told_s = self._clock()
        self.closed.say(self.spoken.words["closed"], line)
        self.announce(self.closed.summary())

    def _answer_warning(self) -> None:
        self.idle = idling.touched(self.idle, self._clock())
        self._hide_warning()

    def _hide_warning(self) -> None:
        self.guard.waking = False
        self._hide_over(self.warning)

    def _active(self) -> None:
        self.idle = idling.touched(self.idle, self._clock())
        if self.dark.share != self.house.site.brightness:
            self._take_light(self._clock())
