"""Every English text that a translation translates, with its context and its id.

The texts are data of the scenes and of a few tables, not calls in the code, so Qt's own lupdate
cannot see them: `demo_app.translating` writes them into the translation files.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import get_args

from demo_app.content.describe_words import ENGLISH as DESCRIBED
from demo_app.physics.filling.moulded import CORNERS
from demo_app.physics.grades import GRADES, Limit
from demo_app.scenes.catalogue import scenes
from demo_app.scenes.scene import Reading, Scene
from demo_app.scenes.settings import Setting, settings_of
from demo_app.ui import words
from demo_app.ui.language_ids import (
    DECIMAL,
    DESCRIBE,
    LANGUAGE,
    NAME,
    SAMPLE,
    SELF,
    UI,
    choice_id,
    help_id,
    label_id,
    scene_context,
    text_id,
    value_id,
)

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
    return tuple(dict.fromkeys(found))


def scene_sources(scene: Scene) -> Iterator[Source]:
    """The texts of one scene."""
    context = scene_context(scene)
    yield Source(context, "title", scene.title)
    for name, english in scene.texts.items():
        yield Source(context, text_id(name), english)
    for action in scene.actions:
        yield Source(context, label_id(action), action.label)
    for setting in settings_of(scene.settings):
        yield from _named(context, setting)
        for choice in setting.choices:
            yield Source(context, choice_id(setting, choice), words.choice(choice))
    for reading in (*scene.readings, *scene.traces):
        yield from _named(context, reading)
        for word in READ.get((scene.id, reading.name), ()):
            yield Source(context, value_id(reading, word), word)


def _named(context: str, what: Setting | Reading) -> Iterator[Source]:
    yield Source(context, label_id(what), what.label)
    if what.help:
        yield Source(context, help_id(what), what.help)


def _table(context: str, texts: Mapping[str, str]) -> Iterator[Source]:
    return (Source(context, name, english) for name, english in texts.items())
