"""Devices: settings of this venue's own jets, burners and samples, and where they come from."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from demo_app.base.errors import InputError
from demo_app.base.places import data_place
from demo_app.base.toml_table import Table, nearest, parse
from demo_app.content.fitting.records import Fit, Observed
from demo_app.scenes.scene import Scene
from demo_app.scenes.settings import settings_of

FOLDER = "devices"
_ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
_FAR = 1e12
_KEYS = ("name", "fitted_on", "with", "scene", "setting", "value", "low", "high", "reading")


@dataclass(frozen=True)
class Device:
    """One number of something real, for every scene that has the setting.

    Parameters
    ----------
    id : str
        Name on the command line and of its file.
    name : str
        Name for people.
    scene : str
        Id of the scene whose model was fitted.
    setting : str
        What it sets, in every scene that has a number of this name.
    value, low, high : float
        Best value and 95 % interval, in the setting's unit.
    fitted_on : datetime.date
        When.
    version : str
        Of the app that fitted it.
    readings : tuple of Observed
        What it was fitted to.
    """

    id: str
    name: str
    scene: str
    setting: str
    value: float
    low: float
    high: float
    fitted_on: date
    version: str
    readings: tuple[Observed, ...]


def id_of(name: str) -> str:
    """Id that follows from a name for people; `InputError` if nothing is left of it.

    Examples
    --------
    >>> id_of("Jets of the big frame")
    'jets-of-the-big-frame'
    """
    found = "-".join(re.findall(r"[a-z0-9]+", name.lower()))
    if not found or len(found) > 60:
        raise InputError(
            f"'{name}' makes no file name",
            place="device",
            remedy="write up to 60 letters a to z and digits",
        )
    return found


def device_of(fit: Fit, name: str, scene: str, today: date, version: str) -> Device:
    """Device of a finished fit.

    Raises
    ------
    InputError
        If the fit does not know its unknown, or the readings contradict each other.
    """
    if not fit.usable:
        raise InputError(
            f"the readings do not settle {fit.unknown.name}",
            place="device",
            remedy="take more readings, and save it then",
        )
    return Device(
        id_of(name),
        name,
        scene,
        fit.unknown.name,
        fit.value,
        fit.low,
        fit.high,
        today,
        version,
        tuple(one.observed for one in fit.compared),
    )


def place() -> Path:
    """Folder of the devices, whether it is there or not."""
    return data_place() / FOLDER


def device_ids(folder: Path | None = None) -> tuple[str, ...]:
    """Ids of all devices, sorted."""
    where = folder or place()
    return tuple(sorted(path.stem for path in where.glob("*.toml") if _ID.fullmatch(path.stem)))


def device(name: str, folder: Path | None = None) -> Device:
    """The device with the id `name`; `InputError` names the known ones."""
    known = device_ids(folder)
    if name not in known:
        raise InputError(
            f"no device is called '{name}'",
            place="--device",
            remedy=nearest(name, known) if known else "none is saved yet: match a piece first",
        )
    return load_device((folder or place()) / f"{name}.toml")


def load_device(path: Path) -> Device:
    """Read and check a device's file; `InputError` names file, line and remedy."""
    top = parse(path, "device")
    top.only(*_KEYS)
    low, high = (top.number(key, -_FAR, _FAR) for key in ("low", "high"))
    if low > high:
        raise top.error("low", f"{low:g} is above high", "write the lower end as low")
    made = top.get("fitted_on")
    if type(made) is not date:
        raise top.error("fitted_on", f"{made!r} is no date", "write year-month-day, unquoted")
    return Device(
        path.stem,
        top.words("name"),
        top.words("scene"),
        top.words("setting"),
        top.number("value", low, high),
        low,
        high,
        made,
        top.words("with"),
        tuple(_observed(one) for one in top.tables("reading")),
    )


def _observed(table: Table) -> Observed:
    table.only("reading", "value", "sd", "bias", "instrument", "at_s")
    at_s = table.number("at_s", 0, _FAR) if "at_s" in table.content else None
    return Observed(
        table.words("reading"),
        table.number("value", -_FAR, _FAR),
        table.number("sd", 1e-12, _FAR),
        table.number("bias", 0, _FAR, 0.0),
        table.words("instrument", ""),
        at_s,
    )


def values_of(one: Device, scene: Scene, values: Mapping[str, Any]) -> dict[str, Any]:
    """`values` (as set by hand) over those of the device.

    Raises
    ------
    InputError
        If the scene has no such setting, or its range does not reach the device's value.
    """
    known = {s.name: s for s in settings_of(scene.settings) if isinstance(s.default, float)}
    if one.setting not in known:
        raise InputError(
            f"{one.name} sets {one.setting}, which scene {scene.id} does not have",
            place="--device",
            remedy=f"use it in {one.scene}",
        )
    return {one.setting: known[one.setting].check(one.value), **values}
