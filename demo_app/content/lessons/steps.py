"""One step of a lesson: its stage, scene, prediction, bounds and challenge, read and checked."""

import dataclasses
from typing import Any

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, expect, nearest
from demo_app.content.cues.asking import question_of
from demo_app.content.cues.load import slug
from demo_app.content.cues.records import Question
from demo_app.content.cues.stage import Stage, instant_of, settings_of_table, stage_of
from demo_app.content.lessons.challenges import SPOTS
from demo_app.content.lessons.header import real_hazards
from demo_app.content.lessons.parts import Part
from demo_app.content.lessons.records import Bound, Challenge, Goal, Misconception, Step
from demo_app.scenes.settings import Setting, settings_of

STEP = (
    *("id", "minutes", "scene", "settings", "at_s", "play", "hazards"),
    *("question", "bounds", "challenge"),
)
LONGEST_MIN = 60


@dataclasses.dataclass(frozen=True)
class Read:
    """A step, with the table that its mistakes are told at and its stage."""

    step: Step
    table: Table
    stage: Stage | None
    fine: bool


def step_of(
    wrong: list[InputError], part: Part, kind: str, beliefs: tuple[Misconception, ...]
) -> Read:
    """The step under one head; where something is `wrong`, with a harmless value in its place."""
    before = len(wrong)
    table = expect(wrong, part.table, *STEP)
    stage = stage_of(wrong, table) if "scene" in table.content else None
    for key in ("settings", "at_s", "play", "question", "bounds", "challenge"):
        if key in table.content and "scene" not in table.content:
            wrong.append(table.error(key, "there is no scene for it", 'add scene = "..."'))
    at_s = (attempt(wrong, instant_of, table, stage) if stage else None) or 0.0
    question, thought = _question(wrong, table, stage, at_s, beliefs)
    bounds = _bounds(wrong, table, stage)
    step = Step(
        id=attempt(wrong, table.words, "id", "") or slug(part.title) or f"line-{part.line}",
        stage=kind,
        title=part.title,
        minutes=attempt(wrong, table.number, "minutes", 0.5, LONGEST_MIN, unit="min") or 0.0,
        body=part.body,
        hazards=attempt(wrong, real_hazards, table) or (),
        scene=stage.scene.id if stage else "",
        settings=stage.values if stage else {},
        at_s=at_s,
        play=attempt(wrong, table.flag, "play", False) or False,
        question=question,
        beliefs=thought,
        bounds=bounds,
        challenge=_challenge(wrong, table, stage, bounds),
        line=part.line,
    )
    if not part.title:
        wrong.append(_at_head(part, "the step has no title", f"write ## {part.kind}: Title"))
    if not part.body:
        wrong.append(_at_head(part, "nothing is to be said or done", "write it under the head"))
    _suits(wrong, part, step)
    return Read(step, table, stage, len(wrong) == before)


def _at_head(part: Part, problem: str, remedy: str) -> InputError:
    return InputError(problem, place=f"{part.table.path}, line {part.line}", remedy=remedy)


def _suits(wrong: list[InputError], part: Part, step: Step) -> None:
    """Whether the step has what its stage needs, and nothing that belongs to another."""
    if step.question is not None and step.stage != "predict":
        wrong.append(_at_head(part, "a question outside a prediction", "write ## Predict: ..."))
    if step.challenge is not None and step.stage != "challenge":
        wrong.append(_at_head(part, "a challenge under another head", "write ## Challenge: ..."))
    if step.stage == "challenge" and "challenge" not in part.table.content:
        wrong.append(_at_head(part, "nothing says what is to be reached", "add [challenge]"))
    if step.bounds and step.stage not in ("task", "challenge"):
        wrong.append(
            _at_head(part, "pupils drive in tasks and challenges alone", "write ## Task: ...")
        )
    if step.stage in ("challenge",) and part.table.content and "bounds" not in part.table.content:
        wrong.append(_at_head(part, "nothing says what pupils may change", "add [bounds]"))


def _question(
    wrong: list[InputError],
    table: Table,
    stage: Stage | None,
    at_s: float,
    beliefs: tuple[Misconception, ...],
) -> tuple[Question | None, tuple[str, ...]]:
    """The prediction, and the belief behind each of its answers."""
    if "question" not in table.content or stage is None:
        return None, ()
    thought: list[str] = []
    plain = table
    inner = attempt(wrong, table.table, "question")
    answers = attempt(wrong, inner.tables, "answers") if inner is not None else None
    known = [one.id for one in beliefs]
    for one in answers or ():
        name = attempt(wrong, one.words, "belief", "") or ""
        if name and name not in known:
            wrong.append(
                one.error("belief", f"no misconception is called '{name}'", nearest(name, known))
            )
        thought.append(name)
    if inner is not None and answers is not None:
        without = [_without(one.content, "belief") for one in answers]
        asked = {**inner.content, "answers": without}
        plain = dataclasses.replace(table, content={**table.content, "question": asked})
        if thought.count("") > 1:
            wrong.append(
                inner.error(
                    "answers",
                    "several answers name no belief",
                    'add belief = "..." to each that is wrong',
                )
            )
    return question_of(wrong, plain, stage, at_s), tuple(thought)


