"""The handover page: what whoever comes next has to know, from the journal, as HTML."""

import datetime
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from html import escape
from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.content.journal.events import open_notes, open_questions
from demo_app.content.journal.listing import clock, day, rows, summary
from demo_app.content.journal.pieces import Balance, Stock, balances, stock
from demo_app.content.journal.store import Journal, Row
from demo_app.content.venue import FOLLOW

ENDS = (".html", ".pdf")

STYLE = """
body { font-family: "DejaVu Sans", sans-serif; color: #111111; background: #ffffff;
       max-width: 46em; }
h1 { font-size: 18pt; margin-top: 0; margin-bottom: 6px; }
h2 { font-size: 12pt; margin-top: 9px; margin-bottom: 2px; }
p, li { margin-top: 2px; margin-bottom: 2px; }
ul { margin-top: 0; margin-bottom: 0; }
table { border-collapse: collapse; margin-top: 2px; margin-bottom: 6px; }
caption { text-align: left; }
th, td { border: 1px solid #767676; padding: 1px 7px; text-align: left; }
td.number, th.number { text-align: right; }
.told { font-weight: bold; }
"""


@dataclass(frozen=True)
class Handover:
    """What the page says.

    Parameters
    ----------
    day : str
        Of the shows, as 2026-05-04.
    shows : tuple of dict
        Shows and rehearsals of that day, as `listing.summary` has them.
    state, faults, orders, notes : tuple of dict
        Notes that are open, the oldest first.
    questions : tuple of dict
        Questions that are open.
    accidents, near_misses : tuple of dict
        Breakages that were not meant, and near misses, of that day.
    stock : tuple of Stock
        All batches.
    glass : tuple of Balance
        Glass of that day's shows, and of any other whose count does not balance.
    """

    day: str
    shows: tuple[Row, ...] = ()
    state: tuple[Row, ...] = ()
    faults: tuple[Row, ...] = ()
    orders: tuple[Row, ...] = ()
    notes: tuple[Row, ...] = ()
    questions: tuple[Row, ...] = ()
    accidents: tuple[Row, ...] = ()
    near_misses: tuple[Row, ...] = ()
    stock: tuple[Stock, ...] = ()
    glass: tuple[Balance, ...] = ()


def gathered(journal: Journal, on: datetime.date) -> Handover:
    """What the journal says for the page of the day `on`."""
    text = on.isoformat()
    shows = tuple(row for row in summary(journal) if day(row["begun"]) == text)
    numbers = {row["show"] for row in shows}
    of_day = {
        name: tuple(row for row in rows(journal, name) if day(row["at"]) == text)
        for name in ("breakages", "near_misses")
    }
    return Handover(
        day=text,
        shows=shows,
        state=open_notes(journal, "state"),
        faults=open_notes(journal, "fault"),
        orders=open_notes(journal, "order"),
        notes=open_notes(journal, "note"),
        questions=open_questions(journal),
        accidents=tuple(row for row in of_day["breakages"] if not row["meant"]),
        near_misses=of_day["near_misses"],
        stock=stock(journal),
        glass=tuple(one for one in balances(journal) if one.show in numbers or one.missing),
    )


def page(what: Handover) -> str:
    """The page as HTML that needs nothing else and that a screen reader can walk through."""
    title = f"Handover, {what.day}"
    parts = [
        f"<h1>{escape(title)}</h1>",
        f"<p>{escape(FOLLOW)}</p>",
        *_section("How the stand was left", [_dated(one) for one in what.state]),
        *_section("Faults that are open", [_dated(one) for one in what.faults]),
        *_section("What to order", _orders(what)),
        *_section("Near misses and accidents of the day", _incidents(what)),
        *_section("Questions that are open", [_dated(one) for one in what.questions]),
        "<h2>Glass out and in</h2>",
        *_glass(what.glass),
        "<h2>Stock of pieces</h2>",
        *_stock(what.stock),
        "<h2>Shows of the day</h2>",
        *_shows(what.shows),
        *(_section("Notes", [_dated(one) for one in what.notes]) if what.notes else ()),
        "<p>Roles only: this page and the journal keep no names.</p>",
    ]
    body = "\n".join(parts)
    return (
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{escape(title)}</title>\n<style>{STYLE}</style>\n</head>\n"
        f"<body>\n<main>\n{body}\n</main>\n</body>\n</html>\n"
    )


def check_name(path: Path) -> Path:
    """`path`, if its end is one of `ENDS`; `InputError` otherwise."""
    if path.suffix.lower() not in ENDS:
        raise InputError(
            f"'{path.name}' is no page", place="--out", remedy="let it end in .html or .pdf"
        )
    return path


