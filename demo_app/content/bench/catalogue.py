"""The pages of the bench by their ids, each imported when it is asked for."""

import functools
import importlib

from demo_app.base.errors import InputError
from demo_app.content.bench.answer import Page

IDS = ("flame", "oven", "toughness", "bubbles", "colour", "matching")


@functools.cache
def page(id: str) -> Page:
    """The page called `id`.

    Raises
    ------
    InputError
        For an unknown name.
    """
    if id not in IDS:
        raise InputError(
            f"no question is called '{id}'", place="bench", remedy=f"write one of {', '.join(IDS)}"
        )
    found = importlib.import_module(f"demo_app.content.bench.{id}").PAGE
    assert isinstance(found, Page)
    return found


def pages() -> tuple[Page, ...]:
    """All pages, in the order in which they are shown."""
    return tuple(page(id) for id in IDS)
