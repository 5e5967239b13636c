"""The kiosk's texts: a folder with the steps and one file of words a language, read and checked."""

import dataclasses
import string
from collections.abc import Mapping
from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.base.locate import assets
from demo_app.base.toml_table import Table, attempt, expect, parse_text
from demo_app.content.kiosk.lengths import line, paragraph, plain, short
from demo_app.content.kiosk.outline import Outline, outline_of
from demo_app.content.kiosk.reading import read_small
from demo_app.content.kiosk.records import Control, KioskStep, Spoken, Texts
from demo_app.content.kiosk.word_keys import KEYS, LANGUAGES, ON_BUTTONS, SHORT

KIND = "kiosk texts"
STEPS = "steps.toml"
FILES = (STEPS, *(f"texts.{language}.toml" for language in LANGUAGES))
STEP = ("title", "invitation", "ask", "answers", "do", "touch", "see", "why", "description")
TITLE_LETTERS, ASK_LETTERS, ANSWER_LETTERS, LABEL_LETTERS = 30, 90, 45, 28


def own_folder() -> Path:
    """The texts that come with the app."""
    return assets() / "kiosk" / "texts"


def read_files(folder: Path) -> dict[str, str]:
    """Name to text of each of `FILES` in `folder`; `InputError` if one cannot be read."""
    return {name: read_small(folder / name, "kiosk text") for name in FILES}


def load(folder: Path) -> Texts:
    """Read and check the texts in `folder`; the model does not run.

    Raises
    ------
    InputError
        The first mistake, with file, line and what to write instead.
    """
    return parse(folder, read_files(folder))


def mistakes(folder: Path) -> tuple[InputError, ...]:
    """All mistakes of the texts in `folder`."""
    try:
        return _examine(folder, read_files(folder))[1]
    except InputError as error:
        return (error,)


def parse(folder: Path, files: Mapping[str, str]) -> Texts:
    """As `load`, from what `read_files` returned; mistakes name files in `folder`."""
    texts, wrong = _examine(folder, files)
    if texts is None:
        raise wrong[0]
    return texts


def _examine(folder: Path, files: Mapping[str, str]) -> tuple[Texts | None, tuple[InputError, ...]]:
    outline, wrong = outline_of(folder / STEPS, files[STEPS])
    if outline is None:
        return None, wrong
    mistakes: list[InputError] = []
    spoken = {}
    for language, name in zip(LANGUAGES, FILES[1:], strict=True):
        top = attempt(mistakes, parse_text, folder / name, files[name])
        if top is not None:
            spoken[language] = _spoken(mistakes, top, language, outline)
    if mistakes:
        return None, tuple(mistakes)
    return Texts(spoken, outline.attract, folder), ()


def _spoken(wrong: list[InputError], top: Table, language: str, outline: Outline) -> Spoken:
    top = expect(wrong, top, "kind", "language", "name", "words", "steps")
    for key, asked in (("kind", KIND), ("language", language)):
        if top.content.get(key) != asked:
            wrong.append(top.error(key, "is not said", f'write {key} = "{asked}"'))
    name = attempt(wrong, line, top, "name", LABEL_LETTERS) or ""
    table = attempt(wrong, top.table, "words")
    words = _words(wrong, table) if table else {}
    steps = attempt(wrong, top.table, "steps")
    if steps is None:
        return Spoken(language, name, words, ())
    wrong += steps.unknown(*(one.id for one in outline.steps))
    said = []
    for one in outline.steps:
        inner = attempt(wrong, steps.table, one.id)
        said += [_said(wrong, inner, one)] if inner else []
    return Spoken(language, name, words, tuple(said))


def _words(wrong: list[InputError], table: Table) -> dict[str, str]:
    groups = sorted({key.partition(".")[0] for key in KEYS if "." in key})
    wrong += table.unknown(*(key for key in KEYS if "." not in key), *groups)
    inner = {group: attempt(wrong, table.table, group) for group in groups}
    for group, found in inner.items():
        if found:
            wrong += found.unknown(
                *(key.partition(".")[2] for key in KEYS if key.startswith(f"{group}."))
            )
    words = {}
    for key, values in KEYS.items():
        group, _, last = key.rpartition(".")
        place = inner[group] if group else table
        if place is not None:
            words[key] = attempt(wrong, _word, place, last, key, values) or ""
    return words


def _word(table: Table, name: str, key: str, values: tuple[str, ...]) -> str:
    text = line(table, name, SHORT) if key in ON_BUTTONS else paragraph(table, name)
    try:
        # A field with a way into a value, or with a form, would let a text do more than say.
        fields = [
            None if form or kind else field
            for _, field, form, kind in string.Formatter().parse(text)
            if field is not None
        ]
    except ValueError:
        fields = [None]
    if sorted(map(str, fields)) != sorted(values):
        form = " and ".join(f"{{{value}}}" for value in values) or "none"
        raise table.error(name, "has other places for values than it should", f"write {form}")
    return text


def _said(wrong: list[InputError], table: Table, step: KioskStep) -> KioskStep:
    """`step` in the words of `table`."""
    table = expect(wrong, table, *STEP, "labels", "choices")
    answers = attempt(wrong, _answers, table, len(step.question.answers))
    question = dataclasses.replace(
        step.question,
        ask=attempt(wrong, line, table, "ask", ASK_LETTERS) or "",
        answers=tuple(
            dataclasses.replace(one, text=text)
            for one, text in zip(step.question.answers, answers or (), strict=False)
        ),
    )
    return dataclasses.replace(
        step,
        title=attempt(wrong, line, table, "title", TITLE_LETTERS) or "",
        invitation=attempt(wrong, line, table, "invitation") or "",
        question=question,
        do=attempt(wrong, line, table, "do", SHORT) or "",
        touch=attempt(wrong, paragraph, table, "touch", 1) or "",
        see=attempt(wrong, paragraph, table, "see", 1) or "",
        why=attempt(wrong, paragraph, table, "why", 1) or "",
        description=attempt(wrong, paragraph, table, "description") or "",
        controls=_labelled(wrong, table, step.controls),
    )


def _answers(table: Table, count: int) -> tuple[str, ...]:
    texts = table.texts("answers")
    if len(texts) != count:
        raise table.error("answers", f"{len(texts)} answers", f"write {count}, as {STEPS} has")
    for at, text in enumerate(texts):
        short(table, "answers", text, ANSWER_LETTERS, at)
        if text.casefold() in (one.casefold() for one in texts[:at]):
            raise table.error("answers", "two have the same words", "tell them apart", at)
    return texts


def _labelled(
    wrong: list[InputError], table: Table, controls: tuple[Control, ...]
) -> tuple[Control, ...]:
    labels = attempt(wrong, table.table, "labels") if controls else None
    chosen = [one for one in controls if one.choices]
    choices = attempt(wrong, table.table, "choices") if chosen else None
    wrong += labels.unknown(*(one.setting for one in controls)) if labels else ()
    wrong += choices.unknown(*(one.setting for one in chosen)) if choices else ()
    return tuple(
        dataclasses.replace(
            one,
            label=(attempt(wrong, line, labels, one.setting, LABEL_LETTERS) if labels else "")
            or "",
            words=_choices(wrong, choices, one) if choices and one.choices else {},
        )
        for one in controls
    )


def _choices(wrong: list[InputError], around: Table, control: Control) -> dict[str, str]:
    table = attempt(wrong, around.table, control.setting)
    if table is None:
        return {}
    wrong += table.unknown(*control.choices)
    return {
        one: plain(table, one, attempt(wrong, line, table, one, LABEL_LETTERS) or "")
        for one in control.choices
    }
