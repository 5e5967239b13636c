"""A language that is English with each text two fifths longer: what windows leave room for."""

import functools
import math

from PySide6.QtCore import QCoreApplication

from demo_app import translating
from demo_app.translating import FINISHED, Entry
from demo_app.ui.language_ids import LANGUAGE
from demo_app.ui.language_sources import sources
from demo_app.ui.languages import translation

LONGER = 0.4
FILL = "inauet"
"""Words that are added: as words break, so does what is longer."""


def longer(said):
    """A text with two fifths more signs; places for values stay, and the end as it was."""
    more = math.ceil(LONGER * len(said))
    end = "." if said.endswith(".") else ""
    added = FILL[:more] if more <= len(FILL) else (f" {FILL}" * more)[:more]
    return said.removesuffix(".") + added.removesuffix(" ").ljust(more, FILL[-1]) + end


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
