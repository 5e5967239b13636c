"""What a running show puts in front of its audience, and what its buttons say."""

import datetime
from typing import TYPE_CHECKING

from demo_app.content import venue as rules
from demo_app.content.checklist import ENGLISH as CHECKLIST_TEXTS
from demo_app.content.checklist import Checklist, checklist
from demo_app.content.cues.records import Sheet
from demo_app.content.journal.pieces import ENGLISH as BALANCED
from demo_app.content.journal.pieces import Balance
from demo_app.content.running import clock
from demo_app.content.running.records import (
    ASK,
    BARS,
    COUNT,
    OPEN,
    RESULT,
    REVEAL,
    Running,
    counts_of,
    phases_of,
    question_of,
    step_of,
)
from demo_app.content.venue import Venue
from demo_app.ui import question_view, words
from demo_app.ui.answering import Outcome
from demo_app.ui.cards import Card
from demo_app.ui.language_ids import CHECKLIST, HOT, PIECES, REVIEW, VENUE
from demo_app.ui.question_view import Poll

if TYPE_CHECKING:
    from demo_app.content.hot import HotPiece

SHOWN = {
    ASK: question_view.ASK,
    COUNT: question_view.COUNT,
    BARS: question_view.BARS,
    RESULT: question_view.RESULT,
}
ANNOUNCED = ("warning", "exits")
"""Rules that are read out to everybody."""


def poll_of(running: Running, sheet: Sheet, outcome: Outcome | None) -> Poll | None:
    """The question as the audience sees it; None while the stage is seen."""
    question = question_of(running, sheet)
    if question is None or running.phase not in SHOWN:
        return None
    phase = SHOWN[running.phase]
    if running.phase == RESULT and outcome is None:
        # The live run has not come to it yet.
        phase = question_view.BARS
    return Poll(
        ask=question.ask,
        answers=tuple(answer.text for answer in question.answers),
        counts=counts_of(running, sheet),
        phase=phase,
        right=outcome.right if phase == question_view.RESULT and outcome is not None else None,
        happened=outcome.said if phase == question_view.RESULT and outcome is not None else "",
    )


def welcome(sheet: Sheet, venue: Venue, today: datetime.date) -> Card:
    """The card before the show: what is announced is only what the venue has reviewed."""
    said = [
        f"{rule_label(one)}: {rules.shown(venue, name)}"
        for name in ANNOUNCED
        for one in rules.FIELDS
        if one.name == name and rules.state(venue, name, today) == rules.REVIEWED
    ]
    return Card(title=sheet.title, lines=(sheet.venue, *said, words.text("welcome.home")))


def pause_card() -> Card:
    """What the audience reads in an emergency."""
    lines = (words.text("emergency.stay"), words.text("emergency.follow"))
    return Card(title=words.text("emergency.title"), lines=lines, alert=True)


def emergency_lines(venue: Venue) -> tuple[tuple[str, str], ...]:
    """What the presenter reads in an emergency: label and words, as the venue has written them."""
    wanted = (
        *("emergency_number", "first_aid", "extinguisher_place", "burner_shut_off_place"),
        *("exits", "assembly_point"),
    )
    labels = {one.name: rule_label(one) for one in rules.FIELDS}
    missing = words.text("emergency.missing")
    return tuple((labels[name], rules.shown(venue, name) or missing) for name in wanted)


def checklist_of(sheet: Sheet) -> Checklist:
    """A sheet's checklist; what the sheet itself has written stays in its language."""
    texts = words.Table(CHECKLIST, CHECKLIST_TEXTS)
    return checklist(sheet, texts, lambda name: words.said(CHECKLIST, f"hazard.{name}", name))


def balance_line(balance: Balance) -> str:
    """The count of a batch in one show."""
    return balance.told(words.Table(PIECES, BALANCED))


def follow() -> str:
    """Whose rules win."""
    return words.said(CHECKLIST, "follow", rules.FOLLOW)


def hot_line(piece: "HotPiece", now: float) -> str:
    """The reminder of a hot piece."""
    from demo_app.content.hot import ENGLISH

    return piece.words(now, words.Table(HOT, ENGLISH))


def rule_label(one: rules.Field) -> str:
    """Name of one of a venue's rules."""
    return words.said(VENUE, one.name, one.label)


def rule_ask(one: rules.Field) -> str:
    """What is to be found out for one of a venue's rules."""
    return words.said(VENUE, f"{one.name}.ask", one.ask)


def review_line(venue: Venue, name: str, today: datetime.date) -> str:
    """State of one of a venue's rules."""
    texts = words.Table(REVIEW, rules.REVIEW_LINES)
    return rules.review_line(venue, name, today, texts, words.day)


def next_words(running: Running, sheet: Sheet) -> str:
    """What the Next button leads to."""
    if running.show_begun is None:
        return words.text("next.begin")
    phases = phases_of(step_of(running, sheet))
    at = phases.index(running.phase)
    if at + 1 < len(phases):
        return words.text(f"next.{phases[at + 1]}")
    coming = clock.coming(running, sheet)
    if coming is None:
        return words.text("next.none")
    return words.text("next.step", number=sheet.steps.index(coming) + 1, title=coming.title)


def state_words(state: str, running: Running) -> str:
    """What the audience's window shows, in words for the mirror's label."""
    if running.phase == REVEAL and state == "live":
        return words.text("audience.state.reveal")
    return words.text(f"audience.state.{state}")


def began(running: Running) -> bool:
    """Whether the audience sees the stage: the welcome card has gone."""
    return running.show_begun is not None or running.phase != OPEN
