"""How fast the story of the scene `cooling` is told: the same fall of temperature each second."""

import numpy as np

from demo_app.physics.heat import ZERO_C
from demo_app.physics.material_files import material
from demo_app.physics.oven import Schedule, ahead
from demo_app.scenes.cooling_parts.settings import Settings
from demo_app.scenes.cooling_parts.state import State
from demo_app.scenes.scene import round_pace

_FALL, _FALL_STIFF = 25.0, 60.0
"""Fall of temperature in a second of the story, K: while stress is being born, and after it."""
_HOLD = 4.0
"""Length of the hold in the story, s."""
_FIRST = 5.0
"""Pace of the first instants in the air, when there is nothing yet to tell it from."""


def pace(settings: Settings, state: State, told: Schedule) -> float:
    """Model seconds per second."""
    if settings.way == "oven" and not state.oven.cooling:
        return round_pace(told.hold_time / _HOLD)
    hottest = max(state.history[-1].inside) + ZERO_C
    fall = _FALL if hottest > material(settings.glass).strain_point else _FALL_STIFF
    if settings.way == "oven":
        falling = -ahead(told, state.oven).rate(0.0)
        if falling > 0:
            return round_pace(fall / falling)
    return round_pace(fall / _falling(state)) if state.step > 1 else _FIRST


def _falling(state: State) -> float:
    """Fall of the mean temperature over the last third of the time since the piece was moved, K/s.

    Over a whole third, as the first instants' skin alone would be far too fast.
    """
    since = state.moved_s + (state.time_s - state.moved_s) * 2 / 3
    times = [one.time for one in state.history]
    means = [(one.inside[0] + one.outside[0]) / 2 for one in state.history]
    before = float(np.interp(since, times, means))
    return max(1e-6, (before - means[-1]) / max(state.time_s - since, 1e-6))
