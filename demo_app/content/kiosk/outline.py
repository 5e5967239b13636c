"""What the steps of a kiosk are, without words: scenes, settings, controls, right answers."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, expect, nearest, parse_text
from demo_app.content.cues.answers import faults
from demo_app.content.cues.records import Answer, Question
from demo_app.content.cues.stage import Stage, instant_of, settings_of_table, stage_of
from demo_app.content.kiosk.records import Control, KioskStep, Scenery
from demo_app.content.kiosk.word_keys import STEP_IDS
from demo_app.scenes.settings import Setting, make, settings_of

KIND = "kiosk steps"
STEP = ("id", "scene", "settings", "at_s", "play", "speed", "seconds", "question", "controls")
MOST_CONTROLS = 3
LONGEST_S = 120.0
MOST_STEPS = 6
_WIDE = 1e12


@dataclass(frozen=True)
class Outline:
    """All steps and the sceneries of the inviting view, with empty words."""

    steps: tuple[KioskStep, ...]
    attract: tuple[Scenery, ...]


def outline_of(path: Path, text: str) -> tuple[Outline | None, tuple[InputError, ...]]:
    """Read ``steps.toml``.

    Returns
    -------
    Outline or None
        None if there is any mistake.
    tuple of InputError
        The mistakes.
    """
    wrong: list[InputError] = []
    top = attempt(wrong, parse_text, path, text)
    if top is None:
        return None, tuple(wrong)
    top = expect(wrong, top, "kind", "attract", "step")
    if top.content.get("kind") != KIND:
        wrong.append(top.error("kind", "is not said", f'write kind = "{KIND}"'))
    attract = [_scenery(wrong, one) for one in attempt(wrong, top.tables, "attract") or ()]
    tables = attempt(wrong, top.tables, "step") or ()
    steps = [_step(wrong, one) for one in tables]
    for key, found in (("attract", attract), ("step", steps)):
        if not found:
            wrong.append(top.error(key, "none is there", f"begin each with a line [[{key}]]"))
    if len(steps) > MOST_STEPS:
        wrong.append(top.error("step", f"{len(steps)} steps", f"write at most {MOST_STEPS}"))
    names = [step.id for step in steps]
    for at, name in enumerate(names):
        if name in names[:at]:
            wrong.append(tables[at].error("id", "another step has it", "write another"))
    return (None if wrong else Outline(tuple(steps), tuple(attract))), tuple(wrong)


def _scenery(wrong: list[InputError], given: Table) -> Scenery:
    table = expect(wrong, given, "scene", "settings", "at_s", "speed")
    stage = stage_of(wrong, table)
    return Scenery(
        scene=stage.scene.id if stage else "",
        settings=stage.values if stage else {},
        at_s=attempt(wrong, _opens, table, stage) or 0.0,
        speed=attempt(wrong, _speed, table),
    )


def _step(wrong: list[InputError], given: Table) -> KioskStep:
    table = expect(wrong, given, *STEP)
    stage = stage_of(wrong, table)
    return KioskStep(
        id=attempt(wrong, _id, table) or "",
        title="",
        invitation="",
        scene=stage.scene.id if stage else "",
        settings=stage.values if stage else {},
        at_s=attempt(wrong, _opens, table, stage) or 0.0,
        play=attempt(wrong, table.flag, "play", False) or False,
        speed=attempt(wrong, _speed, table),
        seconds=attempt(wrong, table.number, "seconds", 5.0, LONGEST_S, unit="s") or 0.0,
        point=stage is not None and stage.scene.point is not None,
        question=_question(wrong, table, stage),
        do="",
        touch="",
        see="",
        why="",
        description="",
        controls=_controls(wrong, table, stage),
    )


def _id(table: Table) -> str:
    found = table.words("id")
    if found not in STEP_IDS:
        raise table.error("id", f"'{found:.40}' is no step's", nearest(found, STEP_IDS))
    return found


def _opens(table: Table, stage: Stage | None) -> float:
    return instant_of(table, stage) or 0.0


def _speed(table: Table) -> float | None:
    return table.number("speed", 0.1, 5000) if "speed" in table.content else None


def _question(wrong: list[InputError], step: Table, stage: Stage | None) -> Question:
    table = attempt(wrong, step.table, "question")
    if table is None:
        return Question("", "", ())
    table = expect(wrong, table, "reading", "settings", "at_s", "answers")
    settings, record = settings_of_table(wrong, table, stage)
    return Question(
        ask="",
        reading=attempt(wrong, _reading, table, stage) or "",
        answers=_answers(wrong, table),
        settings=settings,
        at_s=attempt(wrong, instant_of, table, stage if record is not None else None, record),
    )


def _reading(table: Table, stage: Stage | None) -> str:
    name = table.words("reading")
    known = [one.name for one in stage.scene.readings] if stage else [name]
    if name not in known:
        raise table.error("reading", "no reading of the scene is called so", nearest(name, known))
    return name


def _answers(wrong: list[InputError], table: Table) -> tuple[Answer, ...]:
    tables = attempt(wrong, table.tables, "answers") or ()
    if not 2 <= len(tables) <= 4:
        wrong.append(table.error("answers", f"{len(tables)} answers", "write 2 to 4 of them"))
    before = len(wrong)
    answers = [_answer(wrong, one) for one in tables]
    if len(wrong) > before:
        return ()
    for fault in faults(answers):
        place = table if fault.index is None else tables[fault.index]
        wrong.append(place.error("", fault.problem, fault.remedy))
    return tuple(answers)


def _answer(wrong: list[InputError], given: Table) -> Answer:
    table = expect(wrong, given, "from", "below", "is", "otherwise")
    low, high = (
        attempt(wrong, table.number, key, -_WIDE, _WIDE) if key in table.content else None
        for key in ("from", "below")
    )
    equals = table.content.get("is")
    if equals is not None and not isinstance(equals, bool | str):
        wrong.append(table.error("is", f"{equals!r} is neither a word nor yes or no", _FORM))
        equals = None
    otherwise = attempt(wrong, table.flag, "otherwise", False) or False
    if (low is not None or high is not None) + (equals is not None) + otherwise != 1:
        wrong.append(table.error("", "not one thing says when it is right", _FORM))
    return Answer("", low, high, equals, otherwise)


_FORM = "write from and below, or is = true, or otherwise = true"


def _controls(wrong: list[InputError], step: Table, stage: Stage | None) -> tuple[Control, ...]:
    tables = attempt(wrong, step.tables, "controls") or ()
    if len(tables) > MOST_CONTROLS:
        wrong.append(
            step.error("controls", f"{len(tables)} of them", f"write at most {MOST_CONTROLS}")
        )
    if stage is None:
        return ()
    known = {one.name: one for one in settings_of(stage.scene.settings)}
    found: list[Control] = []
    for given in tables:
        table = expect(wrong, given, "setting", "low", "high", "step", "choices")
        name = attempt(wrong, table.words, "setting")
        if name is not None and name not in known:
            wrong.append(table.error("setting", "no such setting", nearest(name, known)))
        elif name in [one.setting for one in found]:
            wrong.append(table.error("setting", "is there already", "take one out"))
        elif name is not None:
            control = attempt(wrong, _control, table, known[name])
            if control is not None and stage.record is not None:
                attempt(wrong, _agrees, table, stage, control)
            found += [control] if control else []
    return tuple(found)


def _agrees(table: Table, stage: Stage, control: Control) -> None:
    """Raise if an end of a control contradicts the step's settings."""
    for value in ends(control):
        try:
            make(stage.scene.settings, {**stage.values, control.setting: value})
        except InputError as error:
            raise table.error(
                "setting", f"{value} does not go: {error.problem}", error.remedy
            ) from None


