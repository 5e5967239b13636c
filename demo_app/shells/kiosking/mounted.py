"""Folders on sticks that hold new texts: a plain list, no file chooser."""

import contextlib
from collections.abc import Iterable
from pathlib import Path

from PySide6.QtCore import QStorageInfo

from demo_app.content.kiosk.texts import STEPS

MOST = 4
MOST_LOOKED = 200
SYSTEM = ("/", "/boot", "/proc", "/sys", "/dev", "/run", "/etc", "/usr", "/var", "/tmp")
"""Where no stick is mounted (Linux)."""


def text_folders(chosen: Path | None, places: Iterable[Path] | None = None) -> tuple[Path, ...]:
    """Folders with a file of steps: the site's own, and those at the top of a mounted stick.

    Parameters
    ----------
    chosen : pathlib.Path or None
        Folder that the site file names.
    places : iterable of pathlib.Path, optional
        Where sticks are mounted; default: as the system says.
    """
    found: list[Path] = []
    for place in (*((chosen,) if chosen else ()), *(mounts() if places is None else places)):
        for folder in (place, *_inside(place)):
            if len(found) < MOST and folder not in found and _has_steps(folder):
                found.append(folder)
    return tuple(found)


def mounts() -> tuple[Path, ...]:
    """Where something that is not the system is mounted."""
    return tuple(
        Path(volume.rootPath())
        for volume in QStorageInfo.mountedVolumes()
        if volume.isReady()
        and volume.rootPath() not in SYSTEM
        and not volume.rootPath().startswith(("/proc/", "/sys/", "/dev/", "/etc/", "/boot/"))
    )


def _inside(place: Path) -> list[Path]:
    with contextlib.suppress(OSError):
        return sorted(one for one, _ in zip(place.iterdir(), range(MOST_LOOKED), strict=False))
    return []


def _has_steps(folder: Path) -> bool:
    with contextlib.suppress(OSError, ValueError):
        return (folder / STEPS).is_file()
    return False
