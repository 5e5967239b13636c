"""Numeric items of a worksheet: read, and held to what can be asked and answered."""

import math
import re
import string
from typing import Any

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, expect, nearest
from demo_app.content.cues.stage import Stage, instant_of, settings_of_table, stage_of
from demo_app.content.lessons.item_records import Given, NumericItem, Wrong
from demo_app.content.lessons.records import Misconception
from demo_app.scenes.settings import make, settings_of

FEWEST, MOST_WAYS, FEWEST_WRONG = 4, 12, 3
ITEM = (
    *("id", "ask", "scene", "settings", "vary", "reading", "at_s"),
    *("tolerance", "tolerance_pct", "wrong", "because", "given"),
)


def items_of(
    wrong: list[InputError], table: Table, beliefs: tuple[Misconception, ...]
) -> tuple[tuple[Table, NumericItem, bool], ...]:
    """Items of the worksheet, each with its table and whether it is fine."""
    found: list[tuple[Table, NumericItem, bool]] = []
    for given in attempt(wrong, table.tables, "item") or ():
        before = len(wrong)
        item = _item(wrong, expect(wrong, given, *ITEM), beliefs)
        if item.id in [one.id for _, one, _ in found]:
            wrong.append(given.error("id", f"'{item.id}' is there already", "write another id"))
        found.append((given, item, len(wrong) == before))
    return tuple(found)


def _item(wrong: list[InputError], table: Table, beliefs: tuple[Misconception, ...]) -> NumericItem:
    stage = stage_of(wrong, table)
    vary = _vary(wrong, table, stage)
    tolerances = _tolerances(wrong, table)
    return NumericItem(
        id=attempt(wrong, table.words, "id") or "",
        ask=attempt(wrong, _ask, table, vary) or "",
        scene=stage.scene.id if stage else "",
        settings=stage.values if stage else {},
        vary=vary,
        reading=attempt(wrong, _reading, table, "reading", stage) or "",
        at_s=attempt(wrong, instant_of, table, stage),
        tolerance=tolerances[0],
        tolerance_pct=tolerances[1],
        wrong=_wrongs(wrong, table, stage, beliefs),
        because=attempt(wrong, table.words, "because") or "",
        given=_given(wrong, table, stage),
        line=table.line() or 0,
    )


def _reading(table: Table, key: str, stage: Stage | None) -> str:
    name = table.words(key)
    known = [one.name for one in stage.scene.readings] if stage else [name]
    if name not in known:
        assert stage is not None
        raise table.error(key, f"scene {stage.scene.id} has no such reading", nearest(name, known))
    return name


def _vary(wrong: list[InputError], table: Table, stage: Stage | None) -> dict[str, tuple[Any, ...]]:
    inner = attempt(wrong, table.table, "vary", "write vary = { name = [ ... ] }")
    if inner is None or stage is None:
        return {}
    known = {one.name: one for one in settings_of(stage.scene.settings)}
    found: dict[str, tuple[Any, ...]] = {}
    for name, values in inner.content.items():
        if name not in known:
            wrong.append(
                inner.error(
                    name, f"scene {stage.scene.id} has no such setting", nearest(name, known)
                )
            )
        elif not isinstance(values, list) or len(values) < 2:
            wrong.append(inner.error(name, "does not vary", "write two values or more in a list"))
        else:
            taken = [attempt(wrong, _allowed, inner, stage, name, one) for one in values]
            found[name] = tuple(one for one in taken if one is not None)
    ways = math.prod(len(values) for values in found.values())
    if ways > MOST_WAYS:
        wrong.append(
            inner.error("", f"{ways} ways to draw it", f"write values for {MOST_WAYS} at most")
        )
    return found


def _allowed(table: Table, stage: Stage, name: str, value: Any) -> Any:
    try:
        record: Any = make(stage.scene.settings, {**stage.values, name: value})
    except InputError as error:
        raise table.error(name, error.problem, error.remedy) from None
    return getattr(record, name)


