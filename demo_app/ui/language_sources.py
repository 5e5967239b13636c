"""Every English text that a translation translates, with its context and its id.

The texts are data of the scenes and of a few tables, not calls in the code, so Qt's own lupdate
cannot see them: `demo_app.translating` writes them into the translation files.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from demo_app.content.describe_words import ENGLISH as DESCRIBED
from demo_app.scenes.catalogue import scenes
from demo_app.scenes.scene import Action, Reading, Scene
from demo_app.scenes.settings import Setting, settings_of
from demo_app.ui import words

DESCRIBE = "describe"
UI = "ui"
LANGUAGE = "language"
NAME = "name"
SELF = "English"


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


def scene_context(scene: Scene) -> str:
    """Context of a scene's texts."""
    return f"scene.{scene.id}"


def text_id(name: str) -> str:
    """Id of a sentence, or of the name of a curve, an axis or a stress."""
    return f"text.{name}"


def label_id(what: Setting | Reading | Action) -> str:
    """Id of the name of a setting, a reading (or a curve over time) or a button."""
    if isinstance(what, Action):
        return f"action.{what.id}"
    return f"{'setting' if isinstance(what, Setting) else 'reading'}.{what.name}"


def help_id(what: Setting | Reading) -> str:
    """Id of the sentence that explains a setting or a reading."""
    return f"{label_id(what)}.help"


def choice_id(setting: Setting, choice: str) -> str:
    """Id of one of a setting's choices."""
    return f"choice.{setting.name}.{choice}"


def sources() -> tuple[Source, ...]:
    """All texts, each once, in a lasting order."""
    found = [Source(LANGUAGE, NAME, SELF)]
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


def _named(context: str, what: Setting | Reading) -> Iterator[Source]:
    yield Source(context, label_id(what), what.label)
    if what.help:
        yield Source(context, help_id(what), what.help)


def _table(context: str, texts: Mapping[str, str]) -> Iterator[Source]:
    return (Source(context, name, english) for name, english in texts.items())
