"""What is known of a running show, as a frozen record."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from demo_app.content.cues.records import Question, Sheet, Step

OPEN, ASK, COUNT, BARS, REVEAL, RESULT = PHASES = (
    *("open", "ask", "count", "bars"),
    *("reveal", "result"),
)
"""Parts of a step: it opens; a question is put, hands are counted, bars shown; the live run answers
it, and the bars say who was right.

A step without a question only opens.
"""

DRIVE, SHARE = "drive", "share"
"""Further parts of a lesson's tasks: pupils drive the scene; they tell what came of it."""

ANSWERED = (REVEAL, RESULT)
"""Phases in which the live run answers."""

VOTING = (ASK, COUNT, BARS)
"""Phases in which hands are counted; in the last one a count may still be mended."""

NO_SECONDS: Mapping[str, float] = MappingProxyType({})
NO_VOTES: Mapping[str, tuple[int, ...]] = MappingProxyType({})


@dataclass(frozen=True)
class Running:
    """Where a show is. All times are seconds since the epoch.

    Parameters
    ----------
    ids : tuple of str
        Ids of the sheet's steps, in order: by these a sheet that has changed is recognised.
    kept : tuple of int
        Places of the steps that are shown, ascending; the others are cut.
    place : int
        Place of the step shown; always one of `kept`.
    phase : str
        One of `PHASES`.
    digest : str
        Of the sheet's content; "" if nobody has told.
    show_begun, step_begun : float or None
        When the show, and this visit of the step, began; None: not yet.
    ends : float or None
        When the slot is over.
    finished : float or None
        When the show was finished.
    spent : mapping
        Step id to seconds spent there before this visit.
    blank, frozen, captions : bool
        What the audience's window does.
    rehearsal : bool
        Whether nobody is watching: the times that steps take are measured for a cut.
    votes : mapping
        Step id to hands counted for each answer of its question.
    """

    ids: tuple[str, ...]
    kept: tuple[int, ...]
    place: int = 0
    phase: str = OPEN
    digest: str = ""
    show_begun: float | None = None
    step_begun: float | None = None
    ends: float | None = None
    finished: float | None = None
    spent: Mapping[str, float] = field(default_factory=lambda: NO_SECONDS)
    blank: bool = False
    frozen: bool = False
    captions: bool = False
    rehearsal: bool = False
    votes: Mapping[str, tuple[int, ...]] = field(default_factory=lambda: NO_VOTES)

    @property
    def id(self) -> str:
        """Id of the step shown."""
        return self.ids[self.place]

    @property
    def on(self) -> bool:
        """Whether its clocks run."""
        return self.show_begun is not None and self.finished is None


def step_of(running: Running, sheet: Sheet) -> Step:
    """The step shown."""
    return sheet.steps[running.place]


def question_of(running: Running, sheet: Sheet) -> Question | None:
    """The question that is being put, counted or answered; None while the step only opens."""
    return step_of(running, sheet).question if running.phase != OPEN else None


def phases_of(step: Step) -> tuple[str, ...]:
    """Phases that a step walks through."""
    if step.phases:
        return step.phases
    return PHASES if step.question is not None else (OPEN,)


def counts_of(running: Running, sheet: Sheet, place: int | None = None) -> tuple[int, ...]:
    """Hands counted at a step (default: the one shown), one number an answer."""
    step = sheet.steps[running.place if place is None else place]
    if step.question is None:
        return ()
    found = running.votes.get(step.id, ())
    wanted = len(step.question.answers)
    return (*found[:wanted], *(0 for _ in range(wanted - len(found))))
