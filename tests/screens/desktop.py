"""An X desktop of its own, with a laptop's screen and a projector that can be unplugged."""

import os
import shutil
import subprocess
import time
from contextlib import contextmanager

NEEDED = ("Xvfb", "xrandr", "openbox", "xdotool")
LAPTOP, PROJECTOR = (0, 0, 1280, 720), (1280, 0, 1920, 1080)


def missing():
    """Programs that are needed and not installed."""
    return [name for name in NEEDED if shutil.which(name) is None]


class Desktop:
    """The X server behind a display number."""

    def __init__(self, display):
        self.environment = {**os.environ, "DISPLAY": display}

    def xrandr(self, *words):
        done = subprocess.run(
            ["xrandr", *words], env=self.environment, capture_output=True, text=True, timeout=10
        )
        assert done.returncode == 0, done.stderr

    def plug(self, left=PROJECTOR[0]):
        self.xrandr("--setmonitor", "PROJECTOR", f"1920/1600x1080/900+{left}+0", "none")

    def unplug(self):
        self.xrandr("--delmonitor", "PROJECTOR")

    def xdotool(self, *words):
        while True:
            done = subprocess.run(
                ["xdotool", *words],
                env=self.environment,
                capture_output=True,
                text=True,
                timeout=10,
            )
            # A window that goes while xdotool walks through them all ends it: ask again.
            if "BadWindow" not in done.stderr:
                return done.stdout

    def window(self, title):
        """Left, top, width, height of a window that is mapped; None if there is none."""
        found = self.xdotool(
            "search", "--onlyvisible", "--name", f"^{title}", "getwindowgeometry", "--shell"
        )
        values = dict(line.split("=") for line in found.splitlines() if "=" in line)
        if "HEIGHT" not in values:
            return None
        return tuple(int(values[name]) for name in ("X", "Y", "WIDTH", "HEIGHT"))

    def active(self):
        """Title of the window that has the keyboard."""
        return self.xdotool("getactivewindow", "getwindowname").strip()


@contextmanager
def desktop():
    """Run Xvfb and openbox; both end afterwards."""
    read, write = os.pipe()
    server = subprocess.Popen(
        [
            "Xvfb",
            "-displayfd",
            str(write),
            "-screen",
            "0",
            "3200x1080x24",
            "-nolisten",
            "tcp",
            "-noreset",
        ],
        pass_fds=(write,),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(write)
    manager = None
    try:
        with os.fdopen(read) as line:
            made = Desktop(f":{line.readline().strip()}")
        made.xrandr("--setmonitor", "LAPTOP", "1280/340x720/190+0+0", "screen")
        made.plug()
        manager = subprocess.Popen(
            ["openbox", "--sm-disable"],
            env=made.environment,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        time.sleep(0.5)
        yield made
    finally:
        for process in (manager, server):
            if process is not None:
                process.terminate()
                process.wait(10)
