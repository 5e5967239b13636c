"""Whether a window can be shown, found out without Qt, which aborts where it cannot."""

import re
import socket
from collections.abc import Mapping
from pathlib import Path

PATIENCE_S = 2.0


def has_screen(names: Mapping[str, str], system: str) -> bool:
    """Whether there is a screen, or a stand-in that was asked for.

    Parameters
    ----------
    names : mapping
        The environment. ``QT_QPA_PLATFORM`` (such as ``offscreen``) counts as a screen;
        ``WAYLAND_DISPLAY`` and ``DISPLAY`` do if what they name answers.
    system : str
        As `sys.platform`; Windows and macOS always have a screen.
    """
    if system in ("win32", "darwin") or names.get("QT_QPA_PLATFORM"):
        return True
    return _wayland_answers(names) or _x11_answers(names.get("DISPLAY", ""))


def _wayland_answers(names: Mapping[str, str]) -> bool:
    name = names.get("WAYLAND_DISPLAY", "")
    return bool(name) and _answers(str(Path(names.get("XDG_RUNTIME_DIR", "")) / name))


def _x11_answers(display: str) -> bool:
    """Whether an X server answers at ``[host]:number[.screen]``."""
    found = re.fullmatch(r"(.*):([0-9]{1,4})(\.[0-9]+)?", display)
    if found is None:
        return False
    host, number = found[1], int(found[2])
    if host in ("", "unix"):
        place = f"/tmp/.X11-unix/X{number}"
        return _answers(place) or _answers(f"\0{place}")
    try:
        socket.create_connection((host.strip("[]"), 6000 + number), timeout=PATIENCE_S).close()
    except OSError:
        return False
    return True


def _answers(place: str) -> bool:
    """Whether a program listens at the local socket `place`."""
    if not hasattr(socket, "AF_UNIX"):
        return False
    with socket.socket(socket.AF_UNIX, socket.SOCK_STREAM) as line:
        line.settimeout(PATIENCE_S)
        try:
            line.connect(place)
        except OSError:
            return False
    return True
