"""What keys and buttons do to a session, by the name of the act."""

from collections.abc import Callable, Mapping
from functools import partial

from demo_app.ui.playing import Session
from demo_app.ui.transport import SPEEDS

TURN_DEG = 5.0
SCENE_BUTTONS = 9


def _shift_speed(by: int, session: Session) -> None:
    faster = [speed for speed in SPEEDS if speed > session.speed * 1.001]
    slower = [speed for speed in SPEEDS if speed < session.speed * 0.999]
    if by > 0 and faster:
        session.set_speed(faster[0])
    elif by < 0 and slower:
        session.set_speed(slower[-1])


def _act(place: int, session: Session) -> None:
    if place < len(session.scene.actions):
        session.act(session.scene.actions[place])


def _cross(session: Session) -> None:
    session.set_light(analyser_deg=0.0 if session.instrument.crossed else 90.0)


def _quarter(session: Session) -> None:
    session.set_light(quarter_wave=not session.instrument.quarter_wave)


def _turn(by: float, session: Session) -> None:
    session.set_light(polarizer_deg=(session.light.polarizer_deg + by) % 180)


SESSION_ACTS: Mapping[str, Callable[[Session], object]] = {
    "play": Session.toggle,
    "step_back": lambda session: session.step(-1),
    "step_on": lambda session: session.step(1),
    "faster": partial(_shift_speed, 1),
    "slower": partial(_shift_speed, -1),
    "reset": Session.reset,
    "hold": Session.hold,
    "replay": Session.replay_break,
    "brighten": Session.brighten,
    "cross": _cross,
    "quarter": _quarter,
    "turn_back": partial(_turn, -TURN_DEG),
    "turn_on": partial(_turn, TURN_DEG),
    "first_button": partial(_act, 0),
    **{f"button.{place + 1}": partial(_act, place) for place in range(SCENE_BUTTONS)},
}
"""Acts that need the session alone."""
