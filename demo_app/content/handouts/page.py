"""A handout as HTML that prints in black and white and that a screen reader can walk through."""

from html import escape

from demo_app.content.handouts.key import answers
from demo_app.content.handouts.make import Handout
from demo_app.content.handouts.sheet import worksheet
from demo_app.content.handouts.words import texts

STYLE = """
body { font-family: "DejaVu Sans", sans-serif; color: #111111; background: #ffffff;
       max-width: 46em; }
h1 { font-size: 18pt; margin-top: 0; margin-bottom: 6px; }
h2 { font-size: 13pt; margin-top: 14px; margin-bottom: 3px; }
h3 { font-size: 10pt; margin-top: 10px; margin-bottom: 2px; }
p, li { margin-top: 3px; margin-bottom: 3px; }
ol, ul { margin-top: 2px; margin-bottom: 4px; }
table { border-collapse: collapse; margin-top: 3px; margin-bottom: 6px; }
caption { text-align: left; }
th, td { border: 1px solid #767676; padding: 2px 7px; text-align: left; vertical-align: top; }
.caption { font-size: 8pt; }
.told { font-weight: bold; }
.write { line-height: 2; }
@media print { h2, h3 { break-after: avoid; } .figure, table { break-inside: avoid; } }
"""


def page(what: Handout, paper: str = "A4") -> str:
    """The handout as one HTML page that needs nothing else; `paper` is for those who print it."""
    said = texts(what.lesson.language)
    title = said["key" if what.key else "worksheet"].format(title=what.lesson.title)
    body = _told(what) + (answers(what) if what.key else worksheet(what))
    return (
        f'<!DOCTYPE html>\n<html lang="{escape(what.lesson.language)}">\n<head>\n'
        '<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{escape(title)}</title>\n"
        f"<style>@page {{ size: {paper}; margin: 15mm; }}{STYLE}</style>\n</head>\n"
        f"<body>\n<main>\n<h1>{escape(title)}</h1>\n" + "\n".join(body) + "\n</main>\n</body>\n"
        "</html>\n"
    )


def _told(what: Handout) -> list[str]:
    lesson, words = what.lesson, texts(what.lesson.language)
    low, high = lesson.ages
    ages = words["adults" if low >= 18 else "ages"].format(low=low, high=high)
    made = words["made"].format(seed=what.seed, ages=ages)
    parts = [f"<p>{escape(made)}</p>"]
    if lesson.simulated is not None:
        said = (
            lesson.simulated.says,
            words["not_at_home"].format(said=lesson.simulated.not_at_home),
        )
        parts += [f'<p class="told">{escape(one)}</p>' for one in said]
    return parts
