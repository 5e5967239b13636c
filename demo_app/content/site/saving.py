"""Devices written to their files."""

from pathlib import Path
from typing import Any

import tomlkit

from demo_app.base.atomic import write_text
from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.content.fitting.records import Observed
from demo_app.content.site.devices import FOLDER, Device


def save_device(one: Device, folder: Path | None = None, *, over: bool = False) -> Path:
    """Write a device whole or not at all.

    Parameters
    ----------
    one : Device
        What to write.
    folder : pathlib.Path, optional
        Where; default: the devices of this person.
    over : bool
        Whether it may take the place of an older one of its id.

    Raises
    ------
    InputError
        If it cannot be written, or there is one already.
    """
    if folder is None:
        folder = data_folder() / FOLDER
        folder.mkdir(exist_ok=True)
    path = folder / f"{one.id}.toml"
    if path.exists() and not over:
        raise InputError(
            f"a device '{one.id}' is there already",
            place=str(path),
            remedy="choose another name, or say that it may be replaced",
        )
    write_text(path, as_toml(one))
    return path


def as_toml(one: Device) -> str:
    """Text of a device's file, which `demo_app.content.site.devices.load_device` reads."""
    top = tomlkit.document()
    top.add(
        tomlkit.comment("Fitted to readings of a real piece; low to high is the 95 % interval.")
    )
    top.add("name", tomlkit.item(one.name))
    top.add("fitted_on", tomlkit.item(one.fitted_on))
    top.add("with", tomlkit.item(one.version))
    for key in ("scene", "setting", "value", "low", "high"):
        top.add(key, tomlkit.item(getattr(one, key)))
    tables = tomlkit.aot()
    for observed in one.readings:
        tables.append(_table(observed))
    top.add("reading", tables)
    return tomlkit.dumps(top)


def _table(observed: Observed) -> Any:
    table = tomlkit.table()
    for key in ("reading", "value", "sd", "bias"):
        table.add(key, getattr(observed, key))
    if observed.instrument:
        table.add("instrument", observed.instrument)
    if observed.at_s is not None:
        table.add("at_s", observed.at_s)
    return table