def _ask(table: Table, vary: dict[str, tuple[Any, ...]]) -> str:
    text = table.words("ask")
    try:
        named = {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}
    except ValueError:
        raise table.error("ask", "its brackets do not match", "write {name} of a setting") from None
    if ("given" in named) != ("given" in table.content):
        raise table.error(
            "ask",
            "{given} and given = ... belong together",
            "write both, or neither",
        )
    for name in sorted(named - {*vary, "given"}):
        raise table.error("ask", f"'{{{name}}}' does not vary", nearest(name, vary or ("vary",)))
    for name in vary:
        if name not in named:
            raise table.error("ask", f"does not say {name}, which varies", f"put {{{name}}} in")
    if re.search(r"[{}]{2}", text):
        raise table.error("ask", "doubled brackets", "write {name} of a setting")
    return text


def _given(wrong: list[InputError], table: Table, stage: Stage | None) -> Given | None:
    if "given" not in table.content:
        return None
    inner = attempt(wrong, table.table, "given", "write given = { settings = { ... } }")
    if inner is None:
        return None
    inner = expect(wrong, inner, "reading", "settings")
    reading = ""
    if "reading" in inner.content:
        reading = attempt(wrong, _reading, inner, "reading", stage) or ""
    return Given(reading, settings_of_table(wrong, inner, stage)[0])


def _tolerances(wrong: list[InputError], table: Table) -> tuple[float, float]:
    keys = [key for key in ("tolerance", "tolerance_pct") if key in table.content]
    if len(keys) != 1:
        wrong.append(
            table.error(
                keys[0] if keys else "tolerance_pct",
                "two tolerances" if keys else "missing",
                "write tolerance (in the reading's unit) or tolerance_pct, one of the two",
            )
        )
        return 0.0, 5.0
    ends = (1e-9, 1e6) if keys[0] == "tolerance" else (1.0, 50.0)
    value = attempt(wrong, table.number, keys[0], *ends) or 5.0
    return (value, 0.0) if keys[0] == "tolerance" else (0.0, value)


def _wrongs(
    wrong: list[InputError],
    table: Table,
    stage: Stage | None,
    beliefs: tuple[Misconception, ...],
) -> tuple[Wrong, ...]:
    tables = attempt(wrong, table.tables, "wrong")
    if tables is not None and len(tables) < FEWEST_WRONG:
        wrong.append(
            table.error(
                "wrong", f"{len(tables)} wrong answers", f"write {FEWEST_WRONG} or more of them"
            )
        )
    found = []
    for given in tables or ():
        one = attempt(wrong, _wrong, wrong, given, stage, beliefs)
        found += [one] if one else []
    return tuple(found)


def _wrong(
    wrong: list[InputError],
    given: Table,
    stage: Stage | None,
    beliefs: tuple[Misconception, ...],
) -> Wrong:
    table = expect(wrong, given, "belief", "times", "plus", "settings", "reading", "value")
    name = table.words("belief")
    known = [one.id for one in beliefs]
    if name not in known:
        raise table.error("belief", f"no misconception is called '{name}'", nearest(name, known))
    keys = ("times", "plus", "settings", "reading", "value")
    ways = [key for key in keys if key in table.content]
    if not ways or ("value" in ways and len(ways) > 1):
        raise table.error(
            "",
            "nothing says how it comes about" if not ways else "a value needs nothing else",
            "write times, plus, settings or reading, or else value",
        )
    settings, _ = settings_of_table(wrong, table, stage)
    return Wrong(
        name,
        table.number("times", -1e6, 1e6, 1.0),
        table.number("plus", -1e6, 1e6, 0.0),
        settings,
        _reading(table, "reading", stage) if "reading" in table.content else "",
        table.number("value", -1e9, 1e9) if "value" in table.content else None,
    )
