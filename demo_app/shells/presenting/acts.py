"""What keys, buttons and the strip do to the presenter's window, by the name of the act."""

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import QStandardPaths, Qt

from demo_app.content.running import clock, walking
from demo_app.ui import words
from demo_app.ui.keymap import told_keys
from demo_app.ui.saving import save_picture
from demo_app.ui.session_acts import SESSION_ACTS

if TYPE_CHECKING:
    from demo_app.shells.presenting.window import PresentWindow


def act(window: "PresentWindow", name: str) -> None:
    """Do the act called `name`; one that is not known does nothing."""
    if name in SESSION_ACTS:
        if window.session is not None:
            SESSION_ACTS[name](window.session)
        return
    word, _, number = name.partition(".")
    if name in ACTS:
        ACTS[name](window)
    elif word in NUMBERED and number.isdigit():
        NUMBERED[word](window, int(number))


def _emergency_is_on(window: "PresentWindow") -> bool:
    """While the card is up the show stands still behind it."""
    if window.emergency_on:
        window.tell(words.text("emergency.back"))
    return window.emergency_on


def _next(window: "PresentWindow") -> None:
    if _emergency_is_on(window):
        return
    window.show_page_called("show")
    if not window.free:
        window.conductor.next_()


def _back(window: "PresentWindow") -> None:
    if _emergency_is_on(window):
        return
    window.show_page_called("show")
    if not window.free:
        window.conductor.back()


def jump(window: "PresentWindow", place: int) -> None:
    """Open a step of the sheet."""
    window.show_page_called("show")
    window.conductor.jump(place)


def _blank(window: "PresentWindow") -> None:
    window.conductor.take(walking.blank(window.conductor.running))


def _freeze(window: "PresentWindow") -> None:
    window.conductor.take(walking.freeze(window.conductor.running))


def _caption(window: "PresentWindow") -> None:
    window.conductor.take(walking.caption(window.conductor.running))


def _return(window: "PresentWindow") -> None:
    window.conductor.return_()


def _ask_jump(window: "PresentWindow") -> None:
    steps = window.conductor.sheet.steps
    window.strip.open(
        [(f"jump.{place}", f"{place + 1}  {step.title}") for place, step in enumerate(steps)]
    )


def _ask_contingency(window: "PresentWindow") -> None:
    found = window.conductor.step.contingencies
    if not found:
        window.tell(words.text("contingency.none"))
        return
    window.strip.open([(f"contingency.{at}", one.when) for at, one in enumerate(found)])


def _contingency(window: "PresentWindow", at: int) -> None:
    found = window.conductor.step.contingencies
    if at < len(found):
        window.conductor.fall_back(found[at])


def _catch_up(window: "PresentWindow") -> None:
    line = clock.catch_up(window.conductor.running, window.conductor.sheet)
    window.tell(line or words.text("catch_up.none"))


def _emergency(window: "PresentWindow") -> None:
    window.set_emergency(not window.emergency_on)


def _section(window: "PresentWindow") -> None:
    mode = "stress" if window.stage.section.mode == "temperature" else "temperature"
    window.controls.light.section.show_value(mode)
    window.side.set_section_mode(mode)


def _tint(window: "PresentWindow") -> None:
    if window.session is not None:
        plate = window.session.light.tint_plate_nm == 0
        window.controls.light.controls["tint"].chosen.emit("tint", plate)


def save(window: "PresentWindow") -> None:
    """Save the picture shown, and say where."""
    if window.session is not None and window.session.frame is not None:
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
        window.tell(save_picture(window.session.scene.id, window.session.frame, folder))


def _list_keys(window: "PresentWindow") -> None:
    shown = window.controls.line.isVisible()
    window.tell("" if shown else told_keys(window.remote.keymap))


def _hide_controls(window: "PresentWindow") -> None:
    hidden = window.controls.isVisible()
    window.controls.setVisible(not hidden)
    window.header.setVisible(not hidden)


def _full_screen(window: "PresentWindow") -> None:
    window.setWindowState(window.windowState() ^ Qt.WindowState.WindowFullScreen)


def _count(window: "PresentWindow", number: int) -> None:
    window.conductor.vote(number - 1, 1)


def _count_less(window: "PresentWindow", number: int) -> None:
    window.conductor.vote(number - 1, -1)


def _recall(window: "PresentWindow", number: int) -> None:
    window.conductor.recall(number)


def _store(window: "PresentWindow", number: int) -> None:
    window.conductor.store(number)


ACTS: Mapping[str, Callable[["PresentWindow"], object]] = {
    "next": _next,
    "back": _back,
    "blank": _blank,
    "freeze": _freeze,
    "captions": _caption,
    "return": _return,
    "catch_up": _catch_up,
    "contingency": _ask_contingency,
    "jump": _ask_jump,
    "emergency": _emergency,
    "section": _section,
    "tint": _tint,
    "save": save,
    "keys": _list_keys,
    "controls": _hide_controls,
    "full_screen": _full_screen,
}
NUMBERED: Mapping[str, Callable[["PresentWindow", int], object]] = {
    "count": _count,
    "less": _count_less,
    "favourite": _recall,
    "store": _store,
    "jump": jump,
    "contingency": _contingency,
}
