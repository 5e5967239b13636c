"""Small parts that worksheets and keys share."""

from collections.abc import Iterable, Sequence
from html import escape

from demo_app.content.lessons.drawn import Drawn
from demo_app.content.lessons.records import Words
from demo_app.content.readings import in_words


def options(texts: Iterable[str]) -> str:
    """Answers with their letters."""
    return '<ol type="A">' + "".join(f"<li>{escape(one)}</li>" for one in texts) + "</ol>"


def listed(texts: Iterable[str]) -> str:
    """A list without an order."""
    return "<ul>" + "".join(f"<li>{escape(one)}</li>" for one in texts) + "</ul>"


def points(words: Iterable[Words]) -> list[str]:
    """Paragraphs and points alike, each a text."""
    return [one.text for one in words]


def paragraph(text: str, kind: str = "") -> str:
    """A paragraph of a class."""
    return f'<p class="{kind}">{escape(text)}</p>' if kind else f"<p>{escape(text)}</p>"


def table(caption: str, heads: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    """A table whose first column heads its rows."""
    cells = "".join(f'<th scope="col">{escape(head)}</th>' for head in heads)
    lines = [
        f'<tr><th scope="row">{escape(first)}</th>'
        + "".join(f"<td>{escape(cell)}</td>" for cell in rest)
        + "</tr>"
        for first, *rest in rows
    ]
    return (
        f"<table>\n<caption>{escape(caption)}</caption>\n<thead><tr>{cells}</tr></thead>\n"
        "<tbody>" + "\n".join(lines) + "</tbody>\n</table>"
    )


def tolerance(one: Drawn) -> str:
    """How far from the model's value still counts as right."""
    return f"{in_words(float(f'{one.tolerance:.2g}'))} {one.unit}".rstrip()
