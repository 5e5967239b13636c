"""What ``lehrlight kiosk`` does without a window: the code, and the table of counts."""

import dataclasses
import os
from pathlib import Path

from demo_app.base.errors import InputError
from demo_app.base.places import data_folder
from demo_app.content.kiosk import site_file
from demo_app.content.kiosk.code import hashed
from demo_app.content.kiosk.counts_file import export
from demo_app.content.kiosk.site import Site


def set_code(code: str, again: str) -> str:
    """Keep the hash of the staff's `code` in the site file; returns a line for people.

    Raises
    ------
    InputError
        If both differ, it is no code, or the site file is broken or cannot be written.
    """
    if code != again:
        raise InputError("both differ", place="--set-code", remedy="type the same twice")
    kept = hashed(code)
    path = data_folder() / site_file.NAME
    site = site_file.load(path) if os.path.lexists(path) else Site()
    site_file.save(dataclasses.replace(site, code=kept), path)
    return f"The code is set: its hash is in {path}"


def write_counts(out: Path) -> str:
    """Write the counts as a table; returns a line for people."""
    rows = export(data_folder(), out)
    return f"{rows} rows in {out}"
