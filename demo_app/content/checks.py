"""Files that people write, checked by kind before anybody stands in front of an audience."""

import datetime
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, parse
from demo_app.content import glossary
from demo_app.content.cues.load import examine
from demo_app.content.cues.records import Sheet, Step
from demo_app.content.cues.truth import Truth
from demo_app.content.kiosk import site_file, texts
from demo_app.content.kiosk.outline import KIND as STEPS_KIND
from demo_app.content.kiosk.update import check_answers
from demo_app.content.lessons.load import examine as examine_lesson
from demo_app.content.lessons.load import is_lesson
from demo_app.content.lessons.told import told
from demo_app.content.venue import amber
from demo_app.content.venue_file import KIND, load, mistakes
from demo_app.physics.material_files import load_material

OF_SHEETS = ("step", "title", "venue", "minutes", "language", "allows")
OF_VENUES = ("rules", "review_valid_days")


@dataclass(frozen=True)
class Checked:
    """What is known of a file after its check.

    Parameters
    ----------
    lines : tuple of str
        What it holds, in plain words; none if something is wrong.
    mistakes : tuple of InputError
        Each with file, line where there is one, and what to write instead.
    """

    lines: tuple[str, ...] = ()
    mistakes: tuple[InputError, ...] = ()


def checked(path: Path) -> Checked:
    """Check one file; its kind follows from what it holds.

    Parameters
    ----------
    path : pathlib.Path
        A cue sheet, a venue's rules, a material, a glossary, a kiosk's site or texts, ``.toml``;
        a lesson, ``.md``.
    """
    try:
        if path.suffix.lower() == ".md":
            return _check_lesson(path)
        if path.suffix.lower() != ".toml":
            raise InputError(
                f"a file that ends in '{path.suffix}' is of no known kind",
                place=str(path),
                remedy="cue sheets, venues and materials end in .toml, lessons in .md",
            )
        return _check_of(parse(path))(path)
    except InputError as error:
        return Checked(mistakes=(error,))


def _check_of(top: Table) -> Callable[[Path], Checked]:
    if not top.content:
        raise InputError(
            "holds nothing", place=str(top.path), remedy="write a show, a venue or a material in it"
        )
    kind = top.content.get("kind")
    if isinstance(kind, str) and kind in _KIOSK:
        return _KIOSK[kind]
    if kind == glossary.KIND:
        return _check_glossary
    if kind == KIND or any(key in top.content for key in OF_VENUES):
        return _check_venue
    if any(key in top.content for key in OF_SHEETS):
        return _check_sheet
    return _check_material


def _check_lesson(path: Path) -> Checked:
    if not is_lesson(path):
        return Checked(lines=("not a lesson: a file for people to read, left alone",))
    found = examine_lesson(path)
    if found.lesson is None:
        return Checked(mistakes=found.mistakes)
    return Checked(lines=told(found.lesson, found.truths))


def _check_glossary(path: Path) -> Checked:
    found = glossary.examine(path)
    if found.glossary is None:
        return Checked(mistakes=found.mistakes)
    return Checked(lines=(glossary.summary(found.glossary),))


def _check_site(path: Path) -> Checked:
    wrong = site_file.mistakes(path)
    return Checked(mistakes=wrong) if wrong else Checked(lines=("kiosk site, in order",))


def _check_texts(path: Path) -> Checked:
    """All texts in the folder of `path`: one of them alone says little."""
    wrong = texts.mistakes(path.parent)
    if wrong:
        return Checked(mistakes=wrong)
    found = texts.load(path.parent)
    check_answers(found)
    many = f"{len(found.ids)} steps in {', '.join(found.languages)}"
    return Checked(lines=(f"kiosk texts of this folder, {many}, in order",))


_KIOSK = {
    site_file.KIND: _check_site,
    texts.KIND: _check_texts,
    STEPS_KIND: _check_texts,
}


def _check_sheet(path: Path) -> Checked:
    found = examine(path)
    if found.sheet is None:
        return Checked(mistakes=found.mistakes)
    asking = [step for step in found.sheet.steps if step.question]
    answers = [_answer(step, found.truths[step.id]) for step in asking]
    return Checked(lines=(_summary(found.sheet), *answers))


def _check_venue(path: Path) -> Checked:
    wrong = mistakes(path)
    if wrong:
        return Checked(mistakes=wrong)
    venue = load(path)
    open_still = ", ".join(one.name for one in amber(venue, datetime.date.today()))
    state = f"missing or without a review that counts: {open_still}" if open_still else "reviewed"
    return Checked(lines=(f"venue {venue.name}, in order; {state}",))


def _check_material(path: Path) -> Checked:
    found = load_material(path)
    assumed = f"; assumed: {', '.join(found.assumed)}" if found.assumed else ""
    return Checked(lines=(f"material {found.name} ({found.kind}), in order{assumed}",))


def _summary(sheet: Sheet) -> str:
    planned = sum(step.seconds for step in sheet.steps) / 60
    hazards = ", ".join(sheet.allows) or "none"
    return (
        f"cue sheet {sheet.title}, {sheet.venue}: {len(sheet.steps)} steps, {planned:.1f} of"
        f" {sheet.minutes:g} minutes planned; hazards allowed: {hazards}; in order"
    )


def _answer(step: Step, found: Truth) -> str:
    question = step.question
    assert question is not None
    return (
        f"line {step.line}, {step.id}: {question.ask} The model: {question.reading} ="
        f" {found.words} at {found.at_s:.4g} s, so '{question.answers[found.index].text}' is right"
    )
