"""Whether a window can be shown, without Qt."""

import socket
import tempfile
from pathlib import Path

import pytest

from demo_app.content.screen import has_screen


@pytest.fixture
def served():
    """A local socket at which something listens; short, since the system allows about 100 bytes."""
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder) / "wayland-7"
        with socket.socket(socket.AF_UNIX, socket.SOCK_STREAM) as line:
            line.bind(str(place))
            line.listen()
            yield place


@pytest.fixture
def x_number():
    """Number of an X display that listens over the network on this machine."""
    for number in range(900, 999):
        with socket.socket() as line:
            try:
                line.bind(("127.0.0.1", 6000 + number))
            except OSError:
                continue
            line.listen()
            yield number
            return


@pytest.mark.parametrize("system", ["win32", "darwin"])
def test_a_desktop_system_has_one(system):
    assert has_screen({}, system)


def test_a_server_has_none():
    assert not has_screen({}, "linux")


def test_one_that_was_asked_for_counts():
    assert has_screen({"QT_QPA_PLATFORM": "offscreen"}, "linux")


@pytest.mark.parametrize("display", [":987", "unix:987", "127.0.0.1:64000", "rubbish", ":", ""])
def test_a_display_where_nobody_answers_is_none(display):
    assert not has_screen({"DISPLAY": display}, "linux")


def test_an_x_server_over_the_network(x_number):
    assert has_screen({"DISPLAY": f"127.0.0.1:{x_number}.0"}, "linux")


@pytest.mark.skipif(not hasattr(socket, "AF_UNIX"), reason="local sockets")
def test_wayland(served):
    names = {"WAYLAND_DISPLAY": served.name, "XDG_RUNTIME_DIR": str(served.parent)}
    assert has_screen(names, "linux")
    assert has_screen({"WAYLAND_DISPLAY": str(served)}, "linux")
    assert not has_screen({**names, "WAYLAND_DISPLAY": "wayland-8"}, "linux")
