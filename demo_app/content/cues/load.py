"""Cue sheets as people write them: TOML text to records, every mistake with its line."""

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path

from demo_app.base import locate
from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, expect, nearest, parse_text, read
from demo_app.content.cues.asking import question_of
from demo_app.content.cues.records import (
    EYEWEAR_FOR,
    HAZARDS,
    Contingency,
    Helper,
    Sheet,
    Step,
)
from demo_app.content.cues.stage import Stage, instant_of, settings_of_table, stage_of
from demo_app.content.cues.truth import Truth, truth_of
from demo_app.content.cues.whole import whole

TOP = ("title", "venue", "minutes", "language", "allows", "step")
STEP = (
    *("title", "id", "scene", "settings", "at_s", "play", "seconds", "priority"),
    *("say", "hold", "catch_up", "captions", "props", "samples", "hazards", "cautions"),
    *("helper", "question", "contingency"),
)
LANGUAGE = re.compile(r"[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*")
SHORTEST_S, LONGEST_S = 5, 3600


@dataclass(frozen=True)
class Examined:
    """A cue sheet after its examination.

    Parameters
    ----------
    sheet : Sheet or None
        None if there is any mistake.
    mistakes : tuple of InputError
        In the order of lines.
    truths : mapping
        Step id to what the model answers to its question.
    """

    sheet: Sheet | None
    mistakes: tuple[InputError, ...]
    truths: Mapping[str, Truth] = field(default_factory=dict)


def own_sheets() -> tuple[Path, ...]:
    """Files of the cue sheets that come with the app, by name."""
    return tuple(sorted((locate.assets() / "cue_sheets").glob("*.toml")))


def load(path: Path) -> Sheet:
    """Read and check the cue sheet at `path`; the model does not run, so this is quick.

    Raises
    ------
    InputError
        The first mistake of the file, with its line and what to write instead.
    """
    return parse_sheet(path, read(path, "cue sheet"))


def parse_sheet(path: Path, text: str) -> Sheet:
    """As `load`, from `text`; `path` is the file that mistakes name."""
    found = _examine(path, text)
    if found.sheet is None:
        raise found.mistakes[0]
    return found.sheet


def mistakes(path: Path, run: bool = True) -> tuple[InputError, ...]:
    """All mistakes of the cue sheet at `path`, in the order of its lines, as of `examine`."""
    return examine(path, run).mistakes


def examine(path: Path, run: bool = True) -> Examined:
    """Read the cue sheet at `path` and let the model answer its questions.

    Parameters
    ----------
    path : pathlib.Path
        Its file.
    run : bool
        Whether each step that is written well and asks something is run: that the model gives no
        answer, or one that was not foreseen, is a mistake too. It takes about a second a step.
    """
    try:
        text = read(path, "cue sheet")
    except InputError as error:
        return Examined(None, (error,))
    return _examine(path, text, run)


def _examine(path: Path, text: str, run: bool = False) -> Examined:
    try:
        top = parse_text(path, text)
    except InputError as error:
        return Examined(None, (error,))
    truths: dict[str, Truth] = {}
    wrong: list[InputError] = []
    top = expect(wrong, top, *TOP)
    title = attempt(wrong, top.words, "title")
    venue = attempt(wrong, top.words, "venue")
    minutes = attempt(wrong, top.number, "minutes", 1, 180, unit="min")
    language = attempt(wrong, _language, top)
    allows = attempt(wrong, _hazards, top, "allows")
    tables = attempt(wrong, top.tables, "step")
    if tables == ():
        wrong.append(top.error("step", "no step is there", "begin each step with a line [[step]]"))
    steps = []
    for number, table in enumerate(tables or (), start=1):
        before = len(wrong)
        step = _step(wrong, table, number)
        if run and step.question and len(wrong) == before:
            answer = attempt(wrong, _answered, table, step)
            truths |= {step.id: answer} if answer else {}
        steps.append((table, step))
    wrong += whole(top, minutes, allows, steps)
    if wrong:
        return Examined(None, tuple(sorted(wrong, key=_line)))
    sheet = Sheet(
        title=title or "",
        venue=venue or "",
        minutes=minutes or 0.0,
        steps=tuple(step for _, step in steps),
        allows=allows or (),
        language=language or "",
        path=path,
    )
    return Examined(sheet, (), truths)


def _answered(table: Table, step: Step) -> Truth:
    try:
        return truth_of(step)
    except InputError as error:
        raise table.table("question").error("reading", error.problem, error.remedy) from None


