"""What a step puts on the stage: its scene, its settings and its instant, read and checked."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, nearest
from demo_app.scenes.catalogue import ids
from demo_app.scenes.catalogue import load as load_scene
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import Setting, make, settings_of

FORM = "write settings = { name = value } or put them under a line of their own"


@dataclass(frozen=True)
class Stage:
    """A scene with settings.

    Parameters
    ----------
    scene : Scene
    values : mapping
        Checked settings by name, those alone that the sheet states.
    record : object
        All settings; None if they contradict each other.
    """

    scene: Scene
    values: Mapping[str, Any]
    record: Any


def stage_of(wrong: list[InputError], step: Table) -> Stage | None:
    """Scene and settings of a step; None if the scene itself is `wrong`."""
    scene = attempt(wrong, _scene, step)
    if scene is None:
        return None
    values, record = settings_of_table(wrong, step, Stage(scene, {}, None))
    return Stage(scene, values, record)


def settings_of_table(
    wrong: list[InputError], around: Table, stage: Stage | None
) -> tuple[dict[str, Any], Any]:
    """Settings in the table `around`, and the whole record with those of `stage` under them.

    What is `wrong` is left out; the record is None if anything is.
    """
    # A step's contradiction is told once, not again with each question.
    told = stage is not None and bool(stage.values) and stage.record is None
    if stage is None or "settings" not in around.content:
        return {}, None if stage is None or told else _whole(wrong, around, stage, {})
    before = len(wrong)
    table = attempt(wrong, around.table, "settings", FORM)
    known = {setting.name: setting for setting in settings_of(stage.scene.settings)}
    values: dict[str, Any] = {}
    for name, value in (table.content if table else {}).items():
        assert table is not None
        if name not in known:
            wrong.append(
                table.error(
                    name,
                    f"scene {stage.scene.id} has no such setting",
                    nearest(name, known),
                )
            )
            continue
        checked = attempt(wrong, _checked, table, known[name], value)
        if checked is not None:
            values[name] = checked
    if table is None or told or len(wrong) > before:
        return values, None
    return values, _whole(wrong, around, stage, values)


def instant_of(table: Table, stage: Stage | None, record: Any = None) -> float | None:
    """Instant ``at_s`` of `table`, s, if it states one, held to the story of its settings.

    Parameters
    ----------
    table : Table
        A step or a question.
    stage : Stage or None
        What it shows; without a scene the end is not known.
    record : object
        Settings of the run; default: those of `stage`.
    """
    if "at_s" not in table.content:
        return None
    at_s = table.number("at_s", 0, 1e6, unit="s")
    record = record if record is not None else stage and stage.record
    if stage and record is not None:
        end = stage.scene.seconds(record)
        if at_s > end:
            raise table.error(
                "at_s",
                f"{at_s:g} s is after the end of the story",
                f"write at most {_floored(end):g}",
            )
    return at_s


def _scene(step: Table) -> Scene:
    name = step.words("scene")
    if name not in ids():
        raise step.error("scene", f"no scene is called '{name}'", nearest(name, ids()))
    return load_scene(name)


def _checked(table: Table, setting: Setting, value: Any) -> Any:
    several = setting.most and isinstance(value, list)
    try:
        return setting.check(",".join(map(str, value)) if several else value)
    except OverflowError:
        raise table.error(setting.name, "is out of range", "write fewer digits") from None
    except InputError as error:
        raise table.error(setting.name, error.problem, error.remedy) from None


def _whole(wrong: list[InputError], around: Table, stage: Stage, values: dict[str, Any]) -> Any:
    try:
        return make(stage.scene.settings, {**stage.values, **values})
    except InputError as error:
        here = error.place in values
        inner = around.table("settings") if here else around
        wrong.append(inner.error(error.place if here else "settings", error.problem, error.remedy))
        return None


def _floored(seconds: float) -> float:
    """Three decimals at most, never more than `seconds`."""
    return int(1000 * seconds) / 1000
