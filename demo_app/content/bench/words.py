"""Texts that all pages of the bench share, and an answer as words for a terminal or as JSON."""

import dataclasses
from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np

from demo_app import __version__
from demo_app.content.bench.answer import Answer, Figure, Page, Table
from demo_app.content.bench.matters import TEXTS as MATTERS
from demo_app.content.readings import in_words
from demo_app.scenes.scene import Message
from demo_app.scenes.settings import settings_of

COMMON = {
    "caution_show": "This prepares a demonstration. It never clears a piece of glass for use, and "
    "no number here says that a real piece is safe.",
    "caution_venue": "It does not replace your venue's assessment: where the two differ, theirs "
    "wins.",
    "limit_range": "A range holds nine of ten cases within the tolerances that are stated; what "
    "nobody stated is not in it.",
    "limit_glass": "The glass is taken as the file '{glass}' has it; another maker's may differ by "
    "some percent in every value.",
    "first": "This is a first estimate; the runs that make the ranges sharp are still to come.",
    "share": "share",
    "probability": "probability",
    "drawn_none": "Worked out, with no chances drawn.",
    "drawn": "{runs} of {most} runs, seed {seed}.",
    "nothing": "none",
    "under": "under {percent}",
    "over": "over {percent}",
}
CAUTIONS = (Message("caution_show"), Message("caution_venue"))


def texts_of(page: Page) -> dict[str, str]:
    """All texts that an answer of `page` may name."""
    return {**COMMON, **MATTERS, **page.texts}


def limits_of(glass: str, *ids: str, ranges: str = "limit_range") -> tuple[Message, ...]:
    """Limits of a page by their ids, and what all share: the glass, and what a range means."""
    shared = (Message("limit_glass", {"glass": glass}), Message(ranges))
    return (*(Message(id) for id in ids), *shared)


def span(figure: Figure) -> str:
    """A figure as people write it: its middle, and its range in brackets.

    Examples
    --------
    >>> span(Figure("wall", 1.0, 1.5, 2.0, "mm"))
    '1.5 mm (1 to 2)'
    """
    low, middle, high = (
        rounded(one, figure.unit) for one in (figure.low, figure.middle, figure.high)
    )
    if low == middle == high == "none":
        return "none"
    return f"{middle} {figure.unit}".rstrip() + f" ({low} to {high})"


def rounded(value: float | None, unit: str, texts: Mapping[str, str] = COMMON) -> str:
    """A number with three significant digits; a probability in whole percent.

    `texts` are `COMMON` in some language; the number has a decimal point whatever that is.
    """
    if value is None:
        return texts["nothing"]
    if unit == "%" and 0 < value < 1:
        return texts["under"].format(percent=1)
    if unit == "%" and 99 < value < 100:
        return texts["over"].format(percent=99)
    if unit == "%":
        return f"{value:.0f}"
    return in_words(float(f"{value:.3g}"))


def cell(value: float | str | None, unit: str, texts: Mapping[str, str]) -> str:
    """A table's cell in words."""
    if value is None:
        return "–"
    return texts.get(value, value) if isinstance(value, str) else rounded(value, unit, texts)


def as_words(page: Page, answer: Answer) -> str:
    """An answer for a terminal."""
    texts = texts_of(page)
    lines = [f"{page.title}. {state_of(answer)}", ""]
    lines += _columns((texts[one.id], span(one)) for one in answer.figures)
    lines += ["", *(one.words(texts) for one in answer.sentences)]
    for table in answer.tables:
        lines += ["", texts[table.id], *_columns(rows_of(table, texts))]
    lines += ["", "Holds only so far:", *(f"- {one.words(texts)}" for one in answer.limits)]
    lines += ["", *(one.words(texts) for one in answer.cautions)]
    return "\n".join(lines)


def state_of(answer: Answer, texts: Mapping[str, str] = COMMON) -> str:
    """How fine an answer is, in words."""
    if answer.seed is None:
        return texts["drawn_none"]
    if not answer.runs:
        return texts["first"]
    return texts["drawn"].format(runs=answer.runs, most=answer.most, seed=answer.seed)


def rows_of(table: Table, texts: Mapping[str, str]) -> list[tuple[str, ...]]:
    """A table's header and rows in words."""
    names = (f"{texts[one.id]} {one.unit}".rstrip() for one in table.columns)
    units = [one.unit for one in table.columns]
    return [
        tuple(names),
        *(tuple(map(cell, row, units, [texts] * len(row))) for row in table.rows),
    ]


def inputs_of(question: Any) -> list[tuple[str, str]]:
    """Labels and values of a question's inputs."""
    return [
        (one.label, f"{in_words(getattr(question, one.name))} {one.unit}".rstrip())
        for one in settings_of(type(question))
    ]


def as_record(page: Page, answer: Answer) -> dict[str, Any]:
    """An answer ready for strict JSON."""
    texts = texts_of(page)

    def said(messages: Iterable[Message]) -> list[dict[str, Any]]:
        return [
            {"id": one.id, "values": _plain(dict(one.values)), "text": one.words(texts)}
            for one in messages
        ]

    return {
        "page": answer.page,
        "version": __version__,
        "question": dataclasses.asdict(answer.question),
        "runs": answer.runs,
        "most": answer.most,
        "seed": answer.seed,
        "figures": [{**dataclasses.asdict(one), "label": texts[one.id]} for one in answer.figures],
        "sentences": said(answer.sentences),
        "tables": [_plain(dataclasses.asdict(one)) for one in answer.tables],
        "charts": [
            {
                "x": [one.x_id, one.x_unit],
                "y": [one.y_id, one.y_unit],
                "curves": {curve.id: _plain([curve.x, curve.y]) for curve in one.curves},
                "levels": dict(one.levels),
            }
            for one in answer.charts
        ],
        "limits": said(answer.limits),
        "cautions": said(answer.cautions),
    }


def _plain(value: Any) -> Any:
    if isinstance(value, dict):
        return {key: _plain(one) for key, one in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(one) for one in value]
    return value.tolist() if isinstance(value, np.ndarray | np.generic) else value


def _columns(rows: Iterable[tuple[str, ...]]) -> list[str]:
    told = list(rows)
    widths = [max(map(len, column)) for column in zip(*told, strict=True)]
    return ["  ".join(map(str.ljust, row, widths)).rstrip() for row in told]
