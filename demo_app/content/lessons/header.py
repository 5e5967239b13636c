"""The header of a lesson: who it is for, what it allows, its kit, beliefs and curriculum links."""

import re

from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, expect, nearest
from demo_app.content.cues.load import LANGUAGE
from demo_app.content.lessons.hazards import HAZARDS, PROFILES, REAL, SIMULATED, in_kit
from demo_app.content.lessons.records import Item, Link, Misconception, Simulated

TOP = (
    *("title", "aim", "ages", "minutes", "language", "profile", "allows", "kit", "simulated"),
    *("misconception", "curriculum"),
)
YOUNGEST, OLDEST = 4, 99
_ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")


def ages_of(top: Table) -> tuple[int, int]:
    """Ages from and to."""
    form = "write ages = [from, to], such as [9, 11]"
    low, high = top.numbers("ages", top.get("ages"), form, count=2)
    if not (YOUNGEST <= low < high <= OLDEST and low == int(low) and high == int(high)):
        raise top.error("ages", f"from {low:g} to {high:g} is no range of ages", form)
    return int(low), int(high)


def language_of(top: Table) -> str:
    """A BCP 47 tag."""
    tag = top.words("language")
    if not LANGUAGE.fullmatch(tag):
        raise top.error("language", f"'{tag}' is no language", "write a tag such as en, es or de")
    return tag


def profile_of(top: Table) -> str:
    """Name of a known profile."""
    name = top.words("profile")
    if name not in PROFILES:
        raise top.error("profile", f"no profile is called '{name}'", nearest(name, PROFILES))
    return name


def allows_of(top: Table, profile: str | None) -> tuple[str, ...]:
    """Hazards that the lesson allows: known ones, and of those of its profile alone."""
    flags = top.texts("allows")
    for at, name in enumerate(flags):
        if name not in HAZARDS:
            raise top.error("allows", f"no hazard is called '{name}'", nearest(name, HAZARDS), at)
        if profile is not None and name not in PROFILES[profile]:
            raise top.error(
                "allows",
                f"the profile {profile} does not allow '{name}'",
                "take it out, and with it whatever needs it",
                at,
            )
    return flags


def real_hazards(table: Table) -> tuple[str, ...]:
    """Hazards at ``hazards``; what is on the screen alone is found by itself."""
    flags = table.texts("hazards")
    for at, name in enumerate(flags):
        if name in SIMULATED:
            raise table.error(
                "hazards",
                f"'{name}' is not for people to state",
                "take it out: what a scene shows is known",
                at,
            )
        if name not in REAL:
            raise table.error("hazards", f"no hazard is called '{name}'", nearest(name, REAL), at)
    return flags


def kit_of(wrong: list[InputError], top: Table, allows: tuple[str, ...] | None) -> tuple[Item, ...]:
    """Things that lie ready, none with a hazard that the lesson does not allow."""
    tables = attempt(wrong, top.tables, "kit")
    if tables == ():
        wrong.append(
            top.error("kit", "nothing lies ready", 'add [[kit]] with name = "..." for each thing')
        )
    return tuple(_item(wrong, table, allows) for table in tables or ())


def _item(wrong: list[InputError], table: Table, allows: tuple[str, ...] | None) -> Item:
    table = expect(wrong, table, "name", "count", "hazards", "note")
    name = attempt(wrong, table.words, "name") or ""
    stated = attempt(wrong, real_hazards, table) or ()
    hazards = tuple(dict.fromkeys((*stated, *in_kit(name))))
    note = attempt(wrong, table.words, "note", "") or ""
    for one in hazards if allows is not None else ():
        if allows is not None and one not in allows:
            wrong.append(
                table.error(
                    "name", f"'{name}' brings '{one}', which is not allowed", "choose another thing"
                )
            )
    if hazards and not note:
        wrong.append(
            table.error(
                "hazards" if stated else "name",
                f"{', '.join(hazards)} without a note",
                'add note = "what to mind, and what to use instead"',
            )
        )
    return Item(name, attempt(wrong, table.words, "count", "") or "", hazards, note)


def simulated_of(
    wrong: list[InputError], top: Table, allows: tuple[str, ...] | None
) -> Simulated | None:
    """What the class is told; it has to be there where anything simulated is allowed."""
    asked = [name for name in allows or () if name in SIMULATED]
    if "simulated" not in top.content:
        if asked:
            wrong.append(
                top.error(
                    "allows",
                    f"{', '.join(asked)} without words that tell the class so",
                    'add [simulated] with says = "..." and not_at_home = "..."',
                )
            )
        return None
    table = attempt(wrong, top.table, "simulated")
    if table is None:
        return None
    table = expect(wrong, table, "says", "not_at_home")
    says = attempt(wrong, table.words, "says") or ""
    if says and not re.search(r"simulat|model|comput|screen", says, re.IGNORECASE):
        wrong.append(
            table.error(
                "says", "does not say that it is simulated", "say that the screen simulates it"
            )
        )
    return Simulated(says, attempt(wrong, table.words, "not_at_home") or "")


def misconceptions_of(wrong: list[InputError], top: Table) -> tuple[Misconception, ...]:
    """What pupils commonly believe, each with its source and how to meet it."""
    found: list[Misconception] = []
    for given in attempt(wrong, top.tables, "misconception") or ():
        table = expect(wrong, given, "id", "text", "source", "read", "meet")
        id = attempt(wrong, _id, table) or ""
        if id and id in [one.id for one in found]:
            wrong.append(table.error("id", f"'{id}' is there already", "write another id"))
        found.append(
            Misconception(
                id,
                attempt(wrong, table.words, "text") or "",
                attempt(wrong, table.words, "source") or "",
                attempt(wrong, table.flag, "read") or False,
                attempt(wrong, table.words, "meet") or "",
            )
        )
    if not found:
        wrong.append(
            top.error(
                "misconception",
                "nothing says what pupils believe",
                "add [[misconception]] with id, text, source, read and meet",
            )
        )
    return tuple(found)


def curriculum_of(wrong: list[InputError], top: Table) -> tuple[Link, ...]:
    """Links to public curricula; each says whether its wording was read or is from memory."""
    found = []
    for given in attempt(wrong, top.tables, "curriculum") or ():
        table = expect(wrong, given, "code", "wording", "source", "read")
        found.append(
            Link(
                attempt(wrong, table.words, "code") or "",
                attempt(wrong, table.words, "wording") or "",
                attempt(wrong, table.words, "source") or "",
                attempt(wrong, table.flag, "read") or False,
            )
        )
    return tuple(found)


def _id(table: Table) -> str:
    name = table.words("id")
    if not _ID.fullmatch(name):
        raise table.error(
            "id", f"'{name}' is no id", "write small letters and digits with hyphens between"
        )
    return name
