"""What the model says to all that a lesson asks; where it does not fit, that is a mistake."""

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt
from demo_app.content.cues.truth import Truth, truth
from demo_app.content.lessons.challenges import tried
from demo_app.content.lessons.drawn import drawn, ways
from demo_app.content.lessons.item_records import NumericItem
from demo_app.content.lessons.steps import Read
from demo_app.scenes.catalogue import scene as scene_called


def answers(
    wrong: list[InputError],
    reads: list[Read],
    items: tuple[tuple[Table, NumericItem, bool], ...],
) -> dict[str, Truth]:
    """What the model says; whatever it cannot say, or says otherwise, is added to `wrong`."""
    truths: dict[str, Truth] = {}
    for one in (one for one in reads if one.fine):
        if one.step.question is not None:
            found = attempt(wrong, _answered, one)
            truths |= {one.step.id: found} if found else {}
        if one.step.challenge is not None:
            attempt(wrong, _challenged, one)
    for table, item, fine in items:
        if fine:
            attempt(wrong, _drawn, table, item)
    return truths


def _answered(one: Read) -> Truth:
    question = one.step.question
    assert question is not None
    inner = one.table.table("question")
    try:
        found = truth(scene_called(one.step.scene), one.step.settings, question)
    except InputError as error:
        raise inner.error("reading", error.problem, error.remedy) from None
    for at, belief in enumerate(one.step.beliefs):
        if not belief and at != found.index:
            raise inner.error(
                "answers",
                f"the model says {found.words}, so this one is wrong and names no belief",
                'add belief = "..." to it',
                at,
            )
    return found


def _challenged(one: Read) -> None:
    challenge = one.step.challenge
    assert challenge is not None
    inner = one.table.table("challenge")
    if tried(one.step, {}).reached:
        raise inner.error("goals", "are met as the step opens", "ask for more")
    outcome = tried(one.step, challenge.solution)
    for at, (met, value) in enumerate(zip(outcome.met, outcome.values, strict=True)):
        if not met:
            raise inner.error(
                "settings", f"do not reach goal {at + 1}: the model says {value!r}", "mend them"
            )


def _drawn(table: Table, item: NumericItem) -> None:
    for varied in ways(item):
        try:
            drawn(item, 0, varied)
        except InputError as error:
            raise table.error("wrong", error.problem, error.remedy) from None
