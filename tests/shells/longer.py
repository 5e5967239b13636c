"""A language that is English, but each text two fifths longer: the length windows leave room for."""

import functools
import math

from PySide6.QtCore import QCoreApplication

from demo_app import translating
from demo_app.translating import FINISHED, Entry
from demo_app.ui.language_ids import LANGUAGE
from demo_app.ui.language_sources import sources
from demo_app.ui.languages import translation

LONGER = 0.4
WORD = 6
"""Longest word that is added: as words break, so does what is longer."""
FILL = "inauet"


def longer(said):
    """A text with two fifths more signs; places for values stay, and the end as it was."""
    more = math.ceil(LONGER * len(said))
    end = "." if said.endswith(".") else ""
    whole, rest = divmod(more - 1, WORD + 1)
    added = "".join(f" {FILL}" for _ in range(whole)) + (f" {FILL[:rest]}" if rest > 1 else FILL[:1])
    if more <= WORD:
        added = FILL[:more]
    return said.removesuffix(".") + added + end


@functools.cache
def entries():
    return tuple(
        Entry(
            one,
            one.english if one.context == LANGUAGE else longer(one.english),
            FINISHED,
        )
        for one in sources()
    )


def install(folder):
    """Install the language; returns what is to be removed again."""
    file = folder / "lehrlight_xx.ts"
    file.write_text(translating.written("xx", entries()), encoding="utf-8")
    found = translation(translating.compiled(file, file.with_suffix(".qm")))
    QCoreApplication.installTranslator(found)
    KEPT.append(found)
    return found


KEPT = []
"""Qt does not keep them alive."""
