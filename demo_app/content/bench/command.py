"""The command ``lehrlight bench``: one question answered without a screen."""

import base64
import datetime
from collections.abc import Callable
from pathlib import Path
from typing import Any

from demo_app.base.atomic import check_place, write_text
from demo_app.base.errors import InputError
from demo_app.content.bench.answer import Answer, Page, Progress, never
from demo_app.content.bench.catalogue import page, pages
from demo_app.content.bench.matching import device_from
from demo_app.content.bench.report import Report, report
from demo_app.content.bench.words import as_record, as_words
from demo_app.content.readings import as_json, in_words
from demo_app.content.site.devices import id_of
from demo_app.content.site.saving import save_device
from demo_app.content.words import parse_sets
from demo_app.optics.png import png_bytes
from demo_app.scenes.settings import make, settings_of

KINDS = (".html", ".pdf")
Print = Callable[[Report, Path], None]
"""Writes a report as a PDF; given from outside, since that needs a layer above this one."""


def listed() -> str:
    """All questions with their inputs, for a terminal."""
    lines = []
    for one in pages():
        lines.append(f"{one.id}: {one.help}")
        for setting in settings_of(one.question):
            default = in_words(setting.default)
            lines.append(f"  {setting.name} = {default} {setting.unit}".rstrip())
    return "\n".join(lines)


def check_out(name: str | None) -> Path | None:
    """Return the file to write, found usable before any long work; `InputError` else."""
    if name is None:
        return None
    path = Path(name)
    if path.suffix.lower() not in KINDS:
        raise InputError(
            f"'{path.name}' ends in none of {', '.join(KINDS)}",
            place="--out",
            remedy="write FILE.pdf or FILE.html",
        )
    check_place(path)
    return path


def answered(asked: Page, question: Any, progress: Progress, *, quickly: bool = False) -> Answer:
    """The finest answer, or the first one."""
    answer = asked.first(question)
    if not quickly:
        for answer in asked.full(question, progress, never):  # noqa: B007
            pass
    return answer


def bench(
    id: str,
    sets: list[str],
    out: str | None,
    progress: Progress,
    print_pdf: Print,
    *,
    json: bool = False,
    quickly: bool = False,
    keep: str | None = None,
) -> str:
    """Answer one question; returns what is to be printed on standard output.

    Parameters
    ----------
    id : str
        The question.
    sets : list of str
        ``NAME=VALUE`` words.
    out : str or None
        File for the page to print: .pdf or .html.
    progress : callable
        Told ``(done, most)``.
    print_pdf : callable
        Writes a report as a PDF.
    json : bool
        For programs.
    quickly : bool
        The first answer alone.
    keep : str or None
        Name under which a fitted value is kept as a device of this person.
    """
    asked = page(id)
    if keep is not None:
        id_of(keep)
        if id != "matching" or quickly:
            raise InputError(
                "only a finished answer of 'matching' can be kept",
                place="--keep",
                remedy="leave it out",
            )
    question: Any = make(asked.question, parse_sets(sets))
    path = check_out(out)
    answer = answered(asked, question, progress, quickly=quickly)
    if keep is not None:
        save_device(device_from(answer, keep, datetime.date.today()))
    if path is not None:
        made = report(asked, answer)
        if path.suffix.lower() == ".pdf":
            print_pdf(made, path)
        else:
            write_text(path, whole(made))
    return as_json(as_record(asked, answer)) if json else as_words(asked, answer)


def whole(made: Report) -> str:
    """The page with its pictures inside, so that it is one file."""
    text = made.html
    for name, pixels in made.images.items():
        data = base64.b64encode(png_bytes(pixels[..., ::-1])).decode("ascii")
        text = text.replace(f"src='{name}'", f"src='data:image/png;base64,{data}'")
    return text