def ends(control: Control) -> tuple[Any, ...]:
    """Values of a control that reach farthest."""
    if control.choices:
        return control.choices
    return (control.low, control.high) if control.high > control.low else (False, True)


def _control(table: Table, setting: Setting) -> Control:
    if isinstance(setting.default, bool):
        table.only("setting")
        return Control(setting.name)
    if isinstance(setting.default, str):
        table.only("setting", "choices")
        choices = table.texts("choices")
        if not 2 <= len(choices) <= 4 or len(set(choices)) < len(choices):
            raise table.error("choices", "no 2 to 4 different ones", 'write ["...", "..."]')
        for at, one in enumerate(choices):
            _held(table, setting, "choices", one, at)
        return Control(setting.name, choices=choices)
    table.only("setting", "low", "high", "step")
    low, high = (table.number(key, setting.low, setting.high) for key in ("low", "high"))
    if not low < high:
        raise table.error("high", "is not above low", "write low below high")
    step = table.number("step", 1e-6, high - low)
    if not 2 <= round((high - low) / step) <= 40 or abs((high - low) / step % 1 - 0.5) < 0.499:
        raise table.error("step", "does not go 2 to 40 times from low to high", "write another")
    return Control(setting.name, low, high, step)


def _held(table: Table, setting: Setting, key: str, value: Any, at: int) -> None:
    try:
        setting.check(value)
    except InputError as error:
        raise table.error(key, error.problem, error.remedy, at) from None
