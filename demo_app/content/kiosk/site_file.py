"""The site file ``kiosk.toml``: read, checked, written; and what stands in for a broken one."""

import contextlib
import datetime
import re
from collections.abc import Mapping
from pathlib import Path
from types import MappingProxyType
from typing import Any

import tomlkit

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.base.toml_table import Table, attempt, nearest, parse_text
from demo_app.content.kiosk.code import is_hash
from demo_app.content.kiosk.hours import DAY_MIN, Hours, Span, Spans
from demo_app.content.kiosk.reading import read_small
from demo_app.content.kiosk.site import IDLE_S, SCALES, WARNING_S, Site
from demo_app.content.kiosk.word_keys import LANGUAGES, STEP_IDS

NAME = "kiosk.toml"
KIND = "kiosk site"
DAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
TOP = (
    *("kind", "code", "languages", "language", "steps_off", "brightness", "idle_s", "warning_s"),
    *("updates", "look", "screen", "hours", "exceptions"),
)
LOOK = ("high_contrast", "scale", "calm", "motion")
SCREEN = ("width_mm", "height_mm")
_SPAN = re.compile(r"([01]\d|2[0-3]):([0-5]\d)\s*-\s*([01]\d|2[0-4]):([0-5]\d)")
_FORM = 'write ["10:00-17:30"], several with commas between, or [] for closed'
MOST_SPANS, MOST_EXCEPTIONS = 4, 400


def load(path: Path) -> Site:
    """Read and check the site file at `path`.

    Raises
    ------
    InputError
        The first mistake, with its line and what to write instead.
    """
    site, wrong = _read(path)
    if site is None:
        raise wrong[0]
    return site


def mistakes(path: Path) -> tuple[InputError, ...]:
    """All mistakes of the site file at `path`."""
    return _read(path)[1]


def save(site: Site, path: Path) -> None:
    """Write what `site` says into the file at `path`, whole; comments there stay.

    A broken file there makes way for a new one and is kept as ``kiosk.broken.toml``.

    Raises
    ------
    InputError
        If it cannot be written.
    """
    text = None
    with contextlib.suppress(InputError):
        text = read_small(path, KIND)
    good = text is not None and not mistakes(path)
    if text is not None and not good:
        write_text(path.with_name(f"{path.stem}.broken{path.suffix}"), text)
    document: Any = tomlkit.parse(text if text is not None and good else template())
    for key, value in _top(site).items():
        _set(document, key, value)
    for key, values in _tables(site).items():
        if key not in document and not any(one is not None for one in values.values()):
            continue
        table = document.setdefault(key, tomlkit.table())
        for name in [name for name in table if name not in values]:
            table.pop(name)
        for name, value in values.items():
            _set(table, name, value)
    write_text(path, tomlkit.dumps(document))
    close_to_others(path)


def close_to_others(path: Path) -> None:
    """Let nobody else read the hash in the file at `path`: a code of six digits can be tried."""
    with contextlib.suppress(OSError):
        path.chmod(0o600)


def template() -> str:
    """A site file in which nothing but its kind is said, with a comment for the rest."""
    return (
        f'kind = "{KIND}"\n'
        "# Everything here may be missing. 'lehrlight kiosk --set-code' sets the staff's code.\n"
        "# Opening hours: [hours] with a line for each day, such as\n"
        '# monday = ["10:00-12:30", "13:30-18:00"]; a day that is left out is closed.\n'
        "# Without [hours] it is always open. Single days: [exceptions], 2026-12-24 = [].\n"
        "# Size of the lit picture by a ruler: [screen], width_mm = 531, height_mm = 299.\n"
    )


def _top(site: Site) -> dict[str, Any]:
    return {
        "kind": KIND,
        "code": site.code or None,
        "languages": list(site.languages),
        "language": site.language,
        "steps_off": list(site.steps_off),
        "brightness": site.brightness,
        "idle_s": site.idle_s,
        "warning_s": site.warning_s,
        "updates": None if site.updates is None else str(site.updates),
    }


def _tables(site: Site) -> dict[str, dict[str, Any]]:
    spans = zip(DAYS, site.hours.week, strict=False)
    return {
        "look": {key: getattr(site, key) for key in LOOK},
        "screen": {key: getattr(site, key) for key in SCREEN},
        "hours": {day: _written(one) for day, one in spans},
        "exceptions": {
            day.isoformat(): _written(one) for day, one in sorted(site.hours.exceptions.items())
        },
    }


def _written(spans: Spans) -> list[str]:
    return [f"{_clock(one.opens_min)}-{_clock(_end(one.closes_min))}" for one in spans]


def _end(minutes: int) -> int:
    return minutes - DAY_MIN if minutes > DAY_MIN else minutes


def _clock(minutes: int) -> str:
    return f"{minutes // 60:02d}:{minutes % 60:02d}"


def _set(table: Any, key: str, value: Any) -> None:
    if value is None:
        table.pop(key, None)
    elif key not in table or table[key] != value:
        table[key] = value


