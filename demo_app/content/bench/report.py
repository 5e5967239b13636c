"""An answer as a page to print: inputs, figures with ranges, tables, charts, limits, cautions."""

import datetime
import html
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from demo_app import __version__
from demo_app.content.bench.answer import Answer, Page, Strip
from demo_app.content.bench.raster import (
    Pixels,
    chart_picture,
    ends_of,
    key_picture,
    strip_picture,
)
from demo_app.content.bench.words import inputs_of, rounded, rows_of, state_of, texts_of
from demo_app.content.readings import in_words
from demo_app.scenes.scene import Chart

_WIDE = 600
"""Width of a picture on the page, pixels of 1/96 inch."""


@dataclass(frozen=True)
class Report:
    """A page and its pictures.

    Parameters
    ----------
    html : str
        The page, in the part of HTML 4 that Qt's rich text knows.
    images : mapping
        Pictures by the names that the page uses, uint8 of shape (height, width, 3), red first.
    title : str
        For the file and the foot of each page.
    """

    html: str
    images: Mapping[str, Pixels]
    title: str


def report(page: Page, answer: Answer, day: datetime.date | None = None) -> Report:
    """The page of an answer.

    Parameters
    ----------
    page, answer : Page, Answer
        What was asked, and what was found.
    day : datetime.date, optional
        Default: today.
    """
    texts = texts_of(page)
    images: dict[str, Pixels] = {}
    told = day or datetime.date.today()
    title = f"Prep bench: {page.title}"
    parts = [
        f"<h1>{_safe(title)}</h1>",
        f"<p>{_safe(page.help)}</p>",
        *_paragraphs((one.words(texts) for one in answer.sentences), bold=True),
        _boxed(one.words(texts) for one in answer.cautions),
        "<h2>Figures</h2>",
        _figures(answer, texts),
        f"<p>{_safe(state_of(answer))}</p>",
    ]
    for table in answer.tables:
        parts += [f"<h2>{_safe(texts[table.id])}</h2>", _table(rows_of(table, texts))]
    for number, chart in enumerate(answer.charts):
        parts.append(_chart(chart, number, texts, images))
    for strip in answer.strips:
        parts.append(_strip(strip, texts, images))
    parts += [
        "<h2>What was put in</h2>",
        _inputs(inputs_of(answer.question)),
        "<h2>Holds only so far</h2>",
        _list(one.words(texts) for one in answer.limits),
        f"<p>{_safe(_made_by(answer, told))}</p>",
    ]
    head = f"<html><head><meta charset='utf-8'><title>{_safe(title)}</title></head><body>"
    return Report(head + "\n".join(parts) + "</body></html>", images, title)


def _made_by(answer: Answer, day: datetime.date) -> str:
    seed = "no seed" if answer.seed is None else f"seed {answer.seed}"
    return f"Lehrlight {__version__}, {day.isoformat()}, {seed}, {answer.runs} runs."


def _figures(answer: Answer, texts: Mapping[str, str]) -> str:
    rows = [("", "likely", "from", "to", "unit")]
    for one in answer.figures:
        likely, low, high = (rounded(end, one.unit) for end in (one.middle, one.low, one.high))
        rows.append((texts[one.id], likely, low, high, one.unit))
    return _table(rows)


def _chart(chart: Chart, number: int, texts: Mapping[str, str], images: dict[str, Pixels]) -> str:
    name = f"chart-{number}.png"
    images[name] = chart_picture(chart)
    left, right, low, high = ends_of(chart)
    keys = []
    for place, curve in enumerate(chart.curves):
        key = f"key-{number}-{place}.png"
        images[key] = key_picture(place)
        keys.append(f"<img src='{key}' width='45' height='7'> {_safe(texts[curve.id])}")
    keys += [f"dotted: {_safe(texts[id])} ({in_words(float(y))})" for id, y in chart.levels]
    across = f"{texts[chart.x_id]} {chart.x_unit}".rstrip()
    up = f"{texts[chart.y_id]} {chart.y_unit}".rstrip()
    span = [f"{in_words(float(f'{end:.3g}'))}" for end in (low, high, left, right)]
    return (
        f"<h2>{_safe(up)} over {_safe(across)}</h2>"
        f"<p>{' &nbsp; '.join(keys)}</p>"
        f"<img src='{name}' width='{_WIDE}' height='{_WIDE * 400 // 1200}'>"
        f"<p>Across: {span[2]} to {span[3]} {_safe(chart.x_unit)}. "
        f"Up: {span[0]} to {span[1]} {_safe(chart.y_unit)}. Grid lines part both in four.</p>"
    )


def _strip(strip: Strip, texts: Mapping[str, str], images: dict[str, Pixels]) -> str:
    name = f"strip-{strip.id}.png"
    images[name] = strip_picture(strip)
    return (
        f"<h2>{_safe(texts[strip.id])}</h2>"
        f"<img src='{name}' width='{_WIDE}' height='{_WIDE * 90 // 1200}'>"
        f"<p>From {strip.low_nm:.0f} to {strip.high_nm:.0f} nm; what suits has a bar under it.</p>"
    )


def _table(rows: Sequence[Sequence[str]]) -> str:
    head, *rest = rows
    lines = ["<tr>" + "".join(f"<th align='left'>{_safe(one)}</th>" for one in head) + "</tr>"]
    for row in rest:
        lines.append("<tr>" + "".join(f"<td>{_safe(one)}</td>" for one in row) + "</tr>")
    body = "".join(lines)
    return f"<table border='1' cellspacing='0' cellpadding='3'>{body}</table>"


def _inputs(pairs: Sequence[tuple[str, str]]) -> str:
    """Inputs and values, two beside each other to save paper."""
    half = (len(pairs) + 1) // 2
    second = [*pairs[half:], *(2 * half - len(pairs)) * [("", "")]]
    rows = [(*one, *other) for one, other in zip(pairs[:half], second, strict=True)]
    return _table([("input", "value", "input", "value"), *rows])


def _boxed(texts: Iterable[str]) -> str:
    body = "<br>".join(_safe(one) for one in texts)
    return f"<table border='2' cellspacing='0' cellpadding='6'><tr><td>{body}</td></tr></table>"


def _paragraphs(texts: Iterable[str], *, bold: bool = False) -> list[str]:
    return [f"<p><b>{_safe(one)}</b></p>" if bold else f"<p>{_safe(one)}</p>" for one in texts]


def _list(texts: Iterable[str]) -> str:
    return "<ul>" + "".join(f"<li>{_safe(one)}</li>" for one in texts) + "</ul>"


def _safe(text: str) -> str:
    return html.escape(text)
