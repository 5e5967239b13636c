"""One instant of a session as a frozen record: enough to have it back, bit by bit."""

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass, field, fields, replace
from typing import Any

from demo_app.base.errors import InputError
from demo_app.optics.instrument import Instrument
from demo_app.scenes.settings import make
from demo_app.ui.asking import Leg
from demo_app.ui.request import Held
from demo_app.ui.timeline import Entry, Place, Plan, Timeline

VERSION = 1
BROKEN = "throw the file away: a show starts without it"


@dataclass(frozen=True)
class Done:
    """What a person did at one step, in plain values: see `timeline.Entry`."""

    step: int
    settings: Mapping[str, Any]
    touches: tuple[Place, ...] = ()


@dataclass(frozen=True)
class Kept:
    """A picture held beside the run: how to make it again, and the picture where it is known."""

    plan: tuple[Done, ...]
    time_s: float
    light: Instrument
    picture: Held | None = field(default=None, compare=False, repr=False)


@dataclass(frozen=True)
class Snapshot:
    """One instant of a session.

    Parameters
    ----------
    scene : str
        Id of the scene.
    plan : tuple of Done
        What was done since the start of the run; steps are deterministic, so this and the time
        give every byte of the state again.
    time_s : float
        Model time shown, s; it may lie between two steps.
    step : int
        Last step at or before it; -1 where none was known yet.
    snap : bool
        Whether the picture is that of a whole step.
    light : Instrument
        As a person has arranged it.
    speed, own_speed
        Model seconds per second, and whether a person has chosen them.
    playing : bool
    legs, speed_after
        A slow replay that is under way: its parts, and the speed to go back to.
    broke : (float, float) or None
        When the piece broke (model time, s), and how long its crack ran, s.
    touched_s : float or None
        When a finger last did anything, model time, s.
    held : Kept or None
    mode : str or None
        What the section shows, where whoever took the snapshot knows.
    known : Timeline or None
        States in memory, with which the instant is back at once; never written to a file.
    """

    scene: str
    plan: tuple[Done, ...]
    time_s: float
    step: int
    snap: bool = False
    light: Instrument = field(default_factory=Instrument)
    speed: float = 1.0
    own_speed: bool = False
    playing: bool = False
    legs: tuple[Leg, ...] = ()
    speed_after: float | None = None
    broke: tuple[float, float] | None = None
    touched_s: float | None = None
    held: Kept | None = None
    mode: str | None = None
    known: Timeline | None = field(default=None, compare=False, repr=False)

    def narrow(self) -> "Snapshot":
        """The same with few states in memory, to be kept for a whole show."""
        known = None if self.known is None else self.known.narrow(self.time_s)
        return replace(self, known=known)


def opening(
    scene: str,
    settings: Any,
    at_s: float = 0.0,
    *,
    play: bool = False,
    light: Instrument | None = None,
) -> Snapshot:
    """The instant at which a step of a show opens, to be given to `Session.restore`.

    Parameters
    ----------
    scene : str
        Id of a scene.
    settings : object
        Settings record of that scene.
    at_s : float
        Model time, s: the last whole step at or before it is shown.
    play : bool
        Whether it runs from there.
    light : Instrument or None
        None: as an instrument is made.
    """
    plan = plain((Entry(0, settings),))
    return Snapshot(scene, plan, at_s, -1, True, light or Instrument(), playing=play)


def plain(plan: Plan) -> tuple[Done, ...]:
    """A plan in plain values; entries with the very same settings share them."""
    made: list[Done] = []
    for before, one in zip((None, *plan), plan, strict=False):
        same = before is not None and before.settings is one.settings
        settings = made[-1].settings if same else _plain_settings(one.settings)
        made.append(Done(one.step, settings, one.touches))
    return tuple(made)


def plan_of(done: tuple[Done, ...], settings: type) -> Plan:
    """The plan again, with settings records of the class `settings`.

    Raises
    ------
    InputError
        If the scene does not know these settings: another version of the program wrote them.
    """
    made: list[Entry] = []
    for before, one in zip((None, *done), done, strict=False):
        same = before is not None and before.settings is one.settings
        record = made[-1].settings if same else make(settings, one.settings)
        made.append(Entry(one.step, record, one.touches))
    return tuple(made)


