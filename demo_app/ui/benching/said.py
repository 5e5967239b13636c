"""The bench's texts and numbers in the language in use."""

import re
from collections.abc import Mapping

from demo_app.content.bench.answer import Figure, Page, Table
from demo_app.content.bench.matters import TEXTS as MATTERS
from demo_app.content.bench.words import COMMON, rounded, rows_of
from demo_app.ui import words
from demo_app.ui.language_ids import BENCH, bench_context

_SPAN = re.compile(r"(\S+) to (\S+ nm)")


def page_texts(page: Page) -> dict[str, str]:
    """All texts that an answer of `page` may name, as `demo_app.content.bench.words.texts_of`."""
    own = words.Table(bench_context(page.id), page.texts, word=_word)
    return {**common(), **own}


def common() -> dict[str, str]:
    """Texts that all pages share."""
    return dict(words.Table(BENCH, {**COMMON, **MATTERS}, word=_word))


def help_of(page: Page) -> str:
    """What a page asks."""
    return words.said(bench_context(page.id), "help", page.help)


def number(figure: Figure, value: float | None) -> str:
    """One end of a figure."""
    return _local(rounded(value, figure.unit, words.Table(BENCH, COMMON)))


def rows(table: Table, texts: Mapping[str, str]) -> list[tuple[str, ...]]:
    """A table's header and rows in words."""
    head, *told = rows_of(table, texts)
    cells = zip(told, table.rows, strict=True)
    return [
        head,
        *(
            tuple(
                said if isinstance(value, str) else _local(said)
                for said, value in zip(row, values, strict=True)
            )
            for row, values in cells
        ),
    ]


def _local(said: str) -> str:
    return said.replace(".", words.decimal_point())


def _word(said: str) -> str:
    """A list of ranges, in words."""
    found = [_SPAN.fullmatch(one) for one in said.split("; ")]
    spans = [words.text("bench.span", low=one[1], high=one[2]) for one in found if one is not None]
    return "; ".join(spans) if len(spans) == len(found) else said
