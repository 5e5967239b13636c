"""A running show as plain values for a JSON file, and back."""

import hashlib
from collections.abc import Mapping
from dataclasses import fields
from types import MappingProxyType
from typing import Any

from demo_app.base.errors import InputError
from demo_app.content.running.records import PHASES, Running

VERSION = 1


def as_record(running: Running) -> dict[str, Any]:
    """Plain values, from which `from_record` makes an equal record."""
    found = {one.name: getattr(running, one.name) for one in fields(Running)}
    return {
        "version": VERSION,
        **found,
        "spent": dict(running.spent),
        "votes": {name: list(counts) for name, counts in running.votes.items()},
    }


def from_record(record: Any) -> Running:
    """The show again.

    Raises
    ------
    InputError
        If it is no running show, one of another version, or one that cannot be.
    """
    if not isinstance(record, Mapping) or record.get("version") != VERSION:
        raise _error("is no show of this version")
    try:
        running = _running(record)
    except (KeyError, TypeError, ValueError, AttributeError) as error:
        raise _error(f"is broken ({error!r})") from None
    if not _sound(running):
        raise _error("contradicts itself")
    return running


def _error(problem: str) -> InputError:
    return InputError(problem, place="saved show", remedy="begin the show at its first step")


def _running(record: Mapping[str, Any]) -> Running:
    return Running(
        ids=tuple(str(name) for name in record["ids"]),
        kept=tuple(int(place) for place in record["kept"]),
        place=int(record["place"]),
        phase=str(record["phase"]),
        digest=str(record["digest"]),
        show_begun=_time(record["show_begun"]),
        step_begun=_time(record["step_begun"]),
        ends=_time(record["ends"]),
        finished=_time(record["finished"]),
        spent=MappingProxyType({str(k): float(v) for k, v in record["spent"].items()}),
        blank=bool(record["blank"]),
        frozen=bool(record["frozen"]),
        captions=bool(record["captions"]),
        rehearsal=bool(record["rehearsal"]),
        votes=MappingProxyType(
            {str(k): tuple(int(one) for one in v) for k, v in record["votes"].items()}
        ),
    )


def _time(value: Any) -> float | None:
    return None if value is None else float(value)


def _sound(running: Running) -> bool:
    count = len(running.ids)
    return (
        len(set(running.ids)) == count
        and list(running.kept) == sorted({*running.kept})
        and all(0 <= place < count for place in running.kept)
        and running.place in running.kept
        and running.phase in PHASES
        and all(one >= 0 for counts in running.votes.values() for one in counts)
        and all(seconds >= 0 for seconds in running.spent.values())
    )


def digest_of(content: bytes) -> str:
    """Short name for a sheet file's content, to tell whether it is the one that was shown."""
    return hashlib.blake2b(content, digest_size=12).hexdigest()
