"""A class's votes taken from the running lesson: the first count, and the second one."""

from collections.abc import Mapping

from demo_app.content.lessons.as_sheet import AGAIN, Taught, again_id
from demo_app.content.lessons.votes import Tally, Votes
from demo_app.content.running.records import Running


def votes_of(taught: Taught, running: Running, right: Mapping[str, int]) -> Votes:
    """All hands counted so far; a prediction for which no hand was counted is left out.

    Parameters
    ----------
    taught : Taught
    running : Running
    right : mapping
        Step id to the right answer's place, for those that the live run has answered.
    """
    found = {}
    for kind, step in zip(taught.kinds, taught.steps, strict=True):
        if step is None or step.question is None or kind == AGAIN:
            continue
        wanted = len(step.question.answers)
        before, after = (_counts(running, name, wanted) for name in (step.id, again_id(step.id)))
        if any((*before, *after)):
            found[step.id] = Tally(before, after if any(after) else (), right.get(step.id))
    return Votes(taught.lesson.title, found)


def _counts(running: Running, id: str, wanted: int) -> tuple[int, ...]:
    counts = running.votes.get(id, ())[:wanted]
    return (*counts, *(0 for _ in range(wanted - len(counts))))
