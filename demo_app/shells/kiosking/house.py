"""What the kiosk has around it: its site, its texts, its counts, its folder."""

import contextlib
from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Protocol

from demo_app.base.errors import InputError
from demo_app.content.kiosk import site_file
from demo_app.content.kiosk.records import KioskStep, Spoken, Texts
from demo_app.content.kiosk.site import Site
from demo_app.ui.kiosk.wishes import Ease

MOST_PROBLEMS = 12


class Counting(Protocol):
    """`demo_app.content.kiosk.counts.Counts`, as far as the window is concerned."""

    @property
    def problems(self) -> tuple[str, ...]:
        """Lines for staff."""

    def add(self, kind: str, name: str = "", answer: int | None = None) -> None:
        """Count one more."""

    def since(self, since_s: float) -> dict[tuple[str, str, int], int]:
        """Sums by kind, name, answer."""


@dataclass(frozen=True)
class House:
    """All that a window of the kiosk is given.

    Parameters
    ----------
    site : Site
    texts : Texts
    counts : Counting
    folder : pathlib.Path or None
        The kiosk's data; None: nothing can be kept.
    problems : tuple of str
        What staff should know, a line each.
    """

    site: Site
    texts: Texts
    counts: Counting
    folder: Path | None = None
    problems: tuple[str, ...] = ()

    @property
    def language(self) -> str:
        """Tag of the language to begin with."""
        offered = self.languages
        return self.site.language if self.site.language in offered else next(iter(offered))

    @property
    def languages(self) -> Mapping[str, Spoken]:
        """Those that are offered, by tag; all there are if none of them is."""
        found = {
            tag: self.texts.spoken[tag] for tag in self.site.languages if tag in self.texts.spoken
        }
        return found or self.texts.spoken

    @property
    def steps(self) -> tuple[str, ...]:
        """Ids of the steps that are offered; all if none is."""
        found = tuple(one for one in self.texts.ids if one not in self.site.steps_off)
        return found or self.texts.ids

    def step(self, tag: str, name: str) -> KioskStep:
        """A step in a language."""
        return self.texts.spoken[tag].step(name)

    def ease(self, *, contrast: bool, still: bool) -> Ease:
        """How the kiosk is when nobody has chosen; both as the system asks."""
        return Ease(
            high_contrast=self.site.high_contrast or contrast,
            still=still or not self.site.motion,
            scale=self.site.scale,
        )

    def with_problem(self, line: str) -> "House":
        """One more line for staff; the oldest go."""
        lines = tuple(one for one in self.problems if one != line)
        return replace(self, problems=(*lines, line)[-MOST_PROBLEMS:])

    def with_site(self, site: Site) -> "House":
        """Another site."""
        return replace(self, site=site)


def save_site(house: House) -> str | None:
    """Write the site; returns what went wrong, in one line."""
    if house.folder is None:
        return "there is no folder for the site file"
    try:
        site_file.save(house.site, house.folder / site_file.NAME)
    except InputError as error:
        return str(error)
    except OSError as error:
        return f"{site_file.NAME}: {error.strerror or error}"
    return None


def count(house: House, kind: str, name: str = "", answer: int | None = None) -> None:
    """Count one more; what the fixed list does not know is not counted."""
    with contextlib.suppress(ValueError):
        house.counts.add(kind, name, answer)
