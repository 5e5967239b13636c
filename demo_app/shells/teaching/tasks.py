"""Tasks and challenges: handing the screen to a group, its tries, and the way back."""

from typing import TYPE_CHECKING

from demo_app.content.running.records import DRIVE
from demo_app.shells.teaching import laying
from demo_app.ui import words
from demo_app.ui.snapshot import opening

if TYPE_CHECKING:
    from demo_app.shells.teaching.window import OutreachWindow


def moved(window: "OutreachWindow", before: tuple[str, str] | None) -> None:
    """The lesson has gone to another step, or another part of one.

    Parameters
    ----------
    window : OutreachWindow
    before : (str, str) or None
        Id of the step and part of it where the lesson was.
    """
    driven = window.running.phase == DRIVE
    window.strip.close_strip()
    window.panel.tell("")
    if before is not None and before[1] == DRIVE:
        window.group.leave()
        if window.session is not None and window.session.playing:
            window.session.pause()
    if driven:
        window.show_page_called("show")
        if before is not None and before[0] == window.running.id:
            window.group.fresh(window.step)
        set_up(window)
    window.header.setVisible(not driven)
    window.bar.setVisible(driven)
    laying.lay_out(window)


def set_up(window: "OutreachWindow") -> None:
    """Everything as the step says, for the group that comes to the screen."""
    session, allowed = window.session, window.allowance
    if session is not None and session.scene.id == allowed.scene:
        at_s = window.conductor.step.at_s
        session.restore(opening(session.scene.id, allowed.record(session.scene), at_s))


def try_(window: "OutreachWindow") -> None:
    """Try what the group has set, or show at once what comes of it."""
    if window.running.phase == DRIVE and window.step is not None:
        window.group.ask(window.step)


def begin_afresh(window: "OutreachWindow") -> None:
    """The next group comes to the screen."""
    if window.running.phase == DRIVE:
        window.group.fresh(window.step)
        set_up(window)


def hint(window: "OutreachWindow") -> None:
    """Help for a group that is stuck."""
    step = window.step
    if step is not None and step.challenge is not None:
        window.tell(step.challenge.hint)


def tell_failed(window: "OutreachWindow", problem: str) -> None:
    """The model could not judge a try."""
    window.tell(words.text("outreach.failed", problem=problem))
