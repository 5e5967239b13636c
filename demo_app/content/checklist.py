"""What has to lie ready before a show, and what is put back between shows: drawn from the sheet."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from demo_app.content.cues.records import EYEWEAR_FOR, Helper, Sheet, Step
from demo_app.content.venue import FOLLOW


@dataclass(frozen=True)
class Item:
    """One line to tick off.

    Parameters
    ----------
    text : str
        What.
    steps : tuple of str
        Ids of the steps that ask for it, in order; none: the whole show does.
    """

    text: str
    steps: tuple[str, ...] = ()


@dataclass(frozen=True)
class HelperItem:
    """A helper who is asked for in the step with the id `step`, titled `title`."""

    step: str
    title: str
    helper: Helper


@dataclass(frozen=True)
class Checklist:
    """All that a sheet asks for.

    Parameters
    ----------
    props, samples : tuple of Item
        Things that lie ready; pieces that are counted out and in. Each once, in order of use.
    hazards, cautions : tuple of Item
    helpers : tuple of HelperItem
    eyewear : tuple of Item
        Who needs which, and why.
    reset : tuple of Item
        What is done between two shows, in order.
    rule : str
        Who decides.
    """

    props: tuple[Item, ...]
    samples: tuple[Item, ...]
    hazards: tuple[Item, ...]
    cautions: tuple[Item, ...]
    helpers: tuple[HelperItem, ...]
    eyewear: tuple[Item, ...]
    reset: tuple[Item, ...]
    rule: str = FOLLOW


ENGLISH: Mapping[str, str] = MappingProxyType(
    {
        "follow": FOLLOW,
        "presenter": "presenter: eyewear for {hazard}",
        "helper": "helper: {eyewear}",
        "flame": "Flame out, fuel shut off.",
        "hot": "Hot pieces stay on the mat, marked hot, until they have been checked cold.",
        "water": "Hot water emptied, floor dry.",
        "shards": "Shards brushed up into the labelled container; table and floor looked over.",
        "pieces": "Pieces counted in; what broke is written down; new ones counted out.",
        "props": "Props back in their places.",
        "eyewear": "Eyewear wiped and back on its hooks.",
        "hands": "Counts of hands cleared.",
        "first": "The sheet is back at its first step.",
        "journal": "Attendance, near misses and odd questions are written down.",
    }
)
"""Texts of a checklist by their names."""


def plain(hazard: str) -> str:
    """A hazard as sheets name it."""
    return hazard


def checklist(
    sheet: Sheet, texts: Mapping[str, str] = ENGLISH, hazard: Callable[[str], str] = plain
) -> Checklist:
    """The checklist of `sheet`.

    Parameters
    ----------
    sheet : Sheet
    texts : mapping
        `ENGLISH`, in whatever language.
    hazard : callable
        What a hazard is called there.
    """
    steps = sheet.steps
    return Checklist(
        props=_merged((text, step.id) for step in steps for text in step.props),
        samples=_merged((text, step.id) for step in steps for text in step.samples),
        hazards=_merged((name, step.id) for step in steps for name in step.hazards),
        cautions=_merged((text, step.id) for step in steps for text in step.cautions),
        helpers=tuple(
            HelperItem(step.id, step.title, step.helper) for step in steps if step.helper
        ),
        eyewear=_eyewear(steps, texts, hazard),
        reset=_reset(steps, texts),
        rule=texts["follow"],
    )


def _merged(pairs: Iterable[tuple[str, str]]) -> tuple[Item, ...]:
    """Texts that differ in nothing but capitals and blanks become one, as first written."""
    first: dict[str, str] = {}
    using: dict[str, list[str]] = {}
    for text, step in pairs:
        key = " ".join(text.split()).casefold()
        first.setdefault(key, " ".join(text.split()))
        ids = using.setdefault(key, [])
        if step not in ids:
            ids.append(step)
    return tuple(Item(first[key], tuple(ids)) for key, ids in using.items())


def _eyewear(
    steps: Sequence[Step], texts: Mapping[str, str], hazard: Callable[[str], str]
) -> tuple[Item, ...]:
    presenter = [
        (texts["presenter"].format(hazard=hazard(name)), step.id)
        for step in steps
        for name in step.hazards
        if name in EYEWEAR_FOR
    ]
    helpers = [
        (texts["helper"].format(eyewear=step.helper.eyewear), step.id)
        for step in steps
        if step.helper and step.helper.eyewear
    ]
    return _merged([*presenter, *helpers])


def _reset(steps: Sequence[Step], texts: Mapping[str, str]) -> tuple[Item, ...]:
    """Common practice of a turnaround, those lines alone that the sheet's hazards call for."""

    def asked_by(*hazards: str) -> tuple[str, ...]:
        return tuple(step.id for step in steps if set(step.hazards) & set(hazards))

    def when(name: str, ids: tuple[str, ...]) -> tuple[Item, ...]:
        return (Item(texts[name], ids),) if ids else ()

    samples = tuple(step.id for step in steps if step.samples)
    return (
        *when("flame", asked_by("flame")),
        *when("hot", asked_by("flame", "hot-glass")),
        *when("water", asked_by("hot-water")),
        *when("shards", asked_by("breakage", "stored-energy")),
        *when("pieces", samples),
        *when("props", tuple(step.id for step in steps if step.props)),
        *when(
            "eyewear",
            tuple(step.id for step in steps if set(step.hazards) & set(EYEWEAR_FOR)),
        ),
        *when("hands", tuple(step.id for step in steps if step.question)),
        Item(texts["first"]),
        Item(texts["journal"]),
    )
