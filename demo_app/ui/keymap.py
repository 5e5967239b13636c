"""Which key does what: acts by name with their keys, all of which can be taught.

An act is a name such as ``next`` or ``favourite.3``; what it does is for the shells to say. One key
has one act, with one exception: the digits count hands while a question is open, and press
the scene's buttons at all other times.
"""

import dataclasses
import functools
from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from demo_app.ui import words
from demo_app.ui.key_names import checked, is_character, spoken

BUTTONS, ANSWERS = 9, 6
GROUPS: Mapping[str, Mapping[str, tuple[str, ...]]] = {
    "remote": {
        "next": ("PgDown",),
        "back": ("PgUp",),
        "blank": (".", "B"),
        "strip": ("F5", "Esc", "Shift+F5"),
    },
    "show": {
        "return": ("F",),
        "freeze": ("Z",),
        "catch_up": ("L",),
        "contingency": ("C",),
        "captions": ("K",),
        "jump": ("J",),
        "emergency": ("E",),
    },
    "question": {
        **{f"count.{place}": (str(place),) for place in range(1, ANSWERS + 1)},
        **{f"less.{place}": (f"Shift+{place}",) for place in range(1, ANSWERS + 1)},
    },
    "scene": {
        "play": ("Space",),
        "step_back": ("Left",),
        "step_on": ("Right",),
        "faster": ("Up",),
        "slower": ("Down",),
        "reset": ("R",),
        "hold": ("H",),
        "replay": ("V",),
        "first_button": ("D",),
        **{f"button.{place}": (str(place),) for place in range(1, BUTTONS + 1)},
    },
    "view": {
        "section": ("S",),
        "brighten": ("G",),
        "turn_back": ("[",),
        "turn_on": ("]",),
        "cross": ("X",),
        "quarter": ("Q",),
        "tint": ("T",),
    },
    "favourites": {
        **{f"favourite.{place}": (f"Alt+{place}",) for place in range(1, BUTTONS + 1)},
        **{f"store.{place}": (f"Alt+Shift+{place}",) for place in range(1, BUTTONS + 1)},
    },
    "window": {
        "save": ("Ctrl+S",),
        "keys": ("F1",),
        "controls": ("F2",),
        "full_screen": ("F11",),
    },
}
"""Acts in the order in which people read them, each with its keys at first. None ends a show."""
ACTS = tuple(act for group in GROUPS.values() for act in group)
REMOTE = frozenset(GROUPS["remote"])
"""Acts of a presentation remote's buttons."""
STRIP: Mapping[str, str] = {
    "next": "strip.next",
    "back": "strip.back",
    "blank": "strip.confirm",
    "strip": "strip.close",
}
"""What the remote's buttons do while the strip of actions is open."""
STRIP_KEYS: Mapping[str, str] = {
    "Down": "strip.next",
    "Right": "strip.next",
    "Up": "strip.back",
    "Left": "strip.back",
    "Return": "strip.confirm",
    "Enter": "strip.confirm",
    "Space": "strip.confirm",
}
"""Further keys of the strip while it is open, for a keyboard without a remote."""


@dataclass(frozen=True)
class Context:
    """What is going on when a key comes.

    Parameters
    ----------
    question : bool
        A question is open for the count of hands.
    strip : bool
        The strip of actions is open.
    """

    question: bool = False
    strip: bool = False


PLAYING = Context()
"""Neither."""


@dataclass(frozen=True)
class Keymap:
    """Acts and their keys; changed copies come from `teach`, `clear` and `with_characters`.

    Parameters
    ----------
    keys : mapping of str to tuple of str
        Names of keys (see `key_names`) by act, for each of `ACTS`.
    characters : bool
        Whether letters, digits and signs do anything by themselves. Without them remain the keys
        that write nothing, those with Ctrl or Alt, and a sign that a remote's button sends.
    """

    keys: Mapping[str, tuple[str, ...]] = field(
        default_factory=lambda: {a: k for group in GROUPS.values() for a, k in group.items()}
    )
    characters: bool = True

    def __post_init__(self) -> None:
        object.__setattr__(self, "keys", MappingProxyType(dict(self.keys)))

    def holders(self, key: str, act: str = "") -> tuple[str, ...]:
        """Acts that have `key` and would have to give it up for `act`."""
        return tuple(
            other
            for other, keys in self.keys.items()
            if key in keys and other != act and not _share(other, act)
        )

    def teach(self, act: str, key: str) -> "Keymap":
        """The same with one more key for `act`, taken from its `holders`.

        Raises
        ------
        InputError
            If `key` is none, or one that controls need.
        """
        key = checked(key)
        if key in self.keys[act]:
            return self
        losing = self.holders(key, act)
        taught = {
            other: tuple(one for one in keys if one != key) if other in losing else keys
            for other, keys in self.keys.items()
        }
        return dataclasses.replace(self, keys={**taught, act: (*taught[act], key)})

    def clear(self, act: str) -> "Keymap":
        """The same with no key for `act`."""
        return dataclasses.replace(self, keys={**self.keys, act: ()})

    def with_characters(self, on: bool) -> "Keymap":
        """The same with letters, digits and signs on or off."""
        return dataclasses.replace(self, characters=on)

    def act(self, key: str, context: Context = PLAYING) -> str:
        """What `key` does now; empty: nothing.

        Returns
        -------
        str
            One of `ACTS`, or while the strip is open one of the values of `STRIP`.
        """
        act = self._plain(key, context.question)
        if not context.strip:
            return act
        if act in STRIP:
            return STRIP[act]
        return STRIP_KEYS.get(key, act)

    def button(self, key: str) -> str:
        """Which of the `REMOTE` acts `key` belongs to; empty: none."""
        act = self._plain(key, False)
        return act if act in REMOTE else ""

    def told(self, act: str) -> str:
        """Keys of `act` as people read them, between commas."""
        return ", ".join(spoken(key) for key in self.keys[act])

    def _plain(self, key: str, question: bool) -> str:
        for act in self._found.get(key, ()):
            if act.startswith(_COUNTS) and not question:
                continue
            off = not self.characters and is_character(key)
            return "" if off and not (act in REMOTE and not key.isalnum()) else act
        return ""

    @functools.cached_property
    def _found(self) -> Mapping[str, tuple[str, ...]]:
        """Acts by key; those that count hands come first."""
        found: dict[str, tuple[str, ...]] = {}
        for act in sorted(self.keys, key=lambda name: not name.startswith(_COUNTS)):
            for key in self.keys[act]:
                found[key] = (*found.get(key, ()), act)
        return found


_COUNTS = ("count.", "less.")


def label(act: str) -> str:
    """What an act is called."""
    name, _, number = act.partition(".")
    return words.text(f"act.{name}", number=number)


def told_keys(keymap: Keymap) -> str:
    """All acts with their keys in one line; numbered ones by their first and last."""
    said = []
    for act in ACTS:
        name, _, number = act.partition(".")
        if number not in ("", "1") or not keymap.keys[act]:
            continue
        keys = keymap.told(act)
        if number:
            last = [other for other in ACTS if other.startswith(f"{name}.")][-1]
            keys = words.text("key.range", first=keys, last=keymap.told(last))
        said.append(f"{keys} {' '.join(label(name).split())}")
    return " · ".join(said)


def _share(first: str, second: str) -> bool:
    """Whether two acts may have one key: a count of hands, and a button of the scene."""
    both = sorted((first, second), key=lambda act: not act.startswith(_COUNTS))
    return both[0].startswith(_COUNTS) and both[1].startswith("button.")
