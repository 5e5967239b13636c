"""What holds for a lesson as a whole: its order, its time, its hazards, its ids."""

from collections.abc import Iterator, Sequence

from demo_app.base.errors import InputError
from demo_app.content.lessons.hazards import in_words, shown_by
from demo_app.content.lessons.item_records import NumericItem
from demo_app.content.lessons.reach import hazards_of
from demo_app.content.lessons.records import Step
from demo_app.content.lessons.steps import Read

MAY_FOLLOW = {
    "": ("welcome", "predict", "task"),
    "welcome": ("welcome", "predict", "task"),
    "predict": ("observe", "task", "predict"),
    "observe": ("explain", "observe"),
    "explain": ("predict", "explain", "task", "challenge"),
    "task": ("observe", "explain", "predict", "task", "challenge"),
    "challenge": ("predict", "explain", "task", "challenge"),
}
"""What may come after each stage: nobody sees before having predicted, nor leaves unexplained."""
LAST = ("explain", "task", "challenge")
SLACK_MIN = 0.5


def order(path: str, reads: Sequence[Read]) -> Iterator[InputError]:
    """Stages that stand where they may not."""
    before, predicted, seen = "", False, False
    for read in reads:
        step = read.step
        place = f"{path}, line {step.line}"
        if step.stage not in MAY_FOLLOW[before]:
            follow = " or ".join(one.capitalize() for one in MAY_FOLLOW[before])
            yield InputError(
                f"{step.stage} comes after {before or 'nothing'}",
                place=place,
                remedy=f"write {follow} here: predict, observe, explain",
            )
        predicted, seen = predicted or step.stage == "predict", seen or step.stage == "observe"
        before = step.stage
    if reads and before not in LAST:
        yield InputError(
            f"the lesson ends with {before}",
            place=f"{path}, line {reads[-1].step.line}",
            remedy="add ## Explain: ... after it",
        )
    for name, met in (("Predict", predicted), ("Observe", seen)):
        if reads and not met:
            yield InputError(
                f"no step is called {name}",
                place=f"{path}, line 1",
                remedy=f"add ## {name}: a title",
            )


def minutes(path: str, minutes: float | None, reads: Sequence[Read]) -> Iterator[InputError]:
    """Steps that together are longer or much shorter than the lesson."""
    total = sum(read.step.minutes for read in reads)
    if minutes is None or not reads:
        return
    if total > minutes + SLACK_MIN:
        yield InputError(
            f"the steps take {total:g} minutes, the lesson has {minutes:g}",
            place=f"{path}, line 1",
            remedy="write fewer minutes with some steps, or take one out",
        )
    elif total < 0.8 * minutes:
        yield InputError(
            f"the steps take {total:g} of {minutes:g} minutes",
            place=f"{path}, line 1",
            remedy="write what the rest is for, or fewer minutes at the top",
        )


def ids(path: str, reads: Sequence[Read]) -> Iterator[InputError]:
    """Ids that stand twice."""
    first: dict[str, int] = {}
    for read in reads:
        step = read.step
        if step.id in first:
            yield InputError(
                f"the step on line {first[step.id]} has the id '{step.id}' too",
                place=f"{path}, line {step.line}",
                remedy='write another title, or id = "..."',
            )
        first.setdefault(step.id, step.line)


def hazards(
    path: str, allows: tuple[str, ...] | None, reads: Sequence[Read]
) -> Iterator[InputError]:
    """Whatever a step brings, shows or tells people to do that the lesson does not allow."""
    for read in reads if allows is not None else ():
        assert allows is not None
        told = [(name, "is told to be done") for name in _told(read.step)]
        met = [(name, "can be met here") for name in hazards_of(read.step)]
        for name, how in dict(reversed([*met, *told])).items():
            if name not in allows:
                yield InputError(
                    f"'{name}' {how}, which this lesson does not allow",
                    place=f"{path}, line {read.step.line}",
                    remedy="take it out, or show it on the screen and allow it as simulated",
                )


def computed(
    path: str, allows: tuple[str, ...] | None, items: Sequence[NumericItem]
) -> Iterator[InputError]:
    """Numbers that come from a scene which the lesson does not allow."""
    for item in items if allows is not None else ():
        assert allows is not None
        for name in sorted(shown_by(item.scene, item.settings)) if item.scene else ():
            if name not in allows:
                yield InputError(
                    f"'{name}' is in scene {item.scene}, which this lesson does not allow",
                    place=f"{path}, line {item.line}",
                    remedy="ask about another scene, or allow it as simulated",
                )


def _told(step: Step) -> Iterator[str]:
    """Real hazards of what the words tell people to do.

    A question and a challenge are about what the step's scene simulates; what is to be said and
    done is not, unless a sentence speaks of the screen.
    """
    shown = {name.removeprefix("simulated-") for name in hazards_of(step)}
    asked = [step.question.ask] if step.question else []
    asked += [step.challenge.ask, step.challenge.hint] if step.challenge else []
    for text in (one.text for one in step.body):
        yield from in_words(text)
    for text in asked:
        yield from (name for name in in_words(text) if name not in shown)