def _step(wrong: list[InputError], table: Table, number: int) -> Step:
    """The step in `table`; where something is `wrong`, with a harmless value in its place."""
    table = expect(wrong, table, *STEP)
    title = attempt(wrong, table.words, "title") or ""
    stage = stage_of(wrong, table)
    hazards = attempt(wrong, _hazards, table, "hazards") or ()
    cautions = attempt(wrong, table.texts, "cautions")
    if hazards and cautions == ():
        wrong.append(
            table.error(
                "hazards",
                f"{', '.join(hazards)} without any caution",
                'add cautions = ["control, and when to stop"]',
            )
        )
    at_s = attempt(wrong, instant_of, table, stage) or 0.0
    return Step(
        id=attempt(wrong, table.words, "id", "") or slug(title) or f"step-{number}",
        title=title,
        scene=stage.scene.id if stage else "",
        settings=stage.values if stage else {},
        at_s=at_s,
        play=attempt(wrong, table.flag, "play", False) or False,
        seconds=attempt(wrong, table.number, "seconds", SHORTEST_S, LONGEST_S, 60.0, "s") or 0.0,
        priority=attempt(wrong, _priority, table) or 1,
        say=attempt(wrong, _say, table) or (),
        hold=attempt(wrong, table.words, "hold", "") or "",
        catch_up=attempt(wrong, table.words, "catch_up", "") or "",
        captions=attempt(wrong, _captions, table) or {},
        props=attempt(wrong, table.texts, "props") or (),
        samples=attempt(wrong, table.texts, "samples") or (),
        hazards=hazards,
        cautions=cautions or (),
        helper=_helper(wrong, table, hazards),
        question=question_of(wrong, table, stage, at_s),
        contingencies=_contingencies(wrong, table, stage),
        line=table.line() or 0,
    )


def slug(title: str) -> str:
    """An id from a title: ``"A Drop, then?"`` gives ``a-drop-then``."""
    plain = unicodedata.normalize("NFKD", title).encode("ascii", "ignore").decode().lower()
    return re.sub(r"[^a-z0-9]+", "-", plain).strip("-")


def _say(table: Table) -> tuple[str, ...]:
    lines = table.texts("say")
    if not lines:
        raise table.error("say", "nothing is to be said", 'add say = ["...", "..."]')
    return lines


def _priority(table: Table) -> int:
    value = table.content.get("priority", 1)
    if isinstance(value, bool) or value not in (1, 2, 3):
        raise table.error(
            "priority", f"{value!r} is no priority", "write 1 (never cut), 2 or 3 (cut first)"
        )
    return int(value)


def _hazards(table: Table, key: str) -> tuple[str, ...]:
    flags = table.texts(key)
    for at, name in enumerate(flags):
        if name not in HAZARDS:
            raise table.error(key, f"no hazard is called '{name}'", nearest(name, HAZARDS), at)
    return flags


def _language(table: Table) -> str:
    return _tag(table, "language", table.words("language", "en"))


def _tag(table: Table, key: str, tag: str) -> str:
    if not LANGUAGE.fullmatch(tag):
        raise table.error(key, f"'{tag}' is no language", "write a tag such as en, de or pt-BR")
    return tag


def _captions(table: Table) -> dict[str, str]:
    if "captions" not in table.content:
        return {}
    inner = table.table("captions", 'write captions = { en = "...", de = "..." }')
    return {_tag(inner, key, key): inner.words(key) for key in inner.content}


def _helper(wrong: list[InputError], step: Table, hazards: tuple[str, ...]) -> Helper | None:
    if "helper" not in step.content:
        return None
    table = attempt(wrong, step.table, "helper")
    if table is None:
        return None
    table = expect(wrong, table, "briefing", "eyewear", "place", "exit")
    asking = [name for name in hazards if name in EYEWEAR_FOR]
    if asking and "eyewear" not in table.content:
        wrong.append(
            table.error(
                "eyewear", f"missing, with {', '.join(asking)} about", 'add eyewear = "..."'
            )
        )
    return Helper(
        briefing=attempt(wrong, table.words, "briefing") or "",
        eyewear=attempt(wrong, table.words, "eyewear", "") or "",
        place=attempt(wrong, table.words, "place") or "",
        exit=attempt(wrong, table.words, "exit") or "",
    )


def _contingencies(
    wrong: list[InputError], step: Table, stage: Stage | None
) -> tuple[Contingency, ...]:
    found = []
    for given in attempt(wrong, step.tables, "contingency") or ():
        table = expect(wrong, given, "when", "say", "settings")
        found.append(
            Contingency(
                when=attempt(wrong, table.words, "when") or "",
                say=attempt(wrong, table.words, "say") or "",
                settings=settings_of_table(wrong, table, stage)[0],
            )
        )
    return tuple(found)


def _line(error: InputError) -> int:
    found = re.search(r", line (\d+)$", error.place)
    return int(found[1]) if found else 0
