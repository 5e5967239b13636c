"""Lesson plans as teachers write them: Markdown with blocks of TOML to records, every mistake told.

`lesson_plans/README.md` describes the form.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path

from demo_app.base import locate
from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, expect, nearest, read
from demo_app.content.cues.truth import Truth
from demo_app.content.lessons import whole
from demo_app.content.lessons.answering import answers
from demo_app.content.lessons.hazards import in_words
from demo_app.content.lessons.header import (
    TOP,
    ages_of,
    allows_of,
    curriculum_of,
    kit_of,
    language_of,
    misconceptions_of,
    profile_of,
    simulated_of,
)
from demo_app.content.lessons.item_records import NumericItem
from demo_app.content.lessons.numbers import FEWEST, items_of
from demo_app.content.lessons.parts import Part, Parts, split
from demo_app.content.lessons.records import (
    STAGES,
    Exit,
    Lesson,
    Misconception,
    Words,
)
from demo_app.content.lessons.steps import step_of

OTHERS = ("worksheet", "exit question", "at home")
KINDS = (*STAGES, *OTHERS)
SHORTEST, LONGEST = 20, 180


@dataclass(frozen=True)
class Examined:
    """A lesson after its examination.

    Parameters
    ----------
    lesson : Lesson or None
        None if there is any mistake.
    mistakes : tuple of InputError
        In the order of lines.
    truths : mapping
        Step id to what the model answers to its prediction.
    """

    lesson: Lesson | None
    mistakes: tuple[InputError, ...]
    truths: Mapping[str, Truth] = field(default_factory=dict)


def own_lessons(language: str = "") -> tuple[Path, ...]:
    """Files of the lessons that come with the app, by name.

    Those that are there in `language`, in a folder of its code, take the place of the English ones.
    """
    folder = locate.lesson_plans()
    found = tuple(path for path in sorted(folder.glob("*.md")) if is_lesson(path))
    told = {path.name: path for path in folder.glob(f"{language}/*.md")} if language else {}
    return tuple(told.get(path.name, path) for path in found)


def translated_lessons() -> tuple[Path, ...]:
    """Files of lessons that come with the app in other languages, each in a folder of its code."""
    return tuple(sorted(locate.lesson_plans().glob("*/*.md")))


def is_lesson(path: Path) -> bool:
    """Whether a Markdown file is a lesson at all; README files are not."""
    return path.stem.upper() != "README"


def load(path: Path) -> Lesson:
    """Read and check the lesson at `path`; the model does not run, so this is quick.

    Raises
    ------
    InputError
        The first mistake of the file, with its line and what to write instead.
    """
    found = examine(path, run=False)
    if found.lesson is None:
        raise found.mistakes[0]
    return found.lesson


def examine(path: Path, run: bool = True) -> Examined:
    """Read the lesson at `path` and let the model answer all that it asks.

    Parameters
    ----------
    path : pathlib.Path
        Its file.
    run : bool
        Whether predictions, challenges and numeric items are computed too: that an answer was not
        foreseen, that a challenge is met from the start or never, or that wrong answers lie too
        near the right one is a mistake. It takes some seconds a lesson.
    """
    try:
        text = read(path, "lesson")
    except InputError as error:
        return Examined(None, (error,))
    return _examine(path, text, run)


def _examine(path: Path, text: str, run: bool) -> Examined:
    wrong: list[InputError] = []
    try:
        parts = split(path, text, wrong)
    except InputError as error:
        return Examined(None, (error,))
    top = expect(wrong, parts.header, *TOP)
    profile = attempt(wrong, profile_of, top)
    allows = attempt(wrong, allows_of, top, profile)
    beliefs = misconceptions_of(wrong, top)
    length = attempt(wrong, top.number, "minutes", SHORTEST, LONGEST, unit="min")
    kinds = _kinds(wrong, path, parts)
    reads = [
        step_of(wrong, part, kind, beliefs)
        for part, kind in zip(parts.parts, kinds, strict=True)
        if kind in STAGES
    ]
    if not reads:
        wrong.append(
            InputError(
                "no step is there", place=f"{path}, line 1", remedy="write ## Predict: a title"
            )
        )
    for further in (
        whole.ids(str(path), reads),
        whole.order(str(path), reads),
        whole.minutes(str(path), length, reads),
        whole.hazards(str(path), allows, reads),
    ):
        wrong += further
    items = _items(wrong, parts, kinds, beliefs, path)
    wrong += whole.computed(str(path), allows, [item for _, item, _ in items])
    truths: dict[str, Truth] = {}
    if run:
        truths = answers(wrong, reads, items)
    lesson = Lesson(
        title=attempt(wrong, top.words, "title") or "",
        aim=attempt(wrong, top.words, "aim") or "",
        ages=attempt(wrong, ages_of, top) or (0, 0),
        minutes=length or 0.0,
        language=attempt(wrong, language_of, top) or "",
        profile=profile or "",
        allows=allows or (),
        kit=kit_of(wrong, top, allows),
        simulated=simulated_of(wrong, top, allows),
        misconceptions=beliefs,
        curriculum=curriculum_of(wrong, top),
        steps=tuple(one.step for one in reads),
        items=tuple(item for _, item, _ in items),
        exit=_exit(wrong, parts, kinds, path),
        home=_home(wrong, parts, kinds, path),
        path=path,
    )
    if wrong:
        return Examined(None, tuple(sorted(wrong, key=_line)))
    return Examined(lesson, (), truths)


def _kinds(wrong: list[InputError], path: Path, parts: Parts) -> list[str]:
    found = []
    for part in parts.parts:
        kind = " ".join(part.kind.casefold().split())
        if kind and kind not in KINDS:
            known = [one.capitalize() for one in KINDS]
            wrong.append(
                InputError(
                    f"no head is called '{part.kind}'",
                    place=f"{path}, line {part.line}",
                    remedy=nearest(part.kind.capitalize(), known),
                )
            )
        if kind in OTHERS and kind in found:
            wrong.append(
                InputError(
                    f"'{part.kind}' is there twice",
                    place=f"{path}, line {part.line}",
                    remedy="put both under one head",
                )
            )
        found.append(kind)
    return found


def _the(
    wrong: list[InputError], parts: Parts, kinds: list[str], kind: str, path: Path
) -> Part | None:
    found = next((part for part, one in zip(parts.parts, kinds, strict=True) if one == kind), None)
    if found is None:
        wrong.append(
            InputError(
                f"nothing stands under '{kind.capitalize()}'",
                place=f"{path}, line 1",
                remedy=f"add ## {kind.capitalize()}",
            )
        )
    return found


def _items(
    wrong: list[InputError],
    parts: Parts,
    kinds: list[str],
    beliefs: tuple[Misconception, ...],
    path: Path,
) -> tuple[tuple[Table, NumericItem, bool], ...]:
    part = _the(wrong, parts, kinds, "worksheet", path)
    if part is None:
        return ()
    table = expect(wrong, part.table, "item")
    found = items_of(wrong, table, beliefs)
    if len(found) < FEWEST:
        wrong.append(
            InputError(
                f"{len(found)} numeric items",
                place=f"{path}, line {part.line}",
                remedy=f"write {FEWEST} or more, each under a line [[item]] in a block",
            )
        )
    return found


def _exit(wrong: list[InputError], parts: Parts, kinds: list[str], path: Path) -> Exit:
    part = _the(wrong, parts, kinds, "exit question", path)
    if part is None:
        return Exit("", "")
    if len(part.body) < 2:
        wrong.append(
            InputError(
                "a question and what a good answer says are asked for",
                place=f"{path}, line {part.line}",
                remedy="write two paragraphs: the question, then the answer",
            )
        )
    words = [one.text for one in part.body]
    return Exit(words[0] if words else "", " ".join(words[1:]))


def _home(wrong: list[InputError], parts: Parts, kinds: list[str], path: Path) -> tuple[Words, ...]:
    part = _the(wrong, parts, kinds, "at home", path)
    if part is None:
        return ()
    if not part.body:
        wrong.append(
            InputError(
                "nothing is to be done at home",
                place=f"{path}, line {part.line}",
                remedy="write what to look for at home, under the head",
            )
        )
    for name in sorted({name for one in part.body for name in in_words(one.text)}):
        wrong.append(
            InputError(
                f"'{name}' is told to be done at home",
                place=f"{path}, line {part.line}",
                remedy="take it out: nobody looks on there",
            )
        )
    return part.body


def _line(error: InputError) -> int:
    found = re.search(r", line (\d+)$", error.place)
    return int(found[1]) if found else 0
