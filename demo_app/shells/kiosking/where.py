"""Where a visitor is, as a frozen record, and the ways from there."""

from dataclasses import dataclass, replace

from demo_app.ui.answering import Outcome

ATTRACT, HOME, STEP, LANGUAGES = "attract", "home", "step", "languages"
PREDICT, DO, SEE, WHY, TRY = PHASES = ("predict", "do", "see", "why", "try")
_BEFORE = {DO: PREDICT, SEE: DO, WHY: SEE, TRY: WHY}


@dataclass(frozen=True)
class Where:
    """A visitor's place.

    Parameters
    ----------
    page : str
        `ATTRACT`, `HOME`, `STEP` or `LANGUAGES`.
    step : str
        Id of the step that is open, or "".
    phase : str
        One of `PHASES` while a step is open.
    prediction : int or None
        Place of the answer that was chosen.
    outcome : Outcome or None
        What the live run answered.
    under : str
        Page that the list of languages lies over.
    """

    page: str = ATTRACT
    step: str = ""
    phase: str = PREDICT
    prediction: int | None = None
    outcome: Outcome | None = None
    under: str = ATTRACT

    @property
    def right(self) -> bool | None:
        """Whether the prediction was right; None: there is none, or no outcome."""
        if self.prediction is None or self.outcome is None:
            return None
        return self.prediction == self.outcome.right


def home() -> Where:
    """At the list of steps."""
    return Where(HOME)


def opened(step: str) -> Where:
    """At a step's question."""
    return Where(STEP, step)


def predicted(where: Where, answer: int) -> Where:
    """An answer has been chosen."""
    if where.page != STEP or where.phase != PREDICT:
        return where
    return replace(where, phase=DO, prediction=answer)


def done(where: Where) -> Where:
    """The run that answers has been started."""
    if where.page != STEP or where.phase not in {DO, SEE}:
        return where
    return replace(where, phase=SEE, outcome=None)


def answered(where: Where, outcome: Outcome) -> Where:
    """The live run has come to its answer."""
    if where.page != STEP or where.phase not in {SEE, WHY} or where.outcome is not None:
        return where
    return replace(where, outcome=outcome)


def explained(where: Where) -> Where:
    """The sentence of why is wanted, which needs the answer."""
    if where.page != STEP or where.phase != SEE or where.outcome is None:
        return where
    return replace(where, phase=WHY)


def tried(where: Where) -> Where:
    """Something of one's own is wanted."""
    return replace(where, phase=TRY) if where.page == STEP and where.phase == WHY else where


def asked_for_languages(where: Where) -> Where:
    """The list of languages lies over the page; asked for again, it goes."""
    if where.page == LANGUAGES:
        return replace(where, page=where.under)
    return replace(where, page=LANGUAGES, under=where.page)


def back(where: Where) -> Where:
    """One thing back; what was predicted and answered later is forgotten."""
    if where.page == LANGUAGES:
        return replace(where, page=where.under)
    if where.page == STEP:
        before = _BEFORE.get(where.phase)
        if before is None:
            return home()
        prediction = None if before == PREDICT else where.prediction
        outcome = None if before in {PREDICT, DO} else where.outcome
        return replace(where, phase=before, prediction=prediction, outcome=outcome)
    return Where()
