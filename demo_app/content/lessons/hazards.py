"""Hazard flags of lessons: what a profile allows, what each scene shows, what words give away.

Nothing is allowed unless a profile lists it, so a new hazard or a new scene is shut out until
somebody has thought about it.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from types import MappingProxyType
from typing import Any

from demo_app.content.cues.records import HAZARDS as OF_SHOWS
from demo_app.scenes.catalogue import load as load_scene
from demo_app.scenes.settings import settings_of

REAL = (*OF_SHOWS, "allergens", "small-parts", "warm-lamp")
"""What may be met in the room."""
SIMULATED = (
    "simulated-flame",
    "simulated-heat",
    "simulated-hot-water",
    "simulated-breakage",
    "simulated-stored-energy",
)
"""What may be seen on the screen alone."""
HAZARDS = (*REAL, *SIMULATED)

PROFILES: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "no-flame-no-breakage": ("allergens", "small-parts", "warm-lamp", *SIMULATED),
        "nothing-simulated": ("allergens", "small-parts", "warm-lamp"),
    }
)
"""Name to all that may be met in such a place. What is not listed cannot be reached."""

SHOWN: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "bubble": ("simulated-heat", "simulated-breakage", "simulated-stored-energy"),
        "cooling": ("simulated-heat",),
        "dish": ("simulated-heat",),
        "light-table": (),
        "pour": ("simulated-hot-water", "simulated-breakage"),
        "push-pull": ("simulated-breakage",),
        "ring": ("simulated-flame", "simulated-heat", "simulated-breakage"),
        "touch": ("simulated-heat", "simulated-breakage"),
        "toughen": ("simulated-heat", "simulated-breakage", "simulated-stored-energy"),
    }
)
"""What each scene can show, whatever its settings."""

_THINGS = {
    "flame": r"candles?|matches|lighters?|burners?|blow ?torch(es)?|gas bottles?|camping stoves?",
    "breakage": r"hammers?|glass cutters?|glass (tubes?|rods?|plates?|bottles?|jars?|tumblers?|"
    r"drops?|slides?|marbles?)|light bulbs?|jam jars?",
    "hot-water": r"kettles?|boiling water|urns?",
    "hot-glass": r"kilns?|furnaces?|hot ?plates?|heat guns?",
    "stored-energy": r"(prince )?rupert'?s drops?|toughened glass|tempered glass",
}
_ACTS = {
    "flame": r"\b(light|strike|hold|put)\b[^.;:]{0,20}\b(match(es)?|candles?|burners?|lighters?|"
    r"flame)\b",
    "breakage": r"\b(break|smash|shatter|crack|hit|drop)\b[^.;:]{0,20}\b(glass|bottles?|tumblers?|"
    r"jars?|window|pane)\b",
    "hot-water": r"\bpour\b[^.;:]{0,20}\b(boiling|hot) water\b",
    "hot-glass": r"\b(heat|warm)\b[^.;:]{0,20}\b(glass|bottle|tumbler|jar)\b",
}
_NOT = re.compile(
    r"\b(never|not|no|nobody|nothing|without|don't|do not|must not|on the screen|simulated|"
    r"the screen|the model|computer)\b",
    re.IGNORECASE,
)


def shown_by(scene: str, settings: Mapping[str, Any], choices: Iterable[Any] = ()) -> set[str]:
    """What may be seen of `scene` on the screen.

    Parameters
    ----------
    scene : str
        Its id; what is unknown may show all of `SIMULATED`.
    settings : mapping
        Other than its defaults.
    choices : iterable
        Words that pupils may choose for any of its settings.
    """
    found = set(SHOWN.get(scene, SIMULATED))
    if scene == "light-table":
        default = next(
            one.default for one in settings_of(load_scene(scene).settings) if one.name == "samples"
        )
        pieces = {
            word
            for text in (settings.get("samples", default), *choices)
            for word in str(text).split(",")
        }
        for piece in pieces & set(SHOWN):
            found |= set(SHOWN[piece])
    return found


def in_kit(name: str) -> Iterator[str]:
    """Hazards that a thing of this name brings, by its words."""
    for hazard, form in _THINGS.items():
        if re.search(rf"\b({form})\b", name, re.IGNORECASE):
            yield hazard


def in_words(text: str) -> Iterator[str]:
    """Hazards of what `text` tells people to do; a sentence that forbids or speaks of the screen is
    left alone.
    """
    for sentence in re.split(r"(?<=[.!?;:])\s+", text):
        if _NOT.search(sentence):
            continue
        for hazard, form in _ACTS.items():
            if re.search(form, sentence, re.IGNORECASE):
                yield hazard
