"""Every English text that a translation translates, with its context and its id.

The texts are data of the scenes and of a few tables, not calls in the code, so Qt's own lupdate
cannot see them: `demo_app.translating` writes them into the translation files.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import get_args

from demo_app.content import checklist, hot
from demo_app.content.bench.catalogue import pages
from demo_app.content.bench.map_report import LIMIT
from demo_app.content.bench.matters import TEXTS as MATTERS
from demo_app.content.bench.words import COMMON
from demo_app.content.cues.records import EYEWEAR_FOR
from demo_app.content.describe_words import ENGLISH as DESCRIBED
from demo_app.content.journal import pieces
from demo_app.content.venue import FIELDS, REVIEW_LINES
from demo_app.optics.light_data import LAMPS
from demo_app.physics.filling.moulded import CORNERS
from demo_app.physics.grades import GRADES, Limit
from demo_app.scenes.catalogue import ids, scenes
from demo_app.scenes.scene import Reading, Scene
from demo_app.scenes.settings import Setting, settings_of
from demo_app.ui import words
from demo_app.ui.language_ids import (
    BENCH,
    CHECKLIST,
    DECIMAL,
    DESCRIBE,
    HOT,
    LANGUAGE,
    NAME,
    PIECES,
    REVIEW,
    SAMPLE,
    SELF,
    SHORT,
    UI,
    VENUE,
    VIEW,
    bench_context,
    choice_id,
    help_id,
    label_id,
    scene_context,
    text_id,
    value_id,
)
from demo_app.ui.light_page import MODES

READ: Mapping[tuple[str, str], tuple[str, ...]] = {
    ("bubble", "answer"): ("first", "full"),
    ("dish", "weak_corner"): (*CORNERS, "hardly before another"),
    ("toughen", "grade"): GRADES,
    ("toughen", "grade_limited_by"): get_args(Limit),
}
"""Words that a scene's reading can be, by scene and reading; several have ", " between them."""


@dataclass(frozen=True)
class Source:
    """One text to translate.

    Parameters
    ----------
    context : str
        "scene." and a scene's id, "describe", "ui" or "language".
    id : str
        Name of the message within its context: Qt's disambiguation.
    english : str
        The words. They are part of the key: a translation of other words is never shown.
    """

    context: str
    id: str
    english: str


def sources() -> tuple[Source, ...]:
    """All texts, each once, in a lasting order."""
    found = [Source(LANGUAGE, NAME, SELF), Source(LANGUAGE, DECIMAL, SAMPLE)]
    for scene in scenes().values():
        found += scene_sources(scene)
    found += _table(DESCRIBE, DESCRIBED)
    found += _table(UI, words.ENGLISH)
    found += (Source(SHORT, name, words.choice(name)) for name in ids())
    found += view_sources()
    found += venue_sources()
    found += bench_sources()
    return tuple(dict.fromkeys(found))


def view_sources() -> Iterator[Source]:
    """Choices of the page about light and view."""
    for name, choices in (("lamp", LAMPS), ("section", MODES)):
        for choice in choices:
            yield Source(VIEW, f"choice.{name}.{choice}", words.choice(choice))


def venue_sources() -> Iterator[Source]:
    """Texts of checklists, of a venue's rules, and of what is counted and put down hot."""
    for field in FIELDS:
        yield Source(VENUE, field.name, field.label)
        yield Source(VENUE, f"{field.name}.ask", field.ask)
    yield from _table(REVIEW, REVIEW_LINES)
    yield from _table(CHECKLIST, checklist.ENGLISH)
    yield from (Source(CHECKLIST, f"hazard.{name}", name) for name in EYEWEAR_FOR)
    yield from _table(HOT, hot.ENGLISH)
    yield from _table(PIECES, pieces.ENGLISH)


def bench_sources() -> Iterator[Source]:
    """Texts of the bench's pages."""
    yield from _table(BENCH, {**COMMON, **MATTERS})
    yield Source(BENCH, "limit_map", LIMIT)
    for page in pages():
        context = bench_context(page.id)
        yield Source(context, "help", page.help)
        for setting in settings_of(page.question):
            yield from _setting(context, setting)
        yield from _table(context, page.texts)


def scene_sources(scene: Scene) -> Iterator[Source]:
    """The texts of one scene."""
    context = scene_context(scene)
    yield Source(context, "title", scene.title)
    for name, english in scene.texts.items():
        yield Source(context, text_id(name), english)
    for action in scene.actions:
        yield Source(context, label_id(action), action.label)
    for setting in settings_of(scene.settings):
        yield from _setting(context, setting)
    for reading in (*scene.readings, *scene.traces):
        yield from _named(context, reading)
        for word in READ.get((scene.id, reading.name), ()):
            yield Source(context, value_id(reading, word), word)


def _setting(context: str, setting: Setting) -> Iterator[Source]:
    yield from _named(context, setting)
    for choice in setting.choices:
        yield Source(context, choice_id(setting, choice), words.choice(choice))


def _named(context: str, what: Setting | Reading) -> Iterator[Source]:
    yield Source(context, label_id(what), what.label)
    if what.help:
        yield Source(context, help_id(what), what.help)


def _table(context: str, texts: Mapping[str, str]) -> Iterator[Source]:
    return (Source(context, name, english) for name, english in texts.items())
