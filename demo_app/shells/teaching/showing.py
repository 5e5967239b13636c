"""What the class and the panel show at each place of a lesson."""

import datetime
from typing import TYPE_CHECKING

from demo_app.content.running import clock
from demo_app.content.running.records import DRIVE, RESULT, VOTING
from demo_app.ui import show_words
from demo_app.ui.teaching import lesson_panel, lesson_words
from demo_app.ui.teaching.lesson_panel import labels_of

if TYPE_CHECKING:
    from demo_app.shells.teaching.window import OutreachWindow


def show(window: "OutreachWindow") -> None:
    """Panel, goal, cards and question: as the step, its part and its tries say."""
    step, running, scene = window.step, window.running, window.scene
    challenge = step.challenge if step is not None else None
    tries = window.group.tries(step)
    window.mode = mode_of(window)
    window.panel.show_mode(window.mode, step, window.conductor.question)
    labels = labels_of(scene, step.bounds if step is not None else ())
    card = lesson_words.card_of(window.taught, running, labels, tries, scene)
    poll = lesson_words.poll_of(window.taught, running, window.conductor.outcome)
    goal = ""
    if running.phase == DRIVE and challenge is not None and scene is not None:
        # With one screen the bar above says it.
        goal = lesson_words.goal_line(challenge, tries) if window.side.out is not None else ""
        lines = lesson_words.outcome_lines(challenge, tries.last, scene) if tries.last else ()
        lines += lesson_words.best_said(challenge, tries, scene)
        window.panel.tries.show_tries(lesson_words.tries_said(tries), lines)
        window.panel.tries.show_state(window.group.state)
    window.bar.goal.say(challenge.ask if challenge is not None else window.conductor.step.title)
    if window.emergency_on:
        card = show_words.pause_card()
    window.side.show_class(poll, card, goal)


def mode_of(window: "OutreachWindow") -> str:
    """What the panel is for."""
    running, shown = window.running, window.conductor.step
    if running.phase in VOTING or running.phase == RESULT:
        return lesson_panel.HANDS
    if running.phase == DRIVE:
        return lesson_panel.DRIVE
    if not shown.scene or not show_words.began(running):
        return lesson_panel.NOTHING
    step = window.step
    tries = window.group.tries(step)
    covered = lesson_words.card_of(window.taught, running, (), tries, None)
    return lesson_panel.TEACH if covered is None else lesson_panel.NOTHING


def show_clock(window: "OutreachWindow") -> None:
    """Clocks, and what Next leads to, in the room that its button has by now."""
    running, sheet, now = window.running, window.conductor.sheet, window.conductor.now()
    wall = datetime.datetime.fromtimestamp(now).strftime("%H:%M")
    found = clock.clock(running, sheet, now)
    left = found.left if found.left is not None else 60 * sheet.minutes
    window.header.clock.show_times(wall, found.step_left, left, found.late)
    window.header.show_next(lesson_words.next_words(window.taught, running))
