"""What keys, buttons and the strip do in a lesson, by the name of the act; all others do nothing.

Acts that would show what no lesson has written are not here: favourites, scenes to choose,
contingencies.
"""

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import QStandardPaths, Qt

from demo_app.content.running import walking
from demo_app.content.running.records import DRIVE
from demo_app.ui.keymap import ACTS as EVERY
from demo_app.ui.keymap import Keymap, told_keys
from demo_app.ui.saving import save_picture
from demo_app.ui.session_acts import SESSION_ACTS

if TYPE_CHECKING:
    from demo_app.shells.teaching.window import OutreachWindow

STRIP = ("return", "freeze", "captions", "jump", "reset", "emergency")
"""Acts of the strip, which a remote reaches."""
BACK_TO_LESSON = frozenset({"next", "strip", "return"})
"""What ends a group's task, so that every button of a remote in the teacher's pocket does."""
_PUPILS = frozenset(
    {"play", "step_back", "step_on", "faster", "slower", "reset", "replay", "first_button"}
)


def act(window: "OutreachWindow", name: str) -> None:
    """Do the act called `name`, if it belongs to this part of the lesson."""
    word, _, number = name.partition(".")
    if window.running.phase == DRIVE:
        _drive(window, name, word)
    elif name in SESSION_ACTS:
        if window.session is not None and window.teaching:
            SESSION_ACTS[name](window.session)
    elif name in ACTS:
        ACTS[name](window)
    elif word in NUMBERED and number.isdigit():
        NUMBERED[word](window, int(number))


def _drive(window: "OutreachWindow", name: str, word: str) -> None:
    """While pupils drive: the run, and the way back to the lesson."""
    if name in BACK_TO_LESSON:
        window.conductor.next_()
    elif name == "back":
        window.conductor.back()
    elif name == "full_screen":
        _full_screen(window)
    elif (name in _PUPILS or word == "button") and window.session is not None:
        SESSION_ACTS[name](window.session)


def taught_keys(keymap: Keymap) -> Keymap:
    """The keys without those that do nothing in a lesson."""
    for name in EVERY:
        word = name.partition(".")[0]
        if name not in (*ACTS, *SESSION_ACTS) and word not in NUMBERED:
            keymap = keymap.clear(name)
    return keymap


def _next(window: "OutreachWindow") -> None:
    window.show_page_called("show")
    window.conductor.next_()


def _back(window: "OutreachWindow") -> None:
    window.show_page_called("show")
    window.conductor.back()


def jump(window: "OutreachWindow", place: int) -> None:
    """Open a step of the lesson."""
    window.show_page_called("show")
    if window.running.show_begun is None:
        window.conductor.next_()
    window.conductor.jump(place)


def _blank(window: "OutreachWindow") -> None:
    window.conductor.take(walking.blank(window.running))


def _freeze(window: "OutreachWindow") -> None:
    window.conductor.take(walking.freeze(window.running))


def _caption(window: "OutreachWindow") -> None:
    window.conductor.take(walking.caption(window.running))


def _return(window: "OutreachWindow") -> None:
    window.conductor.return_()


def _strip(window: "OutreachWindow") -> None:
    window.open_strip()


def _ask_jump(window: "OutreachWindow") -> None:
    steps = window.conductor.sheet.steps
    window.strip.open(
        [(f"jump.{place}", f"{place + 1}  {step.title}") for place, step in enumerate(steps)]
    )


def _emergency(window: "OutreachWindow") -> None:
    window.set_emergency(not window.emergency_on)


def _section(window: "OutreachWindow") -> None:
    mode = "stress" if window.stage.section.mode == "temperature" else "temperature"
    window.panel.light.section.show_value(mode)
    window.side.set_section_mode(mode)


def _tint(window: "OutreachWindow") -> None:
    if window.session is not None and window.teaching:
        plate = window.session.light.tint_plate_nm == 0
        window.panel.light.controls["tint"].chosen.emit("tint", plate)


def save(window: "OutreachWindow") -> None:
    """Save the picture shown, and say where."""
    if window.session is not None and window.session.frame is not None:
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
        window.tell(save_picture(window.session.scene.id, window.session.frame, folder))


def _list_keys(window: "OutreachWindow") -> None:
    shown = window.panel.line.isVisible()
    window.tell("" if shown else told_keys(window.remote.keymap))


def _full_screen(window: "OutreachWindow") -> None:
    window.setWindowState(window.windowState() ^ Qt.WindowState.WindowFullScreen)


def _count(window: "OutreachWindow", number: int) -> None:
    window.conductor.vote(number - 1, 1)


def _count_less(window: "OutreachWindow", number: int) -> None:
    window.conductor.vote(number - 1, -1)


ACTS: Mapping[str, Callable[["OutreachWindow"], object]] = {
    "next": _next,
    "back": _back,
    "blank": _blank,
    "strip": _strip,
    "freeze": _freeze,
    "captions": _caption,
    "return": _return,
    "jump": _ask_jump,
    "emergency": _emergency,
    "section": _section,
    "tint": _tint,
    "save": save,
    "keys": _list_keys,
    "full_screen": _full_screen,
}
NUMBERED: Mapping[str, Callable[["OutreachWindow", int], object]] = {
    "count": _count,
    "less": _count_less,
    "jump": jump,
}