def parse_day(text: str | None) -> datetime.date:
    """The day that `text` names as year-month-day; today if there is none.

    Raises
    ------
    InputError
        If it is no day.
    """
    if text is None:
        return datetime.date.today()
    try:
        if not re.fullmatch(r"\d{4}-\d{2}-\d{2}", text):
            raise ValueError
        return datetime.date.fromisoformat(text)
    except ValueError:
        raise InputError(
            f"'{text}' is no day", place="--day", remedy="write it as 2026-03-31"
        ) from None


def _section(head: str, lines: Sequence[str]) -> list[str]:
    if not lines:
        return [f"<h2>{escape(head)}</h2>", "<p>Nothing is written down.</p>"]
    return [f"<h2>{escape(head)}</h2>", "<ul>", *(f"<li>{one}</li>" for one in lines), "</ul>"]


def _dated(row: Row) -> str:
    return f"{escape(row['text'])} ({day(row['at'])})"


def _orders(what: Handover) -> list[str]:
    low = [
        escape(f"{one.batch}, {one.kind}: {one.in_stock} in stock, order below {one.order_below}")
        for one in what.stock
        if one.short
    ]
    return low + [_dated(one) for one in what.orders]


def _incidents(what: Handover) -> list[str]:
    near = [
        f"{clock(one['at'])}, near miss: {escape(one['what'])}"
        + (f" ({escape(one['place'])})" if one["place"] else "")
        for one in what.near_misses
    ]
    return near + [
        f"{clock(one['at'])}, broken by accident: {escape(one['what'])}" for one in what.accidents
    ]


def _glass(glass: Sequence[Balance]) -> list[str]:
    if not glass:
        return ["<p>No glass was counted out.</p>"]
    table = _table(
        "Pieces counted out to each show and in again",
        ("Show", "Batch", "#Out", "#Back", "#Broken", "#Not found"),
        [
            (str(one.show), one.batch, one.went_out, one.came_back, one.broke, one.missing)
            for one in glass
        ],
    )
    wrong = [one for one in glass if one.missing]
    told = [f'<p class="told">Show {one.show}, {escape(one.words)}.</p>' for one in wrong]
    return [*table, *(told or ["<p>All counts balance.</p>"])]


def _stock(batches: Sequence[Stock]) -> list[str]:
    if not batches:
        return ["<p>No batch is written down.</p>"]
    table = _table(
        "Pieces in stock by batch",
        ("Batch", "Kind", "Glass", "#Thickness (mm)", "#In stock"),
        [
            (
                one.batch,
                one.kind,
                one.glass,
                "" if one.thickness_mm is None else f"{one.thickness_mm:g}",
                one.in_stock,
            )
            for one in batches
        ],
    )
    told = [
        f'<p class="told">{escape(one.batch)}: more went than there was, count again.</p>'
        for one in batches
        if one.wrong
    ]
    return [*table, *told]


def _shows(shows: Sequence[Row]) -> list[str]:
    if not shows:
        return ["<p>No show was given.</p>"]
    return _table(
        "Shows and rehearsals",
        ("Show", "Begun", "Title", "#Minutes", "#People", "#Steps", "#Cut"),
        [
            (
                f"{row['show']}" + (" (rehearsal)" if row["rehearsal"] else ""),
                clock(row["begun"]),
                row["title"],
                f"{(row['ended'] - row['begun']) / 60:.0f}" if row["ended"] else "no end",
                "not counted" if row["attendance"] is None else row["attendance"],
                row["steps_shown"],
                row["steps_cut"],
            )
            for row in shows
        ],
    )


def _table(caption: str, heads: Sequence[str], lines: Iterable[Sequence[str | int]]) -> list[str]:
    """A table with its heads; those that begin with # are of numbers."""
    kinds = [' class="number"' if head.startswith("#") else "" for head in heads]
    cells = "".join(
        f'<th scope="col"{kind}>{escape(head.lstrip("#"))}</th>'
        for head, kind in zip(heads, kinds, strict=True)
    )
    made = [f"<table>\n<caption>{escape(caption)}</caption>", f"<thead><tr>{cells}</tr></thead>"]
    made.append("<tbody>")
    for first, *rest in lines:
        row = f'<th scope="row"{kinds[0]}>{escape(str(first))}</th>' + "".join(
            f"<td{kind}>{escape(str(cell))}</td>"
            for cell, kind in zip(rest, kinds[1:], strict=True)
        )
        made.append(f"<tr>{row}</tr>")
    return [*made, "</tbody>\n</table>"]
