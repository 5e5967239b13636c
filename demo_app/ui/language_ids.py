"""Names by which translation files know the texts: a context, and an id within it."""

from demo_app.scenes.scene import Action, Reading, Scene
from demo_app.scenes.settings import Setting

DESCRIBE = "describe"
UI = "ui"
SHORT = "short"
"""Short names of scenes."""
VIEW = "view"
"""Choices of the page about light and view."""
BENCH = "bench"
"""What all pages of the bench share; each has a context of its own too."""
VENUE, REVIEW, CHECKLIST, HOT, PIECES = "venue", "review", "checklist", "hot", "pieces"
LANGUAGE = "language"
NAME = "name"
SELF = "English"
DECIMAL, SAMPLE = "decimal", "1.5"
"""How a language writes one and a half: its decimal sign is the second character."""


def scene_context(scene: Scene) -> str:
    """Context of a scene's texts."""
    return f"scene.{scene.id}"


def bench_context(page: str) -> str:
    """Context of a page of the bench: its title, its question, its inputs, its answers."""
    return f"{BENCH}.{page}"


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


def value_id(reading: Reading, word: str) -> str:
    """Id of a word that a reading can be."""
    return f"value.{reading.name}.{word}"