def _without(content: dict[str, Any], key: str) -> dict[str, Any]:
    return {name: value for name, value in content.items() if name != key}


def _bounds(wrong: list[InputError], table: Table, stage: Stage | None) -> tuple[Bound, ...]:
    if "bounds" not in table.content or stage is None:
        return ()
    inner = attempt(wrong, table.table, "bounds")
    if inner is None:
        return ()
    known = {one.name: one for one in settings_of(stage.scene.settings)}
    found = []
    for name in inner.content:
        if name not in known:
            wrong.append(
                inner.error(
                    name, f"scene {stage.scene.id} has no such setting", nearest(name, known)
                )
            )
            continue
        bound = attempt(wrong, _bound, inner, known[name])
        if bound is None:
            continue
        opening = getattr(stage.record, name) if stage.record is not None else None
        if opening is not None and not bound.holds(opening):
            wrong.append(
                inner.error(
                    name,
                    f"the step opens at {opening}, outside",
                    f"write bounds around it, or settings = {{ {name} = ... }} within",
                )
            )
        found.append(bound)
    if not found and not inner.content:
        wrong.append(inner.error("", "no setting is named", "add name = [from, to]"))
    return tuple(found)


def _bound(table: Table, setting: Setting) -> Bound:
    name = setting.name
    value = table.content[name]
    if isinstance(setting.default, bool | str):
        form = "write those that may be chosen in a list"
        if not isinstance(value, list) or len(value) < 2:
            raise table.error(name, f"{value!r} leaves nothing to choose", form)
        taken = tuple(_checked(table, setting, one) for one in value)
        return Bound(name, choices=taken)
    form = f"write [from, to] within {setting.low:g} to {setting.high:g} {setting.unit}".rstrip()
    low, high = table.numbers(name, value, form, count=2)
    if not setting.low <= low < high <= setting.high:
        raise table.error(name, f"from {low:g} to {high:g} cannot be", form)
    return Bound(name, low, high)


def _checked(table: Table, setting: Setting, value: Any) -> Any:
    try:
        return setting.check(value)
    except InputError as error:
        raise table.error(setting.name, error.problem, error.remedy) from None


def _challenge(
    wrong: list[InputError], table: Table, stage: Stage | None, bounds: tuple[Bound, ...]
) -> Challenge | None:
    if "challenge" not in table.content or stage is None:
        return None
    inner = attempt(wrong, table.table, "challenge")
    if inner is None:
        return None
    inner = expect(wrong, inner, "ask", "goals", "settings", "hint", "most", "least")
    readings = [one.name for one in stage.scene.readings]
    names = [*readings, *(one.name for one in settings_of(stage.scene.settings)), SPOTS]
    goals = []
    for given in attempt(wrong, inner.tables, "goals") or ():
        goal = attempt(wrong, _goal, expect(wrong, given, "of", "from", "below", "is"), names)
        goals += [goal] if goal else []
    if not inner.content.get("goals"):
        wrong.append(inner.error("goals", "nothing is to be reached", "add goals = [ ... ]"))
    solution, _ = settings_of_table(wrong, inner, stage)
    if not solution and "settings" not in inner.content:
        wrong.append(
            inner.error("settings", "missing: an example that reaches it", "add settings = { ... }")
        )
    within = {one.name: one for one in bounds}
    for name, value in solution.items():
        if name not in within or not within[name].holds(value):
            wrong.append(
                inner.table("settings").error(
                    name, "pupils cannot set it so", f"widen the bounds of {name}"
                )
            )
    ranks = [attempt(wrong, _rank, inner, key, readings) or "" for key in ("most", "least")]
    return Challenge(
        attempt(wrong, inner.words, "ask") or "",
        tuple(goals),
        solution,
        attempt(wrong, inner.words, "hint", "") or "",
        *ranks,
    )


def _goal(table: Table, names: list[str]) -> Goal:
    of = table.texts("of")
    if not of:
        raise table.error("of", "missing", 'add of = "reading" or of = ["...", "..."]')
    for at, name in enumerate(of):
        if name not in names:
            raise table.error("of", f"nothing is called '{name}'", nearest(name, names), at)
    low, high = (
        table.number(key, -1e12, 1e12) if key in table.content else None
        for key in ("from", "below")
    )
    equals = table.content.get("is")
    if equals is not None and not isinstance(equals, bool | str):
        raise table.error("is", f"{equals!r} is neither a word nor true or false", "write from")
    if (low is None and high is None) == (equals is None):
        raise table.error("", "nothing says when it is reached", "write from or below, or is")
    if low is not None and high is not None and low >= high:
        raise table.error("below", "nothing is at least from and below that", "write more")
    return Goal(of, low, high, equals)


def _rank(table: Table, key: str, readings: list[str]) -> str:
    name = table.words(key, "-")
    if name == "-":
        return ""
    if name not in readings:
        raise table.error(key, f"no reading is called '{name}'", nearest(name, readings))
    return name
