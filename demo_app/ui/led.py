"""What leads a run besides the clock: a finger on the stage, and the pace of the scene's story."""

from typing import Any

from demo_app.ui.engine import Engine
from demo_app.ui.timeline import Place

SLOWEST, FASTEST = 1 / 50, 1000.0
LATE_S = 0.1


class Led(Engine):
    """An engine that takes in touches and follows the scene's pace.

    Attributes
    ----------
    own_speed : bool
        Whether a person has chosen the speed; else it is the scene's own pace.
    """

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.own_speed = False
        self._places: list[Place] = []
        # When a finger last did anything (model time), and whether it is still down.
        self._touched_s: float | None = None
        self._down = False

    @property
    def end_s(self) -> float:
        """Model time at which playing ends, s: a whole story after the last touch."""
        whole = super().end_s
        if self._touched_s is None:
            return whole
        return max(whole, (self.time_s if self._down else self._touched_s) + whole)

    def point(self, place: Place) -> None:
        """A finger or the mouse is at `place` (x, y) on the stage, mm, or was lifted (None).

        Of a hand that moves faster than pictures come, only the last place counts. What is touched
        gets warm at once: a run that stands still goes on.
        """
        if self.scene.point is None or self.here is None:
            return
        self._down = place is not None
        if self._down and self._places and self._places[-1] is not None:
            self._places[-1] = place
        else:
            self._places.append(place)
        if not self._flying:
            self._take_in()
            self._post_now()
        if self._down and not self.playing:
            self._set_playing(True)
            self.changed.emit()

    def drag(self, name: str, x: float, y: float) -> None:
        """A handle of the chart was dragged to (x, y), in the chart's units."""
        before = self.here
        if self.scene.drag is not None and before is not None:
            settings = self.scene.drag(self.settings, before, name, x, y)
            if settings != self.settings:
                self._put(settings)
                self.changed.emit()

    def _follow(self) -> None:
        here = self.here
        if self.own_speed or self._legs or here is None:
            return
        pace = min(max(self.scene.pace(self.settings, here), SLOWEST), FASTEST)
        if pace != self.speed:
            self.speed = self.real_speed = pace
            self._meter.clear()
            self.changed.emit()

    def _take_in(self) -> bool:
        """Put what a finger did into the run, at the last state that has been shown.

        What was computed beyond that state is forgotten. The clock goes on, unless that state is
        long past, as in a long step of fading: then the run goes back to it, so that the finger
        does not touch before it came.
        """
        before, places = self.here, tuple(self._places)
        self._places = []
        point = self.scene.point
        if point is None or before is None or not places:
            return False
        after = before
        for place in places:
            after = point(self.settings, after, place)
        self.timeline.change(after, self.settings, *places)
        self._touched_s = before.time_s
        if self._break_s is not None and self._break_s > before.time_s:
            self._break_s = None
        if self._shown_s - before.time_s > LATE_S * max(1.0, self.speed):
            self._shown_s = self._wanted = before.time_s
        return True

    def _restart(self, *, ask: bool = True) -> None:
        self._places, self._touched_s, self._down = [], None, False
        super()._restart(ask=ask)
