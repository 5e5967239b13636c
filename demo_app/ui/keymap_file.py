"""Taught keys on the disk: ``keys.toml`` in the user's data folder."""

import json
from pathlib import Path

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, parse
from demo_app.ui import words
from demo_app.ui.key_names import checked
from demo_app.ui.keymap import ACTS, Keymap

NAME = "keys.toml"


def as_toml(keymap: Keymap) -> str:
    """`keymap` as the text of a file."""
    lines = [
        "# Which key does what. Lehrlight writes this file; without it the keys are as at first.",
        f"characters = {str(keymap.characters).lower()}",
        "",
        "[keys]",
        *(f"{json.dumps(act)} = {json.dumps(keymap.keys[act])}" for act in ACTS),
    ]
    return "\n".join(lines) + "\n"


def read(path: Path) -> Keymap:
    """Keys of the file at `path`; an act that it does not name keeps those that are free.

    Raises
    ------
    InputError
        If the file cannot be read or used, with its line.
    """
    table = parse(path, "keys.toml")
    table.only("characters", "keys")
    keys = table.table("keys")
    keys.only(*ACTS)
    first = Keymap()
    found = Keymap(dict.fromkeys(ACTS, ()), table.flag("characters", default=True))
    for act in keys.content:
        for name in keys.texts(act):
            key = _checked(keys, act, name)
            for other in found.holders(key, act):
                raise keys.error(act, f"'{name}' is that of {other} too", "give it to one of them")
            found = found.teach(act, key)
    for act in ACTS:
        if act not in keys.content:
            for key in first.keys[act]:
                found = found if found.holders(key, act) else found.teach(act, key)
    return found


def load(path: Path) -> tuple[Keymap, str]:
    """Keys of the file at `path`, and a line for the presenter if it cannot be used.

    Returns
    -------
    keymap : Keymap
        That of the file; the one of the start if it is missing or broken.
    line : str
        Empty unless it is broken.
    """
    if not path.exists():
        return Keymap(), ""
    try:
        return read(path), ""
    except InputError as error:
        return Keymap(), words.text("teach.broken", problem=error)


def save(keymap: Keymap, path: Path) -> None:
    """Write the file whole, or raise `InputError`."""
    write_text(path, as_toml(keymap))


def _checked(keys: Table, act: str, name: str) -> str:
    try:
        return checked(name)
    except InputError as error:
        raise keys.error(act, error.problem, error.remedy) from None