def as_record(snapshot: Snapshot) -> dict[str, Any]:
    """Plain values for a JSON file; what is in memory only is left out."""
    record = {
        one.name: getattr(snapshot, one.name)
        for one in fields(Snapshot)
        if one.name not in {"known", "plan", "light", "held"}
    }
    held = snapshot.held
    return {
        "version": VERSION,
        **record,
        "light": asdict(snapshot.light),
        **_plan_record(snapshot.plan),
        "held": None
        if held is None
        else {"time_s": held.time_s, "light": asdict(held.light), **_plan_record(held.plan)},
    }


def from_record(record: Mapping[str, Any]) -> Snapshot:
    """The snapshot again, equal to the one that was written.

    Raises
    ------
    InputError
        If it is no snapshot, or one of another version.
    """
    if not isinstance(record, Mapping) or record.get("version") != VERSION:
        raise InputError("is no snapshot of this version", place="snapshot", remedy=BROKEN)
    try:
        return _snapshot(record)
    except (KeyError, TypeError, ValueError, AttributeError, IndexError) as error:
        raise InputError(f"is broken ({error!r})", place="snapshot", remedy=BROKEN) from None


def as_json(snapshot: Snapshot) -> str:
    """One line of JSON. Numbers are written so that every bit comes back."""
    return json.dumps(as_record(snapshot))


def from_json(text: str) -> Snapshot:
    """The snapshot that `as_json` wrote; `InputError` if it cannot be read."""
    try:
        record = json.loads(text)
    except ValueError:
        raise InputError("is no JSON", place="snapshot", remedy=BROKEN) from None
    return from_record(record)


def _snapshot(record: Mapping[str, Any]) -> Snapshot:
    held = record["held"]
    after, broke, touched = record["speed_after"], record["broke"], record["touched_s"]
    return Snapshot(
        scene=str(record["scene"]),
        plan=_plan(record),
        time_s=float(record["time_s"]),
        step=int(record["step"]),
        snap=bool(record["snap"]),
        light=Instrument(**record["light"]),
        speed=float(record["speed"]),
        own_speed=bool(record["own_speed"]),
        playing=bool(record["playing"]),
        legs=tuple((float(end), float(speed)) for end, speed in record["legs"]),
        speed_after=None if after is None else float(after),
        broke=None if broke is None else (float(broke[0]), float(broke[1])),
        touched_s=None if touched is None else float(touched),
        held=None
        if held is None
        else Kept(_plan(held), float(held["time_s"]), Instrument(**held["light"])),
        mode=record["mode"],
    )


def _plan_record(plan: tuple[Done, ...]) -> dict[str, Any]:
    """A finger leaves many entries of the same settings: these are written once."""
    settings: list[Mapping[str, Any]] = []
    entries = []
    for one in plan:
        if not settings or (one.settings is not settings[-1] and one.settings != settings[-1]):
            settings.append(one.settings)
        entries.append([one.step, len(settings) - 1, one.touches])
    return {"settings": [dict(one) for one in settings], "plan": entries}


def _plan(record: Mapping[str, Any]) -> tuple[Done, ...]:
    settings = [dict(one) for one in record["settings"]]
    made = tuple(
        Done(int(step), settings[place], tuple(_place(one) for one in touches))
        for step, place, touches in record["plan"]
    )
    steps = [one.step for one in made]
    if not steps or steps[0] != 0 or steps != sorted(steps):
        raise ValueError("steps are out of order")
    return made


def _place(found: Any) -> Place:
    if found is None:
        return None
    x, y = found
    return float(x), float(y)


def _plain_settings(settings: Any) -> dict[str, Any]:
    values = {one.name: getattr(settings, one.name) for one in fields(settings)}
    return {
        name: value if isinstance(value, bool | str) else float(value)
        for name, value in values.items()
    }