def _read(path: Path) -> tuple[Site | None, tuple[InputError, ...]]:
    wrong: list[InputError] = []
    text = attempt(wrong, read_small, path, KIND)
    top = attempt(wrong, parse_text, path, text) if text is not None else None
    if top is None:
        return None, tuple(wrong)
    wrong += top.unknown(*TOP)
    if top.content.get("kind") != KIND:
        wrong.append(top.error("kind", "is not said", f'write kind = "{KIND}"'))
    languages = attempt(wrong, _some_of, top, "languages", LANGUAGES) or LANGUAGES
    look, screen = (
        attempt(wrong, top.table, key) if key in top.content else None for key in ("look", "screen")
    )
    site = Site(
        hours=_hours(wrong, top),
        languages=languages,
        language=attempt(wrong, _language, top, languages) or languages[0],
        steps_off=attempt(wrong, _steps_off, top) or (),
        brightness=attempt(wrong, top.number, "brightness", 0.2, 1.0, 1.0) or 1.0,
        idle_s=attempt(wrong, top.number, "idle_s", 20, 3600, IDLE_S, "s") or IDLE_S,
        # WCAG 2.2, 2.2.1: at least 20 seconds to answer.
        warning_s=attempt(wrong, top.number, "warning_s", 20, 300, WARNING_S, "s") or WARNING_S,
        code=attempt(wrong, _code, top) or "",
        updates=attempt(wrong, _updates, top),
        path=path,
        **(_look(wrong, look) if look else {}),
        **(_screen(wrong, screen) if screen else {}),
    )
    return (None if wrong else site), tuple(wrong)


def _some_of(top: Table, key: str, known: tuple[str, ...]) -> tuple[str, ...]:
    found = top.texts(key)
    for at, one in enumerate(found):
        if one not in known:
            raise top.error(key, f"'{one}' is none of them", nearest(one, known), at)
        if one in found[:at]:
            raise top.error(key, f"'{one}' is there twice", "take one out", at)
    if key in top.content and not found and key == "languages":
        raise top.error(key, "is empty", f"write some of {', '.join(known)}")
    return found


def _steps_off(top: Table) -> tuple[str, ...]:
    found = _some_of(top, "steps_off", STEP_IDS)
    if len(found) == len(STEP_IDS):
        raise top.error("steps_off", "no step is left", "take one out")
    return found


def _language(top: Table, languages: tuple[str, ...]) -> str:
    found = top.words("language", languages[0])
    if found not in languages:
        raise top.error("language", f"'{found}' is not offered", nearest(found, languages))
    return found


def _code(top: Table) -> str:
    found = top.words("code", "-")
    if found == "-" and "code" not in top.content:
        return ""
    if not is_hash(found):
        # The value itself is not said: somebody may have typed the code.
        raise top.error("code", "is no hash of a code", "run 'lehrlight kiosk --set-code'")
    return found


def _updates(top: Table) -> Path | None:
    if "updates" not in top.content:
        return None
    found = top.words("updates")
    if "\0" in found or not Path(found).is_absolute():
        raise top.error("updates", "is no whole path", "write it from the root on")
    return Path(found)


def _look(wrong: list[InputError], table: Table) -> dict[str, Any]:
    wrong += table.unknown(*LOOK)
    default = Site()
    flags = {
        key: attempt(wrong, table.flag, key, getattr(default, key))
        for key in LOOK
        if key != "scale"
    }
    scale = attempt(wrong, table.number, "scale", SCALES[0], SCALES[-1], 1.0)
    if scale is not None and scale not in SCALES:
        form = f"write one of {', '.join(f'{one:g}' for one in SCALES)}"
        wrong.append(table.error("scale", f"{scale:g} is not offered", form))
    return {**flags, "scale": scale}


def _screen(wrong: list[InputError], table: Table) -> dict[str, Any]:
    wrong += table.unknown(*SCREEN)
    return {
        key: attempt(wrong, table.number, key, 50, 5000, unit="mm")
        for key in SCREEN
        if key in table.content
    }


def _hours(wrong: list[InputError], top: Table) -> Hours:
    week: tuple[Spans, ...] = ()
    table = attempt(wrong, top.table, "hours") if "hours" in top.content else None
    if table is not None:
        wrong += table.unknown(*DAYS)
        week = tuple(attempt(wrong, _spans, table, day) or () for day in DAYS)
    return Hours(week, _exceptions(wrong, top))


def _exceptions(wrong: list[InputError], top: Table) -> Mapping[datetime.date, Spans]:
    table = attempt(wrong, top.table, "exceptions") if "exceptions" in top.content else None
    found: dict[datetime.date, Spans] = {}
    for key in table.content if table is not None else ():
        assert table is not None
        try:
            day = datetime.date.fromisoformat(key)
        except ValueError:
            wrong.append(table.error(key, "is no date", "write year-month-day = [...]"))
            continue
        found[day] = attempt(wrong, _spans, table, key) or ()
    if table is not None and len(found) > MOST_EXCEPTIONS:
        wrong.append(table.error("", f"{len(found)} days", f"write at most {MOST_EXCEPTIONS}"))
    return MappingProxyType(found)


def _spans(table: Table, key: str) -> Spans:
    found: list[Span] = []
    texts = table.texts(key)
    if len(texts) > MOST_SPANS:
        raise table.error(key, f"{len(texts)} spans", f"write at most {MOST_SPANS}")
    for at, text in enumerate(texts):
        match = _SPAN.fullmatch(text.strip())
        numbers = [int(one) for one in match.groups()] if match else [0, 0, 25, 0]
        begin, end = numbers[0] * 60 + numbers[1], numbers[2] * 60 + numbers[3]
        if end > DAY_MIN:
            raise table.error(key, f"'{text}' is no span of time", _FORM, at)
        found.append(Span(begin, end if end > begin else end + DAY_MIN))
    return tuple(found)
